"""How wide letters are, so that a label's place is known before anybody draws it."""

from __future__ import annotations

import re
import unicodedata
from types import MappingProxyType
from typing import Final, Literal

from ledgerstone.drawing.svg import SvgElement, clean, element
from ledgerstone.message import Message

FAMILY: Final = "Liberation Sans, Arial, Helvetica, sans-serif"
INK: Final = "#282621"
PENCIL: Final = "#5b564d"
ACCENT: Final = "#94371a"
PAPER: Final = "#fcfbf7"
SLAB_FILL: Final = "#ebe7dd"

Anchor = Literal["start", "middle", "end"]

# Advance widths in thousandths of the size, from the space to the tilde. Source: the Helvetica
# metrics of Adobe's core fonts, which Arial and Liberation Sans keep.
_WIDTHS: Final = (
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
)  # fmt: skip
_BOLD_WIDTHS: Final = (
    278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611,
    975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778,
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556,
    333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611,
    611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584,
)  # fmt: skip
_KNOWN: Final = MappingProxyType({chr(32 + i): wide for i, wide in enumerate(_WIDTHS)})
_KNOWN_BOLD: Final = MappingProxyType({chr(32 + i): wide for i, wide in enumerate(_BOLD_WIDTHS)})
_GLUED: Final = re.compile(r"(?<=\d) (?=(?:mm|cm|m|in|ft|\d+/\d+)\b)")  # a number and its unit
_LAST_LATIN: Final = 0x24F
# All but what the font that we ship can draw, from its own table of letters.
_NOT_OURS: Final = re.compile(
    "[^ -~\u00a0-\u024f\u0300-\u036f\u0374\u0375\u037a-\u037e\u0384-\u038a\u038c\u038e-\u03a1"
    "\u03a3-\u03ce\u03d0-\u045f\u0490\u0491\u2010\u2012-\u2015\u2018-\u201e\u2020-\u2022\u2026\u2030"
    "\u2032\u2033\u2044\u20ac\u2116\u2122\u2153\u2154\u215b-\u215e\u2190-\u2193\u2212\u2248\u2260"
    "\u2264\u2265]"
)
STAND_IN: Final = "*"
GLYPH_NOTE: Final = Message("drawing-unknown-letters")
_MARKS: Final = frozenset("–—·×°±…‘’“”Ø")


def text_width(text: str, size: float, *, bold: bool = False) -> float:
    """Width of a line of text as it will be drawn, in sheet units if ``size`` is."""
    return _advance(text, bold=bold) * size / 1000


def _advance(text: str, *, bold: bool) -> int:
    """Width of a line of text in thousandths of its size: each letter's, added up."""
    known = _KNOWN_BOLD if bold else _KNOWN
    try:
        return sum(map(known.__getitem__, text))
    except KeyError:
        return sum(known.get(char) or _letter(char) for char in text)


def _letter(char: str) -> int:
    if unicodedata.category(char) in {"Mn", "Me", "Cf"}:
        return 0
    if ord(char) <= _LAST_LATIN:
        return 780
    return 1000


def with_known_glyphs(text: str) -> str:
    """Put a star for every letter that the font we ship does not have."""
    return _NOT_OURS.sub(STAND_IN, text)


def fitted(text: str, room: float, size: float, *, bold: bool = False) -> str:
    """Shorten a text with an ellipsis to at most ``room``, sheet units as ``size`` is."""
    shown = clean(text)
    wide = _advance(shown, bold=bold)
    if wide * size / 1000 <= room:
        return shown
    wide += _advance("…", bold=bold)
    while shown and wide * size / 1000 > room:
        wide -= _advance(shown[-1], bold=bold)
        shown = shown[:-1]
    return shown.rstrip() + "…" if shown else ""


def wrapped(text: str, room: float, size: float, lines: int) -> tuple[str, ...]:
    """Break a text at spaces into at most ``lines`` lines of width ``room``, sheet units."""
    words, rows = _GLUED.sub("\N{NO-BREAK SPACE}", clean(text)).split(" "), [""]
    for at, word in enumerate(words):
        longer = f"{rows[-1]} {word}".strip()
        if text_width(longer, size) <= room or not rows[-1]:
            rows[-1] = longer
        elif len(rows) < lines:
            rows.append(word)
        else:
            rows[-1] = " ".join([rows[-1], *words[at:]])
            break
    return tuple(fitted(row, room, size) for row in rows)


def lettered(
    text: str,
    at: tuple[float, float],
    size: float,
    *,
    anchor: Anchor = "start",
    fill: str = INK,
    bold: bool = False,
    halo: str | None = None,
    turn: float | None = None,
) -> SvgElement:
    """Write a line of text, its baseline at a point, sheet units; a halo covers lines behind it.

    A text in letters of unknown width is compressed into the width that was reserved for it.
    """
    x, y = at
    shown = clean(text)
    foreign = any(ord(char) > _LAST_LATIN and char not in _MARKS for char in shown)
    return element(
        "text",
        shown,
        x=x,
        y=y,
        font_size=size,
        text_anchor=None if anchor == "start" else anchor,
        fill=fill,
        font_weight="bold" if bold else None,
        stroke=halo,
        stroke_width=size * 0.28 if halo else None,
        stroke_linejoin="round" if halo else None,
        paint_order="stroke" if halo else None,
        transform=None if turn is None else f"rotate({turn:g} {x:.2f} {y:.2f})",
        textLength=max(1.0, text_width(shown, size, bold=bold)) if foreign else None,
        lengthAdjust="spacingAndGlyphs" if foreign else None,
    )
