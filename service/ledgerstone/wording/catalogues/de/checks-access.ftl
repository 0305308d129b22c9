# Prüfungen des Wegs ins Haus: Tür, Ecke, Aufzug und Stufen.

doorway-too-narrow = Hochkant und gepolstert ist { NAME($slab) } { $across } breit; die Tür ist { $doorway } breit.
turn-only-by-geometry = { NAME($slab, start: "yes") } kommt nur rechnerisch um die Ecke, und wer sie trägt, braucht auch Platz. Probieren Sie es mit einer Latte dieser Länge, oder nennen Sie einen anderen Weg.
turn-narrower-than-slab = { $ceiling_given ->
    [yes] Gepolstert ist { NAME($slab) } breiter als der Weg um die Ecke.
   *[no] Gepolstert ist { NAME($slab) } breiter als der Weg um die Ecke. Nennen Sie uns die Deckenhöhe: Gekippt passt sie vielleicht.
}
turn-too-tight = { $ceiling_given ->
    [yes] { NAME($slab, start: "yes") } ist { $length } lang; waagerecht und hochkant kommen höchstens { $most } um die Ecke.
   *[no] { NAME($slab, start: "yes") } ist { $length } lang; waagerecht und hochkant kommen höchstens { $most } um die Ecke. Nennen Sie uns die Deckenhöhe: Gekippt passt sie vielleicht.
}
lift-too-small = { NAME($slab, start: "yes") } passt weder waagerecht noch gekippt in den Aufzug. Wenn sie sich über eine Treppe tragen lässt, nennen Sie uns die Stufen.
lift-overloaded = { NAME($slab, start: "yes") } und zwei Personen wiegen zusammen { $together }; der Aufzug ist für { $rated } zugelassen.
too-heavy-for-steps = { NAME($slab, start: "yes") } wiegt { $weight }; über Stufen tragen bei uns { $people } höchstens { $most }.
