"""What goes into the mould: boards and their nesting, formers, beads, screws, release agent."""

from ledgerstone.mould.forms import Bead, Curve, Former, Run, runs, screws_for, takes_plug
from ledgerstone.mould.nesting import (
    Cut,
    Nest,
    Placed,
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
    "Cut",
    "Former",
    "Mould",
    "MouldPlan",
    "Nest",
    "Placed",
    "Run",
    "SheetPart",
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
