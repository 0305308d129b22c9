# Das Formular des Profils.

profile-changed-since = Die Datei hat sich geändert, seit diese Seite sie gelesen hat. Laden Sie sie neu; was Sie hier eingegeben haben, bleibt erhalten und kommt darüber.
profile-not-writable = Dieser Dienst darf die Datei nicht schreiben. Laden Sie sie stattdessen herunter.
profile-not-written = Die Datei ließ sich nicht schreiben: { $reason }. Sie ist, wie sie war.
profile-no-such-place = Das Profil hat dafür keine Stelle { $pointer }.
typical-job = { $job ->
    [shelf] Ein schlichtes Regalbrett, 900 × 250 mm, abgeholt
    [basin-top] Eine Waschtischplatte, 1200 × 520 mm, geliefert
   *[kitchen] Eine Küche aus zwei Platten mit Kochfeld, montiert
}
