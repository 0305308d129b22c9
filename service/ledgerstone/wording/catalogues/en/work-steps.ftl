# The steps of the work, as the job sheet, the plan and past jobs name them.

step-tile = Cast a sample tile: { $shade }, { $surface }
step-yes = Yes to the sample tile
step-in-hand = Templates, sinks and the signed drawing in hand
step-set-up = Set up
step-tent = Put up the heated tent
step-level = Level the table
step-clean-up = Clean the mixer and tools
step-mould = Make the mould
step-knockouts = Make and fix the knockouts
step-bead = Run the bead
step-release = Wipe on the release agent
step-again = Clean and oil the mould again
step-steel = Cut and tie mesh and bars
step-mix = Weigh and mix the batches
step-face = Face coat
step-place = Lay mesh, bars; back-fill
step-strike = Strike off and vibrate
step-cover = Cover it, damp
step-sand = Sand the back
step-turn = Turn it
step-turn-way = Turn it: { $way }
step-demould = Demould
step-knockouts-out = Take out the knockouts
step-wash = Wash it
step-grind = Grind: { $grit } grit
step-fill = Fill the voids
step-fill-again = Fill the voids again
step-finish = Finish: { $surface }
step-seal = Seal: { $sealer }
step-seal-coat = Seal: { $sealer }, coat { $coat }
step-test = Test with water and weigh
step-pack = Pack
step-crate = { $count ->
    [one] Build the crate
   *[other] Build the crates
}
step-keep = Keep it until it is strong enough to lie on its rests

# What an order costs the workshop.
cost-hours = Hours: { $step }
cost-material = { $thing ->
    [mould-board] Mould board
    [foam] Foam
    [flexible-strip] Flexible strip
    [screws] Screws
    [sealant-bead] Sealant bead
    [release-agent] Release agent
    [bars] Bars
    [mesh] Mesh
   *[white-cement] White cement, what it adds
}
cost-part = { START($part) }
cost-sealer = Sealer: { $sealer }
cost-recasts = Kept for casting again
cost-tiles = Concrete of the tiles
cost-consumables = Consumables
cost-packing = Packing
cost-pads = Pads

plan-table = Casting table { $number }: { $slabs }
plan-whose = { $named ->
    [yes] { $slabs } for { $customer }
   *[no] { $slabs }
}
plan-leaves = { $way ->
    [collect] To be collected: { $slabs }
    [pallet] Arrives by pallet: { $slabs }
    [own-van] We deliver: { $slabs }
    [fitted] We deliver and fit: { $slabs }
   *[ready] Ready: { $slabs }
}
