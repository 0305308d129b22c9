"""The workshop's earlier letters in a thread: among its drafts and its sent messages."""

from __future__ import annotations

import email.policy
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from email.parser import BytesHeaderParser
from email.utils import parsedate_to_datetime

from ledgerstone.mailbox.heads import MessageHeaders
from ledgerstone.mailbox.server import FetchedMessage, Server


@dataclass(frozen=True, slots=True)
class SentLetter:
    """An earlier letter of the workshop: its Message-ID and its date."""

    message_id: str
    day: date | None


def is_answered(server: Server, head: MessageHeaders, draft: str) -> bool:
    """Return whether the drafts or the sent messages hold an answer to a message.

    Parameters
    ----------
    draft
        The Message-ID that the draft for it would have.
    """
    for _ in _opened(server):
        if server.uids_with("Message-ID", draft):
            return True
        if head.message_id and server.uids_with("In-Reply-To", head.message_id):
            return True
    return False


def replaced_by(server: Server, head: MessageHeaders) -> SentLetter | None:
    """Return the workshop's last letter in the thread, which a new message makes out of date."""
    found: list[SentLetter] = []
    for _ in _opened(server):
        for message_id in head.thread:
            uids = {
                *server.uids_with("In-Reply-To", message_id),
                *server.uids_with("Message-ID", message_id),
            }
            found += [_written(seen) for seen in server.headers(sorted(uids))]
    return max(found, key=lambda earlier: earlier.day or date.min, default=None)


def _opened(server: Server) -> Iterator[str]:
    """Open the drafts, then the sent messages if there is such a folder."""
    for folder in (server.drafts, server.sent):
        if folder:
            server.open_written(folder)
            yield folder


def _written(seen: FetchedMessage) -> SentLetter:
    parsed = BytesHeaderParser(policy=email.policy.compat32).parsebytes(seen.header)
    try:
        day = parsedate_to_datetime(str(parsed.get("Date", ""))).date()
    except (ValueError, TypeError, IndexError):
        day = None
    return SentLetter(str(parsed.get("Message-ID", "")).strip(), day)
