"""Rests push and never pull: reactions of a slab lying loose on them.

The slab's own flexibility between the rests is ``F`` (deflection at rest i for a unit force at
rest j, three nodes pinned). The unknowns are the reactions ``r`` and three rigid motions ``a``:

    minimise  r'F r / 2 - r'(d - g)   with  R'r = b,  r >= 0 where the rest only pushes

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

from ledgerstone.errors import ContactNotSettledError
from ledgerstone.strength._exchange import BoolArray
from ledgerstone.strength._outline import FloatArray

RIDGE = 1e-8  # of the mean flexibility: makes rests that coincide share, and changes nothing else
TIPS = 1e-9  # of the load: out-of-balance that no push can mend
PULLS = 1e-10  # of the load: reaction still called a push
OPENS = 1e-8  # of the largest deflection: overlap still called contact
BALANCE = 1e-8
INWARD = 2e-9  # how far a load is drawn towards the rests' middle, so that no two carry it alone


@dataclass(frozen=True, slots=True)
class Rests:
    """Flexibility of a slab at its rests, made ready for any number of cases.

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


def rests_of(flexibility: FloatArray, rigid: FloatArray, pushes_only: BoolArray) -> Rests:
    """Rests from their flexibility ``F`` (k, k) and pull on the rigid motions ``R`` (k, 3)."""
    mean = float(np.trace(flexibility)) / max(len(flexibility), 1)
    stiffening = mean if mean > 0.0 else 1.0
    ready = flexibility + stiffening * (rigid @ rigid.T) + RIDGE * stiffening * np.eye(len(rigid))
    return Rests(ready, rigid, pushes_only, stiffening, _spans(rigid))


def _spans(rigid: FloatArray) -> bool:
    size = np.linalg.svd(rigid.T @ rigid, compute_uv=False)  # squares of the pull's own
    return bool(len(size) == 3 and size[-1] > 1e-12 * max(size[0], 1e-30))


def imbalance(rests: Rests, pull: FloatArray) -> float:
    """Part of the loads ``pull`` (3,) that no allowed reactions can hold, over the whole of it.

    This is the hull test: nothing is left over just where the resultant lies in the rests' hull.
    """
    left = pull - rests.rigid.T @ _pushed(rests, rests.rigid.T, pull)
    return float(np.linalg.norm(left)) / max(float(np.linalg.norm(pull)), 1e-300)


def settled(rests: Rests, free: FloatArray, pull: FloatArray) -> Balance:
    """Reactions and rigid motions under one load.

    Parameters
    ----------
    free
        ``d - g``: deflection of the pinned slab at each rest, less the rest's gap, shape (k,).
    pull
        ``b``, shape (3,).

    Raises
    ------
    ContactNotSettledError
        If equilibrium, the signs of the reactions or the gaps are not met in the end.
    """
    found = _on_all(rests, free, pull) or _from_least_squares(rests, free, pull)
    _assert_settled(rests, free, pull, found)
    return found


def _solved(rests: Rests, free: FloatArray, pull: FloatArray, touching: BoolArray) -> Balance:
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


def _on_all(rests: Rests, free: FloatArray, pull: FloatArray) -> Balance | None:
    """Balance with every rest in touch, as most slabs lie while they are handled, if it holds."""
    try:
        found = _solved(rests, free, pull, np.ones(len(free), dtype=bool))
    except LinAlgError:
        return None
    pulls, _ = _tolerances(free, pull, rests)
    pushes = float(found.reactions[rests.pushes_only].min(initial=0.0)) >= -pulls
    return found if pushes and _off_balance(rests, pull, found) <= BALANCE else None


def _motion(S: FloatArray, left: FloatArray) -> FloatArray:
    """Rigid motions (3,) that balance what is left; the least ones where rests are in line."""
    motion: FloatArray = np.zeros_like(left)
    with suppress(LinAlgError):
        motion = np.asarray(np.linalg.solve(S, left), dtype=float)
    if np.abs(S @ motion - left).max() > 1e-11 * np.abs(left).max():
        motion = np.asarray(np.linalg.lstsq(S, left, rcond=1e-13)[0], dtype=float)
    return motion


def _overlap(rests: Rests, free: FloatArray, pull: FloatArray, balance: Balance) -> FloatArray:
    """Deflection at each rest less its gap, shape (k,): positive where the slab sinks into it."""
    raised = rests.flexibility @ balance.reactions
    pushed = rests.rigid @ (rests.stiffening * pull + balance.motion)
    return np.asarray(free - raised + pushed)


def _tolerances(free: FloatArray, pull: FloatArray, rests: Rests) -> tuple[float, float]:
    load = float(np.abs(pull).max())
    return PULLS * load, OPENS * (float(np.abs(free).max()) + rests.stiffening * load)


def _from_least_squares(rests: Rests, free: FloatArray, pull: FloatArray) -> Balance:
    """Balance by a primal active set begun at the non-negative least-squares point."""
    pulls, opens = _tolerances(free, pull, rests)
    if rests.pushes_only.any():
        pull = pull + INWARD * (pull[0] * rests.rigid[rests.pushes_only].mean(axis=0) - pull)
    reactions = _starting_point(rests, free, pull)
    touching = (reactions > 0.0) | ~rests.pushes_only
    for _ in range(4 * len(free) + 20):
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
    raise ContactNotSettledError("iterations", 4.0 * len(free) + 20.0)


def _step(
    here: FloatArray, there: FloatArray, touching: BoolArray, falling: BoolArray
) -> tuple[FloatArray, BoolArray]:
    """Move towards ``there`` until the first reaction reaches nothing, and let that rest go."""
    at = np.flatnonzero(falling)
    share = np.maximum(here[at], 0.0) / (np.maximum(here[at], 0.0) - there[at])
    first = int(np.argmin(share))
    moved = here + share[first] * (there - here)
    moved[at[first]] = 0.0
    left = touching.copy()
    left[at[first]] = False
    return moved, left


def _starting_point(rests: Rests, free: FloatArray, pull: FloatArray) -> FloatArray:
    """Reactions near the answer that balance the load, (k,): they push, to the last digit.

    Non-negative least squares meets the balance only nearly. Where the set it picks cannot meet
    it exactly, the corner of the hull test stands in: at most three rests that carry the load.
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


def _pushed(rests: Rests, rows: FloatArray, right: FloatArray) -> FloatArray:
    """Least-squares reactions that do not pull where they may not, shape (k,)."""
    both = ~rests.pushes_only
    columns = np.column_stack([rows, -rows[:, both]])
    found, _ = nnls(columns, right, maxiter=30 * columns.shape[1])
    reactions = found[: len(both)].copy()
    reactions[both] -= found[len(both) :]
    return np.asarray(reactions)


def _off_balance(rests: Rests, pull: FloatArray, found: Balance) -> float:
    left = float(np.abs(rests.rigid.T @ found.reactions - pull).max())
    return left / max(float(np.abs(pull).max()), 1e-300)


def _assert_settled(rests: Rests, free: FloatArray, pull: FloatArray, found: Balance) -> None:
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
