# The profile's form.

profile-changed-since = The file has changed since this page read it. Load it again; what you entered here is kept and goes in on top.
profile-not-writable = This service may not write the file. Download it instead.
profile-not-written = The file could not be written: { $reason }. It is as it was.
profile-no-such-place = The profile has no place { $pointer } for this.
profile-taken = { $value } is taken.
profile-also-removed = Taken out with it: { $things }.
profile-also-removed-part = { $thing ->
    [tiles] tiles read with { $name }
   *[shade] shade { $name }
}
typical-job = { $job ->
    [shelf] A plain shelf, { typical-size }, { job-surface }, collected
    [basin-top] A basin top, { typical-size }, { job-surface }, delivered
   *[kitchen] A kitchen of two tops with a hob, { job-surface }, fitted
}
typical-job-thickness = It is taken { $taken } thick. At your usual { $usual }: { $why }
typical-size = { $thick ->
    [yes] { $length } × { $width } × { $thickness }
   *[no] { $length } × { $width }
}
typical-opening = { $opening ->
    [basin] basin
   *[hob] hob
}
job-surface = { surface-name }
first-step = { $step ->
    [you] Who you are
    [table] Your casting table
    [concrete] Your concrete
    [steel] Your reinforcement
    [lifting] What you lift
    [shades] Shades you offer
    [looks] Surfaces and sealers you offer
    [delivery] Where you deliver
    [money] What you charge
    [time] Your time
   *[job] One job you know
}
first-ask = { $ask ->
    [workshop-name] Name
    [workshop-town] Town
    [workshop-region] { $country ->
        [US] State (for holidays)
       *[other] Part of the country (for holidays)
    }
    [workshop-email] Email
    [workshop-telephone] Phone
    [table-length-mm] Length
    [table-width-mm] Width
    [recipe-fck-mpa] Strength at 28 days, as the bag or a test says
    [mixer-working-l] One batch makes
    [reply-terms] Sentences that end your letters
    [bag-name] Name of the bag
    [bag-bag-kg] One bag weighs
    [bag-water-l-per-bag] Water for one bag
    [bag-yield-l] One bag makes
    [bag-price-per-bag] Price of one bag
    [steel-material] Made of
    [steel-bar-mm] Thinnest bar; { $on ->
        [terminal] “none” if you use none
       *[form] empty: none
    }
    [steel-mesh-pitch-mm] Mesh, wire to wire
    [steel-mesh-wire-mm] Mesh wire, how thick
    [steel-yield-mpa] Yield strength, as its sheet says
    [lifting-most-people] Most people at one slab
    [ways-most-kg] Heaviest slab, its mould with it, that two tip up
    [areas-postcodes] How the postcodes near you begin
    [areas-pallet] A pallet there
    [areas-own-van] Brought by you; { $on ->
        [terminal] “no” if you don’t
       *[form] empty if you don’t
    }
    [areas-fitted] Brought and fitted; { $on ->
        [terminal] “no” if you don’t
       *[form] empty if you don’t
    }
    [rates-hour] An hour’s work costs you: wage and shop, no profit
    [tax-registered] Do you charge tax?
    [tax-percent] Tax
    [offer-deposit-percent] Deposit
    [offer-balance-due] The balance is due
    [offer-smallest-order] Least you take a job for
    [services-templating-visit] A visit to measure
    [sample-price] A sample tile
    [calendar-hands] People at work
    [calendar-hours-per-day] Hours in a working day
    [calendar-orders-ahead-days] Working days already taken
   *[handling-workshop-c] How warm the shop is, winter to summer
}
profile-follows = { $what ->
    [yield-mpa] Yield strength from this: { $value }.
    [by-eye] Its colour is one by eye again. If it was read by an instrument, say so below.
    [yield-l] One such bag usually makes, with its water: { $value }.
    [says] Customers now read of it: “{ $value }” Change it if you would say it another way.
   *[most-kg] Your other ways to lift were set in proportion. { $value }. “Other ways to lift” below changes them.
}
profile-way-lifts = “{ $way }”: { $value }
# What customers read of a sealer that its maker did not describe, by how it seals.
sealer-line = { $kind ->
    [film] A thin film; it keeps oil and wine out while it is whole, and needs a trivet under hot pans.
   *[penetrating] Soaks in and leaves no film; water beads, and oil and wine need wiping up at once.
}
profile-below-cost = By your hours and prices it costs you { $cost } to make. Ask more, or look at both.
profile-not-met = { $why ->
    [typed] The prices you typed come to { $typed } of it already. Change one of them, or this.
   *[far] The other prices can’t make up for that. Look at the number again.
}
profile-not-made = With this you can’t make: { $job }. { $why }{ $lifts ->
    [yes] { " " }Add a hoist or another way to lift, if you have one.
   *[no] { "" }
}
profile-not-made-at-all = This can’t be made: { $job }. { $why }
profile-not-made-untested = Untested, { $percent } of its strength is trusted. With that you can’t make: { $job }. { $why }
# A key of the file, in a sentence on the form.
form-key = “{ $label }”{ $word ->
    [true] : yes
    [false] : no
   *[none] { "" }
}
profile-refused = { $faults ->
    [one] The changed profile has { $faults } fault; the one before it goes on serving. See the log.
   *[other] The changed profile has { $faults } faults; the one before it goes on serving. See the log.
}
