"""Each size of a sentence with the words that say what it measures."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from ledgerstone.enquiry.lexicon import AXES, FROM, LABELS, ROLES, SIDES, mark
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.sizes import Size

_CONNECTORS: Final = frozenset({"x", "×", "*", "by", "mal", "auf", "on", "✕", "╳", "⨯"})
_WEAK_CONNECTORS: Final = frozenset({"auf", "on"})
_FILLERS: Final = frozenset(
    "in clear exactly full overall about thereabouts approx or so altogether total finished the max"
    " maximum min minimum of and is it ( ) - to going all over wide deep long nominal dead precisely"
    " just only mm also both each ' \" genau insgesamt gesamt ca".split()
)
_BEFORE_FILLERS: Final = frozenset(
    ": ( ) = is of be about approx the are wird ist von mit at should will mm cm in inch inches exactly"
    " to now must needs a | - – can has want wants please ca für sind soll sollte beträgt need it being"
    " roughly around full make stays remains still was m ft".split()
)
_NAMED: Final = frozenset("long wide deep thick high dia radius size quantity".split())
_SINGLE: Final = frozenset("l w d t h b th".split())
_FAR: Final = 7


@dataclass(slots=True)
class Measure:
    """A size in its sentence.

    ``role`` is what its words call it, ``side`` the side it is counted from, ``axis`` the way it
    runs, ``place`` and ``of`` its place in a group like 1830 x 620 x 40.
    """

    at: int
    size: Size
    role: str = ""
    side: str = ""
    axis: str = ""
    group: int = -1
    place: int = 0
    of: int = 1
    replaced: bool = False
    about: bool = False
    unit_from_label: str = ""
    cue_end: int = 0
    cue: tuple[int, int] | None = None
    members: list[Measure] = field(default_factory=list)


def measures_of(sentence: Sentence) -> list[Measure]:
    """Give the sizes of a sentence, each with what its neighbouring words say of it."""
    found = [
        Measure(i, atom.size) for i, atom in enumerate(sentence.atoms) if atom.size is not None
    ]
    _group(sentence, found)
    used: set[int] = set()
    label_first = _begins_with_label(sentence, found)
    for i, measure in enumerate(found):
        end = found[i + 1].at if i + 1 < len(found) else len(sentence.atoms)
        _read_after(sentence, measure, end, used, skip_labels=label_first)
    for i, measure in enumerate(found):
        start = found[i - 1].at + 1 if i else 0
        if not measure.role and not measure.side:
            _read_before(sentence, measure, start, used)
        _read_marks(sentence, measure, start)
    return found


def _group(sentence: Sentence, found: list[Measure]) -> None:
    groups: list[list[Measure]] = []
    for before, after in zip(found, found[1:], strict=False):
        if _is_connected(sentence, before, after):
            if not groups or groups[-1][-1] is not before:
                groups.append([before])
            groups[-1].append(after)
    for number, members in enumerate(groups):
        for place, measure in enumerate(members, start=1):
            measure.group, measure.place, measure.of = number, place, len(members)
            measure.members = members


def _is_connected(sentence: Sentence, before: Measure, after: Measure) -> bool:
    between = sentence.atoms[before.at + 1 : after.at]
    words = [atom.word for atom in between]
    if not words or len(words) > 5:
        return False
    if words == ["/"]:
        return sentence.atoms[before.at].end + 1 == sentence.atoms[after.at].start
    connecting = [word for word in words if word in _CONNECTORS]
    if not connecting:
        return False
    if connecting[0] in _WEAK_CONNECTORS and None in (before.size.unit, after.size.unit):
        return False
    roles = {
        word
        for table in (ROLES, AXES)
        for start, count, _ in table.all_in(words)
        for word in words[start : start + count]
    }
    return all(word in _CONNECTORS or word in _FILLERS or word in roles for word in words)


def _begins_with_label(sentence: Sentence, found: list[Measure]) -> bool:
    """Whether names of sizes stand before them: "Länge 2,40 m, Tiefe 62 cm"."""
    if not found:
        return False
    words = sentence.words[: found[0].at]
    return any(start + count >= len(words) - 3 for start, count, _ in LABELS.all_in(words))


def _read_after(
    sentence: Sentence, measure: Measure, end: int, used: set[int], *, skip_labels: bool
) -> None:
    words, atoms = sentence.words, sentence.atoms
    i = measure.at + 1
    limit = min(end, i + _FAR)
    side = _side_after(sentence, i, limit)
    if side is not None:
        measure.side, measure.cue_end = side
        measure.cue = (i, measure.cue_end)
        used.update(range(i, measure.cue_end))
        return
    steps = 0
    while i < limit and steps < 3:
        if atoms[i].word in {",", ";", "/", "|"} or (atoms[i].kind == "mark" and atoms[i].word == "("):
            return
        axis, role = AXES.at(words, i) if words[i] else None, ROLES.at(words, i) if words[i] else None
        label = LABELS.at(words, i) if words[i] else None
        if skip_labels and label is not None and role is not None and label[1] >= role[1] and not _is_adjective(words[i]):
            return
        if role is not None or axis is not None:
            count = max(found[1] for found in (role, axis) if found is not None)
            measure.role = role[0] if role is not None and role[1] == count else ""
            measure.axis = axis[0] if axis is not None and axis[1] == count else ""
            measure.cue = (i, i + count)
            used.update(range(i, i + count))
            return
        if atoms[i].word not in _FILLERS:
            return
        i += 1
        steps += 1


def _is_adjective(word: str) -> bool:
    return word in {"long", "wide", "deep", "thick", "high", "tall", "lang", "breit", "tief", "stark", "dick", "hoch"}


def _side_after(sentence: Sentence, start: int, limit: int) -> tuple[str, int] | None:
    """Find ``from`` and the side that it names, before anything else is measured."""
    words, atoms = sentence.words, sentence.atoms
    for i in range(start, limit):
        if atoms[i].word in {",", ";", "(", ")", "and", "und"} or _is_span(words, i):
            return None
        if words[i] and (found := FROM.at(words, i)) is not None:
            far = min(i + found[1] + 6, len(atoms))
            for j in range(i + found[1], far):
                if atoms[j].kind == "size" or atoms[j].word in {",", ";"}:
                    return None
                if words[j] and (side := SIDES.at(words, j)) is not None:
                    return side[0], j + side[1]
            return None
    return None


def _is_span(words: list[str], i: int) -> bool:
    """Whether "from front to back" begins here, which names a size and no side."""
    if words[i] not in ("from", "von") or i + 3 >= len(words) or words[i + 2] not in ("to", "nach"):
        return False
    return SIDES.at(words, i + 3) is not None if words[i + 3] else False


def _read_before(sentence: Sentence, measure: Measure, start: int, used: set[int]) -> None:
    words, atoms = sentence.words, sentence.atoms
    side = _side_before(sentence, measure, start, used)
    if side:
        measure.side = side
        return
    if measure.of > 1 and measure.place > 1:
        return
    i = measure.at - 1
    steps = 0
    while i >= start and steps < 7 and i not in used:
        for count in (1, 2, 3):
            first = i - count + 1
            if first < start or not words[first]:
                continue
            label = LABELS.at(words, first)
            named = label is not None and label[0] in _NAMED and label[1] == count
            if label is not None and named and _may_label(words[i], measure.at - i):
                measure.role = label[0]
                measure.cue = (first, i + 1)
                _label_unit(sentence, measure, i + 1)
                used.update(range(first, i + 1))
                return
        if _edge_before(sentence, measure, i, used):
            return
        is_struck = atoms[i].kind == "other" and steps < 2
        if atoms[i].word not in _BEFORE_FILLERS and not is_struck and not (words[i] and ROLES.at(words, i)):
            return
        i -= 1
        steps += 1


def _edge_before(sentence: Sentence, measure: Measure, i: int, used: set[int]) -> bool:
    """Take the length of one side: "back edge 1480 mm"."""
    words = sentence.words
    if words[i] not in ("edge", "side", "kante", "seite") or i == 0 or not words[i - 1]:
        return False
    side = SIDES.at(words, i - 1)
    led = FROM.at(words, i - 2) if i > 1 and words[i - 2] else None
    if side is None or led is not None or measure.of > 1:
        return False
    measure.role, measure.cue = f"edge:{side[0]}", (i - 1, i + 1)
    used.update((i - 1, i))
    return True


def _may_label(word: str, distance: int) -> bool:
    return word not in _SINGLE or distance <= 2


def _label_unit(sentence: Sentence, measure: Measure, start: int) -> None:
    """Take the unit in ``Length (mm): 2650``."""
    for atom in sentence.atoms[start : measure.at]:
        if atom.word in ("mm", "cm", "m", "in", "inch", "inches", "ft"):
            measure.unit_from_label = {"inch": "in", "inches": "in"}.get(atom.word, atom.word)


def _side_before(sentence: Sentence, measure: Measure, start: int, used: set[int]) -> str:
    """Find ``from left: 700``, where no earlier size has taken those words."""
    words, atoms = sentence.words, sentence.atoms
    low = max(start, measure.at - 9)
    for i in range(measure.at - 1, low - 1, -1):
        if i in used or atoms[i].word in {",", ";", "."}:
            return ""
        if words[i] and FROM.at(words, i) is not None:
            for j in range(i + 1, measure.at):
                if words[j] and (side := SIDES.at(words, j)) is not None:
                    measure.cue = (i, measure.at)
                    used.update(range(i, measure.at))
                    return side[0]
            return ""
    return ""


def _read_marks(sentence: Sentence, measure: Measure, start: int) -> None:
    words = sentence.words
    for i in range(max(start, measure.at - 3), measure.at):
        if not words[i]:
            continue
        if mark("instead").at(words, i) is not None or words[i] in ("not", "nicht"):
            measure.replaced = True
        if mark("about").at(words, i) is not None:
            measure.about = True
