"""Meshes of ordinary and awkward slabs."""

from __future__ import annotations

import time

import numpy as np
import pytest
import shapely
from shapely.affinity import rotate
from shapely.geometry import LineString, Point, Polygon, box

from ledgerstone.strength import OutlineUnusableError
from ledgerstone.strength.mesh import MAX_NODES, mesh_of
from support.one_piece import less, one_piece

SMALLEST_ANGLE = 16.0  # degrees, stated; an outline that turns sharper itself is named below
SHARP = {"jag200": 10.0}  # two hundred spikes of twelve degrees


def circle(x: float, y: float, diameter: float) -> Polygon:
    """A disc."""
    return Point(x, y).buffer(diameter / 2, quad_segs=16)


def ring(waves: int, depth: float, count: int = 200) -> Polygon:
    """A wavy disc of many vertices."""
    turn = np.linspace(0, 2 * np.pi, count, endpoint=False)
    reach = 600 + depth * np.cos(waves * turn + 0.01)
    return Polygon(np.column_stack([1000 + reach * np.cos(turn), 800 + reach * np.sin(turn)]))


def with_taps(slab: Polygon, count: int) -> Polygon:
    """The slab with a row of tap holes."""
    for i in range(count):
        slab = less(slab, circle(120 + i * 112, 560 - (i % 3) * 120, 35))
    return slab


def with_turned_boxes(slab: Polygon) -> Polygon:
    """The slab with five turned openings."""
    for x in (300, 700, 1100, 1500, 1800):
        slab = less(slab, rotate(box(x - 80, 200, x + 80, 400), 37))
    return slab


L = Polygon([(0, 0), (2400, 0), (2400, 620), (620, 620), (620, 1800), (0, 1800)])
BENCH = box(0, 0, 2000, 650)
GALLERY = {
    "plain": box(0, 0, 600, 600),
    "long": box(0, 0, 3000, 620),
    "hob": less(BENCH, circle(1000, 325, 440)),
    "two basins": less(BENCH, circle(550, 300, 400), circle(1450, 300, 400)),
    "L": L,
    "L with a sink": less(L, box(1200, 60, 1760, 560).buffer(-20).buffer(20)),
    "twenty taps": with_taps(box(0, 0, 2400, 620), 20),
    "strip of 3": less(box(0, 0, 2000, 600), box(500, 3, 1400, 500)),
    "strip of 12": less(box(0, 0, 2000, 600), box(500, 12, 1400, 500)),
    "strips of 40": less(box(0, 0, 2000, 600), box(500, 40, 1400, 560)),
    "round": circle(600, 600, 1200),
    "star200": ring(9, 120),
    "jag200": ring(100, 90),
    "apron": less(BENCH, box(600, -5, 1400, 450)),
    "rounded": less(box(50, 50, 1950, 600).buffer(50), box(800, 150, 1300, 480).buffer(30)),
    "skew": Polygon([(0, 0), (2000, 0), (2000, 600), (60, 600)]),
    "tri": Polygon([(0, 0), (2000, 0), (0, 350)]),
    "wedge": less(box(0, 0, 2000, 600), Polygon([(700, 600), (710, 600), (705, 200)])),
    "slot": less(box(0, 0, 1500, 500), LineString([(300, 250), (900, 250)]).buffer(30)),
    "turned boxes": with_turned_boxes(BENCH),
    "diamond": less(box(0, 0, 1800, 600), rotate(box(820, 120, 1180, 480), 45)),
    "tiny": box(0, 0, 120, 60),
    "narrow": box(0, 0, 2500, 60),
}


@pytest.mark.parametrize("name", GALLERY)
def test_an_awkward_outline_gets_good_triangles_and_keeps_its_edges(name: str) -> None:
    """No angle under 16 degrees, every boundary step an edge, the area covered, 2000 nodes."""
    mesh = mesh_of(GALLERY[name], thickness_mm=40)
    assert mesh.smallest_angle_degrees() >= SHARP.get(name, SMALLEST_ANGLE)
    assert len(mesh.nodes) <= MAX_NODES
    corners = mesh.nodes[mesh.triangles]
    u, v = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    twice = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    assert twice.min() > 0.0
    assert twice.sum() / 2 == pytest.approx(mesh.polygon.area, rel=1e-6)
    edges = {
        frozenset(pair)
        for t in mesh.triangles.tolist()
        for pair in ((t[0], t[1]), (t[1], t[2]), (t[2], t[0]))
    }
    assert all(frozenset(step) in edges for step in mesh.steps.tolist())


@pytest.mark.parametrize("name", GALLERY)
def test_the_meshed_outline_is_the_slab_within_two_in_a_hundred(name: str) -> None:
    """Sharpened corners, octagons and dropped slivers change the area by less than 2 %."""
    mesh = mesh_of(GALLERY[name], thickness_mm=40)
    assert mesh.polygon.area == pytest.approx(GALLERY[name].area, rel=0.02)


def test_the_same_outline_gives_the_same_mesh() -> None:
    """Meshing is deterministic to the last digit."""
    one, two = (mesh_of(GALLERY["hob"], thickness_mm=40) for _ in range(2))
    assert np.array_equal(one.nodes, two.nodes)
    assert np.array_equal(one.triangles, two.triangles)


def test_a_tap_hole_becomes_the_octagon_around_it() -> None:
    """A 35 mm hole is meshed as an octagon that contains it."""
    mesh = mesh_of(less(box(0, 0, 600, 600), circle(300, 300, 35)), thickness_mm=40)
    hole = Polygon(mesh.polygon.interiors[0])
    assert len(hole.exterior.coords) == 9
    assert hole.buffer(0.1).contains(circle(300, 300, 35))


def test_a_rounded_corner_of_an_opening_becomes_sharp() -> None:
    """A sink's 30 mm corners are meshed square, which makes the opening larger, never smaller."""
    sink = box(800, 150, 1300, 480).buffer(-30).buffer(30)
    mesh = mesh_of(less(box(0, 0, 2000, 600), sink), thickness_mm=40)
    hole = Polygon(mesh.polygon.interiors[0])
    assert len(hole.exterior.coords) == 5
    assert hole.buffer(0.2).contains(sink)


def test_a_zones_edge_is_kept_as_edges() -> None:
    """A drainer's outline is made of triangle edges."""
    zone = box(1200, 100, 1600, 500)
    mesh = mesh_of(one_piece(GALLERY["plain"].union(BENCH)), thickness_mm=40, zones=[zone])
    middle = mesh.nodes[mesh.triangles].mean(axis=1)
    inside = shapely.contains_xy(zone, middle[:, 0], middle[:, 1])
    corners = mesh.nodes[mesh.triangles[inside]]
    assert all(zone.buffer(1e-6).contains(Polygon(c)) for c in corners)


def test_a_rounded_corner_of_a_zone_becomes_sharp() -> None:
    """A recess whose corners are rounded by 2 mm has one node at each, not seventeen."""
    sharp = box(225, 439, 352, 600)
    zone = sharp.buffer(-2).buffer(2, quad_segs=16)
    mesh = mesh_of(box(0, 0, 522, 644), thickness_mm=40, zones=[zone])
    for corner in list(sharp.exterior.coords)[:4]:
        near = np.hypot(*(mesh.nodes - corner).T) < 3.0
        assert near.sum() == 1


def test_a_slab_that_falls_in_two_at_a_thin_strip_is_named() -> None:
    """A 4 mm neck carries nothing, and what it joined is two pieces."""
    neck = box(0, 0, 900, 600).union(box(900, 300, 1000, 304)).union(box(1000, 0, 2000, 600))
    with pytest.raises(OutlineUnusableError) as raised:
        mesh_of(one_piece(neck), thickness_mm=40)
    assert raised.value.pieces == 2


@pytest.mark.parametrize(
    "outline", [Polygon(), Polygon([(0, 0), (10, 10), (10, 0), (0, 10)]), box(0, 0, 0.5, 0.5)]
)
def test_an_outline_that_encloses_nothing_plain_is_refused(outline: Polygon) -> None:
    """Empty, self-crossing and vanishing outlines raise the typed error, nothing else."""
    with pytest.raises(OutlineUnusableError):
        mesh_of(outline, thickness_mm=40)


def test_the_worst_of_the_gallery_still_meshes_in_time() -> None:
    """Two hundred spikes take no more than three seconds of processor time."""
    start = time.process_time()
    mesh_of(GALLERY["jag200"], thickness_mm=40)
    assert time.process_time() - start < 3.0


def test_a_place_is_found_in_its_triangle() -> None:
    """Area coordinates give the place back; outside is -1."""
    mesh = mesh_of(GALLERY["hob"], thickness_mm=40)
    places = np.array([[100.0, 100.0], [1500.0, 620.0], [1000.0, 325.0], [-5.0, 0.0]])
    triangle, share = mesh.located(places)
    assert (triangle[:2] >= 0).all()
    assert (triangle[2:] == -1).all()
    back = np.einsum("kc,kci->ki", share[:2], mesh.nodes[mesh.triangles[triangle[:2]]])
    assert back == pytest.approx(places[:2])


def test_the_mesh_has_nodes_at_and_round_the_places_about_which_an_overhang_turns() -> None:
    """One at each and others within 15 mm, apart from those of its neighbour, none off the slab."""
    ends = ((200.0, 100.0), (218.0, 100.0), (200.0, 100.0), (0.0, 300.0))
    mesh = mesh_of(box(0, 0, 900, 500), thickness_mm=40, turning=ends)
    away = np.hypot(*(mesh.nodes[:, None] - np.array(ends[:2])).T)
    assert (away.min(axis=1) < 1e-6).all()
    assert ((away < 15.1).sum(axis=1) >= 5).all()
    assert mesh.smallest_angle_degrees() > 15.0
