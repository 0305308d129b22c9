"""What was taken for a proposal where nobody said it, each thing with its sentence."""

from __future__ import annotations

from ledgerstone.enquiry.draft.entries import Entries
from ledgerstone.enquiry.draft.one_unit import OneUnit
from ledgerstone.json_types import Members
from ledgerstone.message import Value


class Taken:
    """Notes each thing taken, in the words of whoever asked."""

    def __init__(self, entries: Entries) -> None:
        self.entries = entries
        self.workshop = entries.workshop
        self.asking = entries.asking
        self.assumed: list[Members] = []
        self.one_unit = OneUnit(entries.draft.order, entries.workshop.place.lengths)

    def take(self, at: str, value: object, key: str, **values: Value) -> None:
        """Note a value that nobody said."""
        value = self.one_unit.of(value)
        said = self.asking.say(key, value=str(value), **values)
        self.assumed.append({"at": at, "value": value, "says": said})

    def take_place(self, at: str, what: str, centre: Members) -> None:
        """Note a proposed place."""
        name, centre = self.asking.opening(what), self.one_unit.members(centre)
        says = self.asking.say("took_site", opening=name, x=centre["x"], y=centre["y"])
        self.assumed.append({"at": f"{at}/centre", "value": dict(centre), "says": says})
