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
        self, wanted: FloatArray, pulls: FloatArray, pulling: FloatArray, opening: FloatArray
    ) -> BoolArray:
        """Rests that touch in each case, shape (c, k), as near as the rounds come to it.

        Parameters
        ----------
        wanted, pulls
            ``c`` and ``b``, one row a case: shapes (c, k) and (c, 3).
        pulling, opening
            Reactions and overlaps that still count as nothing in each case, shape (c,).
        """
        base, turned = self.base, self.exchanged.T
        start = pulls @ self.by_pull.T - wanted[:, base] @ turned[base]
        start[:, ~base] += wanted[:, ~base]
        size = np.stack([pulling, opening], axis=1)
        like_base = np.zeros((1, len(base)), dtype=bool)
        first = self._settled(start[:1], size[:1], like_base)
        others = self._settled(start[1:], size[1:], np.repeat(first, len(start) - 1, axis=0))
        return np.asarray(base ^ np.concatenate([first, others]))

    def _settled(self, start: FloatArray, size: FloatArray, differs: BoolArray) -> BoolArray:
        """Where each case's rests differ from the base, begun from where they may, (c, k)."""
        values = self._values(start, differs)
        left = np.arange(len(start))
        fewest = np.full(len(start), len(self.base) + 1)
        patience = np.zeros(len(start), dtype=np.intp)
        for _ in range(MOST_ROUNDS):
            touch = self.base ^ differs[left]
            pulls = np.where(self.pushes_only, -values[left], 0.0) / size[left, :1]
            offends = np.where(touch, pulls, values[left] / size[left, 1:])
            swaps = offends > 1.0
            many = swaps.sum(axis=1)
            still = many > 0
            left, swaps, offends, many = left[still], swaps[still], offends[still], many[still]
            if not len(left):
                break
            better = many < fewest[left]
            patience[left] = np.where(better, PATIENCE, patience[left] - 1)
            fewest[left] = np.minimum(fewest[left], many)
            worst = np.arange(len(self.base)) == offends.argmax(axis=1)[:, None]
            differs[left] ^= np.where((patience[left] >= 0)[:, None], swaps, worst)
            values[left] = self._values(start[left], differs[left])
        return differs

    def _values(self, start: FloatArray, differs: BoolArray) -> FloatArray:
        """Reactions of what touches and overlaps of what is apart, shape (c, k)."""
        if not differs.any():
            return start.copy()
        many = differs.sum(axis=1)
        at = np.argsort(~differs, axis=1, kind="stable")[:, : many.max()]
        real = np.arange(at.shape[1]) < many[:, None]
        block = self.exchanged[at[:, :, None], at[:, None, :]] * (
            real[:, :, None] & real[:, None, :]
        )
        block[:, np.arange(at.shape[1]), np.arange(at.shape[1])] += ~real
        right = np.where(real, -np.take_along_axis(start, at, axis=1), 0.0)
        other = solved_each(block, right)
        y = np.zeros_like(start)
        np.put_along_axis(y, at, np.where(real, other, 0.0), axis=1)
        return np.where(differs, y, start + y @ self.exchanged.T)


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
    """``[[A, -R], [R', 0]]`` of one set, or of many: shapes (..., t, t) and (..., t, 3)."""
    count = flexibility.shape[-1]
    matrix = np.zeros((*flexibility.shape[:-2], count + 3, count + 3))
    matrix[..., :count, :count] = flexibility
    matrix[..., :count, count:] = -rigid
    matrix[..., count:, :count] = np.swapaxes(rigid, -1, -2)
    return matrix


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
