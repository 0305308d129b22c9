"""The page's types of what goes to the service and comes back, from the document.

A kind of outline, cut-out, relief or rests is one type with the members of all its kinds: the form
builds them member by member, and the service says what is wrong. For the same reason a choice in
an order is any text here. In answers a choice is one of its words.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from typing import Final

from ledgerstone.contract.schemas import JSONSchema
from ledgerstone.json_types import JSON

_HEAD: Final = """\
// What goes to the service and comes back: python -m ledgerstone.contract types
declare namespace Contract {
"""
_PLAIN: Final = {
    "string": "string",
    "number": "number",
    "integer": "number",
    "boolean": "boolean",
    "null": "null",
}
_LENGTHS: Final = frozenset(("Length", "LengthOrNone", "Coordinate", "LengthText"))
_JOINED: Final = (("oneOf", " | "), ("anyOf", " | "), ("allOf", " & "))


def page_types(schemas: Mapping[str, JSONSchema]) -> str:
    """Write every schema as a type of its name."""
    return _HEAD + "".join(_declared(_Types(schemas).all())) + "}\n"


def _declared(types: Mapping[str, str]) -> Iterator[str]:
    for name in sorted(types):
        yield f"  type {name} = {types[name]};\n"


class _Types:
    """Types by name: those of the schemas, and those that stand for several kinds."""

    def __init__(self, schemas: Mapping[str, JSONSchema]) -> None:
        self._schemas = schemas
        self._merged: dict[str, str] = {}

    def all(self) -> dict[str, str]:
        """Write every schema but the lengths and the single kinds of a merged type."""
        kinds = {name for schema in self._schemas.values() for name in _kinds_in(schema)}
        requests = {name for name in kinds if self._is_request(name)}
        named = {
            name: self._type(schema, name)
            for name, schema in self._schemas.items()
            if name not in requests | _LENGTHS
        }
        return {**named, **self._merged, "Length": "string | number"}

    def _is_request(self, name: str) -> bool:
        return self._schemas[name].get("additionalProperties") is False

    def _type(self, schema: JSONSchema, owner: str, member: str = "") -> str:
        if "$ref" in schema:
            name = _last(schema["$ref"])
            return "Length" if name in _LENGTHS else name
        if "discriminator" in schema and all(map(self._is_request, _kinds_of(schema))):
            return self._one_of_kinds(schema, member)
        if _is_length(schema):
            return "Length"
        for key, sign in _JOINED:
            if key in schema and "properties" not in schema:
                return sign.join(self._type(part, owner, member) for part in schema[key])
        if "const" in schema or "enum" in schema:
            values = [schema["const"]] if "const" in schema else schema["enum"]
            return "string" if self._is_request(owner) else " | ".join(map(json.dumps, values))
        kinds = schema.get("type", "any")
        many = [kinds] if isinstance(kinds, str) else kinds
        return " | ".join(self._plain(kind, schema, owner, member) for kind in many)

    def _plain(self, kind: str, schema: JSONSchema, owner: str, member: str) -> str:
        if kind == "array":
            items = self._type(schema.get("items", {}), owner, member.removesuffix("s"))
            return f"({items})[]" if " " in items else f"{items}[]"
        if kind == "object":
            return self._object(schema, owner)
        return _PLAIN.get(kind, "any")

    def _object(self, schema: JSONSchema, owner: str) -> str:
        more = schema.get("additionalProperties")
        if "properties" not in schema:
            return f"Record<string, {self._type(more, owner)}>" if isinstance(more, dict) else "any"
        required = schema.get("required", ())
        return _members(
            (name, name in required, self._type(part, owner, name))
            for name, part in schema["properties"].items()
        )

    def _one_of_kinds(self, schema: JSONSchema, member: str) -> str:
        """Write one type with the members of all kinds, named for the member that holds it."""
        name = member.capitalize()
        if name not in self._merged:
            self._merged[name] = ""  # a relief holds an outline of its own
            kinds = [self._schemas[kind] for kind in _kinds_of(schema)]
            members = dict.fromkeys(key for kind in kinds for key in kind["properties"])
            self._merged[name] = _members(
                (
                    key,
                    all(key in kind.get("required", ()) for kind in kinds),
                    self._of_any(key, kinds, _kinds_of(schema)[0]),
                )
                for key in members
            )
        return name

    def _of_any(self, key: str, kinds: list[JSONSchema], owner: str) -> str:
        types = (
            self._type(kind["properties"][key], owner, key)
            for kind in kinds
            if key in kind["properties"]
        )
        return " | ".join(dict.fromkeys(types))


def _members(members: Iterator[tuple[str, bool, str]]) -> str:
    parts = (f"{name}{'' if needed else '?'}: {kind}" for name, needed, kind in members)
    return "{" + ", ".join(parts) + "}"


def _is_length(schema: JSONSchema) -> bool:
    return any(_last(part.get("$ref", "")) == "LengthText" for part in schema.get("oneOf", ()))


def _kinds_of(schema: JSONSchema) -> list[str]:
    return [_last(part["$ref"]) for part in schema["oneOf"]]


def _kinds_in(schema: JSON) -> Iterator[str]:
    if isinstance(schema, dict):
        if "discriminator" in schema:
            yield from _kinds_of(schema)
        for part in schema.values():
            yield from _kinds_in(part)
    elif isinstance(schema, list):
        for part in schema:
            yield from _kinds_in(part)


def _last(ref: str) -> str:
    return ref.rpartition("/")[2]
