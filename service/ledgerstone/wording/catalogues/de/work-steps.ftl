# Die Arbeitsschritte, wie Werkstattblatt, Plan und frühere Aufträge sie nennen.

step-tile = Musterplatte gießen: { $shade }, { surface-name }
step-yes = Freigabe der Musterplatte
step-in-hand = Schablonen, Becken, Zeichnung da
step-set-up = Einrichten
step-tent = Heizzelt aufbauen
step-level = Tisch ausrichten
step-clean-up = Mischer, Werkzeug reinigen
step-mould = Schalung bauen
step-knockouts = Aussparungskörper bauen
step-bead = Silikonfugen
step-release = Trennmittel auftragen
step-again = Schalung wieder reinigen und ölen
step-steel = Bewehrung schneiden, binden
step-mix = Wiegen und mischen
step-face = Vorsatzbeton
step-place = Bewehrung, Kernbeton
step-strike = Abziehen und rütteln
step-cover = Feucht abdecken
step-sand = Rückseite schleifen
step-turn = Wenden
step-turn-way = Wenden: { $way }
step-demould = Ausschalen
step-knockouts-out = Aussparungskörper heraus
step-wash = Waschen
step-grind = Schleifen: Körnung { $grit }
step-fill = Poren füllen
step-fill-again = Poren noch einmal füllen
step-finish = Oberfläche: { surface-name }
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
cost-material = { $thing ->
    [mould-board] Schalungsplatten
    [foam] Schaumstoff
    [flexible-strip] Biegestreifen
    [screws] Schrauben
    [sealant-bead] Fugenmasse
    [release-agent] Trennmittel
    [bars] Stäbe
    [mesh] Matten
   *[white-cement] Weißzement, Aufpreis
}
cost-part = { START($part) }
cost-sealer = Versiegelung: { $sealer }
cost-recasts = Rücklage für Neuguss
cost-tiles = Beton der Musterplatten
cost-consumables = Verbrauchsmaterial
cost-packing = Verpackung
cost-pads = Schleifpads

plan-table = Gießtisch { $number }: { $slabs }
plan-whose = { $named ->
    [yes] { $slabs } für { $customer }
   *[no] { $slabs }
}
plan-leaves = { $way ->
    [collect] Abholung: { $slabs }
    [pallet] Ankunft auf Palette: { $slabs }
    [own-van] Wir liefern: { $slabs }
    [fitted] Wir liefern und montieren: { $slabs }
   *[ready] Fertig: { $slabs }
}
