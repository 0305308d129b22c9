"""Whole orders against a second plate solver: scikit-fem's Morley element on push-only springs."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from shapely.geometry import Polygon

from ledgerstone.strength import PatchLoad
from ledgerstone.strength._judging import every_batch
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._strip_support import BEDDING_N_PER_MM3
from ledgerstone.strength.mesh import mesh_of
from ledgerstone.strength.plate import AreaSupport
from ledgerstone.strength.rests import Bearing
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.oracles.morley_rested import RestedPlate, springs_of
from support.placed import placed_of
from support.strategies.ordinary_slabs import ordinary_slab

NEAR = 0.05
STANDING_N, SITTING_N, SIDE_MM = 1500.0, 1000.0, 100.0
FINE_MM = 20.0
# Seeds of ordinary slabs on units, frames, legs, ledges and ends, with openings and without.
SEEDS = (1, 5, 7, 9, 12, 14, 15, 16, 19, 22)

# Nine orders worked out once, from outside this project: Morley's plate of 12 000 to 22 000 nodes,
# E and Poisson's ratio of C40, elastic push-only rests of 1e5 to 1e6 N/mm a place on rigid rails.
# Of each, the stress (MPa) under a person, averaged over half the thickness, and his place (mm).
_FILE = Path(__file__).resolve().parents[1] / "data" / "second_solver.jsonl"
GIVEN = [json.loads(line) for line in _FILE.read_text("utf-8").splitlines()]


@pytest.mark.parametrize("given", GIVEN, ids=lambda given: given["name"])
def test_an_order_is_stressed_as_the_second_solver_found(given: Json, workshop: Workshop) -> None:
    """Standing and sitting at the worst place, rigid rails: within 5 %.

    The other solver's ends and ledges press over their whole depth, so ours do here: the standard's
    effective span, by which a slab is judged, is longer (``test_spans``).
    """
    told = placed_of(given["slab"], workshop)
    assert told is not None
    placed = replace(told, carrying=[_on_its_whole_bed(bearing) for bearing in told.carrying])
    for case, newtons in (("standing", STANDING_N), ("sitting", SITTING_N)):
        mpa, (x, y) = given[case]
        patch = PatchLoad(x=x, y=y, length=SIDE_MM, width=SIDE_MM, newtons=newtons)
        found = placed.rested.cases([[placed.weight, patch]]).worst_stresses()[0]
        assert found == pytest.approx(mpa, rel=NEAR), case


def _on_its_whole_bed(bearing: Bearing) -> Bearing:
    if not isinstance(bearing.footprint, Polygon):
        return bearing
    bed = AreaSupport(bearing.footprint, crushes_n_per_mm3=BEDDING_N_PER_MM3)
    return replace(bearing, support=bed)


def _governing(placed: PlacedSlab) -> tuple[float, list[float], float]:
    """The largest stress of someone on level rests, MPa, his place and his load."""
    found = [
        (one.mpa, tried.place.xy, tried.person_n)
        for batch in every_batch(placed)
        for k, (tried, one) in enumerate(zip(batch.tried, batch.found, strict=True))
        if tried.place is not None and tried.low is None and k not in batch.tipped
    ]
    mpa, xy, newtons = max(found)
    return mpa, list(xy), newtons


def _by_morley(placed: PlacedSlab, xy: list[float], newtons: float) -> float:
    """The same case by the second solver, MPa."""
    plate = placed.plate
    fine = mesh_of(plate.outline, thickness_mm=plate.thickness_mm, mesh_mm=FINE_MM)
    theirs = RestedPlate(fine.nodes, fine.triangles, plate.thickness_mm, plate.e_mpa, plate.nu)
    own = theirs.plate.pressure(placed.weight.n_per_mm3 * plate.thickness_mm)
    side = placed.workshop.loads.point_side_mm
    person = theirs.plate.patches(np.array([xy]), side, newtons)[:, 0]
    springs = springs_of([bearing.support for bearing in placed.carrying], plate.outline)
    u = theirs.pushed(springs, own + person)
    return theirs.worst_stress(u, max(plate.thickness_mm / 2.0, 15.0))


def _agree(seed: int, workshop: Workshop) -> None:
    placed = placed_of(ordinary_slab(seed), workshop)
    assert placed is not None
    mpa, xy, newtons = _governing(placed)
    assert mpa == pytest.approx(_by_morley(placed, xy, newtons), rel=NEAR)


@pytest.mark.long
@pytest.mark.parametrize("seed", SEEDS)
def test_an_ordinary_order_agrees_with_a_second_plate(seed: int, workshop: Workshop) -> None:
    """From the order to its governing stress, rails rigid: within 5 % of Morley's plate."""
    _agree(seed, workshop)
