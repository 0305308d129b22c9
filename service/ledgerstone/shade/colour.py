"""Colours in sRGB, XYZ and CIELAB (D65), and their difference by CIEDE2000.

Arrays of colours have shape ``(..., 3)``; the single-colour functions take and give three floats.
"""

from __future__ import annotations

import re

import numpy as np
from numpy.typing import NDArray

Lab = tuple[float, float, float]
Colours = NDArray[np.float64]

# CIE 1931 chromaticities, (x, y). White D65: CIE 15 as IEC 61966-2-1:1999 rounds it.
_D65 = (0.3127, 0.3290)
_SRGB = ((0.64, 0.33), (0.30, 0.60), (0.15, 0.06))  # IEC 61966-2-1:1999, ITU-R BT.709-6
_WIDE = ((0.708, 0.292), (0.170, 0.797), (0.131, 0.046))  # ITU-R BT.2020-2


def _xyz_of(chromaticity: tuple[float, float]) -> Colours:
    x, y = chromaticity
    return np.array([x / y, 1.0, (1.0 - x - y) / y])


def _to_xyz(primaries: tuple[tuple[float, float], ...]) -> Colours:
    """Matrix from linear light in three primaries to XYZ, white having Y = 1."""
    columns = np.array([_xyz_of(primary) for primary in primaries]).T
    return np.asarray(columns * np.linalg.solve(columns, _WHITE), dtype=np.float64)


_WHITE = _xyz_of(_D65)
_SRGB_TO_XYZ = _to_xyz(_SRGB)
_XYZ_TO_SRGB = np.linalg.inv(_SRGB_TO_XYZ)
_WIDE_TO_XYZ = _to_xyz(_WIDE)
_XYZ_TO_WIDE = np.linalg.inv(_WIDE_TO_XYZ)

_EPSILON, _KAPPA = 216 / 24389, 24389 / 27  # CIE 15: exact forms of 0.008856 and 903.3


# --- one colour -----------------------------------------------------------------------------


def srgb_to_lab(written: str) -> Lab:
    """CIELAB of a colour written ``#rrggbb``.

    Raises
    ------
    ValueError
        When the text is not ``#`` and six hexadecimal digits.

    Source
    ------
    IEC 61966-2-1:1999 (transfer function, primaries), CIE 15 (CIELAB), white D65.
    """
    if not re.fullmatch("#[0-9a-fA-F]{6}", written):
        raise ValueError(f"{written!r} is not # and six hexadecimal digits, like #5b5d5a")
    code = np.array([int(written[i : i + 2], 16) for i in (1, 3, 5)]) / 255
    linear = np.where(code <= 0.04045, code / 12.92, ((code + 0.055) / 1.055) ** 2.4)
    return one(xyz_to_lab(_SRGB_TO_XYZ @ linear))


def lab_to_srgb(lab: Lab) -> str:
    """The nearest ``#rrggbb`` to a CIELAB colour, clipped by channel to what a screen can show.

    Source
    ------
    IEC 61966-2-1:1999.
    """
    linear = np.clip(_XYZ_TO_SRGB @ lab_to_xyz(np.array(lab)), 0.0, 1.0)
    code = np.where(linear <= 0.0031308, linear * 12.92, 1.055 * linear ** (1 / 2.4) - 0.055)
    red, green, blue = (round(float(channel) * 255) for channel in code)
    return f"#{red:02x}{green:02x}{blue:02x}"


def delta_e_2000(first: Lab, second: Lab) -> float:
    """Colour difference CIEDE2000 with all weights 1; 1 is about the least that eyes notice.

    Source
    ------
    Sharma, Wu and Dalal, Color Res. Appl. 30(1) 21-30, 2005, equations 2-22.
    """
    return float(delta_e_2000_all(np.array(first, float), np.array(second, float)))


def lightness(luminance: float) -> float:
    """CIE lightness L* of a luminance factor Y (white 1).

    Source
    ------
    CIE 15, ISO/CIE 11664-4.
    """
    return float(116.0 * _root(np.array(luminance)) - 16.0)


def one(colour: Colours) -> Lab:
    """Three plain floats from an array of shape ``(3,)``, a negative zero made zero."""
    first, second, third = (float(part) + 0.0 for part in colour)
    return first, second, third


# --- many colours ---------------------------------------------------------------------------


def _root(t: Colours) -> Colours:
    # CIE 15, ISO/CIE 11664-4
    return np.where(t > _EPSILON, np.cbrt(t), (_KAPPA * t + 16.0) / 116.0)


def _cube(f: Colours) -> Colours:
    cubed = f**3
    # The same, solved for t.
    return np.where(cubed > _EPSILON, cubed, (116.0 * f - 16.0) / _KAPPA)


def xyz_to_lab(xyz: Colours) -> Colours:
    """CIELAB of XYZ (white Y = 1), shape ``(..., 3)`` each.

    Source
    ------
    CIE 15.
    """
    f = _root(xyz / _WHITE)
    x, y, z = f[..., 0], f[..., 1], f[..., 2]
    return np.stack([116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)], axis=-1)


def lab_to_xyz(lab: Colours) -> Colours:
    """XYZ (white Y = 1) of CIELAB, shape ``(..., 3)`` each.

    Source
    ------
    CIE 15.
    """
    y = (lab[..., 0] + 16.0) / 116.0
    f = np.stack([y + lab[..., 1] / 500.0, y, y - lab[..., 2] / 200.0], axis=-1)
    return np.asarray(_cube(f) * _WHITE, dtype=np.float64)


def lab_to_bands(lab: Colours) -> Colours:
    """Reflectance, 0 to 1, in a red, a green and a blue band from CIELAB, shape ``(..., 3)`` each.

    The bands are the linear ITU-R BT.2020 primaries. They contain every colour of a mineral
    pigment, and their luminance weights are positive: darker in every band is darker to the eye.

    Source
    ------
    ITU-R BT.2020-2.
    """
    return lab_to_xyz(lab) @ _XYZ_TO_WIDE.T


def bands_to_lab(bands: Colours) -> Colours:
    """CIELAB of reflectance in three bands, shape ``(..., 3)`` each: undoes `lab_to_bands`."""
    return xyz_to_lab(bands @ _WIDE_TO_XYZ.T)


def delta_e_2000_all(first: Colours, second: Colours) -> Colours:
    """CIEDE2000 between CIELAB colours, shape ``(..., 3)`` each, that broadcast; shape ``(...)``.

    Source
    ------
    As `delta_e_2000`.
    """
    L1, a1, b1 = first[..., 0], first[..., 1], first[..., 2]
    L2, a2, b2 = second[..., 0], second[..., 1], second[..., 2]
    stretch = 1.5 - 0.5 * _seventh((np.hypot(a1, b1) + np.hypot(a2, b2)) / 2)
    C1, C2 = np.hypot(stretch * a1, b1), np.hypot(stretch * a2, b2)
    h1, h2 = _hue(stretch * a1, b1), _hue(stretch * a2, b2)
    hueless = C1 * C2 == 0.0
    dh = np.where(hueless, 0.0, (h2 - h1 + 180.0) % 360.0 - 180.0)
    dh = np.where((dh == -180.0) & (h2 > h1), 180.0, dh)
    dL, dC = L2 - L1, C2 - C1
    dH = 2.0 * np.sqrt(C1 * C2) * np.sin(np.radians(dh / 2))
    h = np.where(hueless, h1 + h2, _mean_hue(h1, h2))
    L, C = (L1 + L2) / 2, (C1 + C2) / 2
    S_L = 1.0 + 0.015 * (L - 50.0) ** 2 / np.sqrt(20.0 + (L - 50.0) ** 2)
    S_C = 1.0 + 0.045 * C
    S_H = 1.0 + 0.015 * C * _hue_weight(h)
    turn = np.radians(60.0 * np.exp(-(((h - 275.0) / 25.0) ** 2)))
    R_T = -np.sin(turn) * 2.0 * _seventh(C)
    light, chroma, hue = dL / S_L, dC / S_C, dH / S_H
    square = light**2 + chroma**2 + hue**2 + R_T * chroma * hue
    return np.asarray(np.sqrt(np.maximum(square, 0.0)), dtype=np.float64)


def _seventh(C: Colours) -> Colours:
    # Sharma, Wu and Dalal (2005), equations 4 and 17
    return np.asarray(np.sqrt(C**7 / (C**7 + 25.0**7)), dtype=np.float64)


def _hue(a: Colours, b: Colours) -> Colours:
    return np.degrees(np.arctan2(b, a)) % 360.0


def _mean_hue(h1: Colours, h2: Colours) -> Colours:
    whole = h1 + h2
    across = np.where(whole < 360.0, whole + 360.0, whole - 360.0)
    return np.where(np.abs(h1 - h2) <= 180.0, whole, across) / 2


def _hue_weight(h: Colours) -> Colours:
    """``T`` of CIEDE2000, of hues in degrees.

    Source
    ------
    Sharma, Wu and Dalal (2005), equation 15.
    """
    r = np.radians(h)
    return np.asarray(
        1.0
        - 0.17 * np.cos(r - np.radians(30.0))
        + 0.24 * np.cos(2 * r)
        + 0.32 * np.cos(3 * r + np.radians(6.0))
        - 0.20 * np.cos(4 * r - np.radians(63.0)),
        dtype=np.float64,
    )
