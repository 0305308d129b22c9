"""Drawings of a slab: a dimensioned plan and a lit view, as SVG that is safe to show anywhere."""

from ledgerstone.drawing.assembled import draw_assembled
from ledgerstone.drawing.missing import MISSING
from ledgerstone.drawing.plan import draw_plan
from ledgerstone.drawing.raster import NARROWEST_PX, WIDEST_PX, rasterise
from ledgerstone.drawing.records import Pin, TitleBlock, pin_at
from ledgerstone.drawing.saying import describe
from ledgerstone.drawing.true_size import (
    TooManySheets,
    corner_drawn,
    cutout_drawn,
    true_size_pdf,
)
from ledgerstone.drawing.view import draw_view

__all__ = [
    "MISSING",
    "NARROWEST_PX",
    "WIDEST_PX",
    "Pin",
    "TitleBlock",
    "TooManySheets",
    "corner_drawn",
    "cutout_drawn",
    "describe",
    "draw_assembled",
    "draw_plan",
    "draw_view",
    "pin_at",
    "rasterise",
    "true_size_pdf",
]
