"""Rests push and never pull: reactions of a slab lying loose on them.

The slab's own flexibility between the rests is ``F`` (deflection at rest i for a unit force at
rest j, three nodes pinned). The unknowns are the reactions ``r`` and three rigid motions ``a``:

    minimise  r'F r / 2 - r'(d - g)   with  R'r = b,  r >= 0 if the rest only pushes

``d`` is what the loads alone would do at the rests, ``g`` how low each rest lies, ``R`` each
reaction's pull on the rigid motions and ``b`` the loads'. The multipliers of ``R'r = b`` are ``a``.

Source
------
Nocedal and Wright, *Numerical Optimization*, ch. 16 (active sets for a convex quadratic); Lawson
and Hanson, *Solving Least Squares Problems*, ch. 23 (the starting point). From memory.
"""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass

import numpy as np
from scipy.linalg import LinAlgError, cholesky, solve_triangular
from scipy.linalg.lapack import dposv
from scipy.optimize import nnls

from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.errors import ContactNotSettledError

RIDGE = 1e-8  # of the mean flexibility: rests that coincide then share their load
TIPS = 1e-9  # of the load: imbalance above which the slab tips
PULLS = 1e-10  # of the load: tension still counted as zero
OPENS = 1e-8  # of the largest deflection: overlap still counted as zero
BALANCE = 1e-8  # what rounding may leave
MAX_BLOCKS = 12  # rounds in which blocks of rests change before least squares restart
MOST_STEPS = (4, 20)  # of the active set: for each rest, and beside, which bounds the work
MOST_OF_NNLS = 30  # steps for each column, likewise
INWARD = 2e-9  # relative shift of a load towards the rests' middle, so that no two carry it alone


@dataclass(frozen=True, slots=True)
class SupportFlexibility:
    """Flexibility of a slab at its rests, prepared for any number of cases.

    Parameters
    ----------
    flexibility
        ``F`` with the rigid motions stiffened: positive definite, shape (k, k).
    rigid
        ``R`` in scaled coordinates, shape (k, 3).
    pushes_only
        Shape (k,).
    stiffening
        What the rigid motions are stiffened with: the mean flexibility.
    spans
        Whether the rests hold all three rigid motions.
    """

    flexibility: FloatArray
    rigid: FloatArray
    pushes_only: BoolArray
    stiffening: float

    spans: bool


@dataclass(frozen=True, slots=True)
class Balance:
    """Reactions (k,) and rigid motions (3,) of one case, and which rests are in touch (k,)."""

    reactions: FloatArray
    motion: FloatArray
    touching: BoolArray


def rests_of(
    flexibility: FloatArray, rigid: FloatArray, pushes_only: BoolArray
) -> SupportFlexibility:
    """Prepare rests to be settled under any number of loads.

    Parameters
    ----------
    flexibility
        ``F``: deflection of the pinned slab at each rest for a unit reaction at each, mm/N, (k, k).
    rigid
        ``R``: pull of a unit reaction at each rest on the three rigid motions, shape (k, 3).
    pushes_only
        Which rests cannot hold the slab down, shape (k,).
    """
    mean = float(np.trace(flexibility)) / max(len(flexibility), 1)
    stiffening = mean if mean > 0.0 else 1.0
    ready = flexibility + stiffening * (rigid @ rigid.T) + RIDGE * stiffening * np.eye(len(rigid))
    return SupportFlexibility(ready, rigid, pushes_only, stiffening, _spans(rigid))


def _spans(rigid: FloatArray) -> bool:
    size = np.linalg.svd(rigid.T @ rigid, compute_uv=False)  # squares of the pull's own
    return bool(len(size) == 3 and size[-1] > 1e-12 * max(size[0], 1e-30))


def imbalance(rests: SupportFlexibility, pull: FloatArray) -> float:
    """Share of a load that no allowed reactions can balance, a pure number, 0 to 1.

    This is the hull test: it is 0 exactly where the resultant is in the rests' hull.

    Parameters
    ----------
    pull
        ``b`` of the load, shape (3,).

    Source
    ------
    Non-negative least squares; Lawson and Hanson, ch. 23, from memory.
    """
    left = pull - rests.rigid.T @ _pushed(rests, rests.rigid.T, pull)
    return float(np.linalg.norm(left)) / max(float(np.linalg.norm(pull)), 1e-300)


def balance_of(
    rests: SupportFlexibility,
    free: FloatArray,
    pull: FloatArray,
    begin: BoolArray | None = None,
) -> Balance:
    """Reactions and rigid motions under one load.

    Parameters
    ----------
    free
        ``d - g``: deflection of the pinned slab at each rest, less the rest's gap, shape (k,).
    pull
        ``b``, shape (3,).
    begin
        The rests that are first taken to touch, shape (k,); None is all of them.

    Raises
    ------
    ContactNotSettledError
        If equilibrium, the signs of the reactions or the gaps are not met in the end.
    """
    found = _by_blocks(rests, free, pull, begin) or _from_least_squares(rests, free, pull)
    _assert_settled(rests, free, pull, found)
    return found


def _solved(
    rests: SupportFlexibility, free: FloatArray, pull: FloatArray, touching: BoolArray
) -> Balance:
    """Balance with exactly the given rests in touch."""
    at = np.flatnonzero(touching)
    R = rests.rigid[at]
    right = np.empty((len(at), 4), order="F")
    right[:, :3] = R
    right[:, 3] = free[at] + rests.stiffening * (R @ pull)
    _, both, info = dposv(rests.flexibility[at[:, None], at], right, lower=1, overwrite_b=1)
    if info != 0:
        raise LinAlgError("The rests' flexibility is not positive definite.")
    motion = _motion(R.T @ both[:, :3], pull - R.T @ both[:, 3])
    reactions = np.zeros(len(free))
    reactions[at] = both[:, 3] + both[:, :3] @ motion
    return Balance(reactions, motion, touching)


def _by_blocks(
    rests: SupportFlexibility, free: FloatArray, pull: FloatArray, begin: BoolArray | None
) -> Balance | None:
    """Balance by exchanging all violated rests at once; None if it fails.

    Most slabs touch all their rests while they are handled; in place a few rounds are enough.
    """
    touching = np.ones(len(free), dtype=bool) if begin is None else begin
    pulls, opens = _tolerances(free, pull, rests)
    with suppress(LinAlgError):
        for _ in range(MAX_BLOCKS):
            found = _solved(rests, free, pull, touching)
            overlap = _overlap(rests, free, pull, found)
            parts = touching & rests.pushes_only & (found.reactions < -pulls)
            swaps = parts | (~touching & (overlap > opens))
            if not swaps.any():
                return found if _off_balance(rests, pull, found) <= BALANCE else None
            touching = touching ^ swaps
    return None


def _motion(S: FloatArray, left: FloatArray) -> FloatArray:
    """Rigid motions (3,) that balance what is left; the least ones where rests are in line."""
    motion: FloatArray = np.zeros_like(left)
    with suppress(LinAlgError):
        motion = np.asarray(np.linalg.solve(S, left), dtype=float)
    if np.abs(S @ motion - left).max() > 1e-11 * np.abs(left).max():
        motion = np.asarray(np.linalg.lstsq(S, left, rcond=1e-13)[0], dtype=float)
    return motion


def _overlap(
    rests: SupportFlexibility, free: FloatArray, pull: FloatArray, balance: Balance
) -> FloatArray:
    """Deflection at each rest less its gap, shape (k,): positive where the slab sinks into it."""
    raised = rests.flexibility @ balance.reactions
    pushed = rests.rigid @ (rests.stiffening * pull + balance.motion)
    return np.asarray(free - raised + pushed)


def _tolerances(
    free: FloatArray, pull: FloatArray, rests: SupportFlexibility
) -> tuple[float, float]:
    load = float(np.abs(pull).max())
    return PULLS * load, OPENS * (float(np.abs(free).max()) + rests.stiffening * load)


def _from_least_squares(rests: SupportFlexibility, free: FloatArray, pull: FloatArray) -> Balance:
    """Balance by a primal active set begun at the non-negative least-squares point."""
    pulls, opens = _tolerances(free, pull, rests)
    if rests.pushes_only.any():
        pull = pull + INWARD * (pull[0] * rests.rigid[rests.pushes_only].mean(axis=0) - pull)
    reactions = _starting_point(rests, free, pull)
    touching = (reactions > 0.0) | ~rests.pushes_only
    each, beside = MOST_STEPS
    most = each * len(free) + beside
    for _ in range(most):
        balance = _solved(rests, free, pull, touching)
        falling = touching & rests.pushes_only & (balance.reactions < -pulls)
        if falling.any():
            reactions, touching = _step(reactions, balance.reactions, touching, falling)
            continue
        reactions = balance.reactions
        sunk = np.where(touching, -np.inf, _overlap(rests, free, pull, balance))
        worst = int(np.argmax(sunk))
        if sunk[worst] <= opens:
            return balance
        touching = touching.copy()
        touching[worst] = True
    raise ContactNotSettledError("iterations", float(most))


def _step(
    here: FloatArray, there: FloatArray, touching: BoolArray, falling: BoolArray
) -> tuple[FloatArray, BoolArray]:
    """Move towards ``there`` until the first reaction reaches zero, and release that rest."""
    at = np.flatnonzero(falling)
    share = np.maximum(here[at], 0.0) / (np.maximum(here[at], 0.0) - there[at])
    first = int(np.argmin(share))
    moved = here + share[first] * (there - here)
    moved[at[first]] = 0.0
    left = touching.copy()
    left[at[first]] = False
    return moved, left


def _starting_point(rests: SupportFlexibility, free: FloatArray, pull: FloatArray) -> FloatArray:
    """Reactions near the answer that balance the load, (k,): they push, to the last digit.

    Non-negative least squares meets the balance only nearly. Where the set it picks cannot meet
    it exactly, the vertex of the hull test is used: at most three rests that carry the load.
    """
    lower = cholesky(rests.flexibility, lower=True, check_finite=False)
    wanted = free + rests.stiffening * (rests.rigid @ pull)
    target = solve_triangular(lower, wanted, lower=True, check_finite=False)
    heavy = 1e3 * float(np.sqrt(rests.stiffening))
    rows = np.concatenate([lower.T, heavy * rests.rigid.T])
    found = _pushed(rests, rows, np.concatenate([target, heavy * pull]))
    touching = (found > 0.0) | ~rests.pushes_only
    balance = _solved(rests, free, pull, touching)
    pushes = bool((balance.reactions[rests.pushes_only] >= 0.0).all())
    if pushes and _off_balance(rests, pull, balance) <= PULLS:
        return balance.reactions
    return _pushed(rests, rests.rigid.T, pull)


def _pushed(rests: SupportFlexibility, rows: FloatArray, right: FloatArray) -> FloatArray:
    """Least-squares reactions that do not pull where they may not, shape (k,)."""
    both = ~rests.pushes_only
    columns = np.column_stack([rows, -rows[:, both]])
    found, _ = nnls(columns, right, maxiter=MOST_OF_NNLS * columns.shape[1])
    reactions = found[: len(both)].copy()
    reactions[both] -= found[len(both) :]
    return np.asarray(reactions)


def _off_balance(rests: SupportFlexibility, pull: FloatArray, found: Balance) -> float:
    left = float(np.abs(rests.rigid.T @ found.reactions - pull).max())
    return left / max(float(np.abs(pull).max()), 1e-300)


def _assert_settled(
    rests: SupportFlexibility, free: FloatArray, pull: FloatArray, found: Balance
) -> None:
    load = max(float(np.abs(pull).max()), 1e-300)
    off = _off_balance(rests, pull, found)
    if not off <= BALANCE:
        raise ContactNotSettledError("equilibrium", off)
    least = float(found.reactions[rests.pushes_only].min(initial=0.0)) / load
    if least < -BALANCE:
        raise ContactNotSettledError("reactions", least)
    _, opens = _tolerances(free, pull, rests)
    sunk = float(_overlap(rests, free, pull, found)[rests.pushes_only].max(initial=0.0))
    if sunk > 10.0 * opens:
        raise ContactNotSettledError("gaps", sunk)
