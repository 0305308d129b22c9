"""Writing an order as JSON: complete for an answer, compact for a token."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import MISSING, Field, fields, is_dataclass
from datetime import date
from typing import Any

from ledgerstone.json_types import JSON
from ledgerstone.order import Order, Turn, Unit
from ledgerstone.quantities import Length

_ON_THE_WIRE = {(Unit, "use"): "for", (Turn, "before"): "from", (Turn, "after"): "into"}
_ALWAYS = {"kind", "shade", "finish", "language"}


def write_order(order: Order, *, compact: bool = False) -> dict[str, Any]:
    """Write an order as JSON members.

    Parameters
    ----------
    compact
        Leave out members that have their default; the result reads back to the same order.
    """
    written: dict[str, Any] = write_member(order, compact)
    return written


def write_member(value: JSON, compact: bool) -> JSON:
    """Write one member of an order: a length, a record, a list, a day, a word or a number."""
    if isinstance(value, Length):
        return value.wire()
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, Mapping):
        return {key: write_member(member, compact) for key, member in value.items()}
    if isinstance(value, tuple):
        return [write_member(member, compact) for member in value]
    if is_dataclass(value) and not isinstance(value, type):
        return {
            _ON_THE_WIRE.get((type(value), field.name), field.name): write_member(member, compact)
            for field in fields(value)
            if _is_written(field, member := getattr(value, field.name), compact)
        }
    return value


def _is_written(field: Field[Any], value: object, compact: bool) -> bool:
    if field.metadata.get("inside"):
        return False
    if field.name in _ALWAYS:
        return True
    if value is None or value in ("", ()) or (isinstance(value, Mapping) and not value):
        return False
    return not (compact and field.default is not MISSING and value == field.default)
