"""What gunicorn loads: ``ledgerstone.api.wsgi:app``."""

import os
import sys
from contextlib import suppress

from ledgerstone.api import logs
from ledgerstone.api.reload import Service, service
from ledgerstone.errors import LedgerstoneError, ProfileError
from ledgerstone.settings import settings_from


def _started() -> Service:
    """Make the service from the environment, or say in plain words why it cannot start."""
    logs.start()
    try:
        return service(settings_from())
    except ProfileError as fault:
        lines = [f"  line {f.line}: {f.key}: {f.says}" for f in fault.faults]
        says = "\n".join(["The workshop's file has faults; nothing was started.", *lines])
    except LedgerstoneError as fault:
        says = f"{fault} Nothing was started."
    with suppress(OSError):
        os.write(2, f"{says}\n".encode())
    sys.exit(3)


app = _started()
