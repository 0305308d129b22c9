# Was die Seite der Werkstatt neben den Worten der Kundenseite sagt.
# Daraus entsteht `web/desk/messages.de.js`: `python -m ledgerstone.contract desk-messages.de`.

desk =
    .title = Werkstattseite
    .views = Was zu tun ist
    .steps = Auf dieser Seite

steps =
    .order = Der Auftrag
    .terms = Bedingungen

view =
    .offer = Angebot schreiben
    .offers = Angebote
    .week = Die Woche

door =
    .title = Der Schlüssel der Werkstatt
    .hint = Er steht in LEDGERSTONE_MAKER_KEY, oder der Dienst hat ihn beim Start genannt.
    .key = Schlüssel
    .stays = Auf diesem Gerät behalten
    .stays-hint = Sonst gilt er, bis Sie diesen Tab schließen. Wählen Sie es nur auf dem eigenen Gerät.
    .enter = Öffnen
    .wrong = Das ist nicht der Schlüssel der Werkstatt. Geben Sie ihn so ein, wie er gesetzt wurde.
    .wait = Von hier wurden zu viele Schlüssel versucht. Versuchen Sie es in { $n } s noch einmal.

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
    .attached = Es ist von Dateien die Rede, die nicht gelesen werden: Sehen Sie sie an.
    .reply-to = Die Antwort soll an { $address } gehen, nicht an die Adresse des Absenders.

points =
    .title =
        { $n ->
            [one] { $n } Punkt ist offen
           *[other] { $n } Punkte sind offen
        }
    .none = Nichts ist offen
    .go = Zum Feld
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
    .hours-all = Alle Handstunden
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
    .margin_percent = Aufschlag
    .margin_percent-hint = In Prozent, nur für dieses Angebot
    .deposit_round_to = Anzahlung runden auf
    .deposit_round_to-hint = Etwa 10 für volle Zehner
    .standing = Es ist
    .standing-hint = Ein festes Angebot ist ein zugesagter Preis
    .standing-usual = wie im Profil
    .standing-estimate = ein Kostenvoranschlag
    .standing-quotation = ein festes Angebot
    .valid_until = Es gilt bis
    .valid_until-hint = Leer: wie im Profil
    .note = Ein paar Worte von Ihnen
    .note-hint = Sie stehen im Brief, auf den Blättern und hinter dem Link

reply =
    .title = Die Antwort
    .letter = Der Brief
    .name = Wen sie grüßt
    .tone = Wie viel sie sagt
    .full = Alles
    .short = Die kurze Form
    .write = Antwort schreiben
    .copy = Kopieren
    .copy-text = Als Text kopieren
    .draft = Entwurf herunterladen
    .copied = Kopiert. Fügen Sie es in Ihre Mail ein.
    .text-copied = Als Text kopiert.
    .not-copied = Dieser Browser lässt Seiten nicht kopieren. Der Brief ist markiert: Kopieren Sie ihn von Hand.
