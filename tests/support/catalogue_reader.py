"""What the catalogues' messages ask for, and what the service's code gives them."""

from __future__ import annotations

import ast as python
from collections.abc import Iterator
from functools import cache
from typing import Any

from fluent.syntax import ast
from fluent.syntax.visitor import Visitor

from design.source import python_files
from ledgerstone.quantities import Length
from ledgerstone.wording import LANGUAGES, Listed, Message
from ledgerstone.wording.catalogues import catalogue

OF_THE_SPEECH = ("wording.message", "wording.speech")
_GRAMMAR = "case"  # the speech gives it to every name
_PLURALS = {"one": 1, "other": 5}


class Asked(Visitor):  # type: ignore[misc]
    """What one message asks for: values, functions, other messages, and what it chooses by."""

    def __init__(self) -> None:
        self.values: set[str] = set()
        self.names: set[str] = set()
        self.functions: set[str] = set()
        self.messages: set[str] = set()
        self.chosen: dict[str, list[str | int]] = {}
        self.text = ""

    def visit_VariableReference(self, node: ast.VariableReference) -> None:  # noqa: N802
        self.values.add(str(node.id.name))

    def visit_FunctionReference(self, node: ast.FunctionReference) -> None:  # noqa: N802
        self.functions.add(str(node.id.name))
        self.names |= {str(one.id.name) for one in node.arguments.positional}
        self.generic_visit(node)

    def visit_MessageReference(self, node: ast.MessageReference) -> None:  # noqa: N802
        self.messages.add(str(node.id.name))

    def visit_SelectExpression(self, node: ast.SelectExpression) -> None:  # noqa: N802
        if isinstance(node.selector, ast.VariableReference):
            keys = self.chosen.setdefault(str(node.selector.id.name), [])
            keys += [_key(variant.key) for variant in node.variants]
        self.generic_visit(node)

    def visit_TextElement(self, node: ast.TextElement) -> None:  # noqa: N802
        self.text += str(node.value)


def _key(key: ast.Identifier | ast.NumberLiteral) -> str | int:
    return str(key.name) if isinstance(key, ast.Identifier) else int(key.value)


@cache
def messages(language: str) -> dict[str, Asked]:
    """Return every message of a language, by its name."""
    found: dict[str, Asked] = {}
    for entry in catalogue(language).body:
        if isinstance(entry, ast.Message):
            name = str(entry.id.name)
            assert name not in found, f"{name} stands twice in {language}"
            found[name] = Asked()
            found[name].visit(entry.value)
    return found


def values_of(language: str, name: str) -> set[str]:
    """Return the values that a message asks for, by way of other messages too."""
    asked = messages(language)[name]
    inner = [values_of(language, other) for other in asked.messages]
    return (asked.values | set().union(*inner)) - {_GRAMMAR}


def names_in(language: str, name: str) -> set[str]:
    """Return which of a message's values it says by ``NAME`` and the like."""
    asked = messages(language)[name]
    return asked.names.union(*(names_in(language, other) for other in asked.messages))


def _chosen(name: str) -> dict[str, list[str | int]]:
    """Return what a message chooses by, of each of its values, in any language."""
    found: dict[str, list[str | int]] = {}
    for language in LANGUAGES:
        asked = messages(language)[name]
        for chosen in (asked.chosen, *(_chosen(inner) for inner in asked.messages)):
            for value, keys in chosen.items():
                found.setdefault(value, []).extend(keys)
    found.pop(_GRAMMAR, None)
    return found


def samples(name: str) -> Iterator[Message]:
    """Yield a message with values such as it may be given, each that it chooses by once."""
    chosen = _chosen(name)
    every = set().union(*(values_of(language, name) for language in LANGUAGES))
    named = set().union(*(names_in(language, name) for language in LANGUAGES))
    for turn in range(max([2, *(len(keys) for keys in chosen.values())])):
        yield Message(name, **{one: _sample(one, turn, chosen, named) for one in every})


def _sample(value: str, turn: int, chosen: dict[str, list[str | int]], named: set[str]) -> Any:  # noqa: ANN401  a value of any kind
    if value in chosen:
        key = chosen[value][turn % len(chosen[value])]
        return _PLURALS.get(key, key) if isinstance(key, str) else key
    if value in named:
        things = (Message("slab-labelled", label="Q"), Message("slab-numbered", number=2))
        return Listed(things) if turn % 2 else things[0]
    return Length.parse("12.5 cm")


def made() -> Iterator[tuple[str, str | None, python.Call]]:
    """Yield every message that the code makes: its place, its name where written out, the call."""
    for file, tree in python_files("service").items():
        place = ".".join(file.with_suffix("").parts[-2:])
        if place in OF_THE_SPEECH:
            continue
        for node in python.walk(tree):
            if isinstance(node, python.Call) and getattr(node.func, "id", "") == "Message":
                for name in _names(node.args[0]):
                    yield f"{place}:{node.lineno}", name, node


def _names(node: python.expr) -> list[str | None]:
    """The names that a message may have: written out, or one of two."""
    if isinstance(node, python.IfExp):
        return [*_names(node.body), *_names(node.orelse)]
    return [str(node.value) if isinstance(node, python.Constant) else None]
