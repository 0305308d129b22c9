# Was die Papiere gemeinsam haben: für wen, was für eine Platte, wie groß, wie sie aussieht, wie und wann sie kommt.

paper-for = Für
paper-order = Auftrag
paper-ready-on = Fertig am
paper-made = Hergestellt
paper-agreed = Vereinbart
paper-use = { paper-use-word }{ $number ->
    [0] { "" }
   *[other] { " " }{ $number }
}
paper-use-word = { $use ->
    [worktop] Arbeitsplatte
    [upstand] Aufkantung
    [splashback] Rückwand
    [end-panel] Seitenwange
    [shelf] Regalboden
    [table] Tischplatte
    [hearth] Kaminplatte
   *[sill] Fensterbank
}
paper-size = { $length } × { $width }, { $thickness } dick
paper-size-round = Durchmesser { $across }, { $thickness } dick
paper-size-over-all = { $length } × { $width } über alles, { $thickness } dick
paper-look = { $shade }, { surface-name }, Versiegelung { $sealer }
paper-look-matched = abgestimmt auf { $colour }, { surface-name }, Versiegelung { $sealer }
paper-many = { $count } × { $name }
paper-weight-size = { $weight }; { $size }; { $gear ->
    [yes] mit Wagen oder Hebezeug, nie von Hand allein
   *[no] wir planen { $people } ein
}
paper-weight-size-each = je { $weight }; { $size }; { $gear ->
    [yes] mit Wagen oder Hebezeug, nie von Hand allein
   *[no] wir planen für jede { $people } ein
}
paper-packed = Alles zusammen, verpackt
paper-delivery = Lieferung
paper-delivery-collect = Sie holen selbst ab, ab { $first }.
paper-delivery-on = { paper-delivery-way }, am { $first }.
paper-delivery-between = { paper-delivery-way }, zwischen { $first } und { $last }.
paper-delivery-open = { paper-delivery-way }.
paper-delivery-way = { $way ->
    [pallet] Auf einer Palette, frei Bordsteinkante
    [own-van] Mit unserem Transporter, bis zur Tür
    [collect] Sie holen selbst ab
   *[fitted] Wir bringen sie und bauen sie ein
}
paper-place = { $place ->
    [outdoors] Im Freien
    [wet-room] Im Nassraum
   *[indoors] Im Innenraum
}
paper-place-on = { paper-place }; Auflage: { $rests }.
paper-place-not-given = { paper-place }. Worauf sie liegt, ist uns nicht bekannt.
paper-opening = { $letter } „{ $label }“
paper-opening-unnamed = { $letter } Ausschnitt
paper-relief-unnamed = { $letter } { plan-relief-word }
paper-edge = Kante { $letter }: { $sides }
paper-name = Name
paper-signature = Unterschrift
paper-day = Datum
paper-grips-words = „{ $name }“ von ihrer Sichtseite: wo man sie fasst
paper-grip-here = HIER FASSEN
paper-rail-here = HIER SCHIENE ANKLEMMEN
paper-grips-picture = Wo man sie fasst
paper-workshop = { $name }, { $town }{ $shown ->
    [invented] { "" } (eine erfundene Werkstatt, zur Ansicht)
    [trial] { "" } (Probelauf, kein Angebot)
   *[own] { "" }
}
