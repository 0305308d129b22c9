"""Openings moved until the strips about each are alike."""

import pytest

from ledgerstone.layout.evening import evened
from ledgerstone.layout.runs import Run
from ledgerstone.siting import PlacedOpening

RUN = Run(0.0, 0.0, 1200.0, 650.0)


def test_strips_in_a_row_become_alike() -> None:
    """Two openings leave a third of what is free at each end and between them."""
    placed = {0: PlacedOpening(250, 300, 400, 300), 1: PlacedOpening(700, 250, 200, 200)}
    (x0, y0), (x1, y1) = evened(RUN, placed, (0, 1)).values()
    strip_mm = (1200 - 400 - 200) / 3
    assert (x0, x1) == pytest.approx((strip_mm + 200, 1200 - strip_mm - 100), abs=1)
    assert (y0, y1) == (325, 325)


def test_what_may_not_move_stays() -> None:
    """An opening is centred between one that stays and the run's end."""
    placed = {0: PlacedOpening(250, 300, 400, 300), 1: PlacedOpening(700, 300, 200, 200)}
    assert evened(RUN, placed, (1,)) == {0: (250, 300), 1: (pytest.approx(825), 325)}


def test_none_comes_over_another() -> None:
    """Openings clear of each other before are clear of each other after."""
    placed = {
        0: PlacedOpening(355, 315, 560, 480),
        1: PlacedOpening(860, 180, 300, 200),
        2: PlacedOpening(860, 460, 300, 200),
    }
    at = evened(RUN, placed, (0, 1, 2))
    assert at[1][0] - 150 - (at[0][0] + 280) == pytest.approx(340 / 3, abs=1)
    assert at[2][1] - at[1][1] - 200 == pytest.approx(250 / 3, abs=1)
