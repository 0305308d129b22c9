"""Hands to lift a slab with, and when a lift is to be assessed. Nothing here is a safe limit."""

from __future__ import annotations

import math
from collections.abc import Mapping
from types import MappingProxyType
from typing import Literal

from ledgerstone.workshop.records import Workshop

Who = Literal["man", "woman"]
Zone = Literal["above-shoulder", "shoulder", "elbow", "knuckle", "lower-leg"]
# The HSE's filter, kg, with the hands close to the body and far from it. A zone is named by its
# upper end. L23 figure 23, as handling page §1.1 gives it; the law sets no limit.
_FILTER_KG: Mapping[tuple[Who, Zone], tuple[float, float]] = MappingProxyType(
    {
        ("man", "above-shoulder"): (10.0, 5.0),
        ("man", "shoulder"): (20.0, 10.0),
        ("man", "elbow"): (25.0, 15.0),
        ("man", "knuckle"): (20.0, 10.0),
        ("man", "lower-leg"): (10.0, 5.0),
        ("woman", "above-shoulder"): (7.0, 3.0),
        ("woman", "shoulder"): (13.0, 7.0),
        ("woman", "elbow"): (16.0, 10.0),
        ("woman", "knuckle"): (13.0, 7.0),
        ("woman", "lower-leg"): (7.0, 3.0),
    }
)
_TEAM_FACTORS: Mapping[int, float] = MappingProxyType({1: 1.0, 2: 2 / 3, 3: 1 / 2})


def people_to_lift(kg: float, workshop: Workshop) -> int:
    """Hands round one slab, by the workshop's own share for one person. Not a safe limit."""
    return max(1, math.ceil(kg / workshop.lifting.kg_per_person - 1e-9))


def filter_kg(who: Who, *zones: Zone, far: bool = False) -> float:
    """Mass above which one person's lift is to be assessed: the smallest of the zones passed.

    A sign that a lift must be assessed, never that it is safe.

    Source: HSE L23 and INDG143, the lifting filter; handling page §1.1.
    """
    return min(_FILTER_KG[who, zone][far] for zone in zones)


def team_lift_kg(*, men: int = 0, women: int = 0) -> float | None:
    """Mass above which a team's lift is to be assessed, or None where there is no factor for it.

    Hands close to the body between knuckle and elbow, the filter's best zone. Two people have 2/3
    of what each has, three have 1/2. The HSE gives no factor for four or more, so none is made up.
    No verdict, and no safe limit.

    Raises
    ------
    ValueError
        Nobody lifts, or fewer than nobody.

    Notes
    -----
    Source: HSE L23, team handling; handling page §1.2.
    """
    if min(men, women) < 0 or men + women == 0:
        raise ValueError(f"a team of {men} men and {women} women lifts nothing")
    factor = _TEAM_FACTORS.get(men + women)
    if factor is None:
        return None
    return factor * (men * filter_kg("man", "elbow") + women * filter_kg("woman", "elbow"))
