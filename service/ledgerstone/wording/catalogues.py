"""The catalogues of sentences: read once from their files, with a maker's own in their place.

Project Fluent's format: it has plurals, choices by a value, and named values; a message is a
whole sentence, so that each language orders its words as it must.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Final

from fluent.syntax import FluentParser, ast

LANGUAGES: Final = ("en", "de")
USUAL_LANGUAGE: Final = "en"
_FOLDER: Final = Path(__file__).with_name("catalogues")
_BEGINNING: Final = re.compile(r"^([A-Za-z][\w-]*)(?= *=)", re.MULTILINE)


@cache
def catalogue(language: str) -> ast.Resource:
    """Return every message of a language, from all its files."""
    return FluentParser().parse(_text(language))


@cache
def sources(language: str) -> Mapping[str, str]:
    """Return the source of every message of a language by its name, from all its files.

    A letter at the beginning of a line begins a message, and nothing else (Fluent 1.0, ``Entry``).
    """
    begun = _BEGINNING.split(_text(language))[1:]  # what follows each name stands after it
    return {name: f"{name}{rest}" for name, rest in zip(begun[::2], begun[1::2], strict=True)}


@cache
def entry_of(language: str, name: str) -> ast.Message:
    """Return one message of a language, parsed.

    Raises
    ------
    KeyError
        There is none.
    """
    entry = FluentParser(with_spans=False).parse_entry(sources(language)[name])
    if not isinstance(entry, ast.Message):
        raise KeyError(name)
    return entry


def _text(language: str) -> str:
    files = sorted((_FOLDER / language).glob("*.ftl"))
    return "\n".join(file.read_text(encoding="utf-8") for file in files)


@cache
def page_catalogue(language: str, folder: str = "page") -> str:
    """Return the page's or the desk's messages in a language, in Fluent's format."""
    return (_FOLDER / folder / f"{language}.ftl").read_text(encoding="utf-8")


@cache
def variant(words: str, of: str = "service") -> str:
    """Return the messages that replace ours in one country's English."""
    file = _FOLDER / "variants" / f"{words}-{of}.ftl"
    return file.read_text(encoding="utf-8") if file.is_file() else ""


def known_language(*asked: str | None, usual: str = USUAL_LANGUAGE) -> str:
    """Return the first requested language with a catalogue; else the default one.

    Parameters
    ----------
    asked
        Language tags (RFC 5646); what is none is passed over.
    """
    for tag in asked:
        language = (tag or "").replace("_", "-").partition("-")[0].lower()
        if language in LANGUAGES:
            return language
    return usual
