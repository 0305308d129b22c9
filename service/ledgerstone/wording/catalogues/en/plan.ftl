# A slab's plan in words: for who cannot see it, and on it.

plan-rectangle = A slab { $length } by { $width }, { $thickness } thick.
plan-round = A round slab { $across } across, { $thickness } thick.
plan-polygon = A slab with { $sides } sides, { $length } by { $width } over all, { $thickness } thick.
plan-l = An L-shaped slab { $length } by { $width }, { $thickness } thick, less { $notch_length } by { $notch_width } at its { $corner ->
    [front-left] front left
    [front-right] front right
    [back-left] back left
   *[back-right] back right
} corner: { $hand }.
plan-hand = as you stand at its front, its arm { $depth ->
    [front] comes forward
   *[back] goes back
} on the { $arm ->
    [left] left
   *[right] right
}
plan-upright = It is { $use ->
    [upstand] an upstand
    [splashback] a splashback
   *[end-panel] an end panel
} that stands on its front side, drawn lying flat.
plan-opening = An opening: { $facts }.
plan-opening-labelled = An opening ({ $label }): { $facts }.
plan-size-round = round, { $across } across
plan-size-boxed = { $kind ->
    [rectangle] rectangle
   *[slot] slot
} { $length } by { $width }
plan-size-oval = oval { $length } by { $width }
plan-size-polygon = { $sides } sides
plan-centre = its centre { $x } from the left and { $y } from the front
plan-hot = hot appliance
plan-turned = turned { $degrees }°
plan-open-to = open to { $side }
plan-rim-covered = rim covered
plan-template-to-follow = template to follow
plan-relief = A { plan-relief-kind }{ plan-grooves }, { $depth } deep, its corner { $x } from the left and { $y } from the front.
plan-relief-labelled = A { plan-relief-kind } ({ $label }){ plan-grooves }, { $depth } deep, its corner { $x } from the left and { $y } from the front.
plan-relief-kind = { $kind ->
    [drainer] drainer
    [recess] recess
   *[rebate] rebate
}
plan-grooves = { $grooves ->
    [0] { "" }
   *[other] { " " }with { $grooves } grooves
}
plan-side-numbered = side { $number }
plan-side = { $side ->
    [rim] the rim
    [notch-x] the notch along the length
    [notch-y] the notch along the width
    [left] the left
    [right] the right
    [back] the back
   *[front] the front
}
plan-side-word = { $side ->
    [rim] rim
    [notch-x] notch along the length
    [notch-y] notch along the width
    [left] left
    [right] right
    [back] back
   *[front] front
}
plan-sides-numbered = { $count ->
    [one] side { $numbers }
   *[other] sides { $numbers }
}
plan-edge = { START($sides) }: { $edge }.
plan-edge-bevel = bevel { $size }
plan-edge-round = round { $size }
plan-edge-profile = { $profile ->
    [bevel] bevel
    [round] round
    [wall] unseen
   *[square] square, arris eased
}
plan-edge-drop = drop { $depth }
plan-edge-mitred = mitred
plan-edge-drip = drip
plan-rests = It rests on { $rests }.
plan-rest-unit = { $use ->
    [basin] bowl
    [hob] hob
    [gap] gap
   *[base] base
} { $width }
rest-units = { $count ->
    [one] unit { $units }
   *[other] units { $units }
}
rest-unit = { $width }{ $use ->
    [basin] { " " }(sink)
    [hob] { " " }(hob)
    [gap] { " " }(filler)
   *[base] { "" }
}
plan-rest-frame = a frame ({ $sides })
plan-rest-frame-all = a frame (all sides)
plan-rest-kind = { $kind ->
    [units] units
    [ends] its two ends
    [legs] { $count } legs
    [ledges] { $count } ledges
    [pedestal] a pedestal
   *[full] a solid base all over
}
plan-rest-fixed = fixed
plan-title = Plan: slab
plan-title-labelled = Plan: { $label }
plan-slab-numbered = Slab { $number }
plan-slab = Slab
plan-front = { $stands ->
    [yes] FRONT, ITS FOOT
   *[no] FRONT
}
plan-section = { START($sides) }: { $edge }
plan-facts = { $quantity ->
    [one] { $thickness } thick · { $surface }, { $sealer } sealer
   *[other] { $quantity } of these · { $thickness } thick · { $surface }, { $sealer } sealer
}
plan-fact-rests = Rests: { $rests }
plan-opening-word = opening
plan-relief-word = { plan-relief-kind }
plan-note-centre = centre { $x } from left, { $y } from front
plan-note-corners = corners R { $radius }
plan-note-corner = corner { $x } from left, { $y } from front
plan-note-fall = fall { $fall }
plan-size-relief = { plan-relief-kind }{ $grooves ->
    [0] { "" }
   *[other] , { $grooves } grooves
}, { $depth } deep
plan-figures = { $unit ->
    [mm] Figures in mm
    [cm] Figures in cm
    [m] Figures in metres
    [in] Figures in inches
   *[ft] Figures in feet and inches
}
plan-figures-and-more = { $figures }; { $count } more places without room
plan-all-radii = all R { $radius }
plan-radius = R { $radius }
plan-scale = { $paper ->
    [letter] Scale 1 : { $smaller } where printed 7 1/2 in wide; go by the figures
   *[a4] Scale 1 : { $smaller } where printed 190 mm wide; go by the figures
}
