# What a price and a day rest on, and what an estimate or a quotation is.

trial = This is a trial: { $what } are not settled yet, so it is no offer.
trial-headed = Trial: { $title }
trial-what = { $what ->
    [prices] our prices
    [hours] the hours that our work takes
    [days] our working days
    [areas] the areas that we deliver to
    [lifts] what we can lift
   *[shades] our shades
}
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
solid-base-before = Have a base built under all of { NAME($slabs) } that does not bend, such as masonry, before the laying: it is not in the price. A board on cabinets bends with them, and is not enough.
you-collect = You collect the order from the workshop.
# Directive 2011/83/EU Article 16 (c), which the EEA keeps too; in Britain the Consumer Contracts
# Regulations 2013 (SI 2013/3134), regulation 28 (1) (b). From memory: Australia (ACL sections 54 to
# 59), New Zealand (Consumer Guarantees Act 1993) and Switzerland (OR articles 40a and 197) know no
# right of return but for faults. In the United States none is general: 16 CFR part 429 is for sales
# at the buyer's home, UCC 2-314 is on faults; a change of mind is for the contract.
made-to-measure-no-return = Made to measure: no change-of-mind returns; your rights over faults remain.
made-to-measure = { $country ->
    [US] It is made to your measurements. Agree with us before you order what holds for a change of mind; your legal rights over defects remain.
    [DE] It is made to your measure, so there is no right of withdrawal (section 312g (2) no. 1 of the German Civil Code). Your rights over faults remain.
    [GB] { made-to-measure-no-return }
    [IE] { made-to-measure-no-return }
    [AT] { made-to-measure-no-return }
    [BE] { made-to-measure-no-return }
    [NL] { made-to-measure-no-return }
    [FR] { made-to-measure-no-return }
    [IT] { made-to-measure-no-return }
    [ES] { made-to-measure-no-return }
    [PT] { made-to-measure-no-return }
    [DK] { made-to-measure-no-return }
    [SE] { made-to-measure-no-return }
    [NO] { made-to-measure-no-return }
    [FI] { made-to-measure-no-return }
    [PL] { made-to-measure-no-return }
    [CZ] { made-to-measure-no-return }
    [LU] { made-to-measure-no-return }
    [LI] { made-to-measure-no-return }
    [CH] { made-to-measure-no-return }
    [AU] { made-to-measure-no-return }
    [NZ] { made-to-measure-no-return }
   *[other] It is made to your measure. Whether an order can be cancelled once it is cast is for the law where you live; your rights over faults remain.
}
no-tax-charged = { $country ->
    [DE] As a small business under section 19 of the German VAT Act we charge no { $tax }.
    [US] No { $tax } is charged.
   *[other] We are not registered for { $tax }, so none is charged.
}
calendar-not-read = We could not look into our calendar, so the day is a guess that we confirm.
calendar-not-read-because = We could not look into our calendar, so the day is a guess that we confirm. { $why }
