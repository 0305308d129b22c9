"""Checks across a profile's keys on mould board."""

from __future__ import annotations

from collections.abc import Callable

from ledgerstone.message import Message
from ledgerstone.workshop.consistency.shared import FoundFaults
from ledgerstone.workshop.keys.value_keys import KeyNumber
from ledgerstone.workshop.records import Boards


def _sheets(boards: Boards) -> FoundFaults:
    if boards.width_mm > boards.length_mm:
        yield ("boards", "width_mm"), Message("fault-shorter-side", key="length_mm")
    if boards.foam.width_mm > boards.foam.length_mm:
        yield ("boards", "foam", "width_mm"), Message("fault-shorter-side", key="length_mm")


def _saw(boards: Boards) -> FoundFaults:
    for path, kerf, side in (
        (("boards", "kerf_mm"), boards.kerf_mm, boards.width_mm),
        (("boards", "foam", "kerf_mm"), boards.foam.kerf_mm, boards.foam.width_mm),
    ):
        if kerf >= side / 10:
            of, around = KeyNumber("Boards", "kerf_mm", kerf), KeyNumber("Boards", "width_mm", side)
            yield path, Message("fault-saw", kerf=of, side=around)


CHECKS: tuple[Callable[..., FoundFaults], ...] = (_sheets, _saw)
