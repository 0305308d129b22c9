"""Every kind of problem there is: one body, from every layer (RFC 9457)."""

import re
from collections.abc import Iterator
from datetime import date
from http.client import HTTPConnection
from typing import TYPE_CHECKING, Any

import pytest
from flask import Flask, abort

from ledgerstone.api import Settings, create_app, guard
from ledgerstone.codec.problem_kinds import PLAIN_PROBLEMS, PROBLEM_KINDS, ProblemKind
from ledgerstone.codec.strict_json import LARGEST_BYTES
from ledgerstone.wording import english
from support.asking import JSON, NEVER_SAID, PROBLEM, body_of, changed, sentences
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS, demonstration_app
from support.serving import served

if TYPE_CHECKING:
    from flask.testing import FlaskClient
    from werkzeug.test import TestResponse

BY_NAME = {kind.name: kind for kind in PROBLEM_KINDS}


@pytest.fixture
def app(today: date) -> Flask:
    """A service for each test: what one does to it is no other's."""
    return demonstration_app(today)


def _is_a_problem(answer: "TestResponse", name: str) -> dict[str, Any]:
    kind = BY_NAME[name]
    assert answer.status_code == kind.status
    assert answer.mimetype == PROBLEM
    body: dict[str, Any] = answer.get_json()
    assert body["type"] == f"/problems/{name}"
    assert body["title"] == english(kind.title)
    assert body["status"] == kind.status
    assert body["detail"]
    assert body["instance"] == f"urn:uuid:{answer.headers['X-Request-Id']}"
    assert not [text for text in sentences(body) if NEVER_SAID.search(text)]
    return body


def test_not_understood(client: "FlaskClient") -> None:
    """What means no piece of concrete is ``not-understood``, each fault at its pointer."""
    answer = client.post("/v1/quotes", json=changed(("/slabs/0/place", "moon")))
    body = _is_a_problem(answer, "not-understood")
    assert [fault["pointer"] for fault in body["faults"]] == ["/slabs/0/place"]
    assert body["detail"] == body["faults"][0]["says"]


def test_cannot_do_as_asked(client: "FlaskClient") -> None:
    """What is understood and cannot be made is ``cannot-do-as-asked``, with its findings."""
    answer = client.post("/v1/quotes", json=changed(("/slabs/0/thickness", "5 mm")))
    body = _is_a_problem(answer, "cannot-do-as-asked")
    assert body["findings"]


@pytest.mark.parametrize(
    "path",
    [
        "/", "/nowhere", "/v1", "/v1/", "/v1/quotes/", "/v2/quotes", "/v1/choices/..%2f..",
        "/problems/nothing", "/.env", "/%00",
    ],
)  # fmt: skip
def test_not_found(client: "FlaskClient", path: str) -> None:
    """An address where nothing is answers ``not-found``."""
    _is_a_problem(client.get(path), "not-found")


@pytest.mark.parametrize(
    ("method", "path", "allowed"),
    [
        ("GET", "/v1/quotes", {"OPTIONS", "POST"}),
        ("PUT", "/v1/quotes", {"OPTIONS", "POST"}),
        ("DELETE", "/v1/drawings", {"OPTIONS", "POST"}),
        ("POST", "/v1/choices", {"GET", "HEAD", "OPTIONS"}),
        ("TRACE", "/v1/choices", {"GET", "HEAD", "OPTIONS"}),
        ("PROPFIND", "/v1/health/live", {"GET", "HEAD", "OPTIONS"}),
        ("PATCH", "/v1/openapi.yaml", {"GET", "HEAD", "OPTIONS"}),
    ],
)
def test_method_not_offered(
    client: "FlaskClient", method: str, path: str, allowed: set[str]
) -> None:
    """A method that an address does not take is answered with those that it does."""
    answer = client.open(path, method=method)
    _is_a_problem(answer, "method-not-offered")
    assert {name.strip() for name in answer.headers["Allow"].split(",")} == allowed


def test_a_method_cannot_be_overridden(client: "FlaskClient") -> None:
    """A header that names another method changes nothing."""
    answer = client.post("/v1/choices", headers={"X-HTTP-Method-Override": "GET"})
    _is_a_problem(answer, "method-not-offered")


@pytest.mark.parametrize("accept", ["image/webp", "text/html", "*/*;q=0", "application/json;q=0"])
def test_not_acceptable(client: "FlaskClient", accept: str) -> None:
    """A caller who takes no JSON is told to ask for it, and no work is done."""
    answer = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers={"Accept": accept})
    body = _is_a_problem(answer, "not-acceptable")
    assert "application/json" in body["detail"]


@pytest.mark.parametrize(
    "accept", ["", "*/*", "application/*", "application/json", "text/html, */*;q=0.1"]
)
def test_every_caller_who_takes_json_is_answered(client: "FlaskClient", accept: str) -> None:
    """JSON is sent to whoever takes it by name, by half a name, by a star or by no word at all."""
    assert client.get("/v1/choices", headers={"Accept": accept}).status_code == 200


def test_too_large(client: "FlaskClient") -> None:
    """A body of 64 kB is read and one byte more is ``too-large``."""
    order = body_of(EXAMPLE_ORDER)
    for size, status in ((LARGEST_BYTES, 200), (LARGEST_BYTES + 1, 413)):
        answer = client.post("/v1/drawings", data=order.ljust(size), content_type=JSON)
        assert answer.status_code == status
    _is_a_problem(answer, "too-large")


@pytest.mark.parametrize(
    "headers",
    [
        {},
        {"Content-Type": "text/plain"},
        {"Content-Type": "application/x-www-form-urlencoded"},
        {"Content-Type": "application/problem+json"},
        {"Content-Type": "application/json; charset=latin-1"},
        {"Content-Type": JSON, "Content-Encoding": "gzip"},
    ],
)
def test_not_json_type(client: "FlaskClient", headers: dict[str, str]) -> None:
    """A body that is not said to be plain JSON in UTF-8 is not read."""
    answer = client.post("/v1/quotes", data=body_of(EXAMPLE_ORDER), headers=headers)
    _is_a_problem(answer, "not-json-type")


@pytest.mark.parametrize(
    "said", [JSON, "application/json; charset=utf-8", 'Application/JSON; charset="UTF-8"']
)
def test_json_by_any_of_its_spellings_is_read(client: "FlaskClient", said: str) -> None:
    """The type's case and an UTF-8 charset make no difference."""
    body = body_of(EXAMPLE_ORDER)
    assert client.post("/v1/drawings", data=body, content_type=said).status_code == 200


def _failing(_zone: str) -> date:
    raise ZeroDivisionError("the secret in the traceback")


def test_our_fault(caplog: pytest.LogCaptureFixture) -> None:
    """An internal fault is logged under the answer's own id, and tells nothing of itself."""
    app = create_app(Settings(maker_key=MAKER_KEY, signing_keys=SIGNING_KEYS, today=_failing))
    answer = app.test_client().post("/v1/quotes", json=EXAMPLE_ORDER)
    _is_a_problem(answer, "our-fault")
    assert "secret" not in answer.text
    assert "ZeroDivision" not in answer.text
    assert answer.headers["X-Request-Id"] in caplog.text


def test_key_needed(app: Flask) -> None:
    """A maker's call without the maker's key is ``key-needed``, and with it is let in."""
    settings = Settings(maker_key=MAKER_KEY)

    @app.get("/v1/for-the-maker")
    def for_the_maker() -> str:
        guard.must_be_maker(settings)
        return "come in"

    client = app.test_client()
    for given in ({}, {"Authorization": "Bearer wrong"}, {"Authorization": f"Basic {MAKER_KEY}"}):
        _is_a_problem(client.get("/v1/for-the-maker", headers=given), "key-needed")
    key = {"Authorization": f"Bearer {MAKER_KEY}"}
    assert client.get("/v1/for-the-maker", headers=key).status_code == 200


@pytest.mark.parametrize("kind", PLAIN_PROBLEMS, ids=lambda kind: kind.name)
def test_every_status_leaves_as_its_problem(app: Flask, kind: ProblemKind) -> None:
    """Whatever layer raises a status, it leaves as that status's problem."""
    app.add_url_rule("/v1/raised", view_func=lambda: abort(kind.status))
    answer = app.test_client().get("/v1/raised")
    _is_a_problem(answer, kind.name)
    assert ("Retry-After" in answer.headers) == (kind.status in (429, 503))


@pytest.mark.parametrize("kind", PROBLEM_KINDS, ids=lambda kind: kind.name)
def test_a_problems_type_leads_to_a_page(client: "FlaskClient", kind: ProblemKind) -> None:
    """Each problem's type is an address that says what the problem is."""
    page = client.get(f"/problems/{kind.name}")
    assert page.status_code == 200
    assert page.text.startswith(f"{kind.status} {english(kind.title)}")
    assert not NEVER_SAID.search(page.text)


def test_each_request_has_its_own_id(client: "FlaskClient") -> None:
    """Two requests never share an id, and a caller cannot choose it."""
    ids = {
        client.get("/v1/nowhere", headers={"X-Request-Id": "mine"}).headers["X-Request-Id"]
        for _ in range(3)
    }
    assert len(ids) == 3
    assert all(re.fullmatch(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", one) for one in ids)


# --- through a real server ------------------------------------------------------------------


@pytest.fixture(scope="module")
def port() -> Iterator[int]:
    """A port of 127.0.0.1 where the service runs under gunicorn, with the shipped settings."""
    with served() as running:
        yield running.port


@pytest.mark.parametrize("chunked", [False, True], ids=["Content-Length", "chunked"])
def test_a_large_body_is_refused_by_the_server_too(port: int, *, chunked: bool) -> None:
    """A body of 64 kB and one byte is ``too-large`` whether its length is stated or not."""
    body = body_of(EXAMPLE_ORDER).ljust(LARGEST_BYTES + 1)
    pieces = iter([body[:40_000], body[40_000:]])
    connection = HTTPConnection("127.0.0.1", port, timeout=20)
    connection.request(
        "POST",
        "/v1/quotes",
        pieces if chunked else body,
        {"Content-Type": JSON},
        encode_chunked=chunked,
    )
    answer = connection.getresponse()
    assert answer.status == 413
    assert answer.headers["Content-Type"] == PROBLEM
    assert b"/problems/too-large" in answer.read()
    connection.close()


def test_a_chunked_order_is_read(port: int) -> None:
    """An order whose length is not said beforehand is read like any other."""
    connection = HTTPConnection("127.0.0.1", port, timeout=20)
    body = body_of(EXAMPLE_ORDER)
    headers = {"Content-Type": JSON}
    pieces = iter([body[:100], body[100:]])
    connection.request("POST", "/v1/drawings", pieces, headers, encode_chunked=True)
    answer = connection.getresponse()
    assert answer.status == 200, answer.read()
    connection.close()


def test_the_longest_link_passes_the_server(port: int) -> None:
    """A token of the greatest length reaches the service, which says it is not one of ours."""
    from ledgerstone.codec.tokens import LONGEST_TOKEN  # noqa: PLC0415  beside its one use

    connection = HTTPConnection("127.0.0.1", port, timeout=20)
    connection.request("GET", f"/v1/drawings/{'A' * LONGEST_TOKEN}/plan.svg?slab=7")
    answer = connection.getresponse()
    assert answer.status == 404
    assert answer.headers["Content-Type"] == PROBLEM
    connection.close()


def test_an_endless_address_is_refused_by_the_server(port: int) -> None:
    """A request line past what the server reads is a 414, before the service is reached."""
    connection = HTTPConnection("127.0.0.1", port, timeout=20)
    connection.request("GET", "/v1/drawings/" + "A" * 9000 + "/plan.svg")
    assert connection.getresponse().status == 414
    connection.close()
