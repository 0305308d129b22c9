"""What a layout chooses among is bounded, and it is the nearest that it chooses among."""

from itertools import pairwise

from ledgerstone.remedies.placeable import MAX_CHOICES, Limited, nearest_chosen


def _obstacles(count: int) -> list[list[Limited]]:
    """Obstacles ever nearer, each of which may be passed in four directions."""
    return [[({way: 1.0}, float(count - k - way)) for way in range(4)] for k in range(count)]


def test_few_obstacles_leave_every_choice() -> None:
    """What is within the bound stays as it is, in its own sequence."""
    few = _obstacles(MAX_CHOICES // 4)
    assert nearest_chosen(few, 1) == few


def test_of_many_the_nearest_leave_a_choice() -> None:
    """The others are passed where most room is now; items share the choices."""
    for items in (1, 3):
        kept = nearest_chosen(_obstacles(200), items)
        assert len(kept) == 200
        chosen = [rows for rows in kept if len(rows) > 1]
        assert sum(map(len, chosen)) == MAX_CHOICES // items
        assert all(after[0][1] >= before[0][1] for before, after in pairwise(kept))
        assert kept[: len(chosen)] == chosen
        assert all(row == {0: 1.0} for [(row, _)] in kept[len(chosen) :])
