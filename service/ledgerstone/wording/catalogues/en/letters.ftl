# Letters: a reply, a send-back, questions alone. What a maker writes in the profile stands beside.

letter-greeting = { $named ->
    [yes] Hello { $customer }
   *[no] Hello
}
letter-replaces = This takes the place of our letter of { $day }.
letter-can-make = Thank you: we can make this for you.{ letter-supports }
letter-would-make = Thank you for asking us. This is what our answer would look like.{ letter-supports }
letter-supports = { $supports ->
    [open] { " " }The supports are not checked yet.
   *[checked] { "" }
}
letter-options = Thank you for asking us. You have several options, each with its price{ $linked ->
    [yes] , its day and a link
   *[no] {" "}and its day
}.{ letter-supports }
letter-stands-in-the-way = Thank you for asking us. As drawn we cannot make this yet. Here is what stands in the way, and what would put it right.
letter-only-asks = Thank you for asking us. Before we can price it we need to know a little more.
letter-asks = To be sure, please tell us:
letter-took-lead = We took it that
letter-took = We took it { $facts }.
letter-took-fact = that { $fact }
letter-balance = The balance is due { $due }.
letter-terms-in = { $language ->
    [de] Our terms, in German:
   *[en] Our terms, in English:
}

letter-offer = { $standing ->
    [estimate] Estimate
   *[quotation] Quotation
} { $offer }
letter-tax = including { $tax } { $name } at { $percent }
letter-day = { $way ->
    [collect] Ready to collect from { $ready }{ letter-in-time }.
   *[other] Ready { $ready }; with you { $arrives }{ letter-in-time }.
}
letter-in-time = { $asked ->
    [yes] , in time
   *[no] { "" }
}
letter-day-not-met = You asked for it by { $wished }. We cannot meet that day.
letter-changed = We changed this from what you asked for:
letter-changed-why = As you asked for it, it can’t be made:
letter-day-kept = With that change you can have it by { $wished }, as you asked.
letter-day-open = You asked for it by { $wished }. Once this is settled we can say whether that day can be met.
letter-ready = Ready { $ready }.
letter-order-today = { $wanted ->
    [deposit] Order today with { $deposit } deposit; the day is held once booked, the { letter-price-of } until { $until }.
    [deposit-and-templates] Order today with { $deposit } deposit and the templates; the day is held once booked, the { letter-price-of } until { $until }.
    [templates] Order today with the templates; the day is held once booked, the { letter-price-of } until { $until }.
   *[nothing] Order today; the day is held once booked, the { letter-price-of } until { $until }.
}
letter-order-by = { $wanted ->
    [deposit] The day is for an order by { $by } with { $deposit } deposit, and held once booked; the { letter-price-of } until { $until }.
    [deposit-and-templates] The day is for an order by { $by } with { $deposit } deposit and the templates, and held once booked; the { letter-price-of } until { $until }.
    [templates] The day is for an order by { $by } with the templates, and held once booked; the { letter-price-of } until { $until }.
   *[nothing] The day is for an order by { $by }, and held once booked; the { letter-price-of } until { $until }.
}
letter-price-of = { $standing ->
    [quotation] price
   *[estimate] rates
}
letter-in-short = { $wanted ->
    [deposit] Deposit { $deposit }; { letter-held } until { $until }.
    [deposit-and-templates] Deposit { $deposit }; { letter-held } until { $until }.
   *[other] The { letter-held } until { $until }.
}
letter-held = { $standing ->
    [quotation] price holds
   *[estimate] rates hold
}
letter-weeks = { $cast ->
    [same] We start on { $starts }, cast that day, then { letter-then }.
   *[later] We start on { $starts }, cast on { $casts }, then { letter-then }.
}
letter-then = { $seals ->
    [yes] { $pieces ->
        [1] cure, finish and seal it
       *[other] cure, finish and seal them
    }
   *[no] { $pieces ->
        [1] cure and finish it
       *[other] cure and finish them
    }
}
letter-link = See and change it:
links-left-out = You can send the letter as it is; it only has no link, as { $address } opens on this machine alone. Once customers reach you on the web, enter that address in “Your workshop”.
letter-link-at = See it at { $host }
letter-attached = The order is attached; it is too long for a link.
letter-net = { $taxed ->
    [yes] Net
   *[no] Total
}

slab-in-a-line = { $count ->
    [1] { $name }: { $facts }.
   *[other] { $count } × { $name }: { $facts }.
}
letter-opening = { $name }: { $facts }
letter-opening-unnamed = opening
letter-centre = centre { $x } from left, { $y } from front
letter-relief = { plan-relief-word } { $depth } deep, corner { $x } from left, { $y } from front
letter-edge = { $sides } { $edge }
letter-place = { $place ->
    [outdoors] outdoors
    [wet-room] in a wet room
   *[indoors] indoors
}
letter-on = on { $rests }
letter-on-assumed = on base { $rests } (as we took it)
letter-from-below = undermount
letter-joined = joined: { $side } meets { $other } of { NAME($that) }, gap { $gap }
letter-alt = Plan of { $slab }: { $size }. { $offer } { $total }.
letter-alt-no-price = Plan of { $slab }: { $size }. No price yet.

letter-heading = { $when ->
    [before-order] Before you order
    [on-delivery] When it comes
   *[in-use] Living with it
}
advice-kerb = The pallet ({ $packed }) is left at the kerb, on hard, level ground.
advice-carry = { $count ->
    [1] { NAME($people, start: "yes") } carries { NAME($slab) } ({ $weight }) on edge, never flat.{ hands-assess }
   *[other] { NAME($people, start: "yes") } carry { NAME($slab) } ({ $weight }) on edge, never flat.{ hands-assess }
}
advice-on-edge = Carry { NAME($slabs) } on edge, never flat.
advice-people = Nobody { $doing } on { NAME($slab) } before { $day }, then one at most.

advice-units = The units must be solid-sided, fixed, level within { $level } and carry { $weight } a { running-length }: ask their supplier.
advice-food = Prepare food on a board.
advice-people-young = Nobody { $doing } on { NAME($slab) } before { $day }.
advice-mix = Our mix is unproven against frost: agree another with us, or { mix-until }.
advice-way-in = Tell us { $missing }.
advice-drip = Add a drip groove under free edges.
advice-fall = { HOWMANY($slabs) ->
    [1] Lay { NAME($slabs) } to a fall of { $fall }.
   *[other] Lay { NAME($slabs) } to a fall of 1 in 60, up to { $fall }.
}
advice-dark = { START($shades) } may bloom white and grow paler.
advice-rails = { $fitted } Else { NAME($slab) } could crack.

letter-one-change = One change that settles everything
letter-bigger-change = A bigger change that would make it possible
letter-then-costs = It would then cost { $price }.
letter-see-change = See it with this change:
letter-see-change-at = See it with this change at { $host }
letter-good-to-know = Good to know
letter-way = { $way ->
    [drawn] As drawn
    [lighter] Lighter
    [cheaper] Cheaper
   *[both] Lighter and cheaper
}
letter-no-lighter = We looked for a lighter way to have it, and found none that we can promise.
letter-no-cheaper = We looked for a cheaper way to have it, and found none that we can promise.

letter-subject = { $offer }: { $slabs }, { $total }, ready { $ready }
letter-subject-options = { $offer }: { $slabs }, { $count } options
letter-subject-sent-back = What to change before we can make it: { $slabs }
letter-subject-questions = A few questions about your enquiry
letter-subject-invented = { $subject } (invented workshop, for show)
letter-make-change = Make this change
