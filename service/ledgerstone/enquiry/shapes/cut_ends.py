"""Corners cut off a slab, and ends that differ: "the front right corner cut off, 200 each way"."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.focus import ParsedSentence
from ledgerstone.enquiry.scene.said import Claim, SaidPiece, say
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import SIDES
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.quantities import Length

CORNERS: Final = ("front-left", "front-right", "back-right", "back-left")
_CORNER: Final = frozenset({"corner", "ecke"})
_CUT: Final = word_set(
    "cut cropped clipped chopped angled snipped sliced mitred splayed abgeschnitten abgeschrägt"
    " angeschrägt taken"
)
_BEHIND: Final = 7
_AHEAD: Final = 12
_FARTHER: Final = 28
_ALONG: Final = frozenset(
    {"front", "back", "vorn", "vorne", "hinten", "vorderkante", "hinterkante"}
)
_UP: Final = frozenset(
    {"left", "right", "side", "left-hand", "right-hand", "links", "rechts", "seite"}
)


def cut_corners(parsed: ParsedSentence, piece: SaidPiece | None, assigner: SizeAssigner) -> None:
    """Take how far a corner is cut back along each of its sides; those sizes are no others."""
    words = parsed.sentence.words
    for i, word in enumerate(words):
        near = words[max(0, i - _BEHIND) : i + _BEHIND + 1]
        if word not in _CORNER or piece is None or not _CUT & set(near):
            continue
        corner = _corner(parsed.sentence, i)
        free = [
            size
            for size in parsed.sizes
            if i < size.at <= i + (_FARTHER if _way(parsed.sentence, size) else _AHEAD)
            and _is_free(size)
        ]
        if corner and free:
            _note(piece, corner, free, assigner, parsed)


def _corner(sentence: Sentence, at: int) -> str:
    words = sentence.words
    low, high = max(0, at - 4), min(len(words), at + 5)
    said = {SIDES.at(words, i)[0] for i in range(low, high) if words[i] and SIDES.at(words, i)}  # type: ignore[index]
    found = [one for one in CORNERS if set(one.split("-")) <= said]
    return found[0] if len(found) == 1 else ""


def _is_free(measure: Measure) -> bool:
    is_side = measure.role in ("", "apart", "size") or measure.role.startswith("edge:")
    return not measure.side and is_side and not measure.replaced


def _way(sentence: Sentence, measure: Measure) -> str:
    """Return which way a cut is measured: "300 along the front", "250 up the left hand side"."""
    for word in sentence.words[measure.at + 1 : measure.at + _BEHIND]:
        if word in _ALONG or word in _UP:
            return "x" if word in _ALONG else "y"
    return ""


def _note(
    piece: SaidPiece,
    corner: str,
    free: list[Measure],
    assigner: SizeAssigner,
    parsed: ParsedSentence,
) -> None:
    along = free[0]
    across = free[0].members[1] if free[0].of == 2 else free[0]
    singles = [one for one in free[:2] if one.of == 1]
    ways = [_way(parsed.sentence, one) for one in singles]
    if sorted(ways) == ["x", "y"]:
        along, across = (singles[ways.index(way)] for way in ("x", "y"))
    for axis, measure in (("x", along), ("y", across)):
        claim = assigner.claim(measure, "place", parsed.rank)
        if claim is not None:
            say(piece.claims, f"cut:{corner}:{axis}", claim)
    for measure in {id(along): along, id(across): across}.values():
        measure.replaced = True


def outline_points(
    claims: dict[str, list[Claim]], length: Claim, width: Claim
) -> list[tuple[Length, Length]]:
    """Return the outline of a rectangle with its corners cut off; none if that cannot be.

    Points run anticlockwise from the front-left corner.
    """
    points: list[tuple[float, float]] = []
    for corner in CORNERS:
        x_mm = 0.0 if corner.endswith("left") else length.mm
        y_mm = 0.0 if corner.startswith("front") else width.mm
        cut = [claims.get(f"cut:{corner}:{axis}", []) for axis in "xy"]
        if not all(cut):
            points.append((x_mm, y_mm))
            continue
        dx, dy = (one[-1].mm for one in cut)
        if dx >= length.mm or dy >= width.mm:
            return []
        along = (x_mm + (dx if x_mm == 0 else -dx), y_mm)
        across = (x_mm, y_mm + (dy if y_mm == 0 else -dy))
        points += [across, along] if corner in ("front-left", "back-right") else [along, across]
    return [(length.length.in_unit(x), width.length.in_unit(y)) for x, y in points]


def tapered_points(length: Claim, left: Claim, right: Claim) -> list[tuple[Length, Length]]:
    """Return the outline of a slab whose ends differ, its back straight and square to both."""
    deepest = max(left.mm, right.mm)
    corners = ((0.0, deepest - left.mm), (length.mm, deepest - right.mm))
    ends = ((length.mm, deepest), (0.0, deepest))
    unit = left.length
    return [(length.length.in_unit(x), unit.in_unit(y)) for x, y in (*corners, *ends)]
