"""The effect of one pigment, fitted to the workshop's own readings of cast tiles.

In each band a pigment moves the mix's K/S from the cement's towards its own (its masstone), in
proportion to its scattering beside the cement's. Beyond a few percent more pigment has less effect,
so a dose ``c`` counts as ``c_s (1 - exp(-c / c_s))``; and on white cement it counts by another
factor than on grey, as the two scatter differently.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import cast

import numpy as np
from scipy.optimize import least_squares

from ledgerstone.shade.colour import Colours, Lab, delta_e_2000_all
from ledgerstone.shade.layer import lab_of_ratio, ratio_of_lab
from ledgerstone.workshop.records import PigmentSample

# Prior of the fit, which counts where readings are few; all are our judgement. A dose that
# saturates about 3-4 % fits what suppliers say ("little further change beyond 5-8 %").
USUAL_SATURATION_PERCENT = 3.5
USUAL_SCATTER_PER_PERCENT = 0.3
_OVER_THE_DARKEST = 1.3  # of the K/S read: where a pigment's own is looked for first
_LEANING = np.array([0.2, 0.2, 0.2, 1.0, 1.0])  # ΔE that a factor e away from the usual counts as
_LOW = np.log([*[1e-3] * 3, *[1e-4] * 3, 1.0, 0.2])
_HIGH = np.log([*[30.0] * 3, *[1e3] * 3, 12.0, 5.0])

DOSES_THAT_PROVE = 3  # with fewer different doses a curve is a guess between its points
UNPROVEN_DELTA_E = 2.0
_PARAMETERS = 8


@dataclass(frozen=True, slots=True)
class PigmentCurve:
    """One pigment's fitted numbers.

    ``scatter`` is S per percent of effective dose (the cement's own is 1), ``masstone`` K/S of the
    pigment alone, both by band; ``on_white`` by how much a dose counts on white cement beside grey;
    ``residual_delta_e`` the root mean square of CIEDE2000 between the
    fit and the readings, raised for what the fit itself used up; ``misses`` one a reading.
    """

    name: str
    scatter: Lab
    masstone: Lab
    saturation_percent: float
    on_white: float
    residual_delta_e: float
    samples: tuple[PigmentSample, ...]
    misses: tuple[float, ...]

    def counted(self, cement: str, dose_percent: Colours) -> Colours:
        """Effective dose on a cement, percent, of a dose in percent."""
        factor = self.on_white if cement == "white" else 1.0
        return factor * effective(dose_percent, self.saturation_percent)

    def dose_counting(self, cement: str, counted: float) -> float:
        """Dose whose effective dose is ``counted``, both in percent; 100 where there is none.

        Source
        ------
        The inverse of ``effective``.
        """
        share = counted / float(self.counted(cement, np.array(np.inf)))
        return -self.saturation_percent * math.log1p(-share) if share < 1.0 else 100.0


def effective(dose_percent: Colours, saturation_percent: float) -> Colours:
    """Effective dose ``c_s (1 - exp(-c / c_s))``, percent of the cement.

    Source
    ------
    Our own choice of a saturating curve.
    """
    return np.asarray(
        -saturation_percent * np.expm1(-dose_percent / saturation_percent), dtype=np.float64
    )


def mixed_ratio(base: Colours, counted: Colours, scatter: Colours, masstone: Colours) -> Colours:
    """K/S of cement with pigments, by band, shape ``(..., 3)``: two-constant Kubelka and Munk.

    Parameters
    ----------
    base
        K/S of the cement, shape ``(..., 3)``.
    counted
        Effective doses, percent, shape ``(..., p)``.
    scatter, masstone
        S per percent, the cement's own being 1, and K/S of each pigment, shape ``(p, 3)`` each.

    Source
    ------
    Allen 1980.
    """
    absorbed = base + counted @ (scatter * masstone)
    return np.asarray(absorbed / (1.0 + counted @ scatter), dtype=np.float64)


def fit_curve(
    name: str, samples: Sequence[PigmentSample], bases: Mapping[str, Lab]
) -> PigmentCurve:
    """Fit one pigment to its readings.

    Parameters
    ----------
    samples
        At least one; each on a cement that ``bases`` has.
    bases
        CIELAB of each cement without pigment, read as the samples were.

    Source
    ------
    Two-constant Kubelka-Munk (Allen 1980); the saturating dose is our own choice.
    """
    base = ratio_of_lab(np.array([bases[s.cement] for s in samples]))
    doses = np.array([[s.dose_percent] for s in samples])
    white = np.array([[s.cement == "white"] for s in samples], float)
    read = np.array([(s.lightness, s.a, s.b) for s in samples])

    def lab(x: Colours) -> Colours:
        counted = effective(doses, np.exp(x[6])) * np.exp(x[7] * white)
        return lab_of_ratio(mixed_ratio(base, counted, np.exp(x[None, :3]), np.exp(x[None, 3:6])))

    def residual(x: Colours) -> Colours:
        return np.concatenate([(lab(x) - read).ravel(), _leaning(x)])

    found = cast("Colours", least_squares(residual, _start(read), bounds=(_LOW, _HIGH)).x)
    misses = delta_e_2000_all(lab(found), read)
    return PigmentCurve(
        name,
        cast("Lab", tuple(np.exp(found[:3]).tolist())),
        cast("Lab", tuple(np.exp(found[3:6]).tolist())),
        float(np.exp(found[6])),
        float(np.exp(found[7])),
        _residual(misses, samples),
        tuple(samples),
        tuple(misses.tolist()),
    )


def _start(read: Colours) -> Colours:
    darkest = ratio_of_lab(read[int(np.argmin(read[:, 0]))])
    own = _OVER_THE_DARKEST * darkest
    usual = [*[USUAL_SCATTER_PER_PERCENT] * 3, *own, USUAL_SATURATION_PERCENT, 1.0]
    return np.clip(np.log(usual), _LOW + 1e-6, _HIGH - 1e-6)


def _leaning(x: Colours) -> Colours:
    """Return the penalty for numbers far from typical ones, in ΔE."""
    usual = np.log([*[USUAL_SCATTER_PER_PERCENT] * 3, USUAL_SATURATION_PERCENT, 1.0])
    return np.asarray((x[[0, 1, 2, 6, 7]] - usual) * _LEANING, dtype=np.float64)


def _residual(misses: Colours, samples: Sequence[PigmentSample]) -> float:
    free = max(len(misses) - _PARAMETERS / 3, 1.0)
    spread = float(np.sqrt(np.sum(misses**2) / free))
    proven = len({s.dose_percent for s in samples}) >= DOSES_THAT_PROVE
    return spread if proven else max(spread, UNPROVEN_DELTA_E)
