"""Bars in rows, as a schedule lists them."""

import math

import pytest

from ledgerstone.reinforcement import PlacedBar, even_runs
from ledgerstone.reinforcement._schedule import rows_of, scheduled


def _across(x: float, start: float = 18.0, end: float = 602.0) -> PlacedBar:
    return PlacedBar("", 6.0, (x, start), (x, end), "across, after a crack")


def test_bars_that_are_cut_alike_have_one_mark() -> None:
    """Side by side they are one row; as long but elsewhere another row of the same mark."""
    bars = [_across(x) for x in (100.0, 300.0, 200.0)]
    elsewhere = [_across(250.0, 700.0, 1284.0)]
    shorter = [_across(250.0, 18.0, 218.0)]
    rows = rows_of(scheduled([*bars, *elsewhere, *shorter]))
    assert [(row.mark, len(row.bars)) for row in rows] == [("B1", 3), ("B1", 1), ("B2", 1)]
    assert rows[0].places_mm == (100.0, 200.0, 300.0)


def test_a_bar_at_an_angle_is_a_row_by_itself() -> None:
    """Two across corners, as long, share a mark and no place."""
    first = PlacedBar("", 6.0, (0.0, 0.0), (150.0, 150.0), "across a corner")
    second = PlacedBar("", 6.0, (500.0, 150.0), (650.0, 0.0), "across a corner")
    rows = rows_of(scheduled([first, second]))
    assert [row.mark for row in rows] == ["B1", "B1"]
    assert [row.axis for row in rows] == [None, None]


@pytest.mark.parametrize(
    ("places", "told"),
    [
        ((18.0, 102.5, 186.9, 271.3), [(18.0, 271.3, 84.43)]),
        ((18.0, 602.0), [(18.0, 18.0, 0.0), (602.0, 602.0, 0.0)]),
        ((18.0, 100.0, 182.0, 500.0, 582.0, 664.0), [(18.0, 182.0, 82.0), (500.0, 664.0, 82.0)]),
        ((18.0, 60.0, 300.0), [(18.0, 18.0, 0.0), (60.0, 60.0, 0.0), (300.0, 300.0, 0.0)]),
    ],
)
def test_even_places_are_a_run(
    places: tuple[float, ...], told: list[tuple[float, float, float]]
) -> None:
    """Three or more at one spacing are told by it; others singly."""
    runs = list(even_runs(places))
    assert [(run.first_mm, run.last_mm) for run in runs] == [one[:2] for one in told]
    assert all(
        math.isclose(run.step_mm, one[2], abs_tol=0.01) for run, one in zip(runs, told, strict=True)
    )
