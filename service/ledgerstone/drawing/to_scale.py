"""The slab itself, in plane millimetres: outline, openings, reliefs, flanges, drops and drips.

Everything here stands inside one group whose transform turns y upwards, so that a path, a circle
or a rectangle is read back in the slab's own millimetres.
"""

from __future__ import annotations

import shapely
from shapely import affinity
from shapely.geometry import LineString, Polygon

from ledgerstone import plane
from ledgerstone.cutouts import kind_of
from ledgerstone.drawing.arcs import curved_path
from ledgerstone.drawing.frame import Frame, course_of, ring_points, simpler
from ledgerstone.drawing.lettering import ACCENT, INK, PAPER, PENCIL, SLAB_FILL
from ledgerstone.drawing.svg import SvgElement, element, number, path_of
from ledgerstone.order import Cutout, Relief, Slab
from ledgerstone.outline import XY, Side
from ledgerstone.shape import Opening, Shape

_FLANGE = 7.0  # sheet units: the order gives no width of a flange, so it is not to scale
_HEAT = 11.0
_DRIP_MM = 15.0  # a drip's groove stands about this far in, common practice


def slab_group(slab: Slab, shape: Shape, frame: Frame) -> SvgElement:
    """Draw the slab to scale."""
    drawn: list[SvgElement] = [_outline(shape, frame)]
    for i, relief in enumerate(shape.reliefs):
        drawn += [_relief(relief, frame, slab, i), *_grooves(relief, frame, slab, i)]
    for opening in shape.openings:
        if not opening.polygon.is_empty:
            drawn += _opening(opening, slab.cutouts[opening.index], frame)
    for side in shape.sides:
        drawn += _under_edge(side, slab, shape, frame)
    return element("g", *drawn, transform=frame.transform, data_unit="mm")


def _pen(frame: Frame, width: float, dashes: str | None = None) -> dict[str, str | float]:
    """Return a pen's width and dashes in mm, so that they come out in sheet units."""
    pen: dict[str, str | float] = {"stroke_width": frame.units(width)}
    if dashes:
        pen["stroke_dasharray"] = " ".join(number(frame.units(float(d))) for d in dashes.split())
    return pen


def _outline(shape: Shape, frame: Frame) -> SvgElement:
    return element(
        "path",
        d=curved_path(ring_points(shape.outline.exterior)),
        fill=SLAB_FILL,
        stroke=INK,
        stroke_linejoin="round",
        data_part="outline",
        **_pen(frame, 2),
    )


def _relief(relief: Polygon, frame: Frame, slab: Slab, index: int) -> SvgElement:
    return element(
        "path",
        d=curved_path(ring_points(relief.exterior)),
        fill="#dfd9cb",
        stroke=PENCIL,
        data_part="relief",
        data_index=str(index),
        data_depth_mm=slab.reliefs[index].depth.mm,
        **_pen(frame, 1, "6 3"),
    )


def _grooves(relief: Polygon, frame: Frame, slab: Slab, index: int) -> list[SvgElement]:
    return [
        element("path", d=path_of(line, closed=False), stroke=PENCIL, **_pen(frame, 0.8))
        for line in groove_lines(relief, slab.reliefs[index])
    ]


def groove_lines(polygon: Polygon, relief: Relief) -> list[list[XY]]:
    """Return a drainer's grooves, from front to back and evenly spaced, in plane mm."""
    count = relief.grooves or 0
    x0, y0, x1, y1 = polygon.bounds
    step, rim = (x1 - x0) / (count + 1), 0.06 * (y1 - y0)
    return [
        [(x0 + step * (i + 1), y0 + rim), (x0 + step * (i + 1), y1 - rim)] for i in range(count)
    ]


def _opening(opening: Opening, cutout: Cutout, frame: Frame) -> list[SvgElement]:
    """Draw an opening, what crosses it, and what hides or heats its rim."""
    drawn = []
    if cutout.heat:
        ring = plane.buffer(opening.polygon, frame.units(_HEAT), quad_segs=6)
        drawn.append(_dashed(ring, frame, ACCENT, "1.5 4", 2.2))
    if cutout.rim == "covered":
        ring = plane.buffer(opening.polygon, frame.units(_FLANGE), quad_segs=6)
        drawn.append(_dashed(ring, frame, PENCIL, "5 3", 1))
    drawn.append(_rim(opening, cutout, frame))
    drawn += _cross(opening, cutout, frame)
    return drawn


def _dashed(ring: Polygon, frame: Frame, colour: str, dashes: str, width: float) -> SvgElement:
    path = path_of(course_of(simpler(ring.exterior, frame.units(0.1))))
    return element("path", d=path, fill="none", stroke=colour, **_pen(frame, width, dashes))


def _rim(opening: Opening, cutout: Cutout, frame: Frame) -> SvgElement:
    pen: dict[str, str | float] = {"fill": PAPER, "stroke": INK, **_pen(frame, 1.6)}
    pen |= {"data_part": "opening", "data_index": str(opening.index), "data_kind": cutout.kind}
    if opening.radius_mm is not None and cutout.centre is not None:
        x, y = cutout.centre.x.mm, cutout.centre.y.mm
        return element("circle", cx=x, cy=y, r=opening.radius_mm, **pen)
    return element("path", d=curved_path(ring_points(opening.polygon.exterior)), **pen)


def _cross(opening: Opening, cutout: Cutout, frame: Frame) -> list[SvgElement]:
    """Cross an opening out: corner to corner, or along the centre lines of a round one."""
    x0, y0, x1, y1 = opening.polygon.bounds
    middle = ((x0 + x1) / 2, (y0 + y1) / 2)
    centre_lines = kind_of(cutout).centre_lines
    if centre_lines and cutout.open_to is None:
        over = frame.units(5)
        lines = [
            LineString([(x0 - over, middle[1]), (x1 + over, middle[1])]),
            LineString([(middle[0], y0 - over), (middle[0], y1 + over)]),
        ]
    else:
        box = opening.polygon.minimum_rotated_rectangle
        corners = list(box.exterior.coords) if isinstance(box, Polygon) else []
        lines = [LineString([corners[i], corners[i + 2]]) for i in (0, 1)] if corners else []
        lines = [_within(line, opening.polygon) for line in lines]
    dashes = "9 3 2 3" if centre_lines else None
    return [
        element(
            "path",
            d=path_of(line.coords, closed=False),
            stroke=PENCIL,
            **_pen(frame, 0.8, dashes),
        )
        for line in lines
        if line.length > 0
    ]


def _within(line: LineString, polygon: Polygon) -> LineString:
    """Return the longest piece of a line that lies in an opening; an empty one where none does."""
    pieces = [p for p in shapely.get_parts(plane.intersection(line, polygon)) if p.length > 0]
    longest = max(pieces, key=lambda piece: piece.length, default=LineString())
    return longest if isinstance(longest, LineString) else LineString()


def _under_edge(side: Side, slab: Slab, shape: Shape, frame: Frame) -> list[SvgElement]:
    """Dash what hangs beneath a side: the back of a drop, the groove of a drip."""
    edge = slab.edges.get(side.name)
    if edge is None:
        return []
    inset = []
    if edge.drop is not None:
        inset.append((shape.thickness_mm, "8 4", 1.2))
    if edge.drip:
        inset.append((min(_DRIP_MM, shape.thickness_mm), "2 3", 1.2))
    drawn = []
    for depth_mm, dashes, width in inset:
        line = plane.intersection(side.line.parallel_offset(depth_mm, "left"), shape.outline)
        for piece in shapely.get_parts(line):
            if piece.length > 0:
                path = path_of(piece.coords, closed=False)
                pen = _pen(frame, width, dashes)
                drawn.append(element("path", d=path, fill="none", stroke=PENCIL, **pen))
    return drawn


def wall_group(slab: Slab, shape: Shape, frame: Frame, prefix: str) -> list[SvgElement]:
    """Hatch the wall outside each side that meets one."""
    drawn = []
    for side in shape.sides:
        edge = slab.edges.get(side.name)
        if edge is None or edge.profile != "wall":
            continue
        band = plane.buffer(side.line, -frame.units(10), single_sided=True, join_style="mitre")
        for piece in plane.polygons_in(plane.difference(band, shape.outline)):
            placed = affinity.affine_transform(
                piece, [frame.per_mm, 0, 0, -frame.per_mm, *frame.origin]
            )
            path = path_of(course_of(placed.exterior))
            drawn.append(element("path", d=path, fill=f"url(#{prefix}-hatch)"))
    return drawn
