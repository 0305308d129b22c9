"""Drawings of slabs: a dimensioned plan and a lit view, as SVG that is safe to show anywhere."""

from ledgerstone.drawing.assembled import draw_assembled
from ledgerstone.drawing.effort import (
    drawing_effort,
    painting_effort,
    paper_effort,
    plan_picture_effort,
)
from ledgerstone.drawing.missing import missing_drawing, missing_pdf
from ledgerstone.drawing.plan import draw_plan
from ledgerstone.drawing.raster import NARROWEST_PX, WIDEST_PX, million_pixels, rasterise
from ledgerstone.drawing.records import Pin, TitleBlock, pin_at
from ledgerstone.drawing.saying import describe
from ledgerstone.drawing.standing import DrawnSlab
from ledgerstone.drawing.true_size import (
    TooManySheets,
    corner_drawn,
    cutout_drawn,
    true_size_pdf,
)
from ledgerstone.drawing.view import draw_view

__all__ = [
    "NARROWEST_PX",
    "WIDEST_PX",
    "DrawnSlab",
    "Pin",
    "TitleBlock",
    "TooManySheets",
    "corner_drawn",
    "cutout_drawn",
    "describe",
    "draw_assembled",
    "draw_plan",
    "draw_view",
    "drawing_effort",
    "million_pixels",
    "missing_drawing",
    "missing_pdf",
    "painting_effort",
    "paper_effort",
    "pin_at",
    "plan_picture_effort",
    "rasterise",
    "true_size_pdf",
]
