# Checks of the units beneath a slab, and of the rails across them.

unit-numbered = unit { $number }
unit-for = { NAME($cutout) }'s unit
cutout-over-unit-side = { NAME($cutout, start: "yes") } lies over the side of { NAME($unit) }, which it would cut into.
cutout-wider-than-unit = { NAME($cutout, start: "yes") } lies over the side of { NAME($unit) }, which it would cut into. { NAME($home, start: "yes") } is { $inside } wide inside.
running-length = { $masses ->
    [lb] foot
   *[kg] metre
}
load-on-units = { HOWMANY($slabs) ->
    [1] The units under { NAME($slabs) } must be solid-sided, fixed, level within { $level } and carry { $weight } a { running-length }: ask their supplier.
   *[other] The units under { NAME($slabs) } must be solid-sided, fixed, level within { $level } and carry up to { $weight } a { running-length }: ask their supplier.
}
rails-needed = { $fitted } On the cabinet's own rails { NAME($slab) } could crack. At the back, a wall batten will do.
rails-fit = { $laid ->
    [by-us] { $post ->
        [yes] Before we come, have a { $rail } with a post under its middle fitted across front and back of { NAME($units) }; it is not in the price.
       *[no] Before we come, have a { $rail } fitted across front and back of { NAME($units) }; it is not in the price.
    }
   *[by-others] { $post ->
        [yes] Fit a { $rail } with a post under its middle across front and back of { NAME($units) }.
       *[no] Fit a { $rail } across front and back of { NAME($units) }.
    }
}
rails-before = { $post ->
    [yes] Before { NAME($slab) } goes down: a { $rail } with a post under its middle is fitted across front and back of { NAME($units) }. It is not in the price.
   *[no] Before { NAME($slab) } goes down: a { $rail } is fitted across front and back of { NAME($units) }. It is not in the price.
}
rails-we-fit = { $post ->
    [yes] We fit a { $rail } with a post under its middle across the front and back of { NAME($units) }; that is in the price.
   *[no] We fit a { $rail } across the front and back of { NAME($units) }; that is in the price.
}
rails-first = { $post ->
    [yes] We fit first, before { NAME($slab) } goes down: a { $rail } with a post under its middle across the front and back of { NAME($units) }. Keep those units empty.
   *[no] We fit first, before { NAME($slab) } goes down: a { $rail } across the front and back of { NAME($units) }. Keep those units empty.
}
flat-rail-in-the-way = Under an opening of { NAME($slab) } the flat rail of { NAME($units) }, { $wide } wide, is in the way. Have it stand on edge, in front of the opening and behind it.
