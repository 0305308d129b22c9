"""By which words slabs are told apart: "the island" is not the worktop, nor left right."""

from __future__ import annotations

from collections.abc import Sequence
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece
from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.order import UPRIGHT_USES

_OWN_NOUNS: Final = word_set(
    "island slip slips jamb jambs bar vanity washstand desk hearth shelf sill mantel mantelpiece"
    " bench seat table coffee"
    " dining upstand splashback backsplash console server breakfast peninsula insel theke tresen"
    " waschtisch fensterbank regal bank tisch esstisch rückwand kochinsel"
)
_QUALIFIERS: Final = (
    word_set("left right left-hand right-hand lh rh linke rechte linken rechten"),
    word_set("first second third fourth erste zweite dritte ersten zweiten"),
    word_set(
        "kitchen utility bathroom cloakroom ensuite laundry study office hall bedroom main"
        " downstairs"
        " upstairs küche bad gästebad"
    ),
    word_set("long short longer shorter big small large bigger smaller lange kurze große kleine"),
)
# One word for a side, however it is said.
CANON: Final = MappingProxyType(
    dict.fromkeys(
        ("links", "linke", "linken", "linker", "linkes", "lh", "lhs", "left-hand"), "left"
    )
    | dict.fromkeys(
        ("rechts", "rechte", "rechten", "rechter", "rechtes", "rh", "rhs", "right-hand"), "right"
    )
)
_OWNERS: Final = word_set("mine his hers theirs meine seine ihre")
_IN_FLAT: Final = frozenset({"sink", "basin", "hob", "waste"})
_PLAIN: Final = word_set(
    "work counter top slab concrete kitchen bathroom table basin wash sink cover plate round window"
    " splash back up end garden outdoor patio worktop dining coffee utility laundry hob bench"
)
_TIMES: Final = frozenset({"x", "×", "by", "mal"})
_CUT_OUT: Final = frozenset({"sink", "basin", "hob", "grill"})
_ITS_OWN: Final = word_set("with has needs wants takes in through into mit hat braucht")
_IS: Final = frozenset({"is", "'s", "are", "ist"})
_INDEFINITE: Final = frozenset({"a", "an", "another", "ein", "eine", "einen"})
_LED: Final = 3
_EARLY: Final = 2
_ANY: Final = frozenset({"long", "wide", "deep", "thick", "high"})
_SIDES: Final = frozenset({"long", "wide", "dia"})


def called(mention: Mention, sentence: Sentence) -> frozenset[str]:
    """Give the words that tell a slab from others: its own noun, its side, its room, its number."""
    words = sentence.words
    nouns = set(words[mention.start : mention.end]) & _OWN_NOUNS
    own = words[mention.start] if mention.end - mention.start > 1 else ""
    if own and own not in _PLAIN:
        nouns |= {own}  # "the servery top"
    words_around = {
        CANON.get(word, word) for word in words[max(0, mention.start - _LED) : mention.end + 1]
    }
    return frozenset(nouns | {word for kind in _QUALIFIERS for word in words_around & kind})


def telling_words(words: Sequence[str]) -> frozenset[str]:
    """Return those of some words that tell slabs apart."""
    kinds = (_OWN_NOUNS, _OWNERS, *_QUALIFIERS)
    said = {CANON.get(word, word) for word in words}
    return frozenset(word for kind in kinds for word in said & kind)


def with_room_for(what: str, piece: SaidPiece, pieces: Sequence[SaidPiece]) -> SaidPiece:
    """Return the slab that an opening is in: the one that lies flat for what no upright one has."""
    flat = [one for one in pieces if one.use not in UPRIGHT_USES and one.has_size()]
    return flat[0] if piece.use in UPRIGHT_USES and what in _IN_FLAT and len(flat) == 1 else piece


def is_other(piece: SaidPiece, mention: Mention, names: frozenset[str]) -> bool:
    """Return whether a name means another slab than the current one."""
    if mention.name and piece.use and mention.name != piece.use:
        return True
    for kind in _QUALIFIERS:
        if names & kind and piece.called & kind and not names & piece.called & kind:
            return True
    every = frozenset(word for kind in _QUALIFIERS for word in kind)
    nouns, known = names - every, piece.called - every
    return bool(nouns) and not nouns & known and bool(piece.use)


def is_whole(mention: Mention, sizes: Sequence[Measure]) -> bool:
    """Return whether a slab's outline follows its name: a pair, or its length and another size."""
    after = [size for size in sizes if size.at >= mention.end and not size.side]
    roles = {one.role for one in after if one.of == 1}
    return any(one.of > 1 for one in after) or (bool(roles & _SIDES) and len(roles - {""}) > 1)


def is_other_kind(piece: SaidPiece, mention: Mention, sizes: Sequence[Measure]) -> bool:
    """Return whether a slab of another use is named first, and two of its sizes follow."""
    roles = {
        size.role for size in sizes if size.at >= mention.end and not size.side and size.of == 1
    }
    differs = bool(mention.name and piece.use) and mention.name != piece.use
    return differs and len(roles & _ANY) > 1 and mention.start <= _EARLY and not mention.preposition


def named_so(pieces: Sequence[SaidPiece], names: frozenset[str]) -> SaidPiece | None:
    """Return the one slab that was called by the same words."""
    alike = [piece for piece in pieces if names and names <= piece.called]
    return alike[0] if len(alike) == 1 else None


def is_sized_anew(mention: Mention, sentence: Sentence, current: Sequence[SaidOpening]) -> bool:
    """Return whether a hole has its own size right before it: "also 12 mm hole"."""
    before = sentence.atoms[max(0, mention.start - 1) : mention.start]
    is_sized = bool(before) and before[0].kind == "size"
    if not is_sized or not all(one.spans for one in current):
        return False
    first = mention.start - 1
    is_pair = first > 1 and sentence.atoms[first - 1].word in _TIMES
    if is_pair and current and all(one.what in _CUT_OUT and not one.has_size() for one in current):
        return False  # "an inset sink - the template says 375 x 320 cut-out"
    while first > 1 and sentence.atoms[first - 1].word in _TIMES:
        first -= 2
    if _ITS_OWN & set(sentence.words[max(0, first - 2) : first]):
        return False  # "a hob 580 x 510 with a 560 x 490 cut-out"
    named = max((span[1] for one in current for span in one.spans), default=-1)
    told = [one for one in sentence.atoms[: mention.start - 1] if one.kind == "size"]
    return any(one.start > named for one in told) or any(one.has_size() for one in current)


def own_sizes(mention: Mention, sizes: list[Measure]) -> bool:
    """Whether sizes of a slab follow the name in its own sentence, or a group stands before it."""
    after = [size for size in sizes if size.at >= mention.end and not size.side]
    before = [
        size
        for size in sizes
        if size.of > 1 and size.place == size.of and 0 < mention.start - size.at <= 3
    ]
    return bool(after or before)


def is_labelled(mention: Mention, sentence: Sentence) -> bool:
    """Return whether a hole is that of one more thing: "And a plate warmer: hole 300 x 150"."""
    led = sentence.atoms[max(0, mention.start - 1) : mention.start]
    is_led = bool(led) and led[0].word == ":"
    said = set(sentence.words[: mention.start])
    return is_led and bool(_INDEFINITE & said) and not _IS & said  # "the hob is a bigger one: hole"
