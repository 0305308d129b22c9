"""The mail server, over IMAP (RFC 3501, 6154): the only module that knows imapclient."""

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
from ledgerstone.mailbox.structure import Leaf, leaves
from ledgerstone.workshop.records import Mailbox

PASSWORD: Final = "LEDGERSTONE_MAILBOX_PASSWORD"  # noqa: S105 - the variable's name
KEYWORD: Final = "LedgerstoneDone"
PATIENCE_S: Final = 60.0
MOST_HEADER_BYTES: Final = 65_536
MOST_FOUND: Final = 20
_DONE: Final = ["UNANSWERED", "UNDELETED", "UNDRAFT", "UNKEYWORD", KEYWORD]
_REFUSED: Final = (
    f"The mail server refused the user, or the password in {PASSWORD}. Many providers take no"
    " everyday password here: make an app password in the account's settings, and put that there."
)
_AWAY: Final = "The mail server could not be reached, or fell silent ({reason})."
_NO_FOLDER: Final = "The mail server has no folder named in [mailbox] as {key}. Check its name."
_NO_DRAFTS: Final = (
    "The mail server does not say which folder is for drafts. Name it in [mailbox] as drafts."
)


@dataclass(frozen=True, slots=True)
class Opened:
    """A folder as it was opened.

    Attributes
    ----------
    uidvalidity
        For which its UIDs hold.
    uid_next
        Which the next message to come will have.
    """

    uidvalidity: int
    uid_next: int
    may_keep_keyword: bool


@dataclass(frozen=True, slots=True)
class Seen:
    """One message in a folder, as far as it was fetched."""

    uid: int
    header: bytes
    parts: tuple[Leaf, ...] = ()


@contextmanager
def connected(mailbox: Mailbox, password: str, patience_s: float = PATIENCE_S) -> Iterator[Server]:
    """Sign in at the maker's mailbox, and leave it at the end.

    Raises
    ------
    MailboxFault
        The server is away, refuses, or answers what cannot be used.
    """
    with _told():
        client = _signed_in(mailbox, password, patience_s)
    try:
        yield Server(client, mailbox)
    except BaseException:
        with suppress(OSError):
            client.shutdown()  # a server that does not answer needs no LOGOUT
        raise
    with suppress(IMAPClientError, OSError):
        client.logout()


def _signed_in(mailbox: Mailbox, password: str, patience_s: float) -> IMAPClient:
    trusted = ssl.create_default_context()
    is_tls = mailbox.security == "tls"
    client = IMAPClient(
        mailbox.host, mailbox.port, ssl=is_tls, ssl_context=trusted, timeout=patience_s
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
def _told() -> Iterator[None]:
    """Tell what goes wrong with the server as a fault of ours that says what to do."""
    try:
        yield
    except LoginError as reason:
        raise MailboxFault(_REFUSED) from reason
    except (OSError, IMAPClientError) as reason:
        raise MailboxFault(_AWAY.format(reason=type(reason).__name__), is_away=True) from reason


class Server:
    """A mailbox that was signed in to. Nothing in it is sent, deleted or marked as read."""

    @_told()
    def __init__(self, client: IMAPClient, mailbox: Mailbox) -> None:
        self._client = client
        self._mailbox = mailbox
        self.drafts = mailbox.drafts or client.find_special_folder(DRAFTS)
        self.sent: str | None = mailbox.sent or client.find_special_folder(SENT)
        if not self.drafts:
            raise MailboxFault(_NO_DRAFTS)

    @_told()
    def open_arrivals(self) -> Opened:
        """Open the folder that enquiries arrive in, so that a keyword can be set there."""
        opened = self._open("folder", self._mailbox.folder, is_to_read=False)
        kept = opened.get(b"PERMANENTFLAGS", ())
        may = b"READ-WRITE" in opened and (b"\\*" in kept or KEYWORD.encode() in kept)
        return Opened(int(opened[b"UIDVALIDITY"]), int(opened.get(b"UIDNEXT", 0)), may)

    @_told()
    def open_written(self, folder: str) -> None:
        """Open the drafts, or what was sent, to look only."""
        self._open("drafts" if folder == self.drafts else "sent", folder, is_to_read=True)

    def _open(self, key: str, folder: str, *, is_to_read: bool) -> dict[bytes, Any]:
        try:
            opened: dict[bytes, Any] = self._client.select_folder(folder, readonly=is_to_read)
        except self._client.AbortError:
            raise
        except IMAPClientError as reason:
            raise MailboxFault(_NO_FOLDER.format(key=key)) from reason
        return opened

    @_told()
    def arrived_since(self, day: date) -> list[int]:
        """Give the UIDs of messages that came on or after a day, are unanswered and not done."""
        return sorted(self._client.search(["SINCE", day, *_DONE]))

    @_told()
    def uids_with(self, header: str, value: str) -> list[int]:
        """Give the UIDs in the open folder whose header is exactly so; the server looks loosely."""
        found = self._client.search(["UNDELETED", "HEADER", header, value])
        return [one.uid for one in self.headers(found[-MOST_FOUND:]) if _says(one, header, value)]

    @_told()
    def headers(self, uids: Sequence[int]) -> list[Seen]:
        """Fetch headers, with no mark left that they were."""
        item = f"BODY.PEEK[HEADER]<0.{MOST_HEADER_BYTES}>"
        fetched = self._client.fetch(uids, [item])
        return [Seen(uid, _body(got)) for uid, got in sorted(fetched.items())]

    @_told()
    def message(self, uid: int) -> Seen | None:
        """Fetch a message's headers and what parts it has; None where it is gone meanwhile."""
        items = [f"BODY.PEEK[HEADER]<0.{MOST_HEADER_BYTES}>", "BODYSTRUCTURE"]
        got = self._client.fetch([uid], items).get(uid)
        if got is None or b"BODYSTRUCTURE" not in got:
            return None
        return Seen(uid, _body(got), tuple(leaves(got[b"BODYSTRUCTURE"])))

    @_told()
    def part(self, uid: int, section: str, most_bytes: int) -> bytes:
        """Fetch the beginning of one part, still encoded."""
        got = self._client.fetch([uid], [f"BODY.PEEK[{section}]<0.{most_bytes}>"]).get(uid, {})
        return _body(got)

    @_told()
    def add_draft(self, draft: bytes) -> None:
        """Put a draft into the folder for drafts; it is there once this returns."""
        self._client.append(self.drafts, draft, flags=[b"\\Draft", b"\\Seen"])

    @_told()
    def mark_done(self, uid: int) -> None:
        """Set our keyword on a message of the open folder."""
        self._client.add_flags([uid], [KEYWORD], silent=True)

    @_told()
    def wait(self, seconds: float) -> None:
        """Return once something changes in the folder of arrivals, or after so many seconds.

        A server without IDLE (RFC 2177) is asked again after that time.
        """
        self._client.idle()
        self._client.idle_check(timeout=seconds)
        self._client.idle_done()

    @_told()
    def tells_of_changes(self) -> bool:
        """Whether the server tells of new messages by itself."""
        return bool(self._client.has_capability("IDLE"))


def _says(seen: Seen, header: str, value: str) -> bool:
    parsed = BytesHeaderParser(policy=email.policy.compat32).parsebytes(seen.header)
    return value in str(parsed.get(header, "")).split()


def _body(got: dict[bytes, Any]) -> bytes:
    """Give the one body section among what was fetched."""
    found = next((value for key, value in got.items() if key.startswith(b"BODY[")), b"")
    return found if isinstance(found, bytes) else b""
