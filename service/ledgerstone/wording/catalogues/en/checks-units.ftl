# Checks of the units beneath a slab, and of the rails across them.

unit-numbered = unit { $number }
unit-for = the { $width } { $use } unit
unit-of = { $use ->
    [hob] the hob's unit
   *[basin] the basin's unit
}
cutout-over-unit-side = { NAME($cutout, start: "yes") } lies over the side of { NAME($unit) }, which it would cut into.
cutout-wider-than-unit = { NAME($cutout, start: "yes") } lies over the side of { NAME($unit) }, which it would cut into. { NAME($home, start: "yes") } is { $inside } wide inside.
load-on-units = { HOWMANY($slabs) ->
    [1] { NAME($slabs, start: "yes") } lays about { $weight } on each metre of its units. Have them solid-sided, fixed to the wall and level within { $level }; ask their supplier what load they take.
   *[other] { NAME($slabs, start: "yes") } lay up to { $weight } on each metre of their units. Have them solid-sided, fixed to the wall and level within { $level }; ask their supplier what load they take.
}
rails-needed = { $fitted } On the cabinet's own rails { NAME($slab) } could crack. At the back, a batten on the wall does as well.
rails-fit = { $post ->
    [yes] Have a { $rail } with a post under its middle fitted across the front and back of { NAME($units) }.
   *[no] Have a { $rail } fitted across the front and back of { NAME($units) }.
}
rails-before = { $post ->
    [yes] Before { NAME($slab) } goes down: have a { $rail } with a post under its middle fitted across the front and back of { NAME($units) }.
   *[no] Before { NAME($slab) } goes down: have a { $rail } fitted across the front and back of { NAME($units) }.
}
