"""The page's document in another language, for the person who reads it without a script."""

from __future__ import annotations

import re
from html import escape, unescape

from ledgerstone.wording.page import page_messages

__all__ = ["document_in", "message_keys_in"]

_TEXT = re.compile(r'(<[^<>]*\bdata-says="([^"]+)"[^<>]*>)([^<]+)(?=<)')
_LABEL = re.compile(r'(\bdata-says-label="([^"]+)" aria-label=")[^"]*(?=")')
_SET_IN = re.compile(r"^ +", re.MULTILINE)
_LANGUAGE = re.compile(r'(?<=<html lang=")[^"]*(?=")')


def message_keys_in(document: str) -> set[str]:
    """Name the messages that a document says itself, in its templates too."""
    return {found[2] for pattern in (_TEXT, _LABEL) for found in pattern.finditer(document)}


def document_in(language: str, document: str) -> str:
    """Translate all that a document says before any script runs.

    Indentation is left out, which saves bytes: nobody edits what is written here.

    Parameters
    ----------
    document
        The page's own, in which an element names its message: ``data-says`` its text,
        ``data-says-label`` its name.

    Raises
    ------
    ValueError
        Where it names no message, or says otherwise than its own language's catalogue.
    """
    english, other = page_messages("en"), page_messages(language)

    def translated(found: re.Match[str]) -> str:
        opening, key, text = found.groups()
        if unescape(text) != english.get(key):
            raise ValueError(f"{key} is {english.get(key)!r} and not {text!r}")
        return opening + escape(str(other[key]), quote=False)

    def label(found: re.Match[str]) -> str:
        return found[1] + escape(str(other[found[2]]))

    made = _LABEL.sub(label, _TEXT.sub(translated, document))
    return _SET_IN.sub("", _LANGUAGE.sub(language, made, count=1))
