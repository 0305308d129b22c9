"""The catalogues of sentences: read once from their files, with a maker's own in their place.

Project Fluent's format: it has plurals, choices by a value, and named values; a message is a
whole sentence, so that each language orders its words as it must.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any, Final

from fluent.runtime import FluentBundle, FluentResource
from fluent.syntax import ast

from ledgerstone.wording.variants import NO_WORDS, Words

LANGUAGES: Final = ("en", "de")
USUAL: Final = "en"
_FOLDER: Final = Path(__file__).with_name("catalogues")


@cache
def catalogue(language: str) -> ast.Resource:
    """Return every message of a language, from all its files."""
    files = sorted((_FOLDER / language).glob("*.ftl"))
    return FluentResource("\n".join(file.read_text(encoding="utf-8") for file in files))


@cache
def page_catalogue(language: str, folder: str = "page") -> str:
    """Return the page's or the desk's messages in a language, in Fluent's format."""
    return (_FOLDER / folder / f"{language}.ftl").read_text(encoding="utf-8")


@cache
def variant(words: str, of: str = "service") -> str:
    """Return the messages that replace ours in one country's English."""
    file = _FOLDER / "variants" / f"{words}-{of}.ftl"
    return file.read_text(encoding="utf-8") if file.is_file() else ""


def bundle(
    language: str,
    locale: str,
    functions: dict[str, Callable[..., Any]],
    own: str = "",
    words: Words = NO_WORDS,
) -> FluentBundle:
    """Make what fills messages of one language in.

    Parameters
    ----------
    locale
        The place whose plurals are used.
    own
        The maker's own messages, which replace ours.
    words
        Words of the country, which replace those of our messages.
    """
    made = FluentBundle([locale], functions=functions, use_isolating=False)
    made.add_resource(words.in_place(catalogue(language)))
    if words.messages:
        made.add_resource(FluentResource(words.messages), allow_overrides=True)
    if own:
        made.add_resource(_of_the_service(FluentResource(own)), allow_overrides=True)
    return made


def _of_the_service(own: ast.Resource) -> ast.Resource:
    """Leave out what is the page's: messages that have attributes and no text."""
    own.body = [e for e in own.body if not isinstance(e, ast.Message) or e.value is not None]
    return own


def known_language(*asked: str | None, usual: str = USUAL) -> str:
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
