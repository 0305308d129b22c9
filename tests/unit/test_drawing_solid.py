"""Worked edges of a ring of faces."""

import math

import pytest

from ledgerstone.drawing.solid import Ring, Worked, graded


@pytest.mark.parametrize("shift", range(40))
def test_edges_run_out_alike_wherever_a_curve_begins(shift: int) -> None:
    """A circle of 40 chords, a quarter of them with a larger edge, does not depend on its start."""
    small, large = (Worked(size, ((0.0, 1.0), (1.0, 0.0))) for size in (2.0, 8.0))
    angles = [2 * math.pi * k / 40 for k in range(40)]
    points = [(100 * math.cos(a), 100 * math.sin(a)) for a in angles]
    edges = [large if 10 <= k < 20 else small for k in range(40)]
    whole = graded(Ring(tuple(points), tuple(edges)))
    turned = graded(
        Ring(
            (*points[shift:], *points[:shift]),
            (*edges[shift:], *edges[:shift]),
        )
    )
    assert sorted(edge.size_mm for edge in turned.edges) == pytest.approx(
        sorted(edge.size_mm for edge in whole.edges)
    )
