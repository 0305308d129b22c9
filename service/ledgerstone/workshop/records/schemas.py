"""Marshmallow schemas built from the records themselves: a new field or table needs nothing here.

The only module of the workshop that knows marshmallow.
"""

from __future__ import annotations

import dataclasses
import types
import typing
from collections.abc import Callable, Iterator, Mapping
from functools import cache
from typing import Any, ClassVar, Literal, cast

from marshmallow import EXCLUDE, Schema, ValidationError, fields, post_load, validates_schema

from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message
from ledgerstone.workshop.keys import values
from ledgerstone.workshop.keys.value_keys import Key
from ledgerstone.workshop.keys.values import ValueRejected
from ledgerstone.workshop.records import Workshop

_Read = Callable[[object], Any]


@dataclasses.dataclass(frozen=True, slots=True)
class Loaded:
    """What became of a profile's tables.

    ``sections`` holds the values of the top-level keys that read well, ``found`` a path and a
    sentence for everything that did not; ``workshop`` is there when all of it read well.
    """

    workshop: Workshop | None
    sections: Mapping[str, Any]
    found: tuple[tuple[KeyPath, Message], ...]


def loaded(raw: Mapping[str, Any]) -> Loaded:
    """Return what a parsed TOML document says, as far as it reads."""
    try:
        workshop = cast("Workshop", _loader(Workshop).load(raw))
    except ValidationError as error:
        messages = cast("dict[str, Any]", error.messages)
        good = cast("dict[str, Any]", error.valid_data or {})
        sections = {name: value for name, value in good.items() if name not in messages}
        return Loaded(None, sections, tuple(_flat(messages)))
    return Loaded(workshop, {f.name: getattr(workshop, f.name) for f in written(Workshop)}, ())


def written(record: type) -> tuple[dataclasses.Field[Any], ...]:
    """Return the fields of a record that a profile writes."""
    return tuple(f for f in dataclasses.fields(record) if not f.metadata.get("computed"))


@cache
def field_types(record: type) -> Mapping[str, Any]:
    """Return the type of each field of a record, by name: worked out once, as it takes long."""
    return types.MappingProxyType(typing.get_type_hints(record))


def read_value(record: type, key: str, value: object) -> Any:  # noqa: ANN401  any value
    """Read one value as the loader reads it at a key of a record.

    Raises
    ------
    ValueRejected
        With what the loader would say.
    """
    try:
        return _loader(record).fields[key].deserialize(value)
    except ValidationError as error:
        (message,) = error.messages
        raise ValueRejected(cast("Message", message)) from error


@cache
def schema(record: type) -> type[Schema]:
    """Return the schema that turns one table into one record."""
    hints = field_types(record)
    members = {f.name: _field(f, hints[f.name], record) for f in written(record)}
    return type(f"{record.__name__}Schema", (_RecordSchema,), {"record": record, **members})


@cache
def _loader(record: type) -> Schema:
    """Return what loads a record's table; it and the fields within it are made once."""
    return schema(record)()


def _flat(messages: object, path: KeyPath = ()) -> Iterator[tuple[KeyPath, Message]]:
    """Yield every message of a tree of marshmallow messages with its path."""
    if isinstance(messages, dict):
        for part, inner in messages.items():
            yield from _flat(inner, (*path, part))
    elif isinstance(messages, list):
        for message in messages:
            yield path, message


# --- kinds of marshmallow field -------------------------------------------------------------


class _RecordSchema(Schema):
    """Loads one table into one record and refuses keys that the record does not have."""

    record: ClassVar[type]

    class Meta:
        unknown = EXCLUDE  # ours are refused below, with the nearest known key

    @validates_schema(pass_original=True, skip_on_field_errors=False)
    def _known_keys(self, _data: object, original: Mapping[str, Any], **_: object) -> None:
        known = tuple(self.fields)
        unknown = {
            key: [Message("fault-no-key", **values.nearest(key, known))]
            for key in original
            if key not in known
        }
        if unknown:
            raise ValidationError(unknown)

    @post_load
    def _make(self, data: Mapping[str, Any], **_: object) -> object:
        return self.record(**data)


class _Value(fields.Field[Any]):
    """One value, read by a function that raises ``ValueRejected``."""

    def __init__(self, read: _Read, **options: Any) -> None:
        super().__init__(**options)
        self._read = read

    def _deserialize(self, value: object, *_: object, **__: object) -> Any:  # noqa: ANN401  any value
        try:
            return self._read(value)
        except ValueRejected as reason:
            raise _refused(reason.message) from reason


class _Table(fields.Nested):
    """One table."""

    def _deserialize(self, value: object, *args: Any, **more: Any) -> Any:  # noqa: ANN401  as above
        if isinstance(value, list):
            raise _refused(Message("fault-one-table"))
        if not isinstance(value, dict):
            raise _refused(values.unfit(value, "table"))
        return super()._deserialize(value, *args, **more)


class _Items(fields.List[Any]):
    """A list, of tables or of values; of exactly ``count`` where the record fixes that."""

    def __init__(self, item: fields.Field[Any], count: int | None, **more: Any) -> None:
        super().__init__(item, **more)
        self._count = count

    def _deserialize(self, value: object, *args: Any, **more: Any) -> Any:  # noqa: ANN401  as above
        if isinstance(value, dict):
            raise _refused(Message("fault-list-of-tables"))
        if not isinstance(value, list):
            raise _refused(values.unfit(value, "list"))
        if self._count not in (None, len(value)):
            raise _refused(Message("fault-list-count", count=self._count, here=len(value)))
        return tuple(super()._deserialize(value, *args, **more))


def _refused(message: Message) -> ValidationError:
    """Make marshmallow's error of a message."""
    faults: list[Any] = [message]
    return ValidationError(faults)


# --- from a record's field to a marshmallow field -------------------------------------------


def _field(f: dataclasses.Field[Any], hint: object, record: type) -> fields.Field[Any]:
    needed = f.default is dataclasses.MISSING and f.default_factory is dataclasses.MISSING
    key = Key(f.name, record.__name__, f.metadata)
    missing = [_missing(hint, key)]
    return _field_of(hint, key, required=needed, error_messages={"required": missing})


def _missing(hint: object, key: Key) -> Message:
    if key.record == Workshop.__name__:
        table = f"[[{key.name}]]" if typing.get_origin(hint) is tuple else f"[{key.name}]"
        return Message("fault-table-missing", table=table, about=key.about)
    return Message("fault-key-missing", about=key.about)


def _field_of(hint: Any, key: Key, **options: Any) -> fields.Field[Any]:  # noqa: ANN401  a type
    """Return the field for a type as a record writes it."""
    origin, inner = typing.get_origin(hint), typing.get_args(hint)
    if origin in (typing.Union, types.UnionType):
        (one,) = (kind for kind in inner if kind is not types.NoneType)
        return _field_of(one, key, **options)
    if origin is tuple:
        count = None if inner[-1] is Ellipsis else len(inner)
        return _Items(_field_of(inner[0], key), count, **options)
    if origin is Literal:
        return _Value(lambda value: values.choice(values.filled(value, key), inner), **options)
    if dataclasses.is_dataclass(hint):
        return _Table(schema(cast("type", hint)), **options)
    read = values.READERS[hint]
    return _Value(lambda value: read(values.filled(value, key), key), **options)
