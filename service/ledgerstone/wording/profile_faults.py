"""The faults of a profile as sentences, in the profile's language if it names one."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.errors import ProfileError
from ledgerstone.wording.catalogues import known_language
from ledgerstone.wording.speech import Speech, speech_in


def maker_speech(error: ProfileError, *otherwise: str | None) -> Speech:
    """Return the speech for a profile's faults: in its language, else another."""
    return speech_in(known_language(error.language, *otherwise))


def fault_lines(error: ProfileError, file: str) -> Iterator[str]:
    """Yield the faults of a profile, one a line: ``FILE:LINE: key: sentence``."""
    speech = maker_speech(error)
    for one in error.faults:
        yield f"{file}:{one.line}: {one.key}: {speech.say(one.message)}\n"
