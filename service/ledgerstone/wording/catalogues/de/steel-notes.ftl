# Was die Werkstatt über die Bewehrung einer Platte wissen muss.

steel-indoors = Im Innenraum genügt gewöhnlicher Stahl, ebenso Edelstahl oder Glasfaser.
steel-stainless = { $place ->
    [outdoors] Im Freien Edelstahl oder Glasfaser: Sie rosten unter dünner Deckung nicht.
   *[wet-room] Im Nassraum Edelstahl oder Glasfaser: Sie rosten unter dünner Deckung nicht.
}
steel-would-rust = { $place ->
    [outdoors] Im Freien rostet gewöhnlicher Stahl unter dünner Deckung: Edelstahl oder Glasfaser nehmen.
   *[wet-room] Im Nassraum rostet gewöhnlicher Stahl unter dünner Deckung: Edelstahl oder Glasfaser nehmen.
}
steel-cover-short = Bei { $thickness } hat die Bewehrung { $kept } { job-unit } Deckung; gewünscht sind { $wanted } { job-unit }. Dünnere Stäbe, Glasfaser oder eine dickere Platte nehmen.
steel-thick-bar = { $lengths ->
    [in] Lieber Stäbe von 1/4 oder 5/16 Zoll als von { $bar } Zoll: In einer dünnen Platte lassen sie mehr Deckung.
   *[mm] Lieber Stäbe von 6 oder 8 mm als von { $bar } mm: In einer dünnen Platte lassen sie mehr Deckung.
}
steel-hang = Die Bewehrung mit Draht an den Seiten der Schalung aufhängen oder auf die steife erste Schicht legen, sodass sie in der Mitte liegt: Sie darf nicht sinken, sonst zeichnet sie sich auf einer dunklen Sichtseite ab.
steel-cut-back = Die Matte an jedem Ausschnitt um die Deckung zurückschneiden.
steel-way = { $way ->
    [along] längs
   *[across] quer
}
steel-way-apart = { steel-way } alle { $spacing } { job-unit }
steel-bars-hold = Nach einem Riss halten Stäbe von { $bar } { job-unit }, { $ways }: { $limit } { job-stress-unit } mit der Matte, nicht weniger als das, bei dem die Platte reißt{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 6.1, 9.2.1.1)
 }.
steel-mesh-holds = Nach einem Riss hält die Matte { $ways }{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 6.1)
 }.
steel-plain = { START($ways) } nach einem Riss als unbewehrter Beton beurteilt: { $asked } { job-stress-unit } von { $limit } { job-stress-unit }{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 12.3.1)
 }.
steel-short = Zu kurz, um mit ihrer ganzen Festigkeit verankert zu sein: { $bars }. Sie zählen in diesem Verhältnis{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 8.4)
 }.
steel-short-bar = { $mark } { $percent }
steel-laps = Stäbe über { $most } { job-unit } bestehen aus Teilen, die sich um { $lap } { job-unit } überdecken, nebeneinander gebunden{ $country ->
    [US] {""}
   *[other] {" "}(EN 1992-1-1 8.7)
 }.
