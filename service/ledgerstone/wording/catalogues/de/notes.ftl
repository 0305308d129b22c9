# Kurze Briefe zu einem Angebot, das gemacht ist.

note-greeting = { $named ->
    [yes] Guten Tag { $name },
   *[no] Guten Tag,
}
note-reminder-subject = Unser Angebot { $reference }
note-reminder = { $standing ->
    [quotation] unser Angebot
   *[estimate] unser Kostenvoranschlag
} { $reference } lautet auf { $total }; { $standing ->
    [quotation] sein Preis gilt
   *[estimate] seine Sätze gelten
} bis zum { $until }. Möchten Sie die Platten haben, oder sollen wir etwas ändern?
note-thanks = vielen Dank für Ihre Zusage zu { $reference }.
note-deposit-subject = Die Anzahlung für { $reference }
note-deposit = { $country ->
    [CH] Bitte zahlen Sie bis zum { $by } { $deposit } an, mit { $reference } als Mitteilung.
   *[other] Bitte zahlen Sie bis zum { $by } { $deposit } an, mit { $reference } als Verwendungszweck.
}
note-held = Bis dahin halten wir den Termin für Sie frei: fertig am { $ready }.
note-day-open = Den Termin stimmen wir mit Ihnen ab, sobald die Anzahlung hier ist.
note-balance = { $due_is ->
    [set] Der Rest von { $balance } ist fällig: { $due }.
   *[open] Der Rest beträgt { $balance }.
}
note-lacks = { $what ->
    [both] In Ihrer Datei steht weder, wie gezahlt wird, noch, wann der Rest fällig ist: Tragen Sie beides unter „Ihre Werkstatt“, „Geld“, ein: „Wie eine Anzahlung gezahlt wird, wie Kunden es lesen“ und „Wann der Rest fällig ist“.
    [payment] In Ihrer Datei steht nicht, wie gezahlt wird: Tragen Sie es unter „Ihre Werkstatt“, „Geld“, ein: „Wie eine Anzahlung gezahlt wird, wie Kunden es lesen“.
   *[balance_due] In Ihrer Datei steht nicht, wann der Rest fällig ist: Tragen Sie es unter „Ihre Werkstatt“, „Geld“, ein: „Wann der Rest fällig ist“.
}
no-such-note = Diesen Brief gibt es nicht. Es gibt: { $kinds }.
no-mailbox = Die Datei dieser Werkstatt nennt kein Postfach, oder sein Passwort ist nicht gesetzt.
mailbox-fault = Der Entwurf ist nicht in Ihrem Postfach. { $reason }
draft-filed = Der Entwurf liegt in Ihrem Postfach.
desk-invented = noch { $invented } von { $every } Werten erfunden
