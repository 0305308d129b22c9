"""POST /v1/requests: one letter to the workshop's own address, over a real mail server."""

import logging
import re
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from ledgerstone.wording import Message, english
from support.asking import NEVER_SAID, PROBLEM
from support.offered import service
from support.postbox import ASKED, Postbox, mailing_profile

if TYPE_CHECKING:
    from flask.testing import FlaskClient

OURS = "hello@tarnside.example.com"


def test_one_letter_reaches_the_workshop(
    mailing: "FlaskClient", postbox: Postbox, token: str
) -> None:
    """The letter goes from and to the workshop's address, with who asks, for what, and the link."""
    quote = mailing.get(f"/v1/quotes/{token}").get_json()
    answer = mailing.post("/v1/requests", json={"token": token, **ASKED})
    assert answer.status_code == 200
    assert answer.get_json()["reference"] == quote["reference"]
    assert not NEVER_SAID.search(answer.get_json()["says"])
    [envelope] = postbox.taken
    assert (envelope.mail_from, envelope.rcpt_tos) == (OURS, [OURS])
    letter = postbox.letter()
    assert [a.addr_spec for a in letter["To"].addresses] == [OURS]
    assert [a.addr_spec for a in letter["Reply-To"].addresses] == ["odile@example.org"]
    assert quote["reference"] in letter["Subject"]
    assert letter["Date"]
    assert letter["Message-ID"]
    body = letter.get_content()
    total = f"£{Decimal(quote['price']['total']):,.2f}"
    for told in (ASKED["name"], ASKED["reach"], *ASKED["note"].split("\n"), quote["link"],
                 total, "Seed-tray bench", "it stands"):  # fmt: skip
        assert told in body
    assert "HR9" not in body


def test_choices_say_whether_requests_are_taken(
    client: "FlaskClient", mailing: "FlaskClient"
) -> None:
    """The page is told whether to show the button."""
    assert client.get("/v1/choices").get_json()["requests"] is False
    assert mailing.get("/v1/choices").get_json()["requests"] is True


def test_without_a_server_there_are_no_requests(client: "FlaskClient", token: str) -> None:
    """A workshop whose profile names no server answers 404, with where to write instead."""
    answer = client.post("/v1/requests", json={"token": token, **ASKED})
    assert answer.status_code == 404
    assert answer.mimetype == PROBLEM
    assert OURS in answer.get_json()["detail"]


@pytest.mark.parametrize("field", ["name", "reach"])
@pytest.mark.parametrize(
    "value", ["A\r\nBcc: spy@evil.example", "A\nSubject: x", "A\x00", "A\u202eb", "A\u2028b", "",
              "   ", "A" * 121, 7, None],
)  # fmt: skip
def test_no_header_can_be_slipped_in(
    mailing: "FlaskClient", postbox: Postbox, token: str, field: str, value: object
) -> None:
    """Line breaks, hidden characters, nothing at all or too much: a 400 at its field, no letter."""
    answer = mailing.post("/v1/requests", json={"token": token, **ASKED, field: value})
    assert answer.status_code == 400
    assert [fault["pointer"] for fault in answer.get_json()["faults"]] == [f"/{field}"]
    assert postbox.taken == []


@pytest.mark.parametrize(
    ("changes", "pointer"),
    [
        ({"note": "x" * 1001}, "/note"),
        ({"note": "a\x00b"}, "/note"),
        ({"note": ["a"]}, "/note"),
        ({"token": "x"}, "/token"),
        ({"to": "spy@evil.example"}, "/to"),
    ],
)
def test_what_is_not_understood_sends_nothing(
    mailing: "FlaskClient", postbox: Postbox, token: str, changes: dict[str, Any], pointer: str
) -> None:
    """Each fault is reported at its pointer; nobody names another address; no letter goes."""
    answer = mailing.post("/v1/requests", json={"token": token, **ASKED, **changes})
    assert answer.status_code == 400
    assert pointer in [fault["pointer"] for fault in answer.get_json()["faults"]]
    assert postbox.taken == []


@pytest.mark.parametrize(
    "reach", ["01632 960417", "a@b.example, c@d.example", "<a@b.example>", "a@b", '"x y"@b.example',
              "a@b.example>\u200b"[:12] + " x", "me at example dot org", "Ürs@müller.example"],
)  # fmt: skip
def test_only_a_plain_address_is_answered_to(
    mailing: "FlaskClient", postbox: Postbox, token: str, reach: str
) -> None:
    """What is no single plain address stands in the letter's text and in no header."""
    answer = mailing.post("/v1/requests", json={"token": token, **ASKED, "reach": reach})
    assert answer.status_code == 200
    letter = postbox.letter()
    assert letter["Reply-To"] is None
    assert f"Answer to: {reach}" in letter.get_content()
    assert postbox.taken[0].rcpt_tos == [OURS]


def test_a_note_cannot_end_the_letter(mailing: "FlaskClient", postbox: Postbox, token: str) -> None:
    """A note with a lone dot, or with lines like headers, is all in the letter's text."""
    note = "one\n.\nBcc: spy@evil.example\n\n..two\nFrom the start"
    mailing.post("/v1/requests", json={"token": token, **ASKED, "note": note})
    letter = postbox.letter()
    assert note in letter.get_content().replace("\r\n", "\n")
    assert letter["Bcc"] is None


def test_an_offer_that_is_over_says_so(
    tmp_path: Path, free_port: int, postbox: Postbox, token: str
) -> None:
    """A request for an expired quote still reaches the workshop, told as no longer standing."""
    late = service(date(2027, 2, 1), profile=mailing_profile(tmp_path, free_port))
    assert late.post("/v1/requests", json={"token": token, **ASKED}).status_code == 200
    assert "it no longer stands" in postbox.letter().get_content()


def test_a_clock_set_back_is_reported(
    tmp_path: Path, free_port: int, postbox: Postbox, token: str
) -> None:
    """A request for a quote of tomorrow says that our clock is behind, and sends nothing."""
    early = service(date(2026, 11, 24), profile=mailing_profile(tmp_path, free_port))
    answer = early.post("/v1/requests", json={"token": token, **ASKED})
    assert answer.status_code == 400
    assert answer.get_json()["detail"] == english(Message("link-dated-ahead"))
    assert postbox.taken == []


def test_nobody_floods_the_workshop(mailing: "FlaskClient", postbox: Postbox, token: str) -> None:
    """After a handful of requests at once a caller waits, and is told how long."""
    answers = [mailing.post("/v1/requests", json={"token": token, **ASKED}) for _ in range(7)]
    assert [answer.status_code for answer in answers] == [200] * 5 + [429] * 2
    assert int(answers[-1].headers["Retry-After"]) > 0
    assert len(postbox.taken) == 5


def test_what_is_not_understood_takes_nothing_from_the_allowance(
    mailing: "FlaskClient", postbox: Postbox, token: str
) -> None:
    """After twenty requests that were none, the good ones are still let through."""
    for _ in range(20):
        bad = mailing.post("/v1/requests", json={"token": "x", **ASKED})
        assert bad.status_code == 400
    assert mailing.post("/v1/requests", json={"token": token, **ASKED}).status_code == 200
    assert len(postbox.taken) == 1


def test_nothing_of_a_request_is_logged(
    mailing: "FlaskClient", postbox: Postbox, token: str, caplog: pytest.LogCaptureFixture
) -> None:
    """Neither the name, the way to answer, the note nor the token stands in any log line."""
    with caplog.at_level(logging.DEBUG):
        for _ in range(2):
            mailing.post("/v1/requests", json={"token": token, **ASKED})
            postbox.answer = "554 not wanted"
    ours = [record for record in caplog.records if not record.name.startswith("mail.log")]
    said = " ".join(f"{record.getMessage()} {record.__dict__}" for record in ours)
    secret = re.compile("|".join(map(re.escape, ("Odile", "example.org", "Two of", token[:40]))))
    assert not secret.search(said)
