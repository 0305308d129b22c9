"""One of several alike that has a size or a hole of its own: "four shelves, but one is 1100"."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.scene.said import SaidPiece
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.words.lexicon import NUMBERS
from ledgerstone.enquiry.words.word_sets import word_set

_THEM: Final = word_set("the them these those which denen diesen den ihnen")
_OF: Final = frozenset({"of", "von"})
_BUT: Final = word_set("except excepting apart bar but save aber außer bis other nur only and und")
_EXCEPT: Final = word_set("except excepting apart bar save außer")
_LINKS: Final = word_set("for from that than the auf den die der is")
_PLACED: Final = word_set(
    "last first third fourth middle final end second letzte letzter letzten erste mittlere dritte"
)
_ONES: Final = word_set("one ones piece slab")
_GERMAN_ONES: Final = word_set("eine einer eines ein davon")
_KEYS: Final = frozenset({"length", "width", "thickness", "diameter"})
_FAR: Final = 8  # atoms between what is told apart and its size
_THIN_MM: Final = 100  # common practice, no source
_SEVERAL: Final = 2
_SIZED: Final = frozenset({"", "long", "deep", "thick", "wide", "dia", "across"})


def tell_sizes_apart(
    focus: Focus, parsed: ParsedSentence, measure: Measure, target: Target
) -> Target:
    """Return the slab of which a size is, where one of several alike is told to differ in it.

    The slab is begun, like the others but for its own sizes, and those are one fewer. A hole that
    only the one has is moved to it, and the size stays the hole's.

    Parameters
    ----------
    target
        What the size is of by what was named last.
    """
    if measure.side or measure.replaced or measure.role not in _SIZED or parsed.sentence.is_quoted:
        return None
    if focus.is_l() or focus.is_split or measure.place > 1:
        return None
    whole, made = _several(focus)
    found = _apart(parsed, measure.at, whole.quantity) if whole is not None else None
    if whole is None or found is None:
        return None
    holes = _holes(parsed, found[0])
    if holes:
        return _bore(focus, whole, found[1], target) if made is None else None
    if _names_thing(parsed, found[0], measure.at):
        return None
    if measure.of == 1 and not measure.role:
        is_thin = measure.size.unit is None and measure.size.amount < _THIN_MM
        measure.role = "thick" if is_thin else "long"
    return _begin(focus, whole, made, found[1])


def _begin(focus: Focus, whole: SaidPiece, made: SaidPiece | None, count: int) -> SaidPiece:
    """Begin so many slabs that are like the others, of which there are so many fewer."""
    whole.quantity, whole.is_counted = whole.quantity - count, True
    whole.quantity_spans = whole.quantity_spans if whole.quantity > 1 else ()
    made = made or focus.start_piece(whole.use)
    made.use, made.shape, made.quantity = whole.use, whole.shape, count
    made.like, made.like_in, made.is_further = whole, _KEYS, True
    focus.subjects.pending = True
    return made


def _holes(parsed: ParsedSentence, since: int) -> list[Mention]:
    """Return the holes that are named after some are told apart."""
    return [one for one in parsed.found if one.kind in ("open", "hole") and one.start > since]


def _bore(focus: Focus, whole: SaidPiece, count: int, target: Target) -> Target:
    """Move the openings that a size is of to the slabs told apart; None if they are of no slab."""
    if not target or isinstance(target, SaidPiece):
        return None
    if not all(any(one is two for two in whole.openings) for one in target):
        return None
    made = _begin(focus, whole, None, count)
    whole.openings = [one for one in whole.openings if not any(one is two for two in target)]
    made.openings += target
    focus.take_up(0, [*target])
    return target


def _several(focus: Focus) -> tuple[SaidPiece | None, SaidPiece | None]:
    """Return the slab that is several, and the one that was begun after it, if any."""
    piece, pieces = focus.subjects.piece, focus.subjects.scene.pieces
    if piece is None or piece.quantity >= _SEVERAL:
        return piece, None
    is_fresh = not piece.has_size() and len(pieces) > 1 and pieces[-1] is piece
    return (pieces[-2], piece) if is_fresh and pieces[-2].quantity >= _SEVERAL else (None, None)


def _names_thing(parsed: ParsedSentence, since: int, until: int) -> bool:
    """Return whether anything but slabs is named between two words, or right after them."""
    words = parsed.sentence.words
    return any(
        since <= one.start <= until + 1
        for one in parsed.found
        if one.kind not in ("slab", "one")
        and not any(word in NUMBERS or word in _ONES for word in words[one.start : one.end])
    )


def _apart(parsed: ParsedSentence, until: int, quantity: int) -> tuple[int, int] | None:
    """Return where words tell some of several slabs apart, and how many of them."""
    words = parsed.sentence.words
    for i in range(max(0, until - _FAR), until):
        count = int(NUMBERS.get(words[i], 0)) or (1 if words[i] in _ONES | _GERMAN_ONES else 0)
        before, after = words[i - 1] if i else "", words[i + 1 : i + 3]
        is_of = len(after) > 1 and after[0] in _OF and after[1] in _THEM
        is_of = is_of or after[:1] == ["davon"]
        led = words[max(0, i - 3) : i]
        counts_hole = any(
            one.kind in ("open", "hole") and one.start == i + 1 for one in parsed.found
        )
        is_but = before in _BUT and words[i] in _ONES and not counts_hole  # "and one tap hole"
        is_but = is_but or bool(_EXCEPT & set(led))
        if words[i] in _ONES and before in _PLACED and quantity > _SEVERAL:
            return i - 1, 1
        if 0 < count < quantity and (is_of or is_but):
            return i, count
    return None
