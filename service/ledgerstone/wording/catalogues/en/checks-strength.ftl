# Checks of a slab in place.

strength-unknown = We could not work out whether { NAME($slab) } will crack: its shape is too detailed.
rests-not-told = { HOWMANY($slabs) ->
    [1] Tell us what { NAME($slabs) } will rest on. We checked it as carried along its whole length; on its ends alone it may crack.
   *[other] Tell us what { NAME($slabs) } will rest on. We checked them as carried along their whole length; on their ends alone they may crack.
}
tips-over = { NAME($slab, start: "yes") } could tip off its rests by its own weight: too much of it lies beyond them.
rest-under-nothing = { NAME($rest, start: "yes") } stands where { NAME($slab) } has no concrete, so it carries nothing.
rest-of-several = one rest
rest-numbered = { $kind ->
    [units] unit { $number }
   *[rests] rest { $number }
}
cracks-in-place = { under-load }, { NAME($slab) } would crack { $where }.
near-cracking-in-place = { under-load }, { NAME($slab) } holds with little to spare { $where }.
under-load = { $load ->
    [even-load] With a full load spread over it ({ $even })
    [somebody-sitting] With somebody sitting on it ({ $force })
    [somebody-leaning] With somebody leaning on it ({ $force })
    [somebody-standing] With somebody standing on it ({ $force })
    [low-rest] With one rest a little low
   *[own-weight] Under its own weight
}
breaks-after-a-crack = Once cracked, with somebody sitting on it, { NAME($slab) } would break { $where }: nothing in it carries enough across a crack.
free-corner = A person's weight on the free corner could crack { NAME($slab) } { $where }. Have a bracket fitted under the overhang.
level-the-rests = The rests must be level and packed tight before { NAME($slab) } goes down. With one a little low, a person could crack it { $where }.
tips-when-sat-on = Loose on its rests, { NAME($slab) } would tip with somebody sitting { $where }. It must be fixed down.
tips-on-its-plate = Loose on its pedestal, { NAME($slab) } would tip with somebody sitting { $where }. On a plate { $plate } wide it stands by itself; on this one it must be fixed down.
sags = { NAME($slab, start: "yes") } would sag { $sag }; up to { $seen } the eye does not see. Bring its rests closer together, or make it { $thickness } thick.
sags-far = { NAME($slab, start: "yes") } would sag { $sag }; up to { $seen } the eye does not see. Bring its rests closer together, or have it in two pieces that meet over a rest.
sun-on-fixed = Held fast outdoors, { NAME($slab) } could crack as the sun warms its face. Fix it so that it can slide and bow, by up to { $bow }.
