# Das Pflegeblatt: wie eine Platte gepflegt wird, nach Nutzung, Versiegelung und Ort. Übliche Praxis,
# wo keine Quelle steht; Hitzegrenzen und Lebensmittelkontakt sind die des Datenblatts der Versiegelung.

care-title = So bleibt sie schön
care-every-day = Jeden Tag
care-wipe = Wischen Sie sie mit warmem Wasser und einem pH-neutralen Reiniger ohne Scheuermittel ab; trocknen Sie sie mit einem Tuch.
care-spills = Wischen Sie Verschüttetes auf: Es kann in Minuten Flecken geben.
care-board = Nehmen Sie ein Brett. Ein Messer zerkratzt die Versiegelung, und Beton macht das Messer stumpf.
care-never = Kein Entkalker, keine Bleiche, kein Scheuerpulver, keine Stahlwolle.
care-acids = Säuren
care-acids-etch = { $food ->
    [yes] Zitrone, Essig, Wein, Kaffee und die meisten Entkalker verätzen Beton: eine matte, helle Stelle.
   *[no] Essig, WC- und Fliesenreiniger und die meisten Entkalker verätzen Beton: eine matte, helle Stelle.
}
care-acids-rinse = Wischen Sie sie sofort auf und spülen Sie nach. Eine verätzte Stelle wird poliert und neu versiegelt.
care-fire = Am Feuer
care-fire-embers = Glut und heiße Asche hinterlassen Spuren: Nehmen Sie ein Funkengitter, und stellen Sie das Kaminbesteck auf ein Blech.
care-fire-ash = Fegen Sie sie mit einem weichen Besen, wenn alles kalt ist. Asche bleibt tagelang heiß: Tragen Sie sie in einem Metalleimer mit Deckel, und stellen Sie ihn ins Freie, nicht auf die Platte.
care-fire-water = Nie Wasser auf die warme Platte geben: Der Schock kann sie reißen lassen. Wärmen Sie eine neue langsam an, zuerst mit kleinen Feuern.
care-fire-logs = Legen Sie Scheite und Kaminbesteck ab, statt sie fallen zu lassen. Stellen Sie keinen Holzkorb auf ihre Kante.
care-fire-wipe = Ruß und Asche sind mit Wasser alkalisch und färben: erst fegen, dann mit wenig Wasser wischen und trocknen.
care-wet = Im Nassraum
care-wet-dry = Lassen Sie sie zwischendurch trocknen, bei offener Tür oder offenem Fenster.
care-wet-lime = Wischen Sie Kalk ab, solange er weich ist; kein Entkalker löst ihn, ohne den Beton anzugreifen.
care-outdoors = Im Freien, im Winter
care-frost-salt = Räumen Sie Schnee und Eis von Hand. Salz und Taumittel zerstören die Oberfläche.
care-frost-water = Lassen Sie kein Wasser darauf stehen: Fegen Sie Laub ab, halten Sie Gefälle und Wassernase frei.
care-frost-cover = Decken Sie sie bei langem Frost ab, wenn darunter noch Luft zieht.
care-frost-fires = Feuerschalen und heiße Kohlen stehen auf eigenen Füßen auf einer Matte, nie auf dem Beton.
care-sealer = { HOWMANY($slabs) ->
    [0] Die Versiegelung { $sealer }
   *[other] Die Versiegelung { $sealer } ({ $slabs })
}
care-heat = { $near ->
    [kitchen] Hitze: höchstens { $limit }. Ein Topf vom Herd ist weit heißer und gehört auf einen Untersetzer.
    [hearth] Hitze: höchstens { $limit }. Näher am Feuer wird sie matt oder gelb; das ist die Versiegelung, und sie wird erneuert.
   *[other] Hitze: höchstens { $limit }. Nichts Heißeres steht darauf.
}
care-heat-beside = Neben einem heißen Gerät kann die Versiegelung vergilben; diese Stelle wird öfter erneuert.
care-oil = { $kind ->
    [penetrating] Öl und Fett: binnen einer Stunde aufwischen; wo sie einziehen, wird es dunkel.
   *[film] Öl und Fett: Sie liegen auf dem Film und lassen sich abwischen; wischen Sie sie ab, bevor sie heiß werden.
}
care-food = Für den Kontakt mit Lebensmitteln ist sie nicht freigegeben: Bereiten Sie Essen auf einem Brett zu.
care-renew-soaks = Wenn ein Wassertropfen nicht mehr abperlt, sofort: in der Regel einmal im Jahr.
care-renew-wipe = Reinigen, einen Tag trocknen lassen, dünn auftragen, nach zehn Minuten alles abwischen. Was stehen bleibt, wird klebrig.
care-renew-rags = Lappen mit diesem Öl entzünden sich von selbst: Trocknen Sie sie flach ausgebreitet im Freien, oder legen Sie sie in einer Dose mit Deckel unter Wasser.
care-renew-film = Wenn sie durchgekratzt ist oder abgenutzt aussieht, nach einigen Jahren: Der alte Film wird vorher angeschliffen oder entfernt, das ist Werkstattarbeit. Fragen Sie uns.
care-renew-polish = Bis dahin genügt eine dafür gemachte Politur. Nie über Schmutz oder Feuchte versiegeln: Sie wird weiß.
care-pot = Die Reparaturdose
care-pot-holds = Ihre Dose enthält { $masses ->
    [lb] { $oz } oz
   *[kg] { $kg } kg
} trockenes Pulver, Zement und Pigment Ihrer eigenen Mischung, ohne Sand: für Poren und kleine Abplatzer.
care-pot-mix = { $masses ->
    [lb] Rühren Sie { $water_oz } oz Wasser in die ganze Dose, oder einen Teelöffel in { $powder_oz } oz davon: dick wie Sahne.
   *[kg] Rühren Sie { $water_g } g Wasser in die ganze Dose, oder einen Teelöffel ({ $spoon_g } g) in { $powder_g } g davon: dick wie Sahne.
} Verarbeiten Sie es binnen { $minutes } Minuten.
care-pot-skin = Tragen Sie Handschuhe und Brille: Nasser Zement verätzt Haut und Augen. Von Kindern fernhalten.
care-pot-rub = Nässen Sie das Loch, reiben Sie es etwas überstehend ein. Halten Sie es { $days } Tage unter einem feuchten Tuch, schleifen Sie es mit feinem Nasspapier eben, trocknen und versiegeln Sie die Stelle.
care-pot-keeps = Trocken und verschlossen hält es etwa { $months } Monate; wenn es klumpt, bitten Sie uns um eine neue Dose.
care-pot-not = Risse, die arbeiten, und alles an einer Kante oder einem Auflager sehen wir uns selbst an: Schicken Sie ein Bild.
