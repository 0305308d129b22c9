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
from ledgerstone.drawing.saying import describe
from ledgerstone.drawing.svg import SvgElement, document, element, render
from ledgerstone.drawing.to_scale import slab_group, wall_group
from ledgerstone.message import Message
from ledgerstone.order import UPRIGHT_USES, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape
from ledgerstone.wording import Speech, speech_in

__all__ = ["describe", "draw_plan"]

_ABOVE = 62.0  # room over the slab for radii, letters and pins
_BESIDE = dimensions.BESIDE + PLAIN + 4.0
_NOTE_DROP = 22.0
_CROWDED = 10  # openings, reliefs and pins from which on labels need the whole sheet
_TALLEST = 520.0


@dataclass(frozen=True, slots=True)
class _Part:
    """A stretch of the sheet and where it ends."""

    drawn: tuple[SvgElement, ...]
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
    wide: float = SHEET_WIDTH,
    sections: bool = True,
) -> str:
    """Draw a slab's dimensioned plan as an SVG document.

    Parameters
    ----------
    shape
        The slab's, from ``shape_of``.
    title
        The content of the title block.
    pins
        Findings to mark, by number.
    alone
        Leave out the table of openings and the title block: the sheet has its own.
    speech
        Formats messages; English by default.
    tallest
        Greatest height of the slab itself, sheet units.
    wide
        Width of the sheet, sheet units: 600, or ``PHONE_WIDTH`` for a narrow screen; a crowded
        slab has no room there and keeps 600.
    sections
        Whether the edges' sections stand beneath.
    """
    speech = speech or speech_in("en")
    prefix = _prefix(slab, title)
    wide = SHEET_WIDTH if _is_crowded(slab, pins) else wide
    marks = (dimensions.stations(slab, shape, 0), dimensions.stations(slab, shape, 1))
    frame = replace(_frame(slab, shape, marks[1], tallest, wide), point=speech.formats.point)
    plan = _plan(slab, shape, frame, marks, pins=pins, prefix=prefix, speech=speech)
    rows, end = list[SvgElement](), plan.end
    if sections:
        rows, end = edge_sections.section_rows(slab, shape, (plan.end + 10, wide), prefix, speech)
    described, end = ((), end) if alone else _tables(slab, frame, title, end, speech)
    size = (wide, float(math.ceil(end + MARGIN)))
    paper = _paper(size, "#ffffff" if alone else PAPER)
    drawn = element("g", *plan.drawn, *rows, *described, font_family=FAMILY)
    named, says = _title(title.label or slab.label, speech), describe(slab, shape, speech)
    children = [patterns(prefix), paper, drawn]
    return render(document(size, prefix, title=named, says=says, children=children))


def _is_crowded(slab: Slab, pins: Sequence[Pin]) -> bool:
    return len(slab.cutouts) + len(slab.reliefs) + len(pins) > _CROWDED


def _paper(size: XY, fill: str) -> SvgElement:
    return element("rect", x=0, y=0, width=size[0], height=size[1], fill=fill)


def _title(label: str, speech: Speech) -> str:
    named = Message("plan-title-labelled", label=label)
    return speech.say(named if label else Message("plan-title"))


def _tables(
    slab: Slab, frame: Frame, title: TitleBlock, top: float, speech: Speech
) -> tuple[tuple[SvgElement, ...], float]:
    """Draw the table of openings and the title block, and return their lower end."""
    like = leading_length(slab)
    table, end = schedule.table(schedule.entries(slab, frame, like, speech), top, frame.sheet_width)
    at = (end + 14, frame.sheet_width)
    foot, end = block.title_block(slab, title, block.scale_note(frame, like), at, speech)
    return (*table, *foot), end


def _prefix(slab: Slab, title: TitleBlock) -> str:
    """Prefix of this drawing's ids, so that two drawings can be on one page."""
    seed = repr((slab, title)).encode()
    return f"plan-{hashlib.blake2b(seed, digest_size=4).hexdigest()}"


def _frame(
    slab: Slab, shape: Shape, up: list[dimensions.Station], tallest: float, wide: float
) -> Frame:
    """Fit the slab between its chains."""
    start_mm = shape.outline.bounds[1]
    left = MARGIN + dimensions.left_depth(up, start_mm, leading_length(slab))
    room = Box(left, _ABOVE, wide - MARGIN - _BESIDE, _ABOVE + tallest)
    return replace(fit(shape, callouts.given_places(slab), room), sheet_width=wide)


def _plan(
    slab: Slab,
    shape: Shape,
    frame: Frame,
    marks: tuple[list[dimensions.Station], list[dimensions.Station]],
    *,
    pins: Sequence[Pin],
    prefix: str,
    speech: Speech,
) -> _Part:
    like, wide = leading_length(slab), frame.sheet_width
    start = frame.slab.x0 - 36
    front = dimensions.along_front(frame, marks[0], like, start, wide - MARGIN)
    left = dimensions.along_left(frame, marks[1], like, MARGIN, frame.slab.y1 + front.depth)
    below = max(frame.zone.y1, frame.slab.y1 + front.depth)
    places = Places(Box(MARGIN, MARGIN, wide - MARGIN, frame.slab.y1 + dimensions.FIRST - 2))
    places.avoid([*front.lines, *left.lines, *callouts.line_boxes(shape, frame)])
    places.avoid(pinned.strip_boxes(pins, frame))
    beyond = frame.slab.y1 + dimensions.FIRST
    places.take(Box(0, 0, frame.slab.x0 - dimensions.FIRST, beyond))
    places.take(Box(frame.slab.x1 + dimensions.BESIDE - 2, frame.slab.y0, wide, beyond))
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
    return _Part(tuple(drawn), below + 64 + _note_drop(frame))


def _note(like: Length, unmarked: int) -> Message:
    """Describe the unit of the figures, and that some places had no room for one."""
    if unmarked:
        return Message("plan-figures-and-more", figures=unit_note(like), count=unmarked)
    return unit_note(like)


def _below(slab: Slab, frame: Frame, y: float, note: str, speech: Speech) -> list[SvgElement]:
    """Mark the front, or the foot of an upright piece, and state the unit of the figures."""
    middle = (frame.slab.x0 + frame.slab.x1) / 2
    at = y + 34 + _note_drop(frame)
    arrow = f"M{middle - 46:.2f} {y + 13:.2f}l7 -13l7 13z"
    return [
        element("path", d=arrow, fill=INK),
        lettered(
            speech.say(Message("plan-front", stands="yes" if slab.use in UPRIGHT_USES else "no")),
            (middle - 26, y + 13),
            PLAIN,
            bold=True,
        ),
        lettered(note, (frame.sheet_width - MARGIN, at), SMALL, anchor="end", fill=PENCIL),
    ]


def _note_drop(frame: Frame) -> float:
    """How far the note stands below the scale bar's line: on a narrow sheet both do not fit."""
    return 0.0 if frame.sheet_width >= SHEET_WIDTH else _NOTE_DROP


def patterns(prefix: str) -> SvgElement:
    """Return the hatch of a wall and the grain of a section, in pencil."""
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
