"""Which rests touch in each of many cases: one inverse, and small exchanges from one set.

With ``A`` the flexibility, ``R`` each reaction's pull on the rigid motions and ``m`` those motions,
a rest either touches (its overlap ``o`` is nothing) or is apart (its reaction ``r`` is nothing):

    o = c - A r + R m,    R'r = b

Solved once for the reactions of a base set ``B`` and the overlaps of the others, ``v``, this reads
``v = v0 + G y`` with ``y`` the overlaps of ``B`` and the reactions of the others. ``G`` depends on
no load and no gap. A case whose rests differ from ``B`` in a set ``D`` asks only ``G[D, D]``.

Source
------
Block principal pivoting, with a single exchange of the worst once blocks have had their turn:
Júdice and Pires, *Computers & Operations Research* 21 (1994), from memory.
"""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from ledgerstone.strength._outline import FloatArray

BoolArray = NDArray[np.bool_]
PATIENCE = 5  # rounds of whole blocks that may pass without fewer rests that offend
MOST_ROUNDS = 60
ALIKE = 24  # systems whose sizes differ by less are solved together


@dataclass(frozen=True, slots=True)
class Exchange:
    """A flexibility solved for one base set of touching rests.

    Parameters
    ----------
    base
        The set ``B``, shape (k,).
    pushes_only
        Shape (k,): the other rests never part.
    exchanged
        ``G``, shape (k, k).
    by_pull
        What ``b`` adds to ``v0``, shape (k, 3).
    """

    base: BoolArray
    pushes_only: BoolArray
    exchanged: FloatArray
    by_pull: FloatArray

    def touching(
        self, wanted: FloatArray, pulls: FloatArray, nothing: FloatArray, begin: BoolArray
    ) -> BoolArray:
        """Rests that touch in each case, shape (c, k), as near as the rounds come to it.

        Parameters
        ----------
        wanted, pulls
            ``c`` and ``b``, one row a case: shapes (c, k) and (c, 3).
        nothing
            Reaction, and overlap, that still count as nothing in each case, shape (c, 2).
        begin
            Rests that are first thought to touch, shape (c, k).
        """
        base, turned = self.base, self.exchanged.T
        start = pulls @ self.by_pull.T - wanted[:, base] @ turned[base]
        start[:, ~base] += wanted[:, ~base]
        differs = base ^ begin
        values = self._values(start, differs)
        left = np.arange(len(start))
        fewest = np.full(len(start), len(base) + 1)
        patience = np.zeros(len(start), dtype=np.intp)
        for _ in range(MOST_ROUNDS):
            touch = base ^ differs[left]
            pulled = np.where(self.pushes_only, -values[left], 0.0) / nothing[left, :1]
            offends = np.where(touch, pulled, values[left] / nothing[left, 1:])
            swaps = offends > 1.0
            many = swaps.sum(axis=1)
            still = many > 0
            left, swaps, offends, many = left[still], swaps[still], offends[still], many[still]
            if not len(left):
                break
            better = many < fewest[left]
            patience[left] = np.where(better, PATIENCE, patience[left] - 1)
            fewest[left] = np.minimum(fewest[left], many)
            worst = np.arange(len(base)) == offends.argmax(axis=1)[:, None]
            differs[left] ^= np.where((patience[left] >= 0)[:, None], swaps, worst)
            values[left] = self._values(start[left], differs[left])
        return np.asarray(base ^ differs)

    def _values(self, start: FloatArray, differs: BoolArray) -> FloatArray:
        """Reactions of what touches and overlaps of what is apart, shape (c, k)."""
        if not differs.any():
            return start.copy()
        other = solved_within(self.exchanged, -start, differs)
        return np.where(differs, other, start + other @ self.exchanged.T)


def exchange_of(
    flexibility: FloatArray, rigid: FloatArray, pushes_only: BoolArray, base: BoolArray
) -> Exchange:
    """Solve a flexibility (k, k) for a base set of touching rests (k,).

    Raises
    ------
    LinAlgError
        If the base set does not hold the slab.
    """
    inside, out = np.flatnonzero(base), np.flatnonzero(~base)
    count = len(inside)
    matrix = bordered(flexibility[np.ix_(inside, inside)], rigid[inside])
    right = np.zeros((count + 3, len(base) + 3))
    right[np.arange(count), inside] = -1.0
    right[:count, out] = -flexibility[np.ix_(inside, out)]
    right[count:, out] = -rigid[out].T
    right[count:, len(base) :] = np.eye(3)
    solved = np.linalg.solve(matrix, right)
    both = np.empty((len(base), len(base) + 3))
    both[inside] = solved[:count]
    both[out] = rigid[out] @ solved[count:] - flexibility[np.ix_(out, inside)] @ solved[:count]
    both[np.ix_(out, out)] -= flexibility[np.ix_(out, out)]
    return Exchange(base, pushes_only, both[:, : len(base)], both[:, len(base) :])


def bordered(flexibility: FloatArray, rigid: FloatArray) -> FloatArray:
    """``[[A, -R], [R', 0]]``, shape (t + 3, t + 3)."""
    return np.block([[flexibility, -rigid], [rigid.T, np.zeros((3, 3))]])


def solved_within(matrix: FloatArray, right: FloatArray, within: BoolArray) -> FloatArray:
    """Solution of the part of a matrix (n, n) that each row of ``within`` (c, n) picks.

    ``right`` and the solution have shape (c, n); what is not picked is nothing. Parts of about one
    size are solved together, filled up with ones on their diagonal. A part that has no single
    solution comes out as not-a-number, and spoils none of the others.
    """
    found = np.zeros_like(right)
    many = within.sum(axis=1)
    for size in np.unique(-(-many // ALIKE) * ALIKE).tolist():
        rows = np.flatnonzero((many <= size) & (many > size - ALIKE))
        if size == 0:
            continue
        at = np.argsort(~within[rows], axis=1, kind="stable")[:, : many[rows].max()]
        real = np.arange(at.shape[1]) < many[rows, None]
        part = matrix[at[:, :, None], at[:, None, :]]
        part *= real[:, :, None]
        part *= real[:, None, :]
        part[:, np.arange(at.shape[1]), np.arange(at.shape[1])] += ~real
        wanted = np.where(real, right[rows[:, None], at], 0.0)
        found[rows[:, None], at] = np.where(real, solved_each(part, wanted), 0.0)
    return found


def solved_for_all(matrix: FloatArray, right: FloatArray) -> FloatArray:
    """Solution of one matrix (t, t) for many right sides (t, c); not-a-number where it has none."""
    try:
        return np.asarray(np.linalg.solve(matrix, right))
    except np.linalg.LinAlgError:
        return np.full(right.shape, np.nan)


def solved_each(matrices: FloatArray, right: FloatArray) -> FloatArray:
    """Solution of each of many systems (c, t, t) for its own right side (c, t); shape (c, t).

    One that has no single solution comes out as not-a-number, and spoils none of the others.
    """
    try:
        return np.asarray(np.linalg.solve(matrices, right[:, :, None])[:, :, 0])
    except np.linalg.LinAlgError:
        found = np.full(right.shape, np.nan)
        for k, (matrix, one) in enumerate(zip(matrices, right, strict=True)):
            with suppress(np.linalg.LinAlgError):
                found[k] = np.linalg.solve(matrix, one)
        return found
