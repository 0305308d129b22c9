"""Each size of a sentence with the words that say what it measures."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.cues import (
    CONNECTORS,
    FILLERS,
    SINGLE,
    read_after,
)
from ledgerstone.enquiry.cues_before import read_before, read_marks
from ledgerstone.enquiry.lexicon import AXES, FROM, LABELS, ROLES, SIDES
from ledgerstone.enquiry.measure import Measure
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.word_sets import word_set

__all__ = ["Measure", "measures_of"]

_WEAK_CONNECTORS: Final = frozenset({"auf", "on"})
_STARTS: Final = word_set("starts start begins begin starting beginning beginnt")
_ITS_EDGE: Final = (["edge", "of", "it"], ["edge", "of", "that"])
_HOLES: Final = frozenset(["hole", "cut", "cutout", "opening", "sink", "hob"])
_CENTRES: Final = frozenset({"centre", "center", "middle"})
_OR: Final = (["or"], ["oder"], ["to"], ["bis"], ["-"], ["–"], ["/"])
_SHARED: Final = frozenset(["thick", "long", "deep", "wide", "high", "dia"])
_NO_ROLES: Final = frozenset({"size", "cutouts", "quantity", "piece"})
_MOST_OF_ONE: Final = 9
_LEAST_MM: Final = 30  # what follows a number of pieces: common practice, no source
_LEAST_LIKE: Final = 2
_MOST_BETWEEN: Final = 5


def measures_of(sentence: Sentence) -> list[Measure]:
    """Give the sizes of a sentence, each with what its neighbouring words say of it."""
    atoms = sentence.atoms
    found = [Measure(i, atom.size) for i, atom in enumerate(atoms) if atom.size is not None]
    _group(sentence, found)
    used: set[int] = set()
    label_first = _begins_with_label(sentence, found)
    for i, measure in enumerate(found):
        end = found[i + 1].at if i + 1 < len(found) else len(atoms)
        read_after(sentence, measure, end, used, skip_labels=label_first)
    for i, measure in enumerate(found):
        start = found[i - 1].at + 1 if i else 0
        if not measure.role and not measure.side:
            read_before(sentence, measure, start, used)
        read_marks(sentence, measure, start)
    _share_alternatives(sentence, found)
    _mark_starts(sentence, found)
    return found


def _group(sentence: Sentence, found: list[Measure]) -> None:
    groups: list[list[Measure]] = []
    for before, after in pairwise(found):
        if _is_connected(sentence, before, after):
            if not groups or groups[-1][-1] is not before:
                groups.append([before])
            groups[-1].append(after)
    for members in groups:
        if _counts(members):
            members[0].role = "quantity"
            del members[0]
        if len(members) == 1:
            continue
        for place, measure in enumerate(members, start=1):
            measure.place, measure.of, measure.members = place, len(members), members


def _is_connected(sentence: Sentence, before: Measure, after: Measure) -> bool:
    words = [atom.word for atom in sentence.atoms[before.at + 1 : after.at]]
    if not words or len(words) > _MOST_BETWEEN:
        return False
    if words == ["/"]:
        joined = sentence.atoms[before.at].end + 1 == sentence.atoms[after.at].start
        following = sentence.words[after.at + 1 : after.at + 2]
        return joined or not (following and following[0] and FROM.at(following, 0))
    connecting = [word for word in words if word in CONNECTORS]
    if not connecting:
        return False
    if connecting[0] in _WEAK_CONNECTORS and not _is_weak_pair(before, after):
        return False
    roles = {
        word
        for table in (ROLES, AXES)
        for start, count, _ in table.all_in(words)
        for word in words[start : start + count]
    }
    return set(words) <= CONNECTORS | FILLERS | SINGLE | roles


def _counts(members: list[Measure]) -> bool:
    """Whether the first of a group is how many: "1 x 35 mm", "2 x 1200 x 600"."""
    first, second = members[0].size, members[1].size
    is_small = first.unit is None and first.amount.denominator == 1 and first.amount <= _MOST_OF_ONE
    return is_small and second.amount >= _LEAST_MM and second.unit in ("mm", None)


def _is_weak_pair(before: Measure, after: Measure) -> bool:
    """Whether two sizes with "on" between them are a pair: both with units, or "180 on 90 cm"."""
    if before.size.unit is None and after.size.unit is not None:
        return bool(after.size.amount / _LEAST_LIKE <= before.size.amount)
    return before.size.unit is not None and after.size.unit is not None


def _begins_with_label(sentence: Sentence, found: list[Measure]) -> bool:
    """Whether names of sizes stand before them: "Länge 2,40 m, Tiefe 62 cm"."""
    if not found:
        return False
    words = sentence.words[: found[0].at]
    return any(
        start + count >= len(words) - 3 and tag not in _NO_ROLES
        for start, count, tag in LABELS.all_in(words)
    )


def _mark_starts(sentence: Sentence, found: list[Measure]) -> None:
    """Take distances to where a hole begins for distances to its edge."""
    words = sentence.words
    begins = [
        i
        for i, word in enumerate(words)
        if word in _STARTS
        or (
            word in ("edge", "side")
            and words[i + 1 : i + 2] == ["of"]
            and (_HOLES & set(words[i + 2 : i + 5]) or words[i : i + 3] in _ITS_EDGE)
        )
        or _is_holes_edge(words, i)
    ]
    for measure in found:
        near = [i for i in begins if i < measure.at][-1:]
        before = words[max(0, measure.at - 3) : measure.at]
        if measure.side and {"edge", "rim", "kante"} & set(before) and {"is", "ist"} & set(before):
            measure.to_edge = True
        if measure.side and near and not _CENTRES & set(words[near[0] : measure.at]):
            measure.to_edge = True


def _is_holes_edge(words: list[str], i: int) -> bool:
    """Whether "its left edge" or "the left-hand edge" is a hole's, from which a distance runs."""
    if words[i] not in ("edge", "kante") or i == 0 or not words[i - 1]:
        return False
    led = SIDES.at(words, i - 1) or (SIDES.at(words, i - 2) if i > 1 and words[i - 2] else None)
    before = words[max(0, i - 4) : i]
    return led is not None and not {"from", "off", "of", "von", "to"} & set(before)


def _share_alternatives(sentence: Sentence, found: list[Measure]) -> None:
    """Give both of two readings their one role: "thickness either 30 or 40 mm"."""
    for before, after in pairwise(found):
        between = [atom.word for atom in sentence.atoms[before.at + 1 : after.at]]
        role = after.role or before.role
        is_or = between in _OR or (len(between) <= 4 and {"or", "oder"} & set(between))
        if is_or and before.of == 1 and role in _SHARED and after.role in ("", role):
            before.role = after.role = role
            if before.size.unit is None and after.size.unit is not None:
                before.unit_from_label = after.size.unit
