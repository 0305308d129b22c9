# Was auf den Dateien steht, nach denen Schalungen geschnitten werden.

cut-mirrored = { $name }: wahre Größe, in { $lengths ->
    [in] Zoll
   *[mm] mm
}. Gespiegelt, wie gegossen wird: Blick von oben in die Schalung, die Sichtseite liegt unten.
cut-kerf = Die Schnittbreite ist nicht berücksichtigt: Stellen Sie den Versatz an der Maschine ein. Die Seiten liegen flach unter jeder Schalung; prüfen Sie ein Maß, bevor Sie schneiden.
