"""Creep and the sag in the end, by EN 1992-1-1 annex B and a beam by hand."""

import pytest

from ledgerstone.strength.creep import creep_coefficient
from ledgerstone.workshop import Workshop
from support.slabs import box, slab_json
from support.whole_orders import stages


@pytest.mark.parametrize(
    ("fcm", "notional", "humidity", "age", "phi"),
    [
        (48.0, 40.0, 50.0, 28.0, 2.42),
        (28.0, 100.0, 50.0, 28.0, 3.22),
        (38.0, 200.0, 80.0, 28.0, 1.73),
    ],
)
def test_creep_is_annex_bs(
    fcm: float, notional: float, humidity: float, age: float, phi: float
) -> None:
    """By hand, C40, C20 and C30.

    C20: φ_RH = 1 + 0.5 / 0.4642 = 2.077, 16.8 / √28 = 3.175, 1 / (0.1 + 1.947) = 0.4885: 3.22.
    C40: φ_RH = (1 + 1.462 × 0.8016) × 0.9388 = 2.039, 2.425, 0.4885: 2.42.
    C30: φ_RH = (1 + 0.3420 × 0.9441) × 0.9837 = 1.301, 2.725, 0.4885: 1.73.
    """
    found = creep_coefficient(fcm, notional, humidity, age)
    assert found == pytest.approx(phi, rel=0.01)


def test_a_top_on_two_ends_sags_by_its_creep(workshop: Workshop) -> None:
    """1440 × 600 × 40 on ends of 40 mm, as a plate strip of 1400 mm: 1.50 mm in the end, by hand.

    The effective span is that of EN 1992-1-1 5.3.2.2, 1360 mm between the faces and 20 mm at each
    end. D = 35 220 × 40³ / 12 / 0.96 = 195.7e6; 5 q L⁴ / 384 D for 0.96 and 1.5 kN/m² is 0.245 and
    0.383 mm; (1 + 2.42) and (1 + 0.3 × 2.42) times that are 0.84 and 0.66 mm. Free edges add
    about 5 % (reference 1.6).
    """
    slab = slab_json(box(1440, 600), use="shelf", rests={"kind": "ends", "depth": 40})
    found = stages(workshop, slab).strength[0].in_place
    assert found.sag_mm == pytest.approx(1.57, rel=0.03)
    assert found.span_mm == pytest.approx(1360.0, rel=0.02)
