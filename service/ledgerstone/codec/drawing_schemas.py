"""The links to an order's drawings."""

from __future__ import annotations

from typing import Final

from marshmallow import fields

from ledgerstone.codec.answer_fields import AnswerSchema, Many, Text

_TOO_LONG = "Absent if the slabs are too detailed for a link."


class DrawingsSchema(AnswerSchema):
    """Links to the drawings; an empty object if the slabs are too detailed for a link."""

    plan = Text(
        "The dimensioned plan, an SVG. With `.png` in place of `.svg`, a picture; `slab` picks the"
        " slab, from 0.",
        absent=_TOO_LONG,
    )
    view = Text("The view, as SVG or picture, as the plan.", absent=_TOO_LONG)
    assembled = Text(
        "All pieces together from above, as SVG or picture.", absent="Absent without a join."
    )
    true_size = Text("A cut-out on paper at 1 : 1, a PDF.", absent="Absent without a cut-out.")
    says = Many(
        "A description of each slab's drawing, in the order of the slabs.",
        fields.String(),
        absent=_TOO_LONG,
    )


DRAWINGS: Final = DrawingsSchema()
