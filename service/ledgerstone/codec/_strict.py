"""Base of the request schemas: unknown keys are refused by name, and each part has a label."""

from __future__ import annotations

import difflib
import json
from collections.abc import Mapping, Sequence
from itertools import islice
from typing import Any, Literal

from marshmallow import EXCLUDE, Schema, ValidationError, validates_schema

from ledgerstone.codec.plain_text import dotted
from ledgerstone.message import Message

MAX_UNKNOWN_KEYS = 50


def shown(value: object) -> str:
    """Return a sent value, shortened for a message."""
    text = dotted(value if isinstance(value, str) else json.dumps(value, ensure_ascii=False))
    return text if len(text) <= 40 else text[:39] + "…"


def nearest(name: str, known: Sequence[str]) -> dict[str, str]:
    """Return the values of a message's ``nearest``: the closest known name, else all of them."""
    close = difflib.get_close_matches(name[:80], known, n=1, cutoff=0.6)
    near = "guess" if close else "known" if known else "none"
    return {"near": near, "guess": "".join(close), "known": ", ".join(known)}


def field_name(field: str) -> Message:
    """Return the name of a part of a request, as a value of another message."""
    return Message("field", field=field)


def missing(field: str, verb: Literal["enter", "choose", "say"]) -> dict[str, Any]:
    """Return marshmallow's error messages for a part that is missing or null."""
    message = Message("field-missing", field=field_name(field), verb=verb)
    return {"required": [message], "null": [message]}


def null_refused(message: Message) -> dict[str, Any]:
    """Return marshmallow's error messages for a null."""
    return {"null": [message]}


def refused(message: Message) -> ValidationError:
    """Return a message as marshmallow's error."""
    faults: list[Any] = [message]
    return ValidationError(faults)


class Strict(Schema):
    """A JSON object whose unknown keys are refused by name; ``about`` is its label."""

    about = "this"

    class Meta:
        """Unknown keys are reported by ``_name_unknown``, with the nearest known key."""

        unknown = EXCLUDE

    def __init__(self, **more: Any) -> None:
        super().__init__(**more)
        messages: dict[str, Any] = self.error_messages
        messages["type"] = Message("field-written-as-object", field=field_name(self.about))

    @property
    def _keys(self) -> list[str]:
        return [field.data_key or name for name, field in self.fields.items()]

    @validates_schema(pass_original=True, skip_on_field_errors=False)
    def _name_unknown(self, _data: object, original: object, **_: object) -> None:
        if not isinstance(original, Mapping):
            return
        keys = set(self._keys)
        unknown = list(islice((key for key in original if key not in keys), MAX_UNKNOWN_KEYS))
        if unknown:
            raise ValidationError({key: [self._unknown_key(key)] for key in unknown})

    def _unknown_key(self, key: str) -> Message:
        near = nearest(key, self._keys)
        return Message("field-unknown", value=shown(key), field=field_name(self.about), **near)


def field_metadata(label: str, about: str) -> dict[str, str]:
    """Return a field's metadata: its label in a sentence, and its description."""
    return {"label": label, "description": about} if about else {"label": label}


class Labelled:
    """A field with a label, one of the catalogues' ``field``."""

    metadata: Mapping[str, Any]

    @property
    def called(self) -> Message:
        """The field's name in a sentence."""
        return field_name(str(self.metadata.get("label", "this")))
