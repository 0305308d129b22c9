"""The building blocks of a job sheet: what a page holds, as plain lists and texts."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import Any

from ledgerstone.message import Figure

Block = dict[str, Any]
Content = dict[str, Any]
MOST_ROWS = 18  # lines of a list on a slab's own sheet
NAME = 28  # letters of a name, where it heads a sheet or stands in a table


def heading(says: str) -> Block:
    """Head a part of a page."""
    return {"kind": "heading", "says": says}


def says(*sentences: str) -> Block:
    """Say some sentences, one a line."""
    return {"kind": "says", "says": list(sentences)}


def ticks(*steps: str) -> Block:
    """List what is ticked off as it is done."""
    return {"kind": "ticks", "says": list(steps)}


def flag(text: str) -> Block:
    """Say what must not be overlooked, large and in a frame."""
    return {"kind": "flag", "says": text}


def big(*lines: str, points: int = 24) -> Block:
    """Say what is read from across the room."""
    return {"kind": "big", "says": list(lines), "points": points}


def facts(*pairs: tuple[str, str]) -> Block:
    """Set pairs of what and how as a table."""
    return {"kind": "facts", "rows": [[what, told] for what, told in pairs]}


def table(
    columns: Sequence[str],
    rows: Iterable[Sequence[str]],
    widths: Sequence[int],
    right: Sequence[int] = (),
    *,
    large: bool = False,
) -> Block:
    """Set a table: its columns' shares of the width, and which of them hold figures.

    ``large`` is for what is read and ticked at the mixer, with wet gloves.
    """
    return {
        "kind": "table",
        "columns": list(columns),
        "rows": [list(row) for row in rows],
        "widths": list(widths),
        "right": list(right),
        "large": large,
    }


def is_long(listed: Block) -> bool:
    """Whether a list, where there is one, would not leave its sheet's drawing legible."""
    return bool(listed) and len(listed["rows"]) > MOST_ROWS


def here_or_later(listed: Block, says_what: str, head: str = "") -> Iterator[Block]:
    """Show a list on the slab's own sheet, or say where it stands."""
    if is_long(listed):
        rows = len(listed["rows"])
        yield says(f"The list of {says_what}, {rows} lines, is on the page “Long lists”.")
    elif listed:
        yield heading(head) if head else {}
        yield listed


def drawing(svg: str, words: str, height_mm: int) -> Block:
    """Show a drawing of ours, no taller than so much."""
    return {"kind": "drawing", "svg": svg, "words": words, "height_mm": height_mm}


def page(title: str, *blocks: Block) -> Content:
    """Begin a page; it runs on to more sheets where one does not hold it."""
    return {"title": title, "blocks": [block for block in blocks if block], "one_sheet": False}


def one_sheet(title: str, *blocks: Block) -> Content:
    """Begin a page that is one sheet of paper: letters and drawings give way until all is on it."""
    return {**page(title, *blocks), "one_sheet": True}


def shortened(text: str, most: int) -> str:
    """Cut a name to so many letters, and show that it was cut."""
    return text if len(text) <= most else f"{text[: most - 1].rstrip()}…"


def mm(length_mm: float) -> str:
    """Say a length to the nearest half millimetre, as a rule shows it."""
    return f"{round(2 * length_mm) / 2:g}"


def to_5_mm(length_mm: float) -> str:
    """Say a place to grip to the nearest 5 mm."""
    return f"{5 * round(length_mm / 5):d}"


def kept_mm(length_mm: float) -> str:
    """Say what is kept, never more than there is: to the half millimetre below."""
    return f"{math.floor(2 * length_mm + 1e-9) / 2:g}"


def short_day(day: date) -> str:
    """Say a day in a narrow column: Thu 3 Dec."""
    return f"{day:%a} {day.day} {day:%b}"


def kg(mass_kg: float) -> str:
    """Say a mass to 0.1 kg."""
    return f"{mass_kg:.1f} kg"


def hours(minutes: int) -> str:
    """Say minutes as hours and minutes."""
    whole, rest = divmod(minutes, 60)
    return f"{whole} h {rest:02d}" if whole else f"{rest} min"


def half_mm(length_mm: float) -> Figure:
    """Say a length to the nearest half millimetre, as a rule shows it."""
    half = round(2 * length_mm) / 2
    return Figure(half, 0 if half.is_integer() else 1)
