"""Every sentence that a check says, read over awkward orders and random ones."""

from collections.abc import Iterable
from typing import Any, Final

import pytest
from hypothesis import HealthCheck, given, settings

from ledgerstone.checks import GROUP_OF, PROMISE_CHECKS, SHAPE_CHECKS, Finding
from ledgerstone.codec.order_in import read_order
from ledgerstone.stages import Assessed, Judged, Scheduled, StageContext, plan
from ledgerstone.strength.handling import Curing
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from support.calibration import BREAKERS, JOBS
from support.documents import Json
from support.in_english import in_english
from support.reading import LONGEST, faults, read_aloud
from support.slabs import stages_of
from support.strategies.awkward_orders import AWKWARD
from support.strategies.orders import cases, modest_orders, orders
from unit.checked import TODAY, run_checks

OF_STRENGTH: Final = [name for name, stage in GROUP_OF.items() if stage == "strength"]
OF_DAYS: Final = {"needed-too-soon", "no-day-free"}
WORKSHOP: Final = load_profile(DEMONSTRATION)
BARE: Final = settings(
    deadline=None,
    suppress_health_check=(
        HealthCheck.too_slow,
        HealthCheck.data_too_large,
        HealthCheck.filter_too_much,
    ),
)


def said(document: Json, names: Iterable[str], workshop: Workshop = WORKSHOP) -> list[Finding]:
    """Collect what some checks say of an order."""
    order = read_order(document, workshop)
    stages = stages_of(order, workshop, TODAY)
    return run_checks([*names], stages)


def said_without_the_plate(document: Json) -> list[Finding]:
    """Collect what the checks say that ask nothing of the plate and nothing of the calendar."""
    planned = plan(read_order(document, WORKSHOP), StageContext(WORKSHOP, None, TODAY))
    unassessed = Assessed(planned, (), (), Curing(0.0, 20.0), 20.0)
    unscheduled = Scheduled(unassessed, (), None)
    checks = [check for check in PROMISE_CHECKS if not OF_DAYS & set(check.names)]
    return [
        *(finding for check in SHAPE_CHECKS for finding in check.run(planned)),
        *(finding for check in checks for finding in check.run(Judged(unscheduled, ()))),
    ]


def without_names(document: Json) -> Json:
    """Leave out the names that customers gave, so that only our own words are read."""
    slabs = [
        {key: _without_labels(value) for key, value in slab.items() if key != "label"}
        for slab in document["slabs"]
    ]
    return {**document, "slabs": slabs}


def _without_labels(value: Any) -> Any:  # noqa: ANN401  any member of a slab
    if isinstance(value, list):
        return [
            {k: v for k, v in part.items() if k != "label"} if isinstance(part, dict) else part
            for part in value
        ]
    return value


@pytest.mark.parametrize("name", AWKWARD)
def test_awkward_orders_are_described_plainly(name: str) -> None:
    """No sentence over the gallery is too long, unfinished or in words of our own."""
    read_aloud(said_without_the_plate(without_names(AWKWARD[name])))
    assert all(
        len(in_english(finding)) <= LONGEST for finding in said_without_the_plate(AWKWARD[name])
    )


@settings(BARE, max_examples=cases(40, long=1000))
@given(orders())
def test_any_order_is_described_plainly(document: Json) -> None:
    """Nor is any over a few hundred random orders, in any unit and with any label."""
    read_aloud(said_without_the_plate(without_names(document)))
    assert all(len(in_english(finding)) <= LONGEST for finding in said_without_the_plate(document))


@settings(BARE, max_examples=8)
@given(modest_orders())
def test_strength_is_described_plainly(document: Json) -> None:
    """What the plate finds in random orders is stated as plainly."""
    if not any(finding.level == "stops" for finding in said_without_the_plate(document)):
        read_aloud(said(document, OF_STRENGTH))


@pytest.mark.parametrize("name", ["a vanity with two bowls", "a hearth"])
def test_ordinary_jobs_are_described_plainly(name: str) -> None:
    """Every check speaks plainly of jobs that are made every month."""
    read_aloud(said(JOBS[name], GROUP_OF))


@pytest.mark.parametrize("name", ["25 mm over 2 m", "legs at the ends of 2.6 m, 30 mm thick"])
def test_breakers_are_described_plainly(name: str) -> None:
    """And of slabs that are known to break."""
    read_aloud(said(BREAKERS[name][0], GROUP_OF))


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("The strip is 38 mm wide; it needs 60 mm.", None),
        ("The strip is 38 mm wide", "no full stop"),
        ("the strip is 38 mm wide.", "no capital"),
        ("The strip  is narrow.", "double space"),
        ("Enter a valid length, please.", "says please"),
        ("The polygon is narrow.", "says polygon"),
        ("It is None mm wide.", "says None"),
        ("It takes 1 people.", "counts 1 people"),
        ("It takes three person.", "counts three person"),
        ("It is 38.12345 mm wide.", "shows .12345"),
        ("“please” is no shade of ours.", None),
    ],
)
def test_a_badly_said_sentence_is_found(text: str, fault: str | None) -> None:
    """What this file listens for, it hears."""
    assert (fault in faults(text)) if fault else faults(text) == []
