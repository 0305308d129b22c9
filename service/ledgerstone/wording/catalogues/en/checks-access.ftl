# Checks of the way in: doorway, turn, lift and steps.

doorway-too-narrow = On edge and padded, { NAME($slab) } is { $across } across; the doorway is { $doorway } wide.
turn-only-by-geometry = { NAME($slab, start: "yes") } gets round the turn by geometry alone, and whoever carries it needs room too. Try it with a batten of that length, or name another way in.
turn-narrower-than-slab = { $ceiling_given ->
    [yes] Padded, { NAME($slab) } is wider than the way round the turn.
   *[no] Padded, { NAME($slab) } is wider than the way round the turn. Tell us the ceiling height: it may pass tilted.
}
turn-too-tight = { $ceiling_given ->
    [yes] { NAME($slab, start: "yes") } is { $length } long; level and on edge, no more than { $most } gets round the turn.
   *[no] { NAME($slab, start: "yes") } is { $length } long; level and on edge, no more than { $most } gets round the turn. Tell us the ceiling height: it may pass tilted.
}
lift-too-small = { NAME($slab, start: "yes") } does not go into the lift, level or tilted. If there are steps that it can be carried up, tell us of them.
lift-overloaded = { NAME($slab, start: "yes") } and two people weigh { $together } together; the lift is rated for { $rated }.
too-heavy-for-steps = { NAME($slab, start: "yes") } weighs { $weight }, and up steps { $people } here carry no more than { $most }.
