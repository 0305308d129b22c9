# Das Formular des Profils.

profile-changed-since = Die Datei hat sich geändert, seit diese Seite sie gelesen hat. Laden Sie sie neu; was Sie hier eingegeben haben, bleibt erhalten und kommt darüber.
profile-not-writable = Dieser Dienst darf die Datei nicht schreiben. Laden Sie sie stattdessen herunter.
profile-not-written = Die Datei ließ sich nicht schreiben: { $reason }. Sie ist, wie sie war.
profile-no-such-place = Das Profil hat dafür keine Stelle { $pointer }.
profile-taken = Angenommen wird { $value }.
profile-also-removed = Mit herausgenommen: { $things }.
profile-also-removed-part = { $thing ->
    [tiles] gemessene Muster mit { $name }
   *[shade] Farbton { $name }
}
typical-job = { $job ->
    [shelf] Ein schlichtes Regalbrett, { $length } × { $width }, { job-surface }, abgeholt
    [basin-top] Eine Waschtischplatte, { $length } × { $width }, { job-surface }, geliefert
   *[kitchen] Eine Küche aus zwei Platten mit Kochfeld, { job-surface }, montiert
}
job-surface = { $surface ->
    [as-cast] schalungsglatt
    [honed] geschliffen
   *[polished] poliert
}
first-step = { $step ->
    [you] Wer Sie sind
    [table] Ihr Gießtisch
    [money] Ihre Stunde, Ihr Aufschlag, Ihre Steuer, Ihre Anzahlung
    [concrete] Ihr Beton
    [materials] Was Sie einkaufen
    [lifting] Was Sie heben, und wie eine junge Platte bewegt wird
    [hours] Ihre Leute, Ihre Tage und wie lange Sie brauchen
    [looks] Farbtöne, Oberflächen und Versiegelungen, die Sie anbieten
   *[delivery] Wohin Sie liefern
}
# Ein Schlüssel der Datei, in einem Satz auf dem Formular.
form-key = „{ $label }“{ $word ->
    [true] : ja
    [false] : nein
   *[none] { "" }
}
