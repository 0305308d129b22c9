# Alles, was das Formular des Profils neben dem sagt, was es mit dem Schreibtisch und der Seite der Kunden teilt.
# Daraus entsteht `web/desk/workshop/messages.de.js`: `python -m ledgerstone.contract workshop-messages.de`.

workshop =
    .title = Ihre Werkstatt
    .skip = Zum Formular springen
    .back = Zurück zum Schreibtisch
    .subjects = Themen
    .intro = Was Sie ändern, bleibt auf diesem Gerät, bis Sie es speichern.
    .demonstration = Das ist die erfundene Werkstatt. Beginnen Sie mit „init“ eine eigene (README).

subject =
    .first = Erstes Angebot
    .you = Sie
    .money = Geld
    .mould = Tisch und Schalung
    .concrete = Beton
    .shades = Farbtöne
    .hours = Stunden je Schritt
    .finishes = Oberflächen und Versiegelungen
    .delivery = Lieferung
    .days = Tage
    .faults = ({ $n } zu berichtigen)

first =
    .intro = Kurze Antworten; jede lässt sich später ändern. Ein Balken zeigt, was noch unseres ist: Ändern Sie es, oder haken Sie das Kästchen ab.
    .done = – erledigt
    .rest = { $n ->
        [one] Das stimmt für uns
       *[other] Diese stimmen für uns
    }
    .bags = Ich mische Sackware. Farbtöne aus anderem Zement als im Sack fallen weg.
    .stands = Vorerst: { $what }
    .bag-trust = Bis Sie Streifen davon brechen (unter „Beton“), gelten { $percent } % der Festigkeit.
    .way = Andere Arten zu heben
    .hoist = Kran oder Kipptisch hinzufügen
    .takes = Stunden aller daran, zusammengezählt, bis es verpackt ist
    .buys = Was Sie dafür kaufen: Beton, Schalung, Stahl, Versiegelung
    .asks = Was Sie dafür verlangen, vor Steuer und Lieferung
    .follows = Was daraus folgt: Aufschlag und Einkaufspreise
    .more = Zwei weitere Stücke, damit die Stunden genauer stimmen
    .heat = hitzefest bis { $now }
    .job = { $job }, in Stunden
    .no-hours = Das ist keine Zahl, etwa { $like }.
    .now = Nach der Datei jetzt: { $now }
    .stale = Sie sagten { $told }; seit der letzten Änderung sind es { $now }.
    .refit = Diese noch einmal nehmen

table =
    .add = Noch eins hinzufügen
    .begin = Hinzufügen
    .remove = Herausnehmen
    .leave-out = Weglassen

whose =
    .right = Das stimmt
    .table = All das stimmt für mich
    .opened = { $n ->
        [one] Ein Eintrag war zugeklappt: Sehen Sie ihn erst an.
       *[other] { $n } Einträge waren zugeklappt: Sehen Sie sie erst an.
    }

yesno =
    .true = ja
    .false = nein
    .left-out = (weggelassen)

measure =
    .days = Tage

colour =
    .picker = { $label }: Farbwähler
    .text = { $label }: #rrggbb

outcome =
    .title = Was dabei herauskommt
    .jobs = Drei typische Aufträge, mit Steuer
    .working = Wird ausgerechnet …
    .was = vorher { $total }
    .hours = { $hours } h, fertig { $ready }
    .part = Bei einer Waschtischplatte: { $hours } h, { $amount } von { $total }
    .missing = Noch auszufüllen:
    .faults = { $n ->
        [one] Zuerst ist eines zu berichtigen:
       *[other] Zuerst ist an { $n } Stellen etwas zu berichtigen:
    }
    .share = { $invented } von { $every } Werten sind noch erfunden; Antworten verwenden sie, wie sie dastehen
    .may-stay = { $invented } andere Werte sind noch unsere und ändern daran nichts
    .table = ({ $n }): { $says }.
    .trial = Bis alle Schritte erledigt sind, sagt jede Antwort, dass sie ein Probelauf ist.
    .honest = Keine Antwort ist mehr ein Probelauf: Preise, Tage und Gebiete sind Ihre oder im Handwerk üblich.
    .earlier = Ohne das, was noch zu berichtigen ist, gelten diese Zahlen.
    .changes = { $n ->
        [one] Eine Änderung ist noch nicht gespeichert.
       *[other] { $n } Änderungen sind noch nicht gespeichert.
    }
    .downloaded = { $n ->
        [one] Eine Änderung ist in der geladenen Datei.
       *[other] { $n } Änderungen sind in der geladenen Datei.
    }
    .unchanged = Es ist nichts geändert.
    .take-up = Legen Sie die geladene Datei an die Stelle der Ihren.
    .save = Speichern
    .saved = Gespeichert. Ab jetzt wird mit der neuen Datei gerechnet.
    .kept = Gespeichert. Einige Sekunden kann noch mit der alten Datei gerechnet werden.
    .download = { $file } herunterladen
    .undo = Letzte Änderung zurücknehmen
    .again = Noch einmal versuchen
    .dropped = { $n ->
        [one] Eine Änderung passt nicht mehr zur Datei: Machen Sie sie noch einmal.
       *[other] { $n } Änderungen passen nicht mehr zur Datei: Machen Sie sie noch einmal.
    }
    .reload = Neu laden
