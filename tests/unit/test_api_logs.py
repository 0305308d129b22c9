"""What a log line tells, and what none ever does."""

import json
import logging
import os
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from flask.testing import FlaskClient

from ledgerstone.api.logs import JSONLines, UnbufferedHandler
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, demonstration_app

MAX_CHARS = 1000


class _Kept(logging.Handler):
    def __init__(self) -> None:
        super().__init__()
        self.lines: list[str] = []
        self.setFormatter(JSONLines())

    def emit(self, record: logging.LogRecord) -> None:
        self.lines.append(self.format(record))


@pytest.fixture
def kept() -> Iterator[list[str]]:
    """The lines that are logged."""
    handler, logger = _Kept(), logging.getLogger("ledgerstone")
    before = logger.level
    logger.addHandler(handler)
    logger.setLevel(logging.INFO)
    yield handler.lines
    logger.removeHandler(handler)
    logger.setLevel(before)


def test_a_request_is_one_line_with_the_answers_id(client: FlaskClient, kept: list[str]) -> None:
    """The id in the log, in the answer's header and in the problem's body is one."""
    answer = client.post("/v1/quotes", data=b"{", content_type="application/json")
    [line] = map(json.loads, kept)
    assert line["id"] == answer.headers["X-Request-Id"]
    assert answer.get_json()["instance"] == f"urn:uuid:{line['id']}"
    assert (line["method"], line["route"], line["status"]) == ("POST", "/v1/quotes", 400)
    assert line["problem"] == "not-understood"
    assert line["ms"] >= 0


def test_no_line_holds_what_was_sent(client: FlaskClient, kept: list[str]) -> None:
    """No label, postcode, link or key is in the log of a quote, its link, drawing and reply."""
    quote = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    drawing = quote["drawings"]["plan"]
    client.get(f"/v1/quotes/{quote['token']}")
    client.get(drawing[drawing.index("/v1/") :])
    key = {"Authorization": f"Bearer {MAKER_KEY}"}
    client.post("/v1/replies", json={"token": quote["token"]}, headers=key)
    client.get(f"/v1/quotes/{quote['token'][:-4]}", headers={"Referer": "https://a.example/HR9"})
    log = "\n".join(kept)
    assert len(kept) == 5
    for secret in (quote["token"][:24], drawing.split("/")[-2][:24], MAKER_KEY, "HR9", "Seed-tray"):
        assert secret not in log


def test_a_fault_of_ours_is_reported_without_its_words(today: date, kept: list[str]) -> None:
    """A failure is logged by kind, place and id; its message, which may quote an order, is not."""
    app = demonstration_app(today)

    @app.get("/v1/broken")
    def broken() -> str:
        raise KeyError("HR9 7XX")

    answer = app.test_client().get("/v1/broken")
    assert answer.status_code == 500
    fault, line = map(json.loads, kept)
    assert fault["error"] == "KeyError"
    assert fault["at"][-1].endswith(" broken")
    assert line["id"] in fault["says"]
    assert "HR9" not in "\n".join(kept)


def test_a_line_break_makes_no_second_line() -> None:
    """What is logged stays on one line, whatever it holds."""
    record = logging.LogRecord("a", 20, "b", 1, "one\ntwo\u2028\x1b[2J", None, None)
    line = JSONLines().format(record)
    assert line.isascii()
    assert line.isprintable()
    assert json.loads(line)["says"].startswith("one\ntwo")


def test_a_long_method_is_not_logged(client: FlaskClient, kept: list[str]) -> None:
    """A method that nobody knows is logged as other."""
    client.open("/v1/choices", method="X" * 200)
    assert json.loads(kept[-1])["method"] == "other"
    assert len(kept[-1]) < MAX_CHARS


def test_a_full_disk_loses_lines_and_nothing_else() -> None:
    """A device without room takes no line; each is counted, and nothing is raised."""
    full = os.open("/dev/full", os.O_WRONLY)
    try:
        handler = UnbufferedHandler(full)
        for _ in range(3):
            handler.emit(logging.LogRecord("a", 20, "b", 1, "says", None, None))
        assert handler.lost == 3
    finally:
        os.close(full)


def test_lines_are_written_whole_and_at_once(tmp_path: Path) -> None:
    """A line is in the file as soon as it was logged."""
    path = tmp_path / "log"
    descriptor = os.open(path, os.O_WRONLY | os.O_CREAT)
    try:
        record = logging.LogRecord("a", 20, "b", 1, "says", None, None)
        UnbufferedHandler(descriptor).emit(record)
        assert json.loads(path.read_text(encoding="utf-8"))["says"] == "says"
    finally:
        os.close(descriptor)
