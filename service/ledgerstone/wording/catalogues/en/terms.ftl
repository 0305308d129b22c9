# What a price and a day rest on, and what an estimate or a quotation is.

trial = This is a trial: our own prices, hours and areas are not settled yet, so it is no offer.
day-is-for = { $wanted ->
    [deposit-and-templates] The day is for an order by { $by } with the deposit of { $deposit } paid and the templates here. It is held once we have booked it.
    [deposit] The day is for an order by { $by } with the deposit of { $deposit } paid. It is held once we have booked it.
    [templates] The day is for an order by { $by } with the templates here. It is held once we have booked it.
   *[nothing] The day is for an order by { $by }. It is held once we have booked it.
}
estimate-until-measured = This is an estimate until we have come and measured, anywhere in our delivery areas.
estimate-until-templates = This is an estimate until the templates are here and measured.
estimate-best-guess = This is an estimate, our best guess: we'll check it, then send a fixed price.
quotation-fixed = This is a quotation: its price is fixed until { $until }, for the order as it stands here.
sample-first = Nothing is cut before you approve a sample tile.
strip-first = Nothing of young concrete leaves its mould before a test strip of it has passed.
you-collect = You collect the order from the workshop.
made-to-measure = { $country ->
    [US] It is made to your measure, so the order cannot be canceled or returned once it is cast.
    [DE] It is made to your measure, so there is no right of withdrawal (section 312g (2) no. 1 of the German Civil Code). Your rights over faults remain.
   *[other] Made to measure: no change-of-mind returns; your rights over faults remain.
}
no-tax-charged = { $country ->
    [DE] As a small business under section 19 of the German VAT Act we charge no { $tax }.
    [US] No { $tax } is charged.
   *[other] We are not registered for { $tax }, so none is charged.
}
calendar-not-read = We could not look into our calendar, so the day is a guess that we confirm.
calendar-not-read-because = We could not look into our calendar, so the day is a guess that we confirm. { $why }
