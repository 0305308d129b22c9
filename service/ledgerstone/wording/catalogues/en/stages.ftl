# The stages of the work: what is done or waited for, and why.

stage = { $stage ->
    [queue] Waiting its turn
    [sample] Sample tile
    [yes] You approve the tile
    [mould] Making the mould
    [table] Waiting for the table
    [cast] Casting
    [cover] Curing under cover
    [rack] Damp on the rack
    [finish] Turning and finishing
    [dry] Drying before sealing
    [seal] Sealing
    [harden] The sealer hardens
    [pack] Packing
   *[in-hand] In hand
}
stage-work = { $stage ->
    [sample] A tile of your shade and finish is cast, for you to see and touch.
    [mould] The mould is built to your sizes.
    [cast] The reinforcement is laid and the concrete is poured.
    [finish] Out of the mould, then trimmed and finished by hand.
    [seal] The sealer goes on, coat by coat.
   *[pack] Packed so that it travels safely.
}
stage-cast-in-turns = Cast in { $turns } turns, as many pieces at once as the casting table holds.
stage-queue = { $days ->
    [one] { $days } working day of work already taken on.
   *[other] { $days } working days of work already taken on.
}
stage-hands-taken = Our hands are taken until { $until }.
stage-table-taken = The casting table is taken until { $until }.
stage-yes = Nothing is cut before you approve it, by { $until }.
stage-cures = { $where ->
    [tent] Cures under cover until { $until }: { $warmth } in the heated tent.
   *[workshop] Cures under cover until { $until }: { $warmth } in the workshop.
}
stage-kept-damp = Kept damp under a sheet until { $until }.
stage-dries = Dries until { $until }.
stage-ages = The sealer goes on concrete that is { $days } days old: not before { $until }.
stage-hardens = Hardens until { $until }.
stage-kept = Stays with us until { $until }: before that its concrete is not strong enough to lie on its rests.
stage-closed = We are closed from { $first } to { $last }.
stage-in-hand = { $days ->
    [one] { $days } working day kept in hand, so that the day can be kept.
   *[other] { $days } working days kept in hand, so that the day can be kept.
}

# The day on which an order leaves the workshop.
day-leaves = { $kind ->
    [collect] Ready to be collected
    [fitted] Deliver and fit
   *[other] Deliver
}
