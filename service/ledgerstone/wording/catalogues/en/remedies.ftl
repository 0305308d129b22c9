# Changes that settle what stands in the way, and ways to save: what would be changed, as advice.

move = Move { $moves }.
move-on = On { NAME($slab) }, move { $moves }.
move-each = { NAME($things) } { $steps }
move-step = { $way ->
    [left] { $by } to the left
    [right] { $by } to the right
    [front] { $by } towards the front
   *[back] { $by } towards the back
}
leave-out = Leave out { NAME($things) }.
turn-a-quarter = Turn { NAME($cutout) } a quarter round.
give-round-ends = Give { NAME($cutout) } round ends.
round-corners = Round the corners of { NAME($cutout) } to { $radius }.
run-out = Let { NAME($cutout) } run out through { NAME($side) }.
size-both = { $length } by { $width }
resize = Make { NAME($thing) } { $now } { size-way } instead of { $was }.
size-way = { $size ->
    [length] long
    [width] deep
    [diameter] across
   *[thickness] thick
}
resize-numbered = { $size ->
    [length] Give { NAME($thing) } a length of { $now } instead of { $was }.
    [width] Give { NAME($thing) } a depth of { $now } instead of { $was }.
    [diameter] Give { NAME($thing) } a diameter of { $now } instead of { $was }.
   *[thickness] Give { NAME($thing) } a thickness of { $now } instead of { $was }.
}
resize-both = Make { NAME($thing) } { $now } instead of { $was }.
resize-in-proportion = Make { NAME($thing) } { $now } across instead of { $was }, smaller in proportion.
make-smaller = Make { NAME($thing) } smaller in proportion.
notch-of = the notch of { NAME($slab) }
round-inside-corner = Round the inside corner of { NAME($slab) } to { $radius }.
reshape = { $shape ->
    [rectangle] Make { NAME($slab) } a rectangle, { $length } by { $width }.
   *[l] Make { NAME($slab) } an L, { $length } by { $width }.
}
reshape-as-drawn = Give { NAME($slab) } the outline that is drawn.
keeps-its-size = { NAME($slab, start: "yes") } keeps the size that it has over its units.
reshade = Make { NAME($slab) } in { $shade }.
resurface = Give { NAME($slab) } the { $surface } surface.
refinish = { $surface ->
    [same] Give { NAME($slab) } the { $sealer } sealer.
   *[other] Give { NAME($slab) } the { $surface } surface and { $sealer } sealer.
}
edge-resize = Make the { edge-profile } along { NAME($side) } of { NAME($slab) } { $now } instead of { $was }.
edge-without-drip = Leave out the drip beneath { NAME($side) } of { NAME($slab) }.
edge-reprofile = Make the edge at { NAME($side) } of { NAME($slab) } { edge-profile }.
relief-resize = { $size ->
    [length] Make { NAME($relief) } { $now } long instead of { $was }.
    [width] Make { NAME($relief) } { $now } from front to back instead of { $was }.
   *[diameter] Make { NAME($relief) } { $now } across instead of { $was }.
}
relief-redepth = Make { NAME($relief) } { $now } deep instead of { $was }.
cut-in-pieces = { $given ->
    [lengths] Make { NAME($slab) } of { pieces-count } pieces, { $sizes } long, with { joins-between }.
    [depths] Make { NAME($slab) } of { pieces-count } pieces, { $sizes } deep, with { joins-between }.
   *[both] Make { NAME($slab) } of { pieces-count } pieces, { $sizes }, with { joins-between }.
}
pieces-count = { $count ->
    [2] two
    [3] three
    [4] four
    [5] five
    [6] six
    [7] seven
    [8] eight
   *[other] { $count }
}
joins-between = { $count ->
    [2] a join between them
   *[other] joins between them
}
cut-through = It runs through the middle of { NAME($cutouts) }.
carry-the-join = { $carrier ->
    [rail] Fit a rail across the unit beneath each side of the join.
    [legs] Stand both sides of the join on two more legs.
   *[bearer] Carry both sides of the join on a bearer.
}
piece-numbered = piece { $number } of { NAME($slab) }
piece-placed = { $place ->
    [left] the left piece of { NAME($slab) }
    [right] the right piece of { NAME($slab) }
    [front] the front piece of { NAME($slab) }
   *[back] the back piece of { NAME($slab) }
}
overhang = Let { NAME($side) } overhang { $now } instead of { $was }.
fix-down = Have { NAME($slab) } fixed down to its rests.
fit-rails = { $rails ->
    [hardwood] Fit hardwood rails across the front and the back of the units of { NAME($slab) }.
    [steel] Fit steel rails across the front and the back of the units of { NAME($slab) }.
   *[cabinet] Fit cabinet rails across the front and the back of the units of { NAME($slab) }.
}
carry-on-frame-too = Carry { NAME($slab) } on its frame at { NAME($sides) } too.
carry-on = { $rests ->
    [frame] Carry { NAME($slab) } on a frame under its sides. You have the frame made: it is not in the price.
    [full] Bed { NAME($slab) } all over on a base that does not bend, such as masonry: it is not in the price.
    [legs] Carry { NAME($slab) } on four legs near its corners.
   *[other] Change what { NAME($slab) } rests on.
}
exchange-units = Let units { $units } of { NAME($slab) } change places.
fit-side-panel = { $end ->
    [both] Fit a side panel of { $panel } under each end of { NAME($slab) }.
    [left] Fit a side panel of { $panel } under the left end of { NAME($slab) }.
   *[right] Fit a side panel of { $panel } under the right end of { NAME($slab) }.
}
two-more-legs = Stand { NAME($slab) } on two more legs, halfway along its front and its back.
leg = the { nth }leg
legs = the legs
legs-at = Stand the legs of { NAME($slab) } at { $left } from its left, and { $front } from its front.
make-plain = Make { NAME($slab) } a plain slab, { $thickness } thick, bedded all over on a base that does not bend.
make-plain-rectangle = Make { NAME($slab) } a plain slab, { $length } by { $width }, { $thickness } thick, bedded all over on a base that does not bend.
leave-out-joins = { $count ->
    [1] Leave out the join whose side is gone: we agree with you how the pieces meet.
   *[other] Leave out the joins whose sides are gone: we agree with you how the pieces meet.
}
cure-in-tent = Have it cured in our heated tent.
leave-out-tent = Leave out the heated tent.
deliver-by = { $way ->
    [collect] Collect the order from the workshop.
    [pallet] Have it delivered on a pallet.
    [own-van] Have it delivered by our own van.
   *[fitted] Have it delivered and fitted.
}
leave-out-tile = Leave the sample tile out, and the wait for your yes to it.
give-us-until = Give us until { $day }.

# Why no change was found.
no-fix-found = We looked for a change that would do, and found none. Ask us: we may know one. What stands in the way: { $stop }
no-room-together = { NAME($cutouts, start: "yes") } do not all have room beside one another on { NAME($slab) }.
cast-in-one-piece = { $shape ->
    [round] { NAME($slab, start: "yes") } is round and is cast in one piece; our table takes { $length } by { $width }.
   *[other] { NAME($slab, start: "yes") } is of this shape and is cast in one piece; our table takes { $length } by { $width }.
}
takes-too-much = { $way ->
    [long] { NAME($cutout, start: "yes") } takes { $takes } from left to right with the concrete beside it; { NAME($slab) } is { $size } long.
   *[deep] { NAME($cutout, start: "yes") } takes { $takes } from front to back with the concrete beside it; { NAME($slab) } is { $size } deep.
}
no-room-for-cutout = { $over ->
    [units] { NAME($cutout, start: "yes") } has no room on { NAME($slab) } with concrete enough round it, nor clear of the sides of the units.
   *[others] { NAME($cutout, start: "yes") } has no room on { NAME($slab) } with concrete enough round it.
}
