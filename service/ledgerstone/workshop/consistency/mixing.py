"""Checks across a profile's keys on the concrete: that recipes close, and weigh what they can."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from decimal import Decimal
from typing import Literal

from ledgerstone.json_types import KeyPath
from ledgerstone.message import Figure, Listed, Message, Percent
from ledgerstone.workshop.consistency.shared import FoundFaults
from ledgerstone.workshop.keys.value_keys import KeyNumber
from ledgerstone.workshop.keys.values import nearest
from ledgerstone.workshop.records import (
    Added,
    Constituent,
    FinishOffered,
    Mixer,
    Recipe,
    Shaping,
    SlurryRule,
    proportions,
)
from ledgerstone.workshop.records.proportions import MixPart

CLOSES_WITHIN_M3 = 0.005
LIGHTEST_KG_PER_M3, HEAVIEST_KG_PER_M3 = 1500.0, 3000.0
MIN_RATIO, MAX_RATIO = 0.2, 1.0
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


def _one_kind(recipe: Recipe) -> FoundFaults:
    if recipe.bag is None and not recipe.constituents:
        yield ("recipe",), Message("fault-no-recipe")
    if recipe.bag is not None and recipe.constituents:
        yield ("recipe", "bag"), Message("fault-two-recipes")


def _parts_there(recipe: Recipe) -> FoundFaults:
    roles = [constituent.role for constituent in recipe.constituents]
    if recipe.bag is not None or not roles:
        return
    for role in ("cement", "water", "aggregate"):
        if role not in roles:
            yield ("recipe", "constituents"), Message("fault-no-role", role=role)
    if roles.count("water") > 1:
        yield ("recipe", "constituents"), Message("fault-water-twice")


def _names_once(recipe: Recipe) -> FoundFaults:
    added = recipe.bag.added if recipe.bag is not None else ()
    for where, names in (
        (("recipe", "constituents"), [c.name.casefold() for c in recipe.constituents]),
        (("recipe", "bag", "added"), [a.name.casefold() for a in added]),
    ):
        for i, name in enumerate(names):
            if name in names[:i]:
                yield (*where, i, "name"), Message("fault-part-twice", name=name)


def _densities(recipe: Recipe) -> FoundFaults:
    added = recipe.bag.added if recipe.bag is not None else ()
    bought: list[tuple[KeyPath, Constituent | Added]] = [
        *(
            (("recipe", "constituents", i), constituent)
            for i, constituent in enumerate(recipe.constituents)
        ),
        *((("recipe", "bag", "added", i), powder) for i, powder in enumerate(added)),
    ]
    for path, powder in bought:
        least, most = DENSITIES[powder.role]
        if not least <= powder.density_kg_per_m3 <= most:
            message = Message(
                "fault-density",
                role=powder.role,
                least=KeyNumber("Constituent", "density_kg_per_m3", least, "up"),
                most=KeyNumber("Constituent", "density_kg_per_m3", most, "down"),
                here=KeyNumber("Constituent", "density_kg_per_m3", powder.density_kg_per_m3),
            )
            yield (*path, "density_kg_per_m3"), message


def _closes(recipe: Recipe) -> FoundFaults:
    if recipe.bag is not None or not recipe.constituents:
        return
    parts = [constituent.part for constituent in recipe.constituents]
    found = proportions.volume_m3(parts) + recipe.air_percent / 100
    if abs(found - 1) <= CLOSES_WITHIN_M3:
        return
    closes = _what_would_close(parts, recipe)
    message = Message(
        "fault-not-closed",
        air=Percent(Decimal(repr(recipe.air_percent))),
        fill=Percent(Decimal(f"{100 * found:.1f}")),
        whole=Percent(Decimal(100)),
        stone="some" if closes.things else "none",
        closes=closes,
    )
    yield ("recipe", "constituents"), message


def _what_would_close(parts: Sequence[MixPart], recipe: Recipe) -> Listed:
    """Name the aggregate that would close it, where aggregate can."""
    try:
        closed = proportions.filled_to_1_m3(parts, recipe.air_percent)
    except ValueError:
        return Listed(())
    stone = (part for part in closed if part.role == "aggregate")
    values = (Message("fault-part-of", name=p.name, mass=_by_volume(p.kg)) for p in stone)
    return Listed(tuple(values), joined="comma")


def _bag_yields(recipe: Recipe) -> FoundFaults:
    bag = recipe.bag
    if bag is None:
        return
    path = ("recipe", "bag")
    if (bag.yield_l is None) == (bag.fresh_kg_per_m3 is None):
        yield path, Message("fault-yield", given="none" if bag.yield_l is None else "both")
        return
    density = 1000 * (bag.bag_kg + bag.water_l_per_bag) / bag.litres
    if not LIGHTEST_KG_PER_M3 <= density <= HEAVIEST_KG_PER_M3:
        key = "yield_l" if bag.yield_l is not None else "fresh_kg_per_m3"
        message = Message(
            "fault-bag-density",
            bag=KeyNumber("Bag", "bag_kg", bag.bag_kg),
            water=KeyNumber("Bag", "water_l_per_bag", bag.water_l_per_bag),
            litres=KeyNumber("Bag", "yield_l", round(bag.litres, 1)),
            density=_fresh(density),
            least=_fresh(LIGHTEST_KG_PER_M3, "up"),
            most=_fresh(HEAVIEST_KG_PER_M3, "down"),
        )
        yield (*path, key), message


def _by_volume(kg_per_m3: float) -> KeyNumber:
    """Mass in so much concrete, to a kilogram in a cubic metre."""
    return KeyNumber("Constituent", "kg_per_m3", round(kg_per_m3))


def _fresh(kg_per_m3: float, rounding: Literal["nearest", "up", "down"] = "nearest") -> KeyNumber:
    """A density of concrete, to a kilogram a cubic metre."""
    return KeyNumber("Recipe", "weighed_kg_per_m3", round(kg_per_m3), rounding)


def _closed(recipe: Recipe) -> bool:
    """Return whether the recipe's derived figures can be trusted: no fault above."""
    faults = (_one_kind, _parts_there, _closes, _bag_yields)
    return not any(True for check in faults for _ in check(recipe))


def _ratio(recipe: Recipe) -> FoundFaults:
    if not _closed(recipe):
        return
    ratio = recipe.water_cement_ratio
    if not MIN_RATIO <= ratio <= MAX_RATIO:
        message = Message("fault-ratio", ratio=Figure(ratio, 3), least=MIN_RATIO, most=MAX_RATIO)
        yield _kind_path(recipe), message
    coat = recipe.face_coat
    if coat is not None and coat.water_cement_ratio < ratio - 5e-4:
        message = Message("fault-face-wetter", ratio=Figure(ratio, 3))
        yield ("recipe", "face_coat", "water_cement_ratio"), message


def _kind_path(recipe: Recipe) -> tuple[str, str]:
    return "recipe", "bag" if recipe.bag is not None else "constituents"


def _weighs(recipe: Recipe) -> FoundFaults:
    if not _closed(recipe):
        return
    fresh = recipe.fresh_kg_per_m3
    if not LIGHTEST_KG_PER_M3 <= fresh <= HEAVIEST_KG_PER_M3:
        least, most = _fresh(LIGHTEST_KG_PER_M3, "up"), _fresh(HEAVIEST_KG_PER_M3, "down")
        message = Message("fault-weighs", fresh=_fresh(fresh), least=least, most=most)
        yield _kind_path(recipe), message
    weighed = recipe.weighed_kg_per_m3
    dry = fresh - proportions.water_kg(recipe.parts)
    if weighed is not None and not dry <= weighed <= fresh * 1.01:
        values = {"weighed": _fresh(weighed), "fresh": _fresh(fresh), "dry": _fresh(dry)}
        message = Message("fault-weighed", **values)
        yield ("recipe", "weighed_kg_per_m3"), message


def _sand_too_wet(recipe: Recipe) -> FoundFaults:
    if recipe.bag is not None or not _closed(recipe):
        return
    held = sum(
        part.kg * ((1 + part.moisture_percent / 100) / (1 + part.absorption_percent / 100) - 1)
        for part in recipe.parts
        if part.role == "aggregate"
    )
    water = proportions.water_kg(recipe.parts)
    if held > water:
        message = Message("fault-wet-heaps", held=_by_volume(held), water=_by_volume(water))
        yield ("recipe", "constituents"), message


def _bag_in_mixer(recipe: Recipe, mixer: Mixer) -> FoundFaults:
    bag = recipe.bag
    if bag is not None and bag.whole_bags and bag.litres > mixer.working_l:
        makes = KeyNumber("Bag", "yield_l", round(bag.litres, 1))
        takes = KeyNumber("Mixer", "working_l", mixer.working_l, "down")
        message = Message("fault-bag-mixer", makes=makes, takes=takes)
        yield ("recipe", "bag", "whole_bags"), message


def _face_coat_fits(recipe: Recipe, shaping: Shaping) -> FoundFaults:
    coat = recipe.face_coat
    if coat is not None and coat.thickness_mm >= shaping.thinnest_mm:
        thinnest = KeyNumber("Shaping", "thinnest_mm", shaping.thinnest_mm)
        message = Message("fault-face-thick", thinnest=thinnest)
        yield ("recipe", "face_coat", "thickness_mm"), message


def _left_out_of_face(recipe: Recipe) -> FoundFaults:
    """What a face coat leaves out is one of the recipe's aggregates, and some is left."""
    coat = recipe.face_coat
    if coat is None or not coat.without:
        return
    grains = [
        constituent.name for constituent in recipe.constituents if constituent.role == "aggregate"
    ]
    for i, name in enumerate(coat.without):
        if name not in grains:
            message = Message("fault-no-aggregate", name=name, **nearest(name, tuple(grains)))
            yield ("recipe", "face_coat", "without", i), message
    if grains and set(grains) <= set(coat.without):
        yield ("recipe", "face_coat", "without"), Message("fault-nothing-left")


def _mixer(mixer: Mixer) -> FoundFaults:
    if mixer.open_minutes < mixer.minutes_per_batch:
        message = Message("fault-open-time", minutes=mixer.minutes_per_batch)
        yield ("mixer", "open_minutes"), message
    if mixer.fine_scale_step_kg > mixer.scale_step_kg:
        yield ("mixer", "fine_scale_step_kg"), Message("fault-coarse-scale")


def _slurry(slurry: SlurryRule, finishes: Sequence[FinishOffered]) -> FoundFaults:
    here = [amount.surface for amount in slurry.amounts]
    for i, surface in enumerate(here):
        if surface in here[:i]:
            yield ("slurry", "amounts", i, "surface"), Message("fault-twice", name=surface)
    for finish in finishes:
        if finish.surface not in here:
            yield ("slurry", "amounts"), Message("fault-no-slurry", surface=finish.surface)


CHECKS: tuple[Callable[..., FoundFaults], ...] = (
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
