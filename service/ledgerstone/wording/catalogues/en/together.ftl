# The drawing of an order's pieces together, and parts of a slab on paper at true size.

together-title = The pieces together, from above
together-pieces = { $count } pieces from above.
together-front = FRONT
together-hand = { NAME($piece, start: "yes") }: { $hand }.
together-meeting = { NAME($piece, start: "yes") } { $way ->
    [behind] stands behind { NAME($that) }
    [before] stands before { NAME($that) }
    [along] carries on to the { together-side } of { NAME($that) }
    [back] goes back on the { together-side } of { NAME($that) }
    [forward] comes forward on the { together-side } of { NAME($that) }
   *[beside] stands on the { together-side } of { NAME($that) }
}, as you stand at the front of { NAME($that) }.
together-side = { $side ->
    [left] left
   *[right] right
}
together-piece = { $name }: { $count ->
    [one] { "" }
   *[other] { $count } of these, each{ " " }
}{ $length } by { $width }, { $thickness } thick
together-join = Join: { $one } of { NAME($piece) } meets { $other } of { NAME($that) }, gap { $gap }
together-unshown = Join { $letter } cannot be shown: its two sides do not come together here.
together-overlap = As these sides meet, two pieces would stand in one place.
together-backs = Where one side is longer, the pieces are shown with their backs in line: the order says only which sides meet.

true-size-cutout = True size: { $name } ({ $letter }) of { NAME($slab) }
true-size-cutout-unnamed = True size: cut-out ({ $letter }) of { NAME($slab) }
true-size-corner = True size: { $corner ->
    [front-left] front left corner
    [front-right] front right corner
    [back-left] back left corner
    [back-right] back right corner
   *[numbered] corner { $number }
} of { NAME($slab) }
true-size-radius = radius { $radius }
true-size-sharp = sharp, its arris eased
true-size-cut-out = cut out
true-size-slab = slab
true-size-check = Measure both rulers before you cut. If they are not 100 mm and 4 in long, print again at 100%, without scaling to the page. Trim along the marks and tape edge to edge.
true-size-sheet = Sheet { $name }
true-size-sheets = { $number } of { $count }
true-size-front = front of the slab
