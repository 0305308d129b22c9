# Names of slabs, cut-outs, reliefs and sides.
# A label is the customer's own; a slab's or cut-out's number counts from 1.
# { $case } is nominative, genitive, dative or accusative: English needs none.

slab-labelled = “{ $label }”
slab-numbered = slab { $number }
slab-only = the slab
slabs-all = the slabs

cutout-labelled = the { $label }
relief-labelled = the { $label }
cutout = the { nth }{ cutout-kind } cut-out
cutout-kind = { $kind ->
    [circle] round
    [rectangle] rectangular
    [slot] slot
   *[polygon] shaped
}
relief = the { nth }{ relief-kind }
relief-kind = { $kind ->
    [drainer] drainer
    [recess] recess
   *[rebate] rebate
}
nth = { $nth ->
    [1] first{ " " }
    [2] second{ " " }
    [3] third{ " " }
    [4] fourth{ " " }
    [5] fifth{ " " }
    [6] sixth{ " " }
    [7] seventh{ " " }
    [8] eighth{ " " }
    [9] ninth{ " " }
    [10] tenth{ " " }
    [11] eleventh{ " " }
    [12] twelfth{ " " }
    [13] thirteenth{ " " }
    [14] fourteenth{ " " }
    [15] fifteenth{ " " }
    [16] sixteenth{ " " }
    [17] seventeenth{ " " }
    [18] eighteenth{ " " }
    [19] nineteenth{ " " }
    [20] twentieth{ " " }
   *[0] { "" }
}

side-numbered = side { $number }
side = { $side ->
    [rim] the rim
    [notch-x] the notch
    [notch-y] the notch
    [left] the left edge
    [right] the right edge
    [back] the back edge
   *[front] the front edge
}

# Lists: what stands between two things, between the last two, and for what is not named.
list-between = { $one }, { $other }
list-last-and = { $one } and { $other }
list-last-or = { $one } or { $other }
list-last-comma-and = { $one }, and { $other }
list-sentences = { $one } { $other }
list-semicolon = { $one }; { $other }
list-more = { $one }, { $other } and { $count } more

people = { $count ->
    [0] no people
    [1] one person
    [2] two people
    [3] three people
    [4] four people
    [5] five people
    [6] six people
    [7] seven people
    [8] eight people
   *[other] { $count } people
}
