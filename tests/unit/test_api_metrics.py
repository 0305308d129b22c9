"""What is counted, by whom it may be read, and that workers count together."""

import os
import re

import pytest
from flask.testing import FlaskClient

from ledgerstone.api.counts import MAX_WORKERS, Counts
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY

# A sample of Prometheus' text format 0.0.4: a name, labels or none, a number.
SAMPLE = re.compile(
    r'[a-zA-Z_:][a-zA-Z0-9_:]*(\{[a-z_]+="[^"\\\n]*"(,[a-z_]+="[^"\\\n]*")*\})? -?[0-9.e+-]+'
)
ELSEWHERE = {"REMOTE_ADDR": "203.0.113.7"}


def _said(client: FlaskClient) -> dict[str, float]:
    lines = client.get("/metrics").get_data(as_text=True).splitlines()
    samples = [line for line in lines if not line.startswith("#")]
    return {name: float(value) for name, _, value in (s.rpartition(" ") for s in samples)}


def test_answers_findings_and_stages_are_counted(client: FlaskClient) -> None:
    """One quote and one misread order are one of each, and a quote goes through every stage."""
    quote = client.post("/v1/quotes", json=EXAMPLE_ORDER)
    client.post("/v1/quotes", json={"slabs": []})
    drawing = quote.get_json()["drawings"]["plan"]
    client.get(drawing[drawing.index("/v1/") :])
    said = _said(client)
    assert said['ledgerstone_requests_total{route="/v1/quotes",status="200"}'] == 1
    assert said['ledgerstone_requests_total{route="/v1/quotes",status="400"}'] == 1
    for finding in quote.get_json()["findings"]:
        assert said[f'ledgerstone_findings_total{{check="{finding["check"]}"}}'] >= 1
    for stage in ("parse", "shape", "strength", "promise", "remedies", "write", "drawings"):
        assert said[f'ledgerstone_stage_seconds_total{{stage="{stage}"}}'] > 0
    assert said["ledgerstone_request_seconds_count"] == 3


def test_the_text_is_prometheus_own(client: FlaskClient) -> None:
    """Every line is a comment or a sample, and the buckets of the histogram only rise."""
    before = _said(client).get("ledgerstone_request_seconds_count", 0)
    client.get("/v1/choices")
    answer = client.get("/metrics")
    assert answer.headers["Content-Type"] == "text/plain; version=0.0.4; charset=utf-8"
    lines = answer.get_data(as_text=True).splitlines()
    assert all(line.startswith(("# HELP ", "# TYPE ")) or SAMPLE.fullmatch(line) for line in lines)
    buckets = [float(line.rpartition(" ")[2]) for line in lines if "_bucket{" in line]
    assert buckets == sorted(buckets)
    assert buckets[-1] == before + 1


@pytest.mark.parametrize(
    ("headers", "where", "status"),
    [
        ({}, {}, 200),
        ({}, ELSEWHERE, 401),
        ({"X-Forwarded-For": "203.0.113.7"}, {}, 401),
        ({"Forwarded": "for=203.0.113.7"}, {}, 401),
        ({"Authorization": "Bearer of tidings"}, ELSEWHERE, 401),
        ({"Authorization": f"Bearer {MAKER_KEY}"}, ELSEWHERE, 200),
    ],
)
def test_counts_are_for_this_machine_and_the_maker(
    client: FlaskClient, headers: dict[str, str], where: dict[str, str], status: int
) -> None:
    """The machine itself may ask, unless for another; elsewhere the maker's key is needed."""
    answer = client.get("/metrics", headers=headers, environ_overrides=where)
    assert answer.status_code == status


def test_no_label_is_a_customers(client: FlaskClient) -> None:
    """A path, a token or a check that nobody knows adds no label."""
    for path in ("/v1/quotes/made-up", "/nowhere/HR9", "/v1/drawings/xyz/plan.svg"):
        client.get(path)
    text = client.get("/metrics").get_data(as_text=True)
    assert not re.search("made-up|HR9|xyz", text)
    assert 'route="other",status="404"' in text


def test_workers_count_together() -> None:
    """What a process counts that is then killed is in the sum, and a row used again goes on."""
    counts = Counts(["/v1/quotes"])
    for worker in (1, 2, 1 + MAX_WORKERS):
        child = os.fork()
        if child == 0:
            counts.take_row(worker)
            counts.add("ledgerstone_stage", stage="parse")
            os.kill(os.getpid(), 9)
        os.waitpid(child, 0)
    assert counts.total("ledgerstone_stage", "parse") == 3
