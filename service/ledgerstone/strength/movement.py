"""Sun and drying: the bow of a slab that is free, the stress of one that is restrained."""

from __future__ import annotations

from ledgerstone.order import Slab
from ledgerstone.shape import Shape
from ledgerstone.strength.concrete import POISSON

EXPANSION_PER_K = 10e-6  # EN 1992-1-1 3.1.3(5), from memory
DRYING_STRAIN = 200e-6  # between a face that dries and one that does not; judgement
# Sun on the face of a slab over its underside, K, by its lightness L*; from memory.
SUN_K = ((45.0, 20.0), (65.0, 15.0), (float("inf"), 10.0))


def sun_kelvin(lightness: float) -> float:
    """How much warmer the sun makes a face than its underside, K, by its CIE lightness L*.

    Source
    ------
    From memory; no standard gives it by shade.
    """
    return next(kelvin for most, kelvin in SUN_K if lightness < most)


def restrained_stress_mpa(e_mpa: float, kelvin: float) -> float:
    """Bending stress where a slab may not bow at all, ``E α ΔT / 2 (1 - ν)``, MPa.

    Parameters
    ----------
    kelvin
        Difference between the faces, linear through the thickness, K.

    Source
    ------
    Timoshenko and Woinowsky-Krieger, art. 14, from memory.
    """
    return e_mpa * EXPANSION_PER_K * kelvin / (2.0 * (1.0 - POISSON))


def free_bow_mm(strain: float, length_mm: float, thickness_mm: float) -> float:
    """Bow at the middle of a slab whose faces differ by a strain, ``ε L² / 8 h``, mm.

    The curvature is ``κ = ε / h``; a shallow arc rises ``κ L² / 8`` over its chord ``L``.

    Source
    ------
    Strength of materials and geometry, worked out here.
    """
    return strain * length_mm**2 / (8.0 * thickness_mm)


def drying_bow_mm(slab: Slab, shape: Shape) -> float:
    """Bow of a slab that dries on one face alone, along its longer side, mm.

    Source
    ------
    ``free_bow_mm`` of `DRYING_STRAIN`: judgement, no source.
    """
    long = max(shape.length_mm, shape.width_mm)
    return free_bow_mm(DRYING_STRAIN, long, slab.thickness.mm)
