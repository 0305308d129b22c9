"""Positions for openings without one: centred, or a tap behind its basin."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry import LinearRing, Polygon

from ledgerstone.arrays import FloatArray
from ledgerstone.outline import XY
from ledgerstone.strip_rules import TAP_CLEAR_MM, clear_mm
from ledgerstone.workshop.records import StripRule

_STEP_MM: Final = 5.0  # between places that are tried
_SLACK_MM: Final = 1e-6  # what rounding may take from a strip
_MAX_TRIED: Final = 60_000  # places of one search
_LOT: Final = 256  # places that are tried together, the nearest first


@dataclass(frozen=True, slots=True)
class PlacedOpening:
    """An opening as its box: its middle, its size and how its rim is, mm."""

    x_mm: float
    y_mm: float
    length_mm: float
    width_mm: float
    is_round: bool = False
    rim: str = "shown"


@dataclass(frozen=True, slots=True)
class UnplacedOpening:
    """An opening without a place; either coordinate may be known.

    ``behind`` is the opening that it stands behind, ``room_behind_mm`` what a tap behind it takes,
    ``at_side`` the side that it is near, ``front`` or ``back``, ``between_mm`` the unit that it
    is over, ``wish_mm`` where it would go best, if not there.
    """

    length_mm: float
    width_mm: float
    is_round: bool = False
    rim: str = "shown"
    x_mm: float | None = None
    y_mm: float | None = None
    behind: PlacedOpening | None = None
    room_behind_mm: float = 0.0
    at_side: str = ""
    between_mm: tuple[float, float] | None = None
    wish_mm: XY | None = None


def place_for(
    outline: Polygon,
    placed: Sequence[PlacedOpening],
    wanted: UnplacedOpening,
    rules: Sequence[StripRule],
    *,
    keep_off: Sequence[Polygon] = (),
    step_mm: float = _STEP_MM,
    is_tight: bool = False,
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
    keep_off
        Obstacles that it must not overlap: a leg's pad, a unit's side.
    step_mm
        How fine its place is looked for.
    is_tight
        Whether the narrowest strips will do from the start.

    Returns
    -------
    Middle of the opening, mm; None if it fits nowhere.
    """
    leasts = (True,) if is_tight else (False, True)
    obstacles = tuple(keep_off)
    searches = (
        _PlaceSearch(outline, placed, wanted, rules, obstacles, step_mm, least) for least in leasts
    )
    return next((place for search in searches if (place := _place(search)) is not None), None)


@dataclass(frozen=True, slots=True)
class _PlaceSearch:
    """An opening, the slab on which its place is looked for, and what it keeps clear of.

    Attributes
    ----------
    least
        Whether the narrowest strips that are made at all do.
    """

    outline: Polygon
    placed: Sequence[PlacedOpening]
    wanted: UnplacedOpening
    rules: Sequence[StripRule]
    keep_off: tuple[Polygon, ...]
    step_mm: float
    least: bool

    @property
    def strip_mm(self) -> float:
        """The strip beside what is to be placed."""
        return self.strip_beside_mm(self.wanted)

    def strip_beside_mm(self, opening: PlacedOpening | UnplacedOpening) -> float:
        """Return the strip beside an opening."""
        longer_mm = max(opening.length_mm, opening.width_mm)
        return clear_mm(self.rules, longer_mm, opening.rim, least=self.least)


def _place(search: _PlaceSearch) -> XY | None:
    """Return the makeable place nearest to the preferred one; None if there is none."""
    wish = wish_for(search.outline, search.wanted, search.rules)
    if _first_that_fits(search, (np.array([wish[0]]), np.array([wish[1]]))) is not None:
        return wish
    xs, ys = _grid(search, wish)
    if xs.size == 0 or xs.size > _MAX_TRIED:
        return None
    nearest = np.argsort(np.hypot(xs - wish[0], ys - wish[1]), kind="stable")
    return _first_that_fits(search, (xs[nearest], ys[nearest]))


def _first_that_fits(search: _PlaceSearch, at: tuple[FloatArray, FloatArray]) -> XY | None:
    """Return the first of these places, ``(n,)`` and ``(n,)``, at which an opening can be made."""
    xs, ys = at
    apart = _is_apart(search, xs, ys)
    xs, ys = xs[apart], ys[apart]
    edge = search.outline.exterior
    shapely.prepare([search.outline, edge, *search.keep_off])
    start, lot = 0, _LOT
    while start < xs.size:
        here = slice(start, start + lot)
        fits = np.flatnonzero(_is_on(search, edge, xs[here], ys[here]))
        if fits.size:
            return float(xs[start + fits[0]]), float(ys[start + fits[0]])
        start, lot = start + lot, 2 * lot
    return None


def _is_apart(search: _PlaceSearch, xs: FloatArray, ys: FloatArray) -> NDArray[np.bool_]:
    """Return whether an opening keeps apart from those that have their place, ``(n,)``."""
    keep = search.strip_mm
    half_x, half_y, radius = _body(search.wanted)
    apart = np.ones(xs.shape, dtype=bool)
    for other in search.placed:
        strip = min(keep, search.strip_beside_mm(other))
        other_x, other_y, other_radius = _body(other)
        beside = np.maximum(np.abs(xs - other.x_mm) - half_x - other_x, 0.0)
        behind = np.maximum(np.abs(ys - other.y_mm) - half_y - other_y, 0.0)
        apart &= np.hypot(beside, behind) - radius - other_radius >= strip - _SLACK_MM
    return apart


def _body(opening: PlacedOpening | UnplacedOpening) -> tuple[float, float, float]:
    """Half of an opening's box and no radius, mm; a round one's radius about its middle."""
    if opening.is_round:
        return 0.0, 0.0, opening.length_mm / 2
    return opening.length_mm / 2, opening.width_mm / 2, 0.0


def _is_on(
    search: _PlaceSearch, edge: LinearRing, xs: FloatArray, ys: FloatArray
) -> NDArray[np.bool_]:
    """Return whether an opening lies on the slab with its strip, and on no obstacle, ``(n,)``."""
    half_x, half_y, radius = _body(search.wanted)
    shapes = np.asarray(shapely.points(xs, ys))
    if not search.wanted.is_round:
        shapes = np.asarray(shapely.box(xs - half_x, ys - half_y, xs + half_x, ys + half_y))
    fits = np.asarray(shapely.contains_xy(search.outline, xs, ys))
    strip = max(0.0, search.strip_mm + radius - _SLACK_MM)
    for taken, apart in (*((taken, radius) for taken in search.keep_off), (edge, strip)):
        fits[fits] = ~shapely.dwithin(taken, shapes[fits], apart)
    return fits


def wish_for(outline: Polygon, wanted: UnplacedOpening, rules: Sequence[StripRule]) -> XY:
    """Preferred place, mm: behind its basin, near its side, in its unit's middle or the slab's."""
    if wanted.wish_mm is not None:
        return wanted.wish_mm
    middle = outline.representative_point()
    if outline.convex_hull.area - outline.area < 1.0:
        middle = outline.centroid
    x, y = middle.x, middle.y
    if wanted.between_mm is not None:
        x = sum(wanted.between_mm) / 2
    if wanted.room_behind_mm:
        y = min(y, outline.bounds[3] - wanted.room_behind_mm - wanted.width_mm / 2)
    keep = clear_mm(rules, max(wanted.length_mm, wanted.width_mm), wanted.rim)
    in_x, in_y = keep + wanted.length_mm / 2, keep + wanted.width_mm / 2
    low_x, low_y, high_x, high_y = outline.bounds
    if wanted.at_side:
        y = low_y if wanted.at_side == "front" else high_y
    if wanted.behind is not None and _is_behind(wanted, wanted.behind):
        basin = wanted.behind
        x = basin.x_mm
        y = basin.y_mm + basin.width_mm / 2 + in_y + TAP_CLEAR_MM
    return (
        wanted.x_mm if wanted.x_mm is not None else _within(x, low_x + in_x, high_x - in_x),
        wanted.y_mm if wanted.y_mm is not None else _within(y, low_y + in_y, high_y - in_y),
    )


def _within(mm: float, low_mm: float, high_mm: float) -> float:
    """Bring a wish onto the slab; into its middle where the opening leaves no strip beside it."""
    return min(max(mm, low_mm), high_mm) if low_mm <= high_mm else (low_mm + high_mm) / 2


def _is_behind(wanted: UnplacedOpening, basin: PlacedOpening) -> bool:
    """Return whether a tap's known coordinates allow a position behind its basin."""
    x = basin.x_mm if wanted.x_mm is None else wanted.x_mm
    return wanted.at_side != "front" and abs(x - basin.x_mm) <= basin.length_mm / 2


def _grid(search: _PlaceSearch, wish: XY) -> tuple[FloatArray, FloatArray]:
    """Places to try: a grid about the wish, and the outermost; a known coordinate stays."""
    wanted, keep = search.wanted, search.strip_mm
    in_x, in_y = keep + wanted.length_mm / 2, keep + wanted.width_mm / 2
    low_x, low_y, high_x, high_y = search.outline.bounds
    low_x, high_x = low_x + in_x, high_x - in_x
    low_y, high_y = low_y + in_y, high_y - in_y
    if wanted.between_mm is not None:
        low_x = max(low_x, wanted.between_mm[0])
        high_x = min(high_x, wanted.between_mm[1])
    step = search.step_mm
    while (high_x - low_x) * (high_y - low_y) / step**2 > _MAX_TRIED / 2:
        step *= 2
    along = _steps(low_x, high_x, wish[0], step) if wanted.x_mm is None else np.array([wish[0]])
    across = _steps(low_y, high_y, wish[1], step) if wanted.y_mm is None else np.array([wish[1]])
    xs, ys = np.meshgrid(along, across)
    return xs.ravel(), ys.ravel()


def _steps(low: float, high: float, wish: float, step: float) -> FloatArray:
    if high < low:
        return np.empty(0)
    steps = np.arange(np.ceil((low - wish) / step), np.floor((high - wish) / step) + 1)
    inward = np.ceil(low / step) * step, np.floor(high / step) * step
    ends = inward if inward[0] <= inward[1] else (low, high)
    return np.concatenate([wish + steps * step, ends])
