"""The entry point of gunicorn: ``ledgerstone.api.wsgi:app``."""

import os
import sys
from collections.abc import Iterator
from contextlib import suppress

from ledgerstone.api import logs
from ledgerstone.api.reload import Service, service
from ledgerstone.errors import LedgerstoneError, ProfileError
from ledgerstone.settings import settings_from
from ledgerstone.wording.profile_faults import fault_lines


def _started() -> Service:
    """Make the service from the environment, or exit with the reason why it cannot start."""
    logs.start()
    try:
        return service(settings_from())
    except ProfileError as fault:
        text = "".join(["The workshop's file has faults; nothing was started.\n", *_lines(fault)])
    except LedgerstoneError as fault:
        text = f"{fault} Nothing was started."
    with suppress(OSError):
        os.write(2, f"{text.rstrip()}\n".encode())
    sys.exit(3)


def _lines(fault: ProfileError) -> Iterator[str]:
    return (f"  {line}" for line in fault_lines(fault, "line"))


app = _started()
