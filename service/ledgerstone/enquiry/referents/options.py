"""Sizes that a message offers for choice, and the one that it then picks: "B please"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from math import prod
from typing import Final

from ledgerstone.enquiry.referents.labelled import label_of
from ledgerstone.enquiry.sentence.measures import Measure, measures_of
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.quantities import MM_PER

_OR: Final = frozenset({"or", "oder"})
_AND: Final = frozenset({"and", "und", "or", "oder"})
_JOINS: Final = word_set("or oder , maybe perhaps possibly else alternatively vielleicht / ( )")
_OPTION: Final = word_set("option options size number no nr version variant choice variante #")
_LETTERS: Final = frozenset("abcdefgh")
_LEADS: Final = word_set(": is = - – — ) . measures ist are at")
_CHOOSES: Final = word_set(
    "take took taking have having go going gone like prefer preferred choose chose choosing chosen"
    " want pick picked picking order decided settle settled price quote need do reflection say"
    " nehmen nehme nimm möchten möchte hätten lieber gern gerne bevorzugen entschieden wählen"
)
_AGREES: Final = word_set("please bitte then best it thanks wins")
_ONES: Final = word_set(
    "one option size version variant of top slab worktop table thickness variante platte größe"
)
_GOES_ON: Final = word_set("has have needs gets is are goes will with hat bekommt braucht for")
_DENIES: Final = word_set("not than nicht kein no isn't don't instead")
_ASKS: Final = word_set(
    "would should is which what could do or can how are soll sollen welche welches was wäre"
)
_PRICES: Final = frozenset({"price", "quote"})
_THE: Final = word_set("the die der das den")
_ORDER: Final = {
    **dict.fromkeys(("first", "former", "erste", "ersten", "erstere"), 0),
    **dict.fromkeys(("second", "zweite", "zweiten"), 1),
    **dict.fromkeys(("third", "dritte", "dritten"), 2),
    **dict.fromkeys(("last", "latter", "letzte", "letzten", "letztere"), -1),
}
_MIDDLE: Final = word_set("middle mittlere mittleren")
_MORE: Final = word_set(
    "bigger biggest larger largest longer longest wider widest größere größeren größte längere"
    " längeren große"
)
_LESS: Final = word_set(
    "smaller smallest shorter shortest narrower narrowest kleinere kleineren kleinste kürzere"
    " kürzeren kleine"
)
_THICKER: Final = word_set("thicker thickest chunkier dickere dickeren stärkere")
_THINNER: Final = word_set("thinner thinnest slimmer dünnere dünneren")
_BEFORE: Final = 5  # atoms between what chooses and what is chosen
_APART: Final = 5  # atoms between two sizes of which one is to be chosen
_NEAR: Final = 4  # atoms between two sizes of one thing
_SHORT: Final = 6
_PAIR: Final = 2
_TRIPLE: Final = 3


@dataclass(slots=True)
class _Option:
    """One of several: how it is called, and its sizes."""

    label: str
    sizes: list[Measure] = field(default_factory=list)

    def amounts(self) -> list[float]:
        """Return its sizes in millimetres; bare ones as they are written."""
        return [float(one.size.amount * MM_PER[one.size.unit or "mm"]) for one in self.sizes]


def passed_over(text: str, sentences: Sequence[Sentence]) -> frozenset[TextSpan]:
    """Return where the sizes stand that were offered for choice, and are not those picked."""
    gone: set[TextSpan] = set()
    offered: list[_Option] = []
    early: list[Sentence] = []
    for sentence in sentences:
        found = [*_labelled(text, sentence)]
        if found:
            begins = offered and offered[-1].label and found[0].label not in _labels(offered)
            offered = [*offered, *found] if begins else found
            gone |= _left(early, offered)
        either = [] if len(found) > 1 else _either(sentence)
        offered = either or offered
        if len(offered) > 1:
            gone |= _left([sentence], offered)
        if not offered:
            early = [*early[-2:], sentence]
    return frozenset(gone)


def _left(sentences: Sequence[Sentence], offered: list[_Option]) -> set[TextSpan]:
    """Return the sizes of what is offered but not picked by any of these sentences."""
    if len(offered) < _PAIR:
        return set()
    picked = [one for sentence in sentences for one in _picked(sentence, offered)]
    left = [one for one in offered if not any(one is two for two in picked)]
    if not picked or not left:
        return set()
    return {(size.size.start, size.size.end) for one in left for size in one.sizes}


def _labels(offered: Sequence[_Option]) -> set[str]:
    return {one.label for one in offered}


def _labelled(text: str, sentence: Sentence) -> Iterator[_Option]:
    """Yield what a sentence calls by a letter or a number, each with the sizes that follow."""
    starts = [
        (i, label) for i in range(len(sentence.atoms)) if (label := _label(text, sentence, i))
    ]
    item = label_of(sentence) if sentence.item else ""
    starts = [(-1, item), *starts] if item else starts
    if not starts:
        return
    sizes = measures_of(sentence)
    for (start, label), until in zip(
        starts, [*(start for start, _ in starts[1:]), len(sentence.atoms)], strict=True
    ):
        own = [
            size for size in sizes if start + 1 < size.at < until or start < 0 <= size.at < until
        ]
        own = _together([size for size in own if not size.side])
        if any(size.of >= _PAIR or size.role == "long" for size in own):
            yield _Option(label, own)


def _together(sizes: Sequence[Measure]) -> list[Measure]:
    """Return the sizes up to the first that stands apart from those before it."""
    ends = (i for i in range(1, len(sizes)) if sizes[i].at - sizes[i - 1].at > _NEAR)
    return list(sizes[: next(ends, len(sizes))])


def _label(text: str, sentence: Sentence, i: int) -> str:
    """Return the letter or the number by which what follows an atom is called."""
    atoms, atom = sentence.atoms, sentence.atoms[i]
    after = atoms[i + 1] if i + 1 < len(atoms) else None
    if after is None or not (after.kind == "size" or after.word in _LEADS):
        return ""
    written = text[atom.start : atom.end].strip()
    is_led = bool(i) and atoms[i - 1].word in _OPTION
    is_led = is_led or (after.word == ")" and len(written) == 1 and atoms[i - 1].word != "(")
    if is_led and (written.isdigit() or written.lower() in _LETTERS) and after.kind != "size":
        return written.lower()
    is_letter = atom.kind == "word" and atom.word in _LETTERS and written.isupper()
    return atom.word if is_letter else ""


def _either(sentence: Sentence) -> list[_Option]:
    """Return the sizes of a sentence between which "or" stands, each an option."""
    words = [atom.word for atom in sentence.atoms]
    if not _OR & set(words):
        return []
    sizes = measures_of(sentence)
    heads = [one for one in sizes if one.of == 1 or one.place == 1]
    row: list[Measure] = []
    for one in heads:
        last = row[-1].members[-1].at if row and row[-1].members else row[-1].at if row else -1
        between = words[last + 1 : one.at]
        is_alike = bool(row) and one.of == row[-1].of and one.role in ("", row[-1].role or one.role)
        joins = bool(row) and len(between) <= _APART and bool(set(between) & _JOINS)
        if is_alike and joins and not one.side:
            row.append(one)
        elif _has_or(words, row):
            break
        else:
            row = [one]
    if len(row) < _PAIR or not _has_or(words, row):
        return []
    return [_Option("", list(one.members) or [one]) for one in row]


def _has_or(words: Sequence[str], row: Sequence[Measure]) -> bool:
    """Return whether "or" stands before the last of a row."""
    return len(row) > 1 and bool(_OR & set(words[row[-2].at : row[-1].at]))


def _picked(sentence: Sentence, offered: list[_Option]) -> Iterator[_Option]:
    """Yield what a sentence picks: by its label, its place in the row, or its size."""
    words = sentence.words
    if sentence.ends == "?" and words[0] in _ASKS and not _PRICES & set(words):
        return
    start, end = sentence.atoms[0].start, sentence.atoms[-1].end
    here = (one for option in offered for one in option.sizes if start <= one.size.start < end)
    for i in range(max((one.at + 1 for one in here), default=0), len(sentence.atoms)):
        if _DENIES & set(words[max(0, i - 4) : i]):
            continue
        one = _by_label(sentence, i, offered) or _by_word(sentence, i, offered)
        if one is not None:
            yield one


def _by_label(sentence: Sentence, i: int, offered: list[_Option]) -> _Option | None:
    atoms = sentence.atoms
    size = atoms[i].size
    written = atoms[i].word.strip() or (str(size.amount) if size is not None else "")
    one = next((one for one in offered if one.label and one.label == written), None)
    if one is None:
        return None
    after = atoms[i + 1].word if i + 1 < len(atoms) else "."
    is_led = bool(i) and atoms[i - 1].word in _OPTION
    is_end = i + 1 == len(atoms) or (atoms[i + 1].kind == "mark" and after not in ":=")
    if (written.isdigit() and not is_led) or not (
        is_end or after in _AGREES | _OR | {"and", "und"}
    ):
        return None
    chooses = bool(_CHOOSES & set(sentence.words[max(0, i - _BEFORE) : i]))
    is_said = chooses or after in _AGREES or (is_end and len(atoms) <= _SHORT)
    return one if is_said else None


def _by_word(sentence: Sentence, i: int, offered: list[_Option]) -> _Option | None:
    words, atoms = sentence.words, sentence.atoms
    word, after = words[i], words[i + 1 : i + 4]
    if not (i and words[i - 1] in _THE) or (_GOES_ON & set(after[:2])):
        return None
    is_end = i + 1 == len(atoms) or atoms[i + 1].kind == "mark" or bool(_ONES & set(after[:1]))
    chooses = bool(_CHOOSES & set(words[max(0, i - _BEFORE) : i])) or bool(_AGREES & set(after))
    is_alone = i <= _PAIR and len(atoms) <= _SHORT and any(one.label == "" for one in offered)
    if not (is_end or _AGREES & set(after[:1])) or not (chooses or is_alone):
        return None
    if word in _ORDER:
        at = _ORDER[word]
        return offered[at] if at < len(offered) else None
    if word in _MIDDLE and len(offered) % 2:
        return offered[len(offered) // 2]
    return _by_size(word, offered)


def _by_size(word: str, offered: list[_Option]) -> _Option | None:
    if word in _MORE | _LESS:
        sizes = [prod(one.amounts()[:_PAIR]) for one in offered]
    elif word in _THICKER | _THINNER:
        sizes = [(one.amounts()[_PAIR:] or one.amounts())[0] for one in offered]
    else:
        return None
    if len(set(sizes)) < len(sizes):
        return None
    chosen = max(sizes) if word in _MORE | _THICKER else min(sizes)
    return offered[sizes.index(chosen)]
