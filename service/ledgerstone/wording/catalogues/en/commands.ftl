# What the maker's commands say of themselves, and what those print that have no other place.

cli-part = { $part ->
    [usage] usage:
    [positional] what it takes
    [optional] options
    [commands] commands
   *[wrong] These arguments do not fit; --help says which there are.
}
cli-does = { $command ->
    [workshop] Check the profile of a workshop, or start one.
    [check] Say what is wrong in a profile, or what it says.
    [init] Write a commented profile to fill in.
    [try] Compare a profile’s price, mass and hours with those of past jobs.
    [order] Quote an order, or write its reply or its job sheet, without a server.
    [quote] Say what an order costs and when it is ready, or what to change.
    [reply] Write the reply to its customer.
    [job-sheet] Write what the workshop works from.
    [enquiry] Read a message into a draft order.
    [answer] Write the draft that answers a message.
    [mailbox] Look through the new messages of your own mailbox, the profile’s [mailbox], and put a draft reply to each enquiry into its drafts. Nothing is sent, deleted or marked as read.
    [shade] Work out shades from readings of tiles.
    [fit] Turn readings, a CSV file with the heading below, into profile lines.
   *[strips] Work out a concrete’s strength from strips that were broken.
}
cli-argument = { $argument ->
    [help] print this help
    [profile-file] the profile, a TOML file
    [ask] ask what a first quote needs
    [country] the country whose default values it starts with
    [jobs-file] past jobs, a TOML file
    [order-file] the order, a JSON file; - reads stdin
    [mail-file] the message, an .eml or a text; - reads stdin
    [json] write JSON, as the service does
    [to] the customer’s name
    [short] price, day and cautions only
    [ways] also a lighter and a cheaper way
    [pdf] write the sheet as a PDF
    [draft] write an .eml with pictures
    [draft-answer] default: beside the message
    [once] process the new messages once
    [watch] keep running, and answer new messages
    [state] processed messages; default: beside the profile
    [workshop-file] the profile in whose language and units it answers
    [tiles-file] one tile a line
   *[strips-file] CSV table of strips
}
file-fault = { $why ->
    [not-there] there is no such file or folder
    [folder] it is a folder, not a file
    [not-allowed] this program has no permission to do so
    [read-only] nothing can be written on this disk
    [full] the disk is full
    [there-already] a file of this name is there already
    [long-name] its name is too long
    [not-text] it is not UTF-8 text
    [not-table] it does not read as a CSV table
    [refused] it refuses connections
    [no-network] there is no way to it by the network
    [no-such-server] no server has this name, or there is no network
    [not-trusted] its certificate is not trusted: it has expired, is self-signed, or is another server's
    [not-secret] the connection could not be encrypted
    [too-late] it did not answer in time
    [numbered] the computer reports error { $number }
   *[other] the computer reports an error
}
cli-unreadable = { $file }: the file cannot be read: { $reason }.
jobs-form =
    FILE has one table for each job; what you do not know is left out:

    { "[[jobs]]" }
    name = "Seat"
    ordered_on = 2026-03-02
    order = "seat.json" # the order as it would be sent, beside this file
    charged = 940.00 # what the customer paid
    weighed_kg = 52.0 # all slabs, on the scale
    hours = 14.5 # of work
    days = 19 # from the order until it was ready
    # of each step that you timed, as the job sheet names it, or as its name begins:
    { "[jobs.hours_by_step]" }
    "Make the mould" = 1.3

tried-job = { $name }, ordered { $day }
tried-stopped = would have been sent back: { $why }
tried-figure = { $measure ->
    [charged] price
    [weighed_kg] mass
    [hours] hours
   *[days] days
}
tried-figures = would { $expected }, really { $actual } { $unit }
tried-days = days
tried-all = In all
tried-middle = { $off }% in the middle of { tried-jobs } ({ $least } to { $most }%): { $near ->
    [yes] near enough
   *[no] off: look at { $measure ->
        [charged] [rates], and the prices beside each material
        [weighed_kg] recipe.weighed_kg_per_m3 and rates.steel_kg_per_m2
        [hours] [hours], and hours_per_m2 of the finish
       *[days] [days] and [calendar]
    }
}
tried-jobs = { $count ->
    [one] { $count } job
   *[other] { $count } jobs
}
tried-by-step = By step
tried-step = would { $expected }, really { $actual } h in { tried-jobs }
tried-rates = { $off ->
    [some] Rates to write
   *[none] Rates: none is surely off yet
}
tried-rate = was { $was }; ± { $spread } from { tried-jobs }

shades-unheaded = the first line is the heading { $columns }, and tiles follow.
shades-cement = cement is grey or white; here stands "{ $found }".
shades-unnamed = a tile with a dose needs its pigment’s name.
shades-number = { $column } is a number; here stands "{ $found }".
shades-bound = { $column } is { $found }; it lies between { $low } and { $high }.
shades-no-bare = no tile of { $cement ->
    [white] white
   *[grey] grey
} cement is without pigment. Add one with the dose 0.
shades-bases = Put these in place of the [[shade.bases]] of your profile.
shades-pigment = Put this under the [[pigments]] whose name is "{ $name }".
shades-misses = The curve misses the tiles by ΔE00 { $miss } in the mean:
shades-tile = { $cement ->
    [white] white
   *[grey] grey
} { $dose }: { $miss }
shades-again = look at this tile again
shades-few = Fewer than { $count } doses: between them, and beyond, this is a guess.

settings-number = { $name } is a whole number from 0 to { $most }; “{ $given }” was given.
settings-short-key = { $of ->
    [one] The key
   *[other] Key { $number } of { $of }
} in LEDGERSTONE_SIGNING_KEYS is shorter than { $least } letters. A comma stands between one key and the next, so no key can hold one.
settings-maker-key = LEDGERSTONE_MAKER_KEY has at least { $least } characters, so that nobody guesses it.
not-started = The service was not started.
not-started-profile = The workshop’s file has faults; nothing was started.

strips-none = The table has no strips. Its first row is: { $columns }.
strips-number = Row { $row }: enter a number in the column { $column }.
strips-report = { $count ->
    [one] { $count } strip broke
   *[other] { $count } strips broke
} at { $mean } on average (scatter { $scatter }). Counted on, before the safety factor: { $counted }.{ $few ->
    [yes] { " " }Six strips or more make that margin smaller.
   *[no] { "" }
}
strips-write = Write in the profile:
strips-cautions = Before the next strip: wear eye protection, because a breaking strip throws chips. Keep feet out from under the strip and the bucket, wear toe-capped boots, and put a board or sand 20 mm under the bucket so that it cannot fall far. Add the water slowly from beside it, never from underneath.
strips-unlike = The strips cannot be worked out together: every width, thickness, span and age is above 0, and ages and thicknesses differ by a tenth at most.

mailbox-line = { $uid }: { $outcome }
mailbox-outcome = { $what ->
    [gone] gone
    [done] done before
    [earlier] from before the first run
    [own] no draft, our own
    [list] no draft, a list's
    [automatic] no draft, automatic
    [none] no enquiry
    [answered] answered before
    [asking] a draft that only asks
   *[draft] a draft
}
mailbox-in-place = { $draft }, in place of the letter
mailbox-in-place-of-day = { $draft }, in place of the letter of { $day }
mailbox-not-answered = not answered: { $why }
mailbox-our-fault = a fault of ours ({ $kind })
mailbox-again = { $why } It is tried again in { $seconds } s.
mailbox-no-table = The profile has no table [mailbox]. Write there which mailbox drafts are put into.
mailbox-no-password = Set { $variable } to the mailbox's password.
mailbox-refused = The mail server refused the user, or the password in { $variable }. Many providers take no everyday password here: make an app password in the account's settings, and put that there.
mailbox-unreachable = The mail server could not be reached, or stopped answering ({ $reason }).
mailbox-no-folder = The mail server has no folder named in [mailbox] as { $key }. Check its name.
mailbox-no-drafts = The mail server does not say which folder is for drafts. Name it in [mailbox] as drafts.
mailbox-replaced = The folder was replaced while its messages were read.
mailbox-taken = Another run is using this mailbox. This one has stopped.
mailbox-state-unreadable = The file { $file } is not one of ours, so it is not clear what was done. Move it away; the last seven days are then looked through again, and no draft is written twice.
