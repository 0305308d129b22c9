"""Random slabs that are no rectangles: round tops and Ls, on the rests that such slabs have."""

from __future__ import annotations

import math
import random

from support.documents import Json
from support.slabs import slab_json


def shaped_slab(seed: int) -> Json:
    """Write the slab of one seed: round ones and Ls by turns."""
    return l_slab(seed // 2) if seed % 2 else round_slab(seed // 2)


def round_slab(seed: int) -> Json:
    """A round table or counter, on a frame under its rim, on legs, or on a pedestal."""
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    diameter = rng.randrange(600, 1190, 10)
    outline = {"kind": "round", "diameter": diameter}
    thickness = rng.choice([30, 35, 40, 40, 50])
    match rng.choice(["frame", "frame", "legs", "pedestal"]):
        case "frame":
            rests: Json = {"kind": "frame", "width": rng.choice([40, 60])}
        case "legs":
            rests = {"kind": "legs", "pad": 60, "at": _round_legs(rng, diameter), "fixed": True}
        case _:
            plate = rng.randrange(250, max(diameter // 2, 260), 10)
            rests = {"kind": "pedestal", "plate": plate, "fixed": True}
    return slab_json(outline, thickness=thickness, rests=rests)


def _round_legs(rng: random.Random, diameter: int) -> list[Json]:
    """Three or four legs, evenly round the middle."""
    count, radius = rng.choice([3, 4]), diameter / 2 - rng.randrange(70, 160, 10)
    start = rng.choice([0.0, 0.25]) * math.pi
    turns = [start + 2.0 * math.pi * k / count for k in range(count)]
    return [
        {"x": round(diameter / 2 + radius * math.cos(t)),
         "y": round(diameter / 2 + radius * math.sin(t))}
        for t in turns
    ]  # fmt: skip


def l_slab(seed: int) -> Json:
    """An L on a frame, its sizes and the corner of its notch by its number."""
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    length, width = rng.randrange(1300, 2400, 7), rng.randrange(900, 1190, 7)
    one, other = rng.randrange(450, 660, 7), rng.randrange(450, 660, 7)
    corner = f"{rng.choice(['front', 'back'])}-{rng.choice(['left', 'right'])}"
    notch: Json = {"corner": corner, "length": length - one, "width": width - other}
    outline = {"kind": "l-shape", "length": length, "width": width, "notch": notch}
    rests = {"kind": "frame", "width": rng.choice([40, 50, 60])}
    return slab_json(outline, thickness=rng.choice([30, 34, 40, 40, 50]), rests=rests)
