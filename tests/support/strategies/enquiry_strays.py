"""Families where a size or a word beside the slab's own strays into it: stands, turns, drives."""

from __future__ import annotations

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import sizes_of

SLAB = "/slabs/0"
HOLE = f"{SLAB}/cutouts/0"
_PER = {"mm": 1.0, "cm": 10.0, "in": 25.4}


@st.composite
def _sizes(draw: st.DrawFn) -> tuple[int, int, int]:
    length = draw(st.integers(160, 280)) * 10
    return length, draw(st.integers(56, 72)) * 10, draw(st.sampled_from((30, 40, 50)))


def _first(slab: tuple[int, int, int]) -> str:
    return f"A worktop please, {slab[0]} x {slab[1]} x {slab[2]} mm."


@st.composite
def beside_what_was_made(draw: st.DrawFn) -> Several:
    """A slab on something that the writer made, which is a little smaller."""
    slab = draw(_sizes())
    thing = draw(st.sampled_from(("stand", "frame", "contraption", "trestle", "trolley")))
    made = draw(st.sampled_from(("I knocked together", "I welded", "we built", "I made for it")))
    own = f"{slab[0] - 40} x {slab[1] - 40}"
    return Several(f"{_first(slab)} The {thing} {made} is {own}.", sizes_of(*slab))


@st.composite
def letters_with_units(draw: st.DrawFn) -> Several:
    """A form's fields named by one letter, with a unit in brackets and a blank at will."""
    unit = draw(st.sampled_from(("mm", "cm")))
    per, slab = _PER[unit], draw(_sizes())
    blank = draw(st.sampled_from(("", " ")))
    names = draw(st.sampled_from(("LWT", "LDT")))
    lines = [
        f"{name} ({unit}){blank}: {size / per:g}" for name, size in zip(names, slab, strict=True)
    ]
    return Several("\n".join(["Please quote a worktop.", *lines, "Colour: grey"]), sizes_of(*slab))


@st.composite
def for_outside(draw: st.DrawFn) -> Several:
    """Several slabs for outside, so many before that word."""
    count = draw(st.integers(2, 6))
    where = draw(st.sampled_from(("outside", "inside")))
    noun = draw(st.sampled_from(("window sills", "sills", "shelves")))
    length, deep = draw(st.integers(90, 160)) * 10, draw(st.integers(20, 30)) * 10
    text = f"Hi, need {count} {where} {noun} all the same, {length} x {deep}, grey. Price please."
    sizes = {f"{SLAB}/outline/length": float(length), f"{SLAB}/outline/width": float(deep)}
    return Several(text, sizes, {"count": str(count)})


_CUTS = (
    "One sink, cut {a} mm across and {b} mm front to back.",
    "The sink needs a hole {a} mm across and {b} mm front to back.",
    "There is a sink in it; the cut-out is {a} across, {b} from front to back.",
)


@st.composite
def hole_by_its_sides(draw: st.DrawFn) -> Several:
    """A hole so wide across and so much from front to back is no round one."""
    slab, along, deep = draw(_sizes()), draw(st.integers(40, 60)) * 10, draw(st.integers(34, 44))
    cut = draw(st.sampled_from(_CUTS)).format(a=along, b=deep * 10)
    sizes = {f"{HOLE}/length": float(along), f"{HOLE}/width": deep * 10.0}
    return Several(f"{_first(slab)} {cut}", sizes_of(*slab) | sizes)


_CORRECTS = ("sorry", "scratch that", "actually", "scratch that, just measured again", "no, sorry")


@st.composite
def corrected_at_once(draw: st.DrawFn) -> Several:
    """A length that its own sentence takes back and says anew."""
    long, deep, thick = draw(_sizes())
    mark = draw(st.sampled_from((", ", " - ")))
    said = f"{long + 25} long{mark}{draw(st.sampled_from(_CORRECTS))}, {long}"
    text = f"Hi, a worktop please. It's {said}. Depth {deep}. {thick} thick."
    return Several(text, sizes_of(long, deep, thick))


@st.composite
def turned_round(draw: st.DrawFn) -> Several:
    """A place whose side is taken back: the distance stands, from the other end."""
    slab, at, back = draw(_sizes()), draw(st.integers(45, 70)) * 10, draw(st.integers(26, 30)) * 10
    side, other = draw(st.sampled_from((("left", "right"), ("right", "left"))))
    turn = draw(
        st.sampled_from(
            ("no wait, from the {o} end", "sorry, the {o} end", "hang on, I mean from the {o}")
        )
    ).format(o=other.upper() if draw(st.booleans()) else other)
    text = (
        f"{_first(slab)} Hob cut-out 560 x 490, its middle {at} from the {side} end, {turn}."
        f" And {back} from the front."
    )
    x = at if other == "left" else slab[0] - at
    place = {f"{HOLE}/centre/x": float(x), f"{HOLE}/centre/y": float(back)}
    hole = {f"{HOLE}/length": 560.0, f"{HOLE}/width": 490.0}
    return Several(text, sizes_of(*slab) | hole | place)


_IN_DEPTH = (
    "same line front to back as the waste",
    "in line with the waste front to back",
    "in line with the middle of the waste from front to back",
)


@st.composite
def level_in_depth(draw: st.DrawFn) -> Several:
    """A tap as far from the front as the waste that it is in line with."""
    slab, back, at = draw(_sizes()), draw(st.integers(20, 30)) * 10, draw(st.integers(30, 50)) * 10
    text = (
        f"{_first(slab)} Waste 45 mm hole, {at} from the left, {back} from the front."
        f" Tap 35 mm hole, {at + 250} from the left, {draw(st.sampled_from(_IN_DEPTH))}."
    )
    tap = f"{SLAB}/cutouts/1"
    sizes = {f"{HOLE}/diameter": 45.0, f"{tap}/diameter": 35.0}
    sizes |= {f"{HOLE}/centre/x": float(at), f"{HOLE}/centre/y": float(back)}
    sizes |= {f"{tap}/centre/x": at + 250.0, f"{tap}/centre/y": float(back)}
    return Several(text, sizes_of(*slab) | sizes)


@st.composite
def middle_before_its_hole(draw: st.DrawFn) -> Several:
    """The middle is said before the one hole that is there."""
    slab, bore = draw(_sizes()), draw(st.sampled_from((50, 60, 80)))
    where = draw(st.sampled_from(("In the exact middle", "In the middle", "In the centre")))
    text = f"{_first(slab)} {where} one hole for a drain, {bore} mm."
    place = {f"{HOLE}/centre/x": slab[0] / 2, f"{HOLE}/centre/y": slab[1] / 2}
    return Several(text, sizes_of(*slab) | {f"{HOLE}/diameter": float(bore)} | place)


@st.composite
def of_other_stuff_once(draw: st.DrawFn) -> Several:
    """Somebody's top of slate or oak that was there once has its own length."""
    slab = draw(_sizes())
    whose = draw(st.sampled_from(("My late aunt's top", "The top before it", "Their worktop")))
    stuff = draw(st.sampled_from(("slate", "oak", "granite", "marble")))
    text = f"{whose}, which was {stuff} and {slab[0] - 70} mm long, went to my cousin. "
    return Several(text + _first(slab), sizes_of(*slab))


@st.composite
def beside_the_piece(draw: st.DrawFn) -> Several:
    """Two numbered slabs left and right of something; a hole centred on its piece is there."""
    one, two = draw(_sizes()), draw(_sizes())
    thing = draw(st.sampled_from(("stove", "window", "door")))
    back = draw(st.integers(27, 29)) * 10
    text = (
        f"Price please.\n1. Counter left of the {thing}, {one[0]} x {one[1]} x {one[2]}.\n"
        f"2. Counter right of the {thing}, {two[0] + 400} x {two[1]} x {two[2]}. Undermount sink,"
        f" cutout 510 x 400, centered on the piece left to right, middle {back} from the front."
    )
    hole = "/slabs/1/cutouts/0"
    sizes = {f"{hole}/length": 510.0, f"{hole}/width": 400.0}
    sizes |= {f"{hole}/centre/x": (two[0] + 400) / 2, f"{hole}/centre/y": float(back)}
    second = {
        at.replace(SLAB, "/slabs/1"): size
        for at, size in sizes_of(two[0] + 400, two[1], two[2]).items()
    }
    return Several(text, sizes_of(*one) | second | sizes)


@st.composite
def one_more_thing(draw: st.DrawFn) -> Several:
    """Holes for things that nobody has heard of, each with its own size and place."""
    slab, back = draw(_sizes()), draw(st.integers(20, 26)) * 10
    first, then = draw(st.permutations(("knock box", "jug rinser", "plate warmer")))[:2]
    text = (
        f"{_first(slab)} A round hole for the {first}, 165 across, centre 310 from the left and"
        f" {back} from the front. And a {then}: hole 300 x 150, centre 1200 from the left and"
        f" {back + 60} from the front."
    )
    more = f"{SLAB}/cutouts/1"
    sizes = {f"{HOLE}/diameter": 165.0, f"{more}/length": 300.0, f"{more}/width": 150.0}
    sizes |= {f"{HOLE}/centre/x": 310.0, f"{HOLE}/centre/y": float(back)}
    sizes |= {f"{more}/centre/x": 1200.0, f"{more}/centre/y": back + 60.0}
    return Several(text, sizes_of(*slab) | sizes)


@st.composite
def depth_of_the_run(draw: st.DrawFn) -> Several:
    """An L in a list, in which "run" names a leg and "depth of" says what is measured."""
    long, wide = draw(st.integers(240, 300)) * 10, draw(st.integers(150, 190)) * 10
    deep, side = draw(st.integers(58, 66)) * 10, draw(st.integers(50, 57)) * 10
    text = (
        "L-shaped worktop please.\n"
        f"- Along the window wall: {long} mm\n"
        f"- Down the left-hand side, from the window wall: {wide} mm\n"
        f"- Depth of the window run: {deep} mm\n- Depth of the left-hand leg: {side} mm\n"
        "- Thickness: 40 mm\n"
    )
    notch = {"length": long - side, "width": wide - deep}
    at = f"{SLAB}/outline"
    sizes = {f"{at}/notch/{key}": float(size) for key, size in notch.items()}
    sizes |= {f"{at}/length": float(long), f"{at}/width": float(wide), f"{SLAB}/thickness": 40.0}
    return Several(text, sizes)


@st.composite
def round_in_a_list(draw: st.DrawFn) -> Several:
    """A list of table tops whose last item is one that is round."""
    side, across = draw(st.integers(60, 80)) * 10, draw(st.integers(90, 120)) * 10
    lead = draw(st.sampled_from(("one round", "one round one", "two round", "and one round")))
    bullet = draw(st.sampled_from(("*", "-")))
    text = (
        f"Table tops please:\n{bullet} six square ones, {side} x {side}, 30 thick\n"
        f"{bullet} {lead}, {across} across, 40 thick\n"
    )
    sizes = sizes_of(side, side, 30)
    sizes |= {"/slabs/1/outline/diameter": float(across), "/slabs/1/thickness": 40.0}
    return Several(text, sizes)


@st.composite
def round_in_a_table(draw: st.DrawFn) -> Several:
    """A table with a diameter in the column of lengths."""
    slab, across = draw(_sizes()), draw(st.integers(60, 90)) * 10
    dia = draw(st.sampled_from(("{d} dia", "dia {d}", "{d} diameter"))).format(d=across)
    text = (
        "Price please, mm:\n\nItem          Length    Depth   Thk   No.\n"
        f"Bar top       {slab[0]}      {slab[1]}     {slab[2]}    1\n"
        f"Tables        {dia}   -       30    4\n"
    )
    more = {"/slabs/1/outline/diameter": float(across), "/slabs/1/thickness": 30.0}
    return Several(text, sizes_of(*slab) | more)


@st.composite
def picked_and_changed(draw: st.DrawFn) -> Several:
    """A lettered offer of the workshop's, picked with one size changed."""
    (long, deep, thick), more = draw(_sizes()), draw(st.integers(5, 20)) * 10
    text = (
        "From: Ann Holt <ann@example.org>\nSubject: Re: worktop\nMIME-Version: 1.0\n"
        f"Message-ID: <1@example.org>\n\nB please, but can it be {thick} rather than {thick + 10}?"
        "\n\nAnn\n\nOn 24 Feb 2027, at 15:31, Tarnside Casting wrote:\n\n"
        "> Ann, two ways to do this:\n>\n"
        f"> A) {long - more} x {deep - 40} x {thick + 20}, £655\n"
        f"> B) {long} x {deep} x {thick + 10}, £790\n>\n> Tom\n"
    )
    return Several(text, sizes_of(long, deep, thick))


_WAYS = (
    "It's HR0 4FA, gravel drive, no steps.",
    "HR0 4FA, you can come up the drive.",
    "The drive is steep. HR0 4FA.",
    "HR0 4FA, there's room on our drive.",
)


@st.composite
def up_the_drive(draw: st.DrawFn) -> Several:
    """A slab that is brought up a drive: none that asks for a drive to be laid."""
    slab = draw(_sizes())
    text = (
        "I'm building a cooking corner and need the slab to go on top."
        f" Length {slab[0]}, front to back {slab[1]}, and {slab[2]} thick. "
    )
    return Several(text + draw(st.sampled_from(_WAYS)), sizes_of(*slab))


_ORDERED = (
    "Our order that's booked in for Wednesday, the worktop ({l} x {w}): could it come Thursday?",
    "I have paid the balance for the hearth, {l} x {w}. Could you bring it on Friday instead?",
)


@st.composite
def ordered_before(draw: st.DrawFn) -> Several:
    """A message about what was ordered: its sizes ask for nothing."""
    long, wide, _ = draw(_sizes())
    return Several(draw(st.sampled_from(_ORDERED)).format(l=long, w=wide), {})
