"""Values as TOML writes them, a long list folded over several lines."""

from __future__ import annotations

import json
import textwrap
from decimal import Decimal
from typing import Final

LINE_WIDTH: Final = 98  # characters; what is longer is wrapped


def lines_of(key: str, value: object) -> list[str]:
    """Return ``key = value`` as TOML, a long list folded over several lines."""
    line = f"{key} = {toml_text(value)}"
    if len(line) <= LINE_WIDTH or not isinstance(value, tuple):
        return [line]
    mark = "# " if key.startswith("#") else ""
    items = ", ".join(toml_text(item).replace(" ", "\0") for item in value) + ","
    inside = textwrap.wrap(items, LINE_WIDTH - 4, break_long_words=False, break_on_hyphens=False)
    return [f"{key} = [", *(f"{mark}  {row}".replace("\0", " ") for row in inside), f"{mark}]"]


def toml_text(value: object) -> str:
    """Return a value as TOML writes it."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False)
    if isinstance(value, tuple):
        return f"[{', '.join(toml_text(item) for item in value)}]"
    if isinstance(value, float):
        return repr(value).removesuffix(".0")
    return format(value, "f") if isinstance(value, Decimal) else str(value)
