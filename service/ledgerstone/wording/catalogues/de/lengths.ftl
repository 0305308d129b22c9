# Warum eine getippte Länge nicht gelesen wurde, und wie sie zu schreiben ist. $typed ist das Getippte.

length-like = zum Beispiel 1450 mm, 1,45 m oder 145 cm
length-is-text-or-number = Geben Sie eine Länge als Zahl in Millimetern an, zum Beispiel 1450, oder als Text mit ihrer Einheit, zum Beispiel 145 cm.
length-unread = „{ $typed }“ ist nicht als Länge zu lesen. Schreiben Sie eine Zahl mit ihrer Einheit, { length-like }.
length-too-long = Das sind { $count } Zeichen; eine Länge hat höchstens { $longest }. Schreiben Sie sie kürzer, { length-like }.
length-over-bound = Das sind mehr als { $bound }. Prüfen Sie die Zahl und ihre Einheit.
length-odd-fraction = Im Bruch in { $typed } muss 2, 4, 8, 16, 32 oder 64 unter dem Strich stehen. Schreiben Sie ihn so oder als Dezimalzahl.
length-fraction-over-one = Der Bruch in { $typed } ergibt eins oder mehr. Schreiben Sie ihn als { $meant }.
length-several-fractions = { $typed } kann { $readings } heißen. Schreiben Sie, was Sie meinen, mit einem Leerzeichen.
length-mixed-units = { $typed } mischt Einheiten. Schreiben Sie es in einer davon, { length-like }.
length-inches-past-a-foot = In { $typed } ergeben die Zoll einen weiteren Fuß. Schreiben Sie weniger als 12 Zoll, zum Beispiel 4 ft 9 in.
length-empty = Geben Sie eine Länge mit ihrer Einheit ein, { length-like }.
length-foreign-digits = Schreiben Sie die Zahl in { $typed } mit den Ziffern 0 bis 9, { length-like }.
length-without-unit = { $typed } hat keine Einheit. Schreiben Sie { $number } mm, { $number } cm oder { $number } Zoll, je nachdem, was Sie meinen.
length-fraction-without-unit = { $typed } hat keine Einheit. Schreiben Sie { $number } Zoll, wenn es Zoll sind.
length-without-inch-mark = { $typed } endet ohne Einheit. Schreiben Sie { $number } Zoll.
length-two-readings = { $typed } kann { $readings } heißen. Schreiben Sie, was Sie meinen, ohne Zeichen zwischen den Ziffern außer einem Dezimalzeichen.
length-two-readings-without-unit = { $typed } kann { $readings } heißen. Schreiben Sie, was Sie meinen, mit der Einheit, { length-like }.
length-with-comma = { $typed } kann { $readings } heißen. Schreiben Sie { $meant }, wenn Sie das meinen.
length-with-exponent = Schreiben Sie die Zahl in { $typed } aus, { length-like }.
length-without-number = In { $typed } steht keine Zahl. Schreiben Sie eine, { length-like }.
length-as-sum = { $typed } liest sich wie eine Rechnung. Schreiben Sie ihr Ergebnis, { length-like }.
length-strange-unit = Die Einheit in { $typed } wird hier nicht gelesen. Schreiben Sie es in mm, cm, m, in oder ft.
