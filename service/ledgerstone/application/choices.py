"""What a workshop offers in public: no costs, no hours, no margins."""

from __future__ import annotations

from typing import Any

from ledgerstone.codec import order_schemas as bounds
from ledgerstone.codec.choice_schemas import CHOICES
from ledgerstone.order import CORNERS, PLACES, USES
from ledgerstone.shade import SCREENS_DIFFER, palette_shade_seen
from ledgerstone.wording import english, money_text
from ledgerstone.workshop.records import Workshop


def write_choices(workshop: Workshop) -> dict[str, Any]:
    """Write what ``GET /v1/choices`` answers."""
    identity = workshop.workshop
    written: dict[str, Any] = CHOICES.dump(
        {
            "workshop": identity,
            "language": identity.language,
            "currency": identity.currency,
            "tax": workshop.tax if workshop.tax.registered else None,
            "uses": USES,
            "places": PLACES,
            "corners": CORNERS,
            "thicknesses_mm": workshop.shaping.thicknesses_mm,
            "shades": [palette_shade_seen(shade, workshop) for shade in workshop.palette],
            "matching": workshop.shade.matching,
            "screens_say": english(SCREENS_DIFFER),
            "finishes": workshop.finishes,
            "sealers": workshop.sealers,
            "edges": workshop.edges,
            "limits": _limits(workshop),
            "deliveries": _deliveries(workshop),
            "sample_tile": _sample_tile(workshop),
            "templating": _templating(workshop),
            "heated_curing": _heated_curing(workshop),
            "requests": workshop.mail is not None,
        }
    )
    return written


def _sample_tile(workshop: Workshop) -> dict[str, Any] | None:
    sample = workshop.sample
    if sample is None:
        return None
    price = money_text(workshop.workshop.currency, sample.price)
    says = f"A sample tile first: {price} before tax for each look, taken off again when you order."
    return {"price": sample.price, "says": says}


def _templating(workshop: Workshop) -> dict[str, Any] | None:
    services, currency = workshop.services, workshop.workshop.currency
    if not services.templating_visit and not services.templating_per_slab:
        return None
    visit, each = services.templating_visit, services.templating_per_slab
    says = (
        f"Come and measure for me: {money_text(currency, visit)},"
        f" and {money_text(currency, each)} for each piece, before tax."
    )
    return {"visit": visit, "each": each, "says": says}


def _heated_curing(workshop: Workshop) -> dict[str, Any] | None:
    tent = workshop.tent
    if tent is None:
        return None
    warm = f"{tent.warmth_c:g} °C"
    says = f"Cure it in our heated tent at {warm}, to have it sooner; the price holds that."
    return {"warmth_c": tent.warmth_c, "says": says}


def _limits(workshop: Workshop) -> dict[str, Any]:
    shaping = workshop.shaping
    return {
        "length_mm": workshop.table.length_mm,
        "width_mm": workshop.table.width_mm,
        "thinnest_mm": shaping.thinnest_mm,
        "thickest_mm": shaping.thickest_mm,
        "smallest_side_mm": shaping.smallest_side_mm,
        "inside_radius_mm": shaping.inside_radius_mm,
        "fitting_gap_mm": shaping.fitting_gap_mm,
        "slabs": bounds.MOST_SLABS,
        "quantity": bounds.MOST_QUANTITY,
        "cutouts": bounds.MOST_CUTOUTS,
        "rests": bounds.MOST_RESTS,
        "points": bounds.MOST_POINTS,
    }


def _deliveries(workshop: Workshop) -> list[dict[str, Any]]:
    ways = (("pallet", "pallet"), ("own-van", "own_van"), ("fitted", "fitted"))
    return [
        {
            "name": area.name,
            "postcodes": area.postcodes,
            "kinds": [kind for kind, name in ways if getattr(area, name) is not None],
        }
        for area in workshop.areas
    ]
