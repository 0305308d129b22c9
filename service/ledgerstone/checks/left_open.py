"""What an order left open and was taken by rule: the customer reads what stands for it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby
from typing import Final

from ledgerstone.checks.finding import Finding, only
from ledgerstone.order import Order, Rests, Slab, Unit
from ledgerstone.quantities import Length
from ledgerstone.stages import Judged, Planned
from ledgerstone.wording import Listed, Message, cutout_name, slab_name

_OURS: Final = "the workshop's own rule"
_MOST_RIMS: Final = 3  # named in one sentence; the others are counted


def thickness_taken(planned: Planned) -> Iterable[Finding]:
    """Where no thickness was given one of ours was taken: a note for each.

    It is the usual one, or the first of ours that does where the usual one does not.
    """
    order, taken = planned.order, dict[tuple[float, bool], list[int]]()
    for i, slab in enumerate(order.slabs):
        other = "other-thickness" in slab.taken
        if other or "thickness" in slab.taken:
            taken.setdefault((slab.thickness.mm, other), []).append(i)
    for (mm, other), slabs in taken.items():
        thickness = order.slabs[slabs[0]].thickness
        yield Finding(
            "thickness-taken",
            "note",
            Message("thickness-taken", thickness=thickness, usual="no" if other else "yes"),
            _OURS,
            slab=only(slabs),
            at=tuple(f"/slabs/{i}" for i in slabs),
            measured={"thickness_mm": mm},
            key=f"{mm:g}" if len(taken) > 1 else "",
        )


def rest_taken(judged: Judged) -> Iterable[Finding]:
    """What else was left open is said once for the whole order, beside its price."""
    order = judged.planned.order
    things = [thing for slab in order.slabs for thing in _things(slab)]
    things += _units(order)
    rims = [name for slab in order.slabs for name in _rims(slab)]
    if rims:
        things.append(Message("taken-rims", cutouts=Listed(tuple(rims), most=_MOST_RIMS)))
    if order.delivery_taken:
        things.append(Message("taken-delivery"))
    if not things:
        return
    taken = [(any(_things(slab)), any(_rims(slab)), _is_on_ours(slab)) for slab in order.slabs]
    slabs = [i for i, ours in enumerate(taken) if any(ours)]
    yield Finding(
        "left-to-us",
        "note",
        Message("left-to-us", things=Listed(tuple(dict.fromkeys(things)), joined="comma")),
        _OURS,
        slab=only(slabs) if slabs else None,
        at=tuple(f"/slabs/{i}" for i in slabs),
    )


def _things(slab: Slab) -> Iterator[Message]:
    """Name what was taken of a slab beside its thickness."""
    for name in slab.taken:
        if name == "place":
            yield Message("taken-place", place=slab.place)
        elif name == "shade" and slab.shade.name is not None:
            yield Message("taken-shade", shade=slab.shade.name)
        elif name == "surface":
            yield Message("taken-surface", surface=str(slab.finish.surface))
        elif name == "sealer":
            yield Message("taken-sealer", sealer=slab.finish.sealer)
        elif name == "edges":
            yield Message("taken-edges")


def _is_on_ours(slab: Slab) -> bool:
    """Return whether a slab is on assumed units."""
    return bool(slab.rests and slab.rests.assumed)


def _units(order: Order) -> Iterator[Message]:
    """Name the units that were taken; under each of several slabs by itself."""
    for i, slab in enumerate(order.slabs):
        if slab.rests is not None and slab.rests.assumed:
            if len(order.slabs) == 1:
                yield units_taken(slab.rests)
                continue
            name = slab_name(slab, i, len(order.slabs))
            yield Message("taken-units-under", slab=name, units=units_listed(slab.rests))


def units_taken(rests: Rests) -> Message:
    """Name the base units that were taken."""
    return Message("taken-units", units=units_listed(rests))


def units_listed(rests: Rests) -> Listed:
    """List units from left to right, equal ones together."""
    runs = [(key, len(list(run))) for key, run in groupby(rests.units, key=_as_sold)]
    units = (
        Message("taken-unit", count=count, width=width, use="gap" if is_gap else "unit")
        for (width, is_gap), count in runs
    )
    return Listed(tuple(units), joined="comma")


def _as_sold(unit: Unit) -> tuple[Length, bool]:
    return unit.width, unit.use == "gap"


def _rims(slab: Slab) -> Iterator[Message]:
    for k, cutout in enumerate(slab.cutouts):
        if cutout.rim_taken:
            yield cutout_name(slab, k)
