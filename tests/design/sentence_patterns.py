"""Sentences of the catalogues as patterns: what a text says of one, whatever its values are."""

import ast
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from itertools import product
from typing import Final

from fluent.syntax import ast as ftl

from design.source import PACKAGE, strings_of
from support.catalogue_reader import entries_in

# A sentence is held from three words of its own on; what ends as none (a label, a part) from four.
_SENTENCE_WORDS: Final = 3
_PART_WORDS: Final = 4
_MOST_FORMS: Final = 200
_VALUE: Final = "\0"
_WORD: Final = re.compile(r"[^\W\d_]{2,}(?:['’-]\w+)*")
_END: Final = re.compile(r"(?<=[.!?:])\s+(?=[A-ZÄÖÜ\0„“])|\n")


@dataclass(frozen=True, slots=True)
class SentencePattern:
    """A sentence with any values in it, and its longest text between two of them."""

    text: str
    longest: str
    pattern: re.Pattern[str]

    def is_in(self, text: str) -> bool:
        """Return whether a text says the sentence, with whatever values."""
        return self.longest in text and self.pattern.search(text) is not None


@cache
def sentence_patterns() -> tuple[SentencePattern, ...]:
    """Every sentence of the catalogues that has words enough to be known by."""
    texts = {
        text
        for file in sorted((PACKAGE / "wording" / "catalogues").rglob("*.ftl"))
        for entry in entries_in(file)
        if isinstance(entry, ftl.Message | ftl.Term)
        for pattern in (entry.value, *(one.value for one in entry.attributes))
        if pattern is not None
        for text in sentences_of(pattern)
    }
    return tuple(map(_pattern, sorted(texts)))


def sentences_of(pattern: ftl.Pattern) -> Iterator[str]:
    """The sentences of a message, with a mark for each value, that have words enough."""
    for form in _forms(pattern):
        for part in _END.split(form):
            text = " ".join(part.split())
            least = _SENTENCE_WORDS if text.endswith((".", "!", "?")) else _PART_WORDS
            if len(_WORD.findall(text)) >= least:
                yield text


def repeats(tree: ast.AST, patterns: tuple[SentencePattern, ...]) -> list[str]:
    """The strings of a module, but for its docstrings, that say a sentence again."""
    return [text for text in strings_of(tree) if says_one(text, patterns)]


def says_one(text: str, patterns: tuple[SentencePattern, ...]) -> bool:
    """Return whether a text says one of the sentences."""
    plain = " ".join(text.split())
    long_enough = len(_WORD.findall(plain)) >= _SENTENCE_WORDS
    return long_enough and any(one.is_in(plain) for one in patterns)


def _forms(pattern: ftl.Pattern) -> list[str]:
    """A message's texts, one for each way of its choices, up to a number."""
    parts = [_ways(element) for element in pattern.elements]
    return ["".join(form) for form, _ in zip(product(*parts), range(_MOST_FORMS), strict=False)]


def _ways(element: object) -> list[str]:
    if isinstance(element, ftl.TextElement):
        return [str(element.value)]
    chosen = element.expression if isinstance(element, ftl.Placeable) else None
    if isinstance(chosen, ftl.SelectExpression):
        return [form for variant in chosen.variants for form in _forms(variant.value)]
    return [_VALUE]


def _pattern(text: str) -> SentencePattern:
    parts = text.rstrip(".").split(_VALUE)
    pattern = re.compile(r".{1,80}?".join(map(re.escape, parts)))
    return SentencePattern(text, max(parts, key=len).strip(), pattern)
