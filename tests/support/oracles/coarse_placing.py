"""Whether openings have any place on a slab that can be made, by a coarse search of all places.

Nothing here is taken from ``layout`` or ``siting``: places stand on a grid, what two of them keep
between them is measured from their boxes and circles, and whoever is found is judged by the checks.
"""

from collections.abc import Iterator
from itertools import product

import numpy as np
from numpy.typing import NDArray
from shapely.geometry import Polygon

from ledgerstone.order import Cutout
from ledgerstone.workshop.records import Workshop
from support.oracles.placement import PlacePoints

STEP_MM = 40.0
MAX_FOUND = 400


def _size_mm(cutout: Cutout) -> tuple[float, float]:
    if cutout.diameter is not None:
        return cutout.diameter.mm, cutout.diameter.mm
    assert cutout.length is not None
    assert cutout.width is not None
    return cutout.length.mm, cutout.width.mm


def _strip_mm(cutout: Cutout, workshop: Workshop) -> float:
    longer = max(_size_mm(cutout))
    rules = workshop.shaping.strips
    rule = next(r for r in rules if longer <= r.opening_up_to_mm and r.rim in ("any", cutout.rim))
    return max(rule.stops_mm, 5.0 * workshop.recipe.largest_aggregate_mm)


def _places(cutout: Cutout, outline: Polygon, workshop: Workshop) -> PlacePoints:
    """Places of one opening alone: a grid, and the outermost."""
    length, width = _size_mm(cutout)
    keep = _strip_mm(cutout, workshop)
    x0, y0, x1, y1 = outline.bounds
    xs = _grid(x0 + keep + length / 2, x1 - keep - length / 2)
    ys = _grid(y0 + keep + width / 2, y1 - keep - width / 2)
    places = np.array(list(product(xs, ys))).reshape(-1, 2)
    is_round = len(outline.exterior.coords) > 20
    if not is_round:
        return places
    radius = (x1 - x0) / 2
    from_middle = np.abs(places - radius)
    if cutout.diameter is not None:
        far = np.hypot(*from_middle.T) + length / 2
    else:
        far = np.hypot(from_middle[:, 0] + length / 2, from_middle[:, 1] + width / 2)
    return np.asarray(places[far <= radius - keep])


def _grid(low: float, high: float) -> PlacePoints:
    if high < low - 1e-9:
        return np.empty(0)
    return np.unique(np.concatenate([np.arange(low, high, STEP_MM), [(low + high) / 2, high]]))


def _apart(
    one: Cutout, other: Cutout, at: PlacePoints, there: PlacePoints, workshop: Workshop
) -> NDArray[np.bool_]:
    """Which places of one opening keep clear of which of another, ``(n, m)``."""
    keep = min(_strip_mm(one, workshop), _strip_mm(other, workshop))
    off = np.abs(at[:, None, :] - there[None, :, :])
    if one.diameter is not None and other.diameter is not None:
        gap = np.hypot(off[..., 0], off[..., 1]) - (one.diameter.mm + other.diameter.mm) / 2
        return np.asarray(gap >= keep - 1e-9)
    halves = [
        (np.array(_size_mm(c)) / 2 if c.diameter is None else np.zeros(2)) for c in (one, other)
    ]
    radius = sum(c.diameter.mm / 2 for c in (one, other) if c.diameter is not None)
    between = np.maximum(off - halves[0] - halves[1], 0.0)
    return np.asarray(np.hypot(between[..., 0], between[..., 1]) - radius >= keep - 1e-9)


def coarse_places(
    cutouts: tuple[Cutout, ...], outline: Polygon, workshop: Workshop, rng: np.random.Generator
) -> Iterator[tuple[tuple[float, float], ...]]:
    """Yield sets of places at which all openings lie clear of each other, in random order."""
    order = sorted(range(len(cutouts)), key=lambda k: -max(_size_mm(cutouts[k])))
    places = {k: _places(cutouts[k], outline, workshop) for k in order}
    clear = {
        (i, k): _apart(cutouts[i], cutouts[k], places[i], places[k], workshop)
        for n, i in enumerate(order)
        for k in order[n + 1 :]
    }
    left = {k: np.ones(len(places[k]), dtype=bool) for k in order}
    for found in _found(order, clear, left, rng):
        yield tuple(
            (float(places[k][found[k]][0]), float(places[k][found[k]][1])) for k in sorted(order)
        )


def _found(
    order: list[int],
    clear: dict[tuple[int, int], NDArray[np.bool_]],
    left: dict[int, NDArray[np.bool_]],
    rng: np.random.Generator,
) -> Iterator[dict[int, int]]:
    if not order:
        yield {}
        return
    first, *rest = order
    for at in rng.permutation(np.flatnonzero(left[first])):
        after = {k: left[k] & clear[first, k][at] for k in rest}
        if all(one.any() for one in after.values()):
            for found in _found(rest, clear, after, rng):
                yield {first: int(at), **found}
                if len(rest) > 1:
                    break  # one of each place of the largest is enough
