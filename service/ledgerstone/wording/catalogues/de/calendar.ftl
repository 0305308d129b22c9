# Warum aus der Kalenderdatei dessen, was gebucht ist, nicht geantwortet wird.

calendar-away = Die Kalenderdatei ist nicht da oder lässt sich nicht öffnen.
calendar-being-read = Die Kalenderdatei wird gerade gelesen.
calendar-slow = Die Kalenderdatei zu lesen dauert zu lange. Exportieren Sie nur die kommenden Jahre.
calendar-not-utf8 = Die Kalenderdatei ist nicht in UTF-8. Exportieren Sie sie noch einmal, als .ics.
calendar-unread = Die Kalenderdatei liest sich nicht als Kalender. Exportieren Sie sie noch einmal.
calendar-too-large = Die Kalenderdatei ist größer als 4 MB. Exportieren Sie nur die kommenden Jahre.
calendar-not-ics = Die Kalenderdatei ist keine iCalendar-Datei. Exportieren Sie sie noch einmal, als .ics.
calendar-cut = Die Kalenderdatei bricht vor ihrem Ende ab. Exportieren Sie sie noch einmal.
calendar-too-many-entries = Die Kalenderdatei hat mehr Einträge, als wir lesen: { $most }.
calendar-too-many-days = Die Einträge der Kalenderdatei wiederholen sich an mehr Tagen, als wir lesen: { $most } insgesamt. Beenden Sie, was vorbei ist, oder exportieren Sie nur die kommenden Jahre.
calendar-not-daily = Ein Eintrag der Kalenderdatei wiederholt sich öfter als täglich. Schreiben Sie ihn als Stunden jedes Tages.
calendar-stands-still = Ein Eintrag der Kalenderdatei wiederholt sich im Abstand null. Schreiben Sie mindestens 1.
calendar-fault = Der Kalender ist nicht gelesen: { $why }
