# Was die Knöpfe der Seite platzieren, und warum etwas nirgends hinpasst.

piece-name = { $piece ->
    [basin] Waschbecken
    [sink] Spüle
    [tap] Armatur
    [hob] Kochfeld
    [appliance] Gerät
    [round] runder Ausschnitt
    [rectangle] Rechteck
    [slot] Langloch
    [drainer] Abtropffläche
    [recess] Vertiefung
   *[rebate] Falz
}
placing-added = Hinzugefügt: { $name }. Der Platz ist so gewählt, dass es sich herstellen lässt; verschieben Sie ihn, wie Sie möchten.
placing-moved = { NAME($opening, start: "yes") } hat dafür Platz gemacht: die Mitte liegt jetzt { $x } von links und { $y } von vorn.
placing-units = Wir haben angenommen: { $units }. Tragen Sie Ihre ein.
placing-too-deep = Eine Platte für diesen Ausschnitt ({ $name }) ist von vorn nach hinten mindestens { $depth } tief. Machen Sie die Platte breiter oder den Ausschnitt kleiner.
placing-no-room = Auf dieser Platte ist kein Platz für einen weiteren Ausschnitt wie diesen ({ $name }). Machen Sie die Platte länger, oder nehmen Sie etwas heraus.
placing-nowhere = Auf dieser Platte ist kein Platz für alle Ausschnitte. Machen Sie sie größer, oder nehmen Sie etwas heraus.
