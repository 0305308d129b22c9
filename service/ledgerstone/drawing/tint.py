"""Colours of the view: a shade brightened, darkened and mixed."""

from __future__ import annotations

from typing import Final

RGB = tuple[int, int, int]
DARK: Final[RGB] = (24, 21, 17)


def rgb_of(colour: str) -> RGB:
    """Read ``#rrggbb``.

    Raises
    ------
    ValueError
        The text is not such a colour.

    """
    if len(colour) != 7 or not colour.startswith("#"):
        raise ValueError("a colour is #rrggbb")
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)


def hex_of(rgb: tuple[float, float, float]) -> str:
    """Write three parts, pure numbers clipped to 0 to 255, as ``#rrggbb``."""
    red, green, blue = rgb
    return f"#{_clipped(red):02x}{_clipped(green):02x}{_clipped(blue):02x}"


def _clipped(part: float) -> int:
    return min(255, max(0, round(part)))


def lit(colour: RGB, brightness: float) -> str:
    """Return a colour times a brightness, a pure number; above 1, mixed with white."""
    if brightness > 1:
        return mixed(colour, (255, 255, 255), min(1.0, brightness - 1))
    return hex_of((colour[0] * brightness, colour[1] * brightness, colour[2] * brightness))


def mixed(colour: RGB, other: RGB, share: float) -> str:
    """Return a colour with a share of another in it."""
    parts = [a + (b - a) * share for a, b in zip(colour, other, strict=True)]
    return hex_of((parts[0], parts[1], parts[2]))


def depths(colour: RGB) -> str:
    """Return what is seen down an opening: the dark, with a little of the shade in it."""
    return mixed(colour, DARK, 0.86)
