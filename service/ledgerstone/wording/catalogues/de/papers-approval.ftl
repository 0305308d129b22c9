# Das Freigabeblatt: dem der Kunde zustimmt, bevor etwas gegossen wird.

approval-title = Zur Freigabe vor dem Guss
approval-trial = Probelauf
approval-standing = { $standing ->
    [quotation] Angebot
   *[estimate] Kostenvoranschlag
}
approval-offered = Angeboten am
approval-stands = { $issued }; { $standing ->
    [quotation] gültig
   *[estimate] zu diesen Sätzen
} bis { $until }
approval-price = Preis
approval-price-taxed = { $total }, inkl. { $tax } { $name } ({ $percent })
approval-line = { $amount }, im Preis vor Steuer
approval-deposit = Anzahlung
approval-ready = { $day } bei Bestellung bis { $by }
approval-postcode = Geliefert nach
approval-weight = Gewicht, verpackt
approval-weeks = Die Wochen
approval-stage = { $first } bis { $last }. { $why }
approval-stage-day = { $first }. { $why }
approval-expect = Was vom Werkstoff zu erwarten ist
approval-expect-holes = Kleine Poren und Lunker: Luft hinterlässt sie in jedem Guss, und manche öffnen sich später.
approval-expect-mottling = Wolkigkeit: Eine Platte ist in sich heller und dunkler, und zwei gleichen einander nie ganz.
approval-expect-hairlines = Haarrisse: Feine Linien in der Oberfläche können in manchem Licht zu sehen sein. Die Festigkeit mindern sie nicht.
approval-expect-paler = Ein Farbton, der in den ersten Monaten beim Trocknen heller wird und versiegelt wieder satter.
approval-expect-bloom = Weiße Ausblühungen, wo im ersten Winter Wasser gestanden hat; sie lassen sich abwaschen.
approval-expect-edges = Kanten sind gebrochen, nie messerscharf.
approval-terms = Bedingungen
approval-joins = Fugen
approval-join = { $name }, { $side }
approval-join-meets = stößt an { $name }, { $side }, mit { $gap } Fuge
approval-quantity = Anzahl
approval-size = Fertigmaß
approval-sizes-from = Maße nach
approval-from = { $source ->
    [between-walls] Ihren Wänden; an jeder Wandseite sind { $gap } abgezogen, damit sie passt
    [over-units] Ihren Schränken, mit den Überständen
    [template-to-follow] einer Schablone, die noch kommt; vorher wird nichts gegossen
   *[finished] Fertigmaßen, wie Sie sie genannt haben
}
approval-hand = Ausrichtung
approval-hand-of = { $arm ->
    [left] links
   *[right] rechts
}: von oben gesehen, mit der Vorderseite zu Ihnen, geht der Schenkel { $arm ->
    [left] links
   *[right] rechts
} nach { $depth ->
    [back] hinten
   *[front] vorn
}; die Ecke { $depth ->
    [back] hinten
   *[front] vorn
} { $arm ->
    [left] rechts
   *[right] links
} ist ausgespart
approval-measured = wie von Ihnen gemessen
approval-look = Farbton und Oberfläche
approval-sure = Wie sicher
approval-goes = Wohin sie kommt
approval-check = Vor der Unterschrift prüfen
approval-check-sizes = Die Maße und ihre Herkunft stimmen.
approval-check-openings = Jeder Ausschnitt sitzt, wo er soll, und hat die Größe, die seine eigene Schablone verlangt.
approval-check-round = Vorn und hinten, links und rechts stimmen, von oben gesehen.
approval-check-look = { $tile ->
    [yes] Farbton, Oberfläche und Versiegelung sind, wie Sie sie gewählt haben; zuvor gießen wir die Musterplatte zu Ihrer Freigabe.
   *[no] Farbton, Oberfläche und Versiegelung sind, wie Sie sie gewählt haben.
}
approval-check-place = Wir wissen, wohin die Platte kommt, worauf sie liegt und wie sie hineinkommt.
approval-signed = Einverstanden
approval-signs = Ich habe dieses Blatt geprüft und bitte { $workshop }, zu gießen, was es zeigt. Was gegossen ist, lässt sich nicht mehr ändern.
