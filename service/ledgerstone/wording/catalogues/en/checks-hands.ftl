# Checks of hands: who carries at the other end, and what was not told of the way in.

hands-needed = { hands-left-where }: you need { $people } to carry in { NAME($slab) }, { $weight }.{ hands-assess }
hands-left-where = { $way ->
    [pallet] Left at the kerb
    [own-van] Brought to your door by our van
   *[collect] Collected
}
hands-assess = { $assess ->
    [yes] { " " }Plan and assess that lift first: these figures are no safe limit.
   *[no] { "" }
}
hands-too-few = It takes { $people } to carry in { NAME($slab) }, { $weight }, and { $count ->
    [0] nobody
   *[other] { $there }
} will be there. Have more people there on the day, or choose fitting.{ hands-assess }
beyond-hands = { NAME($slab, start: "yes") } weighs { $weight }: more than the { $most } that { $people } here carry. It goes on a trolley or by lifting gear, on a firm and level way.
way-in-not-told = Tell us { $missing }. Until then we can't check that it can be carried in.
way-in-part = { $part ->
    [doorway] the narrowest doorway on the way in
    [turn] any tight turn
    [floor] the floor, with any steps
    [steps-or-lift] the steps up, or the size of the lift
   *[steps] any steps
}
