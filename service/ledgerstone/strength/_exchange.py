"""The rests that touch in each of many cases: one inverse, and exchanges from its set.

With ``A`` the flexibility, ``R`` each reaction's pull on the rigid motions and ``m`` those motions,
a rest either touches (its overlap ``o`` is zero) or is apart (its reaction ``r`` is zero):

    o = c - A r + R m,    R'r = b

Solved once for the reactions of a base set ``B``, the overlaps of the others and the motions,
``v``, this reads ``v = v0 + G y`` with ``y`` the overlaps of ``B`` and the reactions of the others.
``G`` depends on no load and no gap. A case whose rests differ from ``B`` in a set ``D`` asks only
``G[D, D]``. Every ``v`` and ``G`` has one idle place between rests and motions, always zero, which
fills up the sets ``D`` of cases that are solved together.

Source
------
Block principal pivoting, with a single exchange of the worst once blocks have had their turn:
Júdice and Pires, *Computers & Operations Research* 21 (1994), from memory. That of rests side by
side which are sunk into the worst alone is closed, is from our own trials: closed all at once, most
of them pull in the next round.
"""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass
from typing import Self

import numpy as np

from ledgerstone.arrays import BoolArray, FloatArray, IntArray

MAX_ROUNDS_WITHOUT_GAIN = 5  # rounds of whole blocks that may pass without fewer rests that offend
MAX_ROUNDS = 60  # bounds the work: the caller tests what comes of it
ALIKE = 32  # systems whose sizes differ by less are solved together


@dataclass(frozen=True, slots=True)
class Exchange:
    """A flexibility solved for one base set of touching rests.

    Parameters
    ----------
    base
        The set ``B``, shape (k,).
    exchanged
        ``G``, shape (k + 4, k + 1): the motions come last.
    by_pull
        What ``b`` adds to ``v0``, shape (k + 4, 3).
    """

    base: BoolArray
    exchanged: FloatArray
    by_pull: FloatArray

    @classmethod
    def of(cls, flexibility: FloatArray, rigid: FloatArray, base: BoolArray) -> Self:
        """Solve a flexibility for a set of touching rests.

        Parameters
        ----------
        flexibility, rigid, base
            ``A``, shape (k, k), ``R``, shape (k, 3), and ``B``, shape (k,).

        Raises
        ------
        LinAlgError
            If the set does not hold the slab.
        """
        count, touch = len(base), int(np.count_nonzero(base))
        order = np.argsort(~base, kind="stable")
        A, R = flexibility[order[:, None], order], rigid[order]
        right = np.zeros((touch + 3, count + 3))
        np.fill_diagonal(right[:touch, :touch], -1.0)
        right[:touch, touch:count] = -A[:touch, touch:]
        right[touch:, touch:count] = -R[touch:].T
        np.fill_diagonal(right[touch:, count:], 1.0)
        solved = np.linalg.solve(_bordered(A[:touch, :touch], R[:touch]), right)
        apart = R[touch:] @ solved[touch:] - A[touch:, :touch] @ solved[:touch]
        apart[:, touch:count] -= A[touch:, touch:]
        rows = np.concatenate([order, [count + 1, count + 2, count + 3]])
        every = np.concatenate([solved[:touch], apart, solved[touch:]])
        exchanged, by_pull = np.zeros((count + 4, count + 1)), np.zeros((count + 4, 3))
        exchanged[rows[:, None], order] = every[:, :count]
        by_pull[rows] = every[:, count:]
        return cls(base, exchanged, by_pull)

    def start(self, wanted: FloatArray, pulls: FloatArray) -> FloatArray:
        """``v0`` of cases, shape (c, k + 4).

        ``wanted`` is ``c`` of each case, shape (c, k), and ``pulls`` its ``b``, shape (c, 3).

        Source
        ------
        The equations at the head of this module.
        """
        found = pulls @ self.by_pull.T - (wanted * self.base) @ self.exchanged[:, :-1].T
        found[:, : len(self.base)] += wanted * ~self.base
        return np.asarray(found)

    def values(self, start: FloatArray, touching: BoolArray) -> FloatArray:
        """Reactions of what touches, overlaps of what is apart and motions, shape (c, k + 4).

        ``start`` is ``v0`` of each case, shape (c, k + 4), and ``touching`` its set, shape (c, k).

        Source
        ------
        The equations at the head of this module, by the cases' differences from the base.
        """
        row, column = (touching ^ self.base).nonzero()
        many = np.bincount(row, minlength=len(start))
        found, widest = start.copy(), int(many.max(initial=0))
        at = np.full((len(start), widest), len(self.base))
        at[row, np.arange(len(row)) - (np.cumsum(many) - many)[row]] = column
        for low in range(0, widest, ALIKE):
            (rows,) = ((many > low) & (many <= low + ALIKE)).nonzero()
            if len(rows):
                found[rows] = self._exchanged(found[rows], at[rows, : int(many[rows].max())])
        return found

    def _exchanged(self, start: FloatArray, at: IntArray) -> FloatArray:
        """Values of cases that differ from the base in ``at`` (c, t), filled with the idle."""
        idle, row = len(self.base), np.arange(len(at))[:, None]
        part = self.exchanged.ravel().take((idle + 1) * at[:, :, None] + at[:, None, :])
        part.reshape(len(part), -1)[:, :: at.shape[1] + 1] += at == idle
        found = solved_each(part, -start[row, at])
        whole = np.zeros((len(at), idle + 1))
        whole[row, at] = found
        start += whole @ self.exchanged.T
        start[row, at] = found
        return start


def middle_of(sets: BoolArray) -> BoolArray:
    """The one of some sets of rests, shape (c, k), that differs least from all of them, (k,).

    Source
    ------
    Counting: the least sum of differences from the others.
    """
    ones = sets.astype(float)
    apart = ones @ (1.0 - ones.T)
    return np.asarray(sets[int((apart + apart.T).sum(axis=1).argmin())])


def touching_rests(
    exchange: Exchange,
    start: FloatArray,
    pushes_only: BoolArray,
    nothing: FloatArray,
    begin: BoolArray,
) -> tuple[BoolArray, FloatArray]:
    """Find the rests that touch in each case, shape (c, k), and the values ``v``, (c, k + 4).

    They are not certain to be right after `MAX_ROUNDS`: the caller tests them. ``start`` is ``v0``
    of each case, shape (c, k + 4); ``begin`` the rests that are first taken to touch, (c, k).

    Parameters
    ----------
    pushes_only
        Shape (k,): the other rests never part.
    nothing
        Reaction, and overlap, that still count as zero in each case, shape (c, 2).

    Source
    ------
    Block principal pivoting, as at the head of this module.
    """
    count = begin.shape[1]
    touching, sides, left = begin.copy(), begin, np.arange(len(begin))
    here = exchange.values(start, sides)
    values = here.copy()
    pull, sink = -1.0 * pushes_only / nothing[:, :1], 1.0 / nothing[:, 1:]
    fewest = np.full(len(begin), count + 1)
    patience = np.zeros(len(begin), dtype=np.intp)
    for _ in range(MAX_ROUNDS):
        offends = here[:, :count] * np.where(sides, pull[left], sink[left])
        swaps = offends > 1.0
        many = swaps.sum(axis=1)
        (still,) = many.nonzero()
        if not len(still):
            break
        left, swaps, many = left[still], swaps[still], many[still]
        sides, offends = sides[still], offends[still]
        swaps &= sides | _is_largest_beside(np.where(sides, 0.0, offends))
        patience[left] = np.where(many < fewest[left], MAX_ROUNDS_WITHOUT_GAIN, patience[left] - 1)
        fewest[left] = np.minimum(fewest[left], many)
        (single,) = (patience[left] < 0).nonzero()
        if len(single):
            worst = offends[single].argmax(axis=1)
            swaps[single] = np.arange(count) == worst[:, None]
        touching[left] = sides = sides ^ swaps
        here = exchange.values(start[left], sides)
        values[left] = here
    return touching, values


def _is_largest_beside(offends: FloatArray) -> BoolArray:
    """Which rests offend more than the rests before and after them, shape (c, k) each."""
    before, after = offends[:, :-1], offends[:, 1:]
    largest = np.ones(offends.shape, dtype=bool)
    largest[:, 1:] = after >= before
    largest[:, :-1] &= before > after
    return largest


def _bordered(flexibility: FloatArray, rigid: FloatArray) -> FloatArray:
    """``[[A, -R], [R', 0]]``, shape (t + 3, t + 3), from ``A`` (t, t) and ``R`` (t, 3)."""
    count = len(rigid)
    whole = np.zeros((count + 3, count + 3))
    whole[:count, :count] = flexibility
    whole[:count, count:] = -rigid
    whole[count:, :count] = rigid.T
    return whole


def solved_each(matrices: FloatArray, right: FloatArray) -> FloatArray:
    """Solution of each of many systems (c, t, t) for its own right side (c, t); shape (c, t).

    A singular system gives not-a-number, and does not affect the others.

    Source
    ------
    Gaussian elimination with partial pivoting: LAPACK's ``gesv``, through NumPy.
    """
    try:
        return np.asarray(np.linalg.solve(matrices, right[:, :, None])[:, :, 0])
    except np.linalg.LinAlgError:
        found = np.full(right.shape, np.nan)
        for k, (matrix, side) in enumerate(zip(matrices, right, strict=True)):
            with suppress(np.linalg.LinAlgError):
                found[k] = np.linalg.solve(matrix, side)
        return found
