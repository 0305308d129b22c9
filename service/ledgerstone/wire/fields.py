"""Marshmallow fields of the contract: lengths that keep their unit, plain text, choices, kinds."""

from __future__ import annotations

import difflib
import json
import math
import unicodedata
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import islice
from typing import Any

from marshmallow import EXCLUDE, Schema, ValidationError, fields, validates_schema

from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length
from ledgerstone.wire.plain_text import dotted, text_fault

LONGEST_TEXT = 120
FURTHEST_MM = 20_000.0
MOST_NAMED = 50
_NOISE_MM = Fraction(1, 1000)  # under this a length is what someone's arithmetic left over


def shown(value: object) -> str:
    """Return what was sent, short enough to say back."""
    text = dotted(value if isinstance(value, str) else json.dumps(value, ensure_ascii=False))
    return text if len(text) <= 40 else text[:39] + "…"


def nearest(name: str, known: Sequence[str]) -> str:
    """Return ``; did you mean "…"?`` where a known name is near, else the known names."""
    close = difflib.get_close_matches(name[:80], known, n=1, cutoff=0.6)
    if close:
        return f'; did you mean "{close[0]}"?'
    return ". Known here: " + ", ".join(known) + "." if known else "."


class Strict(Schema):
    """A JSON object whose unknown keys are refused by name; ``about`` says what the object is."""

    about = "this"

    class Meta:
        """Unknown keys are reported by ``_name_unknown``, with the nearest known key."""

        unknown = EXCLUDE

    def __init__(self, **more: Any) -> None:  # noqa: ANN401  marshmallow's own options
        super().__init__(**more)
        about = self.about[:1].upper() + self.about[1:]
        self.error_messages["type"] = f"{about} is written as a JSON object."

    @property
    def _keys(self) -> list[str]:
        return [field.data_key or name for name, field in self.fields.items()]

    @validates_schema(pass_original=True, skip_on_field_errors=False)
    def _name_unknown(self, _data: object, original: object, **_: object) -> None:
        if not isinstance(original, Mapping):
            return
        keys = set(self._keys)
        unknown = list(islice((key for key in original if key not in keys), MOST_NAMED))
        if unknown:
            raise ValidationError({key: [self._says_unknown(key)] for key in unknown})

    def _says_unknown(self, key: str) -> str:
        return f'"{shown(key)}" is not a part of {self.about}{nearest(key, self._keys)}'


class _Labelled:
    """A field that speaks of itself by its label."""

    metadata: Mapping[str, Any]

    @property
    def label(self) -> str:
        return str(self.metadata.get("label", "this"))

    @property
    def capital(self) -> str:
        return self.label[:1].upper() + self.label[1:]


class LengthField(_Labelled, fields.Field[Length]):
    """A length: a number of millimetres, or a text with its unit."""

    def __init__(
        self,
        label: str,
        *,
        above_mm: float = 0.0,
        at_most_mm: float = FURTHEST_MM,
        zero: bool = False,
        **more: Any,  # noqa: ANN401  marshmallow's own options
    ) -> None:
        super().__init__(
            metadata={"label": label},
            error_messages={"required": f"Enter {label}.", "null": f"Enter {label}."},
            **more,
        )
        self.above_mm, self.at_most_mm, self.zero = above_mm, at_most_mm, zero

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> Length:  # noqa: ANN401  marshmallow
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

    def __init__(self, label: str, **more: Any) -> None:  # noqa: ANN401  marshmallow's own options
        super().__init__(label, above_mm=-FURTHEST_MM, zero=True, **more)


class TextField(_Labelled, fields.Field[str]):
    """A short text without hidden characters, in Unicode's composed form."""

    def __init__(self, label: str, *, longest: int = LONGEST_TEXT, **more: Any) -> None:  # noqa: ANN401  as above
        super().__init__(
            metadata={"label": label},
            error_messages={"required": f"Enter {label}.", "null": f"Enter {label}."},
            **more,
        )
        self.longest = longest

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> str:  # noqa: ANN401  marshmallow
        if not isinstance(value, str):
            raise ValidationError(f"{self.capital} must be text.")
        if len(value) > self.longest:
            raise ValidationError(f"{self.capital} must be {self.longest} characters or fewer.")
        text = unicodedata.normalize("NFC", value)
        if fault := text_fault(text):
            raise ValidationError(f"{self.capital} {fault}")
        return text.strip()


class ChoiceField(_Labelled, fields.Field[str]):
    """One of a few words."""

    def __init__(self, label: str, choices: Sequence[str], **more: Any) -> None:  # noqa: ANN401  as above
        super().__init__(
            metadata={"label": label},
            error_messages={"required": f"Choose {label}.", "null": f"Choose {label}."},
            **more,
        )
        self.choices = tuple(choices)

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> str:  # noqa: ANN401  marshmallow
        if isinstance(value, str) and value in self.choices:
            return value
        guess = (
            nearest(value, self.choices) if isinstance(value, str) else nearest("", self.choices)
        )
        raise ValidationError(f'{self.capital} cannot be "{shown(value)}"{guess}')


class NumberField(_Labelled, fields.Field[float]):
    """A finite JSON number between two bounds; whole where ``whole``."""

    def __init__(
        self,
        label: str,
        *,
        at_least: float,
        at_most: float,
        whole: bool = False,
        **more: Any,  # noqa: ANN401  marshmallow's own options
    ) -> None:
        super().__init__(
            metadata={"label": label},
            error_messages={"required": f"Enter {label}.", "null": f"Enter {label}."},
            **more,
        )
        self.at_least, self.at_most, self.whole = at_least, at_most, whole

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> float:  # noqa: ANN401  marshmallow
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


class YesNoField(_Labelled, fields.Field[bool]):
    """True or false, and nothing that merely looks like it."""

    def __init__(self, label: str, **more: Any) -> None:  # noqa: ANN401  marshmallow's own options
        super().__init__(
            metadata={"label": label},
            error_messages={"null": f"Say true or false for {label}."},
            **more,
        )

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> bool:  # noqa: ANN401  marshmallow
        if isinstance(value, bool):
            return value
        raise ValidationError(f"{self.capital} must be true or false.")


class ObjectField(fields.Nested):
    """A nested object, with sentences of ours."""

    def __init__(self, schema: type[Schema], label: str, **more: Any) -> None:  # noqa: ANN401  as above
        super().__init__(
            schema,
            metadata={"label": label},
            error_messages={
                "required": f"Say {label}.",
                "null": f"Say {label}.",
                "type": f"{label[:1].upper() + label[1:]} must be a JSON object.",
            },
            **more,
        )


class KindField(_Labelled, fields.Field[Any]):
    """An object whose ``kind`` says which schema it follows."""

    def __init__(self, label: str, kinds: Mapping[str, type[Strict]], **more: Any) -> None:  # noqa: ANN401  as above
        super().__init__(
            metadata={"label": label},
            error_messages={"required": f"Say {label}.", "null": f"Say {label}."},
            **more,
        )
        self.kinds = dict(kinds)
        self.schemas = {kind: schema() for kind, schema in kinds.items()}

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> Any:  # noqa: ANN401  marshmallow
        if not isinstance(value, Mapping):
            raise ValidationError(f"{self.capital} must be a JSON object with a kind.")
        kind = value.get("kind")
        if not isinstance(kind, str) or kind not in self.schemas:
            says = (
                f'The kind of {self.label} cannot be "{shown(kind)}"'
                if kind
                else (f"Say the kind of {self.label}")
            )
            known = list(self.schemas)
            raise ValidationError(
                {"kind": [says + nearest(kind if isinstance(kind, str) else "", known)]}
            )
        return self.schemas[kind].load(value)


class ListField(fields.List[Any]):
    """A list of at most so many."""

    def __init__(
        self,
        inner: fields.Field[Any],
        label: str,
        *,
        at_least: int = 0,
        at_most: int,
        **more: Any,  # noqa: ANN401  marshmallow's own options
    ) -> None:
        super().__init__(
            inner,
            metadata={"label": label},
            error_messages={
                "required": f"Say {label}.",
                "null": f"Say {label}.",
                "invalid": f"{label[:1].upper() + label[1:]} must be a JSON list.",
            },
            **more,
        )
        self.at_least, self.at_most, self.label = at_least, at_most, label

    def _deserialize(self, value: Any, *args: Any, **more: Any) -> list[Any]:  # noqa: ANN401  marshmallow
        if isinstance(value, list) and not self.at_least <= len(value) <= self.at_most:
            raise ValidationError(
                f"{self.label[:1].upper() + self.label[1:]} must number between {self.at_least}"
                f" and {self.at_most}; there are {len(value)}."
            )
        return super()._deserialize(value, *args, **more)


class BySideField(_Labelled, fields.Field[Any]):
    """An object with a member for each side it speaks of."""

    def __init__(
        self,
        label: str,
        inner: fields.Field[Any],
        known: Callable[[str], bool],
        **more: Any,  # noqa: ANN401  marshmallow's own options
    ) -> None:
        super().__init__(
            metadata={"label": label},
            error_messages={"required": f"Say {label}.", "null": f"Say {label}."},
            **more,
        )
        self.inner, self.known = inner, known

    def _deserialize(self, value: Any, *_: Any, **__: Any) -> dict[str, Any]:  # noqa: ANN401  marshmallow
        if not isinstance(value, Mapping):
            raise ValidationError(
                f"{self.capital} must be a JSON object, one member for each side."
            )
        faults: dict[str, Any] = {}
        sides: dict[str, Any] = {}
        for name, member in value.items():
            if len(faults) >= MOST_NAMED:
                break
            if not self.known(name):
                faults[name] = [
                    f'"{shown(name)}" is not a side or corner that {self.label} can name.'
                ]
                continue
            try:
                sides[name] = self.inner.deserialize(member, name, value)
            except ValidationError as fault:
                faults[name] = fault.messages
        if faults:
            raise ValidationError(faults)
        return sides
