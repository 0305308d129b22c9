# Prüfungen des Grundrisses: Ausschnitte, Stege, Innenecken, ein Stück.

cutout-off-slab = { NAME($cutout, start: "yes") } reicht über den Rand { NAME($slab, case: "genitive") } hinaus.
cutout-takes-all = { NAME($cutout, start: "yes") } nimmt { NAME($slab, case: "accusative") } ganz ein, die { $length } mal { $width } misst: Es bliebe kein Beton.
cutouts-overlap = { NAME($cutouts, start: "yes") } gehen ineinander über.
two-pieces = Die Ausschnitte teilen { NAME($slab, case: "accusative") } in { $pieces } Stücke.
nothing-left = Die Ausschnitte lassen von { NAME($slab, case: "dative") } keinen Beton übrig.
strip-too-narrow = Der Steg zwischen { NAME($cutout, case: "dative") } und { NAME($faced, case: "dative") } ist { $width } breit; er muss { $limit } breit sein.
strip-made-with-care = { HOWMANY($faced) ->
    [1] Der Steg zwischen { NAME($cutout, case: "dative") } und { NAME($faced, case: "dative") } ist { $width } breit. Wir fertigen das, mit Vorsicht; { $limit } würden den Transport besser überstehen.
   *[other] Die Stege zwischen { NAME($cutout, case: "dative") } und { NAME($faced, case: "dative") } sind { $width } breit oder wenig mehr. Wir fertigen das, mit Vorsicht; { $limit } würden den Transport besser überstehen.
}
corners-of-cutout-too-tight = Die Ecken { NAME($cutout, case: "genitive") } haben einen Radius von { $radius }; unsere Aussparungskörper haben mindestens { $limit }. An einer scharfen Innenecke beginnt ein Riss.
inside-corner-too-tight = { $shape ->
    [l] Die Innenecke des L hat einen Radius von { $radius }; unsere Schalung hat mindestens { $limit }. An einer scharfen Innenecke beginnt ein Riss.
   *[polygon] Die Innenecken der Platte haben einen Radius von { $radius }; unsere Schalung hat mindestens { $limit }. An einer scharfen Innenecke beginnt ein Riss.
}
