"""The building blocks of a job sheet: what a page holds, as plain lists and values to be said."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import Any

from ledgerstone.message import DayMonth, Figure, Message, Value

Block = dict[str, Any]
Content = dict[str, Any]
MOST_ROWS = 30  # lines of a list on a slab's own sheet, in two columns
NAME = 28  # letters of a name, where it heads a sheet or stands in a table


def heading(says: Value) -> Block:
    """Head a part of a page."""
    return _block("heading", says=says)


def says(*sentences: Value) -> Block:
    """Say some sentences, one a line."""
    return _block("says", says=list(sentences)) if sentences else {}


def ticks(*steps: Value) -> Block:
    """List what is ticked off as it is done."""
    return _block("ticks", says=list(steps))


def flag(text: Value) -> Block:
    """Say what must not be overlooked, in a frame."""
    return _block("flag", says=text)


def facts(*pairs: tuple[Value, Value]) -> Block:
    """Set pairs of what and how as a table."""
    return _block("facts", rows=[[what, told] for what, told in pairs])


def table(
    columns: Sequence[Value],
    rows: Iterable[Sequence[Value]],
    widths: Sequence[int],
    right: Sequence[int] = (),
    *,
    large: bool = False,
) -> Block:
    """Set a table: its columns' shares of the width, and which of them hold figures.

    ``large`` is for what is read and ticked at the mixer, with wet gloves.
    """
    return _block(
        "table",
        columns=list(columns),
        rows=[list(row) for row in rows],
        widths=list(widths),
        right=list(right),
        large=large,
    )


def drawing(svg: str, words: str, wide_mm: float) -> Block:
    """Show a drawing of ours, so wide on paper."""
    return _block("drawing", svg=svg, words=words, wide_mm=wide_mm)


def _block(kind: str, **members: Any) -> Block:
    return {"kind": kind, "column": 0, "shares": [], **members}


def side_by_side(
    left: Iterable[Block], right: Iterable[Block], shares: tuple[int, int] = (1, 1)
) -> Iterator[Block]:
    """Set some blocks beside others on paper; elsewhere they follow one another."""
    for column, blocks in ((1, left), (2, right)):
        for block in blocks:
            if block:
                yield {**block, "column": column, "shares": list(shares)}


def in_two(listed: Block) -> Iterator[Block]:
    """Set a list in two columns, the first half on the left, where it has more than a few lines."""
    rows = listed["rows"]
    half = (len(rows) + 1) // 2
    if half < 2:
        yield listed
        return
    halves = ({**listed, "rows": part} for part in (rows[:half], rows[half:]))
    yield from side_by_side([next(halves)], [next(halves)])


def is_long(listed: Block) -> bool:
    """Whether a list, where there is one, would not leave its sheet's drawing legible."""
    return bool(listed) and len(listed["rows"]) > MOST_ROWS


def page(title: Value, *blocks: Block) -> Content:
    """Begin a page; it runs on to more sheets where one does not hold it at 9 points."""
    return {"title": title, "blocks": [block for block in blocks if block]}


# --- how figures are said -------------------------------------------------------------------


def shortened(name: Value, most: int) -> Value:
    """Cut a label to so many letters, and show that it was cut; a name of ours stays whole."""
    if not isinstance(name, str) or len(name) <= most:
        return name
    return f"{name[: most - 1].rstrip()}…"


def half_mm(length_mm: float) -> Figure:
    """Say a length to the nearest half millimetre, as a rule shows it."""
    return _halves(round(2 * length_mm) / 2)


def kept_mm(length_mm: float) -> Figure:
    """Say what is kept, never more than there is: to the half millimetre below."""
    return _halves(math.floor(2 * length_mm + 1e-9) / 2)


def _halves(length_mm: float) -> Figure:
    return Figure(length_mm, 0 if length_mm.is_integer() else 1)


def plain(number: float, places: int = 3) -> Figure:
    """Say a number with as many places as it has, up to so many."""
    for fewer in range(places):
        if abs(round(number, fewer) - number) < 0.5 * 10.0**-places:
            return Figure(number, fewer)
    return Figure(number, places)


def short_day(day: date) -> DayMonth:
    """Say a day in a narrow column: Thu 3 Dec."""
    return DayMonth(day, short=True)


def hours(minutes: int) -> Message:
    """Say minutes as hours and minutes."""
    whole, rest = divmod(minutes, 60)
    if whole:
        return Message("job-hours-minutes", hours=whole, minutes=f"{rest:02d}")
    return Message("job-minutes", minutes=rest)
