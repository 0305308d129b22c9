"""Vanities on rails that bend, against a second plate solver: scikit-fem's Morley element.

A vanity of 1200 × 500 × 40 with strips of 85 mm before and behind its bowls, over units whose own
rails were told, is sent back: what it is refused for is worked out a second time here, with another
element and another contact.
"""

from typing import Final

import numpy as np
import pytest

from ledgerstone.strength._rails import settled_on_rails
from ledgerstone.strength.mesh import mesh_of
from ledgerstone.strength.plate import LineSupport
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


@pytest.mark.parametrize("name", VANITIES)
def test_a_vanity_is_refused_on_its_own_rails_for_a_stress_that_is_there(
    name: str, workshop: Workshop
) -> None:
    """Standing on a strip of 85 mm: ours within 5 % of Morley's, and both over what is trusted."""
    placed = placed_of(VANITIES[name], workshop)
    assert placed is not None
    railed, batches, _ = settled_on_rails(placed)
    mpa, newtons, xy = max(
        (one.mpa, tried.person_n, tried.place.xy)
        for batch in batches
        for tried, one in zip(batch.tried, batch.found, strict=True)
        if tried.place is not None and tried.case == "somebody-standing"
    )
    plate, trusted = railed.plate, railed.limit_mpa("somebody-standing")
    fine = mesh_of(plate.outline, thickness_mm=plate.thickness_mm, mesh_mm=FINE_MM)
    theirs = RestedPlate(fine.nodes, fine.triangles, plate.thickness_mm, plate.e_mpa, plate.nu)
    own = theirs.plate.pressure(railed.weight.n_per_mm3 * plate.thickness_mm)
    person = person_on(theirs, plate.outline, np.array(xy), newtons)
    lines = [b.support for b in railed.carrying if isinstance(b.support, LineSupport)]
    assert len(lines) == len(railed.carrying)
    found = theirs.worst_stress(pushed(theirs, lines, own + person), plate.thickness_mm / 2.0)
    assert mpa == pytest.approx(found, rel=NEAR)
    assert min(mpa, found) > 1.15 * trusted
    assert stops(answered(workshop, VANITIES[name])) == {"cracks-in-place"}


@pytest.mark.parametrize("name", VANITIES)
def test_the_same_vanity_quotes_on_rails_that_are_named(name: str, workshop: Workshop) -> None:
    """Where nobody says what carries across its units, stronger rails are a condition."""
    slab = VANITIES[name]
    rests = {key: value for key, value in slab["rests"].items() if key != "rails"}
    assert stops(answered(workshop, {**slab, "rests": rests})) == set()
