"""Recipes and workshops for tests of the mix."""

from dataclasses import replace
from decimal import Decimal

from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import Bag, Constituent, FaceCoat, Mixer, Recipe
from ledgerstone.workshop.records.proportions import MixPart

FREE = Decimal(0)


def part(role: str, kg: float, density: float, name: str = "", **more: float) -> MixPart:
    """Return one part of a mix."""
    cement = 100.0 if role == "cement" else 0.0
    return MixPart(
        name=name or role,
        role=role,  # type: ignore[arg-type]  # a test names roles that there are
        kg=kg,
        density_kg_per_m3=density,
        cement_percent=cement,
        **more,  # type: ignore[arg-type]  # figures alone
    )


def constituent(role: str, kg: float, density: float, name: str = "", **more: float) -> Constituent:
    """Return one part of a recipe by volume, free of charge."""
    return Constituent(
        name=name or role,
        role=role,  # type: ignore[arg-type]  # as above
        kg_per_m3=kg,
        density_kg_per_m3=density,
        price_per_kg=FREE,
        **more,
    )


def recipe_of(
    *constituents: Constituent,
    air: float = 2.0,
    waste: float = 0.0,
    bag: Bag | None = None,
    coat: FaceCoat | None = None,
) -> Recipe:
    """Return a recipe."""
    return Recipe(
        name="a test's own",
        cement="grey",
        cement_class="N",
        fck_mpa=40,
        largest_aggregate_mm=4,
        air_percent=air,
        waste_percent=waste,
        constituents=constituents,
        bag=bag,
        face_coat=coat,
    )


def bag_of(**more: object) -> Bag:
    """Return the bag of row M26 of sources §7: 25 kg and 2.5 litres at 2200."""
    figures: dict[str, object] = {
        "name": "bagged mix",
        "bag_kg": 25.0,
        "cement_percent": 22.0,
        "water_l_per_bag": 2.5,
        "fresh_kg_per_m3": 2200.0,
        "price_per_bag": Decimal("11.50"),
    }
    return Bag(**(figures | more))  # type: ignore[arg-type]  # a test's own figures


def mixing(
    workshop: Workshop, recipe: Recipe, *, mixer: Mixer | None = None, sanding_mm: float = 0.0
) -> Workshop:
    """Return the workshop with another recipe, a roomy mixer, and nothing sanded off."""
    roomy = Mixer(
        working_l=100.0,
        minutes_per_batch=10.0,
        open_minutes=60.0,
        scale_step_kg=0.01,
        fine_scale_step_kg=0.001,
        fine_scale_most_kg=5.0,
    )
    boards = replace(workshop.boards, sanding_mm=sanding_mm)
    return replace(workshop, recipe=recipe, mixer=mixer or roomy, boards=boards)


def mix_b() -> tuple[Constituent, ...]:
    """Mix B's constituents; how much sand is written does not matter, for it fills."""
    return (
        constituent("water", 190, 1000),
        constituent("plasticiser", 5, 1070),
        constituent("cement", 500, 3150),
        constituent("aggregate", 1650, 2650, "sand"),
    )


def pigmented(workshop: Workshop, name: str, density: float) -> Workshop:
    """Return the workshop with one pigment of that density on the shelf."""
    (first, *_) = workshop.pigments
    return replace(workshop, pigments=(replace(first, name=name, density_kg_per_m3=density),))
