"""Families of forms in which sizes are written: forms' fields, words, columns, codes, rooms."""

from __future__ import annotations

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import sizes_of

SLAB = "/slabs/0"
_TENS = ("", "ten", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_ONES = ("", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
_MM_PER_INCH = 25.4  # exact: NIST SP 811, appendix B.9


@st.composite
def _sizes(draw: st.DrawFn) -> tuple[int, int, int]:
    length = draw(st.integers(110, 290)) * 10
    return length, draw(st.integers(32, 66)) * 10, draw(st.sampled_from((30, 40, 50)))


def _in_words(number: int) -> str:
    """Return a whole number under 10 000 in words, as it is said in Britain."""
    thousands, rest = divmod(number, 1000)
    hundreds, rest = divmod(rest, 100)
    said = [f"{_ONES[thousands]} thousand"] if thousands else []
    said += [f"{_ONES[hundreds]} hundred"] if hundreds else []
    if rest:
        said += [f"and {_TENS[rest // 10]} {_ONES[rest % 10]}".rstrip()]
    return " ".join(said)


@st.composite
def pasted_fields(draw: st.DrawFn) -> Several:
    """A form's fields as a program names them: ``length_mm = 2890``."""
    length, width, thickness = draw(_sizes())
    sign = draw(st.sampled_from((" = ", ": ", " : ")))
    fields = {"product": "Worktop", "length_mm": length, "depth_mm": width}
    fields |= {"thickness_mm": thickness, "colour": "Graphite", "postcode": "LD0 9HJ"}
    text = "\n".join(f"{name}{sign}{value}" for name, value in fields.items())
    return Several(
        f"--- new enquiry via website ---\nyour_name{sign}Ida Holm\n{text}\n",
        sizes_of(length, width, thickness),
    )


@st.composite
def spoken_numbers(draw: st.DrawFn) -> Several:
    """Sizes written out in words, thousands and hundreds together."""
    length, width, thickness = draw(_sizes())
    apart = draw(st.sampled_from((" ", "\n")))
    text = f"A cold shelf for the larder please: {_in_words(length)}{apart}millimetres by "
    text += f"{_in_words(width)} millimetres, and {thickness} mm thick."
    return Several(text, sizes_of(length, width, thickness))


@st.composite
def metres_and_millimetres(draw: st.DrawFn) -> Several:
    """Two sizes in metres and the thickness after "and": no part of the second."""
    length, width, thickness = draw(_sizes())
    lead = draw(st.sampled_from(("Looking for a top", "Price for a worktop please,")))
    text = f"{lead} {length / 1000:g}m by {width / 1000:g}m and {thickness}mm thick, plain grey."
    return Several(text, sizes_of(length, width, thickness))


@st.composite
def inch_columns(draw: st.DrawFn) -> Several:
    """A table whose columns name inches: what is cut out is in inches too."""
    length, width = draw(st.integers(60, 118)), draw(st.integers(24, 30))
    along, deep = draw(st.integers(20, 33)), draw(st.integers(15, 19))
    left, front = draw(st.integers(22, 36)), draw(st.integers(10, 12))
    head = draw(
        st.sampled_from(
            (
                "Item  Qty  L (in)   D (in)   T (in)   Cutouts",
                "Item  Qty  Length (in)   Depth (in)   Thickness (in)   Cutouts",
            )
        )
    )
    row = f"A     1    {length}       {width}       1.5      undermount sink {along} x {deep},"
    row += f" center {left} from left, {front} from front"
    own = f"{SLAB}/cutouts/0"
    hole = {f"{own}/length": along, f"{own}/width": deep}
    hole |= {f"{own}/centre/x": left, f"{own}/centre/y": front}
    inches = sizes_of(length, width, 1.5) | hole
    text = f"Please quote for counters:\n\n{head}\n{row}\n\nColor: Graphite."
    return Several(text, {key: one * _MM_PER_INCH for key, one in inches.items()})


@st.composite
def codes(draw: st.DrawFn) -> Several:
    """A job's number with a stroke, and a drawing's codes before what is in inverted commas."""
    length, width, thickness = draw(_sizes())
    job = f"{draw(st.integers(20, 29))}/0{draw(st.integers(10, 99))}"
    letter = draw(st.sampled_from("CPS"))
    text = f"Schedule for {job}. Prices please.\n\n{letter}1: worktop {length} x {width} x"
    text += f' {thickness}\n\n{letter}1 in "pearl", matt.'
    return Several(text, sizes_of(length, width, thickness))


_ROOMS = (
    "I have a small shower room, some {a} m by {b} m, and",
    "We have a narrow utility room, about {a} m by {b} m, and",
    "It's a small larder, {a} m by {b} m, and",
)


@st.composite
def rooms(draw: st.DrawFn) -> Several:
    """A room's own size before a slab's."""
    length, width, thickness = draw(_sizes())
    lead = draw(st.sampled_from(_ROOMS)).format(
        a=draw(st.integers(18, 29)) / 10, b=draw(st.integers(12, 17)) / 10
    )
    text = f"{lead} I should like a top.\n\nLength {length} mm\nDepth {width} mm\nThickness "
    return Several(f"{text}{thickness} mm\n", sizes_of(length, width, thickness))


@st.composite
def depth_of_slab(draw: st.DrawFn) -> Several:
    """A hearth's two sizes, then how deep its stone is: that is the thickness."""
    length, width, thickness = draw(_sizes())
    what = draw(st.sampled_from(("slab", "the slab")))
    text = f"I want a hearth of {length} mm by {width} mm. The depth of {what} is {thickness} mm."
    return Several(text, sizes_of(length, width, thickness))


_RESTS = (
    "It sits on a drain pipe filled with concrete ({across} across).",
    "It stands on a drainpipe ({across} across).",
    "It rests on a pedestal ({across} across).",
)


@st.composite
def rested(draw: st.DrawFn) -> Several:
    """What a table rests on has a size of its own, and is no hole in the top."""
    side = draw(st.integers(70, 110)) * 10
    text = f"We want a square concrete table top, {side} by {side}, 50 mm thick. "
    text += draw(st.sampled_from(_RESTS)).format(across=draw(st.integers(30, 50)) * 10)
    return Several(text, sizes_of(side, side, 50))


@st.composite
def summed_up(draw: st.DrawFn) -> Several:
    """A slab told in words and then again in one line: it is one slab."""
    length, width, thickness = draw(_sizes())
    led = draw(st.sampled_from(("Just to summarise", "To summarize", "Summing up", "To recap")))
    text = f"Could you make a sill? {length} mm long, {width} mm deep. Thickness {thickness} mm.\n"
    text += f"\n{led}: one sill {length} x {width} x {thickness}."
    return Several(text, sizes_of(length, width, thickness))


@st.composite
def treads(draw: st.DrawFn) -> Several:
    """Treads and steps to be cast, each with its sizes."""
    length, width, thickness = draw(_sizes())
    count = draw(st.sampled_from(("three", "four")))
    text = f"We need {count} treads. Each tread is {length} mm long, {width} mm deep and "
    return Several(f"{text}{thickness} mm thick.", sizes_of(length, width, thickness))


@st.composite
def rows_of_panels(draw: st.DrawFn) -> Several:
    """A list with bars and no labels, its first row's height written ``150h``."""
    one, two = draw(_sizes()), draw(_sizes())
    two = (one[0] - 135, *two[1:])  # the same sizes again may be the same slab
    high = draw(st.integers(45, 60)) * 10
    text = f"Prices please for\n\nBath panel | {one[0]} x {high}h | 20 thk\n"
    text += f"Hearth | {two[0]} x {two[1]} | {two[2]} thk\n"
    return Several(text, sizes_of(one[0], high, 20) | sizes_of(*two, at="/slabs/1"))


_BOWLS = (
    "Counter-top bowl, waste hole {d} mm, {x} from the left and {y} from the front.",
    "One vessel sink so just a drain hole {d} mm, center at {x} from left and {y} from front.",
    "It's for a countertop bowl. Waste hole {d} mm, {x} from the left and {y} from the front.",
)


@st.composite
def bowls_on_top(draw: st.DrawFn) -> Several:
    """A bowl that stands on the slab needs its outlet's hole alone."""
    length, width, thickness = draw(_sizes())
    bore, left, front = draw(st.integers(40, 48)), draw(st.integers(30, 50)) * 10, 160
    text = f"Basin top {length} x {width} x {thickness} mm please. "
    text += draw(st.sampled_from(_BOWLS)).format(d=bore, x=left, y=front)
    own = f"{SLAB}/cutouts/0"
    hole = {f"{own}/diameter": bore, f"{own}/centre/x": left, f"{own}/centre/y": front}
    return Several(text, sizes_of(length, width, thickness) | hole)


_OLD = (
    "The kitchen is vile ({c}, 1988, a tiled top {a} by {b}) and is all coming out.",
    "The kitchen ({c}, with a tiled top {a} by {b}) is being replaced.",
)


@st.composite
def old_in_brackets(draw: st.DrawFn) -> Several:
    """A bracket tells what is there now, and only after it that it goes."""
    length, width, thickness = draw(_sizes())
    colour = draw(st.sampled_from(("brown", "grey")))
    text = draw(st.sampled_from(_OLD)).format(c=colour, a=length - 37, b=width + 23)
    text += f" My brother says the new top needs to be {length} mm long and {width} mm deep."
    return Several(f"{text} I want it {thickness} mm thick.", sizes_of(length, width, thickness))


@st.composite
def dotted_lines(draw: st.DrawFn) -> Several:
    """Lines of dots between what is asked and what is said of it, in words too."""
    length, width, thickness = draw(_sizes())
    dots = "." * draw(st.integers(6, 20))
    along, deep = draw(st.integers(30, 40)) * 10, 240
    lines = (
        f"  From left to right {dots} {length} mm",
        f"  From front to back {dots} {width} mm",
        f"  How thick {dots} {thickness} mm",
        f"  Basin {dots} undermounted",
        f"  Hole for it {dots} {along} mm by {deep} mm, in the very centre",
    )
    own = f"{SLAB}/cutouts/0"
    hole: dict[str, float] = {f"{own}/length": along, f"{own}/width": deep}
    hole |= {f"{own}/centre/x": length / 2, f"{own}/centre/y": width / 2}
    text = "I should like a top to carry my basin.\n\n" + "\n".join(lines)
    return Several(text, sizes_of(length, width, thickness) | hole)


@st.composite
def drained(draw: st.DrawFn) -> Several:
    """A sink's cut-out that takes the drainer in: its sizes are the cut-out's."""
    thickness = draw(st.sampled_from((30, 40, 50)))
    text = f"Kitchen worktop 2400 x 620 x {thickness}, one inset sink with cut out 950 x 470"
    text += draw(st.sampled_from((" including the drainer", " incl draining board", "")))
    own = f"{SLAB}/cutouts/0"
    said = {f"{own}/length": 950.0, f"{own}/width": 470.0}
    return Several(text + ".", sizes_of(2400, 620, thickness) | said)
