"""What carries across the front and back of base units, between their side panels."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal

from ledgerstone.workshop.records._keys import about, above_0, documented


@dataclass(frozen=True, slots=True, kw_only=True)
class RailSection:
    """One rail's section and material, as it lies."""

    name: str = documented("name for customers, in a few words")
    e_mpa: float = above_0("stiffness in bending")
    g_mpa: float = above_0("stiffness in shear")
    width_mm: float = above_0("width, seen from above")
    depth_mm: float = above_0("depth, top to bottom")
    wall_mm: float | None = field(default=None, metadata=about("wall of a hollow section", above=0))

    fitted: Decimal | None = field(
        default=None,
        metadata=about(
            ("net price of one that you fit, with the work; left out, the customer has it fitted"),
            at_least=0,
        ),
    )

    @property
    def i_mm4(self) -> float:
        """Second moment of area about the level axis, mm⁴."""
        solid = self.width_mm * self.depth_mm**3
        if self.wall_mm is None:
            return solid / 12.0
        inside = (self.width_mm - 2.0 * self.wall_mm) * (self.depth_mm - 2.0 * self.wall_mm) ** 3
        return (solid - inside) / 12.0

    @property
    def shear_mm2(self) -> float:
        """Area that carries shear, mm²: 5/6 of a solid one, the two webs of a hollow one."""
        if self.wall_mm is None:
            return 5.0 / 6.0 * self.width_mm * self.depth_mm
        return 2.0 * self.wall_mm * self.depth_mm


def _chipboard(name: str, width_mm: float, depth_mm: float) -> RailSection:
    # EN 312 P2, from memory: 1 800 to 2 500 MPa in bending; 830 MPa in shear after EN 12369-1
    return RailSection(name=name, e_mpa=2500.0, g_mpa=830.0, width_mm=width_mm, depth_mm=depth_mm)


def _flat() -> RailSection:
    return _chipboard("the cabinet's own flat rail", 100.0, 18.0)


def _upright() -> RailSection:
    return _chipboard("the cabinet's own upright rail", 18.0, 100.0)


def _hardwood() -> RailSection:
    # EN 338 D30: 11 000 MPa along the grain, 690 MPa in shear
    return RailSection(
        name="hardwood rail (20 × 100 mm, on edge)",
        e_mpa=11_000.0,
        g_mpa=690.0,
        width_mm=20.0,
        depth_mm=100.0,
    )


def _steel() -> RailSection:
    # EN 1993-1-1 3.2.6; the section is our choice
    return RailSection(
        name="steel box section (40 × 80 × 3 mm, on edge)",
        e_mpa=210_000.0,
        g_mpa=81_000.0,
        width_mm=40.0,
        depth_mm=80.0,
        wall_mm=3.0,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Rails:
    """Rails of base units, and the side panels that carry them."""

    flat: RailSection = field(
        default_factory=_flat,
        metadata=about("flat rail of a base unit; common cabinets, from memory"),
    )
    upright: RailSection = field(
        default_factory=_upright,
        metadata=about("upright rail of a hob's or basin's unit; common cabinets, from memory"),
    )
    hardwood: RailSection = field(
        default_factory=_hardwood, metadata=about("first rail that is fitted; EN 338 D30")
    )
    steel: RailSection = field(
        default_factory=_steel, metadata=about("next rail that is fitted; EN 1993-1-1 3.2.6")
    )
    panel_n_per_mm2: float = field(
        default=60.0,
        metadata=about(
            "how a side panel gives, N for each mm of its length and mm of its sinking: 18 mm of"
            " chipboard 720 mm high, from memory",
            above=0,
        ),
    )
    post_fitted: Decimal | None = field(
        default=None,
        metadata=about(
            (
                "net price of a post under the middle of a rail; left out, the customer "
                "has it fitted"
            ),
            at_least=0,
        ),
    )
