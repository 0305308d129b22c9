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
    for fault in error.faults:
        yield f"{file}:{fault.line}: {fault.key}: {speech.say(fault.message)}\n"
