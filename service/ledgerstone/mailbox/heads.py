"""A message's headers: who it is from, which thread it belongs to, and whether it is answered."""

from __future__ import annotations

import email.policy
import hashlib
import re
from dataclasses import dataclass
from datetime import date
from email.parser import BytesHeaderParser
from typing import Final, Literal

from ledgerstone.enquiry.mail import Mail, read_mail

MOST_THREAD: Final = 10
PREFIX: Final = "ledgerstone-"  # our drafts' Message-IDs begin so
_IDENTIFIER: Final = re.compile(r"<[^<>\s@]{1,200}@[^<>\s@]{1,200}>")

Skipped = Literal["our own", "a list's", "automatic"]


@dataclass(frozen=True, slots=True)
class Head:
    """What a message's headers say.

    Attributes
    ----------
    message_id
        Empty where it has none that an answer could name.
    thread
        The messages before it in its thread, the last one last.
    key
        The same for the same message, wherever it lies: a hash of its Message-ID, or of all its
        headers where it has none.
    """

    raw: bytes
    mail: Mail
    message_id: str
    thread: tuple[str, ...]
    key: str

    @property
    def written(self) -> date | None:
        """The day on which it was written, where it says."""
        return self.mail.written


def head_of(raw: bytes) -> Head:
    """Read a message's headers."""
    parsed = BytesHeaderParser(policy=email.policy.compat32).parsebytes(raw)
    own = _IDENTIFIER.findall(str(parsed.get("Message-ID", "")))[:1]
    before = " ".join(str(parsed.get(name, "")) for name in ("References", "In-Reply-To"))
    known = dict.fromkeys(one for one in _IDENTIFIER.findall(before[-20_000:]) if [one] != own)
    rests_on = own[0].encode() if own else b" ".join(raw.split())
    return Head(
        raw=raw,
        mail=read_mail(b"MIME-Version: 1.0\r\n" + raw),
        message_id=own[0] if own else "",
        thread=tuple(known)[-MOST_THREAD:],
        key=hashlib.sha256(rests_on).hexdigest()[:32],
    )


def draft_id(head: Head, domain: str) -> str:
    """Give the Message-ID of the draft that answers a message: always the same one."""
    return f"<{PREFIX}{head.key}@{domain}>"


def skipped(head: Head, own_addresses: frozenset[str]) -> Skipped | None:
    """Say why a message gets no draft; None where it may get one.

    A form on the workshop's own site writes from its own address and names the customer's to
    answer to: that is the customer's message.
    """
    mail = head.mail
    if mail.sender.address.lower() in own_addresses and (
        not mail.reply_to.address or mail.reply_to.address.lower() in own_addresses
    ):
        return "our own"
    if re.search(rb"(?mi)^List-(?:Id|Post|Unsubscribe)[ \t]*:", head.raw):
        return "a list's"
    return "automatic" if mail.is_automatic else None
