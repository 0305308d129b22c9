# Checks of use: heat, food, acids and oil, hearths, electrics near water.

hot-appliance = Leave { $gap } or more all round { NAME($cutout) }, hung from its own frame: concrete moves with heat, and our strength check leaves heat out. Follow its maker's clearances; { gas-or-electric-trade } decides.
sealer-near-heat = The { $sealer } sealer stands { $stands }, and beside a hot appliance { NAME($slab) } may get hotter. { HOWMANY($others) ->
    [0] Keep it shielded, or expect it to mark there.
   *[other] Choose { $others }, or expect it to mark there.
}
acids-and-oil = { $kind ->
    [film] The { $sealer } sealer keeps wine, lemon and oil off while its film is whole; where it is worn they mark the concrete in minutes. Wipe spills up, and have worn places sealed again.
   *[penetrating] The { $sealer } sealer leaves no film: lemon, vinegar and wine etch the concrete in minutes, and oil stains it. Wipe spills up at once, and use a board.
}
food-declared = The maker of the { $sealer } sealer declares it for contact with food: ask us for the declaration.
food-not-declared = { HOWMANY($others) ->
    [0] The { $sealer } sealer is not declared for food contact: prepare food on a board.
   *[other] The { $sealer } sealer is not declared for food contact: prepare food on a board, or choose { $others }.
}
hearth = { hearth-trade } the size and build of { NAME($slab) }. By a fire, sections with gaps between them crack less than one piece: ask before you order.
electrics-near-water = { NAME($cutout, start: "yes") } is near water. { electric-trade } decides how far from it electrics must stand: have them look at the plan before we cast.

# Who decides on gas, electrics and hearths, by country; where it is not known, the licensed one.
gas-or-electric-trade = { $country ->
    [GB] a registered gas engineer or electrician
    [IE] a registered gas installer or electrical contractor
    [US] a licensed plumber, gas fitter or electrician
    [CA] a licensed gas fitter or electrician
    [AU] a licensed gasfitter or electrician
    [NZ] a registered gasfitter or electrician
   *[other] the licensed installer
}
electric-trade = { $country ->
    [GB] A registered electrician
    [IE] A registered electrical contractor
    [NZ] A registered electrician
   *[other] A licensed electrician
}
hearth-trade = { $country ->
    [GB] A registered installer decides
    [US] Your building department and a licensed installer decide
    [DE] The district chimney sweep and a licensed stove builder decide
   *[other] The licensed installer decides
}
hearth-installer = { $country ->
    [GB] the registered installer
   *[other] the licensed installer
}
hearth-authority = { $country ->
    [GB] building control
    [DE] the district chimney sweep
   *[other] the building department
}
