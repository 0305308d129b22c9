"""What the page says is made from the catalogues, and each language says all of it."""

import re
from pathlib import Path

import pytest

from design.source import ROOT
from ledgerstone.contract.page_document import document_in
from ledgerstone.contract.page_messages import messages_script
from ledgerstone.quantities import Length
from ledgerstone.wording import LANGUAGES, speech_in
from ledgerstone.wording.page import (
    CUSTOMERS_TEXTS,
    DESK_TEXTS,
    WORKSHOP_TEXTS,
    PageText,
    PageTextError,
    page_messages,
    texts_of,
)
from support.page_texts import page_text

FOLDERS = {CUSTOMERS_TEXTS: "web", DESK_TEXTS: "web/desk", WORKSHOP_TEXTS: "web/desk/workshop"}
OTHERS = [language for language in LANGUAGES if language != "en"]

# What is written alike in both languages.
ALIKE = {
    *("page.made-by", "unit.mm", "unit.cm", "unit.m", "cutout.label", "sketch.handle-x"),
    *("sketch.handle-y", "answer.weighs", "answer.announce-no-tax", "drawing.plan"),
    *("at.of",),
}


def said(text: PageText) -> list[str]:
    """Every text that a message may come to."""
    return [text] if isinstance(text, str) else list(text.values())


def values_in(text: PageText) -> list[set[str]]:
    """The names of the values in each text."""
    return [set(re.findall(r"\{(\w+)\}", one)) for one in said(text)]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("folder", FOLDERS)
def test_the_committed_file_is_the_one_that_is_made(folder: str, language: str) -> None:
    """The file of a language, of the page and of the desk, is what its catalogue makes."""
    file = ROOT / FOLDERS[folder] / f"messages.{language}.js"
    document = (
        (ROOT / "web/index.html").read_text(encoding="utf-8") if folder == CUSTOMERS_TEXTS else ""
    )
    assert file.read_text(encoding="utf-8") == messages_script(language, folder, document), (
        f"{file} is written by python -m ledgerstone.contract, as its first line says"
    )


@pytest.mark.parametrize("folder", FOLDERS)
def test_there_is_a_catalogue_for_each_language_and_no_more(folder: str) -> None:
    """The languages are those that have a catalogue of the page, and of the desk."""
    there = ROOT / "service/ledgerstone/wording/catalogues" / folder
    assert sorted(file.stem for file in there.glob("*.ftl")) == sorted(LANGUAGES)


def test_the_desk_says_nothing_again() -> None:
    """What the page says already is not said a second time for the desk, which loads both."""
    said_before: set[str] = set()
    for folder in FOLDERS:
        assert not said_before & set(page_messages("en", folder))
        said_before |= set(page_messages("en", folder))


def _files(folder: str) -> list[Path]:
    held = (f for f in (ROOT / FOLDERS[folder]).iterdir() if f.is_file())
    return [file for file in held if not file.name.startswith("messages.")]


@pytest.mark.parametrize("folder", [DESK_TEXTS, WORKSHOP_TEXTS])
def test_the_desk_asks_for_what_there_is(folder: str) -> None:
    """Each message of the desk and of its form is named in their files, and each named is there."""
    before = dict.fromkeys((CUSTOMERS_TEXTS, DESK_TEXTS, folder))
    known = {key for each in before for key in page_messages("en", each)}
    text = "".join(file.read_text(encoding="utf-8") for file in _files(folder))
    named = set(re.findall(r'(?:data-says(?:-label)?=|say\()"([^"]+)"', text))
    assert named <= known
    heads = set(re.findall(r"say\(`([^`$]+)\$\{", text))
    for key in page_messages("en", folder):
        assert f'"{key}"' in text or any(key.startswith(head) for head in heads), key


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("folder", FOLDERS)
def test_another_language_says_all_that_the_first_says(folder: str, language: str) -> None:
    """Each message is there, with the same values in it, in as many forms as it needs."""
    first, other = page_messages("en", folder), page_messages(language, folder)
    assert list(first) == list(other)
    for key, text in first.items():
        assert isinstance(text, str) == isinstance(other[key], str), key
        assert values_in(text) == values_in(other[key]), key


@pytest.mark.parametrize("language", OTHERS)
def test_no_message_is_left_untranslated(language: str) -> None:
    """Only what is written alike in both languages is the same in both."""
    first, other = page_messages("en"), page_messages(language)
    assert {key for key in first if first[key] == other[key]} == ALIKE
    first, other = page_messages("en", DESK_TEXTS), page_messages(language, DESK_TEXTS)
    assert {key for key in first if first[key] == other[key]} == set()


@pytest.mark.parametrize("language", LANGUAGES)
def test_inches_and_feet_have_one_word(language: str) -> None:
    """The page writes them as the service does, and names them so where a unit is chosen."""
    page, formats = page_messages(language), speech_in(language).formats
    typed = Length.parse("4 ft 9 in")
    for unit in ("ft", "in"):
        assert f" {page[f'length.{unit}']}" in formats.length(typed)
    assert language == "en" or page["length.in"] == page["unit.in"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("folder", FOLDERS)
def test_no_message_is_empty_or_badly_spaced(folder: str, language: str) -> None:
    """Nothing begins or ends with a blank, and no two blanks stand together."""
    for key, text in page_messages(language, folder).items():
        for one in said(text):
            assert one.strip() == one != "", key
            assert "  " not in one, key


@pytest.mark.parametrize("folder", FOLDERS)
def test_german_addresses_the_reader_politely(folder: str) -> None:
    """The page says Sie and Ihr, never du or dein, and quotes with German marks."""
    for key, text in page_messages("de", folder).items():
        for one in said(text):
            assert not re.search(r"\b[Dd](u|ich|ir|ein(e[nmrs]?)?)\b", one), key
            assert not re.search(r"[“”]\w|\"", one), key


@pytest.mark.parametrize(
    ("source", "fault"),
    [
        ("page =\n    .title = { $a", ": unread$"),
        ("page =\n    .title = a\n    .title = b\n", ": twice$"),
        ("page =\n    .one = { $m ->\n        [one] a\n       *[other] b\n    }\n", ": chooses$"),
        ("page =\n    .one = { $n ->\n        [1] a\n       *[other] b\n    }\n", ": number$"),
        ("page =\n    .one = { $n ->\n       *[one] a\n    }\n", ": other$"),
        ("page =\n    .one = { NUMBER($n) }\n", ": holds$"),
        ("page = One\n", ": text$"),
    ],
)
def test_a_catalogue_that_the_page_cannot_say_is_refused(source: str, fault: str) -> None:
    """What the page's messages cannot hold fails when they are made, by the message's name."""
    with pytest.raises(PageTextError, match=fault):
        texts_of(source)


def test_a_message_is_read_as_fluent_writes_it() -> None:
    """A value is a name in braces, a plural a text for each category, a literal its character."""
    source = (
        'slabs =\n    .one = Slab { $number }\n    .share = { $n }{ "\\u00A0" }%\n'
        "    .count =\n        { $n ->\n            [one] { $n } slab\n"
        "           *[other] { $n } slabs\n"
        "        }\n"
    )
    assert texts_of(source) == {
        "slabs.one": "Slab {number}",
        "slabs.share": "{n}\u00a0%",
        "slabs.count": {"one": "{n} slab", "other": "{n} slabs"},
    }


@pytest.mark.parametrize("language", OTHERS)
def test_the_committed_document_is_the_one_that_is_made(language: str) -> None:
    """The page's document of another language is what its own and the catalogue make."""
    file = ROOT / f"web/index.{language}.html"
    document = (ROOT / "web/index.html").read_text(encoding="utf-8")
    assert file.read_text(encoding="utf-8") == document_in(language, document), (
        f"write it again: python -m ledgerstone.contract index.{language} < web/index.html"
    )


def test_a_document_says_its_texts_and_names_in_another_language() -> None:
    """Texts, names and the language go over, as HTML; markup and what is empty stay."""
    document = (
        f'<html lang="en-GB"><h1 data-says="page.title">{page_text("page.title")}</h1>'
        '<nav data-says-label="slabs.title" aria-label="Your slabs"><b data-says="slabs.add"></b>'
    )
    assert document_in("de", document) == (
        f'<html lang="de"><h1 data-says="page.title">{page_text("page.title", "de")}</h1>'
        '<nav data-says-label="slabs.title" aria-label="Ihre Platten"><b data-says="slabs.add"></b>'
    )


def test_a_document_that_says_otherwise_than_its_catalogue_is_refused() -> None:
    """A text in the document that its language's catalogue does not have is a fault."""
    with pytest.raises(ValueError, match=r"page\.title"):
        document_in("de", '<h1 data-says="page.title">What does a slab cost?</h1>')
