"""The words before a size that say what it measures."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.cues import ADJECTIVES, NAMED, take_cue
from ledgerstone.enquiry.sentence.letters import SINGLE
from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.sentence.spans import is_span
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import FROM, LABELS, ROLES, SIDES, mark
from ledgerstone.enquiry.words.word_sets import word_set

_BEFORE_FILLERS: Final = word_set(
    ": ( ) = is of be about approx the are wird ist von mit at should will mm cm in inch "
    "inches exactly to now must needs a | - – can has want wants please ca für sind soll "
    "sollte beträgt auf betragen need it being roughly around full make either stays remains"
    " still was m "
    "ft 's it's total finished overall we i you they brauchen ich wir i'd we'd like changed"
    " change je jeweils each jetzt nun überall everywhere throughout durchgehend wise thought"
    " think increased"
    " only nur unchanged reduced now say maybe perhaps ideally then dann got"
)


_ALL: Final = word_set("all both each alle beide aller")
_OF_ALL: Final = word_set(
    "all both each alle beide aller for worktops tops slabs pieces shelves sills worktop platten"
)
_UNITS: Final = word_set("mm cm m in inch inches ft")


_FROM_FAR: Final = 16
_SIDE_NEAR: Final = 7
_UNIT_NAMED: Final = word_set("( ) : = mm cm m in inch inches")
_BEING: Final = word_set("is was are would looks seems ist war sind wäre mm cm")


_NOUN_ROLES: Final = frozenset({"long", "wide", "deep", "thick"})
_NOUNS_OF_SIZE: Final = word_set("length depth width thickness länge tiefe breite stärke dicke")
_BREADTHS: Final = word_set("width breadth breite")
_HEAD_FAR: Final = 5  # atoms: "depth of the long window run"
_ANSWERS: Final = 6  # atoms before the size that answers a question
_OR: Final = word_set("maybe perhaps possibly or vielleicht eventuell oder")
_PERHAPS: Final = _OR | {",", "/"}
_TOO: Final = frozenset({"too", "zu"})


_TOO_MUCH: Final = word_set(
    "long short wide narrow deep shallow thick thin big small large much heavy lang kurz breit"
    " schmal"
    " tief dick dünn groß klein viel schwer"
)


_SAID_FIRST: Final = (ADJECTIVES - {"front"}) | word_set("length depth width thickness")


def read_before(sentence: Sentence, measure: Measure, start: int, used: set[int]) -> None:
    """Read the words before a size, back to an atom, that name no other."""
    words, atoms = sentence.words, sentence.atoms
    measure.side = _side_before(sentence, measure, start, used)
    if measure.side or measure.role or (measure.of > 1 and measure.place > 1):
        return
    if atoms[measure.at - 1].word == ":" and measure.at:
        measure.role = _asked_before(words[start : measure.at])  # "how thick they are: 30"
        if measure.role:
            return
    label_at = measure.at - 2
    if label_at >= start and atoms[label_at + 1].word == "," and words[label_at] in _SAID_FIRST:
        last = measure.at + 1 == len(atoms) or atoms[measure.at + 1].word in ".;!?"
        if (
            label_at not in used
            and last
            and _label_before(sentence, measure, start, label_at, used)
        ):
            return  # "I want it thick, 5 cm."
    for steps, i in enumerate(range(measure.at - 1, max(start, measure.at - 8) - 1, -1)):
        if i in used or _label_before(sentence, measure, start, i, used):
            return
        if _edge_before(sentence, measure, i, used) or not _is_passed(sentence, i, steps, start):
            return


def _is_passed(sentence: Sentence, i: int, steps: int, start: int) -> bool:
    """Whether the name of a size may stand before an atom: a filler, a role, a number struck."""
    words, atoms = sentence.words, sentence.atoms
    if atoms[i].word == "," and _names_first(sentence, i, start):
        return True  # "Thickness, say 2 inches"
    is_struck = atoms[i].kind == "other" and steps < 2
    is_role = bool(words[i]) and ROLES.at(words, i) is not None
    is_all = atoms[i].word in _OF_ALL and bool(_ALL & set(words[start : i + 1]))
    return atoms[i].word in _BEFORE_FILLERS or is_struck or is_role or is_all


def _names_first(sentence: Sentence, i: int, start: int) -> bool:
    """Return whether a comma comes right after the name of a size with which its clause begins."""
    words, atoms = sentence.words, sentence.atoms
    if i <= start or not words[i - 1] or words[i - 1] in ADJECTIVES or words[i - 1] in SINGLE:
        return False
    named = LABELS.at(words, i - 1)
    begins = i - 1 == 0 or atoms[i - 2].word in ",;(" or words[i - 2] in ("the", "for", "as")
    return named is not None and named[0] in NAMED and begins


def read_lone(sentence: Sentence, found: list[Measure]) -> None:
    """Give a sentence's only size the role of the only noun of size before it.

    "In der Tiefe hätte ich gern etwas mehr als bisher, nämlich 65 cm."
    """
    alone = [one for one in found if one.of == 1 and not (one.role or one.side)]
    if len(found) != 1 or not alone or alone[0].size.unit is None:
        return
    words = sentence.words[: alone[0].at]
    named = [
        tag
        for start, count, tag in LABELS.all_in(words)
        if tag in _NOUN_ROLES and words[start + count - 1] in _NOUNS_OF_SIZE
    ]
    if len(named) == 1:
        alone[0].role = named[0]
        alone[0].is_breadth = bool(_BREADTHS & set(words))


def read_question(sentence: Sentence, sizes: list[Measure], asked: str) -> str:
    """Set the first size's role to the one a form asked for on its line; return what is asked now.

    "How long is it? 1250 mm"
    """
    is_bare = bool(sizes) and not (sizes[0].role or sizes[0].side) and sizes[0].of == 1
    if asked and is_bare and not sentence.starts_line and sizes[0].at <= _ANSWERS:
        sizes[0].role = asked
    _read_perhaps(sentence, sizes)
    if sentence.ends != "?" or sizes:
        return ""
    return _asked_before(sentence.words) if sentence.words[0] == "how" else _label_alone(sentence)


def _label_alone(sentence: Sentence) -> str:
    """Return the role of a name that is asked alone: "Thickness?"."""
    named = LABELS.at(sentence.words, 0)
    is_alone = named is not None and named[1] + 1 == len(sentence.atoms)
    return named[0] if named is not None and is_alone and named[0] in _NOUN_ROLES else ""


def _read_perhaps(sentence: Sentence, sizes: list[Measure]) -> None:
    """Give a size that is only perhaps the role of the one before it: "maybe 3, maybe 4 cm"."""
    for before, after in pairwise(sizes):
        between = {atom.word for atom in sentence.atoms[before.at + 1 : after.at]}
        is_bare = after.of == before.of == 1 and not (after.role or after.side or before.side)
        if is_bare and between <= _PERHAPS and between & _OR:
            after.role = before.role


def _asked_before(words: list[str]) -> str:
    """Return the role of "how thick", if that is said."""
    at = words.index("how") + 1 if "how" in words else len(words)
    role = ROLES.at(words, at) if at < len(words) and words[at] else None
    return role[0] if role is not None else ""


def _label_before(
    sentence: Sentence, measure: Measure, start: int, end: int, used: set[int]
) -> bool:
    """Take a name of up to six words that ends at an atom: "overall length"."""
    words = sentence.words
    between = {atom.word for atom in sentence.atoms[end + 1 : measure.at]}
    has_unit = "(" in between and between <= _UNIT_NAMED  # "L (cm): 162"
    if words[end] in SINGLE and measure.at - end > 2 and not has_unit:
        return False
    if words[end] == "no" and sentence.atoms[end + 1].word in ",;-–—":
        return False  # "about a metre, no, 950"
    for count in range(6, 0, -1):  # "L x D x T" before "T"
        first = end - count + 1
        label = LABELS.at(words, first) if first >= start and words[first] else None
        counts = label is not None and label[0] == "quantity"
        counts = counts and (measure.of > 1 or measure.size.unit is not None)
        if label is not None and label[0] in NAMED and label[1] == count and not counts:
            measure.role = _head_of(words, first) or label[0]
            measure.is_breadth = words[end] in _BREADTHS
            _label_unit(sentence, measure, end + 1)
            take_cue(measure, first, end + 1, used)
            return True
    return False


def _head_of(words: list[str], at: int) -> str:
    """Return the role of the noun whose "of" leads to a name: "depth of the window run"."""
    led = words[max(0, at - _HEAD_FAR) : at]
    of = max((i for i, word in enumerate(led) if word in ("of", "von")), default=0)
    is_joined = of > 0 and led[of + 1 :] != [] and all(led[of + 1 :])
    named = LABELS.at(led, of - 1) if is_joined and led[of - 1] in _NOUNS_OF_SIZE else None
    return named[0] if named is not None else ""


def _label_unit(sentence: Sentence, measure: Measure, start: int) -> None:
    """Take the unit in ``Length (mm): 2650``."""
    for atom in sentence.atoms[start : measure.at]:
        if atom.word in _UNITS:
            measure.unit_from_label = {"inch": "in", "inches": "in"}.get(atom.word, atom.word)


def _edge_before(sentence: Sentence, measure: Measure, i: int, used: set[int]) -> bool:
    """Take the length of one side: "back edge 1480 mm"."""
    words = sentence.words
    if words[i] not in ("edge", "side", "kante", "seite") or i == 0 or not words[i - 1]:
        return False
    side = SIDES.at(words, i - 1)
    from_before = FROM.at(words, i - 2) if i > 1 and words[i - 2] else None
    if side is None or from_before is not None or measure.of > 1:
        return False
    measure.role = f"edge:{side[0]}"
    take_cue(measure, i - 1, i + 1, used)
    return True


def _side_before(sentence: Sentence, measure: Measure, start: int, used: set[int]) -> str:
    """Find ``from left: 700``, where no earlier size has taken those words."""
    words, atoms = sentence.words, sentence.atoms
    for i in range(measure.at - 1, max(start, measure.at - _FROM_FAR) - 1, -1):
        if i in used or atoms[i].word in {",", ";", "."}:
            return ""
        if not words[i] or FROM.at(words, i) is None or is_span(words, i):
            continue
        if words[i : i + 2] == ["off", "to"]:
            return ""  # "off to the right in a 32 mm hole"
        label = LABELS.at(words, i)
        is_deep = label is not None and label[0] == "deep"
        if label is not None and is_deep and words[i + label[1]] != "of":
            measure.role = "deep"  # "from the back wall to the front edge it's to be 385"
            take_cue(measure, i, i + label[1], used)
            return ""
        for j in range(i + 1, min(i + _SIDE_NEAR, measure.at)):
            if words[j] and (side := SIDES.at(words, j)) is not None:
                take_cue(measure, i, measure.at, used)
                return side[0]
    return ""


def read_marks(sentence: Sentence, measure: Measure, start: int) -> None:
    """Note that a size is said to be replaced, or to be approximate."""
    words = sentence.words
    for i in range(max(start, measure.at - 3), measure.at):
        if not words[i]:
            continue
        if mark("instead").at(words, i) is not None or words[i] in ("not", "nicht"):
            measure.replaced = True
        if mark("about").at(words, i) is not None:
            measure.about = True
    after = words[measure.at + 1 : measure.at + 6]
    too = any(one in _TOO and two in _TOO_MUCH for one, two in pairwise(after))
    if too and after[0] in _BEING and not measure.side:
        measure.replaced = True  # "200 is too long"
