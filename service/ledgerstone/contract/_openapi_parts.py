"""The few words in which the OpenAPI document's schemas are written."""

from __future__ import annotations

from typing import Any

JSONSchema = dict[str, Any]


def ref(name: str) -> JSONSchema:
    """Point at a component."""
    return {"$ref": f"#/components/schemas/{name}"}


def text(says: str = "", **more: Any) -> JSONSchema:  # noqa: ANN401  JSON Schema's own keywords
    """Describe a text."""
    return {"type": "string", **({"description": says} if says else {}), **more}


def number(says: str = "", **more: Any) -> JSONSchema:  # noqa: ANN401  as above
    """Describe a number."""
    return {"type": "number", **({"description": says} if says else {}), **more}


def whole(says: str = "", **more: Any) -> JSONSchema:  # noqa: ANN401  as above
    """Describe a whole number."""
    return {**number(says, **more), "type": "integer"}


def list_of(of: JSONSchema, says: str = "") -> JSONSchema:
    """Describe a list."""
    return {"type": "array", "items": of, **({"description": says} if says else {})}


def object_of(
    members: dict[str, JSONSchema], *, optional: tuple[str, ...] = (), says: str = ""
) -> JSONSchema:
    """Describe an object; every member that is not optional is always there."""
    return {
        "type": "object",
        **({"description": says} if says else {}),
        "properties": members,
        "required": [name for name in members if name not in optional],
    }
