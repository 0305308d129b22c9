"""How each kind of value is written in a language: numbers, amounts, days, masses, lengths."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from types import MappingProxyType
from typing import Any, Final

from babel import Locale
from babel.dates import format_date

from ledgerstone.message import Figure, Money, Percent, Weekday, Weight
from ledgerstone.quantities import Length

_SIGNS: Final = {"GBP": "£", "EUR": "€", "USD": "$"}
_INCHES: Final = {"de": (" in", " Zoll"), "en": (" in", " in")}
_WEEKDAY: Final = {"de": "EEEE, d. MMMM", "en": "EEEE d MMMM"}
_FEET: Final = {"de": (" ft", " Fuß"), "en": (" ft", " ft")}


@dataclass(frozen=True, slots=True)
class Formats:
    """How values are written in one place.

    Parameters
    ----------
    locale
        The place's language and country, as Babel names them: its data are Unicode's (CLDR).
    """

    locale: Locale

    def written(self, value: object) -> str:
        """Write a value of any kind that is no message; a text and a whole number as they are."""
        write = _WRITE.get(type(value))
        return str(value) if write is None else write(self, value)

    def number(self, text: str) -> str:
        """Write a number that stands in figures with a point and no groups."""
        return text.replace(".", self._symbol("decimal"))

    def fixed(self, figure: Figure) -> str:
        """Write a number with its own number of places."""
        return self.number(f"{figure.amount:.{figure.places}f}")

    def figure(self, number: float) -> str:
        """Write a number with at most six figures."""
        return self.number(f"{number:g}")

    def money(self, money: Money) -> str:
        """Write an amount; its code where the sign is not known everywhere."""
        whole, _, part = f"{abs(money.amount):,.2f}".partition(".")
        figures = whole.replace(",", self._symbol("group")) + self._symbol("decimal") + part
        minus = "−" if money.amount < 0 else ""
        sign = _SIGNS.get(money.currency)
        if not self.locale.currency_formats["standard"].pattern.startswith("¤"):
            return f"{minus}{figures} {sign or money.currency}"
        return f"{minus}{sign}{figures}" if sign else f"{minus}{money.currency} {figures}"

    def percent(self, share: Percent) -> str:
        """Write a share."""
        gap = " " if self.locale.language == "de" else ""
        return f"{self.number(f'{share.amount.normalize():f}')}{gap}%"

    def weight(self, weight: Weight) -> str:
        """Write a mass to a tenth of a kilogram."""
        return f"{self.figure(round(weight.kg, 1))} kg"

    def day(self, day: date) -> str:
        """Write a day with its month's name."""
        return format_date(day, "long", locale=self.locale)

    def weekday(self, weekday: Weekday) -> str:
        """Write a day with its day of the week, as the language orders them."""
        pattern = _WEEKDAY[self.locale.language]
        year = f" {weekday.day.year}" if weekday.with_year else ""
        return f"{format_date(weekday.day, pattern, locale=self.locale)}{year}"

    def length(self, length: Length) -> str:
        """Write a length in the unit in which it came."""
        said = self.number(length.text())
        for unit in (_INCHES, _FEET):
            said = said.replace(*unit[self.locale.language])
        return said

    def _symbol(self, name: str) -> str:
        symbols = self.locale.number_symbols
        return str(symbols.get("latn", symbols)[name])


_WRITE: Final[Mapping[type, Callable[[Formats, Any], str]]] = MappingProxyType(
    {
        Money: Formats.money,
        Percent: Formats.percent,
        Weight: Formats.weight,
        Figure: Formats.fixed,
        Weekday: Formats.weekday,
        Length: Formats.length,
        date: Formats.day,
        float: Formats.figure,
    }
)


def percent_of(amount: Decimal | float) -> Percent:
    """Make a share of a number, without the noise of a float."""
    return Percent(amount if isinstance(amount, Decimal) else Decimal(repr(amount)))
