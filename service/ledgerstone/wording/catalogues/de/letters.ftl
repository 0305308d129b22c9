# Briefe: eine Antwort, eine Rücksendung, nur Fragen. Daneben steht, was die Werkstatt selbst schreibt.

letter-greeting = { $named ->
    [yes] Guten Tag { $customer }
   *[no] Guten Tag
}
letter-replaces = Dieser Brief ersetzt unseren vom { $day }.
letter-can-make = vielen Dank für Ihre Anfrage: Das können wir fertigen.{ letter-supports }
letter-would-make = vielen Dank für Ihre Anfrage. So würde unsere Antwort aussehen.{ letter-supports }
letter-supports = { $supports ->
    [open] { " " }Die Auflager sind noch nicht geprüft.
   *[checked] { "" }
}
letter-options = vielen Dank für Ihre Anfrage. Sie haben mehrere Möglichkeiten, jede mit Preis{ $linked ->
    [yes] , Termin und Link
   *[no] {" "}und Termin
}.{ letter-supports }
letter-stands-in-the-way = vielen Dank für Ihre Anfrage. So wie gezeichnet können wir das noch nicht fertigen. Unten steht, woran es liegt und was es behebt.
letter-only-asks = vielen Dank für Ihre Anfrage. Bevor wir einen Preis nennen können, müssen wir noch etwas wissen.
letter-asks = Bitte sagen Sie uns zur Sicherheit noch:
letter-took-lead = Wir gehen davon aus, dass
letter-took = Wir gehen davon aus, { $facts }.
letter-took-fact = dass { $fact }
letter-balance = Der Rest ist fällig: { $due }.
letter-terms-in = { $language ->
    [de] Unsere Bedingungen, auf Deutsch:
   *[en] Unsere Bedingungen, auf Englisch:
}

letter-offer = { $standing ->
    [estimate] Kostenvoranschlag
   *[quotation] Angebot
} { $offer }
letter-tax = inkl. { $tax } { $name } ({ $percent })
letter-day = { $way ->
    [collect] Abholbereit ab { $ready }{ letter-in-time }.
   *[other] Fertig am { $ready }; bei Ihnen { $arrives }{ letter-in-time }.
}
letter-in-time = { $asked ->
    [yes] , rechtzeitig
   *[no] { "" }
}
letter-day-not-met = Sie haben es bis { $wished } gewünscht. Diesen Tag können wir nicht einhalten.
letter-changed = Gegenüber Ihrer Anfrage haben wir geändert:
letter-changed-why = So, wie angefragt, lässt es sich nicht fertigen:
letter-day-kept = Mit dieser Änderung können Sie es wie gewünscht bis { $wished } haben.
letter-day-open = Gewünscht haben Sie es bis { $wished }. Ist das geklärt, können wir sagen, ob der Termin zu halten ist.
letter-ready = Fertig am { $ready }.
letter-order-today = { $wanted ->
    [deposit] Bestellen Sie heute, mit { $deposit } Anzahlung; der Termin ist fest, sobald er eingetragen ist, { letter-price-of } bis zum { $until }.
    [deposit-and-templates] Bestellen Sie heute, mit { $deposit } Anzahlung und den Schablonen; der Termin ist fest, sobald er eingetragen ist, { letter-price-of } bis zum { $until }.
    [templates] Bestellen Sie heute, mit den Schablonen; der Termin ist fest, sobald er eingetragen ist, { letter-price-of } bis zum { $until }.
   *[nothing] Bestellen Sie heute; der Termin ist fest, sobald er eingetragen ist, { letter-price-of } bis zum { $until }.
}
letter-order-by = { $wanted ->
    [deposit] Der Termin gilt für eine Bestellung bis zum { $by } mit { $deposit } Anzahlung und ist fest, sobald er eingetragen ist; { letter-price-of } bis zum { $until }.
    [deposit-and-templates] Der Termin gilt für eine Bestellung bis zum { $by } mit { $deposit } Anzahlung und den Schablonen und ist fest, sobald er eingetragen ist; { letter-price-of } bis zum { $until }.
    [templates] Der Termin gilt für eine Bestellung bis zum { $by } mit den Schablonen und ist fest, sobald er eingetragen ist; { letter-price-of } bis zum { $until }.
   *[nothing] Der Termin gilt für eine Bestellung bis zum { $by } und ist fest, sobald er eingetragen ist; { letter-price-of } bis zum { $until }.
}
letter-price-of = { $standing ->
    [quotation] der Preis gilt
   *[estimate] die Sätze gelten
}
letter-in-short = { $wanted ->
    [deposit] Anzahlung { $deposit }; { letter-price-of } bis zum { $until }.
    [deposit-and-templates] Anzahlung { $deposit }; { letter-price-of } bis zum { $until }.
   *[other] { $standing ->
        [quotation] Der Preis gilt
       *[estimate] Die Sätze gelten
    } bis zum { $until }.
}
letter-weeks = { $cast ->
    [same] Wir beginnen am { $starts } und gießen am selben Tag; danach { letter-then }.
   *[later] Wir beginnen am { $starts } und gießen am { $casts }; danach { letter-then }.
}
letter-then = { $seals ->
    [yes] { $pieces ->
        [1] erhärtet die Platte, wird bearbeitet und versiegelt
       *[other] erhärten die Platten, werden bearbeitet und versiegelt
    }
   *[no] { $pieces ->
        [1] erhärtet die Platte und wird bearbeitet
       *[other] erhärten die Platten und werden bearbeitet
    }
}
letter-link = Ansehen und ändern:
links-left-out = Der Brief kann so hinaus; ihm fehlt nur der Link, denn { $address } öffnet sich nur auf diesem Rechner. Sobald Kunden Sie im Netz erreichen, tragen Sie die Adresse unter „Ihre Werkstatt“ ein.
letter-link-at = Ansehen und ändern bei { $host }
letter-attached = Die Bestellung liegt bei; für einen Link ist sie zu lang.
letter-net = { $taxed ->
    [yes] Netto
   *[no] Gesamt
}

slab-in-a-line = { $count ->
    [1] { $name }: { $facts }.
   *[other] { $count } × { $name }: { $facts }.
}
letter-opening = Ausschnitt „{ $name }“: { $facts }
letter-opening-unnamed = ohne Namen
letter-centre = Mitte { $x } von links, { $y } von vorn
letter-relief = { plan-relief-word } { $depth } tief, Ecke { $x } von links, { $y } von vorn
letter-edge = { $sides }: { $edge }
letter-place = { $place ->
    [outdoors] im Freien
    [wet-room] im Nassraum
   *[indoors] innen
}
letter-on = Auflage: { $rests }
letter-on-assumed = Auflage, von uns angenommen: { $rests }
letter-from-below = Unterbau
letter-joined = gefügt: mit { $side } an { $other } { NAME($that, case: "genitive") }, Fuge { $gap }
letter-alt = Plan von { $slab }: { $size }. { $offer }: { $total }.
letter-alt-no-price = Plan von { $slab }: { $size }. Noch kein Preis.

letter-heading = { $when ->
    [before-order] Vor der Bestellung
    [on-delivery] Bei der Lieferung
   *[in-use] Im Gebrauch
}
advice-kerb = Die Palette ({ $packed }) wird an der Bordsteinkante abgesetzt, auf festem, ebenem Boden.
advice-carry = { $count ->
    [1] { NAME($people, start: "yes") } trägt { NAME($slab, case: "accusative") } ({ $weight }) hochkant, nie flach.{ hands-assess }
   *[other] { NAME($people, start: "yes") } tragen { NAME($slab, case: "accusative") } ({ $weight }) hochkant, nie flach.{ hands-assess }
}
advice-on-edge = Tragen Sie { NAME($slabs, case: "accusative") } hochkant, nie flach.
advice-people = Vor dem { $day } soll niemand auf { NAME($slab, case: "dative") } { $doing }; danach höchstens eine Person.

advice-units = Die Unterschränke müssen geschlossene Seitenwände haben, befestigt und auf { $level } genau ausgerichtet sein und je { running-length } { $weight } tragen: Fragen Sie deren Hersteller.
advice-food = Bereiten Sie Speisen auf einem Brett zu.
advice-people-young = Vor dem { $day } soll niemand auf { NAME($slab, case: "dative") } { $doing }.
advice-mix = Auf Frost ist unsere übliche Mischung nicht geprüft: Vereinbaren Sie mit uns eine andere, oder { mix-until }.
advice-way-in = Nennen Sie uns { $missing }.
advice-drip = Wählen Sie eine Wassernase unter den freien Kanten.
advice-fall = { HOWMANY($slabs) ->
    [1] Verlegen Sie { NAME($slabs, case: "accusative") } mit { $fall } Gefälle.
   *[other] Verlegen Sie { NAME($slabs, case: "accusative") } mit einem Gefälle von 1 zu 60, bis zu { $fall }.
}
advice-dark = { START($shades) } kann weiß ausblühen und heller werden.
advice-rails = { $fitted } Sonst könnte { NAME($slab) } reißen.

letter-one-change = Eine Änderung, die alles behebt
letter-bigger-change = Eine größere Änderung, mit der es möglich wäre
letter-then-costs = Es würde dann { $price } kosten.
letter-see-change = So sieht es mit dieser Änderung aus:
letter-see-change-at = Mit dieser Änderung ansehen bei { $host }
letter-good-to-know = Gut zu wissen
letter-way = { $way ->
    [drawn] Wie gezeichnet
    [lighter] Leichter
    [cheaper] Günstiger
   *[both] Leichter und günstiger
}
letter-no-lighter = Wir haben nach einer leichteren Ausführung gesucht und keine gefunden, die wir zusagen können.
letter-no-cheaper = Wir haben nach einer günstigeren Ausführung gesucht und keine gefunden, die wir zusagen können.

letter-subject = { $offer }: { $slabs }, { $total }, fertig am { $ready }
letter-subject-options = { $offer }: { $slabs }, { $count } Möglichkeiten
letter-subject-sent-back = Was vor der Fertigung zu ändern ist: { $slabs }
letter-subject-questions = Einige Fragen zu Ihrer Anfrage
letter-subject-invented = { $subject } (erfundene Werkstatt, zur Ansicht)
letter-make-change = So ändern
