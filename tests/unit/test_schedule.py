"""The workshop's calendar, and an order's stages laid into it."""

from dataclasses import replace
from datetime import date, datetime, timedelta
from typing import Any

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.schedule import WorkingCalendar, lead_time
from ledgerstone.wording import Message, Temperature, Weekday, english
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import Closure
from support.laid_days import MONDAY, day, days_of, laid, on_an_empty_bench, step, why
from support.slabs import stages_of


@pytest.fixture
def shop(workshop: Workshop) -> Workshop:
    """A bench with nothing on it."""
    return on_an_empty_bench(workshop)


# --- the calendar ---------------------------------------------------------------------------


def test_weekends_holidays_and_closures_are_not_worked() -> None:
    """A week over Easter with two days shut has one worked day."""
    calendar = WorkingCalendar("GB-ENG", closed=[(date(2027, 3, 24), date(2027, 3, 25))])
    week = [date(2027, 3, 23) + timedelta(days=n) for n in range(7)]
    assert [calendar.is_worked(d) for d in week] == [True] + [False] * 6


def test_a_workshop_may_work_on_saturdays() -> None:
    """Which weekdays are worked is the profile's to say."""
    calendar = WorkingCalendar("GB-ENG", weekdays=["saturday"])
    assert calendar.first_worked(MONDAY) == day(5)
    assert calendar.add_working_days(MONDAY, 2) == day(12)


def test_a_holiday_has_a_name() -> None:
    """The calendar can say why nobody works, and nothing of other days."""
    calendar = WorkingCalendar("GB-ENG")
    assert "Good Friday" in str(calendar.holiday(date(2027, 3, 26)))
    assert calendar.holiday(MONDAY) is None


def test_no_working_days_on_is_the_next_worked_day() -> None:
    """Adding none to a Saturday gives the Monday after it."""
    assert WorkingCalendar("GB-ENG").add_working_days(day(5), 0) == day(7)


def test_a_workshop_that_never_works_has_no_day() -> None:
    """A closure without end is stated, not searched for ever."""
    calendar = WorkingCalendar("GB-ENG", closed=[(date(2000, 1, 1), date(2099, 1, 1))])
    with pytest.raises(ValueError, match="no day is worked"):
        calendar.first_worked(MONDAY)


# --- stages ---------------------------------------------------------------------------------


def test_what_is_ordered_today_is_begun_tomorrow(shop: Workshop) -> None:
    """With nothing taken on, hands begin on the next worked day."""
    assert days_of(laid(shop, step("mould", 3))) == [("Making the mould", 1, 1)]
    assert days_of(laid(shop, step("mould", 3), today=day(4))) == [("Making the mould", 7, 7)]


def test_stages_share_a_day_where_they_fit(shop: Workshop) -> None:
    """Mould and pour of 14 hours together fill one day of two pairs of hands."""
    lead = laid(shop, step("mould", 8), step("cast", 6))
    assert days_of(lead) == [("Making the mould", 1, 1), ("Casting", 1, 1)]


def test_a_minute_too_much_goes_to_the_next_day(shop: Workshop) -> None:
    """What does not fit the day ends on the next one."""
    lead = laid(shop, step("mould", 8), step("cast", 6 + 1 / 60))
    assert days_of(lead)[1] == ("Casting", 1, 2)


def test_a_full_day_begins_the_next_stage_on_the_next(shop: Workshop) -> None:
    """After 14 hours nothing is left of the day."""
    lead = laid(shop, step("mould", 14), step("cast", 1))
    assert days_of(lead)[1] == ("Casting", 2, 2)


def test_work_passes_over_the_weekend(shop: Workshop) -> None:
    """Sixty hours of two pairs of hands take five worked days: Tuesday to Monday."""
    assert days_of(laid(shop, step("mould", 60))) == [("Making the mould", 1, 7)]


def test_a_stage_with_nothing_to_do_takes_no_day(shop: Workshop) -> None:
    """A finish of no hours is not in the list, and what follows is not later for it."""
    lead = laid(shop, step("cast", 1), step("finish", 0, least_days=2), step("pack", 1))
    assert days_of(lead) == [("Casting", 1, 1), ("Packing", 1, 1)]


def test_a_wait_runs_on_every_day_to_the_same_hour(shop: Workshop) -> None:
    """Four days from Tuesday end on Saturday; hands take it up on Monday."""
    lead = laid(shop, step("cast", 1, wait_hours=96), step("finish", 1))
    assert days_of(lead) == [
        ("Casting", 1, 1),
        ("Curing under cover", 1, 5),
        ("Turning and finishing", 7, 7),
    ]


def test_a_wait_that_ends_on_a_worked_day_leaves_what_is_left_of_it(shop: Workshop) -> None:
    """Poured by the end of Tuesday, a slab is a whole day old at the end of Wednesday."""
    full = laid(shop, step("cast", 14, wait_hours=24), step("finish", 1))
    half = laid(shop, step("cast", 7, wait_hours=24), step("finish", 7))
    assert days_of(full)[2] == ("Turning and finishing", 3, 3)
    assert days_of(half)[2] == ("Turning and finishing", 2, 2)


def test_a_wait_runs_to_the_minute_and_hands_take_it_up_in_hours(shop: Workshop) -> None:
    """Poured by half past eight, 25 hours end at half past nine; 31 end when hands have gone."""
    turned = [laid(shop, step("cast", 1, wait_hours=h), step("finish", 1)) for h in (25, 31)]
    assert [days_of(lead)[2][1] for lead in turned] == [2, 3]
    assert turned[0].work[1].begins_at == datetime(2026, 11, 4, 9, 30)  # noqa: DTZ001  the wall's


def test_the_longest_wait_of_a_stage_counts(shop: Workshop) -> None:
    """Two slabs under cover wait together."""
    other = replace(step("cast", 1, wait_hours=72), slab=1)
    lead = laid(shop, step("cast", 1, wait_hours=48), other)
    assert days_of(lead)[1] == ("Curing under cover", 1, 4)


def test_a_finish_lasts_as_many_days_as_it_needs(shop: Workshop) -> None:
    """One hour of honing in two working days ends on the second, and fills it."""
    lead = laid(shop, step("finish", 1, least_days=2), step("seal", 1))
    assert days_of(lead) == [("Turning and finishing", 1, 2), ("Sealing", 3, 3)]


def test_the_sealer_waits_for_the_age_from_the_pour(shop: Workshop) -> None:
    """Poured on Tuesday, concrete is 21 days old on a Tuesday three weeks on."""
    seal = step("seal", 1, age_hours=21 * 24)
    lead = laid(shop, step("cast", 1, wait_hours=96), step("finish", 1, wait_hours=72), seal)
    assert days_of(lead)[3:] == [("Drying before sealing", 7, 22), ("Sealing", 22, 22)]
    assert "21 days old" in why(lead.phases[3])


def test_drying_and_age_run_together(shop: Workshop) -> None:
    """Concrete that is old enough by the time it is dry waits no longer."""
    seal = step("seal", 1, age_hours=7 * 24)
    lead = laid(shop, step("cast", 1, wait_hours=96), step("finish", 1, wait_hours=72), seal)
    assert days_of(lead)[3:] == [("Drying before sealing", 7, 10), ("Sealing", 10, 10)]


def test_age_is_waited_for_where_nothing_dries(shop: Workshop) -> None:
    """Without a wait after finishing, the wait for the sealer is a stage of its own."""
    lead = laid(shop, step("cast", 1), step("finish", 1), step("seal", 1, age_hours=7 * 24))
    assert days_of(lead)[2] == ("Drying before sealing", 1, 8)


def test_days_in_hand_are_working_days(shop: Workshop) -> None:
    """Three days kept in hand from a Tuesday end on the Friday, and say so."""
    careful = replace(shop, days=replace(shop.days, buffer=3))
    lead = laid(careful, step("pack", 1))
    assert (lead.ready_on, days_of(lead)[-1]) == (day(4), ("In hand", 1, 4))


@pytest.mark.parametrize(("road", "earliest", "latest"), [(0, 1, 1), (1, 2, 2), (4, 2, 7)])
def test_it_arrives_after_its_days_on_the_road(
    shop: Workshop, road: int, earliest: int, latest: int
) -> None:
    """Collected, it is there when it is ready; a carrier takes from one day to the area's days."""
    lead = laid(shop, step("pack", 1), road=road)
    assert (lead.ready_on, lead.if_ordered_by) == (day(1), MONDAY)
    assert (lead.arrives_earliest, lead.arrives_latest) == (day(earliest), day(latest))


def test_a_closure_is_stated(shop: Workshop) -> None:
    """A stage that waits for the workshop to open again says when it is closed."""
    shut = (Closure(first=day(1), last=day(11), why="a wedding"),)
    closed = replace(shop, calendar=replace(shop.calendar, closures=shut))
    lead = laid(closed, step("mould", 1))
    assert days_of(lead) == [("Making the mould", 14, 14)]
    first, last = (Weekday(day(n), with_year=False) for n in (1, 11))
    assert lead.phases[0].why[-1] == Message("stage-closed", first=first, last=last)


def test_a_day_in_another_year_has_its_year(shop: Workshop) -> None:
    """A wait that ends next year says which year that is."""
    lead = laid(shop, step("cast", 1, wait_hours=24 * 60))
    (wait,) = lead.phases[-1].why
    until = Weekday(date(2027, 1, 2), with_year=True)
    assert wait == Message("stage-cures", until=until, warmth=Temperature(10.0), where="workshop")


def test_reasons_are_sentences_without_hours(
    workshop: Workshop, example_order: dict[str, Any], today: date
) -> None:
    """Every stage of a quote says why in a sentence; hours of work stay in the workshop."""
    stages = stages_of(read_order(example_order, workshop), workshop, today)
    names = [english(stage.name) for stage in stages.lead_time.phases]
    assert len(set(names)) == len(names)
    for stage in stages.lead_time.phases:
        assert why(stage)[0].isupper() or why(stage)[0].isdigit()
        assert why(stage).endswith(".")
        assert "hour" not in why(stage)


def test_the_example_is_ready_when_its_stages_say(
    workshop: Workshop, example_order: dict[str, Any], today: date
) -> None:
    """The example order from Wednesday 25 November 2026, laid by hand from the profile.

    Five days taken on (to 2 Dec); mould on the 3rd, its bead curing overnight; poured on the 4th;
    four days' cover to Tuesday the 8th; ground and filled on the 8th and again on the 9th, a day
    for each filling to harden, finished on the 10th; three days' drying to Sunday the 13th; sealed
    on Monday the 14th; two days to harden; packed on the 16th; three days in hand.
    """
    lead = stages_of(read_order(example_order, workshop), workshop, today).lead_time
    ends = {english(stage.name): stage.ends.day for stage in lead.phases}
    assert ends == {
        "Waiting its turn": 2,
        "Making the mould": 4,
        "Casting": 4,
        "Curing under cover": 8,
        "Turning and finishing": 10,
        "Drying before sealing": 13,
        "Sealing": 14,
        "The sealer hardens": 16,
        "Packing": 16,
        "In hand": 21,
    }
    assert lead.ready_on == date(2026, 12, 21)


def test_a_carrier_drives_while_the_workshop_is_shut(shop: Workshop) -> None:
    """A closure the day after it is ready holds up our own van, and no carrier."""
    shut = (Closure(first=day(2), last=day(4), why="a wedding"),)
    closed = replace(shop, calendar=replace(shop.calendar, closures=shut))
    steps = [step("pack", 1)]
    own = lead_time(steps, closed, (), MONDAY, 1)
    carried = lead_time(steps, closed, (), MONDAY, 1, by_carrier=True)
    assert (own.arrives_latest, carried.arrives_latest) == (day(7), day(2))


def test_equal_pieces_go_round_in_the_moulds_that_there_are(shop: Workshop) -> None:
    """Three pieces of one mould are three loads; the next is cast when the last is out."""
    cast = step("cast", 3, wait_hours=24, pieces=3, table_mm=(900, 500))
    lead = laid(shop, step("mould", 1), cast, step("finish", 3, pieces=3))
    assert len(lead.on_table) == 3
    assert why(lead.phases[1]).startswith("Cast in 3 turns")
