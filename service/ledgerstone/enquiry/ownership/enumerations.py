"""Several things told one by one, or all at once: "one 1200 x 250, the other 900 x 250"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.scene.said import SaidPiece
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Atom, Sentence
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.lexicon import NUMBERS, ROLES
from ledgerstone.enquiry.words.word_sets import word_set

_ONES: Final = word_set(
    "one another other first second third eine einer eines andere anderes zweite erste dritte"
)
_WHICH: Final = word_set(
    "left right old new existing tiled this that last front back linke rechte alte neue"
)
_BETWEEN: Final = word_set(
    "is at of be them these for a the needs measures , : ( ist mit für same but identical like"
    " it aber gleich which that measuring exactly just size only slightly"
)
_SAME: Final = {
    "depth": "width",
    "width": "width",
    "wide": "width",
    "deep": "width",
    "thickness": "thickness",
    "thick": "thickness",
    "length": "length",
    "tiefe": "width",
    "dicke": "thickness",
}
_EACH_AT: Final = word_set("at @ of no off nr stück pcs pieces mit zu à je measuring")
_MAX_OF_ONE: Final = 24
FURTHER: Final = word_set("another second third zweite dritte")
_ALL: Final = word_set(
    "both all each beide alle alles jeweils everything lot sämtliche throughout durchgehend überall"
)
_OFF: Final = frozenset({"off", "pcs", "no", "stück", "stk"})
_PIECES: Final = frozenset({"stück"})
_SECTIONS: Final = frozenset({"sections", "lengths", "pieces"})
_MOST: Final = 24
_PAIR: Final = 2
_NAME: Final = 3  # words of a name before its sizes
_THEM: Final = frozenset(["them", "these", "those", "davon"])
_SUMMING_UP: Final = word_set(
    "summary summarise summarize summarising summing recap sum conclusion zusammenfassung"
    " zusammengefasst again"
)
_LISTS_AGAIN: Final = word_set("list checklist overview liste übersicht kurzfassung")
_BRIEFLY: Final = frozenset({("in", "brief"), ("in", "short"), ("kurz", "gesagt")})
_SO_IT_IS: Final = frozenset(
    {("so", word) for word in ("that", "that's", "it's", "it", "one", "just", "we're", "i'm")}
    | {("also", word) for word in ("ein", "eine", "einen", "insgesamt", "noch")}
)


def ones_of(sentence: Sentence, sizes: list[Measure]) -> list[Mention]:
    """Return "one", "the other" where a size or what it is for follows."""
    found = []
    for i, word in enumerate(sentence.words):
        if word not in _ONES or (i and sentence.words[i - 1] in _WHICH):
            continue
        j = i + 1
        while j < len(sentence.atoms) and j <= i + 5 and sentence.atoms[j].word in _BETWEEN:
            j += 1
        leads = (
            any(size.at == j and size.counted is None for size in sizes)
            or "for" in sentence.words[i + 1 : i + 2]
        )
        if leads and sentence.words[j : j + 1] != ["one"]:
            found.append(Mention(i, i + 1, "one", word))
    return found


def _counted_ones(sentence: Sentence, sizes: list[Measure]) -> list[Mention]:
    """Return "two square ones" where two sizes follow, or a diameter."""
    words = sentence.words
    found = []
    for i, word in enumerate(words):
        if word != "ones":
            continue
        counts = [_count_at(atom) for atom in sentence.atoms[max(0, i - 3) : i]]
        near = [size for size in sizes if i < size.at <= i + 2]
        led = any(size.of > 1 or size.role in ("dia", "across") for size in near)
        if led and max(counts, default=0) > 1:
            for size in near:
                size.role = "dia" if size.role == "across" else size.role
            found.append(Mention(i, i + 1, "count", str(max(counts)), count=max(counts)))
    return found


def counted(sentence: Sentence, sizes: list[Measure]) -> list[tuple[Mention, Measure | None]]:
    """Return each "4 at" or "two of" that two sizes follow, with the size that it was taken for."""
    found: list[tuple[Mention, Measure | None]] = [
        (one, None) for one in _counted_ones(sentence, sizes)
    ]
    for group in sizes:
        is_round = group.of == 1 and group.role == "dia" and not group.side
        if not (group.of > 1 and group.place == 1) and not is_round:
            continue
        if group.at < 2:
            continue
        joiner_at = group.at - 1
        if sentence.atoms[joiner_at].word not in _EACH_AT:
            continue
        number = sentence.atoms[joiner_at - 1]
        count = int(NUMBERS.get(number.word, 0)) if number.kind == "word" else 0
        taken = next((size for size in sizes if size.at == joiner_at - 1), None)
        if taken is not None and taken.size.unit is None and taken.size.amount.denominator == 1:
            count = int(taken.size.amount)
        if 1 <= count <= _MAX_OF_ONE:
            found.append(
                (Mention(joiner_at - 1, joiner_at + 1, "count", str(count), count=count), taken)
            )
    return found


def listed(sentence: Sentence, found: Sequence[Mention], sizes: Sequence[Measure]) -> list[Mention]:
    """Return each room or name that leads to two sizes, in a list of slabs named once before.

    "Window boards please: kitchen 1020 x 300, parlour 1460 x 280"
    """
    named = [one for one in found if one.kind == "slab" and one.is_plural and not one.is_old]
    if not named or any(one.kind in ("open", "hole") for one in found):
        return []
    after = [size for size in sizes if size.place == 1 and size.at > named[0].end]
    led = [size for size in after if _is_led_by_name(sentence, size.at)]
    lone = [one for one in sizes if one.of == 1 and one.role in ("", "long") and not one.side]
    lone = [one for one in lone if _is_led_by_name(sentence, one.at) and one.at > named[0].end]
    if not after and len(named) == 1 and len(lone) == named[0].count > 1:
        for size in lone:
            size.role = "long"  # "2 window cills: kitchen 1.18 m, landing 0.74 m"
        led = after = lone
    if len(led) < _PAIR or len(led) < len(after) or len(named) > 1:
        return []
    return [Mention(size.at - 1, size.at, "count", "1", count=1) for size in led]


def _is_led_by_name(sentence: Sentence, at: int) -> bool:
    """Return whether a name right before a size begins its clause: ", hall 900 x 200"."""
    words = sentence.words
    starts = [i for i in range(at - 1, max(-1, at - _NAME - 1), -1) if not words[i]]
    start = starts[0] + 1 if starts else at
    is_name = 0 < at - start <= _NAME and all(word.isalpha() for word in words[start:at])
    return is_name and ROLES.at(words, at - 1) is None and words[at - 1] not in _EACH_AT


def is_group_next(mention: Mention, sizes: list[Measure]) -> bool:
    """Return whether two sizes in a group follow, as a slab has them."""
    return any(size.of > 1 and mention.end <= size.at <= mention.end + 3 for size in sizes)


def is_of_all(sentence: Sentence) -> bool:
    """Return whether a sentence speaks of all pieces at once."""
    return bool(_ALL & set(sentence.words))


def how_many(sentence: Sentence) -> tuple[int, TextSpan] | None:
    """Return the number in "two of them", or "zwei Stück"."""
    words, atoms = sentence.words, sentence.atoms
    pieces = [word for word in words if word in _PIECES]
    for i in range(1, len(atoms)):
        count = _count_at(atoms[i - 1])
        is_named = words[i] in _PIECES and len(pieces) == 1  # else each number is of its own length
        is_named = is_named or (words[i] in _SECTIONS and "each" in words[i:])
        if is_named and 1 < count <= _MOST:
            return count, (atoms[i - 1].start, atoms[i].end)
    for i in range(1, len(atoms) - 1):
        if words[i] != "of" or words[i + 1] not in _THEM:
            continue
        before = atoms[i - 1]
        count = _count_at(before)
        if 1 < count <= _MOST:
            return count, (before.start, atoms[i + 1].end)
    return None


def _count_at(atom: Atom) -> int:
    """Return the number of pieces that an atom is, 0 if it is none."""
    size = atom.size
    if size is not None and size.unit is None and size.amount.denominator == 1:
        return int(size.amount)
    return int(NUMBERS.get(atom.word, 0))


def count_pieces(piece: SaidPiece | None, sentence: Sentence, sizes: Sequence[Measure]) -> None:
    """Take how many of the current slab are wanted: "two of them", "x3" at a sentence's end."""
    if any(size.counted is not None for size in sizes):
        return  # each number is of its own length
    count = how_many(sentence) or _off_at_the_end(sentence) or _times_at_the_end(sentence)
    if count is not None and piece is not None and piece.quantity == 1:
        piece.quantity, piece.quantity_spans = count[0], (count[1],)


def _off_at_the_end(sentence: Sentence) -> tuple[int, TextSpan] | None:
    """Return the number in "shelf 1200 x 250 x 40 (3 off)", or "…, 3 off"."""
    atoms = sentence.atoms
    end = len(atoms)
    while end and atoms[end - 1].kind == "mark":
        end -= 1
    if end < _PAIR + 1 or atoms[end - 1].word not in _OFF:
        return None
    count = _count_at(atoms[end - 2])
    is_apart = atoms[end - 3].word in ("(", ",", ";", "-", "–", "—")
    if not is_apart or not 1 < count <= _MOST:
        return None
    return count, (atoms[end - 2].start, atoms[end - 1].end)


def _times_at_the_end(sentence: Sentence) -> tuple[int, TextSpan] | None:
    """Return the number in "window board 1480 x 260 x 25 off white x3"."""
    atoms = sentence.atoms
    end = len(atoms) - 1 if atoms[-1].kind == "mark" else len(atoms)
    if end < _PAIR + 1 or atoms[end - 2].word not in ("x", "×") or atoms[end - 3].kind != "word":
        return None
    if ROLES.at(sentence.words, end - 3) is not None:
        return None  # "700 high x 20"
    size = atoms[end - 1].size
    is_count = size is not None and size.unit is None and size.amount.denominator == 1
    if size is None or not is_count or not 1 < size.amount <= _MOST:
        return None
    return int(size.amount), (atoms[end - 2].start, atoms[end - 1].end)


def _is_list_for(sentence: Sentence) -> bool:
    """Return whether a line announces what was said as a list: "List for the workshop:"."""
    words = sentence.words
    is_line = sentence.starts_paragraph and sentence.atoms[-1].word == ":"
    is_brief = any(pair in _BRIEFLY for pair in pairwise(words))
    return is_line and (is_brief or bool(_LISTS_AGAIN & set(words[:2])))


def is_summing_up(sentence: Sentence) -> bool:
    """Return whether a sentence says again what was said before."""
    words = sentence.words
    if _SUMMING_UP & set(words) or words[:2] == ["in", "short"] or _is_list_for(sentence):
        return True
    has_pair = any(atom.word in ("x", "×", "by", "mal") for atom in sentence.atoms)
    is_one = words[:2] == ["that", "'s"] and words[2:3] in (["one"], ["a"], ["an"])
    return has_pair and (is_one or tuple(words[:2]) in _SO_IT_IS)


def take_over(piece: SaidPiece, before: SaidPiece, words: Sequence[str]) -> None:
    """Note which sizes a piece has in common with the one before: "same depth"."""
    said = {key for word, key in _SAME.items() if word in words}
    piece.like, piece.like_in = before, frozenset(said or set(_SAME.values()) - {"length"})
