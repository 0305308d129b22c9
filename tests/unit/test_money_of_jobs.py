"""Buying prices and the markup that follow from one job's materials and price."""

from datetime import date
from decimal import Decimal

import pytest

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.money_of_jobs import FittedMoney, amount_of, fit_money
from ledgerstone.application.typical_jobs import TypicalJob, job_step_by_step
from ledgerstone.codec.tokens import Tokens
from ledgerstone.workshop import read_profile
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.first_quote import MARGIN
from support.profile_form import begun

BOARD = ("boards", "price_per_sheet")


def context_of(text: str) -> QuoteContext:
    """A context of a profile's text."""
    return QuoteContext(read_profile(text), date(2026, 11, 25), Tokens(("x" * 40,)))


def job_by(draft: ProfileDraft) -> TypicalJob:
    """The job by a profile as it is drafted."""
    return job_step_by_step(context_of(draft.text))


@pytest.mark.parametrize("country", ["GB", "DE", "US"])
@pytest.mark.parametrize("materials", ["70", "155", "420"])
def test_the_job_takes_and_fetches_what_was_told(country: str, materials: str) -> None:
    """Within a hundredth, whatever its start; prices keep their proportion to one another."""
    draft = ProfileDraft(begun(country))
    context = context_of(draft.text)
    was = context.workshop
    fit_money(draft, [materials, "1800"], ".", context, ())
    job, now = job_by(draft), read_profile(draft.text)
    assert float(job.materials or 0) == pytest.approx(float(materials), rel=0.01)
    assert float(job.asked or 0) == pytest.approx(1800, rel=0.001)
    factors = [
        now.boards.price_per_sheet / was.boards.price_per_sheet,
        now.steel.bar_price / was.steel.bar_price,
        now.sealers[0].price_per_l / was.sealers[0].price_per_l,
        now.recipe.constituents[2].price_per_kg / was.recipe.constituents[2].price_per_kg,
    ]
    assert float(max(factors) / min(factors)) == pytest.approx(1, abs=0.01)
    assert now.rates.margin_percent > 0
    assert "boards" not in now.standing.priced


def test_a_price_that_was_typed_stays() -> None:
    """The others make up for it."""
    draft = ProfileDraft(begun("US"))
    draft.put(BOARD, "71")
    fit_money(draft, ["220", ""], ".", context_of(draft.text), {BOARD})
    assert draft.written(BOARD) == "71"
    assert float(job_by(draft).materials or 0) == pytest.approx(220, rel=0.01)


@pytest.mark.parametrize(("board", "materials"), [("900", "150"), ("71", "9000000"), ("71", "1")])
def test_prices_stay_where_materials_can_t_be_met(board: str, materials: str) -> None:
    """By what was typed or by far: none is changed or made the maker's, and it is returned why."""
    draft = ProfileDraft(begun("US"))
    draft.put(BOARD, board)
    before = draft.text
    told = fit_money(draft, [materials, ""], ".", context_of(before), {BOARD})
    assert draft.text == before
    assert told.typed is not None
    assert (told.typed > Decimal(materials)) == (Decimal(materials) < 1000)


def test_what_is_typed_may_be_most_that_is_bought() -> None:
    """The rest shrinks to what is left of it."""
    draft = ProfileDraft(begun("US"))
    context = context_of(draft.text)
    typed = fit_money(ProfileDraft(draft.text), ["1", ""], ".", context, {BOARD}).typed
    assert typed is not None
    wanted = f"{typed * Decimal('1.5'):.2f}"
    fit_money(draft, [wanted, ""], ".", context, {BOARD})
    assert float(job_by(draft).materials or 0) == pytest.approx(float(wanted), rel=0.01)


def test_a_job_asked_below_the_smallest_order_is_as_it_was_told() -> None:
    """What such an order is charged beside it is no part of what was asked."""
    draft = ProfileDraft(begun("US"))
    draft.put(("offer", "smallest_order"), "5000")
    fit_money(draft, ["", "1800"], ".", context_of(draft.text), ())
    assert float(job_by(draft).asked or 0) == pytest.approx(1800, rel=0.001)


def test_no_markup_below_nothing_is_set() -> None:
    """Who asks less than it costs keeps the markup that stood, and it stays nobody's."""
    draft = ProfileDraft(begun("US"))
    before = draft.written(MARGIN)
    told = fit_money(draft, ["", "300"], ".", context_of(draft.text), ())
    assert told == FittedMoney(None, Decimal(300))
    assert draft.written(MARGIN) == before
    assert "rates" in read_profile(draft.text).standing.priced


@pytest.mark.parametrize(
    ("typed", "amount"),
    [("$1,400", "1400"), ("about 150 dollars", "150"), ("140-160", "150"), ("0", None),
     ("-5", None), ("a lot", None), ("", None)],
)  # fmt: skip
def test_an_amount_is_read_as_people_write_it(typed: str, amount: str | None) -> None:
    """What is none above zero is not taken."""
    assert amount_of(typed, ".") == (None if amount is None else Decimal(amount))
