"""Every check of an order, in stages; what a stopped stage leaves unchecked is said."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import AbstractContextManager, nullcontext
from dataclasses import dataclass
from typing import Literal

from ledgerstone.checks import (
    access,
    carrier,
    edges,
    hands,
    joins,
    moving,
    necks,
    place,
    pouring,
    promise,
    shade,
    shape,
    size,
    steel,
    strength,
    thickness,
    units,
    wear,
)
from ledgerstone.checks.crowd import gathered
from ledgerstone.checks.facts import Facts
from ledgerstone.checks.finding import LEVELS, Finding, Level
from ledgerstone.errors import PlateError
from ledgerstone.order import Order
from ledgerstone.workshop.records import Workshop

__all__ = [
    "CHECKS",
    "STAGES",
    "Check",
    "Checked",
    "Facts",
    "Finding",
    "Level",
    "Stage",
    "Timed",
    "check_order",
    "run_stage",
    "stage_of",
    "stop_of_plans",
]

Stage = Literal["shape", "strength", "promise"]
STAGES: tuple[Stage, ...] = ("shape", "strength", "promise")
Checker = Callable[[Order, Facts, Workshop], Iterable[Finding]]
Timed = Callable[[str], AbstractContextManager[object]]


@dataclass(frozen=True, slots=True)
class Check:
    """One check: which findings it may yield, when it runs, and the function itself."""

    names: tuple[str, ...]
    stage: Stage
    run: Checker


CHECKS: tuple[Check, ...] = (
    Check(("too-big-for-table",), "shape", size.fits_the_table),
    Check(("too-thin", "too-thick"), "shape", size.thick_enough),
    Check(("odd-thickness",), "shape", size.thickness_stocked),
    Check(("sliver",), "shape", size.wide_enough),
    Check(("cutout-off-slab",), "shape", shape.cutouts_on_the_slab),
    Check(("cutouts-overlap",), "shape", shape.cutouts_apart),
    Check(("two-pieces",), "shape", shape.one_piece),
    Check(("strip-too-narrow",), "shape", shape.strips_wide_enough),
    Check(("inside-corner-too-tight",), "shape", shape.inside_corners),
    Check(("neck-too-narrow",), "shape", necks.necks_wide_enough),
    Check(("relief-off-slab",), "shape", thickness.reliefs_on_the_slab),
    Check(("relief-too-deep",), "shape", thickness.reliefs_shallow_enough),
    Check(("too-thin-for-drip",), "shape", thickness.drips_shallow_enough),
    Check(("edge-not-made",), "shape", edges.profiles_made),
    Check(("edge-too-deep", "edge-too-thin-for-finish"), "shape", edges.edges_thick_enough),
    Check(("cutout-over-unit-side",), "shape", units.clear_of_unit_sides),
    Check(("pour-too-slow",), "shape", pouring.poured_in_time),
    Check(("sealer-not-for-place",), "shape", place.sealer_for_the_place),
    Check(("shade-not-matched",), "shape", shade.matching_offered),
    Check(("shade-out-of-reach",), "shape", shade.within_reach),
    Check(("dose-over-limit",), "shape", shade.dose_within_limit),
    Check(("aggregate-too-large",), "shape", steel.grains_pass),
    Check(("cover-too-thin", "steel-rusts"), "shape", steel.steel_covered),
    Check(("strength-unknown",), "strength", strength.worked_out),
    Check(("rests-not-told",), "strength", strength.rests_told),
    Check(("rest-under-nothing", "tips-over"), "strength", strength.rests_under_the_slab),
    Check(("cracks-when-moved", "too-heavy-to-handle"), "strength", moving.moved_whole),
    Check(("cracks-in-place",), "strength", strength.lies_whole),
    Check(("free-corner", "level-the-rests"), "strength", strength.corners_and_level),
    Check(("tips-when-sat-on",), "strength", strength.stays_down),
    Check(("carry-on-edge",), "strength", moving.carried_on_edge),
    Check(("young-concrete",), "strength", moving.tested_first),
    Check(("sags",), "strength", strength.looks_flat),
    Check(
        ("postcode-needed", "postcode-unknown", "area-not-served", "way-not-served"),
        "promise",
        promise.delivery_served,
    ),
    Check(("no-day-free",), "promise", promise.has_a_day),
    Check(("needed-too-soon", "in-time"), "promise", promise.in_time),
    Check(("too-long-for-pallet", "too-heavy-for-pallet"), "promise", carrier.fits_a_pallet),
    Check(("too-much-for-van",), "promise", carrier.fits_our_van),
    Check(("beyond-tail-lift",), "promise", carrier.tail_lift_takes_it),
    Check(("set-down-at-kerb",), "promise", carrier.set_down_at_the_kerb),
    Check(("vehicle-to-collect",), "promise", carrier.vehicle_to_collect),
    Check(("doorway-too-narrow",), "promise", access.through_the_doorway),
    Check(("turn-too-tight",), "promise", access.round_the_turn),
    Check(("lift-too-small", "lift-overloaded"), "promise", access.into_the_lift),
    Check(("too-heavy-for-steps",), "promise", access.up_the_steps),
    Check(("beyond-hands",), "promise", hands.beyond_hands),
    Check(("hands-needed",), "promise", hands.hands_at_the_other_end),
    Check(("way-in-not-told",), "promise", hands.way_in_told),
    Check(("load-on-units",), "promise", units.load_on_units),
    Check(("join-to-itself", "join-suggested"), "promise", joins.joins_as_suggested),
    Check(("join-of-unlike-sides", "join-of-unlike-thickness"), "promise", joins.sides_meet),
    Check(("join-of-unlike-looks",), "promise", joins.looks_meet),
    Check(("join-through-relief",), "promise", joins.carried_through),
    Check(("drop-not-checked",), "promise", joins.drops_hang),
    Check(("hot-appliance", "sealer-near-heat"), "promise", wear.hot_appliances),
    Check(("hearth",), "promise", wear.hearths),
    Check(("electrics-near-water",), "promise", wear.electrics_near_water),
    Check(("mix-for-place",), "promise", place.mix_for_the_place),
    Check(("drip-advised",), "promise", place.drips_outdoors),
    Check(("fall-advised",), "promise", place.falls_outdoors),
    Check(("dark-outdoors",), "promise", place.dark_shades_outdoors),
    Check(("acids-and-oil",), "promise", wear.acids_and_oil),
    Check(("food-surface",), "promise", wear.food_surfaces),
)


@dataclass(frozen=True, slots=True)
class Checked:
    """What all checks that ran have to say, and the stages that did not run."""

    findings: tuple[Finding, ...]
    not_checked: tuple[Stage, ...]

    @property
    def stops(self) -> tuple[Finding, ...]:
        """The findings for which the order cannot be done as asked."""
        return tuple(finding for finding in self.findings if finding.level == "stops")


def check_order(
    facts: Facts, stages: tuple[Stage, ...] = STAGES, timed: Timed = nullcontext
) -> Checked:
    """Run the checks, stage by stage, until one stage stops the order.

    What stops it stands first, then cautions, then notes; else in the order of the checks.

    Parameters
    ----------
    timed
        Is entered for each stage by its name, by who wants to know how long it takes.
    """
    findings: list[Finding] = []
    for i, stage in enumerate(stages):
        with timed(stage):
            findings += run_stage(stage, facts)
        if any(finding.level == "stops" for finding in findings):
            return Checked(_gravest_first(findings), stages[i + 1 :])
    return Checked(_gravest_first(findings), ())


def _gravest_first(findings: Sequence[Finding]) -> tuple[Finding, ...]:
    return tuple(sorted(findings, key=lambda finding: LEVELS.index(finding.level)))


def run_stage(stage: Stage, facts: Facts) -> Sequence[Finding]:
    """Run the checks of one stage; where the plate has no answer, that is what is found."""
    try:
        return list(_found(stage, facts))
    except PlateError:
        return list(strength.not_worked_out(facts))


def stop_of_plans(facts: Facts) -> Finding | None:
    """Return what first stops an order in the stage of shape; no check after it is run."""
    return next((one for one in _found("shape", facts) if one.level == "stops"), None)


def _found(stage: Stage, facts: Facts) -> Iterator[Finding]:
    for check in CHECKS:
        if check.stage == stage:
            yield from gathered(check.run(facts.order, facts, facts.workshop))


def stage_of(finding: Finding) -> Stage:
    """Return the stage of the check that a finding comes from."""
    return next(check.stage for check in CHECKS if finding.check in check.names)
