# Eine Anfrage von der Seite, als der Brief, den die Werkstatt bekommt.

request-subject = „Das möchte ich“: { $offer }, { $total }
request-name = Wer: { $name }
request-answer-to = Antwort an: { $reach }
request-offer = { $standing ->
    [estimate] Kostenvoranschlag
   *[quotation] Angebot
}: { $offer }
request-of = Für: { $slabs }
request-total = Gesamtpreis: { $total }
request-ready = Fertig am: { $ready }, bestellt bis zum { $by }
request-offered = { $stands ->
    [yes] Angeboten am: { $issued }; es gilt noch
   *[no] Angeboten am: { $issued }; es gilt nicht mehr
}
request-area = Liefergebiet: { $area }
request-link = Zum Angebot: { $link }
request-token = Zum Angebot: für einen Link zu lang; das Token des Angebots ist { $token }
request-note = Anmerkung:
