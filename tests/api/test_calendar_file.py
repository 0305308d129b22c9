"""The maker's calendar file beside a running service: read, changed, broken, gone."""

from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient

from ledgerstone.api import Settings, create_app
from ledgerstone.workshop import DEMONSTRATION
from unit.test_schedule_ical import calendar

SETTINGS = Settings(
    workshop_path=DEMONSTRATION,
    maker_key="a maker's key for the tests",
    signing_keys=("a signing key for the tests, of no use elsewhere",),
    today=lambda _zone: date(2026, 11, 25),
)
FORTNIGHT = "DTSTART;VALUE=DATE:20261201\r\nDTEND;VALUE=DATE:20261215\r\nSUMMARY:Casting table"


@pytest.fixture
def file(tmp_path: Path) -> Path:
    """A calendar file with nothing booked."""
    path = tmp_path / "bookings.ics"
    path.write_text(calendar(), encoding="utf-8")
    return path


@pytest.fixture
def calling(file: Path) -> FlaskClient:
    """A caller of the service that reads it."""
    return create_app(replace(SETTINGS, calendar_path=file)).test_client()


def quoted(calling: FlaskClient, order: dict[str, Any]) -> dict[str, Any]:
    """Ask for a quote."""
    response = calling.post("/v1/quotes", json=order, headers={"Prefer": "return=minimal"})
    assert response.status_code == 200
    return dict(response.get_json())


def test_a_changed_file_is_taken_up_at_the_next_request(
    calling: FlaskClient, file: Path, example_order: dict[str, Any]
) -> None:
    """With a table booked for a fortnight, the same order is ready later, and costs the same."""
    free = quoted(calling, example_order)
    file.write_text(calendar(FORTNIGHT), encoding="utf-8")
    busy = quoted(calling, example_order)
    assert busy["lead_time"]["ready_on"] > free["lead_time"]["ready_on"]
    assert busy["price"] == free["price"]


@pytest.mark.parametrize("content", [None, b"", b"BEGIN:VCALENDAR", b"\xff\xfe", b"nonsense"])
def test_a_file_that_cannot_be_read_is_said_and_nothing_is_promised(
    calling: FlaskClient, file: Path, example_order: dict[str, Any], content: bytes | None
) -> None:
    """Readiness tells why; the day is a guess to be confirmed, and the quote an estimate."""
    if content is None:
        file.unlink()
    else:
        file.write_bytes(content)
    told = calling.get("/v1/health/ready").get_json()["calendar"]
    assert told["status"] == "not-read"
    assert told["says"].endswith(".")
    quote = quoted(calling, example_order)
    assert quote["standing"] == "estimate"
    assert "the day is a guess" in quote["depends_on"][0]


def test_a_table_booked_for_ever_promises_no_day(
    calling: FlaskClient, file: Path, example_order: dict[str, Any]
) -> None:
    """No day is found, and that is an answer and no fault of ours."""
    file.write_text(calendar(FORTNIGHT + "\r\nRRULE:FREQ=WEEKLY"), encoding="utf-8")
    response = calling.post("/v1/quotes", json=example_order, headers={"Prefer": "return=minimal"})
    assert response.status_code == 422
    assert "no-day-free" in [finding["check"] for finding in response.get_json()["findings"]]
