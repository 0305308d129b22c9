# All that the maker's own page says beside what it says with the customers' page.
# `web/desk/messages.en.js` is made from this file: `python -m ledgerstone.contract desk-messages.en`.

desk =
    .title = The desk
    .views = What to do
    .steps = On this page

steps =
    .order = The order
    .terms = Terms

view =
    .offer = Write an offer
    .offers = Offers
    .week = The week

door =
    .title = The maker’s key
    .hint = It is what LEDGERSTONE_MAKER_KEY was set to, or what the service said when it started.
    .key = Key
    .stays = Keep it on this device
    .stays-hint = Otherwise it is kept until you close this tab. Tick it on your own device only.
    .enter = Open the desk
    .wrong = That is not the maker’s key. Enter it as it was set.
    .wait = Too many keys were tried from here. Try again in { $n } s.

trouble =
    .refused = The service no longer takes this key.

enquiry =
    .title = The enquiry
    .message = Paste the message, or drop its file here
    .read = Read it
    .file = Open an .eml file
    .edit = Change the text
    .next = Next enquiry
    .none = This does not ask for a slab.
    .from = From { $name }.
    .attached = It speaks of files, which are not read: look at them.
    .reply-to = They want the answer at { $address }, not at the address it came from.

points =
    .title =
        { $n ->
            [one] { $n } thing to look at
           *[other] { $n } things to look at
        }
    .none = Nothing is left open
    .go = Go to it
    .doubtful = Doubtful
    .missing = To ask
    .assumed = Assumed
    .right = That’s right
    .not-asked = Don’t ask
    .as-it-is = Leave it as it is
    .said = From: { $text }

form =
    .title = The order, field by field

side =
    .title = Costs and strength
    .margin = It costs you { $cost }; before tax you ask { $net }. Margin { $percent }%.
    .costs = Costs by line
    .costs-all = All costs
    .hours = Hours by step
    .hours-all = All hours of hands
    .waits = waits { $hours } h
    .strength = The governing case
    .no-stress = No case has stress.
    .utilisation = Of what is trusted
    .stress-is = Stress
    .limit = Trusted at that age
    .age = Age at 20 °C, days
    .cracks = In the mean it cracks at
    .stress = Where the stress in { $label } is

hand =
    .title = Terms of this offer
    .add = Add a line to the price
    .text = What for
    .amount = Amount before tax
    .margin_percent = Margin
    .margin_percent-hint = In percent, for this offer alone
    .deposit_round_to = Round the deposit to
    .deposit_round_to-hint = Such as 10 for whole tens
    .standing = It is
    .standing-hint = A quotation is a price you promise
    .standing-usual = as your profile says
    .standing-estimate = an estimate
    .standing-quotation = a quotation
    .valid_until = It stands until
    .valid_until-hint = Left empty, as your profile says
    .note = A few words of yours
    .note-hint = They stand in the letter, on the sheets and behind the link

reply =
    .title = The reply
    .letter = The letter
    .name = Whom it greets
    .tone = How much it says
    .full = All of it
    .short = The short form
    .write = Write the reply
    .copy = Copy it
    .copy-text = Copy as text
    .draft = Download the draft
    .copied = Copied. Paste it into your mail.
    .text-copied = Copied as text.
    .not-copied = This browser does not let pages copy. The letter is selected: copy it by hand.
