"""Ten ordinary jobs that any workshop makes, and five slabs that are known to break.

Common practice, no source: every job here is one that such workshops make every month, and every
breaker one that they have learned not to make. What was found while calibrating stands in
DEVELOPERS.md, "What the calibration taught".
"""

from dataclasses import replace

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.quote import Quote, SentBack, quote
from ledgerstone.stages import StageContext
from ledgerstone.workshop import Workshop
from support.calibration import BREAKERS, JOBS, OUTDOOR, TODAY, in_a_cold_workshop
from support.documents import Json
from support.everyday import EVERYDAY
from support.in_english import in_english


def answered(document: Json, workshop: Workshop) -> Quote | SentBack:
    """Read an order and answer it."""
    return quote(read_order(document, workshop), StageContext(workshop, None, TODAY))


@pytest.mark.parametrize("name", JOBS)
def test_an_ordinary_job_is_quoted(name: str, workshop: Workshop) -> None:
    """Each of the ten is makeable with the demonstration profile, perhaps with cautions."""
    answer = answered(JOBS[name], workshop)
    stops = [in_english(finding) for finding in answer.findings if finding.level == "stops"]
    assert isinstance(answer, Quote), stops


@pytest.mark.parametrize("name", EVERYDAY)
def test_an_everyday_order_loses_no_check(name: str, workshop: Workshop) -> None:
    """Whatever its answer is, no stage of it ends in an internal fault."""
    answer = answered(EVERYDAY[name], workshop)
    assert "check-failed" not in {finding.check for finding in answer.findings}


@pytest.mark.parametrize("name", BREAKERS)
def test_a_known_breaker_is_sent_back(name: str, workshop: Workshop) -> None:
    """Each breaker is stopped, by the checks that should stop it and for no other reason."""
    document, checks = BREAKERS[name]
    answer = answered(document, workshop)
    assert isinstance(answer, SentBack)
    assert {f.check for f in answer.findings if f.level == "stops"} == set(checks)


def test_a_slab_moved_after_a_day_in_a_cold_workshop_is_sent_back(workshop: Workshop) -> None:
    """The outdoor top that is made with care cannot leave its mould at a day old and 5 °C."""
    answer = answered(OUTDOOR, in_a_cold_workshop(workshop))
    assert isinstance(answer, SentBack)
    assert {f.check for f in answer.findings if f.level == "stops"} == {"cracks-when-moved"}


@pytest.mark.parametrize("days", [3.0, 4.0])
def test_two_people_turn_an_outdoor_top_at_three_or_four_days(
    days: float, workshop: Workshop
) -> None:
    """Demoulded at three to four days, mildly warm, sides on: the plainest way suffices.

    Common practice, no source.
    """
    mild = replace(
        workshop,
        days=replace(workshop.days, under_cover=days),
        handling=replace(workshop.handling, workshop_c=(15.0,) * 12),
    )
    answer = answered(OUTDOOR, mild)
    assert isinstance(answer, Quote)
    handled = answer.strength[0].handled
    assert (handled.way.people, handled.way.sides_on, handled.under_cover_days) == (2, True, days)
    assert handled.way.rail is False


def test_a_person_on_a_loose_overhang_is_a_caution(workshop: Workshop) -> None:
    """Nearly every loose overhang tips under 1.5 times a person: it is to be fixed down."""
    answer = answered(JOBS["a 300 mm breakfast overhang"], workshop)
    levels = {finding.check: finding.level for finding in answer.findings}
    assert levels["tips-when-sat-on"] == "caution"
