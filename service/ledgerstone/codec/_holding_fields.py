"""Composite marshmallow fields: objects, objects by kind, lists, members by side."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from marshmallow import Schema, ValidationError, fields

from ledgerstone.codec._strict import (
    MAX_UNKNOWN_KEYS,
    Labelled,
    Strict,
    field_metadata,
    field_name,
    missing,
    nearest,
    refused,
    shown,
)
from ledgerstone.json_types import JSON
from ledgerstone.message import Message


class ObjectField(fields.Nested):
    """A nested object, with our messages for its faults."""

    def __init__(self, schema: type[Schema], label: str, *, about: str = "", **more: Any) -> None:
        super().__init__(
            schema,
            metadata=field_metadata(label, about),
            error_messages={
                **missing(label, "say"),
                "type": [Message("field-not-object", field=field_name(label))],
            },
            **more,
        )


class KindField(Labelled, fields.Field[Any]):
    """An object whose ``kind`` selects its schema."""

    def __init__(
        self, label: str, kinds: Mapping[str, type[Strict]], *, about: str = "", **more: Any
    ) -> None:
        super().__init__(
            metadata=field_metadata(label, about),
            error_messages=missing(label, "say"),
            **more,
        )
        self.kinds = dict(kinds)
        self.schemas = {kind: schema() for kind, schema in kinds.items()}

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> Any:  # noqa: ANN401  marshmallow
        if not isinstance(value, Mapping):
            raise refused(Message("field-not-object-with-kind", field=self.called))
        kind = value.get("kind")
        if not isinstance(kind, str) or kind not in self.schemas:
            raise ValidationError({"kind": [self._wrong_kind(kind)]})
        return self.schemas[kind].load(value)

    def _wrong_kind(self, kind: JSON) -> Message:
        near = nearest(kind if isinstance(kind, str) else "", list(self.schemas))
        if not kind:
            return Message("field-kind-missing", field=self.called, **near)
        return Message("field-kind-cannot-be", field=self.called, value=shown(kind), **near)


class ListField(fields.List[Any]):
    """A list with bounds on its length."""

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
                **missing(label, "say"),
                "invalid": [Message("field-not-list", field=field_name(label))],
            },
            **more,
        )
        self.at_least, self.at_most, self.called = at_least, at_most, field_name(label)

    def _deserialize(self, value: JSON, *args: Any, **more: Any) -> list[Any]:
        if isinstance(value, list) and not self.at_least <= len(value) <= self.at_most:
            raise refused(
                Message(
                    "field-too-many",
                    field=self.called,
                    least=self.at_least,
                    most=self.at_most,
                    count=len(value),
                )
            )
        return super()._deserialize(value, *args, **more)


class BySideField(Labelled, fields.Field[Any]):
    """An object with a member for each side that it names."""

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
            error_messages=missing(label, "say"),
            **more,
        )
        self.inner, self.known = inner, known

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> dict[str, Any]:
        if not isinstance(value, Mapping):
            raise refused(Message("field-not-object-by-side", field=self.called))
        faults: dict[str, Any] = {}
        sides: dict[str, Any] = {}
        for name, member in value.items():
            if len(faults) >= MAX_UNKNOWN_KEYS:
                break
            if not self.known(name):
                faults[name] = [Message("field-not-side", value=shown(name), field=self.called)]
                continue
            try:
                sides[name] = self.inner.deserialize(member, name, value)
            except ValidationError as fault:
                faults[name] = fault.messages
        if faults:
            raise ValidationError(faults)
        return sides
