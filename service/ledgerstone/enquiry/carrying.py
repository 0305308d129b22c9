"""What a size takes from the words and sizes before it: its role, and whether it is a subject's."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry import scope
from ledgerstone.enquiry.focus import Heard, Target
from ledgerstone.enquiry.measure import Measure
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.word_sets import word_set

_CHOOSES: Final = word_set("rather say prefer call choose settle plenty lieber nehmen")


_SETTLES: Final = frozenset(
    {("going", "with"), ("go", "with"), ("going", "for"), ("go", "for"), ("gone", "for")}
    | {("settled", "on"), ("settle", "on"), ("let", "'s"), ("went", "for"), ("let's", "say")}
)
_LEAVES: Final = frozenset({"leaves", "leaving", "bleiben", "leave"})
_LEAST_BARE: Final = 100  # a bare number of a length: common practice, no source
_ARTICLES: Final = frozenset({"a", "an", "the", "eine", "einen"})
_CHOSEN: Final = frozenset({"thick", "long", "deep", "wide", "dia"})


_IS_ONLY: Final = word_set(
    "is ought only just be will should to must needs would about exactly : = same but identical ist"
    " nur soll"
    " sollte wird genau aber gleich a at of the"
)


_REACHES: Final = word_set("out comes projects extends sticks reaches")


def reaches_out(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is how far a slab stands out from the wall: "it comes out 600 from it"."""
    return bool(_REACHES & set(sentence.words[max(0, measure.at - 4) : measure.at]))


def carry_on(heard: Heard, measure: Measure, active: Mention | None) -> None:
    """Let a bare size be what the size before it was: "…, the shelf 20", "but I'd rather 30"."""
    sizes, at = heard.sizes, heard.sizes.index(measure)
    bare = measure.of == 1 and not measure.role and not measure.side and not measure.axis
    before = sizes[at - 1] if at else None
    named = active is not None and active.kind == "slab" and active.end == measure.at
    if bare and named and before is not None and before.role == "thick":
        measure.role = "thick"
    words = heard.sentence.words
    of_all = measure.at and words[measure.at - 1] in ("both", "all", "each", "alle", "beide")
    if bare and of_all and measure.size.unit in ("mm", "cm", "in") and not roles_said(heard, at):
        measure.role = "thick"
    near = words[max(0, measure.at - 3) : measure.at] + words[measure.at + 1 : measure.at + 3]
    roles = [one.role for one in sizes[:at] if one.role in _CHOSEN and not one.side]
    roles = roles or [
        role for role in (heard.before,) if role in _CHOSEN and chosen_now(words, measure)
    ]
    if bare and roles and (_CHOOSES & set(near) or chosen_now(words, measure)):
        measure.role = roles[-1]
    if bare and words[measure.at + 1 : measure.at + 3] == ["it", "is"] and roles:
        measure.role = roles[-1]
        for one in sizes[:at]:
            one.replaced = one.replaced or (one.of == 1 and not one.side)
    if active is not None and active.kind == "slab" and active.end <= measure.at:
        between = heard.sentence.atoms[active.end : measure.at]
        is_size = measure.size.unit is not None or measure.size.amount >= _LEAST_BARE
        led = all(atom.word in _IS_ONLY for atom in between)
        measure.is_subject = led and is_size and bool(between)  # "Worktop 1" is its number
    if bare and _LEAVES & set(words[max(0, measure.at - 2) : measure.at]):
        measure.is_subject = True  # "that leaves 2200 for the top"


def roles_said(heard: Heard, at: int) -> set[str]:
    """Give the roles of a sentence's single sizes before one of them."""
    return {one.role for one in heard.sizes[:at] if one.of == 1 and one.role}


def chosen_now(words: list[str], measure: Measure) -> bool:
    """Whether a sentence settles on a size: "I'm going with 60"."""
    return bool(_SETTLES & set(pairwise(words[max(0, measure.at - 3) : measure.at])))


def comes_first(heard: Heard, mention: Mention, measure: Measure) -> bool:
    """Whether a name is read before a size: it stands before, or is what the size is said of.

    In "a 40 thick worktop, 1800 x 600" the worktop is named when its thickness is taken.
    """
    if mention.start <= measure.at:
        return True
    if mention.kind != "slab" or mention.preposition or measure.of > 1:
        return False
    words = heard.sentence.words
    led = measure.size.unit is not None or words[max(0, measure.at - 1)] in _ARTICLES
    if not measure.role and led and mention.start == measure.at + 1:
        measure.is_attribute = True
        return True
    named = measure.role == "thick" and measure.cue is not None
    return named and measure.cue is not None and mention.start == measure.cue[1] > measure.at


def is_left(sentence: Sentence, active: Mention, measure: Measure) -> bool:
    """Whether a sentence has turned from a thing that is none of ours to what is wanted."""
    is_ours = active.kind not in ("thing", "room") and not active.is_old
    return not is_ours and scope.is_renewed(sentence, active.end, measure.at)


def note_hole(
    measure: Measure, active: Mention | None, target: Target, waiting: Sequence[Mention]
) -> None:
    """Note whether a size is said of the hole itself; the hole may be named after it."""
    if active is not None and active.kind in ("open", "hole"):
        measure.on_hole = active.names_hole
    elif isinstance(target, tuple):
        later = any(one.kind == "hole" or one.names_hole for one in waiting)
        measure.on_hole = not later and all(one.names_hole for one in target)


def without_counts(found: list[Mention], sizes: list[Measure]) -> list[Measure]:
    """Leave out bare small numbers that count something: "2 round table tops"."""
    counts = {(mention.count, mention.start) for mention in found if mention.count}
    kept = []
    for one in sizes:
        counting = any(
            one.size.unit is None and one.size.amount == count and 0 < start - one.at <= 4
            for count, start in counts
        )
        if not counting or one.of > 1 or one.role not in ("", "across") or one.side:
            kept.append(one)
    return kept
