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
from ledgerstone.workshop.confirming import confirm, confirm_all
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.entries import entry_of
from ledgerstone.workshop.first_quote import MARGIN, is_bought
from ledgerstone.workshop.loader import read_profile, starting_tables
from ledgerstone.workshop.members import member_at
from ledgerstone.workshop.numerals import number_of
from ledgerstone.workshop.standing import standings
from ledgerstone.workshop.syntax import tables

_ROUNDS: Final = 8  # what was typed stays, so that the rest moves more than in proportion
_NEAR: Final = Decimal("0.005")
_FURTHEST: Final = Decimal(100)  # no price is scaled past this, down or up
_TENTH: Final = Decimal("0.1")
HUNDRED: Final = 100


@dataclass(frozen=True, slots=True)
class FittedMoney:
    """What a maker said that the typical job takes and fetches.

    Attributes
    ----------
    materials, asked
        What is bought for it, and what is asked for it before tax and delivery; None where not
        given, or unreadable.
    """

    materials: Decimal | None = None
    asked: Decimal | None = None


def fit_money(
    draft: ProfileDraft,
    given: Sequence[str],
    mark: str,
    context: QuoteContext,
    typed: Collection[KeyPath],
) -> FittedMoney:
    """Scale every buying price but those that were typed, and set the markup.

    Nothing is done while the profile has faults or the job is sent back, and no markup is set that
    would be below nothing.

    Parameters
    ----------
    given
        What is bought for the job, and what is asked for it; empty where not given.
    """
    materials, asked = (amount_of(text, mark) for text in (*given, "", "")[:2])
    if materials:
        _fit_materials(draft, materials, context, typed)
    job = _job(draft, context) if asked else None
    if asked and job is not None and job.cost and asked >= job.cost:
        draft.put(MARGIN, f"{round((asked / job.cost - 1) * HUNDRED, 1):f}")
        draft.settle()
        if MARGIN in _invented(draft):
            confirm(draft, MARGIN)
    return FittedMoney(materials, asked)


def amount_of(text: str, mark: str) -> Decimal | None:
    """Return an amount of money as people write it; None if it is none above zero."""
    member = member_at(("rates", "hour"))
    entry = text if member is None else entry_of(text, member, mark)
    number = number_of(entry, mark)
    return Decimal(number) if number and Decimal(number) > 0 else None


def _fit_materials(
    draft: ProfileDraft, given: Decimal, context: QuoteContext, typed: Collection[KeyPath]
) -> None:
    """Scale buying prices until the job's materials are as given, or can't come nearer."""
    bought = [p for p in numbers_in(tables(draft.text)) if is_bought(p) and p not in typed]
    scaled = Decimal(1)
    for _ in range(_ROUNDS):
        job = _job(draft, context)
        if job is None or not job.materials:
            return
        factor = given / job.materials
        scaled *= factor
        if abs(factor - 1) < _NEAR or not 1 / _FURTHEST < scaled < _FURTHEST:
            break
        scale(draft, bought, float(factor))
    confirm_all(draft, [path for path in bought if path in _invented(draft)])


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
