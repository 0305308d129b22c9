"""Fields of one value: lengths that keep their unit, texts, choices, numbers, yes or no."""

from __future__ import annotations

import math
import unicodedata
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any

from marshmallow import ValidationError, fields

from ledgerstone.codec._strict import Labelled, field_metadata, nearest, shown
from ledgerstone.codec.plain_text import text_fault
from ledgerstone.errors import QuantityError
from ledgerstone.json_types import JSON
from ledgerstone.quantities import Length

LONGEST_TEXT = 120
FURTHEST_MM = 20_000.0
_NOISE_MM = Fraction(1, 1000)  # under this a length is what someone's arithmetic left over


class LengthField(Labelled, fields.Field[Length]):
    """A length: a number of millimetres, or a text with its unit."""

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
            error_messages={"required": f"Enter {label}.", "null": f"Enter {label}."},
            **more,
        )
        self.above_mm, self.at_most_mm, self.zero = above_mm, at_most_mm, zero

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> Length:
        try:
            length = Length.parse(value)
        except QuantityError as fault:
            raise ValidationError(f"{self.capital}: {fault.says}") from None
        if abs(length.exact_mm) < _NOISE_MM:
            length = replace(length, exact_mm=Fraction(0))
        low_enough = length.mm >= self.above_mm if self.zero else length.mm > self.above_mm
        if not low_enough or length.mm > self.at_most_mm:
            raise ValidationError(
                f"{self.capital} must be {self._range()}; this is {shown(value)}."
            )
        return length

    def _range(self) -> str:
        low = "at least" if self.zero else "more than"
        top = f"at most {self.at_most_mm / 1000:g} m"
        if self.above_mm < 0:
            return f"between {self.above_mm / 1000:g} m and {self.at_most_mm / 1000:g} m"
        return f"{low} {self.above_mm:g} mm and {top}"


class CoordinateField(LengthField):
    """A place along x or y: may be negative."""

    def __init__(self, label: str, **more: Any) -> None:
        super().__init__(label, above_mm=-FURTHEST_MM, zero=True, **more)


class TextField(Labelled, fields.Field[str]):
    """A short text without hidden characters, in Unicode's composed form."""

    def __init__(
        self, label: str, *, about: str = "", longest: int = LONGEST_TEXT, **more: Any
    ) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages={"required": f"Enter {label}.", "null": f"Enter {label}."},
            **more,
        )
        self.longest = longest

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> str:
        if not isinstance(value, str):
            raise ValidationError(f"{self.capital} must be text.")
        if len(value) > self.longest:
            raise ValidationError(f"{self.capital} must be {self.longest} characters or fewer.")
        text = unicodedata.normalize("NFC", value)
        if fault := text_fault(text):
            raise ValidationError(f"{self.capital} {fault}")
        return text.strip()


class ChoiceField(Labelled, fields.Field[str]):
    """One of a few words."""

    def __init__(self, label: str, choices: Sequence[str], *, about: str = "", **more: Any) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages={"required": f"Choose {label}.", "null": f"Choose {label}."},
            **more,
        )
        self.choices = tuple(choices)

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> str:
        if isinstance(value, str) and value in self.choices:
            return value
        guess = (
            nearest(value, self.choices) if isinstance(value, str) else nearest("", self.choices)
        )
        raise ValidationError(f'{self.capital} cannot be "{shown(value)}"{guess}')


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
            error_messages={"required": f"Enter {label}.", "null": f"Enter {label}."},
            **more,
        )
        self.at_least, self.at_most, self.whole = at_least, at_most, whole

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> float:
        kind = "a whole number" if self.whole else "a number"
        wrong = isinstance(value, bool) or not isinstance(value, int | float)
        if wrong or not math.isfinite(value) or (self.whole and value != int(value)):
            like = min(max(self.at_least, 1), self.at_most)
            raise ValidationError(f"{self.capital} must be {kind}, like {like:g}.")
        if not self.at_least <= value <= self.at_most:
            raise ValidationError(
                f"{self.capital} must be between {self.at_least:g} and {self.at_most:g}."
            )
        return int(value) if self.whole else float(value)


class YesNoField(Labelled, fields.Field[bool]):
    """True or false, and nothing that merely looks like it."""

    def __init__(self, label: str, *, about: str = "", **more: Any) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages={"null": f"Say true or false for {label}."},
            **more,
        )

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> bool:
        if isinstance(value, bool):
            return value
        raise ValidationError(f"{self.capital} must be true or false.")
