"""The plan: a slab drawn to scale from above with its dimensions, front at the bottom."""

from __future__ import annotations

import hashlib
import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from ledgerstone.drawing import beneath, block, callouts, dimensions, pinned, schedule
from ledgerstone.drawing import sections as edge_sections
from ledgerstone.drawing.frame import (
    MARGIN,
    PLAIN,
    SHEET_WIDTH,
    SMALL,
    Frame,
    fit,
    leading_length,
    unit_note,
)
from ledgerstone.drawing.lettering import FAMILY, INK, PAPER, PENCIL, lettered
from ledgerstone.drawing.placing import Box, Places
from ledgerstone.drawing.records import Pin, TitleBlock
from ledgerstone.drawing.saying import UPRIGHT, describe
from ledgerstone.drawing.svg import Element, document, element, render
from ledgerstone.drawing.to_scale import slab_group, wall_group
from ledgerstone.message import Message
from ledgerstone.order import Slab
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape
from ledgerstone.wording import Speech, speech_in

__all__ = ["describe", "draw_plan"]

_ABOVE = 62.0  # room over the slab for radii, letters and pins
_BESIDE = dimensions.BESIDE + PLAIN + 4.0
_TALLEST = 520.0


@dataclass(frozen=True, slots=True)
class _Part:
    """A stretch of the sheet and where it ends."""

    drawn: tuple[Element, ...]
    end: float


def draw_plan(
    slab: Slab,
    shape: Shape,
    *,
    title: TitleBlock,
    pins: Sequence[Pin] = (),
    alone: bool = False,
    speech: Speech | None = None,
    tallest: float = _TALLEST,
    sections: bool = True,
) -> str:
    """Draw a slab's dimensioned plan as an SVG document.

    Parameters
    ----------
    shape
        The slab's, from ``shape_of``.
    title
        What the title block says.
    pins
        Findings to mark, by number.
    alone
        Leave out the table of openings and the title block: the sheet has its own.
    speech
        What says its words; English where none is given.
    tallest
        Units that the slab itself is drawn high, at the most; the sheet is 600 across.
    sections
        Whether the edges' sections stand beneath.
    """
    speech = speech or speech_in("en")
    prefix = _prefix(slab, title)
    frame = replace(_frame(slab, shape, tallest), point=speech.formats.point)
    plan = _plan(slab, shape, frame, pins=pins, prefix=prefix, speech=speech)
    rows, end = list[Element](), plan.end
    if sections:
        rows, end = edge_sections.section_rows(slab, shape, plan.end + 10, prefix, speech)
    told, end = ((), end) if alone else _told(slab, frame, title, end, speech)
    height = float(math.ceil(end + MARGIN))
    paper = _paper(height, "#ffffff" if alone else PAPER)
    drawn = element("g", *plan.drawn, *rows, *told, font_family=FAMILY)
    return render(
        document(
            (SHEET_WIDTH, height),
            prefix,
            title=_title(title.label or slab.label, speech),
            says=describe(slab, shape, speech),
            children=[patterns(prefix), paper, drawn],
        )
    )


def _paper(height: float, fill: str) -> Element:
    return element("rect", x=0, y=0, width=SHEET_WIDTH, height=height, fill=fill)


def _title(label: str, speech: Speech) -> str:
    named = Message("plan-title-labelled", label=label)
    return speech.say(named if label else Message("plan-title"))


def _told(
    slab: Slab, frame: Frame, title: TitleBlock, top: float, speech: Speech
) -> tuple[tuple[Element, ...], float]:
    """Draw the table of openings and the title block, and say where they end."""
    like = leading_length(slab)
    table, end = schedule.table(schedule.entries(slab, frame, like, speech), top)
    foot, end = block.title_block(slab, title, block.scale_note(frame, like), end + 14, speech)
    return (*table, *foot), end


def _prefix(slab: Slab, title: TitleBlock) -> str:
    """Name this drawing's ids so that two drawings can stand in one page."""
    told = repr((slab, title)).encode()
    return f"plan-{hashlib.blake2b(told, digest_size=4).hexdigest()}"


def _frame(slab: Slab, shape: Shape, tallest: float) -> Frame:
    """Fit the slab between its chains."""
    up, start_mm = dimensions.stations(slab, shape, 1), shape.outline.bounds[1]
    left = MARGIN + dimensions.left_depth(up, start_mm, leading_length(slab))
    room = Box(left, _ABOVE, SHEET_WIDTH - MARGIN - _BESIDE, _ABOVE + tallest)
    return fit(shape, callouts.told_places(slab), room)


def _plan(
    slab: Slab, shape: Shape, frame: Frame, *, pins: Sequence[Pin], prefix: str, speech: Speech
) -> _Part:
    like = leading_length(slab)
    front = dimensions.along_front(
        frame,
        dimensions.stations(slab, shape, 0),
        like,
        frame.slab.x0 - 36,
        SHEET_WIDTH - MARGIN,
    )
    left = dimensions.along_left(
        frame,
        dimensions.stations(slab, shape, 1),
        like,
        MARGIN,
        frame.slab.y1 + front.depth,
    )
    below = max(frame.zone.y1, frame.slab.y1 + front.depth)
    places = Places(Box(MARGIN, MARGIN, SHEET_WIDTH - MARGIN, frame.slab.y1 + dimensions.FIRST - 2))
    places.avoid([*front.lines, *left.lines, *callouts.line_boxes(shape, frame)])
    places.avoid(pinned.strip_boxes(pins, frame))
    beyond = frame.slab.y1 + dimensions.FIRST
    places.take(Box(0, 0, frame.slab.x0 - dimensions.FIRST, beyond))
    places.take(Box(frame.slab.x1 + dimensions.BESIDE - 2, frame.slab.y0, SHEET_WIDTH, beyond))
    labels = callouts.letters(slab, shape, frame, places)
    labels += pinned.numbers(pins, frame, places, like)
    labels += callouts.side_letters(slab, shape, frame, places)
    labels += callouts.radii(slab, shape, frame, places, like=like, speech=speech)
    labels += beneath.unit_labels(slab, shape, frame, places, speech)
    note = speech.say(_note(like, front.unmarked + left.unmarked))
    drawn = [
        *wall_group(slab, shape, frame, prefix),
        slab_group(slab, shape, frame),
        *beneath.rests_group(slab, shape, frame),
        *front.drawn,
        *left.drawn,
        *dimensions.overall_right(frame, like),
        *pinned.marks(pins, frame),
        *labels,
        *_below(slab, frame, below + 14, note, speech),
        *block.scale_bar(frame, like, (MARGIN + 8, below + 40), speech),
    ]
    return _Part(tuple(drawn), below + 64)


def _note(like: Length, unmarked: int) -> Message:
    """Say the unit of the figures, and that some places had no room for one."""
    if unmarked:
        return Message("plan-figures-and-more", figures=unit_note(like), count=unmarked)
    return unit_note(like)


def _below(slab: Slab, frame: Frame, y: float, note: str, speech: Speech) -> list[Element]:
    """Mark the front, the foot of a piece that stands, and say the unit of every figure."""
    middle = (frame.slab.x0 + frame.slab.x1) / 2
    arrow = f"M{middle - 46:.2f} {y + 13:.2f}l7 -13l7 13z"
    return [
        element("path", d=arrow, fill=INK),
        lettered(
            speech.say(Message("plan-front", stands="yes" if slab.use in UPRIGHT else "no")),
            (middle - 26, y + 13),
            PLAIN,
            bold=True,
        ),
        lettered(note, (SHEET_WIDTH - MARGIN, y + 34), SMALL, anchor="end", fill=PENCIL),
    ]


def patterns(prefix: str) -> Element:
    """Give the hatch of a wall and the grain of a section, in pencil."""
    hatch = element(
        "pattern",
        element("path", d="M-1 1l2 -2M0 7l7 -7M6 8l2 -2", stroke=PENCIL, stroke_width=1),
        id=f"{prefix}-hatch",
        width=7,
        height=7,
        patternUnits="userSpaceOnUse",
    )
    specks = "M3 4l2 3h-4zM14 12l1 2h-2zM9 19h1M19 5h1M6 13h1"
    grain = element(
        "pattern",
        element("path", d=specks, fill="none", stroke=PENCIL, stroke_width=0.6),
        id=f"{prefix}-grain",
        width=22,
        height=22,
        patternUnits="userSpaceOnUse",
    )
    return element("defs", hatch, grain)
