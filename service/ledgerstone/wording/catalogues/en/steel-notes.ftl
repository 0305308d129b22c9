# What the workshop should know of the steel in a slab.

steel-indoors = Plain steel will do indoors, stainless or glass fibre as well.
steel-stainless = { $place ->
    [outdoors] Outdoors, stainless steel or glass fibre: they do not rust under thin cover.
   *[wet-room] In a wet room, stainless steel or glass fibre: they do not rust under thin cover.
}
steel-would-rust = { $place ->
    [outdoors] Outdoors, plain steel rusts under thin cover: take stainless or glass fibre.
   *[wet-room] In a wet room, plain steel rusts under thin cover: take stainless or glass fibre.
}
steel-cover-short = In { $thickness } the reinforcement has { $kept } { job-unit } of cover; { $wanted } { job-unit } is wanted. Use thinner bars, glass fibre, or a thicker slab.
steel-thick-bar = { $lengths ->
    [in] Take 1/4 or 5/16 in bars before { $bar } in: in a thin slab they leave more cover.
   *[mm] Take 6 or 8 mm bars before { $bar } mm: in a thin slab they leave more cover.
}
steel-hang = Hang it from the mould's sides by wire, or lay it on the stiff first layer, so that it lies in mid-depth: it must not sink, or it shows through a dark face.
steel-cut-back = Cut the mesh back from every opening by the cover.
steel-way = { $way ->
    [along] lengthwise
   *[across] across
}
steel-way-apart = { steel-way } { $spacing } { job-unit }
steel-bars-hold = After a crack { $bar } { job-unit } bars hold it, { $ways } apart: { $limit } { job-stress-unit } with the mesh, no less than the slab cracks at{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 6.1, 9.2.1.1)
 }.
steel-mesh-holds = After a crack the mesh holds it { $ways }{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 6.1)
 }.
steel-plain = Judged as plain concrete { $ways } after a crack: { $asked } { job-stress-unit } of { $limit } { job-stress-unit }{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 12.3.1)
 }.
steel-short = Too short to be anchored for all of their strength: { $bars }. They count in that proportion{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 8.4)
 }.
steel-short-bar = { $mark } { $percent }
steel-laps = Bars longer than { $most } { job-unit } come in parts that overlap by { $lap } { job-unit }, wired side by side{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 8.7)
 }.
