# What papers share: whom for, what a slab is, how big, how it looks, when and how it comes.

paper-for = For
paper-order = Order
paper-ready-on = Ready on
paper-made = Made
paper-agreed = Agreed
paper-use = { paper-use-word }{ $number ->
    [0] { "" }
   *[other] { " " }{ $number }
}
paper-use-word = { $use ->
    [worktop] Worktop
    [upstand] Upstand
    [splashback] Splashback
    [end-panel] End panel
    [shelf] Shelf
    [table] Table
    [hearth] Hearth
   *[sill] Sill
}
paper-size = { $length } × { $width }, { $thickness } thick
paper-size-round = { $across } across, { $thickness } thick
paper-size-over-all = { $length } × { $width } over all, { $thickness } thick
paper-look = { $shade }, { paper-surface }, { $sealer } sealer
paper-look-matched = matched to { $colour }, { paper-surface }, { $sealer } sealer
paper-many = { $count } × { $name }
paper-weight-size = { $weight }; { $size }; { $gear ->
    [yes] by trolley or lifting gear, never hands alone
   *[no] we plan { $people } round it
}
paper-weight-size-each = { $weight } each; { $size }; { $gear ->
    [yes] by trolley or lifting gear, never hands alone
   *[no] we plan { $people } round each
}
paper-packed = All of it, packed
paper-delivery = How it comes
paper-delivery-collect = You collect it, from { $first }.
paper-delivery-on = { paper-delivery-way }, on { $first }.
paper-delivery-between = { paper-delivery-way }, between { $first } and { $last }.
paper-delivery-open = { paper-delivery-way }.
paper-delivery-way = { $way ->
    [pallet] On a pallet, set down at the kerb
    [own-van] In our own van, as far as your door
    [collect] You collect it
   *[fitted] We bring it and fit it
}
paper-place = { $place ->
    [outdoors] Outdoors
    [wet-room] In a wet room
   *[indoors] Indoors
}
paper-place-on = { paper-place }, on { $rests }.
paper-place-not-given = { paper-place }. What it rests on, we were not told.
paper-opening = { $letter } { $label }
paper-opening-unnamed = { $letter } Opening
paper-relief-unnamed = { $letter } { plan-relief-word }
paper-edge = Edge { $letter }: { $sides }
paper-name = Name
paper-signature = Signature
paper-day = Day
paper-grips-words = { $name } from its face: where to hold it
paper-grip-here = HOLD HERE
paper-rail-here = CLAMP THE RAIL HERE
paper-grips-picture = Where to hold it
paper-workshop = { $name }, { $town }{ $shown ->
    [invented] { "" } (an invented workshop, for show)
    [trial] { "" } (a trial, no offer)
   *[own] { "" }
}
