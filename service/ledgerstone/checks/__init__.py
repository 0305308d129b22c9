"""Every check of an order, in stages; what a stopped stage leaves unchecked is said."""

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
from ledgerstone.checks.checked import Checked, WorkedOut
from ledgerstone.checks.failed import CHECK_FAILED, check_failed
from ledgerstone.checks.finding import Finding, Level
from ledgerstone.checks.occasions import WHENS, When
from ledgerstone.checks.repeats import collapse_repeats
from ledgerstone.containment import Contain, let_through
from ledgerstone.stages import Judged, Planned, Scheduled, Unassessed

__all__ = [
    "PROMISE_CHECKS",
    "SHAPE_CHECKS",
    "STAGES",
    "STAGE_OF",
    "STRENGTH_CHECKS",
    "WHENS",
    "Check",
    "Checked",
    "Finding",
    "Level",
    "Stage",
    "Timed",
    "When",
    "WorkedOut",
    "check_plan",
    "check_promise",
    "check_strength",
    "stage_of",
    "stop_of_plans",
]

Stage = Literal["shape", "strength", "promise"]
STAGES: tuple[Stage, ...] = ("shape", "strength", "promise")
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
STRENGTH_CHECKS: tuple[Check[Judged], ...] = (
    Check(("rests-not-told",), strength.rests_told, may_stop=False),
    Check(("rest-under-nothing", "tips-over"), strength.rests_under_the_slab),
    Check(("cracks-when-moved", "too-heavy-to-handle"), moving.moved_whole),
    Check(("cracks-in-place",), strength.lies_whole),
    Check(("rails-needed",), rails.rails_needed, may_stop=False),
    Check(("flat-rail-in-the-way",), rails.flat_rails_in_the_way, may_stop=False),
    Check(("free-corner", "level-the-rests"), strength.corners_and_level, may_stop=False),
    Check(("tips-when-sat-on",), strength.stays_down, may_stop=False),
    Check(("carry-on-edge",), moving.carried_on_edge, may_stop=False),
    Check(("young-concrete",), moving.tested_first, may_stop=False),
    Check(("sags",), strength.looks_flat, may_stop=False),
    Check(("sun-on-fixed",), sun.free_to_move, may_stop=False),
)
PROMISE_CHECKS: tuple[Check[Scheduled], ...] = (
    Check(
        ("postcode-needed", "postcode-unknown", "area-not-served", "way-not-served"),
        promise.delivery_served,
    ),
    Check(("no-day-free",), promise.has_a_day),
    Check(("needed-too-soon", "in-time"), promise.in_time),
    Check(("young-in-place",), age.old_enough_in_place, may_stop=False),
    Check(("too-long-for-pallet", "too-heavy-for-pallet"), carrier.fits_a_pallet),
    Check(("too-much-for-van",), carrier.fits_our_van),
    Check(("beyond-tail-lift",), carrier.tail_lift_takes_it, may_stop=False),
    Check(("set-down-at-kerb",), carrier.set_down_at_the_kerb, may_stop=False),
    Check(("vehicle-to-collect",), carrier.vehicle_to_collect, may_stop=False),
    Check(("doorway-too-narrow",), access.through_the_doorway),
    Check(("turn-too-tight",), access.round_the_turn),
    Check(("lift-too-small", "lift-overloaded"), access.into_the_lift),
    Check(("too-heavy-for-steps",), access.up_the_steps),
    Check(("beyond-hands",), people.beyond_hands, may_stop=False),
    Check(("hands-needed",), people.hands_at_the_other_end, may_stop=False),
    Check(("way-in-not-told",), people.way_in_told, may_stop=False),
    Check(("load-on-units",), units.load_on_units, may_stop=False),
    Check(("join-to-itself", "join-suggested"), joins.joins_as_suggested, may_stop=False),
    Check(("join-of-unlike-sides", "join-of-unlike-thickness"), joins.sides_meet, may_stop=False),
    Check(("join-of-unlike-looks",), joins.looks_meet, may_stop=False),
    Check(("join-through-relief",), joins.carried_through, may_stop=False),
    Check(("drop-not-checked",), joins.drops_hang, may_stop=False),
    Check(("hot-appliance", "sealer-near-heat"), wear.hot_appliances, may_stop=False),
    Check(("hearth",), wear.hearths, may_stop=False),
    Check(("electrics-near-water",), wear.electrics_near_water, may_stop=False),
    Check(("mix-for-place",), place.mix_for_the_place, may_stop=False),
    Check(("drip-advised",), place.drips_outdoors, may_stop=False),
    Check(("fall-advised",), place.falls_outdoors, may_stop=False),
    Check(("dark-outdoors",), place.dark_shades_outdoors, may_stop=False),
    Check(("acids-and-oil",), wear.acids_and_oil, may_stop=False),
    Check(("food-surface",), wear.food_surfaces, may_stop=False),
)
# Every name that a finding may have, with its stage. Where the plate has no answer for a slab,
# that is found in place of what the checks of strength would find.
STAGE_OF: Mapping[str, Stage] = {
    **{name: "shape" for check in SHAPE_CHECKS for name in check.names},
    "strength-unknown": "strength",
    **{name: "strength" for check in STRENGTH_CHECKS for name in check.names},
    **{name: "promise" for check in PROMISE_CHECKS for name in check.names},
}


def check_plan(planned: Planned, contain: Contain = let_through) -> list[Finding]:
    """Run the checks of the slabs' plans."""
    return list(_findings("shape", SHAPE_CHECKS, planned, contain))


def check_strength(judged: Judged | Unassessed, contain: Contain = let_through) -> list[Finding]:
    """Run the checks of strength; where the plate has no answer, that is what is found."""
    if isinstance(judged, Unassessed):
        return list(strength.not_worked_out(judged))
    return list(_findings("strength", STRENGTH_CHECKS, judged, contain))


def check_promise(scheduled: Scheduled, contain: Contain = let_through) -> list[Finding]:
    """Run the checks of what the workshop can promise."""
    return list(_findings("promise", PROMISE_CHECKS, scheduled, contain))


def stop_of_plans(planned: Planned) -> Finding | None:
    """Return what first stops an order in the stage of shape; no check after it is run."""
    findings = _findings("shape", SHAPE_CHECKS, planned, let_through)
    return next((one for one in findings if one.level == "stops"), None)


def _findings(
    stage: Stage, checks: Iterable[Check[R]], record: R, contain: Contain
) -> Iterator[Finding]:
    failed: dict[Level, list[str]] = {}
    for check in checks:
        found = _contained(check, record, contain)
        if found is None:
            level: Level = "stops" if check.may_stop else "caution"
            failed.setdefault(level, []).append(check.names[0])
        yield from found or ()
    yield from (check_failed(level, stage, names) for level, names in failed.items())


def _contained(check: Check[R], record: R, contain: Contain) -> list[Finding] | None:
    """Run one check; none where a fault of ours lost what it had to say."""
    with contain("check"):
        return list(collapse_repeats(check.run(record)))
    return None


def stage_of(finding: Finding) -> Stage:
    """Return the stage of the check that a finding comes from."""
    if finding.check == CHECK_FAILED:
        return next(stage for stage in STAGES if finding.key.startswith(stage))
    return STAGE_OF[finding.check]
