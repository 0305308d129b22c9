# Prüfungen der Bewehrung und der Gesteinskörnung.

grains-stick = { NAME($slab, start: "yes") } lässt an der dünnsten oder schmalsten Stelle Körner bis { $limit } hinein; unser Beton hat Körner bis { $largest }.
grains-stick-in-strip = Der { $width } breite Steg neben { NAME($cutout, case: "dative") } ist zu schmal, als dass unser Beton hineinfließt.
steel-rusts = { $thicker ->
    [helps] { steel-place } würde die Bewehrung in { NAME($slab, case: "dative") } rosten: Sie hat { $kept } Betondeckung und braucht { $wanted }.
   *[never-helps] { steel-place } würde die Bewehrung in { NAME($slab, case: "dative") } rosten: Sie hat { $kept } Betondeckung und braucht { $wanted }. Keine Dicke, die wir gießen, reicht dort aus: Verwenden Sie sie im Innenraum, oder fragen Sie uns nach anderer Bewehrung.
}
steel-place = { $place ->
    [outdoors] Im Freien
    [wet-room] Im Nassraum
   *[indoors] Im Innenraum
}
cover-too-thin = { NAME($slab, start: "yes") } hat { $kept } Betondeckung über der Bewehrung, wo { $wanted } üblich sind. Auf einer dunklen Fläche kann sie sich abzeichnen; eine dickere Platte verbirgt sie.
