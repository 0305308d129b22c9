"""What a part of a mix is called where it is weighed, bought or charged."""

from __future__ import annotations

from typing import Protocol

from ledgerstone.message import Message
from ledgerstone.workshop.records.proportions import CementColour, Role


class MixedPart(Protocol):
    """What is named: a weighing, or what is bought of a part."""

    @property
    def name(self) -> str:
        """The profile's own word; none for cement of slurry alone."""

    @property
    def role(self) -> Role:
        """What it does in the mix."""

    @property
    def cement(self) -> CementColour | None:
        """Its cement's colour, where its name does not tell it."""


def part_name(part: MixedPart) -> Message | str:
    """Name a part: by the profile's word, with its cement's colour where that is another one."""
    if part.role == "water":
        return Message("job-water")
    if part.cement is None:
        return part.name
    named = "yes" if part.name else "no"
    return Message("job-cement-part", cement=part.cement, named=named, name=part.name)
