# Der Plan einer Platte in Worten: für wen sie nicht zu sehen ist, und auf dem Plan selbst.

plan-rectangle = Eine Platte { $length } mal { $width }, { $thickness } dick.
plan-round = Eine runde Platte, Durchmesser { $across }, { $thickness } dick.
plan-polygon = Eine Platte mit { $sides } Seiten, über alles { $length } mal { $width }, { $thickness } dick.
plan-l = Eine Platte in L-Form, { $length } mal { $width }, { $thickness } dick, ohne { $notch_length } mal { $notch_width } an der Ecke { $corner ->
    [front-left] vorn links
    [front-right] vorn rechts
    [back-left] hinten links
   *[back-right] hinten rechts
}: { $hand }.
plan-hand = von vorn gesehen geht ihr Schenkel { $arm ->
    [left] links
   *[right] rechts
} { $depth ->
    [front] nach vorn
   *[back] nach hinten
}
plan-upright = Sie ist { $use ->
    [upstand] eine Aufkantung
    [splashback] eine Rückwand
   *[end-panel] eine Seitenwange
}, die auf ihrer Vorderseite steht und hier liegend gezeichnet ist.
plan-opening = Ein Ausschnitt: { $facts }.
plan-opening-labelled = Ein Ausschnitt („{ $label }“): { $facts }.
plan-size-round = rund, Durchmesser { $across }
plan-size-boxed = { $kind ->
    [rectangle] Rechteck
   *[slot] Langloch
} { $length } mal { $width }
plan-size-oval = oval, { $length } mal { $width }
plan-size-polygon = { $sides } Seiten
plan-centre = Mitte { $x } von links und { $y } von vorn
plan-hot = heißes Gerät
plan-turned = um { $degrees }° gedreht
plan-open-to = offen zu { $side }
plan-rim-covered = Kante verdeckt
plan-template-to-follow = Schablone folgt
plan-relief = { plan-relief-kind }{ plan-grooves }, { $depth } tief, Ecke { $x } von links und { $y } von vorn.
plan-relief-labelled = { plan-relief-kind } („{ $label }“){ plan-grooves }, { $depth } tief, Ecke { $x } von links und { $y } von vorn.
plan-relief-kind = { $kind ->
    [drainer] Eine Abtropffläche
    [recess] Eine Vertiefung
   *[rebate] Ein Falz
}
plan-grooves = { $grooves ->
    [0] { "" }
   *[other] { " " }mit { $grooves } Rillen
}
plan-side-numbered = Seite { $number }
plan-side = { $side ->
    [rim] der Außenkante
    [notch-x] der Innenkante der Länge nach
    [notch-y] der Innenkante der Tiefe nach
    [left] der linken Seite
    [right] der rechten Seite
    [back] der hinteren Seite
   *[front] der vorderen Seite
}
plan-side-word = { $side ->
    [rim] rundum
    [notch-x] Innenkante der Länge nach
    [notch-y] Innenkante der Tiefe nach
    [left] links
    [right] rechts
    [back] hinten
   *[front] vorn
}
plan-sides-numbered = { $count ->
    [one] Seite { $numbers }
   *[other] Seiten { $numbers }
}
plan-edge = { START($sides) }: { $edge }.
plan-edge-bevel = Fase { $size }
plan-edge-round = gerundet { $size }
plan-edge-profile = { $profile ->
    [bevel] Fase
    [round] gerundet
    [wall] nicht sichtbar
   *[square] gerade, Kante gebrochen
}
plan-edge-drop = herabgezogen { $depth }
plan-edge-mitred = auf Gehrung
plan-edge-drip = Wassernase
plan-rests = Auflage: { $rests }.
plan-rest-unit = { $use ->
    [basin] Becken
    [hob] Kochfeld
    [gap] Lücke
   *[base] Schrank
} { $width }
rest-units = { $count ->
    [one] Unterschrank { $units }
   *[other] Unterschränke { $units }
}
rest-unit = { $width }{ $use ->
    [basin] { " " }(Spüle)
    [hob] { " " }(Kochfeld)
    [gap] { " " }(Passleiste)
   *[base] { "" }
}
plan-rest-frame = Gestell ({ $sides })
plan-rest-frame-all = Gestell (alle Seiten)
plan-rest-kind = { $kind ->
    [units] Schränke
    [ends] Auflager an beiden Enden
    [legs] { $count } Beine
    [ledges] { $count } Leisten
    [pedestal] ein Mittelfuß
   *[full] fester Unterbau, vollflächig
}
plan-rest-fixed = befestigt
plan-title = Plan: Platte
plan-title-labelled = Plan von „{ $label }“
plan-slab-numbered = Platte { $number }
plan-slab = Platte
plan-front = { $stands ->
    [yes] VORN, UNTEN
   *[no] VORN
}
plan-section = { START($sides) }: { $edge }
plan-facts = { $quantity ->
    [one] { $thickness } dick · { surface-name }, Versiegelung { $sealer }
   *[other] { $quantity } Stück · { $thickness } dick · { surface-name }, Versiegelung { $sealer }
}
plan-fact-rests = Auflage: { $rests }
plan-opening-word = Ausschnitt
plan-relief-word = { $kind ->
    [drainer] Abtropffläche
    [recess] Vertiefung
   *[rebate] Falz
}
plan-note-centre = Mitte { $x } von links, { $y } von vorn
plan-note-corners = Ecken R { $radius }
plan-note-corner = Ecke { $x } von links, { $y } von vorn
plan-note-fall = Gefälle { $fall }
plan-size-relief = { plan-relief-word }{ $grooves ->
    [0] { "" }
   *[other] , { $grooves } Rillen
}, { $depth } tief
plan-figures = { $unit ->
    [mm] Maße in mm
    [cm] Maße in cm
    [m] Maße in Metern
    [in] Maße in Zoll
   *[ft] Maße in Fuß und Zoll
}
plan-figures-and-more = { $figures }; { $count } weitere Stellen ohne Platz
plan-all-radii = alle R { $radius }
plan-radius = R { $radius }
plan-scale = { $paper ->
    [letter] Maßstab 1 : { $smaller }, 7 1/2 Zoll breit gedruckt; es gelten die Maßzahlen
   *[a4] Maßstab 1 : { $smaller }, 190 mm breit gedruckt; es gelten die Maßzahlen
}
