"""The recipe nearest to a target colour: at most three pigments, weighed in steps."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations, product

import numpy as np
from scipy.optimize import nnls

from ledgerstone.shade.colour import Colours, Lab, delta_e_2000, delta_e_2000_all
from ledgerstone.shade.layer import ratio_of_lab
from ledgerstone.shade.model import ShadeModel, model_of
from ledgerstone.workshop.records import Colouring, Dose, Pigment
from ledgerstone.workshop.records.doses import most_percent

MAX_PIGMENTS = 3
ALIKE_DELTA_E = 0.005  # recipes this close are equally near; the plainer one is taken
_STARTS = (0.0, 0.5, 2.0, 5.0)  # doses, percent, from which the search sets out besides
_KEPT = 3  # starts of one blend, the nearest
_SEARCHED = 12  # blends, those with the nearest start
_REACH_PERCENT, _REACH_STEPS = 1.6, 32  # how far the search looks at first: the farther of both

ScaleSteps = Colours  # whole numbers of the scale's steps, as floats: shape (..., pigments)


@dataclass(frozen=True, slots=True)
class Match:
    """The nearest recipe, what it looks like, and how far (CIEDE2000) that is from the wish."""

    cement: str
    doses: tuple[Dose, ...]
    lab: Lab
    away_delta_e: float


def dose_step_percent(colouring: Colouring, scale_step_kg: float) -> float:
    """The smallest dose that the scale can weigh into the smallest batch, percent of its cement.

    Source
    ------
    Arithmetic; scale and batch are the profile's.
    """
    return scale_step_kg / colouring.batch_cement_kg * 100.0


@lru_cache(maxsize=64)  # price, checks and answer need the same match; the function is pure
def nearest_recipe(
    target: Lab, pigments: tuple[Pigment, ...], colouring: Colouring, scale_step_kg: float
) -> Match | None:
    """The recipe nearest to a target colour by CIEDE2000; None if no colour has been read.

    At most three pigments, together within the limits, each a whole number of the scale's steps,
    on any cement whose colour is known. Of recipes equally near, the one with fewer pigments and
    less of them.
    """
    blends = list(_blends(target, pigments, colouring, scale_step_kg))
    blends.sort(key=lambda blend: float(blend.starts_away[0]))
    found = [match for blend in blends[:_SEARCHED] for match in blend.nearest()]
    if not found:
        return None
    near = min(match.away_delta_e for match in found) + ALIKE_DELTA_E
    return min((match for match in found if match.away_delta_e <= near), key=_plainness)


def _plainness(match: Match) -> tuple[int, float, float, str]:
    total = sum(dose.percent for dose in match.doses)
    return len(match.doses), round(total, 6), match.away_delta_e, match.cement


def _blends(
    target: Lab, pigments: Sequence[Pigment], colouring: Colouring, scale_step_kg: float
) -> Iterator[_Blend]:
    """Every set of pigments on every cement, as large as may be: a dose may be zero.

    Carbon black, even a trace, lowers the limit for all; so sets without it are tried beside.
    """
    model = model_of(tuple(pigments), colouring)
    read = [pigment for pigment in pigments if pigment.name in model.curves]
    shelves = (read, [pigment for pigment in read if pigment.kind != "carbon"])
    sets = dict.fromkeys(
        names
        for shelf in shelves
        for names in combinations(sorted(p.name for p in shelf), min(MAX_PIGMENTS, len(shelf)))
    )
    for cement, names in product(sorted(model.bases), sets):
        most = most_percent(names, pigments, colouring)
        step = dose_step_percent(colouring, scale_step_kg)
        yield _Blend(model, cement, names, target=target, most_percent=most, step_percent=step)


class _Blend:
    """The search among the doses of a few pigments on one cement, all in steps of the scale."""

    def __init__(
        self,
        model: ShadeModel,
        cement: str,
        names: Sequence[str],
        *,
        target: Lab,
        most_percent: float,
        step_percent: float,
    ) -> None:
        self.model, self.cement, self.names, self.target = model, cement, tuple(names), target
        self.step_percent = step_percent
        self.most_steps = int(most_percent / step_percent + 1e-9)
        starts = self._starts()
        away = self.away(starts)
        nearest = np.argsort(away, kind="stable")[:_KEPT]
        fits = np.isfinite(away[nearest])  # no pigment at all always does
        self.starts, self.starts_away = starts[nearest][fits], away[nearest][fits]

    def nearest(self) -> Iterator[Match]:
        """The recipes from which no step in the doses leads nearer to the target colour."""
        for steps in np.unique(_settled(self.starts, self.away, self._reach()), axis=0):
            yield self._match(steps)

    def _reach(self) -> int:
        """Return how many steps the search looks ahead at first."""
        return max(_REACH_STEPS, round(_REACH_PERCENT / self.step_percent))

    def away(self, steps: ScaleSteps) -> Colours:
        """Return CIEDE2000 from the target for steps ``(..., p)``; infinite beyond a limit."""
        fits = (steps >= 0).all(axis=-1) & (steps.sum(axis=-1) <= self.most_steps)
        percents = np.maximum(steps, 0.0) * self.step_percent
        labs = self.model.labs(self.cement, self.names, percents)
        return np.where(fits, delta_e_2000_all(labs, np.array(self.target)), np.inf)

    def _starts(self) -> ScaleSteps:
        p = len(self.names)
        coarse = np.array(list(product(_STARTS, repeat=p)))
        return np.asarray(np.round(np.vstack([self._exact_percents(), coarse]) / self.step_percent))

    def _exact_percents(self) -> Colours:
        """Doses ``(1, p)`` that give the target K/S, if any do: it is linear in what they count.

        From K/S = (B + Σ e K) / (1 + Σ e S) follows Σ e (K - (K/S) S) = K/S - B in each band.
        """
        curves = [self.model.curves[name] for name in self.names]
        goal = ratio_of_lab(np.array(self.target))
        base = ratio_of_lab(np.array(self.model.bases[self.cement]))
        pull = [np.array(c.scatter) * (np.array(c.masstone) - goal) / goal for c in curves]
        if not pull:
            return np.zeros((1, 0))
        counted, _ = nnls(np.array(pull).T, (goal - base) / goal)
        return np.array(
            [[c.dose_counting(self.cement, e) for c, e in zip(curves, counted, strict=True)]]
        )

    def _match(self, steps: ScaleSteps) -> Match:
        doses = tuple(
            Dose(pigment=name, percent=round(float(count) * self.step_percent, 9))
            for name, count in zip(self.names, steps, strict=True)
            if count > 0
        )
        lab = self.model.lab(self.cement, doses)
        return Match(self.cement, doses, lab, delta_e_2000(lab, self.target))


def _settled(starts: ScaleSteps, away: Callable[[ScaleSteps], Colours], reach: int) -> ScaleSteps:
    """Walk from every start ``(n, p)`` to the nearest neighbour until none is nearer.

    Neighbours lie one reach away in any of the doses at once; the reach is halved down to one step.
    """
    moves = np.array(list(product((0.0, -1.0, 1.0), repeat=starts.shape[1])))
    best = starts
    while reach:
        moving = True
        while moving:
            around = best[:, None, :] + reach * moves
            distance = away(around)
            choice = distance.argmin(axis=1)
            nearer = distance[np.arange(len(best)), choice] < distance[:, 0] - 1e-9
            best = np.where(nearer[:, None], around[np.arange(len(best)), choice], best)
            moving = bool(nearer.any())
        reach //= 2
    return best
