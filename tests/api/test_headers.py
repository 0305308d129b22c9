"""The headers of every route, to the letter, and which sites may ask from a page of theirs."""

from typing import TYPE_CHECKING

import pytest

from api.conftest import ORIGIN
from support.demonstration import EXAMPLE_ORDER

if TYPE_CHECKING:
    from flask import Flask
    from flask.testing import FlaskClient

PAGE_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
    " connect-src 'self'; font-src 'self'; frame-src 'self'; base-uri 'none';"
    " form-action 'self'; frame-ancestors 'self'"
)
SVG_POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'; sandbox"
ALWAYS = {
    "Content-Security-Policy": PAGE_POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cache-Control": "no-store",
    "Vary": "Origin",
}
SPOKEN = {
    "choices",
    "quotes",
    "drawings",
    "problem page",
    "nowhere",
}  # other to who reads another language
ITS_OWN = {"X-Request-Id", "Content-Type", "Content-Length"}
ROUTES = {
    "choices": ("GET", "/v1/choices"),
    "quotes": ("POST", "/v1/quotes"),
    "drawings": ("POST", "/v1/drawings"),
    "live": ("GET", "/v1/health/live"),
    "ready": ("GET", "/v1/health/ready"),
    "document": ("GET", "/v1/openapi.yaml"),
    "problem page": ("GET", "/problems/busy"),
    "nowhere": ("GET", "/v1/nowhere"),
}
# What looks like the profile's site, and is not.
NOT_THE_SITE = [
    "null",
    "http://maker.example",
    "https://maker.example.evil.test",
    "https://evil-maker.example",
    "https://evil.test/https://maker.example",
    "https://maker.example:8443",
    "https://maker.example/",
    "https://MAKER.example",
    "https://maker.example, https://evil.test",
    "*",
    "",
]


def _set(client: "FlaskClient", method: str, path: str) -> dict[str, str]:
    body = EXAMPLE_ORDER if method == "POST" else None
    answer = client.open(path, method=method, json=body)
    assert set(answer.headers.keys()) >= ITS_OWN
    return {name: value for name, value in answer.headers.items() if name not in ITS_OWN}


@pytest.mark.parametrize("name", ROUTES)
def test_every_route_has_the_usual_headers_and_no_others(client: "FlaskClient", name: str) -> None:
    """Each route has the security headers, what is its own, and nothing that names the server."""
    varies = {"Vary": "Accept-Language, Origin"} if name in SPOKEN else {}
    assert _set(client, *ROUTES[name]) == {**ALWAYS, **varies}


def test_a_drawing_has_its_own_policy_and_may_be_kept(client: "FlaskClient") -> None:
    """A drawing may be shown anywhere and kept for a year; it may run and load nothing."""
    plan = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"]
    headers = _set(client, "GET", plan)
    assert headers.pop("ETag")
    assert headers.pop("Date")
    assert headers == {
        **ALWAYS,
        "Content-Security-Policy": SVG_POLICY,
        "Cache-Control": "public, max-age=31536000, immutable",
    }


def test_types_name_their_charset(client: "FlaskClient") -> None:
    """JSON needs no charset, and text says it is UTF-8."""
    assert client.get("/v1/choices").content_type == "application/json"
    assert client.get("/v1/openapi.yaml").content_type == "application/yaml"
    assert client.get("/problems/busy").content_type == "text/plain; charset=utf-8"


def test_the_profiles_site_may_ask(framed_app: "Flask") -> None:
    """A page on the profile's site may ask and read, without credentials, and frame ours."""
    client = framed_app.test_client()
    answer = client.post("/v1/drawings", json=EXAMPLE_ORDER, headers={"Origin": ORIGIN})
    assert answer.headers["Access-Control-Allow-Origin"] == ORIGIN
    assert "Access-Control-Allow-Credentials" not in answer.headers
    assert "ETag" in answer.headers["Access-Control-Expose-Headers"]
    assert "Origin" in answer.headers["Vary"]
    assert answer.headers["Content-Security-Policy"].endswith(f"frame-ancestors 'self' {ORIGIN}")


def test_the_profiles_site_may_send_json_and_its_preference(framed_app: "Flask") -> None:
    """Before it asks, a browser is told that the site may send JSON and a preference."""
    answer = framed_app.test_client().options(
        "/v1/quotes",
        headers={
            "Origin": ORIGIN,
            "Access-Control-Request-Method": "POST",
            "Access-Control-Request-Headers": "content-type, prefer",
        },
    )
    assert answer.status_code == 200
    assert answer.headers["Access-Control-Allow-Origin"] == ORIGIN
    assert "POST" in answer.headers["Access-Control-Allow-Methods"]
    allowed = answer.headers["Access-Control-Allow-Headers"].lower()
    assert {"content-type", "prefer"} == {name.strip() for name in allowed.split(",")}
    assert int(answer.headers["Access-Control-Max-Age"]) <= 600


def test_the_profiles_site_reads_problems_too(framed_app: "Flask") -> None:
    """A problem is readable by the page that asked."""
    answer = framed_app.test_client().post(
        "/v1/quotes", json={"slabs": []}, headers={"Origin": ORIGIN}
    )
    assert answer.status_code == 400
    assert answer.headers["Access-Control-Allow-Origin"] == ORIGIN


@pytest.mark.parametrize("origin", NOT_THE_SITE)
@pytest.mark.parametrize("method", ["GET", "OPTIONS"])
def test_no_other_site_may_ask(framed_app: "Flask", method: str, origin: str) -> None:
    """A site that is not the profile's, to the letter, is given no leave."""
    answer = framed_app.test_client().open("/v1/choices", method=method, headers={"Origin": origin})
    names = {name for name, _ in answer.headers}
    assert [name for name in names if name.startswith("Access-Control")] == []
    assert "Origin" in answer.headers["Vary"]


def test_a_forged_host_changes_no_link(client: "FlaskClient") -> None:
    """Links come from the profile, never from what a request says of its host."""
    forged = {
        "Host": "evil.test",
        "X-Forwarded-Host": "evil.test",
        "X-Forwarded-Proto": "gopher",
        "Forwarded": "host=evil.test",
    }
    honest = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()
    assert client.post("/v1/drawings", json=EXAMPLE_ORDER, headers=forged).get_json() == honest
