"""Families of enquiries for several slabs: each outline a slab, each opening in its own."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from hypothesis import strategies as st


@dataclass(frozen=True)
class Slabs:
    """A message, and what a careful maker takes from it by its place in the order."""

    text: str
    lengths: dict[str, float] = field(default_factory=dict)


FIRST: Final = (
    "a long run under the window, {0}",
    "one for the front room, {0}",
    "a worktop {0}",
    "a worktop along the back wall which is {0}",
)
THEN: Final = (
    "a short run on the opposite wall, {1}",
    "another for the back bedroom which is smaller, {1}",
    "a second one of {1}",
    "an island {1}",
)
LISTS: Final = (
    "Please price these:\n\n{heads[0]}\n{long[0]}\n\n{heads[1]}\n{long[1]}\n",
    "Please price:\n\n{heads[0]}. {words[0]}.\n{heads[1]}. {words[1]}.\n",
    "Please price:\n- {heads[0]}: {0}\n- {heads[1]}: {1}\n",
    "Please price:\n1 - {heads[0]}, {0}\n2 - {heads[1]}, {1}\n",
    "Piece: {heads[0]}\n{long[0]}\nPiece: {heads[1]}\n{long[1]}\nHow much please?",
)
HEADS: Final = (
    ("Kitchen worktop", "Hearth"), ("Utility worktop", "Window sill"),
    ("Bathroom top", "Shelf"), ("Reception counter", "Table top"),
)  # fmt: skip
PLACED: Final = (
    "The hob is in the second, cut-out 560 x 490, centre {x} from the left and {y} from the front.",
    "The second one has a hob, cut-out 560 x 490, centre {x} from the left, {y} from the front.",
    "The smaller one takes a hob: cut-out 560 x 490, centre {x} from the left, {y} from the front.",
)
ALL: Final = ("Both 40 mm thick.", "All in 40mm please.", "Everything 40mm thick.")


@st.composite
def outlines(draw: st.DrawFn) -> tuple[tuple[int, int], tuple[int, int]]:
    """Length and width, mm, of two slabs, the second the smaller."""
    first = draw(st.integers(200, 320)) * 10, draw(st.integers(58, 66)) * 10
    second = draw(st.integers(120, 180)) * 10, draw(st.integers(58, 90)) * 10
    return first, second


def _wanted(sizes: tuple[tuple[int, int], ...], thickness: int) -> dict[str, float]:
    wanted: dict[str, float] = {}
    for i, (length, width) in enumerate(sizes):
        wanted |= {f"/slabs/{i}/outline/length": length, f"/slabs/{i}/outline/width": width}
        wanted[f"/slabs/{i}/thickness"] = thickness
    return {at: float(mm) for at, mm in wanted.items()}


@st.composite
def in_one_breath(draw: st.DrawFn) -> Slabs:
    """Two slabs in one sentence, their thickness said of both, an opening in the second."""
    sizes = draw(outlines())
    unit = draw(st.sampled_from(("{} x {}", "{} x {} mm", "{}mm x {}mm", "{} by {} mm")))
    said = [unit.format(*one) for one in sizes]
    two = f"{draw(st.sampled_from(FIRST))}, and {draw(st.sampled_from(THEN))}".format(*said)
    wanted = _wanted(sizes, 40)
    text = f"Hi, how much for {two}. {draw(st.sampled_from(ALL))}"
    if draw(st.booleans()):
        x, y = draw(st.integers(40, 80)) * 10, 300
        text += " " + draw(st.sampled_from(PLACED)).format(x=x, y=y)
        at = "/slabs/1/cutouts/0"
        wanted |= {f"{at}/length": 560, f"{at}/width": 490}
        wanted |= {f"{at}/centre/x": x, f"{at}/centre/y": y}
    return Slabs(f"{text}\n\nThanks, Ida", wanted)


@st.composite
def in_a_list(draw: st.DrawFn) -> Slabs:
    """Two slabs under headings, in items or in blocks of fields."""
    sizes = draw(outlines())
    t = draw(st.sampled_from((30, 40, 50)))
    text = draw(st.sampled_from(LISTS)).format(
        *(f"{length} x {width} x {t}" for length, width in sizes),
        heads=draw(st.sampled_from(HEADS)),
        long=[f"Length {length}\nDepth {width}\nThickness {t}" for length, width in sizes],
        words=[f"{length} long, {width} deep, {t} thick" for length, width in sizes],
    )
    return Slabs(text, _wanted(sizes, t))


ROWS: Final = (
    "Two sinks, cut-out 420 x 320 each, centres {a} and {b} from the left, 240 from the front.",
    "It has two sinks (cut-out 420 x 320 each), {a} and {b} from the left and 240 from the front.",
)


@st.composite
def in_a_row(draw: st.DrawFn) -> Slabs:
    """A slab with two openings whose distances are listed from one side."""
    length = draw(st.integers(160, 260)) * 10
    a, b = draw(st.integers(30, 50)) * 10, length - draw(st.integers(30, 50)) * 10
    text = f"Please price a vanity top {length} x 520 x 40 mm. " + draw(
        st.sampled_from(ROWS)
    ).format(a=a, b=b)
    wanted = _wanted(((length, 520),), 40)
    for i, x in enumerate((a, b)):
        at = f"/slabs/0/cutouts/{i}"
        wanted |= {f"{at}/length": 420.0, f"{at}/width": 320.0}
        wanted |= {f"{at}/centre/x": float(x), f"{at}/centre/y": 240.0}
    return Slabs(text, wanted)


BASED: Final = (
    "Please price a worktop {n} mm long and {w} mm deep, {t} thick. It stands on {units}.",
    "We want a worktop on {units}: {n} long, {w} deep and {t} thick. How much?",
    "The {units} are in. The worktop should be {n} x {w} x {t} mm. What would it cost?",
)
UNITS: Final = (
    "three 600 mm base units",
    "two 800s and a 500",
    "units W1, W2 and B3",
    "4 cupboards",
)


@st.composite
def on_units(draw: st.DrawFn) -> Slabs:
    """A slab on units whose sizes, numbers and codes are none of it."""
    length, width = draw(st.integers(120, 480)) * 10, draw(st.integers(58, 66)) * 10
    text = draw(st.sampled_from(BASED)).format(
        n=length, w=width, t=40, units=draw(st.sampled_from(UNITS))
    )
    return Slabs(text, _wanted(((length, width),), 40))


SAME: Final = (
    "The upstand is 100 high and 20 thick, the full length of the worktop.",
    "An upstand too, 100 high, 20 thick, the same length as the worktop.",
)


@st.composite
def with_upstand(draw: st.DrawFn) -> Slabs:
    """A worktop, and an upstand that is as long as it is."""
    length, width = draw(st.integers(160, 300)) * 10, draw(st.integers(58, 66)) * 10
    text = f"Please price a worktop {length} x {width} x 40 mm. {draw(st.sampled_from(SAME))}"
    wanted = _wanted(((length, width), (length, 100)), 40)
    return Slabs(text, wanted | {"/slabs/1/thickness": 20.0})
