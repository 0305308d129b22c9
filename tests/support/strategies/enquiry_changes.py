"""Families of enquiries with several things in them: changes, pairs, legs, corners, shades."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from hypothesis import strategies as st

from support.strategies.enquiry_families import sizes_of

LENGTH: Final = "/slabs/0/outline/length"
WIDTH: Final = "/slabs/0/outline/width"
THICKNESS: Final = "/slabs/0/thickness"


@dataclass(frozen=True)
class Several:
    """A message, and what a careful maker takes from it by its place in the order."""

    text: str
    lengths: dict[str, float]
    words: dict[str, str] = field(default_factory=dict)


MAKE_IT: Final = (
    "Could you make it {by} {more} please?",
    "Can it be {by} {more}?",
    "We'd like it {by} {more} now.",
    "Please make it {by} {more}.",
    "I need it {by} {more}.",
)
MAKE_THE: Final = (
    "Please {raise} the {what} by {by}.",
    "Could you {raise} the {what} by {by}?",
    "We want the {what} {by} {sign}.",
    "Please {add} {by} {to} the {what}.",
)
GERMAN_MAKE: Final = (
    "Bitte {by} {more}.",
    "Sie soll {by} {more} werden.",
    "Könnte sie {by} {more} sein?",
)
_WORDS: Final = {
    LENGTH: (("longer", "shorter"), ("length",), ("länger", "kürzer")),
    WIDTH: (("deeper", "shallower"), ("depth",), ("tiefer", "schmaler")),
    THICKNESS: (("thicker", "thinner"), ("thickness",), ("dicker", "dünner")),
}
_MORE: Final = {"raise": "increase", "sign": "more", "add": "add", "to": "to"}
_LESS: Final = {"raise": "reduce", "sign": "less", "add": "take", "to": "off"}


@st.composite
def differences(draw: st.DrawFn) -> Several:
    """A slab of which one size is then to be so much more or less."""
    length, width, thickness = draw(sizes_of())
    sizes = {LENGTH: max(length, 900), WIDTH: max(width, 300), THICKNESS: max(thickness, 40)}
    at = draw(st.sampled_from(sorted(sizes)))
    mm = 10 if at == THICKNESS else draw(st.sampled_from((20, 30, 50, 100)))
    is_more = draw(st.booleans())
    by = draw(st.sampled_from((f"{mm} mm", f"{mm}mm", f"{mm / 10:g} cm")))
    compared, names, german = _WORDS[at]
    group = " x ".join(str(one) for one in sizes.values())
    if draw(st.booleans()):
        said = draw(st.sampled_from((*MAKE_IT, *MAKE_THE)))
        change = said.format(
            by=by, more=compared[not is_more], what=names[0], **(_MORE if is_more else _LESS)
        )
        text = f"Please quote for a worktop {group} mm, charcoal. {change}"
    else:
        more = german[not is_more]
        change = draw(st.sampled_from(GERMAN_MAKE)).format(by=by.replace(".", ","), more=more)
        text = f"Guten Tag, bitte ein Angebot für eine Arbeitsplatte {group} mm. {change}"
    wanted = {**sizes, at: sizes[at] + (mm if is_more else -mm)}
    return Several(text, {place: float(size) for place, size in wanted.items()})


PAIRS: Final = (
    (
        "Two basins, cut-outs {d} mm across, their centres {a} mm from the left end and {b} mm from"
        " the right end, both {c} mm from the front."
    ),
    (
        "Two round basins, each cut-out {d} across. Centres {a} from the left and {b} from the"
        " right, both {c} from the front."
    ),
    (
        "There are two basins of {d} mm diameter: {a} in from the left-hand end, {b} in from the"
        " right-hand end, each {c} from the front edge."
    ),
)


@st.composite
def pairs(draw: st.DrawFn) -> Several:
    """A slab with two openings, one told from each end."""
    length, width, thickness = draw(st.integers(150, 280)) * 10, draw(st.integers(48, 65)) * 10, 40
    d, c = draw(st.integers(30, 40)) * 10, draw(st.integers(23, 27)) * 10
    a, b = draw(st.integers(32, 50)) * 10, draw(st.integers(32, 50)) * 10
    holes = draw(st.sampled_from(PAIRS)).format(a=a, b=b, c=c, d=d)
    text = f"Hello, please price a vanity top {length} x {width} x {thickness} mm. {holes} Thanks"
    lengths = {LENGTH: length, WIDTH: width, THICKNESS: thickness}
    for i, x in enumerate((a, length - b)):
        at = f"/slabs/0/cutouts/{i}"
        lengths |= {f"{at}/diameter": d, f"{at}/centre/x": x, f"{at}/centre/y": c}
    return Several(text, {place: float(mm) for place, mm in lengths.items()})


LEGS: Final = (
    (
        "An L-shaped worktop in two pieces, joined in the corner. The long leg is {a} x {b}, the"
        " short leg on the {side} is {c} x {d}. Both {t} thick."
    ),
    (
        "We need an L worktop made as two slabs with a join. The long leg {a} by {b} mm and the"
        " short leg {c} by {d} mm on the {side}, {t} mm thick."
    ),
    (
        "L-shaped counter in two sections: long run {a} x {b}, short run {c} x {d} to the {side},"
        " seam where they meet. {t} mm thick throughout."
    ),
)


@st.composite
def legs_apart(draw: st.DrawFn) -> Several:
    """An L that is told as two slabs and a join."""
    b, d = (draw(st.integers(55, 68)) * 10 for _ in range(2))
    a, c = draw(st.integers(180, 300)) * 10, draw(st.integers(80, 170)) * 10
    t, side = draw(st.sampled_from((30, 40, 50))), draw(st.sampled_from(("left", "right")))
    said = draw(st.sampled_from(LEGS)).format(a=a, b=b, c=c, d=d, t=t, side=side)
    lengths: dict[str, float] = {}
    for i, (along, across) in enumerate(((a, b), (c, d))):
        at = f"/slabs/{i}"
        lengths |= {f"{at}/outline/length": along, f"{at}/outline/width": across}
        lengths[f"{at}/thickness"] = t
    return Several(f"Hi, could you quote? {said} Thanks", lengths, {"side": side})


CUT: Final = (
    "with the {corner} corner cut off at 45 degrees, {n} each way",
    "with the {corner} corner cut off, {n} mm along each side",
    "the {corner} corner cropped by {n} x {n} mm",
    "and its {corner} corner clipped off, {n} mm both ways",
)
CORNERS: Final = ("front left", "front right", "back right", "back left")


@st.composite
def cut_off(draw: st.DrawFn) -> Several:
    """A rectangle with one corner cut off at 45 degrees."""
    length, width = draw(st.integers(90, 250)) * 10, draw(st.integers(45, 80)) * 10
    n, corner = draw(st.integers(8, 30)) * 10, draw(st.sampled_from(CORNERS))
    cut = draw(st.sampled_from(CUT)).format(corner=corner, n=n)
    text = f"Please price a worktop {length} x {width} x 40 mm, {cut}. Mid grey."
    x, y = (0 if "left" in corner else length), (0 if "front" in corner else width)
    gone = (x, y)
    kept = [p for p in ((0, 0), (length, 0), (length, width), (0, width)) if p != gone]
    new = [(abs(x - n), y), (x, abs(y - n))]
    points = ";".join(sorted(f"{a:g},{b:g}" for a, b in (*kept, *new)))
    lengths = {LENGTH: float(length), WIDTH: float(width), THICKNESS: 40.0}
    return Several(text, lengths, {"points": points})


SHADES: Final = (
    "charcoal", "chalk", "pale grey", "oatmeal", "sage", "graphite", "warm white", "terracotta",
    "heather", "frostwork", "dark grey", "oxide red",
)  # fmt: skip
LISTS: Final = (
    "Two pieces please:\n- worktop {0} in {a}\n- shelf {1} in {b}\n",
    "Please price a worktop {0} in {a}, and a shelf {1} in {b}.",
    "We need a worktop, {0} mm, in {a}. Then a shelf, {1} mm, in {b}. Thanks",
    "1. Worktop {0}, colour: {a}\n2. Shelf {1}, colour: {b}\n",
)


@st.composite
def shades_each(draw: st.DrawFn) -> Several:
    """Two slabs, each in its own shade, which may be of no table."""
    a, b = draw(st.lists(st.sampled_from(SHADES), min_size=2, max_size=2, unique=True))
    first, second = "1800 x 600 x 40", "900 x 220 x 30"
    text = draw(st.sampled_from(LISTS)).format(first, second, a=a, b=b)
    return Several(f"Could you quote for these?\n\n{text}", {}, {"0": a, "1": b})


@st.composite
def bare_inches(draw: st.DrawFn) -> Several:
    """A slab whose numbers have no unit, one of them a fraction as inches have."""
    length, width = draw(st.integers(40, 110)), draw(st.integers(12, 30))
    part = draw(st.sampled_from(("1/2", "1/4", "3/4", "3/8")))
    value = {"1/2": 0.5, "1/4": 0.25, "3/4": 0.75, "3/8": 0.375}[part]
    thick = draw(st.sampled_from(("1 1/2", "1 3/4", "2", "2 1/4")))
    whole, _, rest = thick.partition(" ")
    inches = int(whole) + {"": 0.0, "1/2": 0.5, "3/4": 0.75, "1/4": 0.25}[rest]
    text = f"Hi, how much for a countertop {length} x {width} {part}, {thick} thick? Espresso."
    lengths = {LENGTH: length * 25.4, WIDTH: (width + value) * 25.4, THICKNESS: inches * 25.4}
    return Several(text, lengths)
