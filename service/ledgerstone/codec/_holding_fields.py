"""Fields that hold others: objects, objects by kind, lists, and members by side."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from marshmallow import Schema, ValidationError, fields

from ledgerstone.codec._strict import MOST_NAMED, Labelled, Strict, field_metadata, nearest, shown
from ledgerstone.json_types import JSON


class ObjectField(fields.Nested):
    """A nested object, with sentences of ours."""

    def __init__(self, schema: type[Schema], label: str, *, about: str = "", **more: Any) -> None:
        super().__init__(
            schema,
            metadata=field_metadata(label, about),
            error_messages={
                "required": f"Say {label}.",
                "null": f"Say {label}.",
                "type": f"{label[:1].upper() + label[1:]} must be a JSON object.",
            },
            **more,
        )


class KindField(Labelled, fields.Field[Any]):
    """An object whose ``kind`` says which schema it follows."""

    def __init__(
        self, label: str, kinds: Mapping[str, type[Strict]], *, about: str = "", **more: Any
    ) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages={"required": f"Say {label}.", "null": f"Say {label}."},
            **more,
        )
        self.kinds = dict(kinds)
        self.schemas = {kind: schema() for kind, schema in kinds.items()}

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> Any:  # noqa: ANN401  marshmallow
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
        about: str = "",
        at_least: int = 0,
        at_most: int,
        **more: Any,
    ) -> None:
        super().__init__(
            inner,
            metadata=field_metadata(label, about),
            error_messages={
                "required": f"Say {label}.",
                "null": f"Say {label}.",
                "invalid": f"{label[:1].upper() + label[1:]} must be a JSON list.",
            },
            **more,
        )
        self.at_least, self.at_most, self.label = at_least, at_most, label

    def _deserialize(self, value: JSON, *args: Any, **more: Any) -> list[Any]:
        if isinstance(value, list) and not self.at_least <= len(value) <= self.at_most:
            raise ValidationError(
                f"{self.label[:1].upper() + self.label[1:]} must number between {self.at_least}"
                f" and {self.at_most}; there are {len(value)}."
            )
        return super()._deserialize(value, *args, **more)


class BySideField(Labelled, fields.Field[Any]):
    """An object with a member for each side it speaks of."""

    def __init__(
        self,
        label: str,
        inner: fields.Field[Any],
        known: Callable[[str], bool],
        *,
        about: str = "",
        **more: Any,
    ) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages={"required": f"Say {label}.", "null": f"Say {label}."},
            **more,
        )
        self.inner, self.known = inner, known

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> dict[str, Any]:
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
