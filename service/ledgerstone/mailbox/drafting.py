"""A message becomes a draft for the maker's mailbox: threaded, and named so that it comes once."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from email.utils import format_datetime
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.enquiries import make_answer, read_message
from ledgerstone.errors import NotUnderstood
from ledgerstone.mailbox.assembling import message_of
from ledgerstone.mailbox.server import Seen, Server
from ledgerstone.mailbox.threads import Written
from ledgerstone.papers.templates import Templates
from ledgerstone.workshop.records import Workshop

MOST_PART_BYTES: Final = 1_048_576  # of one text part, encoded; an enquiry has a few thousand
MOST_PARTS: Final = 8
_FOR_FILES: Final = b"X-Unsent: 1\r\n"  # a file's mark; in a mailbox the flag \Draft says it


def read_seen(server: Server, seen: Seen, workshop: Workshop) -> Mapping[str, Any] | None:
    """Read a message's text parts into a draft order; None where it asks for no slab.

    What is attached stays on the server: only its name is told.
    """
    texts = [leaf for leaf in seen.parts if not leaf.is_attached][:MOST_PARTS]
    attached = [leaf for leaf in seen.parts if leaf.is_attached]
    fetched = [(leaf, server.part(seen.uid, leaf.section, MOST_PART_BYTES)) for leaf in texts]
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
    replaced: Written | None,
) -> bytes:
    """Write the draft that answers a message, with what a mailbox wants in its headers.

    Raises
    ------
    TemplateFault
    """
    day = replaced.day if replaced is not None else None
    letter = make_answer(read, context, templates, replaces=day)
    return filed(letter, message_id, now, replaced.message_id if replaced is not None else "")


def filed(letter: bytes, message_id: str, now: datetime, replaces: str = "") -> bytes:
    """Return a draft with what a mailbox wants in its headers, and no file's mark."""
    own = {"Message-ID": message_id, "Date": format_datetime(now)}
    if replaces:
        own["X-Ledgerstone-Replaces"] = replaces
    heads = "".join(f"{name}: {value}\r\n" for name, value in own.items())
    return heads.encode() + letter.replace(_FOR_FILES, b"", 1)
