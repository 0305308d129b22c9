"""What was found of each piece and its openings: values by name, and the doubts that remain."""

from __future__ import annotations

from dataclasses import dataclass, field

from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidPiece
from ledgerstone.quantities import Length


@dataclass(slots=True)
class Doubt:
    """A place in the order with two readings or more."""

    at: str
    readings: list[Claim]


@dataclass(slots=True)
class OpeningFound:
    """An opening's sizes and place by name (``diameter``, ``x``, …)."""

    opening: SaidOpening
    kind: str
    values: dict[str, Claim] = field(default_factory=dict)
    doubts: list[Doubt] = field(default_factory=list)


@dataclass(slots=True)
class PieceFound:
    """A slab's sizes by name (``length``, ``notch_width``, …), its openings and its doubts."""

    piece: SaidPiece
    kind: str
    values: dict[str, Claim] = field(default_factory=dict)
    doubts: list[Doubt] = field(default_factory=list)
    openings: list[OpeningFound] = field(default_factory=list)
    points: list[tuple[Length, Length]] = field(default_factory=list)

    def doubted(self, at: str) -> bool:
        """Return whether two readings of a value remain."""
        return any(doubt.at == at for doubt in self.doubts)

    def extent(self, axis: str) -> Claim | None:
        """Return the size of the box round the slab along x or y."""
        name = "diameter" if self.kind == "round" else {"x": "length", "y": "width"}[axis]
        return self.values.get(name)
