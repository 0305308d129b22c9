# Das Formular des Profils.

profile-changed-since = Die Datei hat sich geändert, seit diese Seite sie gelesen hat. Laden Sie sie neu; was Sie hier eingegeben haben, bleibt erhalten und kommt darüber.
profile-not-writable = Dieser Dienst darf die Datei nicht schreiben. Laden Sie sie stattdessen herunter.
profile-not-written = Die Datei ließ sich nicht schreiben: { $reason }. Sie ist, wie sie war.
profile-no-such-place = Das Profil hat dafür keine Stelle { $pointer }.
profile-taken = Angenommen wird { $value }.
profile-also-removed = Mit herausgenommen: { $things }.
profile-also-removed-part = { $thing ->
    [tiles] gemessene Musterplatten mit { $name }
   *[shade] Farbton { $name }
}
typical-job = { $job ->
    [shelf] Ein schlichtes Regalbrett, { typical-size }, { job-surface }, abgeholt
    [basin-top] Eine Waschtischplatte, { typical-size }, { job-surface }, geliefert
   *[kitchen] Eine Küche aus zwei Platten mit Kochfeld, { job-surface }, montiert
}
typical-job-thickness = Gerechnet mit { $taken }. In den üblichen { $usual }: { $why }
typical-size = { $thick ->
    [yes] { $length } × { $width } × { $thickness }
   *[no] { $length } × { $width }
}
typical-opening = { $opening ->
    [basin] Becken
   *[hob] Kochfeld
}
job-surface = { surface-name }
first-step = { $step ->
    [you] Wer Sie sind
    [table] Ihr Gießtisch
    [concrete] Ihr Beton
    [steel] Ihre Bewehrung
    [lifting] Was Sie heben
    [shades] Farbtöne, die Sie anbieten
    [looks] Oberflächen und Versiegelungen, die Sie anbieten
    [delivery] Wohin Sie liefern
    [money] Was Sie verlangen
    [time] Ihre Zeit
   *[job] Ein Stück, das Sie kennen
}
first-ask = { $ask ->
    [workshop-name] Name
    [workshop-town] Ort
    [workshop-region] Bundesland (für die Feiertage)
    [workshop-email] E-Mail
    [workshop-telephone] Telefon
    [table-length-mm] Länge
    [table-width-mm] Breite
    [recipe-fck-mpa] Festigkeit nach 28 Tagen, laut Sack oder Prüfung
    [mixer-working-l] Eine Mischung ergibt
    [reply-terms] Sätze am Ende Ihrer Briefe
    [bag-name] Name der Sackware
    [bag-bag-kg] Ein Sack wiegt
    [bag-water-l-per-bag] Wasser für einen Sack
    [bag-yield-l] Ein Sack ergibt
    [bag-price-per-bag] Preis eines Sacks
    [steel-material] Woraus
    [steel-bar-mm] Dünnster Stab; { $on ->
        [terminal] „keiner“, wenn Sie keine verwenden
       *[form] leer: keiner
    }
    [steel-mesh-pitch-mm] Matte, von Draht zu Draht
    [steel-mesh-wire-mm] Matte, Dicke der Drähte
    [steel-yield-mpa] Streckgrenze, laut Datenblatt
    [lifting-most-people] So viele Leute heben höchstens eine Platte
    [ways-most-kg] Das Schwerste samt Schalung, das zwei kippen
    [areas-postcodes] Postleitzahlen in Ihrer Nähe, nur die ersten Ziffern
    [areas-pallet] Eine Palette dorthin
    [areas-own-van] Von Ihnen gebracht; { $on ->
        [terminal] „nein“, wenn nicht
       *[form] leer, wenn nicht
    }
    [areas-fitted] Gebracht und montiert; { $on ->
        [terminal] „nein“, wenn nicht
       *[form] leer, wenn nicht
    }
    [rates-hour] Eine Arbeitsstunde kostet Sie: Lohn und Werkstatt, ohne Gewinn
    [tax-registered] Weisen Sie Steuer aus?
    [tax-percent] Steuer
    [offer-deposit-percent] Anzahlung
    [offer-balance-due] Der Rest ist fällig
    [offer-smallest-order] Kleinster Auftrag
    [services-templating-visit] Ein Aufmaßtermin
    [sample-price] Eine Musterplatte
    [calendar-hands] Leute bei der Arbeit
    [calendar-hours-per-day] Stunden eines Arbeitstags
    [calendar-orders-ahead-days] Arbeitstage, die schon vergeben sind
   *[handling-workshop-c] Wie warm es in der Werkstatt ist, Winter bis Sommer
}
profile-follows = { $what ->
    [yield-mpa] Streckgrenze daraus: { $value }.
    [by-eye] Die Farbe gilt wieder als nach Augenmaß. Wurde sie gemessen, sagen Sie es unten.
    [yield-l] Ein solcher Sack ergibt gewöhnlich, mit seinem Wasser: { $value }.
    [says] Kunden lesen dazu jetzt: „{ $value }“ Ändern Sie es, wenn Sie es anders sagen.
   *[most-kg] Die anderen Arten zu heben sind im Verhältnis angesetzt. { $value }. Zu ändern unter „Andere Arten zu heben“.
}
profile-way-lifts = „{ $way }“: { $value }
# What customers read of a sealer that its maker did not describe, by how it seals.
sealer-line = { $kind ->
    [film] Ein dünner Film; er hält Öl und Wein ab, solange er unversehrt ist, und braucht Untersetzer unter heißen Töpfen.
   *[penetrating] Zieht ein und bildet keinen Film; Wasser perlt ab, Öl und Wein gehören gleich abgewischt.
}
profile-below-cost = Nach Ihren Stunden und Preisen kostet es Sie { $cost }. Verlangen Sie mehr, oder sehen Sie beides an.
profile-not-met = { $why ->
    [typed] Die Preise, die Sie eingetragen haben, machen davon schon { $typed } aus. Ändern Sie einen davon oder dies.
   *[far] Das können die anderen Preise nicht ausgleichen. Sehen Sie die Zahl noch einmal an.
}
profile-not-made = Damit geht das nicht: { $job }. { $why }{ $lifts ->
    [yes] { " " }Fügen Sie einen Kran oder eine andere Art zu heben hinzu, wenn Sie eine haben.
   *[no] { "" }
}
profile-not-made-at-all = Nicht zu machen: { $job }. { $why }
profile-not-made-untested = Ungeprüft gelten { $percent } seiner Festigkeit. Damit geht das nicht: { $job }. { $why }
# Ein Schlüssel der Datei, in einem Satz auf dem Formular.
form-key = „{ $label }“{ $word ->
    [true] : ja
    [false] : nein
   *[none] { "" }
}
profile-refused = { $faults ->
    [one] Das geänderte Profil hat { $faults } Fehler; das vorige gilt weiter. Näheres steht im Protokoll.
   *[other] Das geänderte Profil hat { $faults } Fehler; das vorige gilt weiter. Näheres steht im Protokoll.
}
