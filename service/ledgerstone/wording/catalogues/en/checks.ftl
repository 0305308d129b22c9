# What is said of findings themselves.

check-failed = We could not check all of this here. Send it to us as it is: we check it by hand.
finding-repeated = { $first } { $more } more like it on this slab.
