"""What goes into the mould: boards and their nesting, formers, beads, screws, release agent."""

from ledgerstone.mould.forms import Bead, Curve, Former, SideRun, runs, screws_for, takes_plug
from ledgerstone.mould.nesting import (
    CutLength,
    Nest,
    NestedPiece,
    SheetPart,
    Stock,
    cut_lengths,
    fewest_stock,
    nest,
)
from ledgerstone.mould.plan import Mould, MouldPlan, Supply, mould_of, mould_plan

__all__ = [
    "Bead",
    "Curve",
    "CutLength",
    "Former",
    "Mould",
    "MouldPlan",
    "Nest",
    "NestedPiece",
    "SheetPart",
    "SideRun",
    "Stock",
    "Supply",
    "cut_lengths",
    "fewest_stock",
    "mould_of",
    "mould_plan",
    "nest",
    "runs",
    "screws_for",
    "takes_plug",
]
