"""What is left over is what is missing, where it can be only that: "a sill in 40, overall 1450"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import permutations
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, SaidPiece, say
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.sentence.amounts import LIKELY_MM
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.tokens import TextSpan

_OTHERS: Final = frozenset({"open", "hole", "thing", "room", "leg", "feature"})
_MOST: Final = 3  # sizes left over; of more nobody can tell
_FAR: Final = 400  # characters between a slab's own sizes and what is left over
_SIDES: Final = ("length", "width")
_ROLE: Final = {
    "length": "length",
    "width": "deep",
    "thickness": "thickness",
    "diameter": "diameter",
}
_MIN_BARE: Final = 10
_THICKEST_MM: Final = 100.0  # of what nobody calls a thickness: common practice, no source
_SHORTEST_MM: Final = 500.0  # of what nobody calls a length
_SQUARE: Final = 1.05  # a length is longer than a width by as much


@dataclass(frozen=True, slots=True)
class _Left:
    measure: Measure
    rank: tuple[int, int]

    @property
    def span(self) -> TextSpan:
        return self.measure.size.start, self.measure.size.end


class Leftovers:
    """Keeps the sizes of sentences that tell of a slab and nothing else, by their slab."""

    def __init__(self) -> None:
        self._of: list[tuple[SaidPiece, _Left]] = []

    def note(
        self,
        piece: SaidPiece | None,
        sizes: Sequence[Measure],
        found: Sequence[Mention],
        rank: tuple[int, int],
    ) -> None:
        """Keep a sentence's plain sizes, where it names nothing that they may be of."""
        others = any(one.kind in _OTHERS or one.is_old for one in found)
        if piece is None or others:
            return
        for size in sizes:
            plain = size.of == 1 and size.role in ("", "size") and not (size.side or size.axis)
            if plain and not (size.replaced or size.aside or size.opinion or size.about):
                self._of.append((piece, _Left(size, rank)))

    def move(self, start: int, piece: SaidPiece) -> None:
        """Give what was said from a place in the text on to the slab that was named there."""
        self._of = [(piece if one.span[0] > start else whose, one) for whose, one in self._of]

    def settle(self, pieces: Sequence[SaidPiece], assigner: SizeAssigner) -> None:
        """Give each slab what it lacks, where what is left over can be that in one way alone."""
        used = {span for piece in pieces for span in _spans(piece)}
        for piece in pieces:
            left = [one for whose, one in self._of if whose is piece and one.span not in used]
            lacking = _lacking(piece)
            if not lacking or not 0 < len(left) <= min(_MOST, len(lacking)):
                continue
            ways = list(_ways(piece, left, lacking, assigner))
            if len(ways) == 1:
                for key, claim in ways[0].items():
                    say(piece.claims, key, replace(claim, how="worked-out"))


def _spans(piece: SaidPiece) -> Iterator[TextSpan]:
    owners = [piece.claims, *(opening.claims for opening in piece.openings)]
    for claims in owners:
        for listed in claims.values():
            for claim in listed:
                yield from claim.spans


def _lacking(piece: SaidPiece) -> list[str]:
    """Return which of a rectangle's three sizes are unsaid; none of what has another shape."""
    known = piece.claims
    if piece.shape == "round" and not known.get("length"):
        return [key for key in ("diameter", "thickness") if not known.get(key)]
    if piece.shape not in ("", "oval") or known.get("diameter") or piece.like is not None:
        return []
    if (
        known.get("wide")
        or known.get("breadth")
        or known.get("high")
        or any(key.startswith("edge:") for key in known)
    ):
        return []
    return [key for key in ("length", "width", "thickness") if not known.get(key)]


def _ways(
    piece: SaidPiece, left: Sequence[_Left], lacking: Sequence[str], assigner: SizeAssigner
) -> Iterator[dict[str, Claim]]:
    """Yield every way in which all that is left over may be what a slab lacks."""
    is_lone = len(left) == 1 and set(_SIDES) <= set(lacking)  # nobody tells a width alone
    for keys in permutations(lacking, len(left)):
        if is_lone and keys == ("width",):
            continue
        said = {
            key: claim
            for key, one in zip(keys, left, strict=True)
            if (claim := _claim(key, one, assigner)) is not None
        }
        if len(said) == len(left) and _is_slab(piece, said):
            yield said


def _claim(key: str, left: _Left, assigner: SizeAssigner) -> Claim | None:
    size = left.measure.size
    if size.unit is None and size.amount < _MIN_BARE:
        return None
    claim = assigner.claim(left.measure, _ROLE[key], left.rank)
    low, high = LIKELY_MM[_ROLE[key]]
    if key == "thickness":
        high = min(high, _THICKEST_MM)
    if key == "length":
        low = _SHORTEST_MM
    return claim if claim is not None and low <= claim.mm <= high else None


def _is_slab(piece: SaidPiece, said: dict[str, Claim]) -> bool:
    """Return whether a length so worked out is longer than its width."""
    sizes = {key: said.get(key) or next(iter(piece.claims.get(key, [])), None) for key in _SIDES}
    length, width = sizes["length"], sizes["width"]
    return length is None or width is None or length.mm >= _SQUARE * width.mm
