"""A request for a layout: the slab, and the parts of it that have no position yet."""

from __future__ import annotations

import copy
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.codec.fields import field_name
from ledgerstone.codec.order_in import read_order
from ledgerstone.errors import Fault, NotUnderstood
from ledgerstone.json_types import JSON
from ledgerstone.layout import REST_KINDS, FreeParts
from ledgerstone.message import Message
from ledgerstone.order import Slab

_NOWHERE: Final[Mapping[str, int]] = {"x": 0, "y": 0}
_MISSING: Final = Message("field-missing", field=field_name("a-slab"), verb="say")
_KEPT: Final = ("overhang", "fixed", "rails")
_ANY_UNIT: Final = ({"width": 600},)  # placeholder units of a run that is not laid out yet


@dataclass(frozen=True, slots=True)
class PlacingRequest:
    """The slab as JSON and as a record, and the parts of it that are free."""

    sent: dict[str, Any]
    slab: Slab
    free: FreeParts


def read_placing(ask: Mapping[str, Any], context: QuoteContext) -> PlacingRequest:
    """Read the slab, with placeholders for its free parts.

    Raises
    ------
    NotUnderstood
        There is no slab, or it has faults: their pointers begin with ``/slab``.
    """
    if "slab" not in ask:
        raise NotUnderstood((Fault("/slab", _MISSING),))
    raw, free = ask["slab"], ask.get("free", {})
    sent = copy.deepcopy(raw) if isinstance(raw, dict) else raw
    try:
        order = read_order({"slabs": [_readable(sent, free)]}, context.workshop)
    except NotUnderstood as fault:
        raise NotUnderstood.of([_at_slab(detail) for detail in fault.faults]) from None
    slab = order.slabs[0]
    return PlacingRequest(sent, slab, _free(slab, ask, sent))


def _at_slab(fault: Fault) -> Fault:
    return replace(fault, pointer="/slab" + fault.pointer.removeprefix("/slabs/0"))


def _readable(sent: JSON, free: Mapping[str, Any]) -> JSON:
    """Fill in placeholder positions for what is free, so that it can be read."""
    if not isinstance(sent, dict):
        return sent
    doc = dict(sent)
    for members, place in (("cutouts", "centre"), ("reliefs", "at")):
        listed = doc.get(members)
        if isinstance(listed, list):
            doc[members] = [
                {**opening, place: _NOWHERE}
                if k in free.get(members, ())
                and isinstance(opening, dict)
                and "points" not in opening
                else opening
                for k, opening in enumerate(listed)
            ]
    rests = doc.get("rests")
    if free.get("rests") and isinstance(rests, dict) and rests.get("kind") in REST_KINDS:
        doc["rests"] = _stub(rests)
    return doc


def _stub(rests: Mapping[str, Any]) -> dict[str, Any]:
    """Return placeholder rests that can be read, with the members that are kept."""
    kept = {key: rests[key] for key in _KEPT if key in rests}
    if rests["kind"] == "units":
        return {"kind": "units", "units": list(_ANY_UNIT), **kept}
    return {"kind": "full", **({"fixed": kept["fixed"]} if "fixed" in kept else {})}


def _free(slab: Slab, ask: Mapping[str, Any], sent: Mapping[str, Any]) -> FreeParts:
    """Return the free parts of a slab; a polygon or an opening open to a side is never free."""
    free = ask.get("free", {})
    movable = {
        k
        for k, cutout in enumerate(slab.cutouts)
        if cutout.centre is not None and cutout.open_to is None
    }
    rests = sent["rests"]["kind"] if free.get("rests") and slab.rests is not None else None
    return FreeParts(
        frozenset(movable & set(free.get("cutouts", ()))),
        frozenset(set(range(len(slab.reliefs))) & set(free.get("reliefs", ()))),
        rests,
        ask.get("unit", "mm"),
    )
