"""A drawing as a PNG: the one place that knows the renderer, with letters of our own."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Final

import resvg_py

from ledgerstone.drawing.frame import MARGIN, SMALL
from ledgerstone.drawing.lettering import PAPER, STANDS_FOR, in_our_letters, lettered
from ledgerstone.drawing.svg import element, number, render

NARROWEST_PX: Final = 320
WIDEST_PX: Final = 1600
MOST_PIXELS: Final = 5_000_000  # a sheet with very many sections is as tall as twenty of its widths

FONT_FOLDER: Final = Path(__file__).with_name("fonts")
FONT_NAME: Final = "Ledgerstone Sans"
_FONTS: Final = [str(FONT_FOLDER / f"sans-{weight}.ttf") for weight in ("regular", "bold")]
_LEADS_OUT = re.compile(r'href="(?!data:image/png;base64,)')
_TEXT = re.compile(r"(<text[^>]*>)([^<]*)</text>")
_SQUEEZED = re.compile(r' (?:textLength|lengthAdjust)="[^"]*"')
_STRIP: Final = SMALL + 13.0  # beneath a drawing, for one line
_SIZE = re.compile(r'<svg [^>]*viewBox="0 0 ([0-9.]+) ([0-9.]+)"')


def rasterise(svg: str, width_px: int) -> bytes:
    """Paint one of our own drawings as a PNG, the same bytes on every server.

    A letter that our font does not have becomes a star, and a line at the foot says so.

    Parameters
    ----------
    svg
        As ``draw_plan``, ``draw_view`` or ``draw_assembled`` wrote it: the renderer would open
        any file that a drawing names.
    width_px
        Kept within 320 to 1600; less where the picture would have over five million pixels.

    Raises
    ------
    ValueError
        It is no drawing of ours: it has no size, or shows something that lies outside it.

    """
    size = _SIZE.match(svg)
    if size is None or _LEADS_OUT.search(svg):
        raise ValueError("only a drawing of ours is painted")
    svg = _in_our_letters(svg)
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
    """Return how many million pixels a drawing of ours has at a width; 0 where it has no size."""
    size = _SIZE.match(svg)
    if size is None:
        return 0.0
    share = float(size[2]) / float(size[1])
    return share * painted_width_px(width_px, share) ** 2 / 1e6


def _in_our_letters(svg: str) -> str:
    """Put stars for letters that we do not have, and say so on a strip beneath the drawing."""
    size = _SIZE.match(svg)
    shown = _TEXT.sub(_starred, svg)
    if size is None or shown == svg:
        return svg
    wide, high = float(size[1]), float(size[2])
    at = (MARGIN, high + _STRIP - 8)
    strip = element("rect", x=0, y=high, width=wide, height=_STRIP, fill=PAPER)
    says = lettered(STANDS_FOR, at, SMALL)
    taller = number(high + _STRIP)
    shown = shown.replace(f' {size[2]}"', f' {taller}"', 1)
    shown = shown.replace(f' height="{size[2]}"', f' height="{taller}"', 1)
    return shown.removesuffix("</svg>") + render(strip) + render(says) + "</svg>"


def _starred(text: re.Match[str]) -> str:
    """Put stars in one text; it is then as wide as its letters are."""
    opened, letters = text.groups()
    shown = in_our_letters(letters)
    if shown == letters:
        return text[0]
    return f"{_SQUEEZED.sub('', opened)}{shown}</text>"


def painted_width_px(wished_px: int, height_share: float) -> int:
    """Return the width that is painted for a wished one, given height over width."""
    width_px = min(max(wished_px, NARROWEST_PX), WIDEST_PX)
    return int(min(width_px, (MOST_PIXELS / height_share) ** 0.5))
