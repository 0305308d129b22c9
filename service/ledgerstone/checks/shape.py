"""Checks of a slab's plan: openings on the slab and apart, strips, inside corners, one piece."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from shapely.geometry import MultiPolygon
from shapely.geometry import Polygon as ShapelyPolygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.checks.finding import Finding, Level, geojson, line_mm
from ledgerstone.order import Cutout, LShape, Polygon, Slab
from ledgerstone.quantities import Length
from ledgerstone.shape import Opening, Shape, Strip
from ledgerstone.stages import Planned
from ledgerstone.wording import MAX_NAMED, Listed, Message, cutout_name, side_name, slab_name
from ledgerstone.workshop.records import StripRule, Workshop

_TOUCH_MM = 0.05  # rounding, and the chords of arcs
_NOISE_MM = 0.05 + 1e-6  # half of the tenth to which a strip is taken: 3 1/4 in are 82.55 mm
_SLIGHT_MM2 = 1.0  # less than a square millimetre is rounding
_CHORD_MM = 0.15  # how far the chords of a 1 m disc lie inside its rim
_OURS = "the workshop's own rule; common practice, no source"


def cutouts_on_the_slab(planned: Planned) -> Iterable[Finding]:
    """Every cut-out lies on its slab, unless it is open to that side."""
    order = planned.order
    for i, slab, shape in planned.slabs():
        for opening in shape.openings:
            outside = _outside(opening, shape)
            if not opening.polygon.is_empty and outside.area < _SLIGHT_MM2:
                continue
            name, what = slab_name(slab, i, len(order.slabs)), cutout_name(slab, opening.index)
            message = Message("cutout-off-slab", cutout=what, slab=name)
            if opening.polygon.covers(shape.outline):
                message = _swallows(what, name, slab, shape)
            yield Finding(
                "cutout-off-slab",
                "stops",
                message,
                "geometry",
                slab=i,
                at=(f"/slabs/{i}/cutouts/{opening.index}",),
                where_mm=geojson(opening.polygon if outside.is_empty else outside),
                key=str(opening.index),
            )


def _outside(opening: Opening, shape: Shape) -> BaseGeometry:
    """What of an opening lies off its slab, by more than a touch."""
    return plane.difference(opening.polygon, plane.buffer(shape.outline, _TOUCH_MM))


def cutouts_apart(planned: Planned) -> Iterable[Finding]:
    """No two cut-outs overlap or touch; one finding for each connected group."""
    for i, slab, shape in planned.slabs():
        for group in _run_together(shape.openings):
            names = Listed(tuple(cutout_name(slab, o.index) for o in group), most=MAX_NAMED)
            polygons = [opening.polygon for opening in group]
            yield Finding(
                "cutouts-overlap",
                "stops",
                Message("cutouts-overlap", cutouts=names),
                "geometry",
                slab=i,
                at=tuple(f"/slabs/{i}/cutouts/{opening.index}" for opening in group),
                where_mm=geojson(plane.union(polygons).convex_hull),
                key=f"{group[0].index}-{group[1].index}",
            )


def _run_together(openings: Sequence[Opening]) -> list[list[Opening]]:
    """Groups of openings that overlap or touch, one through another, in the order's own order."""
    groups: list[list[Opening]] = []
    for opening in openings:
        met = [g for g in groups if any(o.polygon.intersects(opening.polygon) for o in g)]
        groups = [group for group in groups if group not in met]
        groups.append([*(o for group in met for o in group), opening])
    together = [sorted(group, key=lambda o: o.index) for group in groups if len(group) > 1]
    return sorted(together, key=lambda group: group[0].index)


def one_piece(planned: Planned) -> Iterable[Finding]:
    """What is left after the cut-outs is one piece."""
    order = planned.order
    for i, slab, shape in planned.slabs():
        if isinstance(shape.net, MultiPolygon):
            yield Finding(
                "two-pieces",
                "stops",
                _pieces(shape, slab_name(slab, i, len(order.slabs))),
                "geometry",
                slab=i,
                at=(f"/slabs/{i}/cutouts",),
                measured={"pieces": len(shape.net.geoms)},
                limit={"pieces": 1},
                where_mm=geojson(shape.openings[0].polygon) if shape.openings else None,
            )


def _pieces(shape: Shape, name: Message) -> Message:
    """Return the finding that cut-outs divide a slab into pieces, or leave nothing of it."""
    if not shape.net.is_empty:
        return Message("two-pieces", slab=name, pieces=len(plane.polygons_in(shape.net)))
    return Message("nothing-left", slab=name)


def _swallows(what: Message, name: Message, slab: Slab, shape: Shape) -> Message:
    """Return the finding that a cut-out is as large as its slab."""
    thickness = slab.thickness
    return Message(
        "cutout-takes-all",
        cutout=what,
        slab=name,
        length=thickness.like(shape.length_mm, "up"),
        width=thickness.like(shape.width_mm, "up"),
    )


def strip_rule(cutout: Cutout, longer_mm: float, workshop: Workshop) -> StripRule | None:
    """Find the first of the workshop's strip rules that fits an opening."""
    for rule in workshop.shaping.strips:
        if longer_mm <= rule.opening_up_to_mm and rule.rim in ("any", cutout.rim):
            return rule
    return None


def strips_wide_enough(planned: Planned) -> Iterable[Finding]:
    """The concrete beside every opening is as wide as the workshop's rule for that opening."""
    workshop = planned.workshop
    for i, slab, shape in planned.slabs():
        rules = [strip_rule(slab.cutouts[o.index], o.longer_mm, workshop) for o in shape.openings]
        careful: dict[tuple[int, float], list[Strip]] = {}
        for strip in shape.strips:
            rule = _rule_of(strip, rules)
            if rule is None or _crosses(strip, shape):
                continue  # another check reports crossing
            width = round(strip.width_mm + (_CHORD_MM if strip.faces == "rim" else 0.0), 1)
            if width < rule.stops_mm - _NOISE_MM:
                yield _strip_finding(i, slab, [strip], rule.stops_mm, "stops")
            elif width < rule.cautions_mm - _NOISE_MM:
                careful.setdefault((strip.opening, rule.cautions_mm), []).append(strip)
        for (_, limit_mm), strips in careful.items():
            yield _strip_finding(i, slab, strips, limit_mm, "caution")


def _crosses(strip: Strip, shape: Shape) -> bool:
    """Whether an opening runs into what it faces, rather than leaving a strip, if only of none."""
    if strip.width_mm > _TOUCH_MM:
        return False
    opening = shape.openings[strip.opening]
    if isinstance(strip.faces, int):
        return bool(opening.polygon.intersects(shape.openings[strip.faces].polygon))
    return bool(_outside(opening, shape).area >= _SLIGHT_MM2)


def _rule_of(strip: Strip, rules: list[StripRule | None]) -> StripRule | None:
    """Return the rule of a strip: between two openings the milder one (a tap beside its basin)."""
    own = rules[strip.opening]
    other = rules[strip.faces] if isinstance(strip.faces, int) else own
    if own is None or other is None:
        return own or other
    return min(own, other, key=lambda rule: rule.stops_mm)


def _strip_finding(
    i: int, slab: Slab, strips: Sequence[Strip], limit_mm: float, level: Level
) -> Finding:
    """Return the finding about strips beside an opening, at the narrowest one."""
    strip = min(strips, key=lambda strip: strip.width_mm)
    return Finding(
        "strip-too-narrow",
        level,
        _strip_message(slab, strips, limit_mm, level),
        _OURS,
        slab=i,
        at=tuple(dict.fromkeys(p for strip in strips for p in _strip_pointers(i, strip))),
        measured={"width_mm": round(strip.width_mm, 1)},
        limit={"width_mm": limit_mm},
        where_mm=line_mm(strip.line_mm),
        key=f"{strip.opening}-{_facing(strip.faces)}",
    )


def _facing(faces: str | int) -> str:
    """Name what a strip faces, so that side 2 and cut-out 2 are distinct."""
    if isinstance(faces, int):
        return str(faces)
    return f"side-{faces}" if faces.isdigit() else faces


def _strip_message(slab: Slab, strips: Sequence[Strip], limit_mm: float, level: Level) -> Message:
    strip = min(strips, key=lambda strip: strip.width_mm)
    typed = _typed_length(slab, strip)
    faced = Listed(tuple(_faced_name(slab, strip) for strip in strips), most=MAX_NAMED)
    cutout = cutout_name(slab, strip.opening)
    width, limit = typed.like(strip.width_mm, "down"), typed.like(limit_mm, "up")
    if level == "stops":
        return Message("strip-too-narrow", cutout=cutout, faced=faced, width=width, limit=limit)
    return Message("strip-made-with-care", cutout=cutout, faced=faced, width=width, limit=limit)


def _faced_name(slab: Slab, strip: Strip) -> Message:
    if isinstance(strip.faces, int):
        return cutout_name(slab, strip.faces)
    return side_name(strip.faces)


def _typed_length(slab: Slab, strip: Strip) -> Length:
    """The length whose unit the customer used for this cut-out."""
    cutout = slab.cutouts[strip.opening]
    size = cutout.diameter or cutout.width or (cutout.points[0].x if cutout.points else None)
    return size if size is not None else slab.thickness


def _strip_pointers(i: int, strip: Strip) -> tuple[str, ...]:
    first = f"/slabs/{i}/cutouts/{strip.opening}"
    if isinstance(strip.faces, int):
        return first, f"/slabs/{i}/cutouts/{strip.faces}"
    return (first,)


def inside_corners(planned: Planned) -> Iterable[Finding]:
    """No inside corner is tighter than the workshop's formers make."""
    workshop = planned.workshop
    limit = workshop.shaping.inside_radius_mm
    for i, slab, shape in planned.slabs():
        for opening in shape.openings:
            cutout = slab.cutouts[opening.index]
            radius = cutout.corner_radius
            if radius is not None and radius.mm < limit:
                message = Message(
                    "corners-of-cutout-too-tight",
                    cutout=cutout_name(slab, opening.index),
                    radius=radius,
                    limit=radius.like(limit, "up"),
                )
                pointer = f"/slabs/{i}/cutouts/{opening.index}/corner_radius"
                yield _corner_finding(i, message, radius, limit, pointer)
        given = _given_inside_radius(slab, shape)
        if given is not None and given.mm < limit:
            shaped = "l" if isinstance(slab.outline, LShape) else "polygon"
            message = Message(
                "inside-corner-too-tight",
                shape=shaped,
                radius=given,
                limit=given.like(limit, "up"),
            )
            yield _corner_finding(i, message, given, limit, f"/slabs/{i}/outline")


def _given_inside_radius(slab: Slab, shape: Shape) -> Length | None:
    """The radius that the customer gave the outline's inside corners, or None."""
    outline = slab.outline
    if isinstance(outline, LShape):
        return outline.corner_radii.get(outline.notch.corner, outline.corner_radius)
    if isinstance(outline, Polygon) and not _is_convex(shape):
        return outline.corner_radius
    return None


def _is_convex(shape: Shape) -> bool:
    ring = ShapelyPolygon(shape.corners)
    return bool(ring.convex_hull.area - ring.area < _SLIGHT_MM2)


def _corner_finding(
    i: int, message: Message, radius: Length, limit_mm: float, pointer: str
) -> Finding:
    return Finding(
        "inside-corner-too-tight",
        "stops",
        message,
        _OURS,
        slab=i,
        at=(pointer,),
        measured={"radius_mm": radius.mm},
        limit={"radius_mm": limit_mm},
        key="outline" if pointer.endswith("/outline") else pointer.split("/")[-2],
    )
