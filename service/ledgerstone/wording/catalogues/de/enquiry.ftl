# Was zu einer Anfrage gesagt und gefragt wird: der Entwurf und was dafür angenommen wurde.

enquiry-length = Wie lang ist { $slab }?
enquiry-width = Wie tief ist { $slab }, von vorn nach hinten?
enquiry-diameter = Welchen Durchmesser hat { $slab }?
enquiry-outline = Welche Form und Größe hat { $slab }?
enquiry-thickness = Wie dick soll { $slab } sein?
enquiry-corner = Auf welcher Seite liegt der kürzere Schenkel, von vorn gesehen?
enquiry-legs = Wie tief sind die beiden Schenkel?
enquiry-size = Welches Maß hat der Ausschnitt ({ $opening })?
enquiry-place = Ausschnitt ({ $opening }): Wie weit ist seine Mitte vom linken Ende und von vorn entfernt?
enquiry-x = Ausschnitt ({ $opening }): Wie weit ist seine Mitte vom linken Ende entfernt?
enquiry-y = Ausschnitt ({ $opening }): Wie weit ist seine Mitte von der Vorderkante entfernt?
enquiry-postcode = Wie lautet die Postleitzahl für die Lieferung?
enquiry-steps = Wie viele Stufen sind es insgesamt („{ $said }“)?
enquiry-some-steps = „{ $said }“ sagt nicht, wie viele Stufen es sind.
enquiry-plate = Wie breit ist die Platte des Fußes, auf der die Tischplatte liegt?
enquiry-units = Wie breit ist jeder Schrank, auf dem die Platte liegt, von links nach rechts?
enquiry-two = { $what } ist als { $readings } angegeben.
enquiry-impossible = { $what } liegt so nicht auf der Platte: { $readings }.
enquiry-about = { $what } ist mit etwa { $readings } angegeben.
enquiry-ask-two = { $what } ist als { $readings } angegeben: Was gilt?
enquiry-ask-impossible = { $what }, wie wir es lesen ({ $readings }), liegt nicht auf der Platte: Was gilt?
enquiry-ask-about = { $what } ist mit etwa { $readings } angegeben: Welches Maß soll es sein?
enquiry-ask-delivery = Sollen wir liefern, oder holen Sie ab?
enquiry-ask-day = Bis zu welchem Tag brauchen Sie es? Sie schreiben „{ $said }“.
enquiry-delivery = Ob geliefert oder abgeholt wird, ist offen.
enquiry-what-length = Die Länge ({ $slab })
enquiry-what-width = Die Tiefe ({ $slab })
enquiry-what-diameter = Der Durchmesser ({ $slab })
enquiry-what-thickness = Die Dicke ({ $slab })
enquiry-what-size = Das Maß des Ausschnitts ({ $opening })
enquiry-what-x = Der Abstand des Ausschnitts ({ $opening }) von links
enquiry-what-y = Der Abstand des Ausschnitts ({ $opening }) von vorn
enquiry-took-thickness = Wir gehen von { $value } Dicke aus ({ $slab }).
enquiry-took-shade = Wir gehen von unserem Farbton { $value } aus.
enquiry-took-nearest = Unser Farbton { $value } kommt „{ $said }“ am nächsten.
enquiry-took-surface = Wir gehen von unserer üblichen Oberfläche aus: { surface-name }.
enquiry-took-sealer = Wir gehen von unserer üblichen Versiegelung aus ({ $value }).
enquiry-took-place = Wir gehen davon aus, dass { $slab } innen liegt.
enquiry-took-collect = Wir gehen davon aus, dass Sie abholen.
enquiry-took-delivery = Wir gehen davon aus, dass es { NAME($way) } wird.
enquiry-took-corner = Wir gehen davon aus, dass die Ecke { $value ->
    [front-left] vorn links
    [front-right] vorn rechts
    [back-left] hinten links
   *[back-right] hinten rechts
} frei bleibt.
enquiry-took-site = Ausschnitt ({ $opening }): Wir setzen seine Mitte { $x } von links und { $y } von vorn an.
enquiry-took-size = Ausschnitt ({ $opening }): Wir gehen von { $value } aus, bis die Schablone da ist.
enquiry-took-units = Wir gehen davon aus, dass { NAME($slab) } auf Unterschränken in üblichen Breiten liegt (von links { $units }).
enquiry-took-covered = Ausschnitt ({ $opening }): Wir gehen davon aus, dass sein Rand verdeckt wird.
enquiry-took-turn = Wir gehen davon aus, dass der kürzere Schenkel rechts liegt, von vorn gesehen.
enquiry-took-gap = Wir gehen von einer Fuge von { $value } zwischen beiden aus.
enquiry-took-edge = Wir gehen bei der Kante von { $value } aus.
enquiry-took-edges = Wir gehen von geraden Kanten aus, leicht gebrochen.
enquiry-took-no-postcode = Die Lieferung ist nicht enthalten, bis wir die Postleitzahl kennen.
enquiry-took-doubtful = { $what }: Von beiden Angaben nehmen wir { $value }.
enquiry-week = „{ $said }“ ist eine Woche; der Tag ist nicht genannt.
enquiry-vague = „{ $said }“ nennt keinen Tag.
enquiry-from = „{ $said }“ ist der { $first } oder später; der Tag ist nicht genannt.
enquiry-about-day = „{ $said }“: wäre das der { $day }?
enquiry-either-day = „{ $said }“ ist der { $first } oder der { $second }.
enquiry-between = „{ $said }“ nennt keinen Tag: vom { $first } bis { $last } ist jeder möglich.
enquiry-undated = „{ $said }“ zählt von einem Tag an, den die Nachricht nicht nennt.
enquiry-no-year = Das Jahr von „{ $said }“ ist nicht bekannt: Die Nachricht hat kein Datum.
enquiry-two-days = { $said } ist { $month_first } (Monat zuerst) oder { $day_first } (Tag zuerst).
enquiry-no-month = Welcher Monat ist mit „{ $said }“ gemeint? Die Nachricht hat kein Datum.
enquiry-easter = „{ $said }“ ist { $thursday } (vor Karfreitag) oder { $saturday } (vor Ostersonntag).
enquiry-no-easter = Ostern welchen Jahres? Die Nachricht hat kein Datum.
enquiry-slab = { $use }
enquiry-slab-n = Platte { $n } ({ $use })
enquiry-name = { $key ->
    [worktop] die Arbeitsplatte
    [table] die Tischplatte
    [hearth] die Kaminplatte
    [shelf] der Regalboden
    [sill] die Fensterbank
    [upstand] die Aufkantung
    [splashback] die Rückwand
    [end-panel] die Seitenwange
    [bench] die Sitzbank
    [sink] Spüle
    [basin] Becken
    [hob] Kochfeld
    [tap] Hahnloch
    [waste] Ablauf
    [parasol] Schirmloch
    [cable] Kabeldurchlass
    [hole] Loch
    [drain] Ablauf
    [grill] Grill
    [socket] Steckdose
    [soap] Seifenspender
    [flue] Rauchrohr
    [planter] Pflanztrog
    [bin] Abwurf
   *[other] { $what }
}
enquiry-piece = die Platte
enquiry-opening = { $what }
