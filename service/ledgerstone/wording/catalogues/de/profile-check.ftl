# Was die Befehle der Werkstatt zu ihrer Datei sagen: `check` und `init`.

check-title = { $part ->
    [who] Werkstatt
    [table] Tisch
    [thicknesses] Dicken
    [strips] Steg neben
    [concrete] Beton
    [palette] Farbtöne
    [finishes] Oberflächen
    [sealers] Versiegelung
    [edges] Kanten
    [handling] Bewegen
    [bears] Trägt
    [trusted] Vertrauen
    [delivery] Lieferung
    [rates] Sätze
    [tax] Steuer
    [offer] Angebot
    [tile] Musterplatte
    [hours] Stunden
    [shut] Geschlossen
   *[fingerprint] Fingerabdruck
}
check-who = { $name }, { $town } ({ $land }, { $currency })
check-reach = { $email }, Telefon { $telephone }
check-tables = { $count } mit { $length } × { $width }
check-listed = { $things }
check-strip = { $beside }: ab { $stops }{ $care ->
    [yes] , mit Vorsicht bis { $cautions }
   *[no] { "" }
}
check-concrete = { $name }: { $strength }, { $cement } { $kind ->
    [white] Weißzement
   *[grey] Grauzement
}, w/z { $ratio }, { $density }
check-shade = { $name } { $colour }: { $cement ->
    [white] Weißzement
   *[grey] Grauzement
}, { $doses ->
    [none] kein Pigment
   *[some] { $pigments }
}
check-dose = { $pigment } { $percent }
check-finish = { $says }
check-sealer = { $name }: { $kind ->
    [film] Film
   *[penetrating] Imprägnierung
}, { $coats ->
    [one] { $coats } Schicht
   *[other] { $coats } Schichten
}, { $places }
check-place = { $place ->
    [indoors] innen
    [wet-room] Nassraum
   *[outdoors] außen
}
check-edge = { $profile ->
    [bevel] Fase
    [round] Rundung
    [wall] Wandseite
   *[square] gerade Kante
} { $smallest } bis { $largest }
check-edge-unsized = { $profile ->
    [bevel] Fase
    [round] Rundung
    [wall] Wandseite
   *[square] gerade Kante
}
check-way = { $name }, bis { $most }
check-bears = { $even } überall, { $point } an jeder Stelle
check-strips-tested = { $count ->
    [one] { $count } Streifen geprüft
   *[other] { $count } Streifen geprüft
}
check-untested = { $country ->
    [US] ungeprüft: { $percent } der Festigkeit
   *[other] ungeprüft: { $percent } dessen, was EN 1992 der Festigkeitsklasse gibt
}
check-area = { $name } ({ $count ->
    [one] { $count } Anfang von Postleitzahlen
   *[other] { $count } Anfänge von Postleitzahlen
}): { $prices }
check-delivery = { $way ->
    [pallet] Palette { $price }
    [own_van] eigener Transporter { $price }
   *[fitted] montiert { $price }
}
check-no-delivery = keine: Kunden holen ab
check-rates = { $hour } je Stunde; Aufschlag { $margin }
check-no-tax = keine wird erhoben
check-tax = { $name } { $rates }
check-offer = { $standing ->
    [quotation] verbindliches Angebot
   *[estimate] Kostenvoranschlag
}, gilt { $count ->
    [one] { $count } Tag
   *[other] { $count } Tage
}, Anzahlung { $deposit }
check-smallest = kleinster Auftrag { $amount } vor Lieferung und Steuer
check-tile = { $price }, wird bei Auftrag angerechnet
check-tile-always = { $price }, wird bei Auftrag angerechnet; immer ab { $above }
check-hours = { $count ->
    [one] eine Person
   *[other] { $count } Personen
}, { $hours } Stunden am { $days }
check-weekday = { $day ->
    [monday] Montag
    [tuesday] Dienstag
    [wednesday] Mittwoch
    [thursday] Donnerstag
    [friday] Freitag
    [saturday] Samstag
   *[sunday] Sonntag
}
check-closure = { $days } ({ $why })

check-yours = { $yours ->
    [one] { $yours } ist Ihrer
   *[other] { $yours } sind Ihre
}
check-invented = Noch erfunden: { $invented } von { $every } Werten; { $usual } andere sind übliche, die stehen bleiben dürfen, { check-yours }.
check-not-made = { $key }: { $says }
check-invented-table = { $label } ([{ $table }]), { $count ->
    [one] { $count } Wert
   *[other] { $count } Werte
}: { $rests }.
check-confirm = Ändern Sie sie, oder schreiben Sie standing = "yours" in eine Tabelle (in [offer] whose = "yours"), sobald stimmt, was da steht.
check-may-stay = Keine Antwort ist ein Probelauf. Noch von uns, und darf vorerst so bleiben: { $invented } von { $every } Werten; { $usual } andere sind übliche, { check-yours }.
check-trial = Solange Preise, Stunden, Tage, Liefergebiete, Farbtöne oder Hebezeug erfunden sind, ist jede Antwort ein Kostenvoranschlag, der sagt, dass er ein Probelauf ist. Sie stehen in { $tables }.

check-looks = Einen zweiten Blick wert:
check-strong-shade = { $shade } nimmt { $total } Pigment; ASTM C979 Abschnitt 1.4 lässt insgesamt { $most } des Zements zu.
check-deep-shade = { $shade } nimmt { $total } Pigment; über { $most } wird ein Farbton kaum tiefer, und der Beton braucht mehr Wasser.
check-place-unsealed = Für { $place ->
    [indoors] innen
    [wet-room] Nassräume
   *[outdoors] außen
} gibt es keine Versiegelung; ein Auftrag dafür lässt sich nicht ausführen.
check-signature = Antworten sind noch von { $name } unterschrieben; das ist erfunden: siehe [reply].
check-email = An { $email } kommt kein Brief an: Schreiben Sie dort eine Adresse von Ihnen hin.
check-coarse = Das Größtkorn, { $grain }, ist mehr als ein Drittel der dünnsten Platte, { $thinnest } (ACI 318-19 26.4.2.1).
check-coarse-face = Körner von { $grain } sind grob für { $coat } Vorsatzbeton; ein Drittel davon sind { $third }. Nennen Sie, ohne was er gemischt wird.
check-usual-cement = Niemand hat gesagt, wie viel Zement in der Sackware ist: { $percent } sind angenommen, eine übliche Zahl, und Pigment wird danach gewogen. Fragen Sie den Hersteller, und schreiben Sie cement_percent.
check-admixtures = Fließmittel ergibt { $found } g je Kilogramm Zement; EN 206 5.2.6 lässt insgesamt { $most } g Zusatzmittel zu.
check-weak-bag = Die { $strength } auf dem Sack sind ein Mittelwert: Trauen Sie, bis er geprüft ist, { $percent } davon, in concrete.untested_percent (EN 1992-1-1 Tabelle 3.1).
check-thousands = { $key } ist { $number }, das sind { $money }: Wenn { $meant } gemeint ist, schreiben Sie { $meant }.
check-loopback = { $key } ist { $address }; das öffnet sich nur auf diesem Rechner: Geben Sie die Adresse an, die Kunden erreichen.
check-law = Für { $land } kennen wir weder Recht noch Brauch. Lassen Sie, bevor Kunden es lesen, jemanden durchsehen, der sich auskennt: was Seite und Briefe zu Widerruf, Anzahlung, Gas, Strom und Kaminen sagen, und den Steuersatz: { $tax } { $percent }.
check-region = Die Feiertage sind die des ganzen Landes, { $land }. Hat Ihr { $land ->
    [CH] Kanton
    [DE] Bundesland
    [AT] Bundesland
   *[other] Landesteil
} mehr, schreiben Sie seine Buchstaben in workshop.region: { $regions }.
check-holidays = In calendar.holidays_worked steht, was in { $land } kein Feiertag ist, und ändert nichts: { $names }. Nehmen Sie es heraus.
check-currency = Die Währung ist { $currency }; in { $land } zahlt man in { $usual }. Sind die Preise in { $usual }, schreiben Sie das in workshop.currency.
check-postcodes = Keine Postleitzahl in { $land } beginnt mit { $beginnings }; dort wird also niemand beliefert. So sieht eine aus: { $example }.
check-area-postcodes = Das Gebiet „{ $area }“: { $says }

check-before = Bevor damit Kunden bedient werden:
check-no-signing-keys = LEDGERSTONE_SIGNING_KEYS ist nicht gesetzt: Bei jedem Start entsteht ein neuer Schlüssel, und Links öffnen sich nicht mehr, wenn der Dienst endet.
check-no-maker-key = LEDGERSTONE_MAKER_KEY ist nicht gesetzt: Bei jedem Start entsteht ein anderer und wird angezeigt.
check-no-calendar = { $file } ist nicht da: Ohne die Kalenderdatei heißt jeder Termin eine Schätzung.
check-faults = { $count ->
    [one] Ein Fehler
   *[other] { $count } Fehler
} in der Datei { $file }.

init-wrote = { $file } ist geschrieben. Was noch auszufüllen ist, zeigt: { $check }
init-form = Oder füllen Sie sie als Formular aus: Starten Sie { $serve }, öffnen Sie { $address } und geben Sie den Schlüssel ein, den es nennt.
init-there = Das steht schon da; es wurde nichts geschrieben. Nennen Sie eine neue Datei.
init-unwritable = Die Datei lässt sich nicht schreiben: { $reason }.
init-unanswered = Die Antworten endeten vor den Fragen; es wurde nichts geschrieben.
init-asks = { $question ->
    [country] Land, mit zwei Buchstaben (DE, AT, CH)
    [region] Landesteil, für Feiertage (BY, NW, 9)
    [timezone] Zeitzone
    [name] Der Name Ihrer Werkstatt
    [town] Ihr Ort
    [email] Wohin Kunden schreiben
    [telephone] Wo Kunden anrufen
    [table] Ihr Gießtisch, Länge x Breite in { $lengths ->
        [in] Zoll
       *[mm] mm
    }
    [thicknesses] Dicken, die Sie gießen, in { $lengths ->
        [in] Zoll
       *[mm] mm
    }, mit Kommas dazwischen
    [fck_mpa] Festigkeit Ihres Betons nach 28 Tagen, am Zylinder, in { $strengths ->
        [psi] psi
       *[MPa] N/mm² (oder: 45 N/mm² Würfel)
    }
    [bag] Mischen Sie Sackware? Dann, mit Kommas dazwischen: was ein Sack wiegt, sein Wasser, was er ergibt und sein Preis, etwa 25 kg, 3,5 l, 13 l, 9,50; keine, wenn Sie Zement und Sand abwiegen
    [hands] So viele arbeiten bei Ihnen
    [orders_ahead_days] Arbeitstage, die schon vergeben sind, bevor der nächste Auftrag anfangen kann (0: keine)
    [warmth] Wie warm Ihre Werkstatt im Winter und im Sommer ist, in { $temperatures ->
        [F] °F
       *[C] °C
    }, mit Leerzeichen dazwischen: Danach erhärtet der Beton, und danach richten sich die Tage
    [jobs] So viele Arbeitsstunden brauchen Sie dafür, drei Zahlen mit Leerzeichen (oder nur die erste; leer: so lassen)
    [hours_per_day] Stunden eines Arbeitstags
    [materials] Was Sie für das zweite kaufen, Beton, Schalung, Stahl und Versiegelung zusammen (leer: so lassen)
    [asked] Was Sie dafür verlangen, vor Steuer und Lieferung: Danach richtet sich der Aufschlag (leer: so lassen)
    [rest] { $count ->
        [one] Dieser eine Wert stimmt für Sie
       *[other] Diese { $count } Werte stimmen für Sie
    } (j, n)
    [hour] Eine Arbeitsstunde kostet
    [tax] Steuer, die Sie ausweisen, in Prozent; keine für Kleinunternehmer
    [deposit_percent] Anzahlung, in Prozent vom Ganzen
    [postcodes] Postleitzahlen, die Sie beliefern, mit ihrem Anfang, mit Kommas dazwischen
    [pallet] Eine Palette dorthin kostet; keine, wenn Sie keine verschicken
    [own_van] Ihr eigener Transporter dorthin kostet; keiner, wenn Sie keinen haben
   *[fitted] Geliefert und montiert kostet; keine, wenn Sie nicht montieren
}
init-job = { $job }: { $hours } h nach der Datei
init-elsewhere = Keine unserer erfundenen Werkstätten steht in { $land }. { $known ->
    [yes] Die Datei hat dessen Geld, Uhr, Postleitzahlen und Steuer; jeder andere Wert ist von einer Werkstatt in einem anderen Land, ihr einziges Liefergebiet ist geraten, und was sie zu Recht und Steuer sagt, ist zu prüfen.
   *[no] Die Datei hat dessen Geld und Uhr. Postleitzahlen und Steuer sind hier nicht bekannt: Sie liefert deshalb nirgendwohin und berechnet keine Steuer; jeder andere Wert ist von einer Werkstatt in einem anderen Land, und was sie zum Recht sagt, ist zu prüfen.
}
init-none = keine
init-two-sizes = Schreiben Sie Länge und Breite, etwa 2700 x 1200.
init-of-a-bag = Schreiben Sie vier Angaben mit Komma und Leerzeichen dazwischen: Gewicht, Wasser, was er ergibt, Preis.
init-bag = Sackware
init-warmth = Schreiben Sie zwei Temperaturen mit Leerzeichen dazwischen, oder eine für das ganze Jahr.
init-around = Rund um { $town }
