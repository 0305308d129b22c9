# Die Arbeitsschritte, wie Werkstattblatt, Plan und frühere Aufträge sie nennen.

step-tile = Musterplatte gießen: { $shade }, { $surface }
step-yes = Ja zum Muster
step-in-hand = Schablonen, Becken, Zeichnung da
step-set-up = Einrichten
step-tent = Heizzelt aufbauen
step-level = Tisch ausrichten
step-clean-up = Mischer, Werkzeug reinigen
step-mould = Schalung bauen
step-knockouts = Aussparungskörper bauen
step-bead = Fuge ziehen
step-release = Trennmittel aufwischen
step-again = Schalung wieder reinigen und ölen
step-steel = Bewehrung schneiden, binden
step-mix = Wiegen und mischen
step-face = Vorsatz
step-place = Einlegen, hinterfüllen
step-strike = Abziehen und rütteln
step-cover = Feucht abdecken
step-sand = Rücken schleifen
step-turn = Wenden
step-turn-way = Wenden: { $way }
step-demould = Ausschalen
step-knockouts-out = Körper herausnehmen
step-wash = Waschen
step-grind = Schleifen: Körnung { $grit }
step-fill = Poren füllen
step-fill-again = Poren noch einmal füllen
step-finish = Oberfläche: { plan-surface }
step-seal = Versiegeln: { $sealer }
step-seal-coat = Versiegeln: { $sealer }, Schicht { $coat }
step-test = Wasserprobe, wiegen
step-pack = Verpacken
step-crate = { $count ->
    [one] Kiste bauen
   *[other] Kisten bauen
}
step-keep = Behalten, bis sie fest genug ist, um auf ihren Auflagern zu liegen

# Was ein Auftrag die Werkstatt kostet.
cost-hours = Stunden: { $step }
cost-recasts = Rücklage für neuen Guss
cost-tiles = Beton der Musterplatten
cost-consumables = Verbrauchsmaterial
cost-packing = Verpackung
cost-pads = Schleifpads

plan-table = Gießtisch { $number }: { $slabs }
plan-slab-number = Platte { $number }
