# Alles, was das Formular des Profils neben dem sagt, was es mit dem Schreibtisch und der Seite der Kunden teilt.
# Daraus entsteht `web/desk/workshop/messages.de.js`: `python -m ledgerstone.contract workshop-messages.de`.

workshop =
    .title = Ihre Werkstatt
    .skip = Zum Formular springen
    .back = Zurück zum Schreibtisch
    .subjects = Themen
    .intro = Gehen Sie die Themen der Reihe nach durch. Was Sie ändern, bleibt auf diesem Gerät, bis Sie es speichern.
    .demonstration = Das ist die Datei der erfundenen Werkstatt. Beginnen Sie mit „init“ eine eigene (siehe README) und öffnen Sie den Dienst damit; was Sie hier probieren, zeigt, was es bewirken würde.

subject =
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

table =
    .add = Noch eins hinzufügen
    .begin = Hinzufügen
    .remove = Herausnehmen
    .leave-out = Weglassen
    .item = { $n }

whose =
    .right = Stimmt für mich
    .table = All das stimmt für mich
    .opened = { $n ->
        [one] Ein Eintrag war zugeklappt. Jetzt ist er offen: sehen Sie ihn an, dann haken Sie ab.
       *[other] { $n } Einträge waren zugeklappt. Jetzt sind sie offen: sehen Sie sie an, dann haken Sie ab.
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
    .faults = { $n ->
        [one] Zuerst ist eines zu berichtigen.
       *[other] Zuerst sind { $n } Stellen zu berichtigen.
    }
    .share = { $invented } von { $every } Werten sind noch erfunden
    .table = ({ $n }): { $says }.
    .trial = Solange Preise, Stunden oder Liefergebiete erfunden sind, sagt jede Antwort, dass sie eine Probe ist.
    .holding = Deshalb ist jede Antwort eine Probe:
    .others = Auch noch erfunden, aber kein Grund für eine Probe:
    .honest = Preise, Stunden und Liefergebiete sind die Ihren: Antworten sind keine Probe.
    .changes = { $n ->
        [one] Eine Änderung ist noch nicht gespeichert.
       *[other] { $n } Änderungen sind noch nicht gespeichert.
    }
    .downloaded =
        { $n ->
            [one] Eine Änderung ist in der Datei, die Sie geladen haben.
           *[other] { $n } Änderungen sind in der Datei, die Sie geladen haben.
        }
    .unchanged = Es ist nichts geändert.
    .take-up = Legen Sie die heruntergeladene Datei an die Stelle Ihrer bisherigen; der Dienst übernimmt sie von selbst.
    .save = Speichern
    .saved = Gespeichert. Der Dienst übernimmt es in wenigen Sekunden.
    .download = { $file } herunterladen
    .undo = Letzte Änderung zurücknehmen
    .again = Noch einmal versuchen
    .reload = Neu laden
