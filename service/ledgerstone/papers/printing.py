"""What a PDF is told: its content as data, in letters that our font has."""

from __future__ import annotations

import json
from typing import Any, Final

from ledgerstone.drawing.lettering import STANDS_FOR, in_our_letters
from ledgerstone.json_types import JSON

TICK: Final = "☐"  # a cell of a table that the printed sheet draws as a box to tick


def printed_content(content: dict[str, Any]) -> str:
    """Write a PDF's content as JSON; stars stand for letters we lack, and every page says so."""
    told = json.loads(json.dumps(content))
    shown = _in_our_letters(told)
    if shown != told:
        shown["workshop"] = f"{shown['workshop']} · {STANDS_FOR}"
    return json.dumps(shown, ensure_ascii=False)


def _in_our_letters(told: JSON) -> JSON:
    if isinstance(told, str):
        lines = [line if line == TICK else in_our_letters(line) for line in told.split("\n")]
        return "\n".join(lines)
    if isinstance(told, list):
        return [_in_our_letters(part) for part in told]
    if isinstance(told, dict):
        return {name: _in_our_letters(part) for name, part in told.items()}
    return told
