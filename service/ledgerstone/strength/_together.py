"""Many cases of one slab on its rests, settled together."""

from __future__ import annotations

import numpy as np
from scipy.linalg import LinAlgError

from ledgerstone.strength import contact
from ledgerstone.strength._exchange import BoolArray, Exchange, bordered, exchange_of, solved_each
from ledgerstone.strength._outline import FloatArray


class Contact:
    """One slab's rests, for many cases at once.

    The first case is settled by itself. The rests that touch in it are the base from which the
    others' are found, together; each of those is then solved straight, and held to equilibrium,
    signs and gaps. One that does not meet them is settled by itself.
    """

    def __init__(self, rests: contact.Rests) -> None:
        self._rests = rests
        self._exchange: Exchange | None = None

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
            found = self._together(exchange, free.T / self._rests.stiffening, pulls.T)
        except LinAlgError:
            found = [None] * free.shape[1]
        return [
            one or contact.settled(self._rests, free[:, k], pulls[:, k])
            for k, one in enumerate(found)
        ]

    def _made_ready(self, free: FloatArray, pull: FloatArray) -> Exchange:
        rests = self._rests
        if self._exchange is None:
            base = contact.settled(rests, free, pull).touching
            flexibility = rests.flexibility / rests.stiffening
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
        touching = exchange.touching(wanted, pulls, contact.PULLS * load, opening)
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

    def _straight(
        self, wanted: FloatArray, pulls: FloatArray, touching: BoolArray
    ) -> tuple[FloatArray, FloatArray]:
        """Reactions (c, k) and motions (c, 3) with the given rests in touch in each case."""
        rests = self._rests
        many = touching.sum(axis=1)
        at = np.argsort(~touching, axis=1, kind="stable")[:, : many.max()]
        real = np.arange(at.shape[1]) < many[:, None]
        both = real[:, :, None] & real[:, None, :]
        block = rests.flexibility[at[:, :, None], at[:, None, :]] * (both / rests.stiffening)
        block[:, np.arange(at.shape[1]), np.arange(at.shape[1])] += ~real
        matrix = bordered(block, rests.rigid[at] * real[:, :, None])
        right = np.concatenate(
            [np.where(real, np.take_along_axis(wanted, at, axis=1), 0.0), pulls], axis=1
        )
        solved = solved_each(matrix, right)
        reactions = np.zeros_like(wanted)
        np.put_along_axis(reactions, at, np.where(real, solved[:, :-3], 0.0), axis=1)
        return reactions, solved[:, -3:]
