"""The view: the slab as it will sit, lit, in its own shade, with a rule for scale."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Sequence

from ledgerstone.drawing import faces, mottle, surroundings
from ledgerstone.drawing.frame import leading_length
from ledgerstone.drawing.lettering import FAMILY
from ledgerstone.drawing.painting import Paint
from ledgerstone.drawing.saying import describe
from ledgerstone.drawing.scene import WIDTH, Scene, camera_for, floor_of
from ledgerstone.drawing.shadow import shadow
from ledgerstone.drawing.svg import Element, document, element, render
from ledgerstone.drawing.tint import rgb_of
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.wording import Speech

__all__ = ["draw_view"]


def draw_view(
    slab: Slab,
    shape: Shape,
    *,
    colour: str,
    gloss: float,
    seed: str,
    title: str,
    speech: Speech | None = None,
) -> str:
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
    speech
        What says its words; English where none is given.

    """
    floor = floor_of(slab, shape)
    camera, height = camera_for(slab, shape, floor)
    digest = hashlib.blake2b(f"{seed}\x00{title}".encode("utf-8", "replace"), digest_size=4)
    scene = Scene(
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
            says=describe(slab, shape, speech),
            children=_picture(scene, height),
        )
    )


def _picture(scene: Scene, height: float) -> Iterable[Element]:
    backdrop = element(
        "rect", x=0, y=0, width=WIDTH, height=height, rx=10, fill=f"url(#{scene.prefix}-room)"
    )
    rod = surroundings.rod_of(
        leading_length(scene.slab), max(scene.shape.length_mm, scene.shape.width_mm)
    )
    about = shadow(scene.shape, scene.camera, scene.floor_mm)
    about += surroundings.rod(scene.shape, scene.camera, scene.floor_mm, rod)
    about += surroundings.rests(scene.slab, scene.shape, scene.camera, scene.floor_mm)
    painted = Paint(scene.prefix)
    drawn = [*faces.drops(scene, painted), *faces.slab(scene, painted)]
    yield element("defs", *_shared(scene), *painted.gradients)
    yield backdrop
    yield element("g", *about, font_family=FAMILY)
    yield element("g", *drawn)


def _shared(scene: Scene) -> list[Element]:
    """Backdrop, mottling and sheen."""
    side = mottle.tile_mm(max(scene.shape.length_mm, scene.shape.width_mm))
    wide, high = (side * scale for scale in scene.camera.circle)
    dx, dy = (float(n) for n in mottle.numbers(f"shift {scene.seed}", 2))
    tile = element(
        "pattern",
        element(
            "image",
            href=mottle.tile(scene.colour),
            width=wide,
            height=high,
            preserveAspectRatio="none",
        ),
        id=f"{scene.prefix}-face",
        width=wide,
        height=high,
        patternUnits="userSpaceOnUse",
        patternTransform=f"translate({dx * wide:.1f} {dy * high:.1f})",
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
