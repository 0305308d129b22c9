"""The valid kind, unit and choices at each place of a profile, by its records."""

from __future__ import annotations

import dataclasses
import types
import typing
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from functools import cache
from typing import Any, Final, Literal

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.schemas import field_types, written

MemberKind = Literal[
    "table", "items", "text", "colour", "lines", "words", "number", "numbers", "whole", "wholes",
    "money", "yes-no", "day", "choice", "choices",
]  # fmt: skip
MEMBER_KINDS: Final = typing.get_args(MemberKind)
_PLAIN: Final[dict[type, MemberKind]] = {
    str: "text", bool: "yes-no", int: "whole", float: "number", Decimal: "money", date: "day",
}  # fmt: skip
_LISTED: Final[dict[type, MemberKind]] = {str: "words", int: "wholes", float: "numbers"}
_UNITS: Final = {
    "mm": "mm", "kg": "kg", "l": "l", "mpa": "MPa", "c": "°C", "n": "N", "percent": "%",
    "hours": "h", "hour": "h", "days": "d", "minutes": "min", "m2": "m²", "m3": "m³", "m": "m",
    "mm2": "mm²", "litres": "l",
}  # fmt: skip
_HOURS: Final = frozenset({"JobHours", "PourHours", "MouldHours", "PieceHours"})


@dataclass(frozen=True, slots=True)
class Member:
    """One key of one record.

    Attributes
    ----------
    record
        The record that it is a key of.
    inner
        The record that it holds, or a list of which it holds.
    needed
        Whether a profile must have it.
    """

    record: type
    name: str
    kind: MemberKind
    about: str
    needed: bool
    inner: type | None = None
    unit: str = ""
    choices: tuple[str, ...] = ()
    bounds: dict[str, float] = field(default_factory=dict)


@cache
def member_named(record: str, key: str) -> Member:
    """Return the member of a record by their names.

    Raises
    ------
    KeyError
        No record has it.
    """
    return _by_names()[record, key]


@cache
def _by_names() -> dict[tuple[str, str], Member]:
    return {(member.record.__name__, member.name): member for member in every_member(Workshop)}


def every_member(record: type) -> Iterator[Member]:
    """Yield every key of a record and of the records in it."""
    for member in members_of(record):
        yield member
        if member.inner is not None:
            yield from every_member(member.inner)


@cache
def members_of(record: type) -> tuple[Member, ...]:
    """Return the keys of a record that a profile writes, in their order."""
    hints = field_types(record)
    return tuple(_member(record, f, hints[f.name]) for f in written(record))


def member_at(path: KeyPath) -> Member | None:
    """Return what the place of a value, a table or an item is; None if no profile has one."""
    record: type | None = Workshop
    found: Member | None = None
    for step in path:
        if isinstance(step, int):
            if found is None or found.kind != "items":
                return None
            record = found.inner
            continue
        known = {member.name: member for member in members_of(record)} if record is not None else {}
        found = known.get(step)
        if found is None:
            return None
        record = found.inner
    return found


def _member(record: type, f: dataclasses.Field[Any], hint: object) -> Member:
    given = without_none(hint)
    kind, inner, choices = _kind_of(given)
    return Member(
        record,
        f.name,
        f.metadata.get("kind", kind),
        str(f.metadata["about"]),
        f.default is dataclasses.MISSING and f.default_factory is dataclasses.MISSING,
        inner,
        _unit(record, f.name, _item(given)),
        choices,
        {k: f.metadata[k] for k in ("above", "at_least", "at_most") if k in f.metadata},
    )


def without_none(hint: Any) -> Any:  # noqa: ANN401  a type
    """Return the type without ``None``."""
    if typing.get_origin(hint) in (typing.Union, types.UnionType):
        return next(kind for kind in typing.get_args(hint) if kind is not types.NoneType)
    return hint


def _item(hint: Any) -> Any:  # noqa: ANN401  a type
    return typing.get_args(hint)[0] if typing.get_origin(hint) is tuple else hint


def _kind_of(hint: Any) -> tuple[MemberKind, type | None, tuple[str, ...]]:  # noqa: ANN401  a type
    """The kind of a type, the record that is in it, and the words that it chooses from."""
    many, item = typing.get_origin(hint) is tuple, _item(hint)
    if typing.get_origin(item) is Literal:
        return ("choices" if many else "choice"), None, typing.get_args(item)
    if dataclasses.is_dataclass(item):
        return ("items" if many else "table"), typing.cast("type", item), ()
    return (_LISTED if many else _PLAIN)[item], None, ()


def _unit(record: type, name: str, kind: object) -> str:
    """The unit of a key, by its name: ``hours_per_m2`` is h/m²; money's is what it is paid for."""
    amount, _, per = name.partition("_per_")
    below = f"/{_UNITS[part]}" if (part := per.partition("_")[0]) in _UNITS else ""
    if kind is Decimal and not amount.endswith("percent"):
        return below
    unit = _UNITS.get(amount.rpartition("_")[2], "")
    if kind in (float, int) and not unit and record.__name__ in _HOURS:
        unit = "h"
    if kind is float and not unit and record.__name__ == "DaySettings":
        unit = "d"
    return f"{unit}{below}" if kind in (float, int, Decimal) else ""
