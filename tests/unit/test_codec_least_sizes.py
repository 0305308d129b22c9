"""What is too small or too sharp to be concrete at all is not understood, each by its pointer."""

import math
from typing import Any

import numpy as np
import pytest

from ledgerstone.codec.least_sizes import corner_degrees, min_width_mm
from ledgerstone.codec.order_in import read_order
from ledgerstone.errors import Fault, NotUnderstood
from ledgerstone.wording import english
from ledgerstone.workshop import Workshop
from support.documents import Json

BOX: Json = {"kind": "rectangle", "length": 900, "width": 500}


def faults(workshop: Workshop, outline: Json = BOX, **more: Any) -> tuple[Fault, ...]:
    """What is not understood of one slab."""
    slab = {"outline": outline, "thickness": 40, **more}
    try:
        read_order({"slabs": [slab]}, workshop)
    except NotUnderstood as fault:
        return fault.faults
    return ()


def pointers(found: tuple[Fault, ...]) -> set[str]:
    """Where the faults are, from the slab."""
    return {fault.pointer.removeprefix("/slabs/0") for fault in found}


def ring(*points: tuple[float, float]) -> Json:
    """A polygon on the wire."""
    return {"kind": "polygon", "points": [{"x": x, "y": y} for x, y in points]}


NOTCH: Json = {"corner": "back-right", "length": 300, "width": 200}
TOO_SMALL = [
    ({**BOX, "length": 9.9}, "/outline/length"),
    ({**BOX, "width": "0.39 in"}, "/outline/width"),
    ({"kind": "round", "diameter": 9.9}, "/outline/diameter"),
    ({**BOX, "kind": "l-shape", "notch": {**NOTCH, "length": 890.1}}, "/outline/notch/length"),
    ({**BOX, "kind": "l-shape", "notch": {**NOTCH, "width": 0.5}}, "/outline/notch/width"),
    (ring((0, 0), (900, 0), (900, 9.9), (0, 9.9)), "/outline/points"),
    (ring((0, 0), (900, 900), (893, 907)), "/outline/points"),  # slim along a slope
    (ring((0, 0), (900, 0), (900, 70)), "/outline/points/0"),  # 4.4 degrees
    (ring((0, 0), (900, 0), (900, 500), (450, 0.9), (0, 500)), "/outline/points/3"),
]


@pytest.mark.parametrize(("outline", "pointer"), TOO_SMALL)
def test_what_cannot_be_concrete_is_not_understood(
    workshop: Workshop, outline: Json, pointer: str
) -> None:
    """A slab, an arm or a neck of next to nothing, and a needle, are refused at their place."""
    found = faults(workshop, outline)
    assert pointers(found) == {pointer}
    assert all(english(fault.message).endswith(".") for fault in found)


JUST_ENOUGH = [
    {**BOX, "length": 10},
    {"kind": "round", "diameter": 10},
    {**BOX, "kind": "l-shape", "notch": {**NOTCH, "length": 890, "width": 1}},
    ring((0, 0), (900, 0), (900, 10), (0, 10)),
    ring((0, 0), (900, 0), (900, 900 * math.tan(math.radians(5.01)))),
    ring((0, 0), (900, 0), (900, 500), (450, 1.1), (0, 500)),
]


@pytest.mark.parametrize("outline", JUST_ENOUGH)
def test_what_is_just_enough_is_understood(workshop: Workshop, outline: Json) -> None:
    """At its least size and angle a slab is understood, whatever the workshop casts."""
    assert faults(workshop, outline) == ()


def test_a_thickness_below_the_least_is_not_understood(workshop: Workshop) -> None:
    """A thickness of 1.6 mm, which is 40 mm taken for inches, is refused at its place."""
    assert pointers(faults(workshop, thickness="1.6 mm")) == {"/thickness"}
    assert faults(workshop, thickness=5) == ()


@pytest.mark.parametrize(
    ("cutout", "pointer"),
    [
        ({"kind": "circle", "diameter": 2.9}, "/cutouts/0/diameter"),
        ({"kind": "slot", "length": 80, "width": 2.9}, "/cutouts/0/width"),
        ({"kind": "rectangle", "length": 2.9, "width": 80}, "/cutouts/0/length"),
    ],
)
def test_an_opening_below_the_least_is_not_understood(
    workshop: Workshop, cutout: Json, pointer: str
) -> None:
    """An opening that no former could make is refused at the size that is too small."""
    placed = {**cutout, "centre": {"x": 450, "y": 250}}
    assert pointers(faults(workshop, cutouts=[placed])) == {pointer}
    large_enough = {k: 3 if v == 2.9 else v for k, v in placed.items()}
    assert faults(workshop, cutouts=[large_enough]) == ()


def test_a_needle_of_an_opening_or_a_relief_is_not_understood(workshop: Workshop) -> None:
    """A triangle a few thousandths of a millimetre high is none, as an opening or a recess."""
    needle = ring((300, 250), (400, 250), (350, 250.003 + 0.02))
    assert pointers(faults(workshop, cutouts=[needle])) == {"/cutouts/0/points"}
    relief = {"kind": "recess", "outline": needle, "depth": 5, "at": {"x": 0, "y": 0}}
    assert pointers(faults(workshop, reliefs=[relief])) == {"/reliefs/0/outline/points"}


def test_the_size_left_between_walls_counts(workshop: Workshop) -> None:
    """A slab of which the gaps at its walls leave next to nothing is refused, once."""
    gap = workshop.shaping.fitting_gap_mm
    outline = {**BOX, "length": 2 * gap + 9}
    assert pointers(faults(workshop, outline, size_from="between-walls")) == {"/outline/length"}


def test_the_width_of_a_square_on_its_corner_is_its_side() -> None:
    """A square is as wide as its side however it is turned, and a point less than all else."""
    turned = np.array([(0, -1), (1, 0), (0, 1), (-1, 0)]) * math.sqrt(0.5) * 80
    assert min_width_mm(turned) == pytest.approx(80.0)
    # An equilateral triangle's width is its height.
    triangle = np.array([(0, 0), (100, 0), (50, 100 * math.sin(math.radians(60)))])
    assert min_width_mm(triangle) == pytest.approx(100 * math.sqrt(3) / 2)
    assert corner_degrees(triangle) == pytest.approx([60.0, 60.0, 60.0])
