"""Wrong keys: each address has a few, and then waits, with a right one too."""

from __future__ import annotations

import math
import time
from typing import Final

from flask import Flask, Response, request

from ledgerstone.api import guard
from ledgerstone.api.limits import Buckets, client_of, waits
from ledgerstone.message import Message
from ledgerstone.settings import Settings

MOST_WRONG: Final = 10  # at once, in each worker for itself
EACH_S: Final = 6.0


def register(app: Flask, settings: Settings) -> None:
    """Count the wrong keys of each address, and slow down whoever has had too many.

    While an address waits its key is not looked at, so that trying on tells nothing. This machine
    itself is not counted: behind a proxy that is not told of, every caller is at its address.
    """
    wrong = Buckets(1 / EACH_S, MOST_WRONG)

    @app.before_request
    def _slowed_down() -> Response | None:
        given = request.authorization
        client = client_of(request.remote_addr)
        if given is None or given.type != "bearer" or client is None:
            return None
        now_s = time.monotonic()
        if wrong.left(client, now_s) >= 1.0:
            if not guard.is_maker(settings):
                wrong.wait_s(client, now_s)
            return None
        seconds = math.ceil((1.0 - wrong.left(client, now_s)) * EACH_S)
        return waits(429, Message("wrong-keys", seconds=seconds), seconds)
