"""A reply as a draft that mail programs open: RFC 5322, plain text first, pictures inside."""

from __future__ import annotations

import contextlib
import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from email.errors import HeaderParseError
from email.headerregistry import Address
from email.message import EmailMessage
from email.policy import SMTP
from typing import Final

from ledgerstone.papers.reply import Reply
from ledgerstone.workshop.records import Workshop

_IDENTIFIER: Final = re.compile(r"<[^<>\s@]{1,200}@[^<>\s@]{1,200}>")


@dataclass(frozen=True, slots=True)
class Enclosed:
    """A file beside or inside a letter.

    Attributes
    ----------
    cid
        The name by which the HTML shows it; empty for a file beside the letter.
    """

    name: str
    mimetype: str
    content: bytes
    cid: str = ""


@dataclass(frozen=True, slots=True)
class Answered:
    """The message that a draft answers: to whom, about what, by which identifiers.

    ``replaces`` is the day of an earlier letter in the thread whose place the draft takes.
    """

    to: str
    name: str = ""
    subject: str = ""
    message_id: str = ""
    references: str = ""
    replaces: date | None = None


def message(
    reply: Reply,
    workshop: Workshop,
    enclosed: Sequence[Enclosed] = (),
    answered: Answered | None = None,
) -> bytes:
    """Write a draft: the only addresses in it are the workshop's own and whom it answers."""
    mail = EmailMessage(policy=SMTP)
    mail["From"] = sender(workshop)
    if answered is None:
        mail["Subject"] = reply.subject
    else:
        _thread(mail, reply, answered)
    mail["X-Unsent"] = "1"  # a mail program opens it to be finished and sent
    mail.set_content(reply.text, cte="quoted-printable")
    mail.add_alternative(reply.html, subtype="html", cte="quoted-printable")
    html = mail.get_payload()[1]  # type: ignore[index]  # a list, once there is an alternative
    for attachment in enclosed:
        major, minor = attachment.mimetype.split("/")
        if attachment.cid:
            html.add_related(  # type: ignore[union-attr]  # an EmailMessage of this policy
                attachment.content,
                major,
                minor,
                cid=f"<{attachment.cid}>",
                filename=attachment.name,
                disposition="inline",
            )
    for attachment in enclosed:
        major, minor = attachment.mimetype.split("/")
        if not attachment.cid:
            mail.add_attachment(
                attachment.content, maintype=major, subtype=minor, filename=attachment.name
            )
    for number, part in enumerate(part for part in mail.walk() if part.is_multipart()):
        part.set_boundary(f"=_ledgerstone_{number}_=")  # the same letter is the same bytes
    return mail.as_bytes()


def _thread(mail: EmailMessage, reply: Reply, answered: Answered) -> None:
    """Make a draft the answer to a message, so that mail programs show them together."""
    user, _, domain = answered.to.rpartition("@")
    if user and domain:
        with contextlib.suppress(ValueError, HeaderParseError):
            mail["To"] = Address(answered.name, user, domain)
    subject = answered.subject or reply.subject
    is_answer = re.match(r"(?:re|aw|sv|antw)\s?:", subject, re.IGNORECASE)
    mail["Subject"] = subject if is_answer else f"Re: {subject}"
    if _IDENTIFIER.fullmatch(answered.message_id):
        mail["In-Reply-To"] = answered.message_id
        known = _IDENTIFIER.findall(f"{answered.references} {answered.message_id}")
        mail["References"] = " ".join(dict.fromkeys(known))


def sender(workshop: Workshop) -> Address:
    """Return the workshop's own address, by its name."""
    user, _, domain = workshop.workshop.email.rpartition("@")
    return Address(workshop.workshop.name, user, domain)
