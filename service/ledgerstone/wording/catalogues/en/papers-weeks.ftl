# The plan of the weeks, drawn and in words.

weeks-title = The weeks until it is with you
weeks-whole = From { $first } to { $last }.
weeks-bar = { $name }: { $first } to { $last }.
weeks-bar-day = { $name }: { $first }.
weeks-road = On its way to you
weeks-hands = hands at work
weeks-waits = it waits
