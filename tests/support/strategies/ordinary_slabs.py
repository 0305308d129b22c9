"""Random slabs of the sizes and on the rests that a workshop sees every week."""

from __future__ import annotations

import random

from support.documents import Json
from support.slabs import box, cut, hole, slab_json


def ordinary_slab(seed: int) -> Json:
    """Write the slab of one seed: a worktop, a basin top, an island or a bench."""
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    kind = rng.choice(["units", "units", "units", "frame", "legs", "ledges", "ends"])
    thickness = rng.choice([30, 34, 40, 40, 40, 50])
    if kind == "units":
        return _on_units(rng, thickness)
    length, width = rng.randrange(700, 1900, 10), rng.randrange(350, 800, 10)
    rests: Json = {"kind": kind}
    match kind:
        case "frame":
            rests["width"] = rng.choice([40, 60])
        case "ends":
            rests["depth"] = rng.choice([30, 60])
        case "legs":
            rests = _legs(rng, length, width)
        case "ledges":
            rests = _ledges(rng, length, width)
    openings = [_bowl(rng, 0, length, width)] if rng.random() < 0.5 and width > 450 else []
    return slab_json(box(length, width), *openings, thickness=thickness, rests=rests)


def over_inner_units(seed: int) -> Json:
    """Write the slab of one seed: over three or four units, most of the wide ones with a bowl.

    An inner unit may lie low, and the slab then spans it beside its bowl.
    """
    rng = random.Random(seed)  # noqa: S311 - a test's own cases
    thickness = rng.choice([30, 34, 40, 40, 40, 50])
    return _on_units(rng, thickness, fewest=3, bowls=0.8)


def _on_units(rng: random.Random, thickness: int, *, fewest: int = 1, bowls: float = 0.4) -> Json:
    widths = [rng.choice([400, 500, 600, 600, 800, 900]) for _ in range(rng.randint(fewest, 4))]
    over = {
        "front": rng.choice([0, 20, 20, 20, 150, 300]),
        "right": rng.choice([0, 0, 0, 200, 300]),
    }
    length, width = sum(widths) + over["right"], 580 + over["front"]
    units: list[Json] = [{"width": w} for w in widths]
    openings: list[Json] = []
    for k, unit in enumerate(units):
        if len(openings) < 2 and unit["width"] >= 600 and rng.random() < bowls:
            start = sum(w for w in widths[:k])
            openings.append(_bowl(rng, start, unit["width"], width))
            unit["for"] = "basin"
    rests = {"kind": "units", "units": units, "overhang": over, "fixed": rng.random() < 0.5}
    return slab_json(box(length, width), *openings, thickness=thickness, rests=rests)


def _bowl(rng: random.Random, start: int, room: int, width: int) -> Json:
    """A round bowl or a rectangular one in the middle of what carries it, more or less."""
    x = start + room / 2 + rng.randrange(-20, 21)
    if rng.random() < 0.4:
        return hole(rng.randrange(280, 380, 10), x, width / 2 + rng.randrange(-10, 11))
    size = (min(rng.randrange(400, 560, 10), room - 110), rng.randrange(320, 400, 10))
    return cut("rectangle", size, (x, width / 2 + rng.randrange(-10, 11)))


def _legs(rng: random.Random, length: int, width: int) -> Json:
    dx, dy = rng.randrange(50, 300, 10), rng.randrange(40, 90, 10)
    at = [{"x": x, "y": y} for x in (dx, length - dx) for y in (dy, width - dy)]
    return {"kind": "legs", "pad": 60, "at": at, "fixed": True}


def _ledges(rng: random.Random, length: int, width: int) -> Json:
    dx = rng.randrange(30, 250, 10)
    ends = [({"x": x, "y": 0}, {"x": x, "y": width}) for x in (dx, length - dx)]
    lines = [{"start": start, "end": end, "depth": 40} for start, end in ends]
    return {"kind": "ledges", "lines": lines, "fixed": True}
