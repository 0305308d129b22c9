# Prüfungen, womit eine Bestellung fährt: Paletten und Ladebordwand der Spedition, unser Transporter, Ihrer.

too-long-for-pallet = { NAME($slab, start: "yes") } ist { $size } lang; die Spedition nimmt auf einer Palette höchstens { $most }.
too-deep-for-pallet = { NAME($slab, start: "yes") } ist { $size } tief; die Spedition nimmt auf einer Palette höchstens { $most }.
too-heavy-for-pallet = Verpackt wiegt die Bestellung { $packed }; die Spedition nimmt auf einer Palette höchstens { $most }.
beyond-tail-lift = Verpackt wiegt die Bestellung { $packed }; die Ladebordwand der Spedition trägt { $most }. Halten Sie am Tag der Lieferung einen Gabelstapler bereit, oder bestellen Sie in zwei Teilen.
set-down-at-kerb = Die Palette wird an der Bordsteinkante abgesetzt, auf festem, ebenem Boden. Von dort bringen Sie sie selbst hinein.
too-long-for-van = { NAME($slab, start: "yes") } ist { $length } lang; in unseren Transporter passen { $most }.
too-heavy-for-van = Verpackt wiegt die Bestellung { $packed }; unser Transporter trägt { $most }.
vehicle-to-collect = Kommen Sie zum Abholen mit einem Transporter, dessen Ladefläche auf { $length } frei ist und der { $carries } laden darf. Die Platten fahren hochkant an einem Gestell, verzurrt, nie flach.
