"""Sizes as people write them in running text: amounts, units, feet and inches, spoken metres.

The grammar, over tokens; a bare amount has no unit yet::

    size    = amount [unit [rest]]
    amount  = number [fraction] | fraction | number-words
    rest    = inches after feet | hundredths after metres | "and a half"

Every step looks at a bounded number of tokens ahead, so that reading is linear.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from ledgerstone.enquiry.text.size_words import (
    AFTER_INCH,
    ARTICLES,
    LONGEST_DIGITS,
    MAX_QUOTED,
    NOUN_OF_SIZE,
    QUOTES,
    THICK,
    UNDER,
    UNITS,
    VULGAR,
    number,
)
from ledgerstone.enquiry.text.spoken import and_part, spoken_at
from ledgerstone.enquiry.text.tokens import Token
from ledgerstone.enquiry.words.lexicon import is_hole
from ledgerstone.quantities import UnitName

_BEGINS: Final = frozenset(
    {"in", "with", "that", "which", "please", "at", "to", "is", "has", "but"}
)
# Cabinets, named right after their width: "a 36 in. sink cabinet".
_CABINETS: Final = frozenset({"cabinet", "cupboard", "vanity", "bathroom", "base"})
_WIDEST_OPENING: Final = 48  # inches, before its name: common practice, no source
_THICKNESS: Final = frozenset({"thickness", "dicke", "stärke"})
_PAIR: Final = 2
_NAME: Final = 3  # words of it that are looked at
_SORTS: Final = frozenset({"undermount", "inset", "oval", "rectangular", "single", "double"})
_AFTER_ONE: Final = frozenset(
    {"deep", "wide", "long", "by", "across", "x", "front"}
)  # "two foot one deep"


@dataclass(frozen=True, slots=True)
class Size:
    """An amount as written, with its unit where one is.

    ``grouped`` is the amount read with its mark as a thousands separator, where it may be one.
    """

    start: int
    end: int
    amount: Fraction
    unit: UnitName | None
    grouped: Fraction | None = None
    has_fraction: bool = False


class SizeReader:
    """Reads sizes from one stretch of tokens."""

    def __init__(self, tokens: Sequence[Token], *, has_inches: bool) -> None:
        self.tokens = tokens
        self.has_inches = has_inches

    def at(self, i: int) -> tuple[Size, int] | None:
        """Read a size that begins at a token; give it and the token after it."""
        found = self._amount(i) or self._unit_first(i)
        if found is None:
            return None
        amount, grouped, has_fraction, j, spoken = found
        unit, k = self._unit(j, amount, has_fraction=has_fraction)
        if unit is None and spoken and amount < 20 and j > i and not self._is_told_size(i):
            return None
        if unit is not None:
            amount, grouped, j = self._rest(amount, grouped, unit, k)
        size = Size(
            self.tokens[i].start, self.tokens[j - 1].end, amount, unit, grouped, has_fraction
        )
        return size, j

    def _is_told_size(self, i: int) -> bool:
        """Return whether what stands before makes a small number a size: "six feet by three"."""
        if i < _PAIR or self._word(i) in ARTICLES:
            return False
        is_feet = UNITS.get(self._word(i - 2)) == "ft" and self._word(i - 1) in ("by", "x", "×")
        return is_feet or self._word(i - 1) in _THICKNESS

    def _unit_first(self, i: int) -> tuple[Fraction, None, bool, int, bool] | None:
        """Read "inch and a half", the one left out."""
        is_first = (
            self._word(i) in ("inch", "foot", "metre") and and_part(self.tokens, i + 1) is not None
        )
        return (Fraction(1), None, False, i, True) if is_first else None

    def _word(self, i: int) -> str:
        return self.tokens[i].word if i < len(self.tokens) else ""

    def _kind(self, i: int) -> str:
        return self.tokens[i].kind if i < len(self.tokens) else ""

    def _joined(self, i: int) -> bool:
        """Return whether a token follows the one before it with nothing between."""
        return 0 < i < len(self.tokens) and self.tokens[i].start == self.tokens[i - 1].end

    # --- amounts ----------------------------------------------------------------------------

    def _amount(self, i: int) -> tuple[Fraction, Fraction | None, bool, int, bool] | None:
        kind = self._kind(i)
        if kind == "vulgar":
            return VULGAR[self._word(i)], None, True, i + 1, False
        if kind == "word":
            spoken = spoken_at(self.tokens, i)
            return None if spoken is None else (spoken[0], None, False, spoken[1], True)
        if kind != "number" or len(self._word(i)) > LONGEST_DIGITS + 3:
            return None
        alone = self._over_under(i)
        if alone is not None:
            return alone, None, True, i + 3, False
        amount, grouped = number(self._word(i))
        extra, j = and_part(self.tokens, i + 1) or self._fraction(i + 1)
        return amount + extra, (None if extra else grouped), bool(extra), j, False

    def _over_under(self, i: int) -> Fraction | None:
        """Read ``3/4``, its three tokens joined."""
        over, under = self._word(i), self._word(i + 2)
        if self._word(i + 1) != "/" or self._kind(i + 2) != "number" or under not in UNDER:
            return None
        if not over.isdigit() or int(over) >= int(under) or not self._joined(i + 1):
            return None
        return Fraction(int(over), int(under))

    def _fraction(self, i: int) -> tuple[Fraction, int]:
        """Read the fraction after a whole number, past a blank, a hyphen or a line's end."""
        if self._kind(i) == "vulgar":
            return VULGAR[self._word(i)], i + 1
        if self._word(i) == "and":  # "10 and a 1/2"
            k = i + 2 if self._word(i + 1) in ("a", "an") else i + 1
            over = self._over_under(k) if self._kind(k) == "number" else None
            if over is not None or self._kind(k) == "vulgar":
                return (over, k + 3) if over is not None else (VULGAR[self._word(k)], k + 1)
        j = i + 1 if self._word(i) in {"-", "–"} or self._kind(i) == "line" else i
        if self._kind(j) == "vulgar":
            return VULGAR[self._word(j)], j + 1
        if self._kind(j) == "number":
            found = self._over_under(j)
            if found is not None:
                return found, j + 3
        return Fraction(0), i

    # --- units ------------------------------------------------------------------------------

    def _unit(self, i: int, amount: Fraction, *, has_fraction: bool) -> tuple[UnitName | None, int]:
        j = i + 1 if self._word(i) == "-" and self._word(i + 1) in UNITS else i
        if self._kind(j) == "line" and self._word(j + 1) in UNITS and self._kind(j + 1) == "word":
            j += 1
        word = self._word(j)
        unit = UNITS.get(word)
        if unit is None or (word == "er" and not self._joined(j)):
            return None, i
        if word in {'"', "'", "’", "”", "″", "′"}:
            if not self._joined(j) or self._closes_quote(j):
                return None, i
            if word in "'’" and self._word(j + 1) in "'’" and self._joined(j + 1):
                return "in", j + 2
        if word == "in" and not self._is_inch(j, amount, has_fraction=has_fraction):
            return None, i
        return unit, j + 2 if self._is_abbreviated(j) else j + 1

    def _is_abbreviated(self, j: int) -> bool:
        """Return whether a full stop only ends a unit: "21 1/2 in. deep"."""
        if self._word(j) not in ("in", "ft", "cm", "mm") or self._word(j + 1) != ".":
            return False
        following = self._word(j + 2) in AFTER_INCH or self._kind(j + 2) in ("mark", "number")
        named = self._word(j + 3) if self._word(j + 2) == "sink" else self._word(j + 2)
        following = following or named in _CABINETS
        is_metric = self._word(j) in ("cm", "mm")  # "it is 500 mm. Length stays 900 mm"
        if is_metric and self._word(j + 2) in _BEGINS:
            return False  # "… x 30 mm. In the worktop there is a sink"
        asks = self._word(j + 2) in NOUN_OF_SIZE and (is_metric or self._word(j + 3) in ("?", ":"))
        return self._joined(j + 1) and following and not asks  # "450 mm. Thickness? 40"

    def _closes_quote(self, j: int) -> bool:
        """Whether a mark after a number ends words in quotation marks: "cut-out 510 x 350"."""
        if self._word(j) not in QUOTES:
            return False
        is_open = False
        for k in range(max(0, j - MAX_QUOTED), j):
            if self._word(k) in QUOTES:
                after_number = self._joined(k) and self._kind(k - 1) in ("number", "vulgar")
                is_open = not is_open and not after_number
        return is_open

    def _is_inch(self, i: int, amount: Fraction, *, has_fraction: bool) -> bool:
        """Tell ``12 in`` from ``12 in from the right``, by what follows and what is usual here."""
        i += self._kind(i + 1) == "line"
        following = self._word(i + 1)
        if self._kind(i + 1) == "word" and following not in AFTER_INCH:
            first = i + 1 + (following in _SORTS)
            name = tuple(self._word(first + k) for k in range(_NAME))
            is_before_opening = amount <= _WIDEST_OPENING and is_hole(name)
            return has_fraction or (self.has_inches and is_before_opening)
        if following == "front" and self._word(i + 2) != "to":
            return has_fraction
        if following in NOUN_OF_SIZE:  # "380 in diameter"
            return has_fraction or (self.has_inches and amount <= 150)
        if following in ("from", "off"):
            return has_fraction or (self.has_inches and amount <= 150)
        return self.has_inches or has_fraction or amount <= 150

    def _rest(
        self, amount: Fraction, grouped: Fraction | None, unit: UnitName, i: int
    ) -> tuple[Fraction, Fraction | None, int]:
        """Read what belongs to the unit: inches, hundredths of a metre, a half."""
        part = and_part(self.tokens, i)
        if part is not None:
            return amount + part[0], None, part[1]
        if self._word(i) in ("and", "und") and unit in ("m", "ft") and self._is_whole(i, amount):
            smaller = self._smaller(amount, unit, i + 1)
            if smaller is not None:
                return smaller
        if unit == "ft":
            return self._inches(amount, i)
        if unit == "m" and amount.denominator == 1 and amount < 20:
            return self._hundredths(amount, i)
        return amount, grouped, i

    def _is_whole(self, i: int, amount: Fraction) -> bool:
        """Return whether a number two tokens before has no decimals: "1.00 m and 40" is no 1.4."""
        return amount.denominator == 1 and not {".", ","} & set(self._word(i - 2))

    def _smaller(
        self, amount: Fraction, unit: UnitName, i: int
    ) -> tuple[Fraction, None, int] | None:
        """Read "two metres and thirty five centimetres", "six feet and two inches"."""
        found = self._amount(i)
        if found is None or found[0].denominator != 1:
            return None
        part, after = self._unit(found[3], found[0], has_fraction=False)
        per = {("m", "cm"): 100, ("m", "mm"): 1000, ("ft", "in"): 12}.get((unit, part or unit))
        more, after = and_part(self.tokens, after) or (Fraction(0), after)
        if per is None or not 0 < found[0] < per or self._word(after) in THICK:
            return None  # "1 m and 40 mm thick", "2 foot and an inch and a half thick" are two
        return amount + (found[0] + more) / per, None, after

    def _inches(self, feet: Fraction, i: int) -> tuple[Fraction, Fraction | None, int]:
        j = i + 1 if self._word(i) == "-" and self._kind(i + 1) in ("number", "vulgar") else i
        if self._word(j) == "one" and self._word(j + 1) in _AFTER_ONE:
            return feet + Fraction(1, 12), None, j + 1
        found = self._amount(j) if self._kind(j) in ("number", "vulgar", "word") else None
        if found is None or found[0] >= 12:
            return feet, None, i
        inches, _, has_fraction, k, spoken = found
        unit, after = self._unit(k, inches, has_fraction=has_fraction)
        if unit == "in":
            return feet + inches / 12, None, after
        bare_end = self._word(k) not in {"x", "×", "/", "-"} and self._kind(k) != "number"
        bare_end = bare_end and (self._word(k) != "by" or spoken)  # "one foot nine by two inches"
        bare_end = bare_end or UNITS.get(self._word(k + 2)) in ("ft", "in")  # "7 ft 3 x 2 ft 1"
        is_told = (not spoken or inches >= 1) and self._word(j) not in ("a", "an", "one")
        if unit is None and bare_end and j == i and is_told:
            return feet + inches / 12, None, k
        return feet, None, i

    def _hundredths(self, metres: Fraction, i: int) -> tuple[Fraction, Fraction | None, int]:
        found = self._amount(i) if self._kind(i) in ("number", "word") else None
        is_two = self._kind(i) == "number" and self._word(i)[:1] == "0" and len(self._word(i)) == 2
        least = 1 if is_two else 10
        if found is None or not least <= found[0] < 100 or found[0].denominator != 1:
            return metres, None, i
        hundredths, _, _, j, _ = found
        unit, k = self._unit(j, hundredths, has_fraction=False)
        if unit == "cm":
            return metres + hundredths / 100, None, k
        is_cut = self._word(j) in {*THICK, "deep"}
        if unit is None and (self._joined(i) or self._kind(i) == "word" or not is_cut):
            return metres + hundredths / 100, None, j
        return metres, None, i
