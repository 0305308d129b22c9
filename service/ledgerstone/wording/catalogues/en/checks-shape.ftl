# Checks of a slab's plan: openings, strips, inside corners, one piece.

cutout-off-slab = { NAME($cutout, start: "yes") } reaches past the edge of { NAME($slab) }.
cutout-takes-all = { NAME($cutout, start: "yes") } takes all of { NAME($slab) }, which is { $length } by { $width }: no concrete would be left.
cutouts-overlap = { HOWMANY($cutouts) ->
    [2] { NAME($cutouts, start: "yes") } run into each other.
   *[other] { NAME($cutouts, start: "yes") } run into one another.
}
two-pieces = The cut-outs cut { NAME($slab) } into { $pieces } pieces.
nothing-left = The cut-outs leave no concrete of { NAME($slab) }.
strip-too-narrow = The strip between { NAME($cutout) } and { NAME($faced) } is { $width } wide; it needs { $limit }.
strip-made-with-care = { HOWMANY($faced) ->
    [1] The strip between { NAME($cutout) } and { NAME($faced) } is { $width } wide. We make it, with care; { $limit } would travel better.
   *[other] The strips between { NAME($cutout) } and { NAME($faced) } are { $width } wide or little more. We make them, with care; { $limit } would travel better.
}
corners-of-cutout-too-tight = The corners of { NAME($cutout) } have a radius of { $radius }; our formers make { $limit } or more. A sharp inside corner is where a crack starts.
inside-corner-too-tight = { $shape ->
    [l] The L's inside corner has a radius of { $radius }; our formers make { $limit } or more. A sharp inside corner is where a crack starts.
   *[polygon] The slab's inside corners have a radius of { $radius }; our formers make { $limit } or more. A sharp inside corner is where a crack starts.
}
