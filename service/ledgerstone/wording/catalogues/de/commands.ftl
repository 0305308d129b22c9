# Was die Befehle von sich selbst sagen, und was jene ausgeben, die keinen anderen Platz haben.

cli-part = { $part ->
    [usage] Aufruf:
    [positional] was er nimmt
    [optional] Optionen
    [commands] Befehle
   *[wrong] Diese Angaben passen nicht; --help sagt, welche es gibt.
}
cli-does = { $command ->
    [workshop] Das Profil einer Werkstatt prüfen oder eines beginnen.
    [check] Sagen, was in einem Profil nicht stimmt, oder was darin steht.
    [init] Ein Profil mit Kommentaren schreiben, zum Ausfüllen.
    [try] Preis, Masse und Stunden eines Profils mit denen früherer Aufträge vergleichen.
    [order] Einen Auftrag ohne Server kalkulieren, oder seine Antwort oder sein Werkstattblatt schreiben.
    [quote] Sagen, was ein Auftrag kostet und wann er fertig ist, oder was zu ändern ist.
    [reply] Die Antwort an den Kunden schreiben.
    [job-sheet] Schreiben, wonach die Werkstatt arbeitet.
    [enquiry] Eine Nachricht in einen Auftragsentwurf lesen.
    [answer] Den Entwurf schreiben, der eine Nachricht beantwortet.
    [mailbox] Die neuen Nachrichten Ihres eigenen Postfachs durchsehen, [mailbox] im Profil, und zu jeder Anfrage einen Antwortentwurf zu den Entwürfen legen. Nichts wird verschickt, gelöscht oder als gelesen markiert.
    [shade] Farbtöne aus Messungen von Musterplatten ausrechnen.
    [fit] Messungen in Profilzeilen umrechnen: eine CSV-Datei mit der Kopfzeile unten.
   *[strips] Die Festigkeit eines Betons aus gebrochenen Streifen ausrechnen.
}
cli-argument = { $argument ->
    [help] diese Hilfe ausgeben
    [profile-file] das Profil, eine TOML-Datei
    [ask] fragen, was ein erstes Angebot braucht
    [country] das Land, mit dessen üblichen Werten es beginnt
    [jobs-file] frühere Aufträge, eine TOML-Datei
    [order-file] der Auftrag, eine JSON-Datei; - liest die Standardeingabe
    [mail-file] die Nachricht, eine .eml-Datei oder ein Text; - liest die Standardeingabe
    [json] JSON schreiben, wie der Dienst
    [to] der Name des Kunden
    [short] nur Preis, Tag und Warnungen
    [ways] auch eine leichtere und eine günstigere Art
    [pdf] das Blatt als PDF schreiben
    [draft] eine .eml-Datei mit Bildern schreiben
    [draft-answer] sonst: neben die Nachricht
    [once] die neuen Nachrichten einmal bearbeiten
    [watch] weiterlaufen und neue Nachrichten beantworten
    [state] bearbeitete Nachrichten; sonst: neben dem Profil
    [workshop-file] das Profil, in dessen Sprache und Einheiten geantwortet wird
    [tiles-file] eine Musterplatte je Zeile
   *[strips-file] CSV-Tabelle der Streifen
}
file-fault = { $why ->
    [not-there] Datei oder Ordner gibt es nicht
    [folder] es ist ein Ordner, keine Datei
    [not-allowed] dieses Programm hat dazu keine Berechtigung
    [read-only] auf diesem Datenträger lässt sich nichts schreiben
    [full] der Datenträger ist voll
    [there-already] eine Datei dieses Namens gibt es schon
    [long-name] der Name ist zu lang
    [not-text] es ist kein UTF-8-Text
    [not-table] es lässt sich nicht als CSV-Tabelle lesen
    [refused] er lehnt Verbindungen ab
    [no-network] im Netz führt kein Weg zu ihm
    [no-such-server] kein Server hat diesen Namen, oder das Netz fehlt
    [not-trusted] seinem Zertifikat ist nicht zu trauen: Es ist abgelaufen, selbst ausgestellt oder das eines anderen Servers
    [not-secret] die Verbindung ließ sich nicht verschlüsseln
    [too-late] er hat nicht rechtzeitig geantwortet
    [numbered] der Rechner meldet den Fehler { $number }
   *[other] der Rechner meldet einen Fehler
}
cli-unreadable = { $file }: Die Datei lässt sich nicht lesen: { $reason }.
jobs-form =
    FILE hat je Auftrag eine Tabelle; was Sie nicht wissen, bleibt weg:

    { "[[jobs]]" }
    name = "Bank"
    ordered_on = 2026-03-02
    order = "bank.json" # der Auftrag, wie er geschickt würde, neben dieser Datei
    charged = 940.00 # was der Kunde bezahlt hat
    weighed_kg = 52.0 # alle Platten, auf der Waage
    hours = 14.5 # Arbeit
    days = 19 # vom Auftrag bis zur Fertigstellung
    # je Schritt, den Sie gestoppt haben, wie ihn das Werkstattblatt nennt, oder dessen Anfang:
    { "[jobs.hours_by_step]" }
    "Schalung bauen" = 1.3

tried-job = { $name }, bestellt am { $day }
tried-stopped = wäre zurückgeschickt worden: { $why }
tried-figure = { $measure ->
    [charged] Preis
    [weighed_kg] Masse
    [hours] Stunden
   *[days] Tage
}
tried-figures = wäre { $expected }, war { $actual } { $unit }
tried-days = Tage
tried-all = Zusammen
tried-middle = { $off } % in der Mitte von { tried-jobs } ({ $least } bis { $most } %): { $near ->
    [yes] nah genug
   *[no] daneben: Sehen Sie nach bei { $measure ->
        [charged] [rates] und den Preisen bei jedem Material
        [weighed_kg] recipe.weighed_kg_per_m3 und rates.steel_kg_per_m2
        [hours] [hours] und hours_per_m2 der Oberfläche
       *[days] [days] und [calendar]
    }
}
tried-jobs = { $count ->
    [one] { $count } Auftrag
   *[other] { $count } Aufträgen
}
tried-by-step = Nach Schritten
tried-step = wäre { $expected }, war { $actual } h in { tried-jobs }
tried-rates = { $off ->
    [some] Neue Sätze zum Eintragen
   *[none] Sätze: noch ist keiner sicher daneben
}
tried-rate = war { $was }; ± { $spread } aus { tried-jobs }

shades-unheaded = Die erste Zeile ist die Kopfzeile { $columns }, danach folgen Musterplatten.
shades-cement = cement ist grey oder white; hier steht „{ $found }“.
shades-unnamed = Eine Musterplatte mit Dosis braucht den Namen ihres Pigments.
shades-number = { $column } ist eine Zahl; hier steht „{ $found }“.
shades-bound = { $column } ist { $found }; es liegt zwischen { $low } und { $high }.
shades-no-bare = Keine Musterplatte aus { $cement ->
    [white] weißem
   *[grey] grauem
} Zement ist ohne Pigment. Fügen Sie eine mit der Dosis 0 hinzu.
shades-bases = Setzen Sie dies an die Stelle der [[shade.bases]] in Ihrem Profil.
shades-pigment = Setzen Sie dies unter das [[pigments]] mit dem Namen „{ $name }“.
shades-misses = Die Kurve verfehlt die Musterplatten im Mittel um ΔE00 { $miss }:
shades-tile = { $cement ->
    [white] weiß
   *[grey] grau
} { $dose }: { $miss }
shades-again = diese Musterplatte noch einmal ansehen
shades-few = Weniger als { $count } Dosen: Dazwischen und darüber hinaus ist dies geraten.

settings-number = { $name } ist eine ganze Zahl von 0 bis { $most }; angegeben ist „{ $given }“.
settings-short-key = { $of ->
    [one] Der Schlüssel
   *[other] Schlüssel { $number } von { $of }
} in LEDGERSTONE_SIGNING_KEYS ist kürzer als { $least } Zeichen. Ein Komma trennt die Schlüssel; deshalb kann in keinem eines stehen.
settings-maker-key = LEDGERSTONE_MAKER_KEY hat mindestens { $least } Zeichen, damit ihn niemand errät.
not-started = Der Dienst wurde nicht gestartet.
not-started-profile = Die Datei der Werkstatt hat Fehler; es wurde nichts gestartet.

strips-none = Die Tabelle hat keine Streifen. Ihre erste Zeile ist: { $columns }.
strips-number = Zeile { $row }: Geben Sie in der Spalte { $column } eine Zahl ein.
strips-report = { $count ->
    [one] { $count } Streifen brach
   *[other] { $count } Streifen brachen
} im Mittel bei { $mean } (Streuung { $scatter }). Gerechnet wird, vor dem Sicherheitsbeiwert, mit { $counted }.{ $few ->
    [yes] { " " }Mit sechs Streifen oder mehr wird dieser Abschlag kleiner.
   *[no] { "" }
}
strips-write = Schreiben Sie ins Profil:
strips-cautions = Vor dem nächsten Streifen: Tragen Sie eine Schutzbrille, denn ein brechender Streifen wirft Splitter. Halten Sie die Füße unter Streifen und Eimer weg, tragen Sie Sicherheitsschuhe, und legen Sie ein Brett oder Sand 20 mm unter den Eimer, damit er nicht tief fällt. Gießen Sie das Wasser langsam von der Seite zu, nie von unten.
strips-unlike = Die Streifen lassen sich nicht zusammen auswerten: Jede Breite, Dicke, Stützweite und jedes Alter ist größer als 0, und Alter und Dicken unterscheiden sich höchstens um ein Zehntel.

mailbox-line = { $uid }: { $outcome }
mailbox-outcome = { $what ->
    [gone] nicht mehr da
    [done] schon bearbeitet
    [earlier] aus der Zeit vor dem ersten Lauf
    [own] kein Entwurf, von uns selbst
    [list] kein Entwurf, von einer Liste
    [automatic] kein Entwurf, automatisch
    [none] keine Anfrage
    [answered] schon beantwortet
    [asking] ein Entwurf, der nur fragt
   *[draft] ein Entwurf
}
mailbox-in-place = { $draft }, an Stelle des früheren Briefs
mailbox-in-place-of-day = { $draft }, an Stelle des Briefs vom { $day }
mailbox-not-answered = nicht beantwortet: { $why }
mailbox-our-fault = ein Fehler von uns ({ $kind })
mailbox-again = { $why } Es wird in { $seconds } s wieder versucht.
mailbox-no-table = Das Profil hat keine Tabelle [mailbox]. Schreiben Sie dort, in welches Postfach Entwürfe gelegt werden.
mailbox-no-password = Setzen Sie { $variable } auf das Passwort des Postfachs.
mailbox-refused = Der Mailserver hat den Benutzer abgelehnt, oder das Passwort in { $variable }. Viele Anbieter nehmen hier kein gewöhnliches Passwort: Legen Sie in den Einstellungen des Kontos ein App-Passwort an und setzen Sie es dort ein.
mailbox-unreachable = Der Mailserver war nicht erreichbar oder hat nicht mehr geantwortet ({ $reason }).
mailbox-no-folder = Der Mailserver hat keinen Ordner, wie ihn [mailbox] als { $key } nennt. Prüfen Sie seinen Namen.
mailbox-no-drafts = Der Mailserver sagt nicht, welcher Ordner für Entwürfe ist. Nennen Sie ihn in [mailbox] als drafts.
mailbox-replaced = Der Ordner wurde ersetzt, während seine Nachrichten gelesen wurden.
mailbox-taken = Ein anderer Lauf benutzt dieses Postfach. Dieser hat aufgehört.
mailbox-state-unreadable = Die Datei { $file } ist keine von uns; was getan wurde, ist also nicht klar. Legen Sie sie woanders hin; die letzten sieben Tage werden dann noch einmal durchgesehen, und kein Entwurf wird doppelt geschrieben.
