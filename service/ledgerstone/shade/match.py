"""From a wished colour to the nearest recipe: at most three pigments, weighed in steps."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations, product

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import nnls

from ledgerstone.shade.colour import Colours, Lab, delta_e_2000, delta_e_2000_all
from ledgerstone.shade.layer import ratio_of_lab
from ledgerstone.shade.model import ShadeModel, model_of
from ledgerstone.workshop.doses import most_percent
from ledgerstone.workshop.records import Colouring, Dose, Pigment

MOST_PIGMENTS = 3
ALIKE_DELTA_E = 0.005  # recipes this close are equally near; the plainer one is taken
_STARTS = (0.0, 0.5, 2.0, 5.0)  # doses, percent, from which the search sets out besides
_KEPT = 6  # the starts that lie nearest; no pigment at all always keeps within the limits
_REACHES = (32, 16, 8, 4, 2, 1)  # steps of the scale

Steps = Colours  # whole numbers of the scale's steps, as floats: shape (..., pigments)


@dataclass(frozen=True, slots=True)
class Match:
    """The nearest recipe, what it looks like, and how far (CIEDE2000) that is from the wish."""

    cement: str
    doses: tuple[Dose, ...]
    lab: Lab
    away_delta_e: float


def dose_step_percent(colouring: Colouring) -> float:
    """The least dose that the scale can weigh into the smallest batch, percent of its cement."""
    return colouring.scale_step_g / (colouring.batch_cement_kg * 1000.0) * 100.0


@lru_cache(maxsize=64)  # price, checks and answer ask for the same wish; a pure function's memory
def nearest_recipe(
    wished: Lab, pigments: tuple[Pigment, ...], colouring: Colouring
) -> Match | None:
    """The recipe nearest to a wished colour by CIEDE2000, or none where nothing has been read.

    At most three pigments, together within the limits, each a whole number of the scale's steps,
    on any cement whose colour is known. Of recipes equally near, the one with fewer pigments and
    less of them.
    """
    model = model_of(pigments, colouring)
    found = [
        match
        for cement in sorted(model.bases)
        for names in _blends(model)
        for match in _Blend(model, cement, names, pigments, colouring).nearest(wished)
    ]
    if not found:
        return None
    near = min(match.away_delta_e for match in found) + ALIKE_DELTA_E
    return min((match for match in found if match.away_delta_e <= near), key=_plainness)


def _plainness(match: Match) -> tuple[int, float, float, str]:
    total = sum(dose.percent for dose in match.doses)
    return len(match.doses), round(total, 6), match.away_delta_e, match.cement


def _blends(model: ShadeModel) -> Iterator[tuple[str, ...]]:
    """Sets of pigments, as large as may be: a smaller set is a larger one with a dose of nought."""
    names = sorted(model.curves)
    return combinations(names, min(MOST_PIGMENTS, len(names)))


class _Blend:
    """The search among the doses of a few pigments on one cement."""

    def __init__(
        self,
        model: ShadeModel,
        cement: str,
        names: Sequence[str],
        pigments: Sequence[Pigment],
        colouring: Colouring,
    ) -> None:
        self.model, self.cement, self.names = model, cement, tuple(names)
        self.step_percent = dose_step_percent(colouring)
        self._most = np.array([most_percent([name], pigments, colouring) for name in names])
        self._most_of_all = colouring.most_percent

    def nearest(self, wished: Lab) -> Iterator[Match]:
        """The recipes from which no step in the doses leads nearer to the wished colour."""
        goal = np.array(wished)

        def away(steps: Steps) -> Colours:
            percents = np.maximum(steps, 0.0) * self.step_percent
            labs = self.model.labs(self.cement, self.names, percents)
            return np.where(self._fits(steps), delta_e_2000_all(labs, goal), np.inf)

        starts = self._starts(wished)
        starts = starts[self._fits(starts)]
        nearest = np.argsort(away(starts), kind="stable")[:_KEPT]
        best = _settled(starts[nearest], away)
        for steps in np.unique(best, axis=0):
            yield self._match(steps, wished)

    def _fits(self, steps: Steps) -> NDArray[np.bool_]:
        """Whether doses are not negative and keep within the limits, each shape ``(..., p)``."""
        percents = steps * self.step_percent
        most = np.where(percents > 0, self._most, self._most_of_all).min(axis=-1, initial=np.inf)
        whole = percents.sum(axis=-1)
        return np.asarray((steps >= 0).all(axis=-1) & (whole <= most + 1e-9))

    def _starts(self, wished: Lab) -> Steps:
        p = len(self.names)
        coarse = np.array(list(product(_STARTS, repeat=p))).reshape(-1, p)
        exact = self._exact_percents(wished)
        return np.asarray(np.round(np.vstack([exact, coarse]) / self.step_percent))

    def _exact_percents(self, wished: Lab) -> Colours:
        """Doses that give the wished K/S where any do: the mixing law is linear in what they count.

        From K/S = (B + Σ e K) / (1 + Σ e S) follows Σ e (K - (K/S) S) = K/S - B in each band.
        """
        curves = [self.model.curves[name] for name in self.names]
        goal = ratio_of_lab(np.array(wished))
        base = ratio_of_lab(np.array(self.model.bases[self.cement]))
        pull = [np.array(c.scatter) * (np.array(c.masstone) - goal) / goal for c in curves]
        if not pull:
            return np.zeros((1, 0))
        counted, _ = nnls(np.array(pull).T, (goal - base) / goal)
        return np.array(
            [[c.dose_counting(self.cement, e) for c, e in zip(curves, counted, strict=True)]]
        )

    def _match(self, steps: Steps, wished: Lab) -> Match:
        doses = tuple(
            Dose(pigment=name, percent=round(float(count) * self.step_percent, 9))
            for name, count in zip(self.names, steps, strict=True)
            if count > 0
        )
        lab = self.model.lab(self.cement, doses)
        return Match(self.cement, doses, lab, delta_e_2000(lab, wished))


def _settled(starts: Steps, away: Callable[[Steps], Colours]) -> Steps:
    """Walk from every start ``(n, p)`` to the nearest neighbour until none is nearer.

    Neighbours lie one reach away in any of the doses at once; the reach is halved down to one step.
    """
    moves = np.array(list(product((0, -1, 1), repeat=starts.shape[1]))).reshape(-1, starts.shape[1])
    best = starts
    for reach in _REACHES:
        moving = True
        while moving:
            around = best[:, None, :] + reach * moves
            distance = away(around)
            choice = distance.argmin(axis=1)
            nearer = distance[np.arange(len(best)), choice] < distance[:, 0] - 1e-9
            best = np.where(nearer[:, None], around[np.arange(len(best)), choice], best)
            moving = bool(nearer.any())
    return best
