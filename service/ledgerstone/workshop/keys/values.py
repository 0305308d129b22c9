"""What may stand at one key of a profile: TOML value in; value, or the reason why not, out.

Every reader takes ``(value, key)`` and raises ``ValueRejected`` if the value does not fit; its text
follows the key in print, so it says "this".
"""

from __future__ import annotations

import math
import re
import unicodedata
from collections.abc import Callable, Mapping
from datetime import date, datetime
from decimal import Decimal
from difflib import get_close_matches
from typing import Any, Literal

from ledgerstone.message import Message, Percent, Value
from ledgerstone.workshop.keys.measures import measured, rated
from ledgerstone.workshop.keys.value_keys import Key, KeyUnit, wanted

LONGEST_PROFILE_TEXT = 300
_MARKUP = "margin_percent"
LARGEST_NUMBER = 10**9
MAX_DECIMALS = 6
MAX_LISTED = 12
LONGEST_BITS = 200
LONGEST_NUMBER = 24


class ValueRejected(Exception):
    """A value that does not fit its place in a profile."""

    def __init__(self, message: Message) -> None:
        super().__init__(message.name)
        self.message = message


def found(value: object) -> dict[str, Value]:
    """Return the values of a message's ``fault-found``: what is in the wrong place."""
    if isinstance(value, bool):
        return {"found": "yes" if value else "no", "text": ""}
    if isinstance(value, str):
        return {"found": "text", "text": shortened(value)}
    if isinstance(value, list | dict):
        return {"found": "list" if isinstance(value, list) else "table", "text": ""}
    if isinstance(value, date):
        return {"found": "day", "text": str(value)}
    if isinstance(value, int | Decimal):
        return {"found": "number", "text": number_value(value)}
    return {"found": "time", "text": ""}


def number_value(value: int | Decimal) -> Value:
    """Return a number as a value of a message: as written, if it can be printed."""
    if isinstance(value, int) and value.bit_length() > LONGEST_BITS:
        return Message("fault-long-number")
    return shortened(value)


def shortened(value: object) -> str:
    """Return the value as one printable line of at most 40 characters."""
    text = "".join(c if c.isprintable() else "·" for c in str(value))
    return text if len(text) <= 40 else text[:39] + "…"


def nearest(word: object, known: tuple[str, ...]) -> dict[str, str]:
    """Return the values of ``fault-nearest``: the nearest known name, or all where few are."""
    close = get_close_matches(str(word).casefold(), known, n=1, cutoff=0.6)
    near = "guess" if close else "known" if 0 < len(known) <= MAX_LISTED else "none"
    return {"near": near, "guess": "".join(close), "known": ", ".join(known)}


def unfit(
    value: object, belongs: str, *, unit: KeyUnit | None = None, quoted: bool = False
) -> Message:
    """Return the error of a wrong value: what is valid there, and what was found."""
    in_quotes = "yes" if quoted else "no"
    return Message("fault-unfit", wanted=belongs, unit=unit or "", quoted=in_quotes, **found(value))


def _unfit(value: object, kind: type, key: Key) -> ValueRejected:
    numbers = (int, float, Decimal, bool, date)
    quoted = isinstance(value, str) and kind in numbers and _would_be_a_value(value)
    return ValueRejected(unfit(value, wanted(kind, key), unit=key.unit, quoted=quoted))


def _would_be_a_value(text: str) -> bool:
    """Return whether the text would be a number, a flag or a day without its quotation marks."""
    if text in ("true", "false"):
        return True
    for read in (float, date.fromisoformat):
        try:
            read(text)
        except ValueError:
            continue
        return True
    return False


def filled(value: object, key: Key) -> object:
    """Return a value that is not an empty text.

    Raises
    ------
    ValueRejected
    """
    if isinstance(value, str) and not value.strip():
        raise ValueRejected(Message("fault-empty", about=key.about))
    return value


def text(value: object, key: Key) -> str:
    """Read one line of printable text.

    Raises
    ------
    ValueRejected
        It is no text, too long or unprintable.
    """
    if not isinstance(value, str):
        raise _unfit(value, str, key)
    stripped = value.strip()
    if len(stripped) > LONGEST_PROFILE_TEXT:
        raise ValueRejected(
            Message("fault-too-long", count=len(stripped), longest=LONGEST_PROFILE_TEXT)
        )
    if any(unicodedata.category(c) in ("Cc", "Cf", "Zl", "Zp") for c in stripped):
        raise ValueRejected(Message("fault-unprintable"))
    return stripped


def flag(value: object, key: Key) -> bool:
    """Read true or false.

    Raises
    ------
    ValueRejected
        It is neither.
    """
    if not isinstance(value, bool):
        raise _unfit(value, bool, key)
    return value


def day(value: object, key: Key) -> date:
    """Read a day, without a time.

    Raises
    ------
    ValueRejected
        It is no day.
    """
    if isinstance(value, datetime) or not isinstance(value, date):
        raise _unfit(value, date, key)
    return value


def whole(value: object, key: Key) -> int:
    """Read a whole number within the key's bounds.

    Raises
    ------
    ValueRejected
        It is no whole number, or out of bounds.
    """
    if isinstance(value, bool) or not isinstance(value, int):
        raise _unfit(value, int, key)
    return int(_bounded(Decimal(value), key))


def number(value: object, key: Key) -> float:
    """Read a finite number within the key's bounds.

    Raises
    ------
    ValueRejected
        It is no number, or out of bounds.
    """
    return float(_bounded(_decimal(value, float, key), key))


def money(value: object, key: Key) -> Decimal:
    """Read an exact number within the key's bounds, with at most six decimals.

    Raises
    ------
    ValueRejected
        It is no number, out of bounds, or has more decimals.
    """
    amount = _bounded(_decimal(value, Decimal, key), key)
    exponent = amount.as_tuple().exponent
    if isinstance(exponent, int) and -exponent > MAX_DECIMALS:
        raise ValueRejected(Message("fault-decimals", count=-exponent, most=MAX_DECIMALS))
    return amount


def _decimal(value: object, kind: type, key: Key) -> Decimal:
    if isinstance(value, str):
        _ask_of_a_factor(value, key)
        read = measured(value, _name_with_unit(kind, key)) if kind is float else None
        read = rated(value, key.name) if read is None else read
        value = value if read is None else read
    if isinstance(value, bool) or not isinstance(value, int | Decimal):
        raise _unfit(value, kind, key)
    return Decimal(value)


def _ask_of_a_factor(value: str, key: Key) -> None:
    """Ask whether a markup of 1.35 is the percent that it says, or a factor of the cost."""
    if key.name == _MARKUP and re.fullmatch(r"[123][.,]\d+", value.strip()):
        factor = Decimal(value.strip().replace(",", "."))
        values = {"factor": Percent(factor), "meant": Percent((factor - 1) * 100)}
        raise ValueRejected(Message("fault-factor", **values))


def _name_with_unit(kind: type, key: Key) -> str:
    is_time = "_per_" not in key.name and (unit := wanted(kind, key)) in ("hours", "days")
    return unit if is_time else key.name


def _bounded(value: Decimal, key: Key) -> Decimal:
    """Check the value against the metadata's ``at_least``, ``above`` and ``at_most``."""
    if not value.is_finite() or abs(value) > LARGEST_NUMBER:
        raise _out_of_bound(value, "finite", LARGEST_NUMBER, key)
    bounds = key.metadata
    if "above" in bounds and not value > _exact(bounds["above"]):
        raise _out_of_bound(value, "above", bounds["above"], key)
    if "at_least" in bounds and not value >= _exact(bounds["at_least"]):
        raise _out_of_bound(value, "least", bounds["at_least"], key)
    if "at_most" in bounds and not value <= _exact(bounds["at_most"]):
        raise _out_of_bound(value, "most", bounds["at_most"], key)
    return value if math.isfinite(value) else Decimal(0)


def _out_of_bound(value: Decimal, bound: str, limit: float, key: Key) -> ValueRejected:
    allows: Literal["up", "down"] = "up" if bound in ("above", "least") else "down"
    here: Value = key.number(value)
    if not value.is_finite() or len(format(value, "f")) > LONGEST_NUMBER:
        here = Message("fault-long-number")
    most = key.number(_exact(limit), allows)
    return ValueRejected(Message("fault-bound", value=here, bound=bound, limit=most))


def _exact(bound: object) -> Decimal:
    return Decimal(str(bound))


def choice(value: object, options: tuple[str, ...]) -> str:
    """Read one of a few words.

    Raises
    ------
    ValueRejected
        It is none of them.
    """
    if not isinstance(value, str) or value not in options:
        listed = ", ".join(f'"{option}"' for option in options)
        near = nearest(value, options)
        near["near"] = "guess" if near["guess"] else "none"  # they are listed already
        raise ValueRejected(Message("fault-choice", options=listed, **found(value), **near))
    return value


READERS: Mapping[type, Callable[[object, Key], Any]] = {
    str: text,
    bool: flag,
    int: whole,
    float: number,
    Decimal: money,
    date: day,
}
