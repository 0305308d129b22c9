"""The day plan, the rail and the repair pot: what a job sheet has for the hands that use it."""

from dataclasses import replace
from datetime import date
from typing import Any

import numpy as np

from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import hours, short_day
from ledgerstone.papers.job_days import PIECE, day_rows
from ledgerstone.papers.paper import formatted
from ledgerstone.strength.grips import rail_of
from ledgerstone.wording import Message, capital, english, speech_in
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.jobs import cards_of, job_of, pages_of
from support.slabs import box, cut, hole, shape_from, slab_json

RAILED = slab_json(
    box(2400, 600),
    cut("rectangle", (700, 440), (1100, 300), corner_radius=15),
    label="Long sink run",
    rests={"kind": "full"},
    shade={"name": "graphite"},
)


ENGLISH = speech_in("en")


def planned(job: Job) -> list[list[str]]:
    """The lines of a day plan, without its sum, as they are stated."""
    rows: list[list[str]] = formatted(day_rows(job), ENGLISH)
    return rows


def test_every_step_stands_on_its_day_with_its_hours(
    workshop: Workshop, today: date, example_order: dict[str, Any]
) -> None:
    """As the schedule laid it, in that order, to the minute; a column is left blank."""
    job = job_of(example_order, workshop, today)
    laid = [one for one in job.quote.lead_time.work if one.people]
    rows = planned(job)
    names = [ENGLISH.say(one.job.step.name).partition(": two people")[0] for one in laid]
    assert [row[2].split(" →")[0] for row in rows] == names
    minutes = [one.job.step.minutes_of(one.job.piece.number) for one in laid]
    assert [row[4] for row in rows] == [ENGLISH.say(hours(each)) for each in minutes]
    day = ""
    for row, one in zip(rows, laid, strict=True):
        day = row[0] or day
        assert day == ENGLISH.value(short_day(one.begins_at.date()))
        assert row[1] == f"{one.begins_at.hour:02d}:{one.begins_at.minute // 5 * 5:02d}"
    assert {row[5] for row in rows} == {""}


def test_equal_pieces_on_one_day_are_one_line(workshop: Workshop, today: date) -> None:
    """Three like sills: a step a day is a line, with how many, and the minutes of all."""
    slab = slab_json(box(900, 200), quantity=3, rests={"kind": "full"})
    job = job_of({"slabs": [slab]}, workshop, today)
    packed = [row for row in planned(job) if row[2] == "Pack"]
    assert [row[PIECE] for row in packed] == ["3 of 3 Worktop"]
    assert packed[0][PIECE + 1] == ENGLISH.say(hours(3 * 6))


def test_a_pour_is_done_on_the_day_it_is_begun(workshop: Workshop, today: date) -> None:
    """From the batch to the cover all steps of a piece stand on one day, however long the day."""
    short = replace(workshop, calendar=replace(workshop.calendar, hours_per_day=2.0))
    slabs = [slab_json(box(2000, 600), rests={"kind": "full"}) for _ in range(3)]
    job = job_of({"slabs": slabs}, short, today)
    pours = ("step-mix", "step-face", "step-place", "step-strike", "step-cover")
    for i in range(3):
        days = {
            one.begins_at.date()
            for one in job.quote.lead_time.work
            if one.job.step.slab == i and one.job.step.name.name in pours
        }
        assert len(days) == 1


# --- the rail -------------------------------------------------------------------------------


def cards_drawn(job: Job) -> str:
    """Every drawing of the carry cards, as text."""
    return "".join(card["drawing"] for card in cards_of(job))


def test_a_rail_is_drawn_where_it_is_clamped(workshop: Workshop, today: date) -> None:
    """On the crate's card, where the slab is moved with one; the mould's sheet says it first."""
    job = job_of({"slabs": [RAILED]}, workshop, today)
    assert job.quote.strength[0].handled.way.rail
    way = job.quote.strength[0].handled.way
    first = english(Message("job-how-way", way=capital(way.name), rail="clamped"))
    assert first in repr(pages_of(job))
    assert english(Message("paper-rail-here")) in cards_drawn(job)
    assert "HOLD HERE" in cards_drawn(job)


def test_no_rail_is_drawn_where_none_is_wanted(
    workshop: Workshop, today: date, example_order: dict[str, Any]
) -> None:
    """A slab that two people tip as it is has no rail on any sheet."""
    job = job_of(example_order, workshop, today)
    assert not job.quote.strength[0].handled.way.rail
    assert "RAIL" not in cards_drawn(job)
    assert "Clamp the rail" not in repr(pages_of(job))


def test_a_rail_reaches_over_every_opening_and_holds_on_concrete(workshop: Workshop) -> None:
    """From the first opening to the last and as far as a clamp wants beyond, within the slab."""
    sink = cut("rectangle", (700, 440), (1100, 300))
    shape = shape_from(workshop, box(2400, 600), sink, hole(300, 1800, 300))
    assert np.allclose(rail_of(shape, along_y=False), ((550.0, 300.0), (2150.0, 300.0)))
    near = shape_from(workshop, box(1000, 600), cut("rectangle", (700, 440), (500, 300)))
    assert np.allclose(rail_of(near, along_y=False), ((20.0, 300.0), (980.0, 300.0)))
    tall = shape_from(workshop, box(600, 2400), cut("rectangle", (440, 700), (300, 1100)))
    assert np.allclose(rail_of(tall, along_y=True), ((300.0, 550.0), (300.0, 1650.0)))


# --- the repair pot -------------------------------------------------------------------------


def test_the_repair_pot_is_weighed_and_labelled(workshop: Workshop, today: date) -> None:
    """Its parts are in the finishing steps, its label on the card; without one, neither is."""
    slab: Json = slab_json(box(900, 500), shade={"name": "graphite"}, rests={"kind": "full"})
    job = job_of({"slabs": [slab]}, workshop, today)
    pages, cards = repr(pages_of(job)), repr(cards_of(job))
    assert "Repair pot: 0.24 kg cement 42.5 N, 0.01 kg black iron oxide, dry" in pages
    assert "0.25 kg of dry slurry" in cards
    assert english(Message("card-pot-skin", months=6)) in cards
    none = replace(workshop, slurry=replace(workshop.slurry, repair_pot_kg=0.0))
    without = job_of({"slabs": [slab]}, none, today)
    assert "pot" not in repr([pages_of(without), cards_of(without)])


# --- pours ----------------------------------------------------------------------------------


def test_what_is_poured_together_is_cast_on_the_same_day(workshop: Workshop, today: date) -> None:
    """Batch cards and days agree: two slabs for which the table has no room at once are two pours.

    Two small ones of one shade lie on it together, and share their batches.
    """
    large = slab_json(box(2000, 600), rests={"kind": "full"})
    small = slab_json(box(800, 400), rests={"kind": "full"})
    for slab, together in ((large, False), (small, True)):
        job = job_of({"slabs": [slab, slab]}, workshop, today)
        pours = [pour.slabs for pour in job.batches.pours]
        assert pours == ([(0, 1)] if together else [(0,), (1,)])
        assert ("mixed and placed together" in repr(pages_of(job))) is together
        for pour in pours:
            days = {
                one.begins_at.date()
                for one in job.quote.lead_time.work
                if one.job.step.slab in pour and one.job.step.name.name == "step-mix"
            }
            assert len(days) == 1
