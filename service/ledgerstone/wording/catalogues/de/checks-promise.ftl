# Prüfungen, wohin und bis wann die Werkstatt liefert.

postcode-needed = Geben Sie die Postleitzahl ein, damit wir die Lieferung { delivery-way } berechnen können, oder holen Sie die Bestellung ab.
postcode-unknown = „{ $postcode }“ ist keine vollständige Postleitzahl. Geben Sie die ganze Postleitzahl ein, oder wählen Sie „Ich hole es ab“.
area-not-served = Nach { $postcode } liefern wir nicht.
way-not-served = Nach { $area } liefern wir nicht { delivery-way }.
delivery-way = { $way ->
    [pallet] auf Palette
    [own-van] mit unserem Transporter
   *[fitted] mit Einbau
}
no-day-free = In unserem Kalender ist kein Tag frei, bis zu dem das fertig sein könnte; wir nennen deshalb keinen Termin. Schreiben Sie uns, dann sehen wir gemeinsam nach.
needed-by = { $way ->
    [collect] Sie brauchen es bis zum { $needed_by }; bei Bestellung heute können Sie es ab dem { $arrives } abholen.
   *[other] Sie brauchen es bis zum { $needed_by }; bei Bestellung heute kann es bis zum { $arrives } bei Ihnen sein.
}
needed-by-past = Dieser Tag ist vorbei. Geben Sie einen späteren ein.
