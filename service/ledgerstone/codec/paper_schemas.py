"""Schemas of papers as plain lists and texts: replies, sheets, and the job sheet."""

from __future__ import annotations

from typing import Final

from marshmallow import fields

from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    AnyJson,
    Many,
    NestedPart,
    Number,
    OneOf,
    Text,
    Whole,
)
from ledgerstone.codec.price_schemas import CostsSchema

BLOCKS: Final = ("heading", "says", "ticks", "flag", "facts", "table", "drawing")
_TEXTS: Final = {"type": "array", "items": {"type": "string"}}
_ONLY_TABLES = "Only in `facts` and `table`."


class ReplySchema(AnswerSchema):
    """An email to a customer."""

    subject = Text("The email's subject.")
    text = Text("The email as plain text.")
    html = Text("The same as HTML; its pictures are at the service's own addresses.")


class SheetFactSchema(AnswerSchema):
    """One line of a table of facts."""

    what = Text("The fact's name, such as `Thickness`.")
    says = Text("The fact's value, in words.")


class SheetSectionSchema(AnswerSchema):
    """One part of a sheet."""

    heading = Text("The section's heading.")
    facts = Many("Facts that are set as a table; empty if there are none.", SheetFactSchema)
    says = Many(
        "Lines of text; on a sheet that is signed, each has a box to tick.", fields.String()
    )
    words = Text("The section's drawing, described in words; empty if it has none.")


class SheetSchema(AnswerSchema):
    """A sheet of paper; its drawings are described in words."""

    title = Text("The sheet's title.")
    workshop = Text("The workshop's name and address.")
    reach = Text("The workshop's email address and telephone number.")
    facts = Many("The facts under the title.", SheetFactSchema)
    sections = Many("The sections, in order.", SheetSectionSchema)
    signs = Text("The declaration that is signed at the foot; empty if the sheet is not signed.")


class OperationTimeSchema(AnswerSchema):
    """One operation of the work."""

    name = Text("The operation's name.")
    stage = Text("The stage of the work that it belongs to.")
    slab = Whole(
        "The slab's index, from 0; null for an operation of the whole order.",
        or_null=True,
        keywords={"minimum": 0},
    )
    hands_minutes = Whole("Labour, in minutes.", keywords={"minimum": 0})
    machine_minutes = Whole("Machine time, in minutes.", keywords={"minimum": 0})
    wait_hours = Number("Waiting time after it, in hours.", 3, keywords={"minimum": 0})


class JobBlockSchema(AnswerSchema):
    """One block of a page; `kind` says which members it has."""

    kind = OneOf("The kind of block, which determines its members.", BLOCKS)
    says = AnyJson(
        "The text: one sentence, or a list of lines.",
        absent="Absent in `facts`, `table` and `drawing`.",
        keywords={"type": ["string", "array"], "items": {"type": "string"}},
    )
    columns = AnyJson("The column headings of a table.", absent="Only in `table`.", keywords=_TEXTS)
    rows = AnyJson(
        "The rows, each a list of cells.",
        absent=_ONLY_TABLES,
        keywords={"type": "array", "items": _TEXTS},
    )
    words = Text("The drawing, described in words.", absent="Only in `drawing`.")


class JobPageSchema(AnswerSchema):
    """One page of a job sheet."""

    title = Text("The page's title.")
    blocks = Many("The blocks of the page, in order.", JobBlockSchema)


class JobDaySchema(AnswerSchema):
    """The work at one slab on one day."""

    day = Text("The day of the work, ISO 8601.", keywords={"format": "date"})
    label = Text("The slab's name; empty for work on the whole order.")
    says = Text("The work of that day.")
    hours = Text(
        "Start and end of the work, local time.", absent="Absent for the day the order leaves."
    )


class MaterialSchema(AnswerSchema):
    """The amount of one material that the order uses."""

    name = Text("The material's name.")
    used = Number("The amount used, in `unit`.", 3)
    unit = Text("The unit of `used` and `pack`.")
    pack = Number("The content of one pack, in `unit`.", absent="Absent if sold loose.")


class JobSheetSchema(AnswerSchema):
    """The job sheet that the workshop works from."""

    reference = Text("The quote's reference, with its revision's letter.")
    workshop = Text("The workshop's name and address.")
    operations = Many(
        "The operations, in order, from which price and days are computed.", OperationTimeSchema
    )
    costs = NestedPart("The workshop's costs.", CostsSchema)
    days = Many("The work by day and slab, and the day the order leaves.", JobDaySchema)
    materials = Many("Every material that the order uses.", MaterialSchema)
    pages = Many("The pages, in the order in which they are needed.", JobPageSchema)


REPLY: Final = ReplySchema()
SHEET: Final = SheetSchema()
JOB_SHEET: Final = JobSheetSchema()
