"""An L: what is said of its two legs, of the corner it leaves out, and of the side it turns to."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import SaidPiece, SaidWord, say
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import mark

_FAR: Final = 9
_WHICH: Final = frozenset({"which", "what", "welche", "welcher"})
_SIDE_NOUNS: Final = frozenset({"side", "hand", "way", "end", "seite"})
_SIDE_LED: Final = 6
_DEEPEST: Final = 900.0
_LEFT: Final = frozenset(["left", "left-hand", "links", "linken", "lh", "linke"])
_RIGHT: Final = frozenset(["right", "right-hand", "rechts", "rechten", "rh", "rechte"])
_BACK: Final = frozenset({"back", "rear", "hinten"})
_BOTH: Final = frozenset({"both", "each", "beide", "beiden"})
_OUTER_SIDES: Final = frozenset({"edge:back", "edge:left", "edge:right"})
_THROUGHOUT: Final = frozenset({"throughout", "everywhere", "überall", "durchgehend"})
_ALL_OVER: Final = frozenset(
    {("all", "round"), ("all", "around"), ("all", "over"), ("all", "along")}
)
_THAT: Final = frozenset({"that", "this", "diese", "dieser"})
_ONE: Final = frozenset({"side", "arm", "leg", "one", "run", "seite", "schenkel"})


def _leg_of(measure: Measure, legs: list[Mention], until: int, since: int, before: str) -> str:
    """Return which leg a size is of: named since the last size, else right after it, else before.

    A leg that is named after a size is that size's and no other's.
    """
    near = [leg for leg in legs if since <= leg.start < measure.at]
    if near:
        return near[-1].name
    last = measure.members[-1].at if measure.members else measure.at
    is_group = measure.of > 1  # what both legs are follows it: "2400 x 1600, both legs 600"
    after = [
        leg
        for leg in legs
        if measure.at < leg.start < min(until, last + _FAR)
        and not (is_group and leg.name == "both")
    ]
    if after:
        legs.remove(after[0])
        return after[0].name
    ahead = [leg for leg in legs if leg.end <= measure.at]
    return ahead[-1].name if ahead else before


def legs_named(
    sizes: Sequence[Measure], legs: Sequence[Mention], before: str, parsed: ParsedSentence
) -> dict[int, str]:
    """Return which leg each size belongs to, by the word it begins at.

    ``before`` is the current leg when the sentence began: it counts where the sentence names
    another, or "that side".
    """
    named: dict[int, str] = {}
    pairs = pairwise(parsed.sentence.words)
    if not legs and not any(one in _THAT and two in _ONE for one, two in pairs):
        before = ""
    free = list(legs)
    for i, measure in enumerate(sizes):
        if measure.of > 1 and measure.place > 1:
            named[measure.at] = named.get(measure.members[0].at, "")
            continue
        last = measure.members[-1].at if measure.members else measure.at
        after = [size.at for size in sizes[i + 1 :] if size.at > last]
        until = after[0] if after else len(parsed.sentence.atoms)
        since = sizes[i - 1].at if i else 0
        named[measure.at] = _leg_of(measure, free, until, since, before)
    return named


def read_legs(
    piece: SaidPiece,
    measures: Sequence[Measure],
    named: dict[int, str],
    parsed: ParsedSentence,
    assigner: SizeAssigner,
) -> None:
    """Give an L its sizes of one sentence: outside lengths, depths of its legs, its notch."""
    notch = [
        measure
        for measure in measures
        if named.get(measure.at) == "notch" and measure.role != "thick"
    ]
    pairs = [measure for measure in measures if measure.of > 1 and measure not in notch]
    if notch:
        _notch(piece, notch, parsed, assigner)
    if len(pairs) >= 2 and not _leg_pairs(piece, pairs, named, parsed, assigner):
        assigner.piece(piece, pairs, parsed.rank)
    words = parsed.sentence.words
    throughout = bool(_THROUGHOUT & set(words)) or bool(_ALL_OVER & set(pairwise(words)))
    for measure in measures:
        if measure in notch or measure in pairs:
            continue
        leg = named.get(measure.at, "")
        is_bare = measure.of == 1 and not measure.role and not leg
        if measure.role == "thick" or (is_bare and assigner.is_thin(measure)):
            assigner.piece(piece, [measure], parsed.rank)
        elif measure.role in _OUTER_SIDES:
            _outer(piece, measure, parsed, assigner)
        elif measure.role in ("deep", "wide") and _BOTH & {
            *words[max(0, measure.at - 2) : measure.at],
            *words[measure.at + 1 : measure.at + 3],
        }:
            _depth(piece, measure, "both", parsed, assigner)
        elif _is_depth(piece, measure, leg, assigner):
            _depth(piece, measure, "" if throughout else leg, parsed, assigner)
        else:
            _reach(piece, measure, leg, parsed, assigner)


def _is_depth(piece: SaidPiece, measure: Measure, leg: str, assigner: SizeAssigner) -> bool:
    """Return whether a size is how deep a leg is: by its words, or as the leg's reach is known."""
    if measure.role in ("deep", "wide") or measure.axis == "y" or leg == "both":
        return True
    known = piece.claims.get({"back": "length", "side": "width"}.get(leg, ""), [])
    if measure.of > 1 or measure.role or not any(one.mm > _DEEPEST for one in known):
        return False
    claim = assigner.claim(measure, "deep", (0, 0))
    return claim is not None and claim.mm <= _DEEPEST  # "the arm is only 460"


def _outer(
    piece: SaidPiece, measure: Measure, parsed: ParsedSentence, assigner: SizeAssigner
) -> None:
    """Take the length of an outer side: of the back, or of the side that the short leg is on."""
    claim = assigner.claim(measure, "length", parsed.rank)
    is_depth = claim is not None and claim.mm <= _DEEPEST and measure.role != "edge:back"
    if claim is not None and is_depth:
        say(piece.claims, "back_depth", claim)  # "70 deep at the left end"
    elif claim is not None:
        say(piece.claims, "length" if measure.role == "edge:back" else "width", claim)


def _leg_pairs(
    piece: SaidPiece,
    pairs: Sequence[Measure],
    named: dict[int, str],
    parsed: ParsedSentence,
    assigner: SizeAssigner,
) -> bool:
    """Take how long each leg is and how deep: "back run 3100 x 620, left 1800 x 620"."""
    groups = [pair.members for pair in pairs if pair.place == 1]
    for group in groups:
        depth = assigner.claim(group[1], "deep", parsed.rank)
        is_leg = named.get(group[0].at, "") in ("back", "side") and len(group) == 2
        if not is_leg or depth is None or depth.mm > _DEEPEST:
            return False
    for along, across in groups:
        leg = named[along.at]
        _reach(piece, along, leg, parsed, assigner)
        _depth(piece, across, leg, parsed, assigner)
    return True


def _reach(
    piece: SaidPiece, measure: Measure, leg: str, parsed: ParsedSentence, assigner: SizeAssigner
) -> None:
    """Take an outside length: along the back, or how far the shorter leg comes forward."""
    key = {"back": "length", "side": "width"}.get(leg, "")
    if not key and measure.role == "long":
        key = "length" if "length" not in piece.claims else "width"
    claim = assigner.claim(measure, "length", parsed.rank)
    if key and claim is not None:
        say(piece.claims, key, claim)


def _depth(
    piece: SaidPiece, measure: Measure, leg: str, parsed: ParsedSentence, assigner: SizeAssigner
) -> None:
    claim = assigner.claim(measure, "deep", parsed.rank)
    if claim is None:
        return
    if claim.mm > _DEEPEST and leg != "both":  # "the return comes to 1900", "1250 in all"
        _reach(piece, measure, leg or "side", parsed, assigner)
        return
    if leg in ("back", "both", ""):
        say(piece.claims, "back_depth", claim)
    if leg in ("side", "both", ""):
        say(piece.claims, "side_depth", claim)


def _notch(
    piece: SaidPiece, notch: Sequence[Measure], parsed: ParsedSentence, assigner: SizeAssigner
) -> None:
    """The first of two is along, unless words say otherwise; a size said again only turns them."""
    for measure in [one for one in notch if one.of > 1][:2] or notch[:2]:
        claim = assigner.claim(measure, "length", parsed.rank)
        if claim is not None:
            say(piece.claims, "notch_length" if measure.place <= 1 else "notch_width", claim)
    claims = piece.claims
    for measure in notch:
        claim = assigner.claim(measure, "length", parsed.rank) if measure.of == 1 else None
        if claim is None or not measure.axis:
            continue
        along, across = claims.get("notch_length", []), claims.get("notch_width", [])
        other = across if measure.axis == "x" else along
        if along and any(claim.agrees(one) for one in other):
            claims["notch_length"], claims["notch_width"] = across, along


def corner_said(sentence: Sentence, legs: Sequence[Mention]) -> SaidWord | None:
    """Return the corner that the L leaves out, from where its shorter leg or the gap is."""
    words = sentence.words
    for leg in legs:
        if leg.name not in ("side", "notch"):
            continue
        low, high = max(0, leg.start - _SIDE_LED), min(len(words), leg.end + 9)
        side = side_said(words, leg.start, high) or side_said(words, low, leg.end)
        if not side:
            continue
        span = (sentence.atoms[leg.start].start, sentence.atoms[high - 1].end)
        if leg.name == "side":
            return SaidWord("front-left" if side == "right" else "front-right", (span,))
        depth = "back" if _BACK & set(words[low:high]) else "front"
        return SaidWord(f"{depth}-{side}", (span,))
    return None


def corner_answered(focus: Focus, parsed: ParsedSentence) -> SaidWord | None:
    """Return the corner by the side with which a customer answers: "It's on the right"."""
    sentence, words = parsed.sentence, parsed.sentence.words
    if parsed.is_question:
        asks = bool(_WHICH & set(words)) and bool(_SIDE_NOUNS & set(words))
        focus.asks_side = focus.asks_side or asks
        return None
    side = side_said(words, 0, len(words)) if focus.asks_side and not parsed.sizes else ""
    span = (sentence.atoms[0].start, sentence.atoms[-1].end)
    focus.asks_side = focus.asks_side and not side
    return SaidWord("front-left" if side == "right" else "front-right", (span,)) if side else None


def side_said(words: Sequence[str], low: int, high: int) -> str:
    """Return left or right as said, leaving out what is denied."""
    for i in range(low, high):
        before = range(max(0, i - 3), i)
        if any(words[j] and mark("not").at(words, j) is not None for j in before):
            continue
        if words[i] in _LEFT:
            return "left"
        if words[i] in _RIGHT:
            return "right"
    return ""
