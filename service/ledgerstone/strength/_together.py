"""Many cases of one slab on its rests, settled together."""

from __future__ import annotations

import numpy as np
from scipy.linalg import LinAlgError

from ledgerstone.strength import contact
from ledgerstone.strength._exchange import BoolArray, Exchange, Together, exchange_of
from ledgerstone.strength._outline import FloatArray

MOST_TOGETHER = 2_500_000  # cases times rests squared: what one portion may hold, in numbers
FAR = 10  # rests in which a case may differ from the nearest base before it gets one of its own
MOST_BASES = 6
SHARPENINGS = 2


class Contact:
    """One slab's rests, for many cases at once.

    The first case is settled by itself, unless ``like`` says which rests may touch. From what
    touches in it, and in cases settled since, the others' are found together; each is held to
    equilibrium, signs and gaps. One that does not meet them is settled by itself.
    """

    def __init__(self, rests: contact.Rests, like: Contact | None = None) -> None:
        self._rests = rests
        self._like = like
        self._flexibility = rests.flexibility / rests.stiffening
        self._exchanges: list[Exchange] = []
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
        found: list[contact.Balance | None] = [None] * free.shape[1]
        try:
            self._make_ready(free[:, 0], pulls[:, 0])
            portion = max(1, MOST_TOGETHER // len(free) ** 2)
            for k in range(0, len(found), portion):
                some = slice(k, k + portion)
                found[some] = self._together(free[:, some].T, pulls[:, some].T)
        except LinAlgError:
            pass
        return [
            one or contact.settled(self._rests, free[:, k], pulls[:, k])
            for k, one in enumerate(found)
        ]

    @property
    def known(self) -> tuple[list[tuple[FloatArray, BoolArray]], list[BoolArray]]:
        """Settled cases with the rests that touch in them, and the bases solved for."""
        return list(self._seen), [one.base for one in self._exchanges]

    def on_the_same(self, free: FloatArray, touching: BoolArray) -> tuple[FloatArray, FloatArray]:
        """Reactions (k, c) and motions (3, c) of self-balanced loads on rests that stay in touch.

        Parameters
        ----------
        free
            As ``settled``, shape (k, c).
        touching
            Rests that touch in each case, whatever their reactions' signs, shape (k, c).
        """
        rests = self._rests
        scaled, none = free.T / rests.stiffening, np.zeros((free.shape[1], 3))
        self._add_bases(touching.T)
        reactions, motions = self._solved(scaled, none, touching.T)
        found = self._sharper(scaled, none, touching.T, reactions, motions)
        return found[0].T, rests.stiffening * found[1].T

    def _make_ready(self, free: FloatArray, pull: FloatArray) -> None:
        """Solve for a first base: what touched under the same slab before, or in the first case."""
        rests = self._rests
        if self._seen:
            return
        bases: list[BoolArray] = []
        if self._like is not None:
            self._seen, bases = self._like.known
        if not self._seen:
            base = contact.settled(rests, free, pull).touching
            wanted = free / rests.stiffening + rests.rigid @ pull
            self._seen, bases = [(_unit(wanted[None]), base[None])], [base]
        self._exchanges = [exchange_of(self._flexibility, rests.rigid, base) for base in bases]

    def _together(self, free: FloatArray, pulls: FloatArray) -> list[contact.Balance | None]:
        """Balance of each row's case, None where it is not met."""
        rests = self._rests
        scaled, load = free / rests.stiffening, np.abs(pulls).max(axis=1)
        opening = contact.OPENS * (np.abs(scaled).max(axis=1) + load)
        wanted = scaled + pulls @ rests.rigid.T
        begin = self._most_like(wanted) | ~rests.pushes_only
        self._add_bases(begin)
        cases = Together.of(self._exchanges, wanted, pulls, begin)
        nothing = np.column_stack([contact.PULLS * load, opening])
        touching, values = cases.settled(rests.pushes_only, nothing, begin)
        self._seen.append((_unit(wanted), touching))
        reactions, motions = np.where(touching, values[:, :-3], 0.0), values[:, -3:]
        for _ in range(SHARPENINGS):
            sunk = self._sunk(wanted, reactions, motions)
            close = np.where(touching, np.abs(sunk), 0.0).max(axis=1) <= opening
            off = np.abs(reactions @ rests.rigid - pulls).max(axis=1)
            if (close & (off <= contact.BALANCE * load)).all():
                break
            reactions, motions = self._sharper(wanted, pulls, touching, reactions, motions)
        pushes = np.where(rests.pushes_only, reactions, 0.0).min(axis=1) >= -contact.PULLS * load
        sunk = self._sunk(wanted, reactions, motions)
        clear = np.where(touching, np.abs(sunk), sunk).max(axis=1) <= opening
        balanced = np.abs(reactions @ rests.rigid - pulls).max(axis=1) <= contact.BALANCE * load
        lengths = rests.stiffening * motions
        return [
            contact.Balance(reactions[k], lengths[k], touching[k]) if good else None
            for k, good in enumerate((pushes & clear & balanced).tolist())
        ]

    def _sunk(self, wanted: FloatArray, reactions: FloatArray, motions: FloatArray) -> FloatArray:
        """Overlaps, shape (c, k)."""
        return wanted - reactions @ self._flexibility + motions @ self._rests.rigid.T

    def _solved(
        self, wanted: FloatArray, pulls: FloatArray, touching: BoolArray
    ) -> tuple[FloatArray, FloatArray]:
        """Reactions (c, k) and motions (c, 3) with the given rests in touch in each case."""
        cases = Together.of(self._exchanges, wanted, pulls, touching)
        values = cases.values(np.arange(len(wanted)), touching)
        return np.where(touching, values[:, :-3], 0.0), values[:, -3:]

    def _sharper(
        self,
        wanted: FloatArray,
        pulls: FloatArray,
        touching: BoolArray,
        reactions: FloatArray,
        motions: FloatArray,
    ) -> tuple[FloatArray, FloatArray]:
        """The same, less what rounding left of the overlaps and out of balance."""
        left = np.where(touching, self._sunk(wanted, reactions, motions), 0.0)
        more = self._solved(left, pulls - reactions @ self._rests.rigid, touching)
        return reactions + more[0], motions + more[1]

    def _most_like(self, wanted: FloatArray) -> BoolArray:
        """The touching rests of the settled case that is most like each one, (c, k)."""
        seen = np.concatenate([unit for unit, _ in self._seen])
        touching = np.concatenate([touching for _, touching in self._seen])
        return np.asarray(touching[(_unit(wanted) @ seen.T).argmax(axis=1)])

    def _add_bases(self, begin: BoolArray) -> None:
        """Solve for more bases where several cases begin far from those there are."""
        while len(self._exchanges) < MOST_BASES:
            differs = [(begin ^ one.base).sum(axis=1) for one in self._exchanges]
            far = begin[np.min(differs, axis=0) > FAR] if differs else begin
            if differs and len(far) < 3:
                return
            apart = far.astype(float) @ (1.0 - far.T) + (1.0 - far) @ far.T.astype(float)
            base = far[int(apart.sum(axis=1).argmin())]
            made = exchange_of(self._flexibility, self._rests.rigid, base)
            self._exchanges.append(made)


def _unit(rows: FloatArray) -> FloatArray:
    return np.asarray(rows / np.maximum(np.linalg.norm(rows, axis=1, keepdims=True), 1e-300))
