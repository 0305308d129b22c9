"""A message's text becomes a scene: its parts oldest first, their tables, lines and sentences."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from ledgerstone.enquiry.ownership.asked import asked_for, sized_nouns
from ledgerstone.enquiry.referents.options import passed_over
from ledgerstone.enquiry.scene.said import NOWHERE, SaidOrder
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.scene.weighing import weigh
from ledgerstone.enquiry.sentence import answers
from ledgerstone.enquiry.sentence.amounts import Amounts
from ledgerstone.enquiry.sentence.measures import measures_of
from ledgerstone.enquiry.sentence.mentions import mentions_of
from ledgerstone.enquiry.shapes.leg_clauses import read_legs_told
from ledgerstone.enquiry.shapes.split_l import is_split
from ledgerstone.enquiry.text.lines import TextLine
from ledgerstone.enquiry.text.parts import MailPart, Parts, lines_of
from ledgerstone.enquiry.text.sentences import MAX_ATOMS, Sentence, sentences_of
from ledgerstone.enquiry.text.sizes import Size
from ledgerstone.enquiry.text.tokens import TextSpan, not_sizes
from ledgerstone.enquiry.walk.tables import read_table, tables_in
from ledgerstone.enquiry.walk.walk import Walker

_INCHES: Final = re.compile(
    r"\d\s?(?:\"|”|″|''|inch|in\.|in\b(?!\s(?:from|the|a|an|my|our"
    r"|front|total|one|dia|diam|diameter|length|width|depth|thickness|height|all|it|this|white"
    r"|grey|black)\b))"
    r"|\binches\b|[½¼¾⅛⅜⅝⅞]\s?in\b"
)
_WISHES: Final = re.compile(
    r"\b(?:could|can|would) you (?:please )?(?:do|make|cast|price|quote|give)\b|\bplease (?:price"
    r"|quote)\b|\b(?:could|can|may) (?:i|we) (?:please )?(?:get|have|order)\b|\b(?:price|quote)"
    r" (?:for|on)\b|\bwant it (?:here|by|in|for)\b|\bi['’]?d like (?:a|an|to|two|some)\b|\b(?:i"
    r"|we) (?:need|want)\b|\blooking for\b"
    r"|\bhow much (?:would|for|is)\b|\bhätten? (?:ich |wir )?gern|\b(?:brauche|suche|möchte)n?\b",
    re.IGNORECASE,
)
_OFFERS: Final = re.compile(
    r"\bwe can (?:do|make|cast)\b|\bour usual\b|\blet (?:us|me) know\b|\bthank(?:s| you) for your"
    r" (?:enquiry|inquiry|mail|email|message)\b|\bshall i price\b|\bvielen dank für ihre\b",
    re.IGNORECASE,
)
_COUNTS: Final = 10
_TIMES: Final = frozenset({"x", "×", "by", "mal", "+"})
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
_BELOW: Final = frozenset(
    {"below", "following", "underneath", "unten", "untenstehende", "folgende"}
)


@dataclass(slots=True)
class Layered:
    """A part's sentences and tables, and how new it is."""

    part: MailPart
    layer: int
    is_own: bool
    sentences: list[Sentence] = field(default_factory=list)
    is_quote_theirs: bool = False


def read_scene(
    text: str,
    subject: str,
    parts: Parts,
    struck: Sequence[TextSpan],
    own: Sequence[bool],
    *,
    in_inches: bool,
) -> SaidOrder:
    """Read all parts, the oldest first, the subject before the newest.

    ``in_inches``: whether a bare number that is too few millimetres is inches, as where people
    measure in them. Where nothing that a table knows has a size, what has three of them is a slab
    by any name.
    """
    scene, every = _read(text, subject, parts, struck, own, in_inches=in_inches)
    if any(piece.has_size() for piece in scene.pieces):
        return scene
    sized = frozenset(noun for sentence in every for noun in sized_nouns(sentence))
    if sized:
        scene, _ = _read(text, subject, parts, struck, own, in_inches=in_inches, wished=sized)
    return scene


def _read(
    text: str,
    subject: str,
    parts: Parts,
    struck: Sequence[TextSpan],
    own: Sequence[bool],
    *,
    in_inches: bool,
    wished: frozenset[str] = frozenset(),
) -> tuple[SaidOrder, list[Sentence]]:
    """Read all parts once; give the scene and the sentences. ``wished``: names of slabs."""
    masked = _masked(text, struck)
    has_inches = bool(_INCHES.search(_QUOTED.sub(" ", text)))
    layered = [
        Layered(part, layer, is_own)
        for layer, (part, is_own) in enumerate(reversed(list(zip(parts.parts, own, strict=True))))
    ]
    left = MAX_ATOMS
    for one in reversed(layered):  # the newest words first, where there are too many
        lines = one.part.lines
        one.sentences = sentences_of(text, lines, masked, has_inches=has_inches, most=left)
        left -= sum(len(sentence.atoms) for sentence in one.sentences)
        is_passed_on = _is_below(one.sentences) or _points_below(one.sentences)
        one.is_quote_theirs = is_passed_on and _asks(one.part.lines)
        one.sentences = _quoted_first(one.sentences)
    every = [sentence for one in layered for sentence in one.sentences]
    sizes = [size for sentence in every for size in _sizes_in(sentence)]
    assigner = SizeAssigner(Amounts(text, every, in_inches=in_inches))
    newest = "\n".join(line.words for one in layered[-1:] for line in one.part.lines)
    walker = Walker(
        assigner,
        has_sizes=_has_sizes(every),
        is_split=is_split(text),
        leans=bool(_LEANS.search(newest)),
        is_l=_is_l_at_last(every),
        passed=passed_over(text, every),
        wished=wished | asked_for((sentence, mentions_of(sentence)) for sentence in every),
    )
    if subject:
        _read_subject(subject, walker, 0)
    for one in layered:
        _read_part(text, one, masked, walker, has_inches=has_inches)
    scene = walker.subjects.scene
    walker.focus.leftovers.settle(scene.pieces, assigner)
    weigh(scene.pieces, walker.focus.witnesses)
    _read_l_again(scene, layered, walker)
    walker.focus.count_announced()
    scene.sizes = [(size.start, size.end) for size in sizes]
    scene.is_split = walker.focus.is_split and len(walker.focus.parts) > 1
    return scene, every


def _is_l_at_last(sentences: Sequence[Sentence]) -> bool:
    """Return whether a message describes its one slab first, and then says that it is an L."""
    named = [
        (i, one)
        for i, sentence in enumerate(sentences)
        for one in mentions_of(sentence)
        if one.kind == "slab" and not (one.is_old or one.is_denied)
    ]
    turned = [i for i, sentence in enumerate(sentences) if sentence.marks("lshape")]
    if not named or not turned or turned[0] <= named[0][0]:
        return False
    is_several = any(one.is_plural or one.count > 1 for _, one in named)
    is_another = any(sentence.is_item for sentence in sentences)
    uses = {one.name for _, one in named if one.name}
    fresh = sum(one.is_indefinite for _, one in named)
    return not (is_several or is_another) and len(uses) <= 1 and fresh <= 1


def _read_l_again(scene: SaidOrder, layered: Sequence[Layered], walker: Walker) -> None:
    """Read what is said of the legs of the one L again, clause by clause."""
    shapes = [piece for piece in scene.pieces if piece.shape == "l-shape"]
    if len(shapes) != 1 or walker.focus.is_split:
        return
    told = [
        (sentence, (2 * one.layer + int(not sentence.is_quoted), 0))
        for one in layered
        if not one.is_own
        for sentence in one.sentences
    ]
    read_legs_told(shapes[0], told, walker.assigner)


def _quoted_first(sentences: list[Sentence]) -> list[Sentence]:
    """Return what is quoted under all of a message before it: the newer words change the older."""
    quoted = [sentence for sentence in sentences if sentence.is_quoted]
    own = [sentence for sentence in sentences if not sentence.is_quoted]
    return [*quoted, *own] if _is_below(sentences) else sentences


def _is_below(sentences: Sequence[Sentence]) -> bool:
    """Return whether all that is quoted stands under all of a message's own words."""
    quoted = [sentence for sentence in sentences if sentence.is_quoted]
    own = [sentence for sentence in sentences if not sentence.is_quoted]
    return bool(quoted and own) and own[-1].atoms[0].start < quoted[0].atoms[0].start


def _points_below(sentences: Sequence[Sentence]) -> bool:
    """Return whether a message begins with words that pass on what stands quoted: "the below"."""
    first = next((i for i, sentence in enumerate(sentences) if sentence.is_quoted), 0)
    return any(_BELOW & set(sentence.words) for sentence in sentences[:first])


def _asks(lines: Sequence[TextLine]) -> bool:
    """Return whether quoted words ask a workshop for a slab, and are not its own offer."""
    words = "\n".join(line.words for line in lines if line.depth)
    return bool(_WISHES.search(words)) and not _OFFERS.search(words)


def _has_sizes(sentences: Sequence[Sentence]) -> bool:
    """Return whether any size has a word that names it, or stands in a group."""
    named = {"long", "wide", "deep", "thick", "dia"}
    return any(
        measure.of > 1 or measure.role in named
        for sentence in sentences
        for measure in measures_of(sentence)
    )


def _sizes_in(sentence: Sentence) -> Iterator[Size]:
    """Yield a sentence's sizes; a small bare number that stands alone counts or names something."""
    atoms = sentence.atoms
    for i, atom in enumerate(atoms):
        size = atom.size
        if size is None:
            continue
        near = {atom.word for atom in (*atoms[max(0, i - 1) : i], *atoms[i + 1 : i + 2])}
        is_small = size.unit is None and not size.has_fraction and size.amount < _COUNTS
        if not is_small or near & _TIMES:
            yield size


def _masked(text: str, struck: Sequence[TextSpan]) -> list[TextSpan]:
    merged: list[TextSpan] = []
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
        piece.quantity_spans = (NOWHERE,) if piece.quantity_spans else ()
        for claims in piece.claims.values():
            claims[:] = [replace(claim, spans=(NOWHERE,)) for claim in claims]
        for opening in piece.openings:
            opening.spans, opening.rim = [], None
    rooms = walker.subjects.scene.rooms
    rooms[:] = [(name, NOWHERE, piece) for name, _, piece in rooms]


def _read_part(
    text: str, layered: Layered, masked: Sequence[TextSpan], walker: Walker, *, has_inches: bool
) -> None:
    """Read a part's sentences and its tables in the order in which they stand."""
    tables = tables_in(text, layered.part.lines)
    taken = {line.start for table in tables for line in table.lines}
    for table in tables:
        table.sentences = []
    walker.focus.on_opening, walker.subjects.is_full = False, False
    waiting = sorted(tables, key=lambda table: table.lines[0].start)
    quotes = answers.is_answered_between(layered.sentences)
    for sentence in layered.sentences:
        start = sentence.atoms[0].start
        while waiting and waiting[0].lines[0].start <= start:
            read_table(text, waiting.pop(0), masked, walker, layered.layer, has_inches=has_inches)
        if not _is_inside(start, layered.part.lines, taken):
            is_own = layered.is_own and (sentence.is_quoted or not quotes)
            is_own = is_own or _is_own_quote(sentence, layered)
            walker.read(sentence, layered.layer, is_own=is_own)
    for table in waiting:
        read_table(text, table, masked, walker, layered.layer, has_inches=has_inches)


def _is_own_quote(sentence: Sentence, layered: Layered) -> bool:
    """Between the lines of a reply, what is quoted is the workshop's, unless it asks for a slab."""
    return sentence.is_quoted and layered.part.kind == "newest" and not layered.is_quote_theirs


def _is_inside(start: int, lines: Sequence[TextLine], taken: set[int]) -> bool:
    if not taken:
        return False
    line = next((line for line in lines if line.start <= start <= line.end), None)
    return line is not None and line.start in taken
