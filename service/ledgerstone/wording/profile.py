"""What each table and key of a profile is, in each language: a form's labels, a file's comments.

In English it stands in the records themselves, beside each key; in other languages in
``catalogues/profile/``, a message for each record. What a word means that is chosen stands there in
every language, in ``Choices``.
"""

from __future__ import annotations

from functools import cache
from typing import Final

from ledgerstone.wording.catalogues import page_catalogue
from ledgerstone.wording.page import PageText, texts_of
from ledgerstone.workshop.members import Member
from ledgerstone.workshop.standing import RESTS_ON
from ledgerstone.workshop.starting import CHOICES, attribute_of

FOLDER: Final = "profile"


@cache
def profile_texts(language: str) -> dict[str, PageText]:
    """Return the texts about a profile in a language, by record and key: ``Rates.hour``."""
    return texts_of(page_catalogue(language, FOLDER))


def about_in(language: str, record: str, key: str, english: str) -> str:
    """Return what a key of a record is, in a language."""
    return str(profile_texts(language).get(f"{record}.{key}", english))


def label_in(language: str, member: Member) -> str:
    """Return what a member of a profile is called in a language."""
    return about_in(language, member.record.__name__, member.name, member.about)


def choice_in(language: str, word: str) -> str:
    """Return the meaning of a choice's word, in a language."""
    return about_in(language, CHOICES, attribute_of(word), word)


def rests_on_in(language: str, table: str) -> str:
    """Return what of a customer's answer depends on a table, in a language."""
    return about_in(language, "RestsOn", table, RESTS_ON[table])
