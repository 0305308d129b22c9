"""Scalar marshmallow fields: lengths that keep their unit, texts, choices, numbers, booleans."""

from __future__ import annotations

import math
import unicodedata
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any

from marshmallow import fields
from marshmallow.experimental.context import Context

from ledgerstone.codec._strict import (
    Labelled,
    field_metadata,
    field_name,
    missing,
    nearest,
    null_refused,
    refused,
    shown,
)
from ledgerstone.codec.plain_text import text_fault
from ledgerstone.errors import QuantityError
from ledgerstone.json_types import JSON
from ledgerstone.message import Message
from ledgerstone.quantities import CANONICAL, Length

LONGEST_ORDER_TEXT = 120
FURTHEST_MM = 20_000.0
_NOISE_MM = Fraction(1, 1000)  # a smaller length is a rounding error of the caller


class LengthField(Labelled, fields.Field[Length]):
    """A length: a number of millimetres, or a text with its unit.

    The context may hold the decimal and thousands separators of the caller's language.
    """

    def __init__(
        self,
        label: str,
        *,
        about: str = "",
        above_mm: float = 0.0,
        at_most_mm: float = FURTHEST_MM,
        zero: bool = False,
        **more: Any,
    ) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages=missing(label, "enter"),
            **more,
        )
        self.above_mm, self.at_most_mm, self.zero = above_mm, at_most_mm, zero

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> Length:
        try:
            length = Length.parse(value, Context.get(CANONICAL))
        except QuantityError as fault:
            raise refused(Message("field-fault", field=self.called, fault=fault.message)) from None
        if abs(length.exact_mm) < _NOISE_MM:
            length = replace(length, exact_mm=Fraction(0))
        low_enough = length.mm >= self.above_mm if self.zero else length.mm > self.above_mm
        if not low_enough or length.mm > self.at_most_mm:
            raise refused(self._out_of_range(value, length))
        return length

    def _out_of_range(self, value: JSON, length: Length) -> Message:
        """Return the bounds in the unit that was written, rounded inwards."""
        return Message(
            "length-out-of-range",
            field=self.called,
            low="between" if self.above_mm < 0 else "at-least" if self.zero else "more-than",
            least=length.like(self.above_mm, "up"),
            most=length.like(self.at_most_mm, "down"),
            value=shown(value),
        )


class CoordinateField(LengthField):
    """A place along x or y: may be negative."""

    def __init__(self, label: str, **more: Any) -> None:
        super().__init__(label, above_mm=-FURTHEST_MM, zero=True, **more)


class TextField(Labelled, fields.Field[str]):
    """A short text without hidden characters, in Unicode's composed form."""

    def __init__(
        self, label: str, *, about: str = "", longest: int = LONGEST_ORDER_TEXT, **more: Any
    ) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages=missing(label, "enter"),
            **more,
        )
        self.longest = longest

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> str:
        if not isinstance(value, str):
            raise refused(Message("text-not-text", field=self.called))
        if len(value) > self.longest:
            raise refused(Message("text-too-long", field=self.called, longest=self.longest))
        text = unicodedata.normalize("NFC", value)
        if fault := text_fault(text, self.called):
            raise refused(fault)
        return text.strip()


class ChoiceField(Labelled, fields.Field[str]):
    """One of a few words."""

    def __init__(self, label: str, choices: Sequence[str], *, about: str = "", **more: Any) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages=missing(label, "choose"),
            **more,
        )
        self.choices = tuple(choices)

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> str:
        if isinstance(value, str) and value in self.choices:
            return value
        guess = (
            nearest(value, self.choices) if isinstance(value, str) else nearest("", self.choices)
        )
        raise refused(Message("field-cannot-be", field=self.called, value=shown(value), **guess))


class NumberField(Labelled, fields.Field[float]):
    """A finite JSON number between two bounds; whole where ``whole``."""

    def __init__(
        self,
        label: str,
        *,
        about: str = "",
        at_least: float,
        at_most: float,
        whole: bool = False,
        **more: Any,
    ) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages=missing(label, "enter"),
            **more,
        )
        self.at_least, self.at_most, self.whole = at_least, at_most, whole

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> float:
        wrong = isinstance(value, bool) or not isinstance(value, int | float)
        if wrong or not math.isfinite(value) or (self.whole and value != int(value)):
            like = min(max(self.at_least, 1), self.at_most)
            kind = "whole" if self.whole else "any"
            raise refused(
                Message("number-not-number", field=self.called, kind=kind, like=float(like))
            )
        if not self.at_least <= value <= self.at_most:
            least, most = float(self.at_least), float(self.at_most)
            raise refused(Message("number-out-of-range", field=self.called, least=least, most=most))
        return int(value) if self.whole else float(value)


class YesNoField(Labelled, fields.Field[bool]):
    """True or false; no other value is coerced."""

    def __init__(self, label: str, *, about: str = "", **more: Any) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages=null_refused(Message("field-not-yes-or-no", field=field_name(label))),
            **more,
        )

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> bool:
        if isinstance(value, bool):
            return value
        raise refused(Message("yes-or-no", field=self.called))
