"""Openings that a message does not want, or no longer: "no hob", "leave out the second hole"."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.focus import ParsedSentence
from ledgerstone.enquiry.scene.said import SaidOpening
from ledgerstone.enquiry.scene.subjects import Subjects
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_DROPS: Final = word_set("ignore forget scrap cancel leave drop omit skip lose")
_ONE: Final = word_set("one single a eine einen ein")
_ONLY: Final = word_set("only just nur")
_LED: Final = 3  # words before its name
_KNOWS: Final = frozenset(["have", "know", "got", "haben", "weiß"])
_NEEDED: Final = frozenset({"needed", "required", "necessary", "nötig", "notwendig"})
_IT: Final = frozenset({"it", "that", "this", "those", "them", "das"})
_ORDINALS: Final = {
    **dict.fromkeys(["first", "1st", "erste", "ersten"], 0),
    **dict.fromkeys(["second", "2nd", "other", "zweite", "zweiten", "andere"], 1),
    **dict.fromkeys(["third", "3rd", "dritte", "dritten"], 2),
    **dict.fromkeys(["last", "letzte", "letzten"], -1),
}


def refuse(
    subjects: Subjects, mention: Mention, parsed: ParsedSentence, *, is_elsewhere: bool
) -> None:
    """Note that an opening is not wanted, or no longer, since it is made elsewhere."""
    if is_elsewhere and mention.kind == "open":
        _refuse_made_elsewhere(subjects, mention, parsed.rank[0])
    if parsed.rank[1]:
        _keep_one(subjects, mention, parsed.sentence)
    if mention.is_denied:
        _refuse_denied(subjects, mention, parsed.sentence, parsed.rank[0])


def _keep_one(subjects: Subjects, mention: Mention, sentence: Sentence) -> None:
    """Keep the first of openings alike where one is put right to be enough: "only one tap hole"."""
    led = set(sentence.words[max(0, mention.start - _LED) : mention.start])
    is_one = mention.kind == "open" and bool(led & _ONE) and bool(led & _ONLY)
    alike = [
        opening
        for opening in (subjects.piece.openings if subjects.piece is not None else ())
        if opening.what == mention.name
    ]
    if is_one and len(alike) > 1 and subjects.piece is not None:
        gone = alike[1:]
        subjects.piece.openings[:] = [
            one for one in subjects.piece.openings if not any(one is two for two in gone)
        ]
        subjects.openings = alike[:1]


def _refuse_denied(subjects: Subjects, mention: Mention, sentence: Sentence, layer: int) -> None:
    """Note that a hole is not wanted; not having its tap yet is something else."""
    near = sentence.words[max(0, mention.start - 5) : mention.start]
    after = sentence.words[mention.end : mention.end + 2]
    if after == ["stays", "where"]:
        return
    if mention.kind == "hole" and after[:1] in (["for"], ["für"]) and _IT & set(after):
        for opening in subjects.openings:  # "so no hole for that"
            opening.is_refused = opening.is_refused or not opening.has_size()
    if mention.kind == "hole" and set(after[:1]) & _NEEDED:
        for opening in subjects.openings:  # "the sink stands on its own, no cut-out needed"
            opening.is_refused = opening.is_refused or not opening.has_size()
    if mention.kind == "hole" and subjects.piece is not None and _DROPS & set(near):
        _refuse_by_number(subjects.piece.openings, sentence.words[mention.start - 1])
    if subjects.piece is None or mention.kind == "hole" or _KNOWS & set(near):
        return
    for opening in subjects.piece.openings:
        is_off = _is_older(opening, layer) or not opening.has_size() or bool(_DROPS & set(near))
        if opening.what == mention.name and is_off:
            opening.is_refused = True


def _refuse_made_elsewhere(subjects: Subjects, mention: Mention, layer: int) -> None:
    """Refuse what an older message asked for, and is made elsewhere now: a tap on the wall."""
    for opening in subjects.piece.openings if subjects.piece is not None else ():
        if opening.what == mention.name and opening.has_size() and _is_older(opening, layer):
            opening.is_refused = True


def _is_older(opening: SaidOpening, layer: int) -> bool:
    """Return whether all sizes of an opening stand in older messages."""
    return all(one.rank[0] < layer for said in opening.claims.values() for one in said)


def _refuse_by_number(openings: list[SaidOpening], ordinal: str) -> None:
    """Refuse one of the openings by its place among them: "the second hole"."""
    at = _ORDINALS.get(ordinal)
    if at is not None and len(openings) > 1 and at < len(openings):
        openings[at].is_refused = True
