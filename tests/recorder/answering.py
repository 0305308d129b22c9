"""What the service of one checkout answers, through its HTTP interface alone."""

from __future__ import annotations

import hashlib
import json
import tempfile
from collections.abc import Iterable, Iterator, Mapping
from datetime import date
from pathlib import Path
from typing import Any, Final

from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from ledgerstone.api import Settings, create_app
from ledgerstone.json_types import JSON
from ledgerstone.workshop import DEMONSTRATION
from recorder.profiles import WORKSHOPS, profile
from support.documents import Json

DAY: Final = date(2026, 11, 25)
_MAKER_KEY = "a maker's key for recordings"
_SIGNING_KEYS = ("a signing key for recordings, of no use elsewhere",)
_MAKER: Final = {"Authorization": f"Bearer {_MAKER_KEY}"}
_JSON, _HTML, _PDF = "application/json", "text/html", "application/pdf"
_PAPERS: Final[tuple[tuple[str, tuple[str, ...], Json], ...]] = (
    ("replies", (_JSON, "message/rfc822"), {"customer": "Odile", "tone": "full", "ways": True}),
    ("sheets/approval", (_JSON, _HTML, _PDF), {"customer": "Odile"}),
    ("sheets/fitting", (_JSON, _HTML, _PDF), {}),
    ("sheets/care", (_JSON, _HTML, _PDF), {}),
    ("job-sheets", (_JSON, _HTML, _PDF, "text/calendar"), {}),
)
_SENT_BACK_PAPERS = 5  # one in this many papers is of an order that is sent back


class Recorder:
    """Answers cases with a service for each workshop, on one day, with fixed keys."""

    def __init__(self, *, papers: int) -> None:
        self._papers = papers
        self._made = {"quote": 0, "sent back": 0}
        self._clients = {name: _client(name) for name in WORKSHOPS}

    def answers(self, cases: Iterable[Json]) -> Iterator[Json]:
        """Answer each case by quote, drawings and opened link; some by every paper too."""
        for path in ("/v1/choices", "/v1/openapi.yaml"):
            yield {"name": path, path: _said(self._clients["usual"].get(path))}
        for case in cases:
            yield {"name": case["name"], **self._answer(case)}

    def _answer(self, case: Json) -> Json:
        client = self._clients[case["workshop"]]
        if "body" in case:
            answer = client.post("/v1/quotes", data=case["body"], content_type=_JSON)
            return {"quote": _said(answer)}
        order = case["order"]
        answer = client.post("/v1/quotes", json=order)
        members = answer.get_json()
        found = {"quote": _said(answer), **self._drawings(client, members)}
        if answer.status_code == 200 and "token" in members:
            found["opened"] = _said(client.get(f"/v1/quotes/{members['token']}"))
        if self._has_papers(case["name"], answer.status_code):
            found["makers"] = _said(client.post("/v1/quotes", json=order, headers=_MAKER))
            found |= _papers_of(client, order)
        return found

    def _drawings(self, client: FlaskClient, members: Mapping[str, Any]) -> Json:
        links = members.get("drawings", {})
        return {
            name: {"sha256": hashlib.sha256(client.get(_path(links[name])).data).hexdigest()}
            for name in ("plan", "view")
            if name in links
        }

    def _has_papers(self, name: str, status: int) -> bool:
        """Choose everyday orders for papers, some of them sent back."""
        kind = {200: "quote", 422: "sent back"}.get(status)
        if kind is None or not name.startswith("everyday"):
            return False
        back = self._papers // _SENT_BACK_PAPERS
        wanted = back if kind == "sent back" else self._papers - back
        self._made[kind] += 1
        return self._made[kind] <= wanted


def _client(name: str) -> FlaskClient:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "workshop.toml"
        text = profile(name, DEMONSTRATION.read_text(encoding="utf-8"))
        path.write_text(text, encoding="utf-8")
        settings = Settings(
            workshop_path=path,
            maker_key=_MAKER_KEY,
            signing_keys=_SIGNING_KEYS,
            today=lambda _: DAY,
        )
        return create_app(settings).test_client()


def _papers_of(client: FlaskClient, order: Json) -> Json:
    found: Json = {}
    for paper, kinds, more in _PAPERS:
        for kind in kinds:
            headers = {**_MAKER, "Accept": kind}
            ask = {"order": order, **more}
            found[f"{paper} {kind}"] = _said(client.post(f"/v1/{paper}", json=ask, headers=headers))
    return found


def _said(answer: TestResponse) -> Json:
    """Write an answer down: JSON as members, text as text, other bytes by their hash."""
    kind = answer.mimetype or ""
    told: Json = {"status": answer.status_code, "type": kind}
    if kind.endswith("json"):
        members = json.loads(answer.data)
        members.pop("instance", None)  # a problem's own number, of this request alone
        return {**told, "body": members, "bytes": _bytes(members)}
    if kind.startswith("text/") or kind == "application/yaml":
        return {**told, "lines": answer.get_data(as_text=True).splitlines()}
    return {**told, "sha256": hashlib.sha256(answer.data).hexdigest()}


def _bytes(members: JSON) -> str:
    """Hash members in the order in which they stand; as members they are compared without it."""
    return hashlib.sha256(json.dumps(members).encode()).hexdigest()


def _path(link: str) -> str:
    return link[link.index("/v1/") :]
