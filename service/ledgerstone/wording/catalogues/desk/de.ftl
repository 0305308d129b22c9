# Was die Seite der Werkstatt neben den Worten der Kundenseite sagt.
# Daraus entsteht `web/desk/messages.de.js`: `python -m ledgerstone.contract desk-messages.de`.

desk =
    .title = Werkstattseite
    .views = Was zu tun ist
    .steps = Auf dieser Seite
    .asking = Der Dienst arbeitet daran …
    .taking = Gespeichert; die Datei wird übernommen …

steps =
    .enquiry = Anfrage
    .order = Auftrag
    .answer = Antwort
    .terms = Bedingungen
    .reply = Brief
    .stopped = So geht es nicht: Siehe die Antwort.

view =
    .offer = Angebot schreiben
    .offers = Angebote
    .week = Die Woche
    .workshop = Ihre Werkstatt

door =
    .title = Der Schlüssel der Werkstatt
    .hint = Er steht in LEDGERSTONE_MAKER_KEY, oder der Dienst hat ihn beim Start genannt.
    .key = Schlüssel
    .stays = Auf diesem Gerät behalten
    .stays-hint = Nur auf dem eigenen Gerät; sonst gilt er, bis Sie diesen Tab schließen.
    .enter = Öffnen
    .wrong = Das ist nicht der Schlüssel der Werkstatt.
    .wait = Zu viele Versuche: in { $n } s noch einmal.

trouble =
    .refused = Der Dienst nimmt diesen Schlüssel nicht mehr an.

enquiry =
    .title = Die Anfrage
    .message = Nachricht einfügen oder ihre Datei hier ablegen
    .read = Lesen
    .file = .eml-Datei öffnen
    .edit = Text ändern
    .next = Nächste Anfrage
    .none = Hier wird nach keiner Platte gefragt.
    .from = Von { $name }.
    .attached = Dateien werden nicht gelesen: Sehen Sie sie an.
    .reply-to = Die Antwort soll an { $address } gehen, nicht an den Absender.

points =
    .quoted = „{ $text }“
    .title =
        { $n ->
            [one] { $n } Punkt ist offen
           *[other] { $n } Punkte sind offen
        }
    .none = Nichts ist offen
    .estimate = Nichts ist offen; ohne „Es ist: ein festes Angebot“ ist es ein Kostenvoranschlag
    .units-taken = Schrankbreiten hat niemand genannt: Sie sind angenommen
    .go = Zum Feld
    .there = In der Nachricht zeigen
    .unread = Nicht gelesen
    .seen = Erledigt
    .doubtful = Unklar
    .missing = Zu fragen
    .assumed = Angenommen
    .right = Stimmt
    .not-asked = Nicht fragen
    .as-it-is = So lassen
    .said = Aus: { $text }

form =
    .title = Der Auftrag, Feld für Feld

side =
    .title = Kosten und Festigkeit
    .margin = Ihre Kosten sind { $cost }, vor Steuer verlangen Sie { $net }. Aufschlag { $percent } %.
    .costs = Kosten nach Posten
    .costs-all = Alle Kosten
    .hours = Stunden nach Schritten
    .hours-all = Alle Arbeitsstunden
    .waits = wartet { $hours } h
    .strength = Der maßgebende Fall
    .no-stress = In keinem Fall entsteht Spannung.
    .utilisation = Ausnutzung
    .stress-is = Spannung
    .limit = Zulässig in diesem Alter
    .age = Alter bei 20 °C, Tage
    .cracks = Im Mittel reißt sie bei
    .stress = Wo die Spannung in { $label } liegt

hand =
    .title = Bedingungen dieses Angebots
    .add = Zeile zum Preis hinzufügen
    .text = Wofür
    .amount = Betrag vor Steuer
    .margin_percent = Aufschlag auf die Kosten
    .margin_percent-hint = In Prozent, nur für dieses Angebot
    .deposit_round_to = Anzahlung runden auf
    .deposit_round_to-hint = Etwa 10 für volle Zehner
    .standing = Es ist
    .standing-hint = Ein festes Angebot ist ein zugesagter Preis; mit Fragen im Brief ist es ein Kostenvoranschlag
    .standing-usual = wie sonst auch
    .standing-estimate = ein Kostenvoranschlag
    .standing-quotation = ein festes Angebot
    .valid_until = Es gilt bis
    .valid_until-hint = Leer: so lange wie sonst
    .note = Ein paar Worte von Ihnen
    .note-hint = Sie stehen im Brief, auf den Blättern und hinter dem Link

reply =
    .title = Der Brief
    .letter = Wie der Brief aussieht
    .name = Wen er grüßt
    .tone = Wie viel er sagt
    .full = Alles
    .short = Die kurze Form
    .write = Brief schreiben
    .copy = Kopieren
    .copy-text = Als Text kopieren
    .draft = Entwurf herunterladen
    .copied = Kopiert. Fügen Sie es in Ihre Mail ein.
    .text-copied = Als Text kopiert.
    .anew = Neu geschrieben: Kopieren Sie es noch einmal.
    .copy-again = Noch einmal kopieren
    .not-copied = Dieser Browser lässt Seiten nicht kopieren: Kopieren Sie den markierten Brief von Hand.
    .file = In die Entwürfe legen
    .sent = Es ist verschickt
    .noted = Als verschickt vermerkt.

offers =
    .open-title = Ein früheres Angebot öffnen
    .field = Zeichen, Link oder Mail einfügen, oder die Datei der Mail hier ablegen
    .open = Öffnen
    .no-link = Darin ist kein Link zu einem Angebot: Fügen Sie ihn oder seine Mail ein.
    .not-here = { $reference } ist nicht unter den Angeboten auf diesem Gerät. Fügen Sie den Link ein.
    .here-alone = Die letzten fünfzig Angebote liegen nur in diesem Browser. Als Datei nehmen Sie sie mit.
    .waits = Was wartet
    .nothing-waits = Nichts wartet auf Sie.
    .all = Die anderen Angebote
    .none = Noch kein Angebot. Eines kommt dazu, sobald seine Antwort kopiert oder als Entwurf geholt ist.
    .until = gilt bis { $day }
    .today = Ohne eigene Bedingungen wären es heute { $total }, fertig am { $day }.
    .why-unanswered =
        { $n ->
            [one] seit einem Tag ohne Antwort
           *[other] seit { $n } Tagen ohne Antwort
        }
    .why-expires = der letzte Tag ist { $day }
    .why-unpaid = zugesagt, die Anzahlung fehlt
    .patience = Tage ohne Antwort, bis eines wartet
    .export = Als Datei sichern
    .import = Aus einer Datei hinzufügen
    .imported =
        { $n ->
            [one] { $n } Angebot kam dazu.
           *[other] { $n } Angebote kamen dazu.
        }
    .not-imported = In dieser Datei sind keine hier gesicherten Angebote.
    .open-row = { $reference } öffnen
    .state = Was aus { $reference } wurde
    .draft = Entwurf
    .sent = verschickt
    .yes = zugesagt
    .no = abgesagt
    .paid = Die Anzahlung ist da
    .is-paid = die Anzahlung ist da
    .asked = Noch nicht beantwortet
    .asked-count =
        { $n ->
            [one] eine Frage ist offen
           *[other] { $n } Fragen sind offen
        }
    .answered = Das ist beantwortet
    .asked-still = Noch nicht beantwortet: { $questions } Vor dem Zuschnitt ist das auf dem Werkstattblatt abzuhaken.
    .change = Auftrag ändern
    .note-copied = Kopiert. Fügen Sie es in Ihre Mail ein.
    .mail = Im Mailprogramm schreiben

papers =
    .title = Papiere
    .approval = Freigabeblatt
    .fitting = Einbaublatt
    .care = Pflegeblatt
    .job = Werkstattblatt
    .true-size = Papier in wahrer Größe
    .no-opening = Kein Ausschnitt ist hier in wahrer Größe zu drucken.
    .calendar = Kalendereinträge
    .dxf = Schalungsteile für die CNC-Fräse (DXF)
    .svg = Schalungsteile für den Laserschneider (SVG)
    .reminder = Erinnerung
    .deposit = Bitte um Anzahlung
    .yes = Zugesagt: Werkstattblatt, Kalender, Anzahlung

week =
    .title = Die nächsten Tage
    .choose = Angebote
    .make = Blatt erstellen
    .days = Tag für Tag
    .alone = Jedes Angebot steht da, als wäre es allein: Wo sich zwei treffen, verlegen Sie eines.
    .buy = Einzukaufen
    .print = Drucken
    .day = Tag
    .what = Was
    .offer = Angebot
    .when = Wann
    .material = Werkstoff
    .used = Verbrauch
    .packs = Gebinde
    .loose = lose
    .of-packs = { $n } zu { $pack }
