"""A hole so far from either end: two of them, or one in the middle if that is half the length."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.sentence import scope
from ledgerstone.enquiry.sentence.mention import Mention

_OUTLETS: Final = frozenset({"waste", "drain"})
_EACH: Final = frozenset({"each", "je", "jeweils"})
_BOTH: Final = frozenset({"both", "beide", "beiden"})
_ONE: Final = frozenset({"a", "an", "one", "ein", "eine", "einen"})
_FAR: Final = 5  # words
_AFTER: Final = 3  # words
_HALF: Final = 0.01  # of the length: people round the half of it


def count_at_ends(focus: Focus, parsed: ParsedSentence, mention: Mention) -> None:
    """Take "a hole 100 from each end" for two holes, unless 100 is half of the slab's length."""
    if scope.is_at_each_end(mention, parsed.sentence) and not _is_middle(focus, parsed, mention):
        mention.count = mention.count or 2
    if _is_on_each_side(parsed, mention):
        mention.count = mention.count if mention.count > 1 else 2
    if mention.name in _OUTLETS and not mention.count:
        mention.count = _one_each(parsed, mention)


def _is_on_each_side(parsed: ParsedSentence, mention: Mention) -> bool:
    """Return whether a hole is one of two beside a bowl: "one hole on each side of the sink"."""
    words = parsed.sentence.words
    near = [i for i, _ in parsed.sentence.marks("sideways") if 0 <= i - mention.end <= _FAR]
    is_open = mention.kind in ("open", "hole") and not mention.is_plural
    return (
        is_open
        and bool(near)
        and mention.determiner in _ONE
        and "to" not in words[near[0] - 1 :][:1]
    )


def _one_each(parsed: ParsedSentence, mention: Mention) -> int:
    """Return how many bowls have a hole each: "both bowls stand on top, a waste hole each"."""
    words = parsed.sentence.words
    if not _EACH & set(words[mention.end : mention.end + _AFTER]):
        return 0
    bowls = [one for one in parsed.found if one.kind == "open" and one.start < mention.start]
    counts = [2 for word in words[: mention.start] if word in _BOTH]
    counts += [one.count for one in bowls if one.count > 1]
    return max(counts, default=0) if bowls else 0


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
