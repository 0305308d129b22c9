# Prüfungen der Unterschränke unter einer Platte und der Traversen darüber.

unit-numbered = { $case ->
    [genitive] des Unterschranks { $number }
    [dative] dem Unterschrank { $number }
    [accusative] den Unterschrank { $number }
   *[nominative] der Unterschrank { $number }
}
unit-for = { $case ->
    [genitive] des Unterschranks für { NAME($cutout, case: "accusative") }
    [dative] dem Unterschrank für { NAME($cutout, case: "accusative") }
    [accusative] den Unterschrank für { NAME($cutout, case: "accusative") }
   *[nominative] der Unterschrank für { NAME($cutout, case: "accusative") }
}
cutout-over-unit-side = { NAME($cutout, start: "yes") } liegt über der Seitenwand { NAME($unit, case: "genitive") } und würde sie anschneiden.
cutout-wider-than-unit = { NAME($cutout, start: "yes") } liegt über der Seitenwand { NAME($unit, case: "genitive") } und würde sie anschneiden. { NAME($home, start: "yes") } ist innen { $inside } breit.
running-length = { $masses ->
    [lb] Fuß
   *[kg] Meter
}
load-on-units = { HOWMANY($slabs) ->
    [1] Die Unterschränke unter { NAME($slabs, case: "dative") } müssen geschlossene Seitenwände haben, befestigt und auf { $level } genau ausgerichtet sein und je { running-length } { $weight } tragen: Fragen Sie deren Hersteller.
   *[other] Die Unterschränke unter { NAME($slabs, case: "dative") } müssen geschlossene Seitenwände haben, befestigt und auf { $level } genau ausgerichtet sein und je { running-length } bis zu { $weight } tragen: Fragen Sie deren Hersteller.
}
rails-needed = { $fitted } Auf den eigenen Traversen des Schranks könnte { NAME($slab) } reißen. Hinten genügt auch eine Leiste an der Wand.
rails-fit = { $laid ->
    [by-us] { $post ->
        [yes] Lassen Sie, bevor wir kommen, vorn und hinten über { NAME($units, case: "dative") } eine Traverse mit einer Stütze unter ihrer Mitte einbauen: { $rail }. Sie ist nicht im Preis.
       *[no] Lassen Sie, bevor wir kommen, vorn und hinten über { NAME($units, case: "dative") } eine Traverse einbauen: { $rail }. Sie ist nicht im Preis.
    }
   *[by-others] { $post ->
        [yes] Lassen Sie vorn und hinten über { NAME($units, case: "dative") } eine Traverse mit einer Stütze unter ihrer Mitte einbauen: { $rail }.
       *[no] Lassen Sie vorn und hinten über { NAME($units, case: "dative") } eine Traverse einbauen: { $rail }.
    }
}
rails-before = { $post ->
    [yes] Bevor { NAME($slab) } aufliegt: Lassen Sie vorn und hinten über { NAME($units, case: "dative") } eine Traverse mit einer Stütze unter ihrer Mitte einbauen: { $rail }. Sie ist nicht im Preis.
   *[no] Bevor { NAME($slab) } aufliegt: Lassen Sie vorn und hinten über { NAME($units, case: "dative") } eine Traverse einbauen: { $rail }. Sie ist nicht im Preis.
}
rails-we-fit = { $post ->
    [yes] Wir bauen vorn und hinten über { NAME($units, case: "dative") } eine Traverse mit einer Stütze unter ihrer Mitte ein: { $rail }; das ist im Preis enthalten.
   *[no] Wir bauen vorn und hinten über { NAME($units, case: "dative") } eine Traverse ein: { $rail }; das ist im Preis enthalten.
}
rails-first = { $post ->
    [yes] Bevor { NAME($slab) } aufliegt, bauen wir vorn und hinten über { NAME($units, case: "dative") } eine Traverse mit einer Stütze unter ihrer Mitte ein: { $rail }. Räumen Sie diese Schränke aus.
   *[no] Bevor { NAME($slab) } aufliegt, bauen wir vorn und hinten über { NAME($units, case: "dative") } eine Traverse ein: { $rail }. Räumen Sie diese Schränke aus.
}
flat-rail-in-the-way = Unter einem Ausschnitt in { NAME($slab, case: "dative") } ist die flache, { $wide } breite Traverse von { NAME($units, case: "dative") } im Weg. Lassen Sie sie hochkant einbauen, vor dem Ausschnitt und dahinter.
