# Prüfungen, was darunter bleibt: Vertiefungen und Wassernasen.

relief-too-deep = { NAME($relief, start: "yes") } lässt darunter { $left } Beton übrig; es müssen { $limit } sein.
relief-goes-through = { NAME($relief, start: "yes") } ist { $depth } tief und geht ganz durch die Platte; darunter müssen { $limit } bleiben.
relief-made-with-care = { NAME($relief, start: "yes") } lässt darunter { $left } Beton übrig. Wir fertigen das, mit Vorsicht; { $limit } würden den Transport besser überstehen.
relief-off-slab = { NAME($relief, start: "yes") } reicht über den Rand { NAME($slab, case: "genitive") } hinaus.
too-thin-for-drip = Eine Wassernase ist eine { $drip } tiefe Nut unter der Kante; eine Platte von { $thickness } ist dafür zu dünn: Sie braucht { $limit }.
