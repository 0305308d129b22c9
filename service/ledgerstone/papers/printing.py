"""Content of a PDF as data, in letters that our font has."""

from __future__ import annotations

import json
from typing import Any, Final

from ledgerstone.drawing.lettering import GLYPH_NOTE, with_known_glyphs
from ledgerstone.json_types import JSON
from ledgerstone.wording import Speech

TICK_BOX: Final = "☐"  # a cell of a table that the printed sheet draws as a box to tick


def printed_content(content: dict[str, Any], speech: Speech) -> str:
    """Write a PDF's content as JSON; a star replaces a missing glyph, and every page notes it."""
    plain = json.loads(json.dumps(content))
    shown = _with_known_glyphs(plain)
    if shown != plain:
        shown["workshop"] = f"{shown['workshop']} · {speech.say(GLYPH_NOTE)}"
    return json.dumps(shown, ensure_ascii=False)


def _with_known_glyphs(content: JSON) -> JSON:
    if isinstance(content, str):
        lines = [
            line if line == TICK_BOX else with_known_glyphs(line) for line in content.split("\n")
        ]
        return "\n".join(lines)
    if isinstance(content, list):
        return [_with_known_glyphs(part) for part in content]
    if isinstance(content, dict):
        return {name: _with_known_glyphs(part) for name, part in content.items()}
    return content
