"""Marshmallow fields of the contract: lengths that keep their unit, plain text, choices, kinds."""

from __future__ import annotations

from ledgerstone.codec._holding_fields import BySideField, KindField, ListField, ObjectField
from ledgerstone.codec._plain_fields import (
    FURTHEST_MM,
    LONGEST_ORDER_TEXT,
    ChoiceField,
    CoordinateField,
    LengthField,
    NumberField,
    TextField,
    YesNoField,
)
from ledgerstone.codec._strict import (
    MAX_UNKNOWN_KEYS,
    Strict,
    field_name,
    missing,
    nearest,
    null_refused,
    refused,
    shown,
)

__all__ = [
    "FURTHEST_MM",
    "LONGEST_ORDER_TEXT",
    "MAX_UNKNOWN_KEYS",
    "BySideField",
    "ChoiceField",
    "CoordinateField",
    "KindField",
    "LengthField",
    "ListField",
    "NumberField",
    "ObjectField",
    "Strict",
    "TextField",
    "YesNoField",
    "field_name",
    "missing",
    "nearest",
    "null_refused",
    "refused",
    "shown",
]
