"""How far a colour stays from a target, and how sure a colour is, in plain words."""

from __future__ import annotations

import math
from typing import Final, Literal

from ledgerstone.shade.colour import Lab, delta_e_2000
from ledgerstone.wording import Listed, Message

Certainty = Literal["as-batches", "side-by-side", "not-read", "no-tile"]
SCREENS_DIFFER: Final = Message("screens-differ")

# ΔE00 about 1 is just noticed, up to 2 is a good match, 3-5 is seen: from memory, common in trade.
NOTICED, GOOD, SEEN = 1.0, 2.0, 5.0
_GREYISH_CHROMA = 10.0
_WORTH_A_WORD = 0.4  # of the largest part of the difference


def difference_message(made: Lab, target: Lab) -> Message:
    """State how the colour made differs from the target colour: "a little warmer and lighter"."""
    away = delta_e_2000(made, target)
    if away < NOTICED:
        return Message("shade-the-same")
    amount = "touch" if away < GOOD else "little" if away < SEEN else "clearly"
    if away >= 2 * SEEN:
        amount = "far"
    ways = (Message("shade-direction", direction=way) for way in _directions(made, target))
    return Message("shade-difference", amount=amount, directions=Listed(tuple(ways)))


def _directions(made: Lab, target: Lab) -> list[str]:
    """The two largest parts of a difference, by name; the second only if it counts."""
    parts = [*_tint(made, target), (made[0] - target[0], "lighter", "darker")]
    largest = max(abs(size) for size, *_ in parts)
    parts.sort(key=lambda part: -abs(part[0]))
    return [more if size > 0 else less for size, more, less in parts[:2]
            if abs(size) >= _WORTH_A_WORD * largest]  # fmt: skip


def _tint(made: Lab, target: Lab) -> list[tuple[float, str, str]]:
    """What differs beside lightness, as amounts with a word for more and a word for less."""
    da, db = made[1] - target[1], made[2] - target[2]
    chroma = math.hypot(*target[1:])
    if chroma < _GREYISH_CHROMA and math.hypot(*made[1:]) < 2 * _GREYISH_CHROMA:
        return [_warmth(da, db)]
    stronger = math.hypot(*made[1:]) - chroma
    turned = math.sqrt(max(da**2 + db**2 - stronger**2, 0.0))
    size, more, less = _warmth(da, db)
    return [(stronger, "stronger", "greyer"), (math.copysign(turned, size), more, less)]


def _warmth(da: float, db: float) -> tuple[float, str, str]:
    """Yellow and red are warm, blue and green cool; where those two disagree, name the hue."""
    size = math.hypot(da, db)
    if da * db >= 0 or abs(db) >= 2 * abs(da):
        return math.copysign(size, db or da), "warmer", "cooler"
    if abs(da) >= abs(db):
        return math.copysign(size, da), "redder", "greener"
    return math.copysign(size, db), "yellower", "bluer"


def certainty_of(uncertainty_delta_e: float) -> Certainty:
    """Name how sure a computed colour is, from its uncertainty in CIEDE2000."""
    if uncertainty_delta_e < GOOD:
        return "as-batches"
    return "side-by-side" if uncertainty_delta_e < SEEN else "not-read"
