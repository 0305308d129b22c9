# Places on a slab, as they stand in sentences: “could crack near the left end”.

spot-beside = beside { NAME($cutout) }
spot-beside-narrow = beside { NAME($cutout) } (the concrete there is { $width } wide)
spot-corner = { $corner ->
    [front-left] near the front left corner
    [front-right] near the front right corner
    [back-left] near the back left corner
   *[back-right] near the back right corner
}
spot-middle-of-edge = { $row ->
    [front] at the middle of the front edge
   *[back] at the middle of the back edge
}
spot-end = { $side ->
    [left] near the left end
   *[right] near the right end
}
spot-middle = in the middle
spot-edge = { $row ->
    [front] at the front edge, about { $left } from the left
   *[back] at the back edge, about { $left } from the left
}
spot-inside = about { $left } from the left and { $front } from the front
