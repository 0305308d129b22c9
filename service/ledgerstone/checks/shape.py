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
from ledgerstone.wording import capital, cutout_words, listed_names, side_words, slab_words
from ledgerstone.workshop.records import StripRule, Workshop

_TOUCH_MM = 0.05
_SLIGHT_MM2 = 1.0
_CHORD_MM = 0.15  # how far the chords of a 1 m disc lie inside its rim
_OURS = "the workshop's own rule"


def cutouts_on_the_slab(planned: Planned) -> Iterable[Finding]:
    """Every cut-out lies on its slab, unless it is open to that side."""
    order = planned.order
    for i, slab, shape in planned.slabs():
        for opening in shape.openings:
            outside = _outside(opening, shape)
            if not opening.polygon.is_empty and outside.area < _SLIGHT_MM2:
                continue
            name, what = slab_words(slab, i, len(order.slabs)), cutout_words(slab, opening.index)
            past = f"{capital(what)} reaches past the edge of {name}."
            swallows = opening.polygon.covers(shape.outline)
            yield Finding(
                "cutout-off-slab",
                "stops",
                _swallows(what, name, slab, shape) if swallows else past,
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
    """No two cut-outs overlap or touch; those that run into one another are said together."""
    for i, slab, shape in planned.slabs():
        for group in _run_together(shape.openings):
            names = [cutout_words(slab, opening.index) for opening in group]
            each_other = "each other" if len(group) == 2 else "one another"
            polygons = [opening.polygon for opening in group]
            yield Finding(
                "cutouts-overlap",
                "stops",
                f"{capital(listed_names(names))} run into {each_other}.",
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
                _pieces_words(shape, slab_words(slab, i, len(order.slabs))),
                "geometry",
                slab=i,
                at=(f"/slabs/{i}/cutouts",),
                measured={"pieces": len(shape.net.geoms)},
                limit={"pieces": 1},
                where_mm=geojson(shape.openings[0].polygon) if shape.openings else None,
            )


def _pieces_words(shape: Shape, name: str) -> str:
    """Say into how many pieces the cut-outs cut a slab, or that they leave nothing of it."""
    if not shape.net.is_empty:
        return f"The cut-outs cut {name} into {len(plane.polygons_in(shape.net))} pieces."
    return f"The cut-outs leave no concrete of {name}."


def _swallows(what: str, name: str, slab: Slab, shape: Shape) -> str:
    """Say that a cut-out is as large as its slab."""
    said = slab.thickness
    size = f"{said.like(shape.length_mm, 'up')} by {said.like(shape.width_mm, 'up')}"
    return f"{capital(what)} takes all of {name}, which is {size}: no concrete would be left."


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
                continue  # crossing is another check's matter
            width = round(strip.width_mm + (_CHORD_MM if strip.faces == "rim" else 0.0), 1)
            if width < rule.stops_mm:
                yield _strip_finding(i, slab, [strip], rule.stops_mm, "stops")
            elif width < rule.cautions_mm:
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
    """The rule of a strip: between two openings, the milder of theirs (a tap beside its basin)."""
    mine = rules[strip.opening]
    theirs = rules[strip.faces] if isinstance(strip.faces, int) else mine
    if mine is None or theirs is None:
        return mine or theirs
    return min(mine, theirs, key=lambda rule: rule.stops_mm)


def _strip_finding(
    i: int, slab: Slab, strips: Sequence[Strip], limit_mm: float, level: Level
) -> Finding:
    """What is said of strips beside one opening; its place and numbers are the narrowest one's."""
    strip = min(strips, key=lambda one: one.width_mm)
    stops = level == "stops"
    says = _says_stopped(slab, strip, limit_mm) if stops else _says_careful(slab, strips, limit_mm)
    return Finding(
        "strip-too-narrow",
        level,
        says,
        f"{_OURS}; common practice, no source",
        slab=i,
        at=tuple(dict.fromkeys(p for one in strips for p in _strip_pointers(i, one))),
        measured={"width_mm": round(strip.width_mm, 1)},
        limit={"width_mm": limit_mm},
        where_mm=line_mm(strip.line_mm),
        key=f"{strip.opening}-{_facing(strip.faces)}",
    )


def _facing(faces: str | int) -> str:
    """Name what a strip faces, so that side 2 and cut-out 2 are told apart."""
    if isinstance(faces, int):
        return str(faces)
    return f"side-{faces}" if faces.isdigit() else faces


def _says_stopped(slab: Slab, strip: Strip, limit_mm: float) -> str:
    said = _speaker(slab, strip)
    width, limit = said.like(strip.width_mm, "down"), said.like(limit_mm, "up")
    return f"The strip {_strip_words(slab, strip)} is {width} wide; it needs {limit}."


def _says_careful(slab: Slab, strips: Sequence[Strip], limit_mm: float) -> str:
    strip = min(strips, key=lambda one: one.width_mm)
    said = _speaker(slab, strip)
    width, limit = said.like(strip.width_mm, "down"), said.like(limit_mm, "up")
    if len(strips) == 1:
        what, them = f"The strip {_strip_words(slab, strip)} is {width} wide", "it"
    else:
        faced = listed_names([_faced_words(slab, one) for one in strips])
        opening = cutout_words(slab, strip.opening)
        what = f"The strips between {opening} and {faced} are {width} wide or little more"
        them = "them"
    return f"{what}. We make {them}, with care; {limit} would travel better."


def _strip_words(slab: Slab, strip: Strip) -> str:
    return f"between {cutout_words(slab, strip.opening)} and {_faced_words(slab, strip)}"


def _faced_words(slab: Slab, strip: Strip) -> str:
    if isinstance(strip.faces, int):
        return cutout_words(slab, strip.faces)
    return side_words(strip.faces)


def _speaker(slab: Slab, strip: Strip) -> Length:
    """The length whose unit the customer used for this cut-out."""
    cutout = slab.cutouts[strip.opening]
    said = cutout.diameter or cutout.width or (cutout.points[0].x if cutout.points else None)
    return said if said is not None else slab.thickness


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
                name = cutout_words(slab, opening.index)
                pointer = f"/slabs/{i}/cutouts/{opening.index}/corner_radius"
                yield _corner_finding(i, f"The corners of {name}", radius, limit, pointer)
        told = _inside_radius_told(slab, shape)
        if told is not None and told.mm < limit:
            one = isinstance(slab.outline, LShape)
            what = "The L's inside corner" if one else "The slab's inside corners"
            yield _corner_finding(i, what, told, limit, f"/slabs/{i}/outline")


def _inside_radius_told(slab: Slab, shape: Shape) -> Length | None:
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


def _corner_finding(i: int, what: str, radius: Length, limit_mm: float, pointer: str) -> Finding:
    limit = radius.like(limit_mm, "up")
    verb = "has" if what.startswith("The L") else "have"
    return Finding(
        "inside-corner-too-tight",
        "stops",
        f"{what} {verb} a radius of {radius.text()}; our formers make {limit} or more. A sharp"
        " inside corner is where a crack starts.",
        f"{_OURS}; common practice, no source",
        slab=i,
        at=(pointer,),
        measured={"radius_mm": radius.mm},
        limit={"radius_mm": limit_mm},
        key="outline" if pointer.endswith("/outline") else pointer.split("/")[-2],
    )
