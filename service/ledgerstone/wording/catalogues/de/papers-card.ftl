# Die Tragekarte an der Kiste, eine Viertelseite, und das Etikett des Reparaturtopfs.

card-title = Tragekarten { $reference }
card-hands = { $people }, mit Tragklammern
card-up = ↑ OBEN ↑
card-edge = Eine lange Kante unten, den ganzen Weg hochkant
card-flat = Flach, Sichtseite oben, den ganzen Weg
card-grip = Fassen { $first } und { $last } von den Enden
card-bearers = { $side ->
    [front] Auf Lagerhölzern, Mitten { $places } mm von der vorderen Kante
   *[left] Auf Lagerhölzern, Mitten { $places } mm von der linken Kante
}
card-rail = Vor dem Bewegen die Schiene klemmen wie gezeichnet
card-size = { $length } × { $width } × { $thickness } mm
card-is = Maße
card-look = Aussehen
card-wrapped = Verpackt
card-weighed = Gewogen
card-weighed-line = ____________ kg
card-not-flat = Nie flach an den Enden
card-set-down = Auf Holz oder Schaumstoff absetzen, nie auf eine Ecke
card-two-hands = Jeder mit beiden Händen, feste Schuhe, der Weg vorher abgegangen und frei
card-lifting = Keine Masse hier ist eine sichere Grenze: vor jedem Heben Weg, Boden und Träger ansehen; nie allein heben, was zwei braucht.
card-pot = Etikett des Reparaturtopfs: { $name }
card-pot-label = { $reference } · { $shade } · { $kg } kg trockene Schlämme, Zement und Pigment, kein Sand. Ganzer Topf: { $water_g } g Wasser, oder ein Teelöffel ({ $spoon_g } g) auf { $powder_g } g; einreiben. Binnen { $minutes } Minuten verarbeiten; { $days } Tage feucht halten.
card-pot-skin = Verätzt Haut und Augen: Handschuhe und Brille; trocken und von Kindern fernhalten. Haltbar etwa { $months } Monate.
