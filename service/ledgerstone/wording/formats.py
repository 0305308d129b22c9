"""How each kind of value is written in a language: numbers, amounts, days, masses, lengths."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from types import MappingProxyType
from typing import Any, Final

from babel import Locale
from babel.dates import format_date, format_interval
from babel.numbers import format_currency, format_decimal

from ledgerstone.message import (
    DateRange,
    DayMonth,
    Figure,
    MassPerLength,
    Money,
    Percent,
    Spelled,
    Strength,
    Temperature,
    Volume,
    Weekday,
    WeekdayName,
    Weight,
)
from ledgerstone.quantities import (
    FOOT_M,
    INCH_MM,
    KG_PER_LB,
    LITRES_PER_GALLON,
    MPA_PER_PSI,
    Length,
)
from ledgerstone.workshop.countries import RegionalSettings

# CLDR sets thin spaces round the dash of a span; none between two numbers.
_BETWEEN_NUMBERS: Final = re.compile(r"(?<=[0-9.])\N{THIN SPACE}–\N{THIN SPACE}(?=[0-9])")
_INCHES: Final = {"de": (" in", " Zoll"), "en": (" in", " in")}
_FEET: Final = {"de": (" ft", " Fuß"), "en": (" ft", " ft")}
_SIXTEENTH_MM: Final = INCH_MM / 16
_HARDLY_MM: Final = 3.0
_METRE_MM: Final = 1000.0
_COARSE_PSI: Final = 1000


@dataclass(frozen=True, slots=True)
class Formats:
    """How values are written in one place.

    Parameters
    ----------
    locale
        The place's language and country, as Babel names them: its data are Unicode's (CLDR).
    place
        The units that are spoken there.
    """

    locale: Locale
    place: RegionalSettings

    def written(self, value: object) -> str:
        """Write a value of any kind that is no message; a text and a whole number as they are."""
        write = _WRITE.get(type(value))
        return str(value) if write is None else write(self, value)

    @property
    def point(self) -> str:
        """The decimal separator."""
        return self._symbol("decimal")

    def number(self, text: str) -> str:
        """Write a number that is given with a point and without groups."""
        return text.replace(".", self.point)

    def spelled(self, spelled: Spelled) -> str:
        """Write a number that is spelled out with its unit."""
        return self.number(spelled.text)

    def fixed(self, figure: Figure) -> str:
        """Write a number with its own number of places."""
        return self.number(f"{figure.amount:.{figure.places}f}")

    def figure(self, number: float) -> str:
        """Write a number with at most six figures."""
        return self.number(f"{number:g}")

    def money(self, money: Money) -> str:
        """Write an amount in the locale's format; a space follows a currency's letters."""
        text = format_currency(abs(money.amount), money.currency, locale=self.locale)
        text = re.sub("[\N{NO-BREAK SPACE}\N{NARROW NO-BREAK SPACE}]", " ", text)
        return ("−" if money.amount < 0 else "") + re.sub(r"(?<=[A-Z]{3})(?=\d)", " ", text)

    def percent(self, share: Percent) -> str:
        """Write a share."""
        gap = " " if "\N{NO-BREAK SPACE}" in self.locale.percent_formats[None].pattern else ""
        return f"{self.number(f'{share.amount.normalize():f}')}{gap}%"

    def weight(self, weight: Weight) -> str:
        """Write a mass to a tenth of a kilogram, or to a pound from ten pounds on."""
        if self.place.masses == "kg":
            return f"{self.figure(round(weight.kg, 1))} kg"
        pounds = weight.kg / KG_PER_LB
        return f"{self.grouped(round(pounds, 0 if pounds >= 10 else 1))} lb"

    def line_load(self, load: MassPerLength) -> str:
        """Write the mass on each metre, or on each foot where masses are in pounds."""
        each_m = 1.0 if self.place.masses == "kg" else FOOT_M
        return self.weight(Weight(load.kg_per_m * each_m))

    def temperature(self, temperature: Temperature) -> str:
        """Write a temperature: a tenth of a degree Celsius, or a whole one Fahrenheit."""
        if self.place.temperatures == "C":
            return f"{self.figure(round(temperature.celsius, 1))} °C"
        return f"{self.figure(round(temperature.celsius * 1.8 + 32))} °F"

    def volume(self, volume: Volume) -> str:
        """Write a volume in litres or in US gallons."""
        unit, per = ("l", 1.0) if self.place.volumes == "l" else ("gal", LITRES_PER_GALLON)
        amount = volume.litres / per
        text = self.grouped(_to_figures(amount))
        if volume.places is not None:
            places = volume.places + (unit == "gal")  # a gallon is nearly four litres
            text = self.number(f"{amount:.{places}f}")
        return text if volume.bare else f"{text} {unit}"

    def strength(self, strength: Strength) -> str:
        """Write a strength in MPa or N/mm², or in psi: to ten of them from a thousand on."""
        if self.place.strengths != "psi":
            unit = "N/mm²" if self.place.strengths == "N/mm2" else "MPa"
            text = self.number(f"{strength.mpa:.{strength.places}f}")
        else:
            unit, psi = "psi", strength.mpa / MPA_PER_PSI
            text = self.grouped(round(psi, -1 if psi >= _COARSE_PSI else 0))
        return text if strength.bare else f"{text} {unit}"

    def grouped(self, number: float) -> str:
        """Write a number with its groups of thousands."""
        return format_decimal(number, locale=self.locale).replace("\N{NO-BREAK SPACE}", " ")

    def day(self, day: date) -> str:
        """Write a day with its month's name."""
        return format_date(day, "long", locale=self.locale)

    def weekday(self, weekday: Weekday) -> str:
        """Write a day with its day of the week, as the place orders them."""
        pattern, year = self._weekday_pattern()
        text = format_date(weekday.day, pattern, locale=self.locale)
        return f"{text}{year}{weekday.day.year}" if weekday.with_year else text

    def _weekday_pattern(self) -> tuple[str, str]:
        """The pattern of a day without its year, and what stands before that."""
        if self.locale.language == "de":
            return "EEEE, d. MMMM", " "
        begins_with_month = str(self.locale.date_formats["long"].pattern).startswith("M")
        return ("EEEE, MMMM d", ", ") if begins_with_month else ("EEEE d MMMM", " ")

    def day_month(self, day: DayMonth) -> str:
        """Write a day without its year, as the place orders it: for a narrow column."""
        pattern = self._weekday_pattern()[0]
        if day.short:
            pattern = pattern.replace("EEEE,", "EEE").replace("EEEE", "EEE").replace("MMMM", "MMM")
        else:
            pattern = pattern.replace("EEEE, ", "").replace("EEEE ", "")
        return format_date(day.day, pattern, locale=self.locale)

    def days(self, days: DateRange) -> str:
        """Write a range of days, with their common part once: ``22–23 Dec 2026``."""
        if days.first == days.last:
            return self.day(days.first)
        text = str(format_interval(days.first, days.last, "yMMMMd", locale=self.locale))
        return _BETWEEN_NUMBERS.sub("–", text).replace("\N{THIN SPACE}", " ")

    def weekday_name(self, day: WeekdayName) -> str:
        """Write a day's name alone, short."""
        return format_date(day.day, "EEE", locale=self.locale)

    def length(self, length: Length) -> str:
        """Write a length in the unit in which someone typed it, else in the place's own.

        Whoever measures in metres reads what is shorter in millimetres: 2.7 m, 620 mm, 3 mm.
        """
        shown = self._in_place(length)
        if shown.unit == "m" and abs(shown.mm) < _METRE_MM:
            shown = replace(shown, unit="mm")
        text = self.number(shown.text())
        for unit in (_INCHES, _FEET):
            text = text.replace(*unit[self.locale.language])
        return text

    def _in_place(self, length: Length) -> Length:
        """Convert a length in millimetres that was not typed to the unit of the country.

        In inches it goes to a sixteenth, and what is hardly longer to a hundredth.
        """
        unit = self.place.lengths
        if length.origin == "text" or length.unit != "mm" or unit == "mm":
            return length
        spoken = replace(length, unit=unit, origin="worked")
        if unit != "in":
            return spoken
        if abs(length.mm) < _HARDLY_MM:
            return spoken.in_unit(round(length.mm / INCH_MM, 2) * INCH_MM)
        return spoken.like(length.mm, to_mm=_SIXTEENTH_MM)

    def _symbol(self, name: str) -> str:
        symbols = self.locale.number_symbols
        return str(symbols.get("latn", symbols)[name])


_WRITE: Final[Mapping[type, Callable[[Formats, Any], str]]] = MappingProxyType(
    {
        Money: Formats.money,
        Percent: Formats.percent,
        Weight: Formats.weight,
        MassPerLength: Formats.line_load,
        Temperature: Formats.temperature,
        Volume: Formats.volume,
        Strength: Formats.strength,
        Figure: Formats.fixed,
        Spelled: Formats.spelled,
        Weekday: Formats.weekday,
        DayMonth: Formats.day_month,
        DateRange: Formats.days,
        WeekdayName: Formats.weekday_name,
        Length: Formats.length,
        date: Formats.day,
        float: Formats.figure,
    }
)


def _to_figures(number: float) -> float:
    """Round a volume as people measure it: 28.37, 4.1, 128."""
    return round(number, 2 if number < 10 else 1 if number < 100 else 0)


def percent_of(amount: Decimal | float) -> Percent:
    """Make a share of a number, without the noise of a float."""
    return Percent(amount if isinstance(amount, Decimal) else Decimal(repr(amount)))
