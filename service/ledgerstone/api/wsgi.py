"""The entry point of gunicorn: ``ledgerstone.api.wsgi:app``."""

import os
import sys
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

from ledgerstone.api import logs
from ledgerstone.api.reload import Service, service
from ledgerstone.errors import LedgerstoneError, ProfileError, SettingsFault
from ledgerstone.message import Message
from ledgerstone.settings import settings_from
from ledgerstone.wording import known_language, speech_in
from ledgerstone.wording.profile_faults import fault_lines, maker_speech
from ledgerstone.workshop.reading.loader import language_of, profile_text


def _started() -> Service:
    """Make the service from the environment, or exit with the reason why it cannot start."""
    logs.start()
    try:
        return service(settings_from())
    except ProfileError as fault:
        headed = maker_speech(fault).say(Message("not-started-profile"))
        text = "".join([f"{headed}\n", *_lines(fault)])
    except SettingsFault as fault:
        speech = speech_in(_language())
        text = f"{speech.say(fault.message)} {speech.say(Message('not-started'))}"
    except LedgerstoneError as fault:
        text = f"{fault} {speech_in(_language()).say(Message('not-started'))}"
    with suppress(OSError):
        os.write(2, f"{text.rstrip()}\n".encode())
    sys.exit(3)


def _language() -> str:
    """Return the language of the workshop's file, if it can be read so far."""
    path = os.environ.get("LEDGERSTONE_WORKSHOP", "").strip()
    with suppress(ProfileError):
        return known_language(language_of(profile_text(Path(path)))) if path else known_language()
    return known_language()


def _lines(fault: ProfileError) -> Iterator[str]:
    return (f"  {line}" for line in fault_lines(fault, "line"))


app = _started()
