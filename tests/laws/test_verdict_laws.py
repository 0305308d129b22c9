"""Laws of the verdict on a slab: mirror images and finer meshes."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace

import pytest

from ledgerstone.strength._holding import Holding
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._rails import on_levels
from ledgerstone.strength._search import worst_seats
from ledgerstone.strength._tried import TriedCase
from ledgerstone.strength.plate import Plate
from ledgerstone.strength.rests import turning_places
from ledgerstone.strength.slabs import MESHED_AS_MM
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.mirrored import mirrored
from support.placed import placed_of
from support.strategies.ordinary_slabs import ordinary_slab
from support.strategies.shaped_slabs import l_slab, round_slab, shaped_slab
from support.used import on_known_rails, used

EVERYDAY, LONG = 3, 200
WORKSHOP_TEMP_C = 10.0
NEAR_THE_LIMIT = (0.97, 1.03)


# --- mirror images -----------------------------------------------------------------------------


SlabMaker = Callable[[int], Json]


def _mirrors_alike(seeds: range, workshop: Workshop, kind: SlabMaker = on_known_rails) -> None:
    unlike = {}
    for seed in seeds:
        slab = kind(seed)
        as_is = used(slab, workshop)
        for axis in ("x", "y"):
            other = used(mirrored(slab, axis), workshop)
            if max(as_is, other) > 1.02 * min(as_is, other):
                unlike[seed, axis] = (as_is, other)
    assert unlike == {}


def test_a_mirrored_slab_is_used_as_much(workshop: Workshop) -> None:
    """Left and right, and front and back, change the utilisation by at most 2 %."""
    _mirrors_alike(range(EVERYDAY), workshop)


def test_so_is_a_mirrored_round_top_or_l(workshop: Workshop) -> None:
    """The same of slabs that are no rectangles."""
    _mirrors_alike(range(EVERYDAY), workshop, shaped_slab)


@pytest.mark.long
@pytest.mark.parametrize("kind", [on_known_rails, shaped_slab])
def test_hundreds_of_mirrored_slabs_are_used_as_much(kind: SlabMaker, workshop: Workshop) -> None:
    """The same on slabs that are not in the everyday run."""
    _mirrors_alike(range(EVERYDAY, LONG), workshop, kind)


# --- the mesh ----------------------------------------------------------------------------------


def _railed(placed: PlacedSlab) -> PlacedSlab:
    units = {bearing.unit for bearing in placed.carrying if bearing.unit is not None}
    return on_levels(placed, dict.fromkeys(units, "hardwood")) if units else placed


def _finer(placed: PlacedSlab) -> PlacedSlab:
    """The same slab on a mesh twice as fine."""
    plate = placed.plate
    size = 0.5 * plate.model.mesh.coarse_mm
    held = Holding(plate.outline).turned_at_mm
    turning = (*turning_places(placed.slab, placed.shape), *held)
    fine = Plate(
        plate.outline,
        thickness_mm=MESHED_AS_MM,
        e_mpa=plate.e_mpa,
        nu=plate.nu,
        mesh_mm=size,
        turning=turning,
    )
    return replace(placed, plate=fine.at(thickness_mm=plate.thickness_mm))


def _worst_of(placed: PlacedSlab, tried: Sequence[TriedCase]) -> float:
    """How far the worst of some cases uses the slab."""
    found = placed.settled(tried).found if tried else ()
    used = [one.mpa / placed.limit_mpa(t.case) for t, one in zip(tried, found, strict=True)]
    return max(used, default=0.0)


def _fine_enough(seeds: Iterable[int], workshop: Workshop, kind: SlabMaker = ordinary_slab) -> None:
    unlike = {}
    for seed in seeds:
        placed = placed_of(kind(seed), workshop)
        if placed is None:
            continue
        coarse, fine = _railed(placed), _railed(_finer(placed))
        batches = worst_seats(coarse, coarse.first)
        for tips in (False, True):
            some = [
                tried
                for batch in batches
                for k, tried in enumerate(batch.tried)
                if tried.place is not None and (k in batch.tipped) is tips
            ]
            worst = [_worst_of(railed, some) for railed in (coarse, fine)]
            if not 0.95 * worst[1] <= worst[0] <= 1.05 * worst[1]:
                unlike[seed, tips] = worst
    assert unlike == {}


def test_a_mesh_twice_as_fine_says_the_same(workshop: Workshop) -> None:
    """Of the places that are searched, those that tip it apart: the worst within 5 %."""
    _fine_enough((13, 14, 59), workshop)


def test_a_mesh_twice_as_fine_says_the_same_of_ls(workshop: Workshop) -> None:
    """About a corner that turns inward too."""
    _fine_enough((5, 18), workshop, l_slab)


def test_a_mesh_twice_as_fine_says_the_same_of_tables_on_a_pedestal(workshop: Workshop) -> None:
    """They turn about the edge of its plate, where the stations under it press most."""
    _fine_enough((1501, 1510), workshop, round_slab)


@pytest.mark.long
@pytest.mark.parametrize("kind", [ordinary_slab, shaped_slab])
def test_a_mesh_twice_as_fine_says_the_same_of_many(kind: SlabMaker, workshop: Workshop) -> None:
    """The same on slabs that are not in the everyday run."""
    _fine_enough(range(60), workshop, kind)
