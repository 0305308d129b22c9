"""Checks of strength: moved without cracking, carried without cracking, lying safely in place."""

from __future__ import annotations

from collections.abc import Iterable

from shapely.geometry import Point

from ledgerstone.checks.facts import Facts
from ledgerstone.checks.finding import Finding, Level, capital, geojson, slab_words
from ledgerstone.checks.where import spot_words
from ledgerstone.order import Order, Slab
from ledgerstone.shape import Shape
from ledgerstone.strength.handling import TEST_UNDER_DAYS
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.strength.verdict import Case, Verdict, worst
from ledgerstone.workshop.records import Workshop

_PLATE = "thin plate against EN 1992-1-1 3.1.8 and 2.4.2.4; design.md §4"
CARES = 0.8
_MOVED: dict[str, str] = {
    "lifted-out": "Lifted out of its mould",
    "turned": "Turned up on edge",
    "on-edge": "Held on edge",
    "carried": "Carried",
    "on-bearers": "Lying on its pallet",
}
_LYING: dict[str, str] = {
    "own-weight": "Under its own weight",
    "even-load": "With a kitchen's weight spread over it",
    "somebody-sitting": "With somebody sitting on it",
    "somebody-leaning": "With somebody leaning on it",
    "somebody-standing": "With somebody standing on it",
    "low-rest": "With one rest a little low",
    "after-a-crack": "Once cracked, with somebody sitting on it",
}
_SIT: tuple[Case, ...] = ("free-corner", "low-rest-and-sitting")


def moved_whole(order: Order, facts: Facts, workshop: Workshop) -> Iterable[Finding]:
    """Each slab leaves its mould, stands on edge and reaches its pallet without cracking."""
    for i, slab, shape, strength in _slabs(order, facts):
        if strength.too_heavy:
            yield _too_heavy(order, i, slab, facts, workshop)
            continue
        verdict = worst(strength.handled.verdicts)
        if verdict is None or verdict.utilisation <= CARES:
            continue
        days = f"{strength.handled.cover_days:g}"
        when = "" if verdict.case == "on-bearers" else f" {days} days after casting"
        name = slab_words(slab, i, len(order.slabs))
        where = spot_words(slab, shape, verdict.where_mm)
        if verdict.utilisation > 1.0:
            says = f"{_MOVED[verdict.case]}{when}, {name} would crack {where}. {_THICKER}"
        else:
            says = (
                f"{_MOVED[verdict.case]}{when}, {name} comes near to cracking {where}. We handle"
                " it so that it does not; nobody else should lift it flat."
            )
        yield _finding("cracks-when-moved", i, verdict, says)


_THICKER = "Make it thicker or smaller, or an opening smaller."


def _too_heavy(order: Order, i: int, slab: Slab, facts: Facts, workshop: Workshop) -> Finding:
    most = max(way.most_kg for way in workshop.handling.ways)
    name = capital(slab_words(slab, i, len(order.slabs)))
    kg = facts.slab_kg[i]
    return Finding(
        "too-heavy-to-handle",
        "stops",
        f"{name} weighs {kg:.0f} kg; with its mould that is more than the {most:.0f} kg we can"
        " turn. Make it smaller or thinner, or of two pieces.",
        "the workshop's own gear",
        slab=i,
        at=(f"/slabs/{i}/outline",),
        measured={"slab_kg": round(kg, 1)},
        limit={"slab_and_mould_kg": most},
    )


def carried_on_edge(order: Order, facts: Facts, _workshop: Workshop) -> Iterable[Finding]:
    """A slab that flat by its ends would crack is carried on edge: a caution, never a stop."""
    for i, slab, shape, strength in _slabs(order, facts):
        verdict = strength.flat_by_the_ends
        if verdict.utilisation > 1.0:
            name = slab_words(slab, i, len(order.slabs))
            where = spot_words(slab, shape, verdict.where_mm)
            yield _finding(
                "carry-on-edge",
                i,
                verdict,
                f"Carry {name} on edge. Laid flat and lifted by its ends it would crack {where}.",
                level="caution",
            )


def tested_first(order: Order, facts: Facts, _workshop: Workshop) -> Iterable[Finding]:
    """Concrete that is moved while very young is tested first."""
    for i, slab, _, strength in _slabs(order, facts):
        age = strength.handled.age_days
        if age < TEST_UNDER_DAYS:
            yield Finding(
                "young-concrete",
                "note",
                f"{capital(slab_words(slab, i, len(order.slabs)))} leaves its mould as strong as"
                f" concrete of {age:.1f} days in the warm. We break a test strip before moving it.",
                "EN 1992-1-1 (B.10); design.md §4",
                slab=i,
                measured={"age_days": round(age, 2)},
                limit={"age_days": TEST_UNDER_DAYS},
            )


def rests_told(order: Order, _facts: Facts, _workshop: Workshop) -> Iterable[Finding]:
    """What a slab rests on was told, or the customer is asked."""
    for i, slab in enumerate(order.slabs):
        if slab.rests is None and slab.use in ("worktop", "table", "shelf", "sill"):
            yield Finding(
                "rests-not-told",
                "caution",
                f"Tell us what {slab_words(slab, i, len(order.slabs))} will rest on. Until then"
                " nobody has checked that it will bear a person there.",
                "nothing was told",
                slab=i,
                at=(f"/slabs/{i}",),
            )


def rests_under_the_slab(order: Order, facts: Facts, _workshop: Workshop) -> Iterable[Finding]:
    """Every rest meets concrete, and the slab's weight lies between them."""
    for i, slab, _, strength in _slabs(order, facts):
        name = slab_words(slab, i, len(order.slabs))
        pointers = tuple({b.pointer: None for b in strength.in_place.off_the_slab})
        for pointer in pointers:
            yield Finding(
                "rest-under-nothing",
                "stops",
                f"One of the rests of {name} stands where there is no concrete. Move it under the"
                " slab, clear of the cut-outs.",
                "geometry",
                slab=i,
                at=(f"/slabs/{i}{pointer}",),
                key=pointer.replace("/rests/", "").replace("/", "-"),
            )
        tips = strength.in_place.tips_alone
        if tips is not None:
            yield Finding(
                "tips-over",
                "stops",
                f"{capital(name)} would tip off its rests by its own weight: its middle lies"
                " outside them. Add a rest, or move the rests apart.",
                "statics",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                where_mm=geojson(Point(tips)),
            )


def lies_whole(order: Order, facts: Facts, _workshop: Workshop) -> Iterable[Finding]:
    """On its rests each slab bears itself, what stands on it, and a person anywhere."""
    for i, slab, shape, strength in _slabs(order, facts):
        verdicts = [v for v in strength.in_place.verdicts if v.case in _LYING]
        verdict = worst(verdicts)
        if verdict is None or verdict.utilisation <= CARES:
            continue
        name = slab_words(slab, i, len(order.slabs))
        where = spot_words(slab, shape, verdict.where_mm)
        if verdict.utilisation > 1.0:
            says = (
                f"{_LYING[verdict.case]}, {name} would crack {where}. Make it thicker, or bring"
                " its rests closer together there."
            )
        else:
            says = (
                f"{_LYING[verdict.case]}, {name} comes near to cracking {where}. It will bear it;"
                " do not load it more."
            )
        yield _finding("cracks-in-place", i, verdict, says)


def corners_and_level(order: Order, facts: Facts, _workshop: Workshop) -> Iterable[Finding]:
    """A free corner wants a bracket, and uneven rests want packing: cautions, never stops."""
    says = {
        "free-corner": "A person's weight on the free corner could crack {name} {where}. Have a"
        " bracket fitted under the overhang, or let nobody sit there.",
        "low-rest-and-sitting": "The rests must be level and packed tight before {name} goes down."
        " With one a little low, somebody sitting there could crack it {where}.",
    }
    checks = {"free-corner": "free-corner", "low-rest-and-sitting": "level-the-rests"}
    for i, slab, shape, strength in _slabs(order, facts):
        for verdict in strength.in_place.verdicts:
            if verdict.case not in _SIT or verdict.utilisation <= 1.0:
                continue
            words = says[verdict.case].format(
                name=slab_words(slab, i, len(order.slabs)),
                where=spot_words(slab, shape, verdict.where_mm),
            )
            yield _finding(checks[verdict.case], i, verdict, words, level="caution")


def stays_down(order: Order, facts: Facts, _workshop: Workshop) -> Iterable[Finding]:
    """A loose slab that a person would tip is to be fixed down: a caution."""
    for i, slab, shape, strength in _slabs(order, facts):
        tips = strength.in_place.tips_under
        if tips:
            yield Finding(
                "tips-when-sat-on",
                "caution",
                f"Loose on its rests, {slab_words(slab, i, len(order.slabs))} would tip with"
                f" somebody sitting {spot_words(slab, shape, tips[0])}. It must be fixed down.",
                "EN 1990 table A1.2(A): 0.9 G against 1.5 Q",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                where_mm=geojson(Point(tips[0])),
            )


def looks_flat(order: Order, facts: Facts, workshop: Workshop) -> Iterable[Finding]:
    """The sag stays out of sight: a comfort check."""
    for i, slab, shape, strength in _slabs(order, facts):
        span = max(shape.length_mm, shape.width_mm)
        limit = span / workshop.loads.sag_limit
        sag = strength.in_place.sag_mm
        if sag > limit:
            yield Finding(
                "sags",
                "caution",
                f"{capital(slab_words(slab, i, len(order.slabs)))} would sag {sag:.1f} mm, which"
                " the eye can see. Bring its rests closer together, or make it thicker.",
                "comfort: span / 720, after natural-stone practice",
                slab=i,
                at=(f"/slabs/{i}/rests",),
                measured={"sag_mm": round(sag, 2)},
                limit={"sag_mm": round(limit, 2)},
            )


def _finding(
    check: str, i: int, verdict: Verdict, says: str, level: Level | None = None
) -> Finding:
    return Finding(
        check,
        level or ("stops" if verdict.utilisation > 1.0 else "caution"),
        says,
        _PLATE,
        slab=i,
        at=(f"/slabs/{i}",),
        measured={"stress_mpa": round(verdict.stress_mpa, 2)},
        limit={"stress_mpa": round(verdict.limit_mpa, 2)},
        where_mm=geojson(Point(verdict.where_mm)),
        key=verdict.case,
    )


def _slabs(order: Order, facts: Facts) -> Iterable[tuple[int, Slab, Shape, SlabStrength]]:
    rows = zip(order.slabs, facts.shapes, facts.strength, strict=True)
    return ((i, slab, shape, strength) for i, (slab, shape, strength) in enumerate(rows))
