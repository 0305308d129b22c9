# A customer's request from the page, as the letter that the workshop gets.

request-subject = “I'd like this one”: { $offer }, { $total }
request-name = Name: { $name }
request-answer-to = Answer to: { $reach }
request-offer = { $standing ->
    [estimate] Estimate
   *[quotation] Quotation
}: { $offer }
request-of = Of: { $slabs }
request-total = Total: { $total }
request-ready = Ready on: { $ready }, ordered by { $by }
request-offered = { $stands ->
    [yes] Offered on: { $issued }; it stands
   *[no] Offered on: { $issued }; it no longer stands
}
request-area = Delivery area: { $area }
request-link = Link: { $link }
request-token = Link: too long; the quote's token is { $token }
request-note = Note:
