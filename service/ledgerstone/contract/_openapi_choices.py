"""What ``GET /v1/choices`` answers, as JSON Schema 2020-12 written by hand."""

from __future__ import annotations

from ledgerstone.contract._openapi_parts import list_of, number, object_of, text
from ledgerstone.order import CORNERS, PLACES, USES

_PERCENT_TEXT = text("A decimal number of percent.", pattern="^[0-9]+(\\.[0-9]+)?$")

CHOICES = object_of(
    {
        "workshop": object_of(
            {
                "name": text(),
                "town": text(),
                "country": text(),
                "email": text(),
                "telephone": text(),
            }
        ),
        "currency": text("ISO 4217."),
        "tax": {
            "anyOf": [object_of({"name": text(), "percent": _PERCENT_TEXT}), {"type": "null"}],
            "description": "Null where the workshop charges none.",
        },
        "uses": list_of({"enum": list(USES)}),
        "places": list_of({"enum": list(PLACES)}),
        "corners": list_of({"enum": list(CORNERS)}),
        "thicknesses_mm": list_of(number()),
        "shades": list_of(
            object_of(
                {
                    "name": text(),
                    "hex": text(),
                    "by_eye": {"type": "boolean"},
                    "cement": {"enum": ["grey", "white"]},
                    "says": text("How sure the colour is."),
                }
            )
        ),
        "matching": {"type": "boolean", "description": "Whether a colour can be matched."},
        "screens_say": text("What to say beside every swatch."),
        "finishes": list_of(object_of({"surface": text(), "says": text()})),
        "sealers": list_of(object_of({"name": text(), "says": text(), "places": list_of(text())})),
        "edges": list_of(
            object_of({"profile": text(), "smallest_mm": number(), "largest_mm": number()})
        ),
        "limits": object_of(
            {
                name: number()
                for name in (
                    "length_mm", "width_mm", "thinnest_mm", "thickest_mm", "smallest_side_mm",
                    "inside_radius_mm", "fitting_gap_mm", "slabs", "quantity", "cutouts", "rests",
                    "points",
                )
            }
        ),
        "deliveries": list_of(
            object_of({"area": text(), "postcodes": list_of(text()), "kinds": list_of(text())})
        ),
        "sample_tile": {
            "anyOf": [object_of({"price": text("Before tax."), "says": text()}), {"type": "null"}],
            "description": "Null where the workshop casts none.",
        },
        "templating": {
            "anyOf": [
                object_of({"visit": text("Before tax."), "each": text(), "says": text()}),
                {"type": "null"},
            ],
            "description": "What coming to measure costs; null where the workshop does not come.",
        },
        "heated_curing": {
            "anyOf": [object_of({"warmth_c": number(), "says": text()}), {"type": "null"}],
            "description": "Null where the workshop has no heated tent.",
        },
        "requests": {"type": "boolean", "description": "Whether a quote can be asked for here."},
    },
    says="What this workshop offers in public.",
)  # fmt: skip
