"""Costs, hours and margins leave by no public door."""

import re
from typing import TYPE_CHECKING, Any

import pytest

from support.asking import changed, keys, texts
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS

if TYPE_CHECKING:
    from flask.testing import FlaskClient

SECRET_KEY = re.compile(r"cost|hour|margin|markup|profit|rate\b|rates|wage|overhead|waste|supplier")
SECRET_WORDS = re.compile(
    r"\bcosts?\b|\bhours? of (work|hands)|\bman-hours?\b|\bmargin\b|\bmarkup\b|\bprofit\b"
    r"|\ban hour\b|per hour|\bhourly\b",
    re.IGNORECASE,
)
STOPPED = changed(("/slabs/0/cutouts/0/centre/y", "218 mm"))
CALLS: dict[str, tuple[str, str, Any]] = {
    "choices": ("GET", "/v1/choices", None),
    "quote": ("POST", "/v1/quotes", EXAMPLE_ORDER),
    "minimal quote": ("POST", "/v1/quotes", EXAMPLE_ORDER),
    "send-back": ("POST", "/v1/quotes", STOPPED),
    "too late": ("POST", "/v1/quotes", changed(("/needed_by", "2026-11-26"))),
    "not understood": ("POST", "/v1/quotes", {"slabs": []}),
    "drawings": ("POST", "/v1/drawings", EXAMPLE_ORDER),
    "live": ("GET", "/v1/health/live", None),
    "ready": ("GET", "/v1/health/ready", None),
    "nowhere": ("GET", "/v1/nowhere", None),
}


@pytest.mark.parametrize("name", CALLS)
def test_no_secret_of_the_makers_leaves(client: "FlaskClient", name: str) -> None:
    """No key of a public answer names a cost, an hour or a margin, and no sentence tells one."""
    method, path, body = CALLS[name]
    headers = {"Prefer": "return=minimal"} if name.startswith("minimal") else {}
    answer = client.open(path, method=method, json=body, headers=headers)
    document: Any = answer.get_json()
    assert document is not None
    asked = document.pop("order", None) if isinstance(document, dict) else None
    assert [key for key in keys(document) if SECRET_KEY.search(key)] == []
    assert [text for text in texts(document) if SECRET_WORDS.search(text)] == []
    assert asked is None or [key for key in keys(asked) if SECRET_KEY.search(key)] == []


def test_the_price_lines_are_few(client: "FlaskClient") -> None:
    """A price has a handful of lines, so that no line is an hour's rate or a pigment's."""
    price = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()["price"]
    assert 2 <= len(price["lines"]) <= 12
    assert {key for line in price["lines"] for key in line} == {"label", "amount"}


@pytest.mark.parametrize("name", CALLS)
def test_no_key_of_ours_leaves(client: "FlaskClient", name: str) -> None:
    """Neither the maker's key nor a signing key stands in any answer or header."""
    method, path, body = CALLS[name]
    answer = client.open(path, method=method, json=body)
    for secret in (MAKER_KEY, *SIGNING_KEYS):
        assert secret not in answer.text
        assert secret not in str(answer.headers)


def test_a_drawing_tells_no_price(client: "FlaskClient") -> None:
    """A drawing's link opens for anyone, so that it holds neither price nor postcode."""
    links = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()
    drawing = client.get(links["plan"]).text
    assert "HR9" not in drawing
    assert not SECRET_WORDS.search(drawing)
    assert "£" not in drawing
    assert "GBP" not in drawing
