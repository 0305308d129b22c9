# Prüfungen einer Platte an ihrem Platz.

strength-unknown = Ob { NAME($slab) } reißt, konnten wir nicht berechnen: Ihre Form ist zu fein gegliedert.
rests-not-told = { HOWMANY($slabs) ->
    [1] Sagen Sie uns, worauf { NAME($slabs) } liegen wird. Bis dahin können wir nicht prüfen, ob sie dort hält.
   *[other] Sagen Sie uns, worauf { NAME($slabs) } liegen werden. Bis dahin können wir nicht prüfen, ob sie dort halten.
}
tips-over = { NAME($slab, start: "yes") } könnte durch ihr eigenes Gewicht von den Auflagern kippen: Zu viel davon ragt über sie hinaus.
rest-under-nothing = { NAME($rest, start: "yes") } steht, wo { NAME($slab) } keinen Beton hat, und trägt deshalb nichts.
rest-of-several = ein Auflager
rest-numbered = { $kind ->
    [units] Unterschrank { $number }
   *[rests] Auflager { $number }
}
cracks-in-place = { under-load } würde { NAME($slab) } { $where } reißen.
near-cracking-in-place = { under-load } hält { NAME($slab) } { $where } mit wenig Reserve.
under-load = { $load ->
    [even-load] Mit dem Gewicht einer Küche gleichmäßig darauf
    [somebody-sitting] Wenn jemand darauf sitzt,
    [somebody-leaning] Wenn sich jemand darauf stützt,
    [somebody-standing] Wenn jemand darauf steht,
    [low-rest] Mit einem etwas zu tiefen Auflager
   *[own-weight] Unter ihrem eigenen Gewicht
}
breaks-after-a-crack = Einmal gerissen und mit jemandem darauf würde { NAME($slab) } { $where } brechen: Nichts in ihr trägt genug über einen Riss hinweg.
free-corner = Das Gewicht einer Person auf der freien Ecke könnte { NAME($slab, case: "accusative") } { $where } reißen lassen. Lassen Sie unter dem Überstand eine Konsole einbauen.
level-the-rests = Die Auflager müssen eben und satt unterfüttert sein, bevor { NAME($slab) } aufliegt. Ist eines etwas zu tief, könnte sie { $where } reißen, wenn sich dort jemand setzt.
tips-when-sat-on = Lose auf ihren Auflagern würde { NAME($slab) } kippen, wenn sich jemand { $where } setzt. Sie muss befestigt werden.
sags = { NAME($slab, start: "yes") } würde sich { $sag } durchbiegen, was man sieht. Rücken Sie die Auflager näher zusammen, oder wählen Sie sie dicker.
sun-on-fixed = Im Freien fest eingespannt, könnte { NAME($slab) } reißen, wenn die Sonne ihre Oberseite erwärmt. Befestigen Sie sie so, dass sie gleiten und sich bis zu { $bow } wölben kann.
