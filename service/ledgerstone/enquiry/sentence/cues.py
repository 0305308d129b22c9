"""The words after a size that say what it measures."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence import strips
from ledgerstone.enquiry.sentence.letters import letter_after, name_group
from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.sentence.spans import is_span
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import AXES, FROM, LABELS, ROLES, SIDES
from ledgerstone.enquiry.words.word_sets import word_set

FILLERS: Final = word_set(
    "in clear exactly full overall about thereabouts approx or so altogether total finished "
    "the max maximum min minimum of and is it ( ) - to going all over wide deep long nominal "
    "dead precisely just only mm also both each ' \" genau insgesamt gesamt ca"
)
NAMED: Final = word_set("long wide deep thick high dia radius size quantity")
ADJECTIVES: Final = word_set("long wide deep thick high tall lang breit tief stark dick hoch front")
_EDGES: Final = word_set(
    "edge side rim start front near cut cutout hole opening ausschnitt rand kante loch öffnung"
)
_CENTRES: Final = frozenset({"centre", "center", "middle", "mitte"})
_BREAKS: Final = frozenset({",", ";", "/", "|", "("})
_AN_END: Final = (["end"], ["ends"])
_ANY_END: Final = (*([word, "end"] for word in ("the", "each", "its", "that")), ["the", "ends"])
_OWN_END: Final = (["its", "end"], ["their", "ends"], ["nearest", "end"], ["the", "nearest"])
_EACH: Final = frozenset({"each", "both", "je", "jeweils"})
_EACH_END: Final = frozenset(
    {("each", "end"), ("either", "end"), ("both", "ends")}
    | {("jedem", "ende"), ("jeden", "ende"), ("beiden", "enden")}
)
_LEADING: Final = frozenset({":", "=", "of", "is", "von", "("})
_ENDS_SIDE: Final = frozenset({",", ";", "(", ")", "and", "und"})
_ALONGSIDE: Final = frozenset({"parallel", "entlang", "along", "längs"})
_AS: Final = frozenset({"for", "as", "in", "of", "on"})
_ARTICLES: Final = frozenset({"the", "its", "a", "overall", "total", "finished"})
_AT: Final = (["at"], ["on"], ["am"], ["an"])
_ENDS: Final = frozenset({"end", "side", "ende", "seite", "edge"})
_FAR: Final = 7
_STEPS: Final = 3
_TOO_THICK: Final = 250  # in any unit: common practice, no source
_BY_LETTER: Final = {"l": "left", "r": "right", "f": "front", "b": "back"}
_ROUND: Final = frozenset({"round", "circular", "rund"})


def read_after(
    sentence: Sentence, measure: Measure, end: int, used: set[int], *, skip_labels: bool
) -> None:
    """Read the words after a size, up to an atom.

    Parameters
    ----------
    used
        Atoms that name a size already; those read here are added.
    skip_labels
        Whether names of sizes stand before them here, as in "Länge 2,40 m, Tiefe 62 cm".
    """
    start = measure.at + 1
    if name_group(sentence, measure, used):
        return
    limit = min(end, start + _FAR)
    side = strips.to_middle(sentence.words, start) or _side_after(sentence, start, limit)
    side = side or strips.without_from(sentence, measure)
    if side is not None and side[0] == "back" and strips.comes_out(sentence, measure):
        return  # "it is to come out 635 from the window wall"
    if side is not None:
        measure.side = side[0]
        measure.to_edge = measure.to_edge or _ends_at_edge(sentence, side[1])
        take_cue(measure, start, side[1], used)
    elif strips.is_behind_by(sentence, measure):
        measure.role = "behind"  # "a tap hole 100 behind it"
        take_cue(measure, start, start + 1, used)
    elif not strips.beside(sentence, measure, start):
        letter = letter_after(sentence, start)
        if letter:
            measure.role, measure.cue = letter, (start, start + 1)
        else:
            _role_after(sentence, measure, limit, used, skip_labels=skip_labels)
            _distance_after(sentence, measure, start)


def _distance_after(sentence: Sentence, measure: Measure, start: int) -> None:
    """Take a size that "from" follows at once for a distance: "150 from the edge" is no bore."""
    words = sentence.words
    is_bare = measure.of == 1 and not (measure.role or measure.axis)
    is_led = start < len(words) and bool(words[start]) and FROM.at(words, start) is not None
    if is_bare and is_led and not is_span(words, start):
        measure.role = "apart"


def take_cue(measure: Measure, start: int, end: int, used: set[int]) -> None:
    """Note which atoms say a size's role, so that they say no other's."""
    measure.cue = (start, end)
    used.update(range(start, end))


def _role_after(
    sentence: Sentence, measure: Measure, limit: int, used: set[int], *, skip_labels: bool
) -> None:
    words, atoms = sentence.words, sentence.atoms
    for i in range(measure.at + 1, min(limit, measure.at + 1 + _STEPS)):
        named = _bracketed(sentence, i) or _named_as(sentence, i)
        if named is not None:
            measure.role = named[0]
            take_cue(measure, i, named[1], used)
            return
        is_next = i > measure.at + 1 and words[i] in ADJECTIVES and _is_size(sentence, i + 1)
        axis = AXES.at(words, i) if words[i] else None
        role = ROLES.at(words, i) if words[i] else None
        is_next = is_next or (role is not None and role[0] == "apart" and words[i - 1] == "the")
        too_thick = measure.size.amount >= _TOO_THICK  # "1250 by 500 and thick enough"
        is_next = is_next or (role is not None and role[0] == "thick" and too_thick)
        if atoms[i].word in _BREAKS or is_next:
            return  # "long 3,40 m and wide 55 cm", "2200 and the shorter arm"
        label = LABELS.at(words, i) if words[i] else None
        is_noun = label is not None and role is not None and label[1] >= role[1]
        is_led = words[i - 1] == "the"  # "65 cm and the thick 4 cm"
        is_noun_only = is_noun and words[i] not in ADJECTIVES
        if (
            is_noun_only
            and label is not None
            and _leads_on(sentence, i + label[1], beside=i == measure.at + 1 and label[0] == "dia")
        ):
            return  # "1800 x 600 and thickness 40"
        if skip_labels and is_noun and (words[i] not in ADJECTIVES or is_led):
            return
        if role is not None or axis is not None:
            count = max(found[1] for found in (role, axis) if found is not None)
            measure.role = role[0] if role is not None and role[1] == count else ""
            if words[i] in _ROUND and measure.role == "across":
                measure.role = "dia"  # "80 cm round"
            measure.axis = axis[0] if axis is not None and axis[1] == count else ""
            end = _end_after(sentence, measure, i + count)
            take_cue(measure, i, end, used)
            return
        if atoms[i].word not in FILLERS:
            return


def _leads_on(sentence: Sentence, i: int, *, beside: bool) -> bool:
    """Return whether a size follows a name at once, so that the name is that size's.

    Right beside a size, before a colon a diameter is its: "300 mm diameter: 320 from the left".
    """
    atoms = sentence.atoms
    if beside and i < len(atoms) and atoms[i].word == ":":
        return False
    while i < len(atoms) and atoms[i].word in _LEADING:
        i += 1
    after = sentence.words[i + 1 : i + 2]
    is_place = bool(after and after[0]) and FROM.at(after, 0) is not None
    return i < len(atoms) and atoms[i].kind == "size" and not is_place  # "395 dia 410 from left"


def _bracketed(sentence: Sentence, i: int) -> tuple[str, int] | None:
    """Return the role in brackets right after a size, and where they end: "1800 (length)"."""
    words, atoms = sentence.words, sentence.atoms
    if atoms[i].word != "(" or i + 2 >= len(words):
        return None
    for table in (ROLES, LABELS):
        found = table.at(words, i + 1) if words[i + 1] else None
        end = i + 1 + found[1] if found is not None else 0
        if found is not None and found[0] in NAMED and atoms[min(end, len(atoms) - 1)].word == ")":
            return found[0], end + 1
    return None


def _named_as(sentence: Sentence, i: int) -> tuple[str, int] | None:
    """Return the role in "40 for the thickness" or "600 as its depth", and where that ends."""
    words = sentence.words
    if words[i] not in _AS:
        return None
    at = i + 2 if words[i + 1 : i + 2] and words[i + 1] in _ARTICLES else i + 1
    found = LABELS.at(words, at) if at < len(words) and words[at] else None
    if found is None or found[0] not in NAMED or len(words[at]) < 4 or words[at] in ADJECTIVES:
        return None
    return found[0], at + found[1]


def _end_after(sentence: Sentence, measure: Measure, start: int) -> int:
    """Take the side at which a slab is so wide: "450 wide at the left end"."""
    words = sentence.words
    if measure.role not in ("wide", "deep", "long") or words[start : start + 1] not in _AT:
        return start
    for i in range(start + 1, min(start + 4, len(words))):
        side = SIDES.at(words, i) if words[i] else None
        if side is not None and _ENDS & set(words[i + side[1] : i + side[1] + 2]):
            across = side[0] in ("left", "right")
            if across == (measure.role != "long"):
                measure.role = f"edge:{side[0]}"
            return i + side[1] + 1
        if words[i] not in ("the", "its", "der", "am"):
            return start
    return start


def _side_after(sentence: Sentence, start: int, limit: int) -> tuple[str, int] | None:
    """Find ``from`` and the side that it names, before anything else is measured."""
    words, atoms = sentence.words, sentence.atoms
    for i in range(start, limit):
        if atoms[i].word in _ENDS_SIDE or is_span(words, i) or _runs_along(words, i):
            return None
        if any(i <= begin < i + 2 for begin, _ in sentence.marks("centred")):
            return None  # "510 x 400 in the middle of the back leg"
        found = FROM.at(words, i) if words[i] else None
        if found is None and i == start and words[i] == "of":
            found = strips.of_side(words, i)  # "120 cm of left side"
        if found is None:
            continue
        return _side_at(sentence, i + found[1], start)
    return None


def _runs_along(words: list[str], i: int) -> bool:
    """Whether a word says that a size runs along something; "700 along from the left" does not."""
    following = words[i + 1 : i + 2]
    leads = words[i] == "along" and following and following[0] and FROM.at(following, 0)
    return words[i] in _ALONGSIDE and not leads


def _side_at(sentence: Sentence, first: int, start: int) -> tuple[str, int] | None:
    """Find the side that is named from a word on, before another size, and where it ends."""
    words = sentence.words
    by_letter = _BY_LETTER.get("".join(words[first : first + 1]))
    if by_letter is not None and not _is_size(sentence, first + 1):
        return by_letter, first + 1
    return _end_at(words, first, start) or _side_ahead(sentence, first)


def _end_at(words: list[str], first: int, start: int) -> tuple[str, int] | None:
    """Find both ends, or "that end", which is the side that was named last."""
    if words[first : first + 1] in (["both"], ["each"], ["either"]):
        is_end = words[first + 1 : first + 2] in (["end"], ["ends"])
        return "ends" if is_end else "corner", first + 1
    any_end = words[first : first + 2] in _ANY_END or words[first : first + 1] in _AN_END
    if any_end and _EACH_END & set(pairwise(words[:first])):
        return "ends", first + 1
    own_end = words[first : first + 2] in _OWN_END or words[first : first + 3] == [
        "its",
        "own",
        "end",
    ]
    if own_end and _EACH & set(words[:first]):
        return "ends", first + 1
    if words[first : first + 2] in (["that", "end"], ["this", "end"], ["that", "side"]):
        said = _side_named(words[:start])
        return (said, first + 2) if said else None
    return None


def _side_ahead(sentence: Sentence, first: int) -> tuple[str, int] | None:
    """Find a side's name before another size or a comma."""
    words, atoms = sentence.words, sentence.atoms
    for j in range(first, min(first + 6, len(atoms))):
        if atoms[j].kind == "size" or atoms[j].word in {",", ";"}:
            return None
        if words[j] and (side := SIDES.at(words, j)) is not None:
            is_way_in = words[j] == "unten" and words[j + 1 : j + 2] not in ([], [""], ["und"])
            is_way_in = is_way_in or words[max(0, j - 2)].endswith(("becken", "spüle"))
            return None if is_way_in else (side[0], j + side[1])
    return None


def _side_named(words: list[str]) -> str:
    """Return the side that was named last: "at the right-hand end, 350 from that end"."""
    for i in range(len(words) - 1, -1, -1):
        side = SIDES.at(words, i) if words[i] else None
        if side is not None and _ENDS & set(words[i + side[1] : i + side[1] + 2]):
            return side[0]
    return ""


def _ends_at_edge(sentence: Sentence, start: int) -> bool:
    """Return whether a distance runs to a hole's edge and not to its middle."""
    words = sentence.words
    for i in range(start, min(start + 4, len(words))):
        if words[i] in ("to", "bis"):
            ahead = words[i + 1 : i + 5]
            following = set(ahead[: ahead.index("")] if "" in ahead else ahead)
            return bool(_EDGES & following) and not _CENTRES & following
        if sentence.atoms[i].kind != "word":
            return False
    return False


def _is_size(sentence: Sentence, i: int) -> bool:
    return i < len(sentence.atoms) and sentence.atoms[i].kind == "size"
