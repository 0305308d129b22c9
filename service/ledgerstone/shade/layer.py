"""Reflectance of an opaque layer by Kubelka and Munk, and of one under a film."""

from __future__ import annotations

from typing import Literal

import numpy as np

from ledgerstone.shade.colour import Colours, Lab, bands_to_lab, lab_to_bands, one

Appearance = Literal["dry", "wet", "sealed-matt", "sealed-satin"]

# Shares of light reflected by the surface from outside and from inside: (K1, K2) of `through_film`.
# wet: water over it, refractive index 1.333: K1 = ((n - 1)/(n + 1))^2, K2 = the part of diffuse
#   light from inside that the surface turns back (Fresnel; a test integrates it).
# sealed-satin: a resin film, n = 1.5; K2 is the lower end of Allen's (1980) 0.4 to 0.6.
# sealed-matt: soaks in and leaves no film; common practice, no source.
FILMS: dict[Appearance, tuple[float, float]] = {
    "dry": (0.0, 0.0),
    "wet": (0.0204, 0.474),
    "sealed-matt": (0.0, 0.08),
    "sealed-satin": (0.04, 0.40),
}
DARKEST, LIGHTEST = 1e-4, 0.9999


def absorption_ratio(reflectance: Colours) -> Colours:
    """K/S of an opaque layer from its reflectance R, 0 to 1: (1 - R)² / 2R, any shape ``(...)``.

    Source
    ------
    Kubelka and Munk, as in Allen 1980.
    """
    return np.asarray((1.0 - reflectance) ** 2 / (2.0 * reflectance), dtype=np.float64)


def reflectance(ratio: Colours) -> Colours:
    """Reflectance, 0 to 1, of an opaque layer: 1 + K/S - √((K/S)² + 2 K/S), any shape ``(...)``.

    Computed as the reciprocal of the other root: their product is 1, and no digits cancel.

    Source
    ------
    As `absorption_ratio`.
    """
    return np.asarray(1.0 / (1.0 + ratio + np.sqrt(ratio**2 + 2.0 * ratio)), dtype=np.float64)


def through_film(inner: Colours, outside: float, inside: float) -> Colours:
    """Reflectance, 0 to 1, measured over a film, specular reflection included.

    Parameters
    ----------
    inner
        Reflectance of the layer beneath, any shape ``(...)``.
    outside
        K1, the share of the light that the film reflects at its outer face.
    inside
        K2, the share of the layer's diffuse light that the film reflects back into the layer.

    Source
    ------
    Saunderson 1942, as in Allen 1980.
    """
    passed = (1.0 - outside) * (1.0 - inside) * inner / (1.0 - inside * inner)
    return np.asarray(outside + passed, dtype=np.float64)


def ratio_of_lab(lab: Colours) -> Colours:
    """K/S in three bands of a CIELAB colour, shape ``(..., 3)`` each."""
    return absorption_ratio(np.clip(lab_to_bands(lab), DARKEST, LIGHTEST))


def lab_of_ratio(ratio: Colours) -> Colours:
    """CIELAB of K/S in three bands, shape ``(..., 3)`` each."""
    return bands_to_lab(reflectance(ratio))


def appearance(lab: Lab, kind: Appearance) -> Lab:
    """CIELAB, wet or sealed, of a colour read dry and unsealed, specular reflection left out.

    An indication: the film's numbers are general, not those of one sealer. Never lighter than dry.

    Source
    ------
    `through_film` with the numbers of `FILMS`.
    """
    if kind == "dry":
        return lab
    outside, inside = FILMS[kind]
    bands = np.clip(lab_to_bands(np.array(lab)), DARKEST, LIGHTEST)
    return one(bands_to_lab(through_film(bands, outside, inside) - outside))
