"""Schemas of a slab's rests."""

from __future__ import annotations

from types import MappingProxyType
from typing import Any

from marshmallow import post_load

from ledgerstone import order as records
from ledgerstone.codec._record_schema import MAX_RESTS, Kinded, PointSchema, Record, is_side
from ledgerstone.codec.fields import (
    BySideField,
    ChoiceField,
    LengthField,
    ListField,
    ObjectField,
    Strict,
    TextField,
    YesNoField,
)


class UnitSchema(Record):
    """One base unit or gap."""

    about, record = "a-unit", records.Unit
    width = LengthField("unit-width", required=True, about="The unit's width.")
    use = ChoiceField(
        "what-the-unit-is-for",
        ("base", "basin", "hob", "gap"),
        data_key="for",
        about="The kind of unit; a `gap` carries nothing. Left out, `base`.",
    )


class LedgeSchema(Record):
    """A straight bearing."""

    about, record = "a-ledge", records.Ledge
    start = ObjectField(
        PointSchema, "where-the-ledge-starts", required=True, about="Where it begins."
    )
    end = ObjectField(PointSchema, "where-the-ledge-ends", required=True, about="Where it ends.")
    depth = LengthField(
        "ledge-depth", required=True, about="The width of its bearing under the slab."
    )


def _at_least_one(
    schema: type[Strict], one: str, several: str, about: str, *, required: bool = True
) -> ListField:
    """Return a field for a list of one to ``MAX_RESTS`` rests."""
    return ListField(
        ObjectField(schema, one),
        several,
        at_least=1,
        at_most=MAX_RESTS,
        required=required,
        about=about,
    )


class _RestsSchema(Kinded):
    record = records.Rests
    fixed = YesNoField(
        "fixed", about="Whether the slab is fixed down. Left out, it is loose on its rests."
    )

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> records.Rests:
        lists = {k: tuple(v) for k, v in data.items() if isinstance(v, list)}
        maps = {k: MappingProxyType(v) for k, v in data.items() if isinstance(v, dict)}
        return records.Rests(**{**data, **lists, **maps})


class UnitsSchema(_RestsSchema):
    """Base units, left to right."""

    about = "rests-units"
    units = _at_least_one(
        UnitSchema,
        "a-unit",
        "units",
        "The units from left to right, as they stand under the slab. Left out, they are assumed.",
        required=False,
    )
    assumed = YesNoField(
        "units-assumed",
        about="Whether no units are given: `units` is not read then, and units of the widths"
        " that are sold fill the run, one under each opening, wherever the openings are. Left out,"
        " only if `units` is.",
    )
    overhang = BySideField(
        "overhang",
        LengthField("overhang", zero=True),
        is_side,
        about="How far the slab hangs over, by side. Left out, it is flush.",
    )
    rails = ChoiceField(
        "rails",
        ("cabinet", "hardwood", "steel"),
        about="What carries across the front and back of the units. Left out, the first that"
        " suffices is a condition of the quote.",
    )


class FrameSchema(_RestsSchema):
    """A frame under the named sides."""

    about = "a-frame"
    sides = ListField(
        TextField("a-side", longest=20),
        "frame-sides",
        at_least=1,
        at_most=20,
        about="The sides that the frame carries. Left out, all of them.",
    )
    width = LengthField(
        "frame-width", required=True, about="The width of the frame's bearing under the slab."
    )


class EndsSchema(_RestsSchema):
    """A bearing under each end."""

    about = "rests-ends"
    depth = LengthField(
        "depth-of-the-bearing", required=True, about="How much of the slab each end bears on."
    )


class LegsSchema(_RestsSchema):
    """Legs at points."""

    about = "rests-legs"
    at = _at_least_one(PointSchema, "a-leg", "legs", "Where the middle of each leg's pad is.")
    pad = LengthField("leg-pad", required=True, about="The side of the square pad on each leg.")


class LedgesSchema(_RestsSchema):
    """Straight bearings."""

    about = "rests-ledges"
    lines = _at_least_one(LedgeSchema, "a-ledge", "ledges", "Each ledge or batten.")


class PedestalSchema(_RestsSchema):
    """One support in the middle, with a plate on it."""

    about = "rests-pedestal"
    plate = LengthField(
        "pedestal-plate", required=True, about="The side of the square plate on the pedestal."
    )
    centre = ObjectField(
        PointSchema,
        "pedestal-centre",
        about="Where the middle of the plate is. Left out, under the middle of the slab.",
    )


class FullSchema(_RestsSchema):
    """Bedded all over."""

    about = "a-full-bed"


RESTS: dict[str, type[Strict]] = {
    "units": UnitsSchema,
    "frame": FrameSchema,
    "ends": EndsSchema,
    "legs": LegsSchema,
    "ledges": LedgesSchema,
    "pedestal": PedestalSchema,
    "full": FullSchema,
}
