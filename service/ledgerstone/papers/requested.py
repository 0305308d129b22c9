"""A customer's request as one letter to the workshop: who asks for which quote."""

from __future__ import annotations

import re
from dataclasses import dataclass
from email.headerregistry import Address
from email.message import EmailMessage
from email.policy import SMTP

from ledgerstone.papers.message import sender
from ledgerstone.workshop.records import Workshop

# A plain address, as most are; any other stands in the letter's text alone. RFC 5321 4.5.3.1.
_ADDRESS = re.compile(
    r"([A-Za-z0-9._%+-]{1,64})@((?:[A-Za-z0-9](?:[A-Za-z0-9-]{0,61}[A-Za-z0-9])?\.)+[A-Za-z]{2,63})"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Request:
    """What a customer asks for, and how to answer.

    Attributes
    ----------
    quote
        Pairs of what and how, of the quote that is asked for.
    """

    name: str
    reach: str
    note: str
    reference: str
    total: str
    quote: tuple[tuple[str, str], ...]


def request_letter(request: Request, workshop: Workshop) -> EmailMessage:
    """Write a request to the workshop's own address, and to no other."""
    mail = EmailMessage(policy=SMTP)
    mail["From"] = mail["To"] = sender(workshop)
    address = _ADDRESS.fullmatch(request.reach)
    if address is not None:
        mail["Reply-To"] = Address(request.name, address[1], address[2])
    mail["Subject"] = f"“I'd like this one”: {request.reference}, {request.total}"
    rows = [("Name", request.name), ("Answer to", request.reach), *request.quote]
    lines = [f"{what}: {says}" for what, says in rows]
    note = f"\n\nNote:\n{request.note}" if request.note else ""
    mail.set_content("\n".join(lines) + note + "\n", cte="quoted-printable")
    return mail
