# What a workshop offers beside the slab itself, and what became of an offer that was made.

choice-sample-tile = { $tax ->
    [before-tax] A sample tile first: { $price } before tax for each look, taken off again when you order.
   *[in-all] A sample tile first: { $price } for each look, taken off again when you order.
}
choice-templating = { $tax ->
    [before-tax] Come and measure for me: { $visit }, and { $each } for each piece, before tax.
   *[in-all] Come and measure for me: { $visit }, and { $each } for each piece.
}
choice-sealer-food = { $declared ->
    [yes] Declared for contact with food.
   *[no] Not declared for contact with food: prepare food on a board.
}
choice-heated-curing = Cure it in our heated tent at { $warmth }, to have it sooner. The price then includes the tent.
request-sent = Your request for { $offer } is with { $workshop }.
request-answered = { $days ->
    [0] { $who } will answer you.
    [one] { $who } will answer you within one working day.
   *[other] { $who } will answer you within { $days } working days.
} Nothing is ordered yet, and nobody is bound: that comes with your yes to the answer.
offer-made = Offered on { $issued } as { $standing ->
    [estimate] estimate
   *[quotation] quotation
} { $offer }.
offer-stands = { offer-made } { $standing ->
    [estimate] Its rates hold
   *[quotation] Its price holds
} until { $valid_until }.
offer-stands-no-more = { offer-made } It no longer holds; today's answer is below.
offer-expired = Its last day was { $valid_until }, { $days ->
    [one] yesterday
   *[other] { $days } days ago
}.
offer-revoked = We have taken back the prices we gave before { $before }.
offer-withdrawn = We no longer offer { $what ->
    [shade] the shade “{ $name }”
    [sealer] the sealer “{ $name }”
    [surface] the surface “{ $name }”
    [heated-curing] heated curing
   *[area] delivery to the area “{ $name }”
}.
offer-rates-changed = Our rates or our choices have changed since.
offer-calendar-changed = Our calendar has changed since, so the day may be another one.
