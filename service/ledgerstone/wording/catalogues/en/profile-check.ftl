# What the maker's commands say of a workshop's file: `check` and `init`.

check-title = { $part ->
    [who] Workshop
    [table] Table
    [thicknesses] Thicknesses
    [strips] Strip beside
    [concrete] Concrete
    [palette] Palette
    [finishes] Finishes
    [sealers] Sealers
    [edges] Edges
    [handling] Handling
    [bears] Bears
    [trusted] Trusted
    [delivery] Delivery
    [rates] Rates
    [tax] Tax
    [offer] Offer
    [tile] Sample tile
    [hours] Hours
    [shut] Shut
   *[fingerprint] Fingerprint
}
check-who = { $name }, { $town } ({ $land }, { $currency })
check-reach = { $email }, { $telephone }
check-tables = { $count } of { $length } × { $width }
check-listed = { $things }
check-strip = { $beside }: made from { $stops }{ $care ->
    [yes] , with care up to { $cautions }
   *[no] { "" }
}
check-concrete = { $name }: { $strength }, { $cement } of { $kind ->
    [white] white
   *[grey] grey
} cement, w/c { $ratio }, { $density }
check-shade = { $name } { $colour }: { $cement ->
    [white] white
   *[grey] grey
} cement, { $doses ->
    [none] no pigment
   *[some] { $pigments }
}
check-dose = { $pigment } { $percent }
check-finish = { $says }
check-sealer = { $name }: { $kind ->
    [film] film
   *[penetrating] penetrating
}, { $coats ->
    [one] { $coats } coat
   *[other] { $coats } coats
}, { $places }
check-place = { $place ->
    [indoors] indoors
    [wet-room] wet rooms
   *[outdoors] outdoors
}
check-edge = { $profile ->
    [bevel] bevel
    [round] round
    [wall] wall
   *[square] square
} { $smallest } to { $largest }
check-edge-unsized = { $profile ->
    [bevel] bevel
    [round] round
    [wall] wall
   *[square] square
}
check-way = { $name }, up to { $most }
check-bears = { $even } all over, { $point } anywhere
check-strips-tested = { $count ->
    [one] { $count } strip tested
   *[other] { $count } strips tested
}
check-untested = { $country ->
    [US] untested: { $percent } of its strength
   *[other] untested: { $percent } of what EN 1992 gives its strength class
}
check-area = { $name } ({ $count ->
    [one] { $count } beginning of postcodes
   *[other] { $count } beginnings of postcodes
}): { $prices }
check-delivery = { $way ->
    [pallet] pallet { $price }
    [own_van] own van { $price }
   *[fitted] fitted { $price }
}
check-no-delivery = none: customers collect
check-rates = { $hour } an hour; markup on cost { $margin }
check-no-tax = none is charged
check-tax = { $name } { $rates }
check-offer = { $standing ->
    [quotation] quotation
   *[estimate] estimate
}, stands { $count ->
    [one] { $count } day
   *[other] { $count } days
}, deposit { $deposit }
check-smallest = smallest order { $amount } before delivery and tax
check-tile = { $price }, taken off as the order goes ahead
check-tile-always = { $price }, taken off as the order goes ahead; always from { $above } on
check-hours = { $count ->
    [one] one pair of hands
   *[other] { $count } pairs of hands
}, { $hours } hours on { $days }
check-weekday = { $day ->
    [monday] Monday
    [tuesday] Tuesday
    [wednesday] Wednesday
    [thursday] Thursday
    [friday] Friday
    [saturday] Saturday
   *[sunday] Sunday
}
check-closure = { $days } ({ $why })

check-yours = { $yours ->
    [one] { $yours } is yours
   *[other] { $yours } are yours
}
check-invented = Still invented: { $invented } of { $every } values; { $usual } others are usual ones that may stand, { check-yours }.
check-not-made = { $key }: { $says }
check-invented-table = { $label } ([{ $table }]), { $count ->
    [one] { $count } value
   *[other] { $count } values
}: { $rests }.
check-confirm = Change them, or write standing = "yours" in a table (in [offer] whose = "yours") once what stands there is right.
check-may-stay = No answer is a trial. Still ours, and may stay so for now: { $invented } of { $every } values; { $usual } others are usual ones, { check-yours }.
check-trial = While prices, hours, days, areas, shades or lifts are invented, every answer is an estimate headed as a trial. They are in { $tables }.

check-looks = Worth a second look:
check-strong-shade = { $shade } takes { $total } pigment; ASTM C979 clause 1.4 allows { $most } of the cement in all.
check-deep-shade = { $shade } takes { $total } pigment; past { $most } a shade hardly deepens and the mix wants more water.
check-place-unsealed = No sealer is for { $place ->
    [indoors] indoors
    [wet-room] a wet room
   *[outdoors] outdoors
}, so no order for that place can be made.
check-signature = Replies are still signed by { $name }, which is invented: see [reply].
check-email = No letter reaches { $email }: write an address of yours there.
check-coarse = The largest grain, { $grain }, is more than a third of the thinnest slab, { $thinnest } (ACI 318-19 26.4.2.1).
check-coarse-face = Grains of { $grain } are coarse for { $coat } of face coat, a third of which is { $third }. Name what it is mixed without.
check-usual-cement = Nobody told how much cement is in the bag: { $percent } is taken, a usual figure, and pigment is weighed by it. Ask its maker, and write cement_percent.
check-admixtures = Plasticiser comes to { $found } g on a kilogram of cement; EN 206 5.2.6 allows { $most } g of admixtures in all.
check-weak-bag = A bag of { $strength } states a mean: until you have tested it, trust { $percent } of it in concrete.untested_percent (EN 1992-1-1 table 3.1).
check-thousands = { $key } is { $number }, which is { $money }: if { $meant } was meant, write { $meant }.
check-loopback = { $key } is { $address }, which opens only on this machine: give the address at which customers reach it.
check-law = For { $land } we know neither law nor custom. Before customers read them, have somebody who knows look at what the page and letters say of cancelling, deposits, gas, electrics and hearths, and at the rate of tax: { $tax } { $percent }.
check-region = The holidays are those of the whole country, { $land }. If your part of it keeps more, write its letters in workshop.region: { $regions }.
check-holidays = calendar.holidays_worked names what is no holiday in { $land }, which changes nothing: { $names }. Take it out.
check-currency = The currency is { $currency }; in { $land } people pay in { $usual }. If prices are in { $usual }, write it in workshop.currency.
check-postcodes = No postcode in { $land } begins with { $beginnings }, so nobody there is served. One looks like { $example }.
check-area-postcodes = The area "{ $area }": { $says }

check-before = Before it serves customers:
check-no-signing-keys = LEDGERSTONE_SIGNING_KEYS is not set: one is made for each run, and links will stop opening when it ends.
check-no-maker-key = LEDGERSTONE_MAKER_KEY is not set: another one is made and shown at each start.
check-no-calendar = { $file } is not there: without the calendar file every day is called a guess.
check-faults = { $count ->
    [one] One fault
   *[other] { $count } faults
} in { $file }.

init-wrote = Wrote { $file }. What is still to be filled in is listed by: { $check }
init-form = Or fill it in as a form: run { $serve }, open { $address }, and enter the key that it prints.
init-there = this stands there already, so nothing was written. Name a new file.
init-unwritable = the file cannot be written: { $reason }.
init-unanswered = The answers ended before the questions, so nothing was written.
init-asks = { $question ->
    [country] Country, by its two letters (GB, DE, US)
    [region] { $country ->
        [US] Your state, for its public holidays (WA, TX, NY)
        [GB] Part of the country, for public holidays (ENG, SCT, WLS, NIR)
       *[other] Part of the country, by its letters, for public holidays; empty for all of it
    }
    [timezone] Time zone
    [name] Your workshop's name
    [town] Your town
    [email] Where customers write
    [telephone] Where customers call
    [table] Your casting table, length x width in { $lengths ->
        [in] inches
       *[mm] mm
    }
    [thicknesses] Thicknesses you cast, in { $lengths ->
        [in] inches
       *[mm] mm
    }, with commas
    [fck_mpa] Your concrete's strength at 28 days, by cylinder, in { $strengths ->
        [psi] psi
        [MPa] MPa (or 45 MPa cube)
       *[other] N/mm² (or 45 N/mm² cube)
    }
    [bag] Do you mix from bags? Then, with commas: what one weighs, its water, what it makes and its price, like { $masses ->
        [lb] 80 lb, 0.75 gal, 0.6 ft³, 14.75
       *[kg] 25 kg, 3.5 l, 13 l, 9.50
    }; none where you weigh out cement and sand
    [hands] How many of you are at work
    [orders_ahead_days] Days of work already taken on, until the next order could begin (0: none)
    [warmth] How warm your workshop is in winter and in summer, in { $temperatures ->
        [F] °F
       *[C] °C
    }, with a blank between: concrete hardens by it, and days follow
    [jobs] The hours of hands that these take you, as three numbers with blanks (or the first alone; empty: leave them)
    [hours_per_day] Hours in a working day
    [materials] What you buy for the second of them, concrete, mould, steel and sealer together (empty: leave it)
    [asked] What you ask for it, before tax and delivery: the markup follows (empty: leave it)
    [rest] { $count ->
        [one] This one value is right for you
       *[other] These { $count } values are right for you
    } (y, n)
    [hour] One hour of hands costs
    [tax] { $country ->
        [US] Sales tax you charge, in percent; none where you charge none
       *[other] Tax you charge, in percent; none where you are not registered
    }
    [deposit_percent] Deposit, in percent of the total
    [postcodes] Postcodes you deliver to, by their beginnings, with commas
    [pallet] A pallet set down there costs; none if you send none
    [own_van] Your own van there costs; none if you have none
   *[fitted] Delivered and fitted costs; none if you do not fit
}
init-job = { $job }: { $hours } h here
init-elsewhere = No invented workshop of ours is in { $land }. { $known ->
    [yes] The file has its money, clock, postcodes and tax; every other value is of a workshop in another country, its one area is a guess, and what it says of law and tax must be checked.
   *[no] The file has its money and clock. Its postcodes and tax are not known here, so it delivers nowhere and charges no tax; every other value is of a workshop in another country, and what it says of law must be checked.
}
init-none = none
init-two-sizes = Write its length and its width, like 2700 x 1200 or 120 in x 48 in.
init-of-a-bag = Write four things with commas and blanks between: weight, water, what it makes, price.
init-bag = Bagged mix
init-warmth = Write two temperatures with a blank between, or one for all the year.
init-around = Around { $town }
