"""What the catalogues' messages ask for, and what the service's code gives them."""

from __future__ import annotations

import ast as python
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

from fluent.syntax import FluentParser, ast

import ledgerstone
from ledgerstone.quantities import Length
from ledgerstone.wording import LANGUAGES, Listed, Message
from ledgerstone.wording.catalogues import catalogue

OF_THE_SPEECH = ("ledgerstone.message", "wording.speech")
# The speech gives them to every message.
_GRAMMAR = {"case", "country", "lengths", "masses", "volumes", "temperatures", "strengths"}
_PLURALS = {"one": 1, "other": 5}


class MessagePattern:
    """What one message asks for: values, functions, other messages, and what it chooses by.

    ``names`` are the values that it says by a function.
    """

    def __init__(self, pattern: ast.Pattern) -> None:
        self.values: set[str] = set()
        self.names: set[str] = set()
        self.functions: set[str] = set()
        self.messages: set[str] = set()
        self.chosen: dict[str, list[str | int]] = {}
        self.text = ""
        for node in _nodes(pattern):
            self._read(node)

    def _read(self, node: ast.BaseNode) -> None:
        match node:
            case ast.VariableReference():
                self.values.add(str(node.id.name))
            case ast.FunctionReference():
                self.functions.add(str(node.id.name))
                said = node.arguments.positional
                self.names |= {v.id.name for v in said if isinstance(v, ast.VariableReference)}
            case ast.MessageReference():
                self.messages.add(str(node.id.name))
            case ast.SelectExpression(selector=ast.VariableReference() as selector):
                keys = self.chosen.setdefault(str(selector.id.name), [])
                keys += [_key(variant.key) for variant in node.variants]
            case ast.TextElement():
                self.text += str(node.value)


@cache
def entries_in(file: Path) -> list[ast.EntryType]:
    """What stands in one file of the catalogues, not to be changed."""
    return FluentParser().parse(file.read_text(encoding="utf-8")).body


def texts_of(part: object) -> Iterator[str]:
    """The texts between the values of a message, its variants' too."""
    if isinstance(part, list):
        for one in part:
            yield from texts_of(one)
    elif isinstance(part, ast.TextElement):
        yield str(part.value)
    elif isinstance(part, ast.BaseNode):
        yield from texts_of(list(vars(part).values()))


def _nodes(part: object) -> Iterator[ast.BaseNode]:
    """Every node of a pattern, in the order of its text."""
    if isinstance(part, list):
        for one in part:
            yield from _nodes(one)
    elif isinstance(part, ast.BaseNode):
        yield part
        yield from _nodes(list(vars(part).values()))


def _key(key: ast.Identifier | ast.NumberLiteral) -> str | int:
    return str(key.name) if isinstance(key, ast.Identifier) else int(key.value)


@cache
def messages(language: str) -> dict[str, MessagePattern]:
    """Return every message of a language, by its name."""
    found: dict[str, MessagePattern] = {}
    for entry in catalogue(language).body:
        if isinstance(entry, ast.Message) and entry.value is not None:
            name = str(entry.id.name)
            assert name not in found, f"{name} stands twice in {language}"
            found[name] = MessagePattern(entry.value)
    return found


def values_of(language: str, name: str) -> set[str]:
    """Return the values that a message asks for, by way of other messages too."""
    asked = messages(language)[name]
    inner = [values_of(language, other) for other in asked.messages]
    return (asked.values | set().union(*inner)) - _GRAMMAR


def names_in(language: str, name: str) -> set[str]:
    """Return which of a message's values it says by ``NAME`` and the like."""
    asked = messages(language)[name]
    return asked.names.union(*(names_in(language, other) for other in asked.messages))


def _chosen(language: str, name: str) -> Iterator[tuple[str, list[str | int]]]:
    """Yield what a message chooses by, of each of its values."""
    asked = messages(language)[name]
    yield from ((value, keys) for value, keys in asked.chosen.items() if value not in _GRAMMAR)
    for inner in asked.messages:
        yield from _chosen(language, inner)


def samples(name: str) -> Iterator[Message]:
    """Yield a message with values such as it may be given, each that it chooses by once."""
    chosen: dict[str, list[str | int]] = {}
    for language in LANGUAGES:
        for value, keys in _chosen(language, name):
            chosen.setdefault(value, []).extend(keys)
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


@cache
def made() -> tuple[tuple[str, str | None, python.Call], ...]:
    """Return every message that the code makes: its place, its name where written out, the call."""
    return tuple(_made())


def _made() -> Iterator[tuple[str, str | None, python.Call]]:
    """Yield every message that the code makes: its place, its name where written out, the call."""
    for file in sorted(Path(ledgerstone.__file__).parent.rglob("*.py")):
        place = ".".join(file.with_suffix("").parts[-2:])
        if place in OF_THE_SPEECH:
            continue
        tree = python.parse(file.read_text(encoding="utf-8"))
        if not _knows_messages(tree):
            continue
        for node in python.walk(tree):
            if isinstance(node, python.Call) and getattr(node.func, "id", "") == "Message":
                for name in _names(node.args[0]):
                    yield f"{place}:{node.lineno}", name, node


def _knows_messages(tree: python.Module) -> bool:
    """Return whether a module imports our messages, and not a letter's."""
    return any(
        isinstance(node, python.ImportFrom)
        and (node.module or "").startswith(("ledgerstone.message", "ledgerstone.wording"))
        and any(alias.name == "Message" for alias in node.names)
        for node in python.walk(tree)
    )


def _names(node: python.expr) -> list[str | None]:
    """The names that a message may have: written out, or one of two."""
    if isinstance(node, python.IfExp):
        return [*_names(node.body), *_names(node.orelse)]
    return [str(node.value) if isinstance(node, python.Constant) else None]
