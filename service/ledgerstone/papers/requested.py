"""A customer's request as one letter to the workshop: who asks for which quote."""

from __future__ import annotations

import re
from dataclasses import dataclass
from email.headerregistry import Address
from email.message import EmailMessage
from email.policy import SMTP

from ledgerstone.papers.message import sender
from ledgerstone.wording import Message, Money, workshop_speech
from ledgerstone.workshop.records import Workshop

# A plain address, as most are; any other is only in the letter's text. RFC 5321 4.5.3.1.
_ADDRESS = re.compile(
    r"([A-Za-z0-9._%+-]{1,64})@((?:[A-Za-z0-9](?:[A-Za-z0-9-]{0,61}[A-Za-z0-9])?\.)+[A-Za-z]{2,63})"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Request:
    """What a customer asks for, and how to answer.

    Attributes
    ----------
    quote
        What is to be said of the quote that is asked for, a line each.
    """

    name: str
    reach: str
    note: str
    reference: str
    total: Money
    quote: tuple[Message, ...]


def request_letter(request: Request, workshop: Workshop) -> EmailMessage:
    """Write a request to the workshop's own address, and to no other, in its own language."""
    mail = EmailMessage(policy=SMTP)
    mail["From"] = mail["To"] = sender(workshop)
    address = _ADDRESS.fullmatch(request.reach)
    if address is not None:
        mail["Reply-To"] = Address(request.name, address[1], address[2])
    speech = workshop_speech(workshop.workshop.language, workshop)
    subject = Message("request-subject", offer=request.reference, total=request.total)
    mail["Subject"] = speech.say(subject)
    rows = [
        Message("request-name", name=request.name),
        Message("request-answer-to", reach=request.reach),
        *request.quote,
    ]
    lines = map(speech.say, rows)
    note = f"\n\n{speech.say(Message('request-note'))}\n{request.note}" if request.note else ""
    mail.set_content("\n".join(lines) + note + "\n", cte="quoted-printable")
    return mail
