"""Numbers as people write them: in digits with either mark, in fractions and in words."""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal
from fractions import Fraction
from typing import Final

_POINT: Final = re.compile(r"[+-]?\d+(\.\d+)?", re.ASCII)
_COMMA: Final = re.compile(r"[+-]?\d+,\d+", re.ASCII)
_FRACTION: Final = re.compile(r"(?:(\d+)[ -])?(\d+)/([1-9]\d*)", re.ASCII)
_AMOUNT: Final = re.compile(r"\d+(?:\.\d+)?", re.ASCII)
_CURRENCY: Final = r"^[A-Z]{3}\b|\b[A-Z]{3}$"
_GROUPS: Final = {
    ",": re.compile(r"([+-]?\d{1,3}(?:\.\d{3})+)(,\d+)?", re.ASCII),
    ".": re.compile(r"([+-]?\d{1,3}(?:,\d{3})+)(\.\d+)?", re.ASCII),
}
_PLACES: Final = 4  # decimals of what is worked out of an entry
_NO_CENTS: Final = re.compile(r"(?<=\d)[.,][-–—]{1,2}$")  # 52,- is 52
_SPACED: Final = re.compile(r"(?<=\d)['’ \u00a0\u202f](?=\d{3}(?!\d))")  # 1'200 and 1 200
_BELOW_TWENTY: Final = (
    ("zero", "null"), ("one", "ein"), ("two", "zwei"), ("three", "drei"), ("four", "vier"),
    ("five", "fünf"), ("six", "sechs"), ("seven", "sieben"), ("eight", "acht"), ("nine", "neun"),
    ("ten", "zehn"), ("eleven", "elf"), ("twelve", "zwölf"), ("thirteen", "dreizehn"),
    ("fourteen", "vierzehn"), ("fifteen", "fünfzehn"), ("sixteen", "sechzehn"),
    ("seventeen", "siebzehn"), ("eighteen", "achtzehn"), ("nineteen", "neunzehn"),
)  # fmt: skip
_TENS: Final = (
    ("twenty", "zwanzig"), ("thirty", "dreißig"), ("forty", "vierzig"), ("fifty", "fünfzig"),
    ("sixty", "sechzig"), ("seventy", "siebzig"), ("eighty", "achtzig"), ("ninety", "neunzig"),
)  # fmt: skip


def _words() -> dict[str, Fraction]:
    """The number of each word, and of each two that are written together."""
    found = {word: Fraction(n) for n, pair in enumerate(_BELOW_TWENTY) for word in pair}
    for tens, (english, german) in enumerate(_TENS, 2):
        found |= {english: Fraction(10 * tens), german: Fraction(10 * tens)}
        for last, (one, eins) in enumerate(_BELOW_TWENTY[1:10], 1):
            number = Fraction(10 * tens + last)
            found |= {f"{english}-{one}": number, f"{english} {one}": number}
            found |= {f"{eins}und{german}": number}
    whole = [(word, n) for word, n in found.items() if 0 < n <= len(_TENS) + 4]
    found |= {f"{word} and a half": n + Fraction(1, 2) for word, n in whole}
    found |= {f"{word}einhalb": n + Fraction(1, 2) for word, n in whole}
    found |= dict.fromkeys(("eins", "eine", "einen", "einem", "einer"), Fraction(1))
    halves = ("half a", "half an", "half", "halb", "halbe", "halber", "halbes", "ein halber")
    found |= dict.fromkeys(halves, Fraction(1, 2))
    found |= dict.fromkeys(("anderthalb", "one and a half", "eineinhalb"), Fraction(3, 2))
    found |= dict.fromkeys(("a couple of", "a couple", "zwo"), Fraction(2))
    found |= {"hundred": Fraction(100), "a hundred": Fraction(100), "hundert": Fraction(100)}
    return found | dict.fromkeys(("a dozen", "dozen", "dutzend", "ein dutzend"), Fraction(12))


_WORDS: Final = _words()
_LONGEST_FIRST: Final = "|".join(map(re.escape, sorted(_WORDS, key=len, reverse=True)))
# Where an amount begins: at the start, and behind what joins two; "a week" is one week.
_WORD: Final = re.compile(
    r"(?P<before>^|[-–]\s*|\b(?:between|from|to|and|or|zwischen|von|bis|und|oder)\s+)"
    rf"(?:(?P<word>{_LONGEST_FIRST})(?!\w)|an?(?=\s+(?:hour|day|week|month)\b))",
    re.IGNORECASE,
)


def number_of(value: str, mark: str) -> str | None:
    """Return a number as TOML has it, of one written with either mark, thousands or a sign."""
    text = re.sub(_CURRENCY, "", value).strip("£$€% \u00a0").replace("−", "-")
    text = _NO_CENTS.sub("", _SPACED.sub("", text))
    grouped = _GROUPS[mark].fullmatch(text)
    if grouped is not None:
        text = re.sub("[.,]", "", grouped[1]) + (grouped[2] or "").replace(",", ".")
    elif _COMMA.fullmatch(text):
        text = text.replace(",", ".")
    if not _POINT.fullmatch(text):
        return None
    return re.sub(r"^([+-]?)0+(?=\d)", r"\1", text)


def exact_of(value: str, mark: str) -> Fraction | None:
    """Return a number, or a whole number and a fraction, exactly."""
    found = _FRACTION.fullmatch(value.strip())
    if found is not None:
        return int(found[1] or 0) + Fraction(int(found[2]), int(found[3]))
    number = number_of(value, mark)
    return None if number is None else Fraction(number)


def decimal_of(value: str, mark: str) -> str | None:
    """Return a fraction, alone or behind a whole number, with a point: 0.5 of ``1/2``."""
    if _FRACTION.fullmatch(value.strip()) is None:
        return None
    return in_decimals(exact_of(value, mark) or Fraction(0))


def in_decimals(number: Fraction) -> str:
    """Return a number, however large, with a point and four decimals at most."""
    return f"{Decimal(round(number * 10**_PLACES)).scaleb(-_PLACES).normalize():f}"


def in_proportion(toml: str, factor: Decimal, rounded: Callable[[Decimal], Decimal]) -> str:
    """Return what TOML has at a key with its number multiplied, and the unit that it has.

    What holds no number, or nought, stays.
    """
    found = _AMOUNT.search(toml)
    if found is None or not Decimal(found[0]):
        return toml
    more = rounded(Decimal(found[0]) * factor).normalize()
    return f"{toml[: found.start()]}{more:f}{toml[found.end() :]}"


def in_digits(text: str) -> str:
    """Return a text with the amounts that it begins with, or joins, in digits."""

    def digits(found: re.Match[str]) -> str:
        number = _WORDS[found["word"].lower()] if found["word"] else Fraction(1)
        return f"{found['before']}{float(number):g}"

    return _WORD.sub(digits, text)
