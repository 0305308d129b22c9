"""The view: the slab as it will sit, lit, in its own shade, with a rule for scale."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.polygon import orient

from ledgerstone.drawing import mottle, solid, surroundings
from ledgerstone.drawing.arcs import curved_path
from ledgerstone.drawing.camera import Camera
from ledgerstone.drawing.frame import leading_length, polygons
from ledgerstone.drawing.lettering import FAMILY
from ledgerstone.drawing.saying import describe
from ledgerstone.drawing.svg import Element, document, element, number, path_of, render
from ledgerstone.drawing.tint import RGB, hex_of, lit, mixed, rgb_of
from ledgerstone.drawing.to_scale import groove_lines
from ledgerstone.order import Relief, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape

__all__ = ["draw_view"]

WIDTH = 800.0
_TALLEST = 600.0
_MARGIN = 44.0
_REST_SHARE = 0.16
_REST_MOST_MM = 380.0
_BED_MM = 40.0
_FINE = 0.16  # how far, in units, a drawn course may stray from a round one
_BUSY = 12  # openings from which on they are drawn coarser, to keep the picture light
_STOPS = 16
_FEW_STOPS = 5
_FRILLS = 260  # points of an outline above which its faces are drawn coarser too


@dataclass(frozen=True, slots=True)
class _Scene:
    """All that the parts of one view share."""

    slab: Slab
    shape: Shape
    camera: Camera
    floor_mm: float
    colour: RGB
    gloss: float
    seed: str
    prefix: str

    @property
    def is_frilly(self) -> bool:
        """Whether the outline has so many points that its faces are drawn flat."""
        return len(self.shape.outline.exterior.coords) > _FRILLS

    @property
    def is_plain(self) -> bool:
        """Whether there is little enough to draw that all of it may be drawn finely."""
        return len(self.shape.openings) <= _BUSY and not self.is_frilly

    @property
    def stops(self) -> int:
        """How many stops a face's changing light may take."""
        if self.is_frilly:
            return 1
        return _STOPS if self.is_plain else _FEW_STOPS


def draw_view(slab: Slab, shape: Shape, *, colour: str, gloss: float, seed: str, title: str) -> str:
    """Draw a slab in light as an SVG document.

    Parameters
    ----------
    colour
        The shade, ``#rrggbb``: the mean colour of the slab's top.
    gloss
        From 0, matt, to 1, polished under a film.
    seed
        Where its voids and mottling lie: the same seed, the same picture.
    title
        The picture's name.

    """
    floor = _floor_mm(slab, shape)
    camera, height = _camera(slab, shape, floor)
    digest = hashlib.blake2b(f"{seed}\x00{title}".encode("utf-8", "replace"), digest_size=4)
    scene = _Scene(
        slab=slab,
        shape=shape,
        camera=camera,
        floor_mm=floor,
        colour=rgb_of(colour),
        gloss=min(1.0, max(0.0, gloss)),
        seed=seed,
        prefix=f"view-{digest.hexdigest()}",
    )
    return render(
        document(
            (WIDTH, height),
            scene.prefix,
            title=title,
            says=describe(slab, shape),
            children=_picture(scene, height),
        )
    )


def _floor_mm(slab: Slab, shape: Shape) -> float:
    """Height of the floor: as low as the deepest drop, and under short rests."""
    depths = [edge.drop.depth.mm for edge in slab.edges.values() if edge.drop is not None]
    if slab.rests is not None:
        longest = max(shape.length_mm, shape.width_mm)
        tall = min(_REST_MOST_MM, _REST_SHARE * longest)
        depths.append(_BED_MM if slab.rests.kind == "full" else tall)
    return -shape.thickness_mm - max(depths, default=0.0)


def _camera(slab: Slab, shape: Shape, floor_mm: float) -> tuple[Camera, float]:
    """Fit the slab, its shadow and the rule into the picture; say how tall it comes out."""
    bare = Camera()
    x0, y0, x1, y1 = shape.outline.bounds
    longest = max(x1 - x0, y1 - y0)
    rod_mm, _, _ = surroundings.rod_of(leading_length(slab), longest)
    near, far = surroundings.rod_corners(shape, rod_mm, 0.03 * max(longest, rod_mm))
    points = [bare.at(x, y, z) for x in (x0, x1) for y in (y0, y1) for z in (0.0, floor_mm)]
    points += [bare.at(x, y, floor_mm) for x, y in (near, far, (far[0], near[1]))]
    points += surroundings.shadow_ends(shape, bare, floor_mm)
    low_x, high_x = min(p[0] for p in points), max(p[0] for p in points)
    low_y, high_y = min(p[1] for p in points), max(p[1] for p in points)
    per_mm = min((WIDTH - 2 * _MARGIN) / (high_x - low_x), _TALLEST / (high_y - low_y))
    left = (WIDTH - per_mm * (high_x - low_x)) / 2
    camera = Camera(per_mm, (left - per_mm * low_x, _MARGIN - per_mm * low_y))
    return camera, per_mm * (high_y - low_y) + 2 * _MARGIN + surroundings.LETTERS


def _picture(scene: _Scene, height: float) -> Iterable[Element]:
    backdrop = element(
        "rect", x=0, y=0, width=WIDTH, height=height, rx=10, fill=f"url(#{scene.prefix}-room)"
    )
    rod = surroundings.rod_of(
        leading_length(scene.slab), max(scene.shape.length_mm, scene.shape.width_mm)
    )
    about = surroundings.shadow(scene.shape, scene.camera, scene.floor_mm)
    about += surroundings.rod(scene.shape, scene.camera, scene.floor_mm, rod)
    about += surroundings.rests(scene.slab, scene.shape, scene.camera, scene.floor_mm)
    painted = _Paint(scene.prefix)
    drawn = [*_drops(scene, painted), *_solid(scene, painted)]
    yield element("defs", *_shared(scene), *painted.gradients)
    yield backdrop
    yield element("g", *about, font_family=FAMILY)
    yield element("g", *drawn)


def _shared(scene: _Scene) -> list[Element]:
    """Backdrop, mottling and sheen."""
    tilt = float(mottle.numbers(f"tilt {scene.seed}", 1)[0]) * 360
    dx, dy = (float(n) * mottle.TILE_MM for n in mottle.numbers(f"shift {scene.seed}", 2))
    tile = element(
        "pattern",
        element(
            "image",
            href=mottle.tile(scene.colour),
            width=mottle.TILE_MM,
            height=mottle.TILE_MM,
            preserveAspectRatio="none",
        ),
        id=f"{scene.prefix}-face",
        width=mottle.TILE_MM,
        height=mottle.TILE_MM,
        patternUnits="userSpaceOnUse",
        patternTransform=f"rotate({tilt:.1f}) translate({dx:.1f} {dy:.1f})",
    )
    room = _gradient(f"{scene.prefix}-room", [(0.0, "#f4f2ee", 1), (1.0, "#dcd9d3", 1)], (0, 1))
    shine = 0.34 * scene.gloss
    stops = [(0.12, "#ffffff", 0.0), (0.36, "#ffffff", 0.3 * shine), (0.48, "#ffffff", shine)]
    stops += [(0.6, "#ffffff", 0.4 * shine), (0.86, "#ffffff", 0.0)]
    sheen = _gradient(f"{scene.prefix}-sheen", stops, (1, 0.35))
    return [room, tile, sheen]


def _gradient(name: str, stops: Sequence[tuple[float, str, float]], to: XY) -> Element:
    return element(
        "linearGradient",
        *(
            element(
                "stop", offset=at, stop_color=colour, stop_opacity=None if o == 1 else f"{o:.3f}"
            )
            for at, colour, o in stops
        ),
        id=name,
        x1=0,
        y1=0,
        x2=to[0],
        y2=to[1],
    )


class _Paint:
    """Gradients made while faces are painted, to be defined once before them."""

    def __init__(self, prefix: str) -> None:
        self.prefix = prefix
        self.gradients: list[Element] = []

    def across(self, stops: Sequence[tuple[float, str]]) -> str:
        """Fill that changes from left to right at places on the sheet; plain where it can be."""
        if len({colour for _, colour in stops}) == 1:
            return stops[0][1]
        (x0, _), (x1, _) = stops[0], stops[-1]
        span = (x1 - x0) or 1.0
        name = f"{self.prefix}-{len(self.gradients)}"
        marks = [
            element("stop", offset=f"{(x - x0) / span:.4f}", stop_color=colour)
            for x, colour in stops
        ]
        self.gradients.append(
            element(
                "linearGradient",
                *marks,
                id=name,
                gradientUnits="userSpaceOnUse",
                x1=x0,
                y1=0,
                x2=x1,
                y2=0,
            )
        )
        return f"url(#{name})"


def _ribbon(ribbon: solid.Ribbon, scene: _Scene, paint: _Paint, shade: float = 1.0) -> Element:
    """Paint a run of upright faces as one piece, its light changing along it."""
    tops: list[XY] = []
    feet: list[XY] = []
    stops: list[tuple[float, str]] = []
    for face in ribbon.faces:
        for place in (face.start, face.end):
            tops.append(scene.camera.at(*place, face.top_mm))
            feet.append(scene.camera.at(*place, face.foot_mm))
        colour = lit(scene.colour, face.light * shade)
        stops += [(tops[-2][0], colour), (tops[-1][0], colour)]
    fill = paint.across(_thinned(stops, scene.stops))
    path = path_of(_once([*tops, *feet[::-1]]), places=1)
    return element("path", d=path, fill=fill, stroke=fill, stroke_width=0.6)


def _thinned(stops: list[tuple[float, str]], most: int) -> list[tuple[float, str]]:
    """Leave out stops between two of the same colour, and most of a smooth curve's."""
    if most == 1:
        return [stops[len(stops) // 2]]
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


def _drops(scene: _Scene, paint: _Paint) -> list[Element]:
    """Paint what hangs below the slab: downstands and waterfall ends."""
    thick = scene.shape.thickness_mm
    ribbons = []
    for side in scene.shape.sides:
        edge = scene.slab.edges.get(side.name)
        if edge is None or edge.drop is None:
            continue
        band = side.line.buffer(thick, single_sided=True).intersection(scene.shape.outline)
        for piece in polygons(band):
            ring = orient(piece).exterior.coords[:-1]
            ribbons += solid.hanging(ring, -thick + 1.0, -thick - edge.drop.depth.mm)
    return [_ribbon(ribbon, scene, paint) for ribbon in solid.back_to_front(ribbons)]


def _solid(scene: _Scene, paint: _Paint) -> list[Element]:
    """Paint the slab: upright faces from back to front, worked edges, then its top."""
    fine = (_FINE if scene.is_plain else _FINE * 2) / scene.camera.per_mm
    pieces = [orient(piece) for piece in polygons(scene.shape.net)]
    thick = scene.shape.thickness_mm
    rings = [
        solid.ring_of(piece.exterior.simplify(fine).coords[:-1], scene.slab, scene.shape)
        for piece in pieces
    ]
    ribbons = [r for ring in rings for r in solid.upright(ring, -thick)]
    holes = [hole.simplify(fine).coords[:-1] for piece in pieces for hole in piece.interiors]
    reliefs = _sunk(scene)
    for i, hole in enumerate(holes):
        ribbons += solid.hanging(hole, 0.0, -thick, i)
    for i, (polygon, relief) in enumerate(reliefs):
        course = polygon.exterior.simplify(fine).coords[:0:-1]
        ribbons += solid.hanging(course, 0.0, -min(relief.depth.mm, thick), len(holes) + i)
    drawn: list[Element] = []
    begun: set[int | None] = {None}
    for ribbon in solid.back_to_front(ribbons):
        if ribbon.hole not in begun and ribbon.hole is not None:
            begun.add(ribbon.hole)
            deep = ribbon.hole - len(holes)
            drawn.append(
                _down(holes[ribbon.hole], scene) if deep < 0 else _floor(*reliefs[deep], scene)
            )
        drawn.append(_ribbon(ribbon, scene, paint, 1.0 if ribbon.hole is None else 0.82))
    for ring in rings:
        drawn += [_edge_run(run, scene, paint) for run in solid.worked_edges(ring)]
    return [*drawn, *_top(scene, rings, pieces), *_arrises(scene, ribbons)]


def _sunk(scene: _Scene) -> list[tuple[Polygon, Relief]]:
    """Return the reliefs that lie wholly within the concrete, anticlockwise."""
    return [
        (orient(polygon), relief)
        for relief, polygon in zip(scene.slab.reliefs, scene.shape.reliefs, strict=True)
        if scene.shape.net.contains_properly(polygon)
    ]


def _floor(polygon: Polygon, relief: Relief, scene: _Scene) -> Element:
    """Paint the bottom of a relief, and its grooves."""
    path = curved_path(polygon.exterior.coords[:-1])
    drawn = [element("path", d=path, fill=lit(scene.colour, 0.93))]
    lines = groove_lines(polygon, relief)
    if lines:
        path = "".join(path_of(line, closed=False) for line in lines)
        wide = 2.4 / scene.camera.per_mm
        drawn.append(element("path", d=path, stroke=lit(scene.colour, 0.66), stroke_width=wide))
    transform = scene.camera.plane(-min(relief.depth.mm, scene.shape.thickness_mm))
    return element("g", *drawn, transform=transform)


def _down(ring: Sequence[Sequence[float]], scene: _Scene) -> Element:
    """Paint the dark that is seen down an opening."""
    points = [scene.camera.at(p[0], p[1], 0.0) for p in ring]
    return element(
        "path", d=path_of(points, places=1), fill=mixed(scene.colour, (24, 21, 17), 0.86)
    )


def _edge_run(run: Sequence[solid.Strip], scene: _Scene, paint: _Paint) -> Element:
    """Paint a run of worked edge; a sheen makes it catch the light."""
    lower, upper, stops = [], [], []
    for strip in run:
        a, b, c, d = (scene.camera.at(*corner) for corner in strip.corners)
        lower += [a, b]
        upper += [d, c]
        light = strip.light * (1.0 + 0.28 * scene.gloss * strip.light) + 0.04
        colour = lit(scene.colour, light)
        stops += [(a[0], colour), (b[0], colour)]
    if stops[0][0] > stops[-1][0]:
        stops.reverse()
    fill = paint.across(_thinned(stops, _STOPS))
    path = path_of(_once([*lower, *upper[::-1]]), places=1)
    return element("path", d=path, fill=fill, stroke=fill, stroke_width=0.5)


def _top(scene: _Scene, rings: list[solid.Ring], pieces: list[Polygon]) -> list[Element]:
    """Paint the top in plane millimetres: its shade, its mottling, its voids and its sheen."""
    places = 1 if scene.is_frilly else 2
    path = "".join(curved_path(solid.top_ring(ring), places) for ring in rings)
    path += "".join(curved_path(ring.coords[:-1]) for p in pieces for ring in p.interiors)
    path += "".join(curved_path(polygon.exterior.coords[:-1]) for polygon, _ in _sunk(scene))
    base = hex_of(scene.colour)
    faces = [
        element("path", d=path, fill=base, fill_rule="evenodd", data_part="top"),
        element("path", d=path, fill=f"url(#{scene.prefix}-face)", fill_rule="evenodd"),
        *_voids(scene),
    ]
    if scene.gloss > 0.05 and scene.is_plain:
        sheen = f"url(#{scene.prefix}-sheen)"
        faces.append(element("path", d=path, fill=sheen, fill_rule="evenodd"))
    return [element("g", *faces, transform=scene.camera.plane(0.0), data_unit="mm")]


def _voids(scene: _Scene) -> list[Element]:
    """Dot the voids, as round-ended strokes of no length, by size."""
    net: Polygon | MultiPolygon = scene.shape.net
    thrown = mottle.voids(net, scene.slab.finish.surface, scene.seed)
    dark = mixed(scene.colour, (20, 17, 13), 0.5)
    least = 1.1 / scene.camera.per_mm
    drawn = []
    for low, high in ((0.0, 2.2), (2.2, 3.4), (3.4, 9.0)):
        sized = [place for place, width in thrown if low <= width < high]
        if sized:
            path = "".join(f"M{number(round(x, 1))} {number(round(y, 1))}h0" for x, y in sized)
            drawn.append(
                element(
                    "path",
                    d=path,
                    stroke=dark,
                    stroke_width=max(least, (low + high) / 2),
                    stroke_linecap="round",
                    stroke_opacity=0.8,
                    fill="none",
                )
            )
    return drawn


def _arrises(scene: _Scene, ribbons: Sequence[solid.Ribbon]) -> list[Element]:
    """Run a thin light along each arris of an opening's rim that catches it."""
    light = mixed(scene.colour, (255, 255, 255), 0.4)
    path = ""
    for ribbon in ribbons:
        if ribbon.hole is None:
            continue
        places = [face.start for face in ribbon.faces] + [ribbon.faces[-1].end]
        path += path_of([scene.camera.at(*place, 0.0) for place in places], closed=False, places=1)
    if not path:
        return []
    return [
        element("path", d=path, fill="none", stroke=light, stroke_width=0.9, stroke_opacity=0.7)
    ]
