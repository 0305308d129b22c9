"""Openings that are told as ovals: many corners on one ellipse."""

import math
from fractions import Fraction

import pytest

from ledgerstone.drawing.ovals import is_oval, over_all_mm
from ledgerstone.drawing.saying import cutout_size
from ledgerstone.order import Cutout, Point
from ledgerstone.quantities import Length


def ring(a: float, b: float, corners: int, power: float = 1.0) -> tuple[Point, ...]:
    """Corners about (600, 300), mm; with another power no ellipse."""
    turns = [2 * math.pi * k / corners for k in range(corners)]

    def along(share: float) -> float:
        return math.copysign(abs(share) ** power, share)

    return tuple(
        Point(
            Length.of_mm(round(600 + a * along(math.cos(turn)), 1)),
            Length.of_mm(round(300 + b * along(math.sin(turn)), 1)),
        )
        for turn in turns
    )


def test_a_polygon_on_an_ellipse_is_described_as_an_oval() -> None:
    """17 by 13 in, in the unit of the slab beside it, and no word of its 72 sides."""
    points = ring(17 * 25.4 / 2, 13 * 25.4 / 2, 72)
    like = Length.of(Fraction(48), "in")
    message = cutout_size(Cutout(kind="polygon", points=points), like)
    assert message.name == "plan-size-oval"
    sizes = [message.values["length"], message.values["width"]]
    assert all(isinstance(size, Length) and size.unit == "in" for size in sizes)
    assert [size.mm for size in sizes if isinstance(size, Length)] == pytest.approx(
        [17 * 25.4, 13 * 25.4], abs=0.2
    )


@pytest.mark.parametrize(
    "points", [ring(200, 150, 6), ring(200, 150, 72, power=0.5), ring(200, 150, 72, power=2.0)]
)
def test_few_corners_or_another_curve_are_no_oval(points: tuple[Point, ...]) -> None:
    """A hexagon, a rounded box and a star keep their sides."""
    assert not is_oval(points)
    assert over_all_mm(points) == pytest.approx((400.0, 300.0), abs=41)
