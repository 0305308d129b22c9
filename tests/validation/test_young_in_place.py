"""A slab leaves no sooner than its concrete bears what lies on it for good."""

from datetime import date

import pytest

from ledgerstone.papers.job import Job
from ledgerstone.quote import Quote
from ledgerstone.schedule.ages import ages_of
from ledgerstone.strength.concrete import tensile_growth
from ledgerstone.workshop import Workshop
from support.calibration import HOB, on_units
from support.jobs import cards_of
from support.slabs import box, slab_json
from support.whole_orders import answered, in_place

SHELF = slab_json(
    box(1440, 600), use="shelf", finish={"surface": "as-cast", "sealer": "matt"},
    rests={"kind": "ends", "depth": 40},
)  # fmt: skip


def test_a_shelf_of_1440_uses_most_of_it_under_an_even_load(workshop: Workshop) -> None:
    """By hand: 2.46 kN/m² over an effective span of 1400 mm (5.3.2.2), 2.26 MPa as a beam.

    EN 1992-1-1 3.1.8: 2.55 MPa are trusted at 28 days, 0.80 of it after 7.8 days of 20 °C.
    """
    used = in_place(workshop, SHELF)["even-load"]
    assert used.stress_mpa == pytest.approx(2.26, rel=0.03)
    assert 0.80 < used.utilisation <= 1.0


def test_it_stays_in_the_workshop_until_it_carries_that(workshop: Workshop) -> None:
    """Ordered in November it waits beyond what its sealer asks: on the day it is strong enough."""
    answer = answered(workshop, SHELF)
    assert isinstance(answer, Quote)
    used = in_place(workshop, SHELF)["even-load"].utilisation
    age = ages_of(answer.lead_time, 0, workshop)[answer.lead_time.ready_on]
    assert tensile_growth(age, "N") >= used
    sooner = answered(workshop, {**SHELF, "outline": box(1200, 600)})
    assert isinstance(sooner, Quote)
    assert sooner.lead_time.ready_on < answer.lead_time.ready_on
    assert any(one.phase == "harden" for one in answer.lead_time.phases)


def test_the_carry_card_says_from_when_people_may_be_on_it(workshop: Workshop) -> None:
    """The dated sentence of the quote stands on the crate's card."""
    run = slab_json(box(2400, 620), HOB, rests=on_units(600, 300, (600, "hob"), 900, front=20))
    answer = answered(workshop, run, delivery={"kind": "fitted", "postcode": "HR9 7XX"})
    assert isinstance(answer, Quote)
    assert answer.lead_time.ready_on > date(2026, 12, 1)
    card = str(cards_of(Job("Q", answer, workshop))[0])
    assert "Nobody" in card
    assert "2027" in card
