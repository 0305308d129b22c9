"""The table of openings and reliefs: letter, name, size, centre, and what else there is to each."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.drawing.frame import MARGIN, SMALL, Frame, shown
from ledgerstone.drawing.lettering import INK, PENCIL, fitted, lettered, text_width, wrapped
from ledgerstone.drawing.saying import cutout_facts, cutout_size
from ledgerstone.drawing.svg import SvgElement, element
from ledgerstone.message import Message
from ledgerstone.order import Cutout, Relief, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.wording import Speech

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


def entries(slab: Slab, frame: Frame, like: Length, speech: Speech) -> list[Entry]:
    """Rows of the table: openings in the order's order, then reliefs."""
    rows = [
        Entry(
            letter_of(i),
            c.label or speech.say(Message("plan-opening-word")),
            speech.say(cutout_size(c, like)),
            " · ".join(speech.say(note) for note in opening_notes(c, frame.start_mm, like)),
        )
        for i, c in enumerate(slab.cutouts)
    ]
    first = len(rows)
    rows += [
        Entry(
            letter_of(first + i),
            r.label or speech.say(Message("plan-relief-word", kind=r.kind)),
            speech.say(relief_size(r)),
            " · ".join(speech.say(note) for note in relief_notes(r, like)),
        )
        for i, r in enumerate(slab.reliefs)
    ]
    return rows


def opening_notes(cutout: Cutout, start_mm: XY, like: Length) -> list[Message]:
    """State where a cut-out is from the outline's corner, its corners, and what else it has."""
    notes = []
    if cutout.centre is not None:
        x = shown(like, cutout.centre.x.mm - start_mm[0])
        y = shown(like, cutout.centre.y.mm - start_mm[1])
        notes.append(Message("plan-note-centre", x=x, y=y))
    if cutout.corner_radius is not None:
        notes.append(Message("plan-note-corners", radius=cutout.corner_radius))
    return [*notes, *cutout_facts(cutout)]


def relief_size(relief: Relief) -> Message:
    """State what a relief is and how deep."""
    grooves = relief.grooves or 0
    return Message("plan-size-relief", kind=relief.kind, grooves=grooves, depth=relief.depth)


def relief_notes(relief: Relief, like: Length) -> list[Message]:
    """State where a relief's corner is, and its fall."""
    x, y = shown(like, relief.at.x.mm), shown(like, relief.at.y.mm)
    corner = Message("plan-note-corner", x=x, y=y)
    return (
        [corner] if relief.fall is None else [corner, Message("plan-note-fall", fall=relief.fall)]
    )


def table(rows: list[Entry], top: float, wide: float) -> tuple[list[SvgElement], float]:
    """Draw the table and return its lower end; ``top`` and ``wide`` are in sheet units."""
    drawn: list[SvgElement] = []
    at = top
    for row in rows:
        drawn.append(_rule(at, wide))
        lines, at = _entry(row, at, wide)
        drawn += lines
    if rows:
        drawn.append(_rule(at, wide))
    return drawn, at


def _rule(y: float, wide: float) -> SvgElement:
    return element("line", x1=MARGIN, y1=y, x2=wide - MARGIN, y2=y, stroke=PENCIL, stroke_width=0.7)


def _entry(row: Entry, top: float, wide: float) -> tuple[list[SvgElement], float]:
    left, right = MARGIN + _INDENT, wide - MARGIN
    size = fitted(row.size, wide / 2, SMALL)
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
