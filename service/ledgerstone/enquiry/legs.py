"""An L: what is said of its two legs, of the corner it leaves out, and of the side it turns to."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.focus import Heard
from ledgerstone.enquiry.lexicon import mark
from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.scene import Piece, Word, say
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.settle import Settler

_FAR: Final = 9
_DEEPEST: Final = 900.0
_LEFT: Final = frozenset(["left", "links", "linken", "lh", "linke"])
_RIGHT: Final = frozenset(["right", "rechts", "rechten", "rh", "rechte"])
_BACK: Final = frozenset({"back", "rear", "hinten"})
_BOTH: Final = frozenset({"both", "each", "beide", "beiden"})
_THROUGHOUT: Final = frozenset({"throughout", "everywhere", "überall"})


def leg_of(measure: Measure, legs: list[Mention], until: int, since: int, before: str) -> str:
    """Give which leg a size is of: named since the last size, else right after it, else before.

    A leg that is named after a size is that size's and no other's.
    """
    near = [leg for leg in legs if since <= leg.start < measure.at]
    if near:
        return near[-1].name
    last = measure.members[-1].at if measure.members else measure.at
    after = [leg for leg in legs if measure.at < leg.start < min(until, last + _FAR)]
    if after:
        legs.remove(after[0])
        return after[0].name
    ahead = [leg for leg in legs if leg.end <= measure.at]
    return ahead[-1].name if ahead else before


def read_legs(
    piece: Piece,
    measures: Sequence[Measure],
    named: dict[int, str],
    heard: Heard,
    settler: Settler,
) -> None:
    """Give an L its sizes of one sentence: outside lengths, depths of its legs, its notch."""
    notch = [one for one in measures if named.get(one.at) == "notch" and one.role != "thick"]
    pairs = [one for one in measures if one.of > 1 and one not in notch]
    if notch:
        _notch(piece, notch, heard, settler)
    if len(pairs) >= 2 and not _leg_pair(piece, pairs, named, heard, settler):
        settler.piece(piece, pairs, heard.rank)
    throughout = bool(_THROUGHOUT & set(heard.sentence.words))
    for measure in measures:
        if measure in notch or measure in pairs:
            continue
        leg = named.get(measure.at, "")
        is_bare = measure.of == 1 and not measure.role and not leg
        if measure.role == "thick" or (is_bare and settler.is_thin(measure)):
            settler.piece(piece, [measure], heard.rank)
        elif measure.role in ("deep", "wide") and _BOTH & set(
            heard.sentence.words[measure.at + 1 : measure.at + 3]
        ):
            _depth(piece, measure, "both", heard, settler)
        elif measure.role in ("deep", "wide") or measure.axis == "y":
            _depth(piece, measure, "" if throughout else leg, heard, settler)
        else:
            _reach(piece, measure, leg, heard, settler)


def _leg_pair(
    piece: Piece, pairs: Sequence[Measure], named: dict[int, str], heard: Heard, settler: Settler
) -> bool:
    """Take how long one leg is and how deep: "back run 3100 x 620"."""
    leg = named.get(pairs[0].at, "")
    depth = settler.claim(pairs[1], "deep", heard.rank)
    if leg not in ("back", "side") or len(pairs) != 2 or depth is None or depth.mm > _DEEPEST:
        return False
    _reach(piece, pairs[0], leg, heard, settler)
    _depth(piece, pairs[1], leg, heard, settler)
    return True


def _reach(piece: Piece, measure: Measure, leg: str, heard: Heard, settler: Settler) -> None:
    """Take an outside length: along the back, or how far the shorter leg comes forward."""
    key = {"back": "length", "side": "width"}.get(leg, "")
    if not key and measure.role == "long":
        key = "length" if "length" not in piece.claims else "width"
    claim = settler.claim(measure, "length", heard.rank)
    if key and claim is not None:
        say(piece.claims, key, claim)


def _depth(piece: Piece, measure: Measure, leg: str, heard: Heard, settler: Settler) -> None:
    claim = settler.claim(measure, "deep", heard.rank)
    if claim is None:
        return
    if leg in ("back", "both", ""):
        say(piece.claims, "back_depth", claim)
    if leg in ("side", "both", ""):
        say(piece.claims, "side_depth", claim)


def _notch(piece: Piece, notch: Sequence[Measure], heard: Heard, settler: Settler) -> None:
    """The first of two is along, unless words say otherwise; a size said again only turns them."""
    for measure in [one for one in notch if one.of > 1][:2] or notch[:2]:
        claim = settler.claim(measure, "length", heard.rank)
        if claim is not None:
            say(piece.claims, "notch_length" if measure.place <= 1 else "notch_width", claim)
    claims = piece.claims
    for measure in notch:
        claim = settler.claim(measure, "length", heard.rank) if measure.of == 1 else None
        if claim is None or not measure.axis:
            continue
        along, across = claims.get("notch_length", []), claims.get("notch_width", [])
        other = across if measure.axis == "x" else along
        if along and any(claim.agrees(one) for one in other):
            claims["notch_length"], claims["notch_width"] = across, along


def corner_said(sentence: Sentence, legs: Sequence[Mention]) -> Word | None:
    """Give the corner that the L leaves out, from where its shorter leg or the gap is."""
    words = sentence.words
    for leg in legs:
        if leg.name not in ("side", "notch"):
            continue
        low, high = max(0, leg.start - 4), min(len(words), leg.end + 9)
        side = side_said(words, leg.start, high) or side_said(words, low, leg.end)
        if not side:
            continue
        span = (sentence.atoms[leg.start].start, sentence.atoms[high - 1].end)
        if leg.name == "side":
            return Word("front-left" if side == "right" else "front-right", (span,))
        depth = "back" if _BACK & set(words[low:high]) else "front"
        return Word(f"{depth}-{side}", (span,))
    return None


def side_said(words: Sequence[str], low: int, high: int) -> str:
    """Give left or right as said, leaving out what is denied."""
    for i in range(low, high):
        before = range(max(0, i - 3), i)
        if any(words[j] and mark("not").at(words, j) is not None for j in before):
            continue
        if words[i] in _LEFT:
            return "left"
        if words[i] in _RIGHT:
            return "right"
    return ""
