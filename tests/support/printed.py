"""What stands on a printed paper: its pages, and every letter with its size and place."""

from __future__ import annotations

import ctypes
import math
from collections.abc import Iterator
from dataclasses import dataclass

import pypdfium2
from pypdfium2 import raw

MM_PER_POINT = 25.4 / 72


@dataclass(frozen=True)
class Letter:
    """One letter: its page from 0, how large it is set, where, and how tall, upright or turned."""

    page: int
    text: str
    points: float
    left_mm: float
    tall_mm: float


def page_count(pdf: bytes) -> int:
    """Count a PDF's pages."""
    return len(pypdfium2.PdfDocument(pdf))


def page_texts(pdf: bytes) -> list[str]:
    """Read each page's text, white space as single spaces."""
    pages = pypdfium2.PdfDocument(pdf)
    return [" ".join(page.get_textpage().get_text_range().split()) for page in pages]


def letters(pdf: bytes) -> Iterator[Letter]:
    """Yield every letter that is no space, drawings' own too, as it stands on the paper."""
    for number, page in enumerate(pypdfium2.PdfDocument(pdf)):
        text = page.get_textpage()
        for i in range(text.count_chars()):
            char = text.get_text_range(i, 1)
            if char.strip():
                yield _letter(number, char, text, i)


def _letter(number: int, char: str, text: pypdfium2.PdfTextPage, i: int) -> Letter:
    matrix = raw.FS_MATRIX()
    assert raw.FPDFText_GetMatrix(text, i, ctypes.byref(matrix))
    size = raw.FPDFText_GetFontSize(text, i) * math.hypot(matrix.c, matrix.d)
    left, low, right, high = (MM_PER_POINT * at for at in text.get_charbox(i))
    return Letter(number, char, size, left, max(right - left, high - low))


def least_points(pdf: bytes) -> float:
    """Return the size of the smallest letters on any page, points."""
    return min(one.points for one in letters(pdf))
