"""Pins: a finding's number at its place in the plan, with its strip, line or area marked."""

from __future__ import annotations

import math
from collections.abc import Sequence

from ledgerstone.drawing.frame import SMALL, Frame, length_text
from ledgerstone.drawing.lettering import ACCENT, INK, PAPER, lettered, text_width
from ledgerstone.drawing.placing import Box, Places, rings
from ledgerstone.drawing.records import Pin
from ledgerstone.drawing.svg import AttributeValue, SvgElement, element, path_of
from ledgerstone.outline import XY
from ledgerstone.quantities import Length

_RADIUS = 12.0
_AWAY = (30.0, 44.0, 60.0, 80.0, 104.0, 134.0, 170.0, 215.0, 270.0)


def marks(pins: Sequence[Pin], frame: Frame) -> list[SvgElement]:
    """Draw what the pins point at, under every label."""
    drawn = []
    for pin in pins:
        points = [_kept(frame.at(point), frame.zone) for point in pin.at_mm]
        colour = INK if pin.level == "note" else ACCENT
        if pin.is_strip:
            drawn += _strip(points, colour)
        elif pin.is_area:
            drawn.append(
                element(
                    "path",
                    d=path_of(points[:-1]),
                    fill=colour,
                    fill_opacity=0.14,
                    stroke=colour,
                    stroke_width=1.4,
                )
            )
        elif len(points) > 1:
            path = path_of(points, closed=False)
            drawn.append(element("path", d=path, fill="none", stroke=colour, stroke_width=3))
    return drawn


def strip_boxes(pins: Sequence[Pin], frame: Frame) -> list[Box]:
    """Boxes about the marked strips, to keep letters off them."""
    boxes = []
    for pin in pins:
        if pin.is_strip:
            xs, ys = zip(*(frame.at(point) for point in pin.at_mm), strict=True)
            boxes.append(Box(min(xs) - 6, min(ys) - 6, max(xs) + 6, max(ys) + 6))
    return boxes


def _kept(point: XY, zone: Box) -> XY:
    """Keep a place that is far off the slab at the border of what is drawn."""
    x, y = point
    return min(max(x, zone.x0), zone.x1), min(max(y, zone.y0), zone.y1)


def _strip(points: Sequence[XY], colour: str) -> list[SvgElement]:
    """Draw a strip's width: a stroke across it with a bar at each end."""
    (x0, y0), (x1, y1) = points
    length = math.hypot(x1 - x0, y1 - y0)
    ux, uy = ((x1 - x0) / length, (y1 - y0) / length) if length else (1.0, 0.0)
    bars = [[(x - 6 * uy, y + 6 * ux), (x + 6 * uy, y - 6 * ux)] for x, y in ((x0, y0), (x1, y1))]
    return [
        element("path", d=path_of(line, closed=False), stroke=colour, stroke_width=2.4)
        for line in ([(x0, y0), (x1, y1)], *bars)
    ]


def numbers(pins: Sequence[Pin], frame: Frame, places: Places, like: Length) -> list[SvgElement]:
    """Set each pin's number down by its place, a strip's width beside it."""
    drawn = []
    for pin in pins:
        anchor = _kept(_anchor(pin, frame), frame.zone)
        width_mm = math.dist(*pin.at_mm) if pin.is_strip else None
        text = length_text(like, width_mm, frame.point) if width_mm is not None else ""
        wide = text_width(text, SMALL, bold=True) + 5 if text else 0.0
        size = 2 * _RADIUS + wide
        place = places.place(rings(anchor, _AWAY), size + 2, 2 * _RADIUS + 2)
        if place is None:
            place = anchor
        drawn += _number(pin, anchor, place, text, size)
    return drawn


def _anchor(pin: Pin, frame: Frame) -> XY:
    points = pin.at_mm[:-1] if pin.is_area else pin.at_mm
    if len(points) > 2 and not pin.is_area:
        return frame.at(points[len(points) // 2])
    x, y = (sum(p[i] for p in points) / len(points) for i in (0, 1))
    return frame.at((x, y))


def _number(pin: Pin, anchor: XY, place: XY, text: str, size: float) -> list[SvgElement]:
    """Draw one pin: its leader, its mark (square when it stops, round else) and its number."""
    colour = INK if pin.level == "note" else ACCENT
    filled = pin.level == "stops"
    centre = (place[0] - size / 2 + _RADIUS, place[1])
    if place == anchor:
        drawn = []
    else:
        line = path_of([anchor, _towards(centre, anchor)], closed=False)
        drawn = [
            element("path", d=line, stroke=colour, stroke_width=1.2),
            element("circle", cx=anchor[0], cy=anchor[1], r=2.4, fill=colour),
        ]
    drawn.append(_mark(pin, centre, colour, filled=filled))
    at = (centre[0], centre[1] + SMALL * 0.36)
    ink = PAPER if filled else colour
    drawn.append(lettered(str(pin.number), at, SMALL, anchor="middle", fill=ink, bold=True))
    if text:
        beside = (centre[0] + _RADIUS + 4, at[1])
        drawn.append(lettered(text, beside, SMALL, fill=colour, bold=True, halo=PAPER))
    return drawn


def _towards(centre: XY, anchor: XY) -> XY:
    """Return where a leader meets the rim of a mark."""
    far = math.dist(centre, anchor) or 1.0
    share = _RADIUS / far
    return (
        centre[0] + (anchor[0] - centre[0]) * share,
        centre[1] + (anchor[1] - centre[1]) * share,
    )


def _mark(pin: Pin, centre: XY, colour: str, *, filled: bool) -> SvgElement:
    """The shape shows the level without colour: a square stops, a circle does not."""
    x, y = centre
    pen: dict[str, AttributeValue] = {"fill": colour if filled else PAPER, "stroke": colour}
    named: dict[str, AttributeValue] = {"data_pin": str(pin.number), "data_level": pin.level}
    pen["stroke_width"] = 1.8
    if filled:
        side = 2 * _RADIUS - 2
        return element(
            "rect", x=x - side / 2, y=y - side / 2, width=side, height=side, rx=3, **pen, **named
        )
    dashes = "3 2" if pin.level == "note" else None
    return element("circle", cx=x, cy=y, r=_RADIUS - 1, stroke_dasharray=dashes, **pen, **named)
