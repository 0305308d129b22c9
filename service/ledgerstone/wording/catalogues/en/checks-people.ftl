# Checks of hands: who carries at the other end, and what was not told of the way in.

hands-needed = { NAME($slab, start: "yes") } weighs { $weight }: it takes { $people } to carry.{ hands-assess }
hands-assess = { $assess ->
    [yes] { " " }Plan that lift: these figures are no safe limit.
   *[no] { "" }
}
hands-too-few = It takes { $people } to carry in { NAME($slab) }, { $weight }, and { $count ->
    [0] nobody
   *[other] { $there }
} will be there. Have more people there on the day, or choose fitting.{ hands-assess }
beyond-hands = { NAME($slab, start: "yes") } weighs { $weight }: too much for hands alone. It goes on a trolley or by lifting gear, on a firm and level way.
way-in-not-told = Tell us { $missing }, so that we can check the way in.
way-in-part = { $part ->
    [doorway] the narrowest doorway on the way in
    [turn] any tight turn
    [floor] the floor, with any steps
    [steps-or-lift] the steps up, or the size of the lift
   *[steps] any steps
}
