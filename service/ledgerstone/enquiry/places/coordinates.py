"""Two openings placed in one sentence: so far from the left, so far from the right."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final

from ledgerstone.enquiry.scene.focus import ParsedSentence, Target
from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.noun_phrases import VERBS
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_OTHER_SIDE: Final = {"left": "right", "right": "left"}
_COMES: Final = word_set(
    "be is are goes go need needs want wants comes come kommt kommen soll sollen there ist brauche"
)
_OF_ANOTHER: Final = frozenset({"centre", "center", "middle", "its", "it", "mitte", "and", "with"})
_DEFINITE: Final = frozenset({"the", "this", "that", "der", "die", "das"})
_PAIR: Final = 2
_MOST_OF_ROW: Final = 8
_LISTS: Final = frozenset({"and", "und", ",", "&", "bzw", "beziehungsweise", ".", "resp"})
_BOTH: Final = frozenset({"both", "each", "all", "beide", "jeweils", "je"})
_ONE_AND_OTHER: Final = (["eine"], ["andere"])
_MEMBERS: Final = word_set("one linke rechte erste zweite hole basin")
_ORDINALS: Final = word_set("first second other")


def pair_member(openings: Sequence[SaidOpening], sentence: Sentence, at: int) -> SaidOpening | None:
    """Return the left or the right one of several openings in hand: "the left one"."""
    if len(openings) < 2:
        return None
    start = at
    while (
        start > 0
        and at - start < 12
        and sentence.atoms[start - 1].word not in {",", ";", "and", "und"}
    ):
        start -= 1
    first = start
    while start < at and sentence.words[start] in _DEFINITE:
        start += 1
    near = sentence.words[start:at]
    if start > first and near[:1] in _ONE_AND_OTHER:  # "die eine 430 von links, die andere"
        return openings[-_ONE_AND_OTHER.index(near[:1])]
    if not _MEMBERS & set(near[:4]) and not _ORDINALS & set(near[:1]):
        return None
    near = near[:4]
    for word, place in (
        ("left", 0),
        ("linke", 0),
        ("first", 0),
        ("erste", 0),
        ("right", -1),
        ("rechte", -1),
        ("second", -1),
        ("other", -1),
        ("zweite", -1),
    ):
        if word in near:
            return openings[place]
    return None


def whole_row(piece: SaidPiece, openings: Sequence[SaidOpening]) -> Sequence[SaidOpening]:
    """Return both of a pair where one of them is current."""
    if len(openings) != 1:
        return openings
    alike = [opening for opening in piece.openings if opening.what == openings[0].what]
    return alike if len(alike) == 2 else openings


def member_at(
    openings: tuple[SaidOpening, ...], measure: Measure, sizes: Sequence[Measure]
) -> tuple[SaidOpening, ...]:
    """Return the one of a pair that a distance is of: the left one's from the left end.

    Two distances from opposite ends in one sentence are one each, in the order of the openings.
    """
    if len(openings) != 2 or measure.side not in _OTHER_SIDE:
        return openings
    if not any(size.side == _OTHER_SIDE[measure.side] for size in sizes):
        return openings
    return openings[:1] if measure.side == "left" else openings[1:]


def rows_of(sentence: Sentence, sizes: Sequence[Measure]) -> dict[int, list[Measure]]:
    """Return distances that are listed from one side, by the atom that the first of them is.

    "centres 18 and 54 from the left"
    """
    rows: dict[int, list[Measure]] = {}
    row: list[Measure] = []
    for measure in sizes:
        row = [*row, measure] if row and _joins(sentence, row[-1], measure) else [measure]
        if len(row) >= _PAIR and measure.side in _OTHER_SIDE:
            rows |= {row[k].at: row[k:] for k in range(min(len(row) - 1, _MOST_OF_ROW))}
    return rows


def same_member(parsed: ParsedSentence, measure: Measure, targets: Mapping[int, Target]) -> Target:
    """Return the one of several whose other distance stands before: "500 from left and 150 up"."""
    before = [size for size in parsed.sizes if size.at < measure.at][-1:]
    if (
        not before
        or not before[0].side
        or (before[0].side in _OTHER_SIDE) == (measure.side in _OTHER_SIDE)
    ):
        return None
    target = targets.get(before[0].at)
    between = {atom.word for atom in parsed.sentence.atoms[before[0].at + 1 : measure.at]}
    is_one = isinstance(target, tuple) and len(target) == 1
    return (
        target
        if is_one and not between & _BOTH and not is_of_both(parsed.sentence, measure)
        else None
    )


def take_row(row: Sequence[Measure], openings: Sequence[SaidOpening]) -> None:
    """Give each of several current openings its distance of a row."""
    if len(row) == len(openings):
        for place, one in enumerate(row):
            one.side, one.member, one.role, one.axis = row[-1].side, place, "", ""


def _joins(sentence: Sentence, before: Measure, after: Measure) -> bool:
    """Return whether a size without words of its own is listed with the next."""
    between = {atom.word for atom in sentence.atoms[before.at + 1 : after.at]}
    bare = before.of == 1 and not before.side and before.role in ("", "apart")
    return bare and bool(between) and between <= _LISTS


def is_of_both(sentence: Sentence, measure: Measure) -> bool:
    """Return whether "both" stands right before a distance or ends it: "100 from the back both"."""
    end = measure.cue[1] if measure.cue is not None else measure.at + 1
    after = sentence.words[end : end + 2]
    after = after if after[:1] != [""] else []  # ", both" begins what comes next
    near = (*sentence.words[max(0, measure.at - 2) : measure.at], *after)
    return bool(_BOTH & set(near))


def read_coordinates(sentence: Sentence, sizes: Sequence[Measure]) -> None:
    """Take "at 600 / 440" for a place told like the one before: from the same two sides.

    Without one before it is nobody's: neither a size nor a place.
    """
    told = [size.side for size in sizes if size.side][:2]
    for measure in sizes:
        word_before = sentence.words[max(0, measure.at - 1) : measure.at]
        if measure.of != 2 or word_before not in (["at"], ["bei"]):
            continue
        between = {atom.word for atom in sentence.atoms[measure.at : measure.members[1].at]}
        if "/" not in between:
            continue
        for member, side in zip(measure.members, told or ("", ""), strict=False):
            member.side, member.role, member.of, member.place = side, "" if side else "beside", 1, 0
            member.members = []


def _leads_with_place(
    sentence: Sentence, found: Sequence[Mention], sizes: Sequence[Measure]
) -> bool:
    """Whether a place is told first, and then what is there: "50 from the left there is a hole"."""
    first = found[0] if found else None
    if first is None or first.kind not in ("open", "hole") or not sizes:
        return False
    place, words = sizes[0], sentence.words
    is_new = bool(_COMES & set(words[place.at : first.start]))
    return bool(place.side) and is_new and not _OF_ANOTHER & set(words[: place.at])


def led_by_place(
    sentence: Sentence, found: Sequence[Mention], sizes: Sequence[Measure]
) -> Mention | None:
    """Give the opening whose place comes before its name: "Behind it, 65 from the back, a tap"."""
    is_led = any(i <= 1 for i, _ in sentence.marks("behind"))
    is_led = is_led or _leads_with_place(sentence, found, sizes)
    new = [
        one
        for one in found
        if one.kind in ("open", "hole") and not one.preposition and one.determiner not in _DEFINITE
    ]
    return new[0] if is_led and len(new) == 1 and not new[0].is_denied else None


def goes_on_placing(
    parsed: ParsedSentence, measure: Measure, active: Mention | None, targets: Mapping[int, Target]
) -> bool:
    """Whether a thing stands only aside of a place: "560 in, so I see the lane, and 300 back"."""
    before = [size for size in parsed.sizes if size.at < measure.at and size.side][-1:]
    if not before or active is None or active.start < before[0].at:
        return False
    is_other_way = (before[0].side in _OTHER_SIDE) != (measure.side in _OTHER_SIDE)
    is_verb = bool(VERBS & set(parsed.sentence.words[active.end : measure.at]))
    return is_other_way and isinstance(targets.get(before[0].at), tuple) and not is_verb
