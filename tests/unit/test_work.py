"""The one list of operations: what it holds, and hours worked by hand from the profile."""

from dataclasses import replace
from decimal import Decimal
from typing import Any

import pytest

from ledgerstone.shape import shape_of
from ledgerstone.wire.order_in import read_order
from ledgerstone.work import STAGES, mould_hours, operations
from ledgerstone.workshop import Workshop
from unit.slabs import Json, box, hole, order_of, slab_json, steps_of


def hours_of(workshop: Workshop, slab: Json) -> float:
    """Hours for one slab's mould."""
    order = order_of(workshop, slab)
    return mould_hours(order.slabs[0], shape_of(order.slabs[0], workshop), workshop)


def test_the_examples_hours_are_those_of_the_profile(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """Hours of the example order, worked by hand from the demonstration profile."""
    steps = {
        s.stage + str(s.slab): s for s in steps_of(read_order(example_order, workshop), workshop)
    }
    area = 1.45 * 0.56 - 3.141592653589793 / 4 * (0.36**2 + 0.035**2)
    # base + outline + bevel + two square sides (the wall side costs nothing) + two formers
    mould = 0.75 + 0.25 * 4.02 + 0.20 * 1.45 + 0.08 * 1.12 + 2 * 0.6
    assert steps["mouldNone"].hands_hours == 2.0
    assert steps["mould0"].hands_hours == pytest.approx(mould)
    assert steps["cast0"].hands_hours == pytest.approx(0.9 + (0.7 + 0.4) * area)
    assert steps["cast0"].wait_hours == 96
    assert steps["finish0"].hands_hours == pytest.approx(2.2 * area)
    assert steps["finish0"].machine_hours == pytest.approx(2.2 * area)
    assert steps["finish0"].wait_hours == 72
    assert steps["seal0"].hands_hours == pytest.approx(0.1 * 3 * area)
    assert steps["seal0"].wait_hours == 48
    assert steps["pack0"].hands_hours == 0.75


def test_turning_and_trimming_come_before_the_finish(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """A slab leaves its mould, with two knockouts to trim, before it is honed."""
    steps = steps_of(read_order(example_order, workshop), workshop)
    finishing = [step for step in steps if step.stage == "finish"]
    assert [step.name for step in finishing] == ["Turn and demould", "Finish: honed"]
    assert finishing[0].hands_hours == 0.75 + 2 * 0.25


@pytest.mark.parametrize(
    ("more", "hours"),
    [
        ({}, 0.0),
        ({"edges": {"front": {"profile": "bevel", "size": 5}}}, (0.20 - 0.08) * 0.9),
        ({"edges": {"back": {"profile": "wall"}}}, -0.08 * 0.9),
        ({"edges": {"left": {"drop": {"depth": 100}}}}, 0.9 * 0.5),
        ({"cutouts": [hole(100, 450, 250), hole(35, 200, 250)]}, 2 * 0.6),
        ({"reliefs": [{"kind": "recess", "outline": box(100, 100), "depth": 5,
                       "at": {"x": 50, "y": 50}}]}, 0.8),
    ],
    ids=("plain", "bevel", "wall", "drop", "cut-outs", "relief"),
)  # fmt: skip
def test_a_mould_takes_hours_by_its_parts(workshop: Workshop, more: Json, hours: float) -> None:
    """A mould of 900 by 500 with square edges, and what each part adds to it."""
    plain = 0.75 + (0.25 + 0.08) * 2.8
    assert hours_of(workshop, slab_json(box(900, 500)) | more) == pytest.approx(plain + hours)


def test_quantity_multiplies_hands_but_not_the_set_up(workshop: Workshop) -> None:
    """Three of one slab take three times its hours; the order is set up once."""
    slab = slab_json(box(900, 500), hole(100, 450, 250))
    one = steps_of(order_of(workshop, slab), workshop)
    three = steps_of(order_of(workshop, slab | {"quantity": 3}), workshop)
    for single, many in zip(one, three, strict=True):
        times = 1 if single.slab is None else 3
        assert many.hands_hours == pytest.approx(times * single.hands_hours)
        assert many.wait_hours == single.wait_hours


def test_steps_stand_in_the_order_of_the_work(workshop: Workshop) -> None:
    """Stages come one after another; within a stage, slab by slab."""
    steps = steps_of(order_of(workshop, *[slab_json(box(900, 500))] * 3), workshop)
    stages = [STAGES.index(step.stage) for step in steps]
    assert stages == sorted(stages)
    assert [step.slab for step in steps if step.stage == "cast"] == [0, 1, 2]


@pytest.mark.parametrize(("sealer", "days"), [("matt", 7), ("satin", 21), ("hard wax oil", 14)])
def test_a_sealer_waits_for_the_concretes_age(workshop: Workshop, sealer: str, days: int) -> None:
    """The age that a sealer's sheet asks for counts from the pour, whatever the cover took."""
    finish = {"surface": "honed", "sealer": sealer}
    order = order_of(workshop, slab_json(box(900, 500), finish=finish))
    for cover in (1.0, 14.0):
        seal = next(s for s in steps_of(order, workshop, cover) if s.stage == "seal")
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
    assert [s.wait_hours for s in steps if s.stage == "cast"] == [96, 180]


def test_the_way_a_slab_is_moved_adds_its_hours_and_its_hire(workshop: Workshop) -> None:
    """A gantry takes hands of its own and may be hired; the plainest way adds nothing."""
    order = order_of(workshop, slab_json(box(900, 500), quantity=2))
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    plain = workshop.handling.ways[0]
    gantry = replace(plain, name="gantry", hours=1.5, price=Decimal(60))
    usual = operations(order, shapes, workshop, (4.0,), (plain,))
    hired = operations(order, shapes, workshop, (4.0,), (gantry,))
    assert usual == operations(order, shapes, workshop, (4.0,))
    added = [step for step in hired if step not in usual]
    assert [(s.name, s.stage) for s in added] == [("Move it: gantry", "finish")]
    assert (added[0].hands_hours, added[0].hire) == (3.0, Decimal(120))
