"""The operations of one order: the one list that price, schedule and job sheet are made from."""

from ledgerstone.work.listing import operations, tiles_of
from ledgerstone.work.operation import STAGES, Machine, Operation, Stage, minutes

__all__ = ["STAGES", "Machine", "Operation", "Stage", "minutes", "operations", "tiles_of"]
