"""Sentences are made at the edge, from catalogues."""

import ast
import re
from collections.abc import Iterator
from typing import Final

from design.source import module_name, python_files

BELOW_THE_EDGE: Final = (
    "checks", "price", "quote", "reinforcement", "remedies", "schedule", "shade", "stages", "terms",
    "transport", "work",
)  # fmt: skip
_WORDS: Final = re.compile(r"\b[a-z]{2,}\b")


def _aside(tree: ast.Module) -> set[int]:
    """The ids of what is no sentence: docstrings, errors' texts, and the parts of f-strings."""
    found = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            found.add(id(node.value))
        elif isinstance(node, ast.Raise):
            found |= {id(inner) for inner in ast.walk(node)}
        elif isinstance(node, ast.JoinedStr):
            found |= {id(part) for part in node.values}
    return found


def _said(node: ast.AST) -> str:
    """The text of a constant or of an f-string, values left out."""
    if isinstance(node, ast.JoinedStr):
        return "".join(_said(part) for part in node.values)
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else ""


def sentences(tree: ast.Module) -> Iterator[str]:
    """Yield the texts of a module that read as sentences: words with values in them, or a stop."""
    aside = _aside(tree)
    for node in ast.walk(tree):
        text = "" if id(node) in aside else _said(node)
        words = len(_WORDS.findall(text))
        is_pieced = isinstance(node, ast.JoinedStr) and words >= 2
        if (is_pieced or (text.endswith(".") and words >= 3)) and not text.startswith("/"):
            yield text


def _module_names() -> Iterator[tuple[str, ast.Module]]:
    for file, tree in python_files("service").items():
        name = module_name(file)
        if name.partition(".")[0] in BELOW_THE_EDGE:
            yield name, tree


def test_nothing_below_the_edge_makes_sentences() -> None:
    """A module below the edge yields messages."""
    assert [name for name, tree in _module_names() if any(sentences(tree))] == []


def test_a_sentence_in_code_is_seen() -> None:
    """Words with a value in them, and words with a stop, are sentences; an error's is none."""
    told = 'def f():\n    yield f"{x} is too thin"\nb = "This is too thin."; c = "EN 206"'
    assert sorted(sentences(ast.parse(told))) == [" is too thin", "This is too thin."]
    assert list(sentences(ast.parse('"""This is one."""\nraise E("It is not so.")'))) == []
