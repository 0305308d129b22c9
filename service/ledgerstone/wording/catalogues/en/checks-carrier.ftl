# Checks of what carries an order: a carrier's pallets and tail lift, our van, the customer's.

too-long-for-pallet = { NAME($slab, start: "yes") } is { $size } long; the carrier takes no more than { $most } on a pallet.
too-deep-for-pallet = { NAME($slab, start: "yes") } is { $size } deep; the carrier takes no more than { $most } on a pallet.
too-heavy-for-pallet = Packed, the order weighs { $packed }; the carrier takes no more than { $most } on a pallet.
beyond-tail-lift = Packed, the order weighs { $packed }; the carrier's tail lift sets down { $most }. Have a fork-lift there on the day, or order it in two parts.
set-down-at-kerb = The pallet is left at the kerb, on hard, level ground. From there it is yours to bring in.
too-long-for-van = { NAME($slab, start: "yes") } is { $length } long; our van takes { $most }.
too-heavy-for-van = Packed, the order weighs { $packed }; our van carries { $most }.
vehicle-to-collect = To collect it, come with a van whose floor is clear for { $length } and that may carry { $carries }. It travels on edge against a frame, strapped, never flat.
