"""How much of one unit is in another, exact; the only place that knows pint."""

from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType
from typing import Final, get_args

from pint import UnitRegistry

from ledgerstone._length_grammar import UnitName

# A yard is 0.9144 m exactly, so that an inch is 25.4 mm and a foot 304.8 mm, and a pound is
# 0.45359237 kg: US Federal Register 24 FR 5348 (1 July 1959), the same six nations' agreement as
# holds in Britain. A US gallon is 231 cubic inches: NIST Handbook 44, appendix C. The standard
# acceleration of gravity, for the pound of force: NIST SP 811, appendix B.8.
_DEFINITIONS: Final = (
    "millimetre = [length] = mm",
    "centimetre = 10 millimetre = cm",
    "metre = 1000 millimetre = m",
    "inch = 25.4 millimetre = in",
    "foot = 12 inch = ft",
    "yard = 3 foot = yd",
    "litre = 1000000 millimetre ** 3 = l",
    "gallon = 231 inch ** 3 = gal",
    "kilogram = [mass] = kg",
    "pound = 0.45359237 kilogram = lb",
    "second = [time] = s",
    "newton = kilogram * metre / second ** 2 = N",
    "pound_force = 9.80665 pound * metre / second ** 2 = lbf",
    "megapascal = newton / millimetre ** 2 = MPa",
    "psi = pound_force / inch ** 2",
)


def _registry() -> "UnitRegistry[Fraction]":
    """Make a registry that knows these units and no more, in exact numbers."""
    registry: UnitRegistry[Fraction] = UnitRegistry(None, non_int_type=Fraction)
    for definition in _DEFINITIONS:
        registry.define(definition)
    return registry


_REGISTRY: Final = _registry()


def factor(unit: str, to: str) -> Fraction:
    """Return how many of a unit are in one of another, exact: 25.4 mm in an inch."""
    return Fraction(_REGISTRY.convert(Fraction(1), unit, to))


MM_PER: Final[Mapping[UnitName, Fraction]] = MappingProxyType(
    {unit: factor(unit, "mm") for unit in get_args(UnitName)}
)
INCH_MM: Final = float(factor("in", "mm"))
FOOT_M: Final = float(factor("ft", "m"))
KG_PER_LB: Final = float(factor("lb", "kg"))
LITRES_PER_GALLON: Final = float(factor("gal", "l"))
N_PER_LBF: Final = float(factor("lbf", "N"))
MPA_PER_PSI: Final = float(factor("psi", "MPa"))
KG_PER_M3_PER_LB_PER_YD3: Final = float(factor("lb / yd ** 3", "kg / m ** 3"))
