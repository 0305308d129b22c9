"""Which of several slabs an opening is in, where a new paragraph tells of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_INSIDE: Final = frozenset({"in", "on", "of", "im", "in der", "auf", "into"})
_WITHOUT: Final = frozenset({"upstand", "splashback", "shelf", "sill", "end-panel"})
_BIG: Final = frozenset({"sink", "basin", "hob"})
_EACH: Final = word_set("each all both jede jeder alle beide")
_BOWLS: Final = frozenset({"sink", "basin"})
_AT_BOWL: Final = frozenset({"tap", "waste", "soap"})
_EARLY: Final = 3


def of_each(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a hole is in every slab: "Each has a 45 mm waste hole"."""
    first_words = sentence.words[: min(_EARLY, mention.start)]
    return (
        bool(_EACH & set(first_words))
        and mention.kind in ("open", "hole")
        and not mention.is_denied
    )


def in_each(
    pieces: Sequence[SaidPiece], current: SaidPiece | None, openings: Sequence[SaidOpening]
) -> list[SaidOpening]:
    """Return an opening of each slab that has sizes and none yet, alike to the current one."""
    made = list(openings)
    group = current.group if current is not None else frozenset()
    for piece in pieces if not group else [piece for piece in pieces if piece.names & group]:
        outlined = piece.claims.get("length") or piece.claims.get("diameter")
        if piece is not current and outlined and not piece.openings:
            piece.openings.append(SaidOpening(made[0].what, made[0].kind))
            made.append(piece.openings[-1])
    return made


def _first_of_each(pieces: Sequence[SaidPiece], sentence: Sentence) -> SaidPiece | None:
    """Return the first of those that a name before "each" tells from the others."""
    first_words = frozenset(sentence.words[:_EARLY]) - {""}
    named = [piece for piece in pieces if first_words & piece.names]
    if not 0 < len(named) < len(pieces):
        return None
    named[0].group = frozenset(
        word for word in first_words if all(word in one.names for one in named)
    )
    return named[0]


def needs_flat(
    piece: SaidPiece | None, pieces: Sequence[SaidPiece], found: Sequence[Mention]
) -> bool:
    """Whether a sink or a hob is named while the current slab is upright, beside a flat one."""
    is_upright = piece is not None and piece.use in _WITHOUT
    big = [one for one in found if one.kind == "open" and one.name in _BIG and not one.is_denied]
    named = [one for one in found if one.kind == "slab"]
    flat = [piece for piece in pieces if piece.use not in _WITHOUT and piece.has_size()]
    return is_upright and bool(big) and not named and len(flat) == 1


def _by_noun(pieces: Sequence[SaidPiece], sentence: Sentence, mention: Mention) -> list[SaidPiece]:
    """Return the slabs that were named by a noun: "the worktop" is the kitchen worktop."""
    noun = " ".join(sentence.words[mention.start : mention.end])
    return [
        piece for piece in pieces if any(f" {said}".endswith(f" {noun}") for said in piece.nouns)
    ]


def piece_inside(
    pieces: Sequence[SaidPiece], sentence: Sentence, found: Sequence[Mention]
) -> SaidPiece | None:
    """Return the slab that a sentence says an opening is in: "the hob goes in the worktop"."""
    for mention in found if len(pieces) > 1 else ():
        is_inside = mention.kind == "slab" and mention.preposition in _INSIDE
        following = sentence.atoms[mention.end : mention.end + 1]
        is_numbered = bool(following) and following[0].kind == "size"  # "in worktop 2"
        if not is_inside or mention.is_old or is_numbered:
            continue
        said = set(sentence.words[max(0, mention.start - 1) : mention.end])
        named = [piece for piece in pieces if len(said & piece.names) > 1 or said & piece.called]
        named = named if len(named) == 1 else _by_noun(pieces, sentence, mention)
        if len(named) != 1 and mention.name:
            named = [piece for piece in pieces if piece.use == mention.name and not piece.called]
        if len(named) == 1:
            return named[0]
    return None


def piece_of_opening(
    pieces: Sequence[SaidPiece], sentence: Sentence, found: Sequence[Mention]
) -> SaidPiece | None:
    """Return the one slab that an opening's sentence names, or that can only be meant.

    Parameters
    ----------
    found
        What the sentence names.
    """
    if len(pieces) < 2:
        return None
    if any(of_each(sentence, one) for one in found):
        return _first_of_each(pieces, sentence)
    words = set(sentence.words)
    openings = [one for one in found if one.kind == "open" and not one.is_denied]
    slabs = [one for one in found if one.kind == "slab" and one.preposition in _INSIDE]
    inside = piece_inside(pieces, sentence, found)
    if inside is not None:
        return inside
    for mention in openings if not slabs else ():
        noun = set(sentence.words[mention.start : mention.end])
        named = [piece for piece in pieces if noun & piece.names and not words & piece.called]
        if len(named) == 1:
            return named[0]
    flat = [piece for piece in pieces if piece.use not in _WITHOUT]
    if len(flat) == 1 and not slabs:
        return flat[0]
    return _that_has(pieces, openings) if not slabs else None


def _that_has(pieces: Sequence[SaidPiece], named: Sequence[Mention]) -> SaidPiece | None:
    """Return the one slab that was told to have such an opening; a tap is where the bowl is."""
    for mention in named:
        wanted = {mention.name} if mention.name not in _AT_BOWL else {mention.name, *_BOWLS}
        having = [
            piece for piece in pieces if any(opening.what in wanted for opening in piece.openings)
        ]
        if len(having) == 1:
            return having[0]
    return None
