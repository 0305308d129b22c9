"""What papers say of a slab's strength: figures from the records, in their places."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import date

import pytest

from ledgerstone.message import Figure, Force, Listed, Message
from ledgerstone.papers.fitting import fitting_sheet
from ledgerstone.papers.job_sheet import job_pages
from ledgerstone.papers.records import PaperRecords
from ledgerstone.quote import Quote
from ledgerstone.reinforcement._sections import ReinforcedSection
from ledgerstone.shape import shape_of
from ledgerstone.strength.concrete import Concrete
from ledgerstone.strength.slabs import concrete_of
from ledgerstone.strength.strip_test import strip_test_of
from ledgerstone.wording import speech_in
from ledgerstone.workshop import Workshop
from support.calibration import FITTED, HOB, JOBS, TODAY, on_units
from support.documents import Json
from support.jobs import cards_of, job_of, pages_of
from support.slabs import box, slab_json, slab_of
from support.whole_orders import answered

HOB_RUN = slab_json(box(2400, 620), HOB, rests=on_units(600, 300, (600, "hob"), 900, front=20))


def _sheet(slab: Json, workshop: Workshop) -> str:
    """Every block of a job sheet as it is stated in English."""
    job = job_of({"slabs": [slab], "delivery": FITTED}, workshop, TODAY)
    return repr([page["blocks"] for page in pages_of(job)])


def _messages(content: object) -> Iterator[Message]:
    """Every message within some content, those within messages too."""
    if isinstance(content, Message):
        yield content
        content = content.values
    if isinstance(content, Listed):
        content = content.things
    if isinstance(content, Mapping):
        content = list(content.values())
    if isinstance(content, list | tuple):
        for one in content:
            yield from _messages(one)


def test_a_cold_slabs_strip_has_its_force_and_a_place_for_what_it_carried(
    workshop: Workshop,
) -> None:
    """Cast in November at 8 °C and turned after four days: 4 × 0.557 = 2.23, under 2.5.

    The force is the one that ``test_strip_test`` works out by hand.
    """
    job = job_of({"slabs": [HOB_RUN], "delivery": FITTED}, workshop, TODAY)
    handled = job.quote.strength[0].handled
    assert handled.age_days == pytest.approx(2.23, abs=0.01)
    density = workshop.recipe.density_kg_per_m3
    test = strip_test_of(handled, Concrete(fck_mpa=workshop.recipe.fck_mpa), 40.0, density)
    assert test is not None
    (line,) = [one for one in _messages(list(job_pages(job))) if one.name == "job-strip-test"]
    assert line.values["condition"] == "yes"
    assert line.values["load"] == Force(test.load_n)
    assert speech_in("en").say(line).count("____") >= 2


def test_what_governs_is_on_the_job_sheet_with_the_load_it_cracks_at(workshop: Workshop) -> None:
    """Case, load, stress of what is trusted, utilisation, and the load at the mean strength.

    By hand, own weight staying as it is: (f_m - own) / (stress - own) times the load.
    """
    order = {"slabs": JOBS["a bench on legs"]["slabs"], "delivery": FITTED}
    job = job_of(order, workshop, TODAY)
    worst = job.quote.strength[0].worst
    assert worst is not None
    (line,) = [one for one in _messages(list(job_pages(job))) if one.name == "job-governs-cracks"]
    governs = line.values["governs"]
    assert isinstance(governs, Message)
    assert governs.values["utilisation"] == Figure(worst.utilisation, 2)
    (doing,) = [one for one in _messages(governs) if one.name == "job-doing"]
    assert doing.values["kind"] == worst.case == "somebody-standing"
    mean = concrete_of(workshop).mean_bending_mpa(50.0, worst.age_days)
    times = (mean - worst.own_mpa) / (worst.stress_mpa - worst.own_mpa)
    at = line.values["at"]
    assert isinstance(at, Force)
    assert at.newtons == pytest.approx(1500.0 * times)


def test_a_long_thin_slabs_drying_bow_is_on_the_fitting_sheet(workshop: Workshop) -> None:
    """2400 × 40 bows 200 µε × 2400² / (8 × 40) = 3.6 mm, said as 4; 1200 × 40 bows unseen."""
    for length, bows in ((2400, [4.0]), (1200, [])):
        units = on_units(*[600] * (length // 600), front=20)
        answer = answered(workshop, slab_json(box(length, 620), rests=units), delivery=FITTED)
        assert isinstance(answer, Quote)
        records = PaperRecords(name="Q", quote=answer, workshop=workshop)
        told = [one for one in _messages(fitting_sheet(records)) if one.name == "fitting-dries"]
        assert [getattr(one.values["bow"], "mm", None) for one in told] == bows


def test_from_when_people_may_be_on_it_is_on_the_fitting_sheet(workshop: Workshop) -> None:
    """A slab that leaves in winter: the day that the quote says is on the sheet it is fitted by."""
    matt = {**HOB_RUN, "finish": {"surface": "as-cast", "sealer": "matt"}}
    answer = answered(workshop, matt, delivery=FITTED)
    assert isinstance(answer, Quote)
    assert "young-in-place" in {finding.check for finding in answer.findings}
    records = PaperRecords(name="Q", quote=answer, workshop=workshop)
    (told,) = [one for one in _messages(fitting_sheet(records)) if one.name == "young-for-people"]
    assert isinstance(told.values["day"], date)
    assert told.values["day"] > answer.lead_time.ready_on


def test_the_bearers_of_what_rides_flat_are_on_its_packing_card(workshop: Workshop) -> None:
    """Lifted level it lies on bearers: their places on the card are the ones it was judged on."""
    flat = tuple(way for way in workshop.handling.ways if way.held == "flat")
    gantry = replace(workshop, handling=replace(workshop.handling, ways=flat))
    job = job_of({"slabs": [HOB_RUN], "delivery": FITTED}, gantry, TODAY)
    bearers = job.quote.strength[0].handled.bearers_mm
    assert len(bearers) in (2, 3)
    assert not [at for at in bearers if 1200 - 280 - 50 < at < 1200 + 280 + 50]
    card = str(cards_of(job)[0])
    for at in bearers:
        assert str(5 * round(at / 5)) in card


def _drawn_section(workshop: Workshop, slab: Json) -> tuple[int, int]:
    """How many bars, and lines of mesh, the section through the mould draws."""
    told = _sheet(slab, workshop)
    (svg,) = re.findall(r"<svg[^>]*aria-labelledby=.{0,3}mould-section.*?</svg>", told)
    mesh = [path for path in re.findall(r"<path[^>]*>", svg) if "stroke-width" in path]
    return svg.count("<circle"), len(mesh)


def test_the_drawn_section_shows_bars_and_mesh_only_where_they_are(workshop: Workshop) -> None:
    """A hob run has both; a workshop without bars mesh alone; a sill of 120 mm bars alone."""
    sill = slab_json(box(500, 120), use="shelf", rests={"kind": "full"})
    bare = replace(workshop, steel=replace(workshop.steel, bar_mm=None))
    assert _drawn_section(workshop, HOB_RUN) == (5, 1)
    assert _drawn_section(bare, slab_json(box(900, 400), rests={"kind": "full"})) == (0, 1)
    assert _drawn_section(workshop, sill)[1] == 0


@pytest.mark.parametrize(("width", "meshed"), [(120, False), (140, True)])
def test_mesh_that_has_no_room_carries_nothing(
    width: int, *, meshed: bool, workshop: Workshop
) -> None:
    """15 mm of cover on both sides leave 90 mm of 120: less than two meshes of 50 mm."""
    slab = slab_of(workshop, box(900, width), use="shelf")
    section = ReinforcedSection.of(slab, shape_of(slab, workshop), workshop)
    assert (section.limit_mpa(0.0, crossing=False) > 0.0) is meshed
