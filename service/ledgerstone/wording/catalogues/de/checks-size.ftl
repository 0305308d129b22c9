# Prüfungen der Größe eines Stücks und seines Gusses.

too-big-for-table = { NAME($slab, start: "yes") } misst { $length } mal { $width }; das größte Stück, das wir gießen, misst { $most_length } mal { $most_width }.
too-thin = { NAME($slab, start: "yes") } ist { $thickness } dick; dünner als { $limit } gießen wir nicht.
too-thick = { NAME($slab, start: "yes") } ist { $thickness } dick; dicker als { $limit } gießen wir nicht.
odd-thickness = { $thickness } ist keine unserer üblichen Dicken ({ $usual }); die Seiten der Schalung schneiden wir eigens zu.
thickness-taken = { $usual ->
    [no] Zur Dicke war nichts gesagt: Unsere übliche reicht hier nicht, wir haben { $thickness } genommen.
   *[yes] Zur Dicke war nichts gesagt: Wir haben unsere übliche genommen, { $thickness }.
}
left-to-us = Wo nichts gesagt war, haben wir angenommen: { $things }.
taken-place = { $place ->
    [outdoors] Außenbereich
    [wet-room] Nassraum
   *[indoors] Innenraum
}
taken-shade = Farbton „{ $shade }“
taken-sealer = Versiegelung { $sealer }
taken-edges = gerade Kanten
taken-units = Unterschränke in üblichen Breiten (von links { $units })
taken-units-under = Unterschränke unter { NAME($slab, case: "dative") } (von links { $units })
taken-unit = { $use ->
    [gap] eine Passleiste von { $width }
   *[unit] { $count ->
        [one] einer von { $width }
       *[other] { $count } von { $width }
    }
}
taken-rims = Rand sichtbar und bearbeitet ({ $cutouts })
taken-delivery = Sie holen selbst ab
sliver = { NAME($slab, start: "yes") } ist { $width } breit; schmaler als { $limit } gießen wir nicht.
neck-too-narrow = { NAME($slab, start: "yes") } hat eine Stelle, die schmaler ist als die Dicke von { $thickness }: Dort würde sie abbrechen.
pour-too-slow = { NAME($slab, start: "yes") } braucht { $batches } Mischungen Beton: Die letzte käme { $minutes } Minuten nach der ersten, und unser Beton bleibt { $open_minutes } Minuten verarbeitbar.
