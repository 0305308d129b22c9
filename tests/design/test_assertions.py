"""A sentence is read in its catalogue's own tests; other tests look at names, codes and numbers."""

import ast
import re
from collections.abc import Iterator
from typing import Final

from fluent.syntax import FluentParser
from fluent.syntax.ast import BaseNode, TextElement

from design.source import PACKAGE, python_files

# What refuses a length is asserted here and nowhere else: the table is the catalogue's own test.
THEIR_OWN: Final = frozenset({"tests/unit/length_table.py", "tests/unit/test_quantities.py"})
# How many literals of a test file repeat a catalogue's words. These counts only ever fall.
STILL_REPEATED: Final = {
    "tests/api/test_bounds.py": 1,
    "tests/api/test_calendar_file.py": 3,
    "tests/api/test_drafts.py": 1,
    "tests/api/test_drawings_together.py": 1,
    "tests/api/test_enquiries.py": 1,
    "tests/api/test_fixes_keep.py": 1,
    "tests/api/test_languages.py": 7,
    "tests/api/test_links.py": 2,
    "tests/api/test_replies_following.py": 2,
    "tests/api/test_requests.py": 1,
    "tests/api/test_services.py": 5,
    "tests/api/test_sheets.py": 4,
    "tests/api/test_sheets_of_slabs.py": 1,
    "tests/api/test_too_intricate.py": 1,
    "tests/api/test_trial.py": 1,
    "tests/browser/states.py": 1,
    "tests/browser/test_desk.py": 3,
    "tests/browser/test_journeys.py": 10,
    "tests/browser/test_page_access.py": 2,
    "tests/browser/test_page_draft.py": 11,
    "tests/browser/test_page_drawing.py": 10,
    "tests/browser/test_page_keyboard.py": 1,
    "tests/browser/test_page_language.py": 2,
    "tests/browser/test_page_parts.py": 4,
    "tests/browser/test_page_path.py": 19,
    "tests/browser/test_page_phone.py": 4,
    "tests/browser/test_page_remedies.py": 2,
    "tests/browser/test_page_service.py": 2,
    "tests/browser/test_page_sooner.py": 1,
    "tests/browser/test_page_time.py": 1,
    "tests/design/test_page_messages.py": 2,
    "tests/faults/test_mailbox.py": 1,
    "tests/support/strategies/enquiry_changes.py": 1,
    "tests/unit/test_application_learning.py": 1,
    "tests/unit/test_checks_access.py": 3,
    "tests/unit/test_checks_causes.py": 1,
    "tests/unit/test_checks_joins.py": 2,
    "tests/unit/test_checks_place.py": 4,
    "tests/unit/test_checks_promise.py": 3,
    "tests/unit/test_checks_shade.py": 1,
    "tests/unit/test_checks_shape.py": 2,
    "tests/unit/test_checks_size.py": 2,
    "tests/unit/test_checks_strength.py": 2,
    "tests/unit/test_checks_thickness.py": 3,
    "tests/unit/test_codec_order_in.py": 1,
    "tests/unit/test_drawing_weeks.py": 3,
    "tests/unit/test_every_check.py": 1,
    "tests/unit/test_making_offers.py": 1,
    "tests/unit/test_papers_job_days.py": 1,
    "tests/unit/test_promise_offers.py": 6,
    "tests/unit/test_quote.py": 2,
    "tests/unit/test_savings.py": 1,
    "tests/unit/test_schedule_waiting.py": 3,
    "tests/unit/test_search.py": 1,
    "tests/unit/test_sentences.py": 1,
    "tests/unit/test_shade_match.py": 1,
    "tests/unit/test_transport.py": 2,
    "tests/validation/test_after_a_crack.py": 1,
}
_LEAST_WORDS: Final = 5
_WORD: Final = re.compile(r"\w+(?:['’-]\w+)*")


def _texts(part: object) -> Iterator[str]:
    """The texts between the values of a message, its variants' too."""
    if isinstance(part, list):
        for one in part:
            yield from _texts(one)
    elif isinstance(part, TextElement):
        yield str(part.value)
    elif isinstance(part, BaseNode):
        yield from _texts(list(vars(part).values()))


def _words(text: str) -> tuple[str, ...]:
    return tuple(_WORD.findall(text))


def catalogue_runs() -> set[tuple[str, ...]]:
    """Every run of words that stands between two values of a sentence, cut to the least length."""
    runs: set[tuple[str, ...]] = set()
    for file in (PACKAGE / "wording" / "catalogues").rglob("*.ftl"):
        for entry in FluentParser().parse(file.read_text(encoding="utf-8")).body:
            for text in _texts(entry):
                runs |= _runs(_words(text))
    return runs


def _runs(words: tuple[str, ...]) -> set[tuple[str, ...]]:
    return {words[i : i + _LEAST_WORDS] for i in range(len(words) - _LEAST_WORDS + 1)}


def _literals(tree: ast.Module) -> Iterator[str]:
    """The strings of a module, but for its docstrings."""
    aside = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in aside:
            yield node.value


def repeated(tree: ast.Module, runs: set[tuple[str, ...]]) -> list[str]:
    """The strings of a module that hold a run of a catalogue's words."""
    return [text for text in _literals(tree) if not runs.isdisjoint(_runs(_words(text)))]


def test_sentences_are_written_again_in_no_other_test() -> None:
    """A test of something else repeats no five words of a catalogue, but for those listed."""
    runs = catalogue_runs()
    assert len(runs) > 1000
    found = {file.as_posix(): repeated(tree, runs) for file, tree in python_files("tests").items()}
    assert {
        name: texts
        for name, texts in found.items()
        if name not in THEIR_OWN and len(texts) > STILL_REPEATED.get(name, 0)
    } == {}


def test_a_repeated_sentence_is_seen() -> None:
    """Five words in a row are a repeat, four are none, and a docstring is no assertion."""
    runs: set[tuple[str, ...]] = {("cast", "as", "it", "is", "drawn")}
    assert repeated(ast.parse('assert x == "It is cast as it is drawn."'), runs)
    assert not repeated(ast.parse('assert x == "It is cast as it is."'), runs)
    assert not repeated(ast.parse('"""It is cast as it is drawn."""'), runs)
