"""Bars, wires and sheets as they are named where they are sold by number: ``#3``, ``10 gauge``.

Source
------
Bars: ASTM A615/A615M table 1, ``#3`` to ``#8`` are eighths of an inch (9.5 to 25.4 mm). Wires:
ASTM A1064/A1064M, ``W1.4`` or ``D1.4`` is a wire of 1.4 hundredths of a square inch; its gauges are
the US steel wire gauge. Sheets: the manufacturers' standard gauge. Gauges are from memory.
"""

from __future__ import annotations

import math
import re
from fractions import Fraction
from typing import Final

from ledgerstone.quantities import INCH_MM

_BAR: Final = re.compile(
    r"(?:#|no\.?|nr\.?|number)\s*([2-8])(?:\s*(?:bars?|rebar))?", re.IGNORECASE
)
_GAUGE: Final = re.compile(r"(?:#|no\.?)?\s*(\d{1,2})[\s-]*(?:gauge|gage|ga\.?)", re.IGNORECASE)
_GAUGE_FIRST: Final = re.compile(r"(?:gauge|gage|ga\.?)\s*(\d{1,2})", re.IGNORECASE)
_WIRE: Final = re.compile(r"[WD]\s*(\d+(?:\.\d+)?)", re.IGNORECASE)
_ROUND: Final = re.compile(r"(?:[Øø⌀∅]|dia(?:meter)?\.?|durchmesser)\s*(?=\d)", re.IGNORECASE)
_EIGHT: Final = re.compile(r"(\d+(?:,\d+)?)er(?:[\s-]*(?:stab|stäbe|eisen|draht))?", re.IGNORECASE)
_SQUARE: Final = re.compile(r"(\S+)\s*(?:[x×*]|by)\s*(\S+)(.*)", re.IGNORECASE)
_WIRE_GAUGES: Final = {
    0: 0.3065, 1: 0.2830, 2: 0.2625, 3: 0.2437, 4: 0.2253, 5: 0.2070, 6: 0.1920, 7: 0.1770,
    8: 0.1620, 9: 0.1483, 10: 0.1350, 11: 0.1205, 12: 0.1055, 13: 0.0915, 14: 0.0800, 15: 0.0720,
    16: 0.0625, 17: 0.0540, 18: 0.0475,
}  # fmt: skip
_SHEET_GAUGES: Final = {
    7: 0.1793, 8: 0.1644, 9: 0.1495, 10: 0.1345, 11: 0.1196, 12: 0.1046, 13: 0.0897, 14: 0.0747,
    15: 0.0673, 16: 0.0598, 17: 0.0538, 18: 0.0478, 20: 0.0359,
}  # fmt: skip
_BARS, _WIRES, _SHEETS, _PITCHES = "bar_mm", "mesh_wire_mm", "wall_mm", "mesh_pitch_mm"


def size_named(text: str, key: str, unit: str = "mm") -> str:
    """Return a bar's, wire's or sheet's size by its number in a unit; else the text.

    Parameters
    ----------
    key
        The key of the place that it is entered at: a number names a bar at a bar's place alone.
    unit
        ``mm`` or ``in``, as the workshop works.
    """
    plain = _ROUND.sub("", text.strip())
    if key == _BARS and (bar := _BAR.fullmatch(plain)):
        return f"{Fraction(int(bar[1]), 8)} in" if unit == "in" else _written(int(bar[1]) / 8, unit)
    if key in (_BARS, _WIRES) and (eight := _EIGHT.fullmatch(plain)):
        return f"{eight[1]} mm"
    if key == _WIRES and (wire := _WIRE.fullmatch(plain)):
        return _written(math.sqrt(4 * float(wire[1]) / 100 / math.pi), unit)
    gauges = {_WIRES: _WIRE_GAUGES, _SHEETS: _SHEET_GAUGES}.get(key, {})
    gauge = _GAUGE.fullmatch(plain) or _GAUGE_FIRST.fullmatch(plain)
    if gauge and int(gauge[1]) in gauges:
        return _written(gauges[int(gauge[1])], unit)
    square = _SQUARE.fullmatch(plain) if key == _PITCHES else None
    if square and _same(square[1], square[2]):
        return f"{square[2]}{square[3]}"
    return plain if key in (_BARS, _WIRES) else text


def _same(one: str, other: str) -> bool:
    """Whether two sides of a mesh are as far apart, whatever stands behind the numbers."""
    return one.rstrip("\"'”″inm ") == other.rstrip("\"'”″inm ")


def _written(inches: float, unit: str) -> str:
    text = f"{inches:.4f}" if unit == "in" else f"{inches * INCH_MM:.2f}"
    return f"{text.rstrip('0').rstrip('.')} {unit}"
