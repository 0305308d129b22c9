"""What was written already in a thread: in the drafts and among what was sent."""

from __future__ import annotations

import email.policy
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from email.parser import BytesHeaderParser
from email.utils import parsedate_to_datetime

from ledgerstone.mailbox.heads import Head
from ledgerstone.mailbox.server import Seen, Server


@dataclass(frozen=True, slots=True)
class Written:
    """A letter of ours: its Message-ID, and the day that stands on it."""

    message_id: str
    day: date | None


def is_answered(server: Server, head: Head, draft: str) -> bool:
    """Whether the drafts, or what was sent, hold an answer to a message.

    Parameters
    ----------
    draft
        The Message-ID that our own draft for it has.
    """
    for _ in _opened(server):
        if server.uids_with("Message-ID", draft):
            return True
        if head.message_id and server.uids_with("In-Reply-To", head.message_id):
            return True
    return False


def replaced_by(server: Server, head: Head) -> Written | None:
    """Find the last letter of ours that a new message in its thread makes stale."""
    found: list[Written] = []
    for _ in _opened(server):
        for one in head.thread:
            uids = {*server.uids_with("In-Reply-To", one), *server.uids_with("Message-ID", one)}
            found += [_written(seen) for seen in server.headers(sorted(uids))]
    return max(found, key=lambda one: one.day or date.min, default=None)


def _opened(server: Server) -> Iterator[str]:
    """Open the drafts, then what was sent, where there is such a folder."""
    for folder in (server.drafts, server.sent):
        if folder:
            server.open_written(folder)
            yield folder


def _written(seen: Seen) -> Written:
    parsed = BytesHeaderParser(policy=email.policy.compat32).parsebytes(seen.header)
    try:
        day = parsedate_to_datetime(str(parsed.get("Date", ""))).date()
    except (ValueError, TypeError, IndexError):
        day = None
    return Written(str(parsed.get("Message-ID", "")).strip(), day)
