"""Openings and reliefs that one press adds, each of its usual size."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType
from typing import Any, Final, Literal, get_args

from ledgerstone.layout.rounded_length import rounded_length
from ledgerstone.order import Cutout, Point, Rectangle, Relief
from ledgerstone.quantities import Length, UnitName

ReliefKind = Literal["drainer", "recess", "rebate"]
UNPLACED: Final = Point(Length.of_mm(0.0), Length.of_mm(0.0))

# Sizes in mm: common practice, no source.
_HOB: Final[Mapping[str, Any]] = MappingProxyType(
    {
        "kind": "rectangle",
        "length": 560,
        "width": 480,
        "corner_radius": 12,
        "rim": "covered",
        "heat": True,
    }
)
_CUTOUTS: Final[Mapping[str, Mapping[str, Any]]] = MappingProxyType(
    {
        "basin": {"kind": "circle", "diameter": 360},
        "sink": {"kind": "rectangle", "length": 500, "width": 400, "corner_radius": 25},
        "tap": {"kind": "circle", "diameter": 35, "rim": "covered"},
        "hob": _HOB,
        "appliance": _HOB,
        "round": {"kind": "circle", "diameter": 150},
        "rectangle": {"kind": "rectangle", "length": 300, "width": 200, "corner_radius": 15},
        "slot": {"kind": "slot", "length": 250, "width": 40},
    }
)
_RELIEFS: Final[Mapping[ReliefKind, Mapping[str, Any]]] = MappingProxyType(
    {
        "drainer": {"length": 350, "width": 400, "depth": 6, "grooves": 7, "fall": 4},
        "recess": {"length": 150, "width": 100, "depth": 8},
        "rebate": {"length": 300, "width": 20, "depth": 10},
    }
)
CUTOUT_NAMES: Final = tuple(_CUTOUTS)
RELIEF_NAMES: Final[tuple[ReliefKind, ...]] = get_args(ReliefKind)
PIECE_NAMES: Final = (*CUTOUT_NAMES, *RELIEF_NAMES)


def new_cutout(name: str, label: str, unit: UnitName) -> Cutout:
    """Make an opening of its usual size, which has no place yet."""
    return replace(Cutout(**_in_unit(_CUTOUTS[name], unit)), label=label, centre=UNPLACED)


def new_relief(name: ReliefKind, label: str, unit: UnitName) -> Relief:
    """Make a place that is thinner, of its usual size, which has no place yet."""
    sizes = _in_unit(_RELIEFS[name], unit)
    outline = Rectangle(sizes.pop("length"), sizes.pop("width"))
    return Relief(**sizes, kind=name, outline=outline, at=UNPLACED, label=label)


def _in_unit(sizes: Mapping[str, Any], unit: UnitName) -> dict[str, Any]:
    """Speak the sizes in the customer's unit; whole numbers that are no sizes stay."""
    return {
        key: rounded_length(value, unit) if type(value) is int and key != "grooves" else value
        for key, value in sizes.items()
    }
