"""One pass over the new messages: a draft for each enquiry, once, wherever the last pass ended.

A draft is there before anything says that its message is done. What is killed in between finds the
draft by its Message-ID, which is the same each time, and only notes it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.errors import MailboxFault, TemplateFault
from ledgerstone.mailbox.drafting import draft_of, read_seen
from ledgerstone.mailbox.heads import Head, draft_id, head_of, skipped
from ledgerstone.mailbox.server import Opened, Seen, Server
from ledgerstone.mailbox.state import State
from ledgerstone.mailbox.threads import is_answered, replaced_by
from ledgerstone.papers.templates import Templates
from ledgerstone.workshop.records import Mailbox

_CHANGED: Final = "The folder was made anew while it was looked through."
_A_DAY: Final = timedelta(days=1)  # a message may cross a border of time zones on its way


@dataclass(frozen=True, slots=True)
class Looked:
    """What a pass came to: how many messages could not be answered, and how far it looked."""

    failed: int
    uid_next: int


@dataclass(frozen=True, slots=True)
class MailboxRun:
    """What a pass works with.

    Attributes
    ----------
    state
        What earlier passes did.
    now
        The time that stands on drafts.
    tell
        Is given one line for each message, without a name or an address.
    """

    quoting: QuoteContext
    templates: Templates
    mailbox: Mailbox
    state: State
    now: datetime
    tell: Callable[[str], None]

    @property
    def own_addresses(self) -> frozenset[str]:
        """Addresses that are the workshop's own."""
        return frozenset({self.quoting.workshop.workshop.email.lower(), self.mailbox.user.lower()})

    @property
    def domain(self) -> str:
        """What our drafts' Message-IDs end with."""
        return self.quoting.workshop.workshop.email.rpartition("@")[2]


def look_through(server: Server, run: MailboxRun) -> Looked:
    """Look through the new messages.

    Raises
    ------
    MailboxFault
    """
    opened = server.open_arrivals()
    state, today = run.state, run.quoting.today
    is_continued = state.open_folder(opened.uidvalidity)
    since = state.since(today)
    known = state.known_uids()
    failed = 0
    for uid in server.arrived_since(since):
        if uid in known:
            continue
        oldest = None if is_continued else since - _A_DAY
        failed += not _dealt_with(server, run, uid, opened, oldest)
    if not failed:
        state.finish(today)
    return Looked(failed, opened.uid_next)


def _dealt_with(
    server: Server, run: MailboxRun, uid: int, opened: Opened, oldest: date | None
) -> bool:
    """Deal with one message and say so in a line; False where it could not be answered."""
    seen = server.message(uid)
    if seen is None:
        run.tell(f"{uid}: gone")
        return True
    head = head_of(seen.header)
    try:
        outcome = _outcome(server, run, seen, head, oldest)
    except (MailboxFault, OSError):
        raise
    except TemplateFault as fault:
        run.tell(f"{uid}: not answered: {fault}")
        return False
    except Exception as fault:  # noqa: BLE001 - a fault of ours costs this message, not the next
        run.tell(f"{uid}: not answered: a fault of ours ({type(fault).__name__})")
        return False
    if server.open_arrivals().uidvalidity != opened.uidvalidity:
        raise MailboxFault(_CHANGED, is_away=True)
    if opened.may_keep_keyword:
        server.mark_done(uid)
    run.state.note(head.key, uid, run.quoting.today)
    run.tell(f"{uid}: {outcome}")
    return True


def _outcome(server: Server, run: MailboxRun, seen: Seen, head: Head, oldest: date | None) -> str:
    """Write the draft that a message wants, where it wants one, and say what was done."""
    if head.key in run.state.done:
        return "done before"
    if oldest is not None and head.written is not None and head.written < oldest:
        return "from before the first run"
    why = skipped(head, run.own_addresses)
    if why is not None:
        return f"no draft, {why}"
    read = read_seen(server, seen, run.quoting.workshop)
    return "no enquiry" if read is None else _answered(server, run, head, read)


def _answered(server: Server, run: MailboxRun, head: Head, read: Mapping[str, Any]) -> str:
    """Put the draft that answers an enquiry among the drafts, unless an answer is there."""
    message_id = draft_id(head, run.domain)
    if is_answered(server, head, message_id):
        return "answered before"
    replaced = replaced_by(server, head)
    draft = draft_of(read, run.quoting, run.templates, message_id, now=run.now, replaced=replaced)
    server.add_draft(draft)
    kind = "a draft" if read["proposal"] is not None else "a draft that only asks"
    if replaced is None:
        return kind
    day = f" of {replaced.day.isoformat()}" if replaced.day else ""
    return f"{kind}, in place of the letter{day}"
