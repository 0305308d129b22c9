"""The lines to cut a mould by: base, inside edge, knockouts and sides at true size, in mm.

Each slab lies as it is cast, face down, left and right changed over, its inside edges beginning
at x = 0 and y = 0 of its own place. No tool's kerf is added or taken.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Final

from shapely import Polygon
from shapely.affinity import translate

from ledgerstone.drawing.arcs import Curved, curved
from ledgerstone.mould import Mould
from ledgerstone.mould.nesting import SheetPart
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.workshop.records import Boards

PARTS_APART_MM: Final = 60.0
LETTERS_MM: Final = 12.0


@dataclass(frozen=True, slots=True)
class CutPart:
    """One slab as it lies in its mould, with that mould."""

    name: str
    slab: Slab
    shape: Shape
    mould: Mould


@dataclass(frozen=True, slots=True)
class CutLine:
    """One closed line on one layer."""

    layer: str
    course: Curved


@dataclass(frozen=True, slots=True)
class CutLabel:
    """A few words at a place."""

    at: XY
    text: str


@dataclass(frozen=True, slots=True)
class CutLayout:
    """Every line and label of an order's moulds, and the box that holds them, in mm.

    Attributes
    ----------
    origins
        Where the inside edges of each slab's mould begin.
    """

    lines: tuple[CutLine, ...]
    labels: tuple[CutLabel, ...]
    origins: tuple[XY, ...]
    low: XY
    high: XY

    @property
    def layers(self) -> tuple[str, ...]:
        """The layers' names, in their order."""
        return tuple(dict.fromkeys(line.layer for line in self.lines))


def cut_layout(
    parts: Sequence[CutPart],
    boards: Boards,
    notes: Sequence[str],
    strip_named: Callable[[str], str],
    former_named: Callable[[str, float], str],
) -> CutLayout:
    """Lay out the moulds of an order from left to right, each one's strips under it.

    Parameters
    ----------
    strip_named
        What a strip is called on its label, by its name in the mould.
    former_named
        What a former's label says, by its name and its height in mm.
    """
    lines: list[CutLine] = []
    labels: list[CutLabel] = []
    origins: list[XY] = []
    x = boards.margin_mm
    low = 0.0
    for number, part in enumerate(parts, start=1):
        origins.append((x, 0.0))
        lines += _plan(part, number, x, boards)
        labels += _names(part, number, x, former_named)
        strips, named, wide, low_here = _strips(part, number, x - boards.margin_mm, boards)
        lines += strips
        labels += [replace(label, text=strip_named(label.text)) for label in named]
        low = min(low, low_here)
        base_mm = part.shape.length_mm + 2 * boards.margin_mm
        x += max(base_mm, wide) + PARTS_APART_MM
    high = max(part.shape.width_mm for part in parts) + boards.margin_mm
    for i, note in enumerate(reversed(notes)):
        labels.append(CutLabel((0.0, high + (2 * i + 1) * LETTERS_MM), note))
    top = high + (2 * len(notes) + 1) * LETTERS_MM
    return CutLayout(
        tuple(lines), tuple(labels), tuple(origins), (0.0, low), (x - boards.margin_mm, top)
    )


def _plan(part: CutPart, number: int, x: float, boards: Boards) -> Iterator[CutLine]:
    """Yield what lies in its place in the mould."""
    x0, y0, _, _ = part.shape.outline.bounds
    yield from _base(part, number, x, boards)
    for layer, polygons in (
        ("INSIDE", [part.shape.outline]),
        ("KNOCKOUTS", [opening.polygon for opening in part.shape.openings]),
        ("RELIEFS", part.shape.reliefs),
    ):
        for polygon in polygons:
            if not polygon.is_empty:
                placed = translate(polygon, x - x0, -y0)
                yield CutLine(f"{number}-{layer}", _course(placed))


def _course(polygon: Polygon) -> Curved:
    return curved(list(polygon.exterior.coords)[:-1])


def _base(part: CutPart, number: int, x: float, boards: Boards) -> Iterator[CutLine]:
    """Yield the base board, in as many equal parts as it is joined of."""
    margin = boards.margin_mm
    long, wide = part.shape.length_mm + 2 * margin, part.shape.width_mm + 2 * margin
    (piece,) = part.mould.base
    along = round(max(long, wide) / piece.length_mm)
    across = round(min(long, wide) / piece.width_mm)
    columns, rows = (along, across) if long >= wide else (across, along)
    size = long / columns, wide / rows
    for i in range(columns):
        for j in range(rows):
            corner = x - margin + i * size[0], -margin + j * size[1]
            yield CutLine(f"{number}-BASE", _rectangle(corner, size))


def _rectangle(corner: XY, size: XY) -> Curved:
    (x, y), (long, wide) = corner, size
    ends = ((x + long, y), (x + long, y + wide), (x, y + wide), (x, y))
    return (x, y), [(end, 0.0, False) for end in ends]


def _names(
    part: CutPart, number: int, x: float, former_named: Callable[[str, float], str]
) -> Iterator[CutLabel]:
    """Yield the slab's name, and each former's at its middle."""
    x0, y0, _, _ = part.shape.outline.bounds
    yield CutLabel((x, part.shape.width_mm + LETTERS_MM / 2), f"{number}: {part.name}")
    polygons = [opening.polygon for opening in part.shape.openings] + list(part.shape.reliefs)
    for former, polygon in zip(part.mould.formers, polygons, strict=True):
        if not polygon.is_empty:
            middle = polygon.centroid
            at = (x - x0 + middle.x, middle.y - y0)
            yield CutLabel(at, former_named(former.name, former.height_mm))


def _strips(
    part: CutPart, number: int, x: float, boards: Boards
) -> tuple[list[CutLine], list[CutLabel], float, float]:
    """Lay the strips of the sides under the plan, flat, one below the other."""
    lines, labels = [], []
    widest, y = 0.0, -boards.margin_mm - PARTS_APART_MM
    bent = [SheetPart(c.name, c.length_mm, c.height_mm, 1) for c in part.mould.curves]
    for layer, pieces in (("SIDES", part.mould.sides), ("CURVES", bent)):
        for piece in pieces:
            for _ in range(piece.count):
                y -= piece.width_mm
                size = piece.length_mm, piece.width_mm
                lines.append(CutLine(f"{number}-{layer}", _rectangle((x, y), size)))
                labels.append(CutLabel((x + LETTERS_MM, y + LETTERS_MM / 2), piece.name))
                y -= PARTS_APART_MM / 2
                widest = max(widest, piece.length_mm)
    return lines, labels, widest, y
