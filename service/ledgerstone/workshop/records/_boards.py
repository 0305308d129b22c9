"""What moulds are made of: board, strips, foam for knockouts, bead, screws and release agent."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal

from ledgerstone.workshop.records._keys import about, above_0, at_least_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class Foam:
    """Stiff foam sheets, of which knockouts and relief formers are glued up in layers."""

    length_mm: float = above_0("longer side of a sheet")
    width_mm: float = above_0("shorter side of a sheet")
    thickness_mm: float = above_0("thickness of a sheet")
    kerf_mm: float = at_least_0("width of the cut of saw or wire")
    price_per_sheet: Decimal = at_least_0("price of a sheet of foam")


@dataclass(frozen=True, slots=True, kw_only=True)
class Boards:
    """Board for bases and sides, and everything else that a mould takes."""

    length_mm: float = above_0("longer side of a sheet")
    width_mm: float = above_0("shorter side of a sheet")
    thickness_mm: float = above_0("thickness of the board")
    kerf_mm: float = at_least_0("width of the saw's cut")
    price_per_sheet: Decimal = at_least_0("price of a sheet of mould board")
    margin_mm: float = at_least_0("base board beyond the slab on every side")
    sanding_mm: float = field(
        default=0.0,
        metadata=about(
            "how much thicker it is cast, to sand the back flat", at_least=0, at_most=10
        ),
    )
    flexible_length_mm: float = above_0("length of the thin strip for curved sides")
    flexible_price: Decimal = at_least_0("price of a thin strip for curved sides")
    plug_up_to_mm: float = at_least_0("largest round hole with a turned plug in place of foam")
    screw_pitch_mm: float = above_0("distance between screws along a side")
    pilot_mm: float = above_0("pilot hole for a screw")
    screw_price: Decimal = at_least_0("price of a screw")
    bead_m_per_tube: float = above_0("length of sealant bead from a tube")
    bead_price_per_tube: Decimal = at_least_0("price of a tube of sealant")
    drip_stop_mm: float = at_least_0("how far a drip stops short of the ends of its side")
    release_m2_per_l: float = above_0("area that a litre of release agent covers")
    release_price_per_l: Decimal = at_least_0("price of release agent")
    foam: Foam = documented("stiff foam for knockouts and relief formers")
