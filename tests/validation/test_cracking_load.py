"""The load at which a slab would crack in the mean, beside a beam's by hand."""

import pytest

from ledgerstone.strength.slabs import concrete_of
from ledgerstone.strength.verdict import Verdict
from ledgerstone.workshop import Workshop
from support.slabs import box, slab_json
from support.whole_orders import in_place


def test_own_weight_stays_while_the_load_grows() -> None:
    """Mean 5.47 MPa, 0.47 by itself and 2.97 with 1000 N: (5.47 - 0.47) / 2.5 = 2.0 times."""
    sat = Verdict("somebody-sitting", 2.97, 2.55, (0.0, 0.0), 28.0, load_n=1000.0, own_mpa=0.47)
    alone = Verdict("own-weight", 0.5, 2.55, (0.0, 0.0), 28.0)
    assert sat.cracks_at_times(5.47) == pytest.approx(2.0)
    assert alone.cracks_at_times(5.47) == pytest.approx(10.94)


def test_a_narrow_shelf_cracks_as_a_beam(workshop: Workshop) -> None:
    """900 × 100 × 40 on ends of 40 mm, stood on in its middle: as a beam of 860 mm, within 2 %.

    EN 1992-1-1 5.3.2.2: 820 mm between the faces and 20 mm at each end. Own weight 0.0957 N/mm:
    P = 4 (5.47 × 100 × 40² / 6 - 0.0957 × 860² / 8) / (860 - 50), by strength of materials.
    """
    found = in_place(workshop, slab_json(box(900, 100), rests={"kind": "ends", "depth": 40}))
    verdict = (
        found["somebody-standing"] if "somebody-standing" in found else found["somebody-leaning"]
    )
    mean = concrete_of(workshop).mean_bending_mpa(40.0, 28.0)
    times = verdict.cracks_at_times(mean)
    assert times is not None
    by_hand = 4 * (mean * 100 * 40**2 / 6 - 0.0957 * 860**2 / 8) / (860 - 50)
    assert times * verdict.load_n == pytest.approx(by_hand, rel=0.02)
