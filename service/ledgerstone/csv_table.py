"""Tables as spreadsheets save them: with commas, or with semicolons and decimal commas."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterable
from typing import Final

_WITH_COMMA: Final = re.compile(r"(-?[0-9]*),([0-9]+)(.*)", re.DOTALL)


def table_rows(lines: Iterable[str]) -> list[dict[str, str]]:
    """Return the rows of a table below its heading, each cell by its column.

    Where semicolons stand in the heading they part the cells, and a number with a comma in it has
    a decimal comma: so a spreadsheet saves CSV where a comma separates decimals.

    Raises
    ------
    csv.Error
        It is no CSV table.
    """
    lines = list(lines)
    parted = ";" if lines and ";" in lines[0] else ","
    read = csv.DictReader(lines, delimiter=parted, skipinitialspace=True)
    return [{str(name).strip(): _cell(cell, parted) for name, cell in row.items()} for row in read]


def _cell(cell: str | None, parted: str) -> str:
    text = str(cell or "").strip()
    found = _WITH_COMMA.fullmatch(text) if parted == ";" else None
    return text if found is None else f"{found[1] or 0}.{found[2]}{found[3]}"
