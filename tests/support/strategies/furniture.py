"""What people put into and under a slab, in the sizes that it is sold in: for random orders.

Sizes of cut-outs are those of appliances' sheets and of cabinet makers: common practice, no source.
"""

from dataclasses import dataclass
from random import Random
from typing import Final

from support.documents import Json


@dataclass(frozen=True, slots=True)
class Item:
    """One thing that needs an opening.

    Attributes
    ----------
    size_mm
        Length and width of its opening; the same twice for a round one.
    rim, heat
        As in the contract.
    unit
        What the unit beneath it is for, where there is one.
    taps
        How many taps stand behind it, at most.
    """

    names: tuple[str, ...]
    kind: str
    size_mm: tuple[int, int]
    rim: str = "shown"
    heat: bool = False
    unit: str = "base"
    taps: int = 0


_HOB: Final = ("hob", "hob", "induction hob", "gas hob", "Kochfeld", "")
_SINK: Final = ("sink", "sink", "undermount sink", "Spüle", "the big sink", "")
_BOWL: Final = ("basin", "bowl", "basin", "washbasin", "")
HOBS: Final = tuple(
    Item(_HOB, "rectangle", size, "covered", heat, "hob")
    for size, heat in (
        ((270, 490), True), ((280, 500), False), ((550, 480), True), ((560, 490), True),
        ((560, 490), False), ((590, 500), True), ((680, 490), True), ((750, 490), True),
        ((770, 500), True), ((860, 490), True), ((900, 500), True),
    )
)  # fmt: skip
SINKS: Final = tuple(
    Item(_SINK, "rectangle", size, rim, unit="basin", taps=1)
    for size, rim in (
        ((340, 400), "shown"), ((400, 400), "shown"), ((450, 400), "shown"), ((500, 400), "shown"),
        ((540, 440), "covered"), ((740, 400), "shown"), ((780, 480), "covered"),
        ((840, 480), "covered"), ((980, 480), "covered"), ((1000, 500), "covered"),
    )
)  # fmt: skip
BOWLS: Final = (
    *(Item(_BOWL, "circle", (d, d), unit="basin", taps=1) for d in (280, 320, 340, 360, 400, 420)),
    Item(_BOWL, "rectangle", (480, 340), unit="basin", taps=1),
    Item(_BOWL, "slot", (500, 350), unit="basin", taps=1),
)
HOLES: Final = (
    Item(("cable hole", "cables", "socket", ""), "circle", (60, 60), "covered"),
    Item(("cable hole", "grommet"), "circle", (80, 80), "covered"),
    Item(("pop-up socket", "socket"), "circle", (102, 102), "covered"),
    Item(("bin hole", "waste chute"), "circle", (180, 180), "shown"),
    Item(("planter", "herb trough"), "slot", (400, 120), "shown"),
)
POSTS: Final = (
    Item(("post", "pipe", "column"), "rectangle", (100, 100), "covered"),
    Item(("post", "chimney breast"), "rectangle", (200, 150), "covered"),
    Item(("pipe", "radiator pipe"), "circle", (45, 45), "covered"),
)
TAP: Final = Item(("tap", "tap", "mixer tap", "tap hole", ""), "circle", (35, 35), "covered")
UNIT_WIDTHS: Final = (300, 400, 450, 500, 600, 600, 800, 900, 1000)
_WIDEST: Final = 1200
_MACHINES: Final = (450, 600)  # gaps for a dishwasher or a washing machine
_GAP: Final[Json] = {"for": "gap"}
_BESIDE_MM: Final = 120  # what an open rim asks of a slab's depth, front and back together


def fitting(rng: Random, items: tuple[Item, ...], depth_mm: float) -> tuple[Item, ...]:
    """What people would put into a slab of this depth: mostly what it can hold."""
    deep_enough = tuple(item for item in items if item.size_mm[1] + _BESIDE_MM <= depth_mm)
    return deep_enough if deep_enough and rng.random() < 0.93 else items


def unit_widths(rng: Random, length_mm: float, items: list[tuple[Item, float]]) -> list[Json]:
    """Units along a run: wide enough for what stands over each, then whatever fills it up.

    Parameters
    ----------
    items
        What stands on the run, with where its middle was meant to be.
    """
    units: list[Json] = []
    along = 0.0
    for item, x in sorted(items, key=lambda pair: pair[1]):
        wide = min((w for w in UNIT_WIDTHS if w > item.size_mm[0] + 40), default=_WIDEST)
        along = _filled(rng, units, along, x - wide / 2)
        units.append({"width": wide, "for": item.unit})
        along += wide
    _filled(rng, units, along, length_mm)
    return units[:12] or [{"width": round(length_mm)}]


def _filled(rng: Random, units: list[Json], along: float, to: float) -> float:
    while to - along >= min(UNIT_WIDTHS):
        wide = rng.choice([w for w in UNIT_WIDTHS if w <= to - along])
        machine = wide in _MACHINES and rng.random() < 0.3 and not _ends_in_a_gap(units)
        units.append({"width": wide} | (_GAP if machine else {}))
        along += wide
    return along


def _ends_in_a_gap(units: list[Json]) -> bool:
    return bool(units) and units[-1].get("for") == "gap"
