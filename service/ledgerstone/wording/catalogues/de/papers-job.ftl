# Das Werkstattblatt: wonach die Werkstatt arbeitet, in ihrer eigenen Sprache.

# Einheiten, die einmal für viele Zahlen stehen.
job-unit = { $lengths ->
    [in] Zoll
   *[mm] mm
}
job-mass-unit = { $masses ->
    [lb] lb
   *[kg] kg
}
job-stress-unit = { $strengths ->
    [psi] psi
    [MPa] MPa
   *[newtons] N/mm²
}
job-ruled = { $length } { job-unit }

job-title = Werkstattblatt { $reference }
job-slab-title = { $name }: Schalung, Bewehrung und Guss
job-slab-title-shared = { $name }: Schalung, Bewehrung, Heben
job-slab-title-many = { $title } · { $pieces } Stück, { $moulds ->
    [one] { $moulds } Schalung
   *[other] { $moulds } Schalungen
}
job-batches-title = Mischkarten
job-boards-title = Zuschnitt und Bedarf
job-lists-title = Lange Listen, spiegelverkehrt wie die Schalungen
job-mirrored = SPIEGELVERKEHRT, Blick in die Schalung: Die Sichtseite liegt auf der Platte; links und rechts sind vertauscht.
job-mirrored-label = { $name }, spiegelverkehrt, Sichtseite unten
job-plan-words = Spiegelverkehrter Plan von { $name }, mit Maßen
job-steel-words = { $bars ->
    [one] Bewehrung von { $name } in der Schalung: { $bars } Stab; Pfeile zeigen, wo gehoben wird
   *[other] Bewehrung von { $name } in der Schalung: { $bars } Stäbe; Pfeile zeigen, wo gehoben wird
}
job-steel-title = Bewehrung in der Schalung
job-section-title = Schnitt durch die Schalung
job-section-words = { $steel ->
    [yes] Schnitt: { $thickness } dick, Bewehrung in der Mitte, Deckung { $cover }
   *[no] Schnitt: { $thickness } dick, ohne Bewehrung
}
job-section-back = Rückseite offen, abgezogen auf { $height }
job-section-cover = Deckung { $cover }
job-section-face = SICHTSEITE auf der Platte
job-section-face-coat = SICHTSEITE; zuerst { $coat } Vorsatzbeton
job-section-mesh = { START($mesh) }
job-section-bars = Stäbe { $bar } { job-unit } auf { $mesh }
job-section-bars-alone = Stäbe { $bar } { job-unit }
job-list-later = Die Liste der { $list ->
    [knockouts] Aussparungskörper
   *[steel] Stäbe und Matten
}, { $rows } Zeilen, steht auf der Seite „Lange Listen“.
job-list-of = { $list ->
    [knockouts] { $name }: Aussparungskörper, von den Innenkanten der Schalung, { job-unit }
   *[steel] { $name }: Bewehrung, von den Innenkanten der Schalung, { job-unit }
}

# Der Kopf des Blatts.
job-begin = Beginn
job-ready = Fertig
job-slab = { $count } × { $name }
job-slab-is = { $size }; { $look }
job-note = Dem Kunden mitgeteilt: { $note }
job-before = Bevor etwas zugeschnitten wird
job-yes = Der Kunde hat der Musterplatte zugestimmt
job-answered = Noch nicht beantwortet: { $question }
job-signed = Zeichnung unterschrieben, datiert, mit diesem Stand
job-templates = Becken, Kochfeld, Schablonen sind da und vermessen
job-care = Achtung
job-cement = Nasser Zement verätzt, und man spürt es zuerst nicht: Handschuhe, Schutzbrille, Ärmel; sofort abwaschen.
job-dust = Staub von Zement, Sand und Beton enthält Quarz: eine dafür zugelassene, dichte Maske; nass schleifen.
job-masses = Keine Masse auf diesem Blatt ist eine sichere Grenze: jedes Heben vorher beurteilen.
job-glass = Glasfasern stechen und jucken: Handschuhe, lange Ärmel, Schutzbrille; waschen, bevor man ins Gesicht greift.
job-tent = Das Zelt elektrisch oder mit warmem Wasser heizen und feucht halten: Eine Flamme im geschlossenen Raum gibt Kohlenmonoxid ab, das niemand riecht. Eine Platte vor dem Ausschalen abkühlen lassen.
job-strong-as = Sie ist so fest wie Beton von { $days } Tagen bei { $warmth }.
job-days = Tag für Tag
job-days-read = { $pairs ->
    [one] Hände: Minuten aller zusammen, einer bei der Arbeit; → bis wann ein Stück ruht. Ist: die wirkliche Dauer.
   *[other] Hände: Minuten aller zusammen, { $pairs } Leute bei der Arbeit; → bis wann ein Stück ruht. Ist: die wirkliche Dauer.
}
job-days-shared = Stücke eines Gusses auf den Mischkarten werden zusammen gemischt und eingebracht, Schicht für Schicht; ihre Zeilen hier geben jedem seinen Anteil.
job-day = Tag
job-from = Ab
job-step = Schritt
job-piece = Stück
job-hands = Hände
job-really = Ist
job-in-all = Zusammen
job-minutes = { $minutes } min
job-hours-minutes = { $hours }:{ $minutes } h
job-then-wait = { $step } → { $until }, { $at }
job-then-wait-week = { $step } → { $until } { $at }
job-whole-order = der Auftrag
job-some-of = { $some } von { $all } { $name }

# Die Schalung.
job-knockouts = Aussparungskörper, von den Innenkanten der Schalung, { job-unit }
job-knockout = Körper
job-size = Größe
job-left = Links
job-right = Rechts
job-front = Vorn
job-back = Hinten
job-centre = Mitte x, y
job-checked = Geprüft
job-opening = { $letter } { $label }
job-relief = { $letter } { $depth } hoch: { $label }
job-across = Ø { $across }
job-two = { $one } × { $other }
job-pair = { $one }; { $other }
job-former = { $one } × { $other }, R { $radius }
job-former-round = { $one } × { $other }, Enden rund
job-former-turned = { $former }, gedreht { $degrees }°
job-sides = Seiten
job-sides-high = { $height } { job-unit } hoch auf der Grundplatte
job-screws = Schrauben
job-screws-in = { $count }, in Vorbohrungen von { $pilot } { job-unit }
job-bead = Silikonfuge
job-bead-along = { $side } { $profile ->
    [bevel] Fase
    [round] gerundet
   *[square] gerade
} { $size }
job-bead-rims = { $count ->
    [one] { $count } Rand, nur gebrochen
   *[other] { $count } Ränder, nur gebrochen
}
job-bead-many = { $sides } Seiten und { $rims } Ränder, wie im Plan
job-beads = { $beads }; zusammen { $in_all }
job-beads-none = keine
job-drip = Wassernasenleiste
job-drip-on = { $side }, { $length } { job-unit } lang, auf der offenen Rückseite
job-release = Trennmittel
job-release-thin = { $amount }, dünn und abgewischt

# Bewehrung und Heben.
job-legend-bars = B: Stäbe { $bar } { job-unit }.
job-legend-mesh = M: { $mesh }.
job-from-left = Von links, { job-unit }
job-from-front = Von vorn, { job-unit }
job-mark = Pos.
job-how-many = Anz.
job-cut-mm = Länge, { job-unit }
job-cut = OK
job-mesh = { $lengths ->
    [in] Matte { $wire } Zoll alle { $pitch } Zoll
   *[mm] Matte { $wire } alle { $pitch }
}
job-stretch = { $first } bis { $last }
job-places = { $first } bis { $last } alle { $step }
job-lifts = Heben
job-wet = Gegossen, nass
job-turned = Gewendet
job-turned-mass = { $mould ->
    [on] { $weight } mit Schalung
   *[off] { $weight }, Seiten und Körper heraus
}
job-turned-by = { $over ->
    [none] { $mass }, von { $people }
    [rim] { $mass }, von { $people }, über ihren Rand
    [front] { $mass }, von { $people }, über die Vorderkante
    [back] { $mass }, von { $people }, über die Hinterkante
    [left] { $mass }, von { $people }, über die linke Kante
    [right] { $mass }, von { $people }, über die rechte Kante
   *[other] { $mass }, von { $people }, über Seite { $over }
}
job-cured = Erhärtet
job-cured-by = { $gear ->
    [yes] { $weight }: Wagen oder Hebezeug, nie von Hand allein
   *[no] { $weight }: { $people } mit Tragklemmen
}
job-hands-most = Hier tragen { $people } { $most }.
job-how = Wie
job-how-way = { $rail ->
    [clamped] { $way }. Vorher die Schiene anklemmen.
    [none-needed] { $way }. Sie hat keinen Ausschnitt und braucht keine Schiene.
   *[no] { $way }.
}
job-sides-stay = Seiten und Körper bleiben darin, bis sie steht.
job-when = Wann
job-when-days = { $days } Tage nach dem Guss, nicht vorher
job-grip = Fassen bei
job-grip-at = { $side ->
    [front] { $first } und { $last } { job-unit } von der Vorderkante der Schalung
   *[left] { $first } und { $last } { job-unit } von der linken Kante der Schalung
}
job-carry = Tragen
job-carry-how = { $held ->
    [flat] Flach, waagerecht, auf zwei Linien; nie an den Enden.
   *[on-edge] Hochkant, aufrecht; nie flach an den Enden.
}
job-governs = Maßgebend
job-governs-by = { $doing }, { $where }, wie sie eingebaut liegt: { $stress } von { $limit } { job-stress-unit } ({ $utilisation })
job-governs-cracks = { $governs }; reißt im Mittel bei { $at }
job-times-weight = dem { $times }-Fachen ihres Gewichts
job-doing = { $kind ->
    [lifted-out] Aus der Schalung gehoben
    [turned] Hochkant gewendet
    [on-edge] Hochkant gehalten
    [carried] Getragen
    [on-bearers] Auf der Palette liegend
    [own-weight] Eigengewicht
    [even-load] Gleichlast
    [low-rest] Gleichlast, ein Auflager tief
    [somebody-sitting] Eine Person sitzt
    [somebody-standing] Eine Person steht
    [somebody-leaning] Eine Person stützt sich auf
    [free-corner] Eine Person auf einer freien Ecke
   *[low-rest-and-sitting] Eine Person sitzt, ein Auflager tief
}
job-doing-load = { $doing } ({ $load })
job-strip = Probestreifen
job-strip-test = { $condition ->
    [yes] Erst bewegen, wenn er besteht: { job-strip-is }
   *[no] { job-strip-is }
}
job-strip-is = { $width } × { $thickness } { job-unit }, mit der Platte gegossen und daneben gelagert, trägt über { $span } { job-unit } in der Mitte { $masses ->
    [lb] { $mass }
   *[kg] { $load } ({ $mass })
}. Getragen ________ { job-mass-unit } am ________

# Mischungen.
job-batch-order = Von oben nach unten, wie es in den Mischer kommt. Jedes abhaken, wenn es darin ist.
job-tile = Musterplatte: { $shade }, { surface-name }. Schicken und Freigabe abwarten
job-pour = { $times ->
    [1] Guss { $number }: { $names }
   *[other] Guss { $number }: { $names }, { $times }-mal
}
job-pour-minutes = { $litres } { $volumes ->
    [gal] Gallonen
   *[l] Liter
}, { $minutes } Minuten ab dem ersten Wiegen. Der erste Beton wartet { $open } der { $limit } Minuten, die er verarbeitbar bleibt.
job-coat = { $coat ->
    [face] Vorsatzbeton
    [backing] Kernbeton
   *[body] Beton
}
job-batch = { job-coat }: { $count } × { $litres }, w/z { $ratio }
job-batch-bags = { job-coat }: { $count } × { $litres }, w/z { $ratio }, je { $bags } Säcke
job-weigh = Wiegen, { job-mass-unit }
job-to-count = bis { $count }
job-water = Wasser
job-water-by = Wasser, { $volumes ->
    [gal] { $quarts } qt
   *[l] { $litres } l
}
job-cement-part = { $named ->
    [yes] { $name }, { $cement ->
        [white] weiß
       *[grey] grau
    }
   *[no] { $cement ->
        [white] Weißzement
       *[grey] Grauzement
    }
}
job-usual-cement = Pigment ist gewogen, als wären { $percent } der Sackware Zement, eine übliche Zahl: Der Hersteller ist nicht gefragt.
job-sieve = Körnung über { $grain } { job-unit } aus dem Vorsatzbeton sieben: ein Drittel seiner { $coat } { job-unit }.
job-poured = Gegossen
job-poured-line = von ______ bis ______ durch ______
job-warmth = Temperatur
job-warmth-line = Werkstatt ____ °{ $temperatures }, Mischung ____ °{ $temperatures }
job-slump = Ausbreitmaß
job-slump-line = ______ { job-unit }; Streifen davon gegossen: ____
job-otherwise = Abweichungen
job-otherwise-line = ______________________________

# Die Oberfläche.
job-finish = Oberfläche
job-finish-of = Oberfläche: { $name }
job-sand = Die offene Rückseite eben schleifen: { $proud } { job-unit } stehen über
job-turn-in-mould = { $knockouts ->
    [yes] Wenden, Seiten und Körper darin; dann Seiten ab, Körper heraus, Kanten brechen, Sichtseite waschen
   *[no] Wenden, Seiten und Körper darin; dann Seiten ab, Kanten brechen, Sichtseite waschen
}
job-turn-free = { $knockouts ->
    [yes] Seiten und Körper heraus, dann wenden; Kanten brechen, Sichtseite waschen
   *[no] Seiten ab, dann wenden; Kanten brechen, Sichtseite waschen
}
job-fill = Poren mit { $litres } Spachtel füllen: { $parts }. Ätzend: Handschuhe. { $hours } Stunden stehen lassen
job-fill-again = Poren noch einmal mit ebenso viel füllen; { $hours } Stunden stehen lassen
job-part = { $mass } { $name }
job-face = Fläche fertigstellen ({ surface-name }), { $area }: Kanten brechen, jede Pore ansehen
job-grind = Nass schleifen mit Körnung { $grit }, { $area }; abspülen
job-dry = { $days } Tage trocknen, und bis zu einem Alter von { $age } Tagen
job-dry-strip = { $days } Tage trocknen, und bis zu einem Alter von { $age } Tagen; { $hours } Stunden vorher einen Streifen davon versiegeln: ________
job-coat-of = Versiegelung { $sealer }, Schicht { $coat } von { $coats }: { $each }
job-coat-wait = Versiegelung { $sealer }, Schicht { $coat } von { $coats }: { $each }; { $hours } Stunden bis zur nächsten
job-harden = { $days } Tage aushärten lassen; Wasser darauf tropfen und ansehen
job-pot = Reparaturdose: { $parts }, trocken; das Etikett liegt bei den Tragekarten
job-pack = { $lies ->
    [yes] Wiegen: ________ { job-mass-unit }, auch auf ihre Tragekarte; flach auf ihren Lagerhölzern verpacken, wie auf der Karte
   *[no] Wiegen: ________ { job-mass-unit }, auch auf ihre Tragekarte; hochkant in Schaumstoff verpacken
}
job-grinding = Nassschleifen: Anschluss mit FI-Schutzschalter, Kabel hoch und trocken; Schutzbrille, Gehörschutz, Maske gegen Quarzstaub; Schlamm nass wegspülen.
job-silica = Wer die harte Fläche bearbeitet, setzt Quarzstaub frei: nass halten, Schutzbrille, Gehörschutz, Maske gegen Quarzstaub.
job-fumes = Versiegelung: Türen offen, keine Flamme, Handschuhe; ihr Sicherheitsdatenblatt geht vor.
job-rags = Ölige Lappen entzünden sich von selbst: flach im Freien trocknen oder unter Wasser in einer Dose mit Deckel.

# Zuschnitt und Bedarf.
job-mirrored-boards = Links und rechts wie in der Schalung: spiegelverkehrt.
job-kerf = { $sheets ->
    [one] { $sheets } Platte von { $length } × { $width } { job-unit }; Sägeschnitt { $kerf } { job-unit }; Verschnitt { $waste } %.
   *[other] { $sheets } Platten von { $length } × { $width } { job-unit }; Sägeschnitt { $kerf } { job-unit }; Verschnitt { $waste } %.
}
job-sheet-of = Platte { $number } von { $sheets }
job-sheet-words = Platte { $number } von { $sheets }, Teile nummeriert wie in der Liste
job-no = Nr.
job-long = Lang, { job-unit }
job-wide = Breit, { job-unit }
job-board = { $part ->
    [base] Grundplatte
    [side] Seite { $side }
    [drop] Innenseite { $side }
    [rim] Randstreifen
   *[curve] Bogen nach { $side }
}
job-board-of = { $name }: { job-board }
job-former-turns = { $name }: { job-former-kind } { $one } × { $other }, { $height } { job-unit } hoch, gedreht
job-former-foam = { $layers ->
    [one] { $name }: { job-former-kind } { $one } × { $other }, { $height } { job-unit } hoch, { $layers } Lage
   *[other] { $name }: { job-former-kind } { $one } × { $other }, { $height } { job-unit } hoch, { $layers } Lagen
}
job-formers = Aussparungskörper
job-former-kind = { $kind ->
    [plug] Zapfen
    [knockout] Aussparung
    [drainer] Abtropffläche
    [recess] Vertiefung
   *[rebate] Falz
}
job-stock = Stäbe, Matten und Streifen
job-stock-mesh = Matten { $mesh }.
job-stock-kg = Stäbe { $bars } von { $bought } gekauften; Matten { $mesh }.
job-cut-from = { START($stock) }: { $cuts }; Rest { $left } { job-unit }
job-bar-number = Stab { $bar } { job-unit } { $number }
job-bar-numbers = Stäbe { $bar } { job-unit } { $first } bis { $last }, je
job-strip-flexible = Biegestreifen
job-cut-piece = { $mark } { $length }
job-cut-pieces = { $count } × { $mark } { $length }
job-mesh-piece = { START($mesh) }: { $mark }, { $count } × { $length } × { $width }
job-uses = Was der Auftrag braucht
job-thing = Was
job-used = Verbrauch
job-to-have = Vorrat
job-supply = { $supply ->
    [mould-board] Schalungsplatte
    [foam] Schaumstoff
    [flexible-strip] Biegestreifen
    [screws] Schrauben
    [sealant-bead] Fugenmasse
   *[release-agent] Trennmittel
}
job-sealer = Versiegelung { $sealer }
job-amount = { $amount } { $unit ->
    [sheets] { $one ->
        [yes] Platte
       *[no] Platten
    }
    [lengths] { $one ->
        [yes] Stange
       *[no] Stangen
    }
    [screws] Stück
    [tubes] { $one ->
        [yes] Kartusche
       *[no] Kartuschen
    }
    [bags] { $one ->
        [yes] Sack
       *[no] Säcke
    }
    [packs] { $one ->
        [yes] Gebinde
       *[no] Gebinde
    }
   *[litres] Liter
}
job-liquid = { $volumes ->
    [gal] { $quarts } Quart
   *[l] { $litres }
}
job-stock-unit = { $unit ->
    [sheets] Platten
    [lengths] Stangen
    [screws] Stück
    [tubes] Kartuschen
    [bars] Stäbe
    [area] { $lengths ->
        [in] ft²
       *[mm] m²
    }
    [mass] { job-mass-unit }
   *[litres] { $volumes ->
        [gal] qt
       *[l] Liter
    }
}
job-bars = Stäbe { $bar } { job-unit }
job-loose = lose
