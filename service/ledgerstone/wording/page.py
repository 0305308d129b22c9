"""The page's messages by name, and the workshop's own in their place.

A message's attribute ``.added`` under ``slabs`` is the page's ``"slabs.added"``: a text with its
``{names}``, or one text for each plural category of ``n`` (Unicode TR 35 part 3, as
``Intl.PluralRules`` tells them).
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from typing import Final

from fluent.syntax import FluentParser, ast

from ledgerstone.wording.catalogues import page_catalogue, variant
from ledgerstone.wording.variants import NO_WORDS, Words, words_of
from ledgerstone.workshop.countries import RegionalSettings

PageText = str | dict[str, str]
COUNTED: Final = "n"
CUSTOMERS_TEXTS: Final = "page"
DESK_TEXTS: Final = "desk"
WORKSHOP_TEXTS: Final = "workshop"


class PageTextError(ValueError):
    """A text of a page is none that a page can say: ``why`` in a word, ``name`` which one."""

    def __init__(self, why: str, name: str) -> None:
        super().__init__(f"{name}: {why}")
        self.why, self.name = why, name


@lru_cache(maxsize=8)
def page_messages(language: str, folder: str = CUSTOMERS_TEXTS) -> dict[str, PageText]:
    """Return the page's or the desk's messages in a language, by name."""
    return texts_of(page_catalogue(language, folder))


@lru_cache(maxsize=16)
def page_differences(
    language: str, place: RegionalSettings, own: str = "", folder: str = CUSTOMERS_TEXTS
) -> dict[str, PageText]:
    """Return a page's messages that differ from its file: the country's, and the maker's own.

    Parameters
    ----------
    own
        The maker's sentences of that language, in Fluent's format.
    """
    words = words_of(language, place)
    other = variant(place.words, "page") if language == "en" else ""
    if words == NO_WORDS and not (other or own):
        return {}
    ours = page_messages(language, folder)
    texts = {key: _exchanged(text, words) for key, text in ours.items()}
    texts |= {key: text for key, text in texts_of(other).items() if key in ours}
    texts |= {key: text for key, text in own_texts(own).items() if key in ours}
    return {key: text for key, text in texts.items() if text != ours[key]}


def own_texts(source: str) -> dict[str, PageText]:
    """Read what a maker's file says of the page: messages that have attributes and no text."""
    return texts_of(source, alone=False)


def _exchanged(text: PageText, words: Words) -> PageText:
    if isinstance(text, str):
        return words.exchanged(text)
    return {category: words.exchanged(variant) for category, variant in text.items()}


def texts_of(source: str, *, alone: bool = True) -> dict[str, PageText]:
    """Read a catalogue of the page's.

    Parameters
    ----------
    alone
        Whether it holds nothing else; else what is no message of the page is passed over.

    Raises
    ------
    PageTextError
        Where it does not read, names a message twice, or says one in a way that the page does
        not know: only ``n`` chooses, and only plural categories are told apart.
    """
    messages: dict[str, PageText] = {}
    for key, pattern in _patterns(source, alone=alone):
        if key in messages:
            raise PageTextError("twice", key)
        messages[key] = _text(key, pattern)
    return messages


def _patterns(source: str, *, alone: bool) -> Iterator[tuple[str, ast.Pattern]]:
    for entry in FluentParser(with_spans=False).parse(source).body:
        match entry:
            case ast.Junk(content=content) if alone:
                raise PageTextError("unread", str(content).strip().partition("\n")[0])
            case ast.Message(id=name, value=ast.Pattern()) if alone:
                raise PageTextError("text", name.name)
            case ast.Message(id=name, attributes=attributes):
                for attribute in attributes:
                    yield f"{name.name}.{attribute.id.name}", attribute.value


def _text(key: str, pattern: ast.Pattern) -> PageText:
    chosen = _selection(pattern)
    if chosen is None:
        return "".join(_part(key, part) for part in pattern.elements)
    if not isinstance(chosen.selector, ast.VariableReference) or chosen.selector.id.name != COUNTED:
        raise PageTextError("chooses", key)
    texts = {}
    for branch in chosen.variants:
        match branch.key:
            case ast.Identifier(name=category):
                texts[category] = "".join(_part(key, part) for part in branch.value.elements)
            case _:
                raise PageTextError("number", key)
    if "other" not in texts:
        raise PageTextError("other", key)
    return texts


def _selection(pattern: ast.Pattern) -> ast.SelectExpression | None:
    match pattern.elements:
        case [ast.Placeable(expression=ast.SelectExpression() as chosen)]:
            return chosen
    return None


def _part(key: str, part: ast.TextElement | ast.Placeable) -> str:
    match part:
        case ast.TextElement(value=text):
            return text
        case ast.Placeable(expression=ast.StringLiteral() as literal):
            return str(literal.parse()["value"])
        case ast.Placeable(expression=ast.VariableReference(id=name)):
            return f"{{{name.name}}}"
    raise PageTextError("holds", key)
