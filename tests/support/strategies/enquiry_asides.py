"""Families of messages that take something back, speak of others, or ask for nothing."""

from __future__ import annotations

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import sizes_of

SLAB = "/slabs/0"


@st.composite
def _sizes(draw: st.DrawFn) -> tuple[int, int, int]:
    length = draw(st.integers(180, 300)) * 10
    return length, draw(st.integers(56, 70)) * 10, draw(st.sampled_from((30, 40, 50)))


_TAKEN_BACK = (
    "Ignore the {two}, we're having tiles.",
    "Forget the {two}.",
    "Sorry, scrap the {two} after all.",
    "PS please cancel the {two}.",
)


@st.composite
def taken_back(draw: st.DrawFn) -> Several:
    """A second slab that is taken back: only the first is left, and its hob is corrected."""
    slab = draw(_sizes())
    two = draw(st.sampled_from(("upstand", "splashback")))
    along, deep = draw(st.integers(50, 60)) * 10, draw(st.integers(42, 50)) * 10
    text = (
        f"Hi, worktop {slab[0]} x {slab[1]} x {slab[2]} please with a hob cut-out 570 x 510 in the"
        f" middle. And a {two} {slab[0]} x 100 x 20.\n\n"
        + draw(st.sampled_from(_TAKEN_BACK)).format(two=two)
        + f" And the hob cut-out should be {along} x {deep}."
    )
    own = f"{SLAB}/cutouts/0"
    hole = {f"{own}/length": float(along), f"{own}/width": float(deep)}
    place = {f"{own}/centre/x": slab[0] / 2, f"{own}/centre/y": slab[1] / 2}
    return Several(text, sizes_of(*slab) | hole | place)


_PIPES = (
    "It needs a hole in the middle for a {a} mm parasol pole, so {b} please.",
    "There's a {a} mm pole through the middle, so {b} for the hole please.",
)


@st.composite
def concluded(draw: st.DrawFn) -> Several:
    """A hole a little larger than the pole through it: the pole's size is not the hole's."""
    across = draw(st.integers(80, 140)) * 10
    pole = draw(st.sampled_from((38, 42, 48)))
    bore = pole + draw(st.sampled_from((4, 6, 8)))
    text = f"Round table top please, {across} mm diameter, 40 mm thick. "
    text += _PIPES[0].format(a=pole, b=bore)
    lengths = {
        f"{SLAB}/outline/diameter": float(across),
        f"{SLAB}/thickness": 40.0,
        f"{SLAB}/cutouts/0/diameter": float(bore),
        f"{SLAB}/cutouts/0/centre/x": across / 2,
        f"{SLAB}/cutouts/0/centre/y": across / 2,
    }
    return Several(text, lengths)


_RETURNS = (
    "Along the back it is {l}, the return on the {side} comes forward to {w} overall.",
    "It's {l} along the back wall and the return on the {side} comes out {w} in all.",
    "The back run is {l} long, the {side} leg {w} long.",
)


@st.composite
def returns(draw: st.DrawFn) -> Several:
    """An L whose return comes forward so far: an outside size and no depth."""
    length, width = draw(st.integers(220, 320)) * 10, draw(st.integers(140, 210)) * 10
    depth, side = draw(st.integers(58, 65)) * 10, draw(st.sampled_from(("left", "right")))
    outside = draw(st.sampled_from(_RETURNS)).format(l=length, w=width, side=side)
    text = f"I'd like a price for an L-shaped worktop. {outside} Both runs are {depth} deep."
    notch = {
        f"{SLAB}/outline/notch/length": float(length - depth),
        f"{SLAB}/outline/notch/width": float(width - depth),
    }
    return Several(f"{text} 40 mm thick.", sizes_of(length, width, 40) | notch, {"side": side})


_OTHERS = (
    "You were recommended by Joyce, whose hearth you made last year.",
    "My neighbour's worktop, which you made in 2021, is lovely.",
    "We saw our friends' table that you made for them.",
)


@st.composite
def recommended(draw: st.DrawFn) -> Several:
    """Someone else's slab is named and praised: this is an enquiry all the same."""
    slab = draw(_sizes())
    text = draw(st.sampled_from(_OTHERS))
    text += f" Ours needs to be a worktop of {slab[0]} mm by {slab[1]} mm, {slab[2]} mm thick."
    return Several(text + " Can you bring it?", sizes_of(*slab))


_PREMISES = (
    "The hole that {it} left in the {wall} is {a} wide and {b} high.",
    "There's a hole in the {wall} where {it} was, {a} wide and {b} high.",
    "The opening in the {wall} is {a} wide and {b} high.",
    "{It} left a hole in the {wall} of {a} x {b}.",
    "The hole left by {it} measures {a} x {b}.",
)
_WALLS = ("wall", "brickwork", "chimney breast", "plaster", "stonework", "fireplace")


@st.composite
def premises(draw: st.DrawFn) -> Several:
    """A hole of the house and not of the slab: it is neither drafted nor asked about."""
    slab = draw(_sizes())
    it = draw(st.sampled_from(("the old range", "the gas fire", "the last stove")))
    aside = draw(st.sampled_from(_PREMISES)).format(
        it=it,
        It=it.capitalize(),
        wall=draw(st.sampled_from(_WALLS)),
        a=draw(st.integers(80, 140)) * 10 + 3,
        b=draw(st.integers(60, 110)) * 10 + 7,
    )
    wish = f"I'd like a hearth {slab[0]} wide, {slab[1]} deep and {slab[2]} thick."
    order = draw(st.permutations((aside, wish)))
    return Several(draw(st.sampled_from((" ", "\n\n"))).join(order), sizes_of(*slab))


_LISTS = ("Do you have a price list?", "Could you send a price list?", "Where is your price list?")


@st.composite
def price_lists(draw: st.DrawFn) -> Several:
    """Who asks for a list of prices offers none."""
    slab = draw(_sizes())
    text = f"{draw(st.sampled_from(_LISTS))} It'd be a worktop, {slab[0]} x {slab[1]} x {slab[2]}."
    return Several(text, sizes_of(*slab))


_TERMS = (
    "Lieferung frei Haus nach HR0 7TT.",
    "Was kostet das frei Haus?",
    "Bitte mit Lieferung frei Haus anbieten.",
)


@st.composite
def free_delivery(draw: st.DrawFn) -> Several:
    """A German enquiry that asks for delivery to the door: no offer of a supplier."""
    slab = draw(_sizes())
    text = f"Hallo,\n\nwir brauchen eine Arbeitsplatte {slab[0]} x {slab[1]} x {slab[2]} mm. "
    return Several(text + draw(st.sampled_from(_TERMS)) + "\n\nGruß\nHolger", sizes_of(*slab))


_NO_ENQUIRIES = (
    "The {one} ({l} x {w}) went in a treat, thank you. Will send a picture.",
    "Just so you know, the {one}, {l} x {w}, arrived safely and fitted perfectly. Thanks!",
    "Our {one} turned out beautifully, all {l} x {w} of it. We are over the moon with it.",
    "Die Platte ({l} x {w}) ist da und passt wie angegossen. Wir sind begeistert!",
    "Thanks for the quote for the {l} x {w} worktop, but we've decided to stay with laminate.",
    "Thank you for pricing the {l} x {w} worktop. We're sticking with oak. Sorry for the trouble.",
    "Is {day} still all right for bringing the worktop? I've cleared the 900 mm passage.",
    "Are you still on for {day}? The worktop is {l} x {w} so two of us can carry it.",
    "Your site isn't ranking for “concrete worktop {l} x {w}”. We can get you on page one.",
    "The hearth you made us ({l} x {w}) has got a brown ring on it. What should we clean it with?",
    "You did our island ({l} x {w}) two years ago. Which sealer was it, can I buy a tin?",
    "Thanks for the estimate. {l} x {w} is more than we'd bargained for; we'll have a think.",
    "Our worktop from you ({l} x {w}) has a stain by the sink. How do we get it out?",
    "What a joy! The {one} went in on {day}, {l} by {w} of it. I've left you five stars.",
    "The fitter says our {one}, {l} by {w}, is the nicest bit of work he'd ever seen.",
    "A week after your team fitted it the {l} x {w} {one} has a hairline crack in the corner.",
    "Since your lads brought it in, our {one} ({l} x {w}) has a large chip. Please call.",
    "We make diamond pads for concrete shops: a {l} x {w} {one} in half the time. Free trial.",
    "Can we send your workshop free sealer? Casters tell us a {l} x {w} {one} takes 90 ml.",
)


@st.composite
def no_enquiries(draw: st.DrawFn) -> Several:
    """A refusal, a question about an order, care, an offer: sizes stand in it, and no wish."""
    slab = draw(_sizes())
    day = draw(st.sampled_from(("Thursday", "Monday", "tomorrow")))
    greeting = draw(st.sampled_from(("Hello Tom,\n\n", "Hi, ", "Dear Pat,\n\n")))
    body = draw(st.sampled_from(_NO_ENQUIRIES)).format(
        l=slab[0], w=slab[1], day=day, one=draw(st.sampled_from(("sill", "worktop", "shelf")))
    )
    return Several(greeting + body + "\n\nGraham", {})


_PRAISES = (
    "Your hearth at my sister's is the finest piece of concrete I've seen.",
    "What a beauty your {one} at the café is! And five stars everywhere, no wonder.",
    "A friend says yours is the best casting she's ever seen.",
)


@st.composite
def praised(draw: st.DrawFn) -> Several:
    """Praise of what was made for others, and an enquiry beside it."""
    slab = draw(_sizes())
    one = draw(st.sampled_from(("sill", "worktop", "shelf")))
    text = draw(st.sampled_from(_PRAISES)).format(one=one)
    text += f" How much would a {one} be, {slab[0]} x {slab[1]} x {slab[2]} mm?"
    return Several(text, sizes_of(*slab))


@st.composite
def of_both(draw: st.DrawFn) -> Several:
    """Two slabs whose depth and thickness are said of both, and their lengths one by one."""
    depth, thickness = draw(st.integers(58, 66)) * 10, draw(st.sampled_from((30, 40)))
    one, two = draw(st.integers(180, 240)) * 10, draw(st.integers(100, 150)) * 10
    noun = draw(st.sampled_from(("counters", "worktops")))
    text = (
        f"We need two {noun}, both {depth} mm deep and {thickness} mm thick. One is {one} mm long."
        f" The other is {two} mm long, no cutouts."
    )
    return Several(
        text, sizes_of(one, depth, thickness) | sizes_of(two, depth, thickness, "/slabs/1")
    )
