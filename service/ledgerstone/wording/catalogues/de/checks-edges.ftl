# Prüfungen der Kanten.

edge-too-small = { edge-profile } an { NAME($side, case: "dative") } misst { $size }; kleiner als { $limit } fertigen wir nicht.
edge-too-large = { edge-profile } an { NAME($side, case: "dative") } misst { $size }; größer als { $limit } fertigen wir nicht.
edge-profile = { $profile ->
    [bevel] Die Fase
    [round] Die Rundung
    [wall] Die Wandseite
   *[square] Die gerade Kante
}
edge-too-deep = { $is_left ->
    [nothing] { edge-profile } an { NAME($side, case: "dative") } nimmt { $size } von { $thickness } und lässt nichts übrig; es müssen { $limit } bleiben.
   *[some] { edge-profile } an { NAME($side, case: "dative") } nimmt { $size } von { $thickness } und lässt { $left } übrig; es müssen { $limit } bleiben.
}
edge-too-thin-for-finish = { $profile ->
    [none] Um { NAME($slab, case: "accusative") } zu { surface-verb }, brauchen wir { $limit } senkrechte Kante; ihre Kante hat { $left }.
    [bevel] Um { NAME($slab, case: "accusative") } zu { surface-verb }, brauchen wir { $limit } senkrechte Kante; unter der Fase an { NAME($side, case: "dative") } bleiben { $left }.
   *[round] Um { NAME($slab, case: "accusative") } zu { surface-verb }, brauchen wir { $limit } senkrechte Kante; unter der Rundung an { NAME($side, case: "dative") } bleiben { $left }.
}
