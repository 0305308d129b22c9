"""What a section carries once it has cracked: by its steel or glass fibre, or as plain concrete."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from ledgerstone.strength.concrete import Concrete, flexural_factor
from ledgerstone.workshop.records import Steel

IN_USE_DAYS = 28.0
STEEL_FACTOR = 1.15  # EN 1992-1-1 2.4.2.4
GLASS_FACTOR = 1.5  # of glass fibre: CNR-DT 203, from memory
GLASS_IN_CONCRETE = 0.7  # what damp and alkali leave of its strength; CNR-DT 203, from memory
STEEL_E_MPA = 200_000.0  # EN 1992-1-1 3.2.7(4); stainless EN 1993-1-4 2.1.3
GLASS_E_MPA = 45_000.0  # bars of glass fibre in resin; from memory
FULL_STRESS = 0.85  # alpha_cc of a national annex; EN 1992-1-1 3.1.6 itself says 1.0
STRESS_BLOCK = 0.8  # lambda, EN 1992-1-1 3.1.7(3), up to C50
CRUSHES_AT = 0.0035  # epsilon_cu3, EN 1992-1-1 table 3.1, up to C50
DEEPEST = 0.45  # x / d, EN 1992-1-1 5.5(4)


@dataclass(frozen=True, slots=True)
class Stuff:
    """What bars and wires are of: stiffness, and the stress that is trusted, MPa."""

    e_mpa: float
    design_mpa: float

    @classmethod
    def of(cls, steel: Steel) -> Stuff:
        """Read it from a profile.

        Source
        ------
        Steel: EN 1992-1-1 2.4.2.4 and 3.2.7. Glass fibre: CNR-DT 203, from memory.
        """
        if steel.material == "glass-fibre":
            design = GLASS_IN_CONCRETE * steel.yield_mpa / GLASS_FACTOR
            return cls(steel.e_mpa or GLASS_E_MPA, design)
        return cls(steel.e_mpa or STEEL_E_MPA, steel.yield_mpa / STEEL_FACTOR)


@dataclass(frozen=True, slots=True)
class SteelLayer:
    """Bars or wires at one level.

    Attributes
    ----------
    mm2_per_mm
        Their area on each mm of width.
    depth_mm
        From the pressed face to their middle, ``d``.
    """

    mm2_per_mm: float
    depth_mm: float


def round_mm2(diameter_mm: float) -> float:
    """Area of a round bar, mm²."""
    return 0.25 * math.pi * diameter_mm**2


def cracked_moment_nmm_per_mm(
    layers: Sequence[SteelLayer], stuff: Stuff, *, fck_mpa: float, gamma_c: float
) -> float:
    """Moment that steel or glass fibre carries across a crack, N·mm on each mm of width.

    Plane sections: with the pressed face at its crushing strain a layer strains by
    ``ε_cu (d - x) / x`` and carries ``min(E ε, f_d)``; the concrete's block is ``λ x`` of
    ``α_cc f_ck / γ_c``. What would press it deeper than 0.45 of the least ``d`` adds nothing.

    Source
    ------
    EN 1992-1-1 6.1, 3.1.7(3) and 3.2.7(2); 5.5(4) for 0.45 d.
    """
    used = [layer for layer in layers if layer.mm2_per_mm > 0.0]
    if not used:
        return 0.0
    f_cd = FULL_STRESS * fck_mpa / gamma_c
    low, high = 0.0, DEEPEST * min(layer.depth_mm for layer in used)
    for _ in range(50):
        x = 0.5 * (low + high)
        pulls = sum(_pulls(layer, x, stuff) for layer in used)
        low, high = (x, high) if pulls > STRESS_BLOCK * x * f_cd else (low, x)
    x = 0.5 * (low + high)
    forces = [_pulls(layer, x, stuff) for layer in used]
    pressed = STRESS_BLOCK * x * f_cd
    lever = sum(f * layer.depth_mm for f, layer in zip(forces, used, strict=True)) / sum(forces)
    return min(sum(forces), pressed) * (lever - 0.5 * STRESS_BLOCK * x)


def _pulls(layer: SteelLayer, x_mm: float, stuff: Stuff) -> float:
    strain = CRUSHES_AT * (layer.depth_mm - x_mm) / x_mm
    return layer.mm2_per_mm * min(stuff.e_mpa * strain, stuff.design_mpa)


def plain_limit_mpa(concrete: Concrete, thickness_mm: float) -> float:
    """What plain concrete is trusted with where nothing carries across a crack, in bending, MPa.

    Source
    ------
    EN 1992-1-1 (12.1), in bending by (3.23).
    """
    return concrete.plain_tension_mpa(IN_USE_DAYS) * flexural_factor(thickness_mm)
