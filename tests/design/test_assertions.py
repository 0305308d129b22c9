"""Only the catalogues' own tests assert sentences; others assert names, codes and numbers."""

import ast
import re
from datetime import date
from typing import Final

from design.sentence_patterns import repeats, says_one, sentence_patterns
from design.source import PACKAGE, python_files, strings_of
from ledgerstone.wording import LANGUAGES, Message, speech_in
from ledgerstone.wording.page import CUSTOMERS_TEXTS, DESK_TEXTS, WORKSHOP_TEXTS, page_messages
from support.catalogue_reader import entries_in, texts_of

# What refuses a length, or a value of a profile, is asserted here and nowhere else: the tables are
# the catalogues' own tests.
THEIR_OWN: Final = frozenset(
    {"tests/unit/length_table.py", "tests/unit/test_quantities.py"}
    | {"tests/unit/profile_fault_table.py"}
)
# What a customer may write is drawn there: it is read by the service, and asserts nothing.
WRITTEN_BY_CUSTOMERS: Final = "tests/support/strategies/"
_GREETED: Final = re.compile(r"(?:Hello|Hi|Dear|Guten Tag)\b")
# An oracle reads a fix's sentences as a person would, and this shows that it reads them rightly.
READ_AGAIN: Final = "tests/laws/test_second_reading.py"
_MIN_WORDS: Final = 5
_MIN_PAGE_WORDS: Final = 3
_WORD: Final = re.compile(r"\w+(?:['’-]\w+)*")


def _words(text: str) -> tuple[str, ...]:
    return tuple(_WORD.findall(text))


def catalogue_runs() -> set[tuple[str, ...]]:
    """Every run of words that stands between two values of a sentence, cut to the least length."""
    runs: set[tuple[str, ...]] = set()
    for file in (PACKAGE / "wording" / "catalogues").rglob("*.ftl"):
        for entry in entries_in(file):
            for text in texts_of(entry):
                runs |= _runs(_words(text))
    return runs


def _runs(words: tuple[str, ...]) -> set[tuple[str, ...]]:
    return {words[i : i + _MIN_WORDS] for i in range(len(words) - _MIN_WORDS + 1)}


def repeated(tree: ast.Module, runs: set[tuple[str, ...]]) -> list[str]:
    """The strings of a module that hold a run of a catalogue's words."""
    return [text for text in strings_of(tree) if not runs.isdisjoint(_runs(_words(text)))]


def test_sentences_are_written_again_in_no_other_test() -> None:
    """A test of something else repeats no five words of a catalogue."""
    runs = catalogue_runs()
    assert len(runs) > 1000
    found = {file.as_posix(): repeated(tree, runs) for file, tree in python_files("tests").items()}
    others = {
        name: texts
        for name, texts in found.items()
        if texts and name not in THEIR_OWN and not name.startswith(WRITTEN_BY_CUSTOMERS)
    }
    assert others == {}


def test_no_other_test_says_a_whole_sentence_of_the_catalogues() -> None:
    """Whatever its values are: a message is compared by name and values, or said by its name."""
    patterns = sentence_patterns()
    assert len(patterns) > 4000
    found = {
        name: texts
        for file, tree in python_files("tests").items()
        if (name := file.as_posix()) not in {*THEIR_OWN, READ_AGAIN}
        and not name.startswith(WRITTEN_BY_CUSTOMERS)
        and (texts := [one for one in repeats(tree, patterns) if not _GREETED.match(one)])
    }
    assert found == {}


def test_a_whole_sentence_is_seen_whatever_its_values() -> None:
    """In each language; other words with the same values are none."""
    patterns = sentence_patterns()
    over = Message("offer-expired", valid_until=date(2031, 5, 1), days=3)
    assert all(says_one(speech_in(language).say(over), patterns) for language in LANGUAGES)
    assert not says_one("It ended on 1 May 2031, 3 days before.", patterns)


def page_texts() -> set[str]:
    """The texts of the page, the desk and the workshop's form, of three words or more each."""
    return {
        text
        for language in LANGUAGES
        for folder in (CUSTOMERS_TEXTS, DESK_TEXTS, WORKSHOP_TEXTS)
        for text in page_messages(language, folder).values()
        if isinstance(text, str) and "{" not in text and len(_words(text)) >= _MIN_PAGE_WORDS
    }


def test_a_page_s_text_is_looked_up_by_its_key() -> None:
    """No test of the page writes out a whole text of three words or more that has a key."""
    known = page_texts()
    assert len(known) > 300
    found = {
        file.as_posix(): texts
        for file, tree in python_files("tests").items()
        if file.parts[1] in ("browser", "workshops")
        and (texts := [text for text in strings_of(tree) if text in known])
    }
    assert found == {}


def test_a_repeated_sentence_is_seen() -> None:
    """Five words in a row are a repeat, four are none, and a docstring is no assertion."""
    runs: set[tuple[str, ...]] = {("cast", "as", "it", "is", "drawn")}
    assert repeated(ast.parse('assert x == "It is cast as it is drawn."'), runs)
    assert not repeated(ast.parse('assert x == "It is cast as it is."'), runs)
    assert not repeated(ast.parse('"""It is cast as it is drawn."""'), runs)
