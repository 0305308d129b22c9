"""Which rests touch in each of many cases: few inverses, and small exchanges from the nearest set.

With ``A`` the flexibility, ``R`` each reaction's pull on the rigid motions and ``m`` those motions,
a rest either touches (its overlap ``o`` is nothing) or is apart (its reaction ``r`` is nothing):

    o = c - A r + R m,    R'r = b

Solved once for the reactions of a base set ``B``, the overlaps of the others and the motions,
``v``, this reads ``v = v0 + G y`` with ``y`` the overlaps of ``B`` and the reactions of the others.
``G`` depends on no load and no gap. A case whose rests differ from ``B`` in a set ``D`` asks only
``G[D, D]``.

Source
------
Block principal pivoting, with a single exchange of the worst once blocks have had their turn:
Júdice and Pires, *Computers & Operations Research* 21 (1994), from memory.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import NDArray

from ledgerstone.strength._outline import FloatArray, IntArray

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
    exchanged
        ``G``, shape (k + 3, k): the motions come last.
    by_pull
        What ``b`` adds to ``v0``, shape (k + 3, 3).
    """

    base: BoolArray
    exchanged: FloatArray
    by_pull: FloatArray

    def start(self, wanted: FloatArray, pulls: FloatArray) -> FloatArray:
        """``v0`` of cases, shape (c, k + 3)."""
        found = pulls @ self.by_pull.T - wanted[:, self.base] @ self.exchanged[:, self.base].T
        found[:, :-3] += np.where(self.base, 0.0, wanted)
        return np.asarray(found)


def exchange_of(flexibility: FloatArray, rigid: FloatArray, base: BoolArray) -> Exchange:
    """Solve a flexibility (k, k) for a base set of touching rests (k,).

    Raises
    ------
    LinAlgError
        If the base set does not hold the slab.
    """
    inside, out = np.flatnonzero(base), np.flatnonzero(~base)
    count = len(inside)
    right = np.zeros((count + 3, len(base) + 3))
    right[np.arange(count), inside] = -1.0
    right[:count, out] = -flexibility[np.ix_(inside, out)]
    right[count:, out] = -rigid[out].T
    right[count:, len(base) :] = np.eye(3)
    solved = np.linalg.solve(bordered(flexibility[np.ix_(inside, inside)], rigid[inside]), right)
    both = np.empty((len(base) + 3, len(base) + 3))
    both[inside] = solved[:count]
    both[out] = rigid[out] @ solved[count:] - flexibility[np.ix_(out, inside)] @ solved[:count]
    both[np.ix_(out, out)] -= flexibility[np.ix_(out, out)]
    both[len(base) :] = solved[count:]
    return Exchange(base, both[:, : len(base)], both[:, len(base) :])


@dataclass(frozen=True, slots=True)
class Together:
    """Some cases, each by the exchange whose base is nearest to where it begins.

    Parameters
    ----------
    bases
        Of each case, shape (c, k).
    exchanged
        Of each exchange, shape (g, k + 3, k).
    by
        The exchange of each case, shape (c,).
    start
        ``v0`` of each case, shape (c, k + 3).
    """

    bases: BoolArray
    exchanged: FloatArray
    by: IntArray
    start: FloatArray

    @classmethod
    def of(
        cls,
        exchanges: Sequence[Exchange],
        wanted: FloatArray,
        pulls: FloatArray,
        begin: BoolArray,
    ) -> Self:
        """Make cases ready; ``begin`` (c, k) says which rests are first thought to touch."""
        bases = np.array([one.base for one in exchanges])
        by = np.argmin([(begin ^ base).sum(axis=1) for base in bases], axis=0)
        start = np.empty((len(wanted), len(begin[0]) + 3))
        for k, one in enumerate(exchanges):
            start[by == k] = one.start(wanted[by == k], pulls[by == k])
        return cls(bases[by], np.array([one.exchanged for one in exchanges]), by, start)

    def settled(
        self, pushes_only: BoolArray, nothing: FloatArray, begin: BoolArray
    ) -> tuple[BoolArray, FloatArray]:
        """Rests that touch in each case (c, k), and the values ``v``, as near as the rounds come.

        Parameters
        ----------
        pushes_only
            Shape (k,): the other rests never part.
        nothing
            Reaction, and overlap, that still count as nothing in each case, shape (c, 2).
        begin
            Rests that are first thought to touch, shape (c, k).
        """
        touching = begin.copy()
        values = self.values(np.arange(len(begin)), touching)
        left, here = np.arange(len(begin)), values
        fewest = np.full(len(begin), begin.shape[1] + 1)
        patience = np.zeros(len(begin), dtype=np.intp)
        for _ in range(MOST_ROUNDS):
            pulled = np.where(pushes_only, -here[:, :-3], 0.0) / nothing[left, :1]
            offends = np.where(touching[left], pulled, here[:, :-3] / nothing[left, 1:])
            swaps = offends > 1.0
            many = swaps.sum(axis=1)
            still = many > 0
            left, swaps, offends, many = left[still], swaps[still], offends[still], many[still]
            if not len(left):
                break
            better = many < fewest[left]
            patience[left] = np.where(better, PATIENCE, patience[left] - 1)
            fewest[left] = np.minimum(fewest[left], many)
            worst = np.arange(begin.shape[1]) == offends.argmax(axis=1)[:, None]
            touching[left] ^= np.where((patience[left] >= 0)[:, None], swaps, worst)
            here = self.values(left, touching[left])
            values[left] = here
        return touching, values

    def values(self, cases: IntArray, touching: BoolArray) -> FloatArray:
        """Reactions of what touches, overlaps of what is apart and motions, shape (c, k + 3)."""
        start = self.start[cases]
        differs = self.bases[cases] ^ touching
        many = differs.sum(axis=1)
        widest = int(many.max(initial=0))
        if widest == 0:
            return start
        for low in range(0, widest, ALIKE):
            rows = np.flatnonzero((many > low) & (many <= low + ALIKE))
            if len(rows):
                start[rows] = self._exchanged(self.by[cases[rows]], start[rows], differs[rows])
        return start

    def _exchanged(self, by: IntArray, start: FloatArray, differs: BoolArray) -> FloatArray:
        """Values of cases whose sets differ from their bases by about as much."""
        each = np.arange(len(start))[:, None]
        many = differs.sum(axis=1)
        at = np.argsort(~differs, axis=1, kind="stable")[:, : many.max()]
        real = np.arange(at.shape[1]) < many[:, None]
        part = self.exchanged[by[:, None, None], at[:, :, None], at[:, None, :]]
        if not real.all():
            part *= real[:, :, None] & real[:, None, :]
            part[:, np.arange(at.shape[1]), np.arange(at.shape[1])] += ~real
        other = solved_each(part, np.where(real, -start[each, at], 0.0))
        whole = np.zeros(differs.shape)
        whole[each, at] = other
        for k in np.unique(by).tolist():
            mine = by == k
            start[mine] += whole[mine] @ self.exchanged[k].T
        start[:, :-3][differs] = whole[differs]
        return start


def bordered(flexibility: FloatArray, rigid: FloatArray) -> FloatArray:
    """``[[A, -R], [R', 0]]``, shape (t + 3, t + 3)."""
    return np.block([[flexibility, -rigid], [rigid.T, np.zeros((3, 3))]])


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
