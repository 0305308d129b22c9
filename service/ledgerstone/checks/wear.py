"""Checks of use: heat, food, acids and oil, hearths, and electrics near water."""

from __future__ import annotations

import re
from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.order import Order, Slab
from ledgerstone.stages import Scheduled
from ledgerstone.wording import capital, cutout_words, slab_words
from ledgerstone.workshop.records import Sealer, Workshop

TOPS = ("worktop", "table", "shelf", "sill")
FOOD = ("worktop", "table")
BESIDE_HEAT_C = 100.0  # what is beside a hob is to stand, by one hob's manual
GAP_MM = 10.0
_WET = re.compile(r"\b(?:basin|sink|bowl|taps?|shower|bath)\b", re.IGNORECASE)
_LIVE = re.compile(r"\b(?:sockets?|switch|switches|cables?|lights?|hob|oven)\b", re.IGNORECASE)
_SHEET = "the sealer's own sheet, as the workshop gives it"


def hot_appliances(scheduled: Scheduled) -> Iterable[Finding]:
    """A hot appliance has a gap round it, and its own manual and a fitter decide: a caution."""
    order, workshop = scheduled.planned.order, scheduled.planned.workshop
    for i, slab in enumerate(order.slabs):
        for k, cutout in enumerate(slab.cutouts):
            if not cutout.heat:
                continue
            name, gap = cutout_words(slab, k), slab.thickness.like(GAP_MM, "up")
            yield Finding(
                "hot-appliance",
                "caution",
                f"Leave {gap} or more all round {name}, hung from its own frame: concrete moves"
                " with heat, and our strength check leaves heat out. Follow its maker's clearances;"
                " a registered gas engineer or electrician decides.",
                "a gap of 10 to 20 mm: common practice, no source",
                slab=i,
                at=(f"/slabs/{i}/cutouts/{k}/heat",),
                key=str(k),
            )
        yield from _sealer_near_heat(order, i, workshop)


def _sealer_near_heat(order: Order, i: int, workshop: Workshop) -> Iterable[Finding]:
    slab, sealer = order.slabs[i], _sealer_of(order.slabs[i], workshop)
    hot = any(cutout.heat for cutout in slab.cutouts)
    if not hot or sealer is None or sealer.heat_limit_c >= BESIDE_HEAT_C:
        return
    others = [
        s.name
        for s in workshop.sealers
        if s.heat_limit_c >= BESIDE_HEAT_C and slab.place in s.places
    ]
    choose = f"Choose {' or '.join(others)}" if others else "Keep it shielded"
    yield Finding(
        "sealer-near-heat",
        "caution",
        f"The sealer “{sealer.name}” stands {sealer.heat_limit_c:g} °C, and beside a hot appliance"
        f" {slab_words(slab, i, len(order.slabs))} may get hotter. {choose}, or expect it to mark"
        " there.",
        f"{_SHEET}; 100 °C beside a hob: one hob's manual",
        slab=i,
        at=(f"/slabs/{i}/finish/sealer",),
        measured={"heat_limit_c": sealer.heat_limit_c},
        limit={"heat_limit_c": BESIDE_HEAT_C},
    )


def acids_and_oil(scheduled: Scheduled) -> Iterable[Finding]:
    """Every indoor top etches and stains, in words for its sealer: a note for each sealer."""
    order, workshop = scheduled.planned.order, scheduled.planned.workshop
    tops = [s for s in order.slabs if s.place != "outdoors" and s.use in TOPS]
    for sealer in _sealers_of(tops, workshop):
        if sealer.kind == "film":
            says = (
                f"The film of “{sealer.name}” keeps wine, lemon and oil off while it is whole."
                " Where it is cut or worn they etch and stain the concrete within minutes: wipe"
                " spills up, and have worn places sealed again."
            )
        else:
            says = (
                f"“{sealer.name}” soaks in and leaves no film: lemon, vinegar and wine etch the"
                " concrete within minutes, and oil stains it. Wipe spills up at once, and use a"
                " board."
            )
        yield Finding(
            "acids-and-oil",
            "note",
            says,
            "cement bodies' pages on acids: no cement lasts at pH 3, where lemon and vinegar are",
            at=_finishes(order, sealer),
            key=_slug(sealer),
        )


def food_surfaces(scheduled: Scheduled) -> Iterable[Finding]:
    """Whether a food surface's sealer is declared for food is said: a note for each sealer."""
    order, workshop = scheduled.planned.order, scheduled.planned.workshop
    for sealer in _sealers_of([s for s in order.slabs if s.use in FOOD], workshop):
        if sealer.food_declared:
            says = (
                f"The maker of “{sealer.name}” declares it for contact with food: ask us for the"
                " declaration."
            )
        else:
            says = (
                f"“{sealer.name}” is not declared for contact with food. Prepare food on a board"
                f"{_or_choose(order, workshop)}."
            )
        yield Finding(
            "food-surface",
            "note",
            says,
            f"Regulation (EC) 1935/2004, article 3; {_SHEET}",
            at=_finishes(order, sealer),
            key=_slug(sealer),
        )


def _or_choose(order: Order, workshop: Workshop) -> str:
    places = {slab.place for slab in order.slabs if slab.use in FOOD}
    declared = [s.name for s in workshop.sealers if s.food_declared and places <= set(s.places)]
    return f", or choose {' or '.join(declared)}" if declared else ""


def hearths(scheduled: Scheduled) -> Iterable[Finding]:
    """A hearth's size and build are the registered installer's, and it is best in sections."""
    order = scheduled.planned.order
    for i, slab in enumerate(order.slabs):
        if slab.use == "hearth":
            yield Finding(
                "hearth",
                "caution",
                f"A registered installer decides the size and build of"
                f" {slab_words(slab, i, len(order.slabs))}. By a fire, sections with gaps between"
                " them crack less than one piece: ask before you order.",
                "local rules for hearths; sections: common practice, no source",
                slab=i,
                at=(f"/slabs/{i}/use",),
            )


def electrics_near_water(scheduled: Scheduled) -> Iterable[Finding]:
    """Electrics in a slab with a basin, or in a wet room, are an electrician's: a caution."""
    order = scheduled.planned.order
    for i, slab in enumerate(order.slabs):
        live = [k for k, cutout in enumerate(slab.cutouts) if _LIVE.search(cutout.label)]
        wet = slab.place == "wet-room" or any(_WET.search(c.label) for c in slab.cutouts)
        if live and wet:
            name = capital(cutout_words(slab, live[0]))
            yield Finding(
                "electrics-near-water",
                "caution",
                f"{name} is near water. A registered electrician decides how far from it electrics"
                " must stand: have them look at the plan before we cast.",
                "local wiring rules",
                slab=i,
                at=tuple(f"/slabs/{i}/cutouts/{k}" for k in live),
            )


def _sealer_of(slab: Slab, workshop: Workshop) -> Sealer | None:
    return next((s for s in workshop.sealers if s.name == slab.finish.sealer), None)


def _sealers_of(slabs: Iterable[Slab], workshop: Workshop) -> list[Sealer]:
    """The sealers on some slabs, each once."""
    named = {slab.finish.sealer for slab in slabs}
    return [sealer for sealer in workshop.sealers if sealer.name in named]


def _finishes(order: Order, sealer: Sealer) -> tuple[str, ...]:
    return tuple(
        f"/slabs/{i}/finish" for i, s in enumerate(order.slabs) if s.finish.sealer == sealer.name
    )


def _slug(sealer: Sealer) -> str:
    return "-".join(sealer.name.split())
