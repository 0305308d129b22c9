"""What every part of a request has: unknown keys refused by name, and a label to speak by."""

from __future__ import annotations

import difflib
import json
from collections.abc import Mapping, Sequence
from itertools import islice
from typing import Any

from marshmallow import EXCLUDE, Schema, ValidationError, validates_schema

from ledgerstone.codec.plain_text import dotted

MOST_NAMED = 50


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

    def __init__(self, **more: Any) -> None:
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


def field_metadata(label: str, about: str) -> dict[str, str]:
    """Return a field's metadata: what it is called in a sentence, and what it means."""
    return {"label": label, "description": about} if about else {"label": label}


class Labelled:
    """A field that speaks of itself by its label."""

    metadata: Mapping[str, Any]

    @property
    def label(self) -> str:
        """What the field is called in a sentence."""
        return str(self.metadata.get("label", "this"))

    @property
    def capital(self) -> str:
        """The label as a sentence begins with it."""
        return self.label[:1].upper() + self.label[1:]
