# The job sheet: what the workshop works from, in the workshop's own language.

# Units that are told once for many figures.
job-unit = { $lengths ->
    [in] in
   *[mm] mm
}
job-mass-unit = { $masses ->
    [lb] lb
   *[kg] kg
}
job-stress-unit = { $strengths ->
    [psi] psi
    [MPa] MPa
   *[newtons] N/mm²
}
job-ruled = { $length } { job-unit }

job-title = Job sheet { $reference }
job-slab-title = { $name }: mould, reinforcement and pour
job-slab-title-shared = { $name }: mould, reinforcement, lifts
job-slab-title-many = { $title } · { $pieces } off, { $moulds ->
    [one] { $moulds } mould
   *[other] { $moulds } moulds
}
job-batches-title = Batch cards
job-boards-title = To cut and to have
job-lists-title = Long lists, mirrored as the moulds are
job-mirrored = MIRRORED, as you look down into the mould: the face lies on the board; left and right are changed over.
job-mirrored-label = { $name }, mirrored, face down
job-plan-words = Mirrored plan of { $name }, with dimensions
job-steel-words = { $bars ->
    [one] Reinforcement of { $name } in its mould: { $bars } bar; arrows mark where to lift
   *[other] Reinforcement of { $name } in its mould: { $bars } bars; arrows mark where to lift
}
job-steel-title = Reinforcement in the mould
job-section-title = Section through the mould
job-section-words = { $steel ->
    [yes] Section: { $thickness } thick, reinforcement in mid-depth, cover { $cover }
   *[no] Section: { $thickness } thick, without reinforcement
}
job-section-back = Open back, struck off at { $height }
job-section-cover = cover { $cover }
job-section-face = FACE, against the board
job-section-face-coat = FACE; { $coat } of face coat first
job-section-mesh = { START($mesh) }
job-section-bars = { $bar } { job-unit } bars on { $mesh }
job-section-bars-alone = { $bar } { job-unit } bars
job-list-later = The list of { $list ->
    [knockouts] knockouts
   *[steel] bars and mesh
}, { $rows } lines, is on the page “Long lists”.
job-list-of = { $list ->
    [knockouts] { $name }: knockouts, from the mould's edges, { job-unit }
   *[steel] { $name }: reinforcement, from the mould's edges, { job-unit }
}

# The head of the sheet.
job-begin = Begin
job-ready = Ready
job-slab = { $count } × { $name }
job-slab-is = { $size }; { $look }
job-note = Told the customer: { $note }
job-before = Before anything is cut
job-yes = The customer has said yes to the sample tile
job-answered = Not answered yet: { $question }
job-signed = The drawing is signed and dated, and is this revision
job-templates = Sink, hob and every template are here, and measured
job-care = Take care
job-cement = Wet cement burns, and is not felt at first: gloves, goggles, sleeves; wash it off at once.
job-dust = Dust of cement, sand and concrete holds silica: a mask rated for it that fits; grind wet.
job-masses = Masses here are masses, and none is a safe limit: look at each lift before it is made.
job-glass = Glass fibre pricks and itches: gloves, long sleeves, goggles; wash before you touch your face.
job-tent = Heat the tent by electricity or warm water and keep it damp: a flame in a closed shed gives off carbon monoxide, which nobody smells. Let a slab cool before it leaves its mould.
job-strong-as = It is as strong as concrete of { $days } days at { $warmth }.
job-days = Day by day
job-days-read = { $pairs ->
    [one] Hands: minutes of all hands together, one person at work; → until when a piece is left alone. Write what each step really took.
   *[other] Hands: minutes of all hands together, { $pairs } people at work; → until when a piece is left alone. Write what each step really took.
}
job-days-shared = Pieces of one pour on the batch cards are mixed and placed together, coat by coat; their lines here give each its share.
job-day = Day
job-from = From
job-step = Step
job-piece = Piece
job-hands = Hands
job-really = Really
job-in-all = In all
job-minutes = { $minutes } min
job-hours-minutes = { $hours } h { $minutes }
job-then-wait = { $step } → { $until }, { $at }
job-then-wait-week = { $step } → { $until } { $at }
job-whole-order = the order
job-some-of = { $some } of { $all } { $name }

# The mould.
job-knockouts = Knockouts, from the mould's own inside edges, { job-unit }
job-knockout = Knockout
job-size = Size
job-left = Left
job-right = Right
job-front = Front
job-back = Back
job-centre = Centre x, y
job-checked = Checked
job-opening = { $letter } { $label }
job-relief = { $letter } { $depth } high: { $label }
job-across = Ø { $across }
job-two = { $one } × { $other }
job-pair = { $one }, { $other }
job-former = { $one } × { $other }, R { $radius }
job-former-round = { $one } × { $other }, round ends
job-former-turned = { $former }, turned { $degrees }°
job-sides = Sides
job-sides-high = { $height } { job-unit } high on the base board
job-screws = Screws
job-screws-in = { $count }, in { $pilot } { job-unit } pilot holes
job-bead = Bead
job-bead-along = { $side } { $profile ->
    [bevel] bevel
    [round] round
   *[square] square
} { $size }
job-bead-rims = { $count ->
    [one] { $count } rim, as small as an arris
   *[other] { $count } rims, as small as an arris
}
job-bead-many = { $sides } sides and { $rims } rims, as the plan has them
job-beads = { $beads }; { $in_all } in all
job-beads-none = none
job-drip = Drip former
job-drip-on = { $side }, { $length } { job-unit } long, on the open back
job-release = Release
job-release-thin = { $amount }, thin and wiped

# Steel and lifts.
job-legend-bars = B: { $bar } { job-unit } bars.
job-legend-mesh = M: { $mesh }.
job-from-left = From left, { job-unit }
job-from-front = From front, { job-unit }
job-mark = Mark
job-how-many = No.
job-cut-mm = Cut, { job-unit }
job-cut = Cut
job-mesh = { $lengths ->
    [in] mesh { $wire } in at { $pitch } in
   *[mm] mesh { $wire } at { $pitch }
}
job-stretch = { $first } to { $last }
job-places = { $first } to { $last } every { $step }
job-lifts = Lifts
job-wet = Poured, wet
job-turned = Turned
job-turned-mass = { $mould ->
    [on] { $weight } with its mould
   *[off] { $weight }, sides and formers out
}
job-turned-by = { $over ->
    [none] { $mass }, by { $people }
    [rim] { $mass }, by { $people }, over its rim
    [front] { $mass }, by { $people }, over the slab's front
    [back] { $mass }, by { $people }, over the slab's back
    [left] { $mass }, by { $people }, over the slab's left
    [right] { $mass }, by { $people }, over the slab's right
   *[other] { $mass }, by { $people }, over the slab's side { $over }
}
job-cured = Cured, bare
job-cured-by = { $gear ->
    [yes] { $weight }: trolley or lifting gear, never hands alone
   *[no] { $weight }: { $people } with clamps
}
job-hands-most = { START($people) } here carry { $most }.
job-how = How
job-how-way = { $rail ->
    [clamped] { $way }. Clamp the rail first.
    [none-needed] { $way }. It has no opening, so it wants no rail.
   *[no] { $way }.
}
job-sides-stay = Sides and formers stay in until it stands.
job-when = When
job-when-days = { $days } days after the pour, not before
job-grip = Grip at
job-grip-at = { $side ->
    [front] { $first } and { $last } { job-unit } from the mould's front edge
   *[left] { $first } and { $last } { job-unit } from the mould's left edge
}
job-carry = Carry
job-carry-how = { $held ->
    [flat] Flat, level, on two lines; never by its ends.
   *[on-edge] On edge, upright; never flat by its ends.
}
job-governs = Governs
job-governs-by = { $doing }, { $where } as it lies in place: { $stress } of { $limit } { job-stress-unit } ({ $utilisation })
job-governs-cracks = { $governs }; cracks, in the mean, at { $at }
job-times-weight = { $times } times its weight
job-doing = { $kind ->
    [lifted-out] Lifted out of its mould
    [turned] Turned up on edge
    [on-edge] Held on edge
    [carried] Carried
    [on-bearers] Lying on its pallet
    [own-weight] Its own weight
    [even-load] An even load
    [low-rest] An even load, one rest low
    [somebody-sitting] A person sitting
    [somebody-standing] A person standing
    [somebody-leaning] A person leaning
    [free-corner] A person on a free corner
   *[low-rest-and-sitting] A person sitting, one rest low
}
job-doing-load = { $doing } ({ $load })
job-strip = Strip test
job-strip-test = { $condition ->
    [yes] Not moved before it passes: { job-strip-is }
   *[no] { job-strip-is }
}
job-strip-is = { $width } × { $thickness } { job-unit }, cast with the slab and kept beside it, over { $span } { job-unit }, carries { $masses ->
    [lb] { $mass }
   *[kg] { $load } ({ $mass })
} in its middle. Carried ________ { job-mass-unit } on ________

# Batches.
job-batch-order = From top to bottom, as it goes into the mixer. Tick each as it goes in.
job-tile = Sample tile: { $shade }, { paper-surface }. Send it and wait for the yes
job-pour = { $times ->
    [1] Pour { $number }: { $names }
   *[other] Pour { $number }: { $names }, { $times } times over
}
job-pour-minutes = { $litres } { $volumes ->
    [gal] gallons
   *[l] litres
}, { $minutes } minutes from the first weighing. The first concrete waits { $open } of the { $limit } minutes it stays open.
job-coat = { $coat ->
    [face] Face coat
    [backing] Backing
   *[body] Concrete
}
job-batch = { job-coat }: { $count } × { $litres }, w/c { $ratio }
job-batch-bags = { job-coat }: { $count } × { $litres }, w/c { $ratio }, { $bags } bags each
job-weigh = Weigh, { job-mass-unit }
job-to-count = to { $count }
job-water = water
job-water-by = water, { $volumes ->
    [gal] { $quarts } qt
   *[l] { $litres } l
}
job-cement-part = { $named ->
    [yes] { $cement ->
        [white] white
       *[grey] grey
    } { $name }
   *[no] { $cement ->
        [white] white cement
       *[grey] grey cement
    }
}
job-usual-cement = Pigment is weighed as if { $percent } of the bag were cement, a usual figure: its maker was not asked.
job-sieve = Sieve grains over { $grain } { job-unit } out of the face coat: a third of its { $coat } { job-unit }.
job-poured = Poured
job-poured-line = from ______ to ______ by ______
job-warmth = Warmth
job-warmth-line = shed ____ °{ $temperatures }, mix ____ °{ $temperatures }
job-slump = Slump, flow
job-slump-line = ______ { job-unit }; a strip of it cast: ____
job-otherwise = Deviations
job-otherwise-line = ______________________________

# The finish.
job-finish = Finish
job-finish-of = Finish: { $name }
job-sand = Sand the open back flat: { $proud } { job-unit } stands proud
job-turn-in-mould = { $knockouts ->
    [yes] Turn it, sides and formers in; then sides off, knockouts out, arrises dressed, face washed
   *[no] Turn it, sides and formers in; then sides off, arrises dressed, face washed
}
job-turn-free = { $knockouts ->
    [yes] Sides and knockouts out, then turn it; arrises dressed, face washed
   *[no] Sides out, then turn it; arrises dressed, face washed
}
job-fill = Fill voids with { $litres } of slurry: { $parts }. Gloves: it burns. Leave it { $hours } hours
job-fill-again = Fill voids again with as much; leave it { $hours } hours
job-part = { $mass } { $name }
job-face = Finish the face ({ $surface }), { $area }: ease the edges, look over every pin hole
job-grind = Wet-grind with { $grit } grit, { $area }; rinse
job-dry = Dry { $days } days, and to an age of { $age } days
job-dry-strip = Dry { $days } days, and to an age of { $age } days; seal a strip of it { $hours } hours before: ________
job-coat-of = Sealer { $sealer }, coat { $coat } of { $coats }: { $each }
job-coat-wait = Sealer { $sealer }, coat { $coat } of { $coats }: { $each }; { $hours } hours to the next
job-harden = Let it harden { $days } days; drop water on it and look
job-pot = Repair pot: { $parts }, dry; its label is with the carry cards
job-pack = { $lies ->
    [yes] Weigh it: ________ { job-mass-unit }, on its carry card too; pack flat on its bearers, as its card says
   *[no] Weigh it: ________ { job-mass-unit }, on its carry card too; pack on edge in foam
}
job-grinding = Wet grinding: an RCD-protected supply, cables up and dry; goggles, ear defenders, a mask rated for silica; wash the slurry away wet.
job-silica = Working the hard face frees silica dust: keep it wet, goggles, ear defenders, a mask rated for silica.
job-fumes = Sealer: doors open, no flame, gloves; its safety sheet comes first.
job-rags = Oily rags catch fire by themselves: flat outdoors to dry, or under water in a lidded tin.

# To cut and to have.
job-mirrored-boards = Left and right are the mould's own: mirrored.
job-kerf = { $sheets ->
    [one] { $sheets } sheet of { $length } × { $width } { job-unit }; saw's kerf { $kerf } { job-unit }; waste { $waste }%.
   *[other] { $sheets } sheets of { $length } × { $width } { job-unit }; saw's kerf { $kerf } { job-unit }; waste { $waste }%.
}
job-sheet-of = Sheet { $number } of { $sheets }
job-sheet-words = Sheet { $number } of { $sheets }, pieces numbered as in the list
job-no = No
job-long = Long, { job-unit }
job-wide = Wide, { job-unit }
job-board = { $part ->
    [base] base
    [side] side { $side }
    [drop] drop { $side }
    [rim] rim strip
   *[curve] curve after { $side }
}
job-board-of = { $name }: { job-board }
job-former-turns = { $name }: { job-former-kind } { $one } × { $other }, { $height } { job-unit } high, turned
job-former-foam = { $layers ->
    [one] { $name }: { job-former-kind } { $one } × { $other }, { $height } { job-unit } high, { $layers } layer
   *[other] { $name }: { job-former-kind } { $one } × { $other }, { $height } { job-unit } high, { $layers } layers
}
job-formers = Formers
job-former-kind = { $kind ->
    [plug] plug
    [knockout] knockout
    [drainer] drainer
    [recess] recess
   *[rebate] rebate
}
job-stock = Bars, mesh and strip
job-stock-mesh = Mesh { $mesh }.
job-stock-kg = Bars { $bars }, of { $bought } bought; mesh { $mesh }.
job-cut-from = { START($stock) }: { $cuts }; { $left } { job-unit } left
job-bar-number = { $bar } { job-unit } bar { $number }
job-bar-numbers = { $bar } { job-unit } bars { $first } to { $last }, each
job-strip-flexible = flexible strip
job-cut-piece = { $mark } { $length }
job-cut-pieces = { $count } × { $mark } { $length }
job-mesh-piece = { START($mesh) }: { $mark }, { $count } × { $length } × { $width }
job-uses = What the order uses
job-thing = Thing
job-used = Used
job-to-have = To have
job-supply = { $supply ->
    [mould-board] mould board
    [foam] foam
    [flexible-strip] flexible strip
    [screws] screws
    [sealant-bead] sealant bead
   *[release-agent] release agent
}
job-sealer = sealer { $sealer }
job-amount = { $amount } { $unit ->
    [sheets] { $one ->
        [yes] sheet
       *[no] sheets
    }
    [lengths] { $one ->
        [yes] length
       *[no] lengths
    }
    [screws] { $one ->
        [yes] screw
       *[no] screws
    }
    [tubes] { $one ->
        [yes] tube
       *[no] tubes
    }
    [bags] { $one ->
        [yes] bag
       *[no] bags
    }
    [packs] { $one ->
        [yes] pack
       *[no] packs
    }
   *[litres] { $one ->
        [yes] litre
       *[no] litres
    }
}
job-liquid = { $volumes ->
    [gal] { $quarts } qt
   *[l] { $litres }
}
job-stock-unit = { $unit ->
    [sheets] sheets
    [lengths] lengths
    [screws] screws
    [tubes] tubes
    [bars] bars
    [area] { $lengths ->
        [in] ft²
       *[mm] m²
    }
    [mass] { job-mass-unit }
   *[litres] { $volumes ->
        [gal] qt
       *[l] litres
    }
}
job-bars = { $bar } { job-unit } bars
job-loose = loose
