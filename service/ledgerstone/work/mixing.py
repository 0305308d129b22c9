"""Hands at the mixer: each pour's batches, shared by its pieces in proportion to their litres."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from ledgerstone.mix import batches_alone, coat_litres, pour_groups
from ledgerstone.order import Order, Slab
from ledgerstone.shade import tint_of
from ledgerstone.shape import Shape
from ledgerstone.work.loading import CastSlab, on_table_mm, table_loads
from ledgerstone.work.operation import minutes
from ledgerstone.workshop.records import Workshop


def mixing_minutes(
    order: Order,
    shapes: Sequence[Shape],
    workshop: Workshop,
    moulds: Sequence[int],
    sequence: Sequence[int],
) -> tuple[tuple[int, ...], ...]:
    """Whole minutes at the mixer of each slab's pieces, in the order in which they are cast.

    Parameters
    ----------
    moulds
        How many moulds of each slab are made.
    sequence
        Slab indices as they are cast.

    Notes
    -----
    The minutes of a pour are those of its batches, and its pieces' shares add up to them exactly.

    Source
    ------
    As `pour_hands_minutes`; each piece's share goes by its litres.
    """
    slabs = [
        CastSlab(i, on_table_mm(shapes[i], workshop), order.slabs[i].quantity, moulds[i])
        for i in sequence
    ]
    litres = [coat_litres(shape, workshop) for shape in shapes]
    tints = [tint_of(slab, workshop) for slab in order.slabs]
    shares: list[list[int]] = [[] for _ in shapes]
    for counts in table_loads(slabs, workshop.table):
        pieces = [s.slab for s, count in zip(slabs, counts, strict=True) for _ in range(count)]
        for pour in pour_groups(pieces, litres, tints, workshop):
            whole = pour_hands_minutes(pour.batches, workshop)
            each = shared(whole, [litres[i].total for i in pour.slabs])
            for i, share in zip(pour.slabs, each, strict=True):
                shares[i].append(share)
    return tuple(tuple(each) for each in shares)


def pour_hands_minutes(batches: int, workshop: Workshop) -> int:
    """Return the labour at the mixer for a pour, whole minutes, by its number of batches.

    Source
    ------
    The profile's ``hours.per_pour``: ``ready`` once, ``each_batch`` for each.
    """
    rule = workshop.hours.per_pour
    return minutes(rule.ready + batches * rule.each_batch)


def mixing_alone_minutes(slab: Slab, shape: Shape, workshop: Workshop) -> int:
    """Whole minutes of hands at the mixer for one piece that is a pour by itself.

    Source
    ------
    As `pour_hands_minutes`.
    """
    litres = coat_litres(shape, workshop)
    return pour_hands_minutes(batches_alone(litres, tint_of(slab, workshop), workshop), workshop)


def shared(whole: int, weights: Sequence[float]) -> Iterator[int]:
    """Divide a whole number by weights: whole shares that add up to it, each rounded by under 1.

    What is given so far is rounded, and a share is what it grew by. Where nothing weighs anything,
    as where an opening is as large as its slab, all share alike.

    Source
    ------
    Arithmetic: differences of rounded running sums.
    """
    weights = weights if any(weights) else [1.0] * len(weights)
    total, so_far, given = math.fsum(weights), 0.0, 0
    for weight in weights:
        so_far += weight
        until = math.floor(whole * so_far / total + 0.5)
        yield until - given
        given = until
