"""What moulds are made of: board, strips, foam for knockouts, bead, screws and release agent."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal

from ledgerstone.workshop._keys import about, above_0, at_least_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class Foam:
    """Stiff foam sheets, of which knockouts and relief formers are glued up in layers."""

    length_mm: float = above_0("longer side of a sheet")
    width_mm: float = above_0("shorter side of a sheet")
    thickness_mm: float = above_0("one layer")
    kerf_mm: float = at_least_0("what the saw or the wire takes away")
    price_per_sheet: Decimal = at_least_0("one sheet")


@dataclass(frozen=True, slots=True, kw_only=True)
class Boards:
    """Board for bases and sides, and everything else that a mould takes."""

    length_mm: float = above_0("longer side of a sheet")
    width_mm: float = above_0("shorter side of a sheet")
    thickness_mm: float = above_0("of the board")
    kerf_mm: float = at_least_0("what the saw takes away")
    price_per_sheet: Decimal = at_least_0("one sheet")
    margin_mm: float = at_least_0("base board beyond the slab on every side")
    sanding_mm: float = field(
        default=0.0,
        metadata=about(
            "sides stand higher by this, and the back is sanded down", at_least=0, at_most=10
        ),
    )
    flexible_length_mm: float = above_0("thin strip for curved sides, as bought")
    flexible_price: Decimal = at_least_0("one length of it")
    plug_up_to_mm: float = at_least_0("round holes up to this take a turned plug, not foam")
    screw_pitch_mm: float = above_0("screws along a side strip")
    pilot_mm: float = above_0("pilot hole for a screw")
    screw_price: Decimal = at_least_0("one screw")
    bead_m_per_tube: float = above_0("sealant bead from one tube")
    bead_price_per_tube: Decimal = at_least_0("one tube")
    drip_stop_mm: float = at_least_0("a drip stops short of each end of its side")
    release_m2_per_l: float = above_0("release agent: a litre covers")
    release_price_per_l: Decimal = at_least_0("a litre")
    foam: Foam = documented("stiff foam for knockouts and relief formers")
