# What of a request was not understood. $field is the part of the request that it is about, $value
# what was sent for it, shortened.

field-missing = { $verb ->
    [choose] Choose { NAME($field) }.
    [enter] Enter { NAME($field) }.
   *[say] Say { NAME($field) }.
}
field-not-yes-or-no = Say true or false for { NAME($field) }.
field-fault = { NAME($field, start: "yes") }: { $fault }
field-unknown = "{ $value }" is not a part of { NAME($field) }{ nearest }
field-cannot-be = { NAME($field, start: "yes") } cannot be "{ $value }"{ nearest }
nearest = { $near ->
    [guess] ; did you mean "{ $guess }"?
    [known] . Known here: { $known }.
   *[none] .
}
field-written-as-object = { NAME($field, start: "yes") } is written as a JSON object.
field-not-object = { NAME($field, start: "yes") } must be a JSON object.
field-not-object-with-kind = { NAME($field, start: "yes") } must be a JSON object with a kind.
field-not-object-by-side = { NAME($field, start: "yes") } must be a JSON object, one member for each side.
field-not-list = { NAME($field, start: "yes") } must be a JSON list.
field-kind-missing = Say the kind of { NAME($field) }{ nearest }
field-kind-cannot-be = The kind of { NAME($field) } cannot be "{ $value }"{ nearest }
field-too-many = { NAME($field, start: "yes") } must number between { $least } and { $most }; there are { $count }.
field-not-side = "{ $value }" is not a side or corner that { NAME($field) } can name.
length-out-of-range = { NAME($field, start: "yes") } must be { $low ->
    [between] between { $least } and { $most }
    [at-least] at least { $least } and at most { $most }
   *[more-than] more than { $least } and at most { $most }
}; this is { $value }.
text-not-text = { NAME($field, start: "yes") } must be text.
text-too-long = { NAME($field, start: "yes") } must be { $longest } characters or fewer.
text-with-hidden = { NAME($field, start: "yes") } must not include hidden or direction-changing characters.
text-with-stacked = { NAME($field, start: "yes") } must not stack more than { $most } marks on one letter.
number-not-number = { NAME($field, start: "yes") } must be { $kind ->
    [whole] a whole number
   *[any] a number
}, like { $like }.
number-out-of-range = { NAME($field, start: "yes") } must be between { $least } and { $most }.
yes-or-no = { NAME($field, start: "yes") } must be true or false.

field = { $field ->
    [a-placing] what is to be placed
    [free-cut-outs] the openings to be placed
    [free-reliefs] the reliefs to be placed
    [free-rests] whether the rests are laid out
    [number-in-the-slab] the number in the slab
    [piece] the piece
    [start] the start
    [unit] the unit
    [what-is-free] what is free
    [a-delivery] a delivery
    [a-drainer] a drainer
    [a-drop] a drop
    [a-finish] a finish
    [a-frame] a frame
    [a-full-bed] a full bed
    [a-join] a join
    [a-join-side] a join's side
    [a-ledge] a ledge
    [a-leg] a leg
    [a-lift] a lift
    [a-notch] a notch
    [a-point] a point
    [a-polygon] a polygon
    [a-rectangle] a rectangle
    [a-relief] a relief
    [a-reply] a reply
    [a-request] a request
    [a-round-slab] a round slab
    [a-sample-tile] a sample tile
    [a-shade] a shade
    [a-side] a side
    [a-slab] a slab
    [a-turn] a turn
    [a-unit] a unit
    [an-edge] an edge
    [an-email-address-or-a-telephone-number] an email address or a telephone number
    [an-enquiry] an enquiry
    [an-l-shape] an L-shape
    [an-order] an order
    [ceiling-height] the ceiling's height
    [colour-to-match] the colour to match
    [coming-to-measure] coming to measure
    [corner-radii] the corner radii
    [corner-radius] the corner radius
    [customer-name] the customer's name
    [cut-out] the cut-out
    [cut-out-centre] the cut-out's centre
    [cut-out-corner-radius] the cut-out's corner radius
    [cut-out-label] the cut-out's label
    [cut-outs] the cut-outs
    [delivery] the delivery
    [depth-of-the-bearing] the depth of the bearing
    [doorway-clear-width] the doorway's clear width
    [drainer-fall] the drainer's fall
    [drip] drip
    [drop] the drop
    [drop-depth] the drop's depth
    [earlier-quote-token] the earlier quote's token
    [edge] the edge
    [edge-profile] the edge's profile
    [edge-size] the edge's size
    [edges] the edges
    [finish] the finish
    [fixed] fixed
    [floor] the floor
    [frame-sides] the frame's sides
    [frame-width] the frame's width
    [heat] heat
    [heated-curing] heated curing
    [how-many-people-will-carry] how many people will carry
    [its-place] its place
    [join-gap] the join's gap
    [joins] the joins
    [kind-of-delivery] the kind of delivery
    [l-notch] the L's notch
    [language] the language
    [ledge-depth] the ledge's depth
    [ledges] the ledges
    [leg-pad] the leg's pad
    [legs] the legs
    [lift] the lift
    [lift-depth] the lift's depth
    [lift-door] the lift's door
    [lift-height] the lift's height
    [lift-rated-load-in-kg] the lift's rated load in kg
    [lift-width] the lift's width
    [mitred] mitred
    [notch-corner] the notch's corner
    [notch-length] the notch's length
    [notch-width] the notch's width
    [note] the note
    [number-of-grooves] the number of grooves
    [number-of-steps] the number of steps
    [one-side-of-the-join] one side of the join
    [other-side-of-the-join] the other side of the join
    [outline-points] the outline's points
    [overhang] the overhang
    [pedestal-centre] the middle of the pedestal
    [pedestal-plate] the plate of the pedestal
    [place] the place
    [postcode] the postcode
    [quantity] the quantity
    [question] the question
    [adjustment] an adjustment
    [adjustment-amount] the adjustment's amount
    [adjustment-text] what the adjustment is for
    [adjustments] the adjustments
    [an-adjustment] an adjustment
    [margin] the markup
    [the-makers-terms] what the workshop sets
    [deposit-step] the deposit's step
    [the-message-answered] the message that is answered
    [its-sender] its sender's address
    [its-subject] its subject
    [its-identifier] its identifier
    [its-references] its references
    [order-asked-for] the order that the customer asked for
    [valid-until] the last day of the offer
    [quote-token] the quote's token
    [a-profile-change] a change
    [profile-changes] the changes
    [profile-operation] the kind of change
    [profile-pointer] where it is changed
    [profile-value] the value
    [profile-values] the values
    [profile-version] the file's version
    [profile-save] whether to write it
    [profile-described] whether to describe it
    [radius] the radius
    [rails] the rails
    [relief] the relief
    [relief-depth] the relief's depth
    [relief-label] the relief's label
    [relief-outline] the relief's outline
    [reliefs] the reliefs
    [rests-ends] ends
    [rests-ledges] ledges
    [rests-legs] legs
    [rests-pedestal] a pedestal
    [rests-units] units
    [rim] the rim
    [sealer] the sealer
    [shade] the shade
    [shade-name] the shade's name
    [side] the side
    [side-the-cut-out-is-open-to] the side the cut-out is open to
    [slab-diameter] the slab's diameter
    [slab-label] the slab's label
    [slab-length] the slab's length
    [slab-number] the slab's number (from 0)
    [slab-outline] the slab's outline
    [slab-thickness] the slab's thickness
    [slab-width] the slab's width
    [slabs] the slabs
    [standing] the standing
    [surface] the surface
    [tone] the tone
    [turn-in-degrees] the turn in degrees
    [turn-on-the-way-in] the turn on the way in
    [unit-width] the unit's width
    [units-assumed] whether the units are assumed
    [units] the units
    [use] the use
    [ways] ways
    [what-is-asked] what is asked
    [what-is-missing] what is missing
    [what-the-slab-rests-on] what the slab rests on
    [what-the-unit-is-for] what the unit is for
    [what-was-assumed] what was assumed
    [what-was-taken] what was taken
    [where-the-ledge-ends] where the ledge ends
    [where-the-ledge-starts] where the ledge starts
    [where-the-relief-outline-is-set-down] where the relief's outline is set down
    [where-the-size-came-from] where the size came from
    [width-after-the-turn] the width after the turn
    [width-before-the-turn] the width before the turn
    [x] x
    [y] y
    [your-name] your name
    [order] the order
    [message] the message
    [a-circle-cut-out] a round cut-out
    [a-rectangle-cut-out] a rectangular cut-out
    [a-slot-cut-out] a slot
    [a-polygon-cut-out] a cut-out polygon
    [cut-out-width] the cut-out's width
    [cut-out-diameter] the cut-out's diameter
    [cut-out-points] the cut-out's points
    [cut-out-length] the cut-out's length
    [needed-by-day] the needed-by day
   *[this] this
}
