"""Marshmallow fields of answers: each writes one member and has its description.

A field's first argument describes the member and its unit. ``absent`` describes when the member
is absent; without it the member is always present. A value of None leaves a member out, unless
``or_null`` has it written as null.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Any

from marshmallow import EXCLUDE, Schema, fields, missing, validate

from ledgerstone.json_types import JSON

AMOUNT_PATTERN = "^-?[0-9]+\\.[0-9]{2}$"
COLOUR_PATTERN = "^#[0-9a-fA-F]{6}$"


class AnswerSchema(Schema):
    """An answer or a part of one, written from a record or a mapping in its fields' order."""

    class Meta:
        """Answers may gain members: a reader ignores those that it does not know."""

        unknown = EXCLUDE


class AnswerMember(fields.Field[Any]):
    """Base of every field of an answer: its description, and when it is absent.

    Attributes
    ----------
    keywords
        JSON Schema keywords beside those of the field's kind.
    """

    def __init__(
        self,
        about: str,
        *arguments: Any,
        absent: str = "",
        or_null: bool = False,
        attribute: str | None = None,
        validate: Any = None,  # noqa: ANN401  marshmallow's own
        keywords: dict[str, Any] | None = None,
    ) -> None:
        super().__init__(
            *arguments,
            required=not absent,
            allow_none=or_null,
            attribute=attribute,
            validate=validate,
            metadata={"description": f"{about} {absent}".strip()},
        )
        self.keywords = keywords or {}

    def serialize(self, attr: str, obj: Any, accessor: Any = None, **more: Any) -> Any:  # noqa: ANN401  marshmallow
        """Write the member; None is left out, unless it is written as null."""
        value = super().serialize(attr, obj, accessor, **more)
        return missing if value is None and not self.allow_none else value


class Text(AnswerMember, fields.String):
    """A text."""


class Day(AnswerMember, fields.Date):
    """A day, ISO 8601."""


class Amount(AnswerMember, fields.String):
    """An amount of money, as a decimal text."""

    def __init__(self, about: str, **more: Any) -> None:
        super().__init__(about, keywords={"pattern": AMOUNT_PATTERN}, **more)

    def _serialize(self, value: JSON, *_: object, **__: object) -> str | None:
        return None if value is None else f"{value:.2f}"


class Number(AnswerMember, fields.Float):
    """A number, rounded to ``places`` if given."""

    def __init__(self, about: str, places: int | None = None, **more: Any) -> None:
        super().__init__(about, **more)
        self.places = places

    def _serialize(self, value: JSON, *_: object, **__: object) -> Any:  # noqa: ANN401  marshmallow
        if isinstance(value, Decimal):
            return float(value)
        return value if value is None or self.places is None else round(value, self.places)


class Whole(AnswerMember, fields.Integer):
    """A whole number."""

    def _serialize(self, value: int | None, *_: object, **__: object) -> int | None:
        return value


class YesNo(AnswerMember, fields.Boolean):
    """True or false."""


class OneOf(AnswerMember, fields.String):
    """One of a few words."""

    def __init__(self, about: str, choices: Sequence[str], **more: Any) -> None:
        super().__init__(about, validate=validate.OneOf(list(choices)), **more)


class AnyJson(AnswerMember, fields.Raw):
    """Any JSON value, written as it is; ``keywords`` describe it."""


class Quantities(AnswerMember, fields.Dict):
    """Named quantities; each key ends in its unit, or names a day."""

    def __init__(self, about: str, **more: Any) -> None:
        keywords = {"additionalProperties": {"type": ["number", "string"]}}
        super().__init__(about, keywords=keywords, **more)


class NestedPart(AnswerMember, fields.Nested):
    """A nested object."""

    def __init__(self, about: str, schema: type[Schema], **more: Any) -> None:
        super().__init__(about, schema, **more)


class Facet(NestedPart):
    """A nested object, written from attributes of the enclosing record."""

    def get_value(self, obj: Any, *_: object, **__: object) -> Any:  # noqa: ANN401  marshmallow
        """Return the record itself."""
        return obj


class Many(AnswerMember, fields.List[Any]):
    """A list of objects, or of plain values."""

    def __init__(
        self,
        about: str,
        of: type[Schema] | fields.Field[Any],
        **more: Any,
    ) -> None:
        super().__init__(about, fields.Nested(of) if isinstance(of, type) else of, **more)


class Described(AnswerMember, fields.Raw):
    """Members that are JSON already, described by the schema of a request."""

    def __init__(self, about: str, schema: type[Schema], **more: Any) -> None:
        super().__init__(about, **more)
        self.schema_class = schema


class ByKind(AnswerMember, fields.Field[Any]):
    """An object whose ``kind`` selects its schema."""

    def __init__(self, about: str, kinds: dict[str, type[Schema]], **more: Any) -> None:
        super().__init__(about, **more)
        self.kinds = kinds
        self._schemas = {kind: schema() for kind, schema in kinds.items()}

    def _serialize(self, value: JSON, *_: object, **__: object) -> Any:  # noqa: ANN401  marshmallow
        return None if value is None else self._schemas[value["kind"]].dump(value)
