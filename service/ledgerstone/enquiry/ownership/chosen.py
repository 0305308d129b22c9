"""A size that a sentence settles on: "so let's say 1080", "but I'd rather 30", "call it 1860"."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.scene.focus import ParsedSentence
from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_CHOOSES: Final = word_set("rather say prefer call choose settle plenty lieber nehmen")
_I_SAY: Final = frozenset({("i", "say"), ("i'd", "say"), ("we", "say"), ("ich", "sage")})
_THEY_SAY: Final = word_set("says wants thinks reckons prefers sagt meint will möchte")
_SETTLES: Final = frozenset(
    {
        ("uns", "auf"),
        ("agreed", "on"),
        ("going", "with"),
        ("go", "with"),
        ("going", "for"),
        ("go", "for"),
        ("gone", "for"),
    }
    | {("settled", "on"), ("settle", "on"), ("let", "'s"), ("went", "for"), ("let's", "say")}
)
_CHOSEN: Final = frozenset({"thick", "long", "deep", "wide", "dia"})
_TWICE: Final = 2  # what is changed is no more than twice what it was: chosen, no source
_SO_FAR: Final = 5  # atoms
_GOES_FOR: Final = frozenset({("go", "for"), ("go", "with"), ("going", "for"), ("going", "with")})
_CALLS: Final = frozenset(
    {("call", "it"), ("call", "them"), ("say", "it"), ("sagen", "wir")}
    | {("make", "it"), ("make", "them")}
)
_OURS: Final = frozenset({"ours", "mine", "unsere"})
_US: Final = frozenset({"us", "ours", "me", "uns"})
_SO: Final = frozenset({"so", "hence", "therefore", "daher"})
_IT_IS: Final = frozenset({("it", "is"), ("it", "'s"), ("sind", "es")})
_ONLY_LENGTH: Final = 1000  # so many without a unit are a length: common practice, no source
_MIN_BARE: Final = 100  # a bare number of a length: common practice, no source


def as_chosen(parsed: ParsedSentence, measure: Measure, at: int) -> None:
    """Take the role of the size before where a sentence settles on this one instead."""
    words, sizes = parsed.sentence.words, parsed.sizes
    near = words[max(0, measure.at - 3) : measure.at] + words[measure.at + 1 : measure.at + 3]
    roles = [size.role for size in sizes[:at] if size.role in _CHOSEN and not size.side]
    if not roles and _is_ours(words, measure.at):
        roles = [one.role for one in parsed.told if one.at < measure.at and one.role in _CHOSEN]
    if not roles and parsed.before in _CHOSEN and chosen_now(words, measure):
        roles = [parsed.before]
    if not roles:
        return
    is_called = tuple(words[max(0, measure.at - 2) : measure.at]) in _CALLS
    is_called = is_called or _is_ours(words, measure.at)
    is_it = words[measure.at + 1 : measure.at + 3] == ["it", "is"]
    if not (is_called or is_it or _CHOOSES & set(near) or chosen_now(words, measure)):
        return
    before = [size for size in sizes[:at] if size.role == roles[-1] and not size.side]
    if not is_it and before and not _are_near(before[-1], measure):
        return  # "1150 long and as thin as you can, say 18"
    measure.role = roles[-1]
    if _are_at_odds(words, measure.at):
        return
    for size in sizes[:at]:  # "so 1800 long, call it 1860"
        is_same = is_it or size.role == measure.role
        size.replaced = size.replaced or (is_same and size.of == 1 and not size.side)


def _is_ours(words: list[str], at: int) -> bool:
    """Return whether a size is the writer's, after another's: "so 40 for us", "ours is 40"."""
    led = set(words[max(0, at - _SO_FAR) : at])
    is_so = bool(led & _SO) and bool(_US & set(words[at + 1 : at + 4]))
    return is_so or bool(led & _OURS)


def _are_near(one: Measure, other: Measure) -> bool:
    """Return whether two sizes of one unit may be one that is changed: none is twice the other."""
    units = {one.size.unit, other.size.unit} - {None}
    low, high = sorted((one.size.amount, other.size.amount))
    return len(units) > 1 or high <= _TWICE * low


def _are_at_odds(words: list[str], at: int) -> bool:
    """Return whether two people want two sizes: "my wife says 95 wide, I say 100"."""
    is_own = tuple(words[max(0, at - 2) : at]) in _I_SAY
    return is_own and bool(_THEY_SAY & set(words[:at]))


def settles_on(words: list[str], measure: Measure) -> bool:
    """Return whether a length is settled on: "so let's say 1080", "I'd go for 1505"."""
    is_long = measure.size.unit is not None or measure.size.amount >= _MIN_BARE
    led = words[max(0, measure.at - _SO_FAR) : measure.at]
    says = (led[-1:] == ["say"] or tuple(led[-2:]) in _CALLS) and bool(_SO & set(led))
    is_sure = measure.size.unit is not None or measure.size.amount >= _ONLY_LENGTH
    is_so = led[-1:] and led[-1] in _SO and is_sure
    is_so = is_so or (tuple(led[-2:]) in _IT_IS and bool(_SO & set(led[-3:])))
    return is_long and (bool(is_so) or says or tuple(led[-2:]) in _GOES_FOR)


def settled_after(sentence: Sentence, sizes: list[Measure]) -> list[Measure]:
    """Return the sizes on which a sentence about what was settles: "…, so it's 2200 now"."""
    starts = [one.at for one in sizes if settles_on(sentence.words, one)]
    return [one for one in sizes if starts and one.at >= starts[0]]


def chosen_now(words: list[str], measure: Measure) -> bool:
    """Return whether a sentence settles on a size: "I'm going with 60"."""
    return bool(_SETTLES & set(pairwise(words[max(0, measure.at - 3) : measure.at])))
