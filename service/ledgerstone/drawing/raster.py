"""A drawing as a PNG: the one place that knows the renderer, with letters of our own."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Final

import resvg_py

from ledgerstone.drawing.frame import MARGIN, SMALL
from ledgerstone.drawing.lettering import GLYPH_NOTE, PAPER, lettered, with_known_glyphs
from ledgerstone.drawing.svg import element, number, render
from ledgerstone.wording import Speech

NARROWEST_PX: Final = 320
WIDEST_PX: Final = 1600
MAX_PIXELS: Final = 5_000_000  # a sheet with very many sections is as tall as twenty of its widths

FONT_FOLDER: Final = Path(__file__).with_name("fonts")
FONT_NAME: Final = "Ledgerstone Sans"
_FONTS: Final = [str(FONT_FOLDER / f"sans-{weight}.ttf") for weight in ("regular", "bold")]
_LEADS_OUT = re.compile(
    r'<(?!pattern\b)[^<>]*href="(?!data:image/png;base64,)|<pattern\b[^<>]*href="(?!#)'
)
_TEXT = re.compile(r"(<text[^>]*>)([^<]*)</text>")
_SQUEEZED = re.compile(r' (?:textLength|lengthAdjust)="[^"]*"')
_STRIP: Final = SMALL + 13.0  # beneath a drawing, for one line
_SIZE = re.compile(r'<svg [^>]*viewBox="0 0 ([0-9.]+) ([0-9.]+)"')


def rasterise(svg: str, width_px: int, speech: Speech) -> bytes:
    """Paint one of our own drawings as a PNG, the same bytes on every server.

    A star replaces a missing glyph, and a line at the foot notes it.

    Parameters
    ----------
    svg
        As ``draw_plan``, ``draw_view`` or ``draw_assembled`` wrote it: the renderer would open
        any file that a drawing names.
    width_px
        Kept within 320 to 1600; less where the picture would have over five million pixels.
    speech
        Formats the line at the foot.

    Raises
    ------
    ValueError
        It is not one of our drawings: it has no size, or refers to external content.

    """
    size = _SIZE.match(svg)
    if size is None or _LEADS_OUT.search(svg):
        raise ValueError("only a drawing of ours is painted")
    svg = _with_known_glyphs(svg, speech)
    wide, high = map(float, _SIZE.findall(svg)[0])
    return bytes(
        resvg_py.svg_to_bytes(
            svg_string=svg,
            width=painted_width_px(width_px, high / wide),
            skip_system_fonts=True,
            font_files=_FONTS,
            font_family=FONT_NAME,
            sans_serif_family=FONT_NAME,
        )
    )


def million_pixels(svg: str, width_px: int) -> float:
    """Millions of pixels (px) of a drawing of ours at a width; 0 if it has no size."""
    size = _SIZE.match(svg)
    if size is None:
        return 0.0
    share = float(size[2]) / float(size[1])
    return share * painted_width_px(width_px, share) ** 2 / 1e6


def _with_known_glyphs(svg: str, speech: Speech) -> str:
    """Replace missing glyphs by stars, and note it on a strip beneath the drawing."""
    size = _SIZE.match(svg)
    shown = _TEXT.sub(_starred, svg)
    if size is None or shown == svg:
        return svg
    wide, high = float(size[1]), float(size[2])
    at = (MARGIN, high + _STRIP - 8)
    strip = element("rect", x=0, y=high, width=wide, height=_STRIP, fill=PAPER)
    note = lettered(speech.say(GLYPH_NOTE), at, SMALL)
    taller = number(high + _STRIP)
    shown = shown.replace(f' {size[2]}"', f' {taller}"', 1)
    shown = shown.replace(f' height="{size[2]}"', f' height="{taller}"', 1)
    return shown.removesuffix("</svg>") + render(strip) + render(note) + "</svg>"


def _starred(text: re.Match[str]) -> str:
    """Put stars in one text; it is then as wide as its letters are."""
    opened, letters = text.groups()
    shown = with_known_glyphs(letters)
    if shown == letters:
        return text[0]
    return f"{_SQUEEZED.sub('', opened)}{shown}</text>"


def painted_width_px(asked_px: int, height_share: float) -> int:
    """Return the width painted for a wished one, pixels, by the ratio of height to width."""
    width_px = min(max(asked_px, NARROWEST_PX), WIDEST_PX)
    return int(min(width_px, (MAX_PIXELS / height_share) ** 0.5))
