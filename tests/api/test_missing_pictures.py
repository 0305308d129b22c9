"""A paper at true size or a stress picture that fails is shown as missing, as any drawing is."""

from datetime import date

import pytest
from flask import Flask
from flask.testing import FlaskClient

from ledgerstone.application import drawings, utilisation
from support.breaking import broken
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, demonstration_app

KEY = {"Authorization": f"Bearer {MAKER_KEY}"}


@pytest.fixture
def app(today: date) -> Flask:
    """A service for each test: what one does to it is no other's."""
    return demonstration_app(today)


@pytest.mark.parametrize(
    ("name", "form", "part"),
    [
        ("true-size.pdf", "application/pdf", "true_size_pdf"),
        ("stress.svg", "image/svg+xml", "draw_stress"),
    ],
)
def test_one_that_fails_is_shown_as_missing(
    client: FlaskClient, monkeypatch: pytest.MonkeyPatch, name: str, form: str, part: str
) -> None:
    """Its link answers, is kept by nobody, and the fault is counted; mended, the link shows it."""
    plan = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"]
    link = plan.replace("plan.svg", name)
    with monkeypatch.context() as patch:
        patch.setattr(utilisation if form.startswith("image") else drawings, part, broken)
        shown = client.get(link, headers=KEY)
    assert (shown.status_code, shown.mimetype) == (200, form)
    assert shown.headers["Cache-Control"] == "no-store"
    assert form != "application/pdf" or shown.data.startswith(b"%PDF-")
    counted = 'ledgerstone_faults_total{part="drawing"} 1'
    assert counted in client.get("/metrics", headers=KEY).text
    assert client.get(link, headers=KEY).data != shown.data
