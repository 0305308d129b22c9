"""The job sheet: mirrored as it is cast, and agreeing with price and schedule to the minute."""

import re
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from shapely import affinity

from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.paper_schemas import JOB_SHEET
from ledgerstone.drawing.mirrored import mirrored
from ledgerstone.message import Ruled
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import hours
from ledgerstone.papers.job_sheet import job_content
from ledgerstone.papers.lifting import to_5_mm
from ledgerstone.papers.paper import formatted
from ledgerstone.schedule import calendar_of
from ledgerstone.shape import shape_of
from ledgerstone.wording import speech_in
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.jobs import cards_of, job_of, pages_of
from support.slabs import box, hole, polygon, slab_json

ENGLISH = speech_in("en")
FEPA = {24, 30, 36, 40, 50, 60, 80, 100, 120, 150, 180, 220, 240, 280, 320, 360, 400, 500, 600,
        800, 1000, 1200, 1500, 2000, 2500, 3000}  # ISO 6344, from memory  # fmt: skip

L_SHAPE = {"kind": "l-shape", "length": 1200, "width": 900, "corner_radii": {"front-left": 40},
           "notch": {"corner": "back-right", "length": 500, "width": 300}}  # fmt: skip
SLABS: dict[str, Json] = {
    "rectangle": slab_json(box(1000, 500), hole(100, 300, 200)),
    "l": slab_json(L_SHAPE, hole(120, 200, 200), edges={"left": {"profile": "wall"}}),
    "polygon": slab_json(
        polygon((0, 0), (1000, 0), (900, 600), (100, 500)),
        hole(90, 300, 250),
        edges={"2": {"profile": "bevel", "size": 5}},
    ),
    "between walls": slab_json(box(1000, 500), hole(100, 300, 200), size_from="between-walls"),
    "turned": slab_json(
        box(1000, 500),
        {"kind": "rectangle", "length": 300, "width": 100, "turn_degrees": 20,
         "centre": {"x": 300, "y": 250}},
    ),
    "opened": slab_json(box(1000, 500), hole(150, 40, 200, open_to="left")),
    "relief": slab_json(
        box(1000, 500),
        reliefs=[{"kind": "recess", "outline": box(200, 100), "depth": 5,
                  "at": {"x": 50, "y": 60}}],
    ),
}  # fmt: skip


@pytest.fixture
def job(workshop: Workshop, today: date, example_order: dict[str, Any]) -> Job:
    """The example order, quoted and worked out."""
    return job_of(example_order, workshop, today)


def texts(job: Job) -> str:
    """All that a job sheet says, drawings left out."""
    return repr(JOB_SHEET.dump(formatted(job_content(job), ENGLISH)))


@pytest.mark.parametrize("name", SLABS)
def test_a_mirrored_slab_is_the_slab_seen_from_its_other_face(
    workshop: Workshop, name: str
) -> None:
    """Outline, openings and reliefs of the mirrored record are the reflected shapes themselves."""
    slab = read_order({"slabs": [SLABS[name]]}, workshop).slabs[0]
    shape = shape_of(slab, workshop)
    turned = shape_of(mirrored(slab, shape), workshop)
    x0, _, x1, _ = shape.outline.bounds
    middle = ((x0 + x1) / 2, 0.0)

    def reflected(area: Any) -> Any:  # noqa: ANN401  a shapely geometry
        return affinity.scale(area, -1.0, 1.0, origin=middle)

    pairs = [(shape.net, turned.net), *zip(shape.reliefs, turned.reliefs, strict=True)]
    assert all(reflected(a).symmetric_difference(b).area < 1.0 for a, b in pairs)
    assert turned.volume_mm3 == pytest.approx(shape.volume_mm3, rel=1e-9)


@pytest.mark.parametrize("name", SLABS)
def test_a_slab_mirrored_twice_is_cast_as_it_was(workshop: Workshop, name: str) -> None:
    """Sides, their edges and what opens to them come back."""
    slab = read_order({"slabs": [SLABS[name]]}, workshop).slabs[0]
    shape = shape_of(slab, workshop)
    once = mirrored(slab, shape)
    twice = mirrored(once, shape_of(once, workshop))
    assert shape_of(twice, workshop).net.symmetric_difference(shape.net).area < 1.0
    assert dict(twice.edges) == dict(slab.edges)
    assert [c.open_to for c in twice.cutouts] == [c.open_to for c in slab.cutouts]


def test_a_polygons_bevelled_side_stays_where_it_is(workshop: Workshop) -> None:
    """The side's number changes with the order of the points; the side itself is reflected."""
    slab = read_order({"slabs": [SLABS["polygon"]]}, workshop).slabs[0]
    shape = shape_of(slab, workshop)
    turned = mirrored(slab, shape)
    (name,) = turned.edges
    before, after = shape.side("2"), shape_of(turned, workshop).side(name)
    assert after.length_mm == pytest.approx(before.length_mm)
    assert after.line.centroid.x == pytest.approx(1000 - before.line.centroid.x, abs=0.01)


def test_price_schedule_and_job_sheet_agree_to_the_minute(job: Job) -> None:
    """One list: wages come to its minutes, the days hold them, the sheet prints their sum."""
    rows = JOB_SHEET.dump(formatted(job_content(job), ENGLISH))["operations"]
    told = sum(row["hands_minutes"] for row in rows)
    laid = sum(one.job.step.minutes_of(one.job.piece.number) for one in job.quote.lead_time.work)
    assert told == laid == job.minutes_in_all()
    machine = sum(row["machine_minutes"] for row in rows)
    hire = sum((step.hire for step in job.steps), Decimal(0))
    rates = job.workshop.rates
    paid = sum(cost.amount for cost in job.costs if ENGLISH.say(cost.label).startswith("Hours"))
    by_hand = Decimal(told) / 60 * rates.hour + Decimal(machine) / 60 * rates.machine_hour + hire
    assert paid == pytest.approx(by_hand, abs=Decimal("1e-9"))
    assert f"'In all', '{ENGLISH.say(hours(told))}'" in texts(job)


def test_the_days_hold_the_minutes(job: Job, today: date) -> None:
    """The stages in which hands work span days enough for every minute of the list."""
    calendar = calendar_of(job.workshop, ())
    lead = job.quote.lead_time
    days = (lead.ready_on - today).days
    worked = sum(calendar.is_worked(date.fromordinal(today.toordinal() + n)) for n in range(days))
    full = job.workshop.calendar.hours_per_day * 60 * job.workshop.calendar.hands
    assert worked * full >= job.minutes_in_all()


def test_knockouts_are_measured_from_the_moulds_own_edges(job: Job) -> None:
    """The basin at 980 of 1450 stands 470 from the mould's left: 290 clear, 800 on the right."""
    assert "['A basin', 'Ø 360', '290', '800', '90', '110', '470, 270', '']" in texts(job)
    assert "['B tap', 'Ø 35', '452.5', '962.5', '487.5', '37.5', '470, 505', '']" in texts(job)


def test_every_mirrored_drawing_says_so(job: Job) -> None:
    """A page whose drawing is mirrored is flagged, and its plan's own title says it again."""
    for one in pages_of(job):
        drawn = [b["svg"] for b in one["blocks"] if b["kind"] == "drawing"]
        flagged = any(b["kind"] == "flag" and "MIRRORED" in b["says"] for b in one["blocks"])
        if any("mirrored" in svg.lower() or "in the mould" in svg for svg in drawn):
            assert flagged, one["title"]


def test_masses_are_reported_wet_turned_and_cured(job: Job) -> None:
    """Wet outweighs cured; turned adds the mould; all as the quote has them."""
    assert job.wet_kg(0) > job.cured_kg(0) == job.quote.weights[0].slab_kg
    mould = 1.45 * 0.56 * job.workshop.handling.mould_kg_per_m2
    assert job.turned_kg(0) == pytest.approx(job.cured_kg(0) + mould)
    assert f"'Cured, bare', '{round(job.cured_kg(0), 1):g} kg" in texts(job)


def test_batch_cards_weigh_what_was_priced(job: Job) -> None:
    """Every weighing of every batch stands on a card; exact masses add up to what is bought."""
    for pour in job.batches.pours:
        for one in pour.batches:
            for weighing in one.batch.weighings:
                places = 3 if weighing.step_kg < 0.01 else 2
                assert f"['{weighing.name}', '{weighing.weighed_kg:.{places}f}'" in texts(job)


def test_the_finish_goes_through_its_grits(job: Job) -> None:
    """A honed face goes from coarse to fine through standard grits, then its coats of sealer."""
    steps = re.findall(r"Wet-grind with (\d+) grit", texts(job))
    grits = [int(grit) for grit in steps]
    assert grits == sorted(grits)
    assert len(grits) > 2
    assert texts(job).count("Sealer matt, coat ") == 3


def test_the_demonstrations_grits_are_standard_grades(workshop: Workshop) -> None:
    """Every grit of every finish is a FEPA P-grade, each finer than the one before."""
    for finish in workshop.finishes:
        assert set(finish.grits) <= FEPA
        assert list(finish.grits) == sorted(set(finish.grits))


def test_cautions_stand_where_they_belong(job: Job) -> None:
    """Silica and wet cement by the batches, lifting on the card, and no safe limit anywhere."""
    pour = repr(pages_of(job)[1])
    assert "silica" in pour
    assert "burns" in pour
    card = repr(cards_of(job)[0])
    assert "is a safe limit" in card
    said_in_all = texts(job) + card
    assert not re.search(r"(?<!is a )(?<!a )safe (limit|load|weight|mass)", said_in_all)


@pytest.mark.parametrize(
    ("length", "rule", "grip", "kept"),
    [(300.3, "300.5", "300", "300"), (15.75, "16", "15", "15.5"), (20.0, "20", "20", "20")],
)
def test_lengths_are_reported_as_a_rule_shows_them(
    length: float, rule: str, grip: str, kept: str
) -> None:
    """To half a millimetre; grips to 5 mm; cover never more than there is."""
    assert ENGLISH.value(Ruled(length)) == rule
    assert str(to_5_mm(length)) == grip
    assert ENGLISH.value(Ruled(length, down=True)) == kept


def test_board_pieces_are_named_as_the_mould_has_them(workshop: Workshop, today: date) -> None:
    """An L's long left side stands on the right of its mould, and is cut and beaded as such."""
    shape = {"kind": "l-shape", "length": 1200, "width": 900,
             "notch": {"corner": "back-right", "length": 500, "width": 300}}  # fmt: skip
    edges = {"left": {"profile": "bevel", "size": 5}}
    slab = slab_json(shape, label="L", edges=edges, rests={"kind": "full"})
    job = job_of({"slabs": [slab]}, workshop, today)
    pieces = {one.name: max(one.length_mm, one.width_mm) for one in job.moulds.boards.placed}
    past = workshop.boards.thickness_mm
    assert pieces["L: side right"] == 900 + past
    assert pieces["L: side left"] == 600 + past
    assert "right bevel 5" in texts(job)


@pytest.mark.parametrize(
    ("cutout", "size"),
    [
        ({"kind": "rectangle", "length": 500, "width": 300, "corner_radius": 25}, "R 25"),
        ({"kind": "rectangle", "length": 500, "width": 300}, "R 10"),
        ({"kind": "rectangle", "length": 500, "width": 300, "turn_degrees": 20},
         "R 10, turned -20°"),
        ({"kind": "slot", "length": 500, "width": 300}, "round ends"),
    ],
)  # fmt: skip
def test_a_knockout_is_listed_as_it_is_made(
    workshop: Workshop, today: date, cutout: Json, size: str
) -> None:
    """Its own length and width, its corners, and its turn the other way about, seen mirrored."""
    placed = cutout | {"centre": {"x": 700, "y": 300}, "label": "sink"}
    slab = slab_json(box(1500, 600), placed, rests={"kind": "full"})
    assert f"'A sink', '500 × 300, {size}'" in texts(job_of({"slabs": [slab]}, workshop, today))
