"""What a maker types into a form, written as TOML: by the kind of its place, as people write it."""

from __future__ import annotations

import json
import re
import textwrap
from collections.abc import Sequence
from datetime import date
from typing import Final

from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.local_units import is_fraction, local_unit, with_unit
from ledgerstone.workshop.measures import without_thing
from ledgerstone.workshop.members import Member, MemberKind

WIDTH: Final = 98
_NUMBERS: Final[frozenset[MemberKind]] = frozenset(
    {"number", "numbers", "whole", "wholes", "money"}
)
_LISTS: Final[frozenset[MemberKind]] = frozenset({"lines", "words", "numbers", "wholes", "choices"})
_POINT: Final = re.compile(r"[+-]?\d+(\.\d+)?", re.ASCII)
_WITH_UNIT: Final = re.compile(r"[£$€]?\s*([\d.,]*\d)(\D.*)", re.ASCII)
_COMMA: Final = re.compile(r"[+-]?\d+,\d+", re.ASCII)
_CURRENCY: Final = r"^[A-Z]{3}\b|\b[A-Z]{3}$"
_GROUPS: Final = {
    ",": re.compile(r"([+-]?\d{1,3}(?:\.\d{3})+)(,\d+)?", re.ASCII),
    ".": re.compile(r"([+-]?\d{1,3}(?:,\d{3})+)(\.\d+)?", re.ASCII),
}


def is_list(member: Member) -> bool:
    """Return whether a place holds a list of values."""
    return member.kind in _LISTS


def toml_of(member: Member, value: str, mark: str, place: RegionalSettings) -> str:
    """Return one value as TOML writes it; what does not read as its kind is written as a text.

    Parameters
    ----------
    mark
        Between whole and tenth in the maker's language: ``.`` or ``,``.
    place
        The units that the workshop works in: those of a number without one.
    """
    if member.kind == "yes-no" and value in ("true", "false"):
        return value
    if member.kind == "day" and _is_day(value):
        return value
    if member.kind not in _NUMBERS:
        return _text(value)
    value = without_thing(value, member.name)
    number = number_of(value, mark)
    if local_unit(member, place) != member.unit and (number or is_fraction(value)):
        return _text(with_unit(number or value.strip(), member, place))
    return _text(_measured(value, mark)) if number is None else number


def _measured(value: str, mark: str) -> str:
    """A number with its unit, the number as TOML has it; any other text as it is."""
    found = _WITH_UNIT.fullmatch(value)
    number = number_of(found[1], mark) if found is not None else None
    return value if found is None or number is None else f"{number}{found[2]}"


def toml_list_of(member: Member, values: Sequence[str], mark: str, place: RegionalSettings) -> str:
    """Return a list of values in TOML, wrapped if it is long."""
    items = [toml_of(member, value, mark, place) for value in values]
    line = f"[{', '.join(items)}]"
    if len(line) + len(member.name) + 3 <= WIDTH:
        return line
    if member.kind == "lines":
        return "\n".join(["[", *(f"  {item}," for item in items), "]"])
    joined = ", ".join(item.replace(" ", "\0") for item in items) + ","
    inside = textwrap.wrap(joined, WIDTH - 2, break_long_words=False, break_on_hyphens=False)
    return "\n".join(["[", *(f"  {row}".replace("\0", " ") for row in inside), "]"])


def _is_day(value: str) -> bool:
    try:
        return date.fromisoformat(value).isoformat() == value
    except ValueError:
        return False


def number_of(value: str, mark: str) -> str | None:
    """Return a number as TOML has it, of one written with either mark, thousands or a sign."""
    text = re.sub(_CURRENCY, "", value).strip("£$€% \u00a0").replace("−", "-")
    grouped = _GROUPS[mark].fullmatch(text)
    if grouped is not None:
        text = re.sub("[.,]", "", grouped[1]) + (grouped[2] or "").replace(",", ".")
    elif _COMMA.fullmatch(text):
        text = text.replace(",", ".")
    if not _POINT.fullmatch(text):
        return None
    return re.sub(r"^([+-]?)0+(?=\d)", r"\1", text)


def _text(value: str) -> str:
    return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
