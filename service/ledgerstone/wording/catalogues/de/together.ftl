# Die Zeichnung aller Teile eines Auftrags zusammen und Teile einer Platte in wahrer Größe.

together-title = Die Teile zusammen, von oben
together-pieces = { $count } Teile von oben.
together-front = VORN
together-hand = { NAME($piece, start: "yes") }: { $hand }.
together-meeting = { NAME($piece, start: "yes") } { $way ->
    [behind] steht hinter { NAME($that, case: "dative") }
    [before] steht vor { NAME($that, case: "dative") }
    [along] setzt { NAME($that, case: "accusative") } nach { together-side } fort
    [back] führt { together-side } von { NAME($that, case: "dative") } nach hinten
    [forward] führt { together-side } von { NAME($that, case: "dative") } nach vorn
   *[beside] steht { together-side } von { NAME($that, case: "dative") }
}, von der Vorderseite { NAME($that, case: "genitive") } aus gesehen.
together-side = { $side ->
    [left] links
   *[right] rechts
}
together-piece = { $name }: { $count ->
    [one] { "" }
   *[other] { $count } Stück, je{ " " }
}{ $length } mal { $width }, { $thickness } dick
together-join = Fuge: an { $one } { NAME($piece, case: "genitive") } und { $other } { NAME($that, case: "genitive") }, { $gap } breit
together-unshown = Fuge { $letter } lässt sich nicht zeigen: Ihre beiden Seiten kommen hier nicht zusammen.
together-overlap = So wie diese Seiten zusammenstoßen, lägen zwei Teile am selben Ort.
together-backs = Wo eine Seite länger ist, sind die Teile mit den hinteren Seiten in einer Linie gezeigt: Der Auftrag sagt nur, welche Seiten zusammenstoßen.

true-size-cutout = Wahre Größe: { $name } ({ $letter }) { NAME($slab, case: "genitive") }
true-size-cutout-unnamed = Wahre Größe: Ausschnitt ({ $letter }) { NAME($slab, case: "genitive") }
true-size-corner = Wahre Größe: { $corner ->
    [front-left] Ecke vorn links
    [front-right] Ecke vorn rechts
    [back-left] Ecke hinten links
    [back-right] Ecke hinten rechts
   *[numbered] Ecke { $number }
} { NAME($slab, case: "genitive") }
true-size-radius = Radius { $radius }
true-size-sharp = scharf, die Kante leicht gebrochen
true-size-cut-out = Ausschnitt
true-size-slab = Platte
true-size-check = Messen Sie beide Maßstäbe nach, bevor Sie schneiden. Sind sie nicht 100 mm und 4 Zoll lang, drucken Sie noch einmal mit 100 %, nicht an die Seite angepasst. Schneiden Sie an den Marken und kleben Sie Kante an Kante.
true-size-sheet = Blatt { $name }
true-size-sheets = { $number } von { $count }
true-size-front = Vorderseite der Platte
