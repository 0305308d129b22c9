"""What a section carries once it has cracked: by its steel, or as plain concrete."""

from __future__ import annotations

import math

from ledgerstone.strength.concrete import Concrete, flexural_factor
from ledgerstone.workshop.records import Steel

IN_USE_DAYS = 28.0
CLOSEST_BARS_MM = 50.0
STEEL_FACTOR = 1.15  # EN 1992-1-1 2.4.2.4
FULL_STRESS = 0.85  # alpha_cc of a national annex; EN 1992-1-1 3.1.6 itself says 1.0
STRESS_BLOCK = 0.8  # lambda, EN 1992-1-1 3.1.7(3), up to C50


def steel_moment_nmm_per_mm(
    steel_mm2_per_mm: float, depth_mm: float, *, yield_mpa: float, fck_mpa: float, gamma_c: float
) -> float:
    """Moment that steel carries across a crack, N·mm on each mm of width.

    ``A_s f_yd (d - x_b / 2)`` with a stress block ``x_b = A_s f_yd / (alpha_cc f_ck / gamma_c)``.
    More steel than the concrete can balance adds nothing: ``x`` stays within 0.45 d.

    Parameters
    ----------
    steel_mm2_per_mm
        Area of the bars, mm² on each mm of width.
    depth_mm
        From the pressed face to the bars' middle, ``d``.

    Source
    ------
    EN 1992-1-1 6.1 and 3.1.7(3); 5.5(4) for 0.45 d.
    """
    f_cd = FULL_STRESS * fck_mpa / gamma_c
    force = steel_mm2_per_mm * yield_mpa / STEEL_FACTOR
    block = min(force / f_cd, STRESS_BLOCK * 0.45 * depth_mm)
    return min(force, block * f_cd) * (depth_mm - block / 2.0)


def spacing_for_mm(
    moment_nmm_per_mm: float,
    bar_mm: float,
    depth_mm: float,
    *,
    yield_mpa: float,
    fck_mpa: float,
    gamma_c: float,
) -> float | None:
    """Widest spacing of bars that carries a moment across a crack; None where no steel does.

    The inverse of ``steel_moment_nmm_per_mm``: the smaller root for the stress block.
    """
    f_cd = FULL_STRESS * fck_mpa / gamma_c
    root = depth_mm**2 - 2.0 * moment_nmm_per_mm / f_cd
    if root < 0.0:
        return None
    block = depth_mm - math.sqrt(root)
    if block > STRESS_BLOCK * 0.45 * depth_mm:
        return None
    if block <= 0.0:
        return math.inf
    area_per_mm = block * f_cd * STEEL_FACTOR / yield_mpa
    return 0.25 * math.pi * bar_mm**2 / area_per_mm


def cracked_limit_mpa(steel: Steel, concrete: Concrete, thickness_mm: float) -> float:
    """What a section is trusted with beyond a crack, as a stress of the whole section, MPa.

    The profile's thinnest bars at their closest, in mid-depth; or, where that is more, the plain
    section (EN 1992-1-1 12.3.1, 3.1.8).
    """
    area = 0.25 * math.pi * steel.bar_mm**2 / CLOSEST_BARS_MM
    moment = steel_moment_nmm_per_mm(
        area,
        thickness_mm / 2,
        yield_mpa=steel.yield_mpa,
        fck_mpa=concrete.fck_mpa,
        gamma_c=concrete.basis.gamma_c,
    )
    plain = concrete.plain_tension_mpa(IN_USE_DAYS) * flexural_factor(thickness_mm)
    return max(6.0 * moment / thickness_mm**2, plain)
