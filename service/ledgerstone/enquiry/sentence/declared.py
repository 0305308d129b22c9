"""The unit that a message declares for all of its bare numbers: "all sizes in mm"."""

from __future__ import annotations

import re
from collections.abc import Iterable
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.text.sizes import Size
from ledgerstone.quantities import UnitName

_ONLY_MM: Final = 1000  # in any other unit no slab's size is so many: common practice, no source
_MAX_MM: Final = 9000  # a larger number is no size

_DECLARED: Final = re.compile(
    r"\b(?:all|sizes?|measures|measurements|dimensions|everything|maße|angaben|dims|figures)\b"
    r"[^.\n]{0,24}?\b(mm|millimetres|millimeters|cm|centimetres|centimeters|zentimeter|inches"
    r"|inch|metres)\b"
    r"|\b(cms?|mms?|inches|ins?)\b(?= (?:unless|except|throughout|everywhere))"
    r"|\d[^\n(]{0,40}\((cm|mm|inches)\)"
    r"|\b(cm|mm|inches|centimetres|centimeters|millimetres|millimeters|zentimeter) all\b(?! )"
    r"|(?<=\()(centimetres|centimeters|millimetres|millimeters|zentimeter)(?=\))",
    re.IGNORECASE,
)
# A form's fields that all have one unit: "Length (cm): 265".
_LABELLED: Final = re.compile(r"\((cm|mm|inches|in)\)[ \t]*[:=]", re.IGNORECASE)
UNIT_NAMES: Final = MappingProxyType[str, UnitName](
    {
        "mm": "mm",
        "millimetres": "mm",
        "millimeters": "mm",
        "mms": "mm",
        "cm": "cm",
        "cms": "cm",
        "ins": "in",
        "centimetres": "cm",
        "centimeters": "cm",
        "zentimeter": "cm",
        "inches": "in",
        "inch": "in",
        "in": "in",
        "metres": "m",
    }
)


def declared_unit(text: str) -> UnitName | None:
    """Return the unit that is declared, if any."""
    found = _DECLARED.search(text)
    labelled = {unit.lower() for unit in _LABELLED.findall(text)}
    if found is None and len(labelled) == 1 and len(_LABELLED.findall(text)) > 1:
        return UNIT_NAMES.get(labelled.pop())
    return UNIT_NAMES.get(next(filter(None, found.groups())).lower()) if found else None


def is_metric(sizes: Iterable[Size | None]) -> bool:
    """Return whether sizes are written in metric units, and none in inches or feet."""
    told = [size for size in sizes if size is not None]
    units = {size.unit or ("in" if size.has_fraction else None) for size in told} - {None}
    is_large = any(size.unit is None and _ONLY_MM <= size.amount <= _MAX_MM for size in told)
    return not units & {"in", "ft"} and (bool(units) or is_large)
