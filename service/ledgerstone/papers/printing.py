"""What a PDF is told: its content as data, in letters that our font has."""

from __future__ import annotations

import json
from typing import Any

from ledgerstone.drawing.lettering import STANDS_FOR, in_our_letters


def printed_content(content: dict[str, Any]) -> str:
    """Write a PDF's content as JSON; stars stand for letters we lack, and every page says so."""
    told = json.dumps(content, ensure_ascii=False)
    shown = in_our_letters(told)
    if shown == told:
        return told
    starred = json.loads(shown)
    starred["workshop"] = f"{starred['workshop']} · {STANDS_FOR}"
    return json.dumps(starred, ensure_ascii=False)
