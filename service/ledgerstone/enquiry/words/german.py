"""German words of enquiries, by what they name. Each line is a list, parted by commas."""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

NOUNS: Final = MappingProxyType(
    {
        "slab:worktop": "zeile, küchenzeile, arbeitsplatte, arbeitsplatten, küchenplatte,"
        " küchenarbeitsplatte,"
        " waschtischplatte, waschtischplatten, waschtisch, inselplatte, kücheninsel, insel,"
        " thekenplatte, theke, tresenplatte, tresen, kücheninselplatte, waschplatte, barplatte,"
        " abdeckplatte",
        "slab:table": "tisch, tischplatte, tischplatten, esstisch, esstischplatte, couchtisch,"
        " couchtischplatte, schreibtischplatte, schreibtisch, gartentisch, gartentischplatte,"
        " beistelltisch, konsole, bistrotisch, stehtischplatte",
        "slab:hearth": "kaminplatte, ofenplatte, bodenplatte, ofenbodenplatte, funkenschutzplatte,"
        " kaminbodenplatte, unterlegplatte, vorlegeplatte",
        "slab:shelf": "regal, regalbrett, regalbretter, regalboden, regalböden, wandregal,"
        " wandboard, ablage, bord, ablagebrett",
        "slab:sill": "fensterbank, fensterbänke, fensterbrett, fensterbretter, sohlbank,"
        " fensterbänken",
        "slab:upstand": "aufkantung, wandabschluss, wandabschlussleiste, sockelleiste",
        "slab:splashback": "rückwand, küchenrückwand, spritzschutz, nischenrückwand, rückwände",
        "slab:end-panel": "wange, seitenwange, wangen",
        "slab:bench": "sitzbank, bank, gartenbank, sitzplatte, bänke, sitzbänke",
        "slab:": "platte, platten, betonplatte, betonplatten, abdeckung, teile",
        "open:sink": "spüle, spülen, spülbecken, spülenausschnitt, küchenspüle",
        "open:basin": "becken, waschbecken, einbaubecken, aufsatzbecken, unterbaubecken,"
        " waschschale, schale, beckenausschnitt, aufsatzwaschbecken, handwaschbecken",
        "open:hob": "kochfeld, kochfelder, induktionskochfeld, herd, ceranfeld,"
        " kochfeldausschnitt, gaskochfeld, kochfeldes",
        "open:tap": "hahn, hähne, armatur, armaturen, wasserhahn, mischbatterie, einhandmischer",
        "open:waste": "ablauf, abfluss, abläufe, abflüsse, ablaufventil",
        "open:parasol": "sonnenschirm, schirm, schirmständer, sonnenschirms",
        "open:cable": "kabel, kabeldurchlass, kabeldurchführung",
        "hole:circle": "bohrung, bohrungen, kernbohrung",
        "hole:": "durchlass, durchlässe, durchbruch, durchführung, loch, löcher, ausschnitt,"
        " ausschnitte, ausschnittmaß,"
        " ausschnittsmaß, ausschnittmaße, aussparung, aussparungen, öffnung,"
        " löchern, ausschnitten, ausschnitts",
        "hole:slot": "schlitz, langloch",
        "thing:old": "alte platte, alten fensterbänke, alte, alten, bisherige, alter",
        "thing:": "tür, türe, haustür, türen, tor, gang, flur, treppe, treppenhaus, decke, nische,"
        " schrank, schränke, unterschrank, unterschränke, korpus, gestell, tischgestell"
        ", untergestell,"
        " beine, tischbeine, sockel, wand, wände, ofen, kaminofen, waschmaschine, spülmaschine,"
        " geschirrspüler, kühlschrank, auto, anhänger, fenster, steckdosen, spiegel, mauer, mauern,"
        " stufen, stufe, aufzug, lift, stützen, pfeiler, heizkörper, fliesen, sessel, stühle, lkw,"
        " auflageplatte, trägerplatte, kopfplatte, ankerplatte, tellerplatte, holzplatte,"
        " glasplatte,"
        " stahlplatte, metallplatte,"
        " teppich, couch, sofa, bett, lampe, vorhang, laibung, rolltor, kofferraum, hocker,"
        " barhocker, backofen",
        "room:indoors": "küche, bad, badezimmer, wohnzimmer, esszimmer, flur, diele, büro,"
        " arbeitszimmer, schlafzimmer, gästebad, gäste-wc, gästewc, hauswirtschaftsraum"
        ", waschküche,"
        " wintergarten, innen, gästetoilette",
        "room:wet-room": "nassraum, nassbereich, duschbereich",
        "room:outdoors": "garten, terrasse, balkon, draußen, draussen, außen, aussen, hof,"
        " außenküche, outdoorküche, freien",
        "room:": "raum, zimmer, haus, ferienhaus, wohnung, keller, garage, gartenhaus",
        "leg:back": "an der rückwand, rückseite, hintere seite, hinten an der wand,"
        " an der wand entlang, langer schenkel, lange schenkel,"
        " langen schenkel, lange seite, längere"
        " schenkel, langer seite, lange schenkels, liegt an der rückwand, läuft an der"
        " rückwand, steht an der rückwand",
        "leg:side": "rechter schenkel, linker schenkel, rechten schenkel, linken schenkel,"
        " rechte schenkel,"
        " linke schenkel, kurzer schenkel, kurze schenkel, kurzen schenkel, kurze seite, kürzere"
        " schenkel, kurzer seite, geht nach vorn, geht nach vorne, kommt nach vorn, kommt nach"
        " vorne, läuft nach vorn, läuft nach vorne, ragt nach vorn, nach vorn, nach vorne",
        "leg:both": "beide schenkel, beider schenkel, beide seiten, beiden schenkel, beide teile",
        "leg:notch": "ausklinkung, fehlende ecke, fehlt",
        "feature:": "fase, gefast, fasen, angefast, abgerundet, gerundet, abgerundete, rundung,"
        " radius, tropfnase, tropfkante, wassernase, überstand, überstehen, fuge, überhang",
    }
)
PLACES: Final = MappingProxyType(
    {
        "indoors": "keller, küche, bad, badezimmer, wohnzimmer, esszimmer, flur, diele, büro,"
        " arbeitszimmer,"
        " schlafzimmer, gästebad, waschküche, wintergarten, innen, innenbereich",
        "wet-room": "nassraum, nassbereich, duschbereich",
        "outdoors": "garten, terrasse, balkon, draußen, draussen, außen, aussen, hof, außenküche,"
        " freien, außenbereich, gartentisch, gartenbank",
    }
)
ROLES: Final = MappingProxyType(
    {
        "long": "von wand zu wand, von einer wand zur anderen,"
        " lang, länge, in der länge, langen, lange",
        "wide": "breit, breite, in der breite",
        "deep": "tief, tiefe, in der tiefe",
        "thick": "stark, dick, stärke, dicke, dicken, starke",
        "high": "hoch, höhe, in der höhe",
        "dia": "durchmesser, im durchmesser, durchm, ø",
        "across": "rund",
        "radius": "radius, von der mitte bis zum rand, von der mitte zum rand, von der mitte bis"
        " zur kante, von der mitte zur kante",
        "apart": "auseinander, abstand, überstand, lichte, länger, kürzer, breiter, dicker",
        "x": "in der länge, parallel zur vorderkante, parallel zur front, entlang der"
        " vorderkante, parallel zur wand, entlang der wand, nebeneinander, von links nach"
        " rechts, in längsrichtung, längs, in länge, der länge nach, quer, breit, lang,"
        " von links nach rechts",
        "y": "in der tiefe, tief, von vorn nach hinten, von vorne nach hinten",
    }
)
LABELS: Final = MappingProxyType(
    {
        "long": "länge, lang, laenge, l",
        "wide": "breite, breit, b",
        "deep": "tiefe, tief, ausladung, von der wand bis vorne, von der wand bis vorn, von der"
        " wand"
        " bis zur vorderkante, vom rahmen bis zur vorderkante, vom fenster bis zur vorderkante",
        "thick": "stärke, dicke, stark, dick, staerke, materialstärke, plattenstärke",
        "high": "höhe, hoch, hoehe",
        "dia": "durchmesser",
        "radius": "radius",
        "size": "maße, maß, masse, abmessungen, größe, grösse, format, maße der platte, abmessung",
        "quantity": "anzahl, stk, stck, stück, stückzahl, menge",
        "piece": "teil, bauteil, artikel, verwendung, produkt, pos, position, bezeichnung",
        "cutouts": "ausschnitte, löcher, ausschnitt, aussparungen",
    }
)
FROM: Final = "v, von, vom, von der, zur, ab"
SIDES: Final = MappingProxyType(
    {
        "left": "links, linken, linke, linker, linkem",
        "right": "rechts, rechten, rechte, rechter, rechtem",
        "front": "unterkante, unten, vk, vorn, vorne, vorderkante, vorderen, vordere, vorderseite",
        "back": "hk, hinten, hinterkante, hinteren, hintere, rückseite, wand, rückwand, rückkante",
    }
)
MARKS: Final = MappingProxyType(
    {
        "not": "kein, keine, keinen, keiner, ohne, nicht, nichts, keines",
        "instead": "statt, anstatt, anstelle von, und nicht",
        "correct": "korrektur, entschuldigung, pardon, verzeihung, vielmehr, doch, sorry, geändert,"
        " korrigiert, jetzt, nochmal gemessen, noch einmal gemessen, nachgemessen, richtig ist,"
        " anders überlegt, kommando zurück, planänderung, änderung, neue lage, zurückgezogen,"
        " stimmt nicht, nun, neu gemessen, verschrieben, vertan, tippfehler, muss heißen, gemeint",
        "old": "alte, alten, alter, altes, bisherige, bisherigen, jetzige, jetzigen, vorhandene,"
        " vorhandenen, derzeitige, derzeitigen, bestehende, bestehenden",
        "gone": "frei stehen, frei stehend, freistehend, derzeit, kommt raus, kommt weg,"
        " im moment, momentan, liegt jetzt dort, jetzt dort liegt, jetzt dort steht, jetzt da"
        " liegt, jetzt drin ist, jetzt drauf liegt, bisher dort, bisher lag, bisher haben, noch"
        " drin ist, noch dort liegt, da jetzt liegt, jetzt haben, zurzeit haben, dort liegt, gerade"
        " dort, fliegt raus, kommt heraus, wird ersetzt",
        "new": "neue, neuen, neuer, neues, unsere soll, unsere sollte",
        "also": "noch, weitere, weiteren, zweite, zweites, außerdem, dazu, ebenfalls, zusätzlich",
        "about": "vielleicht, wohl, schätzungsweise, in etwa, ca, circa, etwa, ungefähr, rund"
        " um, zirka, knapp",
        "middle": "mitte, mittelpunkt, zentrum, mittig bei",
        "centred": "in die mitte, genau in die mitte, exakt in die mitte, in der mitte, genau in"
        " der mitte, mittig, zentriert, zentral, genau mittig, in"
        " der plattenmitte, exakt mittig, in mitte, mitte hinten, hinten mitte, mitte vorn, mitte"
        " vorne",
        "behind": "auf der achse, auf achse, in achse, achse wie,"
        " dahinter, hinter, mittelachse, in einer flucht, gleiche achse, auf der"
        " mittelachse, gleicher achse, auf gleicher achse, in der achse, hinter dem, hinter der",
        "sideways": "links und rechts davon, beiderseits",
        "both": "beide, beiden, alle, jeweils, je",
        "shown": "unterbau, von unten, unterbauspüle, unterbaubecken, als unterbau, untergebaut,"
        " flächenbündig von unten, unter der platte",
        "covered": "liegt mit seinem rand auf, liegt mit dem rand auf, liegt mit rand auf,"
        " rand liegt auf, darauf steht, darauf kommt eine schale, obendrauf steht,"
        " steht obendrauf, obendrauf gesetzt, oben drauf, obenauf,"
        " aufsatzschale, aufsatzwaschtisch, auf die platte gestellt, auf der platte steht,"
        " aufliegt,"
        " liegt obenauf, steht auf der platte, steht auf, stehen auf, sitzt auf, aufgestellt,"
        " aufliegend, auflage, einbau von oben, aufgesetzt, von oben, aufsatzbecken,"
        " einbauspüle, auflageversion, aufgelegt",
        "round": "rund, runde, runden, runder, rundes, kreisrund",
        "lshape": "l platte, l form, l-form, l förmig, l-förmig, l-förmige, l förmige, über eck,"
        " winkelform,"
        " l-förmigen, eckplatte",
        "pieces": "in zwei teilen, zwei gleichen teilen, zwei gleiche teile, zweiteilig",
        "price": "preis, kosten, kostet, angebot, preisangebot, preise, kostenvoranschlag, was"
        " kostet, anfrage, preisvorstellung",
        "want": "hätte gern, hätten gern, brauche, brauchen, suchen, suche, möchte, möchten,"
        " benötigen, benötige, hätte gerne, hätten gerne, bestellen, interessieren, wünschen",
    }
)
CASES: Final = ("n", "s", "en", "es", "er", "e")
# The ends of compound nouns, so that "Thermomixplatte" is a slab and "Duschloch" a hole.
ENDINGS: Final = MappingProxyType(
    {
        "ausschnitt": "hole:",
        "armatur": "open:tap",
        "hahnloch": "open:tap",
        "armaturenloch": "open:tap",
        "kabelloch": "open:cable",
        "schirmloch": "open:parasol",
        "loch": "hole:",
        "bohrung": "hole:",
        "schlitz": "hole:slot",
        "hahnlöcher": "open:tap",
        "armaturenlöcher": "open:tap",
        "löcher": "hole:",
        "ausschnitte": "hole:",
        "bohrungen": "hole:",
        "öffnung": "hole:",
        "öffnungen": "hole:",
        "aussparung": "hole:",
        "aussparungen": "hole:",
        "fensterbank": "slab:sill",
        "fensterbänke": "slab:sill",
        "tischplatte": "slab:table",
        "arbeitsplatte": "slab:worktop",
        "blechplatte": "thing:",
        "stahlplatte": "thing:",
        "metallplatte": "thing:",
        "glasplatte": "thing:",
        "holzplatte": "thing:",
        "spanplatte": "thing:",
        "grundplatte": "thing:",
        "fußplatte": "thing:",
        "montageplatte": "thing:",
        "herdplatte": "thing:",
        "heizplatte": "thing:",
        "gipsplatte": "thing:",
        "dämmplatte": "thing:",
        "platte": "slab:",
        "theke": "slab:worktop",
        "bank": "slab:bench",
        "regal": "slab:shelf",
        "schrank": "thing:",
        "kochfeld": "open:hob",
        "becken": "open:basin",
        "spüle": "open:sink",
    }
)
NUMBERS: Final = MappingProxyType(
    {
        word: value
        for value, word in enumerate(
            [
                "null",
                "eins",
                "zwei",
                "drei",
                "vier",
                "fünf",
                "sechs",
                "sieben",
                "acht",
                "neun",
                "zehn",
                "elf",
                "zwölf",
                "dreizehn",
                "vierzehn",
                "fünfzehn",
                "sechzehn",
                "siebzehn",
                "achtzehn",
                "neunzehn",
            ]
        )
    }
    | {
        "zwanzig": 20,
        "dreißig": 30,
        "vierzig": 40,
        "fünfzig": 50,
        "sechzig": 60,
        "siebzig": 70,
        "achtzig": 80,
        "neunzig": 90,
        "ein": 1,
        "eine": 1,
        "einen": 1,
        "einem": 1,
        "einmal": 1,
        "zweimal": 2,
        "dreimal": 3,
        "viermal": 4,
        "fünfmal": 5,
        "sechsmal": 6,
        "halben": 0.5,
        "halber": 0.5,
    }
)
