# Prüfungen der Fugen und herabgezogenen Kanten.

join-to-itself = Fuge { $join } nennt { NAME($slab, case: "accusative") } zweimal. Nennen Sie die beiden Platten, die aufeinandertreffen.
join-suggested = Die Fuge zwischen { NAME($one, case: "dative") } und { NAME($other, case: "dative") } ist wie gewünscht berechnet. Wo sie liegt, stimmen wir mit Ihnen ab, bevor wir gießen.
join-of-unlike-thickness = { NAME($one, start: "yes") } ist { $thickness } dick, { NAME($other) } { $other_thickness }. Wählen Sie dieselbe Dicke, oder lassen Sie die dünnere unterfüttern.
join-of-unlike-ends = { NAME($side, start: "yes") } { NAME($one, case: "genitive") } ist { $length } lang, { NAME($other_side) } { NAME($other, case: "genitive") } { $other_length }. Machen Sie sie gleich lang, damit Vorder- und Hinterkante durchlaufen.
join-along-a-side = { NAME($side, start: "yes") } { NAME($one, case: "genitive") } ist { $length } lang, { NAME($other_side) } { NAME($other, case: "genitive") } { $other_length }. Wir fügen sie, wie die Zeichnung der Stücke zusammen sie zeigt; sagen Sie uns, wo die kürzere anschließt, wenn nicht dort.
join-of-unlike-looks = { $unlike ->
    [shade] { NAME($one, start: "yes") } und { NAME($other) } stoßen aneinander und haben nicht denselben Farbton; die Fuge wird auffallen. Wählen Sie für beide denselben.
   *[finish] { NAME($one, start: "yes") } und { NAME($other) } stoßen aneinander und haben nicht dieselbe Oberfläche; die Fuge wird auffallen. Wählen Sie für beide dieselbe.
}
join-through-relief = { NAME($what, start: "yes") } { NAME($slab, case: "genitive") } reicht bis an Fuge { $join }. Berechnet ist nur der Teil in dieser Platte; wie es jenseits der Fuge weitergeht, ist nicht ausgearbeitet. Fragen Sie uns.
drop = { $case ->
    [genitive] der herabgezogenen Kante
    [dative] der herabgezogenen Kante
   *[nominative] die herabgezogene Kante
}
drop-not-checked = { $count ->
    [1] Die herabgezogene Kante an { NAME($side, case: "dative") } { NAME($slab, case: "genitive") } ist berechnet und gewogen, aber die Festigkeitsprüfung nimmt die Platte ohne ihre Ecke. Stellen Sie sie auf, und tragen Sie sie mit ausgesteifter Ecke.
   *[other] Die herabgezogenen Kanten { NAME($slab, case: "genitive") } sind berechnet und gewogen, aber die Festigkeitsprüfung nimmt die Platte ohne ihre Ecken. Stellen Sie sie auf, und tragen Sie sie mit ausgesteiften Ecken.
}
