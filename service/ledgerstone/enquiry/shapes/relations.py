"""What sentences say without numbers: undermount, round, an L, two pieces, no hob."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.places.centres import read_places, span_of
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, openings_at
from ledgerstone.enquiry.scene.opening_sizes import longest_along
from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece, SaidWord
from ledgerstone.enquiry.scene.subjects import ROUND_HOLES, Subjects, has_mark
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.shapes.ovals import OVALS, read_ovals
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import AXES, mark

_SHAPES: Final = frozenset({"shape", "form", "grundform"})
_NO_RIM: Final = frozenset({*ROUND_HOLES, "hole"}) - {"waste"}
_RIMMED: Final = frozenset({"sink", "basin", "hob"})
_LONG: Final = frozenset(["long", "longer", "longest", "lange", "längere"])
_SIDES: Final = frozenset(["side", "way", "edge", "seite", "dimension"])
_ROUND: Final = frozenset(["round", "circular", "rund", "runde", "runder", "runden", "rundes"])
_COMMAS: Final = frozenset({",", ";", ".", ":", "(", ")", "-"})
_AFTER_ROUND: Final = (["round"], ["rund"], ["circular"])
_BEING: Final = frozenset({"it", "is", "'s", "be", "ist", "perfectly"})
_ROUND_WHAT: Final = frozenset({"edge", "edges", "corner", "corners", "the", "it", "off", "over"})
_EACH: Final = frozenset({"each", "je", "jeweils"})
_SAMES: Final = frozenset({"same", "gleich", "ebenso"})
_PERHAPS: Final = frozenset(
    {"if", "then", "maybe", "perhaps", "might", "could", "otherwise", "may", "unless", "fine", "ok"}
    | {"wenn", "falls", "dann", "vielleicht", "eventuell", "notfalls", "sonst", "darf", "dürfen"}
)
_MOST: Final = 24
_PARTS: Final = frozenset({"pcs", "pieces", "parts", "halves", "sections", "teilen", "stücken"})
_SEVERAL: Final = 2  # sizes of pieces that are told apart
_UNCUT: Final = frozenset(
    {("nothing", "to", "cut"), ("nothing", "needs", "cutting"), ("no", "cutting", "needed")}
    | {("doesn't", "need", "cutting"), ("muss", "nichts", "ausgeschnitten")}
)
_GIVEN_UP: Final = frozenset(
    {("decided", "against"), ("thought", "better"), ("ruled", "out"), ("given", "up")}
)
_NOTHING_CUT: Final = frozenset({("nothing", "cut"), ("nothing", "cutting")})
_NONE: Final = frozenset({"no", "none", "nope", "nein", "keine"})
_TIMES: Final = (["x"], ["×"])
_ONLY: Final = frozenset({"only", "just", "nur"})


def read_shape(piece: SaidPiece, mention: Mention, sentence: Sentence) -> None:
    """Take the slab's shape from the words about its name."""
    near = sentence.words[max(0, mention.start - 4) : mention.end + 4]
    before = sentence.words[max(0, mention.start - 3) : mention.end]
    if any(True for _ in mark("lshape").all_in(near)):
        piece.shape = "l-shape"
    elif OVALS & set(before) and not piece.shape:
        piece.shape = "oval"
    elif not piece.shape and (
        any(True for _ in mark("round").all_in(before))
        or sentence.words[mention.end : mention.end + 1] in _AFTER_ROUND
        or _is_round_after(sentence, mention.end + 1)
    ):
        piece.shape = "round"


def read_l(subjects: Subjects, sentence: Sentence) -> None:
    """Take the current piece for an L where a sentence calls it one."""
    words = sentence.words
    is_field = words[0] in _SHAPES and "l" in words[1:3]  # "Shape: L"
    if is_field or has_mark(sentence, "lshape"):
        subjects.current().shape = "l-shape"


def read_round(subjects: Subjects, parsed: ParsedSentence) -> None:
    """Take the current piece for a round one where a sentence says so of it."""
    piece, words = subjects.piece, parsed.sentence.words
    if piece is None or piece.shape:
        return
    if any(claim.rank[0] >= parsed.rank[0] for claim in piece.claims.get("length", [])):
        return
    if any(mention.kind in ("open", "hole") for mention in parsed.found):
        return
    worked = [mention for mention in parsed.found if _is_worked(words, mention)]
    for i, word in enumerate(words):
        if any(_is_one_clause(parsed.sentence, i, one) for one in worked):
            continue
        is_way = words[i - 1 : i] == ["all"] or set(words[i + 1 : i + 2]) & _ROUND_WHAT
        led = words[i - 1 : i] and (words[i - 1] in _BEING or words[i - 1] == "it")
        if word in _ROUND and not is_way and (led or _stands_alone(parsed.sentence, i)):
            piece.shape = "round"


def _stands_alone(sentence: Sentence, i: int) -> bool:
    """Return whether a word is a clause of its own: "table top for the porch, round, 1.1 m"."""
    atoms = sentence.atoms
    ends = i + 1 == len(atoms) or atoms[i + 1].word in _COMMAS
    return i > 0 and atoms[i - 1].word in _COMMAS and ends


def _is_round_after(sentence: Sentence, i: int) -> bool:
    """Return whether a clause of its own after a name says that it is round: "a top, round, …"."""
    return (
        sentence.words[i : i + 1] != []
        and sentence.words[i] in _ROUND
        and _stands_alone(sentence, i)
    )


def _is_one_clause(sentence: Sentence, at: int, mention: Mention) -> bool:
    """Return whether no comma parts a word from a name."""
    first, last = min(at, mention.start), max(at, mention.end)
    return not any(atom.word in _COMMAS for atom in sentence.atoms[first:last])


def _is_worked(words: list[str], mention: Mention) -> bool:
    """Return whether a name is of an edge that is worked; a radius may be the slab's own."""
    return mention.kind == "feature" and "radius" not in words[mention.start : mention.end]


def read_quantity(piece: SaidPiece, mention: Mention, sentence: Sentence) -> None:
    """Take how many of a piece are wanted."""
    if piece.quantity == 1 and not (mention.preposition == "in" and _PERHAPS & set(sentence.words)):
        piece.quantity = min(mention.count, _MOST)
        low = max(0, mention.start - 4)
        piece.quantity_spans = (span_of(sentence, low, mention.end),)


def take_quantity(piece: SaidPiece, measure: Measure, sentence: Sentence) -> None:
    """Take a field's number of pieces, or a group's: "Anzahl: 2", "3 x 650 x 400"."""
    size = measure.size
    before = [atom.word for atom in sentence.atoms[: measure.at]]
    is_field = sentence.starts_line and bool({":", "|"} & set(before))
    is_field = is_field or (sentence.starts_line and measure.at == 1)  # "qty 3  1000 x 800"
    is_field = is_field or [atom.word for atom in sentence.atoms[measure.at + 1 :][:1]] in _TIMES
    is_whole = size.unit is None and size.amount.denominator == 1
    if is_field and is_whole and 1 <= size.amount <= _MOST:
        piece.quantity = int(size.amount)
        piece.quantity_spans = ((size.start, size.end),)


def read(focus: Focus, parsed: ParsedSentence) -> None:
    """Read what a sentence says of places, rims and shapes without a number."""
    _read_rims(focus, parsed.sentence)
    _read_bowls(parsed, focus.subjects.piece)
    if focus.on_opening:
        _read_same_ways(parsed.sentence, focus.subjects.openings)
        _read_turns(parsed.sentence, focus.subjects.openings)
    _read_uncut(focus, parsed)
    read_places(focus, parsed)
    read_ovals(focus, parsed)
    if focus.on_opening:
        _read_rounds(parsed, focus.subjects.openings)
    if not focus.is_split:
        _read_halves(parsed.sentence, focus.subjects.piece)


def _read_uncut(focus: Focus, parsed: ParsedSentence) -> None:
    """Refuse what needs no cut-out: "the sink is a Belfast, so nothing to cut"."""
    words = parsed.sentence.words
    _read_given_up(focus, parsed)
    is_uncut = any(tuple(words[i : i + 3]) in _UNCUT for i in range(len(words)))
    for opening in focus.subjects.openings if is_uncut and focus.held else ():
        opening.is_refused = opening.is_refused or not opening.has_size()


def _read_given_up(focus: Focus, parsed: ParsedSentence) -> None:
    """Refuse what is thought better of, and of an older message all where nothing is to be cut."""
    words, piece = parsed.sentence.words, focus.subjects.piece
    pairs = set(pairwise(words))
    if pairs & _GIVEN_UP and focus.held:
        for opening in focus.held[-1][1]:
            opening.is_refused = opening.is_refused or not opening.has_size()
    is_none = bool(pairs & _NOTHING_CUT) or (
        parsed.sentence.is_item
        and words[0] in _NONE
        and any(one.kind == "hole" and one.is_denied for one in parsed.found)
    )
    for opening in piece.openings if piece is not None and is_none else ():
        is_held = any(opening in openings for _, openings in focus.held)
        opening.is_refused = opening.is_refused or not (opening.has_size() or is_held)


def _read_rims(focus: Focus, sentence: Sentence) -> None:
    words, piece = sentence.words, focus.subjects.piece
    asks = sentence.ends == "?" and {"or", "oder"} & set(words)
    if piece is None or (asks and sentence.marks("shown") and sentence.marks("covered")):
        return
    for tag in ("shown", "covered"):
        for i, count in sentence.marks(tag):
            if i and words[i - 1] and mark("not").at(words, i - 1):
                continue
            for opening in _rimmed(focus, piece, i, i + count):
                opening.rim = opening.rim or SaidWord(tag, (span_of(sentence, i, i + count),))


def _read_bowls(parsed: ParsedSentence, piece: SaidPiece | None) -> None:
    """Refuse the cut-out of a bowl that only needs its waste; how it sits is the waste's."""
    named = {
        mention.name for mention in parsed.found if mention.kind == "open" and not mention.is_denied
    }
    if piece is None or "waste" not in named or not _ONLY & set(parsed.sentence.words):
        return
    for opening in piece.openings:
        if opening.what in named & _RIMMED and not opening.has_size():
            opening.is_refused = True
            for waste in piece.openings:
                waste.rim = waste.rim or (opening.rim if waste.what == "waste" else None)


def _rimmed(focus: Focus, piece: SaidPiece, start: int, end: int) -> list[SaidOpening]:
    """Give what a kind of rim is said of: the basin named right after, or before."""
    named = [openings for at, openings in focus.held if start <= at < end]  # "vessel", the basin
    after = named or [openings for at, openings in focus.held if end <= at <= end + 1]
    current = after[0] if after else openings_at(focus.held, start) or focus.subjects.openings
    whose = [one for one in current if one.what not in _NO_RIM]
    whose = whose or [opening for opening in piece.openings if opening.what in _RIMMED][-1:]
    return whose or (piece.openings if len(piece.openings) == 1 else [])


def _read_same_ways(sentence: Sentence, openings: list[SaidOpening]) -> None:
    """Give a hole its other size where it is the same: "410 wide, and the same front to back"."""
    words = sentence.words
    for i, word in enumerate(words):
        if word not in _SAMES or i + 1 >= len(words):
            continue
        axis = AXES.at(words, i + 1) if words[i + 1] else None
        known, other = ("length", "width") if axis and axis[0] == "y" else ("width", "length")
        for opening in openings if axis is not None else ():
            if opening.claims.get(known) and not opening.claims.get(other):
                opening.claims[other] = list(opening.claims[known])


def _read_turns(sentence: Sentence, openings: list[SaidOpening]) -> None:
    """Lay a hole as said: "with the long side along the worktop"."""
    words = sentence.words
    for i, word in enumerate(words):
        if word not in _LONG or not _SIDES & set(words[i + 1 : i + 3]):
            continue
        for j in range(i + 1, min(i + 7, len(words))):
            axis = AXES.at(words, j) if words[j] else None
            if axis is not None and words[j] not in ("wide", "long", "deep"):
                for opening in openings:
                    longest_along(opening, axis[0])
                break


def _read_rounds(parsed: ParsedSentence, openings: list[SaidOpening]) -> None:
    words = parsed.sentence.words
    is_round = any(
        word in _ROUND and words[i + 1 : i + 2] != ["ends"] and _is_of_hole(parsed, i)
        for i, word in enumerate(words)
    )
    for opening in openings:
        across = opening.claims.get("width")
        known = opening.claims.get("length")
        is_one = not known or not across or known[-1].agrees(across[-1])
        if is_round and not opening.kind and is_one:
            opening.kind = "circle"


def _is_of_hole(parsed: ParsedSentence, at: int) -> bool:
    """Whether "round" is said of a hole and not of the slab: of what follows it, else before it."""
    after = [mention for mention in parsed.found if at < mention.end and mention.start <= at + 2]
    before = [mention for mention in parsed.found if mention.end <= at]
    whose = after[:1] or before[-1:]
    return not whose or whose[0].kind != "slab"


def _is_two(sentence: Sentence, i: int) -> bool:
    size = sentence.atoms[i].size
    return size is not None and size.unit is None and size.amount == _SEVERAL


def _read_halves(sentence: Sentence, piece: SaidPiece | None) -> None:
    words = sentence.words
    split = [
        (i, 2)
        for i, word in enumerate(words[:-2])
        if word in ("in", "into") and _is_two(sentence, i + 1) and words[i + 2] in _PARTS
    ]
    told = [atom for atom in sentence.atoms if atom.kind == "size"]
    marks = sentence.marks("pieces") if len(told) < _SEVERAL else []
    for i, count in (*marks, *split):
        if piece is not None and not _EACH & set(words) and not _PERHAPS & set(words):
            piece.halves = (span_of(sentence, i, i + count + 2),)
    if piece is not None and piece.halves and _EACH & set(words) and piece.has_size():
        piece.quantity, piece.quantity_spans, piece.halves = 2, piece.halves, ()
