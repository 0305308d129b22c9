"""POST /v1/job-sheets: the maker's alone, in three forms, of a token or an order."""

import json
import subprocess
from html import unescape
from pathlib import Path
from typing import Any

import html5lib
import icalendar
import pytest
from flask.testing import FlaskClient

from ledgerstone.json_types import JSON
from ledgerstone.message import Message
from ledgerstone.wording import speech_in
from support.asking import NEVER_SAID, PROBLEM, changed
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, service, slabs_order

FORMS = ("application/json", "text/html", "application/pdf")


def _asked(form: str = FORMS[0], client: FlaskClient | None = None, **asked: Any) -> Any:  # noqa: ANN401  a response
    caller = client if client is not None else service()
    return caller.post("/v1/job-sheets", json=asked, headers={**MAKER, "Accept": form})


def _printed(tmp_path: Path, content: bytes) -> list[str]:
    path = tmp_path / "job.pdf"
    path.write_bytes(content)
    read = subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True, check=True)
    return read.stdout.decode().split("\f")[:-1]


def test_only_the_maker_has_a_job_sheet(client: FlaskClient) -> None:
    """Costs and hours leave through no other door."""
    answer = client.post("/v1/job-sheets", json={"order": EXAMPLE_ORDER})
    assert answer.status_code == 401
    assert answer.mimetype == PROBLEM


@pytest.mark.parametrize("form", FORMS)
def test_a_job_sheet_comes_in_the_form_asked_for(form: str) -> None:
    """JSON, a page and a PDF; the page carries a policy of its own."""
    answer = _asked(form, order=EXAMPLE_ORDER)
    assert answer.status_code == 200
    assert answer.mimetype == form
    if form == "text/html":
        assert "script-src" not in answer.headers["Content-Security-Policy"]
        html5lib.HTMLParser(strict=True).parse(answer.text)


def test_the_plan_comes_as_a_calendar() -> None:
    """The maker imports it, and the calendar the service reads is the one it writes for."""
    answer = _asked("text/calendar", order=EXAMPLE_ORDER)
    assert answer.mimetype == "text/calendar"
    events = icalendar.Calendar.from_ical(answer.get_data()).walk("VEVENT")
    assert events
    assert all(event.decoded("DTSTART") < event.decoded("DTEND") for event in events)


def test_a_quotes_token_gives_the_job_of_that_quote() -> None:
    """The reference is the quote's own, and the order's job is the token's."""
    client = service()
    quoted = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    by_token = _asked(client=client, token=quoted["token"]).get_json()
    by_order = _asked(client=client, order=EXAMPLE_ORDER).get_json()
    assert by_token["reference"] == quoted["reference"]
    assert by_token["operations"] == by_order["operations"]
    assert by_token["costs"] == by_order["costs"]


def test_the_maker_sees_every_cost_of_the_price() -> None:
    """Costs with the margin come to the price's first three lines, to what the pound moved."""
    client = service()
    quoted = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    costs = _asked(client=client, order=EXAMPLE_ORDER).get_json()["costs"]
    made = sum(float(line["amount"]) for line in costs["lines"])
    lines = {line["label"]: float(line["amount"]) for line in quoted["price"]["lines"]}
    asked = sum(
        lines[group] for group in ("Materials", "Making and casting", "Finishing and sealing")
    )
    assert made * (1 + float(costs["margin_percent"]) / 100) == pytest.approx(asked, abs=1.0)


def test_every_page_has_its_number_and_the_reference(tmp_path: Path) -> None:
    """Page by page, on paper."""
    content = _asked("application/pdf", order=EXAMPLE_ORDER).data
    reference = _asked(order=EXAMPLE_ORDER).get_json()["reference"]
    pages = _printed(tmp_path, content)
    assert len(pages) == 2
    for number, page in enumerate(pages, start=1):
        assert reference in page
        assert f"{number}/{len(pages)}" in page
    assert "MIRRORED" in pages[1]
    assert "68.4 kg" in pages[0]


def test_a_pdf_is_the_same_bytes_each_time() -> None:
    """Nothing in it is of the moment."""
    first, second = (_asked("application/pdf", order=EXAMPLE_ORDER).data for _ in range(2))
    assert first == second


def test_what_a_customer_writes_stays_text() -> None:
    """A label that looks like markup is read as a label in every form."""
    label = '#panic("x") <b>*bold*</b>'
    order = changed(("/slabs/0/label", label))
    page = _asked("text/html", order=order).text
    assert "<b>*bold*" not in page
    assert _asked("application/pdf", order=order).status_code == 200
    assert label in json.dumps(_asked(order=order).get_json()).replace('\\"', '"')


def test_an_order_that_cannot_be_made_has_no_job_sheet() -> None:
    """It is sent back as a quote is, with what would put it right."""
    answer = _asked(order=changed(("/slabs/0/cutouts/0/centre/y", "200 mm")))
    assert answer.status_code == 422
    assert answer.get_json()["findings"]


@pytest.mark.parametrize("sent", [{}, {"order": EXAMPLE_ORDER, "token": "x"}, {"token": "x"}, []])
def test_what_is_not_understood_is_reported(sent: JSON) -> None:
    """A token or an order, and not both."""
    answer = service().post("/v1/job-sheets", json=sent, headers=MAKER)
    assert answer.status_code == 400
    assert not NEVER_SAID.search(answer.text)


def test_eight_slabs_have_sheets_of_their_own() -> None:
    """A sheet for each, beside days, boards and batches."""
    pages = _asked(order=slabs_order(8)).get_json()["pages"]
    assert len(pages) == 3 + 8


def test_with_the_makers_key_a_quote_tells_its_costs() -> None:
    """The maker sees every line on the quote itself, and a customer none of them."""
    client = service()
    makers = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    sheet = _asked(client=client, order=EXAMPLE_ORDER).get_json()
    assert makers["costs"] == sheet["costs"]
    assert any(line["label"].startswith("Hours: ") for line in makers["costs"]["lines"])
    customers = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    assert "costs" not in customers
    assert len(customers["price"]["lines"]) == 6  # three of making, cover, delivery, rounding


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_calendar_says_whose_it_is_and_when_it_leaves(language: str) -> None:
    """Every title in the offer's language, with slab, customer and reference; the last day too."""
    client = service()
    order = {**EXAMPLE_ORDER, "language": language}
    quoted = client.post("/v1/quotes", json=order, headers=MAKER).get_json()
    answer = _asked("text/calendar", client=client, token=quoted["token"], customer="Odile")
    events = icalendar.Calendar.from_ical(answer.get_data()).walk("VEVENT")
    speech = speech_in(language)
    named = speech.say(
        Message("plan-whose", named="yes", slabs="Seed-tray bench", customer="Odile")
    )
    whose = f"{named}, {quoted['reference']}"
    assert all(whose in str(event["SUMMARY"]) for event in events)
    (last,) = (event for event in events if event.get("TRANSP") == "TRANSPARENT")
    title = Message("plan-leaves", way=order["delivery"]["kind"], slabs=whose)
    assert last["SUMMARY"] == speech.say(title)
    assert last.decoded("DTSTART").isoformat() == quoted["lead_time"]["arrives"]["earliest"]
    cast = speech.say(Message("stage", stage="cast"))
    assert any(cast in str(event["SUMMARY"]) for event in events)


def test_what_the_customer_has_not_answered_is_ticked_before_anything_is_cut() -> None:
    """Each question stands on the sheet, of an offer as of an order; without any there is none."""
    client = service()
    token = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()["token"]
    asks = "Is the tap ours to bring?"
    open_still = [{"at": "/slabs/0/cutouts/0", "asks": asks}]
    says = speech_in("en").say(Message("job-answered", question=asks))
    for asked in ({"token": token}, {"order": EXAMPLE_ORDER}):
        assert says in unescape(
            _asked("text/html", client=client, missing=open_still, **asked).text
        )
        assert asks not in unescape(_asked("text/html", client=client, **asked).text)
