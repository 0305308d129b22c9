"""Which earlier slab a sentence refers to: "the second", "in the island", "the longer one"."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.scene.identity import named_so, telling_words
from ledgerstone.enquiry.scene.said import SaidPiece, newest
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import AXES
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.quantities import Length

_ORDINALS: Final = MappingProxyType(
    {
        **dict.fromkeys(("first", "1st", "erste", "ersten", "erster", "former"), 0),
        **dict.fromkeys(("second", "2nd", "zweite", "zweiten", "zweiter"), 1),
        **dict.fromkeys(("third", "3rd", "dritte", "dritten", "dritter"), 2),
        **dict.fromkeys(("fourth", "vierte", "vierten"), 3),
        **dict.fromkeys(("last", "latter", "letzte", "letzten"), -1),
    }
)
_LARGEST: Final = word_set(
    "longer longest bigger biggest larger largest long big large längere längeren große großen"
    " größere größeren lange langen"
)
_SMALLEST: Final = word_set(
    "shorter shortest smaller smallest short small little kürzere kürzeren kurze kurzen kleine"
    " kleinen kleinere kleineren"
)
_INSIDE: Final = frozenset({"in", "on", "into", "through", "im", "auf", "to", "for", "für"})
_DEFINITE: Final = word_set("the this that der die das dem den my our meine unsere meiner unserer")
_HAS: Final = word_set(
    "has have needs need takes take gets get carries holds wants is will bekommt braucht hat"
    " erhält benötigt soll"
)
_GOES_ON: Final = word_set(
    "there a an we i it with please goes is sits comes only just one two ein eine einen kommt ist"
)
_NEW: Final = frozenset({"a", "an", "ein", "eine", "einen", "one", "two", "there"})
_NO_SLABS: Final = frozenset({"hole", "open", "leg", "feature", "thing", "room"})
_ONES: Final = (["one"], ["top"], ["run"], ["piece"])
_OWNERS: Final = word_set("mine his hers theirs meine seine")
_MIDDLES: Final = frozenset({"middle", "centre", "center", "mittlere", "mittleren"})
_EARLY: Final = 5
_LED: Final = 3


def referred(
    pieces: Sequence[SaidPiece], sentence: Sentence, found: Sequence[Mention]
) -> SaidPiece | None:
    """Return the one slab that a sentence refers to, where several are known.

    Parameters
    ----------
    found
        What the sentence names.
    """
    known = [piece for piece in pieces if piece.has_size()]
    if len(known) < 2:
        return None
    meant = [one for one in (_owned(known, sentence),) if one is not None]
    for _, piece in references(known, sentence, found):
        meant += [piece] if not any(piece is one for one in meant) else []
    return meant[0] if len(meant) == 1 else None


def references(
    pieces: Sequence[SaidPiece], sentence: Sentence, found: Sequence[Mention]
) -> list[tuple[int, SaidPiece]]:
    """Return each place where a sentence turns to a slab that is known, with the slab."""
    known = [piece for piece in pieces if piece.has_size()]
    meant: list[tuple[int, SaidPiece]] = []
    for i, word in enumerate(sentence.words) if len(known) > 1 else ():
        by_length = _of_length(known, sentence, i)
        if by_length is not None:
            meant.append((i, by_length))
        is_led = i > 0 and sentence.words[i - 1] in _DEFINITE
        is_led = is_led or (i == 0 and sentence.words[1:2] in _ONES)  # "Short one has the sink"
        piece = None
        if word and is_led and _is_place(sentence, i, found):
            piece = _meant(known, sentence, i, found)
        if piece is not None:
            meant.append((i, piece))
    return meant


def _of_length(pieces: Sequence[SaidPiece], sentence: Sentence, i: int) -> SaidPiece | None:
    """Return the slab that is called by its length: "the 60 has two", "in the 2000 piece"."""
    size, words = sentence.atoms[i].size, sentence.words
    if size is None or not i or words[i - 1] not in _DEFINITE:
        return None
    after = words[i + 1 : i + 2]
    is_inside = i > 1 and words[i - 2] in _INSIDE
    if (
        after not in _ONES
        and not (after and after[0] in _HAS)
        and not (is_inside and after[:1] in ([], [""]))
    ):
        return None
    alike = [
        piece
        for piece in pieces
        for claim in newest(piece.claims.get("length", []))
        if claim.length.exact_mm == Length.of(size.amount, size.unit or claim.length.unit).exact_mm
    ]
    return alike[0] if len(alike) == 1 else None


def _owned(pieces: Sequence[SaidPiece], sentence: Sentence) -> SaidPiece | None:
    """Return the slab of "mine needs a hole" or "for his"."""
    words = sentence.words
    for i, word in enumerate(words):
        is_led = i == 0 or words[i - 1] in ("for", "für", "in")
        if is_led and word in _OWNERS:
            return named_so(pieces, frozenset({word}))
    return None


def _is_place(sentence: Sentence, i: int, found: Sequence[Mention]) -> bool:
    """Whether what begins at a word is what something is in, or the subject that has something."""
    words = sentence.words
    leads = words[i + 1 : i + 2] in _ONES or bool(_NEW & set(words[i + 1 : i + 2]))
    if _is_of_none(i, found) and not leads:
        return False
    is_inside = i > 1 and words[i - 2] in _INSIDE
    is_subject = i <= _EARLY - _LED and bool(_HAS & set(words[i : i + _EARLY + 1]))
    return is_inside or is_subject


def _is_of_none(i: int, found: Sequence[Mention]) -> bool:
    """Return whether a word leads to the name of a hole or of something that is none of ours."""
    ahead = [one for one in found if one.start <= i + 2 and one.end > i]
    return any(one.kind in _NO_SLABS for one in ahead[:1])


def _meant(
    pieces: Sequence[SaidPiece], sentence: Sentence, i: int, found: Sequence[Mention]
) -> SaidPiece | None:
    words = sentence.words
    names = [one for one in found if one.kind == "slab" and i <= one.start <= i + 2]
    following = words[i + 1 : i + 2]
    is_alone = bool(names) or following in (["one"], ["run"], ["piece"]) or not following
    is_alone = is_alone or not following[0] or following[0] in _HAS | _GOES_ON
    is_middle = words[i] in _MIDDLES and following in _ONES and len(pieces) % 2 == 1
    if is_middle or (words[i] in _ORDINALS and is_alone):
        at = len(pieces) // 2 if is_middle else _ORDINALS[words[i]]
        return pieces[at] if at < len(pieces) else None
    is_way = following != [] and bool(following[0]) and AXES.at(words, i + 1) is not None
    end = names[0].end if names else i + 2 - is_way  # "on the piece left to right"
    so = named_so(pieces, telling_words(words[i:end]))
    if so is not None:
        return so
    by_name = [piece for piece in pieces if words[i] in piece.names]
    if following in _ONES and len(by_name) == 1:
        return by_name[0]  # "the window one"
    if words[i] in _LARGEST | _SMALLEST and is_alone:
        return _by_size(pieces, max if words[i] in _LARGEST else min)
    if names and names[0].name:
        alike = [piece for piece in pieces if piece.use == names[0].name]
        return alike[0] if len(alike) == 1 else None
    return None


def _by_size(pieces: Sequence[SaidPiece], choose: Callable[..., float]) -> SaidPiece | None:
    """Return the one slab whose length is the most or the least of all."""
    lengths = [newest(piece.claims.get("length", [])) for piece in pieces]
    if any(len(length) != 1 for length in lengths):
        return None
    mm = [length[0].mm for length in lengths]
    wanted = choose(mm)
    return pieces[mm.index(wanted)] if mm.count(wanted) == 1 else None
