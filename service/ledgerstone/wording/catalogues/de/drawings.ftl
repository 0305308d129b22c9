# Was auf Zeichnungen außer dem Plan steht: anstelle einer, die fehlt, und auf der des Herstellers.

drawing-missing = Diese Zeichnung fehlt
drawing-missing-text = Sie konnte hier nicht erstellt werden. Nichts anderes hängt davon ab: Fragen Sie uns danach.
drawing-unknown-letters = * steht für einen Buchstaben, den wir hier nicht zeigen können.
drawing-view = Platte

# Wie weit der Beton ausgenutzt ist, für den Hersteller.
stress-title = Wie weit der Beton ausgenutzt ist: { NAME($slab) }
stress-no-shape = Berechnet wird erst etwas, wenn sich die Form der Platte herstellen lässt.
stress-over = über { $percent }
stress-painted = Farbig: die größte Spannung aller Fälle in Prozent dessen, worauf wir vertrauen, { $rests ->
    [told] eingebaut und auf der Palette
   *[not-told] auf der Palette; Auflager wurden nicht genannt
}. Am nächsten an seiner Grenze von allen Fällen: { stress-loading }, { $percent }, { $x } von links, { $y } von vorn.
stress-loading = { $loading ->
    [lifted-out] beim Ausschalen
    [turned] beim Wenden
    [on-edge] hochkant
    [carried] beim Tragen
    [on-bearers] auf Lagerhölzern
    [flat-by-the-ends] flach an den Enden gehoben
    [own-weight] Eigengewicht
    [even-load] gleichmäßige Last
    [somebody-sitting] jemand sitzt darauf
    [somebody-standing] jemand steht darauf
    [somebody-leaning] jemand stützt sich darauf
    [free-corner] freie Ecke
    [low-rest] ein tieferes Auflager
    [low-rest-and-sitting] ein tieferes Auflager, und jemand sitzt darauf
   *[after-a-crack] nach einem Riss
}
