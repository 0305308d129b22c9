"""The maker's picture: how far the concrete is used, painted on the plan, the worst marked."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal
from typing import Final

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.drawing.frame import (
    MARGIN,
    PLAIN,
    SHEET_WIDTH,
    SMALL,
    Frame,
    fit,
    leading_length,
    shown,
)
from ledgerstone.drawing.lettering import FAMILY, INK, PAPER, lettered, wrapped
from ledgerstone.drawing.placing import Box
from ledgerstone.drawing.svg import SvgElement, document, element, path_of, render
from ledgerstone.order import Slab
from ledgerstone.shape import Shape
from ledgerstone.strength.utilisation_map import UtilisationMap
from ledgerstone.strength.verdict import Verdict
from ledgerstone.wording import Message, Percent, Speech

__all__ = ["draw_stress"]

# Bands of utilisation from light to dark, so that they read without colour too.
_BANDS: Final = (
    (0.2, "#f4f0e4"),
    (0.4, "#e6dcc0"),
    (0.6, "#d3b784"),
    (0.8, "#bd854a"),
    (1.0, "#99492a"),
    (float("inf"), "#4e0f0f"),
)
# The corners of a triangle's four quarters, as shares of its own corners: shape (4, 3, 3).
_QUARTERS: Final = 0.5 * np.array(
    [
        [[2, 0, 0], [1, 1, 0], [1, 0, 1]],
        [[1, 1, 0], [0, 2, 0], [0, 1, 1]],
        [[1, 0, 1], [0, 1, 1], [0, 0, 2]],
        [[1, 1, 0], [0, 1, 1], [1, 0, 1]],
    ]
)
_TOP, _TALLEST = 58.0, 520.0
_CROSS = 9.0
_SWATCH = 26.0


def draw_stress(
    slab: Slab,
    shape: Shape,
    utilisation_map: UtilisationMap | None,
    worst: Verdict | None,
    *,
    title: str,
    speech: Speech,
) -> str:
    """Draw how far a slab is used, as an SVG document.

    Parameters
    ----------
    utilisation_map
        Utilisation over the slab; None if its shape cannot be computed.
    worst
        The case nearest to its limit, which is marked and named.
    """
    room = Box(MARGIN, _TOP, SHEET_WIDTH - MARGIN, _TOP + _TALLEST)
    frame = fit(shape, [], room)
    says = speech.say(_message(slab, utilisation_map, worst))
    lines = wrapped(says, SHEET_WIDTH - 2 * MARGIN, SMALL, 4)
    below = frame.zone.y1 + 30
    height = below + 34 + len(lines) * SMALL * 1.4 + MARGIN
    drawn = [
        lettered(title, (MARGIN, MARGIN + PLAIN), PLAIN, bold=True),
        element(
            "g", *_slab(shape, frame, utilisation_map), transform=frame.transform, data_unit="mm"
        ),
        *_marked(frame, worst),
        *_key(below, speech),
        *(
            lettered(line, (MARGIN, below + 44 + i * SMALL * 1.4), SMALL)
            for i, line in enumerate(lines)
        ),
    ]
    paper = element("rect", x=0, y=0, width=SHEET_WIDTH, height=height, fill=PAPER)
    whole = [paper, element("g", *drawn, font_family=FAMILY)]
    size = (SHEET_WIDTH, height)
    return render(document(size, "stress", title=title, says=says, children=whole))


def _message(slab: Slab, utilisation_map: UtilisationMap | None, worst: Verdict | None) -> Message:
    if utilisation_map is None or worst is None:
        return Message("stress-no-shape")
    like = leading_length(slab)
    x, y = (shown(like, mm) for mm in worst.where_mm)
    return Message(
        "stress-painted",
        rests="told" if utilisation_map.in_place else "not-told",
        loading=worst.case,
        percent=Percent(Decimal(f"{100 * worst.utilisation:.0f}")),
        x=x,
        y=y,
    )


def _slab(
    shape: Shape, frame: Frame, utilisation_map: UtilisationMap | None
) -> Iterable[SvgElement]:
    """Paint the bands, then draw the edges over them."""
    if utilisation_map is not None:
        for (_, colour), area in zip(_BANDS, _areas(utilisation_map), strict=True):
            data = "".join(_ring(ring) for ring in shapely.get_rings(shapely.get_parts(area)))
            if data:
                yield element("path", d=data, fill=colour, fill_rule="evenodd", data_part="band")
    for part in shapely.get_parts(shape.net):
        rings = "".join(_ring(ring) for ring in shapely.get_rings(part))
        yield element("path", d=rings, fill="none", stroke=INK, stroke_width=frame.units(1.8))


def _areas(utilisation_map: UtilisationMap) -> list[BaseGeometry]:
    """The area of each band: quarters of triangles whose mean utilisation lies in it."""
    corners = utilisation_map.nodes[utilisation_map.triangles]
    used = utilisation_map.used[utilisation_map.triangles]
    quarters = np.einsum("qij,mjx->mqix", _QUARTERS, corners).reshape(-1, 3, 2)
    mean = np.einsum("qij,mj->mqi", _QUARTERS, used).mean(axis=2).ravel()
    band = np.searchsorted([upper for upper, _ in _BANDS[:-1]], mean, side="left")
    return [
        plane.union([Polygon(three) for three in quarters[band == k]]) for k in range(len(_BANDS))
    ]


def _ring(ring: shapely.LinearRing) -> str:
    return path_of(ring.coords[:-1], places=1)


def _marked(frame: Frame, worst: Verdict | None) -> Iterable[SvgElement]:
    """A cross in a circle on the worst place."""
    if worst is None:
        return
    x, y = frame.at(worst.where_mm)
    cross = [
        [(x - _CROSS, y), (x + _CROSS, y)],
        [(x, y - _CROSS), (x, y + _CROSS)],
    ]
    for width, colour in ((4.0, PAPER), (1.8, INK)):
        yield element(
            "circle", cx=x, cy=y, r=_CROSS, fill="none", stroke=colour, stroke_width=width
        )
        for line in cross:
            data = path_of(line, closed=False)
            yield element("path", d=data, stroke=colour, stroke_width=width, data_part="worst")


def _key(top: float, speech: Speech) -> Iterable[SvgElement]:
    """Draw the key of the colours, in percent of the allowed stress."""
    over = speech.say(Message("stress-over", percent=100))
    step = (SHEET_WIDTH - 2 * MARGIN) / len(_BANDS)
    low = 0.0
    for k, (upper, colour) in enumerate(_BANDS):
        x = MARGIN + k * step
        says = over if upper == float("inf") else f"{100 * low:.0f}–{100 * upper:.0f}"
        box: dict[str, float] = {"x": x, "y": top - 12, "width": _SWATCH, "height": 14}
        yield element("rect", fill=colour, stroke=INK, stroke_width=0.8, **box)
        yield lettered(says, (x + _SWATCH + 6, top), SMALL)
        low = upper
