"""Text that is safe to print on a drawing, in an email and in a log line."""

from __future__ import annotations

import re
import unicodedata

from ledgerstone.message import Message

__all__ = ["dotted", "text_fault"]

# Controls, format and direction marks, surrogates, unassigned, private, line separators.
_HIDDEN_CATEGORIES = {"Cc", "Cf", "Cs", "Cn", "Co", "Zl", "Zp"}
_JOINERS = {"\u200c", "\u200d"}  # the two format characters that some scripts need
_BLANK_LETTERS = {"\u115f", "\u1160", "\u3164", "\uffa0"}  # letters that print as nothing
_TALLEST = 4  # marks on one letter; no script's everyday spelling needs more: from memory
_STACK = re.compile(f"m{{{_TALLEST + 1},}}")


def text_fault(text: str, field: Message) -> Message | None:
    """Return what the text of a field must not include; None if it prints as it reads."""
    if any(_is_hidden(c) for c in text):
        return Message("text-with-hidden", field=field)
    marks = "".join("m" if unicodedata.category(c) in ("Mn", "Me") else "." for c in text)
    if _STACK.search(marks):
        return Message("text-with-stacked", field=field, most=_TALLEST)
    return None


def _is_hidden(c: str) -> bool:
    if c in _JOINERS:
        return False
    return c in _BLANK_LETTERS or unicodedata.category(c) in _HIDDEN_CATEGORIES


def dotted(text: str) -> str:
    """Return a text with a dot for every character that does not print."""
    return "".join(c if c.isprintable() else "·" for c in text)
