"""What goes into openings in the view: a bowl, a hob's glass, a tap, as quiet neutral shapes.

None of them is a real product: they only show what an opening is for.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final, Literal

from shapely import affinity
from shapely.geometry import Polygon

from ledgerstone import plane
from ledgerstone.drawing.camera import Camera
from ledgerstone.drawing.svg import SvgElement, element, number, path_of
from ledgerstone.goes_in import is_bowl, is_cooktop, is_hob, is_tap
from ledgerstone.order import Cutout, Slab
from ledgerstone.outline import XY, unit_vector
from ledgerstone.remedies.belonging import companions
from ledgerstone.shape import Opening, Shape

Fitting = Literal["bowl", "hob", "tap"]

_LIP_MM: Final = 16.0  # how far an inset bowl's rim and a hob's glass lie over the concrete
_RIM_MM: Final = 5.0  # how high
_BOWL_MM: Final = 150.0
_BOWL_FLOOR: Final = 0.8  # a bowl's floor, as a share of its rim
_DRAIN_MM: Final = 45.0
TAP_HIGH_MM: Final = 250.0
_TAP_REACH_MM, _TAP_MM = 150.0, 30.0
# How a tap goes: out along its reach and up along its height, as shares of each.
_TAP_COURSE: Final[Sequence[XY]] = (
    *((0.0, 0.0), (0.0, 0.86), (0.04, 0.95), (0.14, 1.0)),
    *((0.86, 1.0), (0.97, 0.95), (1.0, 0.84)),
)
_IN_ONE: Final[Sequence[float]] = (0.5,)
_IN_TWO: Final[Sequence[float]] = (0.27, 0.73)
_ZONES: Final = (0.36, 0.3)  # radii of zones, as shares of the room each has
_FINE: Final = 0.3  # units that a drawn course may stray
_FLUSH_GAP_MM: Final = 2.0
_DOMINO_MM: Final = 350.0  # a hob this narrow has two zones
_MAX_HOB_MM: Final = 1000.0
_CERAMIC, _SHADED, _STEEL = "#eceae5", "#b9b7b1", "#7f8386"
_GLASS, _GLINT = "#17191b", "#54585c"


def fitting_of(cutout: Cutout, opening: Opening) -> Fitting | None:
    """Choose what is shown in an opening: nothing if its name gives no kind.

    Over heat only a hob by its name is shown: a cylinder for charcoal, an oven or a fire keeps
    its opening empty, since what it is like is its maker's matter.
    """
    if opening.polygon.is_empty or cutout.open_to is not None:
        return None
    if is_tap(cutout) and opening.longer_mm <= 2 * _TAP_MM:
        return "tap"
    if is_bowl(cutout):
        return "bowl"
    flat = cutout.kind in ("rectangle", "slot") and opening.longer_mm <= _MAX_HOB_MM
    is_flat_topped = is_cooktop(cutout) or (is_hob(cutout) and not cutout.heat)
    return "hob" if is_flat_topped and flat else None


def bowl(
    opening: Polygon, camera: Camera, depth_mm: float, name: str
) -> tuple[list[SvgElement], list[SvgElement]]:
    """Draw a bowl seen through an opening; the second list is what it defines first.

    Parameters
    ----------
    opening
        What it is seen through, plane mm.
    depth_mm
        How far below the top the bowl begins.
    name
        Of its clip and its gradient, unique in the document.
    """
    seen = _laid(opening, camera, 0.0)
    floor = affinity.scale(opening, _BOWL_FLOOR, _BOWL_FLOOR, origin="centroid")
    middle = opening.centroid
    low = -depth_mm - _BOWL_MM
    drain = _flat_circle((middle.x, middle.y), _DRAIN_MM / 2, low, camera)
    within = element(
        "g",
        element("path", d=seen, fill=f"url(#{name}-side)"),
        element("path", d=_laid(floor, camera, low), fill=f"url(#{name}-floor)"),
        element("path", d=drain, fill=_STEEL),
        clip_path=f"url(#{name})",
    )
    shared = [
        element("clipPath", element("path", d=seen), id=name),
        _gradient(f"{name}-side", (_SHADED, _CERAMIC), (1.0, 0.45)),
        _gradient(f"{name}-floor", ("#d5d3cd", "#f4f3ef"), (0.8, 1.0)),
    ]
    return [within], shared


def rim(opening: Polygon, camera: Camera) -> list[SvgElement]:
    """Draw the rim of a bowl that is set in from above."""
    outer = _grown(opening, _LIP_MM)
    ring = _laid(outer, camera, _RIM_MM) + _laid(opening, camera, _RIM_MM)
    return [
        element("path", d=_laid(outer, camera, 0.0), fill="#000000", fill_opacity=0.28),
        element(
            "path",
            d=ring,
            fill=_CERAMIC,
            fill_rule="evenodd",
            stroke=_SHADED,
            stroke_width=0.6,
        ),
    ]


def _grown(opening: Polygon, by_mm: float) -> Polygon:
    """An opening grown or shrunk all round; as it is where nothing would be left."""
    pieces = plane.polygons_in(plane.buffer(opening, by_mm, join_style="mitre"))
    return max(pieces, key=lambda piece: piece.area, default=opening)


def hob(
    opening: Polygon, camera: Camera, name: str, *, is_flush: bool
) -> tuple[list[SvgElement], SvgElement]:
    """Draw a hob's glass over its opening, or flush within it; the second is its gradient."""
    high = 0.0 if is_flush else _RIM_MM
    glass = _grown(opening, -_FLUSH_GAP_MM if is_flush else _LIP_MM)
    seen = _laid(glass, camera, high)
    rings = "".join(_flat_circle(at, radius, high, camera) for at, radius in _zones(opening))
    drawn = [
        element("path", d=seen, fill=f"url(#{name}-glass)", stroke=_GLINT, stroke_width=0.7),
        element("path", d=rings, fill="none", stroke=_GLINT, stroke_width=0.9),
    ]
    if not is_flush:
        shade = _laid(glass, camera, 0.0)
        drawn.insert(0, element("path", d=shade, fill="#000000", fill_opacity=0.4))
    return drawn, _gradient(f"{name}-glass", ("#34383b", _GLASS), (0.7, 1.0))


def _zones(opening: Polygon) -> list[tuple[XY, float]]:
    """Places and radii of a hob's zones, within its opening."""
    x0, y0, x1, y1 = opening.bounds
    wide, deep = x1 - x0, y1 - y0
    columns = _IN_ONE if wide <= _DOMINO_MM else _IN_TWO
    rows = _IN_ONE if deep <= _DOMINO_MM else _IN_TWO
    least = min(wide / len(columns), deep / len(rows))
    return [
        ((x0 + wide * c, y0 + deep * r), least * _ZONES[(i + k) % 2])
        for i, c in enumerate(columns)
        for k, r in enumerate(rows)
    ]


def tap(slab: Slab, shape: Shape, index: int, camera: Camera) -> list[SvgElement]:
    """Draw a tap on its hole, its spout towards its bowl, else towards the front."""
    polygons = {o.index: o.polygon for o in shape.openings}
    foot = polygons[index].centroid
    to = companions(slab, shape).get(index)
    way = (0.0, -1.0)
    if to is not None:
        middle = polygons[to].centroid
        way = unit_vector((foot.x, foot.y), (middle.x, middle.y))
    points = [
        camera.at(
            foot.x + way[0] * _TAP_REACH_MM * out,
            foot.y + way[1] * _TAP_REACH_MM * out,
            TAP_HIGH_MM * up,
        )
        for out, up in _TAP_COURSE
    ]
    d, wide = path_of(points, closed=False, places=1), _TAP_MM * camera.per_mm
    run = {"d": d, "fill": "none", "stroke_linecap": "round", "stroke_linejoin": "round"}
    base = _flat_circle((foot.x, foot.y), 0.85 * _TAP_MM, 0.0, camera)
    aside = f"translate({number(-0.16 * wide)} 0)"
    return [
        element("path", d=base, fill="#5d6164"),
        element("path", stroke="#63676a", stroke_width=wide, **run),
        element("path", stroke="#a9adb0", stroke_width=0.42 * wide, transform=aside, **run),
    ]


def _laid(shape: Polygon, camera: Camera, z: float) -> str:
    """Path of a plane shape at a height."""
    course = shape.exterior.simplify(_FINE / camera.per_mm, preserve_topology=False)
    points = [camera.at(p[0], p[1], z) for p in course.coords[:-1]]
    return path_of(points, places=1)


def _flat_circle(middle: XY, radius: float, z: float, camera: Camera) -> str:
    """Path of a level circle."""
    x, y = camera.at(*middle, z)
    wide, high = (radius * k for k in camera.circle)
    a, b = number(wide, 1), number(high, 1)
    left, right = f"{number(x - wide, 1)} {number(y, 1)}", f"{number(x + wide, 1)} {number(y, 1)}"
    return f"M{left}A{a} {b} 0 0 1 {right}A{a} {b} 0 0 1 {left}Z"


def _gradient(name: str, colours: Sequence[str], to: XY) -> SvgElement:
    first, last = colours
    return element(
        "linearGradient",
        element("stop", offset=0, stop_color=first),
        element("stop", offset=1, stop_color=last),
        id=name, x1=0, y1=0, x2=to[0], y2=to[1],
    )  # fmt: skip


def fittings_of(slab: Slab, shape: Shape) -> Mapping[int, Fitting]:
    """What is shown in each opening, by its cut-out."""
    found = {o.index: fitting_of(slab.cutouts[o.index], o) for o in shape.openings}
    return {index: fitting for index, fitting in found.items() if fitting is not None}
