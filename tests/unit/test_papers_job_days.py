"""The day plan, the rail and the repair pot: what a job sheet has for the hands that use it."""

from dataclasses import replace
from datetime import date
from typing import Any

import numpy as np

from ledgerstone.drawing.casting import rail_of
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import hours, short_day
from ledgerstone.papers.job_days import COLUMNS, day_plan
from ledgerstone.papers.job_sheet import job_pages
from ledgerstone.workshop import Workshop
from support.jobs import job_of
from support.slabs import Json, box, cut, hole, shape_from, slab_json

RAILED = slab_json(
    box(2400, 600),
    cut("rectangle", (700, 440), (1100, 300), corner_radius=15),
    label="Long sink run",
    rests={"kind": "full"},
    shade={"name": "graphite"},
)


def planned(job: Job) -> list[list[str]]:
    """The lines of a day plan, without its sum."""
    rows: list[list[str]] = day_plan(job)["rows"][:-1]
    return rows


def test_every_step_stands_on_its_day_with_its_hours(
    workshop: Workshop, today: date, example_order: dict[str, Any]
) -> None:
    """As the schedule laid it, in that order, to the minute; two columns are left blank."""
    job = job_of(example_order, workshop, today)
    laid = [one for one in job.quote.lead_time.work if one.people]
    rows = planned(job)
    assert [row[2].split("; then")[0] for row in rows] == [one.job.step.name for one in laid]
    minutes = [one.job.step.minutes_of(one.job.piece.number) for one in laid]
    assert [row[3] for row in rows] == [hours(each) for each in minutes]
    day = ""
    for row, one in zip(rows, laid, strict=True):
        day = row[0] or day
        assert day == short_day(one.begins_at.date())
        assert row[1] == f"{one.begins_at.hour:02d}:{one.begins_at.minute // 5 * 5:02d}"
    assert {tuple(row[4:]) for row in rows} == {("", "")}


def test_equal_pieces_on_one_day_are_one_line(workshop: Workshop, today: date) -> None:
    """Three like sills: a step a day is a line, with how many, and the minutes of all."""
    slab = slab_json(box(900, 200), quantity=3, rests={"kind": "full"})
    job = job_of({"slabs": [slab]}, workshop, today)
    packed = [row for row in planned(job) if row[2] == "Pack"]
    assert [row[COLUMNS.index("Piece")] for row in packed] == ["3 of 3 Worktop"]
    assert packed[0][COLUMNS.index("Hands")] == hours(3 * 6)


def test_a_pour_is_done_on_the_day_it_is_begun(workshop: Workshop, today: date) -> None:
    """From the batch to the cover all steps of a piece stand on one day, however long the day."""
    short = replace(workshop, calendar=replace(workshop.calendar, hours_per_day=2.0))
    slabs = [slab_json(box(2000, 600), rests={"kind": "full"}) for _ in range(3)]
    job = job_of({"slabs": slabs}, short, today)
    pours = ("Weigh and mix the batches", "Face coat", "Lay the steel, back-fill",
             "Strike off and vibrate", "Cover it, damp")  # fmt: skip
    for i in range(3):
        days = {
            one.begins_at.date()
            for one in job.quote.lead_time.work
            if one.job.step.slab == i and one.job.step.name in pours
        }
        assert len(days) == 1


# --- the rail -------------------------------------------------------------------------------


def drawn(job: Job, title: str) -> str:
    """Every drawing of the pages of a title, as text."""
    return "".join(
        block["svg"]
        for one in job_pages(job)
        if title in one["title"]
        for block in one["blocks"]
        if block["kind"] == "drawing"
    )


def test_a_rail_is_drawn_where_it_is_clamped(workshop: Workshop, today: date) -> None:
    """On the mould's drawing and on the crate's card, where the slab is moved with one."""
    job = job_of({"slabs": [RAILED]}, workshop, today)
    assert job.quote.strength[0].handled.way.rail
    for title in ("steel, lifts", "Carry card"):
        assert "CLAMP THE RAIL HERE" in drawn(job, title)
    assert "GRIP HERE" in drawn(job, "Carry card")


def test_no_rail_is_drawn_where_none_is_wanted(
    workshop: Workshop, today: date, example_order: dict[str, Any]
) -> None:
    """A slab that two people tip as it is has no rail on any sheet."""
    job = job_of(example_order, workshop, today)
    assert not job.quote.strength[0].handled.way.rail
    assert "RAIL" not in "".join(drawn(job, title) for title in ("steel, lifts", "Carry card"))


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
    pages = {one["title"]: repr(one["blocks"]) for one in job_pages(job)}
    steel = next(text for title, text in pages.items() if "steel" in title)
    card = next(text for title, text in pages.items() if "Carry card" in title)
    assert "Repair pot: 0.24 kg cement 42.5 N, 0.01 kg black iron oxide, dry" in steel
    assert "0.25 kg of dry slurry" in card
    assert "It burns skin and eyes" in card
    none = replace(workshop, slurry=replace(workshop.slurry, repair_pot_kg=0.0))
    said = repr([one["blocks"] for one in job_pages(job_of({"slabs": [slab]}, none, today))])
    assert "pot" not in said.replace("potter", "")


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
        assert ("mixed and placed together" in repr(list(job_pages(job)))) is together
        for pour in pours:
            days = {
                one.begins_at.date()
                for one in job.quote.lead_time.work
                if one.job.step.slab in pour and one.job.step.name == "Weigh and mix the batches"
            }
            assert len(days) == 1
