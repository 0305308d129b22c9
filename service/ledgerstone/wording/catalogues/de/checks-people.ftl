# Prüfungen, wer am Ziel trägt, und was vom Weg ins Haus noch nicht bekannt ist.

hands-needed = { NAME($slab, start: "yes") } wiegt { $weight }: Zum Tragen braucht es { $people }.{ hands-assess }
hands-assess = { $assess ->
    [yes] { " " }Planen Sie das Heben: Diese Zahlen sind keine sichere Grenze.
   *[no] { "" }
}
hands-too-few = Um { NAME($slab, case: "accusative") } ({ $weight }) hineinzutragen, braucht es { $people }; da sein { $count ->
    [0] wird niemand
    [1] wird eine Person
   *[other] werden { $there }
}. Sorgen Sie am Tag der Lieferung für mehr Leute, oder wählen Sie den Einbau.{ hands-assess }
beyond-hands = { NAME($slab, start: "yes") } wiegt { $weight }: zu viel für Hände allein. Sie fährt auf einem Wagen oder mit Hebezeug, auf festem, ebenem Weg.
way-in-not-told = Nennen Sie uns { $missing }, damit wir den Weg hinein prüfen können.
way-in-part = { $part ->
    [doorway] die schmalste Tür auf dem Weg
    [turn] enge Ecken
    [floor] das Stockwerk mit etwaigen Stufen
    [steps-or-lift] die Stufen hinauf oder die Größe des Aufzugs
   *[steps] etwaige Stufen
}
