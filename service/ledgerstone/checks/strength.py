"""Checks of a slab in place: on rests that carry it, without cracking, tipping or sagging."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from shapely.geometry import Point

from ledgerstone.checks.finding import Finding, geojson, only
from ledgerstone.checks.verdicts import CAUTION_UTILISATION, finding_of
from ledgerstone.checks.where import spot
from ledgerstone.errors import PlateError
from ledgerstone.message import AreaLoad, Force
from ledgerstone.order import Slab
from ledgerstone.stages import (
    Assessed,
    Planned,
    StageContext,
    Unassessed,
    assess_handling,
    assess_in_place,
)
from ledgerstone.strength.rests import Bearing
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.strength.verdict import Case, Verdict, worst
from ledgerstone.wording import Message, slab_name, slabs_name
from ledgerstone.workshop.records import Workshop

_LYING: tuple[Case, ...] = (
    "own-weight",
    "even-load",
    "somebody-sitting",
    "somebody-leaning",
    "somebody-standing",
    "low-rest",
    "after-a-crack",
)
SEEN_SAG_MM = 0.5  # what sags less is not seen, however short its span; common practice, no source
CRACKS = ("cracks-in-place", "cracks-when-moved")
_SIT: tuple[Case, ...] = ("free-corner", "low-rest-and-sitting")


def not_worked_out(unassessed: Unassessed) -> Iterable[Finding]:
    """List the slabs of which it is not known whether they crack."""
    order = unassessed.planned.order
    for i in unassessed.slabs:
        yield Finding(
            "strength-unknown",
            "stops",
            Message("strength-unknown", slab=slab_name(order.slabs[i], i, len(order.slabs))),
            "the plate has no answer",
            slab=i,
            at=(f"/slabs/{i}",),
        )


def rests_given(assessed: Assessed) -> Iterable[Finding]:
    """Each slab's rests are given; if not, one finding asks for all slabs."""
    order = assessed.planned.order
    missing = [
        i
        for i, slab in enumerate(order.slabs)
        if slab.rests is None and slab.use in ("worktop", "table", "shelf", "sill")
    ]
    if missing:
        yield Finding(
            "rests-not-told",
            "caution",
            Message("rests-not-told", slabs=slabs_name(order, missing)),
            "nothing was told",
            slab=only(missing),
            at=tuple(f"/slabs/{i}" for i in missing),
        )


def rests_under_the_slab(assessed: Assessed) -> Iterable[Finding]:
    """Every rest meets concrete, and the slab's weight lies between them."""
    order = assessed.planned.order
    for i, slab, _, strength in assessed.slabs():
        name = slab_name(slab, i, len(order.slabs))
        stops = _must_stop(slab, strength)
        for bearing in {
            bearing.pointer: bearing for bearing in strength.in_place.off_the_slab
        }.values():
            yield _off_the_slab(i, slab, name, bearing, stops=stops)
        tips = strength.in_place.tips_alone
        if tips is not None:
            yield Finding(
                "tips-over",
                "stops",
                Message("tips-over", slab=name),
                "EN 1990 table A1.2(A): 0.9 G inside against 1.1 G beyond",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                where_mm=geojson(Point(tips)),
            )


def _must_stop(slab: Slab, strength: SlabStrength) -> bool:
    """Return whether rests off the slab stop it; spare units do only if no other carries it."""
    units = slab.rests is not None and slab.rests.kind == "units"
    return not units or strength.in_place.nothing_carries


def _off_the_slab(i: int, slab: Slab, name: Message, bearing: Bearing, *, stops: bool) -> Finding:
    pointer = bearing.pointer
    number = pointer.rsplit("/", maxsplit=1)[-1]
    rests = "units" if slab.rests is not None and slab.rests.kind == "units" else "rests"
    which = Message("rest-of-several")
    if number.isdigit():
        which = Message("rest-numbered", kind=rests, number=int(number) + 1)
    return Finding(
        "rest-under-nothing",
        "stops" if stops else "caution",
        Message("rest-under-nothing", rest=which, slab=name),
        "geometry",
        slab=i,
        at=(f"/slabs/{i}{pointer}",),
        where_mm=geojson(bearing.footprint.centroid),
        key=pointer.replace("/rests/", "").replace("/", "-"),
    )


def holds_in_place(assessed: Assessed) -> Iterable[Finding]:
    """On its rests each slab carries its own weight, an even load, and a person anywhere."""
    order = assessed.planned.order
    for i, slab, shape, strength in assessed.slabs():
        verdict = _decisive(strength.in_place.verdicts)
        if verdict is None or verdict.utilisation <= CAUTION_UTILISATION:
            continue
        name, where = slab_name(slab, i, len(order.slabs)), spot(slab, shape, verdict.where_mm)
        message = Message(
            "cracks-in-place" if verdict.utilisation > 1.0 else "near-cracking-in-place",
            load=verdict.case,
            force=Force(verdict.load_n),
            even=AreaLoad(verdict.load_n_per_m2),
            slab=name,
            where=where,
        )
        if verdict.case == "after-a-crack":
            message = Message("breaks-after-a-crack", slab=name, where=where)
        yield finding_of("cracks-in-place", i, verdict, message)


def _decisive(verdicts: Sequence[Verdict]) -> Verdict | None:
    """Return the worst verdict before cracking; one after cracking only if the others pass."""
    before = worst([v for v in verdicts if v.case in _LYING and v.case != "after-a-crack"])
    after = worst([v for v in verdicts if v.case == "after-a-crack"])
    if before is None or before.utilisation > 1.0 or after is None or after.utilisation <= 1.0:
        return before
    return after


def still_cracks(check: str, i: int, planned: Planned, context: StageContext) -> bool:
    """Return whether a slab cracks in a case of ``CRACKS``, without computing anything else."""
    try:
        if check == "cracks-in-place":
            verdicts = assess_in_place(planned, i, context).verdicts
            verdicts = tuple(v for v in verdicts if v.case in _LYING)
        else:
            verdicts = assess_handling(planned, i, context).handled.verdicts
    except PlateError:
        return True
    return any(verdict.utilisation > 1.0 for verdict in verdicts)


def corners_and_level(assessed: Assessed) -> Iterable[Finding]:
    """A free corner needs a bracket, and uneven rests need packing: cautions, never stops."""
    order = assessed.planned.order
    checks = {"free-corner": "free-corner", "low-rest-and-sitting": "level-the-rests"}
    for i, slab, shape, strength in assessed.slabs():
        for verdict in strength.in_place.verdicts:
            if verdict.case not in _SIT or verdict.utilisation <= 1.0:
                continue
            message = Message(
                "free-corner" if verdict.case == "free-corner" else "level-the-rests",
                slab=slab_name(slab, i, len(order.slabs)),
                where=spot(slab, shape, verdict.where_mm),
            )
            yield finding_of(checks[verdict.case], i, verdict, message, level="caution")


def does_not_tip(assessed: Assessed) -> Iterable[Finding]:
    """A loose slab that a person would tip is to be fixed down: a caution."""
    order = assessed.planned.order
    for i, slab, shape, strength in assessed.slabs():
        tips = strength.in_place.tips_under
        if tips:
            name, where = slab_name(slab, i, len(order.slabs)), spot(slab, shape, tips[0])
            yield Finding(
                "tips-when-sat-on",
                "caution",
                _tips(slab, name, where, strength.in_place.steady_plate_mm),
                "EN 1990 table A1.2(A): 0.9 G against 1.1 G and 1.5 Q beyond",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                where_mm=geojson(Point(tips[0])),
            )


def _tips(slab: Slab, name: Message, where: Message, plate_mm: float | None) -> Message:
    """Say that a slab is to be fixed down, or stands by itself on a wider plate."""
    if plate_mm is None:
        return Message("tips-when-sat-on", slab=name, where=where)
    plate = slab.thickness.like(plate_mm, "up", to_mm=10)
    return Message("tips-on-its-plate", slab=name, where=where, plate=plate)


def looks_flat(assessed: Assessed) -> Iterable[Finding]:
    """The sag stays out of sight: a comfort check."""
    order, workshop = assessed.planned.order, assessed.planned.workshop
    for i, slab, _, strength in assessed.slabs():
        limit = strength.in_place.span_mm / workshop.loads.sag_limit
        sag = strength.in_place.sag_mm
        if sag > max(limit, SEEN_SAG_MM):
            yield Finding(
                "sags",
                "caution",
                _sags(slab, slab_name(slab, i, len(order.slabs)), sag, limit, workshop),
                "comfort: span / 720, after natural-stone practice; creep by EN 1992-1-1 3.1.4",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                measured={"sag_mm": round(sag, 2)},
                limit={"sag_mm": round(limit, 2)},
            )


def _sags(slab: Slab, name: Message, sag_mm: float, limit_mm: float, workshop: Workshop) -> Message:
    """Say how far a slab sags, and at which of our thicknesses it would not be seen.

    Source
    ------
    Deflection under its own weight goes as 1 / h², under any other load as 1 / h³.
    """
    like, seen_mm = slab.thickness, max(limit_mm, SEEN_SAG_MM)
    need_mm = like.mm * math.sqrt(sag_mm / seen_mm)
    thicker = [mm for mm in sorted(workshop.shaping.thicknesses_mm) if mm >= need_mm]
    sag, seen = like.like(sag_mm, "up", to_mm=0.1), like.like(seen_mm, "down", to_mm=0.1)
    if not thicker:
        return Message("sags-far", slab=name, sag=sag, seen=seen)
    return Message("sags", slab=name, sag=sag, seen=seen, thickness=like.like(thicker[0]))
