"""Notes of calls: whether a message is one, and who rang."""

from __future__ import annotations

import re
from typing import Final

_TITLED: Final = (
    r"(?:Mr|Mrs|Ms|Miss|Dr|Herr|Frau|Mx)\.?\s(?:[A-ZÀ-Ý]\.?\s?){0,2}(?:[A-ZÀ-Ý][\w'’-]+\s?){1,2}"
)
_RANG: Final = re.compile(
    rf"(?P<name>{_TITLED}|[A-Z][\w'’-]+(?:\s[A-Z][\w'’-]+){{0,2}})\s(?:rang|phoned|called"
    rf"|telephoned|came in|popped in)\b"
)
_ON_PHONE: Final = re.compile(
    rf"\b(?:tel|phone|call from|caller|from|message from)\s?:?\s(?P<name>{_TITLED})", re.IGNORECASE
)
_ANYBODY: Final = re.compile(rf"(?P<name>\b{_TITLED})(?=[\s,;:)(.]|\Z)")
_SPEAKS: Final = re.compile(
    r"\b(?:it['’]s|this is|hier ist|hier spricht|my name is|my name['’]s|mein name ist)\s"
    r"(?P<name>[A-ZÀ-Ý][\w'’-]+(?:\s[A-ZÀ-Ý][\w'’-]+){0,2})\b"
)
_IS_NOTE: Final = re.compile(
    r"phone note|phone message|call taken|telefonnotiz|gesprächsnotiz|ansa?phone|answer ?phone"
    r"|answering machine|voice ?mail|voice message|message taken|\brang\b|\bcaller\b|^tel\b"
    r"|telephoned",
    re.IGNORECASE | re.MULTILINE,
)


def is_note(body: str) -> bool:
    """Return whether a message is a note of a call, or a message that someone spoke."""
    return bool(_IS_NOTE.search(body))


def name_in_note(body: str) -> str:
    """Return who rang or spoke, as a note names them."""
    for pattern in (_RANG, _SPEAKS, _ON_PHONE, _ANYBODY):
        found = pattern.search(body)
        if found:
            return found["name"].strip()
    return ""
