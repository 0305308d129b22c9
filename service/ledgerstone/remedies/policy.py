"""What a fix may change, in which order: the one table of it, and what is never changed.

A fix is weighed by the kinds of change in it, the heaviest kind first, so that a heavier kind is
only used where no lighter one suffices; `costs` orders the changes of one kind. Nothing from
``FAR`` on is ever in a ``fix_all``: it is only shown as the nearest that can be made.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import IntEnum
from types import MappingProxyType
from typing import Final

from ledgerstone.goes_in import is_bowl, is_hob, is_tap
from ledgerstone.order import Cutout, Rectangle, Slab

# Shares of a size by which a change may differ; common practice, no source.
SIZES_WITHIN: Final = 0.05  # in a fix: where neither walls nor units fix the size (`may_grow`)
NEAREST_WITHIN: Final = 0.6  # in the nearest that can be made, which is only shown


class Kind(IntEnum):
    """Kinds of change, the lightest first."""

    HANDLING = 0
    PLACE = 1
    RIM = 2
    THICKNESS = 3
    CUT = 4
    OPENING = 5
    SIZE = 6
    FAR = 7
    OTHER = 8
    LEFT_OUT = 9


KIND_OF_EFFECT: Final[Mapping[str, Kind]] = MappingProxyType(
    {
        # How it is handled, carried, brought and finished.
        "rails": Kind.HANDLING,
        "legs": Kind.HANDLING,
        "end-panels": Kind.HANDLING,
        "move-leg": Kind.HANDLING,
        "more-legs": Kind.HANDLING,
        "frame": Kind.HANDLING,
        "bed": Kind.HANDLING,
        "bed-for-legs": Kind.HANDLING,
        "deliver-pallet": Kind.HANDLING,
        "deliver-own-van": Kind.HANDLING,
        "deliver-fitted": Kind.HANDLING,
        "collect": Kind.HANDLING,
        "heated": Kind.HANDLING,
        "heated-and-collect": Kind.HANDLING,
        "no-tile": Kind.HANDLING,
        "sealer-sooner": Kind.HANDLING,
        "surface-sooner": Kind.HANDLING,
        "later": Kind.HANDLING,
        "shade": Kind.HANDLING,
        "sealer": Kind.HANDLING,
        # Where an opening or a relief lies.
        "move": Kind.PLACE,
        "move-all": Kind.PLACE,
        "move-apart": Kind.PLACE,
        "relief-in": Kind.PLACE,
        "relief-centred": Kind.PLACE,
        # A rim, a radius, an edge, an overhang, the depth of a relief.
        "round": Kind.RIM,
        "edge-size": Kind.RIM,
        "plainer-finish": Kind.RIM,
        "without-drip": Kind.RIM,
        "shallower": Kind.RIM,
        "overhang": Kind.RIM,
        "thicker": Kind.THICKNESS,
        "thinner": Kind.THICKNESS,
        "two-pieces": Kind.CUT,
        # Left at the door or fetched: only where what makes it pass is not found.
        "left-at-door": Kind.CUT,
        "shrink": Kind.OPENING,
        "smaller-opening": Kind.OPENING,
        "relief-smaller": Kind.OPENING,
        "grow": Kind.SIZE,
        "smaller-slab": Kind.SIZE,
        "far-size": Kind.FAR,
        "open-to": Kind.OTHER,
        "turn": Kind.OTHER,
        "bed-instead": Kind.OTHER,
        "relief-out": Kind.LEFT_OUT,
        "fewer": Kind.LEFT_OUT,
        "plain": Kind.LEFT_OUT,
    }
)

# Masonry in place of cabinets or legs: kept in a fix only where nothing else is found.
BASES: Final = frozenset({"bed", "bed-for-legs"})

ChangeWeight = tuple[float, ...]
NOTHING: Final[ChangeWeight] = (0.0,) * len(Kind)  # the weight of no change
NUMBER_CHARACTERS: Final = "-.0123456789"  # options that are tried one by one are numbered


def weight(effect: str, cost: float) -> ChangeWeight:
    """Weigh one change: by its kind, and within its kind by its cost, a pure number."""
    at = len(Kind) - 1 - KIND_OF_EFFECT[effect]
    return tuple(cost if k == at else 0.0 for k in range(len(Kind)))


# No more than any change of this kind or of a heavier one.
HEAVY: Final[ChangeWeight] = weight("two-pieces", 0.001)


def added(one: ChangeWeight, other: ChangeWeight) -> ChangeWeight:
    """Weigh two changes together."""
    return tuple(a + b for a, b in zip(one, other, strict=True))


def kind_of(weighed: ChangeWeight) -> Kind:
    """Return the heaviest kind of change in a weight."""
    return next((Kind(len(Kind) - 1 - k) for k, part in enumerate(weighed) if part), Kind.HANDLING)


def has_its_size(cutout: Cutout) -> bool:
    """Return whether an opening's size is that of what goes into it, and is not ours to change."""
    return is_hob(cutout) or is_bowl(cutout) or is_tap(cutout)


def has_its_room(slab: Slab) -> bool:
    """Return whether walls or units fix a slab's own size, at least along them."""
    return slab.size_from in ("between-walls", "over-units") or _on_units(slab)


def may_grow(slab: Slab) -> tuple[bool, bool]:
    """Return whether a slab may become longer, and deeper: units fix a run's length alone."""
    if not isinstance(slab.outline, Rectangle) or slab.size_from in ("between-walls", "over-units"):
        return False, False
    return not _on_units(slab), True


def _on_units(slab: Slab) -> bool:
    return slab.rests is not None and slab.rests.kind == "units"
