"""Sizes told to be the same as another's: "same depth as the worktop", "same size hole"."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from ledgerstone.enquiry.ownership.old_sizes import size_of_old
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.identity import named_so, telling_words
from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece, say
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_SAME: Final = word_set("same identical gleiche gleichen gleicher selbe selben full whole entire")
_WHOLE: Final = frozenset({"full", "whole", "entire"})
_KEYS: Final = {
    "length": "length",
    "long": "length",
    "länge": "length",
    "lang": "length",
    "width": "width",
    "wide": "width",
    "breite": "width",
    "depth": "width",
    "deep": "width",
    "tiefe": "width",
    "tief": "width",
    "thickness": "thickness",
    "thick": "thickness",
    "stärke": "thickness",
    "dicke": "thickness",
}
_WIDTHS: Final = frozenset({"width", "wide", "breite"})
_SIZES: Final = frozenset({"size", "sizes", "dimensions", "größe", "maße"})
_PLACED: Final = frozenset({"height", "level", "distance", "höhe", "abstand"})
_AND: Final = frozenset({"and", "und", "n", "&", "+", ",", "/"})
_AS: Final = frozenset({"as", "wie", "of"})
_UPRIGHT: Final = frozenset({"upstand", "splashback"})
_X: Final = ("left", "right")
_Y: Final = ("front", "back")
_ALONG: Final = word_set("left right end links rechts along")
_AGAIN: Final = frozenset({("same", "again"), ("nochmal", "dasselbe"), ("and", "again")})
_FIRST: Final = word_set("first erste ersten")
_OLD_ONE: Final = word_set(
    "the old existing current present one top worktop slab which that is was it's at ( , - der die"
    " das alten alte bisherige bisherigen"
)
_EARLY: Final = 2
_MOST: Final = 20
_FAR: Final = 8


def note_same(sentence: Sentence, sizes: list[Measure]) -> None:
    """Take a size that a slab has in common with the old one: "same depth as the old one, 580"."""
    words = sentence.words
    for i, word in enumerate(words[:-2]):
        if word not in _SAME or words[i + 1] not in _KEYS or words[i + 2] not in _AS:
            continue
        role = {"length": "long", "width": "deep", "thickness": "thick"}[_KEYS[words[i + 1]]]
        told = next((size for size in sizes if size.at > i and size.of == 1), None)
        between = [atom.word for atom in sentence.atoms[i + 3 : told.at]] if told else []
        if told is not None and not told.role and set(between) <= _OLD_ONE:
            told.role = role


def read_same(focus: Focus, parsed: ParsedSentence) -> None:
    """Note which sizes a slab or an opening has in common with another one."""
    sentence, subjects = parsed.sentence, focus.subjects
    words = sentence.words
    for i, word in enumerate(words[:-1]):
        if word not in _SAME:
            continue
        following = words[i + 1]
        if following in _SIZES and focus.on_opening and word not in _WHOLE:
            _same_opening(subjects.scene.pieces, subjects.openings)
        elif following in _PLACED and focus.on_opening and word not in _WHOLE:
            along = _ALONG & set(words[i + 2 : i + 6])
            _same_place(subjects.openings, subjects.piece, _X if along else _Y)
        elif following in _KEYS and subjects.piece is not None and not focus.is_l():
            _take_subject(focus, parsed, i)
            named, end = _listed(sentence, i + 1)
            for one in named:
                _same_piece(focus, sentence, end, one, is_whole=word in _WHOLE)


def _listed(sentence: Sentence, start: int) -> tuple[list[str], int]:
    """Return sizes listed by name from a word on, and where they end: "depth and thickness"."""
    words, named, i = sentence.words, [sentence.words[start]], start + 1
    while i + 1 < len(words) and sentence.atoms[i].word in _AND and words[i + 1] in _KEYS:
        named.append(words[i + 1])
        i += 2
    return named, i


def read_again(focus: Focus, sentence: Sentence) -> None:
    """Begin one more of the opening in hand: "same again 600 off the left end"."""
    subjects, piece = focus.subjects, focus.subjects.piece
    held = [opening for opening in subjects.openings if opening.has_size()]
    is_again = any(tuple(sentence.words[i : i + 2]) in _AGAIN for i in range(_EARLY))
    if not is_again or piece is None or len(held) != 1 or len(piece.openings) >= _MOST:
        return
    first = held[0]
    more = SaidOpening(first.what, first.kind, rim=first.rim, is_asked=True)
    more.names_hole = first.names_hole
    kept = {key: list(claims) for key, claims in first.claims.items() if key not in _X}
    more.claims = kept
    piece.openings.append(more)
    subjects.openings, focus.on_opening = [more], True
    focus.held.append((0, [more]))


def _take_subject(focus: Focus, parsed: ParsedSentence, at: int) -> None:
    """Take up the slab that is a clause's subject, where another one is named beside it."""
    named = [
        mention
        for mention in parsed.found
        if mention.kind == "slab" and mention.start < at and mention.name
    ]
    subjects = [one for one in named if not one.preposition] or named[:1]
    pieces = focus.subjects.scene.pieces
    alike = [piece for piece in pieces if subjects and piece.use == subjects[-1].name]
    if len(alike) == 1:
        focus.subjects.piece = alike[0]


def _same_piece(focus: Focus, sentence: Sentence, end: int, word: str, *, is_whole: bool) -> None:
    """Give the current slab a size of the one that is named after "as", else of the one before."""
    piece, pieces = focus.subjects.piece, focus.subjects.scene.pieces
    key = _KEYS[word]
    said = piece is not None and piece.claims.get("length" if word in _WIDTHS else key)
    if piece is None or said or (is_whole and key != "length"):
        return
    leads = end < len(sentence.words) and sentence.words[end] in _AS
    other = _named(focus, sentence, end) if leads else None
    if other is None and not leads and not is_whole:
        before = [one for one in pieces if one is not piece and one.claims.get(key)]
        other = before[-1] if before else None
    if other is None and is_whole and piece.use in _UPRIGHT:
        other = pieces[0] if pieces and pieces[0] is not piece else None
    if key == "width" and word in _WIDTHS and (piece.claims.get("width") or piece.use in _UPRIGHT):
        key = "length"  # "the same width, 180 deep"
    if other is None and not is_whole and focus.old and len(pieces) == 1:
        _same_as_old(focus, piece, key)
    if other is None or (piece.like is not None and piece.like is not other):
        return
    piece.like, piece.like_in = other, piece.like_in | {key}


def _same_as_old(focus: Focus, piece: SaidPiece, key: str) -> None:
    """Give a slab a size of what it replaces: "the same length, but 350 wide"."""
    claim = size_of_old(focus, key)
    if claim is not None:
        say(piece.claims, key, replace(claim, how="worked-out"))


def _named(focus: Focus, sentence: Sentence, start: int) -> SaidPiece | None:
    """Return the slab that is named from a word on: "as the worktop", "as the first"."""
    piece = focus.subjects.piece
    others = [one for one in focus.subjects.scene.pieces if one is not piece and one.has_size()]
    words = sentence.words[start : start + _FAR]
    if {"top", "slab"} & set(words) and others:
        return others[0] if len(others) == 1 else None
    if _FIRST & set(words[:3]) and others:
        return others[0]
    so = named_so(others, telling_words(words))
    if so is not None:
        return so
    used = [
        other for other in others if other.use and any(word.startswith(other.use) for word in words)
    ]
    return used[0] if len(used) == 1 else others[0] if len(others) == 1 and "one" in words else None


def _same_place(
    openings: list[SaidOpening], piece: SaidPiece | None, sides: tuple[str, str]
) -> None:
    """Give openings that are at "the same height" how far another of them is from the front."""
    for opening in openings if piece is not None else ():
        others = [one for one in piece.openings if one is not opening] if piece else []
        known = [other for other in others if any(other.claims.get(side) for side in sides)]
        if not known or any(opening.claims.get(side) for side in sides):
            continue
        for side in sides:
            if known[-1].claims.get(side):
                opening.claims[side] = list(known[-1].claims[side])


def _same_opening(pieces: list[SaidPiece], openings: list[SaidOpening]) -> None:
    """Give openings without a size that of the last one like them."""
    for opening in openings:
        sized = [
            one
            for piece in pieces
            for one in piece.openings
            if one is not opening and one.what == opening.what and one.has_size()
        ]
        if not sized or opening.has_size():
            continue
        for key in ("length", "width", "diameter"):
            if sized[-1].claims.get(key):
                opening.claims[key] = list(sized[-1].claims[key])
        opening.kind = opening.kind or sized[-1].kind
