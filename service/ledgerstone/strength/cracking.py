"""What a slab in place must carry once it has cracked, lengthwise and across."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from ledgerstone.outline import XY
from ledgerstone.strength._lying import Lying
from ledgerstone.strength._outline import FloatArray
from ledgerstone.strength._tried import Batch
from ledgerstone.strength.cracked import plain_limit_mpa

LASTING, CHANGING = 1.35, 1.5  # EN 1990 table A1.2(B)


@dataclass(frozen=True, slots=True)
class Demand:
    """The largest moment one way, as the stress of the whole section, MPa, and where."""

    mpa: float
    where_mm: XY


@dataclass(frozen=True, slots=True)
class Cracking:
    """What a slab must carry once cracked, as stresses of its whole section, MPa.

    Attributes
    ----------
    along, across
        Demands on bars that run from left to right, and from front to back.
    plain_mpa
        What plain concrete is trusted with.
    cracks_at_mpa
        Mean bending strength: a section carries as much until it cracks.
    """

    along: Demand
    across: Demand
    plain_mpa: float
    cracks_at_mpa: float


def cracking_of(lying: Lying, batches: Sequence[Batch], in_use_days: float) -> Cracking | None:
    """Find the demand on bars each way under 1.35 G + 1.5 Q; None where nobody is on the slab.

    Source
    ------
    EN 1990 (6.10) and table A1.2(B). Bars one way carry ``|m| + |m_xy|`` (Wood and Armer, 1968).
    """
    along: list[Demand] = []
    across: list[Demand] = []
    for needed in _fields(lying, batches):
        for found, field in zip((along, across), needed, strict=True):
            found.append(_worst(lying, field))
    if not along:
        return None
    thickness, concrete = lying.slab.thickness.mm, lying.concrete
    return Cracking(
        max(along, key=lambda one: one.mpa),
        max(across, key=lambda one: one.mpa),
        plain_limit_mpa(concrete, thickness),
        concrete.mean_bending_mpa(thickness, in_use_days),
    )


def _worst(lying: Lying, field: FloatArray) -> Demand:
    at = int(np.argmax(field))
    x, y = lying.plate.model.mesh.nodes[at].tolist()
    return Demand(round(float(field[at]), 6), (x, y))


def _fields(lying: Lying, batches: Sequence[Batch]) -> Iterator[tuple[FloatArray, FloatArray]]:
    """The demand along and across at every node, (n,) each, of each batch's worst person there."""
    own = batches[0].loose.components[:, :, 0]
    for batch in batches:
        columns, factors = [], []
        for k, tried in enumerate(batch.tried):
            place = tried.place
            if place is None or tried.low is not None or batch.found[k].tips:
                continue
            if place.kind != "free-corner":
                cases, at = batch.solved(k)
                columns.append(cases.components[:, :, at])
                done = lying.newtons(lying.sitting_case(place))
                factors.append(CHANGING * done / lying.newtons(tried.case))
        if columns:
            live = (np.stack(columns, axis=-1) - own[:, :, None]) * np.array(factors)
            lasting = (live + share * own[:, :, None] for share in (1.0, LASTING))
            x, y, xy = np.maximum(*(np.abs(one) for one in lasting))
            yield (x + xy).max(axis=1), (y + xy).max(axis=1)
