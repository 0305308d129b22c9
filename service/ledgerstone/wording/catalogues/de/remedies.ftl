# Änderungen, die Hindernisse beheben, und Wege zu sparen: was geändert würde, als Rat.

move = Verschieben Sie { $moves }.
move-on = Verschieben Sie unter { NAME($slab, case: "dative") } { $moves }.
move-each = { NAME($things, case: "accusative") } um { $steps }
move-step = { $way ->
    [left] { $by } nach links
    [right] { $by } nach rechts
    [front] { $by } nach vorn
   *[back] { $by } nach hinten
}
leave-out = Lassen Sie { NAME($things, case: "accusative") } weg.
turn-a-quarter = Drehen Sie { NAME($cutout, case: "accusative") } um eine Vierteldrehung.
give-round-ends = Geben Sie { NAME($cutout, case: "dative") } runde Enden.
round-corners = Runden Sie die Ecken { NAME($cutout, case: "genitive") } auf { $radius }.
run-out = Lassen Sie { NAME($cutout, case: "accusative") } durch { NAME($side, case: "accusative") } hinauslaufen.
size-both = { $length } mal { $width }
resize = Machen Sie { NAME($thing, case: "accusative") } { $now } { size-way } statt { $was }.
size-way = { $size ->
    [length] lang
    [width] tief
    [diameter] groß im Durchmesser
   *[thickness] dick
}
resize-numbered = { $size ->
    [length] Geben Sie { NAME($thing, case: "dative") } eine Länge von { $now } statt { $was }.
    [width] Geben Sie { NAME($thing, case: "dative") } eine Tiefe von { $now } statt { $was }.
    [diameter] Geben Sie { NAME($thing, case: "dative") } einen Durchmesser von { $now } statt { $was }.
   *[thickness] Geben Sie { NAME($thing, case: "dative") } eine Dicke von { $now } statt { $was }.
}
resize-both = Machen Sie { NAME($thing, case: "accusative") } { $now } groß statt { $was }.
resize-in-proportion = Machen Sie { NAME($thing, case: "accusative") } { $now } breit statt { $was }, im selben Verhältnis kleiner.
make-smaller = Machen Sie { NAME($thing, case: "accusative") } im selben Verhältnis kleiner.
notch-of = { $case ->
    [genitive] der Aussparung { NAME($slab, case: "genitive") }
    [dative] der Aussparung { NAME($slab, case: "genitive") }
   *[nominative] die Aussparung { NAME($slab, case: "genitive") }
}
round-inside-corner = Runden Sie die Innenecke { NAME($slab, case: "genitive") } auf { $radius }.
reshape = { $shape ->
    [rectangle] Machen Sie { NAME($slab, case: "accusative") } zu einem Rechteck, { $length } mal { $width }.
   *[l] Machen Sie { NAME($slab, case: "accusative") } zu einem L, { $length } mal { $width }.
}
reshape-as-drawn = Geben Sie { NAME($slab, case: "dative") } den gezeichneten Umriss.
keeps-its-size = { NAME($slab, start: "yes") } behält die Größe, die sie über ihren Unterschränken hat.
reshade = Nehmen Sie für { NAME($slab, case: "accusative") } den Farbton { $shade }.
resurface = Nehmen Sie für { NAME($slab, case: "accusative") } die Oberfläche „{ surface-name }“.
refinish = { $surface ->
    [same] Nehmen Sie für { NAME($slab, case: "accusative") } die Versiegelung „{ $sealer }“.
   *[other] Nehmen Sie für { NAME($slab, case: "accusative") } die Oberfläche „{ surface-name }“ und die Versiegelung „{ $sealer }“.
}
edge-resize = { edge-profile } an { NAME($side, case: "dative") } { NAME($slab, case: "genitive") }: { $now } statt { $was }.
edge-without-drip = Lassen Sie die Wassernase unter { NAME($side, case: "dative") } { NAME($slab, case: "genitive") } weg.
edge-reprofile = Nehmen Sie an { NAME($side, case: "dative") } { NAME($slab, case: "genitive") } { $profile ->
    [bevel] eine Fase
    [round] eine Rundung
    [wall] eine Wandseite
   *[square] eine gerade Kante
}.
relief-resize = { $size ->
    [length] Machen Sie { NAME($relief, case: "accusative") } { $now } lang statt { $was }.
    [width] Machen Sie { NAME($relief, case: "accusative") } von vorn nach hinten { $now } lang statt { $was }.
   *[diameter] Machen Sie { NAME($relief, case: "accusative") } { $now } groß im Durchmesser statt { $was }.
}
relief-redepth = Machen Sie { NAME($relief, case: "accusative") } { $now } tief statt { $was }.
cut-in-pieces = { $given ->
    [lengths] Fertigen Sie { NAME($slab, case: "accusative") } aus { pieces-count } Stücken von { $sizes } Länge, mit { joins-between }.
    [depths] Fertigen Sie { NAME($slab, case: "accusative") } aus { pieces-count } Stücken von { $sizes } Tiefe, mit { joins-between }.
   *[both] Fertigen Sie { NAME($slab, case: "accusative") } aus { pieces-count } Stücken, { $sizes }, mit { joins-between }.
}
pieces-count = { $count ->
    [2] zwei
    [3] drei
    [4] vier
    [5] fünf
    [6] sechs
    [7] sieben
    [8] acht
   *[other] { $count }
}
joins-between = { $count ->
    [2] einer Fuge dazwischen
   *[other] Fugen dazwischen
}
cut-through = Sie läuft mitten durch { NAME($cutouts, case: "accusative") }.
carry-the-join = { $carrier ->
    [rail] Bauen Sie beiderseits der Fuge eine Traverse über dem Unterschrank ein.
    [legs] Stellen Sie beide Seiten der Fuge auf zwei weitere Beine.
   *[bearer] Legen Sie beide Seiten der Fuge auf einen Träger.
}
piece-numbered = { $case ->
    [genitive] des Stücks { $number } { NAME($slab, case: "genitive") }
    [dative] dem Stück { $number } { NAME($slab, case: "genitive") }
   *[nominative] das Stück { $number } { NAME($slab, case: "genitive") }
}
piece-placed = { $case ->
    [genitive] des { piece-place }en Stücks { NAME($slab, case: "genitive") }
    [dative] dem { piece-place }en Stück { NAME($slab, case: "genitive") }
   *[nominative] das { piece-place }e Stück { NAME($slab, case: "genitive") }
}
piece-place = { $place ->
    [left] link
    [right] recht
    [front] vorder
   *[back] hinter
}
overhang = Lassen Sie { NAME($side, case: "accusative") } { $now } überstehen statt { $was }.
fix-down = Lassen Sie { NAME($slab, case: "accusative") } auf ihren Auflagern befestigen.
fit-rails = { $rails ->
    [hardwood] Bauen Sie vorn und hinten über den Unterschränken { NAME($slab, case: "genitive") } Traversen aus Hartholz ein.
    [steel] Bauen Sie vorn und hinten über den Unterschränken { NAME($slab, case: "genitive") } Traversen aus Stahl ein.
   *[cabinet] Bauen Sie vorn und hinten über den Unterschränken { NAME($slab, case: "genitive") } Schranktraversen ein.
}
carry-on-frame-too = Legen Sie { NAME($slab, case: "accusative") } auch an { NAME($sides, case: "dative") } auf ihren Rahmen.
carry-on = { $rests ->
    [frame] Legen Sie { NAME($slab, case: "accusative") } auf einen Rahmen unter ihren Seiten. Den Rahmen lassen Sie fertigen: Er ist nicht im Preis.
    [full] Betten Sie { NAME($slab, case: "accusative") } vollflächig auf einen Unterbau, der sich nicht durchbiegt, etwa aus Mauerwerk: Er ist nicht im Preis.
    [legs] Stellen Sie { NAME($slab, case: "accusative") } auf vier Beine nahe ihren Ecken.
   *[other] Ändern Sie, worauf { NAME($slab) } liegt.
}
exchange-units = Tauschen Sie die Unterschränke { $units } { NAME($slab, case: "genitive") } gegeneinander aus.
fit-side-panel = { $end ->
    [both] Bauen Sie unter jedes Ende { NAME($slab, case: "genitive") } eine Seitenwange von { $panel } ein.
    [left] Bauen Sie unter das linke Ende { NAME($slab, case: "genitive") } eine Seitenwange von { $panel } ein.
   *[right] Bauen Sie unter das rechte Ende { NAME($slab, case: "genitive") } eine Seitenwange von { $panel } ein.
}
two-more-legs = Stellen Sie { NAME($slab, case: "accusative") } auf zwei weitere Beine, in der Mitte ihrer Vorder- und ihrer Hinterkante.
leg = { $case ->
    [genitive] des { nth-stem-en }Beins
    [dative] dem { nth-stem-en }Bein
   *[nominative] das { nth-stem-e }Bein
}
legs = { $case ->
    [genitive] der Beine
    [dative] den Beinen
   *[nominative] die Beine
}
legs-at = Stellen Sie die Beine { NAME($slab, case: "genitive") } { $left } von links und { $front } von vorn auf.
make-plain = Machen Sie { NAME($slab, case: "accusative") } zu einer einfachen Platte, { $thickness } dick, vollflächig auf einem Unterbau, der sich nicht durchbiegt.
make-plain-rectangle = Machen Sie { NAME($slab, case: "accusative") } zu einer einfachen Platte, { $length } mal { $width }, { $thickness } dick, vollflächig auf einem Unterbau, der sich nicht durchbiegt.
leave-out-joins = { $count ->
    [1] Lassen Sie die Fuge weg, deren Seite es nicht mehr gibt: Wie die Stücke zusammenkommen, stimmen wir mit Ihnen ab.
   *[other] Lassen Sie die Fugen weg, deren Seiten es nicht mehr gibt: Wie die Stücke zusammenkommen, stimmen wir mit Ihnen ab.
}
cure-in-tent = Lassen Sie es in unserem beheizten Zelt erhärten.
leave-out-tent = Verzichten Sie auf das beheizte Zelt.
deliver-by = { $way ->
    [collect] Holen Sie die Bestellung in der Werkstatt ab.
    [pallet] Lassen Sie es auf Palette liefern.
    [own-van] Lassen Sie es mit unserem Transporter liefern.
   *[fitted] Lassen Sie es liefern und einbauen.
}
leave-out-tile = Verzichten Sie auf die Musterplatte und ihre Freigabe.
give-us-until = Geben Sie uns Zeit bis zum { $day }.

# Warum keine Änderung gefunden wurde.
no-fix-found = Wir haben nach einer passenden Änderung gesucht und keine gefunden. Fragen Sie uns: Vielleicht kennen wir eine. Was im Weg steht: { $stop }
no-room-together = { NAME($cutouts, start: "yes") } haben auf { NAME($slab, case: "dative") } nicht alle nebeneinander Platz.
cast-in-one-piece = { $shape ->
    [round] { NAME($slab, start: "yes") } ist rund und wird in einem Stück gegossen; auf unseren Tisch passen { $length } mal { $width }.
   *[other] { NAME($slab, start: "yes") } wird bei dieser Form in einem Stück gegossen; auf unseren Tisch passen { $length } mal { $width }.
}
takes-too-much = { $way ->
    [long] { NAME($cutout, start: "yes") } braucht von links nach rechts samt dem Beton daneben { $takes }; { NAME($slab) } ist { $size } lang.
   *[deep] { NAME($cutout, start: "yes") } braucht von vorn nach hinten samt dem Beton daneben { $takes }; { NAME($slab) } ist { $size } tief.
}
no-room-for-cutout = { $over ->
    [units] Für { NAME($cutout, case: "accusative") } ist auf { NAME($slab, case: "dative") } kein Platz mit genug Beton ringsum und frei von den Seitenwänden der Unterschränke.
   *[others] Für { NAME($cutout, case: "accusative") } ist auf { NAME($slab, case: "dative") } kein Platz mit genug Beton ringsum.
}
