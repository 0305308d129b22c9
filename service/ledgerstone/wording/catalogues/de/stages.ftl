# Die Abschnitte der Arbeit: was getan oder abgewartet wird, und warum.

stage = { $stage ->
    [queue] Frühere Aufträge
    [sample] Musterplatte
    [yes] Ihre Freigabe der Musterplatte
    [mould] Schalungsbau
    [table] Warten auf den Gießtisch
    [cast] Guss
    [cover] Nachbehandlung, abgedeckt
    [rack] Feucht gelagert
    [finish] Ausschalen und Oberfläche
    [dry] Trocknen vor dem Versiegeln
    [seal] Versiegeln
    [harden] Aushärten der Versiegelung
    [pack] Verpacken
   *[in-hand] Reserve
}
stage-work = { $stage ->
    [sample] Eine Musterplatte in Ihrem Farbton und mit Ihrer Oberfläche wird gegossen, zum Ansehen und Anfassen.
    [mould] Die Schalung wird nach Ihren Maßen gebaut.
    [cast] Die Bewehrung wird eingelegt und der Beton gegossen.
    [finish] Aus der Schalung, dann von Hand nachgearbeitet und fertiggestellt.
    [seal] Die Versiegelung wird Schicht um Schicht aufgetragen.
   *[pack] So verpackt, dass es sicher ankommt.
}
stage-cast-in-turns = Gegossen in { $turns } Durchgängen, jeweils so viele Stücke, wie der Gießtisch fasst.
stage-queue = { $days ->
    [one] { $days } Arbeitstag für bereits angenommene Aufträge.
   *[other] { $days } Arbeitstage für bereits angenommene Aufträge.
}
stage-hands-taken = Bis { $until } sind wir ausgelastet.
stage-table-taken = Der Gießtisch ist bis { $until } belegt.
stage-yes = Es wird nichts zugeschnitten, bevor Sie sie freigegeben haben, bis { $until }.
stage-cures = { $where ->
    [tent] Erhärtet abgedeckt bis { $until }: { $warmth } im beheizten Zelt.
   *[workshop] Erhärtet abgedeckt bis { $until }: { $warmth } in der Werkstatt.
}
stage-kept-damp = Unter einer Folie feucht gehalten bis { $until }.
stage-dries = Trocknet bis { $until }.
stage-ages = Versiegelt wird Beton, der { $days } Tage alt ist: nicht vor { $until }.
stage-hardens = Härtet bis { $until }.
stage-kept = Bleibt bis { $until } bei uns: Vorher ist ihr Beton nicht fest genug, um auf ihren Auflagern zu liegen.
stage-closed = Von { $first } bis { $last } haben wir geschlossen.
stage-in-hand = { $days ->
    [one] { $days } Arbeitstag Reserve, damit der Termin zu halten ist.
   *[other] { $days } Arbeitstage Reserve, damit der Termin zu halten ist.
}

# Der Tag, an dem ein Auftrag die Werkstatt verlässt.
day-leaves = { $kind ->
    [collect] Zur Abholung bereit
    [fitted] Liefern und einbauen
   *[other] Liefern
}
