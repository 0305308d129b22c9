"""The mixes of one shade: the recipe with its pigment, as face coat and backing or as one body."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

from ledgerstone.order import Slab
from ledgerstone.workshop.records import Dose, FaceCoat, Pigment, Recipe, Workshop, proportions
from ledgerstone.workshop.records.proportions import CementColour, MixPart

Coat = Literal["face", "backing", "body"]


@dataclass(frozen=True, slots=True)
class Tint:
    """What colours a mix: its cement and the doses on it."""

    cement: CementColour
    doses: tuple[Dose, ...] = ()


@dataclass(frozen=True, slots=True)
class Mix:
    """One cubic metre of fresh concrete, pigment in it, in the order of mixing.

    ``air_percent`` is what the parts leave out; by the bag it is zero, the yield holding the air.
    """

    coat: Coat
    parts: tuple[MixPart, ...]
    air_percent: float

    @property
    def fresh_kg_per_m3(self) -> float:
        """Density of the fresh mix, kg/m³.

        Source
        ------
        Absolute volumes; sources §6.2.
        """
        return proportions.fresh_kg_per_m3(self.parts, self.air_percent)

    @property
    def cement_kg_per_m3(self) -> float:
        """Cement, kg in a cubic metre.

        Source
        ------
        Absolute volumes; sources §6.2.
        """
        return proportions.cement_kg(self.parts)

    @property
    def water_cement_ratio(self) -> float:
        """Free water over cement by mass, a pure number; some admixtures' water counts.

        Source
        ------
        EN 206 5.2.6, for the admixtures.
        """
        return proportions.water_cement_ratio(self.parts, self.air_percent)


def palette_tint(slab: Slab, workshop: Workshop) -> Tint:
    """Return the tint of a palette shade; without a known name, the recipe's own cement alone."""
    for shade in workshop.palette:
        if shade.name == slab.shade.name:
            return Tint(shade.cement, shade.doses)
    return Tint(workshop.recipe.cement)


def pigment_parts(
    doses: Iterable[Dose], cement_kg: float, pigments: Sequence[Pigment]
) -> tuple[MixPart, ...]:
    """Return the pigments, kg, for ``cement_kg``: a dose is percent of the cement's mass."""
    shelf = {pigment.name: pigment for pigment in pigments}
    return tuple(
        MixPart(
            name=dose.pigment,
            role="pigment",
            kg=cement_kg * dose.percent / 100,
            density_kg_per_m3=shelf[dose.pigment].density_kg_per_m3,
        )
        for dose in doses
    )


def mixes_of(tint: Tint, workshop: Workshop) -> tuple[Mix, ...]:
    """Return the mixes that a slab of this tint is made of, the one that is seen first.

    With a face coat in the recipe: ``face`` and ``backing``; without: one ``body``. By volume,
    pigment takes the place of as much aggregate, so that the cement in a cubic metre stays; by the
    bag it comes on top. A face coat has the backing's dry parts, but for grains that are left out
    of it, and more water.
    """
    return _mixes(tint, workshop.recipe, workshop.pigments)


@lru_cache(maxsize=64)  # mass, price, checks and papers need the same ones; the function is pure
def _mixes(tint: Tint, recipe: Recipe, pigments: tuple[Pigment, ...]) -> tuple[Mix, ...]:
    parts = _coloured(tint, recipe, pigments)
    if recipe.face_coat is None:
        return (Mix("body", parts, recipe.unfilled_percent),)
    backing = Mix("backing", parts, recipe.unfilled_percent)
    return _face(backing, recipe.face_coat), backing


def _coloured(tint: Tint, recipe: Recipe, pigments: Sequence[Pigment]) -> tuple[MixPart, ...]:
    plain = recipe.parts
    colour = pigment_parts(tint.doses, proportions.cement_kg(plain), pigments)
    at = next(i for i, part in enumerate(plain) if part.cement_percent) + 1
    swapped = tuple(
        replace(part, cement=other_cement(tint, recipe)) if part.cement_percent else part
        for part in plain
    )
    parts = (*swapped[:at], *colour, *swapped[at:])
    if recipe.bag is not None:
        return proportions.scaled_to_1_m3(parts, recipe.unfilled_percent)
    return proportions.filled_to_1_m3(parts, recipe.unfilled_percent)


def other_cement(tint: Tint, recipe: Recipe) -> CementColour | None:
    """Return the tint's cement where it is not the recipe's own; either is weighed alike."""
    return None if tint.cement == recipe.cement else tint.cement


def neat_cement(tint: Tint, recipe: Recipe) -> tuple[str, CementColour | None]:
    """Return the name and the colour of the cement of slurry: the recipe's, where it has one."""
    own = next((part.name for part in recipe.parts if part.role == "cement"), None)
    return ("", tint.cement) if own is None else (own, other_cement(tint, recipe))


def _face(backing: Mix, coat: FaceCoat) -> Mix:
    """Return the face coat: its own of the backing's parts, with water up to its ratio, in 1 m³."""
    counted = proportions.counted_admixture_water_kg(backing.parts, backing.air_percent)
    water_kg = coat.water_cement_ratio * proportions.cement_kg(backing.parts) - counted
    dry = (part for part in backing.parts if part.name not in coat.without)
    parts = tuple(replace(p, kg=water_kg) if p.role == "water" else p for p in dry)
    return Mix("face", proportions.scaled_to_1_m3(parts, backing.air_percent), backing.air_percent)


def hardened_kg_per_m3(tint: Tint, workshop: Workshop) -> float:
    """Density of the hardened concrete with its pigment, without steel, kg/m³.

    The recipe's own hardened density times the ratio by which pigment raises the fresh density.

    Source
    ------
    The profile's densities; the scaling is our own.
    """
    recipe = workshop.recipe
    return recipe.density_kg_per_m3 * (
        mixes_of(tint, workshop)[-1].fresh_kg_per_m3 / recipe.fresh_kg_per_m3
    )


def largest_aggregate_mm(
    narrowest_mm: float | None, depth_mm: float | None, clear_spacing_mm: float | None = None
) -> float:
    """Return the largest grain, mm, that still flows into a form.

    Parameters
    ----------
    narrowest_mm
        Narrowest distance between the form's sides, where it has two.
    depth_mm
        Depth, where it is a slab.
    clear_spacing_mm
        Between bars or wires, where there are some.

    Raises
    ------
    ValueError
        None of the three is given.

    Source
    ------
    ACI 318-19 26.4.2.1(a)(5): the least of 1/5 of the narrowest distance between the sides
    of forms, 1/3 of a slab's depth and 3/4 of the clear spacing.
    """
    rules = ((narrowest_mm, 1 / 5), (depth_mm, 1 / 3), (clear_spacing_mm, 3 / 4))
    return min(length * share for length, share in rules if length is not None)
