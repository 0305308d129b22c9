"""Values in English, for what is not in the catalogues yet, by the formats that these have."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import Decimal

from babel import Locale

from ledgerstone.message import Money, Percent, Weight
from ledgerstone.wording.formats import Formats
from ledgerstone.workshop.countries import usual_in

_ENGLISH = Formats(Locale("en", "GB"), usual_in("GB"))
_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight")


def money_text(currency: str, amount: Decimal) -> str:
    """Format an amount: ``£1,021.00``, or ``CHF 967.00`` where the sign is not known everywhere."""
    return _ENGLISH.money(Money(currency, amount))


def percent_text(percent: Decimal) -> str:
    """Format a share: ``20%``."""
    return _ENGLISH.percent(Percent(percent))


def day_text(day: date) -> str:
    """Format a day: ``25 March 2027``."""
    return _ENGLISH.day(day)


def weight_text(kg: float) -> str:
    """Format a mass to a tenth of a kilogram, as the quote gives it: ``68.5 kg``, ``75 kg``."""
    return _ENGLISH.weight(Weight(kg))


def people_text(number: int) -> str:
    """State how many people: ``one person``, ``three people``, ``12 people``."""
    figure = _NUMBERS[number] if number < len(_NUMBERS) else str(number)
    return f"{figure} {'person' if number == 1 else 'people'}"


def listed(things: Sequence[str], *, most: int | None = None) -> str:
    """Join items as in a sentence: “one, two and three”.

    Parameters
    ----------
    most
        Of more things than this, the first two are named and the others counted.
    """
    if len(things) < 2:
        return "".join(things)
    if most is not None and len(things) > most:
        return f"{things[0]}, {things[1]} and {len(things) - 2} more"
    return f"{', '.join(things[:-1])} and {things[-1]}"


def capital(sentence: str) -> str:
    """Begin a sentence with a capital, past an opening quotation mark."""
    at = 1 if sentence[:1] in ("“", "„") else 0
    return sentence[:at] + sentence[at : at + 1].upper() + sentence[at + 1 :]
