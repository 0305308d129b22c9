"""The order as JSON: marshmallow schemas that turn it into the records of ``ledgerstone.order``."""

from __future__ import annotations

import re
from datetime import date
from types import MappingProxyType
from typing import Any

from marshmallow import ValidationError, fields, post_load

from ledgerstone import order as records
from ledgerstone.wire.fields import (
    BySideField,
    ChoiceField,
    CoordinateField,
    KindField,
    LengthField,
    ListField,
    NumberField,
    ObjectField,
    Strict,
    TextField,
    YesNoField,
)
from ledgerstone.wire.tokens import LONGEST_TOKEN

MOST_SLABS = records.MOST_SLABS
MOST_QUANTITY = 24
MOST_CUTOUTS = 20
MOST_RESTS = 20
MOST_POINTS = 200
SIDE_PATTERN = "front|back|left|right|notch-x|notch-y|rim|[1-9][0-9]{0,2}"
_SIDE = re.compile(SIDE_PATTERN)


def _is_side(name: str) -> bool:
    return _SIDE.fullmatch(name) is not None


def _is_corner(name: str) -> bool:
    return name in records.CORNERS


class _Record(Strict):
    """A schema that makes one record of its data."""

    record: type[Any]

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> Any:  # noqa: ANN401  one record or another
        return self.record(**data)


class PointSchema(_Record):
    """A place in plan."""

    about, record = "a point", records.Point
    x = CoordinateField("x", required=True)
    y = CoordinateField("y", required=True)


def _points(label: str, **more: Any) -> ListField:  # noqa: ANN401  marshmallow's own options
    return ListField(
        ObjectField(PointSchema, "a point"), label, at_least=3, at_most=MOST_POINTS, **more
    )


class _Kinded(_Record):
    """A schema chosen by ``kind``; the record is told which it was."""

    kind = fields.String(required=True)


class _Outlined(_Kinded):
    corner_radius = LengthField("the corner radius", zero=True)

    @post_load(pass_original=False)
    def _make(self, data: dict[str, Any], **_: object) -> Any:  # noqa: ANN401  one outline or another
        if "corner_radii" in data:
            data["corner_radii"] = MappingProxyType(data["corner_radii"])
        if "points" in data:
            data["points"] = tuple(data["points"])
        return self.record(**data)


class _Cornered(_Outlined):
    length = LengthField("the slab's length", required=True)
    width = LengthField("the slab's width", required=True)
    corner_radii = BySideField("the corner radii", LengthField("the radius", zero=True), _is_corner)


class RectangleSchema(_Cornered):
    """A rectangle."""

    about, record = "a rectangle", records.Rectangle


class NotchSchema(_Record):
    """What an L leaves out."""

    about, record = "a notch", records.Notch
    corner = ChoiceField("the notch's corner", records.CORNERS, required=True)
    length = LengthField("the notch's length", required=True)
    width = LengthField("the notch's width", required=True)


class LShapeSchema(_Cornered):
    """An L."""

    about, record = "an L-shape", records.LShape
    notch = ObjectField(NotchSchema, "the L's notch", required=True)


class RoundSchema(_Kinded):
    """A disc."""

    about, record = "a round slab", records.Round
    diameter = LengthField("the slab's diameter", required=True)


class PolygonSchema(_Outlined):
    """Straight sides between points."""

    about, record = "a polygon", records.Polygon
    points = _points("the outline's points", required=True)


OUTLINES: dict[str, type[Strict]] = {
    "rectangle": RectangleSchema,
    "l-shape": LShapeSchema,
    "round": RoundSchema,
    "polygon": PolygonSchema,
}


class _CutoutSchema(_Kinded):
    record = records.Cutout
    label = TextField("the cut-out's label")
    turn_degrees = NumberField("the turn in degrees", at_least=-360, at_most=360)
    rim = ChoiceField("the rim", ("shown", "covered"))
    open_to = TextField("the side the cut-out is open to", longest=20)
    heat = YesNoField("heat")
    size_from = ChoiceField("where the size came from", ("measured", "template-to-follow"))

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> Any:  # noqa: ANN401  a Cutout
        if "points" in data:
            data["points"] = tuple(data["points"])
        return records.Cutout(**data)


class _Centred(_CutoutSchema):
    centre = ObjectField(PointSchema, "the cut-out's centre", required=True)


class CircleCutoutSchema(_Centred):
    """A round opening."""

    about = "a round cut-out"
    diameter = LengthField("the cut-out's diameter", required=True)


class _Sized(_Centred):
    length = LengthField("the cut-out's length", required=True)
    width = LengthField("the cut-out's width", required=True)


class RectangleCutoutSchema(_Sized):
    """A rectangular opening."""

    about = "a rectangular cut-out"
    corner_radius = LengthField("the cut-out's corner radius", zero=True)


class SlotCutoutSchema(_Sized):
    """A slot with round ends."""

    about = "a slot"


class PolygonCutoutSchema(_CutoutSchema):
    """An opening with straight sides."""

    about = "a cut-out polygon"
    points = _points("the cut-out's points", required=True)
    corner_radius = LengthField("the cut-out's corner radius", zero=True)


CUTOUTS: dict[str, type[Strict]] = {
    "circle": CircleCutoutSchema,
    "rectangle": RectangleCutoutSchema,
    "slot": SlotCutoutSchema,
    "polygon": PolygonCutoutSchema,
}


class _ReliefSchema(_Kinded):
    about, record = "a relief", records.Relief
    label = TextField("the relief's label")
    outline = KindField("the relief's outline", OUTLINES, required=True)
    at = ObjectField(PointSchema, "where the relief's outline is set down", required=True)
    depth = LengthField("the relief's depth", required=True)


class DrainerSchema(_ReliefSchema):
    """Grooves that lead water off."""

    about = "a drainer"
    grooves = NumberField("the number of grooves", at_least=1, at_most=60, whole=True)
    fall = LengthField("the drainer's fall", zero=True)


RELIEFS: dict[str, type[Strict]] = {
    "drainer": DrainerSchema,
    "recess": _ReliefSchema,
    "rebate": _ReliefSchema,
}


class DropSchema(_Record):
    """A downstand or waterfall end."""

    about, record = "a drop", records.Drop
    depth = LengthField("the drop's depth", required=True)
    mitred = YesNoField("mitred")


class EdgeSchema(_Record):
    """How one side is made."""

    about, record = "an edge", records.Edge
    profile = ChoiceField("the edge's profile", ("square", "bevel", "round", "wall"))
    size = LengthField("the edge's size")
    drip = YesNoField("drip")
    drop = ObjectField(DropSchema, "the drop")


class ShadeSchema(_Record):
    """A shade by name, or a colour to match."""

    about, record = "a shade", records.Shade
    name = TextField("the shade's name")
    match = TextField("the colour to match", longest=7)

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> records.Shade:
        if len(data) != 1:
            raise ValidationError("Give the shade by its name, or a colour to match, and not both.")
        if "match" in data and not re.fullmatch(r"#[0-9a-fA-F]{6}", data["match"]):
            raise ValidationError({"match": ['The colour to match is written like "#5b5d5a".']})
        return records.Shade(**data)


class FinishSchema(Strict):
    """The surface and what seals it; what is left out is the workshop's usual."""

    about = "a finish"
    surface = TextField("the surface", longest=40)
    sealer = TextField("the sealer", longest=40)


class UnitSchema(_Record):
    """One base unit or gap."""

    about, record = "a unit", records.Unit
    width = LengthField("the unit's width", required=True)
    use = ChoiceField("what the unit is for", ("base", "basin", "hob", "gap"), data_key="for")


class LedgeSchema(_Record):
    """A straight bearing."""

    about, record = "a ledge", records.Ledge
    start = ObjectField(PointSchema, "where the ledge starts", required=True)
    end = ObjectField(PointSchema, "where the ledge ends", required=True)
    depth = LengthField("the ledge's depth", required=True)


class _RestsSchema(_Kinded):
    record = records.Rests
    fixed = YesNoField("fixed")

    @post_load
    def _make(self, data: dict[str, Any], **_: object) -> Any:  # noqa: ANN401  a Rests
        lists = {k: tuple(v) for k, v in data.items() if isinstance(v, list)}
        maps = {k: MappingProxyType(v) for k, v in data.items() if isinstance(v, dict)}
        return records.Rests(**{**data, **lists, **maps})


class UnitsSchema(_RestsSchema):
    """Base units, left to right."""

    about = "units"
    units = ListField(
        ObjectField(UnitSchema, "a unit"),
        "the units",
        at_least=1,
        at_most=MOST_RESTS,
        required=True,
    )
    overhang = BySideField("the overhang", LengthField("the overhang", zero=True), _is_side)


class FrameSchema(_RestsSchema):
    """A frame under the named sides."""

    about = "a frame"
    sides = ListField(TextField("a side", longest=20), "the frame's sides", at_least=1, at_most=20)
    width = LengthField("the frame's width", required=True)


class EndsSchema(_RestsSchema):
    """A bearing under each end."""

    about = "ends"
    depth = LengthField("the depth of the bearing", required=True)


class LegsSchema(_RestsSchema):
    """Legs at points."""

    about = "legs"
    at = ListField(
        ObjectField(PointSchema, "a leg"), "the legs", at_least=1, at_most=MOST_RESTS, required=True
    )
    pad = LengthField("the leg's pad", required=True)


class LedgesSchema(_RestsSchema):
    """Straight bearings."""

    about = "ledges"
    lines = ListField(
        ObjectField(LedgeSchema, "a ledge"),
        "the ledges",
        at_least=1,
        at_most=MOST_RESTS,
        required=True,
    )


class FullSchema(_RestsSchema):
    """Bedded all over."""

    about = "a full bed"


RESTS: dict[str, type[Strict]] = {
    "units": UnitsSchema,
    "frame": FrameSchema,
    "ends": EndsSchema,
    "legs": LegsSchema,
    "ledges": LedgesSchema,
    "full": FullSchema,
}


class SlabSchema(Strict):
    """One slab; names of shades, finishes and sides are settled by ``wire.order_in``."""

    about = "a slab"
    label = TextField("the slab's label")
    quantity = NumberField("the quantity", at_least=1, at_most=MOST_QUANTITY, whole=True)
    use = ChoiceField("the use", records.USES)
    size_from = ChoiceField(
        "where the size came from",
        ("finished", "between-walls", "over-units", "template-to-follow"),
    )
    outline = KindField("the slab's outline", OUTLINES, required=True)
    thickness = LengthField("the slab's thickness", required=True, at_most_mm=1000.0)
    cutouts = ListField(KindField("the cut-out", CUTOUTS), "the cut-outs", at_most=MOST_CUTOUTS)
    reliefs = ListField(KindField("the relief", RELIEFS), "the reliefs", at_most=MOST_CUTOUTS)
    edges = BySideField("the edges", ObjectField(EdgeSchema, "the edge"), _is_side)
    shade = ObjectField(ShadeSchema, "the shade")
    finish = ObjectField(FinishSchema, "the finish")
    place = ChoiceField("the place", records.PLACES)
    rests = KindField("what the slab rests on", RESTS)


class TurnSchema(_Record):
    """A right-angled corner on the way in."""

    about, record = "a turn", records.Turn
    before = LengthField("the width before the turn", required=True, data_key="from")
    after = LengthField("the width after the turn", required=True, data_key="into")


class LiftSchema(_Record):
    """A passenger lift."""

    about, record = "a lift", records.Lift
    width = LengthField("the lift's width", required=True)
    depth = LengthField("the lift's depth", required=True)
    height = LengthField("the lift's height", required=True)
    door = LengthField("the lift's door", required=True)
    rated_kg = NumberField("the lift's rated load in kg", at_least=1, at_most=20_000, required=True)


class DeliverySchema(_Record):
    """How the order leaves, and what is known of the way in."""

    about, record = "a delivery", records.Delivery
    kind = ChoiceField(
        "the kind of delivery", ("collect", "pallet", "own-van", "fitted"), required=True
    )
    postcode = TextField("the postcode", longest=12)
    doorway = LengthField("the doorway's clear width")
    turn = ObjectField(TurnSchema, "the turn on the way in")
    ceiling = LengthField("the ceiling's height")
    lift = ObjectField(LiftSchema, "the lift")
    steps = NumberField("the number of steps", at_least=0, at_most=500, whole=True)
    floor = NumberField("the floor", at_least=-5, at_most=100, whole=True)
    people = NumberField("how many people will carry", at_least=0, at_most=50, whole=True)


class JoinEndSchema(_Record):
    """One slab's side at a join."""

    about, record = "a join's side", records.JoinEnd
    slab = NumberField(
        "the slab's number (from 0)", at_least=0, at_most=MOST_SLABS - 1, whole=True, required=True
    )
    side = TextField("the side", longest=20, required=True)


class JoinSchema(_Record):
    """Two sides that meet."""

    about, record = "a join", records.Join
    one = ObjectField(JoinEndSchema, "one side of the join", required=True)
    other = ObjectField(JoinEndSchema, "the other side of the join", required=True)
    gap = LengthField("the join's gap", zero=True, required=True)


class DayField(TextField):
    """An ISO 8601 day."""

    def _deserialize(self, value: Any, *args: Any, **more: Any) -> Any:  # noqa: ANN401  marshmallow
        text = super()._deserialize(value, *args, **more)
        if re.fullmatch(r"[0-9]{4}-[0-9]{2}-[0-9]{2}", text, re.ASCII):
            try:
                return date.fromisoformat(text)
            except ValueError:
                pass
        raise ValidationError(f'{self.capital} is written like "2027-03-25".')


class OrderSchema(Strict):
    """A whole order."""

    about = "an order"
    slabs = ListField(
        ObjectField(SlabSchema, "a slab"),
        "the slabs",
        at_least=1,
        at_most=MOST_SLABS,
        required=True,
    )
    joins = ListField(ObjectField(JoinSchema, "a join"), "the joins", at_most=MOST_SLABS * 2)
    delivery = ObjectField(DeliverySchema, "the delivery")
    needed_by = DayField("the needed-by day", longest=20)
    since = TextField("the earlier quote's token", longest=LONGEST_TOKEN)
