"""The OpenAPI document's schemas as JSON Schema 2020-12 validators."""

import copy
from typing import Any

from jsonschema import Draft202012Validator
from referencing import Registry, Resource
from referencing.jsonschema import DRAFT202012

_URI = "urn:ledgerstone:document"


class Schemas:
    """Says what in a document does not match a schema of the OpenAPI document."""

    def __init__(self, document: dict[str, Any]) -> None:
        self._registry = _registry(document)
        self._closed = _registry(_closed(document))

    def faults(self, name: str, value: object) -> list[str]:
        """What in a value does not match the schema of this name."""
        return _faults({"$ref": f"{_URI}#/components/schemas/{name}"}, value, self._registry)

    def undocumented(self, name: str, value: object) -> list[str]:
        """What in a value is wrong, or is a member that the schema of this name does not know."""
        return _faults({"$ref": f"{_URI}#/components/schemas/{name}"}, value, self._closed)

    def faults_of(self, schema: dict[str, Any], value: object) -> list[str]:
        """What in a value does not match a schema that stands somewhere in the document."""
        return _faults({"allOf": [_absolute(schema)]}, value, self._registry)


def _registry(document: dict[str, Any]) -> Registry[Any]:
    resource = Resource.from_contents(document, default_specification=DRAFT202012)
    made: Registry[Any] = Registry().with_resource(_URI, resource)
    return made


def _faults(schema: dict[str, Any], value: object, registry: Registry[Any]) -> list[str]:
    validator = Draft202012Validator(
        schema, registry=registry, format_checker=Draft202012Validator.FORMAT_CHECKER
    )
    return [f"{fault.json_path}: {fault.message}" for fault in validator.iter_errors(value)]


def _absolute(schema: object) -> object:
    """A schema whose pointers into the document lead there from outside it."""
    if isinstance(schema, dict):
        return {
            key: f"{_URI}{value}" if key == "$ref" else _absolute(value)
            for key, value in schema.items()
        }
    return [_absolute(part) for part in schema] if isinstance(schema, list) else schema


def _closed(document: dict[str, Any]) -> dict[str, Any]:
    """The document, with every object of known members closed to others.

    What ``allOf`` puts together is closed as a whole, so its parts are left open.
    """
    closed = copy.deepcopy(document)
    schemas: dict[str, Any] = closed["components"]["schemas"]
    parts = [part for schema in schemas.values() for part in schema.get("allOf", ())]
    shared = {part["$ref"].rpartition("/")[2] for part in parts if "$ref" in part}
    for name, schema in schemas.items():
        for child in schema.values():
            _close(child)
        if name not in shared:
            _shut(schema)
    return closed


def _close(schema: object) -> None:
    if isinstance(schema, list):
        for part in schema:
            for child in part.values() if isinstance(part, dict) else ():
                _close(child)
    elif isinstance(schema, dict):
        for part in schema.values():
            _close(part)
        _shut(schema)


def _shut(schema: dict[str, Any]) -> None:
    members = schema.get("properties")
    known = isinstance(members, dict) and "type" in schema and "additionalProperties" not in schema
    if known or "allOf" in schema:
        schema["unevaluatedProperties"] = False
