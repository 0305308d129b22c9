# What a surface is called, wherever a sentence chooses by it: a new one has its words here.

surface-name = { $surface ->
    [as-cast] as cast
    [honed] honed
   *[polished] polished
}
surface-verb = { $surface ->
    [polished] polish
    [honed] hone
   *[as-cast] cast
}
taken-surface = { $surface ->
    [as-cast] surface as cast
    [honed] honed surface
    [polished] polished surface
   *[other] surface { $surface }
}
paper-surface = { $surface ->
    [as-cast] as cast
   *[other] { $surface }
}
