"""The command line, run in the test."""

import io
from datetime import date

from ledgerstone.cli.orders import run

DAY = date(2026, 11, 25)

KEY = "a signing key for the command alone"

KEYS = {"LEDGERSTONE_SIGNING_KEYS": KEY}

Ran = tuple[int, str, str]


def ran(*arguments: object, keys: dict[str, str] = KEYS) -> Ran:
    """Exit status, output and errors of one command line."""
    out, err = io.StringIO(), io.StringIO()
    status = run([str(argument) for argument in arguments], out, err, keys, DAY)
    return status, out.getvalue(), err.getvalue()
