# All that the profile's form says beside what it says with the desk and the customers' page.
# `web/desk/workshop/messages.en.js` is made from this file: `python -m ledgerstone.contract workshop-messages.en`.

workshop =
    .title = Your workshop
    .skip = Skip to the form
    .back = Back to the desk
    .subjects = Subjects
    .intro = What you change is kept on this device until you save it.
    .demonstration = This is the invented workshop’s own file. Start one of yours with “init” (see the README).

subject =
    .first = First quote
    .you = You
    .money = Money
    .mould = Table and mould
    .concrete = Concrete
    .shades = Shades
    .hours = Hours by step
    .finishes = Finishes and sealers
    .delivery = Delivery
    .days = Days
    .faults = ({ $n } to put right)

first =
    .intro = Short answers, as you would say them; any can be changed later. A bar marks what is still ours: type yours, or tick the box.
    .done = – done
    .rest = { $n ->
        [one] It is right for us
       *[other] These are right for us
    }
    .bags = I mix from bags. Shades of another cement than the bag’s are taken out.
    .stands = For now: { $what }
    .bag-trust = Until you break strips of it (under Concrete) { $percent }% of its strength is trusted.
    .way = Other ways to lift
    .hoist = Add a hoist or tilting table
    .takes = Hours of all who work on it, added up, until it is packed
    .buys = What you buy for it: concrete, mould, steel, sealer
    .asks = What you ask for it, before tax and delivery
    .follows = What follows: markup and buying prices
    .more = Two more jobs, for closer hours
    .heat = withstands heat up to { $now }
    .job = { $job }, in hours
    .no-hours = This is no number, like { $like }.
    .now = By the file now: { $now }
    .stale = You said { $told }; by what was changed since it is { $now }.
    .refit = Take these again

table =
    .add = Add one more
    .begin = Add this
    .remove = Take it out
    .leave-out = Leave this out

whose =
    .right = This is right
    .table = All of this is right for me
    .opened = { $n ->
        [one] One entry was folded. Look at it, then tick.
       *[other] { $n } entries were folded. Look at them, then tick.
    }

yesno =
    .true = yes
    .false = no
    .left-out = (left out)

measure =
    .days = days

colour =
    .picker = { $label }: picker
    .text = { $label }: #rrggbb

outcome =
    .title = What it comes to
    .jobs = Three typical jobs, tax and all
    .working = Working it out …
    .was = was { $total }
    .hours = { $hours } h, ready { $ready }
    .part = In a basin top: { $hours } h, { $amount } of { $total }
    .missing = Still to be filled in:
    .faults = { $n ->
        [one] One thing is to be entered or put right first:
       *[other] { $n } things are to be entered or put right first:
    }
    .share = { $invented } of { $every } values are still invented; answers use them as they stand
    .may-stay = { $invented } other values are still ours, and change none of that
    .table = ({ $n }): { $says }.
    .trial = Until all steps are done every answer says that it is a trial.
    .honest = No answer is a trial any more: prices, days and areas are yours, or usual in this trade.
    .earlier = These figures leave out what is still to be put right.
    .changes = { $n ->
        [one] One change is not saved yet.
       *[other] { $n } changes are not saved yet.
    }
    .downloaded = { $n ->
        [one] One change is in the file you downloaded.
       *[other] { $n } changes are in the file you downloaded.
    }
    .unchanged = Nothing has been changed.
    .take-up = Put the downloaded file in the place of yours; the service takes it up.
    .save = Save
    .saved = Saved. The desk answers by it.
    .kept = Saved. For some seconds the desk may still answer by the old file.
    .download = Download { $file }
    .undo = Take back the last change
    .again = Try again
    .dropped = { $n ->
        [one] One change no longer fits the file and was left out. Make it again on the form.
       *[other] { $n } changes no longer fit the file and were left out. Make them again on the form.
    }
    .reload = Load it again
