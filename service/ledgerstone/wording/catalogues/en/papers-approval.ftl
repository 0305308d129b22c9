# The approval sheet: what the customer agrees to before anything is cast.

approval-title = To approve before we cast
approval-trial = Trial
approval-standing = { $standing ->
    [quotation] Quotation
   *[estimate] Estimate
}
approval-offered = Offered on
approval-stands = { $issued }; its { $standing ->
    [quotation] price holds
   *[estimate] rates hold
} until { $until }
approval-price = Price
approval-price-taxed = { $total }, including { $tax } { $name } at { $percent }
approval-line = { $amount }, in the price before tax
approval-deposit = Deposit
approval-ready = { $day }, if ordered by { $by }
approval-postcode = Delivered to
approval-weight = Weight, packed
approval-weeks = The weeks
approval-stage = { $first } to { $last }. { $why }
approval-stage-day = { $first }. { $why }
approval-expect = What to expect of the material
approval-expect-holes = Small pin holes and voids: air leaves them in every casting, and some open later.
approval-expect-mottling = Mottling: one slab is lighter and darker within itself, and two are never quite alike.
approval-expect-hairlines = Hairlines: fine lines in the skin may show in certain light. They take no strength away.
approval-expect-paler = A shade that grows paler in its first months as it dries, and richer again when sealed.
approval-expect-bloom = A bloom of white where water has stood in its first winter; it can be washed off.
approval-expect-edges = Edges are eased, never knife sharp.
approval-terms = Terms
approval-joins = Joins
approval-join = { $name }, { $side }
approval-join-meets = meets { $name }, { $side }, with { $gap } between
approval-quantity = How many
approval-size = Finished size
approval-sizes-from = Sizes from
approval-from = { $source ->
    [between-walls] your walls; { $gap } came off each wall side, so that it goes in
    [over-units] your units, with the overhangs added
    [template-to-follow] a template that is still to come; nothing is cast before it is here
   *[finished] finished sizes, as you gave them
}
approval-hand = Hand
approval-hand-of = { $arm ->
    [left] left hand
   *[right] right hand
}: seen from above with the front towards you, its arm runs { $depth ->
    [back] back
   *[front] forward
} on the { $arm ->
    [left] left
   *[right] right
}; the { $depth ->
    [back] back
   *[front] front
} { $arm ->
    [left] right
   *[right] left
} corner is left out
approval-measured = as you measured it
approval-look = Shade and finish
approval-sure = How sure
approval-goes = Where it goes
approval-check = Check before you sign
approval-check-sizes = The sizes and where each came from are right.
approval-check-openings = Every opening is where it should be, and is the size its own template asks for.
approval-check-round = Front and back, left and right are the right way round, seen from above.
approval-check-look = { $tile ->
    [yes] The shade, the surface and the sealer are as you chose them; the tile is cast for your yes first.
   *[no] The shade, the surface and the sealer are as you chose.
}
approval-check-place = We know where it goes, what it rests on and how it gets in.
approval-signed = Agreed
approval-signs = I have checked this sheet and ask { $workshop } to cast what it shows. What is cast cannot be changed.
