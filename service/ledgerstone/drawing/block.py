"""The title block, with the shade's swatch, and the scale bar."""

from __future__ import annotations

from ledgerstone.drawing.frame import LARGE, MARGIN, SMALL, Frame
from ledgerstone.drawing.lettering import INK, PAPER, PENCIL, fitted, lettered, text_width, wrapped
from ledgerstone.drawing.records import TitleBlock
from ledgerstone.drawing.saying import rests_facts
from ledgerstone.drawing.svg import SvgElement, clean, element
from ledgerstone.message import Figure, Message
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import INCH_MM, Length
from ledgerstone.wording import Speech

_SWATCH = 30.0
_LINE = 21.0
_PRINTED_MM = 190.0  # across A4 within margins of 10 mm
_PRINTED_IN = 7.5  # across US letter within margins of 1/2 in
_METRIC_MM = (10, 20, 50, 100, 200, 500, 1000, 2000, 5000)
_INCHES = (1, 2, 3, 6, 12, 24, 36, 60, 120)
_ROUGH = 10.0  # a scale's denominator above which tenths are not written


def title_block(
    slab: Slab, title: TitleBlock, scale: Message, at: XY, speech: Speech
) -> tuple[list[SvgElement], float]:
    """Draw the block and return its lower end; ``at`` is top and width, sheet units."""
    top, wide = at
    left, right = MARGIN + 12, wide - MARGIN - 12
    head = fitted(
        title.label or slab.label or speech.say(Message("plan-slab")),
        right - left,
        LARGE,
        bold=True,
    )
    drawn = [lettered(head, (left, top + 29), LARGE, bold=True)]
    foot = top + 54
    swatch = _swatch(title, (right, top + 45))
    for text in _facts(slab, title, scale, speech):
        room = right - left - (0.0 if foot > top + 54 + 2 * _LINE else _swatch_room(title))
        for line in wrapped(text, room, SMALL, 2):
            drawn.append(lettered(line, (left, foot), SMALL))
            foot += _LINE
    foot = max(foot, top + 54 + (_LINE + _SWATCH if swatch else 0.0))
    frame = element(
        "rect",
        x=MARGIN,
        y=top,
        width=wide - 2 * MARGIN,
        height=foot - top,
        fill=PAPER,
        stroke=INK,
        stroke_width=1.4,
    )
    return [frame, *drawn, *swatch], foot


def _facts(slab: Slab, title: TitleBlock, scale: Message, speech: Speech) -> list[str]:
    made = Message(
        "plan-facts",
        quantity=slab.quantity,
        thickness=slab.thickness,
        surface=slab.finish.surface,
        sealer=slab.finish.sealer,
    )
    facts = [
        title.lies,
        speech.say(made),
        " · ".join(text for text in (title.workshop, title.reference, title.date) if text),
        speech.say(scale),
    ]
    if slab.rests is not None:
        facts.insert(2, speech.say(Message("plan-fact-rests", rests=rests_facts(slab.rests))))
    return [fact for fact in facts if fact]


def _swatch_room(title: TitleBlock) -> float:
    if title.colour is None:
        return 0.0
    return max(_SWATCH, min(text_width(clean(title.shade), SMALL), 130.0)) + 16


def _swatch(title: TitleBlock, corner: XY) -> list[SvgElement]:
    """Draw the shade's colour with its name beneath, hung from the right."""
    if title.colour is None:
        return []
    x, y = corner
    name = fitted(title.shade, 130.0, SMALL)
    return [
        element(
            "rect",
            x=x - _SWATCH * 2,
            y=y,
            width=_SWATCH * 2,
            height=_SWATCH,
            fill=title.colour,
            stroke=INK,
            data_part="shade",
        ),
        lettered(name, (x, y + _SWATCH + 17), SMALL, anchor="end"),
    ]


def scale_note(frame: Frame, like: Length) -> Message:
    """State how much smaller than the slab the sheet is on paper, and that the figures decide."""
    inches = like.unit in {"in", "ft"}
    wide_mm = _PRINTED_IN * INCH_MM if inches else _PRINTED_MM
    smaller = frame.sheet_width / (wide_mm * frame.per_mm)
    ratio = Figure(smaller, 1 if smaller < _ROUGH else 0)
    return Message("plan-scale", smaller=ratio, paper="letter" if inches else "a4")


def scale_bar(frame: Frame, like: Length, at: XY, speech: Speech) -> list[SvgElement]:
    """Draw a bar of a round length, half black, its left end at ``at``, sheet units."""
    inches = like.unit in {"in", "ft"}
    sizes = [(n * INCH_MM, f"{n} in") for n in _INCHES] if inches else _metric_bars(like)
    fitting = [(mm, text) for mm, text in sizes if mm * frame.per_mm <= 130]
    mm, text = fitting[-1] if fitting else sizes[0]
    x, y = at
    half = mm * frame.per_mm / 2
    return [
        element("rect", x=x, y=y, width=half, height=6, fill=INK, stroke=INK),
        element("rect", x=x + half, y=y, width=half, height=6, fill=PAPER, stroke=INK),
        lettered("0", (x, y - 5), SMALL, anchor="middle", fill=PENCIL),
        lettered(speech.formats.number(text), (x + 2 * half + 8, y + 8), SMALL, fill=PENCIL),
    ]


def _metric_bars(like: Length) -> list[tuple[float, str]]:
    """Bars of whole millimetres and metres, or in the sheet's own unit where that is another."""
    if like.unit != "mm":
        return [(n, like.in_unit(n).text()) for n in _METRIC_MM]
    return [(n, f"{n} mm" if n < 1000 else f"{n // 1000} m") for n in _METRIC_MM]
