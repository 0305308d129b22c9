# Die Zeilen eines Preises. $area und $pallet sind die eigenen Worte der Werkstatt.

price-making = { $group ->
    [materials] Material
    [making] Schalung und Guss
    [finishing] Oberfläche und Versiegelung
   *[tiles] Musterplatten
}
price-smallest-order = Aufschlag bis zum Mindestauftrag
price-tile = Musterplatte, vorab bezahlt
price-tile-credit = Musterplatte, bei Bestellung angerechnet
price-measuring = Aufmaß vor Ort
price-rails = Traversen über den Schränken, eingebaut
price-cover = Transportversicherung
price-delivery = { $way ->
    [pallet] Lieferung auf Palette: { $area }
    [own-van] Lieferung: { $area }
   *[fitted] Lieferung und Einbau: { $area }
}
price-delivery-on = Lieferung („{ $pallet }“): { $area }
price-rounding = Rundung
