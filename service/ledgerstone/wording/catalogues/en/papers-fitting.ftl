# The receiving and fitting sheet. Common practice, no source, where none is named; it defers to the
# rules of the place and to licensed people, and calls no load safe.

fitting-title = Receiving and fitting
fitting-signing = { $way ->
    [pallet] Before you sign for it
   *[other] Before you take it over
}
fitting-open = { $way ->
    [pallet] Open every crate while the driver waits. Look at each face, edge and corner.
    [collect] Unwrap it here with us before it is loaded. Look at each face, edge and corner.
   *[other] Unwrap it with us before we leave. Look at each face, edge and corner.
}
fitting-damage = { $way ->
    [pallet] Photograph what is damaged, and write it on the carrier's paper before you sign it.
   *[other] Photograph what is damaged, and show us.
}
fitting-ring = Ring us the same day. Do not fit a slab that you would not keep.
fitting-weights = What each piece weighs
fitting-carrying = Carrying
fitting-on-edge = Carry every slab on edge, its long side down, and set it down on timber or foam. Never carry it flat by its ends.
fitting-way = Walk the whole way first, with its turns, steps and doors. Decide who leads.
fitting-gloves = Hands in gloves, feet in boots; nobody beneath a slab that is being raised.
fitting-assess = Plan and assess each lift for the people who do it, as local rules ask. No weight on this sheet is one that is safe to lift.
fitting-until = Until it is fitted, keep it on edge, leaning a little, dry, and tied back.
fitting-dries = Keep air at both faces until it is laid, and seal both: dried on one face alone, the longest would bow by about { $bow }.
fitting-grip = { $first } and { $last } from the ends of its long side
fitting-grip-at = Hold { $name } at
fitting-base = The base
fitting-level = Level each way: at most { $most } under a straight edge. Shim the base, not the slab.
fitting-units = Units fixed to the wall and to each other, solid-sided, with rails front and back.
fitting-solid-base = A base that does not bend, such as masonry, under all of { NAME($slabs) }. A board on cabinets bends with them, and is not enough.
fitting-rests-not-given = We were not told what some of it rests on: ask us before it is laid.
fitting-fall = Outdoors with a fall, so that no water stands on it, and clear of the ground.
fitting-dry-run = Lay it dry first. Look at every gap, then lift it again and bed it.
fitting-bedding = Bedding
fitting-bed-not-given = not told to us: ask before you bed it
fitting-bed = { $fixed ->
    [yes] on { $rests }. { fitting-bed-of } It is fixed down.
   *[no] on { $rests }. { fitting-bed-of } It lies loose, held by its weight.
}
fitting-bed-of = { $kind ->
    [units] Dots of silicone on the units' rails, one at every { $every }; no hard adhesive.
    [frame] A thin soft strip or dots of silicone all along the frame.
    [ends] A soft pad over the whole bearing at each end.
    [legs] A soft pad on each leg; all of them touch before anything is put on it.
    [ledges] A soft strip along each ledge.
    [pedestal] A soft pad over the whole plate.
   *[full] A slip layer, such as a sheet of polythene, then a full even bed beneath it.
}
fitting-bed-hearth = Base, slip layer and bed are as { hearth-installer } directs. Never polythene, silicone or foam by a fire.
fitting-gaps = Gaps
fitting-wall = Leave { $gap } to every wall, and fill it with silicone, never with mortar or grout.
fitting-wall-hearth = Leave the gap round a hearth open, or fill it as { hearth-installer } directs: it grows when it is hot. Never silicone by a fire.
fitting-join = Leave { $gap } at the join of { NAME($one) } and { NAME($other) }.
fitting-hot = A hot appliance hangs from its own frame and touches no concrete: { $clear } clear all round at the least, or what its maker asks for. Never grout it in.
fitting-seal = Soft silicone at every sink and hob; let it cure before anything is used.
fitting-cutting = Cutting
fitting-cut-dry = Never cut, grind or drill it dry: the dust holds silica, which harms lungs for good.
fitting-cut-ask = Better not at all: ask us, and we cast or cut it here.
fitting-cut-wet = What must be done on site is done wet, with extraction and the mask that local rules ask for, outdoors where that is possible.
fitting-cut-strip = A cut through a thin strip, or past a corner of an opening, cracks it. Ask us first.
fitting-about = About this order
fitting-decides = Who decides
fitting-gas = Gas, where there is any: a gas engineer registered for it where you live connects and tests it, and says what clear space and vents it needs.
fitting-electrics = Electrics, and anything electric near water: a qualified electrician.
fitting-fire = Fires and stoves: size and build of a hearth are { hearth-installer }'s, or { hearth-authority }'s. This sheet is no approval of them.
fitting-bears = Walls, floors and cabinets: ask their supplier or builder what load they take.
fitting-hot-maker = Hot appliances: their maker's own instructions on clear space come before this sheet.
