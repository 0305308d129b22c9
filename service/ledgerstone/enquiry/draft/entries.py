"""What a draft notes beside the order: what was read, what is doubtful, what is missing."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from ledgerstone.enquiry.draft.questions import Asking
from ledgerstone.enquiry.facts.message_facts import MessageFacts
from ledgerstone.enquiry.scene.said import NOWHERE, Claim
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.json_types import Members
from ledgerstone.message import Value
from ledgerstone.workshop.records import Workshop


@dataclass(slots=True)
class OrderDraft:
    """The order as far as it was said, and what stands beside it."""

    order: Members = field(default_factory=lambda: {"slabs": []})
    read: list[Members] = field(default_factory=list)
    doubtful: list[Members] = field(default_factory=list)
    missing: list[Members] = field(default_factory=list)


class Entries:
    """Notes entries of one message's draft, each with the words it rests on."""

    def __init__(self, found: MessageFacts, workshop: Workshop, asking: Asking) -> None:
        self.found = found
        self.text = found.mail.text
        self.workshop = workshop
        self.asking = asking
        self.draft = OrderDraft()

    def words(self, spans: Iterable[TextSpan]) -> list[Members]:
        """Return spans with the words in them, in their order, each once."""
        return [
            {"start": start, "end": end, "text": self.text[start:end]}
            for start, end in sorted(set(spans) - {NOWHERE})
        ]

    def length(self, at: str, claim: Claim) -> str:
        """Note a length as read, and give it as the wire has it."""
        self.draft.read.append(
            {"at": at, "mm": round(claim.mm, 3), "how": claim.how, "from": self.words(claim.spans)}
        )
        return claim.length.text()

    def value(self, at: str, value: object, spans: Sequence[TextSpan], how: str = "said") -> None:
        """Note a value as read."""
        self.draft.read.append({"at": at, "value": value, "how": how, "from": self.words(spans)})

    def doubt(self, at: str, what: str, readings: Sequence[Claim], *, key: str = "two") -> None:
        """Note that readings remain of which none is plainly meant."""
        values = self.asking.listed([claim.length.text() for claim in readings])
        says = self.asking.say(key, what=what, readings=values)
        asks = self.asking.say(f"ask_{key}", what=what, readings=values)
        listed = [
            {"value": claim.length.text(), "from": self.words(claim.spans)} for claim in readings
        ]
        self.draft.doubtful.append({"at": at, "says": says, "asks": asks, "readings": listed})

    def miss(self, at: str, key: str, **values: Value) -> None:
        """Note what has to be asked."""
        self.draft.missing.append({"at": at, "asks": self.asking.say(key, **values)})
