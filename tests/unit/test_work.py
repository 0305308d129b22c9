"""The one list of operations: what it holds, and hours worked by hand from the profile."""

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from typing import Any

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.message import Message
from ledgerstone.shape import shape_of
from ledgerstone.work import PHASES, Operation, operations, tiles_of
from ledgerstone.work.mixing import shared
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import JobHours
from support.documents import Json
from support.slabs import box, hole, order_of, slab_json, stages_of, steps_of
from support.stages import Stages, step_name


def hours_of(workshop: Workshop, slab: Json) -> float:
    """Hours for one slab's mould, all its steps together."""
    steps = steps_of(order_of(workshop, slab), workshop)
    return sum(step.hands_hours for step in steps if step.phase == "mould" and step.slab == 0)


def by_name(steps: tuple[Operation, ...]) -> dict[str, Operation]:
    """Steps by what they are called."""
    return {step_name(step): step for step in steps}


def test_the_examples_hours_are_those_of_the_profile(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """Every step of the example order, its hours worked by hand from the demonstration profile."""
    steps = steps_of(read_order(example_order, workshop), workshop)
    area = 1.45 * 0.56 - 3.141592653589793 / 4 * (0.36**2 + 0.035**2)
    by_hand = {
        "step-in-hand": 0.15,
        "step-set-up": 0.3,
        "step-mould": 0.2 + 0.19 * 4.02,
        "step-knockouts": 0.9 + 0.25,  # the basin's foam, the tap's plug
        # the bevelled front, two square ends; the wall side costs nothing more than its bead
        "step-bead": 0.07 * 4.02 + 0.20 * 1.45 + 0.08 * 1.12,
        "step-release": 0.05,
        "step-level": 0.1,
        "step-steel": 0.4 * area,
        "step-mix": 0.1 + 2 * 0.15,  # 6 litres of face coat, 26 of backing
        "step-face": 0.3 * area,
        "step-place": 0.5 * area,
        "step-strike": 0.3 * area,
        "step-cover": 0.05,
        "step-clean-up": 0.25,
        "step-sand": 0.3 * area,
        "step-turn": 0.1,
        "step-demould": 0.15,
        "step-knockouts-out": 2 * 0.35,
        "step-wash": 0.05,
        "step-grind 60": 3.4 / 4 * area,
        "step-fill": 0.4 * area,
        "step-grind 120": 3.4 / 4 * area,
        "step-fill-again": 0.4 * area,
        "step-finish honed": 3.4 / 2 * area,
        "step-seal matt": 0.15 * 3 * area,
        "step-crate 1": 0.6,
        "step-test": 0.05,
        "step-pack": 0.2,
    }
    assert [step_name(step) for step in steps] == list(by_hand)
    assert [s.hands_hours for s in steps] == [pytest.approx(hours) for hours in by_hand.values()]
    waits = {step_name(step): step.wait_hours for step in steps if step.wait_hours}
    assert waits == {
        "step-bead": 12, "step-release": 0.5, "step-cover": 96,
        "step-fill": 24, "step-fill-again": 24, "step-finish honed": 72, "step-seal matt": 48,
    }  # fmt: skip
    machines = {step_name(step): step.machine_hours for step in steps if step.machine_hours}
    assert machines == {
        "step-grind 60": pytest.approx(3.4 / 4 * area),
        "step-grind 120": pytest.approx(3.4 / 4 * area),
        "step-finish honed": pytest.approx(3.4 / 2 * area),
    }


def test_steps_depend_on_what_was_ordered(workshop: Workshop) -> None:
    """No openings, no knockouts; left as it is cast, no voids filled."""
    as_cast = {"surface": "as-cast", "sealer": "matt"}
    plain = slab_json(box(900, 500), finish=as_cast)
    holed = slab_json(box(900, 500), hole(100, 450, 250), finish=as_cast)
    honed = slab_json(box(900, 500), finish={"surface": "honed", "sealer": "matt"})
    names = [set(by_name(steps_of(order_of(workshop, s), workshop))) for s in (plain, holed, honed)]
    assert names[1] - names[0] == {"step-knockouts", "step-knockouts-out"}
    assert names[2] - names[0] == {
        "step-grind 60", "step-fill", "step-grind 120", "step-fill-again",
        "step-finish honed",
    }  # fmt: skip


def test_nothing_is_cut_before_everything_is_in_hand(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """Templates, the sink itself and a signed drawing come first, as a step of their own."""
    steps = steps_of(read_order(example_order, workshop), workshop)
    assert steps[0].name.name == "step-in-hand"
    assert steps[0].slab is None


def test_from_the_batch_to_the_cover_nothing_stops(workshop: Workshop) -> None:
    """The steps of a pour are one unbroken run, begun by the batches."""
    steps = steps_of(order_of(workshop, slab_json(box(900, 500))), workshop)
    unbroken = [step_name(step) for step in steps if step.unbroken]
    assert unbroken == [
        "step-face", "step-place", "step-strike", "step-cover",
    ]  # fmt: skip
    bare = replace(workshop, recipe=replace(workshop.recipe, face_coat=None))
    steps = steps_of(order_of(bare, slab_json(box(900, 500))), bare)
    assert "step-face" not in by_name(steps)


def test_turning_and_trimming_come_before_the_finish(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """A slab is sanded, turned with its formers in, demoulded, trimmed, and then ground."""
    steps = steps_of(read_order(example_order, workshop), workshop)
    finishing = [step for step in steps if step.phase == "finish"]
    assert [step_name(step) for step in finishing] == [
        "step-sand", "step-turn", "step-demould", "step-knockouts-out", "step-wash",
        "step-grind 60", "step-fill", "step-grind 120", "step-fill-again",
        "step-finish honed",
    ]  # fmt: skip
    assert [step_name(step) for step in finishing if step.frees] == ["step-demould"]


def test_what_a_profile_leaves_out_is_no_step(workshop: Workshop) -> None:
    """A maker who times the pour as one writes one rule, and the list has one step for it."""
    hours = replace(
        workshop.hours,
        per_job=JobHours(set_up=0.3),
        per_mould=replace(workshop.hours.per_mould, bead_per_m=0.0, release=0.0),
        per_piece=replace(
            workshop.hours.per_piece, sand_back_per_m2=0.0, wash=0.0, fill_per_m2=0.0, test=0.0
        ),
    )
    edges = tuple(replace(edge, hours_per_m=0.0) for edge in workshop.edges)
    coarse = replace(workshop, hours=hours, edges=edges)
    names = [step_name(s) for s in steps_of(order_of(coarse, slab_json(box(900, 500))), coarse)]
    assert "step-bead" not in names
    assert not {"step-wash", "step-level", "step-clean-up"} & set(names)
    assert "step-mould" in names


# --- sample tiles ---------------------------------------------------------------------------


def test_tiles_come_first_and_wait_for_a_yes(workshop: Workshop) -> None:
    """One tile for each look, then the wait for the yes; only then anything is in hand."""
    graphite = slab_json(box(900, 500), shade={"name": "graphite"})
    chalk = graphite | {"shade": {"name": "chalk"}}
    order = order_of(workshop, graphite, graphite, chalk)
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    steps = operations(order, shapes, workshop, (4.0,) * 3, with_tiles=True)
    surface = order.slabs[0].finish.surface
    assert tiles_of(order) == (("graphite", surface), ("chalk", surface))
    assert [(step_name(s), s.hands_hours, s.wait_hours) for s in steps[:4]] == [
        (f"step-tile graphite {surface}", 0.75, 216.0),
        (f"step-tile chalk {surface}", 0.75, 216.0),
        ("step-yes", 0.0, 120.0),
        ("step-in-hand", 0.15, 0.0),
    ]


def test_a_workshop_without_tiles_casts_none(workshop: Workshop) -> None:
    """Without the profile's table there is no such step for any caller."""
    none = replace(workshop, sample=None)
    order = order_of(none, slab_json(box(900, 500)), sample_tile=True)
    shapes = tuple(shape_of(slab, none) for slab in order.slabs)
    steps = operations(order, shapes, none, (4.0,), with_tiles=True)
    assert not [step for step in steps if step.phase == "sample"]


# --- moulds ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("more", "hours"),
    [
        ({}, 0.0),
        ({"edges": {"front": {"profile": "bevel", "size": 5}}}, (0.20 - 0.08) * 0.9),
        ({"edges": {"back": {"profile": "wall"}}}, -0.08 * 0.9),
        ({"edges": {"left": {"drop": {"depth": 100}}}}, 0.9 * 0.5),
        ({"cutouts": [hole(100, 450, 250), hole(35, 200, 250)]}, 0.9 + 0.25),
        ({"reliefs": [{"kind": "recess", "outline": box(100, 100), "depth": 5,
                       "at": {"x": 50, "y": 50}}]}, 0.8),
    ],
    ids=("plain", "bevel", "wall", "drop", "cut-outs", "relief"),
)  # fmt: skip
def test_a_mould_takes_hours_by_its_parts(workshop: Workshop, more: Json, hours: float) -> None:
    """A mould of 900 by 500 with square edges, and what each part adds to it."""
    plain = 0.25 + (0.26 + 0.08) * 2.8  # board, release; sides, bead and its edge
    assert hours_of(workshop, slab_json(box(900, 500)) | more) == pytest.approx(plain + hours)


def test_quantity_multiplies_hands_but_not_the_job_nor_the_pour(workshop: Workshop) -> None:
    """Three of one slab take three times its hours; once a job and once a pour stay once."""
    slab = slab_json(box(900, 300), hole(100, 450, 150))
    one = steps_of(order_of(workshop, slab), workshop)
    three = steps_of(order_of(workshop, slab | {"quantity": 3}), workshop)
    for single, many in zip(one, three, strict=True):
        once = single.slab is None or single.name.name == "step-mix"
        times = 1 if once else 3
        assert many.hands_hours == pytest.approx(times * single.hands_hours)
        assert many.wait_hours == single.wait_hours


def test_steps_stand_in_the_order_of_the_work(workshop: Workshop) -> None:
    """Phases come one by one; within a phase, slab by slab."""
    steps = steps_of(order_of(workshop, *[slab_json(box(900, 500))] * 3), workshop)
    phases = [PHASES.index(step.phase) for step in steps]
    assert phases == sorted(phases)
    assert [step.slab for step in steps if step.name.name == "step-face"] == [0, 1, 2]


@pytest.mark.parametrize(("sealer", "days"), [("matt", 7), ("satin", 21), ("hard wax oil", 14)])
def test_a_sealer_waits_for_the_concretes_age(workshop: Workshop, sealer: str, days: int) -> None:
    """The age that a sealer's sheet asks for counts from the pour, whatever the cover took."""
    finish = {"surface": "honed", "sealer": sealer}
    order = order_of(workshop, slab_json(box(900, 500), finish=finish))
    for cover in (1.0, 14.0):
        seal = next(s for s in steps_of(order, workshop, cover) if s.phase == "seal")
        assert seal.age_hours == 24 * days


def test_a_finish_takes_the_days_that_its_profile_says(workshop: Workshop) -> None:
    """Honing takes two working days at least: filled pores harden overnight."""
    finishes = tuple(replace(f, days=5) for f in workshop.finishes)
    slower = replace(workshop, finishes=finishes)
    order = order_of(workshop, slab_json(box(900, 500)))
    assert [max(s.least_days for s in steps_of(order, w)) for w in (workshop, slower)] == [1, 5]


def test_days_under_cover_are_each_slabs_own(workshop: Workshop) -> None:
    """A slab that needs a later demould stays under its cover longer."""
    order = order_of(workshop, *[slab_json(box(900, 500))] * 2)
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    steps = operations(order, shapes, workshop, (4.0, 7.5))
    assert [s.wait_hours for s in steps if s.wait_hours and s.phase == "cast"] == [96, 180]


def test_the_way_a_slab_is_moved_adds_its_hours_and_its_hire(workshop: Workshop) -> None:
    """A gantry takes hands of its own and may be hired; the plainest way adds nothing."""
    order = order_of(workshop, slab_json(box(900, 500), quantity=2))
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    plain = workshop.handling.ways[0]
    gantry = replace(plain, name="gantry", hours=1.5, price=Decimal(60))
    usual = by_name(operations(order, shapes, workshop, (4.0,), (plain,)))
    hired = by_name(operations(order, shapes, workshop, (4.0,), (gantry,)))
    turned, lifted = usual[f"step-turn-way {plain.name}"], hired["step-turn-way gantry"]
    assert (turned.hands_hours, turned.hire) == (0.2, Decimal(0))
    assert lifted.hands_hours == pytest.approx(3.2)
    assert lifted.hire == 120
    assert len(usual) == len(hired)


def test_minutes_are_whole_for_every_piece() -> None:
    """Three pieces of 20.6 minutes are three of 21: what is laid is what is paid."""
    step = Operation(Message("step-face"), "cast", 0, 3 * 20.6 / 60, 3 * 20.4 / 60, pieces=3)
    assert (step.minutes_of(0), step.hands_minutes, step.machine_minutes) == (21, 63, 60)


# --- equal pieces ---------------------------------------------------------------------------


def test_equal_pieces_take_the_fewest_moulds_that_meet_the_day(
    workshop: Workshop, today: date
) -> None:
    """Three like pieces: one mould cast three times if there is time, three moulds if there is not.

    One mould costs less, and is never ready sooner.
    """
    slab = slab_json(box(900, 300), quantity=3)
    soonest = stages_of(order_of(workshop, slab), workshop, today)
    soon = soonest.lead_time.arrives_latest
    late = soon + timedelta(days=60)
    patient = stages_of(order_of(workshop, slab, needed_by=late.isoformat()), workshop, today)
    hurried = stages_of(order_of(workshop, slab, needed_by=soon.isoformat()), workshop, today)
    assert [moulds_of(stages) for stages in (soonest, patient, hurried)] == [3, 1, 3]
    assert patient.price.total < hurried.price.total
    assert patient.lead_time.ready_on > hurried.lead_time.ready_on
    assert patient.lead_time.arrives_latest <= late


def moulds_of(stages: Stages) -> int:
    """How many moulds of the first slab are made."""
    return next(s.pieces for s in stages.scheduled.operations if s.name.name == "step-mould")


def test_minutes_are_shared_whole() -> None:
    """By weight, and alike where nothing weighs anything: they always add up."""
    for weights, shares in (([1.0, 1.0], [4, 3]), ([0.0, 0.0], [4, 3]), ([0.0], [7])):
        assert list(shared(7, weights)) == shares
