"""An order worked out, stage by stage; without a thickness, at one of ours that holds."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, nullcontext
from dataclasses import replace
from typing import Final

from ledgerstone.checks import (
    CHECK_GROUPS,
    Checked,
    CheckGroup,
    Finding,
    StageRecords,
    Timed,
    check_plan,
    check_promise,
    check_strength,
)
from ledgerstone.checks.causes import with_causes
from ledgerstone.checks.failed import check_failed
from ledgerstone.containment import Contain, uncontained
from ledgerstone.order import LeftOpen, Order, Slab
from ledgerstone.remedies.offers import OFFERS
from ledgerstone.remedies.size_offers import (
    SAME_THICKNESS_MM,
    joined,
    other_thickness,
    stocked_thickness,
)
from ledgerstone.stages import (
    Assessed,
    StageContext,
    assess,
    judge,
    plan,
    price_work,
    schedule,
)
from ledgerstone.workshop.records import Shaping

# The checks that another thickness may settle.
_OF_THICKNESS: Final = frozenset(name for name, row in OFFERS.items() if other_thickness in row)


def run_stages(
    order: Order,
    context: StageContext,
    *,
    groups: tuple[CheckGroup, ...] = CHECK_GROUPS,
    timed: Timed = nullcontext,
    contain: Contain = uncontained,
) -> Checked:
    """Work an order out, each stage with its checks, until one stops it.

    Where an internal fault loses a stage, that is what is found.
    """
    findings: list[Finding] = []
    planned = assessed = judged = priced = None
    with timed("shape"), _or_failed("shape", findings, contain):
        planned = plan(order, context)
        findings += check_plan(planned, contain)
    if planned is None or _stopped(findings):
        return Checked(with_causes(findings), groups[1:], planned)
    with timed("strength"), _or_failed("strength", findings, contain):
        assessed = assess(planned, context)
        findings += check_strength(assessed, contain)
    if not isinstance(assessed, Assessed) or _stopped(findings) or "promise" not in groups:
        return Checked(with_causes(findings), groups[2:], planned)
    with timed("promise"), _or_failed("promise", findings, contain):
        judged = judge(assessed, schedule(assessed, context))
        findings += check_promise(judged, contain)
        priced = None if _stopped(findings) else price_work(judged.scheduled, context.terms)
    records = None if judged is None or priced is None else StageRecords(judged, priced)
    return Checked(with_causes(findings), (), planned, records)


def _stopped(findings: Sequence[Finding]) -> bool:
    return any(finding.level == "stops" for finding in findings)


@contextmanager
def _or_failed(group: CheckGroup, findings: list[Finding], contain: Contain) -> Iterator[None]:
    """Find that nothing of a group could be checked where an internal fault loses its stage."""
    done = False
    with contain("check"):
        yield
        done = True
    if not done:
        findings.append(check_failed("stops", group, (group,)))


def run_stages_as_left(
    order: Order,
    context: StageContext,
    may_try: Callable[[Order], bool],
    *,
    timed: Timed = nullcontext,
    contain: Contain = uncontained,
) -> tuple[Order, Checked]:
    """Work an order out; where the usual thickness that was taken does not do, at one that does.

    The stocked ones are tried that are thicker, the thinnest first, then the thinner ones. Where
    none does, the usual one stands, and so does what was taken for an offer that is changed.

    Parameters
    ----------
    may_try
        Says of each order, before it is worked out, whether there is budget for it.
    """
    checked = run_stages(order, context, timed=timed, contain=contain)
    slabs = _too_weak(order, checked)
    if slabs and order.since is None:
        for other in _at_other_thicknesses(order, slabs, context.workshop.shaping):
            if not may_try(other):
                break
            again = run_stages(other, context, timed=timed, contain=contain)
            if again.records is not None:
                return other, again
    return order, checked


def _too_weak(order: Order, checked: Checked) -> list[int]:
    """List the slabs whose thickness was not given and that another one might help."""
    stops = [finding for finding in checked.stops if finding.check in _OF_THICKNESS]
    every = range(len(order.slabs))
    affected = {
        k for stop in stops for k in (every if stop.slab is None else joined(order, stop.slab))
    }
    return [k for k in sorted(affected) if "thickness" in order.slabs[k].taken]


def _at_other_thicknesses(order: Order, slabs: Sequence[int], shaping: Shaping) -> Iterator[Order]:
    """Yield the order with some of its slabs of each other thickness in stock."""
    usual_mm = order.slabs[slabs[0]].thickness.mm
    stocked = sorted(shaping.thicknesses_mm)
    thicker = [mm for mm in stocked if mm > usual_mm + SAME_THICKNESS_MM]
    thinner = [mm for mm in reversed(stocked) if mm < usual_mm - SAME_THICKNESS_MM]
    for mm in (*thicker, *thinner):
        made = (
            _at(slab, mm, shaping) if k in slabs else slab for k, slab in enumerate(order.slabs)
        )
        yield replace(order, slabs=tuple(made))


def _at(slab: Slab, mm: float, shaping: Shaping) -> Slab:
    """Give a slab another thickness than the usual one, in the unit of its sizes."""
    taken: tuple[LeftOpen, ...] = tuple(
        "other-thickness" if name == "thickness" else name for name in slab.taken
    )
    return replace(slab, thickness=stocked_thickness(slab.thickness, mm, shaping), taken=taken)
