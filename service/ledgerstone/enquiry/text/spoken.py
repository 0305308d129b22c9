"""Numbers in words: ``six hundred and twenty``, ``eighteen fifty``, ``two point four``.

Every step looks at a bounded number of tokens ahead, so that reading is linear.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from fractions import Fraction
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.text.size_words import (
    ARTICLES,
    MAX_SPOKEN,
    PARTS,
    TIMES,
    UNITS,
)
from ledgerstone.enquiry.text.tokens import Token
from ledgerstone.enquiry.words.lexicon import NUMBERS
from ledgerstone.enquiry.words.word_sets import word_set

_POINTS: Final = frozenset({"point", "komma"})
_DECIMALS: Final = 3
_MOST_HUNDREDS: Final = 40  # nobody says "forty-five fifty" of a slab's millimetres
_COUNTED: Final = word_set("hole holes one ones off piece pieces slab slabs of loch löcher stück")
_COMPOUND: Final = re.compile(
    r"(?:(?P<thousands>[a-zäöüß]{2,8}?)?tausend)?(?:(?P<hundreds>[a-zäöüß]{3,17}?)?hundert)?"
    r"(?:und)?(?P<rest>[a-zäöüß]{0,18})\Z"
)
_NAMES: Final = MappingProxyType({1000: "tausend", 100: "hundert"})
_UNIT_AND_TENS: Final = re.compile(r"(?P<unit>[a-zäöüß]{3,6})und(?P<tens>[a-zäöüß]{6,8})\Z")


def spoken_at(tokens: Sequence[Token], i: int) -> tuple[Fraction, int] | None:
    """Read number words from a token on; give the number and the token after them."""
    total, j = Fraction(0), i
    while j < i + MAX_SPOKEN and _kind(tokens, j) == "word":
        added = _spoken_on(tokens, total, j, is_first=j == i)
        if added is None:
            break
        total, j = added, j + 1
        if _word(tokens, j) == "-" and _word(tokens, j + 1) in NUMBERS:
            j += 1
    if j == i:
        return None
    part = and_part(tokens, j) or _decimals(tokens, j)
    if part is not None:
        return total + part[0], part[1]
    if _word(tokens, i) == "half" and _word(tokens, j) in ("a", "an"):
        j += 1
    is_article = j == i + 1 and _word(tokens, i) in ARTICLES
    if is_article and (_word(tokens, j) not in UNITS or len(_word(tokens, j)) < 4):
        return None
    return total, j


def and_part(tokens: Sequence[Token], i: int) -> tuple[Fraction, int] | None:
    """Read a part after a whole: "and a half", "and three quarters", "und ein halb"."""
    if _word(tokens, i) not in ("and", "und"):
        return None
    if _word(tokens, i + 1) in PARTS:  # "an inch and half"
        return PARTS[_word(tokens, i + 1)], i + 2
    part = PARTS.get(_word(tokens, i + 2))
    count = NUMBERS.get(_word(tokens, i + 1))
    if part is None or count is None or count != int(count):
        return None
    return int(count) * part, i + 3


def without_line_ends(tokens: Sequence[Token]) -> Iterator[Token]:
    """Yield tokens without the line ends inside a number in words: "three", a line, "quarters"."""
    for i, token in enumerate(tokens):
        is_inside = token.kind == "line" and _goes_on(tokens, i + 1) and _is_number(tokens, i - 1)
        if not is_inside:
            yield token


def _is_number(tokens: Sequence[Token], i: int) -> bool:
    word = _word(tokens, i)
    return i >= 0 and (_value(word) is not None or word in TIMES)


def _goes_on(tokens: Sequence[Token], i: int) -> bool:
    word = _word(tokens, i)
    return word in PARTS or word in TIMES or (word in NUMBERS and word not in ARTICLES)


def _decimals(tokens: Sequence[Token], i: int) -> tuple[Fraction, int] | None:
    """Read "point four", "point two five", "Komma acht" after a whole."""
    j = i + 1
    digits = ""
    while _word(tokens, i) in _POINTS and len(digits) < _DECIMALS:
        value = _value(_word(tokens, j))
        if value is None or value.denominator != 1:
            break
        digits, j = digits + str(int(value)), j + 1
    return (Fraction(f"0.{digits}"), j) if digits else None


def _spoken_on(
    tokens: Sequence[Token], total: Fraction, j: int, *, is_first: bool
) -> Fraction | None:
    """Return a number with one more word of it; None if the word is not of it."""
    word = _word(tokens, j)
    if word in TIMES and not is_first:
        return total + total % 1000 * (TIMES[word] - 1)  # "one thousand two hundred"
    if word in ("and", "und") and total >= 100 and _word(tokens, j + 1) in NUMBERS:
        return total
    value = _value(word)
    if value is None:
        return None
    fits = not total % 10 and total >= 20 and value < (10 if total < 100 else 100)
    if is_first or fits:
        return total + value
    return 100 * total + value if _is_hundreds(tokens, total, value, j) else None


def _is_hundreds(tokens: Sequence[Token], total: Fraction, value: Fraction, j: int) -> bool:
    """Return whether a number before tens is of hundreds, as in "eighteen fifty"."""
    is_spoken = 0 < total < _MOST_HUNDREDS and total != 10 and total.denominator == 1
    is_spoken = is_spoken and 10 <= value < 100
    is_spoken = is_spoken and _word(tokens, j - 1) not in ARTICLES - {"one"}
    after = {_word(tokens, k) for k in range(j + 1, j + 5)}
    return is_spoken and not (total < 10 and _COUNTED & after)  # "two forty mm cable holes"


def _value(word: str) -> Fraction | None:
    """Return the number that one word is, a German compound too: "sechshundertzwanzig"."""
    if word in NUMBERS:
        return Fraction(NUMBERS[word])
    if len(word) < 7 or not (
        word.endswith(("zig", "ßig", "hundert", "tausend")) or "hundert" in word
    ):
        return None
    found = _COMPOUND.match(word)
    if found is None:
        return None
    counts = [(found["thousands"], 1000), (found["hundreds"], 100)]
    parts = [(_below_hundred(count or "ein"), n) for count, n in counts if _NAMES[n] in word]
    rest = _below_hundred(found["rest"])
    if rest is None or any(count is None for count, _ in parts):
        return None
    return sum((count * n for count, n in parts if count is not None), rest)


def _below_hundred(word: str) -> Fraction | None:
    """Return a German number below a hundred: "", "zwanzig", "zweiundsechzig"."""
    if not word or word in NUMBERS:
        return Fraction(NUMBERS[word]) if word else Fraction(0)
    found = _UNIT_AND_TENS.match(word)
    if found is None or not {found["unit"], found["tens"]} <= NUMBERS.keys():
        return None
    return Fraction(NUMBERS[found["unit"]] + NUMBERS[found["tens"]])


def _word(tokens: Sequence[Token], i: int) -> str:
    return tokens[i].word if 0 <= i < len(tokens) else ""


def _kind(tokens: Sequence[Token], i: int) -> str:
    return tokens[i].kind if 0 <= i < len(tokens) else ""
