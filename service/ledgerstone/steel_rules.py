"""Rules for steel in a thin slab: anchorage, cover by place, and the largest aggregate."""

from __future__ import annotations

import math
from dataclasses import dataclass

from ledgerstone.message import Message
from ledgerstone.order import Place, Slab
from ledgerstone.shape import MIN_GRAINS_ACROSS, Shape
from ledgerstone.strength.cracked import BarMaterial
from ledgerstone.workshop.records import Steel, Workshop

# EN 1992-1-1 table 4.4N, structural class S4: XC1 inside, XC3 in a wet room, XC4 outdoors.
PLAIN_STEEL_MM: dict[Place, float] = {"indoors": 15.0, "wet-room": 25.0, "outdoors": 30.0}
MIN_FOR_BOND_MM = 10.0  # EN 1992-1-1 (4.2): the bar's own diameter, and never under 10 mm
MIN_ANCHORAGE_MM = 100.0  # EN 1992-1-1 (8.6)
MIN_LAP_MM = 200.0  # EN 1992-1-1 (8.11)
ALL_LAPPED = 1.5  # EN 1992-1-1 table 8.3: more than half of the bars lapped at one section


@dataclass(frozen=True, slots=True)
class Cover:
    """Concrete over the steel, mm: what is wanted in this place, and what this thickness keeps."""

    wanted_mm: float
    kept_mm: float

    @property
    def is_kept(self) -> bool:
        """Whether the thickness keeps it, to half a millimetre."""
        return self.kept_mm >= self.wanted_mm - 0.5


def cover_of(slab: Slab, steel: Steel, *, crossing: bool = False) -> Cover:
    """Find the cover wanted and kept, with the steel in mid-depth of the thinnest place.

    A bar lies beside the wires that run its way, on those that cross: one bar and one wire; where
    bars cross, on another bar. Stainless steel and glass fibre do not rust and need cover for bond
    alone.

    Source
    ------
    EN 1992-1-1 table 4.4N, (4.2); for bond 4.4.1.2(3), ``c_min,b``.
    """
    bar = steel.bar_mm or steel.mesh_wire_mm
    stack = bar + (bar if crossing else steel.mesh_wire_mm)
    kept = 0.5 * (least_thickness_mm(slab) - stack)
    bond = max(bar, MIN_FOR_BOND_MM)
    if not steel.rusts:
        return Cover(bond, kept)
    return Cover(max(bond, steel.cover_mm, PLAIN_STEEL_MM[slab.place]), kept)


def least_thickness_mm(slab: Slab) -> float:
    """Return what is left under the deepest relief, or the whole thickness.

    Source
    ------
    Geometry.
    """
    deepest = max((relief.depth.mm for relief in slab.reliefs), default=0.0)
    return max(slab.thickness.mm - deepest, 0.0)


def anchorage_mm(workshop: Workshop, bar_mm: float) -> float:
    """Length that anchors a bar at its full strength, where bond is good.

    ``(d/4) f_yd / f_bd``, with ``f_bd = 2.25 f_ctd`` and ``f_ctd = 0.7 f_ctm / gamma_c``; a bar of
    glass fibre is taken to be as rough as one of steel.

    Source
    ------
    EN 1992-1-1 8.4.2(2), (8.3) and (8.6). Bond is good in any slab under 250 mm (8.4.2).
    The roughness of glass fibre is from memory.
    """
    return max(_bond_length_mm(workshop, bar_mm), 10.0 * bar_mm, MIN_ANCHORAGE_MM)


def lap_mm(workshop: Workshop, bar_mm: float) -> float:
    """Length by which two parts of a bar or of a mesh's wires lie beside each other.

    All bars may be lapped at one section: ``alpha_6`` is 1.5.

    Source
    ------
    EN 1992-1-1 8.7.3 (8.10) and (8.11), table 8.3; of mesh 8.7.5.1(1).
    """
    return max(ALL_LAPPED * _bond_length_mm(workshop, bar_mm), 15.0 * bar_mm, MIN_LAP_MM)


def lapped_parts(length_mm: float, most_mm: float, overlap_mm: float) -> tuple[int, float]:
    """Number of equal lapped parts of a length, at most ``most_mm`` each, and their length, mm.

    Parts overlap by at most half of ``most_mm``.

    Source
    ------
    Geometry: ``n`` parts and ``n - 1`` overlaps make the length.
    """
    if length_mm <= most_mm:
        return 1, length_mm
    overlap = min(overlap_mm, 0.5 * most_mm)
    count = math.ceil((length_mm - overlap) / (most_mm - overlap) - 1e-9)
    return count, (length_mm + (count - 1) * overlap) / count


def _bond_length_mm(workshop: Workshop, bar_mm: float) -> float:
    """Length in which a bar at its design strength is anchored by bond, mm.

    Source
    ------
    EN 1992-1-1 (8.2) in good bond and (8.3); 3.1.2, table 3.1 for 0.7 of the mean strength.
    """
    bond = 2.25 * 0.7 * _fctm_mpa(workshop.recipe.fck_mpa) / workshop.concrete.partial_factor
    return bar_mm / 4.0 * BarMaterial.of(workshop.steel).design_mpa / bond


def _fctm_mpa(fck_mpa: float) -> float:
    """Mean tensile strength, no more than C50's, MPa.

    Source
    ------
    EN 1992-1-1 table 3.1; its 8.4.2(2) limits it to C60's, of which C50's is the safe side.
    """
    return float(0.30 * min(fck_mpa, 50.0) ** (2.0 / 3.0))


def largest_aggregate_mm(slab: Slab, shape: Shape, steel: Steel | None) -> float:
    """Largest grain that a slab lets in.

    The least of a third of the thickness, a fifth of the narrowest place between forms, and three
    quarters of the clear space between wires. What hangs from an edge is cast between two forms,
    its own thickness apart, unless it is mitred: then it is cast flat.

    Source
    ------
    ACI 318-19 26.4.2.1(a)(5).
    """
    between = [strip.width_mm for strip in shape.strips if strip.width_mm > 0.0]
    between += [min(shape.length_mm, shape.width_mm)]
    drops = [edge.drop for edge in slab.edges.values() if edge.drop is not None]
    if any(not drop.mitred for drop in drops):
        between.append(slab.thickness.mm)
    limits = [least_thickness_mm(slab) / 3.0, min(between) / MIN_GRAINS_ACROSS]
    if steel is not None:
        limits.append(0.75 * (steel.mesh_pitch_mm - steel.mesh_wire_mm))
    return min(limits)


def material_note(place: Place, steel: Steel) -> Message:
    """State what the steel is made of in this place."""
    if place == "indoors":
        return Message("steel-indoors")
    return Message("steel-stainless" if not steel.rusts else "steel-would-rust", place=place)
