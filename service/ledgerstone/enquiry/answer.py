"""The answer to a message: the draft, what it rests on, and who asks."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date
from typing import Any, Final

from ledgerstone.enquiry.draft.entries import Entries, OrderDraft
from ledgerstone.enquiry.draft.left_out import left_out
from ledgerstone.enquiry.draft.proposal import Proposal
from ledgerstone.enquiry.draft.questions import Asking, language_of
from ledgerstone.enquiry.draft.slabs import drafted
from ledgerstone.enquiry.draft.unread import unread
from ledgerstone.enquiry.facts.message_facts import MessageFacts, facts_of
from ledgerstone.enquiry.sender.people import Own
from ledgerstone.enquiry.text.mail import Mail, read_mail
from ledgerstone.workshop.records import Workshop

MAX_READ: Final = 10_000  # characters; an enquiry with all it quotes has a few thousand
_ATTACHED: Final = re.compile(
    r"\b(?:attached|attachment|see (?:the )?(?:sketch|drawing|photo|plan|picture)"
    r"|as per (?:the )?(?:sketch|drawing|plan)|anbei|im anhang"
    r"|siehe (?:skizze|zeichnung|anhang))\b",
    re.IGNORECASE,
)


def read_enquiry(
    message: bytes | str, workshop: Workshop, today: date | None = None
) -> dict[str, Any]:
    """Read a message and give its draft order with all that stands beside it, as JSON members.

    Parameters
    ----------
    message
        A whole message, or its body.
    workshop
        Whose palette, thicknesses and name the draft goes by.
    today
        The day on which a message that has no date is handed in: by it the day that is needed is
        offered as a reading, and never taken.
    """
    whole = read_mail(message)
    mail, left = _as_far_as_read(whole)
    own = Own(workshop.workshop.name, workshop.workshop.email)
    found = facts_of(mail, own, workshop, today)
    asking = Asking(language_of(mail.text), workshop)
    entries = Entries(found, workshop, asking)
    draft = drafted(entries) if found.is_enquiry else OrderDraft()
    completing = Proposal(entries)
    proposal = completing.completed() if found.is_enquiry else None
    told = [*draft.read, *draft.doubtful]
    ignored = [*left_out(found, told), *left]
    return {
        "is_enquiry": found.is_enquiry,
        "text": whole.text,
        "ignored": ignored,
        "unread": unread(found, told, ignored) if found.is_enquiry else [],
        "order": draft.order,
        "read": draft.read,
        "assumed": completing.assumed,
        "doubtful": [_untold(one, completing.assumed) for one in draft.doubtful],
        "missing": draft.missing,
        "proposal": proposal,
        "attachments": list(mail.attachments),
        "rests_on_attachment": bool(found.is_enquiry and _ATTACHED.search(mail.text)),
        "customer": _customer(found, asking.language),
    }


def _untold(doubt: dict[str, Any], assumed: list[dict[str, Any]]) -> dict[str, Any]:
    """Return what is doubtful with its question, or without where the reading taken is told."""
    told = any(one["at"] == doubt["at"] for one in assumed)
    return {key: value for key, value in doubt.items() if not (told and key == "asks")}


def _as_far_as_read(mail: Mail) -> tuple[Mail, list[dict[str, Any]]]:
    """Give a message whose text ends at a line's end where it is too long to read, and the rest."""
    if len(mail.text) <= MAX_READ:
        return mail, []
    end = mail.text.rfind("\n", MAX_READ // 2, MAX_READ)
    end = MAX_READ if end < 0 else end
    struck = tuple(span for span in mail.struck if span[1] <= end)
    left = {"start": end, "end": len(mail.text), "why": "longer than is read"}
    return replace(mail, text=mail.text[:end], struck=struck), [left]


def _customer(found: MessageFacts, language: str) -> dict[str, Any]:
    customer, mail = found.customer, found.mail
    return {
        "name": customer.name or None,
        "reply_to": customer.reply_to or None,
        "reply_to_differs": customer.differs,
        "phone": customer.phone or None,
        "address": customer.address or None,
        "language": language,
        "subject": mail.subject or None,
        "message_id": mail.message_id or None,
        "references": mail.references or None,
        "written": mail.written,
    }
