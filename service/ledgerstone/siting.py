"""Where an opening can go whose place nobody said: centred, a tap behind its basin."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import Point, Polygon, box
from shapely.geometry.base import BaseGeometry

from ledgerstone.outline import XY
from ledgerstone.workshop.records import StripRule

FloatArray = NDArray[np.float64]
Shapes = NDArray[np.object_]
_STEP_MM: Final = 5.0
_SLACK_MM: Final = 1e-6
_MOST_TRIED: Final = 60_000
_TAP_CLEAR_MM: Final = 10.0  # beyond the rule, behind a basin; common practice, no source


@dataclass(frozen=True, slots=True)
class Sited:
    """An opening as its box: its middle, its size and how its rim is, mm."""

    x_mm: float
    y_mm: float
    length_mm: float
    width_mm: float
    is_round: bool = False
    rim: str = "shown"


@dataclass(frozen=True, slots=True)
class Unsited:
    """An opening without a place; either coordinate may be known.

    ``behind`` is the opening that it stands behind, ``room_behind_mm`` what a tap behind it takes,
    ``between_mm`` the unit that it is over.
    """

    length_mm: float
    width_mm: float
    is_round: bool = False
    rim: str = "shown"
    x_mm: float | None = None
    y_mm: float | None = None
    behind: Sited | None = None
    room_behind_mm: float = 0.0
    between_mm: tuple[float, float] | None = None


def clear_mm(
    rules: Sequence[StripRule], longer_mm: float, rim: str, *, least: bool = False
) -> float:
    """Give the strip that the workshop leaves beside an opening: the first rule that fits.

    Parameters
    ----------
    least
        Whether the narrowest that is made at all, else what is made without care.
    """
    for rule in rules:
        if longer_mm <= rule.opening_up_to_mm and rule.rim in ("any", rim):
            return rule.stops_mm if least else rule.cautions_mm
    return 0.0


def place_for(
    outline: Polygon, placed: Sequence[Sited], wanted: Unsited, rules: Sequence[StripRule]
) -> XY | None:
    """Find the makeable place nearest to where the opening would usually be.

    Parameters
    ----------
    outline
        The slab in plan, mm; its front-left corner is the origin.
    placed
        Openings that have their place.
    rules
        The workshop's strips: wide enough to be made without care, else to be made at all.

    Returns
    -------
    Middle of the opening, mm, or None where it fits nowhere.
    """
    for least in (False, True):
        place = _place(outline, placed, wanted, rules, least=least)
        if place is not None:
            return place
    return None


def _place(
    outline: Polygon,
    placed: Sequence[Sited],
    wanted: Unsited,
    rules: Sequence[StripRule],
    *,
    least: bool,
) -> XY | None:
    wish = wish_for(outline, wanted, rules)
    xs, ys = _grid(outline, wanted, wish)
    if xs.size == 0 or xs.size > _MOST_TRIED:
        return None
    keep = clear_mm(rules, max(wanted.length_mm, wanted.width_mm), wanted.rim, least=least)
    radius, shapes = _tried(wanted, xs, ys)
    fits = shapely.contains_xy(outline, xs, ys)
    fits &= shapely.distance(outline.exterior, shapes) - radius >= keep - _SLACK_MM
    for other in placed:
        longer_mm = max(other.length_mm, other.width_mm)
        apart = min(keep, clear_mm(rules, longer_mm, other.rim, least=least))
        round_mm, body = _body(other)
        fits &= shapely.distance(body, shapes) - radius - round_mm >= apart - _SLACK_MM
    if not fits.any():
        return None
    far = np.hypot(xs - wish[0], ys - wish[1])
    best = int(np.argmin(np.where(fits, far, np.inf)))
    return float(xs[best]), float(ys[best])


def room_for_tap_mm(rules: Sequence[StripRule], tap_mm: float) -> float:
    """Give the depth that a tap takes behind a basin: its hole and the strips about it."""
    return tap_mm + 2 * clear_mm(rules, tap_mm, "shown") + _TAP_CLEAR_MM


def _tried(wanted: Unsited, xs: FloatArray, ys: FloatArray) -> tuple[float, Shapes]:
    """Give the opening at every place: points and a radius where it is round, else boxes."""
    if wanted.is_round:
        return wanted.length_mm / 2, np.asarray(shapely.points(xs, ys))
    half_x, half_y = wanted.length_mm / 2, wanted.width_mm / 2
    return 0.0, np.asarray(shapely.box(xs - half_x, ys - half_y, xs + half_x, ys + half_y))


def _body(one: Sited) -> tuple[float, BaseGeometry]:
    """Give a placed opening: its middle and its radius where it is round, else its box."""
    if one.is_round:
        return one.length_mm / 2, Point(one.x_mm, one.y_mm)
    half_x, half_y = one.length_mm / 2, one.width_mm / 2
    return 0.0, box(one.x_mm - half_x, one.y_mm - half_y, one.x_mm + half_x, one.y_mm + half_y)


def wish_for(outline: Polygon, wanted: Unsited, rules: Sequence[StripRule]) -> XY:
    """Give where it would go: behind its basin, in the middle of its unit, or of the slab."""
    middle = outline.representative_point()
    if outline.convex_hull.area - outline.area < 1.0:
        middle = outline.centroid
    x, y = middle.x, middle.y
    if wanted.between_mm is not None:
        x = sum(wanted.between_mm) / 2
    if wanted.room_behind_mm:
        y = min(y, outline.bounds[3] - wanted.room_behind_mm - wanted.width_mm / 2)
    if wanted.behind is not None:
        basin = wanted.behind
        keep = clear_mm(rules, max(wanted.length_mm, wanted.width_mm), wanted.rim)
        x = basin.x_mm
        y = basin.y_mm + basin.width_mm / 2 + keep + wanted.width_mm / 2 + _TAP_CLEAR_MM
    return (
        wanted.x_mm if wanted.x_mm is not None else x,
        wanted.y_mm if wanted.y_mm is not None else y,
    )


def _grid(outline: Polygon, wanted: Unsited, wish: XY) -> tuple[FloatArray, FloatArray]:
    """Places to try: the wish, and a grid about it; a known coordinate stays."""
    low_x, low_y, high_x, high_y = outline.bounds
    if wanted.between_mm is not None:
        low_x, high_x = max(low_x, wanted.between_mm[0]), min(high_x, wanted.between_mm[1])
    step = _STEP_MM
    while (high_x - low_x) * (high_y - low_y) / step**2 > _MOST_TRIED / 2:
        step *= 2
    along = _steps(low_x, high_x, wish[0], step) if wanted.x_mm is None else np.array([wish[0]])
    across = _steps(low_y, high_y, wish[1], step) if wanted.y_mm is None else np.array([wish[1]])
    xs, ys = np.meshgrid(along, across)
    return xs.ravel(), ys.ravel()


def _steps(low: float, high: float, wish: float, step: float) -> FloatArray:
    steps = np.arange(np.ceil((low - wish) / step), np.floor((high - wish) / step) + 1)
    return wish + steps * step
