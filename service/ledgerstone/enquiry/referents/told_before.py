"""A slab that a summing-up lists again is the one that was told before."""

from __future__ import annotations

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import SaidPiece, newest

_KEYS = ("length", "width")


def told_before(focus: Focus, parsed: ParsedSentence) -> SaidPiece | None:
    """Go on in the slab whose length and width an item of a summing-up says again."""
    pair = next((size.members[:2] for size in parsed.sizes if size.of > 1 and size.place == 1), [])
    if not (focus.is_summary and parsed.sentence.is_item and pair):
        return None
    lengths = [focus.assigner.claim(one, "length", (0, 0)) for one in pair]
    said = sorted(one.mm for one in lengths if one is not None)
    same = [piece for piece in focus.subjects.scene.pieces if said == _outline(piece)]
    if len(same) != 1:
        return None
    for mention in parsed.found:
        if mention.kind == "slab":
            mention.kind = "turn"
            parsed.turns[mention.start] = same[0]
    return same[0]


def _outline(piece: SaidPiece) -> list[float]:
    """Return a slab's length and width, mm, the smaller first; none where one is not sure."""
    known = [newest(piece.claims.get(key, [])) for key in _KEYS]
    return sorted(one[0].mm for one in known if len(one) == 1) if all(known) else []
