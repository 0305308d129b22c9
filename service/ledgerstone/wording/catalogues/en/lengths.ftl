# Why a typed length was not read, and how to write it. $typed is what was typed.

length-like = { $lengths ->
    [in] like 57 1/16 in, 4 ft 9 in or 1450 mm
   *[mm] like 1450 mm, 1.45 m or 4 ft 9 in
}
length-is-text-or-number = Enter a length as a number of millimetres, like 1450, or as text with its unit, like 1.45 m.
length-unread = “{ $typed }” does not read as a length. Write a number and its unit, { length-like }.
length-too-long = This has { $count } characters; a length has at most { $longest }. Write it { length-like }.
length-over-bound = This is more than { $bound }. Check the number and its unit.
length-odd-fraction = The fraction in { $typed } needs 2, 4, 8, 16, 32 or 64 below the line. Write it so, or as a decimal.
length-fraction-over-one = The fraction in { $typed } comes to one or more. Write it as { $meant }.
length-several-fractions = { $typed } could be { $readings }. Write the one you mean, with a space.
length-mixed-units = { $typed } mixes units. Write it in one of them, { length-like }.
length-inches-past-a-foot = In { $typed } the inches make another foot. Write them under 12, like 4 ft 9 in.
length-empty = Enter a length with its unit, { length-like }.
length-foreign-digits = Write the number in { $typed } with the digits 0 to 9, { length-like }.
length-without-unit = { $typed } has no unit. Write { $number } mm, { $number } cm or { $number } in, whichever you mean.
length-fraction-without-unit = { $typed } has no unit. Write { $number } in if it is inches.
length-without-inch-mark = { $typed } ends without its unit. Write { $number } in.
length-two-readings = { $typed } could be { $readings }. Write the one you mean, with nothing between the digits but a decimal point.
length-two-readings-without-unit = { $typed } could be { $readings }. Write the one you mean with its unit, { length-like }.
length-with-comma = { $typed } could be { $readings }. Write it with a point: { $meant }.
length-with-exponent = Write the number in { $typed } out in full, { length-like }.
length-without-number = { $typed } has no number in it. Write it { length-like }.
length-as-sum = { $typed } reads as a sum. Write its answer, { length-like }.
length-strange-unit = { $typed } is in a unit that is not read here. Write it in mm, cm, m, in or ft.
