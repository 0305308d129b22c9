"""An internal fault in one part of an answer costs that part, and never the answer."""

import json
import logging
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from typing import Any, cast

import pytest
from flask import Flask
from flask.testing import FlaskClient

from ledgerstone import checks, quote
from ledgerstone.api import containing, metrics
from ledgerstone.api.logs import JSONLines
from ledgerstone.application import answering, answers, drawings
from ledgerstone.application.changed_orders import ChangeLinks
from ledgerstone.checks import edges, wear
from ledgerstone.drawing import missing_drawing
from ledgerstone.errors import NotUnderstood, PlateError
from ledgerstone.papers import approval, job_mould
from ledgerstone.remedies import search
from ledgerstone.wording import Message, english, speech_in
from support.asking import changed
from support.breaking import LABEL, broken
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, demonstration_app

KEY = {"Authorization": f"Bearer {MAKER_KEY}"}
SENT_BACK = changed(("/slabs/0/cutouts/0/centre/y", "220 mm"))


@pytest.fixture
def app(today: date) -> Flask:
    """A service for each test: what one does to it is no other's."""
    return demonstration_app(today)


@pytest.fixture
def lines() -> Iterator[list[dict[str, Any]]]:
    """What is logged of faults, as it would be written."""
    kept: list[dict[str, Any]] = []

    class Kept(logging.Handler):
        def emit(self, record: logging.LogRecord) -> None:
            kept.append(json.loads(JSONLines().format(record)))

    handler, logger = Kept(), logging.getLogger("ledgerstone.fault")
    logger.addHandler(handler)
    yield kept
    logger.removeHandler(handler)


def counted(client: FlaskClient, part: str) -> int:
    """How many faults of a part the metrics tell."""
    text = client.get("/metrics", headers=KEY).text
    named = f'ledgerstone_faults_total{{part="{part}"}} '
    return sum(int(float(line.removeprefix(named))) for line in text.splitlines() if named in line)


def assert_told(client: FlaskClient, lines: list[dict[str, Any]], part: str) -> None:
    """The fault is logged with its place and nothing that was sent, and counted."""
    for line in lines:
        assert (line["part"], line["error"]) == (part, "ZeroDivisionError")
        assert any("breaking.py" in place for place in line["at"])
        assert LABEL not in json.dumps(line)
    assert counted(client, part) == len(lines) > 0


def test_nothing_is_counted_while_nothing_fails(
    client: FlaskClient, lines: list[dict[str, Any]]
) -> None:
    """A quote and a send-back without a fault log none and count none."""
    assert client.post("/v1/quotes", json=EXAMPLE_ORDER).status_code == 200
    assert client.post("/v1/quotes", json=SENT_BACK).status_code == 422
    assert lines == []
    assert "ledgerstone_faults_total{" not in client.get("/metrics", headers=KEY).text


def test_a_fault_in_the_search_costs_the_remedies_alone(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """The send-back goes out with its findings and drawings where the whole search fails."""
    monkeypatch.setattr(quote, "find", broken)
    answer = client.post("/v1/quotes", json=SENT_BACK)
    assert answer.status_code == 422
    body = answer.get_json()
    assert body["findings"][0]["check"] == "strip-too-narrow"
    assert body["findings"][0]["remedies"] == []
    assert set(body["drawings"]) >= {"plan", "view"}
    assert "fix_all" not in body
    assert_told(client, lines, "remedy")


def test_a_fault_in_one_search_leaves_the_other(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the fix for all fails, the findings keep their own remedies, one of which is a fix."""
    monkeypatch.setattr(search._Search, "fix", broken)
    body = client.post("/v1/quotes", json=SENT_BACK).get_json()
    assert body["findings"][0]["remedies"]
    assert body["fix_all"]["verified"] is True
    assert_told(client, lines, "remedy")


def test_a_fault_in_one_trial_costs_that_change_alone(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """A change whose trial fails is not offered; others are tried, and are."""
    real, asked = quote.run_stages, list[object]()

    def first_fails(*given: Any, **more: Any) -> Any:  # noqa: ANN401  as the check of an order
        asked.append(given)
        return broken() if len(asked) == 1 else real(*given, **more)

    monkeypatch.setattr(answering, "run_stages", first_fails)
    body = client.post("/v1/quotes", json=SENT_BACK).get_json()
    assert len(asked) > 1
    assert body["findings"][0]["check"] == "strip-too-narrow"
    assert {"fix_all", "nearest_makeable"} & set(body)
    assert_told(client, lines, "remedy")


@pytest.mark.parametrize("name", ["remedy_members", "fix_members"])
def test_a_fault_in_writing_costs_what_was_written(
    client: FlaskClient,
    lines: list[dict[str, Any]],
    monkeypatch: pytest.MonkeyPatch,
    name: str,
) -> None:
    """Where remedies or fixes cannot be written, the rest of the send-back is."""
    monkeypatch.setattr(answers, name, broken)
    body = client.post("/v1/quotes", json=SENT_BACK).get_json()
    assert body["findings"][0]["check"] == "strip-too-narrow"
    assert bool(body["findings"][0]["remedies"]) == (name == "fix_members")
    assert ("fix_all" in body) == (name == "remedy_members")
    assert_told(client, lines, "remedy")


def test_a_fault_in_ways_to_save_costs_those_alone(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """A quote has its price where the search for ways to save fails."""
    monkeypatch.setattr(quote, "ways_to_save", broken)
    body = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    assert body["price"]["total"]
    assert body["ways_to_save"] == []
    assert_told(client, lines, "saving")


def test_a_reply_goes_out_without_the_link_that_failed(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """A letter that sends an order back is written where its links cannot be."""
    monkeypatch.setattr(ChangeLinks, "view", broken)
    reply = client.post("/v1/replies", json={"order": SENT_BACK}, headers=KEY)
    assert reply.status_code == 200
    assert "strip" in reply.get_json()["text"]
    assert_told(client, lines, "remedy")


# --- checks ---------------------------------------------------------------------------------


def _with(monkeypatch: pytest.MonkeyPatch, name: str, run: object) -> None:
    """Let one check of a group fail."""
    listed = getattr(checks, name)
    failing = [replace(c, run=broken) if c.run is run else c for c in listed]
    assert sum(c.run is broken for c in failing) == 1
    monkeypatch.setattr(checks, name, tuple(failing))


def test_a_check_that_fails_never_passes_an_order(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """An order of which a check that might stop it fails is sent back, and says why."""
    _with(monkeypatch, "SHAPE_CHECKS", edges.profiles_made)
    answer = client.post("/v1/quotes", json=EXAMPLE_ORDER)
    assert answer.status_code == 422
    body = answer.get_json()
    first = body["findings"][0]
    assert (first["check"], first["level"]) == ("check-failed", "stops")
    assert "fix_all" not in body
    assert set(body["drawings"]) >= {"plan", "view"}
    # The search fails on the same check, which costs it the remedies.
    assert [line["part"] for line in lines].count("check") == counted(client, "check") == 1
    assert {line["part"] for line in lines} == {"check", "remedy"}


def test_a_check_that_only_advises_costs_no_quote(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where a check that never stops an order fails, the quote says that it was not checked."""
    _with(monkeypatch, "PROMISE_CHECKS", wear.acids_and_oil)
    answer = client.post("/v1/quotes?", json=EXAMPLE_ORDER, headers={"Prefer": "return=minimal"})
    assert answer.status_code == 200
    found = {f["check"]: f["level"] for f in answer.get_json()["findings"]}
    assert found["check-failed"] == "caution"
    assert "acids-and-oil" not in found
    assert_told(client, lines, "check")


def test_a_stage_that_fails_never_passes_an_order(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where a stage's own work fails, the order is sent back with what was found before it."""
    monkeypatch.setattr(quote, "assess", broken)
    answer = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers={"Prefer": "return=minimal"})
    assert answer.status_code == 422
    body = answer.get_json()
    assert body["findings"][0]["id"] == "check-failed.strength-stops"
    assert body["not_checked"] == ["promise"]
    assert_told(client, lines, "check")


# --- drawings -------------------------------------------------------------------------------


def test_a_quote_is_not_lost_with_its_drawings(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """A quote has its price, and no link, where its drawings cannot be described."""
    monkeypatch.setattr(drawings, "describe", broken)
    for order, status in ((EXAMPLE_ORDER, 200), (SENT_BACK, 422)):
        answer = client.post("/v1/quotes", json=order)
        assert answer.status_code == status
        assert answer.get_json()["drawings"] == {}
    assert_told(client, lines, "drawing")


@pytest.mark.parametrize("form", ["svg", "png"])
def test_a_drawing_that_fails_is_shown_as_missing(
    client: FlaskClient,
    lines: list[dict[str, Any]],
    monkeypatch: pytest.MonkeyPatch,
    form: str,
) -> None:
    """Its link shows that it is missing, which nobody keeps; mended, the link shows it."""
    plan = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"]
    link = plan.replace(".svg", f".{form}")
    with monkeypatch.context() as patch:
        patch.setattr(drawings, "draw_plan", broken)
        shown = client.get(link)
    assert shown.status_code == 200
    assert shown.headers["Cache-Control"] == "no-store"
    assert "ETag" not in shown.headers
    assert form == "png" or shown.text == missing_drawing(speech_in("en"))
    assert_told(client, lines, "drawing")
    assert client.get(link).data != shown.data


def test_a_picture_that_cannot_be_painted_is_shown_as_missing(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """So it is where the drawing is there and the painter fails on it."""
    plan = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"]
    monkeypatch.setattr(drawings, "rasterise", broken)
    shown = client.get(plan.replace(".svg", ".png"))
    assert (shown.status_code, shown.mimetype) == (200, "image/png")
    assert_told(client, lines, "drawing")


def test_papers_go_out_without_the_drawing_that_failed(
    client: FlaskClient, lines: list[dict[str, Any]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """A letter, an approval sheet and a job sheet say that their plan is missing."""
    monkeypatch.setattr(drawings, "draw_plan", broken)
    monkeypatch.setattr(approval, "draw_plan", broken)
    monkeypatch.setattr(job_mould, "draw_plan", broken)
    for path, accept in (
        ("/v1/sheets/approval", "text/html"),
        ("/v1/job-sheets", "text/html"),
        ("/v1/replies", "message/rfc822"),
    ):
        headers = {**KEY, "Accept": accept}
        paper = client.post(path, json={"order": EXAMPLE_ORDER}, headers=headers)
        assert paper.status_code == 200
        assert accept != "text/html" or english(Message("drawing-missing")) in paper.text
    assert len(lines) == 3
    assert_told(client, lines, "drawing")


def test_what_tells_the_caller_something_is_not_contained(client: FlaskClient) -> None:
    """An order not understood is a 400; a plate without an answer costs its part alone."""
    assert client.post("/v1/drawings", json={"slabs": []}).status_code == 400
    app, refused = client.application, pytest.raises(NotUnderstood)
    with app.test_request_context(), refused, containing.contained("drawing"):
        raise NotUnderstood(())
    with app.test_request_context(), containing.contained("remedy"):
        raise PlateError("no answer")
    assert counted(client, "remedy") == 1


def test_a_part_that_is_not_known_counts_as_other(client: FlaskClient) -> None:
    """The label has no word that was not written down beforehand."""
    with client.application.test_request_context():
        metrics.count_fault(cast("Any", "something"))
    assert counted(client, "other") == 1
