# Prüfungen des Orts: Frost und Nässe, Versiegelungen, Wassernasen und Gefälle; und des Alters bei der Lieferung.

mix-for-place = { mix-place } { mix-is }. Wir vereinbaren vor dem Guss eine andere und ihren Preis mit Ihnen; sonst { mix-until }.
mix-until = { $frost ->
    [yes] halten Sie die Platte im Winter trocken
   *[no] lassen Sie kein Wasser darauf stehen
}
mix-place = { $place ->
    [outdoors] Im Freien
    [wet-room] Im Nassraum
   *[indoors] Im Innenraum
}
mix-is = { $unproven ->
    [yes] { HOWMANY($short) ->
        [0] ist unsere übliche Mischung nicht auf Frost geprüft
       *[other] ist unsere übliche Mischung nicht auf Frost geprüft und bleibt hinter der Norm zurück: { $short }
    }
   *[no] bleibt unsere übliche Mischung hinter der Norm zurück: { $short }
}
mix-has-water = Wasser { $water } des Zements (höchstens { $limit })
mix-has-strength = Druckfestigkeit { $strength } (mindestens { $limit })
mix-has-cement = { $masses ->
    [lb] Zement { $cement_lb } lb/yd³ (mindestens { $limit_lb })
   *[kg] Zement { $cement } kg/m³ (mindestens { $limit })
}
sealer-not-for-place = { $others ->
    [some] Die Versiegelung „{ $sealer }“ ist nicht für { sealer-place } bestimmt, wo { NAME($slab) } hinkommt.
   *[none] Die Versiegelung „{ $sealer }“ ist nicht für { sealer-place } bestimmt, wo { NAME($slab) } hinkommt. Fragen Sie uns nach einer geeigneten.
}
sealer-place = { $place ->
    [outdoors] den Außenbereich
    [wet-room] Nassräume
   *[indoors] Innenräume
}
drip-advised = Wählen Sie eine Wassernase unter den freien Kanten: Sie hält Regen von dem ab, was darunter steht.
fall-advised = { HOWMANY($slabs) ->
    [1] Verlegen Sie { NAME($slabs, case: "accusative") } mit etwa { $fall } Gefälle über die Tiefe, damit das Wasser abläuft.
   *[other] Verlegen Sie { NAME($slabs, case: "accusative") } mit einem Gefälle von 1 zu 60, bis zu { $fall } über die Tiefe, damit das Wasser abläuft.
}
dark-outdoors = Im Freien kann { $shades } weiß ausblühen und heller werden; ein hellerer Farbton verbirgt es.

young-for-people = Vor dem { $day } soll niemand auf { NAME($slab, case: "dative") } { $doing }: Ihr Beton wird noch fester.
person-doing = { $does ->
    [somebody-standing] stehen
    [somebody-sitting] sitzen
   *[somebody-leaning] sich aufstützen
}
