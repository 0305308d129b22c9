"""A reader that takes a drawing's shapes and texts back out of its SVG."""

import math
import re
from collections.abc import Iterator
from xml.etree import ElementTree as ET

from shapely.geometry import Polygon as Area

from ledgerstone.outline import XY

SVG = "{http://www.w3.org/2000/svg}"
_WORD = re.compile(r"([MLAaZhv])|(-?\d*\.?\d+)")


def rings_of(path: str) -> Iterator[list[XY]]:
    """Points of each closed course of path data; arcs in steps of half a degree."""
    words = [match.group() for match in _WORD.finditer(path)]
    ring: list[XY] = []
    place, verb = 0, ""
    while place < len(words):
        if words[place].isalpha():
            verb = words[place]
            place += 1
        if verb == "Z":
            yield ring
            ring = []
        elif verb in "ML":
            ring.append((float(words[place]), float(words[place + 1])))
            place += 2
        elif verb in "Aa":
            radius, large, sweep = float(words[place]), words[place + 3], words[place + 4]
            x, y = float(words[place + 5]), float(words[place + 6])
            end = (ring[-1][0] + x, ring[-1][1] + y) if verb == "a" else (x, y)
            ring += _arc(ring[-1], end, radius, large=large == "1", sweep=sweep == "1")
            place += 7
        else:
            raise ValueError(verb)


def _arc(start: XY, end: XY, radius: float, *, large: bool, sweep: bool) -> list[XY]:
    """Follow an arc by its end points (SVG 1.1, F.6.5, for a circle)."""
    (x0, y0), (x1, y1) = start, end
    half = math.dist(start, end) / 2
    radius = max(radius, half)
    away = math.sqrt(max(0.0, radius**2 - half**2)) * (1 if large == sweep else -1)
    ux, uy = (x1 - x0) / (2 * half), (y1 - y0) / (2 * half)
    cx, cy = (x0 + x1) / 2 + away * uy, (y0 + y1) / 2 - away * ux
    first = math.atan2(y0 - cy, x0 - cx)
    turn = (math.atan2(y1 - cy, x1 - cx) - first) % (2 * math.pi)
    turn = turn if sweep else turn - 2 * math.pi
    steps = max(1, math.ceil(abs(math.degrees(turn)) * 2))
    angles = [first + turn * i / steps for i in range(1, steps)]
    return [*((cx + radius * math.cos(a), cy + radius * math.sin(a)) for a in angles), end]


def read(svg: str) -> ET.Element:
    """Read a drawing back as XML."""
    return ET.fromstring(svg)  # noqa: S314 - our own drawing, written a moment ago


def area_of(element: ET.Element) -> Area:
    """Return what a circle or a path covers, in the drawing's own numbers."""
    if element.tag == f"{SVG}circle":
        x, y, r = (float(element.attrib[name]) for name in ("cx", "cy", "r"))
        angles = [math.tau * i / 720 for i in range(720)]
        return Area([(x + r * math.cos(a), y + r * math.sin(a)) for a in angles])
    return Area(next(rings_of(element.attrib["d"])))


def texts(root: ET.Element) -> list[str]:
    """Every text that is drawn."""
    return ["".join(node.itertext()) for node in root.iter(f"{SVG}text")]
