"""The order's schemas as JSON Schema 2020-12, from the marshmallow schemas that read it."""

from __future__ import annotations

from typing import Any

from apispec import APISpec
from apispec.ext.marshmallow import MarshmallowPlugin
from marshmallow import fields

from ledgerstone.codec import order_schemas as schemas
from ledgerstone.codec.fields import (
    BySideField,
    ChoiceField,
    CoordinateField,
    KindField,
    LengthField,
    ListField,
    NumberField,
    TextField,
    YesNoField,
)
from ledgerstone.contract._openapi_parts import JSONSchema
from ledgerstone.order import CORNERS

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


def order_components() -> dict[str, JSONSchema]:
    """Make the components that describe an order, with every limit as its field holds it."""
    plugin = MarshmallowPlugin(schema_name_resolver=_name)
    spec = APISpec("orders", "1", "3.1.0", plugins=[plugin])
    converter: Any = plugin.converter  # apispec leaves its methods untyped
    for describe in (_length, _text, _number, _choice, _by_side, _kind, _kinds_of, _list, _yes_no):
        converter.add_attribute_function(describe)
    spec.components.schema("Order", schema=schemas.OrderSchema)
    made: dict[str, JSONSchema] = spec.to_dict()["components"]["schemas"]
    for (kind, *_), name in converter.refs.items():
        about = str(kind.__doc__).partition("\n")[0]
        made[name] = {"description": about, **made[name], "additionalProperties": False}
    made["Shade"] |= {"minProperties": 1, "maxProperties": 1}
    made["Shade"]["properties"]["match"]["pattern"] = "^#[0-9a-fA-F]{6}$"
    made["Order"]["properties"]["needed_by"] |= {"format": "date", "examples": ["2027-03-25"]}
    return {**made, **_shared_lengths(), "LengthText": LENGTH_TEXT}


def _name(schema: Any) -> str:  # noqa: ANN401  a schema's class, instance or name
    kind = schema if isinstance(schema, type) else type(schema)
    return str(kind.__name__).strip("_").removesuffix("Schema")


def _about(field: fields.Field[Any]) -> JSONSchema:
    label = str(field.metadata.get("label", ""))
    return {"description": label[:1].upper() + label[1:]} if label else {}


def _measures(field: LengthField) -> JSONSchema:
    """Describe a length: a number within the field's bounds, or a text with its unit."""
    low = "minimum" if field.zero else "exclusiveMinimum"
    number = {"type": "number", low: field.above_mm, "maximum": field.at_most_mm}
    text = {"$ref": f"{_REF}LengthText"}
    return {"oneOf": [{**number, "description": "Millimetres."}, text]}


def _shared_lengths() -> dict[str, JSONSchema]:
    """Describe the bounds that most lengths have."""
    return {
        "Length": _measures(LengthField("")),
        "LengthOrNone": _measures(LengthField("", zero=True)),
        "Coordinate": _measures(CoordinateField("")),
    }


def _length(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, LengthField):
        return {}
    measures = _measures(field)
    for name, shared in _shared_lengths().items():
        if shared == measures:
            return {**_about(field), "$ref": f"{_REF}{name}"}
    return {**_about(field), **measures}


def _text(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, TextField):
        return {}
    return {**_about(field), "type": "string", "maxLength": field.longest}


def _number(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, NumberField):
        return {}
    kind = "integer" if field.whole else "number"
    return {
        **_about(field),
        "type": kind,
        "minimum": field.at_least,
        "maximum": field.at_most,
    }


def _choice(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, ChoiceField):
        return {}
    return {**_about(field), "type": "string", "enum": list(field.choices)}


def _yes_no(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    return {**_about(field), "type": "boolean"} if isinstance(field, YesNoField) else {}


def _list(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if not isinstance(field, ListField):
        return {}
    least = {"minItems": field.at_least} if field.at_least else {}
    return {**_about(field), **least, "maxItems": field.at_most}


def _by_side(self: Any, field: fields.Field[Any], **_: object) -> JSONSchema:  # noqa: ANN401  apispec's converter
    if not isinstance(field, BySideField):
        return {}
    names: JSONSchema = {"pattern": f"^({schemas.SIDE_PATTERN})$"}
    if all(field.known(corner) for corner in CORNERS):
        names = {"enum": list(CORNERS)}
    return {
        **_about(field),
        "type": "object",
        "propertyNames": names,
        "additionalProperties": self.field2property(field.inner),
    }


def _kind(self: Any, field: fields.Field[Any], **_: object) -> JSONSchema:  # noqa: ANN401  apispec's converter
    if not isinstance(field, KindField):
        return {}
    mapping = {
        kind: self.resolve_nested_schema(schema)["$ref"] for kind, schema in field.kinds.items()
    }
    return {
        **_about(field),
        "oneOf": [{"$ref": ref} for ref in dict.fromkeys(mapping.values())],
        "discriminator": {"propertyName": "kind", "mapping": mapping},
    }


def _kinds_of(_self: object, field: fields.Field[Any], **_: object) -> JSONSchema:
    if field.name != "kind" or type(field) is not fields.String:
        return {}
    family = next(kinds for kinds in _KINDED if type(field.parent) in kinds.values())
    kinds = [kind for kind, schema in family.items() if schema is type(field.parent)]
    return {"const": kinds[0]} if len(kinds) == 1 else {"enum": kinds}
