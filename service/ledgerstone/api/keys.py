"""Rate limit of wrong keys by address; while it applies, a correct key is refused too."""

from __future__ import annotations

import math
import time
from typing import Final

from flask import Flask, Response, request

from ledgerstone.api import guard
from ledgerstone.api.limits import Buckets, client_of
from ledgerstone.api.problems import retry_later
from ledgerstone.message import Message
from ledgerstone.settings import Settings

MAX_WRONG: Final = 10  # in a burst, for each worker
EACH_S: Final = 6.0


def register(app: Flask, settings: Settings) -> None:
    """Count the wrong keys of each address, and refuse an address that has sent too many.

    While an address is limited its key is not checked, so that more tries reveal nothing. This
    machine is not counted: behind an undeclared proxy every caller has its address.
    """
    wrong = Buckets(1 / EACH_S, MAX_WRONG)

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
        return retry_later(429, Message("wrong-keys", seconds=seconds), seconds)
