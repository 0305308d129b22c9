"""Strength of a cracked section: by its steel or glass fibre, or as plain concrete."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from ledgerstone.strength.concrete import Concrete, flexural_factor
from ledgerstone.workshop.records import Steel

IN_USE_DAYS = 28.0  # the age that a strength class is of: EN 206
GAMMA_S = 1.15  # EN 1992-1-1 2.4.2.4
GAMMA_GLASS = 1.5  # of glass fibre: CNR-DT 203, from memory
GLASS_IN_CONCRETE = 0.7  # what damp and alkali leave of its strength; CNR-DT 203, from memory
STEEL_E_MPA = 200_000.0  # EN 1992-1-1 3.2.7(4); stainless EN 1993-1-4 2.1.3
GLASS_E_MPA = 45_000.0  # bars of glass fibre in resin; from memory
ALPHA_CC = 0.85  # of a national annex; EN 1992-1-1 3.1.6 itself says 1.0
LAMBDA = 0.8  # of the rectangular stress block, EN 1992-1-1 3.1.7(3), up to C50
EPSILON_CU3 = 0.0035  # EN 1992-1-1 table 3.1, up to C50
MAX_X_OVER_D = 0.45  # EN 1992-1-1 5.5(4)


@dataclass(frozen=True, slots=True)
class BarMaterial:
    """The material of bars and wires: modulus of elasticity and design strength, MPa."""

    e_mpa: float
    design_mpa: float

    @classmethod
    def of(cls, steel: Steel) -> BarMaterial:
        """Read the material from a profile.

        Source
        ------
        Steel: EN 1992-1-1 2.4.2.4 and 3.2.7. Glass fibre: CNR-DT 203, from memory.
        """
        if steel.material == "glass-fibre":
            design = GLASS_IN_CONCRETE * steel.yield_mpa / GAMMA_GLASS
            return cls(steel.e_mpa or GLASS_E_MPA, design)
        return cls(steel.e_mpa or STEEL_E_MPA, steel.yield_mpa / GAMMA_S)


@dataclass(frozen=True, slots=True)
class SteelLayer:
    """Bars or wires at one level.

    Attributes
    ----------
    mm2_per_mm
        Their area per mm of width.
    depth_mm
        Effective depth ``d``: from the compression face to their centroid.
    """

    mm2_per_mm: float
    depth_mm: float


def round_mm2(diameter_mm: float) -> float:
    """Area of a round bar, mm².

    Source
    ------
    Geometry.
    """
    return 0.25 * math.pi * diameter_mm**2


def cracked_moment_nmm_per_mm(
    layers: Sequence[SteelLayer], material: BarMaterial, *, fck_mpa: float, gamma_c: float
) -> float:
    """Moment of resistance of a cracked reinforced section, N·mm per mm of width.

    Plane sections: with the compression face at its ultimate strain a layer strains by
    ``ε_cu (d - x) / x`` and carries ``min(E ε, f_d)``; the concrete's block is ``λ x`` of
    ``α_cc f_ck / γ_c``. ``x`` is at most 0.45 of the least ``d``; more steel adds no moment.

    Source
    ------
    EN 1992-1-1 6.1, 3.1.7(3) and 3.2.7(2); 5.5(4) for 0.45 d.
    """
    used = [layer for layer in layers if layer.mm2_per_mm > 0.0]
    if not used:
        return 0.0
    block = LAMBDA * ALPHA_CC * fck_mpa / gamma_c
    least_mm = min(layer.depth_mm for layer in used)
    x = min(_neutral_axis_mm(used, material, block), MAX_X_OVER_D * least_mm)
    forces = [_tension(layer, x, material) for layer in used]
    lever = sum(f * layer.depth_mm for f, layer in zip(forces, used, strict=True)) / sum(forces)
    return min(sum(forces), block * x) * (lever - 0.5 * LAMBDA * x)


def _neutral_axis_mm(
    layers: Sequence[SteelLayer], material: BarMaterial, block_n_per_mm2: float
) -> float:
    """Depth ``x`` of the neutral axis, at which tension and the stress block balance, mm.

    A layer yields up to ``x = ε_cu d / (ε_cu + f_d / E)``. Between two such depths
    the balance is a quadratic equation in ``x``.
    """
    yields_at = [
        EPSILON_CU3 * layer.depth_mm / (EPSILON_CU3 + material.design_mpa / material.e_mpa)
        for layer in layers
    ]
    for up_to in (*sorted(yields_at), math.inf):
        full = sum(
            layer.mm2_per_mm * material.design_mpa
            for layer, at in zip(layers, yields_at, strict=True)
            if at >= up_to
        )
        strained = [
            (layer.mm2_per_mm * material.e_mpa * EPSILON_CU3, layer.depth_mm)
            for layer, at in zip(layers, yields_at, strict=True)
            if at < up_to
        ]
        less = sum(force for force, _ in strained) - full
        turned = sum(force * depth for force, depth in strained)
        # b x² + l x - t = 0, whose larger root it is.
        root = math.sqrt(less**2 + 4.0 * block_n_per_mm2 * turned)
        x = (root - less) / (2.0 * block_n_per_mm2)
        if x <= up_to:
            break
    return x


def _tension(layer: SteelLayer, x_mm: float, material: BarMaterial) -> float:
    strain = EPSILON_CU3 * (layer.depth_mm - x_mm) / x_mm
    return layer.mm2_per_mm * min(material.e_mpa * strain, material.design_mpa)


def plain_limit_mpa(concrete: Concrete, thickness_mm: float) -> float:
    """Design bending strength of plain concrete where no steel crosses a crack, MPa.

    Source
    ------
    EN 1992-1-1 (12.1), in bending by (3.23).
    """
    return concrete.plain_tension_mpa(IN_USE_DAYS) * flexural_factor(thickness_mm)
