"""Tables as spreadsheets save them: with commas, or with semicolons and decimal commas."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterable
from typing import Final

_WITH_COMMA: Final = re.compile(r"(-?[0-9]*),([0-9]+)(.*)", re.DOTALL)
_WITH_POINT: Final = re.compile(r"-?[0-9]*\.[0-9]+(?![0-9.,]).*", re.DOTALL)
_IN_THOUSANDS: Final = re.compile(
    r"(-?[1-9][0-9]{0,2}(?:\.[0-9]{3})+)(?![0-9.])((?:,[0-9]+)?(?![0-9,]).*)", re.DOTALL
)


def table_rows(lines: Iterable[str]) -> list[dict[str, str]]:
    """Return the rows of a table below its heading, each cell by its column.

    Where semicolons stand in the heading they part the cells, and a number with a comma in it has
    a decimal comma: so a spreadsheet saves CSV where a comma separates decimals. There a dot before
    three figures separates thousands, unless a number of the table has a decimal point and none
    has a comma.

    Raises
    ------
    csv.Error
        It is no CSV table.
    """
    lines = list(lines)
    parted = ";" if lines and ";" in lines[0] else ","
    read = csv.DictReader(lines, delimiter=parted, skipinitialspace=True)
    rows = [
        {str(name).strip(): str(cell or "").strip() for name, cell in row.items()} for row in read
    ]
    if parted == "," or _has_points(rows):
        return rows
    return [{name: _with_point(cell) for name, cell in row.items()} for row in rows]


def _has_points(rows: Iterable[dict[str, str]]) -> bool:
    """Whether a number can only have a decimal point, and none has a decimal comma."""
    cells = [cell for row in rows for cell in row.values()]
    if any(_WITH_COMMA.fullmatch(_without_thousands(cell)) for cell in cells):
        return False
    return any(_WITH_POINT.fullmatch(_without_thousands(cell)) for cell in cells)


def _without_thousands(cell: str) -> str:
    found = _IN_THOUSANDS.fullmatch(cell)
    return cell if found is None else f"{found[1].replace('.', '')}{found[2]}"


def _with_point(cell: str) -> str:
    text = _without_thousands(cell)
    found = _WITH_COMMA.fullmatch(text)
    return text if found is None else f"{found[1] or 0}.{found[2]}{found[3]}"
