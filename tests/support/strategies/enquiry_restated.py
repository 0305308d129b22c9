"""Families in which a message says its slab again, at odds with itself; and numbers in words."""

from __future__ import annotations

from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import SLAB, a_slab, lengths_of, sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_restated")
_ONES: Final = "one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
_TEENS: Final = "fifteen sixteen seventeen eighteen nineteen"
_TENS: Final = "twenty thirty forty fifty sixty seventy eighty ninety"
_EINS: Final = (
    "ein zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn"
    " sechzehn siebzehn achtzehn neunzehn"
)
_ZEHN: Final = "zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig"


def said(draw: st.DrawFn, family: str) -> str:
    """One wording of a family."""
    return str(draw(st.sampled_from(SAID[family])))


@st.composite
def at_odds(draw: st.DrawFn) -> Several:
    """A slab, and its summary, in which the width is another; ``words`` has both widths."""
    length, width, thickness = draw(a_slab())
    other = width + draw(st.sampled_from((-30, -20, 20, 40)))
    first = said(draw, "first").format(l=length, w=width, t=thickness)
    again = said(draw, "again").format(l=length, w=other, t=thickness)
    wanted = lengths_of((length, width, thickness))
    del wanted[f"{SLAB}/outline/width"]
    return Several(f"{first}\n\n{again}", wanted, {"width": f"{width} {other}"})


@st.composite
def told_again(draw: st.DrawFn) -> Several:
    """A slab with a hole, and its summary, which says the same."""
    slab = draw(a_slab())
    first = said(draw, "first").format(l=slab[0], w=slab[1], t=slab[2])
    again = said(draw, "again").format(l=slab[0], w=slab[1], t=slab[2])
    hole = draw(st.sampled_from((35, 60, 80)))
    text = f"{first} One hole for cables, {hole} mm."
    text += f"\n\n{again} One {hole} mm hole."
    return Several(text, lengths_of(slab, diameter=float(hole)))


@st.composite
def of_two(draw: st.DrawFn) -> Several:
    """Two slabs that differ by as little, told as two."""
    length, width, thickness = draw(a_slab())
    other = width + draw(st.sampled_from((20, 40)))
    text = said(draw, "of_two").format(l=length, w=width, v=other, t=thickness)
    return Several(text, two((length, width, thickness), (length, other, thickness)))


def two(first: tuple[int, int, int], second: tuple[int, int, int]) -> dict[str, float]:
    """The lengths of two slabs by their pointers."""
    return sizes_of(*first) | sizes_of(*second, "/slabs/1")


def english(n: int) -> str:
    """A number below ten thousand in English words: "six hundred and twenty"."""
    small, tens = f"{_ONES} {_TEENS}".split(), _TENS.split()
    if n < 20:
        return small[n - 1]
    if n < 100:
        return tens[n // 10 - 2] + (f" {small[n % 10 - 1]}" if n % 10 else "")
    if n < 1000:
        rest = f" and {english(n % 100)}" if n % 100 else ""
        return f"{small[n // 100 - 1]} hundred{rest}"
    rest = f" {english(n % 1000)}" if n % 1000 else ""
    return f"{english(n // 1000)} thousand{rest}"


def by_hundreds(n: int) -> str:
    """A number as it is spoken by its hundreds: "eighteen fifty", "six twenty"."""
    return (
        f"{english(n // 100)} {english(n % 100)}" if n % 100 > 9 else f"{english(n // 100)} hundred"
    )


def german(n: int) -> str:
    """A number below ten thousand in one German word: "achtzehnhundertfünfzig"."""
    small, tens = _EINS.split(), _ZEHN.split()
    if n < 20:
        return small[n - 1]
    if n < 100:
        unit = f"{small[n % 10 - 1]}und" if n % 10 else ""
        return unit + tens[n // 10 - 2]
    rest = german(n % 100) if n % 100 else ""
    return f"{german(n // 100)}hundert{rest}"


def feet(inches: int) -> str:
    """A length in feet and inches, in words: "five foot six"."""
    rest = f" {english(inches % 12)}" if inches % 12 else ""
    return f"{english(inches // 12)} {'foot' if rest else 'feet'}{rest}"


@st.composite
def in_words(draw: st.DrawFn) -> Several:
    """A slab whose sizes are all in words, mm."""
    slab = draw(a_slab())
    say = draw(st.sampled_from((english, by_hundreds)))
    numbers = {"l": say(slab[0]), "w": say(slab[1]), "t": english(slab[2])}
    return Several(said(draw, "in_words").format(**numbers), lengths_of(slab))


@st.composite
def in_german_words(draw: st.DrawFn) -> Several:
    """A slab whose sizes are all German words, mm."""
    slab = draw(a_slab())
    numbers = {"l": german(slab[0]), "w": german(slab[1]), "t": german(slab[2])}
    return Several(said(draw, "in_german_words").format(**numbers), lengths_of(slab))


@st.composite
def in_feet(draw: st.DrawFn) -> Several:
    """A slab whose sizes are feet, inches and their parts in words."""
    length, width = draw(st.integers(49, 110)), draw(st.integers(14, 35))
    part, more = draw(
        st.sampled_from((("a half", 0.5), ("a quarter", 0.25), ("three quarters", 0.75)))
    )
    whole, inches = draw(st.sampled_from((("an inch", 1), ("one inch", 1), ("two inches", 2))))
    thickness = f"{whole} and {part}"
    text = said(draw, "in_feet").format(l=feet(length), w=feet(width), t=thickness)
    return Several(text, sizes_of(length * 25.4, width * 25.4, (inches + more) * 25.4))
