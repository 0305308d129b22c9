"""What each table and key of a profile is, in each language: a form's labels, a file's comments.

In English it stands in the records themselves, beside each key; in other languages in
``catalogues/profile/``, a message for each record. What a word means that is chosen stands there in
every language, in ``Choices``.
"""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import Final

from ledgerstone.wording.catalogues import LANGUAGES, USUAL_LANGUAGE, page_catalogue, variant
from ledgerstone.wording.page import PageText, own_texts, texts_of
from ledgerstone.wording.variants import words_of
from ledgerstone.workshop.countries import (
    COUNTRIES,
    English,
    RegionalSettings,
    usual_in,
)
from ledgerstone.workshop.countries.places import currency_of, usual_clock
from ledgerstone.workshop.countries.postcodes import beginnings_like
from ledgerstone.workshop.countries.public_holidays import parts_of
from ledgerstone.workshop.records.members import Member
from ledgerstone.workshop.review.rests_on import RESTS_ON
from ledgerstone.workshop.starting.profile_text import CHOICE_RECORD, attribute_of

PROFILE_TEXTS: Final = "profile"
_EXAMPLE: Final = re.compile("<(country|regions|clock|currency|postcodes)>")
_BRITAIN: Final = usual_in("GB")


@cache
def profile_texts(language: str) -> dict[str, PageText]:
    """Return the texts about a profile in a language, by record and key: ``Rates.hour``."""
    return texts_of(page_catalogue(language, PROFILE_TEXTS))


def label_names() -> tuple[str, ...]:
    """Return the names of every text about a profile; in English most stand in the records."""
    return tuple(dict.fromkeys(name for language in LANGUAGES for name in profile_texts(language)))


@cache
def variant_texts(words: English) -> dict[str, PageText]:
    """Return the texts about a profile that one country's English says in its own way."""
    return texts_of(variant(words, PROFILE_TEXTS))


@lru_cache(maxsize=4)
def _own_texts(source: str) -> dict[str, PageText]:
    return own_texts(source)


def about_in(
    language: str,
    record: str,
    key: str,
    english: str,
    place: RegionalSettings = _BRITAIN,
    *,
    own: str = "",
) -> str:
    """Return what a key of a record is, in a language and its place's words.

    Parameters
    ----------
    own
        The maker's sentences of that language, in Fluent's format: what they say of it stands.
    """
    name, words = f"{record}.{key}", words_of(language, place)
    if own and name in _own_texts(own):
        return str(_own_texts(own)[name])
    theirs = variant_texts(place.words).get(name) if language == USUAL_LANGUAGE else None
    text = (
        str(theirs) if theirs else words.exchanged(str(profile_texts(language).get(name, english)))
    )
    return _EXAMPLE.sub(lambda found: _examples_of(place.country)[found[1]], text)


@cache
def _examples_of(country: str) -> dict[str, str]:
    """What stands in texts as an example, of a country's own; of one unknown, the usual ones."""
    home = country if country in COUNTRIES else _BRITAIN.country
    return {
        "country": home,
        "regions": ", ".join(parts_of(home)[:4]) or "–",
        "clock": usual_clock(home) or "UTC",
        "currency": currency_of(home) or "EUR",
        "postcodes": ", ".join(beginnings_like(home)),
    }


def label_in(
    language: str, member: Member, place: RegionalSettings = _BRITAIN, own: str = ""
) -> str:
    """Return what a member of a profile is called in a language."""
    return about_in(language, member.record.__name__, member.name, member.about, place, own=own)


def choice_in(language: str, word: str, place: RegionalSettings = _BRITAIN, own: str = "") -> str:
    """Return the meaning of a choice's word, in a language."""
    return about_in(language, CHOICE_RECORD, attribute_of(word), word, place, own=own)


def rests_on_in(
    language: str, table: str, place: RegionalSettings = _BRITAIN, own: str = ""
) -> str:
    """Return what of a customer's answer depends on a table, in a language."""
    return about_in(language, "RestsOn", table, RESTS_ON[table], place, own=own)
