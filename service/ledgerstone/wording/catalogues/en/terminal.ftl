# What the maker's commands print of an order in a terminal.

terminal-label = { $row ->
    [estimate] Estimate
    [quotation] Quotation
    [price] Price
    [deposit] Deposit
    [ready] Ready
    [packed] Packed
   *[link] Link
}
terminal-until = { $name }, until { $day }
terminal-tax = including { $amount } { $tax } at { $percent }
terminal-ready = { $ready }, if ordered by { $by }
terminal-arrives = { $way ->
    [collect] to collect from { $first }
    [day] with you on { $first }
   *[days] with you between { $first } and { $last }
}
terminal-size = { $length } × { $width }, { $thickness } thick, { surface-name }; { $weight }
terminal-across = { $length } across, { $thickness } thick, { surface-name }; { $weight }
terminal-rests = The price and the day rest on this:
terminal-ways = Ways to save:
terminal-lighter = { $weight } lighter
terminal-sooner = { $count ->
    [one] { $count } day sooner
   *[other] { $count } days sooner
}
terminal-not-made = Not to be made as asked.
terminal-level = { $level ->
    [stops] stops
    [caution] caution
   *[note] note
}
terminal-fix = All at once, for { $total }:
terminal-nearest = Nearest makeable, for { $total }:
terminal-drawing = (drawing) { $words }
terminal-wrote = Wrote { $file }.
terminal-wrote-draft = Wrote { $file }. Open it in a mail program.
terminal-subject = Subject: { $subject }
terminal-no-keys = { $name } is not set, so links made here open nowhere. Set it as the service has it.
terminal-customer = { $row ->
    [name] From: { $text }
    [reply_to] Answer to: { $text }
   *[phone] Telephone: { $text }
}
terminal-reply-differs = The answer goes to another address than the one it came from.
terminal-no-slab = This message asks for no slab.
terminal-attached = Attached, and not read: { $files }
terminal-list = { $of ->
    [read] Read:
    [doubtful] Doubtful:
    [missing] Missing:
    [assumed] Assumed:
    [ignored] Set aside:
   *[unread] Not read; look at these yourself:
}
terminal-how = { $how ->
    [said] said: “{ $words }”
   *[worked-out] worked out: “{ $words }”
}
terminal-unpriced = Nothing can be priced yet: a size of the outline is missing.
