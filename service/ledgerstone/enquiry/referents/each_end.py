"""A hole so far from either end: two of them, or one in the middle if that is half the length."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.sentence import scope
from ledgerstone.enquiry.sentence.mention import Mention

_HALF: Final = 0.01  # of the length: people round the half of it


def count_at_ends(focus: Focus, parsed: ParsedSentence, mention: Mention) -> None:
    """Take "a hole 100 from each end" for two holes, unless 100 is half of the slab's length."""
    if scope.is_at_each_end(mention, parsed.sentence) and not _is_middle(focus, parsed, mention):
        mention.count = mention.count or 2


def _is_middle(focus: Focus, parsed: ParsedSentence, mention: Mention) -> bool:
    """Return whether so far from both ends is the middle of the slab."""
    piece, assigner = focus.subjects.piece, focus.assigner
    if piece is None or mention.count > 1 or mention.is_plural:
        return False
    whole = [claim.mm for key in ("length", "wide") for claim in piece.claims.get(key, [])]
    far = [size for size in parsed.sizes if size.side == "ends" and size.at > mention.start]
    claims = [assigner.claim(size, "place", (0, 0)) for size in far[:1]]
    return any(
        claim is not None and abs(2 * claim.mm - mm) <= _HALF * mm
        for claim in claims
        for mm in whole
    )
