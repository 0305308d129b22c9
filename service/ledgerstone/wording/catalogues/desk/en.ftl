# All that the maker's own page says beside what it says with the customers' page.
# `web/desk/messages.en.js` is made from this file: `python -m ledgerstone.contract desk-messages.en`.

desk =
    .title = The desk
    .views = What to do
    .steps = On this page
    .asking = The service is at work on it …
    .taking = Saved; it is being taken up …

steps =
    .enquiry = Enquiry
    .order = Order
    .answer = Answer
    .terms = Terms
    .reply = Reply
    .stopped = It can’t be made as asked: see the answer.

view =
    .offer = Write an offer
    .offers = Offers
    .week = The week
    .workshop = Your workshop

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
    .quoted = “{ $text }”
    .title =
        { $n ->
            [one] { $n } thing to look at
           *[other] { $n } things to look at
        }
    .none = Nothing is left open
    .estimate = Nothing is left open; it goes as an estimate unless you choose “It is: a quotation”
    .units-taken = The units’ widths are assumed: nobody told them
    .go = Go to it
    .there = Show it in the message
    .unread = Not read
    .seen = I have seen to it
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
    .margin = It costs you { $cost }; before tax you ask { $net }. Markup { $percent }% on cost.
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
    .margin_percent = Markup on cost
    .margin_percent-hint = In percent, for this offer alone
    .deposit_round_to = Round the deposit to
    .deposit_round_to-hint = Such as 10 for whole tens
    .standing = It is
    .standing-hint = A quotation is a price you promise; while the letter asks anything, it is an estimate
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
    .anew = Written anew. Copy it again.
    .copy-again = Copy it again
    .not-copied = This browser does not let pages copy. The letter is selected: copy it by hand.
    .file = Put it into Drafts
    .sent = It is sent
    .noted = Noted as sent.

offers =
    .open-title = Open an earlier offer
    .field = Paste its reference, its link or the mail that holds it, or drop the mail’s file here
    .open = Open it
    .no-link = There is no link to an offer in this. Paste the link, or the mail that holds it.
    .not-here = { $reference } is not among the offers on this device. Paste its link.
    .here-alone = The last fifty offers are kept in this browser, on this device only. Save them as a file to take them elsewhere.
    .waits = What waits
    .nothing-waits = Nothing waits for you.
    .all = The other offers
    .none = No offer is kept here yet. One is once its reply is copied or taken as a draft.
    .until = stands until { $day }
    .today = Today, without terms of your own, it would be { $total }, ready on { $day }.
    .why-unanswered =
        { $n ->
            [one] no answer for a day
           *[other] no answer for { $n } days
        }
    .why-expires = its last day is { $day }
    .why-unpaid = a yes whose deposit is not here
    .patience = Days without an answer until one waits
    .export = Save them as a file
    .import = Add those of a file
    .imported =
        { $n ->
            [one] { $n } offer added.
           *[other] { $n } offers added.
        }
    .not-imported = That file holds no offers. Choose one that was saved here.
    .open-row = Open { $reference }
    .state = What became of { $reference }
    .draft = draft
    .sent = sent
    .yes = a yes
    .no = a no
    .paid = The deposit is here
    .is-paid = its deposit is here
    .asked = Not answered yet
    .asked-count =
        { $n ->
            [one] one question is open
           *[other] { $n } questions are open
        }
    .answered = It is answered
    .asked-still = Not answered yet: { $questions } On the job sheet this is to be ticked before anything is cut.
    .change = Change the order
    .note-copied = Copied. Paste it into your mail.
    .mail = Write it in your mail program

papers =
    .title = Papers
    .approval = Approval sheet
    .fitting = Fitting sheet
    .care = Care sheet
    .job = Job sheet
    .true-size = True-size paper
    .no-opening = This order has no opening to print at true size.
    .calendar = Calendar entries
    .dxf = Mould parts for a CNC router (DXF)
    .svg = Mould parts for a laser cutter (SVG)
    .reminder = Reminder
    .deposit = Deposit request
    .yes = A yes: job sheet, calendar, deposit request

week =
    .title = The days to come
    .choose = Offers
    .make = Make the sheet
    .days = Day by day
    .alone = Each offer’s hours are as if it were alone: where two meet, move one of them.
    .buy = To buy
    .print = Print it
    .day = Day
    .what = What
    .offer = Offer
    .when = When
    .material = Material
    .used = Used
    .packs = Packs
    .loose = loose
    .of-packs = { $n } of { $pack }
