"""The catalogues of sentences hold the same in every language, and all of it is used."""

import re
from functools import cache
from typing import Final

import pytest
from fluent.syntax import ast

from ledgerstone.cutouts import CUTOUT_KINDS
from ledgerstone.surfaces import SURFACES
from ledgerstone.wording import LANGUAGES, speech_in
from ledgerstone.wording.catalogues import catalogue, entry_of, sources
from support.catalogue_reader import made, messages, samples, values_of

FUNCTIONS: Final = {"NAME", "START", "HOWMANY"}
# What the speech itself says of values.
OF_VALUES: Final = {
    "people",
    "list-between",
    "list-last-and",
    "list-last-or",
    "list-last-comma-and",
    "list-more",
    "list-semicolon",
    "list-sentences",
}
# Messages that are the same words in both languages.
SAME_WORDS: Final = {
    "card-size",
    "card-weighed-line",
    "fault-part-of",
    "job-liquid",
    "job-minutes",
    "job-part",
    "list-between",
    "list-semicolon",
    "list-sentences",
    "paper-name",
}
# What keeps a person from harm, in a few of the words that do it.
PROTECTING: Final = [
    ("en", "card-pot-skin", "skin and eyes"),
    ("de", "card-pot-skin", "Haut und Augen"),
    ("en", "care-food", "not declared for contact"),
    ("de", "care-food", "nicht freigegeben"),
    ("en", "fitting-hot", "touches no concrete"),
    ("de", "fitting-hot", "berührt keinen Beton"),
    ("en", "lift-by-gear", "never hands alone"),
    ("de", "lift-by-gear", "nie von Hand allein"),
]
# Marks of direction, what is left of a pattern, a value that is missing.
NOT_PLAIN: Final = re.compile(r"[\u2066-\u2069{}$]|\?\?\?| {2}")


@cache
def every_name() -> list[str]:
    """Every message of any language."""
    return sorted(set().union(*(messages(language) for language in LANGUAGES)))


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_entry_of_a_catalogue_is_read(language: str) -> None:
    """No line of a catalogue is junk to the parser."""
    junk = [entry.content for entry in catalogue(language).body if isinstance(entry, ast.Junk)]
    assert junk == []
    assert len(messages(language)) > 20


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_message_parsed_alone_is_that_of_the_whole_catalogue(language: str) -> None:
    """Each message by itself, as it is said, is what the parser of whole files makes of it."""
    whole = {
        e.id.name: e for e in catalogue(language).body if isinstance(e, ast.Message | ast.Term)
    }
    assert [*sources(language)] == [*whole]
    for name, entry in whole.items():
        assert entry.equals(entry_of(language, name), ["span", "comment"]), name


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_catalogue_calls_what_there_is(language: str) -> None:
    """A message calls functions of the speech, and messages of its own language, alone."""
    for name, asked in messages(language).items():
        assert asked.functions <= FUNCTIONS, name
        assert asked.messages <= messages(language).keys(), name


def _is_grammar(name: str) -> bool:
    """Whether a message is part of another's grammar: a language may have its own of these."""
    return any(name in asked.messages for lang in LANGUAGES for asked in messages(lang).values())


@cache
def whole() -> list[str]:
    """The names of what is stated as it stands: no part of another message's grammar."""
    return [name for name in every_name() if not _is_grammar(name)]


def test_a_message_is_in_every_language_with_the_same_values() -> None:
    """No language lacks a message, and none asks for a value that the others do not."""
    lacking = [(lang, name) for name in whole() for lang in LANGUAGES if name not in messages(lang)]
    assert lacking == []
    unlike = [name for name in whole() if values_of("en", name) != values_of("de", name)]
    assert (unlike, LANGUAGES) == ([], ("en", "de"))


def test_every_name_is_written_out() -> None:
    """Where code makes a message its name stands there, so that it can be looked for."""
    assert [place for place, name, _ in made() if name is None] == []


def test_every_message_that_is_made_is_there() -> None:
    """Code makes no message that a catalogue lacks."""
    assert [(place, name) for place, name, _ in made() if name not in messages("en")] == []


def test_every_message_is_made() -> None:
    """No catalogue holds what nobody says."""
    made_somewhere = {name for _, name, _ in made()} | OF_VALUES
    unused = [name for name in every_name() if name not in made_somewhere and not _is_grammar(name)]
    assert unused == []


def test_a_message_is_given_what_its_sentence_asks_for() -> None:
    """Code gives each message just the values that its sentence names."""
    wrong = [
        (place, name, given ^ values_of("en", str(name)))
        for place, name, call in made()
        if None not in (given := {word.arg for word in call.keywords})
        and given != values_of("en", str(name))
    ]
    assert wrong == []


def _is_plain(said: str) -> bool:
    return said.strip() == said != "" and not NOT_PLAIN.search(said)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_is_stated(language: str) -> None:
    """A message with values of every kind it chooses by becomes plain text in each language."""
    speech = speech_in(language)
    said = [(name, speech.say(message)) for name in whole() for message in samples(name)]
    assert len(said) > 400
    assert [(name, text) for name, text in said if not _is_plain(text)] == []


def _in_english(name: str) -> bool:
    """Return whether a message of words says the same in German as in English."""
    same = [
        speech_in("en").say(message) == speech_in("de").say(message).replace("12,5", "12.5")
        for message in samples(name)
    ]
    return all(same) and bool(re.search(r"[a-z]{2}", messages("en")[name].text))


def test_no_message_is_left_in_english() -> None:
    """A message of words is another in German than in English, but for those named here."""
    assert {name for name in whole() if _in_english(name)} <= SAME_WORDS


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_kind_of_cutout_has_its_word(language: str) -> None:
    """No kind of cut-out is called by another kind's word."""
    named = "cutout-kind" if language == "en" else "cutout-kind-stem"
    assert set(messages(language)[named].chosen["kind"]) == set(CUTOUT_KINDS)


def test_every_surface_has_its_word() -> None:
    """Whatever chooses among surfaces has each of them: none is stated by another's word."""
    choices = [
        (language, name, set(SURFACES) - set(keys))
        for language in LANGUAGES
        for name, asked in messages(language).items()
        for keys in asked.chosen.values()
        if len(set(SURFACES) & set(keys)) > 1
    ]
    assert len(choices) > 4
    assert [choice for choice in choices if choice[2]] == []


@pytest.mark.parametrize(("language", "name", "words"), PROTECTING)
def test_a_warning_says_what_it_warns_of(language: str, name: str, words: str) -> None:
    """A message that keeps a person from harm says so however it is worded."""
    assert words in messages(language)[name].text


@pytest.mark.parametrize("language", LANGUAGES)
def test_gas_and_current_are_left_to_their_trades(language: str) -> None:
    """A hot appliance, and electrics near water, are decided by whom the country registers."""
    assert "gas-or-electric-trade" in messages(language)["hot-appliance"].messages
    assert "electric-trade" in messages(language)["electrics-near-water"].messages
