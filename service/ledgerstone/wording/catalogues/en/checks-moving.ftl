# Checks of moving a slab.

cracks-when-moved = { moved-when }, { NAME($slab) } would crack { $where }.
near-cracking-when-moved = { moved-when }, { NAME($slab) } comes near to cracking { $where }. We allow for that; nobody else should lift it flat.
moved-when = { $moved ->
    [lifted-out] Lifted out of its mould { days-after-casting }
    [turned] Turned up on edge { days-after-casting }
    [on-edge] Held on edge { days-after-casting }
    [carried] Carried { days-after-casting }
   *[on-bearers] Lying on its pallet
}
days-after-casting = { $days ->
    [1] { $days } day after casting
   *[other] { $days } days after casting
}
too-lopsided-to-turn = { NAME($slab, start: "yes") } is too lopsided to turn safely: its weight lies to one side.
too-heavy-to-handle = { NAME($slab, start: "yes") } weighs { $weight }; with its mould that is more than the { $most } we can turn.
carry-on-edge = Carry { NAME($slab) } on edge. Carried flat, it could crack { $where }.
carry-on-edge-or-it-tips = Carry { NAME($slab) } on edge. Carried flat, it could tip.
young-concrete = { HOWMANY($slabs) ->
    [1] { NAME($slabs, start: "yes") } leaves its mould young. We break a test strip first, to be sure that it is strong enough.
   *[other] { NAME($slabs, start: "yes") } leave their moulds young. We break a test strip first, to be sure that it is strong enough.
}
young-concrete-waits = { HOWMANY($slabs) ->
    [1] { NAME($slabs, start: "yes") } leaves its mould only once a test strip of its concrete has passed.
   *[other] { NAME($slabs, start: "yes") } leave their moulds only once a test strip of their concrete has passed.
}
