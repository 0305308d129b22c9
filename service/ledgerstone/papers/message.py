"""A reply as a draft that mail programs open: RFC 5322, plain text first, pictures inside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from email.headerregistry import Address
from email.message import EmailMessage
from email.policy import SMTP

from ledgerstone.papers.reply import Reply
from ledgerstone.workshop.records import Workshop


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


def message(reply: Reply, workshop: Workshop, enclosed: Sequence[Enclosed] = ()) -> bytes:
    """Write a draft: nobody's address is in it but the workshop's own."""
    mail = EmailMessage(policy=SMTP)
    mail["From"] = sender(workshop)
    mail["Subject"] = reply.subject
    mail["X-Unsent"] = "1"  # a mail program opens it to be finished and sent
    mail.set_content(reply.text, cte="quoted-printable")
    mail.add_alternative(reply.html, subtype="html", cte="quoted-printable")
    html = mail.get_payload()[1]  # type: ignore[index]  # a list, once there is an alternative
    for one in enclosed:
        major, minor = one.mimetype.split("/")
        if one.cid:
            html.add_related(  # type: ignore[union-attr]  # an EmailMessage of this policy
                one.content, major, minor, cid=f"<{one.cid}>", filename=one.name,
                disposition="inline",
            )  # fmt: skip
    for one in enclosed:
        major, minor = one.mimetype.split("/")
        if not one.cid:
            mail.add_attachment(one.content, maintype=major, subtype=minor, filename=one.name)
    for number, part in enumerate(part for part in mail.walk() if part.is_multipart()):
        part.set_boundary(f"=_ledgerstone_{number}_=")  # the same letter is the same bytes
    return mail.as_bytes()


def sender(workshop: Workshop) -> Address:
    """Return the workshop's own address, by its name."""
    user, _, domain = workshop.workshop.email.rpartition("@")
    return Address(workshop.workshop.name, user, domain)
