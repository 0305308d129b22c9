# Der Plan der Wochen, gezeichnet und in Worten.

weeks-title = Die Wochen, bis sie bei Ihnen ist
weeks-whole = Von { $first } bis { $last }.
weeks-bar = { $name }: { $first } bis { $last }.
weeks-bar-day = { $name }: { $first }.
weeks-road = Unterwegs zu Ihnen
weeks-hands = wir arbeiten daran
weeks-waits = sie ruht
