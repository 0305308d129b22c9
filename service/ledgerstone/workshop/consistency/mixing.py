"""Checks across a profile's keys on the concrete: that recipes close, and weigh what they can."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from ledgerstone.workshop import proportions
from ledgerstone.workshop.consistency.shared import Found
from ledgerstone.workshop.lines import Path
from ledgerstone.workshop.proportions import Part
from ledgerstone.workshop.records import (
    Added,
    Constituent,
    FinishOffered,
    Mixer,
    Recipe,
    Shaping,
    SlurryRule,
)
from ledgerstone.workshop.values import nearest

CLOSES_WITHIN_M3 = 0.005
LIGHTEST_KG_PER_M3, HEAVIEST_KG_PER_M3 = 1500.0, 3000.0
LEAST_RATIO, MOST_RATIO = 0.2, 1.0
# Densities that a part can have, kg/m³, wide of the reference values; common practice, no source.
DENSITIES: Mapping[str, tuple[float, float]] = {
    "cement": (2700, 3300),
    "addition": (1800, 3300),
    "water": (990, 1010),
    "aggregate": (300, 5200),
    "plasticiser": (950, 1500),
    "polymer": (900, 1300),
    "fibre": (850, 8000),
}


def _one_kind(recipe: Recipe) -> Found:
    if recipe.bag is None and not recipe.constituents:
        yield (
            ("recipe",),
            "write the parts of a cubic metre as [[recipe.constituents]], or [recipe.bag].",
        )
    if recipe.bag is not None and recipe.constituents:
        yield (
            ("recipe", "bag"),
            "here stand [[recipe.constituents]] too. Keep the kind that is mixed here.",
        )


def _parts_there(recipe: Recipe) -> Found:
    roles = [constituent.role for constituent in recipe.constituents]
    if recipe.bag is not None or not roles:
        return
    for role in ("cement", "water", "aggregate"):
        if role not in roles:
            yield ("recipe", "constituents"), f'no part has the role "{role}". Write it too.'
    if roles.count("water") > 1:
        yield ("recipe", "constituents"), "water stands twice. Write it once."


def _names_once(recipe: Recipe) -> Found:
    added = recipe.bag.added if recipe.bag is not None else ()
    for where, names in (
        (("recipe", "constituents"), [c.name.casefold() for c in recipe.constituents]),
        (("recipe", "bag", "added"), [a.name.casefold() for a in added]),
    ):
        for i, name in enumerate(names):
            if name in names[:i]:
                yield (*where, i, "name"), f'"{name}" stands twice. Each part stands once.'


def _densities(recipe: Recipe) -> Found:
    added = recipe.bag.added if recipe.bag is not None else ()
    bought: list[tuple[Path, Constituent | Added]] = [
        *((("recipe", "constituents", i), one) for i, one in enumerate(recipe.constituents)),
        *((("recipe", "bag", "added", i), one) for i, one in enumerate(added)),
    ]
    for path, one in bought:
        least, most = DENSITIES[one.role]
        if not least <= one.density_kg_per_m3 <= most:
            says = f"{one.role} has {least:g} to {most:g}; here stands {one.density_kg_per_m3:g}."
            yield (*path, "density_kg_per_m3"), says


def _closes(recipe: Recipe) -> Found:
    if recipe.bag is not None or not recipe.constituents:
        return
    parts = [constituent.part for constituent in recipe.constituents]
    found = proportions.volume_m3(parts) + recipe.air_percent / 100
    if abs(found - 1) <= CLOSES_WITHIN_M3:
        return
    off = f"{abs(found - 1) * 1000:.0f} litres too {'much' if found > 1 else 'little'}"
    says = f"with {recipe.air_percent:g} % air the parts fill {found:.4f} m³, and not 1: {off}."
    yield ("recipe", "constituents"), f"{says} {_what_would_close(parts, recipe)}".strip()


def _what_would_close(parts: Sequence[Part], recipe: Recipe) -> str:
    """Name the aggregate that would close it, where aggregate can."""
    try:
        closed = proportions.filled_to_1_m3(parts, recipe.air_percent)
    except ValueError:
        return "Take a smaller part of everything."
    stone = ", ".join(f"{p.name} {p.kg:.0f} kg" for p in closed if p.role == "aggregate")
    return f"It closes with {stone}."


def _bag_yields(recipe: Recipe) -> Found:
    bag = recipe.bag
    if bag is None:
        return
    path = ("recipe", "bag")
    if (bag.yield_l is None) == (bag.fresh_kg_per_m3 is None):
        yield path, "write one of yield_l and fresh_kg_per_m3: the other follows from it."
        return
    density = 1000 * (bag.bag_kg + bag.water_l_per_bag) / bag.litres
    if not LIGHTEST_KG_PER_M3 <= density <= HEAVIEST_KG_PER_M3:
        key = "yield_l" if bag.yield_l is not None else "fresh_kg_per_m3"
        says = (
            f"{bag.bag_kg:g} kg and {bag.water_l_per_bag:g} litres of water in {bag.litres:.4g} "
            f"litres weigh {density:.0f} kg a cubic metre; concrete weighs "
            f"{LIGHTEST_KG_PER_M3:g} to {HEAVIEST_KG_PER_M3:g}."
        )
        yield (*path, key), says


def _closed(recipe: Recipe) -> bool:
    """Whether the recipe's derived figures can be trusted: no fault above."""
    faults = (_one_kind, _parts_there, _closes, _bag_yields)
    return not any(True for check in faults for _ in check(recipe))


def _ratio(recipe: Recipe) -> Found:
    if not _closed(recipe):
        return
    ratio = recipe.water_cement_ratio
    if not LEAST_RATIO <= ratio <= MOST_RATIO:
        says = f"water over cement comes to {ratio:.3f}; it is {LEAST_RATIO:g} to {MOST_RATIO:g}."
        yield _kind_path(recipe), says
    coat = recipe.face_coat
    if coat is not None and coat.water_cement_ratio < ratio - 5e-4:
        says = f"the face coat is the wetter one: it needs at least the backing's {ratio:.3f}."
        yield ("recipe", "face_coat", "water_cement_ratio"), says


def _kind_path(recipe: Recipe) -> tuple[str, str]:
    return "recipe", "bag" if recipe.bag is not None else "constituents"


def _weighs(recipe: Recipe) -> Found:
    if not _closed(recipe):
        return
    fresh = recipe.fresh_kg_per_m3
    if not LIGHTEST_KG_PER_M3 <= fresh <= HEAVIEST_KG_PER_M3:
        says = f"the parts weigh {fresh:.0f} kg a cubic metre; concrete weighs 1500 to 3000."
        yield _kind_path(recipe), says
    weighed = recipe.weighed_kg_per_m3
    dry = fresh - proportions.water_kg(recipe.parts)
    if weighed is not None and not dry <= weighed <= fresh * 1.01:
        says = (
            f"this is {weighed:g}; fresh it weighs {fresh:.0f}, and {dry:.0f} if it lost all its "
            "water. Weigh a slab again, or leave this out."
        )
        yield ("recipe", "weighed_kg_per_m3"), says


def _sand_too_wet(recipe: Recipe) -> Found:
    if recipe.bag is not None or not _closed(recipe):
        return
    held = sum(
        part.kg * ((1 + part.moisture_percent / 100) / (1 + part.absorption_percent / 100) - 1)
        for part in recipe.parts
        if part.role == "aggregate"
    )
    water = proportions.water_kg(recipe.parts)
    if held > water:
        says = f"the heaps hold {held:.0f} kg of free water; the recipe has {water:.0f}."
        yield ("recipe", "constituents"), says


def _bag_in_mixer(recipe: Recipe, mixer: Mixer) -> Found:
    bag = recipe.bag
    if bag is not None and bag.whole_bags and bag.litres > mixer.working_l:
        says = f"a whole bag makes {bag.litres:.3g} litres; the mixer takes {mixer.working_l:g}."
        yield ("recipe", "bag", "whole_bags"), says


def _face_coat_fits(recipe: Recipe, shaping: Shaping) -> Found:
    coat = recipe.face_coat
    if coat is not None and coat.thickness_mm >= shaping.thinnest_mm:
        says = f"this is no less than the thinnest slab, {shaping.thinnest_mm:g} mm."
        yield ("recipe", "face_coat", "thickness_mm"), says


def _left_out_of_face(recipe: Recipe) -> Found:
    """What a face coat leaves out is one of the recipe's aggregates, and some is left."""
    coat = recipe.face_coat
    if coat is None or not coat.without:
        return
    grains = [one.name for one in recipe.constituents if one.role == "aggregate"]
    for i, name in enumerate(coat.without):
        if name not in grains:
            says = f'"{name}" is no aggregate of the recipe. {nearest(name, tuple(grains))}'
            yield ("recipe", "face_coat", "without", i), says.strip()
    if grains and set(grains) <= set(coat.without):
        yield ("recipe", "face_coat", "without"), "nothing but cement would be left: keep the sand."


def _mixer(mixer: Mixer) -> Found:
    if mixer.open_minutes < mixer.minutes_per_batch:
        says = f"this is less than one batch takes, {mixer.minutes_per_batch:g} minutes."
        yield ("mixer", "open_minutes"), says
    if mixer.fine_scale_step_kg > mixer.scale_step_kg:
        yield ("mixer", "fine_scale_step_kg"), "this is coarser than scale_step_kg."


def _slurry(slurry: SlurryRule, finishes: Sequence[FinishOffered]) -> Found:
    here = [amount.surface for amount in slurry.amounts]
    for i, surface in enumerate(here):
        if surface in here[:i]:
            yield ("slurry", "amounts", i, "surface"), f'"{surface}" stands twice.'
    for finish in finishes:
        if finish.surface not in here:
            says = f'no amount is for the surface "{finish.surface}". Write 0 where none is used.'
            yield ("slurry", "amounts"), says


CHECKS: tuple[Callable[..., Found], ...] = (
    _one_kind,
    _parts_there,
    _names_once,
    _densities,
    _closes,
    _bag_yields,
    _ratio,
    _weighs,
    _sand_too_wet,
    _bag_in_mixer,
    _face_coat_fits,
    _left_out_of_face,
    _mixer,
    _slurry,
)
