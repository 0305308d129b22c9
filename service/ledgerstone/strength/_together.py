"""Many cases of one slab on its rests, settled together."""

from __future__ import annotations

import numpy as np
from scipy.linalg import LinAlgError

from ledgerstone.strength import contact
from ledgerstone.strength._exchange import (
    BoolArray,
    Exchange,
    bordered,
    exchange_of,
    solved_for_all,
    solved_within,
)
from ledgerstone.strength._outline import FloatArray

MOST_TOGETHER = 2_500_000  # cases times rests squared: what one portion may hold, in numbers


class Contact:
    """One slab's rests, for many cases at once.

    The first case is settled by itself. The rests that touch in it are the base from which the
    others' are found, together; each of those is then solved straight, and held to equilibrium,
    signs and gaps. One that does not meet them is settled by itself.
    """

    def __init__(self, rests: contact.Rests) -> None:
        self._rests = rests
        self._exchange: Exchange | None = None
        self._seen: list[tuple[FloatArray, BoolArray]] = []

    def settled(self, free: FloatArray, pulls: FloatArray) -> list[contact.Balance]:
        """Balance of every case.

        Parameters
        ----------
        free, pulls
            As ``settled``, one column a case: shapes (k, c) and (3, c).

        Raises
        ------
        ContactNotSettledError
            As ``settled``.
        """
        try:
            exchange = self._made_ready(free[:, 0], pulls[:, 0])
            scaled, count = free.T / self._rests.stiffening, free.shape[1]
            portion = max(1, MOST_TOGETHER // len(free) ** 2)
            found = [
                one
                for k in range(0, count, portion)
                for one in self._together(
                    exchange, scaled[k : k + portion], pulls.T[k : k + portion]
                )
            ]
        except LinAlgError:
            found = [None] * free.shape[1]
        return [
            one or contact.settled(self._rests, free[:, k], pulls[:, k])
            for k, one in enumerate(found)
        ]

    def on_the_same(self, free: FloatArray, touching: BoolArray) -> tuple[FloatArray, FloatArray]:
        """Reactions (k, c) and motions (3, c) of self-balanced loads on rests that stay in touch.

        Parameters
        ----------
        free
            As ``settled``, shape (k, c).
        touching
            Rests that touch in each case, whatever their reactions' signs, shape (k, c).
        """
        scaled = free.T / self._rests.stiffening
        none = np.zeros((len(scaled), 3))
        reactions, motions = self._straight(scaled, none, touching.T)
        return reactions.T, self._rests.stiffening * motions.T

    def _made_ready(self, free: FloatArray, pull: FloatArray) -> Exchange:
        rests = self._rests
        if self._exchange is None:
            base = contact.settled(rests, free, pull).touching
            flexibility = rests.flexibility / rests.stiffening
            wanted = free / rests.stiffening + rests.rigid @ pull
            self._seen = [(_unit(wanted[None]), base[None])]
            self._exchange = exchange_of(flexibility, rests.rigid, rests.pushes_only, base)
        return self._exchange

    def _together(
        self, exchange: Exchange, free: FloatArray, pulls: FloatArray
    ) -> list[contact.Balance | None]:
        """Balance of each row's case, None where it is not met; ``free`` is over the stiffening."""
        rests = self._rests
        load = np.abs(pulls).max(axis=1)
        opening = contact.OPENS * (np.abs(free).max(axis=1) + load)
        wanted = free + pulls @ rests.rigid.T
        nothing = np.column_stack([contact.PULLS * load, opening])
        touching = np.ones(wanted.shape, dtype=bool)
        if rests.pushes_only.any():
            touching = exchange.touching(wanted, pulls, nothing, self._most_like(wanted))
        self._seen.append((_unit(wanted), touching))
        reactions, motions = self._straight(wanted, pulls, touching)
        sunk = wanted - reactions @ (rests.flexibility / rests.stiffening) + motions @ rests.rigid.T
        pushes = np.where(rests.pushes_only, reactions, 0.0).min(axis=1) >= -contact.PULLS * load
        clear = np.where(touching, -np.inf, sunk).max(axis=1) <= opening
        balanced = np.abs(reactions @ rests.rigid - pulls).max(axis=1) <= contact.BALANCE * load
        lengths = rests.stiffening * motions
        return [
            contact.Balance(reactions[k], lengths[k], touching[k]) if good else None
            for k, good in enumerate((pushes & clear & balanced).tolist())
        ]

    def _most_like(self, wanted: FloatArray) -> BoolArray:
        """The touching rests of the settled case that is most like each one, (c, k)."""
        seen = np.concatenate([unit for unit, _ in self._seen])
        touching = np.concatenate([touching for _, touching in self._seen])
        return np.asarray(touching[(_unit(wanted) @ seen.T).argmax(axis=1)])

    def _straight(
        self, wanted: FloatArray, pulls: FloatArray, touching: BoolArray
    ) -> tuple[FloatArray, FloatArray]:
        """Reactions (c, k) and motions (c, 3) with the given rests in touch in each case."""
        rests = self._rests
        matrix = bordered(rests.flexibility / rests.stiffening, rests.rigid)
        if touching.all():  # one factor for every case
            solved = solved_for_all(matrix, np.column_stack([wanted, pulls]).T).T
            return solved[:, :-3], solved[:, -3:]
        within = np.column_stack([touching, np.ones((len(touching), 3), dtype=bool)])
        solved = solved_within(matrix, np.column_stack([wanted, pulls]), within)
        return solved[:, :-3], solved[:, -3:]


def _unit(rows: FloatArray) -> FloatArray:
    return np.asarray(rows / np.maximum(np.linalg.norm(rows, axis=1, keepdims=True), 1e-300))
