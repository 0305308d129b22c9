"""A message's text becomes a scene: its parts oldest first, their tables, lines and sentences."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from ledgerstone.enquiry.amounts import Amounts
from ledgerstone.enquiry.lines import Line
from ledgerstone.enquiry.measures import measures_of
from ledgerstone.enquiry.parts import Part, Parts, lines_of
from ledgerstone.enquiry.scene import NOWHERE, Scene
from ledgerstone.enquiry.sentences import MOST_ATOMS, Sentence, sentences_of
from ledgerstone.enquiry.settle import Settler
from ledgerstone.enquiry.splitting import is_split
from ledgerstone.enquiry.tables import read_table, tables_in
from ledgerstone.enquiry.tokens import Span, not_sizes
from ledgerstone.enquiry.walk import Walker

_INCHES: Final = re.compile(
    r"\d\s?(?:\"|”|″|''|inch|in\.|in\b(?!\s(?:from|the|a|an|my|our"
    r"|front|total|one|dia|diam|diameter|length|width|depth|thickness|height|all|it|this|white"
    r"|grey|black)\b))"
    r"|\binches\b|[½¼¾⅛⅜⅝⅞]\s?in\b"
)
_QUOTED: Final = re.compile(r"(?<![\d\w])[\"“„](?=[^\W\d])[^\"“”„\n]{2,120}[\"”“]")
_ANSWERS: Final = re.compile(r"\s*(?:re|aw|fw|fwd|wg|antw)\s*:", re.IGNORECASE)


_LEANS: Final = re.compile(
    r"\bas (?:per )?(?:in )?(?:your|the) (?:quot\w*|estimate|e-?mail|offer)|\bas (?:quoted"
    r"|discussed"
    r"|agreed|before|priced|offered|you said)|\beverything else\b|\bthe rest\b|\brest (?:as"
    r"|stays|is)"
    r"|\botherwise\b|\bsame (?:length|thickness|depth|width|sizes?|as|again)\b|\bstill \d"
    r"|\bhappy with (?:the|your)\b|\bgo ahead and\b|\bwie (?:besprochen|gehabt|angeboten"
    r"|im angebot)"
    r"|\bbleib(?:t|en)\b|\bansonsten\b|\bunverändert\b|\bstays? (?:the same|at|as)\b"
    r"|\bunchanged\b",
    re.IGNORECASE,
)


@dataclass(slots=True)
class Layered:
    """A part's sentences and tables, and how new it is."""

    part: Part
    layer: int
    is_own: bool
    sentences: list[Sentence] = field(default_factory=list)


def read_scene(
    text: str, subject: str, parts: Parts, struck: Sequence[Span], own: Sequence[bool]
) -> Scene:
    """Read all parts, the oldest first, the subject before the newest."""
    masked = _masked(text, struck)
    has_inches = bool(_INCHES.search(_QUOTED.sub(" ", text)))
    layered = [
        Layered(part, layer, is_own)
        for layer, (part, is_own) in enumerate(reversed(list(zip(parts.parts, own, strict=True))))
    ]
    left = MOST_ATOMS
    for one in reversed(layered):  # the newest words first, where there are too many
        lines = one.part.lines
        one.sentences = sentences_of(text, lines, masked, has_inches=has_inches, most=left)
        left -= sum(len(sentence.atoms) for sentence in one.sentences)
        one.sentences = _quoted_first(one.sentences)
    every = [sentence for one in layered for sentence in one.sentences]
    settler = Settler(Amounts(text, every))
    newest = "\n".join(line.words for one in layered[-1:] for line in one.part.lines)
    walker = Walker(
        settler,
        has_sizes=_has_sizes(every),
        is_split=is_split(text),
        leans=bool(_LEANS.search(newest)),
    )
    if subject:
        _read_subject(subject, walker, 0)
    for one in layered:
        _read_part(text, one, masked, walker, has_inches=has_inches)
    scene = walker.subjects.scene
    scene.is_split = walker.focus.is_split and len(walker.focus.parts) > 1
    return scene


def _quoted_first(sentences: list[Sentence]) -> list[Sentence]:
    """Give what is quoted under all of a message before it: the newer words change the older."""
    quoted = [sentence for sentence in sentences if sentence.is_quoted]
    own = [sentence for sentence in sentences if not sentence.is_quoted]
    is_below = bool(quoted and own) and own[-1].atoms[0].start < quoted[0].atoms[0].start
    return [*quoted, *own] if is_below else sentences


def _has_sizes(sentences: Sequence[Sentence]) -> bool:
    """Whether any size has a word that names it, or stands in a group."""
    named = {"long", "wide", "deep", "thick", "dia"}
    return any(
        measure.of > 1 or measure.role in named
        for sentence in sentences
        for measure in measures_of(sentence)
    )


def _masked(text: str, struck: Sequence[Span]) -> list[Span]:
    merged: list[Span] = []
    for start, end in sorted([*not_sizes(text), *struck]):
        if merged and start < merged[-1][1]:
            merged[-1] = (merged[-1][0], max(merged[-1][1], end))
        else:
            merged.append((start, end))
    return merged


def _read_subject(subject: str, walker: Walker, layer: int) -> None:
    """Let the subject name the piece, and contradict the text; an answer's is an older one's."""
    lines = lines_of(subject)
    is_new = not _ANSWERS.match(subject)
    for sentence in sentences_of(subject, lines, not_sizes(subject), has_inches=False):
        if is_new or not any(atom.kind == "size" for atom in sentence.atoms):
            sentence.starts_paragraph = True
            walker.read(sentence, layer)
    walker.focus.is_correcting = False
    for piece in walker.subjects.scene.pieces:  # the subject stands outside the text
        piece.spans = []
        for claims in piece.claims.values():
            claims[:] = [replace(one, spans=(NOWHERE,)) for one in claims]
        for opening in piece.openings:
            opening.spans, opening.rim = [], None
    rooms = walker.subjects.scene.rooms
    rooms[:] = [(name, NOWHERE, piece) for name, _, piece in rooms]


def _read_part(
    text: str, one: Layered, masked: Sequence[Span], walker: Walker, *, has_inches: bool
) -> None:
    """Read a part's sentences and its tables in the order in which they stand."""
    tables = tables_in(text, one.part.lines)
    taken = {line.start for table in tables for line in table.lines}
    for table in tables:
        table.sentences = []
    walker.focus.on_opening = False
    waiting = sorted(tables, key=lambda table: table.lines[0].start)
    for sentence in one.sentences:
        start = sentence.atoms[0].start
        while waiting and waiting[0].lines[0].start <= start:
            read_table(text, waiting.pop(0), masked, walker, one.layer, has_inches=has_inches)
        if not _is_inside(start, one.part.lines, taken):
            walker.read(sentence, one.layer, is_own=one.is_own or _is_own_quote(sentence, one))
    for table in waiting:
        read_table(text, table, masked, walker, one.layer, has_inches=has_inches)


def _is_own_quote(sentence: Sentence, one: Layered) -> bool:
    """Between the lines of a reply, what is quoted is the workshop's."""
    return sentence.is_quoted and one.part.kind == "newest"


def _is_inside(start: int, lines: Sequence[Line], taken: set[int]) -> bool:
    if not taken:
        return False
    line = next((line for line in lines if line.start <= start <= line.end), None)
    return line is not None and line.start in taken
