# Checks of steel and aggregate.

grains-stick = { NAME($slab, start: "yes") } lets grains of up to { $limit } into its thinnest or narrowest place; our concrete has grains of { $largest }.
grains-stick-in-strip = The { $width } strip beside { NAME($cutout) } is too narrow for our concrete to flow into.
steel-rusts = { $thicker ->
    [helps] { steel-place } steel in { NAME($slab) } would rust: it has { $kept } of concrete over it and needs { $wanted }.
   *[never-helps] { steel-place } steel in { NAME($slab) } would rust: it has { $kept } of concrete over it and needs { $wanted }. No thickness that we cast is enough there: have it indoors, or ask us for other steel.
}
steel-place = { $place ->
    [outdoors] Outdoors
    [wet-room] In a wet room
   *[indoors] Indoors
}
cover-too-thin = { NAME($slab, start: "yes") } keeps { $kept } of concrete over its steel where { $wanted } is usual. It may show through a dark face; a thicker slab hides it.
