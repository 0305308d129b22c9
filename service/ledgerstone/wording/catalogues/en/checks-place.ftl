# Checks of the place: frost and wet, sealers, drips and falls, and of a slab's age when it arrives.

mix-for-place = { mix-place }, our usual mix { mix-is }. We agree another with you, or { mix-until }.
mix-until = { $frost ->
    [yes] keep it dry in winter
   *[no] keep it drained
}
mix-place = { $place ->
    [outdoors] Outdoors
    [wet-room] In a wet room
   *[indoors] Indoors
}
mix-is = { $unproven ->
    [yes] { HOWMANY($short) ->
        [0] is not proven against frost
       *[other] is not proven against frost and short of the standard: { $short }
    }
   *[no] falls short of the standard: { $short }
}
mix-has-water = water { $water } of the cement (up to { $limit })
mix-has-strength = strength { $strength } ({ $limit } or more)
mix-has-cement = { $masses ->
    [lb] cement { $cement_lb } lb/yd³ ({ $limit_lb } or more)
   *[kg] cement { $cement } kg/m³ ({ $limit } or more)
}
sealer-not-for-place = { $others ->
    [some] The sealer “{ $sealer }” is not for { sealer-place }, where { NAME($slab) } goes.
   *[none] The sealer “{ $sealer }” is not for { sealer-place }, where { NAME($slab) } goes. Ask us for one that is.
}
sealer-place = { $place ->
    [outdoors] outdoors
    [wet-room] a wet room
   *[indoors] use indoors
}
drip-advised = Add a drip groove under the free edges: it keeps rain off what is below.
fall-advised = { HOWMANY($slabs) ->
    [1] Lay { NAME($slabs) } with a fall of about { $fall } across, so that water runs off it.
   *[other] Lay { NAME($slabs) } with a fall of 1 in 60, up to { $fall } across, so that water runs off them.
}
dark-outdoors = Outdoors { $shades } may bloom white and grow paler; a lighter shade hides it.

young-for-people = Nobody { $doing } on { NAME($slab) } before { $day }: its concrete is still gaining strength.
person-doing = { $does ->
    [somebody-standing] stands
    [somebody-sitting] sits
   *[somebody-leaning] leans
}
