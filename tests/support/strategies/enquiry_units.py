"""Units in which a mail writes its lengths."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

INCH: Final = 25.4
_METRE: Final = 1000


def _inches(mm: float) -> str:
    whole, quarter = divmod(round(mm / INCH * 4), 4)
    part = ("", "1/4", "1/2", "3/4")[quarter]
    return " ".join(filter(None, (str(whole) if whole else "", part)))


def _feet(mm: float) -> str:
    whole, rest = divmod(round(mm / INCH), 12)
    if not whole:
        return f'{rest}"'
    return f"{whole}'{rest}\"" if rest else f"{whole}'"


_WRITTEN: Final[dict[str, Callable[[float], str]]] = {
    "bare": lambda mm: f"{mm:g}",
    "mm": lambda mm: f"{mm:g}mm",
    " mm": lambda mm: f"{mm:g} mm",
    "cm": lambda mm: f"{mm / 10:g}cm",
    " cm": lambda mm: f"{mm / 10:g} cm",
    "cm,": lambda mm: f"{mm / 10:g} cm".replace(".", ","),
    "m": lambda mm: f"{mm / 1000:g}m" if mm >= _METRE else f"{mm:g}mm",
    "m,": lambda mm: f"{mm / 1000:.2f} m".replace(".", ",") if mm >= _METRE else f"{mm / 10:g} cm",
    "ft": _feet,
    "in": lambda mm: _inches(mm) + " in",
    '"': lambda mm: _inches(mm) + '"',
    "inches": lambda mm: _inches(mm) + " inches",
}


@dataclass
class Unit:
    """How one mail writes lengths: its step in mm, and how a length is written."""

    name: str
    step: float

    def say(self, mm: float) -> str:
        """Write a length."""
        return _WRITTEN[self.name](mm)
