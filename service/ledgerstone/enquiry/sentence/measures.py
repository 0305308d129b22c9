"""Each size of a sentence with the words that say what it measures."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.cues import FILLERS, read_after
from ledgerstone.enquiry.sentence.cues_before import read_before, read_lone, read_marks
from ledgerstone.enquiry.sentence.denials import mark_denials
from ledgerstone.enquiry.sentence.group_cues import (
    mark_breadths,
    read_spacings,
    read_units_after,
    read_units_before,
    share_sides,
)
from ledgerstone.enquiry.sentence.letters import CONNECTORS, SINGLE, name_group_before
from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import AXES, FROM, LABELS, ROLES, SIDES
from ledgerstone.enquiry.words.word_sets import word_set

__all__ = ["Measure", "measures_of"]

_WEAK_CONNECTORS: Final = frozenset({"auf", "on", "at", "for", "per"})
_STARTS: Final = word_set("starts start begins begin starting beginning beginnt")
_ITS_EDGE: Final = (["edge", "of", "it"], ["edge", "of", "that"])
_HOLES: Final = frozenset(["hole", "cut", "cutout", "opening", "sink", "hob"])
_CENTRES: Final = frozenset({"centre", "center", "middle"})
_OR: Final = (["or"], ["oder"], ["to"], ["bis"], ["-"], ["–"], ["/"])
_SHARED: Final = frozenset(["thick", "long", "deep", "wide", "high", "dia"])
_NO_ROLES: Final = frozenset({"size", "cutouts", "quantity", "piece"})
_MAX_OF_ONE: Final = 9
_PIECES: Final = word_set("off pieces pcs stück stk slabs")
_PARTS: Final = word_set("pcs pieces parts sections lengths halves teile teilen stücke stücken")
_MIN_MM: Final = 30  # what follows a number of pieces: common practice, no source
_MIN_LIKE: Final = 2
_EACH_SIDE: Final = frozenset({("each", "side"), ("a", "side"), ("each", "way"), ("all", "sides")})
_ALONG_EACH: Final = frozenset(
    ("along", word, side) for word in ("each", "both") for side in ("wall", "walls", "side")
)
_NEARER: Final = frozenset({"nearest", "near", "closest", "nearer", "its"})
_SQUARE: Final = frozenset({"square", "quadratisch", "quadratische"})
_MAX_BETWEEN: Final = 5
_THICK: Final = word_set("thick thickness thk dick dicke stark stärke")
_MIN_ACROSS: Final = 150  # no thickness is as much, in any unit: common practice, no source
_CHANGE_FAR: Final = 12
_CHANGES: Final = word_set(
    "up down gehen gehe goes go comes come changes change changed rises drops reduced increased"
    " grows raise lower increase reduce erhöht verringert geändert ändert steigt sinkt"
)
_TIMES: Final = frozenset({"x", "×", "*"})
_BY: Final = (["by"], ["x"], ["×"], ["mal"])


def measures_of(sentence: Sentence) -> list[Measure]:
    """Return the sizes of a sentence, each with what its neighbouring words say of it."""
    atoms = sentence.atoms
    found = [Measure(i, atom.size) for i, atom in enumerate(atoms) if atom.size is not None]
    _group(sentence, found)
    _note_counts(sentence, found)
    found = [one for one in found if not _follows_no_size(sentence, one)]
    used: set[int] = set()
    for measure in found:
        name_group_before(sentence, measure, used)
    label_first = _begins_with_label(sentence, found)
    for i, measure in enumerate(found):
        end = found[i + 1].at if i + 1 < len(found) else len(atoms)
        read_after(sentence, measure, end, used, skip_labels=label_first)
    for i, measure in enumerate(found):
        start = found[i - 1].at + 1 if i else 0
        if not measure.role and not measure.side:
            read_before(sentence, measure, start, used)
        read_marks(sentence, measure, start)
    for measure in found:
        is_led = measure.of > 1 and measure.place == 1 and measure.replaced
        for member in measure.members if is_led else ():
            member.replaced = True
        _read_square(sentence, measure)
    read_lone(sentence, found)
    _share_alternatives(sentence, found)
    _mark_starts(sentence, found)
    _mark_changes(sentence, found)
    mark_breadths(found)
    mark_denials(sentence, found)
    share_sides(sentence, found)
    read_spacings(sentence, found)
    read_units_after(sentence, found)
    read_units_before(sentence, found)
    return found


def _note_counts(sentence: Sentence, found: list[Measure]) -> None:
    """Take a few before "pieces" for how many there are: "a 3.6 m run in 2 pcs"."""
    for measure in found:
        size, after = measure.size, sentence.words[measure.at + 1 : measure.at + 2]
        is_few = size.unit is None and size.amount <= _MAX_OF_ONE and size.amount.denominator == 1
        if measure.of == 1 and is_few and after and after[0] in _PARTS:
            measure.role = measure.role or "quantity"


def _follows_no_size(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size's group begins with what is none, so that none of it is sure: "1e9 x 600"."""
    first = measure.members[0].at if measure.members else measure.at
    before = sentence.atoms[max(0, first - 2) : first]
    return [one.kind for one in before[:1]] == ["other"] and before[-1].word in _TIMES


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
        elif _is_times(sentence, members):
            members[-1].role = "quantity"
            del members[-1]
        if len(members) == 1:
            continue
        for place, measure in enumerate(members, start=1):
            measure.place, measure.of, measure.members = place, len(members), members


def _is_connected(sentence: Sentence, before: Measure, after: Measure) -> bool:
    words = [atom.word for atom in sentence.atoms[before.at + 1 : after.at]]
    if not words or len(words) > _MAX_BETWEEN:
        return False
    if words == ["/"] and _is_either(sentence, before, after):
        return False
    if words == ["/"]:
        joined = sentence.atoms[before.at].end + 1 == sentence.atoms[after.at].start
        following = sentence.words[after.at + 1 : after.at + 2]
        return joined or not (following and following[0] and FROM.at(following, 0))
    if words[0] == "," and words[1:2] in _BY:  # "so 2380, by 610"
        words = words[1:]
    connecting = [word for word in words if word in CONNECTORS]
    if not connecting:
        return False
    following = sentence.words[after.at + 1 : after.at + 2]
    is_place = bool(following and following[0]) and FROM.at(following, 0) is not None
    if connecting[0] in _WEAK_CONNECTORS and (is_place or not _is_weak_pair(before, after)):
        return False  # "a 40 mm hole at 0.3 m from the end"
    roles = {
        word
        for table in (ROLES, AXES)
        for start, count, _ in table.all_in(words)
        for word in words[start : start + count]
    }
    return set(words) <= CONNECTORS | FILLERS | SINGLE | roles


def _is_either(sentence: Sentence, before: Measure, after: Measure) -> bool:
    """Return whether a stroke parts two readings of a thickness: "thickness 40/30"."""
    near = {*sentence.words[max(0, before.at - 2) : before.at], *sentence.words[after.at + 1 :][:2]}
    return bool(near & _THICK) and max(before.size.amount, after.size.amount) < _MIN_ACROSS


def _counts(members: list[Measure]) -> bool:
    """Return whether the first of a group is how many: "1 x 35 mm", "2 x 1200 x 600"."""
    first, second = members[0].size, members[1].size
    is_whole = first.unit is None and first.grouped is None and first.amount.denominator == 1
    is_small = is_whole and first.amount <= _MAX_OF_ONE  # "3.000 x 650" counts nothing
    return is_small and second.amount >= _MIN_MM and second.unit in ("mm", None)


def _is_times(sentence: Sentence, members: list[Measure]) -> bool:
    """Return whether the last of a pair is how many: "40 mm x 3", "40 x 3 off"."""
    first, last = members[0].size, members[-1].size
    is_whole = last.unit is None and last.amount.denominator == 1 and not last.has_fraction
    is_few = len(members) == _MIN_LIKE and is_whole and 1 < last.amount <= _MAX_OF_ONE
    named = sentence.words[members[-1].at + 1 : members[-1].at + 2]
    return is_few and (first.unit in ("mm", "cm") or bool(named and named[0] in _PIECES))


def _is_weak_pair(before: Measure, after: Measure) -> bool:
    """Whether two sizes with "on" between them are a pair: both with units, or "180 on 90 cm"."""
    if before.size.unit is None and after.size.unit is not None:
        return bool(after.size.amount / _MIN_LIKE <= before.size.amount)
    return before.size.unit is not None and after.size.unit is not None


def _begins_with_label(sentence: Sentence, found: list[Measure]) -> bool:
    """Return whether names of sizes stand before them: "Länge 2,40 m, Tiefe 62 cm"."""
    if not found:
        return False
    words = sentence.words[: found[0].at]
    return any(
        start + count >= len(words) - 3 and tag not in _NO_ROLES
        for start, count, tag in LABELS.all_in(words)
    )


def _read_square(sentence: Sentence, measure: Measure) -> None:
    """Take "a square slab, 800 mm each side" for both of its sizes."""
    words = sentence.words
    is_each = tuple(words[measure.at + 1 : measure.at + 3]) in _EACH_SIDE
    is_each = is_each or tuple(words[measure.at + 1 : measure.at + 4]) in _ALONG_EACH
    if is_each and measure.of == 1 and _SQUARE & set(words[: measure.at]):
        measure.role, measure.side = "square", ""


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


def _mark_changes(sentence: Sentence, found: list[Measure]) -> None:
    """Take "the length goes up from 2600 to 2750" for the second size instead of the first.

    "The thickness comes down to 30" has only the new one.
    """
    words = sentence.words
    for i, measure in enumerate(found):
        words_before = words[max(0, measure.at - _CHANGE_FAR) : measure.at]
        if (
            words_before[-1:] not in (["to"], ["auf"])
            or measure.of > 1
            or not _CHANGES & set(words_before)
        ):
            continue
        named = [tag for _, _, tag in LABELS.all_in(words_before) if tag in _SHARED]
        before = found[i - 1] if i else None
        is_pair = before is not None and measure.at - before.at <= 2 and not before.side
        if named and (not measure.role or measure.role == "apart"):
            measure.role, measure.side = named[-1], ""
            if is_pair and before is not None:
                before.replaced, before.side = True, ""


def _is_holes_edge(words: list[str], i: int) -> bool:
    """Whether "its left edge" or "the left-hand edge" is a hole's, from which a distance runs."""
    if words[i] not in ("edge", "kante") or i == 0 or not words[i - 1]:
        return False
    if words[i - 1] in _NEARER and not {"from", "off", "to"} & set(words[max(0, i - 4) : i]):
        return True
    side_before = SIDES.at(words, i - 1) or (
        SIDES.at(words, i - 2) if i > 1 and words[i - 2] else None
    )
    before = words[max(0, i - 4) : i]
    return side_before is not None and not {"from", "off", "of", "von", "to"} & set(before)


def _is_converted(sentence: Sentence, before: Measure, after: Measure) -> bool:
    """Return whether a bracket says a size again in the other system: "2 inches (40 mm)"."""
    atoms = sentence.atoms
    between = [atom.word for atom in atoms[before.at + 1 : after.at]]
    closed = [atom.word for atom in atoms[after.at + 1 : after.at + 2]]
    units = [before.size.unit, after.size.unit]
    is_other = None not in units and ("in" in units) != ("ft" in units) and units[0] != units[1]
    is_bracket = between == ["("] and closed == [")"]
    return before.of == after.of == 1 and is_bracket and is_other


def _share_alternatives(sentence: Sentence, found: list[Measure]) -> None:
    """Give both of two readings their one role: "thickness either 30 or 40 mm"."""
    for before, after in pairwise(found):
        between = [atom.word for atom in sentence.atoms[before.at + 1 : after.at]]
        role = after.role or before.role
        is_or = between in _OR or (len(between) <= 4 and {"or", "oder"} & set(between))
        word_before = sentence.words[max(0, before.at - 1) : before.at]
        is_or = is_or or (
            word_before in (["between"], ["zwischen"]) and between in (["and"], ["und"])
        )
        if _is_converted(sentence, before, after) and (before.role or after.role) in _SHARED:
            before.role = before.role or after.role
            after.role = after.role or before.role
        if is_or and before.of == 1 and role in _SHARED and after.role in ("", role):
            before.role = after.role = role
            if before.size.unit is None and after.size.unit is not None:
                before.unit_from_label = after.size.unit
