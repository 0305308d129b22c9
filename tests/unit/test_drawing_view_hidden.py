"""What stands in front hides what stands behind: rays against what is painted last."""

import dataclasses

import numpy as np
import pytest
import shapely
from shapely.geometry import Point, Polygon
from shapely.geometry.polygon import orient

from ledgerstone.drawing import mottle, solid
from ledgerstone.drawing.camera import Camera
from ledgerstone.drawing.covering import back_to_front
from ledgerstone.order import CORNERS, Edge, Rectangle, Slab
from ledgerstone.outline import side_names
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape, shape_of
from ledgerstone.workshop import Workshop
from support.drawn_slabs import (
    disc,
    elbow,
    made,
    oblong,
)


def sharp(slab: Slab) -> Slab:
    """Leave every edge sharp, so that what is seen can be worked out exactly."""
    return dataclasses.replace(
        slab, edges={name: Edge("wall") for name in side_names(slab.outline)}, reliefs=()
    )


def painted(slab: Slab, shape: Shape) -> list[solid.Ribbon]:
    """Return the upright faces in the order in which they are painted."""
    thick, ribbons = shape.thickness_mm, []
    for piece in (orient(p) for p in shapely.get_parts(shape.net)):
        ring = solid.ring_of(piece.exterior.coords[:-1], slab, shape)
        plain = solid.worked(Edge("wall"), thick)
        ring = dataclasses.replace(ring, edges=(plain,) * len(ring.points))
        ribbons += solid.upright(ring, -thick)
        for hole in piece.interiors:
            ribbons += solid.hanging(hole.coords[:-1], 0.0, -thick)
    return back_to_front(ribbons)


def covered_by(face: solid.Face, camera: Camera) -> Polygon:
    """Return what a face covers on the sheet."""
    corners = [(face.start, face.top_mm), (face.end, face.top_mm)]
    corners += [(face.end, face.foot_mm), (face.start, face.foot_mm)]
    return Polygon([camera.at(*place, z) for place, z in corners])


def ray_hits(
    shape: Shape, place: tuple[float, float], camera: Camera
) -> tuple[float, float] | None:
    """Follow a ray of sight down from a place in the top's plane to where it enters concrete.

    Going down by dz the ray goes away from the eye by dz over the tangent of the eye's rise:
    found here from the projection itself, as the plane step that a step down is seen to equal.
    """
    (x0, y0), (x1, y1), (x2, y2) = camera.at(0, 0, 0), camera.at(1, 0, 0), camera.at(0, 1, 0)
    down = camera.at(0, 0, -1)
    columns = np.array([[x1 - x0, x2 - x0], [y1 - y0, y2 - y0]])
    step = np.linalg.solve(columns, [x0 - down[0], y0 - down[1]])
    depths = np.linspace(0, shape.thickness_mm, 400)
    xs, ys = place[0] + step[0] * depths, place[1] + step[1] * depths
    inside = np.flatnonzero(shapely.contains_xy(shape.net, xs, ys))
    return (float(xs[inside[0]]), float(ys[inside[0]])) if len(inside) else None


SEEN = {
    **{f"L {corner}": elbow(corner) for corner in CORNERS},
    "a hole near the front": made(
        Rectangle(Length.of_mm(600), Length.of_mm(300)),
        disc(60, 300, 40),
        oblong("rectangle", (120, 80), (480, 60)),
        thickness=60,
    ),
    "a hole at the edge": made(
        Rectangle(Length.of_mm(600), Length.of_mm(300)),
        oblong("rectangle", (120, 100), (200, 60), open_to="front"),
        oblong("rectangle", (80, 90), (540, 200), open_to="right"),
        oblong("rectangle", (90, 60), (400, 270), open_to="back"),
        thickness=60,
    ),
}


@pytest.mark.parametrize("name", SEEN)
def test_what_is_painted_last_is_what_is_seen(name: str, workshop: Workshop) -> None:
    """At 1 500 places on the sheet, the last face painted is the one that a ray of sight meets."""
    slab = sharp(SEEN[name])
    shape, camera = shape_of(slab, workshop), Camera()
    faces = [face for ribbon in painted(slab, shape) for face in ribbon.faces]
    covers = np.array([covered_by(face, camera) for face in faces])
    edges = shapely.union_all([*shapely.boundary(covers)])
    x0, y0, x1, y1 = shape.outline.bounds
    met = {"top": 0, "face": 0, "nothing": 0}
    for a, b in mottle.numbers(name, 3000).reshape(1500, 2):
        place = (x0 - 80 + a * (x1 - x0 + 160), y0 - 80 + b * (y1 - y0 + 160))
        spot = Point(camera.at(*place, 0.0))
        if edges.distance(spot) < 0.6 or shape.net.boundary.distance(Point(place)) < 0.6:
            continue
        if shape.net.covers(Point(place)):
            met["top"] += 1  # the top is painted after all faces
            continue
        over = np.flatnonzero(shapely.covers(covers, spot))
        hit = ray_hits(shape, place, camera)
        met["nothing" if hit is None else "face"] += 1
        assert (hit is None) == (len(over) == 0)
        if hit is not None:
            last = faces[over[-1]]
            assert shapely.LineString([last.start, last.end]).distance(Point(hit)) < 1.0
    assert met["top"] > 300
    assert met["face"] > 15
    assert met["nothing"] > 50


def test_a_rectangle_shows_its_front_and_its_right(workshop: Workshop) -> None:
    """Of a plain slab's four upright faces the front and the right are seen, the front brighter."""
    slab = sharp(made(Rectangle(Length.of_mm(900), Length.of_mm(400))))
    (ribbon,) = painted(slab, shape_of(slab, workshop))
    front, right = ribbon.faces
    assert (front.start, front.end) == ((0.0, 0.0), (900.0, 0.0))
    assert (right.start, right.end) == ((900.0, 0.0), (900.0, 400.0))
    assert 1 > front.light > right.light > 0
