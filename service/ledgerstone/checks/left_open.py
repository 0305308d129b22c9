"""What nobody told of an order and was taken by rule: the customer reads what stands for it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Final

from ledgerstone.checks.finding import Finding, only
from ledgerstone.order import Slab
from ledgerstone.stages import Judged, Planned
from ledgerstone.wording import Listed, Message, cutout_name

_OURS: Final = "the workshop's own rule"
_MOST_RIMS: Final = 3


def thickness_taken(planned: Planned) -> Iterable[Finding]:
    """Where nobody told a thickness one of ours was taken: a note for each.

    It is the usual one, or the first of ours that does where the usual one does not.
    """
    order, taken = planned.order, dict[tuple[float, bool], list[int]]()
    for i, slab in enumerate(order.slabs):
        other = "other-thickness" in slab.taken
        if other or "thickness" in slab.taken:
            taken.setdefault((slab.thickness.mm, other), []).append(i)
    for (mm, other), slabs in taken.items():
        said = order.slabs[slabs[0]].thickness
        yield Finding(
            "thickness-taken",
            "note",
            Message("thickness-taken", thickness=said, usual="no" if other else "yes"),
            _OURS,
            slab=only(slabs),
            at=tuple(f"/slabs/{i}" for i in slabs),
            measured={"thickness_mm": mm},
            key=f"{mm:g}" if len(taken) > 1 else "",
        )


def rest_taken(judged: Judged) -> Iterable[Finding]:
    """Whatever else nobody told is said once for the whole order, beside its price."""
    order = judged.planned.order
    things = [thing for slab in order.slabs for thing in _things(slab)]
    rims = [name for slab in order.slabs for name in _rims(slab)]
    if rims:
        things.append(Message("taken-rims", cutouts=Listed(tuple(rims), most=_MOST_RIMS)))
    if order.delivery_taken:
        things.append(Message("taken-delivery"))
    if not things:
        return
    slabs = [i for i, slab in enumerate(order.slabs) if any(_things(slab)) or any(_rims(slab))]
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


def _rims(slab: Slab) -> Iterator[Message]:
    for k, cutout in enumerate(slab.cutouts):
        if cutout.rim_taken:
            yield cutout_name(slab, k)
