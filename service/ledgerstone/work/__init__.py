"""The operations of one order: the one list that price, schedule and job sheet are made from."""

from ledgerstone.work.listing import operations
from ledgerstone.work.loading import CastSlab, table_loads, tables_for
from ledgerstone.work.mixing import mixing_alone_minutes
from ledgerstone.work.once import tiles_of
from ledgerstone.work.operation import PHASES, Machine, Operation, Phase, minutes
from ledgerstone.work.packing import crate_count, keeping, packing_way
from ledgerstone.work.surfacing import finish_days, finish_of, grits_before_fills

__all__ = [
    "PHASES",
    "CastSlab",
    "Machine",
    "Operation",
    "Phase",
    "crate_count",
    "finish_days",
    "finish_of",
    "grits_before_fills",
    "keeping",
    "minutes",
    "mixing_alone_minutes",
    "operations",
    "packing_way",
    "table_loads",
    "tables_for",
    "tiles_of",
]
