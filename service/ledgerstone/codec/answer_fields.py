"""Marshmallow fields of answers: each writes one member and says what it means.

A field's first argument says what the member is and its unit. ``absent`` says what it means that
the member is not there; without it the member is always there. A value of None leaves a member
out, unless ``or_null`` says that it is written as null.
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
    """An answer or a part of one, written from a record or from members, in its fields' order."""

    class Meta:
        """Answers may gain members, so that a reader ignores what it does not know."""

        unknown = EXCLUDE


class Member(fields.Field[Any]):
    """What every field of an answer has: what it means, and what it means where it is absent.

    Attributes
    ----------
    keywords
        JSON Schema's own, beside those that the field's kind has.
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
        """Write the member; one that is None and may not be null is left out."""
        value = super().serialize(attr, obj, accessor, **more)
        return missing if value is None and not self.allow_none else value


class Text(Member, fields.String):
    """A text."""


class Day(Member, fields.Date):
    """A day, ISO 8601."""


class Amount(Member, fields.String):
    """An amount of money, as a decimal text."""

    def __init__(self, about: str, **more: Any) -> None:
        super().__init__(about, keywords={"pattern": AMOUNT_PATTERN}, **more)

    def _serialize(self, value: JSON, *_: object, **__: object) -> str | None:
        return None if value is None else f"{value:.2f}"


class Number(Member, fields.Float):
    """A number, rounded to so many places where that is said."""

    def __init__(self, about: str, places: int | None = None, **more: Any) -> None:
        super().__init__(about, **more)
        self.places = places

    def _serialize(self, value: JSON, *_: object, **__: object) -> Any:  # noqa: ANN401  marshmallow
        if isinstance(value, Decimal):
            return float(value)
        return value if value is None or self.places is None else round(value, self.places)


class Whole(Member, fields.Integer):
    """A whole number."""

    def _serialize(self, value: int | None, *_: object, **__: object) -> int | None:
        return value


class YesNo(Member, fields.Boolean):
    """True or false."""


class OneOf(Member, fields.String):
    """One of a few words."""

    def __init__(self, about: str, choices: Sequence[str], **more: Any) -> None:
        super().__init__(about, validate=validate.OneOf(list(choices)), **more)


class Free(Member, fields.Raw):
    """Anything that JSON holds, written as it is; ``keywords`` say more."""


class Quantities(Member, fields.Dict):
    """Named quantities; each key ends in its unit, or names a day."""

    def __init__(self, about: str, **more: Any) -> None:
        said = {"additionalProperties": {"type": ["number", "string"]}}
        super().__init__(about, keywords=said, **more)


class Part(Member, fields.Nested):
    """An object of its own."""

    def __init__(self, about: str, schema: type[Schema], **more: Any) -> None:
        super().__init__(about, schema, **more)


class Facet(Part):
    """An object of its own, written from the record that it is a part of."""

    def get_value(self, obj: Any, *_: object, **__: object) -> Any:  # noqa: ANN401  marshmallow
        """Return the record itself."""
        return obj


class Many(Member, fields.List[Any]):
    """A list of objects, or of plain values."""

    def __init__(
        self,
        about: str,
        of: type[Schema] | fields.Field[Any],
        **more: Any,
    ) -> None:
        super().__init__(about, fields.Nested(of) if isinstance(of, type) else of, **more)


class Described(Member, fields.Raw):
    """Members that are written already, described by the schema of a request."""

    def __init__(self, about: str, schema: type[Schema], **more: Any) -> None:
        super().__init__(about, **more)
        self.schema_class = schema


class ByKind(Member, fields.Field[Any]):
    """An object whose ``kind`` says which schema it follows."""

    def __init__(self, about: str, kinds: dict[str, type[Schema]], **more: Any) -> None:
        super().__init__(about, **more)
        self.kinds = kinds
        self._schemas = {kind: schema() for kind, schema in kinds.items()}

    def _serialize(self, value: JSON, *_: object, **__: object) -> Any:  # noqa: ANN401  marshmallow
        return None if value is None else self._schemas[value["kind"]].dump(value)
