"""Many cases of one slab on its rests, settled together."""

from __future__ import annotations

from contextlib import suppress

import numpy as np
from scipy.linalg import LinAlgError

from ledgerstone.arrays import BoolArray, FloatArray
from ledgerstone.strength import contact
from ledgerstone.strength._exchange import Exchange, middle_of, touching_rests

MAX_TOGETHER = 2_500_000  # cases times rests squared: what one portion may hold, in numbers
SHARPENINGS = 2  # rounds of iterative refinement: our own choice
LESS_ALIKE = 1e-3  # a case on rests of another compliance counts as less alike by so much
FAR, HALF = 32, 0.5  # a new base, where more of the cases than this differ in more rests than that


class Contact:
    """One slab's rests, for many cases at once.

    The first case is settled by itself, unless ``like`` says which rests may touch: the same rests
    of another compliance. From what touches in it, and in cases settled since, the others' are
    found together; each is held to equilibrium, signs and gaps. One that does not meet them is
    settled by itself.
    """

    def __init__(self, rests: contact.SupportFlexibility, like: Contact | None = None) -> None:
        self._rests = rests
        self._flexibility = rests.flexibility / rests.stiffening
        self._exchange: Exchange | None = None
        # settled cases with the rests that touch in them, shape (c, k) each; a case is its
        # ``wanted`` row divided by its length
        self._known: list[tuple[FloatArray, BoolArray]] = (
            [] if like is None else list(like._known)  # noqa: SLF001 - its own kind
        )
        self._others = sum(len(unit) for unit, _ in self._known)

    def balances(
        self, free: FloatArray, pulls: FloatArray, low: BoolArray | None = None
    ) -> list[contact.Balance]:
        """Balance of every case.

        Parameters
        ----------
        free, pulls
            As ``contact.balance_of``, one column a case: shapes (k, c) and (3, c).
        low
            Rests that lie low, shape (k, c): they are first taken not to touch.

        Raises
        ------
        ContactNotSettledError
            As ``contact.balance_of``.
        """
        found: list[contact.Balance | None] = [None] * free.shape[1]
        if not self._known:
            found[0] = self._alone(free[:, 0], pulls[:, 0])
        with suppress(LinAlgError):
            portion = max(1, MAX_TOGETHER // len(free) ** 2)
            for k in range(1 if found[0] else 0, len(found), portion):
                some = slice(k, k + portion)
                apart = None if low is None else low[:, some].T
                found[some] = self._together(free[:, some].T, pulls[:, some].T, apart)
        return [
            balance or contact.balance_of(self._rests, free[:, k], pulls[:, k])
            for k, balance in enumerate(found)
        ]

    def on_the_same(self, free: FloatArray, touching: BoolArray) -> tuple[FloatArray, FloatArray]:
        """Reactions (k, c) and motions (3, c) of self-balanced loads on rests that stay in touch.

        Parameters
        ----------
        free
            As ``contact.balance_of``, shape (k, c).
        touching
            Rests that touch in each case, whatever their reactions' signs, shape (k, c).

        Source
        ------
        The equations at the head of ``_exchange``, with nothing to pull on the motions.
        """
        rests = self._rests
        scaled, none = free.T / rests.stiffening, np.zeros((free.shape[1], 3))
        exchange = self._near(touching.T)
        values = exchange.values(exchange.start(scaled, none), touching.T)
        reactions, motions = _parted(values, touching.T)
        sunk = np.where(touching.T, self._sunk(scaled, reactions, motions), 0.0)
        if np.abs(sunk).max() > contact.OPENS * np.abs(scaled).max():
            found = reactions, motions
            reactions, motions = self._refined(exchange, scaled, none, touching.T, found)
        return reactions.T, rests.stiffening * motions.T

    def _alone(self, free: FloatArray, pull: FloatArray) -> contact.Balance:
        """Balance of one case, from the rests that touch in the one most like it."""
        rests, wanted = self._rests, self._wanted(free[None], pull[None])
        begin = (self._most_like(wanted) | ~rests.pushes_only)[0] if self._known else None
        found = contact.balance_of(rests, free, pull, begin)
        self._known.append((_unit(wanted), found.touching[None]))
        return found

    def _together(
        self, free: FloatArray, pulls: FloatArray, low: BoolArray | None
    ) -> list[contact.Balance | None]:
        """Balance of each row's case, None if it is not met."""
        rests = self._rests
        load, wanted = np.abs(pulls).max(axis=1), self._wanted(free, pulls)
        opening = contact.OPENS * (np.abs(free).max(axis=1) / rests.stiffening + load)
        begin = self._most_like(wanted)
        begin = (begin if low is None else begin & ~low) | ~rests.pushes_only
        nothing = np.column_stack([contact.PULLS * load, opening])
        exchange = self._near(begin)
        start = exchange.start(wanted, pulls)
        touching, values = touching_rests(exchange, start, rests.pushes_only, nothing, begin)
        self._known.append((_unit(wanted), touching))
        reactions, motions = _parted(values, touching)
        for _ in range(SHARPENINGS):
            found = reactions, motions
            reactions, motions = self._refined(exchange, wanted, pulls, touching, found)
            sunk = self._sunk(wanted, reactions, motions)
            off = np.abs(reactions @ rests.rigid - pulls).max(axis=1)
            balanced = off <= contact.BALANCE * load
            closed = np.where(touching, np.abs(sunk), 0.0).max(axis=1) <= opening
            if (balanced & closed).all():
                break
        pushes = np.where(rests.pushes_only, reactions, 0.0).min(axis=1) >= -contact.PULLS * load
        clear = closed & (np.where(touching, 0.0, sunk).max(axis=1) <= opening)
        lengths = rests.stiffening * motions
        return [
            contact.Balance(reactions[k], lengths[k], touching[k]) if good else None
            for k, good in enumerate((pushes & clear & balanced).tolist())
        ]

    def _wanted(self, free: FloatArray, pulls: FloatArray) -> FloatArray:
        """Overlaps of cases on the rests with no reactions, over the stiffening, shape (c, k)."""
        return np.asarray(free / self._rests.stiffening + pulls @ self._rests.rigid.T)

    def _sunk(self, wanted: FloatArray, reactions: FloatArray, motions: FloatArray) -> FloatArray:
        """Overlaps, shape (c, k)."""
        return wanted - reactions @ self._flexibility + motions @ self._rests.rigid.T

    def _near(self, sets: BoolArray) -> Exchange:
        """The exchange that was solved for, or a new one where most sets are far from its base."""
        found = self._exchange
        if found is None or ((sets ^ found.base).sum(axis=1) > FAR).mean() > HALF:
            found = Exchange.of(self._flexibility, self._rests.rigid, middle_of(sets))
            self._exchange = found
        return found

    def _refined(
        self,
        exchange: Exchange,
        wanted: FloatArray,
        pulls: FloatArray,
        touching: BoolArray,
        found: tuple[FloatArray, FloatArray],
    ) -> tuple[FloatArray, FloatArray]:
        """One step of iterative refinement: less the residual of overlaps and balance."""
        reactions, motions = found
        left = np.where(touching, self._sunk(wanted, reactions, motions), 0.0)
        start = exchange.start(left, pulls - reactions @ self._rests.rigid)
        more = _parted(exchange.values(start, touching), touching)
        return reactions + more[0], motions + more[1]

    def _most_like(self, wanted: FloatArray) -> BoolArray:
        """The touching rests of the settled case that is most like each one, (c, k)."""
        seen = np.concatenate([unit for unit, _ in self._known])
        touching = np.concatenate([touching for _, touching in self._known])
        alike = _unit(wanted) @ seen.T
        alike[:, : self._others] -= LESS_ALIKE
        return np.asarray(touching[alike.argmax(axis=1)])


def _parted(values: FloatArray, touching: BoolArray) -> tuple[FloatArray, FloatArray]:
    """Reactions (c, k), zero if nothing touches, and motions (c, 3) of values (c, k + 4)."""
    return np.where(touching, values[:, :-4], 0.0), values[:, -3:]


def _unit(rows: FloatArray) -> FloatArray:
    return np.asarray(rows / np.maximum(np.linalg.norm(rows, axis=1, keepdims=True), 1e-300))
