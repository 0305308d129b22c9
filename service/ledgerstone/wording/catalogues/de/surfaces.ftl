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
taken-surface = { $surface ->
    [as-cast] Oberfläche schalungsglatt
    [honed] Oberfläche fein geschliffen
    [polished] Oberfläche poliert
   *[other] Oberfläche { $surface }
}
plan-surface = { $surface ->
    [as-cast] schalungsglatt
    [honed] fein geschliffen
    [polished] poliert
   *[other] { $surface }
}
taken-surface-name = { $value ->
    [as-cast] schalungsglatt
    [honed] fein geschliffen
   *[polished] poliert
}
