"""The one way out: a letter to the workshop's own mail server, within one deadline."""

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
from ledgerstone.workshop.records import Mail, Workshop

PATIENCE_S: Final = 8.0  # for the whole conversation; a worker has 20 s for a request


def post_of(workshop: Workshop, password: str) -> Callable[[EmailMessage], None] | None:
    """Return what sends a letter to the workshop's own address; None where no server is named."""
    server, mine = workshop.mail, workshop.workshop
    if server is None:
        return None

    def post(mail: EmailMessage) -> None:
        mail["Date"] = formatdate()
        mail["Message-ID"] = make_msgid(domain=mine.email.rpartition("@")[2])
        reason = Conversation(server, password, mail.as_bytes(), mine.email).within(PATIENCE_S)
        if reason is not None:
            raise RequestNotSent(mine.email, mine.telephone) from reason

    return post


@dataclass(slots=True)
class Conversation:
    """One letter handed to one server, to one address by name: its headers name nobody else.

    It is held in a thread of its own, for a name that does not resolve and a server that drips have
    no deadline by themselves. Past the deadline the connection is cut, and what the server has not
    taken by then it does not get.
    """

    server: Mail
    password: str
    letter: bytes
    address: str
    _connection: smtplib.SMTP | None = None
    _is_settled: threading.Event = field(default_factory=threading.Event)
    _is_over: bool = False
    _is_taken: bool = False
    _failed: Exception | None = None

    def within(self, seconds: float) -> Exception | None:
        """Send the letter; return why it was not taken in time, or None where it was."""
        threading.Thread(target=self._run, args=(seconds,), daemon=True).start()
        if self._is_settled.wait(seconds):
            return None if self._is_taken else self._failed
        self._is_over = True
        sock = self._connection.sock if self._connection is not None else None
        if sock is not None:
            with suppress(OSError):
                sock.shutdown(SHUT_RDWR)
        return TimeoutError("the mail server took longer than we wait for")

    def _run(self, seconds: float) -> None:
        """Hold the conversation; it is settled once the letter is taken, before the farewells."""
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
        # What the certificate is held to. Given above, it would be called before it can be cut off.
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
        """Stop where the deadline has passed meanwhile.

        Raises
        ------
        TimeoutError
        """
        if self._is_over:
            raise TimeoutError
