"""Checks of the place: frost and wet against mix, sealer and shape. A fall is never a stop."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from ledgerstone.checks.finding import Finding, only
from ledgerstone.mix import Tint, mixes_of
from ledgerstone.order import UPRIGHT_USES, Slab
from ledgerstone.quantities import KG_PER_M3_PER_LB_PER_YD3
from ledgerstone.shade import shade_seen
from ledgerstone.shape import Shape
from ledgerstone.stages import Judged, Planned
from ledgerstone.wording import Figure, Listed, Message, Strength, slab_name, slabs_name
from ledgerstone.workshop.records import Workshop

_AIR_SOURCE = "air by grain size: DIN 1045-2, from memory"
DARK_LIGHTNESS = 45.0  # L*; that darker ones show bloom most is common practice, no source
FALL = 60.0  # 1 in 60: the safe general figure of two that sources give


@dataclass(frozen=True, slots=True)
class Exposure:
    """Requirements of EN 206 on a mix in one exposure (CEM I, 50 years)."""

    name: str
    most_water_cement: float
    fck_mpa: float
    cement_kg_per_m3: float
    frost: bool = False


# EN 206-1:2000 table F.1 (informative); national provisions go before it. Outdoors a flat top is
# XF3, wet and frozen, and an upright one XF1; both are XC4 too, and the stricter value applies.
FLAT_OUTDOORS = Exposure("XF3 and XC4", 0.50, 30.0, 320.0, frost=True)
UPRIGHT_OUTDOORS = Exposure("XF1 and XC4", 0.50, 30.0, 300.0)  # EN 206-1 table F.1
WET_ROOM = Exposure("XC4", 0.50, 30.0, 300.0)  # EN 206-1 table F.1
# Air by the largest grain, mm (upper bounds): finer mixes have more paste, and need more.
# DIN 1045-2 table F.2.2, from memory; EN 206 has 4.0 % for grains of 20 to 32 mm.
AIR_PERCENT: tuple[tuple[float, float], ...] = ((8.0, 5.5), (16.0, 4.5), (float("inf"), 4.0))


def exposure_of(slab: Slab) -> Exposure | None:
    """Return the exposure of a slab's place; None indoors."""
    if slab.place == "indoors":
        return None
    if slab.place == "wet-room":
        return WET_ROOM
    return UPRIGHT_OUTDOORS if slab.use in UPRIGHT_USES else FLAT_OUTDOORS


def air_percent(largest_aggregate_mm: float) -> float:
    """Air content of the fresh mix required for frost, percent, by its largest grain."""
    return next(air for up_to_mm, air in AIR_PERCENT if largest_aggregate_mm <= up_to_mm)


def mix_for_the_place(judged: Judged) -> Iterable[Finding]:
    """The mix meets its exposure's requirements; if it falls short, a caution.

    Source
    ------
    EN 206-1 table F.1; air by DIN 1045-2 table F.2.2, from memory.
    """
    order, workshop = judged.planned.order, judged.planned.workshop
    asked = {exposure_of(slab): slab.place for slab in order.slabs}
    for exposure, place in asked.items():
        if exposure is None:
            continue
        short, unproven = tuple(_short(exposure, workshop)), _unproven(exposure, workshop)
        if not short and not unproven:
            continue
        yield Finding(
            "mix-for-place",
            "caution",
            Message(
                "mix-for-place",
                place=place,
                unproven="yes" if unproven else "no",
                short=Listed(short, joined="comma"),
                frost="yes" if exposure.frost else "no",
            ),
            f"EN 206-1 table F.1, {exposure.name}; {_AIR_SOURCE}",
            at=tuple(
                f"/slabs/{i}/place" for i, s in enumerate(order.slabs) if exposure_of(s) == exposure
            ),
            key=place if exposure != UPRIGHT_OUTDOORS else "upright",
        )


def _unproven(exposure: Exposure, workshop: Workshop) -> bool:
    """Return whether frost needs entrained air that the mix lacks."""
    recipe = workshop.recipe
    return exposure.frost and recipe.air_percent < air_percent(recipe.largest_aggregate_mm)


def _short(exposure: Exposure, workshop: Workshop) -> Iterable[Message]:
    """Yield the requirements that a mix does not meet, with the required values."""
    recipe = workshop.recipe
    mixes = mixes_of(Tint(recipe.cement), workshop)
    water = round(max(mix.water_cement_ratio for mix in mixes), 2)
    cement = min(mix.cement_kg_per_m3 for mix in mixes)
    if water > exposure.most_water_cement:
        limit = Figure(exposure.most_water_cement, 2)
        yield Message("mix-has-water", water=Figure(water, 2), limit=limit)
    if recipe.fck_mpa < exposure.fck_mpa:
        yield Message(
            "mix-has-strength", strength=Strength(recipe.fck_mpa), limit=Strength(exposure.fck_mpa)
        )
    if cement < exposure.cement_kg_per_m3:
        least = exposure.cement_kg_per_m3
        yield Message(
            "mix-has-cement",
            cement=int(cement),
            limit=least,
            cement_lb=int(cement / KG_PER_M3_PER_LB_PER_YD3),
            limit_lb=round(least / KG_PER_M3_PER_LB_PER_YD3),
        )


def sealer_for_the_place(planned: Planned) -> Iterable[Finding]:
    """The sealer's own sheet allows it in this place."""
    order, workshop = planned.order, planned.workshop
    for i, slab in enumerate(order.slabs):
        sealer = next((s for s in workshop.sealers if s.name == slab.finish.sealer), None)
        if sealer is None or slab.place in sealer.places:
            continue
        others = [other.name for other in workshop.sealers if slab.place in other.places]
        yield Finding(
            "sealer-not-for-place",
            "stops",
            Message(
                "sealer-not-for-place",
                sealer=sealer.name,
                place=slab.place,
                slab=slab_name(slab, i, len(order.slabs)),
                others="some" if others else "none",
            ),
            "the sealer's own sheet, as the workshop gives it",
            slab=i,
            at=(f"/slabs/{i}/finish/sealer", f"/slabs/{i}/place"),
        )


def drips_outdoors(judged: Judged) -> Iterable[Finding]:
    """A flat slab outdoors has a drip beneath an edge; otherwise one is advised."""
    order = judged.planned.order
    without = [
        i
        for i, slab in enumerate(order.slabs)
        if _flat_outdoors(slab) and not any(edge.drip for edge in slab.edges.values())
    ]
    if without:
        yield Finding(
            "drip-advised",
            "note",
            Message("drip-advised"),
            "BS 5642 practice for copings",
            at=tuple(f"/slabs/{i}/edges" for i in without),
        )


def falls_outdoors(judged: Judged) -> Iterable[Finding]:
    """Flat slabs outdoors are laid to a fall: one note, with the fall of the widest."""
    planned = judged.planned
    order = planned.order
    flat = [i for i, slab in enumerate(order.slabs) if _flat_outdoors(slab)]
    if not flat:
        return
    widest = max(flat, key=lambda i: _across_mm(planned.shapes[i]))
    fall = order.slabs[widest].thickness.like(_across_mm(planned.shapes[widest]) / FALL, "up")
    yield Finding(
        "fall-advised",
        "note",
        Message("fall-advised", slabs=slabs_name(order, flat), fall=fall),
        "1 in 60, the safer of two figures in use",
        slab=only(flat),
        at=tuple(f"/slabs/{i}/place" for i in flat),
    )


def _across_mm(shape: Shape) -> float:
    x0, y0, x1, y1 = shape.outline.bounds
    return min(float(x1 - x0), float(y1 - y0))


def dark_shades_outdoors(judged: Judged) -> Iterable[Finding]:
    """A dark shade outdoors blooms and fades: a note."""
    order, workshop = judged.planned.order, judged.planned.workshop
    dark = [i for i, slab in enumerate(order.slabs) if _is_dark_outdoors(slab, workshop)]
    if dark:
        shades = tuple(dict.fromkeys(_shade_name(order.slabs[i]) for i in dark))
        yield Finding(
            "dark-outdoors",
            "note",
            Message("dark-outdoors", shades=Listed(shades)),
            "common practice, no source",
            at=tuple(f"/slabs/{i}/shade" for i in dark),
        )


def _is_dark_outdoors(slab: Slab, workshop: Workshop) -> bool:
    seen = shade_seen(slab.shade, workshop) if slab.place == "outdoors" else None
    return seen is not None and seen.lab[0] < DARK_LIGHTNESS


def _shade_name(slab: Slab) -> str:
    return slab.shade.name or slab.shade.match or ""


def _flat_outdoors(slab: Slab) -> bool:
    return slab.place == "outdoors" and slab.use not in UPRIGHT_USES
