"""Parsing of TOML with exact numbers, and syntax errors in plain words."""

from __future__ import annotations

import re
import tomllib
from decimal import Decimal
from typing import Any

from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.message import Message
from ledgerstone.workshop.lines import KeyLines

MONTHS = 12
_WORDS: tuple[tuple[str, str], ...] = (  # the beginning of the parser's message, and ours
    ("Invalid statement", "statement"),
    ("Expected '=' after a key", "equals"),
    ("Expected newline", "line"),
    ("Invalid value", "value"),
    ("Invalid date", "date"),
    ("Invalid initial character", "key"),
    ("Cannot overwrite", "twice"),
    ("Cannot declare", "twice"),
    ("Cannot redefine", "twice"),
    ("Cannot mutate", "twice"),
    ("Duplicate inline table key", "twice"),
    ("Expected ']' at the end", "bracket"),
    ("Expected ']]' at the end", "brackets"),
    ("Unclosed", "open"),
    ("Expected ", "quotes"),  # what is left of these names a quotation mark
    ("Illegal character '\\n'", "quotes"),
    ("Illegal character", "unprinted"),
    ("Found invalid character", "unprinted"),
    ("Unescaped '\\'", "backslash"),
    ("Invalid hex value", "backslash"),
    ("Escaped character", "backslash"),
)


def tables(text: str) -> dict[str, Any]:
    """Return what a TOML text holds.

    Raises
    ------
    ProfileError
        With one fault, on the line where the text stops being TOML.
    """
    try:
        return tomllib.loads(text, parse_float=Decimal)
    except RecursionError:
        raise ProfileError([ProfileFault(0, "", _writing("deep"))]) from None
    except ValueError as reason:
        raise ProfileError([_fault(str(reason), text)]) from reason


def _fault(message: str, text: str) -> ProfileFault:
    place = re.search(r" \(at line (\d+), column (\d+)\)$", message)
    if place:
        line = int(place[1])
        intended = _intended(text.splitlines()[line - 1]) if line <= text.count("\n") + 1 else None
        return ProfileFault(line, "", intended or _plain(message[: place.start()]))
    if message.endswith("(at end of document)"):
        return ProfileFault(KeyLines(text).last_statement, "", _writing("open"))
    long = re.search("[0-9_]{4300}", text)  # the one other thing that Python refuses to read
    line = text.count("\n", 0, long.start()) + 1 if long else 0
    return ProfileFault(line, "", _writing("long"))


def _intended(line: str) -> Message | None:
    """Return what to write in place of a value in a local format, such as a decimal comma."""
    value = re.sub(r"\s*#.*", "", line.partition("=")[2]).strip()
    day = re.fullmatch(r"(\d{1,2})[./](\d{1,2})[./](\d{4})", value)
    if day and int(day[2]) <= MONTHS:
        written = f"{day[3]}-{int(day[2]):02}-{int(day[1]):02}"
        return Message("fault-write-day", day=written)
    number = re.fullmatch(r"[£$€]?\s*(\d[\d.,]*)\s*(%|[£$€]|[A-Za-z°/²³]+)?", value)
    if number is None:
        return None
    written = number[1]
    if re.fullmatch(r"\d{1,3}(\.\d{3})*,\d+|\d+,\d+", written):
        written = written.replace(".", "").replace(",", ".")
    if not re.fullmatch(r"\d+(\.\d+)?", written):
        return None
    if written == value:
        return None
    if re.fullmatch(r"[\d.,]+", value):
        return Message("fault-write-point", number=written)
    return Message("fault-write-number", number=written)


def _plain(message: str) -> Message:
    found = (word for beginning, word in _WORDS if message.startswith(beginning))
    return _writing(next(found, "other"))


def _writing(fault: str) -> Message:
    return Message("fault-writing", fault=fault)
