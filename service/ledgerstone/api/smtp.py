"""The one way out: a letter to the workshop's own mail server."""

from __future__ import annotations

import smtplib
import ssl
from collections.abc import Callable
from email.message import EmailMessage
from email.utils import formatdate, make_msgid
from typing import Final

from ledgerstone.errors import MailFault
from ledgerstone.workshop.records import Mail, Workshop

PATIENCE_S: Final = 8.0  # a worker has 20 s for a request
_AWAY = (
    "Our mail server is away, so your request was not sent, and nothing of it was kept. Write to"
    " {email} or ring {telephone}, and name the quote's reference."
)


def post_of(workshop: Workshop, password: str) -> Callable[[EmailMessage], None] | None:
    """Return what sends a letter to the workshop's own address; None where no server is named."""
    server, mine = workshop.mail, workshop.workshop
    if server is None:
        return None

    def post(mail: EmailMessage) -> None:
        mail["Date"] = formatdate()
        mail["Message-ID"] = make_msgid(domain=mine.email.rpartition("@")[2])
        try:
            _send(server, password, mail, mine.email)
        except (OSError, smtplib.SMTPException) as reason:
            says = _AWAY.format(email=mine.email, telephone=mine.telephone)
            raise MailFault(says) from reason

    return post


def _send(server: Mail, password: str, mail: EmailMessage, address: str) -> None:
    """Send to one address, by name: what stands in the letter's headers names nobody else."""
    trusted = ssl.create_default_context()
    if server.security == "tls":
        connection: smtplib.SMTP = smtplib.SMTP_SSL(
            server.host, server.port, timeout=PATIENCE_S, context=trusted
        )
    else:
        connection = smtplib.SMTP(server.host, server.port, timeout=PATIENCE_S)
    with connection:
        if server.security == "starttls":
            connection.starttls(context=trusted)
        if server.user is not None:
            connection.login(server.user, password)
        connection.sendmail(address, [address], mail.as_bytes())
