"""Sums in a sentence: "2400, less 20 for the tiles, so 2380" tells one size and not three."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.text.sizes import Size
from ledgerstone.enquiry.words.word_sets import word_set

_TAKEN_OFF: Final = word_set("less minus - – − abzüglich weniger")
_ADDED: Final = word_set("plus + add zuzüglich allow allowing overhang überstand")
_WORKED_OUT: Final = word_set(
    "so hence makes making make gives giving leaves leaving = also macht ergibt bleiben therefore"
    " i.e d.h"
)
_IN_ALL: Final = frozenset(
    {("in", "all"), ("in", "total"), ("all", "in"), ("all", "told"), ("im", "ganzen")}
)
_OWN: Final = frozenset({"deep", "thick", "high"})
_DIFFERENCE: Final = "apart"
_LISTS: Final = word_set(", and und + & plus wide mm cm breit ;")
_TOTALS: Final = word_set("so total overall altogether makes making = all insgesamt gesamt also")
_UNITS: Final = word_set(
    "cupboard cupboards unit units cabinet cabinets carcass carcasses schränke schränken"
    " unterschränke unterschränken"
)
_OVERHANG: Final = word_set("overhang overhangs overhanging überstand past beyond")
_PAIR: Final = 2
_EQUALS: Final = word_set("is = makes equals gives ist ergibt macht")
_FEWEST: Final = 2
_TWICE: Final = word_set("each either both beiden jeder")


def without_workings(sentence: Sentence, sizes: list[Measure]) -> list[Measure]:
    """Leave out what a size is worked out from: "2400, less 20 for the tiles, so 2380"."""
    left = _without_areas(sentence, _without_parts(sentence, sizes))
    for whole, part, result in zip(sizes, sizes[1:], sizes[2:], strict=False):
        sign = _sign(sentence, whole, part)
        follows = {atom.word for atom in sentence.atoms[part.at + 1 : result.at]} & _WORKED_OUT
        units = {one.size.unit for one in (whole, part, result)}
        after = sentence.words[result.at + 1 : result.at + 1 + _PAIR]
        concludes = bool(follows or {*after[:1]} & _TOTALS) or tuple(after) in _IN_ALL
        if not sign or not concludes or len(units - {None}) > 1:
            continue
        change = sign * part.size.amount * (1 + _is_twice(sentence, part, result))
        if whole.size.amount + change == result.size.amount:
            if whole.role != _DIFFERENCE:  # as "less" after it has it
                result.role = result.role or whole.role
            left = [one for one in left if one is not whole and one is not part]
    return left


def _without_areas(sentence: Sentence, sizes: list[Measure]) -> list[Measure]:
    """Leave out two sizes that are multiplied: "2.1 m x 0.54 m is 1.134"."""
    for group in [size for size in sizes if size.of == _PAIR and size.place == 1]:
        one, other = group.members
        ahead = sentence.atoms[other.at + 1 : other.at + 3]
        is_product = len(ahead) == _PAIR and ahead[0].word in _EQUALS and ahead[1].size is not None
        area = ahead[1].size.amount if is_product and ahead[1].size is not None else Fraction(0)
        product = one.size.amount * other.size.amount
        if is_product and abs(product - area) <= product / 100:
            return [two for two in sizes if two.at not in (one.at, other.at, other.at + 2)]
    return sizes


def _without_parts(sentence: Sentence, sizes: list[Measure]) -> list[Measure]:
    """Leave out what a length is the sum of: "units of 600, 800 and 400, so 1800 overall".

    Cupboards that are added with a plus are their sum: "cupboards 600 + 800 + 500".
    """
    row: list[Measure] = []
    for measure in sizes:
        if _continues(sentence, row, measure):
            row.append(measure)
            continue
        if len(row) > 1 and _is_sum(sentence, row, measure):
            told = row[0].role if row[0].role in _OWN else "long"
            measure.role = measure.role if measure.role not in ("", "apart", "wide") else told
            return [size for size in sizes if not any(size is two for two in row)]
        if _is_added(sentence, row):
            break
        row = [measure] if measure.of == 1 and not measure.side else []
    if not _is_added(sentence, row):
        return list(sizes)
    first, last = row[0].size, row[-1].size
    amount = sum((one.size.amount for one in row), start=Fraction(0))
    whole = Size(first.start, last.end, amount, last.unit or first.unit)
    total = Measure(row[0].at, whole, role="long", is_sum=True)
    left = [size for size in sizes if not any(size is two for two in row[1:])]
    return [total if one is row[0] else one for one in left]


def _continues(sentence: Sentence, row: list[Measure], measure: Measure) -> bool:
    """Return whether a size goes on a list of bare ones of one unit."""
    if not row or measure.of > 1 or measure.side or measure.role not in ("", "wide", "apart"):
        return False
    between = {atom.word for atom in sentence.atoms[row[-1].at + 1 : measure.at]}
    is_list = bool(between) and between <= _LISTS
    return is_list and row[-1].size.unit in (None, measure.size.unit)


def _is_sum(sentence: Sentence, row: list[Measure], measure: Measure) -> bool:
    """Return whether a size is what those of a list make, as its words say."""
    near = sentence.words[row[-1].at + 1 : measure.at + 4]
    total = sum(one.size.amount for one in row)
    same = measure.size.unit in (None, row[-1].size.unit) or row[-1].size.unit is None
    return same and total == measure.size.amount and bool(_TOTALS & set(near))


def _is_added(sentence: Sentence, row: list[Measure]) -> bool:
    """Whether all of a list are widths of cupboards with a plus between, and none hangs over."""
    if len(row) < _FEWEST or not _UNITS & set(sentence.words) or _OVERHANG & set(sentence.words):
        return False
    return all(
        [atom.word for atom in sentence.atoms[one.at + 1 : two.at]] == ["+"]
        for one, two in pairwise(row)
    )


def _sign(sentence: Sentence, whole: Measure, part: Measure) -> int:
    """Give whether a size is taken off the one before it, or added to it, as its words say."""
    between = {atom.word for atom in sentence.atoms[whole.at + 1 : part.at]}
    if between & _TAKEN_OFF:
        return -1
    return int(bool(between & _ADDED))


def _is_twice(sentence: Sentence, part: Measure, result: Measure) -> bool:
    """Return whether a size counts at both ends: "less 5 each side"."""
    return bool(_TWICE & set(sentence.words[part.at + 1 : result.at]))
