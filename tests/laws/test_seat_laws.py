"""Laws of the search for the worst place of a person on a slab."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from ledgerstone.strength._judging import every_batch
from ledgerstone.strength._lying import Lying
from ledgerstone.strength._tried import Batch
from ledgerstone.strength.places import Place, of_their_kinds
from ledgerstone.workshop import Workshop
from support.lying import lying_of
from support.strategies.ordinary_slabs import Json, ordinary_slab

EVERYDAY, LONG = 24, 400
TOGETHER = 150
STEP_MM = 60.0


def worst_used(lying: Lying, batches: tuple[Batch, ...] | list[Batch]) -> float:
    """The largest utilisation by a person that stops an order, on level rests."""
    return max(
        one.mpa / lying.limit_mpa(tried.case)
        for batch in batches
        for tried, one in zip(batch.tried, batch.found, strict=True)
        if tried.place is not None and tried.low is None and tried.case != "free-corner"
    )


def dense_grid(lying: Lying, offset_mm: float) -> list[Place]:
    """Every place of a square grid over the slab, its edges among them."""
    side = lying.workshop.loads.point_side_mm
    room = lying.shape.net.buffer(-side / 2, join_style="mitre")
    x0, y0, x1, y1 = room.bounds
    xs = np.unique(np.r_[np.arange(x0 + offset_mm, x1, STEP_MM), x0, x1])
    ys = np.unique(np.r_[np.arange(y0 + offset_mm, y1, STEP_MM), y0, y1])
    xy = np.array([(x, y) for x in xs for y in ys])
    xy = xy[shapely.intersects_xy(room.buffer(1e-6), xy[:, 0], xy[:, 1])]
    return list(of_their_kinds(xy, lying.shape, lying.hull))


def ratio_of(document: Json, workshop: Workshop, offset_mm: float) -> float | None:
    """Utilisation on a dense grid over the one that is reported."""
    lying = lying_of(document, workshop)
    if lying is None:
        return None
    people = [lying.somebody(p, lying.hardest_case(p)) for p in dense_grid(lying, offset_mm)]
    parts = [people[k : k + TOGETHER] for k in range(0, len(people), TOGETHER)]
    dense = [lying.settled(part) for part in parts]
    return worst_used(lying, dense) / worst_used(lying, every_batch(lying))


def _holds(seeds: range, workshop: Workshop) -> None:
    ratios = {
        seed: ratio
        for seed in seeds
        if (ratio := ratio_of(ordinary_slab(seed), workshop, 23.0 * (seed % 2))) is not None
    }
    assert len(ratios) > 0.8 * len(seeds)
    assert {seed: ratio for seed, ratio in ratios.items() if ratio > 1.03} == {}


def test_no_place_on_a_dense_grid_is_much_worse_than_what_is_reported(workshop: Workshop) -> None:
    """On random ordinary slabs a grid of 60 mm finds at most 1.03 times what the search found."""
    _holds(range(EVERYDAY), workshop)


@pytest.mark.long
def test_no_place_on_a_dense_grid_is_much_worse_on_hundreds_of_slabs(workshop: Workshop) -> None:
    """The same on hundreds of slabs that are not in the everyday run."""
    _holds(range(EVERYDAY, LONG), workshop)
