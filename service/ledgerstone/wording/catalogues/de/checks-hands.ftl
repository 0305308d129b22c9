# Prüfungen, wer am Ziel trägt, und was vom Weg ins Haus noch nicht bekannt ist.

hands-needed = { hands-left-where }: Um { NAME($slab, case: "accusative") } ({ $weight }) hineinzutragen, brauchen Sie { $people }.{ hands-assess }
hands-left-where = { $way ->
    [pallet] Bis Bordsteinkante geliefert
    [own-van] Von unserem Transporter bis zur Tür gebracht
   *[collect] Selbst abgeholt
}
hands-assess = { $assess ->
    [yes] { " " }Planen und beurteilen Sie das Heben vorher: Diese Zahlen sind keine sichere Grenze.
   *[no] { "" }
}
hands-too-few = Um { NAME($slab, case: "accusative") } ({ $weight }) hineinzutragen, braucht es { $people }; da sein { $count ->
    [0] wird niemand
    [1] wird eine Person
   *[other] werden { $there }
}. Sorgen Sie am Tag der Lieferung für mehr Leute, oder wählen Sie den Einbau.{ hands-assess }
beyond-hands = { NAME($slab, start: "yes") } wiegt { $weight }, mehr als die { $most }, die bei uns { $people } tragen. Sie fährt auf einem Wagen oder mit Hebezeug, auf festem, ebenem Weg.
way-in-not-told = Nennen Sie uns { $missing }. Bis dahin können wir nicht prüfen, ob sich alles hineintragen lässt.
way-in-part = { $part ->
    [doorway] die schmalste Tür auf dem Weg
    [turn] enge Ecken
    [floor] das Stockwerk mit etwaigen Stufen
    [steps-or-lift] die Stufen hinauf oder die Größe des Aufzugs
   *[steps] etwaige Stufen
}
