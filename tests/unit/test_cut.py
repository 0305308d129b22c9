"""The moment that concrete carries across a cut: statics, to nearly the last digit."""

from __future__ import annotations

import pytest
from shapely.geometry import Point, box

from ledgerstone.strength import LineSupport, OwnWeight, PatchLoad, Plate, PlateLoad, Pressure
from support.one_piece import less

L, B, H, WEIGHT = 2000.0, 600.0, 40.0, 25e-6
ENDS = [LineSupport([(x, 0), (x, B)], holds_down=True) for x in (0.0, L)]
SLAB = Plate(box(0, 0, L, B), thickness_mm=H, e_mpa=33_000)
OPEN = Plate(
    less(box(0, 0, L, B), Point(1000, 280).buffer(180, quad_segs=24)), thickness_mm=H, e_mpa=33_000
)


@pytest.mark.parametrize("x", [333.0, 500.0, 1000.0, 1742.5])
def test_an_even_load_makes_w_x_l_minus_x_by_two(x: float) -> None:
    """A beam on two ends: ``w x (L - x) / 2`` on every millimetre of width (statics)."""
    answer = SLAB.solve(supports=ENDS, loads=[Pressure(0.003), OwnWeight(WEIGHT)])
    load = 0.003 + WEIGHT * H
    assert answer.moment_across((x, 0), (x, B)) == pytest.approx(load * x * (L - x) / 2, rel=2e-4)
    assert answer.moment_across((x, B), (x, 0)) == pytest.approx(load * x * (L - x) / 2, rel=2e-4)


@pytest.mark.parametrize("x", [700.0, 730.0, 760.0, 1200.0])
def test_a_load_beside_or_on_the_cut_is_counted_where_it_is(x: float) -> None:
    """1 kN over 60 mm about 730 mm: ``R x``, less what of it lies before the cut (statics)."""
    load: PlateLoad = PatchLoad(x=730, y=450, length=60, width=60, newtons=1000)
    answer = SLAB.solve(supports=ENDS, loads=[load])
    left = 1000 * (L - 730) / L
    before = min(max((x - 700) / 60, 0.0), 1.0)
    middle = 700 + 30 * before
    by_hand = (left * x - 1000 * before * (x - middle)) / B
    assert answer.moment_across((x, 0), (x, B)) == pytest.approx(by_hand, rel=2e-3)


def test_the_strips_beside_an_opening_share_what_the_whole_carries() -> None:
    """Both strips' moments across one line come to ``w L² / 8``, less the opening's own (statics).

    The load that the opening is spared makes ``q A (L / 4 - 2 r / 3 pi)`` at the middle.
    """
    answer = OPEN.solve(supports=ENDS, loads=[Pressure(0.003)])
    front = 100 * answer.moment_across((1000, 0), (1000, 100))
    back = 140 * answer.moment_across((1000, 460), (1000, B))
    area = OPEN.outline.area
    spared = 0.003 * (L * B - area) * (L / 4 - 2 * 180 / (3 * 3.14159265))
    assert front + back == pytest.approx(0.003 * B * L**2 / 8 - spared, rel=2e-3)
    assert back > front > 0.0
