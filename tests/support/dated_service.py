"""The entry point of gunicorn in tests: the service as it is shipped, on the tests' own day."""

from dataclasses import replace

from ledgerstone.api import logs
from ledgerstone.api.reload import service
from ledgerstone.settings import settings_from
from support.day import TODAY

logs.start()
app = service(replace(settings_from(), today=lambda _zone: TODAY))
