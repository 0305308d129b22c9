"""How the workshop's own figures are written: as a rule, a tape, a scale or a beaker shows them."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from datetime import time
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_EVEN, Decimal
from fractions import Fraction
from types import MappingProxyType
from typing import Any, Final

from babel.dates import format_time

from ledgerstone.message import (
    Area,
    AreaLoad,
    Clock,
    Density,
    Force,
    Gauge,
    Mass,
    Percent,
    Ruled,
    RunningLength,
    SmallVolume,
    Weighed,
)
from ledgerstone.quantities import (
    FOOT_M,
    INCH_MM,
    KG_PER_LB,
    LITRES_PER_GALLON,
    MPA_PER_PSI,
    N_PER_LBF,
)
from ledgerstone.wording.formats import Formats
from ledgerstone.wording.profile import about_in
from ledgerstone.workshop.entry.local_units import number_shown, rounded, unit_named
from ledgerstone.workshop.keys.value_keys import AboutKey, KeyNumber, KeyUnit
from ledgerstone.workshop.records.members import member_named

_ROUNDING: Final = MappingProxyType(
    {"nearest": ROUND_HALF_EVEN, "up": ROUND_CEILING, "down": ROUND_FLOOR}
)
_TAPE: Final = 32  # the finest marks of a tape, to the inch: common practice, no source
_HOLD: Final = 4
_STOCK: Final = 64  # what is sold by fractions of an inch
_HARDLY_MM: Final = 3.0  # smaller sizes are written in decimals
_EXACT_MM: Final = 0.05
_OUNCES: Final = 16
_PLACES: Final = 4  # of a number that somebody typed in another unit
_ML_PER_FLUID_OUNCE: Final = 1000 * LITRES_PER_GALLON / 128  # NIST Handbook 44, appendix C
_FINE_KG: Final = 0.01
_M2_PER_FT2: Final = FOOT_M**2


def written(formats: Formats, value: object) -> str:
    """Write a value of any kind that is no message: the workshop's figures, and all others."""
    write = _WRITE.get(type(value))
    return formats.written(value) if write is None else write(formats, value)


def _ruled(formats: Formats, length: Ruled) -> str:
    cut = math.floor if length.down else round
    if formats.place.lengths != "in":
        halves = cut(2 * length.mm + (1e-9 if length.down else 0)) / 2
        return formats.number(f"{halves:.0f}" if halves.is_integer() else f"{halves:.1f}")
    if abs(length.mm) < _HARDLY_MM:
        return _in_decimals(formats, length.mm)
    to = _HOLD if length.coarse else _TAPE
    marks = cut(to * length.mm / INCH_MM + (1e-9 if length.down else 0))
    return _mixed(Fraction(marks, to))


def _running(formats: Formats, length: RunningLength) -> str:
    if formats.place.lengths != "in":
        return f"{formats.number(f'{length.metres:.1f}')} m"
    return f"{formats.number(f'{length.metres / FOOT_M:.1f}')} ft"


def _gauge(formats: Formats, size: Gauge) -> str:
    if formats.place.lengths != "in":
        return formats.number(_trimmed(f"{size.mm:.3f}"))
    sold = Fraction(round(_STOCK * size.mm / INCH_MM), _STOCK)
    if size.mm >= _HARDLY_MM and abs(float(sold) * INCH_MM - size.mm) <= _EXACT_MM:
        return _mixed(sold)
    return _in_decimals(formats, size.mm)


def _in_decimals(formats: Formats, mm: float) -> str:
    return formats.number(_trimmed(f"{mm / INCH_MM:.2f}"))


def _mixed(inches: Fraction) -> str:
    whole, rest = divmod(abs(inches), 1)
    text = " ".join(str(part) for part in (whole, rest) if part) or "0"
    return f"-{text}" if inches < 0 else text


def _trimmed(figures: str) -> str:
    return figures.rstrip("0").rstrip(".")


def _mass(formats: Formats, mass: Mass) -> str:
    if formats.place.masses == "kg":
        return f"{formats.number(f'{mass.kg:.{mass.places}f}')} kg"
    pounds = mass.kg / KG_PER_LB
    if pounds < 1 and mass.places:
        return f"{formats.number(f'{_OUNCES * pounds:.2f}')} oz"
    return f"{formats.number(f'{pounds:.{mass.places}f}')} lb"


def _weighed(formats: Formats, mass: Weighed) -> str:
    is_fine = mass.step_kg < _FINE_KG
    if formats.place.masses == "kg":
        return formats.number(f"{mass.kg:.{3 if is_fine else 2}f}")
    pounds = mass.kg / KG_PER_LB
    if is_fine:
        return f"{formats.number(f'{_OUNCES * pounds:.2f}')} oz"
    return formats.number(f"{pounds:.2f}")


def _small_volume(formats: Formats, volume: SmallVolume) -> str:
    if formats.place.volumes == "l" and volume.as_litres is not None:
        return f"{formats.number(f'{volume.ml / 1000:.{volume.as_litres}f}')} l"
    if formats.place.volumes == "l":
        return f"{volume.ml:.0f} ml"
    return f"{formats.number(f'{volume.ml / _ML_PER_FLUID_OUNCE:.1f}')} fl oz"


def _area(formats: Formats, area: Area) -> str:
    if formats.place.lengths != "in":
        return f"{formats.number(f'{area.m2:.2f}')} m²"
    return f"{formats.number(f'{area.m2 / _M2_PER_FT2:.1f}')} ft²"


def _density(formats: Formats, density: Density) -> str:
    if formats.place.masses == "kg":
        return f"{formats.number(f'{density.kg_per_m3:.0f}')} kg/m³"
    per_yard = density.kg_per_m3 * (3 * FOOT_M) ** 3 / KG_PER_LB
    return f"{formats.grouped(round(per_yard))} lb/yd³"


def _force(formats: Formats, force: Force) -> str:
    if formats.place.strengths != "psi":
        return f"{force.newtons:.0f} N"
    return f"{formats.grouped(round(force.newtons / N_PER_LBF))} lb"


def _pressure(formats: Formats, load: AreaLoad) -> str:
    if formats.place.strengths != "psi":
        return f"{load.n_per_m2:.0f} N/m²"
    per_foot = load.n_per_m2 / 1e6 / MPA_PER_PSI * 144
    return f"{formats.grouped(round(per_foot))} lb/ft²"


def _clock(formats: Formats, clock: Clock) -> str:
    at = time(clock.hour, clock.minute)
    if "a" in str(formats.locale.time_formats["short"].pattern):
        return str(format_time(at, "h:mmaaaaa", locale=formats.locale))
    return str(format_time(at, "short", locale=formats.locale))


def _about(formats: Formats, about: AboutKey) -> str:
    language = formats.locale.language
    return about_in(language, about.record, about.key, about.english, formats.place)


def _key_number(formats: Formats, number: KeyNumber) -> str:
    member = member_named(number.record, number.key)
    amount = number.amount
    exact = amount if isinstance(amount, Decimal) else Decimal(repr(amount))
    if exact == exact.to_integral_value():
        exact = Decimal(int(exact))
    text = number_shown(exact, member, formats.place, _ROUNDING[number.rounding])
    if text is not None and len(text.partition(".")[2]) > _PLACES:
        text = rounded(Fraction(text), _ROUNDING[number.rounding])
    return f"{formats.number(str(text))}{_key_unit(formats, KeyUnit(number.record, number.key))}"


def _key_unit(formats: Formats, unit: KeyUnit) -> str:
    """A unit as it follows a number; days are said by what they count."""
    name = unit_named(member_named(unit.record, unit.key), formats.place)
    if name == "%":
        return formats.percent(Percent(Decimal(1))).removeprefix("1")
    if name in ("", "d"):
        return ""
    return name if name.startswith("/") else f" {name}"


_WRITE: Final[Mapping[type, Callable[[Formats, Any], str]]] = MappingProxyType(
    {
        AboutKey: _about,
        KeyNumber: _key_number,
        KeyUnit: _key_unit,
        Ruled: _ruled,
        RunningLength: _running,
        Gauge: _gauge,
        Mass: _mass,
        Weighed: _weighed,
        SmallVolume: _small_volume,
        Area: _area,
        Density: _density,
        Force: _force,
        AreaLoad: _pressure,
        Clock: _clock,
    }
)
