"""Checks across a profile's keys on mould board."""

from __future__ import annotations

from collections.abc import Callable

from ledgerstone.workshop.consistency.shared import Found
from ledgerstone.workshop.records import Boards


def _sheets(boards: Boards) -> Found:
    if boards.width_mm > boards.length_mm:
        yield ("boards", "width_mm"), "this is the shorter side; it is longer than length_mm."
    if boards.foam.width_mm > boards.foam.length_mm:
        says = "this is the shorter side; it is longer than length_mm."
        yield ("boards", "foam", "width_mm"), says


def _saw(boards: Boards) -> Found:
    for path, kerf, side in (
        (("boards", "kerf_mm"), boards.kerf_mm, boards.width_mm),
        (("boards", "foam", "kerf_mm"), boards.foam.kerf_mm, boards.foam.width_mm),
    ):
        if kerf >= side / 10:
            yield path, f"the saw takes {kerf:g} mm of a sheet {side:g} mm wide. Measure it again."


CHECKS: tuple[Callable[..., Found], ...] = (_sheets, _saw)
