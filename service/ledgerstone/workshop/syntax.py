"""TOML text becomes tables, numbers exact; what is not TOML is said in plain words."""

from __future__ import annotations

import re
import tomllib
from decimal import Decimal
from typing import Any

from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.workshop.lines import KeyLines

MONTHS = 12
_TWICE = "this stands twice. Write each key and each [table] once; a list's items take [[ ]]."
_OPEN = "what begins here has no end: a value, a bracket or a quotation mark is missing."
_QUOTES = "a text here does not end: put the same quotation mark at both ends, on one line."
_UNPRINTED = "a character here does not print, or does not belong. Take it out."
_BACKSLASH = "write a backslash twice, or the text between single quotation marks."
_WORDS: tuple[tuple[str, str], ...] = (  # how the parser begins, what we say
    ("Invalid statement", "this line is no [table], key = value or # comment."),
    ("Expected '=' after a key", "a key needs = and its value after it, on the same line."),
    ("Expected newline", "more stands here than one key = value. Write one to a line."),
    ("Invalid value", "this value cannot be read. Text needs quotation marks; numbers none."),
    ("Invalid date", "there is no such day."),
    ("Invalid initial character", "a key is written in letters, digits, - and _."),
    ("Cannot overwrite", _TWICE),
    ("Cannot declare", _TWICE),
    ("Cannot redefine", _TWICE),
    ("Cannot mutate", _TWICE),
    ("Duplicate inline table key", _TWICE),
    ("Expected ']' at the end", "a [table] needs its closing bracket."),
    ("Expected ']]' at the end", "a [[table]] needs both its closing brackets."),
    ("Unclosed", _OPEN),
    ("Expected ", _QUOTES),  # what is left of these names a quotation mark
    ("Illegal character '\\n'", _QUOTES),
    ("Illegal character", _UNPRINTED),
    ("Found invalid character", _UNPRINTED),
    ("Unescaped '\\'", _BACKSLASH),
    ("Invalid hex value", _BACKSLASH),
    ("Escaped character", _BACKSLASH),
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
        says = "lists or tables stand too deep inside one another."
        raise ProfileError((ProfileFault(0, "", says),)) from None
    except ValueError as reason:
        raise ProfileError((_fault(str(reason), text),)) from reason


def _fault(message: str, text: str) -> ProfileFault:
    place = re.search(r" \(at line (\d+), column (\d+)\)$", message)
    if place:
        line = int(place[1])
        meant = _meant(text.splitlines()[line - 1]) if line <= text.count("\n") + 1 else None
        return ProfileFault(line, "", meant or _plain(message[: place.start()]))
    if message.endswith("(at end of document)"):
        return ProfileFault(KeyLines(text).last_statement, "", _OPEN)
    long = re.search("[0-9_]{4300}", text)  # the one other thing that Python refuses to read
    line = text.count("\n", 0, long.start()) + 1 if long else 0
    return ProfileFault(line, "", "a number here is too long to read.")


def _meant(line: str) -> str | None:
    """What to write in place of a value that stands as people write it at home."""
    value = re.sub(r"\s*#.*", "", line.partition("=")[2]).strip()
    day = re.fullmatch(r"(\d{1,2})[./](\d{1,2})[./](\d{4})", value)
    if day and int(day[2]) <= MONTHS:
        return f"Write the day as {day[3]}-{int(day[2]):02}-{int(day[1]):02}."
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
        return f"Write {written}: a point separates decimals."
    return f"Write {written}, the number alone."


def _plain(message: str) -> str:
    for beginning, says in _WORDS:
        if message.startswith(beginning):
            return says
    return f"this is not TOML: {message}."
