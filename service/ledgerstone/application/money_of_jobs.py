"""Buying prices and the markup, so that a typical job takes and fetches what its maker says."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.hours_of_jobs import numbers_in, scale
from ledgerstone.application.typical_jobs import TypicalJob, job_step_by_step
from ledgerstone.errors import ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message, Money
from ledgerstone.price.rounding import HUNDRED
from ledgerstone.workshop.entry.entries import entry_of
from ledgerstone.workshop.form.confirming import confirm, confirm_all
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.first_quote import MARGIN, is_bought
from ledgerstone.workshop.keys.numerals import number_of
from ledgerstone.workshop.reading.loader import read_profile, starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.standing import standings

_ROUNDS: Final = 8  # amounts and prices are rounded, so that a straight line meets it again
_NEAR: Final = Decimal("0.005")
_FURTHEST: Final = Decimal(100)  # no price is scaled past this, down or up
_MUCH: Final = Decimal("0.5")  # of what was given, at prices that were typed


@dataclass(frozen=True, slots=True)
class FittedMoney:
    """What a maker said that the typical job takes and fetches.

    Attributes
    ----------
    materials, asked
        What is bought for it, and what is asked for it before tax and delivery; None where not
        given, or unreadable.
    typed
        What is bought at prices that were typed, where these keep materials from being as given;
        no price was changed then.
    """

    materials: Decimal | None = None
    asked: Decimal | None = None
    typed: Decimal | None = None


def fit_money(
    draft: ProfileDraft,
    given: Sequence[str],
    mark: str,
    context: QuoteContext,
    typed: Collection[KeyPath],
) -> FittedMoney:
    """Scale every buying price but those that were typed, and set the markup.

    Nothing is done while the profile has faults or the job is sent back. No price is changed where
    materials can't be met, and no markup is set that would be below nothing.

    Parameters
    ----------
    given
        What is bought for the job, and what is asked for it; empty where not given.
    typed
        The prices that stay. A file does not tell a price that was typed before it was written
        from one that followed from a job: such a price is scaled with the others.
    """
    materials, asked = (amount_of(text, mark) for text in (*given, "", "")[:2])
    unmet = _fit_materials(draft, materials, context, typed) if materials else None
    job = _job(draft, context) if asked else None
    if asked and job is not None and job.cost and asked >= job.cost:
        draft.put(MARGIN, f"{round((asked / job.cost - 1) * HUNDRED, 1):f}")
        draft.settle()
        if MARGIN in _invented(draft):
            confirm(draft, MARGIN)
    return FittedMoney(materials, asked, unmet)


def why_not_met(fitted: FittedMoney, currency: str) -> Message | None:
    """Say why materials can't be as given: by the prices that were typed, or by far."""
    if fitted.typed is None:
        return None
    why = "typed" if fitted.materials and fitted.typed > _MUCH * fitted.materials else "far"
    return Message("profile-not-met", why=why, typed=Money(currency, fitted.typed))


def amount_of(text: str, mark: str) -> Decimal | None:
    """Return an amount of money as people write it; None if it is none above zero."""
    member = member_at(("rates", "hour"))
    entry = text if member is None else entry_of(text, member, mark)
    number = number_of(entry, mark)
    return Decimal(number) if number and Decimal(number) > 0 else None


def _fit_materials(
    draft: ProfileDraft, given: Decimal, context: QuoteContext, typed: Collection[KeyPath]
) -> Decimal | None:
    """Scale buying prices until the job's materials are as given.

    Returns
    -------
    What is bought at typed prices, where materials can't be met: then nothing is changed.
    """
    bought = [p for p in numbers_in(tables(draft.text)) if is_bought(p) and p not in typed]
    first = now = _materials(draft, context)
    tried, scaled, fixed = ProfileDraft(draft.text), Decimal(1), Decimal(0)
    if not first:
        return None
    for _ in range(_ROUNDS):
        if not now:
            break
        if abs(now / given - 1) < _NEAR:
            _adopt(draft, tried, bought)
            return None
        wanted = (given - fixed) * scaled / (now - fixed) if now > fixed else Decimal(0)
        wanted = min(max(wanted, 1 / _FURTHEST), _FURTHEST)
        if wanted == scaled:
            break
        scale(tried, bought, float(wanted / scaled))
        scaled, now = wanted, _materials(tried, context)
        if now and scaled != 1:  # materials are ``fixed + scaled (first - fixed)``
            fixed = min(max((now - scaled * first) / (1 - scaled), Decimal(0)), now)
    return fixed


def _materials(draft: ProfileDraft, context: QuoteContext) -> Decimal | None:
    """What is bought for the job; None while the profile has faults or the job is sent back."""
    job = _job(draft, context)
    return None if job is None else job.materials


def _adopt(draft: ProfileDraft, tried: ProfileDraft, bought: Sequence[KeyPath]) -> None:
    """Take the prices that were tried; they are the maker's."""
    draft.replace((0, len(draft.text)), tried.text)
    theirs = _invented(draft)
    confirm_all(draft, [path for path in bought if path in theirs])


def _job(draft: ProfileDraft, context: QuoteContext) -> TypicalJob | None:
    """The job by a profile's text; None while that has faults."""
    try:
        workshop = read_profile(draft.text)
    except ProfileError:
        return None
    return job_step_by_step(replace(context, workshop=workshop))


def _invented(draft: ProfileDraft) -> set[KeyPath]:
    found = standings(tables(draft.text), *starting_tables())
    return {path for path, word in found.items() if word == "invented"}
