# Checks of what one piece may measure, and of its pour.

too-big-for-table = { NAME($slab, start: "yes") } is { $length } by { $width }; the largest piece we cast is { $most_length } by { $most_width }.
too-thin = { NAME($slab, start: "yes") } is { $thickness } thick; the thinnest we cast is { $limit }.
too-thick = { NAME($slab, start: "yes") } is { $thickness } thick; the thickest we cast is { $limit }.
odd-thickness = { $thickness } is not one of our usual thicknesses ({ $usual }); mould sides are cut for it.
thickness-taken = { $usual ->
    [no] You did not say how thick: our usual does not do here, so we took { $thickness }.
   *[yes] You did not say how thick: we took { $thickness }, our usual.
}
left-to-us = Where you did not say, we took: { $things }.
taken-place = { $place ->
    [outdoors] outdoors
    [wet-room] a wet room
   *[indoors] indoors
}
taken-shade = shade “{ $shade }”
taken-sealer = { $sealer } sealer
taken-edges = square edges
taken-units = base units in usual widths (from the left { $units })
taken-units-under = base units under { NAME($slab) } (from the left { $units })
taken-unit = { $use ->
    [gap] a filler of { $width }
   *[unit] { $count ->
        [one] one of { $width }
       *[other] { $count } of { $width }
    }
}
taken-rims = the rim seen and finished ({ $cutouts })
taken-delivery = collected by you
sliver = { NAME($slab, start: "yes") } is { $width } across; the narrowest we cast is { $limit }.
neck-too-narrow = { NAME($slab, start: "yes") } has a place that is narrower than it is thick, { $thickness }: it would break off.
pour-too-slow = { NAME($slab, start: "yes") } takes { $batches } batches of concrete: the last would come { $minutes } minutes after the first, and ours stays open for { $open_minutes }.
