# Namen von Platten, Ausschnitten, Vertiefungen und Seiten, in allen vier Fällen.
# Der Fall steht in { $case }: nominative, genitive, dative, accusative.

slab-labelled = { $case ->
    [genitive] der Platte „{ $label }“
    [dative] der Platte „{ $label }“
   *[nominative] die Platte „{ $label }“
}
slab-numbered = { $case ->
    [genitive] der Platte { $number }
    [dative] der Platte { $number }
   *[nominative] die Platte { $number }
}
slab-only = { $case ->
    [genitive] der Platte
    [dative] der Platte
   *[nominative] die Platte
}
slabs-all = { $case ->
    [genitive] der Platten
    [dative] den Platten
   *[nominative] die Platten
}

cutout-labelled = { $case ->
    [genitive] des Ausschnitts „{ $label }“
    [dative] dem Ausschnitt „{ $label }“
    [accusative] den Ausschnitt „{ $label }“
   *[nominative] der Ausschnitt „{ $label }“
}
relief-labelled = { $case ->
    [genitive] der Vertiefung „{ $label }“
    [dative] der Vertiefung „{ $label }“
   *[nominative] die Vertiefung „{ $label }“
}
cutout = { $case ->
    [genitive] des { nth-stem-en }{ cutout-kind-stem }en Ausschnitts
    [dative] dem { nth-stem-en }{ cutout-kind-stem }en Ausschnitt
    [accusative] den { nth-stem-en }{ cutout-kind-stem }en Ausschnitt
   *[nominative] der { nth-stem-e }{ cutout-kind-stem }e Ausschnitt
}
cutout-kind-stem = { $kind ->
    [circle] rund
    [rectangle] rechteckig
    [slot] länglich
   *[polygon] frei geformt
}
relief = { $kind ->
    [drainer] { relief-feminine-article }{ relief-feminine-nth }Abtropffläche
    [recess] { relief-feminine-article }{ relief-feminine-nth }Vertiefung
   *[rebate] { $case ->
        [genitive] des { nth-stem-en }Falzes
        [dative] dem { nth-stem-en }Falz
        [accusative] den { nth-stem-en }Falz
       *[nominative] der { nth-stem-e }Falz
    }
}
relief-feminine-article = { $case ->
    [genitive] der{ " " }
    [dative] der{ " " }
   *[nominative] die{ " " }
}
relief-feminine-nth = { $case ->
    [genitive] { nth-stem-en }
    [dative] { nth-stem-en }
   *[nominative] { nth-stem-e }
}
nth-stem-e = { $nth ->
    [0] { "" }
   *[other] { nth-stem }e{ " " }
}
nth-stem-en = { $nth ->
    [0] { "" }
   *[other] { nth-stem }en{ " " }
}
nth-stem = { $nth ->
    [1] erst
    [2] zweit
    [3] dritt
    [4] viert
    [5] fünft
    [6] sechst
    [7] siebt
    [8] acht
    [9] neunt
    [10] zehnt
    [11] elft
    [12] zwölft
    [13] dreizehnt
    [14] vierzehnt
    [15] fünfzehnt
    [16] sechzehnt
    [17] siebzehnt
    [18] achtzehnt
    [19] neunzehnt
   *[20] zwanzigst
}

side-numbered = { $case ->
    [genitive] der Seite { $number }
    [dative] der Seite { $number }
   *[nominative] die Seite { $number }
}
side = { $case ->
    [genitive] { side-dative }
    [dative] { side-dative }
   *[nominative] { $side ->
        [rim] die Außenkante
        [notch-x] die Innenkante
        [notch-y] die Innenkante
        [left] die linke Kante
        [right] die rechte Kante
        [back] die hintere Kante
       *[front] die vordere Kante
    }
}
side-dative = { $side ->
    [rim] der Außenkante
    [notch-x] der Innenkante
    [notch-y] der Innenkante
    [left] der linken Kante
    [right] der rechten Kante
    [back] der hinteren Kante
   *[front] der vorderen Kante
}

# Aufzählungen: zwischen zweien, vor dem letzten, und für das Ungenannte.
list-between = { $one }, { $other }
list-last-and = { $one } und { $other }
list-last-or = { $one } oder { $other }
list-last-comma-and = { $one } und { $other }
list-sentences = { $one } { $other }
list-semicolon = { $one }; { $other }
list-more = { $one }, { $other } und { $count } weitere

people = { $count ->
    [0] niemand
    [1] { $case ->
        [genitive] einer Person
        [dative] einer Person
       *[nominative] eine Person
    }
    [2] zwei Personen
    [3] drei Personen
    [4] vier Personen
    [5] fünf Personen
    [6] sechs Personen
    [7] sieben Personen
    [8] acht Personen
   *[other] { $count } Personen
}
