# Kurze Briefe zu einem Angebot, das gemacht ist.

note-greeting = { $named ->
    [yes] Guten Tag { $name },
   *[no] Guten Tag,
}
note-reminder-subject = Unser Angebot { $reference }
note-reminder = { $standing ->
    [quotation] Unser Angebot
   *[estimate] Unsere Kostenschätzung
} { $reference } über { $total } gilt bis zum { $until }. Möchten Sie die Platten haben, oder sollen wir etwas ändern?
note-thanks = Vielen Dank für Ihre Zusage zu { $reference }.
note-deposit-subject = Die Anzahlung für { $reference }
note-deposit = Bitte zahlen Sie { $deposit } an, mit { $reference } als Verwendungszweck.
note-held = Wir halten den Termin für Sie frei, fertig am { $ready }, wenn die Anzahlung bis zum { $by } hier ist.
note-balance = { $told ->
    [told] Der Rest von { $balance } ist fällig: { $due }.
   *[not-told] Der Rest beträgt { $balance }.
}
no-such-note = Diesen Brief gibt es nicht. Es gibt: { $kinds }.
no-mailbox = Die Datei dieser Werkstatt nennt kein Postfach, oder sein Passwort ist nicht gesetzt.
mailbox-fault = Der Entwurf ist nicht in Ihrem Postfach. { $reason }
draft-filed = Der Entwurf liegt in Ihrem Postfach.
