"""A message's headers: its sender, its thread, and whether it is to be answered."""

from __future__ import annotations

import email.policy
import hashlib
import re
from dataclasses import dataclass
from datetime import date
from email.parser import BytesHeaderParser
from typing import Final, Literal

from ledgerstone.enquiry.text.mail import Mail, read_mail

MAX_THREAD: Final = 10
PREFIX: Final = "ledgerstone-"  # of our drafts' Message-IDs
_IDENTIFIER: Final = re.compile(r"<[^<>\s@]{1,200}@[^<>\s@]{1,200}>")

Skipped = Literal["own", "list", "automatic"]


@dataclass(frozen=True, slots=True)
class MessageHeaders:
    """The parsed headers of a message.

    Attributes
    ----------
    message_id
        Empty if it has no valid one.
    thread
        Message-IDs of the earlier messages in its thread, oldest first.
    key
        The same for one message in any folder: a hash of its Message-ID, or of all its headers
        if it has none.
    """

    raw: bytes
    mail: Mail
    message_id: str
    thread: tuple[str, ...]
    key: str

    @property
    def written(self) -> date | None:
        """The day of its Date header, if it has one."""
        return self.mail.written


def parse_headers(raw: bytes) -> MessageHeaders:
    """Read a message's headers."""
    parsed = BytesHeaderParser(policy=email.policy.compat32).parsebytes(raw)
    own = _IDENTIFIER.findall(str(parsed.get("Message-ID", "")))[:1]
    before = " ".join(str(parsed.get(name, "")) for name in ("References", "In-Reply-To"))
    known = dict.fromkeys(
        identifier for identifier in _IDENTIFIER.findall(before[-20_000:]) if [identifier] != own
    )
    rests_on = own[0].encode() if own else b" ".join(raw.split())
    return MessageHeaders(
        raw=raw,
        mail=read_mail(b"MIME-Version: 1.0\r\n" + raw),
        message_id=own[0] if own else "",
        thread=tuple(known)[-MAX_THREAD:],
        key=hashlib.sha256(rests_on).hexdigest()[:32],
    )


def draft_id(head: MessageHeaders, domain: str) -> str:
    """Return the Message-ID of the draft that answers a message; it depends on it alone."""
    return f"<{PREFIX}{head.key}@{domain}>"


def skip_reason(head: MessageHeaders, own_addresses: frozenset[str]) -> Skipped | None:
    """Return why a message gets no draft; None if it may get one.

    A form on the workshop's site sends from the workshop's address with the customer's in
    Reply-To: it counts as the customer's message.
    """
    mail = head.mail
    if mail.sender.address.lower() in own_addresses and (
        not mail.reply_to.address or mail.reply_to.address.lower() in own_addresses
    ):
        return "own"
    if re.search(rb"(?mi)^List-(?:Id|Post|Unsubscribe)[ \t]*:", head.raw):
        return "list"
    return "automatic" if mail.is_automatic else None
