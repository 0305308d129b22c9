"""Sizes that contradict a slab's own are another slab's, where another one was named since."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, NamedSlab, ParsedSentence
from ledgerstone.enquiry.scene.identity import called
from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidPiece, newest
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.order import UPRIGHT_USES

_ANY_SLAB: Final = frozenset(
    {"top", "tops", "slab", "slabs", "plate", "platte", "betonplatte", "concrete", "piece"}
    | {"concrete slab", "concrete top", "concrete plate"}
)
_INDEFINITE: Final = frozenset({"a", "an", "one", ""})
_KEYS: Final = ("length", "width", "thickness", "diameter")
_ROLES: Final = frozenset({"long", "deep", "wide"})
_LEADS: Final = frozenset({"", "for", "für", "of", "with", "mit", "um"})


def note_named(focus: Focus, mention: Mention, sentence: Sentence) -> None:
    """Keep which slab was named last; what is named in passing is none."""
    if mention.is_old or mention.is_denied or mention.preposition not in _LEADS:
        return
    words = " ".join(sentence.words[mention.start : mention.end]).strip()
    atoms = sentence.atoms
    span = (atoms[mention.start].start, atoms[mention.end - 1].end)
    focus.named = NamedSlab(mention, sentence, words, span)


def call(piece: SaidPiece, mention: Mention, sentence: Sentence) -> None:
    """Note the noun that a slab is first called by."""
    if not (piece.nouns or piece.has_size()):
        piece.nouns.add(" ".join(sentence.words[mention.start : mention.end]))


def apart(
    focus: Focus, piece: SaidPiece, sizes: list[Measure], parsed: ParsedSentence
) -> SaidPiece:
    """Return the slab that sizes are of: the one in hand, or the other one that was named."""
    named, subjects = focus.named, focus.subjects
    is_bound = focus.is_split or subjects.repeats or parsed.sentence.is_quoted
    if is_bound or piece.shape == "l-shape" or subjects.piece is not piece:
        return piece
    if named is None:
        return piece
    is_other = _is_other(piece, named)
    if (
        named.phrase in _ANY_SLAB
        and {size.role for size in sizes} == {"thick"}
        and _is_whole(piece)
    ):
        return piece  # "made for a 40 mm slab, so it must be 40 thick" is no other slab
    if not is_other or not (
        _is_another_use(piece, named) or _contradicts(focus, piece, sizes, parsed)
    ):
        if not _is_whole(piece):
            piece.nouns.add(named.phrase)
            focus.named = None
        return piece
    focus.named = None
    held = _held_since(focus, piece, named, parsed)
    made = focus.start_piece(named.mention.name or piece.use, label="named")
    if made is piece:
        return piece
    made.nouns, made.spans = {named.phrase}, [named.span]
    _move_claims(piece, made, named.span[0])
    made.called |= called(named.mention, named.sentence)
    piece.spans = [span for span in piece.spans if span != named.span]
    piece.openings = [
        opening for opening in piece.openings if not any(opening is two for two in held)
    ]
    made.openings += held
    focus.leftovers.move(named.span[0], made)
    subjects.openings = held or subjects.openings
    focus.on_opening = bool(held)
    return made


def _is_whole(piece: SaidPiece) -> bool:
    known = piece.claims
    return bool(known.get("diameter") or (known.get("length") and known.get("width")))


def _move_claims(piece: SaidPiece, made: SaidPiece, start: int) -> None:
    """Give the other slab what was said since it was named."""
    for key, claims in list(piece.claims.items()):
        later = [claim for claim in claims if claim.spans and min(claim.spans)[0] > start]
        if later:
            made.claims[key] = later
            piece.claims[key] = [claim for claim in claims if claim not in later]


def _held_since(
    focus: Focus, piece: SaidPiece, named: NamedSlab, parsed: ParsedSentence
) -> list[SaidOpening]:
    """Return the openings that the sentence told of after it named the slab."""
    if named.sentence is not parsed.sentence:
        return []
    start = parsed.sentence.atoms[0].start
    later: list[SaidOpening] = []
    for at, openings in focus.held:
        for opening in openings if at > named.mention.start else ():
            is_here = all(low >= start for low, _ in opening.spans)
            if is_here and opening in piece.openings and not any(opening is two for two in later):
                later.append(opening)
    return later


def _is_other(piece: SaidPiece, named: NamedSlab) -> bool:
    """Return whether a name may be of another slab than the one in hand."""
    if named.phrase in piece.nouns:
        return False
    is_known = any(low <= named.span[0] < high for low, high in piece.spans[:1])
    if is_known and len(piece.spans) == 1 and not piece.nouns:
        return False
    return (
        named.mention.is_indefinite or named.phrase not in _ANY_SLAB or not named.mention.determiner
    )


def _is_another_use(piece: SaidPiece, named: NamedSlab) -> bool:
    """Return whether a slab of another use is named beside one that has two sizes or more."""
    mention = named.mention
    differs = bool(mention.name and piece.use) and mention.name != piece.use
    known = [key for key in _KEYS if piece.claims.get(key)]
    return differs and mention.is_indefinite and len(known) > 1


def _contradicts(
    focus: Focus, piece: SaidPiece, sizes: list[Measure], parsed: ParsedSentence
) -> bool:
    """Return whether sizes would say another length, width or thickness of the slab in hand."""
    trial = SaidPiece(piece.use, piece.shape, claims={k: list(v) for k, v in piece.claims.items()})
    focus.assigner.piece(trial, sizes, parsed.rank)
    if any(_differ(piece.claims.get(key, []), trial.claims.get(key, [])) for key in _KEYS):
        return True
    taken = {span for listed in trial.claims.values() for one in listed for span in one.spans}
    return _is_whole(piece) and any(
        size.role in _ROLES and (size.size.start, size.size.end) not in taken for size in sizes
    )


def _differ(before: list[Claim], after: list[Claim]) -> bool:
    known = newest(before)
    return bool(known) and not all(
        any(claim.agrees(one) for one in known) for claim in after[len(before) :]
    )


def is_bypassed(mention: Mention, active: Mention | None) -> bool:
    """Whether a slab only tells where something else is: "the gap between the two tops"."""
    is_between = mention.preposition == "between" and mention.determiner not in _INDEFINITE
    on_upright = active is not None and active.name in UPRIGHT_USES
    return is_between or (on_upright and mention.preposition in ("of", "behind"))
