"""Places for labels: no two overlap, and what lies far off the sheet costs nothing."""

import tracemalloc

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ledgerstone.drawing import draw_plan
from ledgerstone.drawing.placing import Box, Places
from ledgerstone.order import Relief, Round
from ledgerstone.shape import shape_of
from ledgerstone.workshop.records import Workshop
from support.drawn_slabs import TITLE, L, at, made

SHEET = Box(0.0, 0.0, 800.0, 600.0)
PEAK_BYTES = 8_000_000  # a plan's elements and its label grid; the fonts are loaded before

_at = st.floats(-2000.0, 2000.0)
_size = st.floats(0.0, 3000.0)
_boxes = st.builds(lambda x, y, w, h: Box(x, y, x + w, y + h), _at, _at, _size, _size)
_centres = st.lists(st.tuples(st.floats(0.0, 800.0), st.floats(0.0, 600.0)), max_size=12)


@given(st.lists(_boxes, max_size=8), _centres)
def test_a_label_lands_where_a_look_at_every_box_would_put_it(
    taken: list[Box], centres: list[tuple[float, float]]
) -> None:
    """The grid finds the same place as comparing with every box, on the sheet or off it."""
    places = Places(SHEET)
    for box in taken:
        places.take(box)

    def is_free(centre: tuple[float, float]) -> bool:
        label = Box.round(centre, 30.0, 12.0)
        return SHEET.holds(label) and not any(label.overlaps(box, 2.0) for box in taken)

    expected = next(filter(is_free, centres), None)
    assert places.place(centres, 30.0, 12.0) == expected


@pytest.mark.parametrize("far", [1e5, 1e9, 1e15])
def test_a_box_far_off_the_sheet_keeps_no_cells(far: float) -> None:
    """A grid has at most the cells of its sheet, however large the boxes put into it."""
    places = Places(SHEET)
    places.take(Box(-far, -far, far, far))
    places.avoid([Box(far, far, 2 * far, 2 * far)])
    assert len(places._taken._by_cell) <= (800 / 40 + 3) * (600 / 40 + 3)
    assert not places._lines._by_cell


@pytest.mark.parametrize("diameter_mm", [0.1, 1.0, 10.0])
def test_a_plan_is_drawn_in_bounded_memory(workshop: Workshop, diameter_mm: float) -> None:
    """A recess two thousand times as wide as its disc costs no more memory than any other."""
    recess = Relief("recess", Round(L(200)), L(5), at(0, 0))
    slab = made(Round(L(diameter_mm)), reliefs=(recess,))
    shape = shape_of(slab, workshop)
    tracemalloc.start()
    draw_plan(slab, shape, title=TITLE)
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < PEAK_BYTES
