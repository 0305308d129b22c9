"""Which slab a sentence calls by its row, its item or its side: "in pos. 1", "Worktop B"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.focus import ParsedSentence
from ledgerstone.enquiry.scene.identity import CANON
from ledgerstone.enquiry.scene.said import SaidPiece
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Atom, Sentence
from ledgerstone.enquiry.words.lexicon import NOUNS, NUMBERS
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.order import UPRIGHT_USES

_LABEL_WORDS: Final = re.compile(r"[^\W_]+")
_HAS: Final = word_set("has have needs gets is takes carries with")
_EARLY: Final = 4
_LABEL: Final = 2
_COUNTED: Final = 3  # atoms: "and two round"
_ONES: Final = word_set("one piece top worktop slab run zeile platte")
_INSIDE: Final = word_set("in on into im auf")
_ARTICLES: Final = frozenset({"a", "i", "s", "t", "l", "d", "w"})
_GOES_ON: Final = word_set("there there's is goes we i comes please kommt ist")  # "in A there's a"
_ROW_NAMES: Final = word_set(
    "pos position item piece no number worktop top slab nr teil platte part row line counter shelf"
    " section abschnitt run bench stück bauteil stein element"
)
_RUNS: Final = word_set("run top worktop piece slab section zeile platte side wall")
_LONGEST: Final = 6  # atoms of a label and its colon
_SIZES: Final = word_set("size sizes length width depth thickness dimensions the of and maße länge")
_AFTER_LABEL: Final = frozenset({":", "(", "-", "–", "—", ",", "."})


def row_label(sentence: Sentence) -> str:
    """Return the letter or the number with which a sentence calls a slab first: "Section A: "."""
    atoms = sentence.atoms
    is_row = len(atoms) > _LABEL and atoms[0].word in _ROW_NAMES and atoms[_LABEL].word == ":"
    return _as_label(atoms[1]) if is_row else ""


def heading_label(sentence: Sentence) -> str:
    """Return the letter or number of a slab that a line only names: "Run B (by the window)"."""
    atoms = sentence.atoms
    if len(atoms) < _LABEL or atoms[0].word not in _ROW_NAMES or sentence.is_quoted:
        return ""
    is_alone = len(atoms) == _LABEL or atoms[_LABEL].word in _AFTER_LABEL
    is_sized = any(atom.kind == "size" for atom in atoms[_LABEL:])
    begins = sentence.starts_line or sentence.starts_paragraph or sentence.is_item
    return _as_label(atoms[1]) if is_alone and begins and not is_sized else ""


def name_by_label(parsed: ParsedSentence, piece: SaidPiece | None) -> None:
    """Note the words before a colon by which a slab is called: "Perimeter run: 116 long"."""
    atoms, words = parsed.sentence.atoms, parsed.sentence.words
    colon = next((i for i, atom in enumerate(atoms[:_LONGEST]) if atom.word == ":"), 0)
    is_sized = any(size.at == colon + 1 and not size.side for size in parsed.sizes)
    holes = any(one.kind in ("open", "hole") and one.start < colon for one in parsed.found)
    if piece is None or not colon or not is_sized or holes:
        return
    span = (atoms[0].start, atoms[-1].end)
    claims = [claim for listed in piece.claims.values() for claim in listed]
    if any(span[0] <= low < span[1] for claim in claims for low, _ in claim.spans):
        piece.names |= {word for word in words[:colon] if word} - _SIZES


def named_in(pieces: Sequence[SaidPiece], sentence: Sentence) -> SaidPiece | None:
    """Return the piece that a sentence calls by its row or item: "in pos. 1", "Worktop B"."""
    if len(pieces) < 2:
        return None
    words = sentence.words
    item = _LABEL_WORDS.findall(sentence.item.lower())
    for piece in pieces:
        if len(item) > 1 and item[-1:] == _LABEL_WORDS.findall(piece.label.lower())[-1:]:
            return piece  # "Item a) to have a sink"
        label = [word.lower() for word in _LABEL_WORDS.findall(piece.label)]
        if not label:
            continue
        first_words = [word for word in words[:_EARLY] if word][:2]  # "(a) has …"
        if first_words[:1] == label[-1:] and first_words[1:] and first_words[1] in _HAS:
            return piece
        for i, atom in enumerate(sentence.atoms):
            if atom.word in _ROW_NAMES:
                following = [atom for atom in sentence.atoms[i + 1 : i + 3] if atom.word != "."]
                said = following[:1] and _as_label(following[0])
                if said and said == label[-1]:
                    return piece
    named = _by_letter(pieces, sentence) or _by_number(pieces, sentence)
    return named or _by_side(pieces, sentence) or _by_heading(pieces, sentence)


def _by_heading(pieces: Sequence[SaidPiece], sentence: Sentence) -> SaidPiece | None:
    """Return the one slab that a line names before its colon: "Basin tops: a hole in each"."""
    label = [atom.word for atom in sentence.atoms[:_LONGEST]]
    colon = label.index(":") if ":" in label else 0
    is_slab = any(tag.startswith("slab:") for _, _, tag in NOUNS.all_in(sentence.words[:colon]))
    if not (sentence.starts_line and is_slab and all(sentence.words[:colon])):
        return None
    named = _so_named([one for one in pieces if one.has_size()], sentence.words[:colon])
    return named[0] if len(named) == 1 else None


def turn_at_heading(parsed: ParsedSentence, piece: SaidPiece) -> None:
    """Take a slab's name right before a colon for the slab that the line goes on about."""
    for mention in parsed.found[:1]:
        led = [atom.word for atom in parsed.sentence.atoms[mention.end : mention.end + 1]]
        if mention.kind == "slab" and mention.start <= 1 and led == [":"]:
            mention.kind, parsed.turns[mention.start] = "turn", piece


def alike_named(
    pieces: Sequence[SaidPiece], mention: Mention, sentence: Sentence
) -> list[SaidPiece]:
    """Return the slabs that a plural means by their items' words: "the alcove shelves"."""
    words = sentence.words
    is_all = mention.is_plural and mention.determiner in ("the", "die") and not mention.preposition
    led = words[max(0, mention.start - 1) : mention.end]
    led = led if mention.end - mention.start > 1 or led[:1] not in (["the"], ["die"]) else led[1:]
    named = _so_named(pieces, [word for word in led if word not in ("the", "die")])
    return named if is_all and len(named) > 1 and named != list(pieces) else []


def _so_named(pieces: Sequence[SaidPiece], words: Sequence[str]) -> list[SaidPiece]:
    """Return the slabs whose rows or items have all of some words, a plural for a singular."""
    return [
        piece
        for piece in pieces
        if piece.names and all(any(_is_one(word, own) for own in piece.names) for word in words)
    ]


def _is_one(word: str, own: str) -> bool:
    """Return whether two words are one, or its singular and its plural: "tops", "Platten"."""
    return word == own or (word in (own + "s", own + "n") and len(own) > _LABEL)


def _by_letter(pieces: Sequence[SaidPiece], sentence: Sentence) -> SaidPiece | None:
    """Give the slab of "sink in A:", of which an item's own words have that letter."""
    atoms = sentence.atoms
    for i in range(1, len(atoms) - 1):
        letter = atoms[i].word if atoms[i].kind == "word" and len(atoms[i].word) == 1 else ""
        if letter and atoms[i - 1].word == "(" and atoms[i + 1].word == ")" and i > 1:
            led, is_apart = atoms[i - 2], True  # "in (a) a sink"
        else:
            led, is_apart = atoms[i - 1], False
        is_apart = is_apart or atoms[i + 1].word in (":", ",", "-") or atoms[i + 1].word in _GOES_ON
        if letter and led.word in _INSIDE and (is_apart or letter not in _ARTICLES):
            labels = {id(one): _LABEL_WORDS.findall(one.label.lower()) for one in pieces}
            named = [
                piece
                for piece in pieces
                if piece.has_size() and letter in {*piece.names, *labels[id(piece)][-1:]}
            ]
            if len(named) == 1:
                return named[0]
    return None


def _by_number(pieces: Sequence[SaidPiece], sentence: Sentence) -> SaidPiece | None:
    """Return the slab of "hob in worktop 2", the second of those that have its name."""
    words, atoms = sentence.words, sentence.atoms
    for i in range(1, len(atoms) - 1):
        size = atoms[i + 1].size
        if words[i - 1] not in _INSIDE or size is None or not words[i]:
            continue
        noun = NOUNS.at(words, i)
        use = (
            noun[0].partition(":")[2] if noun is not None and noun[0].startswith("slab:") else None
        )
        use = "" if words[i] in _ROW_NAMES else use
        alike = [piece for piece in pieces if piece.has_size() and use in ("", piece.use)]
        is_number = size.unit is None and size.amount.denominator == 1
        if use is not None and is_number and 1 <= size.amount <= len(alike):
            return alike[int(size.amount) - 1]
    return None


def _by_side(pieces: Sequence[SaidPiece], sentence: Sentence) -> SaidPiece | None:
    """Give the piece that is the left or the right one: "in the right hand one", "sink right:"."""
    words = [CANON.get(word, word) for word in sentence.words]
    for side in ("left", "right"):
        if side not in words[:6]:
            continue
        at = words.index(side)
        is_one = bool(_ONES & set(words[at + 1 : at + 3]))
        is_label = at <= _LABEL and [atom.word for atom in sentence.atoms[at + 1 : at + 2]] == [":"]
        is_label = is_label and not any(atom.kind == "size" for atom in sentence.atoms[:at])
        if not (is_one or is_label):
            continue
        named = [piece for piece in pieces if side in piece.names | piece.called]
        if len(named) == 1:
            return named[0]
    return None


def _as_label(atom: Atom) -> str:
    if atom.size is not None and atom.size.unit is None:
        return str(atom.size.amount)
    word = atom.word.strip()  # a masked number may begin with its blank
    return word if len(word) == 1 else ""


def is_other_run(parsed: ParsedSentence, known: set[str]) -> bool:
    """Whether a label names another run, and its length follows: "Window run: 1030 long"."""
    atoms, words = parsed.sentence.atoms, parsed.sentence.words
    colon = next((i for i, atom in enumerate(atoms[:_EARLY]) if atom.word == ":"), 0)
    first = next((size for size in parsed.sizes if size.at == colon + 1), None)
    is_long = first is not None and (first.role in ("long", "wide") or first.of > 1)
    is_run = colon > 1 and words[colon - 1] in _RUNS and "" not in words[:colon]
    return is_run and is_long and bool(set(words[:colon]) - known - _RUNS)


def inline_label(sentence: Sentence, mention: Mention, label: str) -> str:
    """Return a slab's label, or the letter in brackets before its name: "(a) countertop"."""
    led = sentence.atoms[max(0, mention.start - 2) : mention.start]
    is_marked = len(led) == _LABEL and led[1].word == ")"
    is_free = is_marked and label in ("", "named")
    return (_as_label(led[0]) or label) if is_free else label


def is_upright_item(piece: SaidPiece | None, parsed: ParsedSentence) -> bool:
    """Whether an item begins with an upstand or the like: "c) upstand, same length, 100 high"."""
    first = next(iter(parsed.found), None)
    if first is None or piece is None or not parsed.sentence.is_item or parsed.sentence.is_quoted:
        return False
    is_upright = first.kind == "slab" and first.start <= 1 and first.name in UPRIGHT_USES
    is_new = is_upright and piece.use != first.name and not first.is_denied
    return is_new and any(
        one.role in ("high", "long", "deep", "thick", "wide") for one in parsed.sizes
    )


def is_led_by_mark(parsed: ParsedSentence) -> bool:
    """Whether a line is a name of few words, a dash and sizes by name: "BAR SIDE - 70 long, …"."""
    sentence, sizes = parsed.sentence, parsed.sizes
    first = sizes[0].at if sizes else 0
    is_line = sentence.starts_line and not sentence.is_quoted and 1 < first <= _EARLY
    is_line = is_line and sentence.atoms[first - 1].word in ("-", "–", "—", ":")
    roles = {one.role for one in sizes}
    is_other = any(one.kind in ("open", "hole", "thing", "feature") for one in parsed.found)
    return is_line and {"long", "deep"} <= roles and (not is_other or "thick" in roles)


def is_label_of_sizes(sentence: Sentence, sizes: Sequence[Measure]) -> bool:
    """Whether a sentence is a name, a colon and a group of sizes: "Bedroom 1: 1350 x 260"."""
    grouped = [size.at for size in sizes if size.of > 1][:1]
    return bool(grouped) and grouped[0] <= 6 and sentence.atoms[grouped[0] - 1].word == ":"


def begins_round(parsed: ParsedSentence) -> bool:
    """Whether an item counts what is round, and tells how wide it is: "* one round, 1080 across".

    What it counts is no hole: it names none before that.
    """
    sentence = parsed.sentence
    across = next((size.at for size in parsed.sizes if size.role in ("dia", "across")), 0)
    ahead = sentence.words[:across]
    is_counted = any(word in NUMBERS for word in ahead[:_COUNTED])
    is_round = any(i < across for i, _ in sentence.marks("round"))
    others = any(
        one.kind in ("open", "hole", "leg") or (one.kind == "thing" and one.start < across)
        for one in parsed.found
    )
    is_item = sentence.is_item and not sentence.is_quoted
    return is_item and is_counted and is_round and not others
