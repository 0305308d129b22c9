"""Dimension chains: running dimensions from the front left, and the overall beyond them.

Figures are spread along their line, each tied to its tick by a bent leader, so that no two
collide however close the ticks are.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from ledgerstone.drawing.frame import PLAIN, SMALL, Frame, figures
from ledgerstone.drawing.lettering import INK, PAPER, PENCIL, lettered, text_width
from ledgerstone.drawing.placing import Box, spread
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.order import Slab
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape

FIRST = 30.0  # from the slab to the running line: room for a side's letter
BESIDE = 34.0  # from the slab to the overall on its right
TICK_LENGTH = 4.0
BEND = 20.0  # from the running line to its figures
LINE = SMALL + 4
OVERALL = 26.0
_SAME_MM = 0.5
_EDGES_UP_TO = 9
_OFF_END = 3.0  # preferred distance of figures from the lines at the slab's ends
_FLAT_SHIFT = 46.0  # figures are turned upright where lying flat would push one farther


@dataclass(frozen=True, slots=True)
class Station:
    """A place on a chain: how far along, and whether it is a corner, a centre or an edge."""

    at_mm: float
    kind: str


@dataclass(frozen=True, slots=True)
class Chain:
    """What is drawn for one axis, how deep it reaches from the slab, and how many had no room."""

    drawn: tuple[SvgElement, ...]
    depth: float
    unmarked: int
    lines: tuple[Box, ...]


def stations(slab: Slab, shape: Shape, axis: int) -> list[Station]:
    """Places to dimension along an axis (0: x, 1: y), the most important first, none twice."""
    corners = [Station(corner[axis], "corner") for corner in shape.corners]
    centres, edges = [], []
    for opening in shape.openings:
        cutout, bounds = slab.cutouts[opening.index], opening.polygon.bounds
        if not bounds or math.isnan(bounds[0]):
            continue
        ends = [Station(bounds[axis], "edge"), Station(bounds[axis + 2], "edge")]
        if cutout.centre is None or cutout.open_to is not None:
            centres += ends
        else:
            middle = (cutout.centre.x.mm, cutout.centre.y.mm)[axis]
            centres.append(Station(middle, "centre"))
            edges += [] if cutout.turn_degrees % 90 else ends
    for relief in shape.reliefs:
        edges += [Station(relief.bounds[i], "edge") for i in (axis, axis + 2)]
    bounds = shape.outline.bounds
    kept = _once([*corners, *centres], bounds[axis], bounds[axis + 2])
    if len(kept) > _EDGES_UP_TO:
        return kept
    more = _once([*kept, *edges], bounds[axis], bounds[axis + 2])
    return more if len(more) <= _EDGES_UP_TO else kept


def _once(preferred: Iterable[Station], low: float, high: float) -> list[Station]:
    """Leave out what is at an end, off the slab or there already."""
    kept: list[Station] = []
    near: dict[int, list[float]] = {}
    for station in preferred:
        cell = math.floor(station.at_mm / _SAME_MM)
        others = (mm for by in (-1, 0, 1) for mm in near.get(cell + by, ()))
        if not low + _SAME_MM < station.at_mm < high - _SAME_MM:
            continue
        if all(abs(station.at_mm - mm) > _SAME_MM for mm in others):
            kept.append(station)
            near.setdefault(cell, []).append(station.at_mm)
    return kept


def along_front(
    frame: Frame, preferred: list[Station], like: Length, low: float, high: float
) -> Chain:
    """Draw the chain below the slab, its figures between x ``low`` and ``high``, sheet units."""
    x0, x1, y = frame.slab.x0, frame.slab.x1, frame.slab.y1
    line = y + FIRST
    room = int((high - low) / LINE) - 1
    shown = sorted(preferred[:room], key=lambda station: station.at_mm)
    ticks = [frame.at((station.at_mm, 0.0))[0] for station in shown]
    texts = [figures(like, station.at_mm - frame.start_mm[0], frame.point) for station in shown]
    wide = [text_width(text, SMALL) + 10 for text in texts]
    places, upright = _set_out(ticks, wide, ((x0 + _OFF_END, x1 - _OFF_END), (low, high)))
    deep = (max((text_width(t, SMALL) for t in texts), default=0) if upright else 12.0) + BEND + 8
    overall = line + deep + OVERALL - 8 if texts else line + PLAIN + 2
    drawn = _overall_flat(x0, x1, y, overall, overall_text(frame, like, 0))
    drawn += _running(x0, x1, line, across=False) if texts else []
    for station, tick, place, text in zip(shown, ticks, places, texts, strict=True):
        drawn.append(_extension((tick, y + 3), (tick, line), station.kind))
        drawn.append(_leader([(tick, line), (tick, line + TICK_LENGTH), (place, line + BEND - 4)]))
        if upright:
            at = (place + SMALL * 0.36, line + BEND)
            drawn.append(lettered(text, at, SMALL, anchor="end", turn=-90, halo=PAPER))
        else:
            drawn.append(
                lettered(text, (place, line + BEND + 10), SMALL, anchor="middle", halo=PAPER)
            )
    lines = tuple(Box(t - 0.5, y, t + 0.5, line) for t in ticks)
    return Chain(tuple(drawn), overall - y + 8, len(preferred) - len(shown), lines)


def _set_out(
    ticks: list[float], wide: list[float], ends: tuple[tuple[float, float], tuple[float, float]]
) -> tuple[list[float], bool]:
    """Set figures by their ticks, lying or upright: off the lines at the slab's ends if they can.

    Parameters
    ----------
    ends
        Between the lines at the slab's ends, and the whole room that there is.

    Returns
    -------
    places, is_upright
    """
    narrow = [LINE] * len(ticks)
    for low, high in ends:
        lying = spread(ticks, wide, low, high)
        moved = max((abs(a - b) for a, b in zip(lying, ticks, strict=True)), default=0.0)
        if moved <= _FLAT_SHIFT and sum(wide) <= high - low:
            return lying, False
        if sum(narrow) <= high - low:
            return spread(ticks, narrow, low, high), True
    return spread(ticks, narrow, *ends[1]), True


def along_left(
    frame: Frame, preferred: list[Station], like: Length, low: float, high: float
) -> Chain:
    """Draw the chain left of the slab, its figures between y ``low`` and ``high``, sheet units."""
    x, y0, y1 = frame.slab.x0, frame.slab.y0, frame.slab.y1
    line = x - FIRST
    room = int((high - low) / LINE) - 1
    shown = sorted(preferred[:room], key=lambda station: -station.at_mm)
    ticks = [frame.at((0.0, station.at_mm))[1] for station in shown]
    texts = [figures(like, station.at_mm - frame.start_mm[1], frame.point) for station in shown]
    places = spread(ticks, [LINE] * len(texts), low, high)
    drawn = _running(y0, y1, line, across=True) if texts else []
    for station, tick, place, text in zip(shown, ticks, places, texts, strict=True):
        drawn.append(_extension((x - 3, tick), (line, tick), station.kind))
        drawn.append(_leader([(line, tick), (line - TICK_LENGTH, tick), (line - BEND + 4, place)]))
        at = (line - BEND, place + SMALL * 0.36)
        drawn.append(lettered(text, at, SMALL, anchor="end"))
    lines = tuple(Box(line, t - 0.5, x, t + 0.5) for t in ticks)
    return Chain(tuple(drawn), x - line + BEND, len(preferred) - len(shown), lines)


def overall_right(frame: Frame, like: Length) -> list[SvgElement]:
    """Draw the overall from front to back, right of the slab."""
    x, y0, y1 = frame.slab.x1, frame.slab.y0, frame.slab.y1
    line, text = x + BESIDE, overall_text(frame, like, 1)
    points = [(line, y0), (line, y1)]
    at = (line + PLAIN, (y0 + y1) / 2)
    return [
        _extension((x + 3, y0), (line + TICK_LENGTH, y0), "corner"),
        _extension((x + 3, y1), (line + TICK_LENGTH, y1), "corner"),
        element("path", d=path_of(points, closed=False), stroke=INK, stroke_width=1),
        _slash(line, y0),
        _slash(line, y1),
        lettered(text, at, PLAIN, anchor="middle", bold=True, turn=-90),
    ]


def overall_text(frame: Frame, like: Length, axis: int) -> str:
    """Describe the overall along an axis, with the sign of a diameter where the slab is round."""
    size = figures(like, frame.end_mm[axis] - frame.start_mm[axis], frame.point)
    return f"Ø {size}" if frame.is_round else size


def left_depth(preferred: Iterable[Station], start_mm: float, like: Length) -> float:
    """Return the width of the left chain, sheet units, before its scale is known."""
    texts = [figures(like, station.at_mm - start_mm) for station in preferred]
    return FIRST + BEND + max((text_width(text, SMALL) for text in texts), default=0.0)


def _running(start: float, end: float, line: float, *, across: bool) -> list[SvgElement]:
    """Draw a running line with its zero and its far end."""
    points = [(line, start), (line, end)] if across else [(start, line), (end, line)]
    zero = (line, end) if across else (start, line)
    return [
        element("path", d=path_of(points, closed=False), stroke=PENCIL, stroke_width=0.9),
        element("circle", cx=zero[0], cy=zero[1], r=3, fill="none", stroke=PENCIL),
    ]


def _extension(start: tuple[float, float], end: tuple[float, float], kind: str) -> SvgElement:
    return element(
        "line",
        x1=start[0],
        y1=start[1],
        x2=end[0],
        y2=end[1],
        stroke=PENCIL,
        stroke_width=0.8,
        stroke_dasharray="9 3 2 3" if kind == "centre" else None,
    )


def _leader(points: list[tuple[float, float]]) -> SvgElement:
    return element(
        "path", d=path_of(points, closed=False), fill="none", stroke=PENCIL, stroke_width=0.8
    )


def _slash(x: float, y: float) -> SvgElement:
    """Draw the short slanting stroke that ends an overall dimension."""
    return element(
        "line",
        x1=x - TICK_LENGTH,
        y1=y + TICK_LENGTH,
        x2=x + TICK_LENGTH,
        y2=y - TICK_LENGTH,
        stroke=INK,
        stroke_width=1.4,
    )


def _overall_flat(x0: float, x1: float, slab_y: float, y: float, text: str) -> list[SvgElement]:
    points = [(x0, y), (x1, y)]
    return [
        _extension((x0, slab_y + 3), (x0, y + TICK_LENGTH), "corner"),
        _extension((x1, slab_y + 3), (x1, y + TICK_LENGTH), "corner"),
        element("path", d=path_of(points, closed=False), stroke=INK, stroke_width=1),
        _slash(x0, y),
        _slash(x1, y),
        lettered(text, ((x0 + x1) / 2, y - 5), PLAIN, anchor="middle", bold=True),
    ]
