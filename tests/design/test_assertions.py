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
# How many literals of the tests still repeat a catalogue's words. The number only ever falls.
STILL_REPEATED: Final = 175
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
    """A test of something else repeats no five words of a catalogue, but for so many still."""
    runs = catalogue_runs()
    assert len(runs) > 1000
    found = {file.as_posix(): repeated(tree, runs) for file, tree in python_files("tests").items()}
    others = {name: texts for name, texts in found.items() if texts and name not in THEIR_OWN}
    assert sum(map(len, others.values())) <= STILL_REPEATED, others


def test_a_repeated_sentence_is_seen() -> None:
    """Five words in a row are a repeat, four are none, and a docstring is no assertion."""
    runs: set[tuple[str, ...]] = {("cast", "as", "it", "is", "drawn")}
    assert repeated(ast.parse('assert x == "It is cast as it is drawn."'), runs)
    assert not repeated(ast.parse('assert x == "It is cast as it is."'), runs)
    assert not repeated(ast.parse('"""It is cast as it is drawn."""'), runs)
