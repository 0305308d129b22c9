"""Sizes that several slabs have: a length each, a thickness of all, a depth as another's."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.ownership import enumerations
from ledgerstone.enquiry.ownership.length_rows import read_rows
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.scene.said import SaidPiece, newest, say
from ledgerstone.enquiry.sentence.measures import Measure

_SEVERAL: Final = 2
_SUM_MM: Final = 1.0  # people add lengths without an error
_LENGTHS: Final = frozenset({"", "long", "quantity"})
_MAX_OF_ONE: Final = 24
_THICKEST: Final = 100  # mm, of shelves and tops: common practice, no source
_ALIKE: Final = 2  # common practice, no source: a depth is a smaller part of a length
_LISTS: Final = frozenset({",", "and", "und", "&", "", "one", "another"})
_NEXT_ROLES: Final[tuple[list[str], ...]] = ([], ["deep"], ["thick"])
_SPLITS: Final = frozenset({"split", "splitting", "aufgeteilt", "geteilt"})
_NUMBERED: Final = (["no", "."], ["nr", "."], ["stk", "."])
_EACH_AT: Final = frozenset({"@", "off", "no", "of", "at", "nr", "à", "zu", "stück"})


def each_length(
    focus: Focus, piece: SaidPiece, sizes: list[Measure], parsed: ParsedSentence
) -> list[Measure]:
    """Make a slab of each length: "3 sills, 220 deep: 1200, 1500 and 1800 long".

    Gives the sizes that are left for the slab itself.
    """
    long = [size for size in sizes if size.role == "long" and size.of == 1]
    whole = _whole_of(long)
    sizes = [size for size in sizes if size is not whole]
    long = [size for size in long if size is not whole]
    is_counted = bool(long) and all(one.counted for one in long)
    if piece.claims.get("length") and is_counted and parsed.sentence.starts_line:
        _further(focus, piece, long, parsed)
        return [size for size in sizes if size not in long]
    known = newest(piece.claims.get("length", []))
    total = sum(claim.mm for one in long if (claim := focus.assigner.claim(one, "length", (0, 0))))
    if len(known) == 1 and len(long) >= _SEVERAL and abs(total - known[0].mm) <= _SUM_MM:
        piece.claims["length"], whole = [], long[0]  # in two parts: each is a slab of its own
    if piece.claims.get("length") or (len(long) < _SEVERAL and not is_counted):
        return sizes
    is_told = piece.quantity == len(long) or focus.subjects.awaited == len(long)
    is_told = is_told or whole is not None or bool(_SPLITS & set(parsed.sentence.words))
    if not is_counted and not (is_told and piece.quantity in (1, len(long))):
        return sizes
    piece.quantity, piece.quantity_spans = 1, ()
    _count(piece, long[0])
    _further(focus, piece, long[1:], parsed)
    return [size for size in sizes if size not in long[1:]]


def _further(
    focus: Focus, piece: SaidPiece, long: Sequence[Measure], parsed: ParsedSentence
) -> None:
    """Make a slab of each further length, else like the first: "2 off 915 long" on a line."""
    for measure in long:
        more = focus.start_piece(piece.use)
        more.like, more.like_in = piece, frozenset({"width", "thickness"})
        _count(more, measure)
        focus.assigner.piece(more, [measure], parsed.rank)


def _whole_of(long: list[Measure]) -> Measure | None:
    """Return the length that the others add up to: "4150 in all, so split it: 2150 and 2000"."""
    units = {size.size.unit for size in long}
    total = sum(size.size.amount for size in long)
    is_sum = len(long) > _SEVERAL and len(units) == 1
    return next((one for one in long if is_sum and 2 * one.size.amount == total), None)


def _count(piece: SaidPiece, measure: Measure) -> None:
    """Take how many are of a length."""
    size = measure.counted
    piece.is_counted = size is not None
    if size is not None and size.amount > 1:
        piece.quantity, piece.quantity_spans = int(size.amount), ((size.start, size.end),)


def count_lengths(focus: Focus, parsed: ParsedSentence) -> None:
    """Take each number before a length for how many are of it: "1 @ 2440, 2 @ 610"."""
    read_rows(focus, parsed)
    atoms = parsed.sentence.atoms
    if any(mention.kind in ("open", "hole") for mention in parsed.found):
        return
    _share_long(focus, parsed)
    taken: list[Measure] = []
    for number, measure in pairwise(parsed.sizes):
        is_bare = number.size.unit is None and number.size.amount.denominator == 1
        is_few = is_bare and 1 <= number.size.amount <= _MAX_OF_ONE and number.of == 1
        is_led = measure.at == number.at + 2 and atoms[number.at + 1].word in _EACH_AT
        is_led = is_led or _is_numbered(parsed, number, measure)
        is_length = measure.of == 1 and not measure.side and measure.role in _LENGTHS
        if is_few and is_led and is_length and measure.size.amount > _MAX_OF_ONE:
            measure.role, measure.counted = "long", number.size
            taken.append(number)
    parsed.sizes = [size for size in parsed.sizes if not any(size is two for two in taken)]


def _is_numbered(parsed: ParsedSentence, number: Measure, measure: Measure) -> bool:
    """Return whether "no." leads from a number to a size: "3 no. 1200"."""
    between = [atom.word for atom in parsed.sentence.atoms[number.at + 1 : measure.at]]
    return between in _NUMBERED


def _is_cut_up(focus: Focus, parsed: ParsedSentence) -> bool:
    """Return whether the first sizes of a sentence add up to a length that is known."""
    piece = focus.subjects.piece
    known = newest(piece.claims.get("length", [])) if piece is not None else []
    bare = [one for one in parsed.sizes if one.of == 1 and one.role in ("", "long")]
    if len(known) != 1 or len(bare) < _SEVERAL:
        return False
    claims = [focus.assigner.claim(one, "length", (0, 0)) for one in bare[: _SEVERAL + 1]]
    lengths = [claim.mm for claim in claims if claim is not None]
    sums = (sum(lengths[:count]) for count in (_SEVERAL, _SEVERAL + 1))
    return any(abs(total - known[0].mm) <= _SUM_MM for total in sums)


def _share_long(focus: Focus, parsed: ParsedSentence) -> None:
    """Take as many sizes as slabs are named for their lengths: "two sills: 1.2, 0.9 long"."""
    counts = {
        mention.count for mention in parsed.found if mention.kind == "slab" and mention.count > 1
    }
    is_known = _is_cut_up(focus, parsed)
    counts |= {2, 3} if is_known or _SPLITS & set(parsed.sentence.words) else set()
    row: list[Measure] = []
    for measure in parsed.sizes:
        between = (
            {atom.word for atom in parsed.sentence.atoms[row[-1].at + 1 : measure.at]}
            if row
            else set()
        )
        bare = measure.of == 1 and not measure.side and measure.role in ("", "long")
        row = ([*row, measure] if row and between <= _LISTS else [measure]) if bare else []
        ends = [one.role for one in parsed.sizes if one.at > measure.at][:1] in _NEXT_ROLES
        is_split = is_known or bool(_SPLITS & set(parsed.sentence.words))
        is_last = (ends or is_split) and (is_known or _are_alike(row))
        if (measure.role == "long" or is_last) and len(row) in counts:
            for one in row:
                one.role = "long"


def _are_alike(row: list[Measure]) -> bool:
    """Whether sizes of one unit may all be lengths: none is much less than the longest."""
    amounts = [one.size.amount for one in row]
    is_one = len({one.size.unit for one in row} - {None}) <= 1
    return is_one and min(amounts, default=0) * _ALIKE >= max(amounts, default=1)


def share_thickness(
    focus: Focus, piece: SaidPiece, sizes: list[Measure], parsed: ParsedSentence
) -> None:
    """Give all pieces the thickness that is said of all, those to come too."""
    thick = [size for size in sizes if size.role == "thick"]
    if thick and not piece.spans:
        _share_back(focus, piece, thick[0])
    if enumerations.is_of_all(parsed.sentence):
        _share_depth(focus, piece, sizes)
    if not thick or not enumerations.is_of_all(parsed.sentence):
        return
    claim = focus.assigner.claim(thick[0], "thickness", (0, 0))
    scene = focus.subjects.scene
    if claim is None:
        return
    is_known = bool(scene.common.get("thickness"))  # of all: "a backsplash for each, 3/4 thick"
    if not piece.claims.get("length") and len(sizes) == len(thick):
        scene.common.setdefault("thickness", []).append(claim)
    for other in scene.pieces if len(scene.pieces) > 1 and not is_known else ():
        if other is not piece and not other.claims.get("thickness"):
            say(other.claims, "thickness", claim)


def _share_depth(focus: Focus, piece: SaidPiece, sizes: list[Measure]) -> None:
    """Give a depth to all slabs of one use that have a length and none: "all are 220 deep"."""
    deep = [size for size in sizes if size.role == "deep" and not size.side]
    claim = focus.assigner.claim(deep[0], "deep", (0, 0)) if len(deep) == 1 else None
    if claim is None or focus.is_l():
        return
    for other in focus.subjects.scene.pieces:
        is_alike = other is not piece and other.use == piece.use and other.claims.get("length")
        if is_alike and not other.claims.get("width"):
            say(other.claims, "width", claim)


def _share_back(focus: Focus, piece: SaidPiece, thick: Measure) -> None:
    """Give a thickness to all of one name: "shelves 900 x 200 & 600 x 200, 30 thk"."""
    claim = focus.assigner.claim(thick, "thickness", (0, 0))
    pieces = focus.subjects.scene.pieces
    at = next(i for i, one in enumerate(pieces) if one is piece)
    for other in reversed(pieces[:at]):
        if claim is None or other.use != piece.use or other.claims.get("thickness"):
            return
        say(other.claims, "thickness", claim)
        if other.spans:
            return


def is_of_group(focus: Focus, measure: Measure, parsed: ParsedSentence) -> bool:
    """Return a thickness to every piece of the kind that was named: "the tops 40 thick"."""
    is_bare = not (measure.role or measure.side) and measure.of == 1 and len(parsed.sizes) == 1
    is_thick = measure.role == "thick" or (is_bare and measure.size.amount <= _THICKEST)
    if not focus.group or not is_thick:
        return False
    claim = focus.assigner.claim(measure, "thickness", parsed.rank)
    for piece in focus.group:
        if claim is not None and not piece.claims.get("thickness"):
            say(piece.claims, "thickness", claim)
    return True


def distinct(targets: Sequence[Target]) -> list[Target]:
    """Return what sizes are of, each once, in their order."""
    kept: list[Target] = []
    for target in targets:
        if not any(target is one for one in kept):
            kept.append(target)
    return kept
