# Was in der Datei einer Werkstatt nicht stimmt. Vor jedem Satz steht der Schlüssel, um den es geht.

fault-nearest = { $near ->
    [guess] { " " }Vielleicht war „{ $guess }“ gemeint.
    [known] { " " }Bekannt sind hier: { $known }.
   *[none] { "" }
}

# Die Datei selbst.
fault-not-utf8 = Ein Zeichen hier ist nicht in UTF-8. Speichern Sie die Datei in der Kodierung UTF-8.
fault-folder = Das ist ein Ordner. Nennen Sie die Datei des Profils selbst.
fault-no-file = Diese Datei gibt es nicht. Prüfen Sie Name und Ordner.
fault-unreadable = Die Datei lässt sich nicht lesen: { $reason }.
fault-too-large = Die Datei ist größer als 1 MB; so groß ist kein Profil.

# Wie sie geschrieben ist.
fault-writing = { $fault ->
    [twice] Das steht zweimal da. Jeder Schlüssel und jede [Tabelle] steht einmal; Einträge einer Liste stehen in [[ ]].
    [open] Was hier anfängt, hört nicht auf: Es fehlt ein Wert, eine Klammer oder ein Anführungszeichen.
    [quotes] Ein Text hört hier nicht auf: Setzen Sie vorn und hinten dasselbe Anführungszeichen, in einer Zeile.
    [unprinted] Ein Zeichen hier ist unsichtbar oder gehört nicht hierher. Nehmen Sie es heraus.
    [backslash] Schreiben Sie den Schrägstrich \ doppelt oder den Text zwischen einfache Anführungszeichen.
    [statement] Diese Zeile ist weder [Tabelle] noch Schlüssel = Wert noch # Anmerkung.
    [equals] Nach einem Schlüssel stehen = und sein Wert, in derselben Zeile.
    [line] Hier steht mehr als ein Schlüssel = Wert. Schreiben Sie jeden in eine eigene Zeile.
    [value] Dieser Wert lässt sich nicht lesen. Text steht in Anführungszeichen, Zahlen nicht.
    [date] Diesen Tag gibt es nicht.
    [key] Ein Schlüssel besteht aus Buchstaben ohne Umlaute, Ziffern, - und _.
    [bracket] Eine [Tabelle] braucht ihre schließende Klammer.
    [brackets] Eine [[Tabelle]] braucht ihre beiden schließenden Klammern.
    [deep] Listen oder Tabellen stehen zu tief ineinander.
    [long] Eine Zahl hier ist zu lang, um sie zu lesen.
   *[other] Das ist kein TOML.
}
fault-write-day = Schreiben Sie den Tag als { $day }.
fault-write-year = Schreiben Sie den Tag mit seinem Jahr, etwa 2027-{ $day }.
fault-write-text = Schreiben Sie "{ $text }", in Anführungszeichen.
fault-write-point = Schreiben Sie { $number }: In dieser Datei trennt ein Punkt die Dezimalen.
fault-write-number = Schreiben Sie { $number }, die Zahl allein.

# Ein Wert.
fault-unfit = Hierher gehört { fault-wanted }; da steht { fault-found }.{ $quoted ->
    [yes] { " " }Nehmen Sie die Anführungszeichen weg.
   *[no] { "" }
}
fault-wanted = { $wanted ->
    [text] ein Text in Anführungszeichen
    [flag] true oder false, ohne Anführungszeichen
    [day] ein Tag ohne Anführungszeichen, etwa 2027-03-25
    [whole] eine ganze Zahl, etwa 3
    [length] eine Länge in { $lengths ->
        [in] Zoll
       *[mm] mm
    } oder mit Einheit, etwa 120 cm
    [percent] ein Prozentsatz, etwa 12.5
    [hours] eine Zeit in Stunden oder mit Einheit, etwa 45 min
    [rate] eine Zeit in{ $unit }, etwa 0.3
    [days] eine Zahl von Tagen, etwa 2
    [density] eine Dichte in{ $unit }
    [spread] eine Masse je Fläche in{ $unit }
    [mass] eine Masse in{ $unit } oder mit Einheit, etwa 500 g
    [stress] eine Festigkeit in{ $unit } oder mit Einheit, etwa 50 N/mm² Würfel
    [warmth] eine Temperatur in{ $unit }
    [yield] eine Ergiebigkeit in{ $unit }
    [money] ein Geldbetrag, etwa 12.50{ $unit }
    [table] eine Tabelle
    [list] eine Liste in eckigen Klammern
   *[number] eine Zahl, etwa 1.5{ $unit }
}
fault-found = { $found ->
    [yes] true
    [no] false
    [text] der Text „{ $text }“
    [list] eine Liste
    [table] eine Tabelle
    [day] der Tag { $text }
    [number] die Zahl { $text }
   *[time] eine Uhrzeit
}
# Im Formular stehen weder Anführungszeichen noch Klammern, und statt true und false stehen Wörter.
form-unfit = Hierher gehört { form-wanted }; da steht { form-found }.
form-wanted = { $wanted ->
    [text] ein Text
    [flag] ja oder nein
    [day] ein Tag, etwa 2027-03-25
    [percent] ein Prozentsatz, etwa 12,5
    [rate] eine Zeit in{ $unit }, etwa 0,3
    [money] ein Geldbetrag, etwa 12,50{ $unit }
    [number] eine Zahl, etwa 1,5{ $unit }
    [table] eine Tabelle
    [list] eine Liste
   *[other] { fault-wanted }
}
form-found = { $found ->
    [yes] ja
    [no] nein
    [text] „{ $text }“
   *[other] { fault-found }
}
form-choice = Wählen Sie { $options }; da steht { form-found }.
fault-long-number = zu lang, um sie zu drucken
fault-empty = Hier steht nichts. Hierher gehört: { $about }.
fault-too-long = Das sind { $count } Zeichen; Platz ist für { $longest }.
fault-unprintable = Hier steht ein unsichtbares Zeichen. Schreiben Sie es in einer Zeile.
fault-decimals = Das hat { $count } Dezimalen; schreiben Sie höchstens { $most }.
fault-bound = Hier steht { $value }; { $bound ->
    [finite] möglich ist eine Zahl bis { $limit }.
    [above] es muss mehr als { $limit } sein.
    [least] es muss mindestens { $limit } sein.
   *[most] es darf höchstens { $limit } sein.
}
fault-choice = Hierher gehört eines von { $options }; da steht { fault-found }.{ fault-nearest }
fault-no-key = Diesen Schlüssel gibt es nicht.{ fault-nearest }
fault-one-table = Das ist eine einzelne Tabelle: Ihr Name steht einmal, in einfachen Klammern.
fault-list-of-tables = Das ist eine Liste von Tabellen: Ihr Name steht in doppelten Klammern.
fault-list-count = Das ist eine Liste von { $count }; da stehen { $here }.
fault-table-missing = Die Tabelle { $table } fehlt: { $about }.
fault-key-missing = Dieser Schlüssel fehlt: { $about }.
fault-no-word = Diese Tabelle hat keinen solchen Schlüssel.{ fault-nearest }
fault-standing-word = Schreiben Sie hier "yours", "usual" oder "invented".

# Werte, die nicht zueinander passen.
fault-at-least-one = Schreiben Sie mindestens { $thing ->
    [shade] einen Farbton
    [surface] eine Oberfläche
    [sealer] eine Versiegelung
    [edge] ein Kantenprofil
    [strip] eine [[shaping.strips]]
   *[way] eine [[handling.ways]]
}.
fault-twice-in = „{ $name }“ steht zweimal in { $table }. Jeder Name steht einmal.
fault-twice = „{ $name }“ steht zweimal da.
fault-shorter-side = Das ist die kürzere Seite; sie ist länger als { $key }.
fault-more-than = Das ist mehr als { $key }.
fault-more-than-table = Das ist mehr als width_mm des Tisches.
fault-thickness-missing = Nennen Sie mindestens eine Dicke.
fault-thickness-order = Schreiben Sie jede Dicke einmal, die dünnste zuerst.
fault-thickness-between = { $size } liegt nicht zwischen thinnest_mm, { $least }, und thickest_mm, { $most }.
fault-caution-under-stop = Hier steht { $cautions }; es muss mindestens stops_mm sein, { $stops }.
fault-colour = Hierher gehören # und sechs Ziffern oder Buchstaben a-f, etwa #5b5d5a.
fault-doses = Die Dosen ergeben { $total }; höchstens { $most } sind möglich.
fault-no-pigment = Keines der [[pigments]] heißt „{ $name }“.{ fault-nearest }
fault-pigment-twice = „{ $name }“ steht zweimal in diesem Farbton. Schreiben Sie eine Dosis.
fault-not-fast = { $name } hält im alkalischen Zement nicht. Nehmen Sie ein mineralisches Oxid: Kobaltblau für Blau, Chromoxid für Grün.
fault-carbon = Für Pigmentruß gilt eine eigene Grenze. Schreiben Sie kind = "carbon".
fault-cement-twice = { $cement } steht zweimal da. Jeder Zement steht einmal.
fault-no-base = Keine [[shade.bases]] sagt, welche Farbe der Zement { $cement } allein hat.
fault-no-samples = Nachmischen braucht ausgemessene Musterplatten. Fügen Sie Ihren Pigmenten samples hinzu oder schreiben Sie false.
fault-no-place = Nennen Sie mindestens einen Ort, an dem sie verwendet werden darf.
fault-months = Schreiben Sie zwölf Temperaturen, Januar bis Dezember; da stehen { $months }.
fault-cover-days = Das ist weniger als under_cover in [days], { $days }.
fault-mesh = Das ist nicht mehr als der Draht, mesh_wire_mm.
fault-bar-price = Schreiben Sie, was ein Stab kostet, oder lassen Sie bar_mm weg: Dann gibt es keine Stäbe.
fault-no-recipe = Schreiben Sie die Teile eines Kubikmeters als [[recipe.constituents]], oder [recipe.bag].
fault-two-recipes = Da stehen auch [[recipe.constituents]]. Behalten Sie die Art, nach der hier gemischt wird.
fault-no-role = Kein Teil hat die Rolle „{ $role }“. Schreiben Sie ihn dazu.
fault-water-twice = Wasser steht zweimal da. Schreiben Sie es einmal.
fault-part-twice = „{ $name }“ steht zweimal da. Jeder Teil steht einmal.
fault-density = { $role } hat { $least } bis { $most }; da steht { $here }.
fault-not-closed = Mit { $air } Luft füllen die Teile { $fill } des Betons und nicht { $whole }. { $stone ->
    [none] Nehmen Sie von allem etwas weniger.
   *[some] Es geht auf mit { $closes }.
}
fault-part-of = { $name } { $mass }
fault-yield = { $given ->
    [both] Hier stehen yield_l (was ein Sack ergibt) und fresh_kg_per_m3 (wie schwer er frisch ist). Schreiben Sie nur eines: Das andere folgt daraus.
   *[none] Schreiben Sie entweder yield_l (was ein Sack ergibt) oder fresh_kg_per_m3 (wie schwer er frisch ist): Das andere folgt daraus.
}
fault-bag-density = { $bag } und { $water } Wasser in { $litres } wiegen { $density }; Beton wiegt { $least } bis { $most }.
fault-ratio = Der Wasserzementwert ist { $ratio }; möglich sind { $least } bis { $most }.
fault-face-wetter = Der Vorsatzbeton ist der nassere: Er braucht mindestens den Wasserzementwert des Kernbetons, { $ratio }.
fault-weighs = Die Teile wiegen { $fresh }; Beton wiegt { $least } bis { $most }.
fault-weighed = Hier steht { $weighed }; frisch wiegt er { $fresh }, und { $dry }, wenn er alles Wasser verlöre. Wiegen Sie eine Platte noch einmal, oder lassen Sie das weg.
fault-wet-heaps = Die Gesteinskörnung bringt { $held } Eigenfeuchte mit; die Rezeptur hat { $water } Wasser.
fault-bag-mixer = Ein ganzer Sack gibt { $makes }; in den Mischer passen { $takes }.
fault-face-thick = Das ist nicht weniger als die dünnste Platte, { $thinnest }.
fault-no-aggregate = „{ $name }“ ist keine Gesteinskörnung der Rezeptur.{ fault-nearest }
fault-nothing-left = Es bliebe nichts als Zement: Behalten Sie den Sand.
fault-open-time = Das ist weniger, als eine Mischung braucht, { $minutes } Minuten.
fault-coarse-scale = Das ist gröber als scale_step_kg.
fault-no-slurry = Für die Oberfläche „{ $surface }“ steht keine Menge da. Schreiben Sie 0, wo keine gebraucht wird.
fault-saw = Die Säge nimmt { $kerf } von einer Tafel, die { $side } breit ist. Messen Sie noch einmal.
fault-midnight = Hände, die um { $starts } Uhr anfangen und { $hours } Stunden arbeiten, arbeiteten über Mitternacht hinaus. Fangen Sie früher an.
fault-too-cold = Kein Monat erreicht { $coldest }; so endete keine Nachbehandlung. Heizen Sie die Halle, oder schreiben Sie damp_days in [bench].
fault-tent-slow = Das ist nicht weniger als under_cover in [days], { $days }: Es spart nichts.
fault-tent-cold = Die Halle selbst erreicht { $warmest }. Schreiben Sie, was das Zelt darüber hinaus hält.
fault-short-word = Mit „{ $word }“ fangen zu viele Wörter an. Schreiben Sie { $letters } Buchstaben oder mehr.
fault-holds-nothing = Kein Eintrag belegte etwas. Nennen Sie ein Wort, oder schreiben Sie others_hold_people = true.
fault-not-ics = „{ $file }“ ist dem Namen nach keine iCalendar-Datei. Speichern Sie sie als .ics.
fault-country = Für „{ $land }“ sind keine Feiertage bekannt. Schreiben Sie zwei Buchstaben, etwa DE.{ fault-nearest }
fault-region = „{ $region }“ ist { $land ->
    [DE] kein Bundesland
    [AT] kein Bundesland
    [CH] kein Kanton
   *[other] kein Landesteil von { $land }
}.{ $near ->
    [guess] { " " }Vielleicht war „{ $guess }“ gemeint.
   *[known] { "" }
} Bekannt sind hier: { $known }.
fault-clock = „{ $zone }“ ist keine Zeitzone, die hier bekannt ist. Schreiben Sie sie wie Europe/Berlin.{ fault-nearest }
fault-currency = Hierher gehören drei Großbuchstaben, etwa EUR.
fault-email = Hierher gehört eine E-Mail-Adresse, etwa hallo@example.com.
fault-factor = { $factor } schlügen fast nichts auf. Für Kosten mal so viel schreiben Sie { $meant }; ist es so gemeint, schreiben Sie { $factor } mit dem Zeichen.
fault-no-rate = Wer Steuer ausweist, hat einen Satz. Schreiben Sie ihn, oder registered = false.
fault-tax-by-place = Wo die Steuer vom Ort abhängt, schreiben Sie shown = "before-tax" in [tax].
fault-area-free = Dieses Gebiet hat keinen Preis. Schreiben Sie pallet, own_van oder fitted.
fault-no-postcode = Nennen Sie mindestens einen Anfang einer Postleitzahl.
fault-postcode = „{ $beginning }“ ist nicht wie { $like }.
fault-postcode-taken = „{ $beginning }“ gehört schon zum Gebiet „{ $area }“.
fault-pattern = Das ist kein regulärer Ausdruck: Sehen Sie sein Zeichen { $at } an.
fault-pattern-brackets = Setzen Sie in Klammern, womit Gebiete anfangen: ([0-9]+).
fault-no-weekday = Nennen Sie mindestens einen Tag, an dem gearbeitet wird.
fault-closure = Das ist { $last }, vor dem ersten Tag, { $first }.
fault-month-day = Hierher gehören Monat und Tag, { $known ->
    [yes] hier { $day }
   *[no] etwa 08-15
}.
fault-holiday = Kein Feiertag heißt hier „{ $name }“.{ fault-nearest }
fault-address = Hierher gehört eine Adresse im Netz, etwa https://platten.example.com.
fault-origin = Hierher gehört eine Seite ohne Pfad, etwa https://www.example.com.
fault-server = Hierher gehört der Name eines Servers allein, etwa { $like }.
fault-secret = Ein Passwort wird nur verschlüsselt gesendet. { $box ->
    [mail] Schreiben Sie starttls oder tls, oder lassen Sie user weg.
   *[mailbox] Schreiben Sie tls oder starttls.
}

# Eigene Sätze und Vorlagen der Werkstatt.
fault-own-not-utf8 = Das lässt sich nicht als Text in UTF-8 lesen.
fault-own-too-long = Das ist länger als { $most } Zeichen.
fault-own-no-sentence = Das ist kein Satz. Schreiben Sie ihn so: name = Der Satz.
fault-own-no-term = Es gibt keinen Begriff { $name }, an dessen Stelle ein anderer träte.
fault-own-unknown = Es gibt keinen Satz { $name }.
fault-own-empty = { $name } hat keinen Text.
fault-own-value = { $name } bekommt kein { $value }. Seine Werte sind: { $given }.
fault-own-no-values = { $name } bekommt weder { $value } noch einen anderen Wert.
fault-own-function = { $name } verlangt { $function }; das gibt es nicht.
fault-own-reference = { $name } verlangt den Satz { $other }; den gibt es nicht.
fault-own-page-unsaid = Die Seite sagt nirgends { $name }.
fault-own-page = { $name } { $why ->
    [twice] steht zweimal da.
    [unread] ist kein Satz.
    [text] hat einen eigenen Text. Schreiben Sie ihn als Attribut: .name = Der Satz.
    [chooses] wählt nach etwas anderem als { $counted }.
    [number] unterscheidet Zahlen. Schreiben Sie [one] und [other].
    [other] hat kein [other].
   *[holds] enthält etwas anderes als Text und Werte.
}
fault-template-unread = Die Vorlage liest sich nicht: { $reason }
fault-template-deep = In der Vorlage stehen Dinge zu tief ineinander, um sie zu lesen.
fault-template-may-not = Eine Vorlage darf hier „{ $what }“ nicht verwenden.
fault-template-loop = Eine Schleife geht über das, was gegeben ist, und höchstens drei tief.
fault-template-hidden = Namen, die mit _ beginnen, sind nicht gegeben.
