"""An L that is told as two pieces with a join: each leg is a slab of its own."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import SaidPiece, SaidWord
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.shapes.legs import side_said
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.word_sets import word_set

_IS_L: Final = re.compile(
    r"\bkitchen l\b|\bl[ -]?(?:shaped?|run|worktop|counter|top)\b|\ban l\b|\bl[ -]?förmig"
    r"|\bl[ -]form|\bcorner"
    r" (?:worktop|run)\b",
    re.IGNORECASE,
)
_IN_TWO: Final = re.compile(
    r"\b(?:two|2|separate|zwei) (?:pieces|sections|parts|slabs|tops|bits|lengths|teilen?"
    r"|stücken?|platten)\b"
    r"|\b(?:join(?:t|ed)?|seam|butt(?:s|ed|ing)?) (?:\w+ ){0,3}(?:corner|where they meet|up to"
    r"|together|against)\b"
    r"|\bbutt(?:s|ed|ing)? (?:up )?(?:to|against)\b|\bmit (?:einer )?fuge\b"
    r"|\b(?:cast|made|supplied|done|split|cut|divided|delivered) in(?:to)? (?:two|2)\b"
    r"(?!\s?(?:mm|cm|m)\b)",
    re.IGNORECASE,
)
_NOT_IN_TWO: Final = re.compile(
    r"\b(?:no|without(?: a)?|not|nicht|ohne) (?:\w+ ){0,2}(?:join|joint|seam|two pieces|fuge)"
    r"|\b(?:in|as) one(?: piece)?\b|\bone piece\b|\bin einem stück\b",
    re.IGNORECASE,
)
# Whether two pieces are only asked about: "does it have to come in two bits?".
_ASKED: Final = re.compile(
    r"\b(?:know|sure|wonder\w*|whether|does|would|must|can|could|should)\b.*"
    r"(?:has|have|need|be|come|do|make)\b.*\?|\bif that means\b|\bob (?:das|sie|es)\b",
    re.IGNORECASE | re.DOTALL,
)
_SENTENCE: Final = 200  # characters
_PARTS: Final = word_set("section piece leg run part side bit slab length top teil schenkel platte")
_INSIDE: Final = frozenset({"in", "on", "im", "into"})
_FAR: Final = 11


def is_split(text: str) -> bool:
    """Return whether a message asks for an L as two slabs and a join."""
    if not _IS_L.search(text) or _NOT_IN_TWO.search(text):
        return False
    return any(not _ASKED.search(text, *_sentence_of(text, found)) for found in
               _IN_TWO.finditer(text))  # fmt: skip


def _sentence_of(text: str, found: re.Match[str]) -> TextSpan:
    """Return where the sentence of words begins and ends, a question mark among it."""
    low = max(0, found.start() - _SENTENCE)
    before = max(text.rfind(mark, low, found.start()) for mark in ".?!\n")
    ends = [text.find(mark, found.end(), found.end() + _SENTENCE) for mark in ".?!"]
    end = min((at for at in ends if at >= 0), default=found.end())
    return max(low, before + 1), end + 1


def legs_apart(focus: Focus, parsed: ParsedSentence) -> None:
    """Make each leg's name a slab's, and begin the slab of each that has two sizes of its own."""
    for mention in parsed.found:
        if mention.kind == "leg" and mention.name in ("back", "side"):
            mention.kind = "part"
            _note_side(focus, parsed, mention)
    parsed.found += _lettered(parsed)
    parsed.found.sort(key=lambda one: one.start)
    for mention in [mention for mention in parsed.found if mention.kind == "part"]:
        known = focus.parts.get(mention.name)
        if known is not None and _is_inside(parsed.sentence.words, mention):
            focus.subjects.piece, focus.subjects.openings, focus.on_opening = known, [], False
            parsed.found.remove(mention)  # "the sink in A": what the sentence tells is in that one


def _note_side(focus: Focus, parsed: ParsedSentence, mention: Mention) -> None:
    """Note at which end of the long leg the short one is."""
    words, scene = parsed.sentence.words, focus.subjects.scene
    high = min(len(words), mention.end + _FAR)
    side = side_said(words, mention.start, high) if mention.name == "side" else ""
    if side and scene.turns is None:
        atoms = parsed.sentence.atoms
        scene.turns = SaidWord(side, ((atoms[mention.start].start, atoms[high - 1].end),))


def take_part(
    focus: Focus, parsed: ParsedSentence, mention: Mention, active: Mention | None
) -> Mention | None:
    """Take up the slab that a leg's name means; begin it where its two sizes follow."""
    known = focus.parts.get(mention.name)
    if known is not None:
        focus.subjects.piece, focus.subjects.openings, focus.on_opening = known, [], False
        return _slab(mention, known)
    pair = [size for size in parsed.sizes if size.of > 1 and size.place == 1]
    if not any(mention.end <= one.at <= mention.end + _FAR for one in pair):
        return active
    piece = focus.subjects.piece
    if piece is None or piece.claims.get("length") or focus.subjects.pending:
        piece = focus.start_piece(piece.use if piece else "", label="part")
    piece.label = "part"
    atoms = parsed.sentence.atoms
    piece.spans.append((atoms[mention.start].start, atoms[mention.end - 1].end))
    focus.parts[mention.name] = piece
    return _slab(mention, piece)


def _is_inside(words: Sequence[str], mention: Mention) -> bool:
    """Return whether something is in the leg that is named, or on it."""
    return bool(_INSIDE & set(words[max(0, mention.start - 2) : mention.start]))


def _slab(mention: Mention, piece: SaidPiece) -> Mention:
    return Mention(mention.start, mention.end, "slab", piece.use, determiner="the")


def _lettered(parsed: ParsedSentence) -> list[Mention]:
    """Return "section A", "leg 2", and a letter alone that names one: "sink in A"."""
    words, atoms = parsed.sentence.words, parsed.sentence.atoms
    taken = {i for mention in parsed.found for i in range(mention.start, mention.end)}
    found = []
    for i, word in enumerate(words):
        is_alone = len(word) == 1 and word in "abcd" and words[i + 1 : i + 2] in ([""], [])
        if word in _PARTS and len("".join(words[i + 1 : i + 2])) == 1 and i not in taken:
            found.append(Mention(i, i + 2, "part", words[i + 1]))
        elif is_alone and i and words[i - 1] in ("in", "on") and i + 1 < len(atoms):
            found.append(Mention(i, i + 1, "part", word))
    return found
