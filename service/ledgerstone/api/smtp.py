"""Sending a letter through the workshop's mail server, within one deadline."""

from __future__ import annotations

import smtplib
import ssl
import threading
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass, field
from email.message import EmailMessage
from email.utils import formatdate, make_msgid
from socket import SHUT_RDWR
from typing import Final

from ledgerstone.errors import RequestNotSent
from ledgerstone.workshop.records import MailSettings, Workshop

SMTP_TIMEOUT_S: Final = 8.0  # for the whole SMTP session; a worker has 20 s for a request
_ENDING_S: Final = 0.5  # and for what had come by then to be read


def post_of(workshop: Workshop, password: str) -> Callable[[EmailMessage], None] | None:
    """Return the function that sends a letter to the workshop's address; None without a server."""
    server, identity = workshop.mail, workshop.workshop
    if server is None:
        return None

    def post(mail: EmailMessage) -> None:
        mail["Date"] = formatdate()
        mail["Message-ID"] = make_msgid(domain=identity.email.rpartition("@")[2])
        reason = Conversation(server, password, mail.as_bytes(), identity.email).within(
            SMTP_TIMEOUT_S
        )
        if reason is not None:
            raise RequestNotSent(identity.email, identity.ring) from reason

    return post


@dataclass(slots=True)
class Conversation:
    """One SMTP session: one letter to one recipient, the only address in its headers.

    It runs in a thread, since neither name resolution nor a slow server has a deadline of its own.
    At the deadline the connection is closed, and a letter that is not accepted by then is not
    sent. What the server had answered by then still counts: of one request there is one outcome.
    """

    server: MailSettings
    password: str
    letter: bytes
    address: str
    _connection: smtplib.SMTP | None = None
    _is_settled: threading.Event = field(default_factory=threading.Event)
    _is_over: bool = False
    _is_taken: bool = False
    _failed: Exception | None = None

    def within(self, seconds: float) -> Exception | None:
        """Send the letter; return why it was not accepted in time, or None if it was."""
        threading.Thread(target=self._run, args=(seconds,), daemon=True).start()
        if self._is_settled.wait(seconds):
            return None if self._is_taken else self._failed
        self._is_over = True
        sock = self._connection.sock if self._connection is not None else None
        if sock is not None:
            with suppress(OSError):
                sock.shutdown(SHUT_RDWR)
        self._is_settled.wait(_ENDING_S)  # closed, it reads no more than what has come
        late = TimeoutError("the mail server took longer than we wait for")
        return None if self._is_taken else late

    def _run(self, seconds: float) -> None:
        """Run the session; its result is final once the letter is accepted, before QUIT."""
        try:
            self._send(seconds)
        except (OSError, smtplib.SMTPException) as reason:
            self._failed = reason
        finally:
            self._is_settled.set()

    def _send(self, seconds: float) -> None:
        server, trusted = self.server, ssl.create_default_context()
        if server.security == "tls":
            self._connection = smtplib.SMTP_SSL(timeout=seconds, context=trusted)
        else:
            self._connection = smtplib.SMTP(timeout=seconds)
        # The host name for the certificate. As a constructor argument it would connect at once.
        self._connection._host = server.host  # type: ignore[attr-defined]  # noqa: SLF001
        with self._connection as connection:
            self._go_on()
            connection.connect(server.host, server.port)
            if server.security == "starttls":
                connection.starttls(context=trusted)
            if server.user is not None:
                connection.login(server.user, self.password)
            self._go_on()
            connection.sendmail(self.address, [self.address], self.letter)
            self._is_taken = True
            self._is_settled.set()

    def _go_on(self) -> None:
        """Stop if the deadline has passed.

        Raises
        ------
        TimeoutError
        """
        if self._is_over:
            raise TimeoutError
