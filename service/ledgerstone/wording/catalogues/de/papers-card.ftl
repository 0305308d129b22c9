# Die Tragekarte an der Kiste, eine Viertelseite, und das Etikett der Reparaturdose.

card-title = Tragekarten { $reference }
card-hands = { $gear ->
    [yes] Wagen oder Hebezeug, nie von Hand allein
   *[no] { $people }, mit Tragklemmen
}
card-up = ↑ OBEN ↑
card-edge = Eine lange Kante unten, den ganzen Weg hochkant
card-flat = Flach, Sichtseite oben, den ganzen Weg
card-grip = Fassen { $first } und { $last } von den Enden
card-bearers = { $side ->
    [front] Auf Lagerhölzern, Mitten { $places } { job-unit } von der vorderen Kante
   *[left] Auf Lagerhölzern, Mitten { $places } { job-unit } von der linken Kante
}
card-rail = Vor dem Bewegen die Schiene anklemmen wie gezeichnet
card-size = { $length } × { $width } × { $thickness } { job-unit }
card-is = Maße
card-look = Aussehen
card-wrapped = Verpackt
card-weighed = Gewogen
card-weighed-line = ____________ { job-mass-unit }
card-not-flat = Nie flach an den Enden
card-set-down = Auf Holz oder Schaumstoff absetzen, nie auf eine Ecke
card-two-hands = Jeder mit beiden Händen, feste Schuhe, der Weg vorher abgegangen und frei
card-lifting = Keine Masse hier ist eine sichere Grenze: vor jedem Heben Weg, Boden und Tragende prüfen; nie allein heben, was zwei braucht.
card-pot = Etikett der Reparaturdose: { $name }
card-pot-label = { $reference } · { $shade } · { $masses ->
    [lb] { $oz } oz
   *[kg] { $kg } kg
} trockener Spachtel, Zement und Pigment, kein Sand. { $masses ->
    [lb] Ganze Dose: { $water_oz } oz Wasser, oder ein Teelöffel auf { $powder_oz } oz; einreiben.
   *[kg] Ganze Dose: { $water_g } g Wasser, oder ein Teelöffel ({ $spoon_g } g) auf { $powder_g } g; einreiben.
} Binnen { $minutes } Minuten verarbeiten; { $days } Tage feucht halten.
card-pot-skin = Verätzt Haut und Augen: Handschuhe und Brille; trocken und von Kindern fernhalten. Haltbar etwa { $months } Monate.
