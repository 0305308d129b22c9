"""The maker's calendar file beside a running service: read, changed, broken, gone."""

import os
import time
from dataclasses import replace
from datetime import date
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient

from api.schemas import Schemas
from ledgerstone.api import Settings, create_app
from ledgerstone.api.app_context import APP_CONTEXT
from ledgerstone.wording import Message, english
from ledgerstone.workshop import DEMONSTRATION
from support.calendars import FORTNIGHT, calendar

SETTINGS = Settings(
    workshop_path=DEMONSTRATION,
    maker_key="a maker's key for the tests",
    signing_keys=("a signing key for the tests, of no use elsewhere",),
    today=lambda _zone: date(2026, 11, 25),
)
A_GUESS = english(Message("calendar-not-read"))
BOOKED = import_module("ledgerstone.calendar_file")
TOO_MUCH = calendar(
    *["DTSTART;VALUE=DATE:20261126\r\nSUMMARY:Casting table\r\nRRULE:FREQ=DAILY"] * 300
).encode()


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


def test_a_changed_file_is_loaded_at_the_next_request(
    calling: FlaskClient, file: Path, example_order: dict[str, Any]
) -> None:
    """With a table booked for a fortnight, the same order is ready later, and costs the same."""
    free = quoted(calling, example_order)
    file.write_text(calendar(FORTNIGHT), encoding="utf-8")
    busy = quoted(calling, example_order)
    assert busy["lead_time"]["ready_on"] > free["lead_time"]["ready_on"]
    assert busy["price"] == free["price"]


def test_a_calendar_that_is_read_replaces_days_ahead(
    calling: FlaskClient, file: Path, example_order: dict[str, Any]
) -> None:
    """Nothing booked is nothing ahead; without the file the profile's five working days count."""
    free = quoted(calling, example_order)
    file.unlink()
    guessed = quoted(create_app(replace(SETTINGS, calendar_path=file)).test_client(), example_order)
    names = [[stage["name"] for stage in quote["lead_time"]["stages"]] for quote in (free, guessed)]
    assert ["Waiting its turn" in told for told in names] == [False, True]
    assert free["lead_time"]["ready_on"] < guessed["lead_time"]["ready_on"]


@pytest.mark.parametrize("content", [None, b"", b"BEGIN:VCALENDAR", b"\xff\xfe", b"nonsense"])
def test_a_file_that_cannot_be_read_is_stated_and_nothing_is_promised(
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
    assert quote["depends_on"][0].startswith(A_GUESS)


@pytest.mark.parametrize("content", [None, b"", b"nonsense", TOO_MUCH], ids=lambda c: str(c)[:9])
def test_what_was_read_last_stays(
    file: Path, example_order: dict[str, Any], content: bytes | None
) -> None:
    """A file that breaks after it was read changes no answer but readiness's, for a day."""
    file.write_text(calendar(FORTNIGHT), encoding="utf-8")
    app = create_app(replace(SETTINGS, calendar_path=file))
    calling, now_s = app.test_client(), [0.0]
    app.extensions[APP_CONTEXT].calendar.clock = lambda: now_s[0]
    before = quoted(calling, example_order)
    read = calling.get("/v1/health/ready").get_json()["calendar"]
    if content is None:
        file.unlink()
    else:
        file.write_bytes(content)
    now_s[0] += 23 * 3600.0
    assert quoted(calling, example_order) == before
    told = calling.get("/v1/health/ready").get_json()["calendar"]
    assert told["status"] == "not-read"
    assert told["says"].startswith("Calendar not read: The calendar file")
    assert told["bookings"] == read["bookings"]
    now_s[0] += 2 * 3600.0
    assert quoted(calling, example_order)["depends_on"][0].startswith(A_GUESS)
    assert "bookings" not in calling.get("/v1/health/ready").get_json()["calendar"]


# Every seventh day from a Thursday is never a Friday: what looks for one looks until 9999.
NEVER = "DTSTART;VALUE=DATE:20261126\r\nSUMMARY:table\r\nRRULE:FREQ=DAILY;INTERVAL=7;BYDAY=FR"


def test_nobody_waits_for_a_calendar_that_takes_long(
    file: Path, example_order: dict[str, Any], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Thirty rules that look for a day that never comes: answers go on, and it is given up."""
    monkeypatch.setattr(BOOKED, "READ_S", 2)
    calling = create_app(replace(SETTINGS, calendar_path=file)).test_client()
    quoted(calling, example_order)
    file.write_text(calendar(*[NEVER] * 30), encoding="utf-8")
    began_s = time.process_time()
    for _ in range(3):
        assert calling.get("/v1/health/ready").status_code == 200
    assert time.process_time() - began_s < 1.0
    began_s = time.monotonic()
    while "takes too long" not in (says := _says(calling)):
        assert time.monotonic() - began_s < 20
        assert says == ""
        time.sleep(0.1)


def _says(calling: FlaskClient) -> str:
    return str(calling.get("/v1/health/ready").get_json()["calendar"].get("says", ""))


WEEKLY = "DTSTART;VALUE=DATE:20261127\r\nSUMMARY:Fitting\r\nRRULE:FREQ=WEEKLY"


def reopened(file: Path, token: str, day: date) -> dict[str, Any]:
    """Open a quote from its link on another day."""
    app = create_app(replace(SETTINGS, calendar_path=file, today=lambda _zone: day))
    return dict(app.test_client().get(f"/v1/quotes/{token}").get_json())


def test_an_old_link_says_that_the_calendar_has_changed_since(
    calling: FlaskClient, file: Path, example_order: dict[str, Any], schemas: Schemas
) -> None:
    """With the table booked meanwhile the price stands, and today's day beside it is later."""
    offered = quoted(calling, example_order)
    file.write_text(calendar(FORTNIGHT), encoding="utf-8")
    opened = reopened(file, offered["token"], date(2026, 11, 26))
    assert schemas.undocumented("OpenedQuote", opened) == []
    [reason] = opened["because"]
    assert reason["reason"] == "calendar-changed"
    assert "calendar has changed since" in reason["says"]
    assert opened["stands"] is True
    assert opened["today"]["body"]["lead_time"]["ready_on"] > offered["lead_time"]["ready_on"]


@pytest.mark.parametrize(
    ("then", "now"),
    [
        (WEEKLY, WEEKLY),
        ("", "DTSTART;VALUE=DATE:20270701\r\nDTEND;VALUE=DATE:20270715\r\nSUMMARY:Away"),
        (FORTNIGHT, FORTNIGHT + " for Ashby"),
        (FORTNIGHT, None),
    ],
    ids=("as it was", "after the day", "another name", "not to be read"),
)
def test_a_calendar_that_is_the_same_up_to_the_day_is_no_change(
    calling: FlaskClient, file: Path, example_order: dict[str, Any], then: str, now: str | None
) -> None:
    """Days go by, and work comes in for later: what the day rests on is as it was."""
    file.write_text(calendar(*filter(None, [then])), encoding="utf-8")
    offered = quoted(calling, example_order)
    file.write_text("" if now is None else calendar(now), encoding="utf-8")
    opened = reopened(file, offered["token"], date(2026, 12, 2))
    assert opened["because"] == []


def test_a_table_booked_for_ever_promises_no_day(
    calling: FlaskClient, file: Path, example_order: dict[str, Any]
) -> None:
    """No day is found, and that is an answer and no fault of ours."""
    file.write_text(calendar(FORTNIGHT + "\r\nRRULE:FREQ=WEEKLY"), encoding="utf-8")
    response = calling.post("/v1/quotes", json=example_order, headers={"Prefer": "return=minimal"})
    assert response.status_code == 422
    assert "no-day-free" in [finding["check"] for finding in response.get_json()["findings"]]


def test_readiness_tells_how_old_the_file_is(calling: FlaskClient, file: Path) -> None:
    """A file exported two days ago is 48 hours old; one that is gone has no age."""
    then_s = time.time() - 48 * 3600
    os.utime(file, (then_s, then_s))
    assert calling.get("/v1/health/ready").get_json()["calendar"]["age_hours"] == 48.0
    file.unlink()
    assert "age_hours" not in calling.get("/v1/health/ready").get_json()["calendar"]


def test_the_job_sheet_says_so_too(file: Path, example_order: dict[str, Any]) -> None:
    """Without the calendar the plan of days begins by saying that it is a guess, and why."""
    file.unlink()
    app = create_app(replace(SETTINGS, calendar_path=file))
    headers = {"Authorization": f"Bearer {SETTINGS.maker_key}", "Accept": "text/html"}
    sheet = app.test_client().post(
        "/v1/job-sheets", json={"order": {**example_order, "heated_curing": True}}, headers=headers
    )
    assert sheet.status_code == 200
    assert A_GUESS in sheet.text
    assert "file is not there" in sheet.text
    assert "carbon monoxide" in sheet.text
