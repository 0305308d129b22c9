"""How the workshop writes: its replies, the server that sends requests, the maker's mailbox."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from ledgerstone.workshop.records._keys import about, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class ReplySettings:
    """What the maker's own replies and sheets say in the maker's own words."""

    greeting: str = field(default="Hello", metadata=about("greeting before the customer's name"))
    signature: tuple[str, ...] = field(
        default=(),
        metadata=about("lines under a reply; without any, your name and town", kind="lines"),
    )
    terms: tuple[str, ...] = field(
        default=(),
        metadata=about("terms of every order, a sentence or two a line", kind="lines"),
    )
    who: str = field(
        default="", metadata=about("who answers requests from the page; left out, the workshop")
    )
    within_days: int | None = field(
        default=None,
        metadata=about("working days until a request is answered", at_least=1, at_most=30),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class MailSettings:
    """The server that carries a customer's request to the workshop's own address.

    Its password is no part of the profile: it is ``LEDGERSTONE_SMTP_PASSWORD`` in the
    environment of the service.
    """

    host: str = documented("the server's name: smtp.example.com")
    port: int = field(
        default=587, metadata=about("port: most take letters at 587", at_least=1, at_most=65535)
    )
    security: Literal["starttls", "tls", "none"] = field(
        default="starttls",
        metadata=about("how the connection is encrypted"),
    )
    user: str | None = field(
        default=None, metadata=about("name to sign in with, where it is asked")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Mailbox:
    """The maker's own mailbox, where drafts that answer enquiries are put.

    Its password is no part of the profile: it is ``LEDGERSTONE_MAILBOX_PASSWORD`` in the
    environment of the command.
    """

    host: str = documented("the server's name: imap.example.com")
    port: int = field(
        default=993,
        metadata=about("port: most take mail programs at 993", at_least=1, at_most=65535),
    )
    security: Literal["tls", "starttls", "none"] = field(
        default="tls", metadata=about("how the connection is encrypted")
    )
    user: str = documented("name to sign in with")
    folder: str = field(default="INBOX", metadata=about("the folder that enquiries arrive in"))
    drafts: str | None = field(
        default=None, metadata=about("the folder for drafts, where the server does not say")
    )
    sent: str | None = field(
        default=None, metadata=about("the folder of what was sent, where the server does not say")
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnSentences:
    """The maker's own sentences of one language: a file beside the profile, in Fluent's format."""

    language: str = field(metadata={"computed": True})
    text: str = field(metadata={"computed": True})
