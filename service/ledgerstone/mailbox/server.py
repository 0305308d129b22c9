"""The mail server over IMAP (RFC 3501, RFC 6154): the only module that imports imapclient."""

from __future__ import annotations

import email.policy
import ssl
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from datetime import date
from email.parser import BytesHeaderParser
from typing import Any, Final

from imapclient import IMAPClient
from imapclient.exceptions import IMAPClientError, LoginError
from imapclient.imapclient import DRAFTS, SENT

from ledgerstone.errors import MailboxFault
from ledgerstone.file_faults import file_fault
from ledgerstone.mailbox.structure import LeafPart, leaf_parts
from ledgerstone.message import Message
from ledgerstone.workshop.records import Mailbox

PASSWORD: Final = "LEDGERSTONE_MAILBOX_PASSWORD"  # noqa: S105 - the variable's name
KEYWORD: Final = "LedgerstoneDone"
IMAP_TIMEOUT_S: Final = 60.0
MAX_HEADER_BYTES: Final = 65_536
MAX_FOUND: Final = 20
_DONE: Final = ["UNANSWERED", "UNDELETED", "UNDRAFT", "UNKEYWORD", KEYWORD]


@dataclass(frozen=True, slots=True)
class OpenedFolder:
    """An opened folder.

    Attributes
    ----------
    uidvalidity
        The UIDVALIDITY for which its UIDs hold.
    uid_next
        The UID that the next new message will have.
    """

    uidvalidity: int
    uid_next: int
    may_keep_keyword: bool


@dataclass(frozen=True, slots=True)
class FetchedMessage:
    """The fetched parts of one message in a folder."""

    uid: int
    header: bytes
    parts: tuple[LeafPart, ...] = ()


@contextmanager
def connected(
    mailbox: Mailbox, password: str, timeout_s: float = IMAP_TIMEOUT_S
) -> Iterator[Server]:
    """Log in to the maker's mailbox, and log out at the end.

    Raises
    ------
    MailboxFault
        The server cannot be reached, refuses the login, or gives an unusable answer.
    """
    with _as_mailbox_fault():
        client = _signed_in(mailbox, password, timeout_s)
    try:
        yield Server(client, mailbox)
    except BaseException:
        with suppress(OSError):
            client.shutdown()  # a server that does not answer needs no LOGOUT
        raise
    with suppress(IMAPClientError, OSError):
        client.logout()


def _signed_in(mailbox: Mailbox, password: str, timeout_s: float) -> IMAPClient:
    trusted = ssl.create_default_context()
    is_tls = mailbox.security == "tls"
    client = IMAPClient(
        mailbox.host, mailbox.port, ssl=is_tls, ssl_context=trusted, timeout=timeout_s
    )
    try:
        if mailbox.security == "starttls":
            client.starttls(trusted)
        client.login(mailbox.user, password)
    except BaseException:
        client.shutdown()
        raise
    return client


@contextmanager
def _as_mailbox_fault() -> Iterator[None]:
    """Raise a fault of the server as ``MailboxFault``, with what the maker can do about it."""
    try:
        yield
    except LoginError as reason:
        raise MailboxFault(Message("mailbox-refused", variable=PASSWORD)) from reason
    except (OSError, IMAPClientError) as reason:
        raise MailboxFault(
            Message("mailbox-unreachable", reason=file_fault(reason)), is_unreachable=True
        ) from reason


class Server:
    """A logged-in mailbox. No message is sent, deleted or marked as read."""

    @_as_mailbox_fault()
    def __init__(self, client: IMAPClient, mailbox: Mailbox) -> None:
        self._client = client
        self._mailbox = mailbox
        self.drafts = mailbox.drafts or client.find_special_folder(DRAFTS)
        self.sent: str | None = mailbox.sent or client.find_special_folder(SENT)
        if not self.drafts:
            raise MailboxFault(Message("mailbox-no-drafts"))

    @_as_mailbox_fault()
    def open_arrivals(self) -> OpenedFolder:
        """Open the folder of incoming enquiries for writing, so that a keyword can be set."""
        opened = self._open("folder", self._mailbox.folder, is_to_read=False)
        kept = opened.get(b"PERMANENTFLAGS", ())
        may = b"READ-WRITE" in opened and (b"\\*" in kept or KEYWORD.encode() in kept)
        return OpenedFolder(int(opened[b"UIDVALIDITY"]), int(opened.get(b"UIDNEXT", 0)), may)

    @_as_mailbox_fault()
    def open_written(self, folder: str) -> None:
        """Open the folder of drafts or of sent messages, read-only."""
        self._open("drafts" if folder == self.drafts else "sent", folder, is_to_read=True)

    def _open(self, key: str, folder: str, *, is_to_read: bool) -> dict[bytes, Any]:
        try:
            opened: dict[bytes, Any] = self._client.select_folder(folder, readonly=is_to_read)
        except self._client.AbortError:
            raise
        except IMAPClientError as reason:
            raise MailboxFault(Message("mailbox-no-folder", key=key)) from reason
        return opened

    @_as_mailbox_fault()
    def arrived_since(self, day: date) -> list[int]:
        """Return the UIDs of unanswered messages since a day that are not marked as done."""
        return sorted(self._client.search(["SINCE", day, *_DONE]))

    @_as_mailbox_fault()
    def uids_with(self, header: str, value: str) -> list[int]:
        """Return the UIDs whose header equals a value; the server itself matches substrings."""
        found = self._client.search(["UNDELETED", "HEADER", header, value])
        return [
            found_header.uid
            for found_header in self.headers(found[-MAX_FOUND:])
            if _has_header(found_header, header, value)
        ]

    @_as_mailbox_fault()
    def headers(self, uids: Sequence[int]) -> list[FetchedMessage]:
        """Fetch headers without setting the seen flag."""
        item = f"BODY.PEEK[HEADER]<0.{MAX_HEADER_BYTES}>"
        fetched = self._client.fetch(uids, [item])
        return [FetchedMessage(uid, _body(got)) for uid, got in sorted(fetched.items())]

    @_as_mailbox_fault()
    def message(self, uid: int) -> FetchedMessage | None:
        """Fetch a message's headers and structure; None if it has been deleted since."""
        items = [f"BODY.PEEK[HEADER]<0.{MAX_HEADER_BYTES}>", "BODYSTRUCTURE"]
        got = self._client.fetch([uid], items).get(uid)
        if got is None or b"BODYSTRUCTURE" not in got:
            return None
        return FetchedMessage(uid, _body(got), tuple(leaf_parts(got[b"BODYSTRUCTURE"])))

    @_as_mailbox_fault()
    def part(self, uid: int, section: str, most_bytes: int) -> bytes:
        """Fetch at most ``most_bytes`` of one part, still encoded."""
        got = self._client.fetch([uid], [f"BODY.PEEK[{section}]<0.{most_bytes}>"]).get(uid, {})
        return _body(got)

    @_as_mailbox_fault()
    def add_draft(self, draft: bytes) -> None:
        """Append a draft to the folder of drafts; it is stored once this returns."""
        self._client.append(self.drafts, draft, flags=[b"\\Draft", b"\\Seen"])

    @_as_mailbox_fault()
    def mark_done(self, uid: int) -> None:
        """Set our keyword on a message of the open folder."""
        self._client.add_flags([uid], [KEYWORD], silent=True)

    @_as_mailbox_fault()
    def wait(self, seconds: float) -> None:
        """Return when the folder of incoming messages changes, or after a time-out in seconds.

        A server without IDLE (RFC 2177) is polled after that time.
        """
        self._client.idle()
        self._client.idle_check(timeout=seconds)
        self._client.idle_done()

    @_as_mailbox_fault()
    def announces_changes(self) -> bool:
        """Return whether the server announces new messages (IDLE)."""
        return bool(self._client.has_capability("IDLE"))


def _has_header(seen: FetchedMessage, header: str, value: str) -> bool:
    parsed = BytesHeaderParser(policy=email.policy.compat32).parsebytes(seen.header)
    return value in str(parsed.get(header, "")).split()


def _body(got: dict[bytes, Any]) -> bytes:
    """Return the one body section of a FETCH response."""
    found = next((value for key, value in got.items() if key.startswith(b"BODY[")), b"")
    return found if isinstance(found, bytes) else b""
