"""Drawings of a slab: a dimensioned plan and a lit view, as SVG that is safe to show anywhere."""

from ledgerstone.drawing.plan import draw_plan
from ledgerstone.drawing.records import Pin, TitleBlock, pin_at
from ledgerstone.drawing.saying import describe
from ledgerstone.drawing.view import draw_view

__all__ = ["Pin", "TitleBlock", "describe", "draw_plan", "draw_view", "pin_at"]
