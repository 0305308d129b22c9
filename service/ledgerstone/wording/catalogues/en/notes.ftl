# Short letters about an offer that is made.

note-greeting = { $named ->
    [yes] Hello { $name },
   *[no] Hello,
}
note-reminder-subject = Our offer { $reference }
note-reminder = Our { $standing ->
    [quotation] quotation
   *[estimate] estimate
} { $reference } of { $total } stands until { $until }. Would you like it, or shall we change something?
note-thanks = Thank you for saying yes to { $reference }.
note-deposit-subject = The deposit for { $reference }
note-deposit = Please pay the deposit of { $deposit }, with { $reference } as its reference.
note-held = We keep the day for you, ready on { $ready }, if the deposit is here by { $by }.
note-balance = { $told ->
    [told] The rest, { $balance }, is due { $due }.
   *[not-told] The rest is { $balance }.
}
no-such-note = There is no such letter. There are: { $kinds }.
no-mailbox = This workshop's file names no mailbox, or its password is not set.
mailbox-fault = The draft is not in your mailbox. { $reason }
draft-filed = The draft is in your mailbox.
