"""POST /v1/replies: what was asked for and the order no longer has, and the day asked for."""

import html
import re
from datetime import date, timedelta
from typing import TYPE_CHECKING, Any

import pytest

from ledgerstone.message import Message
from ledgerstone.quantities import Length
from ledgerstone.wording import Listed, english, speech_in
from support.asking import changed, without
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER

if TYPE_CHECKING:
    from flask.testing import FlaskClient

STRIP = changed(("/slabs/0/cutouts/0/centre/y", "190 mm"))  # too near the front: it can be moved


def _said(client: "FlaskClient", **asked: Any) -> list[str]:
    """A letter's text and its HTML, each with its lines joined."""
    answer = client.post("/v1/replies", json=asked, headers=MAKER)
    assert answer.status_code == 200, answer.text
    return [" ".join(answer.get_json()[part].split()) for part in ("text", "html")]


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("now_needed", [True, False], ids=["moved", "taken-away"])
def test_a_day_asked_for_that_cannot_be_met_is_reported(
    client: "FlaskClient", language: str, now_needed: bool
) -> None:
    """With the day that can be, and never as in time; one that can be met after all is met."""
    order = {**EXAMPLE_ORDER, "language": language}
    quote = client.post("/v1/quotes", json=order, headers=MAKER).get_json()
    arrives = quote["lead_time"]["arrives"]["latest"]
    if now_needed:
        order["needed_by"] = arrives
    wished = date.fromisoformat(arrives) - timedelta(days=3)
    speech = speech_in(language)
    in_time = speech.say(Message("letter-in-time", asked="yes"))
    says = speech.say(Message("letter-day-not-met", wished=wished))
    for told in _said(client, order=order, asked={**order, "needed_by": wished.isoformat()}):
        assert says in told
        assert in_time not in told
        assert speech.say(Message("letter-changed")) not in told
    met, _ = _said(client, order=order, asked={**order, "needed_by": arrives})
    assert speech.say(Message("letter-day-not-met", wished=date.fromisoformat(arrives))) not in met
    assert in_time in met


@pytest.mark.parametrize("language", ["en", "de"])
def test_every_change_since_the_customer_asked_is_reported(
    client: "FlaskClient", language: str
) -> None:
    """Each with what it was, in the customer's own unit, beneath one line that leads to them."""
    order = {**EXAMPLE_ORDER, "language": language}
    asked = changed(
        ("/slabs/0/cutouts/0/centre/x", "95 cm"),
        ("/slabs/0/thickness", "30 mm"),
        ("/slabs/0/edges/front/size", "8 mm"),
        order=order,
    )
    speech = speech_in(language)
    slab = Message("slab-labelled", label="Seed-tray bench")
    basin = Message("cutout-labelled", label="basin")
    x, y = (Length.parse(text) for text in ("980 mm", "270 mm"))
    steps = Listed((Message("move-step", by=Length.parse("3 cm"), way="right"),))
    facts = [
        Listed((Message("plan-edge-bevel", size=Length.parse(size)),), joined="comma")
        for size in ("5 mm", "8 mm")
    ]
    front = Listed((Message("plan-side-word", side="front"),), joined="comma")
    thick, thin = (Length.parse(text) for text in ("40 mm", "30 mm"))
    for told in _said(client, order=order, asked=asked):
        for says in (
            Message("letter-changed"),
            Message("change-thickness", slab=slab, now=thick, was=thin),
            Message("change-edge", slab=slab, sides=front, now=facts[0], was=facts[1]),
            Message("change-cutout-place", cutout=basin, steps=steps, x=x, y=y),
        ):
            assert speech.say(says) in html.unescape(told)


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_letter_says_why_it_could_not_be_as_asked(client: "FlaskClient", language: str) -> None:
    """In the words of what stood in the way: too thin for the table's sides, too near the back."""
    order = {**EXAMPLE_ORDER, "language": language}
    thin = changed(("/slabs/0/thickness", "15 mm"), order=order)
    near = changed(("/slabs/0/cutouts/0/centre/y", "340 mm"), order=order)
    speech = speech_in(language)
    why = speech.say(Message("letter-changed-why"))
    for asked in (thin, near):
        findings = client.post("/v1/quotes", json=asked).get_json()["findings"]
        stops = " ".join(
            found["says"]
            for found in findings
            if found["level"] == "stops" and not found.get("follows_from")
        )
        for told in _said(client, order=order, asked={**asked, "needed_by": "2026-11-26"}):
            assert f"{why} {stops}" in " ".join(html.unescape(re.sub("<[^>]+>", " ", told)).split())
    able = changed(("/slabs/0/thickness", "50 mm"), order=order)
    assert not any(why in html.unescape(told) for told in _said(client, order=order, asked=able))


def test_a_fault_in_what_was_asked_for_is_reported_at_its_place(client: "FlaskClient") -> None:
    """By a pointer into the member that holds it."""
    asked = changed(("/slabs/0/thickness", "forty"))
    answer = client.post(
        "/v1/replies", json={"order": EXAMPLE_ORDER, "asked": asked}, headers=MAKER
    )
    assert answer.status_code == 400
    assert [fault["pointer"] for fault in answer.get_json()["faults"]] == [
        "/asked/slabs/0/thickness"
    ]


@pytest.mark.parametrize(
    ("wished", "needed_by", "says"),
    [
        ("2027-06-01", "2027-06-01", "letter-day-kept"),
        ("2026-11-26", "2026-11-26", "letter-day-not-met"),
        ("2026-11-02", "2026-11-02", "letter-day-not-met"),
        ("2027-04-01", "2027-06-01", "letter-day-open"),
    ],
    ids=["kept", "too soon", "past", "open"],
)
def test_a_send_back_tells_of_the_day_asked_for(
    client: "FlaskClient", wished: str, needed_by: str, says: str
) -> None:
    """As kept with the change, as missed, or as not known before what stops it is settled."""
    order = {**STRIP, "needed_by": needed_by}
    day = date.fromisoformat(wished)
    for told in _said(client, order=order, asked={**STRIP, "needed_by": wished}):
        assert english(Message(says, wished=day)) in told
    for told in _said(client, order=without("/needed_by", STRIP)):
        assert not any(
            english(Message(name, wished=day)) in told
            for name in ("letter-day-kept", "letter-day-not-met", "letter-day-open")
        )
