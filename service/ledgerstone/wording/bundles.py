"""What fills one language's messages in: ours are parsed one by one, when they are first said.

A service says some two hundred of the two thousand that there are, and to parse all of a language
takes a fifth of a second.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from threading import RLock
from typing import Any

from fluent.runtime import FluentBundle, FluentResource
from fluent.runtime.resolver import Pattern
from fluent.syntax import ast
from fluent.syntax.visitor import Visitor

from ledgerstone.errors import WordingError
from ledgerstone.wording.catalogues import entry_of, sources
from ledgerstone.wording.variants import NO_WORDS, Words


class MessageBundle:
    """Fills messages of one language in.

    Parameters
    ----------
    locale
        The place whose plurals are used.
    own
        The maker's own messages, which replace ours.
    words
        Words of the country, which replace those of our messages.
    """

    def __init__(
        self,
        language: str,
        locale: str,
        functions: dict[str, Callable[..., Any]],
        own: str = "",
        words: Words = NO_WORDS,
    ) -> None:
        self._language = language
        self._words = words
        self._bundle = FluentBundle([locale], functions=functions, use_isolating=False)
        self._instead = {**_with_text(words.messages), **_with_text(own)}
        self._parsed: set[str] = set()  # with all that they refer to
        self._parsing = RLock()

    def pattern(self, name: str) -> Pattern:
        """Return a message's text, to be filled in.

        Raises
        ------
        WordingError
            There is no such message.
        """
        self._parse(name)
        if not self._bundle.has_message(name):
            raise WordingError(name, "there is no such message")
        pattern = self._bundle.get_message(name).value
        if pattern is None:
            raise WordingError(name, "it has no text")
        return pattern

    def filled(self, pattern: Pattern, values: Mapping[str, object]) -> tuple[str, list[Exception]]:
        """Return a text with its values filled in, and what was wrong with them."""
        text, faults = self._bundle.format_pattern(pattern, dict(values))
        return str(text), faults

    def _parse(self, name: str) -> None:
        """Parse a message and all that it refers to, unless they are parsed already.

        Threads of one process may ask for it at once: one parses, the others wait.
        """
        if name in self._parsed:
            return
        with self._parsing:
            if self._bundle.has_message(name):  # one that refers to itself, or was waited for
                return
            entry = self._instead.get(name)
            if entry is None and name in sources(self._language):
                entry = self._words.in_place(entry_of(self._language, name))
            if entry is not None:
                self._bundle.add_resource(ast.Resource([entry]))
                for other in _References.in_entry(entry):
                    self._parse(other)
            self._parsed.add(name)


class _References(Visitor):
    """The names of the messages that a message refers to."""

    def __init__(self) -> None:
        self.names: list[str] = []

    @classmethod
    def in_entry(cls, entry: ast.Message) -> list[str]:
        """Return the names of the messages that an entry refers to."""
        found = cls()
        found.visit(entry)
        return found.names

    def visit_MessageReference(self, node: ast.MessageReference) -> None:  # noqa: N802  fluent's own name
        self.names.append(node.id.name)


def _with_text(source: str) -> dict[str, ast.Message]:
    """Return the messages of a source by name, but the page's: they have attributes and no text."""
    return {entry.id.name: entry for entry in _messages(source) if entry.value is not None}


def _messages(source: str) -> Iterator[ast.Message]:
    """Yield the messages of a source, where there is one."""
    if source:
        yield from (e for e in FluentResource(source).body if isinstance(e, ast.Message))
