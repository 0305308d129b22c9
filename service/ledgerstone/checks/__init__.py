"""Every check of an order, in three groups; a group that stops an order ends the run."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import AbstractContextManager
from dataclasses import dataclass
from typing import Generic, Literal, TypeVar

from ledgerstone.checks import (
    access,
    age,
    carrier,
    edges,
    joins,
    left_open,
    moving,
    necks,
    people,
    place,
    pouring,
    promise,
    rails,
    shade,
    shape,
    size,
    steel,
    strength,
    sun,
    thickness,
    units,
    wear,
)
from ledgerstone.checks.audience import for_customers
from ledgerstone.checks.causes import first_stops, is_said_by
from ledgerstone.checks.checked import Checked, StageRecords
from ledgerstone.checks.failed import CHECK_FAILED, check_failed
from ledgerstone.checks.finding import Finding, Level
from ledgerstone.checks.occasions import OCCASIONS, Occasion
from ledgerstone.checks.repeats import collapse_repeats
from ledgerstone.containment import Contain, uncontained
from ledgerstone.stages import Assessed, Judged, Planned, Unassessed

__all__ = [
    "CHECK_GROUPS",
    "GROUP_OF",
    "OCCASIONS",
    "PROMISE_CHECKS",
    "SHAPE_CHECKS",
    "STRENGTH_CHECKS",
    "Check",
    "CheckGroup",
    "Checked",
    "Finding",
    "Level",
    "Occasion",
    "StageRecords",
    "Timed",
    "check_plan",
    "check_promise",
    "check_strength",
    "first_stops",
    "for_customers",
    "group_of",
    "is_said_by",
    "stop_of_plans",
]

CheckGroup = Literal["shape", "strength", "promise"]
CHECK_GROUPS: tuple[CheckGroup, ...] = ("shape", "strength", "promise")
Timed = Callable[[str], AbstractContextManager[object]]
R = TypeVar("R")


@dataclass(frozen=True, slots=True)
class Check(Generic[R]):
    """One check: which findings it may yield, and the function of its stage's record.

    ``may_stop`` is whether one of them may stop an order.
    """

    names: tuple[str, ...]
    run: Callable[[R], Iterable[Finding]]
    may_stop: bool = True


SHAPE_CHECKS: tuple[Check[Planned], ...] = (
    Check(("too-big-for-table",), size.fits_the_table),
    Check(("too-thin", "too-thick"), size.thick_enough),
    Check(("odd-thickness",), size.thickness_stocked, may_stop=False),
    Check(("thickness-taken",), left_open.thickness_taken, may_stop=False),
    Check(("sliver",), size.wide_enough),
    Check(("cutout-off-slab",), shape.cutouts_on_the_slab),
    Check(("cutouts-overlap",), shape.cutouts_apart),
    Check(("two-pieces",), shape.one_piece),
    Check(("strip-too-narrow",), shape.strips_wide_enough),
    Check(("inside-corner-too-tight",), shape.inside_corners),
    Check(("neck-too-narrow",), necks.necks_wide_enough),
    Check(("relief-off-slab",), thickness.reliefs_on_the_slab),
    Check(("relief-too-deep",), thickness.reliefs_shallow_enough),
    Check(("too-thin-for-drip",), thickness.drips_shallow_enough),
    Check(("edge-not-made",), edges.profiles_made),
    Check(("edge-too-deep", "edge-too-thin-for-finish"), edges.edges_thick_enough),
    Check(("cutout-over-unit-side",), units.clear_of_unit_sides),
    Check(("pour-too-slow",), pouring.poured_in_time),
    Check(("sealer-not-for-place",), place.sealer_for_the_place),
    Check(("shade-not-matched",), shade.matching_offered),
    Check(("shade-out-of-reach",), shade.within_reach, may_stop=False),
    Check(("dose-over-limit",), shade.dose_within_limit),
    Check(("aggregate-too-large",), steel.grains_pass),
    Check(("cover-too-thin", "steel-rusts"), steel.steel_covered),
)
STRENGTH_CHECKS: tuple[Check[Assessed], ...] = (
    Check(("rests-not-told",), strength.rests_given, may_stop=False),
    Check(("rest-under-nothing", "tips-over"), strength.rests_under_the_slab),
    Check(("cracks-when-moved", "too-heavy-to-handle"), moving.survives_handling),
    Check(("cracks-in-place",), strength.holds_in_place),
    Check(("rails-needed",), rails.rails_needed, may_stop=False),
    Check(("flat-rail-in-the-way",), rails.flat_rails_in_the_way, may_stop=False),
    Check(("free-corner", "level-the-rests"), strength.corners_and_level, may_stop=False),
    Check(("tips-when-sat-on",), strength.does_not_tip, may_stop=False),
    Check(("carry-on-edge",), moving.carried_on_edge, may_stop=False),
    Check(("young-concrete",), moving.tested_first, may_stop=False),
    Check(("sags",), strength.looks_flat, may_stop=False),
    Check(("sun-on-fixed",), sun.free_to_move, may_stop=False),
)
PROMISE_CHECKS: tuple[Check[Judged], ...] = (
    Check(
        ("postcode-needed", "postcode-unknown", "area-not-served", "way-not-served"),
        promise.delivery_served,
    ),
    Check(("no-day-free",), promise.day_available),
    Check(("needed-too-soon", "in-time"), promise.in_time),
    Check(("young-in-place",), age.old_enough_in_place, may_stop=False),
    Check(("too-long-for-pallet", "too-heavy-for-pallet"), carrier.fits_a_pallet),
    Check(("too-much-for-van",), carrier.fits_our_van),
    Check(("beyond-tail-lift",), carrier.fits_tail_lift, may_stop=False),
    Check(("set-down-at-kerb",), carrier.delivered_to_kerb, may_stop=False),
    Check(("vehicle-to-collect",), carrier.vehicle_to_collect, may_stop=False),
    Check(("doorway-too-narrow",), access.fits_doorway),
    Check(("turn-too-tight",), access.fits_turn),
    Check(("lift-too-small", "lift-overloaded"), access.fits_lift),
    Check(("too-heavy-for-steps",), access.carried_up_steps),
    Check(("beyond-hands",), people.beyond_hands, may_stop=False),
    Check(("hands-needed",), people.hands_at_the_other_end, may_stop=False),
    Check(("way-in-not-told",), people.way_in_given, may_stop=False),
    Check(("load-on-units",), units.load_on_units, may_stop=False),
    Check(("join-to-itself", "join-suggested"), joins.joins_as_suggested, may_stop=False),
    Check(("join-of-unlike-sides", "join-of-unlike-thickness"), joins.sides_meet, may_stop=False),
    Check(("join-of-unlike-looks",), joins.looks_meet, may_stop=False),
    Check(("join-through-relief",), joins.detail_at_join, may_stop=False),
    Check(("drop-not-checked",), joins.drops_not_checked, may_stop=False),
    Check(("hot-appliance", "sealer-near-heat"), wear.hot_appliances, may_stop=False),
    Check(("hearth",), wear.hearths, may_stop=False),
    Check(("electrics-near-water",), wear.electrics_near_water, may_stop=False),
    Check(("mix-for-place",), place.mix_for_the_place, may_stop=False),
    Check(("drip-advised",), place.drips_outdoors, may_stop=False),
    Check(("fall-advised",), place.falls_outdoors, may_stop=False),
    Check(("dark-outdoors",), place.dark_shades_outdoors, may_stop=False),
    Check(("acids-and-oil",), wear.acids_and_oil, may_stop=False),
    Check(("food-surface",), wear.food_surfaces, may_stop=False),
    Check(("left-to-us",), left_open.rest_taken, may_stop=False),
)
# Every name that a finding may have, with the group of its check. Where the plate has no answer
# for a slab, that is found in place of what the checks of strength would find.
GROUP_OF: Mapping[str, CheckGroup] = {
    **{name: "shape" for check in SHAPE_CHECKS for name in check.names},
    "strength-unknown": "strength",
    **{name: "strength" for check in STRENGTH_CHECKS for name in check.names},
    **{name: "promise" for check in PROMISE_CHECKS for name in check.names},
}


def check_plan(planned: Planned, contain: Contain = uncontained) -> list[Finding]:
    """Run the checks of the slabs' plans."""
    return list(_findings("shape", SHAPE_CHECKS, planned, contain))


def check_strength(
    assessed: Assessed | Unassessed, contain: Contain = uncontained
) -> list[Finding]:
    """Run the checks of strength; where the plate has no answer, that is what is found."""
    if isinstance(assessed, Unassessed):
        return list(strength.not_worked_out(assessed))
    return list(_findings("strength", STRENGTH_CHECKS, assessed, contain))


def check_promise(judged: Judged, contain: Contain = uncontained) -> list[Finding]:
    """Run the checks of what the workshop can promise."""
    return list(_findings("promise", PROMISE_CHECKS, judged, contain))


def stop_of_plans(planned: Planned) -> Finding | None:
    """Return what first stops an order by its shape; no check after it is run."""
    findings = _findings("shape", SHAPE_CHECKS, planned, uncontained)
    return next((finding for finding in findings if finding.level == "stops"), None)


def _findings(
    group: CheckGroup, checks: Iterable[Check[R]], record: R, contain: Contain
) -> Iterator[Finding]:
    failed: dict[Level, list[str]] = {}
    for check in checks:
        found = _contained(check, record, contain)
        if found is None:
            level: Level = "stops" if check.may_stop else "caution"
            failed.setdefault(level, []).append(check.names[0])
        yield from found or ()
    yield from (check_failed(level, group, names) for level, names in failed.items())


def _contained(check: Check[R], record: R, contain: Contain) -> list[Finding] | None:
    """Run one check; None if an internal fault lost its findings."""
    with contain("check"):
        return list(collapse_repeats(check.run(record)))
    return None


def group_of(finding: Finding) -> CheckGroup:
    """Return the group of the check that a finding comes from."""
    if finding.check == CHECK_FAILED:
        return next(group for group in CHECK_GROUPS if finding.key.startswith(group))
    return GROUP_OF[finding.check]
