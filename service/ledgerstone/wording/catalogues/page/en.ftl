# All that the customers' page says. A message's attribute is one sentence or label: the page asks
# for "slabs.added". `web/messages.en.js` is made from this file:
# `python -m ledgerstone.contract messages.en`.

page =
    .title = What would your slab cost?
    .lead = Price, day and weight follow as you type, and so does anything that can’t be made as asked.
    .invented = { $name } is an invented workshop, for show: its prices, people and places are nobody’s.
    .skip = Skip to the answer
    .made-by = { $name }, { $town }
    .made-up-by = { $name }, { $town } (invented)
    .no-script = JavaScript is off here: fill in what you know and press “Ask for the price”.
    .reach = Ask us yourself: write to { $email } or call { $telephone }.
    .write-to = Write to
    .or-call = or call

history =
    .undo = Undo
    .redo = Redo
    .name = Changes
    .undone = Undone.
    .redone = Done again.

draft =
    .kept = What you enter is kept in this browser, on this device only.
    .clear = Clear it and start again
    .cleared = Cleared. This is the starting slab again.
    .restored = This is where you left off.
    .not-kept = This browser does not keep what you enter: it is gone when you close the page.

slabs =
    .title = Your slabs
    .one = Slab { $number }
    .called = Slab { $number }: { $label }
    .add = Add another slab
    .copy = Copy this slab
    .remove = Remove this slab
    .added = Slab { $number } added.
    .removed = Slab removed. Undo brings it back.
    .more = Another slab, and joins
    .count = { $n } slabs

joins =
    .title = Where slabs meet
    .hint = A long run or an L is often two slabs that meet. Say which sides do.
    .one = Join { $number }
    .add = Add a join

join =
    .one = This slab
    .side = Its side
    .other = meets this slab
    .other-side = at its side
    .gap = Gap between them

shape =
    .title = Sizes

label =
    .label = Name for this slab
    .more = Kind, number and name

use =
    .label = What it is
    .worktop = Worktop
    .upstand = Upstand
    .splashback = Splashback
    .end-panel = End panel
    .shelf = Shelf
    .table = Table top
    .hearth = Hearth
    .sill = Sill

quantity =
    .label = How many alike

kind =
    .label = Shape
    .rectangle = Rectangle
    .l-shape = L-shape
    .round = Round
    .polygon = Straight sides

unit =
    .label = You measure in
    .hint = A number alone is read in this unit. You can also type the unit yourself: 1.45 m, 22 1/16 in or 4' 9".
    .mm = mm
    .cm = cm
    .m = m
    .in = inches

length =
    .in = in
    .ft = ft

size_from =
    .label = What did you measure?
    .finished = The slab itself
    .between-walls = The space between walls
    .over-units = The units it goes on
    .template-to-follow = Roughly; a template will follow
    .finished-size = The finished slab is then { $length } × { $width }.

start =
    .title = Start from
    .blank = Plain slab
    .basin = Basin top
    .sink = Kitchen sink
    .shelf = Shelf
    .hob = Hob run
    .table = Round table
    .l-left = L, corner left
    .l-right = L, corner right
    .hearth = Hearth
    .outdoor = Outdoor top, grill
    .done = { $name }: it is on the sheet. Undo brings the former slab back.

place =
    .title = Place it by its edges, or on a unit
    .left = From its edge to the left end
    .right = From its edge to the right end
    .front = From its edge to the front
    .back = From its edge to the back
    .on-unit = Centre it on
    .label = Where it will live
    .indoors = Indoors
    .wet-room = In a wet room
    .outdoors = Outdoors

outline =
    .length = Length
    .length-hint = Left to right
    .width = Width
    .width-hint = Front to back
    .diameter = Diameter
    .points = Corners, in order round the slab
    .points-hint = Each corner’s distance from the left end and the front. Start at the front left.
    .add-point = Add a corner
    .point = Corner { $number }

notch =
    .title = The part an L leaves out
    .corner = Which corner is left out, seen from above
    .length = Its length, left to right
    .width = Its width, front to back

corner =
    .front-left = Front left
    .front-right = Front right
    .back-right = Back right
    .back-left = Back left

corner_radius =
    .label = Rounded corners
    .all = Radius of every corner

corner_radii =
    .title = A different radius at one corner

thickness =
    .label = Thickness
    .usual = Usual thicknesses
    .other = Another

openings =
    .title = Openings
    .add = Add an opening
    .none = No openings yet.
    .removed = { $label } removed. Undo brings it back.
    .other = Another opening or drainer

add =
    .basin = Basin
    .sink = Sink
    .tap = Tap
    .hob = Hob
    .round = Round opening
    .rectangle = Rectangle
    .slot = Slot
    .drainer = Drainer
    .recess = Recess
    .rebate = Rebate

cutout =
    .label = Name
    .diameter = Diameter
    .length = Length, left to right
    .width = Width, front to back
    .x = Centre from the left end
    .y = Centre from the front
    .rim = How it is fitted
    .rim-shown = Undermount: its rim is seen, and finished
    .rim-covered = Inset: a flange covers the rim
    .more = More about this opening
    .corner_radius = Corner radius
    .turn_degrees = Turned by, in degrees
    .turn-hint = Anticlockwise seen from above
    .open_to = Open to a side
    .not-open = Closed all round
    .heat = A hot appliance sits in it
    .size_from = Its size
    .measured = is measured
    .template-to-follow = from a template
    .remove = Remove this opening
    .points = Corners of the opening

relief =
    .outline = Its shape
    .x = From the left end to its left edge
    .y = From the front to its front edge
    .depth = Depth
    .grooves = Number of grooves
    .fall = Fall along the grooves

sketch =
    .name = Your slab from above
    .hint = Drag an opening or a dot, or press it and use its buttons or the arrow keys. Numbers open notes.
    .front = front { $length }
    .opening = { $name }: centre { $x } from the left, { $y } from the front
    .handle-x = { $name }: { $x }
    .handle-y = { $name }: { $y }
    .handle-xy = { $name }: { $x } from the left, { $y } from the front
    .pin = What to know, number { $number }: { $says }

moves =
    .name = Move { $name }
    .left = Left { $step }
    .right = Right { $step }
    .front = Forward { $step }
    .back = Back { $step }
    .less = { $step } less
    .more = { $step } more
    .centre-x = Centre left to right
    .centre-y = Centre front to back
    .field = Exact sizes
    .remove = Remove

edges =
    .title = Edges
    .hint = Every edge is square, its sharp corner taken off, unless you say otherwise.

edge =
    .profile = Profile
    .size = Size
    .more = Drip groove or drop
    .drip = Drip groove underneath
    .drop = Drop: how far it comes down
    .mitred = Mitred at the corner

profile =
    .square = Square
    .bevel = Bevelled
    .round = Rounded
    .wall = At a wall, unseen

side =
    .front = Front
    .back = Back
    .left = Left end
    .right = Right end
    .notch-x = Inside, lengthwise
    .notch-y = Inside, crosswise
    .rim = All round
    .number = Side { $number }

look =
    .title = Look

arms =
    .way = Which way round
    .title = The L, as you measure it
    .hint = Each arm along its wall, from the corner. It is made in two pieces that meet in a joint.
    .back = Back arm
    .deep = Back arm’s depth
    .side = Side arm
    .wide = Side arm’s depth
    .one-piece = It can be cast in one piece: make it so

shade =
    .label = Shade
    .hint = Screens differ: ask for a cast sample.
    .match = Another colour
    .match-hint = Its colour code, like #5b5d5a
    .picker = Or pick it
    .ask = Another colour, in your own words
    .wanted = Colour wanted: { $colour }

surface =
    .label = Surface
    .as-cast = As cast
    .honed = Honed
    .polished = Polished

sealer =
    .label = Sealer

rests =
    .title = Where does it go?
    .label = It rests on
    .unknown = I don’t know yet
    .units = Base units
    .frame = A frame
    .ends = Its two ends
    .legs = Legs
    .ledges = Trestles, ledges
    .pedestal = A pedestal
    .full = A solid base
    .fixed = It will be fixed down

units =
    .title = Units, left to right
    .one = Unit { $number }
    .width = Width
    .for = What it is for
    .base = Cupboard
    .basin = Basin
    .hob = Hob
    .gap = A gap
    .wall-left = A wall at the left end
    .wall-right = A wall at the right end
    .add = Add a unit

overhang =
    .title = Overhang past the units

frame =
    .sides = Sides that the frame carries
    .width = Width of the frame’s top

ends =
    .depth = Depth of the bearing

pedestal =
    .plate = Width of the pedestal’s plate

legs =
    .title = Legs
    .one = Leg { $number }
    .pad = Width of a leg’s pad
    .add = Add a leg

ledges =
    .title = Ledges
    .one = Ledge { $number }
    .start-x = Starts: from the left end
    .start-y = Starts: from the front
    .end-x = Ends: from the left end
    .end-y = Ends: from the front
    .depth = Depth of the ledge
    .add = Add a ledge

point =
    .x = From the left end
    .y = From the front

row =
    .remove = Remove

delivery =
    .title = Getting it to you
    .label = How it comes to you
    .collect = I collect it
    .pallet = On a pallet, to the kerb
    .own-van = By our own van
    .fitted = Delivered and fitted
    .postcode = Postcode
    .way-in = The way in
    .way-in-hint = A slab is carried on edge. Say what you know; we ask about the rest.
    .doorway = Narrowest doorway, clear width
    .steps = Steps up or down
    .floor = Floor
    .floor-hint = 0 is the ground floor
    .people = People who will be there to carry
    .ceiling = Lowest ceiling
    .turn = A tight turn
    .turn-from = Width before the turn
    .turn-into = Width after the turn
    .lift = A lift
    .lift-width = Width inside
    .lift-depth = Depth inside
    .lift-height = Height inside
    .lift-door = Door, clear width
    .lift-rated = Rated load in kg
    .lift-rated-lb = Rated load in lb

needed_by =
    .label = Needed by

form =
    .check = See price and notes
    .error = Error:
    .problem = There is a problem
    .error-title = Error: { $title }
    .send = Ask for the price

answer =
    .title = The answer
    .starting = Fetching what the workshop offers.
    .asking = Working it out…
    .slow = This takes longer than usual. Nothing is lost.
    .stale = For the order before your last change
    .partial = What would put it right could not be looked for just now.
    .no-price = No price yet
    .plus-delivery = plus delivery
    .no-price-why = What to change for one is below.
    .unread =
        { $n ->
            [one] { $n } entry can’t be read yet.
           *[other] { $n } entries can’t be read yet.
        }
    .price = Price
    .with-tax = with { $percent }% { $name }
    .no-tax = no tax is charged
    .has-collect = without delivery
    .has-pallet = with delivery to the kerb
    .has-own-van = with delivery by our van
    .has-fitted = with delivery and fitting
    .net = { $net } and { $tax } { $name }
    .deposit = Deposit { $deposit }
    .day = Day
    .arrives = With you by { $day }
    .between = Between { $earliest } and { $latest }
    .collect = Ready to collect on { $day }
    .glance-arrives = with you by { $day }
    .glance-collect = collect { $day }
    .if-ordered = If ordered by { $day }
    .weight = Weight
    .weighs = { $label }: { $about }
    .packed = { $weight } packed
    .size = Finished size { $length } × { $width } × { $thickness }
    .across = Finished size { $length } across, { $thickness } thick
    .standing = How firm it is
    .estimate = Estimate
    .quotation = Quotation
    .valid = its price holds until { $day }
    .rates = its rates hold until { $day }
    .lines = What the price is made of
    .stages = How the days are spent
    .amount = Amount
    .what = What
    .from-to = { $from } to { $to }
    .when = When
    .before-tax = Before tax
    .tax = tax
    .total = Total
    .depends = Conditions
    .reference = Reference { $reference }
    .copy = Copy the link to this quote
    .copied = The link is copied.
    .not-copied = The link could not be copied here. It is: { $link }
    .print = Print
    .copy-text = Copy it as text
    .text-copied = The quote is copied as text.
    .tax-line = { $name } { $percent }%
    .announce = { $total } with { $name }. { $day }. { $findings }
    .announce-no-tax = { $total }. { $day }. { $findings }
    .announce-stopped =
        { $n ->
            [one] No price yet: { $n } thing to change.
           *[other] No price yet: { $n } things to change.
        }
    .last-answer = The last answer we had, for { $what }: not for what stands in the form now.

weeks =
    .alt = From { $from } to { $to }. { $stages }.
    .one = { $name } on { $from }
    .span = { $name } { $from } to { $to }

keep =
    .title = Keep this quote
    .link = Its reference is { $reference }. Its link opens it again as it is now, until { $day }.
    .no-link = Its reference is { $reference }. It is too detailed for a link: copy it as text.
    .text-price = Price: { $total }
    .call = Call { $telephone }
    .subject = Quote { $reference }

request =
    .hint = We send the quote and what you write here to the workshop, and keep nothing of it.
    .name = Your name
    .reach = Your email address or telephone number
    .note = Anything else we should know (optional)
    .send = Send it
    .failed = It could not be sent just now. Write to { $email } instead: the link below has it all.

findings =
    .before-order = Before you order ({ $n })
    .on-delivery = When it comes ({ $n })
    .in-use = Living with it ({ $n })
    .stopped = What to change
    .to-know = What to know
    .count =
        { $n ->
            [one] { $n } thing to know.
           *[other] { $n } things to know.
        }
    .change-count =
        { $n ->
            [one] { $n } thing to change
           *[other] { $n } things to change
        }
    .stops = Can’t be made so
    .asked = Still needed
    .caution = Take care
    .note = Note
    .go = Go to { $name }
    .not-checked = Not checked until that is settled: { $stages }.

stage =
    .shape = the shape
    .strength = its strength
    .promise = delivery and the day

remedy =
    .fix-all = Make all these changes
    .nearest = The nearest we can make
    .ways = Ways to save
    .then = It is then { $price }
    .more = { $amount } more
    .less = { $amount } less
    .same = The price stays
    .lighter = { $weight } lighter
    .sooner =
        { $n ->
            [one] { $n } day sooner
           *[other] { $n } days sooner
        }
    .done = Changed. Undo brings it back.
    .stale = The order has changed since, so this no longer fits. A new answer is on its way.
    .ghost = The plan, with what would change
    .unpriced = What it then costs shows once the rest is settled

drawing =
    .name = Drawing
    .view = As it will look
    .plan = Plan
    .assembled = All together
    .assembled-alt = All slabs together, from above.
    .true-size = An opening at true size, to print
    .view-alt = As it will look: { $says }
    .plan-alt = Plan from above: { $says }
    .missing = The drawing can’t be shown just now.

trouble =
    .down = The pricing service can’t be reached.
    .busy = The pricing service is busy.
    .failed = The pricing service failed on this.
    .missing = The pricing service does not answer here.
    .kept = What you entered is kept.
    .retry = Trying again in { $n } s.
    .now = Try now
    .well = The pricing service answers again.

quote =
    .opening = Opening the quote.
    .missing = That quote’s link can’t be opened here. This is your own draft instead.
    .opened = This is quote { $reference }, offered on { $day }. Undo brings your own draft back.
    .title = Quote { $reference }, as it was offered
    .price = { $total } with { $tax } { $name }
    .ready = Ready on { $day }, if ordered by { $by }
    .deposit = Deposit
    .today-same = Today it would be the same.
    .today = Today it would be { $total }, ready on { $day }. What makes that up is below.
    .today-stopped = Today it can’t be made as asked. What to change is below.
    .today-gone = It can’t be asked for today as it was. Choose again in the form.
    .changes = What differs from { $reference }
    .later =
        { $n ->
            [one] Ready { $n } day later
           *[other] Ready { $n } days later
        }
    .sooner =
        { $n ->
            [one] Ready { $n } day sooner
           *[other] Ready { $n } days sooner
        }
    .close = Close this quote

at =
    .use = what it is
    .outline = the outline
    .outline-length = length
    .outline-width = width
    .outline-diameter = diameter
    .outline-notch = corner inside the L
    .outline-corner_radius = corner radius
    .thickness = thickness
    .shade = shade
    .finish = the finish
    .finish-surface = surface
    .finish-sealer = sealer
    .place = where it will live
    .rests = what it rests on
    .cutouts = the openings
    .edges = the edges
    .delivery = delivery
    .delivery-kind = how it comes to you
    .delivery-postcode = postcode
    .needed_by = needed by
    .corner_radius = corner radius
    .depth = depth
    .opening = opening { $number }
    .relief = relief { $number }
    .joins = the joins
    .slab = slab { $number }
    .the-slab = the slab
    .of = { $thing }, { $part }
    .order = the order

what =
    .title = What is it?

extras =
    .title = Extras
    .services = A day, a sample, measuring

bar =
    .name = At a glance
    .picture = See the picture large
    .last = Last answer: { $answer }
    .rests-open = supports not checked
    .last-for = For { $what }; again in { $n } s
    .again = Again in { $n } s

ask =
    .make = Ask us to make this
    .letter = I would like you to make this. My name and telephone number are:
    .opened = Now send the letter to { $email } that has opened. Where none did, copy what is below.
    .copy = Your copy of what you asked for

large =
    .closer = Closer
    .further = Further
    .close = Close
