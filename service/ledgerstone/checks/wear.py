"""Checks of use: heat, food, acids and oil, hearths, and electrics near water."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.goes_in import is_live, is_wet
from ledgerstone.order import Order, Slab
from ledgerstone.stages import Judged
from ledgerstone.wording import Listed, Message, Temperature, cutout_name, slab_name
from ledgerstone.workshop.records import Sealer, Workshop

TOPS = ("worktop", "table", "shelf", "sill")
FOOD = ("worktop", "table")
BESIDE_HEAT_C = 100.0  # temperature beside a hob, by one hob's manual
APPLIANCE_GAP_MM = 10.0  # 10 to 20 mm: common practice, no source
_HEAT = "the sealer's own sheet, as the workshop gives it; 100 °C beside a hob: one hob's manual"
_FOOD_RULE = (
    "Regulation (EC) 1935/2004, article 3; the sealer's own sheet, as the workshop gives it"
)


def hot_appliances(judged: Judged) -> Iterable[Finding]:
    """A hot appliance has a gap round it, and its own manual and a fitter decide: a caution."""
    order, workshop = judged.planned.order, judged.planned.workshop
    for i, slab in enumerate(order.slabs):
        for k, cutout in enumerate(slab.cutouts):
            if not cutout.heat:
                continue
            name, gap = cutout_name(slab, k), slab.thickness.like(APPLIANCE_GAP_MM, "up")
            yield Finding(
                "hot-appliance",
                "caution",
                Message("hot-appliance", cutout=name, gap=gap),
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
    others = tuple(
        s.name
        for s in workshop.sealers
        if s.heat_limit_c >= BESIDE_HEAT_C and slab.place in s.places
    )
    yield Finding(
        "sealer-near-heat",
        "caution",
        Message(
            "sealer-near-heat",
            sealer=sealer.name,
            stands=Temperature(sealer.heat_limit_c),
            slab=slab_name(slab, i, len(order.slabs)),
            others=Listed(others, joined="or"),
        ),
        _HEAT,
        slab=i,
        at=(f"/slabs/{i}/finish/sealer",),
        measured={"heat_limit_c": sealer.heat_limit_c},
        limit={"heat_limit_c": BESIDE_HEAT_C},
    )


def acids_and_oil(judged: Judged) -> Iterable[Finding]:
    """Every indoor top etches and stains, in words for its sealer: a note for each sealer."""
    order, workshop = judged.planned.order, judged.planned.workshop
    tops = [s for s in order.slabs if s.place != "outdoors" and s.use in TOPS]
    for sealer in _sealers_of(tops, workshop):
        yield Finding(
            "acids-and-oil",
            "note",
            Message("acids-and-oil", kind=sealer.kind, sealer=sealer.name),
            "cement bodies' pages on acids: no cement lasts at pH 3, where lemon and vinegar are",
            at=_finishes(order, sealer),
            key=_slug(sealer),
        )


def food_surfaces(judged: Judged) -> Iterable[Finding]:
    """A note for each sealer of a food surface: whether it is declared for food."""
    order, workshop = judged.planned.order, judged.planned.workshop
    for sealer in _sealers_of([s for s in order.slabs if s.use in FOOD], workshop):
        message = Message("food-declared", sealer=sealer.name)
        if not sealer.food_declared:
            others = Listed(_declared(order, workshop), joined="or")
            message = Message("food-not-declared", sealer=sealer.name, others=others)
        yield Finding(
            "food-surface",
            "note",
            message,
            _FOOD_RULE,
            at=_finishes(order, sealer),
            key=_slug(sealer),
        )


def _declared(order: Order, workshop: Workshop) -> tuple[str, ...]:
    """The sealers that are declared for food and are for everywhere that food surfaces go."""
    places = {slab.place for slab in order.slabs if slab.use in FOOD}
    return tuple(s.name for s in workshop.sealers if s.food_declared and places <= set(s.places))


def hearths(judged: Judged) -> Iterable[Finding]:
    """A hearth's size and build are the registered installer's, and it is best in sections."""
    order = judged.planned.order
    for i, slab in enumerate(order.slabs):
        if slab.use == "hearth":
            yield Finding(
                "hearth",
                "caution",
                Message("hearth", slab=slab_name(slab, i, len(order.slabs))),
                "local rules for hearths; sections: common practice, no source",
                slab=i,
                at=(f"/slabs/{i}/use",),
            )


def electrics_near_water(judged: Judged) -> Iterable[Finding]:
    """Electrics in a slab with a basin, or in a wet room, are an electrician's: a caution."""
    order = judged.planned.order
    for i, slab in enumerate(order.slabs):
        live = [k for k, cutout in enumerate(slab.cutouts) if is_live(cutout)]
        wet = slab.place == "wet-room" or any(is_wet(c) for c in slab.cutouts)
        if live and wet:
            yield Finding(
                "electrics-near-water",
                "caution",
                Message("electrics-near-water", cutout=cutout_name(slab, live[0])),
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
