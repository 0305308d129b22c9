# Short letters about an offer that is made.

note-greeting = { $named ->
    [yes] Hello { $name },
   *[no] Hello,
}
note-reminder-subject = Our offer { $reference }
note-reminder = Our { $standing ->
    [quotation] quotation
   *[estimate] estimate
} { $reference } is { $total }; its { $standing ->
    [quotation] price holds
   *[estimate] rates hold
} until { $until }. Would you like it, or shall we change something?
note-thanks = Thank you for saying yes to { $reference }.
note-deposit-subject = The deposit for { $reference }
note-deposit = { $country ->
    [US] Please pay the deposit of { $deposit } by { $by }, and write { $reference } in the memo.
   *[other] Please pay the deposit of { $deposit } by { $by }, with { $reference } as its reference.
}
note-held = Until then we keep the day for you: ready on { $ready }.
note-day-open = We agree the day with you once it is here.
note-balance = { $due_is ->
    [set] The rest, { $balance }, is due { $due }.
   *[open] The rest is { $balance }.
}
note-lacks = { $what ->
    [both] Your file does not say how it is paid, nor when the rest is due: enter both in “Your workshop”, Money: “How a deposit is paid, as customers read it” and “When the rest is due”.
    [payment] Your file does not say how it is paid: enter it in “Your workshop”, Money: “How a deposit is paid, as customers read it”.
   *[balance_due] Your file does not say when the rest is due: enter it in “Your workshop”, Money: “When the rest is due”.
}
no-such-note = There is no such letter. There are: { $kinds }.
no-mailbox = This workshop's file names no mailbox, or its password is not set.
mailbox-fault = The draft is not in your mailbox. { $reason }
draft-filed = The draft is in your mailbox.
desk-invented = { $invented } of { $every } values still invented
