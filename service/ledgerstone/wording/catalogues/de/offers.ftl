# Was eine Werkstatt neben der Platte selbst anbietet, und was aus einem Angebot geworden ist.

choice-sample-tile = { $tax ->
    [before-tax] Zuerst eine Musterplatte: { $price } vor Steuer für jedes Aussehen; bei einer Bestellung wird das wieder abgezogen.
   *[in-all] Zuerst eine Musterplatte: { $price } für jedes Aussehen; bei einer Bestellung wird das wieder abgezogen.
}
choice-templating = { $tax ->
    [before-tax] Aufmaß vor Ort: { $visit } und { $each } je Stück, vor Steuer.
   *[in-all] Aufmaß vor Ort: { $visit } und { $each } je Stück.
}
choice-sealer-food = { $declared ->
    [yes] Für den Kontakt mit Lebensmitteln erklärt.
   *[no] Nicht für den Kontakt mit Lebensmitteln erklärt: Bereiten Sie Speisen auf einem Brett zu.
}
choice-heated-curing = In unserem beheizten Zelt bei { $warmth } nachbehandeln, damit es früher fertig ist. Der Preis schließt das Zelt dann ein.
request-sent = Ihre Anfrage zu { $offer } ist bei { $workshop }.
request-answered = { $days ->
    [0] Die Antwort kommt von { $who }.
    [one] Die Antwort kommt von { $who }, innerhalb eines Werktags.
   *[other] Die Antwort kommt von { $who }, innerhalb von { $days } Werktagen.
} Noch ist nichts bestellt und niemand gebunden: Das geschieht erst mit Ihrem Ja zu dieser Antwort.
offer-made = Angeboten am { $issued } als { $standing ->
    [estimate] Kostenvoranschlag
   *[quotation] festes Angebot
} { $offer }.
offer-stands = { offer-made } { $standing ->
    [estimate] Seine Sätze gelten bis { $valid_until }.
   *[quotation] Sie können es bis { $valid_until } annehmen.
}
offer-stands-no-more = { offer-made } Es gilt nicht mehr; die Antwort von heute steht unten.
offer-expired = Sein letzter Tag war der { $valid_until }, { $days ->
    [one] gestern
   *[other] vor { $days } Tagen
}.
offer-revoked = Die Preise, die wir vor dem { $before } genannt haben, haben wir zurückgenommen.
offer-withdrawn = Das bieten wir nicht mehr an: { $what ->
    [shade] den Farbton „{ $name }“
    [sealer] die Versiegelung „{ $name }“
    [surface] die Oberfläche „{ $name }“
    [heated-curing] die beheizte Nachbehandlung
   *[area] die Lieferung in das Gebiet „{ $name }“
}.
offer-rates-changed = Unsere Preise oder unsere Auswahl haben sich seitdem geändert.
offer-calendar-changed = Unser Kalender hat sich seitdem geändert, der Termin kann deshalb ein anderer sein.
