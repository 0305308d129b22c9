"""The table of openings and reliefs: letter, name, size, centre, and what else there is to each."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.cutouts import kind_of
from ledgerstone.drawing.frame import MARGIN, SHEET_WIDTH, SMALL, Frame, spoken
from ledgerstone.drawing.lettering import INK, PENCIL, fitted, lettered, text_width, wrapped
from ledgerstone.drawing.saying import cutout_notes
from ledgerstone.drawing.svg import Element, element
from ledgerstone.order import Cutout, Relief, Slab
from ledgerstone.quantities import Length

_LINE = 18.5
_INDENT = 26.0


@dataclass(frozen=True, slots=True)
class Entry:
    """One row."""

    letter: str
    name: str
    size: str
    notes: str


def letter_of(index: int) -> str:
    """Letter of an opening or relief: A to Z, then AA, AB and so on."""
    first, last = divmod(index, 26)
    return (chr(ord("A") + first - 1) if first else "") + chr(ord("A") + last)


def entries(slab: Slab, frame: Frame, like: Length) -> list[Entry]:
    """Rows of the table: openings in the order's order, then reliefs."""
    rows = [
        Entry(letter_of(i), c.label or "opening", kind_of(c).described(c), _notes(c, frame, like))
        for i, c in enumerate(slab.cutouts)
    ]
    first = len(rows)
    rows += [
        Entry(letter_of(first + i), r.label or r.kind, _relief_text(r), _from(r, like))
        for i, r in enumerate(slab.reliefs)
    ]
    return rows


def _notes(cutout: Cutout, frame: Frame, like: Length) -> str:
    notes = []
    if cutout.centre is not None:
        x = spoken(like, cutout.centre.x.mm - frame.start_mm[0])
        y = spoken(like, cutout.centre.y.mm - frame.start_mm[1])
        notes.append(f"centre {x} from left, {y} from front")
    if cutout.corner_radius is not None:
        notes.append(f"corners R {cutout.corner_radius.text()}")
    return " · ".join([*notes, *cutout_notes(cutout)])


def _relief_text(relief: Relief) -> str:
    grooves = f", {relief.grooves} grooves" if relief.grooves else ""
    return f"{relief.kind}{grooves}, {relief.depth.text()} deep"


def _from(relief: Relief, like: Length) -> str:
    x, y = spoken(like, relief.at.x.mm), spoken(like, relief.at.y.mm)
    fall = f" · fall {relief.fall.text()}" if relief.fall is not None else ""
    return f"corner {x} from left, {y} from front{fall}"


def table(rows: list[Entry], top: float) -> tuple[list[Element], float]:
    """Draw the table and say where it ends."""
    drawn: list[Element] = []
    at = top
    for row in rows:
        drawn.append(_rule(at))
        lines, at = _entry(row, at)
        drawn += lines
    if rows:
        drawn.append(_rule(at))
    return drawn, at


def _rule(y: float) -> Element:
    return element(
        "line", x1=MARGIN, y1=y, x2=SHEET_WIDTH - MARGIN, y2=y, stroke=PENCIL, stroke_width=0.7
    )


def _entry(row: Entry, top: float) -> tuple[list[Element], float]:
    left, right = MARGIN + _INDENT, SHEET_WIDTH - MARGIN
    size = fitted(row.size, 300, SMALL)
    room = right - left - text_width(size, SMALL) - 16
    name = fitted(row.name, room, SMALL, bold=True)
    drawn = [
        lettered(row.letter, (MARGIN + 2, top + 17), SMALL, bold=True, fill=INK),
        lettered(name, (left, top + 17), SMALL, bold=True),
        lettered(size, (right, top + 17), SMALL, anchor="end"),
    ]
    at = top + 17
    for line in wrapped(row.notes, right - left, SMALL, 3):
        at += _LINE
        drawn.append(lettered(line, (left, at), SMALL, fill=PENCIL))
    return drawn, at + 7
