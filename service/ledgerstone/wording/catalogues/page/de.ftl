# Alles, was die Seite für Kunden sagt. Ein Attribut ist ein Satz oder eine Beschriftung; Namen von
# Platten und Ausschnitten stehen für sich, damit sie nicht gebeugt werden müssen.

page =
    .title = Was würde Ihre Platte kosten?
    .lead = Preis, Termin und Gewicht folgen beim Tippen, auch was so nicht machbar ist.
    .invented = { $name } ist eine erfundene Werkstatt: Preise, Personen und Orte gibt es nicht.
    .skip = Zur Antwort springen
    .made-by = { $name }, { $town }
    .made-up-by = { $name }, { $town } (erfunden)
    .no-script = JavaScript ist aus: Tragen Sie ein, was Sie wissen, und drücken Sie „Nach dem Preis fragen“.
    .reach = Schreiben Sie an { $email } oder rufen Sie { $telephone } an.
    .write-to = Schreiben Sie an
    .or-call = oder rufen Sie an:

history =
    .undo = Rückgängig
    .redo = Wiederholen
    .name = Änderungen
    .undone = Rückgängig gemacht.
    .redone = Wiederholt.

draft =
    .kept = Ihre Eingaben bleiben nur in diesem Browser.
    .clear = Alles löschen und neu beginnen
    .cleared = Gelöscht. Wieder die Platte vom Anfang.
    .restored = Hier haben Sie zuletzt aufgehört.
    .not-kept = Dieser Browser behält nichts, wenn Sie die Seite schließen.

slabs =
    .title = Ihre Platten
    .one = Platte { $number }
    .called = Platte { $number }: { $label }
    .add = Platte hinzufügen
    .copy = Diese Platte kopieren
    .remove = Diese Platte entfernen
    .added = Platte { $number } hinzugefügt.
    .removed = Platte entfernt. „Rückgängig“ holt sie zurück.
    .more = Weitere Platte, Stöße
    .count = { $n } Platten

joins =
    .title = Wo Platten sich treffen
    .hint = Lange Platten und L sind oft zwei mit Fuge.
    .one = Fuge { $number }
    .add = Fuge hinzufügen

join =
    .one = Diese Platte
    .side = mit dieser Seite
    .other = stößt an diese Platte
    .other-side = an deren Seite
    .gap = Fugenbreite

shape =
    .title = Maße

label =
    .label = Name dieser Platte
    .more = Art, Anzahl und Name

use =
    .label = Was es wird
    .worktop = Arbeitsplatte
    .upstand = Aufkantung
    .splashback = Rückwand
    .end-panel = Seitenwange
    .shelf = Regalboden
    .table = Tischplatte
    .hearth = Kaminplatte
    .sill = Fensterbank

quantity =
    .label = Wie viele gleiche

kind =
    .label = Form
    .rectangle = Rechteck
    .l-shape = L-Form
    .round = Rund
    .polygon = Gerade Seiten

unit =
    .label = Sie messen in
    .hint = Eine Zahl allein gilt in dieser Einheit; sonst 1,45 m oder 22 1/16 in.
    .mm = mm
    .cm = cm
    .m = m
    .in = Zoll

length =
    .in = Zoll
    .ft = Fuß

size_from =
    .label = Was ist gemessen?
    .finished = Die Platte selbst
    .between-walls = Der Platz zwischen den Wänden
    .over-units = Die Schränke, auf denen sie liegt
    .template-to-follow = Ungefähr; eine Schablone folgt
    .finished-size = Die fertige Platte misst dann { $length } × { $width }.

start =
    .title = Beginnen mit
    .blank = Einfache Platte
    .basin = Wasch­tisch­platte
    .sink = Küchen­spüle
    .shelf = Regal­boden
    .hob = Küchen­zeile mit Kochfeld
    .table = Runder Tisch
    .l-left = L, Ecke links
    .l-right = L, Ecke rechts
    .hearth = Kamin­platte
    .outdoor = Platte im Freien, Grill
    .done = { $name }: steht auf dem Plan. „Rückgängig“ holt die vorige zurück.

place =
    .title = Nach Rand oder Schrank ausrichten
    .left = Rand bis zum linken Ende
    .right = Rand bis zum rechten Ende
    .front = Rand bis vorn
    .back = Rand bis hinten
    .on-unit = Mittig setzen auf
    .label = Wo sie liegen wird
    .indoors = Im Innenraum
    .wet-room = Im Nassraum
    .outdoors = Im Freien

outline =
    .length = Länge
    .length-hint = Von links nach rechts
    .width = Tiefe
    .width-hint = Von vorn nach hinten
    .diameter = Durchmesser
    .points = Ecken, der Reihe nach
    .points-hint = Abstand jeder Ecke vom linken Ende und von vorn, zuerst vorn links.
    .add-point = Ecke hinzufügen
    .point = Ecke { $number }

notch =
    .title = Der Teil, der beim L fehlt
    .corner = Welche Ecke fehlt
    .length = Seine Länge, von links nach rechts
    .width = Seine Tiefe, von vorn nach hinten

corner =
    .front-left = Vorn links
    .front-right = Vorn rechts
    .back-right = Hinten rechts
    .back-left = Hinten links

corner_radius =
    .label = Gerundete Ecken
    .all = Radius jeder Ecke

corner_radii =
    .title = Anderer Radius an einer Ecke

thickness =
    .label = Dicke
    .usual = Übliche Dicken
    .other = Eine andere

openings =
    .title = Ausschnitte
    .add = Ausschnitt hinzufügen
    .none = Noch keine Ausschnitte.
    .removed = { $label }: entfernt. „Rückgängig“ holt es zurück.
    .other = Anderer Ausschnitt, Abtropffläche

add =
    .basin = Waschbecken
    .sink = Spüle
    .tap = Armatur
    .hob = Kochfeld
    .round = Runder Ausschnitt
    .rectangle = Rechteck
    .slot = Langloch
    .drainer = Abtropffläche
    .recess = Vertiefung
    .rebate = Falz

cutout =
    .label = Name
    .diameter = Durchmesser
    .length = Länge, von links nach rechts
    .width = Tiefe, von vorn nach hinten
    .x = Mitte vom linken Ende
    .y = Mitte von vorn
    .rim = Wie es eingebaut wird
    .rim-shown = Unterbau: der Rand ist sichtbar
    .rim-covered = Auflage: ein Rand verdeckt die Kante
    .more = Mehr dazu
    .corner_radius = Eckradius
    .turn_degrees = Gedreht um, in Grad
    .turn-hint = Linksherum, von oben gesehen
    .open_to = Zu einer Seite offen
    .not-open = Rundum geschlossen
    .heat = Heißes Gerät darin
    .size_from = Seine Größe
    .measured = ist gemessen
    .template-to-follow = nach Schablone
    .remove = Ausschnitt entfernen
    .points = Ecken des Ausschnitts

relief =
    .outline = Ihre Form
    .x = Linkes Ende bis zum linken Rand
    .y = Von vorn bis zum vorderen Rand
    .depth = Tiefe nach unten
    .grooves = Rillen
    .fall = Gefälle

sketch =
    .name = Ihre Platte von oben
    .hint = Ausschnitt oder Randpunkt ziehen, oder antippen und mit Knöpfen oder Pfeiltasten bewegen. Zahlen öffnen Hinweise.
    .front = vorn { $length }
    .opening = { $name }: Mitte { $x } von links, { $y } von vorn
    .handle-x = { $name }: { $x }
    .handle-y = { $name }: { $y }
    .handle-xy = { $name }: { $x } von links, { $y } von vorn
    .pin = Gut zu wissen, Nummer { $number }: { $says }

moves =
    .name = Verschieben: { $name }
    .left = { $step } nach links
    .right = { $step } nach rechts
    .front = { $step } nach vorn
    .back = { $step } nach hinten
    .less = { $step } weniger
    .more = { $step } mehr
    .centre-x = Mittig der Länge nach
    .centre-y = Mittig der Tiefe nach
    .field = Genaue Maße
    .remove = Entfernen

edges =
    .title = Kanten
    .hint = Sonst ist jede Kante gerade, leicht gebrochen.

edge =
    .profile = Profil
    .size = Maß
    .more = Wassernase oder herabgezogene Kante
    .drip = Wassernase unten
    .drop = Herabgezogen: wie weit
    .mitred = An der Ecke auf Gehrung

profile =
    .square = Gerade
    .bevel = Gefast
    .round = Gerundet
    .wall = An der Wand

side =
    .front = Vorn
    .back = Hinten
    .left = Linkes Ende
    .right = Rechtes Ende
    .notch-x = Innen, längs
    .notch-y = Innen, quer
    .rim = Rundum
    .number = Seite { $number }

look =
    .title = Aussehen

arms =
    .way = Wie herum
    .title = Das L, wie gemessen
    .hint = Jeder Schenkel an seiner Wand, von der Ecke aus: zwei Platten mit einer Fuge.
    .back = Hinterer Schenkel
    .deep = Seine Tiefe
    .side = Seitlicher Schenkel
    .wide = Tiefe des seitlichen
    .one-piece = In einem Stück gießen

shade =
    .label = Farbton
    .hint = Bildschirme weichen ab: erst eine Musterplatte ansehen.
    .match = Eine andere Farbe
    .match-hint = Ihr Farbcode, etwa #5b5d5a
    .picker = Oder wählen Sie sie
    .ask = Andere Farbe, in Ihren Worten
    .wanted = Wunschfarbe: { $colour }

surface =
    .label = Oberfläche
    .as-cast = Schalungsglatt
    .honed = Fein geschliffen
    .polished = Poliert

sealer =
    .label = Versiegelung

rests =
    .title = Wohin kommt sie?
    .label = Auflage
    .unknown = Noch unklar
    .units = Unterschränke
    .frame = Ein Gestell
    .ends = Beide Enden
    .legs = Beine
    .ledges = Böcke, Leisten
    .pedestal = Ein Mittelfuß
    .full = Fester Unterbau
    .fixed = Sie wird befestigt

units =
    .title = Schränke, von links nach rechts
    .one = Schrank { $number }
    .width = Breite
    .for = Wofür er ist
    .base = Schrank
    .basin = Becken
    .hob = Kochfeld
    .gap = Lücke
    .wall-left = Wand am linken Ende
    .wall-right = Wand am rechten Ende
    .add = Schrank hinzufügen

overhang =
    .title = Überstand über die Schränke

frame =
    .sides = Seiten auf dem Gestell
    .width = Auflagebreite

ends =
    .depth = Tiefe des Auflagers

pedestal =
    .plate = Breite der Tragplatte

legs =
    .title = Beine
    .one = Bein { $number }
    .pad = Auflagebreite je Bein
    .add = Bein hinzufügen

ledges =
    .title = Konsolen oder Leisten
    .one = Leiste { $number }
    .start-x = Beginn: vom linken Ende
    .start-y = Beginn: von vorn
    .end-x = Ende: vom linken Ende
    .end-y = Ende: von vorn
    .depth = Tiefe der Leiste
    .add = Leiste hinzufügen

point =
    .x = Vom linken Ende
    .y = Von vorn

row =
    .remove = Entfernen

delivery =
    .title = Wie sie zu Ihnen kommt
    .label = Lieferung
    .collect = Ich hole sie ab
    .pallet = Auf Palette, frei Bordsteinkante
    .own-van = Mit unserem Transporter
    .fitted = Geliefert und eingebaut
    .postcode = Postleitzahl
    .way-in = Der Weg ins Haus
    .way-in-hint = Getragen wird hochkant. Was Sie nicht wissen, fragen wir.
    .doorway = Engste Tür, lichte Breite
    .steps = Stufen
    .floor = Stockwerk
    .floor-hint = 0 ist das Erdgeschoss
    .people = Personen zum Tragen
    .ceiling = Niedrigste Decke
    .turn = Enge Ecke
    .turn-from = Breite vor der Ecke
    .turn-into = Breite nach der Ecke
    .lift = Aufzug
    .lift-width = Breite innen
    .lift-depth = Tiefe innen
    .lift-height = Höhe innen
    .lift-door = Tür, lichte Breite
    .lift-rated = Tragfähigkeit in kg
    .lift-rated-lb = Tragfähigkeit in lb

needed_by =
    .label = Gebraucht bis

form =
    .check = Preis und Hinweise zeigen
    .error = Fehler:
    .problem = Etwas stimmt noch nicht
    .error-title = Fehler: { $title }
    .send = Nach dem Preis fragen

answer =
    .title = Die Antwort
    .starting = Die Werkstatt wird geladen.
    .asking = Wird berechnet…
    .slow = Das dauert. Nichts ist verloren.
    .stale = Zum Stand vor Ihrer letzten Änderung
    .partial = Abhilfe ließ sich nicht suchen.
    .no-price = Noch kein Preis
    .plus-delivery = plus Lieferung
    .no-price-why = Was dafür zu ändern ist, steht unten.
    .unread =
        { $n ->
            [one] { $n } Angabe ist noch nicht lesbar.
           *[other] { $n } Angaben sind noch nicht lesbar.
        }
    .price = Preis
    .with-tax = inkl. { $percent }{ "\u00A0" }% { $name }
    .no-tax = es wird keine Steuer berechnet
    .has-collect = ohne Lieferung
    .has-pallet = mit Lieferung frei Bordsteinkante
    .has-own-van = mit Lieferung in unserem Transporter
    .has-fitted = mit Lieferung und Einbau
    .net = { $net } und { $tax } { $name }
    .deposit = Anzahlung { $deposit }
    .day = Termin
    .arrives = Bei Ihnen bis { $day }
    .between = Zwischen { $earliest } und { $latest }
    .collect = Abholbereit am { $day }
    .glance-arrives = bei Ihnen bis { $day }
    .glance-collect = Abholung { $day }
    .if-ordered = Bei Bestellung bis { $day }
    .weight = Gewicht
    .weighs = { $label }: { $about }
    .packed = { $weight } verpackt
    .size = Fertigmaß { $length } × { $width } × { $thickness }
    .across = Fertigmaß Ø { $length }, { $thickness } dick
    .standing = Verbindlichkeit
    .estimate = Kosten­voranschlag
    .quotation = Festes Angebot
    .valid = Preis gilt bis { $day }
    .rates = Sätze gelten bis { $day }
    .lines = Woraus der Preis besteht
    .stages = Wofür die Tage sind
    .amount = Betrag
    .what = Was
    .from-to = { $from } bis { $to }
    .when = Wann
    .before-tax = Vor Steuer
    .tax = Steuer
    .total = Gesamt
    .depends = Bedingungen
    .reference = Nummer { $reference }
    .copy = Link zum Angebot kopieren
    .copied = Der Link ist kopiert.
    .not-copied = Der Link ließ sich nicht kopieren: { $link }
    .print = Drucken
    .copy-text = Als Text kopieren
    .text-copied = Das Angebot ist als Text kopiert.
    .tax-line = { $name } { $percent }{ "\u00A0" }%
    .announce = { $total } (inkl. { $name }). { $day }. { $findings }
    .announce-no-tax = { $total }. { $day }. { $findings }
    .announce-stopped =
        { $n ->
            [one] Noch kein Preis: { $n } Punkt zu ändern.
           *[other] Noch kein Preis: { $n } Punkte zu ändern.
        }
    .last-answer = Letzte Antwort, für { $what }: nicht für das Formular, wie es jetzt ist.

weeks =
    .alt = Von { $from } bis { $to }: { $stages }
    .one = { $name } am { $from }
    .span = { $name } { $from } bis { $to }

keep =
    .title = Angebot aufbewahren
    .link = Nummer { $reference }. Der Link öffnet es bis { $day }, wie es jetzt ist.
    .no-link = Nummer { $reference }; zu groß für einen Link: als Text kopieren.
    .text-price = Preis: { $total }
    .call = Anrufen: { $telephone }
    .subject = Angebot { $reference }

request =
    .hint = Angebot und Text gehen an die Werkstatt; wir behalten nichts davon.
    .name = Ihr Name
    .reach = E-Mail-Adresse oder Telefonnummer
    .note = Sonst noch etwas? (freiwillig)
    .send = Senden
    .failed = Nicht gesendet. Schreiben Sie an { $email }: Der Link unten enthält alles.

findings =
    .before-order = Vor der Bestellung ({ $n })
    .on-delivery = Bei der Lieferung ({ $n })
    .in-use = Im Gebrauch ({ $n })
    .stopped = Was zu ändern ist
    .to-know = Gut zu wissen
    .count =
        { $n ->
            [one] { $n } Hinweis.
           *[other] { $n } Hinweise.
        }
    .change-count =
        { $n ->
            [one] { $n } Punkt zu ändern
           *[other] { $n } Punkte zu ändern
        }
    .stops = So nicht machbar
    .asked = Fehlt noch
    .caution = Achtung
    .note = Hinweis
    .go = Zum Feld: { $name }
    .not-checked = Wird danach geprüft: { $stages }.

stage =
    .shape = die Form
    .strength = die Festigkeit
    .promise = Lieferung und Termin

remedy =
    .fix-all = Alle Änderungen übernehmen
    .nearest = Das Nächste, das geht
    .ways = So sparen Sie
    .then = Der Preis ist dann { $price }
    .more = { $amount } mehr
    .less = { $amount } weniger
    .same = Der Preis bleibt
    .lighter = { $weight } leichter
    .sooner =
        { $n ->
            [one] { $n } Tag früher
           *[other] { $n } Tage früher
        }
    .done = Geändert. „Rückgängig“ nimmt es zurück.
    .stale = Die Anfrage ist jetzt eine andere. Die Antwort kommt.
    .ghost = Der Plan mit der Änderung
    .unpriced = Was es kostet, zeigt sich danach

drawing =
    .name = Zeichnung
    .view = Wie es aussehen wird
    .plan = Plan
    .assembled = Alles zusammen
    .assembled-alt = Alle Platten zusammen, von oben.
    .true-size = Ein Ausschnitt in wahrer Größe
    .view-alt = Wie es aussehen wird: { $says }
    .plan-alt = Plan von oben: { $says }
    .missing = Die Zeichnung fehlt.

trouble =
    .down = Der Preisdienst ist nicht erreichbar.
    .busy = Der Preisdienst ist ausgelastet.
    .failed = Der Preisdienst hatte einen Fehler.
    .missing = Der Preisdienst antwortet hier nicht.
    .kept = Ihre Eingaben bleiben erhalten.
    .retry = Neuer Versuch in { $n } s.
    .now = Jetzt versuchen
    .well = Der Preisdienst antwortet wieder.

quote =
    .opening = Das Angebot wird geöffnet.
    .missing = Dieses Angebot lässt sich nicht öffnen. Hier ist Ihr Entwurf.
    .opened = Das ist Angebot { $reference } vom { $day }. „Rückgängig“ holt Ihren Entwurf zurück.
    .title = Angebot { $reference }, wie es gemacht wurde
    .price = { $total } inkl. { $tax } { $name }
    .ready = Fertig am { $day }, bei Bestellung bis { $by }
    .deposit = Anzahlung
    .today-same = Heute wäre es dasselbe.
    .today = Heute wären es { $total }, fertig am { $day }.
    .today-stopped = Heute ist es so nicht machbar.
    .today-gone = So gibt es das nicht mehr. Wählen Sie neu.
    .changes = Anders als bei { $reference }
    .later =
        { $n ->
            [one] { $n } Tag später fertig
           *[other] { $n } Tage später fertig
        }
    .sooner =
        { $n ->
            [one] { $n } Tag früher fertig
           *[other] { $n } Tage früher fertig
        }
    .close = Angebot schließen

at =
    .use = was es wird
    .outline = Umriss
    .outline-length = Länge
    .outline-width = Tiefe
    .outline-diameter = Durchmesser
    .outline-notch = Innenecke des L
    .outline-corner_radius = Eckradius
    .thickness = Dicke
    .shade = Farbton
    .finish = Ausführung
    .finish-surface = Oberfläche
    .finish-sealer = Versiegelung
    .place = wo sie liegen wird
    .rests = worauf sie liegt
    .cutouts = Ausschnitte
    .edges = Kanten
    .delivery = Lieferung
    .delivery-kind = Art der Lieferung
    .delivery-postcode = Postleitzahl
    .needed_by = gebraucht bis
    .corner_radius = Eckradius
    .depth = Tiefe nach unten
    .opening = Ausschnitt { $number }
    .relief = Vertiefung { $number }
    .joins = Fugen
    .slab = Platte { $number }
    .the-slab = die Platte
    .of = { $thing }, { $part }
    .order = die Anfrage

what =
    .title = Was ist es?

extras =
    .title = Sonstiges
    .services = Termin, Musterplatte, Aufmaß

bar =
    .name = Auf einen Blick
    .picture = Bild groß ansehen
    .last = Letzte Antwort: { $answer }
    .rests-open = Auflage offen
    .last-for = Für { $what }; neu in { $n } s
    .again = Neu in { $n } s

ask =
    .make = Fertigung anfragen
    .letter = Bitte fertigen Sie das für mich. Mein Name und meine Telefonnummer:
    .opened = Senden Sie den Brief an { $email }, der aufging, oder kopieren Sie, was unten steht.
    .copy = Ihre Kopie der Anfrage

large =
    .closer = Größer
    .further = Kleiner
    .close = Schließen
