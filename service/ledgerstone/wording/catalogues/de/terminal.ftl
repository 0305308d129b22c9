# Was die Befehle der Werkstatt im Terminal von einem Auftrag ausgeben.

terminal-label = { $row ->
    [estimate] Kostenvoranschlag
    [quotation] Angebot
    [price] Preis
    [deposit] Anzahlung
    [ready] Fertig
    [packed] Verpackt
   *[link] Link
}
terminal-until = { $name }, bis { $day }
terminal-tax = einschließlich { $amount } { $tax } ({ $percent })
terminal-ready = { $ready }, wenn bis { $by } bestellt wird
terminal-arrives = { $way ->
    [collect] abzuholen ab { $first }
    [day] bei Ihnen am { $first }
   *[days] bei Ihnen zwischen { $first } und { $last }
}
terminal-size = { $length } × { $width }, { $thickness } dick, { surface-name }; { $weight }
terminal-across = { $length } im Durchmesser, { $thickness } dick, { surface-name }; { $weight }
terminal-rests = Darauf beruhen Preis und Termin:
terminal-ways = So lässt sich sparen:
terminal-lighter = { $weight } leichter
terminal-sooner = { $count ->
    [one] { $count } Tag früher
   *[other] { $count } Tage früher
}
terminal-not-made = So nicht zu fertigen.
terminal-level = { $level ->
    [stops] Stopp
    [caution] Vorsicht
   *[note] Hinweis
}
terminal-fix = Alles auf einmal, für { $total }:
terminal-nearest = Was dem am nächsten kommt, für { $total }:
terminal-drawing = (Zeichnung) { $words }
terminal-wrote = { $file } ist geschrieben.
terminal-wrote-draft = { $file } ist geschrieben. Öffnen Sie es in einem Mailprogramm.
terminal-subject = Betreff: { $subject }
terminal-no-keys = { $name } ist nicht gesetzt; Links, die hier entstehen, öffnen sich nirgends. Setzen Sie es so, wie der Dienst es hat.
terminal-customer = { $row ->
    [name] Von: { $text }
    [reply_to] Antwort an: { $text }
   *[phone] Telefon: { $text }
}
terminal-reply-differs = Die Antwort geht an eine andere Adresse als die, von der die Nachricht kam.
terminal-no-slab = In dieser Nachricht geht es um keine Platte.
terminal-attached = Angehängt und nicht gelesen: { $files }
terminal-list = { $of ->
    [read] Gelesen:
    [doubtful] Unklar:
    [missing] Es fehlt:
    [assumed] Angenommen:
    [ignored] Beiseitegelassen:
   *[unread] Nicht gelesen; sehen Sie das selbst an:
}
terminal-how = { $how ->
    [said] gesagt: „{ $words }“
   *[worked-out] ausgerechnet: „{ $words }“
}
terminal-unpriced = Noch lässt sich nichts berechnen: Ein Maß des Umrisses fehlt.
