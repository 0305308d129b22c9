"""The README says what is so: its order is posted, and its answers are the real ones."""

import json
import re
from datetime import date
from typing import Any

import pytest
from flask.testing import FlaskClient

from conftest import MAKER_KEY
from design.source import ROOT
from ledgerstone.json_types import JSON

README = (ROOT / "README.md").read_text(encoding="utf-8")
BLOCKS = re.findall(r"```(sh|json)\n(.*?)```", README, re.DOTALL)
ANSWERS = [json.loads(text) for kind, text in BLOCKS if kind == "json"]


@pytest.fixture
def order() -> dict[str, Any]:
    """The order that the README's curl call sends."""
    sent = next(text for kind, text in BLOCKS if kind == "sh" and "curl" in text)
    body: dict[str, Any] = json.loads(sent.split("-d '")[1].rsplit("'", 1)[0])
    return body


def _only(whole: JSON, shown: JSON) -> JSON:
    """The parts of an answer that the README shows of it: members may be left out, items not."""
    if isinstance(whole, dict) and isinstance(shown, dict):
        return {key: _only(whole.get(key), shown[key]) for key in shown}
    if isinstance(whole, list) and isinstance(shown, list) and len(whole) == len(shown):
        return [_only(*pair) for pair in zip(whole, shown, strict=True)]
    return whole


def test_the_two_commands_stand_under_the_job() -> None:
    """The title, one paragraph, then the two commands: nothing stands between."""
    title, job, commands = README.split("\n\n")[:3]
    assert title.startswith("# ")
    assert "worktop" in job
    assert [line.split()[0] for line in commands.splitlines()[1:-1]] == [
        "service/serve",
        "tests/run",
    ]


def test_the_answer_shown_is_the_answer(
    client: FlaskClient, order: dict[str, Any], today: date
) -> None:
    """What the README shows of the quote is what the service answers on that day."""
    answer = client.post("/v1/quotes", json=order)
    assert answer.status_code == 200
    assert ANSWERS[0]["issued"] == today.isoformat()
    assert _only(answer.json, ANSWERS[0]) == ANSWERS[0]


def test_the_finding_shown_is_the_finding(client: FlaskClient, order: dict[str, Any]) -> None:
    """The change that the README makes is sent back, with the finding that it shows."""
    moved = re.search(r'Move the basin to `"y": "([^"]+)"`', README)
    assert moved
    order["slabs"][0]["cutouts"][0]["centre"]["y"] = moved[1]
    answer = client.post("/v1/quotes", json=order)
    assert answer.status_code == 422
    findings = answer.get_json()["findings"]
    assert ANSWERS[1] in [_only(finding, ANSWERS[1]) for finding in findings]


def test_the_email_shown_becomes_an_offer(client: FlaskClient) -> None:
    """Pasted at the desk, the README's enquiry has a price, with a basin and a tap."""
    (email,) = re.findall(r"```text\n(.*?)```", README, re.DOTALL)
    maker = {"Authorization": f"Bearer {MAKER_KEY}"}
    read = client.post("/v1/enquiries", json={"message": email}, headers=maker).get_json()
    assert [one["label"] for one in read["order"]["slabs"][0]["cutouts"]] == ["basin", "tap"]
    answer = client.post("/v1/quotes", json=read["proposal"])
    assert answer.status_code == 200, answer.text
