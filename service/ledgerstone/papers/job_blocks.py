"""The blocks of a job sheet's page, as plain lists and values that are formatted later."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from datetime import date, datetime
from typing import Any

from ledgerstone.message import Clock, DayMonth, Figure, Message, Value
from ledgerstone.papers.sheet import Content

SheetBlock = dict[str, Any]
MAX_SHEET_ROWS = 30  # lines of a list on a slab's own sheet, in two columns
NAME = 28  # letters of a name in a title or a table


def heading(text: Value) -> SheetBlock:
    """Head a part of a page."""
    return _block("heading", says=text)


def says(*sentences: Value) -> SheetBlock:
    """Return a block of sentences, one a line."""
    return _block("says", says=list(sentences)) if sentences else {}


def ticks(*steps: Value) -> SheetBlock:
    """List what is ticked off as it is done."""
    return _block("ticks", says=list(steps))


def flag(text: Value) -> SheetBlock:
    """Return a framed block for what must not be overlooked."""
    return _block("flag", says=text)


def facts(*pairs: tuple[Value, Value]) -> SheetBlock:
    """Set pairs of what and how as a table."""
    return _block("facts", rows=[[name, value] for name, value in pairs])


def table(
    columns: Sequence[Value],
    rows: Iterable[Sequence[Value]],
    widths: Sequence[int],
    right: Sequence[int] = (),
    *,
    large: bool = False,
) -> SheetBlock:
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


def drawing(svg: str, words: str, wide_mm: float) -> SheetBlock:
    """Return a block with a drawing, of a width on paper."""
    return _block("drawing", svg=svg, words=words, wide_mm=wide_mm)


def _block(kind: str, **members: Any) -> SheetBlock:
    return {"kind": kind, "column": 0, "shares": [], **members}


def side_by_side(
    left: Iterable[SheetBlock], right: Iterable[SheetBlock], shares: tuple[int, int] = (1, 1)
) -> Iterator[SheetBlock]:
    """Set some blocks beside others on paper; elsewhere they follow one another."""
    for column, blocks in ((1, left), (2, right)):
        for block in blocks:
            if block:
                yield {**block, "column": column, "shares": list(shares)}


def in_two(listed: SheetBlock) -> Iterator[SheetBlock]:
    """Return a list in two columns if it has more than a few lines."""
    rows = listed["rows"]
    half = (len(rows) + 1) // 2
    if half < 2:
        yield listed
        return
    halves = ({**listed, "rows": part} for part in (rows[:half], rows[half:]))
    yield from side_by_side([next(halves)], [next(halves)])


def is_long(listed: SheetBlock) -> bool:
    """Return whether a list is so long that its sheet's drawing would be illegible."""
    return bool(listed) and len(listed["rows"]) > MAX_SHEET_ROWS


def page(title: Value, *blocks: SheetBlock) -> Content:
    """Return a page, which continues on more sheets if one does not hold it at 9 pt."""
    return {"title": title, "blocks": [block for block in blocks if block]}


# --- formatting of figures ------------------------------------------------------------------


def shortened(name: Value, most: int) -> Value:
    """Shorten a label to a number of letters, with an ellipsis; our own names stay whole."""
    if not isinstance(name, str) or len(name) <= most:
        return name
    return f"{name[: most - 1].rstrip()}…"


def plain(number: float, places: int = 3) -> Figure:
    """Format a number without trailing zeros, up to a number of places."""
    for fewer in range(places):
        if abs(round(number, fewer) - number) < 0.5 * 10.0**-places:
            return Figure(number, fewer)
    return Figure(number, places)


def short_day(day: date) -> DayMonth:
    """Format a day for a narrow column: Thu 3 Dec."""
    return DayMonth(day, short=True)


def about(at: datetime) -> Clock:
    """Format a time of day, rounded to five minutes."""
    return Clock(at.hour, 5 * (at.minute // 5))


def hours(minutes: int) -> Message:
    """Format minutes as hours and minutes."""
    whole, rest = divmod(minutes, 60)
    if whole:
        return Message("job-hours-minutes", hours=whole, minutes=f"{rest:02d}")
    return Message("job-minutes", minutes=rest)
