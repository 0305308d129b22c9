"""Papers as plain lists and texts: replies, sheets, and the job sheet."""

from __future__ import annotations

from typing import Final

from marshmallow import fields

from ledgerstone.codec.answer_fields import (
    AnswerSchema,
    Free,
    Many,
    Number,
    OneOf,
    Part,
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

    what = Text("What is told.")
    says = Text("What it is.")


class SheetSectionSchema(AnswerSchema):
    """One part of a sheet."""

    heading = Text("What it is about.")
    facts = Many("What is set as a table; empty where nothing is.", SheetFactSchema)
    says = Many("Lines to read, or to tick where the sheet is signed.", fields.String())
    words = Text("What the section's drawing shows; empty where it has none.")


class SheetSchema(AnswerSchema):
    """A sheet of paper, its drawings left out."""

    title = Text("What the sheet is.")
    workshop = Text("Whose it is, and where.")
    reach = Text("How to reach the workshop.")
    facts = Many("What stands under the title.", SheetFactSchema)
    sections = Many("Its parts, in turn.", SheetSectionSchema)
    signs = Text("What is signed at the foot; empty where nothing is.")


class OperationTimeSchema(AnswerSchema):
    """One step of the work."""

    name = Text("What is done.")
    stage = Text("Which stage of the work it is a part of.")
    slab = Whole(
        "The slab's number, from 0; null where it is of the whole order.",
        or_null=True,
        keywords={"minimum": 0},
    )
    hands_minutes = Whole("Minutes of hands.", keywords={"minimum": 0})
    machine_minutes = Whole("Minutes of a machine.", keywords={"minimum": 0})
    wait_hours = Number("Hours of waiting afterwards.", 3, keywords={"minimum": 0})


class JobBlockSchema(AnswerSchema):
    """One block of a page; `kind` says which members it has."""

    kind = OneOf("What it is.", BLOCKS)
    says = Free(
        "A sentence, or several.",
        absent="Not in `facts`, `table` and `drawing`.",
        keywords={"type": ["string", "array"], "items": {"type": "string"}},
    )
    columns = Free("A table's heads.", absent="Only in `table`.", keywords=_TEXTS)
    rows = Free("Lines of cells.", absent=_ONLY_TABLES, keywords={"type": "array", "items": _TEXTS})
    words = Text("What a drawing shows.", absent="Only in `drawing`.")


class JobPageSchema(AnswerSchema):
    """One page of a job sheet."""

    title = Text("What the page is.")
    blocks = Many("What stands on it, in turn; drawings by their words.", JobBlockSchema)


class JobDaySchema(AnswerSchema):
    """What is done at one slab on one day."""

    day = Text("The day on which it is done.", keywords={"format": "date"})
    label = Text("The slab; empty for what is done for the whole order.")
    says = Text("What is done.")
    hours = Text(
        "From when to when, by the workshop's clock.", absent="Absent of the day it leaves."
    )


class MaterialSchema(AnswerSchema):
    """What the order uses of one material."""

    name = Text("What it is.")
    used = Number("How much of it.", 3)
    unit = Text("In which unit.")
    pack = Number("How much one pack holds, in the same unit.", absent="Absent where it is loose.")


class JobSheetSchema(AnswerSchema):
    """What the workshop works from."""

    reference = Text("The quote's reference, with its revision's letter.")
    workshop = Text("Whose it is, and where.")
    operations = Many("The work, step by step: what price and days come from.", OperationTimeSchema)
    costs = Part("What it costs the workshop.", CostsSchema)
    days = Many("The work by day and slab, and the day it leaves.", JobDaySchema)
    materials = Many("Everything that the order uses.", MaterialSchema)
    pages = Many("Every page, in the order in which the workshop needs them.", JobPageSchema)


REPLY: Final = ReplySchema()
SHEET: Final = SheetSchema()
JOB_SHEET: Final = JobSheetSchema()
