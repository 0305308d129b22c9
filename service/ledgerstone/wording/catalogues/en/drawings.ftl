# What stands on drawings beside the plan: in place of one that is missing, and on the maker's own.

drawing-missing = This drawing is missing
drawing-missing-text = It could not be made here. Nothing else depends on it: ask us for one.
drawing-unknown-letters = * stands for a letter that we cannot show here.
drawing-view = Slab

# How far the concrete is used, for the maker.
stress-title = How far the concrete is used: { NAME($slab) }
stress-no-shape = Nothing is worked out until the slab’s shape can be made.
stress-over = over { $percent }
stress-painted = Painted: the largest stress of any case, in per cent of what is trusted, { $rests ->
    [told] in place and on its pallet
   *[not-told] on its pallet; no rests were told
}. Nearest to its limit of all cases: { stress-loading }, { $percent }, { $x } from the left, { $y } from the front.
stress-loading = { $loading ->
    [lifted-out] lifted out
    [turned] turned
    [on-edge] on edge
    [carried] carried
    [on-bearers] on bearers
    [flat-by-the-ends] flat by the ends
    [own-weight] own weight
    [even-load] even load
    [somebody-sitting] somebody sitting
    [somebody-standing] somebody standing
    [somebody-leaning] somebody leaning
    [free-corner] free corner
    [low-rest] low rest
    [low-rest-and-sitting] low rest and sitting
   *[after-a-crack] after a crack
}
