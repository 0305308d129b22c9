# Checks of what is left beneath: reliefs and drips.

relief-too-deep = { NAME($relief, start: "yes") } leaves { $left } of concrete beneath it; it needs { $limit }.
relief-goes-through = { NAME($relief, start: "yes") } is { $depth } deep and goes right through the slab; it needs { $limit }.
relief-made-with-care = { NAME($relief, start: "yes") } leaves { $left } of concrete beneath it. We make it, with care; { $limit } would travel better.
relief-off-slab = { NAME($relief, start: "yes") } reaches past the edge of { NAME($slab) }.
too-thin-for-drip = A drip is a groove { $drip } deep beneath the edge; a slab of { $thickness } is too thin for one: it needs { $limit }.
