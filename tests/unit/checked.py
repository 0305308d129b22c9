"""One check of one order, without the rest of its stage."""

from collections.abc import Callable, Collection, Iterable, Mapping
from datetime import date
from typing import Any, Final

from ledgerstone.checks import (
    PROMISE_CHECKS,
    SHAPE_CHECKS,
    STRENGTH_CHECKS,
    Finding,
)
from ledgerstone.message import Value
from ledgerstone.stages import Planned
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.in_english import in_english
from support.slabs import box, order_of, slab_json, stages_of
from support.stages import Stages

PlannedCheck = Callable[[Planned], Iterable[Finding]]
TODAY: Final = date(2026, 11, 25)
FITTED: Final[Json] = {"kind": "fitted", "postcode": "HR9 7XX"}
PALLET: Final[Json] = {"kind": "pallet", "postcode": "HR9 7XX"}


def found(workshop: Workshop, name: str, *slabs: Json, **more: object) -> list[Finding]:
    """Return what the check of that name says of an order; each sentence ends as one."""
    order = order_of(workshop, *slabs, **more)
    every = run_checks({name}, stages_of(order, workshop, TODAY))
    assert all(
        len(in_english(finding)) <= 240 and in_english(finding).endswith(".") for finding in every
    )
    return [finding for finding in every if finding.check == name]


def run_checks(names: Collection[str], stages: Stages) -> list[Finding]:
    """Run the checks that may yield one of some names, each on its stage's record."""
    wanted = set(names)
    return [
        *(f for c in SHAPE_CHECKS if wanted & {*c.names} for f in c.run(stages.planned)),
        *(f for c in STRENGTH_CHECKS if wanted & {*c.names} for f in c.run(stages.known)),
        *(f for c in PROMISE_CHECKS if wanted & {*c.names} for f in c.run(stages.judged)),
    ]


def levels(findings: list[Finding]) -> list[str]:
    """Return the levels of some findings."""
    return [finding.level for finding in findings]


def plain(length: object = 1400, width: object = 600, **more: Any) -> Json:
    """Write a plain slab 40 mm thick."""
    return slab_json(box(length, width), **more)


def values_of(finding: Finding, name: str) -> Mapping[str, Value]:
    """Return the values of a finding's message, which has a name."""
    assert finding.message.name == name
    return finding.message.values
