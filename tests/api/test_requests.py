"""POST /v1/requests: one letter to the workshop's own address, over a real mail server."""

import logging
import re
import smtplib
import socket
import threading
import time
from collections.abc import Iterator
from contextlib import suppress
from datetime import date
from email.message import EmailMessage
from email.parser import BytesParser
from email.policy import default
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from aiosmtpd.controller import Controller
from aiosmtpd.smtp import SMTP, AuthResult, Envelope, LoginPassword, Session

from api.asking import NEVER_SAID, PROBLEM
from api.offered import service
from conftest import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS
from ledgerstone.api import Settings, create_app
from ledgerstone.workshop import DEMONSTRATION

if TYPE_CHECKING:
    from flask.testing import FlaskClient

SMTP_DOOR = import_module("ledgerstone.api.smtp")
TODAY = date(2026, 11, 25)
OURS = "hello@tarnside.example.com"
ASKED = {"name": "Odile Ångström", "reach": "odile@example.org", "note": "Two of them?\n½ inch?"}


class Postbox:
    """Keeps what a mail server took, or refuses it."""

    def __init__(self) -> None:
        self.taken: list[Envelope] = []
        self.answer = "250 taken"

    async def handle_DATA(self, _server: SMTP, _session: Session, envelope: Envelope) -> str:  # noqa: N802  aiosmtpd's name
        """Take one letter."""
        self.taken.append(envelope)
        return self.answer

    def letter(self) -> EmailMessage:
        """The only letter there is, as Python's email package reads it."""
        [envelope] = self.taken
        content = envelope.content
        assert isinstance(content, bytes)
        letter = BytesParser(policy=default).parsebytes(content)
        assert isinstance(letter, EmailMessage)
        assert not letter.defects
        return letter


@pytest.fixture
def free_port() -> int:
    """A port that nothing listens on."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


@pytest.fixture
def postbox(free_port: int) -> Iterator[Postbox]:
    """A mail server on this machine."""
    box = Postbox()
    server = Controller(box, hostname="127.0.0.1", port=free_port)
    server.start()
    yield box
    server.stop()


def _profile(folder: Path, port: int, more: str = "") -> Path:
    path = folder / "workshop.toml"
    text = DEMONSTRATION.read_text(encoding="utf-8")
    table = f'[mail]\nhost = "127.0.0.1"\nport = {port}\nsecurity = "none"\n{more}'
    path.write_text(f"{text}\n{table}", encoding="utf-8")
    return path


@pytest.fixture
def mailing(tmp_path: Path, free_port: int) -> "FlaskClient":
    """The service of a workshop whose profile names that server."""
    return service(profile=_profile(tmp_path, free_port))


@pytest.fixture(scope="module")
def token() -> str:
    """The token of the example order's quote."""
    return str(service().post("/v1/quotes", json=EXAMPLE_ORDER).get_json()["token"])


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
    for told in (ASKED["name"], ASKED["reach"], *ASKED["note"].split("\n"), quote["link"],
                 f"£{quote['price']['total']}", "Seed-tray bench", "it stands"):  # fmt: skip
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


def test_a_server_that_is_down_is_told(mailing: "FlaskClient", token: str) -> None:
    """Where nothing listens, the answer is a plain 503 that says what to do instead."""
    answer = mailing.post("/v1/requests", json={"token": token, **ASKED})
    assert answer.status_code == 503
    assert answer.mimetype == PROBLEM
    assert OURS in answer.get_json()["detail"]
    assert "not sent" in answer.get_json()["detail"]
    assert int(answer.headers["Retry-After"]) > 0


def test_a_server_that_refuses_is_told(
    mailing: "FlaskClient", postbox: Postbox, token: str
) -> None:
    """A letter that the server does not take is told as not sent."""
    postbox.answer = "554 not wanted"
    assert mailing.post("/v1/requests", json={"token": token, **ASKED}).status_code == 503


def test_a_server_that_says_nothing_is_not_waited_for(
    mailing: "FlaskClient", free_port: int, token: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A server that takes the call and says nothing is given up after our patience."""
    monkeypatch.setattr(SMTP_DOOR, "PATIENCE_S", 0.2)
    with socket.socket() as silent:
        silent.bind(("127.0.0.1", free_port))
        silent.listen()
        assert mailing.post("/v1/requests", json={"token": token, **ASKED}).status_code == 503


def _drip(listener: socket.socket, begins: bytes, is_over: threading.Event) -> None:
    """Take one call, answer it with a beginning, and then with a byte now and then, without end."""
    with suppress(OSError):
        caller, _ = listener.accept()
        with caller:
            caller.sendall(begins)
            while not is_over.wait(0.05):
                caller.sendall(b"2")


@pytest.mark.parametrize("begins", [b"", b"220 here\r\n", b"220-a line\r\n"])
def test_a_server_that_drips_has_one_deadline(
    mailing: "FlaskClient",
    free_port: int,
    token: str,
    monkeypatch: pytest.MonkeyPatch,
    begins: bytes,
) -> None:
    """A byte now and then restarts no clock: the whole conversation is given up in time."""
    monkeypatch.setattr(SMTP_DOOR, "PATIENCE_S", 0.6)
    is_over = threading.Event()
    with socket.create_server(("127.0.0.1", free_port)) as listener:
        threading.Thread(target=_drip, args=(listener, begins, is_over), daemon=True).start()
        began_s = time.monotonic()
        answer = mailing.post("/v1/requests", json={"token": token, **ASKED})
        took_s = time.monotonic() - began_s
        is_over.set()
    assert answer.status_code == 503
    assert "not sent" in answer.get_json()["detail"]
    assert took_s < 0.6 + 2.0


def test_the_patience_is_within_ten_seconds() -> None:
    """A request to a mail server that is away is answered within 10 s."""
    assert SMTP_DOOR.PATIENCE_S + 1.0 < 10.0


def test_a_letter_taken_is_told_though_the_farewell_is_not(
    mailing: "FlaskClient", postbox: Postbox, token: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What the server has taken counts as sent, whatever becomes of the connection after it."""

    def broken(connection: smtplib.SMTP, *_: object) -> None:
        connection.close()
        raise smtplib.SMTPServerDisconnected

    monkeypatch.setattr(smtplib.SMTP, "__exit__", broken)
    assert mailing.post("/v1/requests", json={"token": token, **ASKED}).status_code == 200
    assert len(postbox.taken) == 1


@pytest.mark.filterwarnings("ignore:Requiring AUTH while not requiring TLS:UserWarning")
def test_the_password_opens_the_server(tmp_path: Path, free_port: int, token: str) -> None:
    """Where somebody signs in, the password from the environment is what is given."""
    given: list[tuple[bytes, bytes]] = []

    def signed_in(
        _server: SMTP,
        _session: Session,
        _envelope: Envelope,
        _how: str,
        data: Any,  # noqa: ANN401  as below
    ) -> AuthResult:
        assert isinstance(data, LoginPassword)
        given.append((data.login, data.password))
        return AuthResult(success=data.password == b"a secret of the test")

    box = Postbox()
    server = Controller(box, hostname="127.0.0.1", port=free_port, authenticator=signed_in,
                        auth_require_tls=False, auth_required=True)  # fmt: skip
    profile = _profile(tmp_path, free_port, 'user = "me@tarnside.example.com"\n')
    server.start()
    try:
        statuses = []
        for password in ("a secret of the test", "another"):
            settings = Settings(
                workshop_path=profile,
                maker_key=MAKER_KEY,
                signing_keys=SIGNING_KEYS,
                today=lambda _zone: TODAY,
                smtp_password=password,
            )
            client = create_app(settings).test_client()
            answer = client.post("/v1/requests", json={"token": token, **ASKED})
            statuses.append(answer.status_code)
            assert password not in answer.text
            assert password not in repr(settings)
    finally:
        server.stop()
    assert statuses == [200, 503]
    assert given[0] == (b"me@tarnside.example.com", b"a secret of the test")
    assert len(box.taken) == 1


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
    """Each fault is told at its pointer; nobody names another address; no letter goes."""
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
    late = service(date(2027, 2, 1), profile=_profile(tmp_path, free_port))
    assert late.post("/v1/requests", json={"token": token, **ASKED}).status_code == 200
    assert "it no longer stands" in postbox.letter().get_content()


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
