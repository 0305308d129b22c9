"""How much rests give: beams between two supports, and lines that crush at a rate."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from ledgerstone.arrays import FloatArray


@dataclass(frozen=True, slots=True)
class Beam:
    """A straight beam, simply supported at its ends and on posts between them.

    Parameters
    ----------
    ei_nmm2
        Bending stiffness, N·mm².
    ga_n
        Shear stiffness ``κ G A``, N.
    posts
        Shares of its length where a post stands; the beam is taken as cut there.
    """

    ei_nmm2: float
    ga_n: float
    posts: tuple[float, ...] = ()

    def compliance(self, length_mm: float, at_mm: FloatArray) -> FloatArray:
        """Deflection at places (k,) along the beam for unit loads at each, mm/N, shape (k, k).

        Source
        ------
        As ``_span``; between posts each span is simply supported.
        """
        found = np.zeros((len(at_mm), len(at_mm)))
        ends = [0.0, *(share * length_mm for share in self.posts), length_mm]
        for start, end in pairwise(ends):
            inside = np.flatnonzero((at_mm >= start) & (at_mm <= end))
            local = np.clip(at_mm[inside] - start, 0.0, end - start)
            found[np.ix_(inside, inside)] = self._span(end - start, local)
        return found

    def _span(self, span_mm: float, at_mm: FloatArray) -> FloatArray:
        """Compliance of one simply supported span.

        Source
        ------
        Timoshenko's beam: ``x b (L² - b² - x²) / 6 E I L + x b / κ G A L`` for ``x <= a``, with
        ``b = L - a``; strength of materials.
        """
        near = np.minimum(at_mm[:, None], at_mm[None, :])
        far = span_mm - np.maximum(at_mm[:, None], at_mm[None, :])
        bent = near * far * (span_mm**2 - far**2 - near**2) / (6.0 * self.ei_nmm2 * span_mm)
        return np.asarray(bent + near * far / (self.ga_n * span_mm))


def crushing(rate_n_per_mm2: float, at_mm: FloatArray) -> FloatArray:
    """Compliance of a line that gives at a rate, mm/N, shape (k, k): diagonal.

    Parameters
    ----------
    rate_n_per_mm2
        Force for each mm of the line and mm of sinking, N/mm².
    at_mm
        Places along the line, mm, shape (k,). Each takes half the distance to its neighbours.

    Source
    ------
    A Winkler foundation, its springs lumped at the places; from memory.
    """
    order = np.argsort(at_mm, kind="stable")
    gaps = np.diff(at_mm[order])
    share = np.empty(len(at_mm))
    share[order] = 0.5 * (np.append(gaps, 0.0) + np.insert(gaps, 0, 0.0))
    return np.diag(1.0 / (rate_n_per_mm2 * np.maximum(share, 1.0)))
