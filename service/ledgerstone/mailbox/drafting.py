"""The draft that answers a message: threaded, with a Message-ID derived from the message's own."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from email.utils import format_datetime
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.enquiries import make_answer, read_message
from ledgerstone.errors import NotUnderstood
from ledgerstone.mailbox.assembling import message_of
from ledgerstone.mailbox.server import FetchedMessage, Server
from ledgerstone.mailbox.threads import SentLetter
from ledgerstone.papers.templates import Templates
from ledgerstone.workshop.records import Workshop

MAX_PART_BYTES: Final = 1_048_576  # of one encoded text part; an enquiry has a few thousand
MAX_TEXT_PARTS: Final = 8
_FOR_FILES: Final = b"X-Unsent: 1\r\n"  # marks a draft file; a mailbox has the \Draft flag


def read_fetched(
    server: Server, seen: FetchedMessage, workshop: Workshop
) -> Mapping[str, Any] | None:
    """Fetch a message's text parts and read a draft order; None if it asks for no slab.

    Attachments stay on the server: only their names are read.
    """
    texts = [leaf for leaf in seen.parts if not leaf.is_attached][:MAX_TEXT_PARTS]
    attached = [leaf for leaf in seen.parts if leaf.is_attached]
    fetched = [(leaf, server.part(seen.uid, leaf.section, MAX_PART_BYTES)) for leaf in texts]
    try:
        read = read_message(message_of(seen.header, fetched, attached), workshop)
    except NotUnderstood:
        return None
    return read if read["is_enquiry"] else None


def draft_of(
    read: Mapping[str, Any],
    context: QuoteContext,
    templates: Templates,
    message_id: str,
    *,
    now: datetime,
    replaced: SentLetter | None,
) -> bytes:
    """Return the draft that answers a message, with the headers that a mailbox needs.

    Raises
    ------
    TemplateFault
    """
    day = replaced.day if replaced is not None else None
    letter = make_answer(read, context, templates, replaces=day)
    return filed(letter, message_id, now, replaced.message_id if replaced is not None else "")


def filed(letter: bytes, message_id: str, now: datetime, replaces: str = "") -> bytes:
    """Return a draft with the headers that a mailbox needs, without the draft-file mark."""
    own = {"Message-ID": message_id, "Date": format_datetime(now)}
    if replaces:
        own["X-Ledgerstone-Replaces"] = replaces
    heads = "".join(f"{name}: {value}\r\n" for name, value in own.items())
    return heads.encode() + letter.replace(_FOR_FILES, b"", 1)
