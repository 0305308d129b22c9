"""The contract's schemas as TypeScript, as far as types can say what a schema says."""

import json
from collections.abc import Mapping
from typing import Any

Schema = Mapping[str, Any]
PLAIN = {"string": "string", "number": "number", "integer": "number", "boolean": "boolean"}


def declarations(schemas: Mapping[str, Schema]) -> str:
    """Write each schema as a type of its name, in a namespace of their own."""
    types = (f"  type {name} = {type_of(schema)};" for name, schema in schemas.items())
    return "declare namespace Contract {\n" + "\n".join(types) + "\n}\n"


def type_of(schema: Schema) -> str:
    """Write one schema as a type; what a type can't say (bounds, patterns) is left out."""
    if "$ref" in schema:
        return str(schema["$ref"]).rpartition("/")[2]
    for key, sign in (("oneOf", " | "), ("anyOf", " | "), ("allOf", " & ")):
        if key in schema:
            return "(" + sign.join(type_of(part) for part in schema[key]) + ")"
    for key in ("const", "enum"):
        if key in schema:
            values = [schema[key]] if key == "const" else schema[key]
            return " | ".join(json.dumps(value) for value in values)
    kinds = schema.get("type", ())
    return (
        " | ".join(_plain(kind, schema) for kind in ([kinds] if isinstance(kinds, str) else kinds))
        or "any"
    )


def _plain(kind: str, schema: Schema) -> str:
    if kind == "array":
        return f"({type_of(schema.get('items', {}))})[]"
    if kind == "object":
        return _object(schema)
    return PLAIN.get(kind, "null")


def _object(schema: Schema) -> str:
    more = schema.get("additionalProperties", False)
    if "properties" not in schema:  # with nothing said of its members it may be anything
        return f"Record<string, {type_of(more)}>" if isinstance(more, Mapping) else "any"
    required = schema.get("required", ())
    members = (
        f"{json.dumps(name)}{'' if name in required else '?'}: {type_of(part)}"
        for name, part in schema["properties"].items()
    )
    return "{ " + "; ".join(members) + " }"
