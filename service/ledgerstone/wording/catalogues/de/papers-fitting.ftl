# Das Blatt zur Annahme und zum Einbau. Übliche Praxis, wo keine Quelle steht; Vorschriften vor Ort
# und Fachleute gehen vor, und keine Last heißt sicher.

fitting-title = Annahme und Einbau
fitting-signing = { $way ->
    [pallet] Bevor Sie den Empfang bestätigen
   *[other] Bevor Sie sie übernehmen
}
fitting-open = { $way ->
    [pallet] Öffnen Sie jede Kiste, solange der Fahrer wartet. Sehen Sie jede Fläche, Kante und Ecke an.
    [collect] Packen Sie sie hier mit uns aus, bevor sie verladen wird. Sehen Sie jede Fläche, Kante und Ecke an.
   *[other] Packen Sie sie mit uns aus, bevor wir fahren. Sehen Sie jede Fläche, Kante und Ecke an.
}
fitting-damage = { $way ->
    [pallet] Fotografieren Sie Schäden und vermerken Sie sie auf dem Lieferschein, bevor Sie unterschreiben.
   *[other] Fotografieren Sie Schäden und zeigen Sie sie uns.
}
fitting-ring = Rufen Sie uns noch am selben Tag an. Bauen Sie keine Platte ein, die Sie nicht behalten würden.
fitting-weights = Was jedes Stück wiegt
fitting-carrying = Tragen
fitting-on-edge = Tragen Sie jede Platte hochkant, die lange Seite unten, und stellen Sie sie auf Holz oder Schaumstoff ab. Nie flach an den Enden tragen.
fitting-way = Gehen Sie zuerst den ganzen Weg ab, mit Ecken, Stufen und Türen. Legen Sie fest, wer führt.
fitting-gloves = Handschuhe an den Händen, feste Schuhe an den Füßen; niemand unter einer Platte, die gehoben wird.
fitting-assess = Planen und beurteilen Sie jedes Heben für die Menschen, die es tun, wie es die Vorschriften vor Ort verlangen. Kein Gewicht auf diesem Blatt ist eine sichere Grenze.
fitting-until = Bis zum Einbau steht sie hochkant, leicht angelehnt, trocken und gegen Umfallen gesichert.
fitting-dries = Lassen Sie bis zum Einbau Luft an beide Flächen, und versiegeln Sie beide: Trocknet sie nur auf einer Seite, wölbt sich die längste um etwa { $bow }.
fitting-grip = { $first } und { $last } von den Enden der langen Seite
fitting-grip-at = „{ $name }“ fassen bei
fitting-base = Der Untergrund
fitting-level = In beiden Richtungen eben: höchstens { $most } unter dem Richtscheit. Unterlegt wird der Untergrund, nicht die Platte.
fitting-units = Schränke an der Wand und aneinander befestigt, mit vollen Seiten und Traversen vorn und hinten.
fitting-solid-base = Vollflächig unter { NAME($slabs, case: "dative") } ein Unterbau, der sich nicht durchbiegt, etwa aus Mauerwerk. Ein Brett auf Schränken biegt sich mit ihnen durch und genügt nicht.
fitting-rests-not-given = Worauf ein Teil davon liegt, wurde uns nicht gesagt: Fragen Sie uns vor dem Einbau.
fitting-fall = Im Freien mit Gefälle, damit kein Wasser darauf steht, und nicht im Erdreich.
fitting-dry-run = Legen Sie sie zuerst trocken auf. Sehen Sie jede Fuge an, heben Sie sie wieder ab und betten Sie sie dann.
fitting-bedding = Bettung
fitting-bed-not-given = uns nicht bekannt: Fragen Sie, bevor Sie sie betten
fitting-bed = { $fixed ->
    [yes] Auflage: { $rests }. { fitting-bed-of } Sie wird befestigt.
   *[no] Auflage: { $rests }. { fitting-bed-of } Sie liegt lose, durch ihr Gewicht gehalten.
}
fitting-bed-of = { $kind ->
    [units] Silikonpunkte auf den Traversen der Schränke, alle { $every } einer; kein harter Kleber.
    [frame] Ein dünner weicher Streifen oder Silikonpunkte auf dem ganzen Gestell.
    [ends] Eine weiche Auflage auf der ganzen Fläche an jedem Ende.
    [legs] Eine weiche Auflage auf jedem Bein; alle tragen, bevor etwas darauf gestellt wird.
    [ledges] Ein weicher Streifen auf jeder Leiste.
    [pedestal] Eine weiche Auflage auf der ganzen Tragplatte.
   *[full] Eine Gleitschicht, etwa eine PE-Folie, darunter ein volles, ebenes Bett.
}
fitting-bed-hearth = Untergrund, Gleitschicht und Bett sind so, wie der Ofenbaubetrieb sie vorgibt. Nie Folie, Silikon oder Schaum an einer Feuerstelle.
fitting-gaps = Fugen
fitting-wall = Lassen Sie zu jeder Wand { $gap } und füllen Sie sie mit Silikon, nie mit Mörtel.
fitting-wall-hearth = Lassen Sie die Fuge um eine Kaminplatte offen, oder füllen Sie sie so, wie der Ofenbaubetrieb es vorgibt: Heiß dehnt sie sich. Nie Silikon an einer Feuerstelle.
fitting-join = Lassen Sie { $gap } an der Fuge zwischen { NAME($one, case: "dative") } und { NAME($other, case: "dative") }.
fitting-hot = Ein heißes Gerät hängt in seinem eigenen Rahmen und berührt keinen Beton: ringsum mindestens { $clear } Luft, oder was sein Hersteller verlangt. Nie einmörteln.
fitting-seal = Weiches Silikon an jedem Becken und Kochfeld; lassen Sie es aushärten, bevor etwas benutzt wird.
fitting-cutting = Schneiden
fitting-cut-dry = Nie trocken schneiden, schleifen oder bohren: Der Staub enthält Quarz und schadet der Lunge für immer.
fitting-cut-ask = Besser gar nicht: Fragen Sie uns, wir gießen oder schneiden es hier.
fitting-cut-wet = Was vor Ort sein muss, geschieht nass, mit Absaugung und der Maske, die die Vorschriften vor Ort verlangen, wenn möglich im Freien.
fitting-cut-strip = Ein Schnitt durch einen schmalen Steg oder an der Ecke eines Ausschnitts lässt sie reißen. Fragen Sie uns zuerst.
fitting-about = Zu diesem Auftrag
fitting-decides = Wer entscheidet
fitting-gas = Gas, wo es welches gibt: { $country ->
    [DE] Ein Installationsbetrieb, der beim Gasnetzbetreiber eingetragen ist,
    [AT] Ein dafür befugter Installationsbetrieb
    [CH] Ein Installateur mit Bewilligung für Gas
   *[other] Ein dafür zugelassener Fachbetrieb
} schließt an, prüft und sagt, wie viel Abstand und Lüftung nötig sind.
fitting-electrics = Elektrik und alles Elektrische in der Nähe von Wasser: eine Elektrofachkraft.
fitting-fire = Kamine und Öfen: Größe und Aufbau einer Kaminplatte { $country ->
    [DE] bestimmen der Ofenbaubetrieb und der bevollmächtigte Bezirksschornsteinfeger.
    [AT] bestimmen der Hafnerbetrieb und der Rauchfangkehrer.
    [CH] bestimmen der Ofenbaubetrieb und die Feuerpolizei.
   *[other] bestimmt der zugelassene Ofen- und Kaminbauer.
} Dieses Blatt ersetzt deren Zustimmung nicht.
fitting-bears = Wände, Böden und Schränke: Fragen Sie deren Lieferanten oder Erbauer, welche Last sie tragen.
fitting-hot-maker = Heiße Geräte: Die Abstände ihres Herstellers gehen diesem Blatt vor.
