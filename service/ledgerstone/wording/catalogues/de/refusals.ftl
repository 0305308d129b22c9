# Warum eine Anfrage abgelehnt wird: wie jede Art von Problem (RFC 9457) heißt und was sie sagt.

problem-title = { $kind ->
    [cannot-do-as-asked] So können wir es nicht machen
    [too-intricate] Zu umfangreich, um es auf einmal zu berechnen
    [not-understood] Das konnten wir nicht verstehen
    [key-needed] Der Schlüssel der Werkstatt wird gebraucht
    [not-found] Hier ist nichts
    [method-not-offered] Das gibt es hier nicht
    [not-acceptable] Nicht in dieser Form
    [too-slow] Das hat zu lange gedauert
    [template-fault] Die eigene Vorlage der Werkstatt hat einen Fehler
    [length-needed] Die Länge fehlt
    [too-large] Zu groß
    [address-too-long] Die Adresse ist zu lang
    [not-json-type] Senden Sie JSON
    [expectation-not-met] Lassen Sie Expect weg
    [too-many] Zu viele auf einmal
    [headers-too-large] Zu viele Kopfzeilen
    [coding-not-read] So gepackt nicht
    [no-answer] Keine Antwort
    [busy] Ausgelastet
    [no-answer-in-time] Keine Antwort in der Zeit
   *[our-fault] Bei uns ist etwas schiefgegangen
}
problem-usual = { $kind ->
    [cannot-do-as-asked] Die Befunde sagen, was zu ändern ist, damit es machbar wird.
    [too-intricate] Teilen Sie die Bestellung auf, oder geben Sie ihren Platten weniger Ausschnitte, Ecken oder Auflager.
    [not-understood] Die Anfrage ließ sich nicht lesen.
    [key-needed] Senden Sie den Schlüssel der Werkstatt als Bearer-Token.
    [not-found] Unter dieser Adresse ist nichts.
    [method-not-offered] Diese Adresse nimmt diese Methode nicht an.
    [not-acceptable] Fragen Sie nach application/json.
    [too-slow] Die Anfrage kam nicht rechtzeitig ganz an.
    [template-fault] Bringen Sie die Vorlage im Ordner des Profils in Ordnung.
    [length-needed] Senden Sie die Länge des Inhalts mit.
    [too-large] Eine Bestellung hat höchstens 64 kB.
    [address-too-long] Nehmen Sie einen kürzeren Link.
    [not-json-type] Senden Sie den Inhalt als application/json, in UTF-8 und ungepackt.
    [expectation-not-met] Senden Sie die Anfrage ohne dieses Expect.
    [too-many] Warten Sie einen Moment, und fragen Sie noch einmal.
    [headers-too-large] Senden Sie weniger oder kürzere Kopfzeilen.
    [coding-not-read] Senden Sie den Inhalt, wie er ist.
    [no-answer] Der Dienst startet gerade oder ist nicht da. Fragen Sie gleich noch einmal.
    [busy] Warten Sie einen Moment, und fragen Sie noch einmal.
    [no-answer-in-time] Das hat länger gedauert, als wir warten. Fragen Sie gleich noch einmal.
   *[our-fault] Es ist vermerkt; fragen Sie noch einmal, oder schreiben Sie uns.
}

things-to-change = { $count ->
    [one] { $count } Punkt ist zu ändern, damit es machbar wird.
   *[other] { $count } Punkte sind zu ändern, damit es machbar wird.
}
things-not-understood = { $count } Angaben waren nicht zu verstehen.
order-too-intricate = Diese Bestellung ist zu umfangreich, um sie auf einmal zu berechnen; { $slabs ->
    [one] geben Sie ihr weniger Ausschnitte, Ecken oder Auflager
   *[other] teilen Sie sie auf
}.
lane-taken = Diese Bestellung zu berechnen dauert lange, und eine andere wird gerade berechnet. Fragen Sie in { $seconds } s noch einmal.
wrong-keys = Von dieser Adresse kamen zu viele falsche Schlüssel. Versuchen Sie es in { $seconds } s noch einmal.
asked-too-often = Sie haben öfter gefragt, als dieser Dienst einem Anfragenden antwortet. Fragen Sie in { $seconds } s noch einmal.
asked-by-too-many = Es wird gerade mehr gefragt, als sich auf einmal beantworten lässt. Fragen Sie in { $seconds } s noch einmal.
asked-one-at-a-time = Eine andere Bestellung von Ihnen wird gerade berechnet, und andere warten. Fragen Sie in { $seconds } s noch einmal.
requested-too-often = Das sind viele Anfragen auf einmal. Fragen Sie in { $seconds } s noch einmal.
requests-not-taken = Diese Werkstatt nimmt hier keine Anfragen an. Schreiben Sie an { $email }.
mail-server-away = Unser Mailserver ist nicht erreichbar; Ihre Anfrage wurde deshalb nicht gesendet, und nichts davon wurde behalten. Schreiben Sie an { $email } oder rufen Sie { $telephone } an, und nennen Sie die Nummer des Angebots.
template-cannot-be-filled = Die Vorlage { $template } lässt sich nicht füllen: { $why }
link-not-ours = Dieser Link ist keiner von uns.
link-dated-ahead = Dieser Link trägt ein Datum nach dem heutigen Tag unserer Uhr. Öffnen Sie ihn morgen noch einmal.
not-that-type = Fragen Sie nach { $type }.
no-such-slab-drawn = Diese Bestellung hat keine solche Platte.
no-such-drawing = Eine Zeichnung dieses Namens gibt es nicht.
no-such-part = Diese Platte hat { $part ->
    [corner] keine solche Ecke
   *[cutout] keinen solchen Ausschnitt
}.
picture-width = Geben Sie die Breite des Bildes als ganze Zahl in Pixeln an, von { $least } bis { $most }.
paper-of-drawing = Wählen Sie das Papier: a4, a3, letter oder tabloid.
too-many-sheets = Das wären { $sheets } Blätter { $paper }. { $paper ->
    [a4] Fragen Sie nach a3.
    [letter] Fragen Sie nach tabloid.
   *[other] In wahrer Größe ist es zu groß zum Drucken.
}
no-such-sheet = Die Blätter sind { $kinds }.

# Fehler einer ganzen Anfrage, und was kein Feld für sich sehen kann.

order-not-object = Eine Bestellung ist ein JSON-Objekt mit ihren Platten.
not-as-described = Das passt nicht zur Beschreibung: { $why }
no-heated-tent = Ein beheiztes Zelt haben wir hier nicht. Lassen Sie „heated_curing“ weg, oder schreiben Sie false.
no-such-slab = Eine Platte { $number } gibt es in dieser Bestellung nicht.
no-such-side = Diese Platte hat keine Seite „{ $value }“{ nearest }
day-not-written-so = { NAME($field, start: "yes") }: Ein Tag wird so geschrieben: "2027-03-25".
shade-by-name-or-match = Geben Sie den Farbton mit seinem Namen an oder eine Farbe, die getroffen werden soll, nicht beides.
colour-not-written-so = Die Farbe, die getroffen werden soll, wird so geschrieben: "#5b5d5a".
size-from-needs-rectangle = Geben Sie bei einer runden oder vieleckigen Platte das Fertigmaß an; nur ein Rechteck oder ein L lässt sich aus Wänden oder Schränken berechnen.
slab-smaller-than-gaps = Die Platte ist kleiner als die Fugen, die ihr Einbau braucht.
notch-too-large = Der fehlende Teil ist so { $way ->
    [long] lang
   *[wide] tief
} wie die Platte selbst.
corner-radius-too-large = Der Eckradius ist größer, als die Seiten daneben zulassen.
cutout-radius-too-large = Der Eckradius ist größer, als die Seiten des Ausschnitts zulassen.
point-repeats-first = Lassen Sie den letzten Punkt weg: Er wiederholt den ersten.
point-near-the-one-before = Dieser Punkt liegt weniger als { $least } neben dem vorigen.
point-near-a-side = Dieser Punkt liegt weniger als { $least } neben einer anderen Seite. Rücken Sie ihn weg.
outline-crosses-itself = Der Umriss kreuzt oder berührt sich bei { $x } und { $y } (x und y). Versetzen Sie einen Punkt.
outline-without-area = Der Umriss umschließt keine Fläche.
edge-size-missing = Geben Sie das Maß der { $profile ->
    [bevel] gefasten
   *[round] gerundeten
} Kante an.
ledge-without-length = Die Leiste beginnt und endet an derselben Stelle.
least-across = { least-of } muss mindestens { $least } breit sein; das sind { $measured }. Prüfen Sie die Einheit.
least-across-everywhere = { least-of } muss in jeder Richtung mindestens { $least } breit sein. Prüfen Sie die Einheit.
least-of = { $what ->
    [slab] Die Platte
    [notch] Der fehlende Teil
    [cutout] Der Ausschnitt
   *[relief] Die Vertiefung
}
least-beside-notch = Neben dem fehlenden Teil muss die Platte mindestens { $least } breit sein. Prüfen Sie die Einheit.
corner-too-sharp = Die Ecke an diesem Punkt ist spitzer als { $least }°. Schneiden Sie sie mit einem weiteren Punkt ab.
amount-not-written-so = { NAME($field, start: "yes") }: Ein Betrag wird so geschrieben: "40.00", oder "-25.00" als Abzug.
margin-not-written-so = { NAME($field, start: "yes") }: Ein Aufschlag ist ein Prozentsatz von 0 bis 500, so geschrieben: "35".
for-the-maker-alone = Das legt nur die Werkstatt fest, mit ihrem Schlüssel.
token-has-its-terms = Dieses Angebot ist schon gemacht. Geben Sie statt seines Tokens seine Bestellung an und legen Sie das neu fest.
valid-until-out-of-reach = Der letzte Tag eines Angebots liegt zwischen dem { $first } und dem { $last }.
adjustments-below-nought = Damit läge der Gesamtbetrag unter null. Ziehen Sie weniger ab.
ask-not-object = Senden Sie ein JSON-Objekt mit dem Token eines Angebots oder mit einer Bestellung.
token-or-order = Geben Sie das Token eines Angebots an oder eine Bestellung, nicht beides.
no-quote-to-write-of = Das ist kein Angebot von uns. Geben Sie das Token eines Angebots an oder das seines Links.
no-deposit-of-trial = Solange in Ihrer Datei Preise, Stunden, Tage, Liefergebiete, Farbtöne oder Hebezeug erfunden sind, ist jedes Angebot ein Probelauf; um eine Anzahlung wird deshalb nicht gebeten. „Ihre Werkstatt“ zeigt, was noch fehlt.
no-quote-to-ask-for = Das ist kein Angebot von uns. Fragen Sie noch einmal nach einem Preis, und senden Sie den.
no-quote-to-change = Das frühere Angebot ist keines von uns. Lassen Sie „since“ weg, oder geben Sie das Token eines Angebots an.
quote-not-understood-now = Dieses Angebot ist heute nicht mehr zu verstehen: { $gone }
request-not-object = Eine Anfrage ist ein JSON-Objekt.
enquiry-not-object = Senden Sie ein JSON-Objekt mit der Nachricht.
message-empty = Die Nachricht ist leer.
json-empty = Senden Sie die Bestellung als JSON; der Inhalt ist leer.
json-not-utf-8 = Senden Sie die Bestellung als JSON in UTF-8.
json-broken = { $why ->
    [unknown] Ab Zeile { $line }, Spalte { $column } ist der Inhalt kein JSON mehr.
    [value] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } fehlt ein Wert.
    [key] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } fehlt ein Name in doppelten Anführungszeichen.
    [trailing-comma] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } steht nach einem Komma nichts.
    [comma] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } fehlt ein Komma oder eine schließende Klammer.
    [colon] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } fehlt ein Doppelpunkt.
    [after-the-end] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } steht etwas nach dem Ende.
    [unclosed-text] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } beginnt ein Text ohne schließendes Anführungszeichen.
    [control-character] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } steht in einem Text ein Zeilenumbruch oder ein anderes Steuerzeichen.
    [escape] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } steht nach einem Schrägstrich etwas, das JSON nicht kennt.
   *[byte-order-mark] Der Inhalt ist kein JSON: In Zeile { $line }, Spalte { $column } steht eine Bytereihenfolge-Marke.
}
json-too-deep = Der Inhalt ist tiefer als { $levels } Ebenen verschachtelt.
json-not-a-number = { $name } ist keine Zahl; schreiben Sie eine in Ziffern.
json-number-too-large = { $number } ist eine zu große Zahl.
json-key-unreadable = Ein Name ist länger als { $longest } Zeichen oder enthält welche, die sich nicht drucken lassen.
json-key-twice = Der Name „{ $key }“ steht zweimal in einem Objekt; schreiben Sie ihn einmal.
jobs-not-toml = Die Datei ist nicht als TOML zu lesen: Sehen Sie Zeile { $line } an.
link-too-long = Diese Bestellung ist für einen Link zu lang. Speichern Sie die Bestellung als Datei und senden Sie diese; mit dem Token dieses Angebots lässt sie sich wieder öffnen.
jobs-without-table = Schreiben Sie für jeden gemachten Auftrag eine Tabelle [[jobs]].
job-key-unknown = Ein Auftrag hat { $known }.
job-day-missing = Geben Sie den Tag der Bestellung an, zum Beispiel 2026-03-02.
job-order-missing = Geben Sie die Bestellung als Tabelle an oder mit dem Namen ihrer JSON-Datei.
job-figure-wrong = { $key } ist eine Zahl über null.
job-steps-not-table = Die Stunden stehen nach Arbeitsschritten als Tabelle, jeder Schritt mit seinen Stunden.
job-step-hours-wrong = Stunden sind eine Zahl, null oder mehr.
job-step-unknown = Diesen Arbeitsschritt gibt es in diesem Auftrag nicht. Es gibt { $known }.
form-unreadable = Das Formular war nicht zu lesen: Senden Sie höchstens { $most } Felder, als Text in UTF-8.
