"""The faults of a profile as sentences, in its language if it names one, and in its units."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.errors import ProfileError
from ledgerstone.wording.catalogues import known_language
from ledgerstone.wording.speech import Speech, speech_in
from ledgerstone.workshop.entry.local_units import working_place


def maker_speech(error: ProfileError, *otherwise: str | None) -> Speech:
    """Return the speech for a profile's faults: in its language, else another, and its units."""
    language = known_language(error.language, *otherwise)
    return speech_in(language, place=working_place(error.tables))


def fault_lines(error: ProfileError, file: str) -> Iterator[str]:
    """Yield the faults of a profile, one a line: ``FILE:LINE: key: sentence``."""
    speech = maker_speech(error)
    for fault in error.faults:
        yield f"{file}:{fault.line}: {fault.key}: {speech.say(fault.message)}\n"
