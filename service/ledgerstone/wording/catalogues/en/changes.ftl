# What differs between an earlier offer and this one.

change-joins = How the slabs join is changed.
change-area = The delivery is to: { $area }.
change-asked = { $what ->
    [sample-tile] { $asked ->
        [yes] A sample tile is asked for.
       *[no] No sample tile is asked for any more.
    }
    [templating] { $asked ->
        [yes] We come and measure it.
       *[no] You measure it yourself.
    }
   *[heated-curing] { $asked ->
        [yes] It cures in our heated tent.
       *[no] It cures without the heated tent.
    }
}
change-needed-by = It is needed by { $day }.
change-not-needed-by = It is no longer needed by a certain day.
change-left-out = { NAME($thing, start: "yes") } is left out.
change-slab-added = { NAME($slab, start: "yes") } is added.
change-label = { NAME($slab, start: "yes") } was called “{ $old }”.
change-label-first = { NAME($slab, start: "yes") } has a name now.
change-outline = { NAME($slab, start: "yes") } is { $now }; it was { $was }.
change-outline-else = { NAME($slab, start: "yes") } has another outline.
change-polygon = a shape of { $sides } sides
change-round = round, { $across }
change-l = an L of { $length } by { $width } less { $notch_length } by { $notch_width } at its { $corner ->
    [front-left] front left
    [front-right] front right
    [back-left] back left
   *[back-right] back right
}
change-corners = with corners of { $radius }
change-corner = { $corner ->
    [front-left] front left
    [front-right] front right
    [back-left] back left
   *[back-right] back right
} corner { $radius }
change-thickness = { NAME($slab, start: "yes") } is { $now } thick; it was { $was }.
change-quantity = There are { $now } of { NAME($slab) }; there were { $was }.
change-use = { NAME($slab, start: "yes") } is used as { $now }; it was { $was }.
change-use-name = { $use ->
    [worktop] a worktop
    [upstand] an upstand
    [splashback] a splashback
    [end-panel] an end panel
    [shelf] a shelf
    [table] a table
    [hearth] a hearth
   *[sill] a sill
}
change-size-from = { NAME($slab, start: "yes") } is made from { $now }; it was { $was }.
change-source-name = { $source ->
    [finished] the finished sizes
    [between-walls] sizes between walls
    [over-units] sizes over the units
   *[template-to-follow] a template that is to follow
}
change-shade = { NAME($slab, start: "yes") } is in { $now }; it was in { $was }.
change-usual-shade = the usual shade
change-finish = { NAME($slab, start: "yes") } is { $now }; it was { $was }.
change-finish-name = { surface-name } with the { $sealer } sealer
change-place = { NAME($slab, start: "yes") } goes { $now }; it was { $was }.
change-place-name = { $place ->
    [outdoors] outdoors
    [wet-room] in a wet room
   *[indoors] indoors
}
change-edge = The edge of { NAME($slab) } ({ $sides }) is { $now }; it was { $was }.
change-rests = { NAME($slab, start: "yes") } now rests so: { $now }. Before: { $was }.
change-rests-else = What carries { NAME($slab) } is changed.
change-not-given = not given
change-overhang = { NAME($slab, start: "yes") } hangs over { $now } at { NAME($side) }; it was { $was }.
change-rails = { $rails ->
    [hardwood] Hardwood rails are fitted
    [steel] Steel rails are fitted
   *[cabinet] The cabinets' own rails are
} across the front and the back of the units of { NAME($slab) }.
change-legs = The legs of { NAME($slab) } stand elsewhere.
change-cutout-numbered = cut-out { $number }
change-cutout-left-out = { NAME($cutout, start: "yes") } in { NAME($slab) } is left out.
change-cutout-added = { NAME($cutout, start: "yes") } is added to { NAME($slab) }.
change-cutout-size = { NAME($cutout, start: "yes") } is { $now }; it was { $was }.
change-across = { $across } across
change-cutout-place = { NAME($cutout, start: "yes") } is moved { $steps }: it is centred { $x } from the left and { $y } from the front.
change-cutout-corners = The corners of { NAME($cutout) } are rounded to { $radius }.
change-cutout-turned = { NAME($cutout, start: "yes") } { $degrees ->
    [0] is no longer turned
   *[other] is turned by { $degrees }°
}.
change-cutout-open = { NAME($cutout, start: "yes") } runs out through { NAME($side) }.
change-cutout-rim = { $rim ->
    [covered] The rim of { NAME($cutout) } is covered.
   *[shown] The rim of { NAME($cutout) } is seen, and finished.
}
change-cutout-else = { NAME($cutout, start: "yes") } is made in another way.
change-relief-place = { NAME($relief, start: "yes") } is moved { $steps }.
change-relief-depth = { NAME($relief, start: "yes") } is { $now } deep; it was { $was }.
change-relief-size = { NAME($relief, start: "yes") } is { $now }; it was { $was }.
change-relief-else = { NAME($relief, start: "yes") } is made in another way.
change-joined = { NAME($one, start: "yes") } and { NAME($other) } are joined.
change-delivery = It is { $now }; it was to be { $was }.
change-way-name = { $way ->
    [pallet] delivered on a pallet
    [own-van] delivered by our own van
    [fitted] delivered and fitted
   *[collect] collected from the workshop
}
change-way-in = What we know of the way in is changed.
