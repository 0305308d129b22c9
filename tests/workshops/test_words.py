"""Every sentence there is, as it is stated in the United States: no British word is left in any."""

import re
from collections.abc import Iterator

import pytest

from ledgerstone.wording import speech_in
from ledgerstone.wording.page import (
    DESK_TEXTS,
    WORKSHOP_TEXTS,
    PageText,
    page_differences,
    page_messages,
)
from ledgerstone.wording.variants import words_of
from ledgerstone.workshop.countries import usual_in
from support.catalogue_reader import messages, samples
from workshops.strange_words import BRITISH

US = usual_in("US")
KEY = "own_van or fitted"  # keys of the profile, which no country exchanges


def texts(message: PageText) -> Iterator[str]:
    """Each text that a message of the page's may come to."""
    yield from [message] if isinstance(message, str) else message.values()


def test_no_sentence_of_the_service_is_british_in_the_united_states() -> None:
    """Each message, with values of every kind it chooses by."""
    american = speech_in("en", "", US)
    british = [
        (name, said)
        for name in sorted(messages("en").keys() & messages("de").keys())
        for message in samples(name)
        if re.search(BRITISH, (said := american.say(message)).replace(KEY, ""))
    ]
    assert british == []


def test_no_sentence_of_the_page_is_british_in_the_united_states() -> None:
    """What the page's file says, with what the service says in its place."""
    said = {**page_messages("en"), **page_differences("en", US)}
    british = [
        (key, text)
        for key, message in said.items()
        for text in texts(message)
        if re.search(BRITISH, re.sub(r"\{\w+\}", "", text))
    ]
    assert british == []


@pytest.mark.parametrize("folder", [DESK_TEXTS, WORKSHOP_TEXTS])
def test_no_sentence_of_the_desk_is_british_in_the_united_states(folder: str) -> None:
    """What the maker's own page and form say, with what the service says in its place."""
    said = {**page_messages("en", folder), **page_differences("en", US, folder=folder)}
    british = [
        (key, text)
        for key, message in said.items()
        for text in texts(message)
        if re.search(BRITISH, re.sub(r"\{\w+\}", "", text))
    ]
    assert british == []


@pytest.mark.parametrize(
    ("british", "american"),
    [
        ("an upstand", "a low backsplash"),
        ("An upstand", "A low backsplash"),
        ("an RCD-protected supply", "a GFCI-protected supply"),
        ("in a lidded tin", "in a lidded can"),
        ("one metal bin", "one metal can"),
        ("the tin has it", "the tin has it"),
        ("a tap and an hour", "a faucet and an hour"),
        ("two basins", "two sinks"),
    ],
)
def test_a_word_is_exchanged_in_its_own_sense(british: str, american: str) -> None:
    """With its article, and only where it has the sense that the other word has."""
    assert words_of("en", US).exchanged(british) == american


def test_a_key_of_the_profile_keeps_its_spelling_in_sentences() -> None:
    """A maker there writes fitted, whatever customers read."""
    assert KEY in speech_in("en", "", US).say(next(samples("fault-area-free")))
