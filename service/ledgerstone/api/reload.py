"""The running service, whose app is replaced as a whole when the profile changes."""

from __future__ import annotations

import logging
import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from wsgiref.types import StartResponse, WSGIEnvironment

from flask import Flask

from ledgerstone.api import create_app
from ledgerstone.api.app_context import APP_CONTEXT
from ledgerstone.api.health import Refusal, Running
from ledgerstone.api.limits import Gate
from ledgerstone.api.warm import warm
from ledgerstone.errors import LedgerstoneError, ProfileError
from ledgerstone.papers.templates import TEMPLATE_NAMES, TEMPLATES_FOLDER
from ledgerstone.settings import Settings
from ledgerstone.wording.own import FILES
from ledgerstone.wording.profile_faults import fault_lines

_log = logging.getLogger("ledgerstone")
LOOK_EVERY_S = 1.0

Signature = tuple[tuple[int, int, int] | None, ...]


@dataclass(slots=True)
class Watch:
    """Polls files, and reports when one has changed and all are stable.

    The same change must be seen twice, a second apart: a file half written is not taken for a
    whole one.
    """

    paths: tuple[Path, ...]
    known: Signature = ()
    _seen: Signature = ()
    _next_s: float = 0.0

    def __post_init__(self) -> None:
        self.note()

    def note(self) -> None:
        """Take the files' current state as known."""
        self.known = self._seen = self._signature()

    def has_changed(self, now_s: float) -> bool:
        """Return, once for each change, whether a file has changed and all are stable."""
        if now_s < self._next_s:
            return False
        self._next_s = now_s + LOOK_EVERY_S
        found = self._signature()
        rests, self._seen = found == self._seen, found
        if found == self.known or not rests:
            return False
        self.known = found
        return True

    def _signature(self) -> Signature:
        return tuple(_stat(path) for path in self.paths)


def _stat(path: Path) -> tuple[int, int, int] | None:
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_mtime_ns, found.st_size, found.st_ino


@dataclass(slots=True)
class Service:
    """The WSGI application. Each request is answered by one app throughout.

    Attributes
    ----------
    is_watched
        Whether the server polls the profile's files with ``has_changed``; else each request does,
        and a change is loaded before it is answered.
    """

    settings: Settings
    running: Running
    clock: Callable[[], float] = time.monotonic
    is_watched: bool = False
    _app: Flask = field(init=False)
    _watch: Watch = field(init=False)

    def __post_init__(self) -> None:
        self._watch = Watch(_files(self.settings.workshop_path))
        self._app = self._made()

    def __call__(self, environ: WSGIEnvironment, start_response: StartResponse) -> Iterable[bytes]:
        """Answer a request."""
        if not self.is_watched and self.has_changed():
            self.reload()
        answer: Iterable[bytes] = self._app(environ, start_response)
        return answer

    def has_changed(self) -> bool:
        """Return, once for each change, whether one of the profile's files has changed."""
        return self._watch.has_changed(self.clock())

    def reload(self) -> bool:
        """Reload the profile and the files beside it; a faulty one changes nothing.

        Links that were signed before still open: the keys stay, and a link carries its offer.
        """
        self._watch.note()
        try:
            app = self._made()
        except Exception as fault:  # noqa: BLE001 - whatever it is, it must not end what serves
            self._refuse(fault)
            return False
        self._app = app
        self.running.refused = None
        _log.info("The profile was read again and is in use.")
        return True

    def _made(self) -> Flask:
        app = create_app(self.settings, self.running)
        warm(app.extensions[APP_CONTEXT])
        return app

    def _refuse(self, fault: Exception) -> None:
        faults = fault.faults if isinstance(fault, ProfileError) else ()
        self.running.refused = Refusal(datetime.now(UTC), max(1, len(faults)))
        ours = isinstance(fault, LedgerstoneError)
        why = str(fault) if ours else "something of ours failed"
        if isinstance(fault, ProfileError):
            why = "; ".join(line.strip() for line in fault_lines(fault, "line"))
        message = "The changed profile was not taken up; the one before it goes on: %s"
        _log.error(message, why, exc_info=None if ours else fault)


def _files(profile: Path) -> tuple[Path, ...]:
    """Return the files that an app is made from: the profile, templates and sentences."""
    templates = (profile.parent / TEMPLATES_FOLDER / name for name in TEMPLATE_NAMES)
    return profile, *templates, *(profile.parent / name for name in FILES.values())


def service(settings: Settings) -> Service:
    """Make the service that a server runs."""
    return Service(settings, Running(gate=Gate(settings.most_waiting)))
