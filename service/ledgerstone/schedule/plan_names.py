"""What the titles of a plan in a calendar name."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.message import Message
from ledgerstone.wording import Speech


@dataclass(frozen=True, slots=True)
class PlanNames:
    """What a plan's titles name, in the order's language.

    Attributes
    ----------
    slabs
        What each slab is called.
    customer, reference
        The customer's name and the quote's reference; empty if not known.
    way
        How it leaves: collected, or brought in one of the ways there are.
    arrives_known
        Whether the days on the road are as they were offered.
    """

    slabs: tuple[str, ...]
    speech: Speech
    way: str
    customer: str = ""
    reference: str = ""
    arrives_known: bool = True

    def of(self, slabs: str) -> str:
        """Name slabs with whose they are."""
        named = "yes" if self.customer else "no"
        whose = Message("plan-whose", slabs=slabs, named=named, customer=self.customer)
        return ", ".join(part for part in (self.speech.say(whose), self.reference) if part)

    def label(self, slab: int | None) -> str:
        """Name one slab, or the whole order."""
        return self.speech.say(Message("job-whole-order")) if slab is None else self.slabs[slab]
