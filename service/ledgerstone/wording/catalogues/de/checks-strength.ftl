# Prüfungen einer Platte an ihrem Platz.

strength-unknown = Ob { NAME($slab) } reißt, konnten wir nicht berechnen: Ihre Form ist zu fein gegliedert.
rests-not-told = { HOWMANY($slabs) ->
    [1] Sagen Sie uns, worauf { NAME($slabs) } liegen wird. Geprüft ist sie auf ganzer Länge aufgelegt; nur an den Enden aufgelegt könnte sie reißen.
   *[other] Sagen Sie uns, worauf { NAME($slabs) } liegen werden. Geprüft sind sie auf ganzer Länge aufgelegt; nur an den Enden aufgelegt könnten sie reißen.
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
    [even-load] Mit der vollen Last gleichmäßig darauf ({ $even })
    [somebody-sitting] Wenn jemand darauf sitzt ({ $force }),
    [somebody-leaning] Wenn sich jemand darauf stützt ({ $force }),
    [somebody-standing] Wenn jemand darauf steht ({ $force }),
    [low-rest] Mit einem etwas zu tiefen Auflager
   *[own-weight] Unter ihrem eigenen Gewicht
}
breaks-after-a-crack = Einmal gerissen und mit jemandem darauf würde { NAME($slab) } { $where } brechen: Nichts in ihr trägt genug über einen Riss hinweg.
free-corner = Das Gewicht einer Person auf der freien Ecke könnte { NAME($slab, case: "accusative") } { $where } reißen lassen. Lassen Sie unter dem Überstand eine Konsole einbauen.
level-the-rests = Die Auflager müssen eben und satt unterfüttert sein, bevor { NAME($slab) } aufliegt. Ist eines etwas zu tief, könnte sie { $where } reißen, wenn sich jemand darauf setzt.
tips-when-sat-on = Lose auf ihren Auflagern würde { NAME($slab) } kippen, wenn sich jemand { $where } setzt. Sie muss befestigt werden.
tips-on-its-plate = Lose auf ihrer Säule würde { NAME($slab) } kippen, wenn sich jemand { $where } setzt. Auf einer { $plate } breiten Platte steht sie von selbst; auf dieser muss sie befestigt werden.
sags = { NAME($slab, start: "yes") } würde sich { $sag } durchbiegen; bis { $seen } sieht man es nicht. Rücken Sie die Auflager näher zusammen, oder wählen Sie sie { $thickness } dick.
sags-far = { NAME($slab, start: "yes") } würde sich { $sag } durchbiegen; bis { $seen } sieht man es nicht. Rücken Sie die Auflager näher zusammen, oder nehmen Sie zwei Stücke, die sich über einem Auflager treffen.
sun-on-fixed = Im Freien fest eingespannt, könnte { NAME($slab) } reißen, wenn die Sonne ihre Oberseite erwärmt. Befestigen Sie sie so, dass sie gleiten und sich bis zu { $bow } wölben kann.
