"""Openings moved until the strips about each are alike."""

import pytest

from ledgerstone.layout.evening import evened
from ledgerstone.layout.runs import Run
from ledgerstone.siting import PlacedOpening
from ledgerstone.strip_rules import strips_of
from ledgerstone.workshop import Workshop

RUN = Run(0.0, 0.0, 1200.0, 650.0)
STEP_MM = 10.0  # twice the finest step: each of two openings stops within one of its best place


def test_strips_in_a_row_become_alike(workshop: Workshop) -> None:
    """Two openings leave a third of what is free at each end and between them."""
    placed = {0: PlacedOpening(250, 300, 400, 300), 1: PlacedOpening(700, 250, 400, 300)}
    at = evened(RUN, placed, (0, 1), strips_of(workshop))
    x0, x1 = at[0][0], at[1][0]
    strips = [x0 - 200, x1 - x0 - 400, 1200 - x1 - 200]
    assert strips == pytest.approx([400 / 3] * 3, abs=STEP_MM)
    assert [y for _, y in at.values()] == pytest.approx([325, 325], abs=STEP_MM)


def test_what_may_not_move_stays(workshop: Workshop) -> None:
    """An opening is centred between one that stays and the run's end."""
    placed = {0: PlacedOpening(250, 300, 400, 300), 1: PlacedOpening(700, 300, 400, 300)}
    at = evened(RUN, placed, (1,), strips_of(workshop))
    assert at[0] == pytest.approx((250, 300))
    assert at[1] == pytest.approx((825, 325), abs=STEP_MM)


def test_round_openings_beside_one_another_keep_apart_on_the_skew(workshop: Workshop) -> None:
    """Openings that lie diagonally are not brought into a row that has no room for them."""
    placed = {
        0: PlacedOpening(840, 240, 360, 360, is_round=True),
        1: PlacedOpening(995, 515, 150, 150, is_round=True),
    }
    (x0, y0), (x1, y1) = evened(RUN, placed, (0, 1), strips_of(workshop)).values()
    apart = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5 - 180 - 75
    before = (155**2 + 275**2) ** 0.5 - 180 - 75
    assert apart > before
    assert min(y0 - 180, 650 - y1 - 75) > 60
