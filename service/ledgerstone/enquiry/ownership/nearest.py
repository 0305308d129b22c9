"""Which size of a slab "make that 1050" is: the one nearest to it, where no other is as near."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.ownership.choices import in_unit
from ledgerstone.enquiry.scene.said import Claim, SaidPiece
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.sentence.measures import Measure

ROLE_OF: Final = {
    "length": "length",
    "width": "deep",
    "thickness": "thickness",
    "diameter": "diameter",
    "back_depth": "deep",
    "side_depth": "deep",
    "left": "place",
    "right": "place",
    "front": "place",
    "back": "place",
}
_NEAR: Final = 1.6  # what is changed is no more than so many times what it was
_APART: Final = 1.2  # how much nearer it is than the next


def nearest_size(
    piece: SaidPiece, measure: Measure, assigner: SizeAssigner, rank: tuple[int, int]
) -> tuple[str, Claim] | None:
    """Return which size of a slab a number without a name is; None where two are as near.

    A number without a unit is in that of the size that it changes.
    """
    near: list[tuple[float, str, Claim]] = []
    for key, listed in piece.claims.items():
        if not listed or key not in ROLE_OF:
            continue
        known = listed[-1]
        like = measure if measure.size.unit else in_unit(measure, measure, known)
        claim = assigner.claim(like, ROLE_OF[key], rank)
        if claim is not None:
            near.append((max(claim.mm, known.mm) / min(claim.mm, known.mm), key, claim))
    near.sort(key=lambda one: one[0])
    if not near or near[0][0] > _NEAR or (len(near) > 1 and near[1][0] < near[0][0] * _APART):
        return None
    return near[0][1], near[0][2]
