"""From recipe to colour, for one workshop: its cements and pigments as it has read them."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from ledgerstone.shade.colour import Colours, Lab, delta_e_2000_all, one
from ledgerstone.shade.curve import PigmentCurve, fit_curve, mixed_ratio
from ledgerstone.shade.layer import lab_of_ratio, ratio_of_lab
from ledgerstone.workshop.records import Colouring, Dose, Pigment, Workshop

# Our judgement: two batches of one recipe differ by about ΔE00 1, which is just noticeable; and a
# quarter of the distance to the nearest tile that was read may be wrong.
BATCH_DELTA_E = 1.0
WRONG_PART_OF_THE_WAY = 0.25


@dataclass(frozen=True, slots=True)
class ShadeModel:
    """The cements' colours without pigment and the pigments' curves, by name."""

    bases: Mapping[str, Lab]
    curves: Mapping[str, PigmentCurve]

    def knows(self, cement: str, doses: Sequence[Dose]) -> bool:
        """Return whether this cement, and every pigment in the doses, has been read."""
        return cement in self.bases and all(dose.pigment in self.curves for dose in doses)

    def lab(self, cement: str, doses: Sequence[Dose]) -> Lab:
        """CIELAB of a recipe, dry and unsealed; without pigment, the cement's own reading."""
        if not any(dose.percent for dose in doses):
            return self.bases[cement]
        names = [dose.pigment for dose in doses]
        percents = np.array([dose.percent for dose in doses])
        return one(self.labs(cement, names, percents))

    def labs(self, cement: str, pigments: Sequence[str], percents: Colours) -> Colours:
        """CIELAB ``(..., 3)`` of doses ``(..., p)`` in percent of ``p`` pigments by name."""
        if not pigments:
            return np.broadcast_to(self.bases[cement], (*percents.shape[:-1], 3))
        curves = [self.curves[name] for name in pigments]
        counted = np.stack(
            [curve.counted(cement, percents[..., i]) for i, curve in enumerate(curves)], axis=-1
        )
        base = ratio_of_lab(np.array(self.bases[cement]))
        scatter = np.array([curve.scatter for curve in curves])
        masstone = np.array([curve.masstone for curve in curves])
        return lab_of_ratio(mixed_ratio(base, counted, scatter, masstone))

    def uncertainty_delta_e(self, cement: str, doses: Sequence[Dose]) -> float:
        """Uncertainty of `lab`, CIEDE2000: the piece is farther off about one time in three.

        The root of the sum of squares of the batch-to-batch difference, the largest of the
        pigments' residuals, and a quarter of the distance to the nearest tile read on this cement.

        Source
        ------
        Our judgement.
        """
        here = np.array(self.lab(cement, doses))
        used = [self.curves[dose.pigment] for dose in doses if dose.percent]
        tiles = [np.array([self.bases[cement]])]
        for curve in used:
            read = [s.dose_percent for s in curve.samples if s.cement == cement and s.dose_percent]
            tiles.append(self.labs(cement, (curve.name,), np.array(read).reshape(-1, 1)))
        way = float(delta_e_2000_all(here, np.concatenate(tiles)).min())
        residual = max((curve.residual_delta_e for curve in used), default=0.0)
        return math.hypot(BATCH_DELTA_E, residual, WRONG_PART_OF_THE_WAY * way)


def shade_model(workshop: Workshop) -> ShadeModel:
    """The model of a workshop's cements and pigments, as far as they have been read."""
    return model_of(workshop.pigments, workshop.shade)


@lru_cache(maxsize=4)  # fitting takes tens of milliseconds; the same readings give the same fit
def model_of(pigments: tuple[Pigment, ...], colouring: Colouring) -> ShadeModel:
    """Fit every pigment that has readings on a cement that has one."""
    bases: dict[str, Lab] = {
        base.cement: (base.lightness, base.a, base.b) for base in colouring.bases
    }
    curves = {}
    for pigment in pigments:
        samples = [sample for sample in pigment.samples if sample.cement in bases]
        if samples:
            curves[pigment.name] = fit_curve(pigment.name, samples, bases)
    return ShadeModel(bases, curves)
