"""Random series of slabs of which each is used at least as much as the one before."""

from __future__ import annotations

import random
from collections.abc import Callable
from typing import Final

from support.calibration import on_units
from support.documents import Json
from support.slabs import box, cut, slab_json
from support.used import on_known_rails

GrowingSlabs = Callable[[int], list[Json]]


def thinner(seed: int) -> list[Json]:
    """Write an ordinary slab, ever thinner.

    Stress of a load grows with the inverse square of the thickness, that of own weight with its
    inverse.
    """
    slab = on_known_rails(seed)
    return [{**slab, "thickness": t} for t in (60, 50, 40, 35, 30)]


def longer_span(seed: int) -> list[Json]:
    """Write a slab on its two ends, ever longer: the moment of each load grows with the span."""
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    width, thickness = rng.randrange(350, 751, 50), rng.choice([34, 40, 50])
    rests = {"kind": "ends", "depth": rng.choice([30, 40, 60])}
    start = rng.randrange(600, 801, 50)
    return [
        slab_json(box(start + more, width), thickness=thickness, rests=rests)
        for more in range(0, 1001, 200)
    ]


def longer_opening(seed: int) -> list[Json]:
    """Write an ever longer opening over the middle unit: its two strips span the more."""
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    beside, over = rng.choice([400, 500, 600]), rng.choice([800, 900, 1000])
    width, deep = rng.choice([600, 620, 650]), rng.randrange(340, 421, 20)
    thickness = rng.choice([40, 50])
    rests = {**on_units(beside, (over, "hob"), beside, front=20), "rails": "hardwood"}
    middle = (beside + over / 2, width / 2)
    return [
        slab_json(
            box(2 * beside + over, width),
            cut("rectangle", (over - less, deep), middle),
            thickness=thickness,
            rests=rests,
        )
        for less in range(500, 99, -80)
    ]


def longer_overhang(seed: int) -> list[Json]:
    """Write a slab that hangs ever farther over its last unit: the lever grows."""
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    units = [rng.choice([400, 500, 600]) for _ in range(rng.randint(2, 4))]
    width, thickness = rng.randrange(500, 701, 20), rng.choice([30, 40, 50])
    front = rng.choice([0, 20, 40])
    return [
        slab_json(
            box(sum(units) + right, width),
            thickness=thickness,
            rests={**on_units(*units, front=front, right=right), "fixed": True},
        )
        for right in (120, 180, 240, 300, 360, 480, 600)
    ]


GROWING: Final[tuple[GrowingSlabs, ...]] = (thinner, longer_span, longer_opening)
