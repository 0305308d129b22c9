"""One pass over the new messages: one draft for each enquiry, also after an interrupted pass.

A draft is stored before its message is marked as done. A pass killed in between finds the draft
by its Message-ID, which depends on the message alone, and then only marks the message.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.errors import MailboxFault, TemplateFault
from ledgerstone.mailbox.drafting import draft_of, read_fetched
from ledgerstone.mailbox.heads import MessageHeaders, draft_id, parse_headers, skip_reason
from ledgerstone.mailbox.server import FetchedMessage, OpenedFolder, Server
from ledgerstone.mailbox.state import MailboxState
from ledgerstone.mailbox.threads import is_answered, replaced_by
from ledgerstone.message import Message
from ledgerstone.papers.templates import Templates
from ledgerstone.workshop.records import Mailbox

_A_DAY: Final = timedelta(days=1)  # sender and server may be in different time zones


@dataclass(frozen=True, slots=True)
class PassResult:
    """The result of a pass: how many messages could not be answered, and the next UID."""

    failed: int
    uid_next: int


@dataclass(frozen=True, slots=True)
class MailboxRun:
    """The context of a pass.

    Attributes
    ----------
    state
        The record of earlier passes.
    now
        The date of the drafts.
    tell
        Called with one log line for each message, which holds no name and no address.
    """

    quoting: QuoteContext
    templates: Templates
    mailbox: Mailbox
    state: MailboxState
    now: datetime
    tell: Callable[[Message], None]

    @property
    def own_addresses(self) -> frozenset[str]:
        """The workshop's own email addresses."""
        return frozenset({self.quoting.workshop.workshop.email.lower(), self.mailbox.user.lower()})

    @property
    def domain(self) -> str:
        """The domain of our drafts' Message-IDs."""
        return self.quoting.workshop.workshop.email.rpartition("@")[2]


def run_pass(server: Server, run: MailboxRun) -> PassResult:
    """Process the new messages.

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
        failed += not _process_message(server, run, uid, opened, oldest)
    if not failed:
        state.finish(today)
    return PassResult(failed, opened.uid_next)


def _process_message(
    server: Server, run: MailboxRun, uid: int, opened: OpenedFolder, oldest: date | None
) -> bool:
    """Process one message and report it; False if it could not be answered."""
    seen = server.message(uid)
    if seen is None:
        run.tell(_line(uid, _plainly("gone")))
        return True
    head = parse_headers(seen.header)
    try:
        outcome = _outcome(server, run, seen, head, oldest)
    except (MailboxFault, OSError):
        raise
    except TemplateFault as fault:
        run.tell(_line(uid, Message("mailbox-not-answered", why=fault.message)))
        return False
    except Exception as fault:  # noqa: BLE001 - a fault of ours costs this message, not the next
        why = Message("mailbox-our-fault", kind=type(fault).__name__)
        run.tell(_line(uid, Message("mailbox-not-answered", why=why)))
        return False
    if server.open_arrivals().uidvalidity != opened.uidvalidity:
        raise MailboxFault(Message("mailbox-replaced"), is_unreachable=True)
    if opened.may_keep_keyword:
        server.mark_done(uid)
    run.state.note(head.key, uid, run.quoting.today)
    run.tell(_line(uid, outcome))
    return True


def _line(uid: int, outcome: Message) -> Message:
    return Message("mailbox-line", uid=str(uid), outcome=outcome)


def _plainly(what: str) -> Message:
    return Message("mailbox-outcome", what=what)


def _outcome(
    server: Server, run: MailboxRun, seen: FetchedMessage, head: MessageHeaders, oldest: date | None
) -> Message:
    """Store the draft for a message, if it needs one, and return the outcome."""
    if head.key in run.state.done:
        return _plainly("done")
    if oldest is not None and head.written is not None and head.written < oldest:
        return _plainly("earlier")
    why = skip_reason(head, run.own_addresses)
    if why is not None:
        return _plainly(why)
    read = read_fetched(server, seen, run.quoting.workshop)
    return _plainly("none") if read is None else _answered(server, run, head, read)


def _answered(
    server: Server, run: MailboxRun, head: MessageHeaders, read: Mapping[str, Any]
) -> Message:
    """Store the draft that answers an enquiry, unless it is answered already."""
    message_id = draft_id(head, run.domain)
    if is_answered(server, head, message_id):
        return _plainly("answered")
    replaced = replaced_by(server, head)
    draft = draft_of(read, run.quoting, run.templates, message_id, now=run.now, replaced=replaced)
    server.add_draft(draft)
    kind = _plainly("draft" if read["proposal"] is not None else "asking")
    if replaced is None:
        return kind
    if replaced.day is None:
        return Message("mailbox-in-place", draft=kind)
    return Message("mailbox-in-place-of-day", draft=kind, day=replaced.day.isoformat())
