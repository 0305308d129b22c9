"""Random slabs of every width and plan that a workshop turns, lifts and carries."""

from __future__ import annotations

import random

from support.documents import Json
from support.slabs import box, cut, hole, polygon, slab_json


def moved_slab(seed: int) -> Json:
    """Write the slab of one seed: half of them wide, some with openings, some no rectangles."""
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    length = rng.randrange(600, 2700, 10)
    width = rng.randrange(*((350, 700) if seed % 2 else (700, 1300)), 10)
    outline = rng.choice([_rectangle, _rectangle, _rectangle, _l_shape, _round, _blade])
    plan = outline(rng, length, width)
    openings = _openings(rng, length, width) if outline is _rectangle else []
    slab = slab_json(plan, *openings, thickness=rng.choice([25, 30, 40, 40, 50, 60]))
    if outline is _rectangle and rng.random() < 0.4:
        slab["rests"] = _hanging_over(rng, length)
    return slab


def moved_disc(seed: int) -> Json:
    """Write the round slab of one seed: the table's edge ends at its rim as it is turned."""
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    outline = {"kind": "round", "diameter": rng.randrange(500, 1510, 10)}
    return slab_json(outline, thickness=rng.choice([25, 30, 40, 40, 50]))


def _rectangle(_rng: random.Random, length: int, width: int) -> Json:
    return box(length, width)


def _l_shape(rng: random.Random, length: int, width: int) -> Json:
    notch = {
        "corner": rng.choice(["back-right", "back-left", "front-right", "front-left"]),
        "length": round(length * rng.uniform(0.2, 0.7)),
        "width": round(width * rng.uniform(0.2, 0.6)),
    }
    return {"kind": "l-shape", "length": length, "width": width, "notch": notch}


def _round(_rng: random.Random, length: int, _width: int) -> Json:
    return {"kind": "round", "diameter": min(length, 1500)}


def _blade(rng: random.Random, length: int, width: int) -> Json:
    """Narrower at one end, or cut off askew at the other."""
    tip, askew = round(width * rng.uniform(0.5, 1.0)), round(length * rng.uniform(0.0, 0.2))
    return polygon((0, 0), (length - askew, 0), (length, width), (askew, tip))


def _openings(rng: random.Random, length: int, width: int) -> list[Json]:
    """At most one in each half, with 80 mm beside it at least."""
    made: list[Json] = []
    for start in (0.0, length / 2):
        if length < 900 or width < 450 or rng.random() < 0.6:
            continue
        room = (length / 2 - 160, width - 160)
        x = start + length / 4
        if rng.random() < 0.4:
            made.append(hole(round(min(*room, rng.randrange(150, 450))), x, width / 2))
        else:
            size = (round(min(room[0], rng.randrange(300, 600))), round(min(room[1], 490)))
            made.append(cut("rectangle", size, (x, width / 2)))
    return made


def _hanging_over(rng: random.Random, length: int) -> Json:
    """Units that it hangs over at its front and at one end."""
    right, front = rng.randrange(50, 300, 10), rng.choice([0, 20, 150])
    units = [{"width": (length - right) / 2}] * 2
    return {"kind": "units", "units": units, "overhang": {"right": right, "front": front}}
