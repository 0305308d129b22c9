"""Orders of the three typical jobs, and plain tops, in sizes usual where the workshop is."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from ledgerstone.json_types import Members
from ledgerstone.message import Message
from ledgerstone.quantities import INCH_MM
from ledgerstone.transport import prices_of
from ledgerstone.wording import workshop_speech
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.usual import usual_sealer


@dataclass(frozen=True, slots=True)
class _Sizes:
    """Sizes of the three jobs, mm: round ones in the workshop's unit; common practice, no source.

    Attributes
    ----------
    hob
        Length and width of the cut-out, and of the unit that it is over.
    """

    shelf: tuple[float, float]
    top: tuple[float, float]
    unit: float
    bowl: float
    depth: float
    hob: tuple[float, float, float]


_METRIC: Final = _Sizes((900.0, 250.0), (1200.0, 520.0), 600.0, 340.0, 620.0, (560.0, 490.0, 600.0))
_INCHES: Final = _Sizes(
    (36 * INCH_MM, 10 * INCH_MM), (48 * INCH_MM, 21 * INCH_MM),
    24 * INCH_MM, 14 * INCH_MM, 25 * INCH_MM,
    (28.5 * INCH_MM, 19.5 * INCH_MM, 36 * INCH_MM),
)  # fmt: skip
_PLAIN: Final = (60 * INCH_MM, 24 * INCH_MM)


def _sizes(workshop: Workshop) -> _Sizes:
    return _INCHES if workshop.place.lengths == "in" else _METRIC


def _slab(workshop: Workshop, use: str, length_mm: float, width_mm: float) -> Members:
    """Return a slab without a thickness: it is made at the workshop's usual one that holds."""
    table = workshop.table
    return {
        "use": use,
        "outline": {
            "kind": "rectangle",
            "length": min(length_mm, table.length_mm),
            "width": min(width_mm, table.width_mm),
        },
        "shade": {"name": workshop.palette[0].name},
        "finish": {
            "surface": workshop.finishes[-1].surface,
            "sealer": usual_sealer(workshop, "indoors"),
        },
        "place": "indoors",
    }


def shelf(workshop: Workshop) -> Members:
    """A plain shelf, bedded all along, which its customer collects."""
    slab = _slab(workshop, "shelf", *_sizes(workshop).shelf)
    slab["finish"]["surface"] = workshop.finishes[0].surface
    return {"slabs": [{**slab, "rests": {"kind": "full"}}], "delivery": {"kind": "collect"}}


def plain_tops(workshop: Workshop) -> Iterator[Members]:
    """Yield plain tops of the first shade and surface, the longest first.

    The first is as long as a form starts with in inches, which is longer than in millimetres.
    """
    sizes = _sizes(workshop)
    for length_mm, width_mm in (_PLAIN, sizes.top, sizes.shelf):
        slab = _slab(workshop, "worktop", length_mm, width_mm)
        slab["finish"]["surface"] = workshop.finishes[0].surface
        yield slab


def basin_top(workshop: Workshop) -> Members:
    """A top with one basin on two base units."""
    sizes = _sizes(workshop)
    slab = _slab(workshop, "worktop", *sizes.top)
    slab["cutouts"] = [
        {
            "label": _opening(workshop, "basin"),
            "kind": "circle",
            "diameter": sizes.bowl,
            "centre": {"x": 1.5 * sizes.unit, "y": sizes.top[1] / 2},
        }
    ]
    slab["rests"] = _units((sizes.unit, "base"), (sizes.unit, "basin"))
    return {"slabs": [slab], "delivery": _delivery(workshop, "pallet", "own-van", "fitted")}


def kitchen(workshop: Workshop) -> Members:
    """Two tops, the first round a hob."""
    sizes = _sizes(workshop)
    length, width, over = sizes.hob
    hob = _slab(workshop, "worktop", 2 * sizes.unit + over, sizes.depth)
    hob["cutouts"] = [
        {
            "label": _opening(workshop, "hob"),
            "kind": "rectangle",
            "length": length,
            "width": width,
            "corner_radius": 10.0,
            "rim": "covered",
            "heat": True,
            "centre": {"x": sizes.unit + over / 2, "y": sizes.depth / 2},
        }
    ]
    hob["rests"] = _units((sizes.unit, "base"), (over, "hob"), (sizes.unit, "base"))
    plain = {**_slab(workshop, "worktop", 2 * sizes.unit, sizes.depth), "rests": {"kind": "full"}}
    return {"slabs": [hob, plain], "delivery": _delivery(workshop, "fitted", "own-van", "pallet")}


def _opening(workshop: Workshop, opening: str) -> str:
    """What goes into an opening, in the workshop's words."""
    speech = workshop_speech(workshop.workshop.language, workshop)
    return speech.say(Message("typical-opening", opening=opening))


def _units(*units: tuple[float, str]) -> Members:
    return {"kind": "units", "units": [{"width": mm, "for": kind} for mm, kind in units]}


def _delivery(workshop: Workshop, *wanted: str) -> Members:
    """Return the first wanted delivery that the first area offers; else collection."""
    for area in workshop.areas[:1]:
        prices = prices_of(area)
        for kind in wanted:
            postcode = next(_postcodes(workshop, area.postcodes), None)
            if prices[kind] is not None and postcode is not None:
                return {"kind": kind, "postcode": postcode, "doorway": 800.0, "steps": 0}
    return {"kind": "collect"}


def _postcodes(workshop: Workshop, beginnings: tuple[str, ...]) -> Iterator[str]:
    """Yield complete postcodes with an area's beginnings, in the country's format."""
    known = workshop.place.postcodes
    for beginning in beginnings:
        found = beginning.partition("-")[0] if known is None else known.under(beginning)
        yield from (found,) if found is not None else ()
