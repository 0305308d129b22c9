# Prüfungen des Gebrauchs: Hitze, Lebensmittel, Säuren und Öl, Kamin, Strom nahe Wasser.

hot-appliance = Lassen Sie rings um { NAME($cutout, case: "accusative") } mindestens { $gap } Luft, das Gerät in seinem eigenen Rahmen aufgehängt: Beton arbeitet bei Hitze, und unsere Festigkeitsprüfung berücksichtigt keine Hitze. Halten Sie die Abstände des Geräteherstellers ein; darüber entscheidet { gas-or-electric-trade }.
sealer-near-heat = Die Versiegelung { $sealer } verträgt { $stands }; neben einem heißen Gerät kann { NAME($slab) } heißer werden. { HOWMANY($others) ->
    [0] Schirmen Sie sie dort ab, oder rechnen Sie mit Flecken.
   *[other] Wählen Sie { $others }, oder rechnen Sie dort mit Flecken.
}
acids-and-oil = { $kind ->
    [film] Die Versiegelung { $sealer } hält Wein, Zitrone und Öl ab, solange der Film unversehrt ist; wo er abgenutzt ist, hinterlassen sie in Minuten Flecken. Wischen Sie Verschüttetes auf, und lassen Sie abgenutzte Stellen neu versiegeln.
   *[penetrating] Die Versiegelung { $sealer } bildet keinen Film: Zitrone, Essig und Wein greifen den Beton in Minuten an, und Öl hinterlässt Flecken. Wischen Sie Verschüttetes gleich auf, und benutzen Sie ein Brett.
}
food-declared = Der Hersteller erklärt die Versiegelung { $sealer } als geeignet für den Kontakt mit Lebensmitteln: Die Erklärung erhalten Sie bei uns.
food-not-declared = { HOWMANY($others) ->
    [0] Die Versiegelung { $sealer } ist nicht für den Kontakt mit Lebensmitteln erklärt: Bereiten Sie Speisen auf einem Brett zu.
   *[other] Die Versiegelung { $sealer } ist nicht für den Kontakt mit Lebensmitteln erklärt: Bereiten Sie Speisen auf einem Brett zu, oder wählen Sie { $others }.
}
hearth = Über Größe und Aufbau { NAME($slab, case: "genitive") } { hearth-trade }. Am Feuer reißen mehrere Stücke mit Fugen dazwischen weniger als eines: Fragen Sie vor der Bestellung nach.
electrics-near-water = { NAME($cutout, start: "yes") } liegt nahe am Wasser. Wie weit Elektrisches davon entfernt sein muss, entscheidet { electric-trade }: Lassen Sie den Plan dort prüfen, bevor wir gießen.

# Wer über Gas, Strom und Feuerstätten entscheidet, je Land; wo es nicht bekannt ist, der Fachbetrieb.
gas-or-electric-trade = { $country ->
    [DE] ein eingetragener Installateur- oder Elektrofachbetrieb
    [AT] ein befugter Installations- oder Elektrofachbetrieb
    [CH] ein zugelassener Gas- oder Elektroinstallateur
   *[other] ein zugelassener Gas- oder Elektrofachbetrieb
}
electric-trade = { $country ->
    [CH] ein Elektroinstallateur mit Bewilligung
   *[other] eine Elektrofachkraft
}
hearth-trade = { $country ->
    [DE] entscheiden ein Ofenbaubetrieb und der bevollmächtigte Bezirksschornsteinfeger
    [AT] entscheiden ein Hafnerbetrieb und der Rauchfangkehrer
    [CH] entscheiden ein Ofenbaubetrieb und die Feuerpolizei
   *[other] entscheidet ein zugelassener Ofen- und Kaminbauer
}
