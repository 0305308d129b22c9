"""One order through every call of the service: quote, drawings, link, reply, sheets, job sheet.

``Service.answers(order)`` asks them all and returns what each answered; ``faults_of`` lists what
broke a law that holds for any order at all: no status of 500 or above, no exception even where it
was contained, only finite numbers in JSON, well-formed pictures, and the same answer twice.
"""

import json
import logging
import time
import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Final
from xml.etree import ElementTree as ET

from flask import Flask
from werkzeug.test import TestResponse

from ledgerstone.api import Settings, create_app
from ledgerstone.json_types import JSON
from ledgerstone.workshop import DEMONSTRATION
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from support.documents import Json
from support.strategies.orders import TODAY

LONGEST_S: Final = 4.0  # of processor time, after which a call is listed as slow
SHEETS: Final = ("approval", "fitting", "care", "carry")
_KEY: Final = {"Authorization": f"Bearer {MAKER_KEY}"}
_ANSWERED: Final = (200, 422)


@dataclass(frozen=True)
class Call:
    """One call: its name, what it answered, and the processor time that took."""

    name: str
    status: int
    mimetype: str
    content: bytes
    cpu_s: float

    def json(self) -> JSON:
        """The answer as JSON; a number that is not finite is refused."""
        return json.loads(self.content, parse_constant=_refuse)


@dataclass
class Answers:
    """What every call answered to one order, and the exceptions that were raised meanwhile."""

    order: Json
    calls: list[Call] = field(default_factory=list)
    raised: list[str] = field(default_factory=list)

    @property
    def quote(self) -> Call:
        """The answer to the order itself, the first that was asked for."""
        return self.calls[0]

    def slow(self) -> list[Call]:
        """The calls that took longer than ``LONGEST_S``."""
        return [call for call in self.calls if call.cpu_s > LONGEST_S]


class Service:
    """The demonstration workshop's service on one day, whose log is listened to."""

    def __init__(self) -> None:
        self.app = self._app()

    def answers(self, order: Json, *, searched: bool = True) -> Answers:
        """Ask every call about one order; the quote twice, the second time of a new service.

        Parameters
        ----------
        searched
            Whether changes are searched for and drawings painted, which takes longest: without
            it, an order that is sent back has no reply and no job sheet.
        """
        made = Answers(order)
        with _logged(made.raised):
            self._ask(made, searched=searched)
        return made

    def _ask(self, made: Answers, *, searched: bool) -> None:
        order = made.order
        prefer = "" if searched else "return=minimal"
        quote = self._post(made, "/v1/quotes", order, prefer=prefer)
        made.calls.append(_called("again", lambda: self._again(order, prefer)))
        links = self._post(made, "/v1/drawings", order)
        if links.status == 200:
            self._pictures(made, links.json(), painted=searched)
        self._papers(made, quote, searched=searched)

    def _papers(self, made: Answers, quote: Call, *, searched: bool) -> None:
        """Ask for the letters and the sheets."""
        order = made.order
        for sheet in SHEETS:
            self._post(made, f"/v1/sheets/{sheet}", {"order": order}, accept="text/html")
        if not searched and quote.status == 422:
            return
        self._post(made, "/v1/replies", {"order": order}, accept="message/rfc822")
        self._post(made, "/v1/job-sheets", {"order": order}, accept="application/json")
        if quote.status == 200:  # a send-back is the same in each form, and a search each time
            self._post(made, "/v1/replies", {"order": order, "ways": True})
            for form in ("text/html", "text/calendar"):
                self._post(made, "/v1/job-sheets", {"order": order}, accept=form)
            token = quote.json().get("token")
            if token:
                self._get(made, f"/v1/quotes/{token}", "link")

    def _pictures(self, made: Answers, links: Json, *, painted: bool) -> None:
        """Ask for every drawing that is linked, of every slab, cut-out and corner; as PNG too."""
        base = links["plan"].removesuffix("plan.svg") if "plan" in links else None
        if base is None:  # the order is too long for a link
            return
        slabs = made.order["slabs"]
        self._get(made, f"{base}assembled.svg", "assembled")
        for n, slab in enumerate(slabs):
            for name in ("plan.svg", "view.svg", "stress.svg"):
                self._get(made, f"{base}{name}?slab={n}", f"{name} {n}")
            for part in range(len(slab.get("cutouts", ()))):
                name = f"true-size.pdf?slab={n}&cutout={part}&paper=a3"
                self._get(made, f"{base}{name}", name)
        for name in ("plan", "view", "assembled") if painted else ():
            self._get(made, f"{base}{name}.png", f"{name}.png")

    def _again(self, order: Json, prefer: str) -> TestResponse:
        headers = {"Prefer": prefer} if prefer else {}
        return self._app().test_client().post("/v1/quotes", json=order, headers=headers)

    def _post(
        self, made: Answers, path: str, body: Json, *, accept: str = "", prefer: str = ""
    ) -> Call:
        headers = {} if path == "/v1/quotes" else dict(_KEY)
        headers |= {"Accept": accept} if accept else {}
        headers |= {"Prefer": prefer} if prefer else {}
        client = self.app.test_client()
        name = f"{path} {accept}".rstrip()
        call = _called(name, lambda: client.post(path, json=body, headers=headers))
        made.calls.append(call)
        return call

    def _get(self, made: Answers, link: str, name: str) -> None:
        client, path = self.app.test_client(), link[link.index("/v1/") :]
        made.calls.append(_called(name, lambda: client.get(path, headers=_KEY)))

    @staticmethod
    def _app() -> Flask:
        return create_app(
            Settings(
                workshop_path=DEMONSTRATION,
                maker_key=MAKER_KEY,
                signing_keys=SIGNING_KEYS,
                today=lambda _zone: TODAY,
            )
        )


def faults_of(answers: Answers) -> list[str]:
    """List what is wrong with the answers to one order."""
    quote, again = answers.calls[:2]
    wrong = [f"raised {said}" for said in dict.fromkeys(answers.raised)]
    wrong += [fault for call in answers.calls for fault in _faults_of_call(call, quote)]
    if quote.status < 500 and _without_instance(quote) != _without_instance(again):
        wrong.append("asked again, it is answered otherwise")
    return wrong


def _faults_of_call(call: Call, quote: Call) -> Iterator[str]:
    if call.status >= 500:
        yield f"{call.name}: status {call.status}"
        return
    if quote.status in _ANSWERED and call.status == 404:
        yield f"{call.name}: a link of ours leads nowhere"
    if quote.status == 400 and call.status != 400:
        yield f"{call.name}: status {call.status} for an order that is not understood"
    if call.mimetype in ("application/json", "application/problem+json"):
        try:
            call.json()
        except ValueError as fault:
            yield f"{call.name}: no strict JSON: {fault}"
    if call.mimetype == "image/svg+xml":
        yield from _faults_of_svg(call)


def _faults_of_svg(call: Call) -> Iterator[str]:
    try:
        tree = ET.fromstring(call.content)  # noqa: S314  a drawing of ours
    except ET.ParseError as fault:
        yield f"{call.name}: no XML: {fault}"
        return
    for node in tree.iter():
        for name, value in node.attrib.items():
            words = value.replace(",", " ").split() if name not in ("aria-label", "id") else ()
            if any(word in ("nan", "inf", "-inf", "None") for word in words):
                yield f"{call.name}: {name}={value[:60]!r}"
                return


def _without_instance(call: Call) -> JSON:
    body = json.loads(call.content)
    body.pop("instance", None)
    return body


def _called(name: str, ask: Callable[[], TestResponse]) -> Call:
    began_s = time.process_time()
    response = ask()
    took_s = time.process_time() - began_s
    return Call(name, response.status_code, response.mimetype or "", response.data, took_s)


def _refuse(constant: str) -> float:
    raise ValueError(f"{constant} is no number of JSON")


class _Raised(logging.Handler):
    """Keeps the kind and the place of every exception that is logged."""

    def __init__(self, kept: list[str]) -> None:
        super().__init__(logging.WARNING)
        self.kept = kept

    def emit(self, record: logging.LogRecord) -> None:
        """Keep one exception."""
        if record.exc_info and record.exc_info[1] is not None:
            fault = record.exc_info[1]
            ours = [
                frame
                for frame in traceback.extract_tb(fault.__traceback__)
                if "ledgerstone" in frame.filename
            ]
            at = " < ".join(f"{f.filename.rpartition('/')[2]}:{f.lineno}" for f in ours[:-4:-1])
            self.kept.append(f"{type(fault).__name__}: {str(fault)[:120]} at {at}")


@contextmanager
def _logged(kept: list[str]) -> Iterator[None]:
    logger, handler = logging.getLogger("ledgerstone"), _Raised(kept)
    logger.addHandler(handler)
    try:
        yield
    finally:
        logger.removeHandler(handler)
