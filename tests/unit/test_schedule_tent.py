"""The heated tent: how long a piece lies in it, what that costs, and where there is none."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from ledgerstone.errors import NotUnderstood
from ledgerstone.message import Message, Temperature
from ledgerstone.price import costs
from ledgerstone.schedule import LeadTime
from ledgerstone.schedule.booking import minute_at
from ledgerstone.schedule.curing import Warmth, aged_by, damp_until
from ledgerstone.wording import english
from ledgerstone.workshop import Workshop
from support.slabs import box, order_of, slab_json, stages_of

TODAY = date(2027, 1, 11)  # the workshop is at 8 °C
POURED = minute_at(TODAY)
SHED = (8.0,) * 12


def test_concrete_in_a_tent_is_as_old_as_its_warmth_makes_it() -> None:
    """EN 1992-1-1 (B.10): at 30 °C a day counts 1.5662 days, at 8 °C 0.5572.

    Worked by hand to four decimals, hence the tolerance.
    """
    for warmth, factor in ((Warmth(SHED), 0.5572), (Warmth(SHED, 30.0), 1.5662)):
        days = (aged_by(POURED, 3.0, warmth) - POURED) / 1440
        assert days == pytest.approx(3 / factor, rel=5e-4)


def test_damp_cover_counts_the_tent_and_then_the_workshop() -> None:
    """Class 2 at 30 °C is 1 day, at 8 °C 2, from memory: after half a day in the tent 1 is left."""
    assert damp_until(POURED, None, "N", Warmth(SHED)) == POURED + 2 * 1440
    half = Warmth(SHED, 30.0, POURED + 720)
    assert damp_until(POURED, None, "N", half) == POURED + 720 + 1440


def laid(workshop: Workshop, *, heated: bool) -> LeadTime:
    """Lay a plain slab, with nothing else booked."""
    order = order_of(workshop, slab_json(box(1400, 600)), heated_curing=heated)
    return stages_of(order, workshop, TODAY, ()).lead_time


def cover_of(lead: LeadTime) -> int:
    """Minutes from the end of the pour until its cover is over."""
    (cover,) = (one for one in lead.work if one.job.step.name.name == "step-cover")
    return cover.wait_ends - cover.ends


def test_a_cover_in_the_tent_lasts_its_own_days(workshop: Workshop) -> None:
    """Two days in place of four, where the strength is there; its stage says how warm it is."""
    ageless = tuple(replace(sealer, youngest_days=0) for sealer in workshop.sealers)
    shop = replace(workshop, sealers=ageless)
    usual, heated = (laid(shop, heated=heated) for heated in (False, True))
    assert (cover_of(usual), cover_of(heated)) == (4 * 1440, 2 * 1440)
    assert heated.ready_on < usual.ready_on
    (stage,) = (one for one in heated.phases if english(one.name) == "Curing under cover")
    cures = stage.why[-1]
    assert (cures.name, cures.values["where"]) == ("stage-cures", "tent")
    assert cures.values["warmth"] == Temperature(30.0)


def test_strength_at_demoulding_is_checked_at_the_tents_warmth(workshop: Workshop) -> None:
    """Two days at 30 °C count 3.13 days (B.10); in the shed they would count 1.11."""
    order = order_of(workshop, slab_json(box(1400, 600)), heated_curing=True)
    (strength,) = stages_of(order, workshop, TODAY).strength
    assert strength.handled.under_cover_days == 2.0
    assert strength.handled.age_days == pytest.approx(2 * 1.5662, rel=5e-4)


def test_the_tent_costs_its_hours_and_its_days(workshop: Workshop) -> None:
    """An hour and a half at 38, and two pieces for two days at 9 each: no less, no more."""
    slab = slab_json(box(1400, 600), quantity=2)
    spent = []
    for heated in (False, True):
        order = order_of(workshop, slab, heated_curing=heated)
        stages = stages_of(order, workshop, TODAY)
        every = costs(
            order, stages.shapes, stages.scheduled.operations, workshop, stages.known.steel
        )
        kept = [cost.amount for cost in every if cost.label != Message("cost-recasts")]
        spent.append(sum(kept, Decimal(0)))
    assert spent[1] - spent[0] == Decimal("1.5") * 38 + 2 * 2 * 9


def test_without_a_tent_it_is_not_understood(workshop: Workshop) -> None:
    """A workshop that has none says so at the member, and says what to do."""
    bare = replace(workshop, tent=None)
    with pytest.raises(NotUnderstood) as refused:
        order_of(bare, slab_json(box(1400, 600)), heated_curing=True)
    (fault,) = refused.value.faults
    assert fault.pointer == "/heated_curing"
    assert "no heated tent" in english(fault.message)
    order_of(bare, slab_json(box(1400, 600)), heated_curing=False)
