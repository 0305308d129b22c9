"""A measure written with its unit, at a key whose name has another: ``length_mm = "96 in"``.

A number alone is in the unit of its key; a text carries its own, as things are sold there. So may
a price, hours or a yield by a measure: ``price_per_kg = "$0.19/lb"``, ``hours_per_m2 = "0.3/ft²"``,
``coverage_m2_per_l = "370 ft² per gal"``. A length is written as a customer writes one:
``10 ft 2 in``, ``10' 2"``.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache
from types import MappingProxyType
from typing import Final

from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length, factor

_FOOT_M: Final = factor("ft", "m")
_POUND: Final = factor("lb", "kg")
_GALLON: Final = factor("gal", "l")
_CUBIC_FOOT_L: Final = factor("ft ** 3", "l")
_POUND_FORCE: Final = factor("lbf", "N")
_PSI: Final = factor("psi", "MPa")
_Units = Mapping[str, Fraction]


def _named(**units: Fraction | int) -> _Units:
    return {name.replace("_", " "): Fraction(per) for name, per in units.items()}


_MASS: Final = {**_named(kg=1, g=Fraction(1, 1000), lb=_POUND, oz=_POUND / 16)}
_VOLUME_L: Final = {
    **_named(l=1, ml=Fraction(1, 1000), gal=_GALLON, qt=_GALLON / 4, pt=_GALLON / 8),
    "fl oz": _GALLON / 128,
    "m³": Fraction(1000),
    "ft³": _CUBIC_FOOT_L,
    "yd³": 27 * _CUBIC_FOOT_L,
}
_AREA: Final = {"m²": Fraction(1), "ft²": _FOOT_M**2, "yd²": 9 * _FOOT_M**2}
_HOURS: Final = _named(h=1, min=Fraction(1, 60), s=Fraction(1, 3600))
# A US gauge's number says nothing of its size, so none is read.
_UNITS: Final[Mapping[str, _Units]] = MappingProxyType(
    {
        "_kg": _MASS,
        **dict.fromkeys(("_l", "_litres"), _VOLUME_L),
        "_m": _named(m=1, ft=_FOOT_M),
        "_m2": _AREA,
        "_m3": {name: per / 1000 for name, per in _VOLUME_L.items()},
        "_mpa": {
            **dict.fromkeys(("mpa", "n/mm²"), Fraction(1)),
            **_named(gpa=1000, psi=_PSI, ksi=1000 * _PSI),
        },
        "_n_per_mm2": {"n/mm²": Fraction(1), **_named(psi=_PSI, ksi=1000 * _PSI)},
        "_n": _named(n=1, kn=1000, lb=_POUND_FORCE, lbf=_POUND_FORCE),
        "_hours": _HOURS,
        "_hour": _HOURS,
        "_minutes": {name: 60 * per for name, per in _HOURS.items()},
        "_days": _named(d=1, h=Fraction(1, 24)),
        "_percent": {"%": Fraction(1)},
    }
)
# What a rate is by, in the unit of its key's ending.
_PER: Final[Mapping[str, _Units]] = MappingProxyType(
    {f"_per{ending}": _UNITS[ending] for ending in ("_kg", "_l", "_m", "_m2", "_m3")}
)
# Other ways of writing a unit, in small letters; the first that is found is exchanged.
_NAMES: Final[Mapping[str, str]] = MappingProxyType(
    {
        r"\bpsf\b": "lb/ft²",
        r"\bpcf\b": "lb/ft³",
        r"\bpcy\b": "lb/yd³",
        r"\b(?:pounds?|lbs)\b\.?": "lb",
        r"\bounces?\b": "oz",
        r"\b(?:kilograms?|kilos?|kgs)\b": "kg",
        r"\b(?:gallons?|gals)\b\.?": "gal",
        r"\b(?:quarts?|qts)\b\.?": "qt",
        r"\bpints?\b": "pt",
        r"\b(?:litres?|liters?)\b": "l",
        r"\b(?:feet|foot)\b": "ft",
        r"\byards?\b": "yd",
        r"\b(?:metres?|meters?)\b": "m",
        r"\b(?:minutes?|mins)\b": "min",
        r"\b(?:hours?|hrs?|stunden?|std)\b": "h",
        r"\b(?:days?|tage?n?)\b": "d",
        r"\b(?:square|sq)\b\.? *(m|ft|yd)\b\.?": r"\1²",
        r"\b(?:cubic|cu)\b\.? *(m|ft|yd)\b\.?": r"\1³",
        r"\b(m|ft|yd|mm)\^?2(?!\d)": r"\1²",
        r"\b(m|ft|yd|mm)\^?3(?!\d)": r"\1³",
        r"[°º] *c\b": "°c",
        r"[°º] *f\b": "°f",
    }
)
_CUBES: Final = ("cube", "würfel")
# A thing that something is by, whose number has no unit of its own: ``water_l_per_bag``.
_BY_THING: Final = re.compile(r"_per_(?!(?:kg|l|m|m2|m3)$)[a-z]+$")
# What a key is by whose name has it, as people write it behind an amount.
_THINGS: Final[Mapping[str, str]] = MappingProxyType(
    {
        "hour": "h",
        "bag": "bags?|sacks?|säcke",
        "sheet": "sheets?|boards?|tafeln?|platten?",
        "tube": "tubes?|kartuschen?",
        "order": "orders?|auftrag",
        "slab": "slabs?|platten?",
        "piece": "pieces?|pcs?|stücke?|stk",
        "person": "persons?|people|kopf",
    }
)
_SIGNS: Final = re.compile(
    r"[$£€]|\b(?:usd|gbp|eur|chf|cad|aud|nzd|dkk|sek|nok|pln|czk|zar)\b", re.IGNORECASE
)
_PACK: Final = (
    "(?:bags?|sacks?|säcke|tubs?|tins?|cans?|drums?|buckets?|pails?|jugs?|box(?:es)?"
    "|eimern?|dosen?|kanistern?|gebinden?)"
)
# Between an amount and what it is for: ``per``, ``a bag of``, ``for a``; a bag may also end it.
_RATE: Final = re.compile(
    r"(.*[^\s/])(?<!\bper)(?<!\bfor)(?<!\bje)(?<!\bpro)(?<!\bfür)\s*"
    r"(?:\b(?:per|for|an?|each|je|pro|für)\b|/)\s*(?:(?:an?|eine[nm]?|ein)\s+)?"
    rf"(?:{_PACK}\s*(?:of|à|zu|von|mit)\s+)?(\S.*?)(?:[\s-]+{_PACK})?"
)
_PLACES: Final = 6  # decimals of what is worked out of a unit
_AMOUNT: Final = re.compile(r"(?:(\d+)[ -])?(\d+)/(\d+)|(-?\d+(?:\.\d+)?|\.\d+)", re.ASCII)
# By cubes of 150 mm: the cylinder's strength, MPa. EN 206 table 12 (from memory).
_BY_CUBE: Final = (
    (15, 12), (20, 16), (25, 20), (30, 25), (37, 30), (45, 35), (50, 40), (55, 45), (60, 50),
    (67, 55), (75, 60), (85, 70), (95, 80), (105, 90),
)  # fmt: skip


def measured(text: str, key: str) -> Decimal | None:
    """Return a text's measure in the unit of a key's name; None if it is no such measure.

    ``5800 psi``, ``10 ft 2 in``, ``94 lbs``, ``150 lb/cu ft``, ``60 °F``: to six decimals. Water
    may be weighed: a litre is a kilogram.
    """
    name, text = f"_{_BY_THING.sub('', key)}", without_thing(text, key)
    if name.endswith("_mm"):
        return _length_mm(text)
    plain = _plain(text)
    if name.endswith("_c"):
        return _celsius(plain)
    ending = max((e for e in _UNITS if name.endswith(e)), key=len, default=None)
    if ending is None or name.endswith(f"_per{ending}"):
        return None
    by_cube = ending == "_mpa" and plain.endswith(_CUBES)
    units = {**_UNITS[ending], **(_MASS if ending == "_l" and "water" in name else {})}
    bare = re.sub(r"(?:by |am )?(?:cube|würfel)$", "", plain).strip()
    amount = _in(bare, units)
    return None if amount is None else _decimal(_of_cylinder(amount) if by_cube else amount)


def without_thing(text: str, key: str) -> str:
    """Return an amount without what its key says already: ``$56/hr`` at ``hour``.

    So of ``14.75 per bag`` at ``price_per_bag``; any other text stays as it is.
    """
    words = _THINGS.get(key.rpartition("_per_")[2])
    by = r"(?:/|\b(?:per|an?|each|the|je|pro|die)\b)"
    found = re.fullmatch(rf"(.*\S)\s*{by}\s*(?:{words})\.?", _plain(text)) if words else None
    return text if found is None else found[1].strip()


def rated(text: str, key: str) -> Decimal | None:
    """Return a text's rate in the units of a key's name; None if it is no such rate.

    ``$56`` or ``56 an hour`` at ``hour``, ``$0.19/lb`` or ``$17.86 a bag of 94 lb`` at
    ``price_per_kg``, ``370 sq ft per gal`` at ``coverage_m2_per_l``: to six decimals, in the
    profile's currency, in hours, or in the unit before ``per``.
    """
    name = f"_{key.removesuffix('_coat')}"
    ending = max((e for e in _PER if name.endswith(e)), key=len, default=None)
    found = _RATE.fullmatch(_plain(text))
    if ending is None and not any(name.endswith(e) for e in _UNITS if e != "_hour"):
        return _plain_amount(text, key)
    if ending is None or found is None:
        return None
    per = _in(found[2].strip(), _PER[ending], usual=Fraction(1))
    of = _amount_of(found[1].strip(), name.removesuffix(ending))
    return None if not per or of is None else _decimal(of / per)


def _plain_amount(text: str, key: str) -> Decimal | None:
    """An amount with a currency's sign, or with what its key says already."""
    amount = without_thing(text, key)
    if amount == text and not _SIGNS.search(text):
        return None
    read = _in(_plain(amount), {"": Fraction(1)})
    return None if read is None else _decimal(read)


def canonical(value: object, key: str) -> Decimal | None:
    """Return a number or a measure in the unit of its key; None if it is neither."""
    if isinstance(value, str):
        return _measure_or_rate(value, key)
    is_number = isinstance(value, int | Decimal) and not isinstance(value, bool)
    return Decimal(str(value)) if is_number else None


@lru_cache(maxsize=2048)  # a profile has some hundreds, and each is compared with three others
def _measure_or_rate(text: str, key: str) -> Decimal | None:
    read = measured(text, key)
    return rated(text, key) if read is None else read


def _length_mm(text: str) -> Decimal | None:
    try:
        return _decimal(Length.parse(text).exact_mm)
    except QuantityError:
        return None


def _celsius(plain: str) -> Decimal | None:
    """A temperature in °C, of one in °C or °F."""
    found = re.fullmatch(r"(-?\d+(?:\.\d+)?) ?°?([cf])", plain, re.ASCII)
    if found is None:
        return None
    warmth = Fraction(found[1])
    return _decimal(warmth if found[2] == "c" else (warmth - 32) * Fraction(5, 9))


def _plain(text: str) -> str:
    """The text in small letters with one name for each unit, without signs of currency."""
    plain = _SIGNS.sub("", text).strip().lower()
    for written, name in _NAMES.items():
        plain = re.sub(written, name, plain)
    return plain


def _amount_of(text: str, name: str) -> Fraction | None:
    """Return the amount before ``per``: with a unit where its name ends in one, else without.

    Hours may be without: their key says so.
    """
    ending = f"_{name.rpartition('_')[2]}"
    bare = _in(text, {"": Fraction(1)})
    if ending not in _UNITS or (ending == "_hours" and bare is not None):
        return bare
    return _in(text, _UNITS[ending])


def _in(text: str, units: _Units, *, usual: Fraction | None = None) -> Fraction | None:
    """Return an amount with one of some units in the unit whose factor is 1.

    Parameters
    ----------
    usual
        The amount where none stands before the unit.
    """
    found = _AMOUNT.match(text)
    amount = usual if found is None else _exact(found)
    per = units.get(text[found.end() if found else 0 :].strip())
    return None if amount is None or per is None else amount * per


def _decimal(amount: Fraction) -> Decimal:
    return Decimal(round(amount * 10**_PLACES)).scaleb(-_PLACES).normalize()


def _exact(found: re.Match[str]) -> Fraction:
    whole, over, under, plain = found.groups()
    if plain is not None:
        return Fraction(plain)
    return int(whole or 0) + Fraction(int(over), int(under) or 1)


def _of_cylinder(cube: Fraction) -> Fraction:
    """The strength by cylinder of one that was measured by cube, between the classes linearly."""
    low, high = (Fraction(0), Fraction(0)), (Fraction(105), Fraction(90))
    for by_cube, by_cylinder in _BY_CUBE:
        if by_cube <= cube:
            low = (Fraction(by_cube), Fraction(by_cylinder))
        else:
            high = (Fraction(by_cube), Fraction(by_cylinder))
            break
    if cube >= low[0] >= high[0]:
        return cube * low[1] / low[0]
    return low[1] + (cube - low[0]) * (high[1] - low[1]) / (high[0] - low[0])
