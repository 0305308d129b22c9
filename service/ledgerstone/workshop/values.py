"""What may stand at one key of a profile: TOML value in; value, or the reason why not, out.

Every reader takes ``(value, key)`` and raises ``ValueError`` with a plain sentence where the value
does not fit; the sentence follows the key in print, so it speaks of "this".
"""

from __future__ import annotations

import math
import unicodedata
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from difflib import get_close_matches
from typing import Any

from ledgerstone.workshop.measures import measured

LONGEST_TEXT = 300
LARGEST_NUMBER = 10**9
MOST_DECIMALS = 6

_BY_ENDING: tuple[tuple[str, str], ...] = (
    ("_mm", "a length in millimetres, like 40"),
    ("percent", "a percentage, like 12.5"),
    ("hours", "a number of hours, like 0.75"),
    ("days", "a number of days, like 2"),
    ("_kg_per_m3", "kilograms in a cubic metre, like 480"),
    ("_kg_per_m2", "kilograms on a square metre, like 2.5"),
    ("_kg", "a mass in kilograms, like 25"),
    ("_mpa", "megapascals, like 40"),
    ("_c", "a temperature in degrees Celsius, like 60"),
    ("_m2_per_l", "square metres from a litre, like 10"),
)
_BY_RECORD: Mapping[str, str] = {
    "JobHours": "a number of hours, like 0.75",
    "PourHours": "a number of hours, like 0.75",
    "MouldHours": "a number of hours, like 0.75",
    "PieceHours": "a number of hours, like 0.75",
    "Days": "a number of days, like 1.5",
}


@dataclass(frozen=True, slots=True)
class Key:
    """One key of one record: its name, the record's name, its bounds and what it is about."""

    name: str
    record: str
    metadata: Mapping[str, Any]


def described(value: object) -> str:
    """Words for a TOML value that stands where it does not belong."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return f'the text "{shortened(value)}"'
    if isinstance(value, list):
        return "a list"
    if isinstance(value, dict):
        return "a table"
    if isinstance(value, date):
        return f"the date {value}"
    return f"the number {shortened(value)}" if isinstance(value, int | Decimal) else "a time of day"


def shortened(value: object) -> str:
    """Return the value as one printable line of at most 40 characters."""
    if isinstance(value, int) and abs(value) >= LARGEST_NUMBER:
        return "too long to print" if value.bit_length() > 200 else str(value)
    text = "".join(c if c.isprintable() else "·" for c in str(value))
    return text if len(text) <= 40 else text[:39] + "…"


def nearest(word: object, known: tuple[str, ...]) -> str:
    """Return the words that offer the nearest known name, or all of them where few are known."""
    close = get_close_matches(str(word).casefold(), known, n=1, cutoff=0.6)
    if close:
        return f'Perhaps "{close[0]}" was meant.'
    return f"Known here: {', '.join(known)}." if 0 < len(known) <= 12 else ""


def wanted(kind: type, key: Key) -> str:
    """Words for what belongs at this key, with an example."""
    if kind is str:
        return "a text in quotation marks"
    if kind is bool:
        return "true or false, without quotation marks"
    if kind is date:
        return "a day without quotation marks, like 2027-03-25"
    if kind is int:
        return "a whole number, like 3"
    return _measure(kind, key)


def _measure(kind: type, key: Key) -> str:
    for ending, words in _BY_ENDING:
        if key.name.endswith(ending) or (key.name + "_").startswith(f"{ending}_per_"):
            return words
    if key.name.startswith("hours_per_"):
        return _BY_RECORD["Hours"]
    if kind is Decimal:
        return "an amount of money, like 12.50"
    return _BY_RECORD.get(key.record, "a number, like 1.5")


def _unfit(value: object, kind: type, key: Key) -> ValueError:
    says = f"this is {wanted(kind, key)}; here stands {described(value)}."
    if isinstance(value, str) and kind in (int, float, Decimal, bool, date) and _bare(value):
        says += " Take the quotation marks off."
    return ValueError(says)


def _bare(text: str) -> bool:
    """Whether the text would be a number, a flag or a day without its quotation marks."""
    if text in ("true", "false"):
        return True
    for read in (float, date.fromisoformat):
        try:
            read(text)
        except ValueError:
            continue
        return True
    return False


def text(value: object, key: Key) -> str:
    """Read one line of printable text."""
    if not isinstance(value, str):
        raise _unfit(value, str, key)
    stripped = value.strip()
    if not stripped:
        raise ValueError(f"this is empty. Write {key.metadata.get('about', 'what it is')}.")
    if len(stripped) > LONGEST_TEXT:
        raise ValueError(f"this has {len(stripped)} characters; it holds {LONGEST_TEXT}.")
    if any(unicodedata.category(c) in ("Cc", "Cf", "Zl", "Zp") for c in stripped):
        raise ValueError("this holds a character that does not print. Write it on one line.")
    return stripped


def flag(value: object, key: Key) -> bool:
    """Read true or false."""
    if not isinstance(value, bool):
        raise _unfit(value, bool, key)
    return value


def day(value: object, key: Key) -> date:
    """Read a day, without a time."""
    if isinstance(value, datetime) or not isinstance(value, date):
        raise _unfit(value, date, key)
    return value


def whole(value: object, key: Key) -> int:
    """Read a whole number within the key's bounds."""
    if isinstance(value, bool) or not isinstance(value, int):
        raise _unfit(value, int, key)
    return int(_bounded(Decimal(value), key))


def number(value: object, key: Key) -> float:
    """Read a finite number within the key's bounds."""
    return float(_bounded(_decimal(value, float, key), key))


def money(value: object, key: Key) -> Decimal:
    """Read an exact number within the key's bounds, with at most six decimals."""
    amount = _bounded(_decimal(value, Decimal, key), key)
    exponent = amount.as_tuple().exponent
    if isinstance(exponent, int) and -exponent > MOST_DECIMALS:
        raise ValueError(f"this has {-exponent} decimals; write at most {MOST_DECIMALS}.")
    return amount


def _decimal(value: object, kind: type, key: Key) -> Decimal:
    if isinstance(value, str) and kind is float:
        value = measured(value, key.name) or value
    if isinstance(value, bool) or not isinstance(value, int | Decimal):
        raise _unfit(value, kind, key)
    return Decimal(value)


def _bounded(value: Decimal, key: Key) -> Decimal:
    """Check the value against the metadata's ``at_least``, ``above`` and ``at_most``."""
    if not value.is_finite() or abs(value) > LARGEST_NUMBER:
        raise ValueError(f"this is {shortened(value)}; write a number up to {LARGEST_NUMBER}.")
    bounds = key.metadata
    if "above" in bounds and not value > _exact(bounds["above"]):
        raise ValueError(f"this is {shortened(value)}; it needs to be above {bounds['above']}.")
    if "at_least" in bounds and not value >= _exact(bounds["at_least"]):
        raise ValueError(f"this is {shortened(value)}; it needs at least {bounds['at_least']}.")
    if "at_most" in bounds and not value <= _exact(bounds["at_most"]):
        raise ValueError(f"this is {shortened(value)}; it can be {bounds['at_most']} at most.")
    return value if math.isfinite(value) else Decimal(0)


def _exact(bound: object) -> Decimal:
    return Decimal(str(bound))


def choice(value: object, options: tuple[str, ...]) -> str:
    """Read one of a few words."""
    if not isinstance(value, str) or value not in options:
        near = get_close_matches(str(value).casefold(), options, n=1, cutoff=0.7)
        perhaps = f' Perhaps "{near[0]}" was meant.' if near else ""
        listed = ", ".join(f'"{option}"' for option in options)
        raise ValueError(f"this is one of {listed}; here stands {described(value)}.{perhaps}")
    return value


READERS: Mapping[type, Callable[[object, Key], Any]] = {
    str: text,
    bool: flag,
    int: whole,
    float: number,
    Decimal: money,
    date: day,
}
