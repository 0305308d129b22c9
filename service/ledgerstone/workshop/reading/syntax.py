"""Parsing of TOML with exact numbers, and syntax errors in plain words."""

from __future__ import annotations

import re
import tomllib
from decimal import Decimal
from typing import Any

from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.message import Message
from ledgerstone.workshop.reading.intended import intended
from ledgerstone.workshop.reading.lines import KeyLines
from ledgerstone.workshop.records.members import member_at

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
        return ProfileFault(line, "", _meant(text, line) or _plain(message[: place.start()]))
    if message.endswith("(at end of document)"):
        return ProfileFault(KeyLines(text).last_statement, "", _writing("open"))
    long = re.search("[0-9_]{4300}", text)  # the one other thing that Python refuses to read
    line = text.count("\n", 0, long.start()) + 1 if long else 0
    return ProfileFault(line, "", _writing("long"))


def _meant(text: str, line: int) -> Message | None:
    """Return what to write in place of a line's value, where it is written as at home."""
    where = KeyLines(text)
    paths = (
        path for path, (start, _) in where.pairs.items() if text.count("\n", 0, start) + 1 == line
    )
    member = member_at(next(paths, ()))
    if member is None:
        return None
    value = re.sub(r"\s*#.*", "", text.splitlines()[line - 1].partition("=")[2]).strip()
    return intended(value, member, country_of(text))


def country_of(text: str) -> str:
    """Return a profile's country as it is written, even of a faulty text; empty if it has none."""
    found = re.search(r"""(?m)^\s*country\s*=\s*["'](\w+)""", text)
    return found[1] if found is not None else ""


def _plain(message: str) -> Message:
    found = (word for beginning, word in _WORDS if message.startswith(beginning))
    return _writing(next(found, "other"))


def _writing(fault: str) -> Message:
    return Message("fault-writing", fault=fault)
