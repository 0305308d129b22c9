"""Checks of a slab in place: on rests that carry it, without cracking, tipping or sagging."""

from __future__ import annotations

from collections.abc import Iterable

from shapely.geometry import Point

from ledgerstone.checks.finding import Finding, geojson, only
from ledgerstone.checks.verdicts import CARES, finding_of
from ledgerstone.checks.where import spot_words
from ledgerstone.errors import PlateError
from ledgerstone.order import Slab
from ledgerstone.stages import (
    Judged,
    Planned,
    StageContext,
    Unassessed,
    assess_handling,
    assess_in_place,
)
from ledgerstone.strength.rests import Bearing
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.strength.verdict import Case, Verdict, worst
from ledgerstone.wording import capital, slab_words, slabs_words

_LYING: dict[str, str] = {
    "own-weight": "Under its own weight",
    "even-load": "With a kitchen's weight spread over it",
    "somebody-sitting": "With somebody sitting on it",
    "somebody-leaning": "With somebody leaning on it",
    "somebody-standing": "With somebody standing on it",
    "low-rest": "With one rest a little low",
    "after-a-crack": "Once cracked, with somebody sitting on it",
}
CRACKS = ("cracks-in-place", "cracks-when-moved")
_SIT: tuple[Case, ...] = ("free-corner", "low-rest-and-sitting")


def not_worked_out(unassessed: Unassessed) -> Iterable[Finding]:
    """Say of which slabs nobody knows whether they crack."""
    order = unassessed.planned.order
    for i in unassessed.slabs:
        yield Finding(
            "strength-unknown",
            "stops",
            f"We could not work out whether {slab_words(order.slabs[i], i, len(order.slabs))} will"
            " crack: its shape is too detailed.",
            "the plate has no answer",
            slab=i,
            at=(f"/slabs/{i}",),
        )


def rests_told(judged: Judged) -> Iterable[Finding]:
    """What a slab rests on was told, or the customer is asked: once for all of them."""
    order = judged.planned.order
    untold = [
        i
        for i, slab in enumerate(order.slabs)
        if slab.rests is None and slab.use in ("worktop", "table", "shelf", "sill")
    ]
    if untold:
        their = "its" if len(untold) == 1 else "their"
        yield Finding(
            "rests-not-told",
            "caution",
            f"Tell us what {slabs_words(order, untold)} will rest on. Until then we can't check"
            f" {their} strength there.",
            "nothing was told",
            slab=only(untold),
            at=tuple(f"/slabs/{i}" for i in untold),
        )


def rests_under_the_slab(judged: Judged) -> Iterable[Finding]:
    """Every rest meets concrete, and the slab's weight lies between them."""
    order = judged.planned.order
    for i, slab, _, strength in judged.slabs():
        name = slab_words(slab, i, len(order.slabs))
        stops = _must_stop(slab, strength)
        for bearing in {one.pointer: one for one in strength.in_place.off_the_slab}.values():
            yield _off_the_slab(i, slab, name, bearing, stops=stops)
        tips = strength.in_place.tips_alone
        if tips is not None:
            yield Finding(
                "tips-over",
                "stops",
                f"{capital(name)} could tip off its rests by its own weight: too much of it lies"
                " beyond them.",
                "EN 1990 table A1.2(A): 0.9 G inside against 1.1 G beyond",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                where_mm=geojson(Point(tips)),
            )


def _must_stop(slab: Slab, strength: SlabStrength) -> bool:
    """A unit that stands beside the slab is only of no use, unless none carries it."""
    units = slab.rests is not None and slab.rests.kind == "units"
    return not units or strength.in_place.nothing_carries


def _off_the_slab(i: int, slab: Slab, name: str, bearing: Bearing, *, stops: bool) -> Finding:
    pointer = bearing.pointer
    number = pointer.rsplit("/", maxsplit=1)[-1]
    thing = "Unit" if slab.rests is not None and slab.rests.kind == "units" else "Rest"
    which = f"{thing} {int(number) + 1}" if number.isdigit() else "One rest"
    return Finding(
        "rest-under-nothing",
        "stops" if stops else "caution",
        f"{which} stands where {name} has no concrete, so it carries nothing.",
        "geometry",
        slab=i,
        at=(f"/slabs/{i}{pointer}",),
        where_mm=geojson(bearing.footprint.centroid),
        key=pointer.replace("/rests/", "").replace("/", "-"),
    )


def lies_whole(judged: Judged) -> Iterable[Finding]:
    """On its rests each slab bears itself, what stands on it, and a person anywhere."""
    order = judged.planned.order
    for i, slab, shape, strength in judged.slabs():
        verdict = worst([v for v in strength.in_place.verdicts if _is_told(v)])
        if verdict is None or verdict.utilisation <= CARES:
            continue
        name = slab_words(slab, i, len(order.slabs))
        where = spot_words(slab, shape, verdict.where_mm)
        if verdict.case == "after-a-crack":
            says = (
                f"{_LYING[verdict.case]}, {name} would break {where}: nothing in it carries across"
                " a crack."
            )
        elif verdict.utilisation > 1.0:
            says = f"{_LYING[verdict.case]}, {name} would crack {where}."
        else:
            says = (
                f"{_LYING[verdict.case]}, {name} comes near to cracking {where}. It holds, with"
                " little to spare."
            )
        yield finding_of("cracks-in-place", i, verdict, says)


def _is_told(verdict: Verdict) -> bool:
    """What carries across a crack is told where it does not suffice; nothing wears it out."""
    if verdict.case == "after-a-crack":
        return verdict.utilisation > 1.0
    return verdict.case in _LYING


def still_cracks(check: str, i: int, planned: Planned, context: StageContext) -> bool:
    """Whether a slab cracks where one of ``CRACKS`` looks, without a look at anything else."""
    try:
        if check == "cracks-in-place":
            verdicts = assess_in_place(planned, i, context).verdicts
            verdicts = tuple(v for v in verdicts if v.case in _LYING)
        else:
            verdicts = assess_handling(planned, i, context).handled.verdicts
    except PlateError:
        return True
    return any(verdict.utilisation > 1.0 for verdict in verdicts)


def corners_and_level(judged: Judged) -> Iterable[Finding]:
    """A free corner wants a bracket, and uneven rests want packing: cautions, never stops."""
    order = judged.planned.order
    says = {
        "free-corner": "A person's weight on the free corner could crack {name} {where}. Have a"
        " bracket fitted under the overhang.",
        "low-rest-and-sitting": "The rests must be level and packed tight before {name} goes down."
        " With one a little low, somebody sitting there could crack it {where}.",
    }
    checks = {"free-corner": "free-corner", "low-rest-and-sitting": "level-the-rests"}
    for i, slab, shape, strength in judged.slabs():
        for verdict in strength.in_place.verdicts:
            if verdict.case not in _SIT or verdict.utilisation <= 1.0:
                continue
            words = says[verdict.case].format(
                name=slab_words(slab, i, len(order.slabs)),
                where=spot_words(slab, shape, verdict.where_mm),
            )
            yield finding_of(checks[verdict.case], i, verdict, words, level="caution")


def stays_down(judged: Judged) -> Iterable[Finding]:
    """A loose slab that a person would tip is to be fixed down: a caution."""
    order = judged.planned.order
    for i, slab, shape, strength in judged.slabs():
        tips = strength.in_place.tips_under
        if tips:
            yield Finding(
                "tips-when-sat-on",
                "caution",
                f"Loose on its rests, {slab_words(slab, i, len(order.slabs))} would tip with"
                f" somebody sitting {spot_words(slab, shape, tips[0])}. It must be fixed down.",
                "EN 1990 table A1.2(A): 0.9 G against 1.1 G and 1.5 Q beyond",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                where_mm=geojson(Point(tips[0])),
            )


def looks_flat(judged: Judged) -> Iterable[Finding]:
    """The sag stays out of sight: a comfort check."""
    order, workshop = judged.planned.order, judged.planned.workshop
    for i, slab, shape, strength in judged.slabs():
        span = max(shape.length_mm, shape.width_mm)
        limit = span / workshop.loads.sag_limit
        sag = strength.in_place.sag_mm
        if sag > limit:
            yield Finding(
                "sags",
                "caution",
                f"{capital(slab_words(slab, i, len(order.slabs)))} would sag"
                f" {slab.thickness.like(sag, 'up', to_mm=0.1)}, which"
                " the eye can see. Bring its rests closer together, or make it thicker.",
                "comfort: span / 720, after natural-stone practice",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                measured={"sag_mm": round(sag, 2)},
                limit={"sag_mm": round(limit, 2)},
            )
