# What is said and asked of an enquiry: the draft order, and what was taken for it.
# { $slab } and { $opening } are names as “enquiry-slab” and “enquiry-name” give them.

enquiry-length = How long is { $slab }?
enquiry-width = How deep is { $slab }, from front to back?
enquiry-diameter = What is the diameter of { $slab }?
enquiry-outline = What shape and size is { $slab }?
enquiry-thickness = How thick would you like { $slab }?
enquiry-corner = On which side is the shorter leg of the L, seen from the front?
enquiry-legs = How deep are the two legs of the L?
enquiry-size = What size is the cut-out for { $opening }?
enquiry-place = How far is the middle of { $opening } from the left end and from the front?
enquiry-x = How far is the middle of { $opening } from the left end?
enquiry-y = How far is the middle of { $opening } from the front?
enquiry-postcode = What is the postcode for the delivery?
enquiry-steps = How many steps is it up or down in all (“{ $said }”)?
enquiry-some-steps = “{ $said }” does not say how many steps.
enquiry-plate = How wide is the plate of the pedestal that it lies on?
enquiry-units = How wide is each unit that it lies on, from left to right?
enquiry-two = { $what } is given as { $readings }.
enquiry-impossible = { $what }, as read, does not lie on the slab: { $readings }.
enquiry-about = { $what } is given as about { $readings }.
enquiry-ask-two = { $what } is given as { $readings }: which is it?
enquiry-ask-impossible = { $what }, as we read it ({ $readings }), does not lie on the slab: what is it?
enquiry-ask-about = { $what } is given as about { $readings }: what is it to be?
enquiry-ask-delivery = Shall we deliver it, or will you collect it?
enquiry-ask-day = By which day do you need it? You wrote “{ $said }”.
enquiry-delivery = Whether it is delivered or collected is left open.
enquiry-what-length = The length of { $slab }
enquiry-what-width = The depth of { $slab }
enquiry-what-diameter = The diameter of { $slab }
enquiry-what-thickness = The thickness of { $slab }
enquiry-what-size = The size of { $opening }
enquiry-what-x = The place of { $opening } along the length
enquiry-what-y = The place of { $opening } from front to back
enquiry-took-thickness = We took it that { $slab } is { $value } thick.
enquiry-took-shade = We took it that you want our { $value }.
enquiry-took-nearest = We took our { $value } as nearest to “{ $said }”.
enquiry-took-surface = We took it that you want our usual { $surface } face.
enquiry-took-sealer = We took it that it is sealed with our usual { $value } sealer.
enquiry-took-place = We took it that { $slab } is for indoors.
enquiry-took-collect = We took it that you collect it.
enquiry-took-delivery = We took it that it is { NAME($way) }.
enquiry-took-corner = We took it that the L leaves out its { $value } corner.
enquiry-took-site = We took it that the middle of { $opening } is { $x } from the left end and { $y } from the front.
enquiry-took-size = We took it that the cut-out for { $opening } is { $value }, until we have its template.
enquiry-took-units = We took it that { NAME($slab) } lies on base units in usual widths (from the left { $units }).
enquiry-took-covered = We took it that { $opening } covers the rim of its hole.
enquiry-took-turn = We took it that the shorter leg is on the right, seen from the front.
enquiry-took-gap = We took it that the joint between the two is { $value } wide.
enquiry-took-edge = We took it that the edge is worked to { $value }.
enquiry-took-edges = We took it that its edges are square, sharp corners taken off.
enquiry-took-no-postcode = We left delivery out until we know the postcode.
enquiry-took-doubtful = { $what }: of the two we took { $value }.
enquiry-week = “{ $said }” is a week; the day is not said.
enquiry-vague = “{ $said }” names no day.
enquiry-from = “{ $said }” is { $first } or later; the day is not said.
enquiry-about-day = “{ $said }”: would that be { $day }?
enquiry-either-day = “{ $said }” is { $first } or { $second }.
enquiry-between = “{ $said }” names no day: it may be { $first } to { $last }.
enquiry-undated = “{ $said }” counts from a day that the message does not give.
enquiry-no-year = The year of “{ $said }” is not known: the message has no date.
enquiry-two-days = { $said } is { $month_first } (month first) or { $day_first } (day first).
enquiry-no-month = Of which month is “{ $said }”? The message has no date.
enquiry-easter = “{ $said }” is { $thursday } (before Good Friday) or { $saturday } (before Easter Sunday).
enquiry-no-easter = Easter of which year? The message has no date.
enquiry-slab = the { $use }
enquiry-slab-n = slab { $n } (the { $use })
enquiry-name = { $key ->
    [worktop] worktop
    [upstand] upstand
    [splashback] splashback
    [basin] basin
    [hob] hob
    [tap] tap
    [bin] waste bin
   *[other] { $what }
}
enquiry-piece = slab
enquiry-opening = the { $what }
