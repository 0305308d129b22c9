"""Drawings for the workshop: a section through the mould, and boards on their sheets."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ledgerstone.drawing.lettering import ACCENT, FAMILY, INK, PENCIL, lettered, wrapped
from ledgerstone.drawing.svg import SvgElement, document, element, render
from ledgerstone.mould import Nest
from ledgerstone.outline import XY

_WIDE, _EDGE, _SMALL = 600.0, 14.0, 15.0
_MARK = 10.5  # a piece's number: 9 points across a page, and no higher than a narrow strip


def drawn_document(
    prefix: str, size: XY, title: str, says: str, drawn: Sequence[SvgElement]
) -> str:
    """Return a drawing of a size in sheet units as an SVG document, its ids beginning alike."""
    group = element("g", *drawn, font_family=FAMILY)
    return render(document(size, prefix, title=title, says=says, children=[group]))


# --- a section through the mould ------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class MouldSection:
    """The labels of a section through the mould, and whether mesh and bars are drawn."""

    thickness: str
    back: str
    cover: str
    face: str
    steel: str
    mesh: bool
    bars: bool


def draw_section(section: MouldSection, *, title: str, says: str) -> str:
    """Draw a section through the mould, face down, not to scale; lengths are written beside it."""
    wide, left, right = 255.0, 76.0, 232.0
    back, face = (wrapped(text, wide - 8, _SMALL, 2) for text in (section.back, section.face))
    top = 26.0 + 18 * (len(back) - 1)
    foot = top + 72
    middle = (top + foot) / 2
    named = [*face, *wrapped(section.steel, wide - 8, _SMALL, 2)]
    drawn = [
        element("rect", x=left - 36, y=foot, width=right - left + 56, height=12, fill="#d9c9a8",
                stroke=INK),
        *(element("rect", x=x, y=top - 6, width=16, height=foot - top + 6, fill="#d9c9a8",
                  stroke=INK) for x in (left - 16, right)),
        element("rect", x=left, y=top, width=right - left, height=foot - top, fill="#ebe7dd",
                stroke=INK, stroke_width=1.6),
        element("path", d=f"M{left} {foot - 14}H{right}", stroke=PENCIL, stroke_dasharray="5 3"),
        *(element("path", d=f"M{left + 8} {middle}H{right - 8}", stroke=ACCENT, stroke_width=2)
          for _ in range(section.mesh)),
        *(element("circle", cx=left + 22 + 28 * i, cy=middle - 4, r=3.4, fill=ACCENT)
          for i in range(5 * section.bars)),
        *(_up_down(left + 18, foot, middle + 2, section.cover) if section.steel else ()),
        *_up_down(left - 44, foot, top, ""),
        lettered(section.thickness, (left - 52, middle), _SMALL, anchor="middle", turn=-90),
        *(lettered(row, (4, 13 + 18 * n), _SMALL) for n, row in enumerate(back)),
        *(lettered(row, (4, foot + 30 + 18 * n), _SMALL, bold=n < len(face))
          for n, row in enumerate(named)),
    ]  # fmt: skip
    return drawn_document("mould-section", (wide, foot + 18 + 18 * len(named)), title, says, drawn)


def _up_down(x: float, foot: float, top: float, says: str) -> list[SvgElement]:
    """Dimension from one height to another, its figure beside it."""
    ticks = f"M{x} {foot}V{top}M{x - 4} {foot}h8M{x - 4} {top}h8"
    at = (x + 8, (foot + top) / 2 + 5)
    return [
        element("path", d=ticks, fill="none", stroke=INK),
        lettered(says, at, _SMALL, halo="#ebe7dd"),
    ]


# --- boards on their sheets -----------------------------------------------------------------


def draw_sheet(nest: Nest, sheet: int, marks: Sequence[str], *, title: str) -> str:
    """Draw one sheet with its pieces, each by its mark, in the nest's own order: an SVG."""
    per_mm = (_WIDE - 2 * _EDGE) / nest.length_mm
    height = per_mm * nest.width_mm
    drawn = [
        element("rect", x=_EDGE, y=_EDGE, width=per_mm * nest.length_mm, height=height,
                fill="#ffffff", stroke=INK, stroke_width=1.6)
    ]  # fmt: skip
    for number, (placed, mark) in enumerate(zip(nest.placed, marks, strict=True)):
        share = (0.5, 0.35, 0.65, 0.2, 0.8)[number % 5]  # so that neighbours' marks do not overlap
        if placed.sheet != sheet:
            continue
        x, wide = _EDGE + per_mm * placed.x_mm, per_mm * placed.length_mm
        high = per_mm * placed.width_mm
        y = _EDGE + height - per_mm * placed.y_mm - high
        drawn.append(element("rect", x=x, y=y, width=wide, height=high, fill="#ebe7dd", stroke=INK))
        along = (share, 0.5) if wide > high else (0.5, share)
        at = (x + along[0] * wide, y + along[1] * high + _MARK * 0.36)
        drawn.append(lettered(mark, at, _MARK, anchor="middle", bold=True))
    return drawn_document(f"sheet-{sheet}", (_WIDE, height + 2 * _EDGE), title, title, drawn)
