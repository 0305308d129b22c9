"""A thickness chosen by a word among those that the workshop offered: "the thicker one please"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, SaidPiece, newest, say
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.scene.subjects import has_mark
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_THICKER: Final = word_set(
    "thicker thickest chunkier chunky heavier beefier stouter dickere dickeren dickste dicksten"
    " dicker stärkere stärkeren kräftigere kräftigeren massivere"
)
_THINNER: Final = word_set(
    "thinner thinnest slimmer slim slimline lighter dünnere dünneren dünnste dünnsten dünner"
    " schlankere schlankeren schmalere"
)
_SHORT: Final = 16  # atoms


def take_choice(
    sentence: Sentence,
    offered: Sequence[Measure],
    piece: SaidPiece | None,
    assigner: SizeAssigner,
    rank: tuple[int, int],
) -> None:
    """Take the thickest or the thinnest of what was offered and asked, as a short answer says.

    Parameters
    ----------
    offered
        The thicknesses that the workshop offered.
    """
    words = set(sentence.words)
    more, less = bool(words & _THICKER), bool(words & _THINNER)
    is_plain = not (sentence.is_quoted or sentence.ends == "?" or has_mark(sentence, "not"))
    is_plain = is_plain and len(sentence.atoms) <= _SHORT
    has_size = any(atom.kind == "size" for atom in sentence.atoms)
    if piece is None or more == less or has_size or not is_plain:
        return
    claims = [assigner.claim(one, "thickness", (rank[0], 1)) for one in offered]
    every = [claim for claim in claims if claim is not None]
    if not every:
        return
    known = newest(piece.claims.get("thickness", []))
    chosen = (max if more else min)((*every, *known), key=lambda one: one.mm)
    if any(chosen is one for one in every):
        say(piece.claims, "thickness", _worked_out(chosen, sentence))


def _worked_out(claim: Claim, sentence: Sentence) -> Claim:
    """Return an offered size as the customer's, with the words that choose it."""
    span = (sentence.atoms[0].start, sentence.atoms[-1].end)
    return Claim(claim.length, (span, *claim.spans), claim.rank, claim.order, how="worked-out")


def concludes(sentence: Sentence, measure: Measure) -> bool:
    """Return whether an answer ends on a size: "we thought 40, but he says 50 will do, so 50"."""
    led = sentence.words[max(0, measure.at - 2) : measure.at]
    is_last = all(atom.kind == "mark" for atom in sentence.atoms[measure.at + 1 :])
    return is_last and bool({"so", "then", "dann", "also"} & set(led))


def in_unit(measure: Measure, old: Measure, known: Claim) -> Measure:
    """Return a bare number in the unit of what it replaces: "60 not 80" of a hole of 80 mm."""
    return replace(measure, unit_from_label=old.size.unit or known.length.unit)
