# Checks of where the workshop delivers and by which day.

postcode-needed = Enter the postcode, so that delivery { delivery-way } can be priced, or collect the order.
postcode-unknown = “{ $postcode }” is not a full postcode. Enter the full postcode, or choose “I collect it”.
area-not-served = We do not deliver to { $postcode }.
way-not-served = We do not deliver { delivery-way } to { $area }.
delivery-way = { $way ->
    [pallet] by pallet
    [own-van] by our own van
   *[fitted] with fitting
}
no-day-free = Our calendar has no day by which this could be made, so we promise no day. Write to us, and we will look at it together.
needed-by = { $way ->
    [collect] You need it by { $needed_by }; ordered today it can be collected from { $arrives }.
   *[other] You need it by { $needed_by }; ordered today it can be with you by { $arrives }.
}
needed-by-past = That date has passed. Enter a later one.
