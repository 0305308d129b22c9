"""Will it crack? Strength of the concrete by age, and the plate in every position it is in.

The plate problem, whole
------------------------
*Equation.* The slab is a thin elastic plate of thickness ``h`` and rigidity
``D = E h³ / 12 (1 - ν²)``: ``D Δ²w = p``, with free edges and openings, ``D`` less under reliefs.

*Unknowns.* The deflection ``w`` and its slopes at the nodes of a triangle mesh (discrete Kirchhoff
triangles), the reaction ``r`` of every place where a rest touches, and the slab's rigid motion
``a``: it sinks and tilts in two directions.

*Supports.* A rest pushes and never pulls. With ``F`` the slab's flexibility between the rests,
``C`` how the rests themselves give (rails are beams between side panels, panels crush, all else is
stiff), ``d`` what the loads alone would do there, ``g`` how low a rest lies, ``R`` the reactions'
pull on the rigid motions and ``b`` the loads':

    F r + C r + g - d - R a >= 0,   r >= 0,   the two never both at once,   R'r = b

A fixed slab is held both ways in the cases that would tip it.

*Loads.* Own weight, an even load, and a person standing, sitting or leaning at the worst place
there is: found by influence surfaces, which the adjoint of each governing stress gives.

*Verdict.* The larger principal stress on either face, averaged over half the thickness (at least
15 mm) around each node, over what the concrete is trusted with: ``k_fl 0.7 f_ctm / γ_c``
(EN 1992-1-1 3.1.8, 3.4, 2.4.2.4). Over 1.0 stops an order.

*Balance.* About each edge of the hull of the rests, 0.9 of the slab inside it against 1.1 of what
lies beyond and 1.5 of a person (EN 1990 table A1.2(A)).
"""

from __future__ import annotations

from ledgerstone.errors import (
    ContactNotSettledError,
    OffTheSlabError,
    OutlineUnusableError,
    SlabTipsError,
)
from ledgerstone.strength.plate import (
    AreaSupport,
    CaseResult,
    Cases,
    LineLoad,
    LineSupport,
    OwnWeight,
    PatchLoad,
    Plate,
    PlateLoad,
    PointSupport,
    Pressure,
    Rested,
    Stress,
    Support,
)

__all__ = [
    "AreaSupport",
    "CaseResult",
    "Cases",
    "ContactNotSettledError",
    "LineLoad",
    "LineSupport",
    "OffTheSlabError",
    "OutlineUnusableError",
    "OwnWeight",
    "PatchLoad",
    "Plate",
    "PlateLoad",
    "PointSupport",
    "Pressure",
    "Rested",
    "SlabTipsError",
    "Stress",
    "Support",
]
