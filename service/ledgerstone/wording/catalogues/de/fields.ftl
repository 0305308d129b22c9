# Was an einer Anfrage nicht verstanden wurde. $field ist der Teil der Anfrage, um den es geht, $value
# was dafür gesendet wurde, gekürzt. Das Feld steht im Nominativ, damit es nie gebeugt wird.

field-missing = { $verb ->
    [choose] Zur Wahl steht noch: { NAME($field) }.
    [enter] Es fehlt noch: { NAME($field) }.
   *[say] Es fehlt noch: { NAME($field) }.
}
field-not-yes-or-no = { NAME($field, start: "yes") }: Hier steht true oder false.
field-fault = { NAME($field, start: "yes") }: { $fault }
field-unknown = „{ $value }“ gehört hier nicht dazu ({ NAME($field) }){ nearest }
field-cannot-be = { NAME($field, start: "yes") }: „{ $value }“ gibt es hier nicht{ nearest }
nearest = { $near ->
    [guess] ; ist „{ $guess }“ gemeint?
    [known] . Bekannt sind hier: { $known }.
   *[none] .
}
field-written-as-object = { NAME($field, start: "yes") }: Das wird als JSON-Objekt geschrieben.
field-not-object = { NAME($field, start: "yes") }: Hier steht ein JSON-Objekt.
field-not-object-with-kind = { NAME($field, start: "yes") }: Hier steht ein JSON-Objekt mit einer Art („kind“).
field-not-object-by-side = { NAME($field, start: "yes") }: Hier steht ein JSON-Objekt mit einem Eintrag für jede Seite.
field-not-list = { NAME($field, start: "yes") }: Hier steht eine JSON-Liste.
field-kind-missing = { NAME($field, start: "yes") }: Es fehlt noch die Art („kind“){ nearest }
field-kind-cannot-be = { NAME($field, start: "yes") }: Die Art „{ $value }“ gibt es hier nicht{ nearest }
field-too-many = { NAME($field, start: "yes") }: Es sind zwischen { $least } und { $most } möglich; hier sind es { $count }.
field-not-side = „{ $value }“ ist keine Seite oder Ecke, die hier stehen kann ({ NAME($field) }).
length-out-of-range = { NAME($field, start: "yes") }: { $low ->
    [between] Möglich sind { $least } bis { $most }
    [at-least] Möglich sind mindestens { $least } und höchstens { $most }
   *[more-than] Möglich sind mehr als { $least } und höchstens { $most }
}; das sind { $value }.
text-not-text = { NAME($field, start: "yes") }: Hier steht ein Text.
text-too-long = { NAME($field, start: "yes") }: Hier stehen höchstens { $longest } Zeichen.
text-with-hidden = { NAME($field, start: "yes") }: Hier stehen keine verborgenen Zeichen und keine, die die Schreibrichtung ändern.
text-with-stacked = { NAME($field, start: "yes") }: Auf einem Buchstaben stehen höchstens { $most } Zeichen übereinander.
number-not-number = { NAME($field, start: "yes") }: Hier steht { $kind ->
    [whole] eine ganze Zahl
   *[any] eine Zahl
}, zum Beispiel { $like }.
number-out-of-range = { NAME($field, start: "yes") }: Möglich sind { $least } bis { $most }.
yes-or-no = { NAME($field, start: "yes") }: Hier steht true oder false.

field = { $field ->
    [a-placing] was platziert werden soll
    [free-cut-outs] die Ausschnitte, die platziert werden sollen
    [free-reliefs] die Vertiefungen, die platziert werden sollen
    [free-rests] ob die Auflager ausgelegt werden
    [number-in-the-slab] die Nummer in der Platte
    [piece] das Stück
    [start] der Anfang
    [unit] die Einheit
    [what-is-free] was noch keinen Platz hat
    [a-delivery] eine Lieferung
    [a-drainer] eine Abtropffläche
    [a-drop] eine herabgezogene Kante
    [a-finish] eine Ausführung
    [a-frame] ein Gestell
    [a-full-bed] eine vollflächige Auflage
    [a-join] eine Fuge
    [a-join-side] eine Seite einer Fuge
    [a-ledge] eine Leiste
    [a-leg] ein Bein
    [a-lift] ein Aufzug
    [a-notch] ein Ausschnitt im L
    [a-point] ein Punkt
    [a-polygon] ein Vieleck
    [a-rectangle] ein Rechteck
    [a-relief] eine Vertiefung
    [a-reply] eine Antwort
    [a-request] eine Anfrage
    [a-round-slab] eine runde Platte
    [a-sample-tile] eine Musterplatte
    [a-shade] ein Farbton
    [a-side] eine Seite
    [a-slab] eine Platte
    [a-turn] eine Ecke auf dem Weg
    [a-unit] ein Schrank
    [an-edge] eine Kante
    [an-email-address-or-a-telephone-number] eine E-Mail-Adresse oder eine Telefonnummer
    [an-enquiry] eine Nachricht
    [an-l-shape] eine L-Form
    [an-order] eine Bestellung
    [ceiling-height] die Deckenhöhe
    [colour-to-match] die Farbe, die getroffen werden soll
    [coming-to-measure] das Aufmaß vor Ort
    [corner-radii] die Eckradien
    [corner-radius] der Eckradius
    [customer-name] der Name des Kunden
    [cut-out] der Ausschnitt
    [cut-out-centre] die Mitte des Ausschnitts
    [cut-out-corner-radius] der Eckradius des Ausschnitts
    [cut-out-label] der Name des Ausschnitts
    [cut-outs] die Ausschnitte
    [delivery] die Lieferung
    [depth-of-the-bearing] die Tiefe des Auflagers
    [doorway-clear-width] die lichte Breite der Tür
    [drainer-fall] das Gefälle der Abtropffläche
    [drip] die Wassernase
    [drop] die herabgezogene Kante
    [drop-depth] die Tiefe der herabgezogenen Kante
    [earlier-quote-token] das Token des früheren Angebots
    [edge] die Kante
    [edge-profile] das Kantenprofil
    [edge-size] das Maß der Kante
    [edges] die Kanten
    [finish] die Ausführung
    [fixed] die Befestigung
    [floor] das Stockwerk
    [frame-sides] die Seiten des Gestells
    [frame-width] die Breite des Gestells
    [heat] die Hitze
    [heated-curing] die beheizte Nachbehandlung
    [how-many-people-will-carry] wie viele Personen tragen
    [its-place] seine Lage
    [join-gap] die Breite der Fuge
    [joins] die Fugen
    [kind-of-delivery] die Art der Lieferung
    [l-notch] der fehlende Teil des L
    [language] die Sprache
    [ledge-depth] die Tiefe der Leiste
    [ledges] die Leisten
    [leg-pad] die Auflage eines Beins
    [legs] die Beine
    [lift] der Aufzug
    [lift-depth] die Tiefe des Aufzugs
    [lift-door] die Tür des Aufzugs
    [lift-height] die Höhe des Aufzugs
    [lift-rated-load-in-kg] die Tragkraft des Aufzugs in kg
    [lift-width] die Breite des Aufzugs
    [mitred] die Gehrung
    [notch-corner] die Ecke, die fehlt
    [notch-length] die Länge des fehlenden Teils
    [notch-width] die Tiefe des fehlenden Teils
    [note] die Notiz
    [number-of-grooves] die Anzahl der Rillen
    [number-of-steps] die Anzahl der Stufen
    [one-side-of-the-join] die eine Seite der Fuge
    [other-side-of-the-join] die andere Seite der Fuge
    [outline-points] die Punkte des Umrisses
    [overhang] der Überstand
    [pedestal-centre] die Mitte des Mittelfußes
    [pedestal-plate] die Tragplatte des Mittelfußes
    [place] der Ort
    [postcode] die Postleitzahl
    [quantity] die Anzahl
    [question] die Frage
    [adjustment] eine Anpassung
    [adjustment-amount] der Betrag der Anpassung
    [adjustment-text] der Grund der Anpassung
    [adjustments] die Anpassungen
    [an-adjustment] eine Anpassung
    [margin] der Aufschlag
    [the-makers-terms] was die Werkstatt festlegt
    [deposit-step] die Stufe der Anzahlung
    [the-message-answered] die beantwortete Nachricht
    [its-sender] die Adresse ihres Absenders
    [its-subject] ihr Betreff
    [its-identifier] ihre Kennung
    [its-references] ihre Verweise
    [order-asked-for] der Auftrag, den der Kunde wollte
    [valid-until] der letzte Tag des Angebots
    [quote-token] das Token des Angebots
    [a-profile-change] eine Änderung
    [profile-changes] die Änderungen
    [profile-operation] die Art der Änderung
    [profile-pointer] die Stelle der Änderung
    [profile-value] der Wert
    [profile-values] die Werte
    [profile-version] die Version der Datei
    [profile-save] die Angabe, ob geschrieben wird
    [profile-described] die Angabe, ob beschrieben wird
    [radius] der Radius
    [rails] die Traversen
    [relief] die Vertiefung
    [relief-depth] die Tiefe der Vertiefung
    [relief-label] der Name der Vertiefung
    [relief-outline] der Umriss der Vertiefung
    [reliefs] die Vertiefungen
    [rests-ends] Auflager an den Enden
    [rests-ledges] Konsolen oder Leisten
    [rests-legs] Beine
    [rests-pedestal] ein Mittelfuß
    [rests-units] Unterschränke
    [rim] die Kante des Ausschnitts
    [sealer] die Versiegelung
    [shade] der Farbton
    [shade-name] der Name des Farbtons
    [side] die Seite
    [side-the-cut-out-is-open-to] die Seite, zu der der Ausschnitt offen ist
    [slab-diameter] der Durchmesser der Platte
    [slab-label] der Name der Platte
    [slab-length] die Länge der Platte
    [slab-number] die Nummer der Platte (ab 0)
    [slab-outline] der Umriss der Platte
    [slab-thickness] die Dicke der Platte
    [slab-width] die Tiefe der Platte
    [slabs] die Platten
    [standing] die Verbindlichkeit
    [surface] die Oberfläche
    [tone] der Ton
    [turn-in-degrees] die Drehung in Grad
    [turn-on-the-way-in] die Ecke auf dem Weg hinein
    [unit-width] die Breite des Schranks
    [units-assumed] ob die Unterschränke angenommen sind
    [units] die Schränke
    [use] der Zweck
    [ways] Möglichkeiten
    [what-is-asked] eine Frage nach einem Angebot
    [what-is-missing] was fehlt
    [what-the-slab-rests-on] worauf die Platte liegt
    [what-the-unit-is-for] wofür der Schrank ist
    [what-was-assumed] was angenommen wurde
    [what-was-taken] was so verstanden wurde
    [where-the-ledge-ends] wo die Leiste endet
    [where-the-ledge-starts] wo die Leiste beginnt
    [where-the-relief-outline-is-set-down] wo die Vertiefung liegt
    [where-the-size-came-from] woher das Maß stammt
    [width-after-the-turn] die Breite nach der Ecke
    [width-before-the-turn] die Breite vor der Ecke
    [x] das x-Maß
    [y] das y-Maß
    [your-name] Ihr Name
    [order] die Bestellung
    [message] die Nachricht
    [a-circle-cut-out] ein runder Ausschnitt
    [a-rectangle-cut-out] ein rechteckiger Ausschnitt
    [a-slot-cut-out] ein Langloch
    [a-polygon-cut-out] ein frei geformter Ausschnitt
    [cut-out-width] die Tiefe des Ausschnitts
    [cut-out-diameter] der Durchmesser des Ausschnitts
    [cut-out-points] die Punkte des Ausschnitts
    [cut-out-length] die Länge des Ausschnitts
    [needed-by-day] der Tag, bis zu dem es gebraucht wird
   *[this] diese Angabe
}
