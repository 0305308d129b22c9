"""Openings told by where they are beside another: so far to its right, to either side of it."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, openings_at
from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece
from ledgerstone.enquiry.scene.subjects import ROUND_HOLES
from ledgerstone.enquiry.sentence import scope
from ledgerstone.enquiry.sentence.group_cues import SPACINGS
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.words.word_sets import word_set

_BASINS: Final = frozenset({"sink", "basin"})
_BESIDE: Final = word_set("beside alongside neben daneben")
_EVERY_SIDE: Final = ("left", "right", "front", "back")
_PAIR: Final = 2
_LONGEST_ROW: Final = 4
_NEAR: Final = 4  # atoms from a distance to the words that call it one
_APART: Final = SPACINGS | word_set("apart centres centers auseinander")
_EVENLY: Final = word_set("symmetrical symmetrically symmetric evenly equally symmetrisch")
_IT: Final = frozenset(["it", "this", "davon", "daneben", "first", "other", "ersten"])


def read_sideways(focus: Focus, parsed: ParsedSentence) -> None:
    """Set a row of taps about a middle one: "the others 4 in to either side of it"."""
    row = focus.subjects.openings
    if len(row) == _PAIR:
        _read_both_sides(focus, parsed, row)
    _read_apart(parsed, row)
    for measure in parsed.sizes:
        if len(row) < 3 or len(row) % 2 == 0 or not scope.is_beside(parsed.sentence, measure):
            continue
        middle = len(row) // 2
        for i, opening in enumerate(row):
            if i != middle:
                opening.offset, opening.offset_sign = measure.size, i - middle
                opening.level_with = row[middle]
                opening.level_spans = ((measure.size.start, measure.size.end),)


def _read_both_sides(focus: Focus, parsed: ParsedSentence, row: list[SaidOpening]) -> None:
    """Set two taps so far to either side of a basin's middle, or of the slab's where none is."""
    piece = focus.subjects.current()
    others = [
        opening for opening in piece.openings if opening.what in _BASINS and opening not in row
    ]
    for measure in parsed.sizes:
        if not scope.is_beside(parsed.sentence, measure) or len(others) > 1:
            continue
        for opening, sign in zip(row, (-1, 1), strict=True):
            opening.offset, opening.offset_sign = measure.size, sign
            opening.level_with = others[0] if others else None
            opening.level_spans = ((measure.size.start, measure.size.end),)
            opening.loosely_centred.pop("x", None)


def _read_apart(parsed: ParsedSentence, row: list[SaidOpening]) -> None:
    """Set a row so far apart about the middle: "two tap holes 200 apart, centred"."""
    apart = [one for one in parsed.sizes if one.role == "apart" and one.of == 1 and not one.side]
    words = set(parsed.sentence.words)
    is_middle = parsed.sentence.marks("centred") or words & _EVENLY
    if len(apart) != 1 or not _PAIR <= len(row) <= _LONGEST_ROW or not is_middle:
        return
    at = apart[0].at
    if not _APART & set(parsed.sentence.words[max(0, at - _NEAR) : at + _NEAR]):
        return
    size = replace(apart[0].size, amount=apart[0].size.amount / 2)
    for i, opening in enumerate(row):
        steps = 2 * i - (len(row) - 1)
        if steps:
            opening.offset, opening.offset_sign, opening.level_with = size, steps, None
            opening.level_spans = ((size.start, size.end),)
            opening.loosely_centred.pop("x", None)
            opening.centred.pop("x", None)
        if {"front", "back"} & opening.claims.keys():
            opening.centred.pop("y", None)


def note_beside(focus: Focus, parsed: ParsedSentence) -> None:
    """Note that a tap stands beside its basin, without a word of how far: "tap beside it"."""
    words = parsed.sentence.words
    for i, word in enumerate(words):
        is_next = words[i : i + 2] == ["next", "to"]
        if not (word in _BESIDE or is_next):
            continue
        for opening in openings_at(focus.held, i) if focus.held else ():
            if opening.what in ROUND_HOLES:
                opening.is_beside = not any(map(opening.claims.get, _EVERY_SIDE))


def read_beside(
    focus: Focus, parsed: ParsedSentence, piece: SaidPiece, named: list[Mention]
) -> None:
    """Put an opening so far to the right or the left of the slab's middle or of another one."""
    words = parsed.sentence.words
    for measure in parsed.sizes:
        if not measure.beside or measure.cue is None:
            continue
        end = measure.cue[1]
        ahead = [one for one in named if end <= one.start <= end + 4 and one.kind == "open"]
        others = [opening for opening in piece.openings if ahead and opening.what == ahead[0].name]
        if not others and _IT & set(words[end - 1 : end + 2]):
            others = [
                opening for opening in piece.openings if opening not in focus.subjects.openings
            ][-1:]
        for opening in focus.subjects.openings:
            if opening not in others:
                before = opening.level_with if opening.offset is not None else None
                opening.offset, opening.offset_sign = measure.size, measure.beside
                opening.level_with = others[0] if others else before  # "no, 230 to the left"
                opening.level_spans = ((measure.size.start, measure.size.end),)
                opening.loosely_centred.pop("x", None)
