"""Several lengths of slabs that share the rest: "two of 1150 and one of 900, all 240 deep"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Atom, Sentence
from ledgerstone.enquiry.text.sizes import Size
from ledgerstone.enquiry.words.lexicon import LABELS, NUMBERS
from ledgerstone.enquiry.words.word_sets import word_set

_MAX_OF_ONE: Final = 24
_FAR: Final = 5  # atoms from a length to how many are of it
_ALIKE: Final = 6  # common practice, no source: no length of a row is so many times another
_SHORT: Final = 9  # atoms of a line that has only a number and a length
_LEADS: Final = word_set(
    "at @ of off no . nr stk mit zu à x × them are is be measuring measure measures with in long"
    " which that davon sind ist misst stück pcs pc pieces piece length lengths länge lang are to"
    " should will soll sollen je each bei von"
)
_ORDINALS: Final = word_set(
    "other second third fourth last another andere anderen zweite dritte letzte"
)
_ARTICLES: Final = word_set("the der die das dem den")
_ONE: Final = word_set("one ein eine einer einen einem")
_ROLES: Final = frozenset({"", "long"})
_AFTER: Final = word_set("off pcs pieces stück times mal")
_LISTS: Final = frozenset({",", "and", "und", "&", "", "plus"})


@dataclass(frozen=True, slots=True)
class CountedLength:
    """A length, and how many slabs have it."""

    measure: Measure
    count: Size


def read_rows(focus: Focus, parsed: ParsedSentence) -> None:
    """Take each length of a row for a length of its own, with how many slabs have it."""
    if focus.is_l() or focus.is_split or focus.is_correcting or parsed.sentence.is_quoted:
        return
    if not _is_of_slabs(focus, parsed):
        return
    row = [*_counted(parsed)]
    if len(row) < 2:
        row = _listed(parsed) or (row if _is_line(focus, parsed, row) else [])
    if not row or not _are_alike(row) or _is_led_by_thing(parsed, row[0].measure.at):
        return
    for one in row:
        one.measure.role, one.measure.counted = "long", one.count
    starts = {one.count.start for one in row}
    parsed.sizes = [size for size in parsed.sizes if size.size.start not in starts]


def _is_of_slabs(focus: Focus, parsed: ParsedSentence) -> bool:
    """Return whether the sizes of a sentence are of slabs: no hole and no cupboard is named."""
    if any(one.kind in ("open", "hole") and not one.is_denied for one in parsed.found):
        return False
    is_named = any(one.kind == "slab" for one in parsed.found)
    is_of_thing = any(one.kind == "thing" and not one.preposition for one in parsed.found)
    piece = focus.subjects.piece
    return is_named or (piece is not None and not is_of_thing and not focus.on_opening)


def _is_led_by_thing(parsed: ParsedSentence, at: int) -> bool:
    """Return whether what is named last before a row is no slab: "over two units of 600"."""
    before = [one for one in parsed.found if one.end <= at and one.kind != "one"]
    if len(before) > 1 and before[-1].kind == "room" and before[-2].kind == "slab":
        return False  # "four sills in the hall: two of 1250"
    return bool(before) and before[-1].kind in ("thing", "room", "open", "hole")


def _counted(parsed: ParsedSentence) -> Iterator[CountedLength]:
    """Yield each single size that a number of slabs leads to, or that one follows."""
    since, is_begun = -1, False
    for measure in parsed.sizes:
        count = None
        if measure.of == 1 and not measure.side and measure.role in _ROLES and _is_long(measure):
            count = _count_before(parsed.sentence, measure.at, since, is_begun=is_begun)
            count = count or _count_after(parsed.sentence, measure.at)
        if count is not None:
            is_begun = True
            yield CountedLength(measure, count)
        if count is not None or _is_long(measure):
            since = measure.at


def _is_long(measure: Measure) -> bool:
    """Return whether a size counts nothing."""
    size = measure.size
    return size.unit is not None or size.amount > _MAX_OF_ONE


def _count_before(sentence: Sentence, at: int, since: int, *, is_begun: bool) -> Size | None:
    for i in range(at - 1, max(since, at - _FAR - 1), -1):
        atom = sentence.atoms[i]
        if (count := _count_at(sentence, i, is_begun=is_begun)) is not None:
            return Size(atom.start, atom.end, Fraction(count), None)
        if atom.word not in _LEADS:
            return None
    return None


def _count_at(sentence: Sentence, i: int, *, is_begun: bool) -> int | None:
    """Return the number of slabs that an atom is; "the other" is one more where some are told."""
    atom, before = sentence.atoms[i], sentence.words[i - 1] if i else ""
    if atom.word in _ORDINALS:
        return 1 if is_begun else None
    if atom.word in _ONE:
        is_one = before not in _ARTICLES or bool(_ORDINALS & set(sentence.words[i + 1 :]))
        return 1 if is_one else None
    return _small(atom)


def _small(atom: Atom) -> int | None:
    size = atom.size
    amount = size.amount if size is not None and size.unit is None else NUMBERS.get(atom.word)
    is_whole = amount is not None and amount == int(amount) and atom.word not in ("a", "an")
    return int(amount) if is_whole and amount is not None and 1 <= amount <= _MAX_OF_ONE else None


def _count_after(sentence: Sentence, at: int) -> Size | None:
    """Read "(x2)", "x 2", "(2 off)" after a length."""
    atoms = sentence.atoms[at + 1 : at + 4]
    words = [atom.word for atom in atoms]
    if words[:1] in (["("], ["-"], [","]):
        atoms, words = atoms[1:], words[1:]
    following = sentence.words[at + 3 : at + 5]
    if words[:1] in (["x"], ["×"]) and len(atoms) > 1 and _small(atoms[1]) is not None:
        return atoms[1].size
    is_off = len(atoms) > 1 and _small(atoms[0]) is not None and bool(_AFTER & set(following))
    return atoms[0].size if is_off else None


def _listed(parsed: ParsedSentence) -> list[CountedLength]:
    """Return the bare lengths of a list that a plural and a colon lead to, one slab each."""
    sentence = parsed.sentence
    plural = next((one for one in parsed.found if one.kind == "slab" and one.is_plural), None)
    row: list[Measure] = []
    for measure in parsed.sizes:
        words = {atom.word for atom in sentence.atoms[row[-1].at + 1 : measure.at]} if row else {}
        is_bare = measure.of == 1 and not measure.side and measure.role in _ROLES
        is_first = not row and _leads_to_list(sentence, measure.at)
        if is_bare and _is_long(measure) and (is_first or (row and set(words) <= _LISTS)):
            row.append(measure)
        elif row:
            break
    if plural is None or len(row) < 2 or row[0].at < plural.start:
        return []
    return [CountedLength(one, Size(-1, -1, Fraction(1), None)) for one in row]


def _leads_to_list(sentence: Sentence, at: int) -> bool:
    """Return whether a colon or "lengths" stands before a size."""
    before = [atom.word for atom in sentence.atoms[max(0, at - 3) : at]]
    label = LABELS.at(sentence.words, at - 1) if at and sentence.words[at - 1] else None
    is_lengths = label is not None and label[0] == "long" and sentence.words[at - 1].endswith("s")
    return before[-1:] == [":"] or is_lengths


def _is_line(focus: Focus, parsed: ParsedSentence, row: list[CountedLength]) -> bool:
    """Return whether a line has only a number and a length, of slabs that were named before."""
    sentence, piece = parsed.sentence, focus.subjects.piece
    is_alone = len(row) == 1 and len(sentence.atoms) <= _SHORT and sentence.starts_line
    return is_alone and len(parsed.sizes) <= 2 and piece is not None and not parsed.found


def _are_alike(row: list[CountedLength]) -> bool:
    amounts = [one.measure.size.amount for one in row]
    units = {one.measure.size.unit for one in row} - {None}
    return len(units) > 1 or max(amounts) <= _ALIKE * min(amounts)
