"""What a workshop offers in public: no costs, no hours, no margins."""

from __future__ import annotations

from typing import Any

from ledgerstone.order import CORNERS, PLACES, USES
from ledgerstone.shade import SCREENS_DIFFER, SeenShade, palette_shade_seen
from ledgerstone.wire import order_schemas as bounds
from ledgerstone.workshop.records import Workshop


def write_choices(workshop: Workshop) -> dict[str, Any]:
    """Write what ``GET /v1/choices`` answers."""
    identity = workshop.workshop
    return {
        "workshop": {
            "name": identity.name,
            "town": identity.town,
            "country": identity.country,
            "email": identity.email,
            "telephone": identity.telephone,
        },
        "currency": identity.currency,
        "tax": _tax(workshop),
        "uses": list(USES),
        "places": list(PLACES),
        "corners": list(CORNERS),
        "thicknesses_mm": list(workshop.shaping.thicknesses_mm),
        "shades": [_shade(palette_shade_seen(s, workshop)) for s in workshop.palette],
        "matching": workshop.shade.matching,
        "screens_say": SCREENS_DIFFER,
        "finishes": [{"surface": f.surface, "says": f.says} for f in workshop.finishes],
        "sealers": [
            {"name": s.name, "says": s.says, "places": list(s.places)} for s in workshop.sealers
        ],
        "edges": [
            {"profile": e.profile, "smallest_mm": e.smallest_mm, "largest_mm": e.largest_mm}
            for e in workshop.edges
        ],
        "limits": _limits(workshop),
        "deliveries": _deliveries(workshop),
        "requests": workshop.mail is not None,
    }


def _shade(seen: SeenShade) -> dict[str, Any]:
    return {
        "name": seen.name,
        "hex": seen.hex,
        "by_eye": seen.by_eye,
        "cement": seen.recipe.cement,
        "says": seen.says,
    }


def _tax(workshop: Workshop) -> dict[str, Any] | None:
    tax = workshop.tax
    return {"name": tax.name, "percent": str(tax.percent)} if tax.registered else None


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
            "area": area.name,
            "postcodes": list(area.postcodes),
            "kinds": [kind for kind, name in ways if getattr(area, name) is not None],
        }
        for area in workshop.areas
    ]
