"""What the workshop usually does where a message does not say: thickness, look, sizes of holes."""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.words.colours import colour_of
from ledgerstone.quantities import INCH_MM
from ledgerstone.shade.colour import delta_e_2000, srgb_to_lab
from ledgerstone.workshop.records import Workshop

_EDGE_MM: Final = 5.0  # common practice, no source
# Sizes of openings until a template comes: common practice, no source.
_OPENINGS: Final = MappingProxyType(
    {
        "tap": ("circle", 35.0, 35.0),
        "waste": ("circle", 45.0, 45.0),
        "drain": ("circle", 45.0, 45.0),
        "soap": ("circle", 35.0, 35.0),
        "parasol": ("circle", 50.0, 50.0),
        "cable": ("circle", 60.0, 60.0),
        "socket": ("circle", 80.0, 80.0),
        "basin": ("circle", 380.0, 380.0),
        "sink": ("rectangle", 500.0, 400.0),
        "hob": ("rectangle", 560.0, 490.0),
    }
)
# What covers its hole by a flange of its own: common practice, no source.
COVERING: Final = frozenset({"tap", "soap"})
# The same where things are sold in inches: a single-bowl sink, a 30-inch cooktop.
_OPENINGS_IN_INCHES: Final = MappingProxyType(
    {
        "tap": ("circle", 1.375 * INCH_MM, 1.375 * INCH_MM),
        "waste": ("circle", 1.75 * INCH_MM, 1.75 * INCH_MM),
        "drain": ("circle", 1.75 * INCH_MM, 1.75 * INCH_MM),
        "soap": ("circle", 1.375 * INCH_MM, 1.375 * INCH_MM),
        "parasol": ("circle", 2 * INCH_MM, 2 * INCH_MM),
        "cable": ("circle", 2.5 * INCH_MM, 2.5 * INCH_MM),
        "socket": ("circle", 3 * INCH_MM, 3 * INCH_MM),
        "basin": ("circle", 15 * INCH_MM, 15 * INCH_MM),
        "sink": ("rectangle", 20 * INCH_MM, 16 * INCH_MM),
        "hob": ("rectangle", 28.5 * INCH_MM, 19.5 * INCH_MM),
    }
)


def usual_edge_mm(workshop: Workshop, profile: str) -> float:
    """Return the size usual for a bevel or a round, of those that the workshop makes."""
    for edge in workshop.edges:
        if edge.profile == profile:
            return min(max(_EDGE_MM, edge.smallest_mm), edge.largest_mm)
    return _EDGE_MM


def usual_opening(what: str, kind: str, workshop: Workshop) -> tuple[str, float, float]:
    """Return kind and size, mm, of an opening whose size nobody said, as usual in the country."""
    known = _OPENINGS_IN_INCHES if workshop.place.lengths == "in" else _OPENINGS
    usual = known.get(what, known["tap"])
    if kind == "circle" and usual[0] != "circle":
        return "circle", usual[2], usual[2]
    if kind in ("rectangle", "slot") and usual[0] == "circle":
        return kind, 2 * usual[1], usual[1]
    return usual


def nearest_shade(workshop: Workshop, said: str) -> str:
    """Give the shade of the palette that comes nearest to words; the first where none is meant."""
    colour = colour_of(said)
    if colour is None:
        return workshop.palette[0].name
    wished = srgb_to_lab(colour)
    return min(
        workshop.palette, key=lambda shade: delta_e_2000(wished, srgb_to_lab(shade.colour))
    ).name
