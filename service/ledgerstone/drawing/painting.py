"""Painting a face: one piece for a run of faces, its light changing along it."""

from __future__ import annotations

from collections.abc import Sequence

from ledgerstone.drawing import solid
from ledgerstone.drawing.arrises import EdgeFacet
from ledgerstone.drawing.scene import Scene
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.drawing.tint import lit
from ledgerstone.outline import XY


class Paint:
    """Gradients made while faces are painted, to be defined once before them."""

    def __init__(self, prefix: str) -> None:
        self.prefix = prefix
        self.gradients: list[SvgElement] = []

    def across(self, stops: Sequence[tuple[float, str]], way: XY) -> str:
        """Fill that changes along a way, at places in sheet units; one colour where it can be."""
        if len({colour for _, colour in stops}) == 1:
            return stops[0][1]
        (first, _), (last, _) = stops[0], stops[-1]
        span = (last - first) or 1.0
        name = f"{self.prefix}-{len(self.gradients)}"
        marks = [
            element("stop", offset=f"{(place - first) / span:.4f}", stop_color=colour)
            for place, colour in stops
        ]
        self.gradients.append(
            element(
                "linearGradient",
                *marks,
                id=name,
                gradientUnits="userSpaceOnUse",
                x1=first * way[0],
                y1=first * way[1],
                x2=last * way[0],
                y2=last * way[1],
            )
        )
        return f"url(#{name})"


def ribbon_path(ribbon: solid.Ribbon, scene: Scene, paint: Paint, shade: float = 1.0) -> SvgElement:
    """Paint a run of upright faces as one path, its light changing along it.

    ``shade`` multiplies that light, a pure number.
    """
    ends = [
        (place, top_mm, face.foot_mm)
        for face in ribbon.faces
        for place, top_mm in zip((face.start, face.end), face.tops_mm, strict=True)
    ]
    tops = scene.camera.all_at((x, y, top_mm) for (x, y), top_mm, _ in ends)
    feet = scene.camera.all_at((x, y, foot_mm) for (x, y), _, foot_mm in ends)
    fill = _fill(tops, [face.light * shade for face in ribbon.faces], scene, paint)
    path = path_of(_once([*tops, *feet[::-1]]), places=1)
    return element("path", d=path, fill=fill, stroke=fill, stroke_width=0.6)


def _fill(places: Sequence[XY], lights: Sequence[float], scene: Scene, paint: Paint) -> str:
    """Fill a run of faces by the light of each; ``places`` are its ends, two a face."""
    way, most = scene.camera.across, scene.stops
    if _along(places[0], way) > _along(places[-1], way):
        places, lights = places[::-1], lights[::-1]
    if most == 1:
        return lit(scene.colour, lights[len(lights) // 2])
    colours = [colour for light in lights for colour in [lit(scene.colour, light)] * 2]
    stops = [(_along(at, way), colour) for at, colour in zip(places, colours, strict=True)]
    return paint.across(_thinned(stops, most), way)


def _along(point: XY, way: XY) -> float:
    """How far along a way on the sheet a point lies."""
    return point[0] * way[0] + point[1] * way[1]


def _thinned(stops: list[tuple[float, str]], most: int) -> list[tuple[float, str]]:
    """Leave out stops between two of the same colour, and most of a smooth curve's."""
    if len(stops) > most:
        every = -(-len(stops) // most)
        stops = [*stops[:-1:every], stops[-1]]
    return [
        stop
        for i, stop in enumerate(stops)
        if not 0 < i < len(stops) - 1 or not stops[i - 1][1] == stop[1] == stops[i + 1][1]
    ]


def _once(points: list[XY]) -> list[XY]:
    """Leave out points that repeat the one before."""
    return [p for i, p in enumerate(points) if i == 0 or p != points[i - 1]]


def edge_path(run: Sequence[EdgeFacet], scene: Scene, paint: Paint) -> SvgElement:
    """Paint a run of worked edge; a sheen makes it catch the light."""
    corners = scene.camera.all_at(corner for strip in run for corner in strip.corners)
    lower = [at for i in range(0, len(corners), 4) for at in corners[i : i + 2]]
    upper = [at for i in range(0, len(corners), 4) for at in (corners[i + 3], corners[i + 2])]
    lights = [s.light * (1.0 + 0.28 * scene.gloss * s.light) + 0.04 for s in run]
    fill = _fill(lower, lights, scene, paint)
    path = path_of(_once([*lower, *upper[::-1]]), places=1)
    return element("path", d=path, fill=fill, stroke=fill, stroke_width=0.5)
