"""Openings in the middle of a slab's front or back, and beside them what is in the middle of it."""

from __future__ import annotations

from dataclasses import dataclass

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several


@dataclass(frozen=True)
class Sided:
    """A message, the slab's sizes in mm, its openings in their order, and the side of the last."""

    text: str
    length: int
    width: int
    has_basin: bool
    side: str


SIDES = {
    "back": (
        "at the back", "at the rear", "at the back edge", "along the back", "towards the back",
        "near the back", "at the very back", "right at the back", "against the wall",
        "by the back edge", "at the back of the slab",
    ),
    "front": ("at the front", "near the front", "at the front edge", "along the front"),
}  # fmt: skip
GERMAN_SIDES = {
    "back": ("hinten", "am hinteren Rand", "ganz hinten", "an der Wand"),
    "front": ("vorn", "vorne", "am vorderen Rand", "ganz vorn"),
}
MIDDLES = ("in the middle", "centred", "centrally", "in the centre", "central")
GERMAN_MIDDLES = ("in der Mitte", "mittig", "genau mittig", "zentriert")
AT_ONCE = {
    "back": ("at the back centre", "in the middle of its back edge", "at rear centre",
             "at the centre of the back", "centred on the back edge"),
    "front": ("in the middle of its front edge", "at the centre of the front"),
}  # fmt: skip
HOLES = (
    "a tap hole of 35 mm",
    "a 35 mm tap hole",
    "a cable hole, 60 mm across,",
    "a hole of 40 mm for the waste",
)
GERMAN_HOLES = ("ein Hahnloch mit 35 mm Durchmesser", "ein Loch mit 60 mm Durchmesser für Kabel")
BASINS = (
    "a round basin of 300 mm in the middle",
    "a round basin of 300 mm, centred",
    "a basin cut-out of 400 x 260 mm in the centre",
)
GERMAN_BASINS = ("ein rundes Becken mit 300 mm Durchmesser in der Mitte",)


@st.composite
def at_a_side(draw: st.DrawFn) -> Sided:
    """A hole in the middle of the front or the back, where a basin may be in the slab's middle."""
    length, width = draw(st.integers(90, 200)) * 10, draw(st.integers(50, 65)) * 10
    german = draw(st.booleans())
    side = draw(st.sampled_from(("back", "front")))
    place = draw(_places(side, german=german))
    hole = draw(st.sampled_from(GERMAN_HOLES if german else HOLES))
    has_basin = draw(st.booleans())
    basin = draw(st.sampled_from(GERMAN_BASINS if german else BASINS))
    both = draw(st.sampled_from((" und ", ", ") if german else (" and ", ", ", " plus ")))
    holes = f"{basin}{both}{hole} {place}" if has_basin else f"{hole} {place}"
    text = (
        f"Guten Tag, wir möchten eine Waschtischplatte, {length} x {width} x 40 mm, hellgrau, "
        f"mit: {holes}."
        if german
        else f"Hello, I'd like a vanity top, {length} x {width} x 40 mm, mid grey. It has {holes}."
    )
    return Sided(text, length, width, has_basin, side)


@st.composite
def _places(draw: st.DrawFn, side: str, *, german: bool) -> str:
    if not german and draw(st.integers(0, 3)) == 0:
        return draw(st.sampled_from(AT_ONCE[side]))
    where = draw(st.sampled_from((GERMAN_SIDES if german else SIDES)[side]))
    middle = draw(st.sampled_from(GERMAN_MIDDLES if german else MIDDLES))
    join = draw(st.sampled_from((" ", ", ")))
    return join.join((where, middle) if draw(st.booleans()) else (middle, where))


@st.composite
def bare_places(draw: st.DrawFn) -> Several:
    """A tap's place in bare millimetres beside sizes in centimetres: it lies on the slab."""
    length, width = draw(st.integers(150, 260)) * 10, draw(st.integers(56, 70)) * 10
    x, y = draw(st.integers(30, 120)) * 10, draw(st.integers(15, width // 10 - 15)) * 10
    side = draw(st.sampled_from(("left", "right")))
    near = draw(st.sampled_from(("front", "back")))
    text = (
        f"Please quote for a worktop {length / 10:g} cm x {width / 10:g} cm x 4 cm with a tap hole"
        f" of 35 mm, {x} from the {side} and {y} from the {near}."
    )
    at = "/slabs/0"
    places = {
        "centre/x": x if side == "left" else length - x,
        "centre/y": y if near == "front" else width - y,
    }
    sizes = {f"{at}/outline/length": length, f"{at}/outline/width": width, f"{at}/thickness": 40}
    sizes |= {f"{at}/cutouts/0/{key}": mm for key, mm in places.items()}
    sizes[f"{at}/cutouts/0/diameter"] = 35
    return Several(text, {key: float(mm) for key, mm in sizes.items()})
