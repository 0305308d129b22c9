"""A maker's own sentences, which replace ours: files beside the profile, checked before use."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace
from pathlib import Path
from typing import Final

from fluent.syntax import FluentParser, FluentSerializer, ast

from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.message import Message
from ledgerstone.wording.catalogues import LANGUAGES, catalogue
from ledgerstone.wording.page import (
    COUNTED,
    CUSTOMERS_TEXTS,
    DESK_TEXTS,
    WORKSHOP_TEXTS,
    PageText,
    PageTextError,
    page_messages,
    texts_of,
)
from ledgerstone.wording.profile import label_names
from ledgerstone.wording.speech import ALWAYS_GIVEN
from ledgerstone.workshop import load_profile
from ledgerstone.workshop.records import OwnSentences, Workshop

FILES: Final = {language: f"sentences.{language}.ftl" for language in LANGUAGES}
LARGEST_FILE: Final = 200_000
FUNCTIONS: Final = frozenset({"NAME", "START", "HOWMANY"})
# What the speech gives to every message.
_GRAMMAR: Final = frozenset({"case", *ALWAYS_GIVEN})
_PAGES: Final = (CUSTOMERS_TEXTS, DESK_TEXTS, WORKSHOP_TEXTS)


def sentences_in(folder: Path) -> tuple[OwnSentences, ...]:
    """Return the maker's own sentences, each language's from its file beside the profile.

    Raises
    ------
    ProfileError
        With every fault of every file: what is no message, a message that we do not have, a value
        that ours is not given.
    """
    own: list[OwnSentences] = []
    faults: list[ProfileFault] = []
    for language, name in FILES.items():
        path = folder / name
        if path.is_file():
            text, found = _read(path, language)
            faults += [ProfileFault(line, name, why) for line, why in found]
            own.append(OwnSentences(language=language, text=text))
    if faults:
        raise ProfileError(faults)
    return tuple(own)


def load_workshop(path: Path) -> Workshop:
    """Return the workshop of a profile in a file, with the maker's own sentences.

    Raises
    ------
    ProfileError
        With every fault of the profile, or of the sentences.
    """
    return replace(load_profile(path), sentences=sentences_in(path.parent))


def _read(path: Path, language: str) -> tuple[str, list[tuple[int, Message]]]:
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError):
        return "", [(0, Message("fault-own-not-utf8"))]
    if len(text) > LARGEST_FILE:
        return "", [(0, Message("fault-own-too-long", most=LARGEST_FILE))]
    return text, list(sentence_faults(text, language))


def sentence_faults(text: str, language: str) -> Iterator[tuple[int, Message]]:
    """Yield what is wrong in a maker's sentences of one language, each with its line."""
    ours = {m.id.name: m for m in catalogue(language).body if isinstance(m, ast.Message)}
    for entry in FluentParser().parse(text).body:
        start = entry.span.start if entry.span is not None else 0
        line = text.count("\n", 0, start) + 1
        if isinstance(entry, ast.Junk):
            yield line, Message("fault-own-no-sentence")
        elif isinstance(entry, ast.Message) and entry.value is None and entry.attributes:
            yield from ((line, why) for why in _page_faults(entry, language))
        elif isinstance(entry, ast.Message):
            yield from ((line, why) for why in _message_faults(entry, ours))
        elif isinstance(entry, ast.Term):
            yield line, Message("fault-own-no-term", name=f"-{entry.id.name}")


def _message_faults(message: ast.Message, ours: dict[str, ast.Message]) -> Iterator[Message]:
    name = message.id.name
    if name not in ours:
        yield Message("fault-own-unknown", name=name)
        return
    if message.value is None:
        yield Message("fault-own-empty", name=name)
        return
    known = _values(ours[name], ours)
    for value in sorted(_values(message, ours) - known):
        yield _not_given(name, value, known)
    for function in sorted(_named(message, ast.FunctionReference) - FUNCTIONS):
        yield Message("fault-own-function", name=name, function=f"{function}()")
    for other in sorted(_named(message, ast.MessageReference) - ours.keys()):
        yield Message("fault-own-reference", name=name, other=other)


def _not_given(name: str, value: str, known: Iterable[str]) -> Message:
    """State that a sentence has no such value, and which it has."""
    given = ", ".join(f"${placeholder}" for placeholder in sorted(known))
    if not given:
        return Message("fault-own-no-values", name=name, value=f"${value}")
    return Message("fault-own-value", name=name, value=f"${value}", given=given)


def _page_faults(message: ast.Message, language: str) -> Iterator[Message]:
    """Yield what is wrong in a maker's sentences of a page, such as ``slabs.added``.

    Of the customers' page, of the desk or of the profile's form, whose labels are called as the
    records' keys are: no two have a name in common.
    """
    ours = dict.fromkeys(label_names(), "") | {
        key: said for page in _PAGES for key, said in page_messages(language, page).items()
    }
    try:
        texts = texts_of(FluentSerializer().serialize_entry(message))
    except PageTextError as fault:
        yield Message("fault-own-page", why=fault.why, name=fault.name, counted=f"${COUNTED}")
        return
    for key, text in texts.items():
        if key not in ours:
            yield Message("fault-own-page-unsaid", name=key)
        elif strange := _braced(text) - _braced(ours[key]):
            yield _not_given(key, min(strange), _braced(ours[key]))


def _braced(text: PageText) -> set[str]:
    """The values in a text of the page's."""
    every = text if isinstance(text, str) else " ".join(text.values())
    return set(re.findall(r"\{(\w+)\}", every)) | ({COUNTED} if isinstance(text, dict) else set())


def _values(message: ast.Message, ours: dict[str, ast.Message]) -> set[str]:
    """The values that a message asks for, by way of ours too."""
    found = _named(message, ast.VariableReference) - _GRAMMAR
    for other in _named(message, ast.MessageReference) & ours.keys():
        if other != message.id.name:
            found |= _values(ours[other], ours)
    return found


def _named(part: object, kind: type[ast.BaseNode]) -> set[str]:
    """The names of all that a message asks for of one kind."""
    if isinstance(part, list):
        return {name for element in part for name in _named(element, kind)}
    if not isinstance(part, ast.BaseNode):
        return set()
    inner = _named(list(vars(part).values()), kind)
    return inner | {part.id.name} if isinstance(part, kind) else inner  # type: ignore[attr-defined]
