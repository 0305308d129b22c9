"""The slab's faces in the order of painting: drops, upright faces, openings, edges and the top."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import shapely
from shapely.geometry import LineString, MultiPolygon, Polygon
from shapely.geometry.polygon import orient

from ledgerstone import plane
from ledgerstone.drawing import arrises, fittings, mottle, rebates, solid
from ledgerstone.drawing.arcs import curved, curved_path, written
from ledgerstone.drawing.camera import LEVEL
from ledgerstone.drawing.covering import back_to_front
from ledgerstone.drawing.frame import course_of, ring_points, simpler
from ledgerstone.drawing.joining import straight
from ledgerstone.drawing.painting import Paint, edge_path, ribbon_path
from ledgerstone.drawing.scene import Scene
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.drawing.tint import DARK, hex_of, lit, mixed
from ledgerstone.drawing.to_scale import groove_lines
from ledgerstone.order import Relief
from ledgerstone.shape import Opening

_SHADED: Final = 0.82  # a face within a hollow, against the same face outside


def drops(scene: Scene, paint: Paint) -> list[SvgElement]:
    """Paint what hangs below the slab: downstands and waterfall ends."""
    thick, pose = scene.shape.thickness_mm, scene.camera.pose
    ribbons = []
    for side in scene.shape.sides:
        edge = scene.slab.edges.get(side.name)
        if edge is None or edge.drop is None:
            continue
        line = LineString(straight(side, scene.shape)) if scene.shape.corners else side.line
        band = plane.intersection(plane.buffer(line, thick, single_sided=True), scene.shape.outline)
        for piece in plane.polygons_in(band):
            ring = course_of(orient(piece).exterior)
            ribbons += solid.hanging(ring, -thick + 1.0, -thick - edge.drop.depth.mm, pose=pose)
    return [ribbon_path(ribbon, scene, paint) for ribbon in back_to_front(ribbons, pose)]


def slab(scene: Scene, paint: Paint) -> list[SvgElement]:
    """Paint the slab from its foot up: what rebates at its edges leave, then the rest of it."""
    drawn: list[SvgElement] = []
    foot_mm = -scene.shape.thickness_mm
    shelves = rebates.shelves(scene)
    for shelf in shelves:
        drawn += rebates.draw_shelf(shelf, foot_mm, scene, paint)
        foot_mm = shelf.level_mm
    return drawn + _upper(scene, paint, foot_mm)


def _upper(scene: Scene, paint: Paint, foot_mm: float) -> list[SvgElement]:
    """Paint the upper part of the slab: upright faces from back to front, worked edges, its top."""
    pieces = [orient(piece) for piece in plane.polygons_in(rebates.whole(scene))]
    drawn_as = [_as_drawn(piece, scene) for piece in pieces]
    outer = [course_of(piece.exterior) for piece in drawn_as]
    rings = [solid.ring_of(course, scene.slab, scene.shape) for course in outer]
    hollows = _hollows(scene, pieces, drawn_as)
    pose = scene.camera.pose
    ribbons = [r for ring in rings for r in solid.upright(ring, foot_mm, pose)]
    for i, hollow in enumerate(hollows):
        ribbons += solid.hanging(hollow.course, 0.0, -hollow.depth_mm, i, pose=pose)
    drawn: list[SvgElement] = []
    begun: set[int] = set()
    for ribbon in back_to_front(ribbons, pose):
        if ribbon.hole is not None and ribbon.hole not in begun:
            begun.add(ribbon.hole)
            drawn += _bottom(hollows[ribbon.hole], scene, paint)
        drawn.append(ribbon_path(ribbon, scene, paint, 1.0 if ribbon.hole is None else _SHADED))
    for ring in rings:
        drawn += [edge_path(run, scene, paint) for run in arrises.worked_edges(ring, pose)]
    concrete = MultiPolygon(drawn_as) if scene.has_many_points else scene.shape.net
    return [*drawn, *_top(scene, rings, pieces, concrete), *_arrises(scene, ribbons)]


def _how_near(opening: Opening) -> float:
    middle = opening.polygon.centroid
    return -LEVEL.seen((middle.x, middle.y))[1]


def _as_drawn(piece: Polygon, scene: Scene) -> Polygon:
    courses = (simpler(ring, scene.fine_mm) for ring in (piece.exterior, *piece.interiors))
    shell, *holes = (shapely.get_coordinates(course) for course in courses)
    return Polygon(shell, holes)


@dataclass(frozen=True, slots=True)
class _Hollow:
    """A hollow seen from above: an opening, or a relief with its floor; its course clockwise."""

    course: Sequence[Sequence[float]]
    depth_mm: float
    opening: Opening | None = None
    sunk: tuple[Polygon, Relief] | None = None


def _hollows(scene: Scene, pieces: Sequence[Polygon], drawn_as: Sequence[Polygon]) -> list[_Hollow]:
    fine, thick = scene.fine_mm, scene.shape.thickness_mm
    by_bounds = {o.polygon.bounds: o for o in reversed(scene.shape.openings)}
    openings = [
        _Hollow(course_of(drawn), thick, opening)
        for piece, as_drawn in zip(pieces, drawn_as, strict=True)
        for hole, drawn in zip(piece.interiors, as_drawn.interiors, strict=True)
        for opening in [by_bounds.get(hole.bounds)]  # None: several have run into one
        if opening is None or not _is_under_glass(opening, scene)
    ]
    reliefs = [
        _Hollow(
            shapely.get_coordinates(simpler(polygon.exterior, fine))[:0:-1].tolist(),
            min(relief.depth.mm, thick),
            sunk=(polygon, relief),
        )
        for polygon, relief in rebates.sunk(scene)
    ]
    return openings + reliefs


def _is_under_glass(opening: Opening, scene: Scene) -> bool:
    covered = scene.slab.cutouts[opening.index].rim == "covered"
    return covered and scene.fittings.get(opening.index) == "hob"


def _bottom(hollow: _Hollow, scene: Scene, paint: Paint) -> list[SvgElement]:
    """Paint what is seen down a hollow: a bowl, what lies in the shade, or a relief's floor."""
    if hollow.sunk is not None:
        return [_floor(*hollow.sunk, scene)]
    opening = hollow.opening
    if opening is not None and scene.fittings.get(opening.index) == "bowl":
        name = f"{scene.prefix}-bowl-{opening.index}"
        drawn, shared = fittings.bowl(opening.polygon, scene.camera, hollow.depth_mm, name)
        paint.gradients += shared
        return drawn
    points = [scene.camera.at(p[0], p[1], 0.0) for p in hollow.course]
    path = path_of(points, places=1)
    return [element("path", d=path, fill=f"url(#{scene.prefix}-deep)")]


def fitted(scene: Scene, paint: Paint) -> list[SvgElement]:
    """Paint what stands on the top: rims of bowls, hobs and taps, from back to front."""
    drawn: list[SvgElement] = []
    shown = [o for o in scene.shape.openings if o.index in scene.fittings]
    for opening in sorted(shown, key=_how_near):
        cutout, fitting = scene.slab.cutouts[opening.index], scene.fittings[opening.index]
        if fitting == "hob":
            name = f"{scene.prefix}-hob-{opening.index}"
            glass, gradient = fittings.hob(
                opening.polygon, scene.camera, name, is_flush=cutout.rim != "covered"
            )
            paint.gradients.append(gradient)
            drawn += glass
        elif fitting == "tap":
            drawn += fittings.tap(scene.slab, scene.shape, opening.index, scene.camera)
        elif cutout.rim == "covered":
            drawn += fittings.rim(opening.polygon, scene.camera)
    return drawn


def _floor(polygon: Polygon, relief: Relief, scene: Scene) -> SvgElement:
    """Paint the bottom of a relief, and its grooves."""
    path = curved_path(ring_points(polygon.exterior))
    drawn = [element("path", d=path, fill=lit(scene.face, 0.93))]
    lines = groove_lines(polygon, relief)
    if lines:
        path = "".join(path_of(line, closed=False) for line in lines)
        wide = 2.4 / scene.camera.per_mm
        drawn.append(element("path", d=path, stroke=lit(scene.face, 0.66), stroke_width=wide))
    transform = scene.camera.plane(-min(relief.depth.mm, scene.shape.thickness_mm))
    return element("g", *drawn, transform=transform)


def _top(
    scene: Scene,
    rings: list[solid.Ring],
    pieces: list[Polygon],
    concrete: Polygon | MultiPolygon,
) -> list[SvgElement]:
    """Paint the top: its shade, its mottling, its voids and its sheen.

    The mottling alone is painted in the sheet's own units: a renderer lays a pattern that is not
    turned without asking four neighbours for each dot, in a fifth of the time.
    """
    places = 1 if scene.has_many_points or scene.is_full else 2
    courses = [curved(arrises.top_ring(ring)) for ring in rings]
    courses += [curved(ring_points(ring)) for piece in pieces for ring in piece.interiors]
    courses += [curved(ring_points(sunk.exterior)) for sunk, _ in rebates.sunk(scene)]
    path = "".join(written(course, places) for course in courses)
    seen = "".join(written(course, places, scene.camera) for course in courses)
    top = {"d": path, "fill_rule": "evenodd"}
    over = _voids(scene, concrete)
    if scene.gloss > 0.05 and scene.is_plain and scene.is_level:
        over.append(element("path", fill=f"url(#{scene.prefix}-sheen)", **top))
    plane = {"transform": scene.camera.plane(0.0), "data_unit": "mm"}
    base = element("path", fill=hex_of(scene.face), data_part="top", **top)
    face = element("path", d=seen, fill=f"url(#{scene.prefix}-face)", fill_rule="evenodd")
    return [element("g", base, **plane), face, element("g", *over, **plane)]


def _voids(scene: Scene, concrete: Polygon | MultiPolygon) -> list[SvgElement]:
    """Dot the voids of a top, as round-ended strokes of no length, by size."""
    edges = scene.slab.edges.values()
    worked_mm = max((edge.size.mm for edge in edges if edge.size is not None), default=0.0)
    net, surface = rebates.untouched(concrete, scene.shape), scene.slab.finish.surface
    thrown = mottle.voids(net, surface, scene.seed, worked_mm)
    dark = mixed(scene.face, DARK, 0.5)
    least = 1.1 / scene.camera.per_mm
    drawn = []
    for low, high in ((0.0, 2.2), (2.2, 3.4), (3.4, 9.0)):
        sized = [place for place, width in thrown if low <= width < high]
        if sized:
            path = "".join(f"M{x:.0f}{'' if round(y) < 0 else ' '}{y:.0f}h0" for x, y in sized)
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


def _arrises(scene: Scene, ribbons: Sequence[solid.Ribbon]) -> list[SvgElement]:
    """Run a thin light along each arris of an opening's rim that catches it."""
    light = mixed(scene.face, (255, 255, 255), 0.4)
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
