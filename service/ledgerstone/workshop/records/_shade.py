"""What makes the colour: readings of cast tiles, the cements' own colours, the limits.

A reading is CIELAB for D65 daylight and the 2° observer (CIE 15) of a tile cast as slabs are, dry
and unsealed: what a hand-held colour meter shows as L*, a* and b*.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from typing import Any, Literal

from ledgerstone.workshop.records._keys import about, above_0, documented


def _lightness() -> Any:  # noqa: ANN401  dataclasses.field is typed by its use
    return field(metadata=about("reading L*", above=0, at_most=100))


def _hue(way: str) -> Any:  # noqa: ANN401  as above
    return field(metadata=about(way, at_least=-128, at_most=128))


@dataclass(frozen=True, slots=True, kw_only=True)
class PigmentSample:
    """One tile cast with one pigment and read by a colour meter."""

    cement: Literal["grey", "white"] = documented("the cement's colour")
    dose_percent: float = field(metadata=about("dose, of the cement's mass", above=0, at_most=15))
    lightness: float = _lightness()
    a: float = _hue("reading a*: green below 0, red above")
    b: float = _hue("reading b*: blue below 0, yellow above")


@dataclass(frozen=True, slots=True, kw_only=True)
class CementBase:
    """One cement's own colour, read from a tile without pigment."""

    cement: Literal["grey", "white"] = documented("the cement's colour")
    lightness: float = _lightness()
    a: float = _hue("reading a*: green below 0, red above")
    b: float = _hue("reading b*: blue below 0, yellow above")
    extra_per_m3: Decimal = field(
        default=Decimal(0),
        metadata=about("added for a matched shade of this cement", at_least=0),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Colouring:
    """How finely pigment is dosed, how much of it is used, and whether a colour is matched."""

    matching: bool = field(
        default=False,
        metadata=about("whether customers may ask for a colour that is not in the palette"),
    )
    most_percent: float = field(
        default=10.0,
        metadata=about(
            "most pigment in all, of the cement's mass; ASTM C979 1.4 has 10", above=0, at_most=15
        ),
    )
    carbon_most_percent: float = field(
        default=2.0,
        metadata=about(
            "the most with carbon black in it; US Preservation Brief 2", above=0, at_most=15
        ),
    )
    batch_cement_kg: float = above_0("cement in the smallest batch, for doses that can be weighed")
    bases: tuple[CementBase, ...] = field(
        default=(), metadata=about("the cements' own colours, without pigment")
    )
