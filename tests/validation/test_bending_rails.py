"""Vanities on rails that bend, against a second plate solver: scikit-fem's Morley element.

A vanity of 1200 × 500 × 40 with strips of 85 mm before and behind its bowls, over units whose own
rails were told, is sent back: what it is refused for is worked out a second time here, with another
element and another contact.
"""

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

import numpy as np
import pytest

from ledgerstone.strength._judging import every_batch
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._rails import on_levels, settled_on_rails
from ledgerstone.strength._tried import CaseBatch
from ledgerstone.strength.mesh import mesh_of
from ledgerstone.strength.plate import LineSupport
from ledgerstone.strength.verdict import CAUTIONS
from ledgerstone.workshop import Workshop
from support.calibration import on_units
from support.documents import Json
from support.oracles.morley_rails import person_on, pushed
from support.oracles.morley_rested import RestedPlate
from support.placed import placed_of
from support.slabs import box, cut, slab_json
from support.whole_orders import answered, stops

NEAR: Final = 0.05
FINE_MM: Final = 16.0
BOWL: Final = (400, 330)
VANITIES: Final[dict[str, Json]] = {
    "two bowls": slab_json(
        box(1200, 500),
        cut("rectangle", BOWL, (300, 250)),
        cut("rectangle", BOWL, (900, 250)),
        rests={**on_units((600, "basin"), (600, "basin")), "rails": "cabinet"},
    ),
    "one bowl": slab_json(
        box(1200, 500),
        cut("rectangle", BOWL, (600, 250)),
        rests={**on_units(300, (600, "basin"), 300), "rails": "cabinet"},
    ),
}

ON_A_POST: Final[Json] = {
    **slab_json(
        box(1500, 600), cut("rectangle", (1200, 400), (750, 300)), rests=on_units((1500, "basin"))
    ),
    "thickness": "60 mm",
}

UNITS_OF_1000: Final[Json] = slab_json(
    box(1800, 600),
    cut("rectangle", (500, 400), (900, 300)),
    rests=on_units(400, (1000, "basin"), 400),
)


def standing(railed: PlacedSlab, batches: Sequence[CaseBatch]) -> tuple[float, float]:
    """The largest stress under somebody standing, MPa: ours, and Morley's in the same place."""
    mpa, newtons, xy = max(
        (one.mpa, tried.person_n, tried.place.xy)
        for batch in batches
        for tried, one in zip(batch.tried, batch.found, strict=True)
        if tried.place is not None and tried.case == "somebody-standing"
    )
    plate = railed.plate
    fine = mesh_of(plate.outline, thickness_mm=plate.thickness_mm, mesh_mm=FINE_MM)
    theirs = RestedPlate(fine.nodes, fine.triangles, plate.thickness_mm, plate.e_mpa, plate.nu)
    own = theirs.plate.pressure(railed.weight.n_per_mm3 * plate.thickness_mm)
    person = person_on(theirs, plate.outline, np.array(xy), newtons)
    lines = [b.support for b in railed.carrying if isinstance(b.support, LineSupport)]
    assert len(lines) == len(railed.carrying)
    found = theirs.worst_stress(pushed(theirs, lines, own + person), plate.thickness_mm / 2.0)
    return mpa, float(found)


@pytest.mark.parametrize("name", VANITIES)
def test_a_vanity_is_refused_on_its_own_rails_for_a_stress_that_is_there(
    name: str, workshop: Workshop
) -> None:
    """Standing on a strip of 85 mm: ours within 5 % of Morley's, and both over what is trusted."""
    placed = placed_of(VANITIES[name], workshop)
    assert placed is not None
    railed, batches, _ = settled_on_rails(placed)
    mpa, found = standing(railed, batches)
    assert mpa == pytest.approx(found, rel=NEAR)
    assert min(mpa, found) > 1.15 * railed.limit_mpa("somebody-standing")
    assert stops(answered(workshop, VANITIES[name])) == {"cracks-in-place"}


def test_a_post_under_its_middle_saves_a_slab_that_no_rail_does(workshop: Workshop) -> None:
    """Over one unit of 1500 mm, on strips of 100: steel rails bend too far, a post holds.

    Morley's element says the same of both, within 5 %.
    """
    placed = placed_of(ON_A_POST, workshop)
    assert placed is not None
    railed, batches, levels = settled_on_rails(placed)
    assert levels == {0: "post"}
    steel = on_levels(placed, {0: "steel"})
    trusted = railed.limit_mpa("somebody-standing")
    bent, propped = standing(steel, [steel.first]), standing(railed, batches)
    for mpa, found in (bent, propped):
        assert mpa == pytest.approx(found, rel=NEAR)
    assert min(bent) > trusted > max(propped)


@pytest.mark.parametrize("name", VANITIES)
def test_the_same_vanity_quotes_on_rails_that_are_named(name: str, workshop: Workshop) -> None:
    """Where nobody says what carries across its units, stronger rails are a condition."""
    slab = VANITIES[name]
    rests = {key: value for key, value in slab["rests"].items() if key != "rails"}
    assert stops(answered(workshop, {**slab, "rests": rests})) == set()


def with_a_batten(placed: PlacedSlab) -> PlacedSlab:
    """The same slab with a batten on the wall, which does not bend, in place of the back rails."""
    middle = 0.5 * placed.shape.width_mm
    carrying = [
        replace(bearing, support=replace(bearing.support, beam=None))
        if bearing.unit is not None
        and isinstance(bearing.support, LineSupport)
        and min(y for _, y in bearing.support.points) > middle
        else bearing
        for bearing in placed.carrying
    ]
    assert [b.support for b in carrying] != [b.support for b in placed.carrying]
    return replace(placed, carrying=carrying)


def most_used(placed: PlacedSlab) -> float:
    """The largest utilisation of any case that stops an order."""
    return max(
        one.mpa / placed.limit_mpa(tried.case)
        for batch in every_batch(placed)
        for tried, one in zip(batch.tried, batch.found, strict=True)
        if tried.case not in CAUTIONS
    )


def test_at_the_back_a_wall_batten_does_in_place_of_the_rail(workshop: Workshop) -> None:
    """With a batten there the slab holds on the front rail; on the cabinet's own it does not."""
    placed = placed_of(UNITS_OF_1000, workshop)
    assert placed is not None
    railed, _, levels = settled_on_rails(placed)
    assert levels == {0: "cabinet", 1: "steel", 2: "cabinet"}
    assert most_used(with_a_batten(railed)) <= 1.0
    assert most_used(with_a_batten(on_levels(placed, dict.fromkeys(levels, "cabinet")))) > 1.0
