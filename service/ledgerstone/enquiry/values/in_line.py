"""Openings that are placed by others: behind a basin, about the middle of a row."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.said import Claim
from ledgerstone.enquiry.scene.size_assigner import worked_out
from ledgerstone.enquiry.values.pieces import OpeningFound, PieceFound
from ledgerstone.quantities import Length

_OUTLETS: Final = frozenset({"waste", "drain"})


def _set_behind(made: OpeningFound, other: OpeningFound | None) -> None:
    """Put a tap as far behind another opening's middle as is said: "100 behind it"."""
    by, near = made.opening.behind_by, other.values.get("y") if other is not None else None
    if by is None or near is None or "y" in made.values:
        return
    mm = Length.of(by.amount, by.unit or near.length.unit).mm
    spans = (*near.spans, (by.start, by.end))
    made.values["y"] = Claim(near.length.in_unit(near.mm + mm), spans, how="worked-out")


def _middle(found: PieceFound) -> Claim | None:
    """Return the middle of a slab's length."""
    extent = found.extent("x")
    return worked_out(extent.length, extent.mm / 2, [extent]) if extent is not None else None


def _part_stacked(found: PieceFound) -> None:
    """Withhold the place of openings that would lie on one another: it is asked for."""
    at: dict[tuple[float, float], list[OpeningFound]] = {}
    for made in found.openings:
        x, y = made.values.get("x"), made.values.get("y")
        if x is not None and y is not None:
            at.setdefault((x.mm, y.mm), []).append(made)
    for stacked in at.values():
        for made in stacked if len(stacked) > 1 else ():
            del made.values["x"]


def _stands_for(found: PieceFound, made: OpeningFound) -> OpeningFound | None:
    """Return the waste of the bowl that an opening is in line with, where the bowl itself is none.

    A bowl that only stands on the slab needs no hole but its waste.
    """
    bowl = made.opening.level_with
    bowls = [one for one in found.piece.openings if bowl is not None and one.what == bowl.what]
    wastes = [one for one in found.openings if one.opening.what in _OUTLETS]
    at = next((i for i, one in enumerate(bowls) if one is bowl), -1)
    return wastes[at] if at >= 0 and len(bowls) == len(wastes) else None


def level_openings(found: PieceFound) -> None:
    """Put what stands behind something on its centre line, and a row of taps about its middle.

    None is left to lie on another.
    """
    by_opening = {id(opening.opening): opening for opening in found.openings}
    for _ in range(2):
        for made in found.openings:
            if "x" in made.values or any(doubt.at == "x" for doubt in made.doubts):
                continue
            other = by_opening.get(id(made.opening.level_with)) or _stands_for(found, made)
            if other is None and not (made.opening.offset_sign and made.opening.level_with is None):
                continue
            centre = other.values.get("x") if other is not None else _middle(found)
            if centre is None:
                continue
            spans = (*made.opening.level_spans, *centre.spans)
            offset = made.opening.offset
            per = Length.of(offset.amount, offset.unit or centre.length.unit).mm if offset else 0.0
            mm = centre.mm + per * made.opening.offset_sign
            extent = found.extent("x")
            if mm <= 0 or (extent is not None and mm >= extent.mm):
                continue
            made.values["x"] = Claim(centre.length.in_unit(mm), spans, how="worked-out")
            _set_behind(made, other)
            level = other.values.get("y") if other is not None and offset is not None else None
            if level is not None and not made.doubts:
                made.values.setdefault("y", worked_out(level.length, level.mm, [level]))
    _level_in_depth(found, by_opening)
    _part_stacked(found)


def _level_in_depth(found: PieceFound, by_opening: dict[int, OpeningFound]) -> None:
    """Put what is in line with another from front to back as far from the front as that."""
    for made in found.openings:
        other = by_opening.get(id(made.opening.in_depth_with))
        level = other.values.get("y") if other is not None else None
        if level is not None and not any(doubt.at == "y" for doubt in made.doubts):
            spans = (*made.opening.level_spans, *level.spans)
            made.values.setdefault("y", Claim(level.length, spans, how="worked-out"))
