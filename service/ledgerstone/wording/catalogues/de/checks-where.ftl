# Stellen auf einer Platte, wie sie im Satz stehen: „könnte am linken Ende reißen“.

spot-beside = neben { NAME($cutout, case: "dative") }
spot-beside-narrow = neben { NAME($cutout, case: "dative") } (dort ist der Beton { $width } breit)
spot-corner = { $corner ->
    [front-left] nahe der Ecke vorn links
    [front-right] nahe der Ecke vorn rechts
    [back-left] nahe der Ecke hinten links
   *[back-right] nahe der Ecke hinten rechts
}
spot-middle-of-edge = { $row ->
    [front] in der Mitte der vorderen Kante
   *[back] in der Mitte der hinteren Kante
}
spot-end = { $side ->
    [left] nahe dem linken Ende
   *[right] nahe dem rechten Ende
}
spot-middle = in der Mitte
spot-edge = { $row ->
    [front] an der vorderen Kante (etwa { $left } von links)
   *[back] an der hinteren Kante (etwa { $left } von links)
}
spot-inside = etwa { $left } von links und { $front } von vorn
