# Was ein früheres Angebot von diesem unterscheidet.

change-joins = Die Fugen zwischen den Platten sind geändert.
change-area = Geliefert wird nach: { $area }.
change-asked = { $what ->
    [sample-tile] { $asked ->
        [yes] Eine Musterplatte ist gewünscht.
       *[no] Eine Musterplatte ist nicht mehr gewünscht.
    }
    [templating] { $asked ->
        [yes] Wir kommen zum Aufmaß.
       *[no] Sie messen selbst.
    }
   *[heated-curing] { $asked ->
        [yes] Der Beton erhärtet in unserem beheizten Zelt.
       *[no] Der Beton erhärtet ohne das beheizte Zelt.
    }
}
change-needed-by = Benötigt wird der Auftrag bis { $day }.
change-not-needed-by = Ein bestimmter Tag ist nicht mehr gewünscht.
change-left-out = { NAME($thing, start: "yes") } entfällt.
change-slab-added = { NAME($slab, start: "yes") } kommt hinzu.
change-label = { NAME($slab, start: "yes") } hieß vorher „{ $old }“.
change-label-first = { NAME($slab, start: "yes") } hat jetzt einen Namen.
change-outline = { NAME($slab, start: "yes") } hat jetzt die Form { $now } (vorher: { $was }).
change-outline-else = { NAME($slab, start: "yes") } hat einen anderen Umriss.
change-polygon = Vieleck mit { $sides } Seiten
change-round = rund, Durchmesser { $across }
change-l = L-Form { $length } mal { $width } ohne { $notch_length } mal { $notch_width } { $corner ->
    [front-left] vorn links
    [front-right] vorn rechts
    [back-left] hinten links
   *[back-right] hinten rechts
}
change-corners = Eckradius { $radius }
change-corner = { $corner ->
    [front-left] Ecke vorn links
    [front-right] Ecke vorn rechts
    [back-left] Ecke hinten links
   *[back-right] Ecke hinten rechts
} { $radius }
change-thickness = { NAME($slab, start: "yes") } ist { $now } dick; vorher waren es { $was }.
change-quantity = { NAME($slab, start: "yes") } wird { $now }-mal gegossen; vorher { $was }-mal.
change-use = { NAME($slab, start: "yes") } dient als { $now }; vorher als { $was }.
change-use-name = { $use ->
    [worktop] Arbeitsplatte
    [upstand] Aufkantung
    [splashback] Rückwand
    [end-panel] Seitenwange
    [shelf] Regalboden
    [table] Tischplatte
    [hearth] Kaminplatte
   *[sill] Fensterbank
}
change-size-from = { NAME($slab, start: "yes") } wird nach { $now } gefertigt; vorher nach { $was }.
change-source-name = { $source ->
    [finished] den Fertigmaßen
    [between-walls] den Maßen zwischen den Wänden
    [over-units] den Maßen über den Unterschränken
   *[template-to-follow] einer Schablone, die noch kommt,
}
change-shade = { NAME($slab, start: "yes") } hat jetzt den Farbton { $now } (vorher: { $was }).
change-usual-shade = wie üblich
change-finish = { NAME($slab, start: "yes") } ist jetzt { $now } (vorher: { $was }).
change-finish-name = { surface-name }, Versiegelung „{ $sealer }“
change-place = { NAME($slab, start: "yes") } liegt { $now }; vorher { $was }.
change-place-name = { $place ->
    [outdoors] im Freien
    [wet-room] im Nassraum
   *[indoors] innen
}
change-edge = Die Kante { NAME($slab, case: "genitive") } ({ $sides }) ist jetzt: { $now } (vorher: { $was }).
change-rests = Auflage { NAME($slab, case: "genitive") }: { $now } (vorher: { $was }).
change-rests-else = Die Auflager { NAME($slab, case: "genitive") } sind geändert.
change-not-given = nicht genannt
change-overhang = { NAME($slab, start: "yes") } steht an { NAME($side, case: "dative") } { $now } über; vorher { $was }.
change-rails = Vorn und hinten über den Unterschränken { NAME($slab, case: "genitive") } { $rails ->
    [hardwood] sind Traversen aus Hartholz eingebaut
    [steel] sind Traversen aus Stahl eingebaut
   *[cabinet] tragen die Traversen der Schränke
}.
change-legs = Die Beine { NAME($slab, case: "genitive") } stehen an anderer Stelle.
change-cutout-numbered = { $case ->
    [genitive] des Ausschnitts { $number }
    [dative] dem Ausschnitt { $number }
    [accusative] den Ausschnitt { $number }
   *[nominative] der Ausschnitt { $number }
}
change-cutout-left-out = { NAME($cutout, start: "yes") } in { NAME($slab, case: "dative") } entfällt.
change-cutout-added = { NAME($cutout, start: "yes") } kommt in { NAME($slab, case: "dative") } hinzu.
change-cutout-size = { NAME($cutout, start: "yes") } misst { $now }; vorher { $was }.
change-across = { $across } im Durchmesser
change-cutout-place = { NAME($cutout, start: "yes") } ist um { $steps } verschoben: die Mitte liegt { $x } von links und { $y } von vorn.
change-cutout-corners = Die Ecken { NAME($cutout, case: "genitive") } sind auf { $radius } gerundet.
change-cutout-turned = { NAME($cutout, start: "yes") } ist { $degrees ->
    [0] nicht mehr gedreht
   *[other] um { $degrees }° gedreht
}.
change-cutout-open = { NAME($cutout, start: "yes") } läuft durch { NAME($side, case: "accusative") } aus.
change-cutout-rim = { $rim ->
    [covered] Der Rand { NAME($cutout, case: "genitive") } ist verdeckt.
   *[shown] Der Rand { NAME($cutout, case: "genitive") } ist sichtbar und wird bearbeitet.
}
change-cutout-else = { NAME($cutout, start: "yes") } wird anders ausgeführt.
change-relief-place = { NAME($relief, start: "yes") } ist um { $steps } verschoben.
change-relief-depth = { NAME($relief, start: "yes") } ist { $now } tief; vorher waren es { $was }.
change-relief-size = { NAME($relief, start: "yes") } misst { $now }; vorher { $was }.
change-relief-else = { NAME($relief, start: "yes") } wird anders ausgeführt.
change-joined = { NAME($one, start: "yes") } und { NAME($other) } stoßen mit einer Fuge aneinander.
change-delivery = Der Auftrag wird { $now }, nicht mehr { $was }.
change-way-name = { $way ->
    [pallet] auf Palette geliefert
    [own-van] mit unserem Transporter geliefert
    [fitted] geliefert und eingebaut
   *[collect] in der Werkstatt abgeholt
}
change-way-in = Was wir über den Weg ins Haus wissen, ist geändert.
