"""How a bad request is made of the example order, for the table of them."""

import math
from collections.abc import Mapping
from dataclasses import dataclass, field

from support.asking import JSON, body_of, changed, raw

SLAB, CUTOUT = "/slabs/0", "/slabs/0/cutouts/0"
LENGTH = f"{SLAB}/outline/length"
FULL = {"kind": "full"}


@dataclass(frozen=True, slots=True)
class Bad:
    """One bad request: its kind, its bytes, where the fault must point, the status."""

    name: str
    body: bytes
    pointer: str | None = None
    status: int = 400
    headers: Mapping[str, str] = field(default_factory=lambda: {"Content-Type": JSON})


def with_slab(
    name: str, pointer: str, value: object, at: str | None = None, status: int = 400
) -> Bad:
    """A value put somewhere in the example order; the fault points there, or at ``at``."""
    return Bad(name, body_of(changed((pointer, value))), pointer if at is None else at, status)


def with_polygon(name: str, points: list[tuple[float, float]], at: str = "points") -> Bad:
    """The example order as a bare polygon."""
    outline = {"kind": "polygon", "points": [{"x": x, "y": y} for x, y in points]}
    order = changed(
        (f"{SLAB}/outline", outline),
        (f"{SLAB}/cutouts", []),
        (f"{SLAB}/edges", {}),
        (f"{SLAB}/rests", FULL),
    )
    return Bad(name, body_of(order), f"{SLAB}/outline/{at}")


def with_length(name: str, text: str, at: str = LENGTH) -> Bad:
    """The slab's length written as raw JSON."""
    return Bad(f"length: {name}", raw(text), at)


def ring_of(count: int) -> list[tuple[float, float]]:
    """Corners of a round slab, as many as that, mm."""
    turn = 2 * math.pi / count
    return [
        (round(400 + 400 * math.cos(turn * i), 3), round(400 + 400 * math.sin(turn * i), 3))
        for i in range(count)
    ]
