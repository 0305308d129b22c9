# Die Farbe: wie weit sie vom Wunsch entfernt ist und wie sicher sie ist.

shade-not-matched = Wir mischen keinen Farbton nach { $wished }; wir gießen die Farbtöne unserer Palette. Am nächsten kommt { $nearest }, { $difference }.
shade-out-of-reach = { NAME($slab, start: "yes") } lässt sich in Beton nicht in { $wished } gießen: Am nächsten kommt { $nearest }, { $difference }. Fragen Sie nach einer gegossenen Musterplatte, oder wählen Sie einen Farbton unserer Palette.
dose-over-limit = Der Farbton { $shade } braucht { $dose } % Pigment; damit der Beton seine Festigkeit behält, gießen wir mit höchstens { $limit } %.
shade-the-same = für das Auge derselbe wie gewünscht
shade-difference = { $amount ->
    [touch] eine Spur { $directions } als gewünscht
    [little] etwas { $directions } als gewünscht
    [far] weit { $directions } als gewünscht
   *[clearly] deutlich { $directions } als gewünscht
}
shade-direction = { $direction ->
    [lighter] heller
    [darker] dunkler
    [stronger] kräftiger
    [greyer] grauer
    [warmer] wärmer
    [cooler] kühler
    [redder] röter
    [greener] grüner
    [yellower] gelber
   *[bluer] blauer
}
shade-worked-out = { shade-certainty } { screens-differ }
shade-certainty = { $certainty ->
    [no-tile] Aus Beispielwerten berechnet: Eine Musterplatte haben wir davon noch nicht gegossen.
    [as-batches] Berechnet aus Musterplatten, die wir gegossen und messen lassen haben. Das gegossene Stück kann davon abweichen wie eine Mischung von der nächsten.
    [side-by-side] Berechnet aus Musterplatten, die wir gegossen und messen lassen haben. Das gegossene Stück kann davon so weit abweichen, wie man es nebeneinander sieht.
   *[not-read] Berechnet aus Musterplatten, die wir gegossen und messen lassen haben. In der Nähe ist keine Musterplatte gemessen; das gegossene Stück kann deutlich anders aussehen.
}
shade-without-tile = Ein Beispiel: Eine Musterplatte haben wir davon noch nicht gegossen. { screens-differ }
shade-judged-by-eye = Nach Augenmaß von einer gegossenen Musterplatte. { screens-differ }
shade-read-by-instrument = Mit dem Messgerät von einer gegossenen Musterplatte abgelesen. { screens-differ }
shade-matched = Was wir am nächsten mischen können, ist { $difference }. { shade-certainty } { screens-differ }
screens-differ = Bildschirme zeigen Farben unterschiedlich: Fragen Sie nach einer gegossenen Musterplatte, bevor Sie sich entscheiden.
