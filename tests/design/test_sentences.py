"""Sentences are made at the edge, from catalogues."""

import ast
import re
from collections.abc import Iterator
from typing import Final

from design.source import module_name, python_files

# Where no sentence is made: all that answers or draws. What is English by its nature is elsewhere:
# the contract's descriptions (codec, contract), grammars of enquiries, errors, command lines.
HELD: Final = (
    "api", "application", "checks", "drawing", "form_page", "goes_in", "layout", "mailbox", "mix",
    "outline", "papers", "price", "quote", "reinforcement", "remedies", "schedule",
    "shade", "shape", "siting", "stages", "steel", "strength", "strip_rules", "terms", "transport",
    "work",
)  # fmt: skip
_WORDS: Final = re.compile(r"\b[a-z]{2,}\b")
_PHRASE: Final = re.compile(r"\b[a-z]{2,}(?:[ ,]+|-)[a-z]{2,}\b")
_HEADER: Final = re.compile(r"-src |max-age=")  # of an answer: no prose
# What a log, a metric's help and who runs the service read, in English.
_LOGGED: Final = {"api.counts", "api.limits", "api.reload", "api.wsgi"}


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
        is_pieced = isinstance(node, ast.JoinedStr) and _PHRASE.search(text) is not None
        is_whole = text.endswith(".") and len(_WORDS.findall(text)) >= 3
        if (is_pieced or is_whole) and not text.startswith(("/", "<")) and not _HEADER.search(text):
            yield text


def _module_names() -> Iterator[tuple[str, ast.Module]]:
    for file, tree in python_files("service").items():
        name = module_name(file)
        if name.partition(".")[0] in HELD and name not in _LOGGED:
            yield name, tree


def test_no_sentence_is_made_in_code() -> None:
    """What answers or draws says messages of the catalogues."""
    assert [name for name, tree in _module_names() if any(sentences(tree))] == []


def test_a_sentence_in_code_is_seen() -> None:
    """Words with a value in them, and words with a stop, are sentences; an error's is none."""
    told = 'def f():\n    yield f"{x} is too thin"\nb = "This is too thin."; c = "EN 206"'
    assert sorted(sentences(ast.parse(told))) == [" is too thin", "This is too thin."]
    assert list(sentences(ast.parse('f"{x} from {y}"; f"cut-out {n}"'))) == ["cut-out "]
    assert list(sentences(ast.parse('"""This is one."""\nraise E("It is not so.")'))) == []
