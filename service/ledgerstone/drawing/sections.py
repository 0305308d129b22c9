"""Small sections through the edges: one for each way that a side is made."""

from __future__ import annotations

import math
from dataclasses import dataclass

from ledgerstone.drawing.frame import MARGIN, SHEET_WIDTH, SMALL
from ledgerstone.drawing.lettering import INK, PENCIL, SLAB_FILL, lettered, wrapped
from ledgerstone.drawing.saying import edge_facts, edges_alike, sides_named
from ledgerstone.drawing.svg import SvgElement, element, path_of
from ledgerstone.message import Message
from ledgerstone.order import Edge, Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.wording import Speech

CELL = (SHEET_WIDTH - 2 * MARGIN) / 3  # units; a narrower sheet has fewer to a row
_THICK = 34.0  # how thick the slab is drawn in a section
_REACH = 84.0
_DROP = 58.0  # a drop deeper than this is broken off
_TITLE = 24.0
_LINE = 18.5


@dataclass(frozen=True, slots=True)
class Detail:
    """One section: its letter, the sides it stands for, how they are made."""

    letter: str
    names: tuple[str, ...]
    edge: Edge


def details(slab: Slab, shape: Shape) -> list[Detail]:
    """Sections to draw; sides that the order does not describe are square, and last."""
    alike = edges_alike(slab)
    named = {name for names in alike for name in names}
    known = {side.name for side in shape.sides}
    rows = [(tuple(n for n in names if n in known), edge) for names, edge in alike.items()]
    plain = tuple(side.name for side in shape.sides if side.name not in named)
    square = next((i for i, (_, edge) in enumerate(rows) if edge == Edge()), None)
    if plain and square is not None:
        rows[square] = ((*rows[square][0], *plain), Edge())
    elif plain:
        rows.append((plain, Edge()))
    return [
        Detail(chr(ord("a") + i % 26), names, edge)
        for i, (names, edge) in enumerate(row for row in rows if row[0])
    ]


def section_rows(
    slab: Slab, shape: Shape, at: XY, prefix: str, speech: Speech
) -> tuple[list[SvgElement], float]:
    """Draw every section and return their lower end; ``at`` is width and top, sheet units."""
    drawn: list[SvgElement] = []
    shown = details(slab, shape)
    top, wide = at
    beside = round((wide - 2 * MARGIN) / CELL)
    for first in range(0, len(shown), beside):
        row = shown[first : first + beside]
        deepest = max(_drop(detail.edge) for detail in row)
        for i, detail in enumerate(row):
            caption = _caption(detail, speech)
            drawn += _section(detail, slab, (MARGIN + i * CELL, top), prefix)
            drawn += _captioned(caption, (MARGIN + i * CELL, top), deepest)
        lines = max(len(_caption(detail, speech)) for detail in row)
        top += _TITLE + _THICK + deepest + 27 + max(2, lines) * _LINE
    return drawn, top


def _drop(edge: Edge) -> float:
    return _DROP if edge.drop is not None else 0.0


def _section(detail: Detail, slab: Slab, corner: XY, prefix: str) -> list[SvgElement]:
    x, y = corner[0] + 4, corner[1] + _TITLE
    profile = [(x + px, y + py) for px, py in _profile(detail.edge, slab.thickness.mm)]
    start, end = profile[0], profile[-1]
    drawn = [
        lettered(detail.letter, (x, corner[1] + 13), SMALL + 1, bold=True),
        element("path", d=path_of(profile), fill=SLAB_FILL),
        element("path", d=path_of(profile), fill=f"url(#{prefix}-grain)"),
        element(
            "path", d=path_of(profile, closed=False), fill="none", stroke=INK, stroke_width=1.6
        ),
        element("path", d=_break(start, end), fill="none", stroke=PENCIL),
    ]
    if detail.edge.profile == "wall":
        wall = [(x + _REACH + 4 + dx, y + dy) for dx, dy in ((0, -8), (10, -8), (10, 40), (0, 40))]
        drawn.append(element("path", d=path_of(wall), fill=f"url(#{prefix}-hatch)"))
    drawn += _marks(detail.edge, (x, y))
    return drawn


def _captioned(lines: tuple[str, ...], corner: XY, deepest: float) -> list[SvgElement]:
    x, foot = corner[0] + 4, corner[1] + _TITLE + _THICK + deepest + 24
    return [lettered(line, (x, foot + i * _LINE), SMALL) for i, line in enumerate(lines)]


def _caption(detail: Detail, speech: Speech) -> tuple[str, ...]:
    message = Message("plan-section", sides=sides_named(detail.names), edge=edge_facts(detail.edge))
    return wrapped(speech.say(message), CELL - 14, SMALL, 3)


def _profile(edge: Edge, thickness_mm: float) -> list[XY]:
    """Course of a section from the break's top, over the outer face at the right, to its foot."""
    size = 0.0
    if edge.size is not None and edge.profile in {"bevel", "round"}:
        size = min(edge.size.mm / thickness_mm, 1.0) * _THICK
    size = max(size, 1.5) if edge.profile != "wall" else 0.0
    face = _THICK + _drop(edge)
    points = [(0.0, 0.0), *_arris(edge, size), (_REACH, face)]
    if edge.drop is not None:
        points += [(_REACH - _THICK, face), (_REACH - _THICK, _THICK)]
    if edge.drip:
        at = _REACH - (_THICK + 24 if edge.drop is not None else 20)
        points += [(at + 4, _THICK), (at + 4, _THICK - 6), (at - 4, _THICK - 6), (at - 4, _THICK)]
    return [*points, (0.0, _THICK)]


def _arris(edge: Edge, size: float) -> list[XY]:
    if edge.profile != "round":
        return [(_REACH - size, 0.0), (_REACH, size)]
    quarter = [math.radians(90 - 90 * i / 8) for i in range(9)]
    return [(_REACH - size + size * math.cos(a), size - size * math.sin(a)) for a in quarter]


def _break(top: XY, foot: XY) -> str:
    """Break line down the left of a section."""
    (x, y0), (_, y1) = top, foot
    middle = (y0 + y1) / 2
    zigzag = [(x, y0 - 5), (x, middle - 5), (x - 5, middle - 2), (x + 5, middle + 2)]
    return path_of([*zigzag, (x, middle + 5), (x, y1 + 5)], closed=False)


def _marks(edge: Edge, corner: XY) -> list[SvgElement]:
    """Draw the mitre of a drop, and the break where it is longer than drawn."""
    if edge.drop is None:
        return []
    x, y = corner
    foot = y + _THICK + _DROP
    across = [(x + _REACH - _THICK - 5, foot - 14), (x + _REACH + 5, foot - 20)]
    again = [(px, py + 5) for px, py in across]
    marks = [
        element("path", d=path_of(line, closed=False), stroke=PENCIL) for line in (across, again)
    ]
    if edge.drop.mitred:
        mitre = [(x + _REACH, y), (x + _REACH - _THICK, y + _THICK)]
        marks.append(element("path", d=path_of(mitre, closed=False), stroke=INK))
    return marks
