# Why a request is refused: what each kind of problem (RFC 9457) is called, and what it says.

problem-title = { $kind ->
    [cannot-do-as-asked] We can't make it as asked
    [too-intricate] Too intricate to work out at once
    [not-understood] We could not understand that
    [key-needed] The maker's key is needed
    [not-found] Nothing is here
    [method-not-offered] Not offered here
    [not-acceptable] Not in that form
    [too-slow] That took too long
    [template-fault] The workshop's own template has a fault
    [length-needed] Say how long it is
    [too-large] Too large
    [address-too-long] The address is too long
    [not-json-type] Send JSON
    [expectation-not-met] Leave out Expect
    [too-many] Too many at once
    [headers-too-large] Too many headers
    [coding-not-read] Not packed like that
    [no-answer] No answer
    [busy] Busy
    [no-answer-in-time] No answer in time
   *[our-fault] Something of ours failed
}
problem-usual = { $kind ->
    [cannot-do-as-asked] The findings say what to change before it can be made.
    [too-intricate] Split the order, or give its slabs fewer openings, corners or rests.
    [not-understood] The request could not be read.
    [key-needed] Send the maker's key as a bearer token.
    [not-found] Nothing is at this address.
    [method-not-offered] This address does not take that method.
    [not-acceptable] Ask for application/json.
    [too-slow] The request did not arrive whole in time.
    [template-fault] Mend the template in the profile's folder.
    [length-needed] Send the body's length.
    [too-large] An order is at most 64 kB.
    [address-too-long] Use a shorter link.
    [not-json-type] Send the body as application/json, in UTF-8, not packed.
    [expectation-not-met] Send the request without that Expect.
    [too-many] Wait a moment and ask again.
    [headers-too-large] Send fewer or shorter headers.
    [coding-not-read] Send the body as it is.
    [no-answer] The service is starting, or away. Ask again in a moment.
    [busy] Wait a moment and ask again.
    [no-answer-in-time] That took longer than we wait for. Ask again in a moment.
   *[our-fault] It is noted; ask again, or write to us.
}

things-to-change = { $count ->
    [one] { $count } thing to change before it can be made.
   *[other] { $count } things to change before it can be made.
}
things-not-understood = { $count } things could not be understood.
order-too-intricate = This order is too intricate to work out at once; { $slabs ->
    [one] give it fewer openings, corners or rests
   *[other] split it
}.
lane-taken = This order takes long to work out, and so does another. Ask again in { $seconds } s.
wrong-keys = Too many keys that are not the maker's came from this address. Try again in { $seconds } s.
asked-too-often = You asked more often than this service answers one caller. Ask again in { $seconds } s.
asked-by-too-many = More is being asked than can be answered at once. Ask again in { $seconds } s.
asked-one-at-a-time = Another order of yours is being worked out, and others wait. Ask again in { $seconds } s.
requested-too-often = That is a lot of requests at once. Ask again in { $seconds } s.
requests-not-taken = This workshop takes no requests here. Write to { $email }.
mail-server-away = Our mail server is away, so your request was not sent, and nothing of it was kept. Write to { $email } or ring { $telephone }, and name the quote's reference.
template-cannot-be-filled = The template { $template } cannot be filled in: { $why }
link-not-ours = This link is not one of ours.
link-dated-ahead = This link is dated after our clock's day. Open it again tomorrow.
not-that-type = Ask for { $type }.
no-such-slab-drawn = This order has no such slab.
no-such-drawing = There is no drawing of that name.
no-such-part = This slab has no such { $part ->
    [corner] corner
   *[cutout] cut-out
}.
picture-width = Give the picture's width as a whole number of pixels, from { $least } to { $most }.
paper-of-drawing = Choose the paper: a4, a3, letter or tabloid.
too-many-sheets = It would take { $sheets } sheets of { $paper }. { $paper ->
    [a4] Ask for it on a3.
    [letter] Ask for it on tabloid.
   *[other] It is too large to print at true size.
}
no-such-sheet = The sheets are { $kinds }.

# Faults of a whole request, and of what no field can see by itself.

order-not-object = An order is a JSON object with its slabs.
not-as-described = { $why }
no-heated-tent = We have no heated tent here. Leave “heated_curing” out, or write false.
no-such-slab = There is no slab { $number } in this order.
no-such-side = This slab has no side "{ $value }"{ nearest }
day-not-written-so = { NAME($field, start: "yes") } is written like "2027-03-25".
shade-by-name-or-match = Give the shade by its name, or a colour to match, and not both.
colour-not-written-so = The colour to match is written like "#5b5d5a".
size-from-needs-rectangle = Give the finished size of a round or polygon slab; only a rectangle or an L can be worked out from walls or units.
slab-smaller-than-gaps = The slab is smaller than the gaps that its fitting needs.
notch-too-large = The notch is as { $way ->
    [long] long
   *[wide] wide
} as the slab itself.
corner-radius-too-large = The corner radius is larger than the sides beside it can hold.
cutout-radius-too-large = The corner radius is larger than the cut-out's sides can hold.
point-repeats-first = Leave out the last point: it repeats the first.
point-near-the-one-before = This point stands within { $least } of the one before it.
point-near-a-side = This point stands within { $least } of another side. Move it away.
outline-crosses-itself = The outline crosses or touches itself at { $x } and { $y } (x and y). Move a point.
outline-without-area = The outline encloses no area.
edge-size-missing = Enter the size of the { $profile ->
    [bevel] bevel
   *[round] round
} edge.
ledge-without-length = The ledge starts and ends at the same place.
least-across = { least-of } has to be at least { $least } across; this is { $measured }. Check its unit.
least-across-everywhere = { least-of } has to be at least { $least } across in every direction. Check its unit.
least-of = { $what ->
    [slab] The slab
    [notch] The notch
    [cutout] The cut-out
   *[relief] The relief
}
least-beside-notch = Beside the notch the slab has to be at least { $least } wide. Check its unit.
corner-too-sharp = The corner at this point is sharper than { $least }°. Cut it off with one more point.
amount-not-written-so = { NAME($field, start: "yes") } is written like "40.00", or "-25.00" to take it off.
margin-not-written-so = { NAME($field, start: "yes") } is a percentage from 0 to 500, written like "35".
for-the-maker-alone = Only the workshop sets this, with its key.
token-has-its-terms = This offer is made already. Give its order in place of its token, and set this anew.
valid-until-out-of-reach = The last day of an offer lies from { $first } to { $last }.
adjustments-below-nought = With this the total would be below nought. Take off less.
ask-not-object = Send a JSON object with a quote's token, or an order.
token-or-order = Give a quote's token, or an order, and not both.
no-quote-to-write-of = This is no quote of ours. Give the token of a quote, or of its link.
no-deposit-of-trial = While prices, hours, days, areas, shades or lifts of your file are invented every offer is a trial, so no deposit is asked for. “Your workshop” lists what is left.
no-quote-to-ask-for = This is no quote of ours. Ask for a price again, and send that.
no-quote-to-change = The earlier quote is none of ours. Leave “since” out, or give a quote's own token.
quote-not-understood-now = This quote is no longer understood: { $gone }
request-not-object = A request is a JSON object.
enquiry-not-object = Send a JSON object with the message.
message-empty = The message is empty.
json-empty = Send the order as JSON; the body is empty.
json-not-utf-8 = Send the order as JSON in UTF-8.
json-broken = { $why ->
    [unknown] The body stops being JSON at line { $line }, column { $column }.
    [value] The body is not JSON: a value is missing at line { $line }, column { $column }.
    [key] The body is not JSON: a key in double quotation marks is missing at line { $line }, column { $column }.
    [trailing-comma] The body is not JSON: a comma has nothing after it at line { $line }, column { $column }.
    [comma] The body is not JSON: a comma or a closing bracket is missing at line { $line }, column { $column }.
    [colon] The body is not JSON: a colon is missing at line { $line }, column { $column }.
    [after-the-end] The body is not JSON: something stands after the end of the document at line { $line }, column { $column }.
    [unclosed-text] The body is not JSON: a text without its closing quotation mark begins at line { $line }, column { $column }.
    [control-character] The body is not JSON: a text holds a line break or another control character at line { $line }, column { $column }.
    [escape] The body is not JSON: a backslash begins no escape that JSON knows at line { $line }, column { $column }.
   *[byte-order-mark] The body is not JSON: a byte order mark stands at line { $line }, column { $column }.
}
json-too-deep = The body is nested deeper than { $levels } levels.
json-not-a-number = { $name } is not a number; give a figure.
json-number-too-large = { $number } is too large a number.
json-key-unreadable = A key is longer than { $longest } characters or holds some that do not print.
json-key-twice = The key "{ $key }" stands twice in one object; give it once.
jobs-not-toml = The file does not read as TOML: look at line { $line }.
link-too-long = This order is too long for a link. Save the order as a file and send that; this quote’s token opens it again.
jobs-without-table = Write one [[jobs]] table for each job done.
job-key-unknown = A job has { $known }.
job-day-missing = Say the day it was ordered, like 2026-03-02.
job-order-missing = Give the order as a table, or its JSON file's name.
job-figure-wrong = { $key } is a number above nought.
job-steps-not-table = List the hours by step as a table, each step with its hours.
job-step-hours-wrong = Hours are a number, nought or more.
job-step-unknown = This job has no such step. It has { $known }.
form-unreadable = The form could not be read: send at most { $most } fields, as text in UTF-8.
