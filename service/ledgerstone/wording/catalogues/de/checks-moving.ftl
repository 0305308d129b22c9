# Prüfungen, wie eine Platte bewegt wird.

cracks-when-moved = { moved-when } würde { NAME($slab) } { $where } reißen.
near-cracking-when-moved = { moved-when } wäre { NAME($slab) } { $where } nahe daran zu reißen. Wir heben sie so, dass sie nicht reißt; niemand sonst sollte sie flach heben.
moved-when = { $moved ->
    [lifted-out] Beim Ausschalen { days-after-casting }
    [turned] Beim Aufrichten { days-after-casting }
    [on-edge] Hochkant gehalten { days-after-casting }
    [carried] Getragen { days-after-casting }
   *[on-bearers] Auf der Palette liegend
}
days-after-casting = { $days ->
    [1] { $days } Tag nach dem Guss
   *[other] { $days } Tage nach dem Guss
}
too-lopsided-to-turn = { NAME($slab, start: "yes") } ist zu einseitig, um sie sicher aufzurichten: Ihr Gewicht liegt auf einer Seite.
too-heavy-to-handle = { NAME($slab, start: "yes") } wiegt { $weight }; mit der Schalung ist das mehr als die { $most }, die wir aufrichten können.
carry-on-edge = Tragen Sie { NAME($slab, case: "accusative") } hochkant. Flach getragen könnte sie { $where } reißen.
carry-on-edge-or-it-tips = Tragen Sie { NAME($slab, case: "accusative") } hochkant. Flach getragen könnte sie kippen.
young-concrete = { HOWMANY($slabs) ->
    [1] { NAME($slabs, start: "yes") } wird jung ausgeschalt. Wir brechen vorher einen Probestreifen, um sicher zu sein, dass sie fest genug ist.
   *[other] { NAME($slabs, start: "yes") } werden jung ausgeschalt. Wir brechen vorher einen Probestreifen, um sicher zu sein, dass sie fest genug sind.
}
young-concrete-waits = { HOWMANY($slabs) ->
    [1] { NAME($slabs, start: "yes") } wird erst ausgeschalt, wenn ein Probestreifen aus demselben Beton gehalten hat.
   *[other] { NAME($slabs, start: "yes") } werden erst ausgeschalt, wenn ein Probestreifen aus demselben Beton gehalten hat.
}
