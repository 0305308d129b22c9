"""The view: an order's slabs as they will stand, lit, each in its own shade, a rule for scale."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Sequence

from ledgerstone.drawing import faces, mottle, room, surroundings
from ledgerstone.drawing.camera import LEVEL, Camera
from ledgerstone.drawing.fittings import fittings_of
from ledgerstone.drawing.frame import leading_length
from ledgerstone.drawing.furniture import furniture
from ledgerstone.drawing.lettering import FAMILY, INK, lettered
from ledgerstone.drawing.painting import Paint
from ledgerstone.drawing.saying import describe
from ledgerstone.drawing.scene import VIEW_WIDTH, Scene, bounds_of, camera_for, longest_mm
from ledgerstone.drawing.seams import seams
from ledgerstone.drawing.setting import is_mirrored, level_joins, stand_together
from ledgerstone.drawing.shadow import shadow
from ledgerstone.drawing.standing import DrawnSlab, Standing
from ledgerstone.drawing.svg import SvgElement, document, element, number, render
from ledgerstone.drawing.tint import depths, hex_of, mixed, rgb_of
from ledgerstone.order import Join
from ledgerstone.outline import XY
from ledgerstone.wording import Speech

__all__ = ["draw_view"]

_SAME_HEIGHT_MM = 1.0


def draw_view(
    pieces: Sequence[DrawnSlab],
    joins: Sequence[Join] = (),
    *,
    title: str,
    speech: Speech | None = None,
) -> str:
    """Draw slabs in light, on what carries them, as an SVG document.

    Parameters
    ----------
    pieces
        The slabs that are seen together, at least one.
    joins
        Which of their sides meet.
    title
        The picture's name.
    speech
        Formats messages; English by default.

    """
    standings = stand_together(pieces, joins)
    camera, height = camera_for(standings)
    seeds = "\x00".join([*(piece.seed for piece in pieces), title])
    digest = hashlib.blake2b(seeds.encode("utf-8", "replace"), digest_size=4).hexdigest()
    prefix = f"view-{digest}"
    scenes = [
        _scene(standing, camera, standings[0].height_mm, f"{prefix}-{i}" if i else prefix)
        for i, standing in enumerate(standings)
    ]
    return render(
        document(
            (VIEW_WIDTH, height),
            prefix,
            title=title,
            says=" ".join(describe(piece.slab, piece.shape, speech) for piece in pieces),
            children=_picture(
                standings,
                scenes,
                camera,
                height,
                joins=level_joins(pieces, joins),
                mirrored=is_mirrored(pieces, joins),
            ),
        )
    )


def _scene(standing: Standing, camera: Camera, first_mm: float, prefix: str) -> Scene:
    piece = standing.piece
    x, y, up = standing.at_mm
    is_level = standing.upright is None
    return Scene(
        slab=piece.slab,
        shape=piece.shape,
        camera=camera.set_down((x, y, up - first_mm), standing.pose),
        floor_mm=-standing.height_mm,
        colour=rgb_of(piece.colour),
        gloss=min(1.0, max(0.0, piece.gloss)),
        seed=piece.seed,
        prefix=prefix,
        fittings=fittings_of(piece.slab, piece.shape) if is_level else {},
    )


def _picture(
    standings: Sequence[Standing],
    scenes: Sequence[Scene],
    camera: Camera,
    height: float,
    *,
    joins: Sequence[Join],
    mirrored: bool,
) -> Iterator[SvgElement]:
    prefix = scenes[0].prefix
    backdrop = element(
        "rect", x=0, y=0, width=VIEW_WIDTH, height=height, fill=f"url(#{prefix}-room)"
    )
    paints = [Paint(scene.prefix) for scene in scenes]
    drawn = [*_standing_drawn(standings, scenes, paints), *seams(standings, scenes, joins)]
    tiles: dict[tuple[str, float, float], str] = {}
    yield element("defs", _floor_light(prefix), *(
        definition
        for scene, paint in zip(scenes, paints, strict=True)
        for definition in (*_shared(scene, tiles), *paint.gradients)
    ))  # fmt: skip
    flip = f"translate({number(VIEW_WIDTH)} 0) scale(-1 1)" if mirrored else None
    yield backdrop
    rule, words = _rule(standings, camera, mirrored=mirrored)
    yield element("g", *_room(standings, scenes, camera), *rule, transform=flip)
    yield element("g", words, font_family=FAMILY)
    yield element("g", *drawn, transform=flip)


def _room(
    standings: Sequence[Standing], scenes: Sequence[Scene], camera: Camera
) -> Iterator[SvgElement]:
    """Walls with the window's light on them, and what the slabs throw on the floor."""
    first, found = standings[0], room.walls_of(standings)
    longest = longest_mm(standings)
    is_inside = any(standing.piece.slab.place != "outdoors" for standing in standings)
    heights = (-first.height_mm, 4.0 * longest)
    yield from room.walls(found, camera, heights, is_inside=is_inside)
    if found.back_mm is not None and is_inside:
        x0, _, x1, _ = first.bounds
        scale = min(0.6, longest / 4000.0)
        at = (x0 + 0.62 * (x1 - x0), found.back_mm)
        clear = max(standing.height_mm for standing in standings) - first.height_mm
        yield room.window_light(camera, at, clear + 90.0 * scale, scale)
    for standing, scene in zip(standings, scenes, strict=True):
        if standing.hangs and found.back_mm is not None:
            yield from room.wall_shadow(standing, scene.camera, found.back_mm)
        elif standing.upright is None:
            yield from shadow(scene.shape, scene.camera, scene.floor_mm)


def _rule(
    standings: Sequence[Standing], camera: Camera, *, mirrored: bool
) -> tuple[list[SvgElement], SvgElement]:
    """Draw the rule, and apart from it its words, which are never mirrored."""
    first = standings[0]
    scale = surroundings.rod_of(leading_length(first.piece.slab), longest_mm(standings))
    rod, (x, y) = surroundings.rod(bounds_of(standings), camera, -first.height_mm, scale)
    at = (VIEW_WIDTH - x if mirrored else x, y)
    return rod, lettered(scale[2], at, surroundings.LETTERS, anchor="middle", fill=INK)


def _standing_drawn(
    standings: Sequence[Standing], scenes: Sequence[Scene], paints: Sequence[Paint]
) -> Iterator[SvgElement]:
    """Paint the slabs on what carries them, the farthest first.

    Where all tops are of one height none of them is hidden by what carries another, and they are
    painted last; else each is painted with what carries it. What stands upright is painted with
    the top that it belongs to, behind it or before it.
    """
    tops = [i for i, standing in enumerate(standings) if standing.upright is None]
    far_first = sorted(tops, key=lambda i: -_nearest(standings[i]))
    heights = [standings[i].height_mm for i in tops] or [0.0]
    level = max(heights) - min(heights) < _SAME_HEIGHT_MM

    def uprights(host: int | None, *, is_near: bool, has_wall: bool) -> Iterator[SvgElement]:
        for i, standing in enumerate(standings):
            stands = standing.upright
            if stands is not None and (stands.host, stands.is_near, stands.has_wall) == (
                *(host, is_near),
                has_wall,
            ):
                yield from faces.slab(scenes[i], paints[i])

    def beneath(i: int) -> Iterator[SvgElement]:
        yield from uprights(i, is_near=False, has_wall=False)
        yield from furniture(standings[i], scenes[i].camera)

    if level:
        for i in far_first:
            yield from beneath(i)
    for i in far_first:
        if not level:
            yield from beneath(i)
        yield from faces.drops(scenes[i], paints[i])
        yield from faces.slab(scenes[i], paints[i])
        yield from uprights(i, is_near=False, has_wall=True)
        yield from faces.fitted(scenes[i], paints[i])
        yield from uprights(i, is_near=True, has_wall=True)
        yield from uprights(i, is_near=True, has_wall=False)
    yield from uprights(None, is_near=False, has_wall=True)


def _nearest(standing: Standing) -> float:
    """How far away the nearest corner of a slab's box is, mm."""
    x0, y0, x1, y1 = standing.piece.shape.outline.bounds
    return min(LEVEL.seen((x, y))[1] for x in (x0, x1) for y in (y0, y1))


def _floor_light(prefix: str) -> SvgElement:
    return _gradient(f"{prefix}-room", [(0.0, "#e9e6e0", 1), (1.0, "#d6d2ca", 1)], (0, 1))


def _shared(scene: Scene, tiles: dict[tuple[str, float, float], str]) -> list[SvgElement]:
    """Mottling, sheen, and what lies in the shade of an opening.

    Parameters
    ----------
    tiles
        By shade and size the pattern that has the tile; slabs alike share it.
    """
    side = mottle.tile_mm(max(scene.shape.length_mm, scene.shape.width_mm))
    wide, high = (side * scale for scale in scene.camera.circle)
    across, down = scene.camera.across
    if abs(down) > abs(across):  # the face is seen the narrower from side to side
        wide, high = high, wide
    dx, dy = (float(n) for n in mottle.numbers(f"shift {scene.seed}", 2))
    name = f"{scene.prefix}-face"
    first = tiles.setdefault((hex_of(scene.face), wide, high), name)
    image = element(
        "image",
        href=mottle.tile(scene.face),
        width=wide,
        height=high,
        preserveAspectRatio="none",
    )
    tile = element(
        "pattern",
        *([image] if first == name else []),
        id=name,
        href=None if first == name else f"#{first}",
        width=wide,
        height=high,
        patternUnits="userSpaceOnUse",
        patternTransform=f"translate({dx * wide:.1f} {dy * high:.1f})",
    )
    shine = 0.34 * scene.gloss
    stops = [(0.12, "#ffffff", 0.0), (0.36, "#ffffff", 0.3 * shine), (0.48, "#ffffff", shine)]
    stops += [(0.6, "#ffffff", 0.4 * shine), (0.86, "#ffffff", 0.0)]
    sheen = _gradient(f"{scene.prefix}-sheen", stops, (1, 0.35))
    shade = [(0.0, depths(scene.colour), 1.0), (1.0, mixed(scene.colour, (96, 90, 82), 0.7), 1.0)]
    return [tile, sheen, _gradient(f"{scene.prefix}-deep", shade, (0.6, 1))]


def _gradient(name: str, stops: Sequence[tuple[float, str, float]], to: XY) -> SvgElement:
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
