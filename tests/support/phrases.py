"""What people write, by the part of a message: the phrases that random enquiries are made of."""

import tomllib
from pathlib import Path
from typing import Any

_PHRASES = Path(__file__).resolve().parents[1] / "data" / "phrases"


def phrases(name: str) -> dict[str, Any]:
    """Return the tables of ``tests/data/phrases/NAME.toml``."""
    found: dict[str, Any] = tomllib.loads((_PHRASES / f"{name}.toml").read_text("utf-8"))
    return found
