"""How a shade of an order looks, and what it is made of: from the palette, or matched."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from ledgerstone.mix import Tint, palette_tint
from ledgerstone.order import Shade, Slab
from ledgerstone.shade.colour import Lab, delta_e_2000, lab_to_srgb, srgb_to_lab
from ledgerstone.shade.layer import Appearance
from ledgerstone.shade.match import Match, nearest_recipe
from ledgerstone.shade.model import shade_model
from ledgerstone.shade.words import Certainty, certainty_of, difference_message
from ledgerstone.wording import Message
from ledgerstone.workshop.records import Dose, PaletteShade, Sealer, Workshop


@dataclass(frozen=True, slots=True)
class ShadeRecipe:
    """What a shade is made of: its cement, pigments, and what it adds to a cubic metre."""

    cement: str
    doses: tuple[Dose, ...]
    extra_per_m3: Decimal

    @property
    def dose_percent(self) -> float:
        """All pigments together, percent of the cement.

        Source
        ------
        Arithmetic.
        """
        return round(math.fsum(dose.percent for dose in self.doses), 6)


@dataclass(frozen=True, slots=True)
class SeenShade:
    """How a shade looks, dry and unsealed, and how sure that is.

    ``uncertainty_delta_e`` is None if the colour was judged by eye: it is not known;
    ``away_delta_e`` how far a matched colour stays from the wish, none for the palette's.
    """

    name: str
    lab: Lab
    by_eye: bool
    recipe: ShadeRecipe
    uncertainty_delta_e: float | None
    away_delta_e: float | None
    message: Message

    @property
    def hex(self) -> str:
        """The colour as a screen shows it, ``#rrggbb``."""
        return lab_to_srgb(self.lab)


def palette_shade_seen(shade: PaletteShade, workshop: Workshop) -> SeenShade:
    """A palette shade: what its recipe makes if its pigments were read, else as it was judged."""
    model = shade_model(workshop)
    recipe = ShadeRecipe(shade.cement, shade.doses, shade.extra_per_m3)
    if model.knows(shade.cement, shade.doses):
        sure = model.uncertainty_delta_e(shade.cement, shade.doses)
        message = Message("shade-worked-out", certainty=_certainty(sure, workshop))
        lab = model.lab(shade.cement, shade.doses)
        by_eye = False
        return SeenShade(shade.name, lab, by_eye, recipe, sure, None, message)
    message = Message("shade-judged-by-eye" if shade.by_eye else "shade-read-by-instrument")
    if workshop.standing.still_invented("palette"):
        message = Message("shade-without-tile")
    lab = srgb_to_lab(shade.colour)
    return SeenShade(shade.name, lab, shade.by_eye, recipe, None, None, message)


def matched_shade_seen(target: str, workshop: Workshop) -> SeenShade | None:
    """What the nearest recipe to a target ``#rrggbb`` makes; none if matching is not offered."""
    goal = srgb_to_lab(target)
    match = _match(goal, workshop)
    if match is None:
        return None
    sure = shade_model(workshop).uncertainty_delta_e(match.cement, match.doses)
    message = Message(
        "shade-matched",
        difference=difference_message(match.lab, goal),
        certainty=_certainty(sure, workshop),
    )
    recipe = ShadeRecipe(match.cement, match.doses, _extra_per_m3(match.cement, workshop))
    by_eye = False
    return SeenShade("", match.lab, by_eye, recipe, sure, match.away_delta_e, message)


def _certainty(uncertainty_delta_e: float, workshop: Workshop) -> Certainty:
    """Name how sure a computed colour is; with invented readings, as if no tile was cast."""
    readings = ("pigments", "shade")
    if any(workshop.standing.still_invented(table) for table in readings):
        return "no-tile"
    return certainty_of(uncertainty_delta_e)


def _match(goal: Lab, workshop: Workshop) -> Match | None:
    if not workshop.shade.matching:
        return None
    step_kg = workshop.mixer.fine_scale_step_kg
    return nearest_recipe(goal, workshop.pigments, workshop.shade, step_kg)


def _extra_per_m3(cement: str, workshop: Workshop) -> Decimal:
    return next(base.extra_per_m3 for base in workshop.shade.bases if base.cement == cement)


def shade_seen(shade: Shade, workshop: Workshop) -> SeenShade | None:
    """A shade as an order gives it: by name from the palette, or a colour to match."""
    if shade.match is not None:
        return matched_shade_seen(shade.match, workshop)
    named = next((entry for entry in workshop.palette if entry.name == shade.name), None)
    return palette_shade_seen(named, workshop) if named is not None else None


def shade_recipe(shade: Shade, workshop: Workshop) -> ShadeRecipe | None:
    """What an order's shade is made of; none for a match that is not offered."""
    if shade.match is not None:
        seen = matched_shade_seen(shade.match, workshop)
        return seen.recipe if seen is not None else None
    named = next((entry for entry in workshop.palette if entry.name == shade.name), None)
    return ShadeRecipe(named.cement, named.doses, named.extra_per_m3) if named else None


def nearest_palette_shade(colour: str, workshop: Workshop) -> tuple[SeenShade, float]:
    """The palette's shade nearest to ``#rrggbb``, and its distance by CIEDE2000.

    Source
    ------
    As `delta_e_2000`.
    """
    goal = srgb_to_lab(colour)
    every: Sequence[SeenShade] = [palette_shade_seen(shade, workshop) for shade in workshop.palette]
    away = [delta_e_2000(seen.lab, goal) for seen in every]
    nearest = min(range(len(every)), key=away.__getitem__)
    return every[nearest], away[nearest]


def sealed_as(sealer: Sealer) -> Appearance:
    """Appearance under a sealer: matt where it soaks in, satin where it leaves a film."""
    return "sealed-satin" if sealer.kind == "film" else "sealed-matt"


def tint_of(slab: Slab, workshop: Workshop) -> Tint:
    """Return what colours a slab's mix, of the palette or matched; else the recipe's own cement."""
    recipe = shade_recipe(slab.shade, workshop)
    if recipe is None:
        return palette_tint(slab, workshop)
    return Tint("white" if recipe.cement == "white" else "grey", recipe.doses)
