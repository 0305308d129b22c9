"""The mail server that a request goes to: away, silent, dripping, refusing, or with a password."""

import smtplib
import socket
import threading
import time
from contextlib import suppress
from datetime import date
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from aiosmtpd.controller import Controller
from aiosmtpd.smtp import SMTP, AuthResult, Envelope, LoginPassword, Session

from ledgerstone.api import Settings, create_app
from support.asking import PROBLEM
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from support.postbox import ASKED, Postbox, mailing_profile

if TYPE_CHECKING:
    from flask.testing import FlaskClient

SMTP_DOOR = import_module("ledgerstone.api.smtp")
TODAY = date(2026, 11, 25)
OURS = "hello@tarnside.example.com"


def test_a_mail_server_that_is_down_is_reported(mailing: "FlaskClient", token: str) -> None:
    """Where nothing listens, the answer is a plain 503 that says what to do instead."""
    answer = mailing.post("/v1/requests", json={"token": token, **ASKED})
    assert answer.status_code == 503
    assert answer.mimetype == PROBLEM
    assert OURS in answer.get_json()["detail"]
    assert "not sent" in answer.get_json()["detail"]
    assert int(answer.headers["Retry-After"]) > 0


def test_a_mail_server_that_refuses_is_reported(
    mailing: "FlaskClient", postbox: Postbox, token: str
) -> None:
    """A letter that the server does not take is told as not sent."""
    postbox.answer = "554 not wanted"
    assert mailing.post("/v1/requests", json={"token": token, **ASKED}).status_code == 503


def test_a_server_that_says_nothing_is_not_waited_for(
    mailing: "FlaskClient", free_port: int, token: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A server that takes the call and says nothing is given up after our patience."""
    monkeypatch.setattr(SMTP_DOOR, "SMTP_TIMEOUT_S", 0.2)
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
    monkeypatch.setattr(SMTP_DOOR, "SMTP_TIMEOUT_S", 0.6)
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


def _late(listener: socket.socket, wait_s: float, had: list[bytes]) -> None:
    """Take one letter, and say so only so much later than it is whole."""
    with suppress(OSError):
        caller, _ = listener.accept()
        with caller, caller.makefile("rb") as lines:
            caller.sendall(b"220 here\r\n")
            for line in lines:
                if line.startswith(b"DATA"):
                    caller.sendall(b"354 go on\r\n")
                    had += iter(lines.readline, b".\r\n")
                    time.sleep(wait_s)
                caller.sendall(b"250 well\r\n")


@pytest.mark.parametrize("late_s", [-0.4, -0.1, -0.02, 0.0, 0.02, 0.1, 0.4])
def test_a_server_that_answers_at_the_deadline_loses_nothing(
    mailing: "FlaskClient",
    free_port: int,
    token: str,
    monkeypatch: pytest.MonkeyPatch,
    late_s: float,
) -> None:
    """A little before it, at it or after it: one answer in time, and what is told as sent is there.

    Long after it the letter is told as not sent.
    """
    monkeypatch.setattr(SMTP_DOOR, "SMTP_TIMEOUT_S", 1.0)
    had: list[bytes] = []
    with socket.create_server(("127.0.0.1", free_port)) as listener:
        late = threading.Thread(target=_late, args=(listener, 1.0 + late_s, had), daemon=True)
        late.start()
        began_s = time.monotonic()
        answer = mailing.post("/v1/requests", json={"token": token, **ASKED})
        took_s = time.monotonic() - began_s
        late.join()
    assert answer.status_code in ({503} if late_s >= 0.0 else {200, 503})
    assert answer.status_code == 503 or any(b"Subject" in line for line in had)
    assert took_s < 1.0 + 2.0


def test_a_letter_accepted_by_the_deadline_counts_as_sent(
    mailing: "FlaskClient", postbox: Postbox, token: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A server's word that came in time counts though it is read after the deadline."""
    monkeypatch.setattr(SMTP_DOOR, "SMTP_TIMEOUT_S", 0.6)
    sent = smtplib.SMTP.sendmail

    def read_late(connection: smtplib.SMTP, *letter: Any) -> Any:  # noqa: ANN401  as smtplib's
        taken = sent(connection, *letter)
        time.sleep(0.8)
        return taken

    monkeypatch.setattr(smtplib.SMTP, "sendmail", read_late)
    assert mailing.post("/v1/requests", json={"token": token, **ASKED}).status_code == 200
    assert len(postbox.taken) == 1


def test_the_patience_is_within_ten_seconds() -> None:
    """A request to a mail server that is away is answered within 10 s."""
    assert SMTP_DOOR.SMTP_TIMEOUT_S + 1.0 < 10.0


def test_an_accepted_letter_counts_as_sent_though_quit_fails(
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
    """Where someone signs in, the password from the environment is what is given."""
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
    profile = mailing_profile(tmp_path, free_port, 'user = "me@tarnside.example.com"\n')
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
