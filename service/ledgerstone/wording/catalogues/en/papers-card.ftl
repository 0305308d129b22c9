# The carry card on a slab's crate, a quarter of a page, and the label of the repair pot.

card-title = Carry cards { $reference }
card-hands = { $gear ->
    [yes] Trolley or lifting gear, never hands alone
   *[no] { $people }, with clamps
}
card-up = ↑ THIS WAY UP ↑
card-edge = A long edge down, on edge all the way
card-flat = Flat, its face up, all the way
card-grip = Grip { $first } and { $last } from the ends
card-bearers = { $side ->
    [front] On bearers { $places } { job-unit } from its front edge, to their middles
   *[left] On bearers { $places } { job-unit } from its left edge, to their middles
}
card-rail = Clamp the rail as drawn before it moves
card-size = { $length } × { $width } × { $thickness } { job-unit }
card-is = Size
card-look = Look
card-wrapped = Wrapped
card-weighed = Weighed
card-weighed-line = ____________ { job-mass-unit }
card-not-flat = Never flat by its ends
card-set-down = Set down on timber or foam, never on a corner
card-two-hands = Two hands each, boots on, the way walked and cleared first
card-lifting = No mass here is a safe limit: look at the way, the floor and who lifts before each lift; never lift alone what takes two.
card-pot = Label of the repair pot: { $name }
card-pot-label = { $reference } · { $shade } · { $masses ->
    [lb] { $oz } oz
   *[kg] { $kg } kg
} of dry slurry, cement and pigment, no sand. { $masses ->
    [lb] Whole pot: { $water_oz } oz of water, or a teaspoon to { $powder_oz } oz; rub it in.
   *[kg] Whole pot: { $water_g } g of water, or a teaspoon ({ $spoon_g } g) to { $powder_g } g; rub it in.
} Use it within { $minutes } minutes; keep it damp for { $days } days.
card-pot-skin = It burns skin and eyes: gloves and glasses; keep it dry and from children. Good for about { $months } months.
