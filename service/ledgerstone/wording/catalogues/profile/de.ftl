# Was jede Tabelle und jeder Schlüssel des Profils ist, auf Deutsch: die Kommentare einer neuen Datei
# und die Beschriftungen des Formulars. Auf Englisch stehen sie in den Records selbst.

Workshop =
    .workshop = wessen Werkstatt es ist
    .table = der Gießtisch
    .shaping = Formen, die gemacht werden
    .recipe = der Beton
    .mixer = der Mischer und die Waagen
    .slurry = der Spachtel, der Poren füllt
    .boards = Platten und Kleinteile für Schalungen
    .palette = die Farbtöne, die angeboten werden
    .pigments = die Pigmente im Regal
    .shade = wie Pigment gewogen und begrenzt wird
    .finishes = die Oberflächen, die angeboten werden
    .sealers = die Versiegelungen, die angeboten werden
    .edges = die Kantenprofile, die angeboten werden
    .hours = Regeln für Arbeitsstunden
    .days = Wartezeiten
    .rates = Sätze: Stunden und Kleines
    .tax = die Steuer
    .offer = wie ein Preis angeboten wird
    .areas = die Liefergebiete; ohne eines holen Kunden ab
    .calendar = Arbeitszeiten
    .concrete = wie weit dem Beton vertraut wird
    .handling = wie eine junge Platte bewegt wird
    .loads = was eine Platte an ihrem Platz tragen muss
    .steel = die Bewehrung im Lager
    .packing = die Verpackung, je nach Lieferweg
    .lifting = was Menschen tragen
    .web = wo die Seite steht
    .services = Leistungen neben der Fertigung
    .sample = Musterplatten; ohne diese Tabelle werden keine gegossen
    .bench = was in der Werkstatt zugleich läuft
    .tent = ein Heizzelt, wo es eines gibt
    .bookings = die Kalenderdatei dessen, was gebucht ist
    .rails = was vorn und hinten über Unterschränke trägt
    .conventions = Einheiten, Papier und Wörter, die im Land nicht die üblichen sind
    .reply = was Antworten sagen
    .mail = der Server, der Anfragen verschickt
    .mailbox = das Postfach, in das Entwürfe gelegt werden

Identity =
    .name = der Name, den Kunden kennen
    .town = der Ort, in dem sie steht
    .country = zwei Buchstaben Ihres Landes, für Feiertage und Postleitzahlen: <country>
    .region = Buchstaben Ihres Landesteils, für dessen Feiertage: <regions>; weggelassen: die des ganzen Landes
    .timezone = Ihre Uhr, nach Erdteil und Stadt: <clock>
    .currency = drei Buchstaben Ihrer Währung: <currency>
    .email = E-Mail-Adresse, an die Kunden schreiben
    .telephone = Telefonnummer für Kunden
    .reached = wann man Sie erreicht, wie Kunden es lesen: Mo–Fr 8–17 Uhr
    .language = Sprache für Kunden, die nach keiner anderen fragen
    .also_in = weitere Sprachen, die Ihre Seite neben denen des Landes anbietet: en, de
    .demonstration = ob das die erfundene Werkstatt zum Vorzeigen ist

CastingTable =
    .length_mm = die längste Seite, die gegossen werden kann
    .width_mm = die kürzere Seite, die gegossen werden kann
    .count = wie viele Tische dieser Größe

Shaping =
    .thicknesses_mm = Dicken, für die Schalungsseiten im Lager sind
    .thinnest_mm = die dünnste Platte, die gegossen wird
    .thickest_mm = die dickste Platte, die gegossen wird
    .smallest_side_mm = die geringste Breite einer Platte
    .inside_radius_mm = der kleinste Radius einer Innenecke
    .fitting_gap_mm = Fuge, die an jeder Wandseite abgezogen wird
    .strips = Breiten des Betons neben Ausschnitten

StripRule =
    .beside = für welchen Ausschnitt sie gilt, in Worten: ein Hahnloch
    .opening_up_to_mm = längere Seite des Ausschnitts, höchstens
    .rim = für welche Ränder sie gilt
    .stops_mm = geringste Breite des Betons daneben
    .cautions_mm = Breite, unter der mit Vorsicht gegossen wird

Recipe =
    .name = Name auf der Mischkarte
    .cement = die Farbe des Zements
    .cement_class = wie schnell der Zement erhärtet; EN 1992-1-1 3.1.2(6)
    .fck_mpa = charakteristische Zylinderdruckfestigkeit nach 28 Tagen, des schwächeren von Vorsatz und Kern
    .largest_aggregate_mm = das Größtkorn
    .air_percent = Luft im Frischbeton; bei Sackware steckt sie in der Ausbeute
    .waste_percent = Beton, der in Mischer und Werkzeug bleibt
    .weighed_kg_per_m3 = Rohdichte erhärtet, an einer Platte gewogen, ohne Stahl; weggelassen: wie frisch
    .constituents = Rezeptur nach Volumen: was in einem Kubikmeter ist
    .bag = Rezeptur mit Sackware, anstelle von einer nach Volumen
    .face_coat = der nassere Vorsatz an der Schalung, wo einer gelegt wird

Constituent =
    .name = Name auf der Mischkarte
    .density_kg_per_m3 = Dichte der Körner oder der Flüssigkeit
    .price_per_kg = Einkaufspreis
    .pack_kg = Inhalt eines Sacks oder Fasses; weggelassen: lose gekauft
    .solids_percent = Feststoff eines flüssigen Zusatzmittels: was nicht Wasser ist
    .role = was es im Beton ist
    .kg_per_m3 = Masse im Kubikmeter, eingebaut; Gesteinskörnung wassergesättigt, oberflächentrocken
    .absorption_percent = Wasseraufnahme der Gesteinskörnung, von ihrer ofentrockenen Masse
    .moisture_percent = Eigenfeuchte, von der ofentrockenen Masse

Bag =
    .name = Name auf dem Sack
    .bag_kg = Trockenmischung in einem Sack
    .cement_percent = Zement in der Trockenmischung, wie der Hersteller ihn nennt; weggelassen: 20, eine übliche Zahl
    .water_l_per_bag = Wasser auf einen Sack
    .yield_l = Liter aus einem Sack, eingebaut, wie er es sagt: rund 12 aus 25 kg
    .fresh_kg_per_m3 = Frischbetondichte, anstelle der Ausbeute
    .whole_bags = ob eine Mischung ganze Säcke nimmt: Trockenmischung entmischt sich im Sack
    .price_per_bag = Preis eines Sacks
    .added = was zu jedem Sack noch hineinkommt

Added =
    .name = Name auf der Mischkarte
    .density_kg_per_m3 = Dichte der Körner oder der Flüssigkeit
    .price_per_kg = Einkaufspreis
    .pack_kg = Inhalt eines Sacks oder Fasses; weggelassen: lose gekauft
    .solids_percent = Feststoff eines flüssigen Zusatzmittels: was nicht Wasser ist
    .role = was es im Beton ist
    .kg_per_bag = Masse zu jedem Sack

FaceCoat =
    .thickness_mm = Dicke über der ganzen Sichtseite
    .water_cement_ratio = Wasserzementwert
    .without = weggelassene Gesteinskörnung: Körner über einem Drittel der Dicke zeichnen sich ab

Mixer =
    .working_l = eingebauter Beton aus einer Mischung
    .minutes_per_batch = Zeit zum Wiegen, Mischen, Leeren und Einbauen einer Mischung
    .open_minutes = wie lange der Vorsatz den Kern annimmt
    .scale_step_kg = Teilung der Waage
    .fine_scale_step_kg = Teilung der kleinen Waage, für Pigment und Fließmittel
    .fine_scale_most_kg = Höchstlast der kleinen Waage

SlurryRule =
    .water_cement_ratio = Wasserzementwert
    .cement_density_kg_per_m3 = Dichte der Zementkörner
    .cement_price_per_kg = Preis von reinem Zement, wo mit Sackware gemischt wird
    .cement_pack_kg = reiner Zement im Sack, wo mit Sackware gemischt wird
    .repair_pot_kg = trockener Spachtel, der jeder Platte für später beiliegt
    .fills = wie oft Poren gefüllt werden: nach der ersten Körnung, nach der zweiten noch einmal
    .amounts = Liter je Oberfläche

SlurryFor =
    .surface = die Oberfläche
    .l_per_m2 = Spachtel für einen Quadratmeter, alle Gänge zusammen

Boards =
    .length_mm = die längere Seite einer Platte
    .width_mm = die kürzere Seite einer Platte
    .thickness_mm = Dicke der Platte
    .kerf_mm = Schnittbreite der Säge
    .price_per_sheet = Preis einer Schalungsplatte
    .margin_mm = Überstand der Bodenplatte an jeder Seite
    .sanding_mm = Übermaß in der Dicke, das auf der Rückseite abgeschliffen wird
    .flexible_length_mm = Länge der dünnen Streifen für Bögen
    .flexible_price = Preis eines dünnen Streifens für gebogene Seiten
    .plug_up_to_mm = größtes rundes Loch mit gedrehtem Stopfen statt Schaum
    .screw_pitch_mm = Abstand der Schrauben entlang einer Seite
    .pilot_mm = Vorbohrung für eine Schraube
    .screw_price = Preis einer Schraube
    .bead_m_per_tube = Länge der Fugennaht aus einer Kartusche
    .bead_price_per_tube = Preis einer Kartusche Dichtstoff
    .drip_stop_mm = Abstand der Wassernase von den Enden ihrer Seite
    .release_m2_per_l = Fläche, für die ein Liter Trennmittel reicht
    .release_price_per_l = Preis des Trennmittels
    .foam = fester Schaum für Aussparungen und Vertiefungen

Foam =
    .length_mm = die längere Seite einer Platte
    .width_mm = die kürzere Seite einer Platte
    .thickness_mm = Dicke einer Platte
    .kerf_mm = Schnittbreite von Säge oder Draht
    .price_per_sheet = Preis einer Schaumplatte

PaletteShade =
    .name = Name für Kunden
    .colour = Farbe einer gegossenen Musterplatte, #rrggbb
    .by_eye = ob die Farbe mit dem Auge nach einer gegossenen Musterplatte bestimmt ist
    .cement = die Farbe des Zements
    .doses = Pigmente darin
    .extra_per_m3 = Zuschlag für weißen Zement
    .recast_percent = weitere Stücke, die zweimal gegossen werden, in diesem Farbton

Dose =
    .pigment = das Pigment, mit seinem Namen
    .percent = Dosis, von der Masse des Zements

Pigment =
    .name = Name auf der Dose
    .density_kg_per_m3 = Dichte
    .price_per_kg = Preis
    .kind = woraus es besteht; Ruß hat eine eigene Grenze
    .samples = Musterplatten mit diesem Pigment allein, gemessen trocken und unversiegelt

PigmentSample =
    .cement = die Farbe des Zements
    .dose_percent = Dosis, von der Masse des Zements
    .lightness = Messwert L*
    .a = Messwert a*: grün unter 0, rot darüber
    .b = Messwert b*: blau unter 0, gelb darüber

Colouring =
    .matching = ob Kunden nach einer Farbe fragen dürfen, die nicht in der Palette ist
    .most_percent = Pigment höchstens, von der Masse des Zements; ASTM C979 1.4 hat 10
    .carbon_most_percent = höchstens, wo Ruß darin ist; US Preservation Brief 2
    .batch_cement_kg = Zement in der kleinsten Mischung, für Mengen, die sich wiegen lassen
    .bases = die Farben der Zemente selbst, ohne Pigment

CementBase =
    .cement = die Farbe des Zements
    .lightness = Messwert L*
    .a = Messwert a*: grün unter 0, rot darüber
    .b = Messwert b*: blau unter 0, gelb darüber
    .extra_per_m3 = Zuschlag für einen nachgestellten Farbton aus diesem Zement

FinishOffered =
    .surface = die Oberfläche
    .says = eine Zeile für Kunden
    .hours_per_m2 = Stunden, alle Körnungen zusammen
    .consumables_per_m2 = Pads und Scheiben
    .days = Arbeitstage zwischen Ausschalen und Versiegeln
    .grits = Körnungen in ihrer Folge, wie auf der Scheibe
    .recast_percent = weitere Stücke, die zweimal gegossen werden, in dieser Oberfläche

Sealer =
    .name = Name für Kunden
    .says = eine Zeile für Kunden
    .kind = wie sie versiegelt
    .places = Orte, die das Datenblatt erlaubt
    .coats = Anzahl der Aufträge
    .coverage_m2_per_l = Fläche, für die ein Liter in einem Auftrag reicht
    .price_per_l = Preis
    .hours_per_m2_coat = Stunden, je Auftrag
    .youngest_days = Alter des Betons beim ersten Auftrag
    .recoat_hours = Zeit von einem Auftrag zum nächsten; null: nass in nass
    .rags_ignite = ob Lappen damit sich erhitzen und von selbst entzünden
    .heat_limit_c = das Heißeste, was das Datenblatt erlaubt
    .food_declared = ob der Hersteller sie für Lebensmittelkontakt erklärt

EdgeOffered =
    .profile = das Profil
    .hours_per_m = Stunden
    .smallest_mm = die kleinste Größe
    .largest_mm = die größte Größe

Hours =
    .per_job = einmal je Auftrag, wie viele Platten er auch hat
    .per_pour = was zusammen gemischt und eingebaut wird, nach Litern geteilt
    .per_mould = jede Schalung, die gebaut wird
    .per_piece = jedes Stück, vom Stahl bis zum Verpacken

JobHours =
    .set_up = Platten und Werkzeug holen, Bank freiräumen
    .in_hand = Schablonen, Becken und unterschriebene Zeichnung durchsehen
    .level = Gießtisch ausrichten und abwischen
    .clean_up = Mischer, Werkzeug und Boden nach dem Gießen waschen

PourHours =
    .each_batch = eine Mischerfüllung abwiegen und mischen
    .ready = Waagen und Mischer bereit machen und danach spülen

MouldHours =
    .base = Bodenplatte zuschneiden und ausrichten
    .side_per_m = Seiten, je Meter Umriss
    .cutout = einen Aussparungskörper machen und befestigen
    .plug = einen Stopfen drehen und befestigen, für Armatur oder Kabel
    .relief = den Aussparungskörper einer Vertiefung machen
    .drop_per_m = eine herabgezogene Kante bauen, je Meter
    .bead_per_m = Fugennaht ziehen, je Meter Umriss
    .release = Trennmittel auftragen
    .again = für einen weiteren Guss reinigen und ölen

PieceHours =
    .steel_per_m2 = Matte schneiden und binden
    .place_per_m2 = Stahl einlegen und hinterfüllen
    .cutout_trim = Aussparungskörper herausnehmen und Kante brechen, je Ausschnitt
    .demould = Seiten und Boden abnehmen
    .bar = einen Stab neben der Matte schneiden und binden
    .face_coat_per_m2 = den Vorsatz legen, wo die Rezeptur einen hat
    .strike_off_per_m2 = abziehen und rütteln
    .cover = feuchte Abdeckung auflegen
    .sand_back_per_m2 = die Rückseite plan schleifen, wo sie übersteht
    .turn = wenden, auf die einfachste Art
    .wash = Sichtseite waschen
    .fill_per_m2 = Poren einmal füllen, wo die Oberfläche Spachtel bekommt
    .test = mit Wasser prüfen und wiegen

DaySettings =
    .under_cover = vom Gießen bis zum Ausschalen, mindestens
    .drying = vom Schleifen bis zum ersten Auftrag der Versiegelung
    .after_sealing = vom letzten Auftrag der Versiegelung bis zum Verpacken
    .bead_hours = Stunden, bis die Fugennaht ausgehärtet ist: über Nacht
    .release_hours = Stunden, die das Trennmittel vor dem Guss steht
    .slurry_hours = Stunden, die der Spachtel vor der nächsten Körnung in den Poren härtet
    .strip_hours = Stunden vom Versiegeln des Probestreifens, bis er angesehen wird
    .buffer = Arbeitstage Vorrat vor dem zugesagten Tag

Rates =
    .hour = eine Arbeitsstunde, vor Ihrem Aufschlag
    .machine_hour = eine Stunde von Mischer und Schleifmaschine
    .steel_kg_per_m2 = Masse des Stahls in einem Quadratmeter Platte
    .consumables_per_m2 = Handschuhe, Klingen, Folie
    .margin_percent = Aufschlag auf die Kosten von allem außer der Lieferung: bei 40 werden aus 100 Kosten 140 verlangt
    .packs = was ein Auftrag zahlt, wo es Gebinde gibt
    .offcuts_percent = Verschnitt von Platten, Schaum, Streifen und Stahl, wo der Verbrauch gezahlt wird
    .recast_percent = Stücke, die zweimal gegossen werden
    .recast_percent_per_m2 = weitere Stücke, die zweimal gegossen werden, für jeden Quadratmeter eines Stücks über den ersten hinaus

Tax =
    .registered = ob Steuer berechnet wird: Kleinunternehmer berechnen keine
    .name = Name der Steuer
    .percent = Satz für Platten und ihre Lieferung, und für Abgeholtes
    .shown = Beträge in Sätzen für Kunden
    .fitted_percent = Satz für Geliefertes und Montiertes, wenn ein anderer

Offer =
    .standing = was ein Preis von der Seite ist
    .valid_days = Tage, die ein Preis gilt
    .deposit_percent = Anzahlung, vom Gesamtpreis
    .round_to = Schritt, auf den der Gesamtpreis gerundet wird
    .smallest_order = kleinster Auftrag: vor Lieferung, Leistungen und Steuer
    .deposit_round_to = Schritt, auf den die Anzahlung gerundet wird
    .deposit_days = Arbeitstage zum Zahlen der Anzahlung; so lange bleibt der Termin frei
    .payment = wie eine Anzahlung gezahlt wird, wie Kunden es lesen
    .balance_due = wann der Rest fällig ist: bevor die Platte uns verlässt
    .revoke_before = Tag, vor dem ausgestellte Links nicht mehr gelten

DeliveryArea =
    .name = Name für Kunden
    .postcodes = Anfänge seiner Postleitzahlen: <postcodes>
    .pallet = Preis einer Palette, bis Bordsteinkante; weggelassen: keine wird geschickt
    .own_van = Preis mit Ihrem eigenen Transporter, bis zur Tür; weggelassen: keiner fährt
    .fitted = Preis geliefert und montiert; weggelassen: Sie montieren nicht
    .fitting_per_slab = für die Montage dazu, je Platte
    .days = Arbeitstage unterwegs
    .tax_percent = Steuer auf das, was dorthin geht, wenn eine andere
    .fitted_tax_percent = Steuer auf das, was dort montiert wird, wenn eine andere

Calendar =
    .weekdays = Arbeitstage der Woche
    .hours_per_day = Stunden eines Arbeitstags
    .hands = Menschen an der Arbeit
    .orders_ahead_days = schon vergebene Arbeitstage, wo kein Kalender gelesen wird
    .holidays_added = freie Tage jedes Jahr neben den Feiertagen, mit Monat und Tag: 08-15
    .holidays_worked = Feiertage, an denen gearbeitet wird, mit ihrem englischen Namen
    .closures = Tage, an denen die Werkstatt geschlossen ist

Closure =
    .first = erster Tag
    .last = letzter Tag
    .why = Grund, in einem Wort

ConcreteSettings =
    .partial_factor = Teilsicherheitsbeiwert des Betons, EN 1992-1-1 2.4.2.4
    .accidental_factor = Teilsicherheitsbeiwert des Betons für außergewöhnliche Lasten, EN 1992-1-1 2.4.2.4
    .untested_percent = Anteil der EN-Festigkeit, dem ungeprüft vertraut wird: 100 nach der Norm, 75 für Sackware, 70 mit Faser oder viel Pigment
    .tested = hier gebrochene Streifen

BrokenStrip =
    .age_days = das Alter des Streifens beim Bruch
    .width_mm = Breite des Streifens
    .thickness_mm = Dicke des Streifens
    .span_mm = Abstand der Böcke
    .load_n = Last, die ihn brach, in der Mitte angehängt, in Newton (9,81 mal kg)

HandlingSettings =
    .out_of_mould_factor = Faktor auf das Eigengewicht beim Ausschalen; Brauch im Fertigteilbau, aus dem Gedächtnis
    .adhesion_n_per_m2 = Haftung einer geölten Schalung; Handbuch für Transportanker
    .carried_factor = Faktor auf das Eigengewicht beim Tragen; Brauch im Fertigteilbau, aus dem Gedächtnis
    .pallet_factor = Faktor auf das Eigengewicht auf der Palette; Brauch im Fertigteilbau, aus dem Gedächtnis
    .mould_kg_per_m2 = Masse einer Schalung: Bodenplatte, Seiten und Aussparungskörper
    .workshop_c = Temperatur der Werkstatt, Januar bis Dezember
    .longest_cover_days = längste Zeit einer Platte in der Schalung
    .ways = Arten, eine Platte zu bewegen, die einfachste zuerst

Way =
    .name = Name auf dem Werkstattblatt
    .most_kg = das schwerste Stück mit Schalung, das so geht
    .people = Menschen, die es braucht
    .held = wie die Platte gehalten wird
    .sides_on = ob Seiten und Aussparungskörper daran bleiben, bis sie hochkant steht
    .rail = ob beim Bewegen eine steife Schiene über Ausschnitte geklemmt wird
    .later_days = Tage unter Abdeckung über das Übliche hinaus
    .hours = Stunden über das Übliche hinaus, je Platte
    .price = Miete des Hebezeugs oder Geräts für diese Art

Loads =
    .even_n_per_m2 = Last über die Platte verteilt; unser Urteil
    .point_n = Last eines sitzenden Menschen, irgendwo; unser Urteil
    .point_side_mm = Seite des Quadrats, auf dem die Last eines Menschen steht
    .leaning_n = Last eines Menschen, der sich auf einen schmalen Steg oder ein Regalbrett stützt; unser Urteil
    .standing_n = Last eines stehenden Menschen, als Unfall; unser Urteil
    .low_rest_mm = wie viel ein inneres Auflager tiefer liegen darf
    .sag_limit = Spannweite zu Durchhang, der noch eben aussieht: 720 ist L/720

Steel =
    .material = Material von Stäben und Matten; Edelstahl und Glasfaser rosten unter dünner Betondeckung nicht
    .mesh_wire_mm = Draht der Matte; bei Glasfaser so dick wie ihr Querschnitt
    .mesh_pitch_mm = Abstand der Drähte
    .bar_mm = dünnster Stab im Lager; weggelassen: es werden keine Stäbe gelegt
    .yield_mpa = Dehn- oder Streckgrenze; bei Glasfaser, was 95 von 100 erreichen
    .e_mpa = die Steifigkeit; weggelassen: 200 000 bei Stahl (EN 1992-1-1 3.2.7, EN 1993-1-4 2.1.3), 45 000 bei Glasfaser (aus dem Gedächtnis)
    .cover_mm = geringste Betondeckung; EN 1992-1-1 Tabelle 4.4N, XC1
    .stock_length_mm = Länge der Stäbe wie gekauft
    .bar_price = Preis eines Bewehrungsstabs, wie gekauft, in ganzer Länge
    .mesh_sheet_length_mm = längere Seite einer Matte
    .mesh_sheet_width_mm = kürzere Seite einer Matte
    .mesh_price_per_sheet = Preis einer Matte

PackingSettings =
    .collected = der Kunde holt ab
    .own_van = unser Transporter bringt sie, bis zur Tür oder zur Montage
    .pallet = eine Spedition nimmt sie auf einer Palette mit

PackingWay =
    .materials_per_piece = Folie, Schaum und Kantenschutz, je Stück
    .hours_per_piece = Stunden, um ein Stück einzupacken und zu laden
    .kg_per_piece = Masse der Hülle eines Stücks
    .crate = Kiste, in der Stücke stehen

Crate =
    .pieces = Stücke in einer Kiste
    .materials = Holz, Kufen und Bänder einer Kiste
    .hours = Stunden, um eine Kiste zu bauen und zu schließen
    .kg = Masse einer leeren Kiste

Lifting =
    .kg_per_person = Anteil eines Menschen; was darüber liegt, wird erst beurteilt
    .most_people = höchste Zahl von Menschen um eine Platte
    .tail_lift_kg = Höchstlast der Ladebordwand der Spedition
    .pallets = Paletten, die die Spedition nimmt, die billigste zuerst
    .van = der eigene Transporter; ohne ihn wird nicht geprüft, was hineinpasst

Pallet =
    .name = Name bei der Spedition
    .length_mm = Länge der Palette selbst
    .overhang_mm = wie weit ein Stück an jedem Ende überstehen darf
    .highest_mm = größte Höhe, mit dem, was darauf steht
    .deck_mm = Höhe der Palette allein
    .most_kg = Höchstgewicht, gepackt
    .kg = Masse der Palette allein
    .price_percent = Preis, vom Palettenpreis des Gebiets

Van =
    .length_mm = freie Länge der Ladefläche
    .most_kg = Zuladung

Web =
    .base_url = Adresse des Dienstes selbst, für Bilder in Briefen
    .page_url = Seite, die ein Link öffnet
    .origins = andere Websites, deren Seiten fragen dürfen

Services =
    .templating_visit = Besuch zum Aufmaß, wo einer bestellt ist oder Sie montieren
    .templating_per_slab = dazu je aufgemessenem Stück
    .cover_percent = Versicherung, solange eine Spedition sie hat, vom Wert
    .cover_least = geringster Preis der Versicherung

Sample =
    .price = Preis einer Musterplatte, vor Steuer, ohne Aufschlag
    .hours = Stunden, um eine zu gießen, fertigzumachen und zu schicken
    .litres = Liter Beton in einer
    .ready_days = Tage vom Guss, bis sie beim Kunden ist
    .yes_days = Tage, die der Kunde für sein Ja bekommt
    .always_from = Auftragswert, vor Lieferung und Steuer, ab dem es immer Musterplatten gibt

Bench =
    .day_starts_at = Stunde, zu der die Arbeit beginnt; halb neun ist 8½ als Dezimalzahl
    .mixers = Mischer, die zugleich laufen
    .polishers = Schleifmaschinen, die zugleich laufen
    .damp_days = Tage feuchter Abdeckung ab dem Guss; weggelassen: EN 13670 Klasse 2 nach Wärme, aus dem Gedächtnis

Tent =
    .warmth_c = Wärme darin, solange eine Platte darunter ist
    .under_cover_days = Zeit darin vom Gießen bis zum Ausschalen, mindestens
    .hours_per_order = Stunden, um es auf- und abzubauen
    .price_per_day = Preis der Wärme, je Stück und Tag

BookingRules =
    .file = die iCalendar-Datei; neben dem Profil, oder mit ganzem Pfad
    .table_words = ein Eintrag, in dessen Titel oder Kategorie ein Wort so beginnt, belegt einen Tisch
    .people_words = einer, in dessen Titel oder Kategorie ein Wort so beginnt, belegt alle Hände
    .others_hold_people = ja: jeder andere Eintrag belegt auch alle Hände

Rails =
    .flat = flache Traverse eines Unterschranks; übliche Schränke, aus dem Gedächtnis
    .upright = hochkante Traverse eines Kochfeld- oder Beckenschranks; übliche Schränke, aus dem Gedächtnis
    .hardwood = erste Traverse, die eingebaut wird; EN 338 D30
    .steel = nächste Traverse, die eingebaut wird; EN 1993-1-1 3.2.6
    .panel_n_per_mm2 = wie eine Seitenwand nachgibt, in N je mm Länge und mm Einsinken: 18 mm Spanplatte, 720 mm hoch, aus dem Gedächtnis
    .post_fitted = Nettopreis einer Stütze unter der Mitte einer Traverse; weggelassen: der Kunde lässt sie setzen

RailSection =
    .name = Name für Kunden, in wenigen Worten
    .e_mpa = Biegesteifigkeit
    .g_mpa = Schubsteifigkeit
    .width_mm = Breite, von oben gesehen
    .depth_mm = Höhe, von oben nach unten
    .wall_mm = Wand eines Hohlprofils
    .fitted = Nettopreis einer, die Sie einbauen, mit Arbeit; weggelassen: der Kunde lässt sie einbauen

Conventions =
    .lengths = die Einheit von Längen, die niemand eingetippt hat
    .masses = worin Platten gewogen werden
    .temperatures = worin Temperaturen angegeben werden
    .volumes = worin Volumen angegeben werden
    .strengths = worin Festigkeit angegeben wird
    .paper = worauf Briefe und Blätter gedruckt werden
    .words = wessen englische Wörter: kerb oder curb, hob oder cooktop
    .work_lengths = die Einheit des Werkstattblatts, wo sie nicht die der Kunden ist
    .work_masses = worin am Mischer gewogen wird
    .work_volumes = worin eine Mischung gemessen wird
    .work_temperatures = worin Temperaturen in der Werkstatt angegeben werden
    .work_strengths = worin das Werkstattblatt Festigkeit angibt
    .postcodes = ein regulärer Ausdruck für eine Postleitzahl in Großbuchstaben, ohne Leerzeichen; mit seinem ersten Teil in Klammern beginnen Gebiete
    .replaced = eigene englische Wörter statt der unseren

WordChoice =
    .usual = das Wort, wie wir es sagen: worktop
    .here = das Wort, das stattdessen gesagt wird: benchtop

ReplySettings =
    .greeting = Gruß vor dem Namen des Kunden
    .signature = Zeilen unter einer Antwort; ohne sie Ihr Name und Ort
    .terms = Bedingungen jedes Auftrags, ein Satz oder zwei je Zeile
    .who = wer Anfragen von der Seite beantwortet; weggelassen: die Werkstatt
    .within_days = Arbeitstage, bis eine Anfrage beantwortet ist

MailSettings =
    .host = der Name des Servers: smtp.example.com
    .port = Port: die meisten nehmen Briefe an 587
    .security = wie die Verbindung verschlüsselt ist
    .user = Name für die Anmeldung, wo eine verlangt wird

Mailbox =
    .host = der Name des Servers: imap.example.com
    .port = Port: die meisten nehmen Mailprogramme an 993
    .security = wie die Verbindung verschlüsselt ist
    .user = Name für die Anmeldung
    .folder = der Ordner, in dem Anfragen ankommen
    .drafts = der Ordner für Entwürfe, wo der Server es nicht sagt
    .sent = der Ordner für Gesendetes, wo der Server es nicht sagt

Bounds =
    .above = über
    .at_least = mindestens
    .at_most = höchstens
    .to = bis

File =
    .head =
        Das Profil einer Werkstatt: was sie fertigen kann, was sie verlangt und was sie im Lager hat.

        Jede Zahl unten stammt von einer erfundenen Werkstatt. Ersetzen Sie alle, Tabelle für Tabelle,
        durch Ihre eigenen; dann rufen Sie auf:  python -m ledgerstone.workshop check DATEI

        Was hinter einem # steht, ist ein Kommentar. Text steht in Anführungszeichen, Zahlen ohne; ein
        Punkt trennt die Dezimalen. Längen sind in Millimetern, Massen in Kilogramm, Geld ist vor Steuer;
        ein Text mit seiner Einheit geht auch: "96 in", "94 lb", "5000 psi".
        Doppelte Klammern, wie [[palette]], beginnen ein weiteres Stück einer Liste: schreiben Sie so
        viele, wie Sie haben. Eine Zeile, die mit # und einem Schlüssel beginnt, darf wegbleiben; nehmen
        Sie das # weg, um sie zu benutzen.

RestsOn =
    .workshop = Kunden schreiben dorthin, und Briefe sind damit unterschrieben
    .table = davon hängt ab, was zu groß zum Gießen ist
    .recipe = Gewicht, Festigkeit und jeder Preis beruhen darauf
    .mixer = davon hängt ab, wie viele Mischungen ein Guss braucht
    .slurry = der Preis des Spachtelns beruht darauf
    .boards = der Preis jeder Schalung beruht darauf
    .palette = Kunden wählen aus diesen Farben
    .pigments = die Farben der Bilder beruhen auf diesen Messungen
    .shade = die Farben der Bilder beruhen auf diesen Messungen
    .finishes = Kunden wählen daraus und zahlen für die Stunden
    .sealers = Kunden wählen daraus und zahlen dafür
    .edges = Kunden zahlen für die Stunden
    .hours = jeder Preis und jeder Tag beruhen darauf
    .rates = jeder Preis beruht darauf
    .tax = jeder Gesamtpreis beruht darauf
    .services = Aufmaß und Versicherung werden danach berechnet
    .sample = Musterplatten werden danach berechnet
    .areas = davon hängt ab, wohin Sie liefern und für wie viel
    .calendar = jeder zugesagte Tag beruht darauf
    .web = Links in Briefen führen dorthin
    .tent = Tage in der Wärme beruhen darauf
    .handling = davon hängt ab, was Sie heben und wenden können
    .steel = der Preis von Stäben und Matten beruht darauf
    .rails = der Preis von Traversen und Stützen, die Sie einbauen, beruht darauf
    .packing = der Preis der Verpackung und ihre Stunden beruhen darauf
    .lifting = davon hängt ab, wie eine Platte reist
    .offer = der kleinste Auftrag beruht darauf
    .reply = Briefe enden damit

# Was ein Wort heißt, unter dem gewählt wird; im Profil steht das englische.
Choices =
    .en = Englisch
    .de = Deutsch
    .shown = sichtbar
    .covered = verdeckt
    .any = alle
    .grey = grau
    .white = weiß
    .R = schnell (R)
    .N = normal (N)
    .S = langsam (S)
    .cement = Zement
    .addition = Zusatzstoff (Flugasche, Füller)
    .water = Wasser
    .aggregate = Gesteinskörnung
    .plasticiser = Fließmittel
    .polymer = Polymer
    .fibre = Faser
    .as-cast = schalungsglatt
    .honed = fein geschliffen
    .polished = poliert
    .oxide = Oxid
    .carbon = Ruß
    .penetrating = eindringend
    .film = filmbildend
    .indoors = innen
    .wet-room = Nassraum
    .outdoors = außen
    .square = gerade, Kante gebrochen
    .bevel = Fase
    .round = Rundung
    .wall = Wandseite
    .whole = jedes Gebinde, das er öffnet
    .by-use = was er verbraucht
    .included = mit der Steuer
    .before-tax = vor Steuer
    .estimate = Kostenvoranschlag
    .quotation = verbindliches Angebot
    .monday = Montag
    .tuesday = Dienstag
    .wednesday = Mittwoch
    .thursday = Donnerstag
    .friday = Freitag
    .saturday = Samstag
    .sunday = Sonntag
    .on-edge = hochkant, um eine lange Seite aufgekippt
    .flat = waagerecht, an zwei Linien gehoben
    .stainless = Edelstahl
    .plain = Betonstahl
    .glass-fibre = Glasfaser
    .mm = Millimeter
    .cm = Zentimeter
    .m = Meter
    .in = Zoll
    .kg = Kilogramm
    .lb = Pfund
    .C = Grad Celsius
    .F = Grad Fahrenheit
    .l = Liter
    .gal = US-Gallonen
    .N-mm2 = N/mm²
    .MPa = MPa
    .psi = psi
    .A4 = A4
    .Letter = Letter
    .british = britische
    .american = amerikanische
    .canadian = kanadische
    .australian = australische
    .starttls = STARTTLS
    .tls = TLS
    .none = gar nicht, nur auf derselben Maschine
