# Was von Befunden selbst gesagt wird.

check-failed = Das konnten wir hier nicht vollständig prüfen. Schicken Sie es uns, wie es ist: Wir prüfen es von Hand.
finding-repeated = { $first } Dasselbe gilt für { $more ->
    [one] eine weitere Stelle
   *[other] { $more } weitere Stellen
} dieser Platte.
