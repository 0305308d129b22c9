# The lines of a price. $area and $pallet are the maker's own words.

price-making = { $group ->
    [materials] Materials
    [making] Making and casting
    [finishing] Finishing and sealing
   *[tiles] Sample tiles
}
price-smallest-order = Up to our smallest order
price-tile = Sample tile, paid first
price-tile-credit = Sample tile, taken off as you order
price-measuring = Coming to measure
price-rails = Rails across the units, fitted
price-cover = Cover in transit
price-delivery = { $way ->
    [pallet] Pallet delivery: { $area }
    [own-van] Delivery: { $area }
   *[fitted] Delivery and fitting: { $area }
}
price-delivery-on = { START($pallet) } delivery: { $area }
price-rounding = Rounding
