"""Every shape on the wire as JSON Schema 2020-12, from the marshmallow schemas themselves."""

from __future__ import annotations

from typing import Any, Final, cast

from apispec import APISpec
from apispec.ext.marshmallow import MarshmallowPlugin
from marshmallow import Schema, fields

from ledgerstone.codec import order_schemas as schemas
from ledgerstone.codec.answer_fields import AnswerMember, ByKind, Described
from ledgerstone.codec.fields import (
    BySideField,
    ChoiceField,
    CoordinateField,
    KindField,
    LengthField,
    ListField,
    NumberField,
    Strict,
    TextField,
    YesNoField,
)
from ledgerstone.codec.note_field import NoteField
from ledgerstone.codec.request_schemas import UnparsedField
from ledgerstone.order import CORNERS

JSONSchema = dict[str, Any]

_REF = "#/components/schemas/"
_KINDED = (schemas.OUTLINES, schemas.CUTOUTS, schemas.RELIEFS, schemas.RESTS)

# A little wider than the grammar of ``ledgerstone.quantities``, never narrower.
LENGTH_PATTERN = "^[ \u00a0\u2009\u202f−‐‑–-]*[0-9.½¼¾⅛⅜⅝⅞][^\\r\\n]*$"
LENGTH_TEXT: JSONSchema = {
    "type": "string",
    "format": "length",
    "maxLength": 32,
    "pattern": LENGTH_PATTERN,
    "description": (
        "A number and its unit: mm, cm, m, in or ft, spelt out or short, with ' and \" for feet"
        " and inches. A decimal point; nothing between thousands. Inches may carry a fraction of"
        " 2, 4, 8, 16, 32 or 64. What could be read in two ways is answered with both readings."
    ),
    "examples": ["1450 mm", "1.45 m", "56 cm", "22 1/16 in", "4' 9\"", "4 ft 9 in"],
}


# What a schema holds its members to beside their fields.
_RULES: dict[str, JSONSchema] = {
    "Shade": {"minProperties": 1, "maxProperties": 1},
    "Ask": {"oneOf": [{"required": ["token"]}, {"required": ["order"]}]},
    "ReplyAsk": {"oneOf": [{"required": ["token"]}, {"required": ["order"]}]},
}
_MEMBER_RULES: dict[tuple[str, str], JSONSchema] = {
    ("Shade", "match"): {"pattern": "^#[0-9a-fA-F]{6}$"},
    ("Order", "needed_by"): {"format": "date", "examples": ["2027-03-25"]},
    ("Request", "name"): {"minLength": 1},
    ("Request", "reach"): {"minLength": 1},
}


class Components:
    """The document's schemas: each is described once, whoever points at it.

    ``ref`` describes a schema and all that it holds, and returns the pointer to it.
    """

    def __init__(self) -> None:
        plugin = MarshmallowPlugin(schema_name_resolver=_name)
        self._spec = APISpec("schemas", "1", "3.1.0", plugins=[plugin])
        self._converter = cast("Any", plugin.converter)  # apispec leaves its methods untyped
        for describe in (*_FIELDS, *_HOLDING_FIELDS):
            self._converter.add_attribute_function(describe)

    def ref(self, schema: type[Schema]) -> JSONSchema:
        """Point at a schema's component."""
        pointer: JSONSchema = self._converter.resolve_nested_schema(schema)
        return pointer

    def schemas(self) -> dict[str, JSONSchema]:
        """Return every component that was pointed at, by name."""
        made: dict[str, JSONSchema] = self._spec.to_dict()["components"]["schemas"]
        for (kind, *_), name in self._converter.refs.items():
            about = str(kind.__doc__).partition("\n")[0]
            closed = {"additionalProperties": False} if issubclass(kind, Strict) else {}
            made[name] = {"description": about, **made[name], **closed, **_RULES.get(name, {})}
        for (name, member), rule in _MEMBER_RULES.items():
            made[name]["properties"][member] |= rule
        made |= {**_shared_lengths(), "LengthText": LENGTH_TEXT}
        return {name: made[name] for name in sorted(made)}


def _name(schema: Any) -> str:  # noqa: ANN401  a schema's class, instance or name
    kind = schema if isinstance(schema, type) else type(schema)
    return str(kind.__name__).strip("_").removesuffix("Schema")


def _measures(field: LengthField) -> JSONSchema:
    """Describe a length: a number within the field's bounds, or a text with its unit."""
    low = "minimum" if field.zero else "exclusiveMinimum"
    number = {"type": "number", low: field.above_mm, "maximum": field.at_most_mm}
    text = {"$ref": f"{_REF}LengthText"}
    return {"oneOf": [{**number, "description": "Millimetres."}, text]}


def _shared_lengths() -> dict[str, JSONSchema]:
    """Describe the bounds that most lengths have."""
    return {
        "Length": {"description": "A length above zero.", **_measures(LengthField(""))},
        "LengthOrNone": {
            "description": "A length, or zero.",
            **_measures(LengthField("", zero=True)),
        },
        "Coordinate": {
            "description": "A place along x or y, on either side of zero.",
            **_measures(CoordinateField("")),
        },
    }


def _length(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, LengthField):
        return {}
    measures = _measures(field)
    for name, shared in _shared_lengths().items():
        if shared["oneOf"] == measures["oneOf"]:
            return {"$ref": f"{_REF}{name}"}
    return measures


def _text(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, TextField | NoteField):
        return {}
    return {"type": "string", "maxLength": field.longest}


def _number(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, NumberField):
        return {}
    kind = "integer" if field.whole else "number"
    return {
        "type": kind,
        "minimum": field.at_least,
        "maximum": field.at_most,
    }


def _choice(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, ChoiceField):
        return {}
    return {"type": "string", "enum": list(field.choices)}


def _yes_no(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    return {"type": "boolean"} if isinstance(field, YesNoField) else {}


def _member(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    return dict(field.keywords) if isinstance(field, AnswerMember) else {}


def _list(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, ListField):
        return {}
    least = {"minItems": field.at_least} if field.at_least else {}
    return {**least, "maxItems": field.at_most}


def _by_side(self: Any, field: fields.Field[Any], **_: object) -> JSONSchema:  # noqa: ANN401  apispec's converter
    if not isinstance(field, BySideField):
        return {}
    names: JSONSchema = {"pattern": f"^({schemas.SIDE_PATTERN})$"}
    if all(field.known(corner) for corner in CORNERS):
        names = {"enum": list(CORNERS)}
    return {
        "type": "object",
        "propertyNames": names,
        "additionalProperties": self.field2property(field.inner),
    }


def _kind(self: Any, field: fields.Field[Any], **_: object) -> JSONSchema:  # noqa: ANN401  apispec's converter
    if not isinstance(field, KindField | ByKind):
        return {}
    mapping = {
        kind: self.resolve_nested_schema(schema)["$ref"] for kind, schema in field.kinds.items()
    }
    return {
        "oneOf": [{"$ref": ref} for ref in dict.fromkeys(mapping.values())],
        "discriminator": {"propertyName": "kind", "mapping": mapping},
    }


def _described(self: Any, field: fields.Field[Any], **_: object) -> JSONSchema:  # noqa: ANN401  apispec's converter
    if not isinstance(field, UnparsedField | Described):
        return {}
    pointer: JSONSchema = self.resolve_nested_schema(field.schema_class)
    return pointer


def _kinds_of(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if field.name != "kind" or type(field) is not fields.String:
        return {}
    family = next(kinds for kinds in _KINDED if type(field.parent) in kinds.values())
    kinds = [kind for kind, schema in family.items() if schema is type(field.parent)]
    return {"const": kinds[0]} if len(kinds) == 1 else {"enum": kinds}


_FIELDS: Final = (_length, _text, _number, _choice, _list, _yes_no, _member)
_HOLDING_FIELDS: Final = (_by_side, _kind, _kinds_of, _described)
