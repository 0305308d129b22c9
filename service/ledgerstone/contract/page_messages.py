"""The page's messages, one file a language, made from the catalogues that the service speaks from.

A message's attribute ``.added`` under ``slabs`` is the page's ``"slabs.added"``: a text with its
``{names}``, or one text for each plural category of ``n`` (Unicode TR 35 part 3, as
``Intl.PluralRules`` tells them).
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from importlib.resources import files

from fluent.syntax import FluentParser, ast

__all__ = ["PageText", "messages_script", "page_messages", "texts_of"]

COUNTED = "n"
_HEAD = """\
/** Made from catalogues/page/{language}.ftl: python -m ledgerstone.contract messages.{language} */

/** @type {{Messages}} */
export const messages = {{
"""

PageText = str | dict[str, str]


def messages_script(language: str) -> str:
    """Write the module of one language, as it lies in ``web/``."""
    lines = [
        f"  {json.dumps(key)}: {json.dumps(text, ensure_ascii=False)},\n"
        for key, text in page_messages(language).items()
    ]
    return _HEAD.format(language=language) + "".join(lines) + "};\n"


def page_messages(language: str) -> dict[str, PageText]:
    """Read what the page says in a language, by the names that the page asks with."""
    catalogue = files("ledgerstone.wording") / "catalogues" / "page" / f"{language}.ftl"
    return texts_of(catalogue.read_text(encoding="utf-8"))


def texts_of(source: str) -> dict[str, PageText]:
    """Read a catalogue of the page's.

    Raises
    ------
    ValueError
        Where it does not read, names a message twice, or says one in a way that the page does
        not know: only ``n`` chooses, and only plural categories are told apart.
    """
    messages: dict[str, PageText] = {}
    for key, pattern in _patterns(source):
        if key in messages:
            raise ValueError(f"{key} is there twice")
        messages[key] = _text(key, pattern)
    return messages


def _patterns(source: str) -> Iterator[tuple[str, ast.Pattern]]:
    for entry in FluentParser(with_spans=False).parse(source).body:
        match entry:
            case ast.Junk(content=content):
                raise ValueError(f"This does not read as Fluent: {content}")
            case ast.Message(id=name, value=ast.Pattern()):
                raise ValueError(f"{name.name} has a text that is no attribute of it")
            case ast.Message(id=name, attributes=attributes):
                for attribute in attributes:
                    yield f"{name.name}.{attribute.id.name}", attribute.value


def _text(key: str, pattern: ast.Pattern) -> PageText:
    chosen = _selection(pattern)
    if chosen is None:
        return "".join(_part(key, part) for part in pattern.elements)
    if not isinstance(chosen.selector, ast.VariableReference) or chosen.selector.id.name != COUNTED:
        raise ValueError(f"{key} chooses by something other than ${COUNTED}")
    texts = {}
    for variant in chosen.variants:
        match variant.key:
            case ast.Identifier(name=category):
                texts[category] = "".join(_part(key, part) for part in variant.value.elements)
            case _:
                raise ValueError(f"{key} tells a number apart, where plural categories are known")
    if "other" not in texts:
        raise ValueError(f"{key} has no [other]")
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
    raise ValueError(f"{key} holds something other than text and values")
