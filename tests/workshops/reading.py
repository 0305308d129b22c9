"""What a person reads of an answer, and whose formats it is to be in."""

import re
from collections.abc import Iterator
from typing import Final

from ledgerstone.json_types import JSON

LOCALES: Final = {"demonstration": "en_GB", "germany": "de_DE", "united_states": "en_US"}
# Members that no person reads.
UNREAD: Final = frozenset(
    {"token", "link", "patch", "drawings", "order", "check", "id", "source", "language", "base"}
    | {"type", "reference", "at", "worst_case", "fingerprint", "formats", "hex", "recipe", "kind"}
    | {"currency", "postcodes", "by_eye", "cement", "html", "svg", "uses", "places", "corners"}
    | {
        "words",
        "country",
        "profile",
        "surface",
        "name",
        "kinds",
        "email",
        "locale",
        "instance",
        "rests_on",
    }
)


def read(document: JSON, key: str = "") -> Iterator[str]:
    """Every text of an answer that a person reads."""
    if isinstance(document, str) and " " in document:
        yield document
    elif isinstance(document, dict):
        for name, part in document.items():
            if name not in UNREAD:
                yield from read(part, name)
    elif isinstance(document, list):
        for part in document:
            yield from read(part, key)


def plain(text: str) -> str:
    """A text with plain blanks."""
    return re.sub(r"\s", " ", text)
