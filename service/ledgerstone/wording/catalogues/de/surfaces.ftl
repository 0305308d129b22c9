# What a surface is called, wherever a sentence chooses by it: a new one has its words here.

surface-name = { $surface ->
    [polished] poliert
    [honed] fein geschliffen
   *[as-cast] schalungsglatt
}
surface-verb = { $surface ->
    [polished] polieren
    [honed] schleifen
   *[as-cast] gießen
}
taken-surface = Oberfläche { surface-name }
