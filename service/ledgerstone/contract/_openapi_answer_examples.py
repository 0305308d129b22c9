"""Answers that the document shows, with links cut short; tests hold them to their schemas."""

from __future__ import annotations

from ledgerstone.codec.problem_kinds import PROBLEMS, SENT_BACK
from ledgerstone.contract._openapi_examples import (
    BASIN_NEAR_THE_FRONT,
    BENCH,
    HEAVY,
    RESTS_ON,
    Example,
)

_SCREENS = "Screens show colours differently: ask for a cast sample before you decide."
_SURE = (
    "Worked out from tiles that we cast and had read. The cast piece may differ from it as one"
    " batch does from the next."
)

INSTANCE = "urn:uuid:6f1c3a52-6f0e-4f7e-9d63-0c8a5b1d2e34"
_TOKEN = ".eJxVUG1OwzAM.aGZAIx-VxXvvW"  # noqa: S105  cut short, opens nothing

DRAWINGS: Example = {
    "plan": f"/v1/drawings/{_TOKEN}/plan.svg",
    "view": f"/v1/drawings/{_TOKEN}/view.svg",
    "true_size": f"/v1/drawings/{_TOKEN}/true-size.pdf",
    "says": [
        (
            "A slab 1450 mm by 560 mm, 40 mm thick. An opening (basin): round, 360 mm across, its"
            " centre 980 mm from the left and 270 mm from the front. An opening (tap): round, 35 mm"
            " across, its centre 980 mm from the left and 505 mm from the front, rim covered."
            " Front: bevel 5 mm. Back: unseen. It rests on base 650 mm, basin 800 mm."
        )
    ],
}

_SINK: Example = BASIN_NEAR_THE_FRONT["slabs"][0]
_AS_UNDERSTOOD_SINK: Example = {
    "slabs": [
        {
            **_SINK,
            "cutouts": [
                {
                    **_SINK["cutouts"][0],
                    "turn_degrees": 0.0,
                    "rim": "shown",
                    "heat": False,
                    "size_from": "measured",
                }
            ],
            "shade": {"name": "graphite"},
            "finish": {"surface": "as-cast", "sealer": "matt"},
            "quantity": 1,
            "use": "worktop",
            "size_from": "finished",
        }
    ],
    "delivery": {"kind": "collect"},
    **dict.fromkeys(("sample_tile", "templating", "heated_curing"), False),
}

QUOTE: Example = {
    "reference": "TPJD-PQWN",
    "token": _TOKEN,
    "link": f"/#quote={_TOKEN}",
    "order": BENCH,
    "issued": "2026-11-25",
    "valid_until": "2026-12-25",
    "standing": "estimate",
    "depends_on": RESTS_ON,
    "price": {
        "currency": "GBP",
        "lines": [
            {"label": "Materials", "amount": "131.16"},
            {"label": "Making and casting", "amount": "413.25"},
            {"label": "Finishing and sealing", "amount": "193.42"},
            {"label": "Pallet delivery: Around Wethermoor", "amount": "68.00"},
        ],
        "net": "805.83",
        "tax": "161.17",
        "tax_percent": 20.0,
        "total": "967.00",
        "deposit": "386.80",
    },
    "lead_time": {
        "ready_on": "2026-12-22",
        "if_ordered_by": "2026-11-25",
        "arrives": {"earliest": "2026-12-23", "latest": "2027-01-04"},
        "stages": [
            {
                "name": "Waiting its turn",
                "starts": "2026-11-25",
                "ends": "2026-12-02",
                "why": "5 working days of work already taken on",
            },
            {
                "name": "Curing under cover",
                "starts": "2026-12-04",
                "ends": "2026-12-08",
                "why": "4 days",
            },
        ],
    },
    "weight": {
        "slabs": [
            {"label": "Seed-tray bench", "slab_kg": 68.2, "people_to_lift": 3, "says": HEAVY}
        ],
        "packed_kg": 108.2,
    },
    "findings": [],
    "drawings": DRAWINGS,
    "slabs": [
        {
            "finished_mm": {"length_mm": 1450.0, "width_mm": 560.0, "thickness_mm": 40.0},
            "area_m2": 0.7093,
            "volume_l": 28.35,
            "shade": {
                "name": "graphite",
                "hex": "#5a5c5e",
                "hex_wet": "#424446",
                "hex_sealed": "#56595b",
                "lab": [38.91, -0.48, -1.49],
                "by_eye": False,
                "dose_percent": 4.0,
                "uncertainty_delta_e": 1.2,
                "says": f"{_SURE} {_SCREENS}",
            },
        }
    ],
}

_MENDED_PRICE: Example = {
    "currency": "GBP",
    "lines": [
        {"label": "Materials", "amount": "112.86"},
        {"label": "Making and casting", "amount": "356.63"},
        {"label": "Finishing and sealing", "amount": "97.18"},
    ],
    "net": "566.67",
    "tax": "113.33",
    "tax_percent": 20.0,
    "total": "680.00",
    "deposit": "272.00",
}

REMEDY: Example = {
    "says": "Move the basin 27 mm towards the back.",
    "patch": [
        {"op": "test", "path": "/slabs/0/cutouts/0/centre/y", "value": "218 mm"},
        {"op": "replace", "path": "/slabs/0/cutouts/0/centre/y", "value": "245 mm"},
    ],
    "settles": ["strip-too-narrow.0.0-front"],
    "price": _MENDED_PRICE,
    "verified": True,
}

SENT_BACK_EXAMPLE: Example = {
    "type": PROBLEMS + SENT_BACK.name,
    "title": SENT_BACK.title,
    "status": SENT_BACK.status,
    "detail": "1 thing to change before it can be made.",
    "instance": INSTANCE,
    "order": _AS_UNDERSTOOD_SINK,
    "findings": [
        {
            "id": "strip-too-narrow.0.0-front",
            "check": "strip-too-narrow",
            "level": "stops",
            "slab": 0,
            "at": ["/slabs/0/cutouts/0"],
            "says": (
                "The strip between the basin and the front edge is 38 mm wide; it needs 60 mm."
                " Move the basin 25 mm away from the front edge."
            ),
            "measured": {"width_mm": 38.0},
            "limit": {"width_mm": 60.0},
            "where_mm": {"type": "LineString", "coordinates": [[600.0, 38.0], [600.0, 0.0]]},
            "source": "the workshop's own rule; common practice, no source",
            "remedies": [REMEDY],
        }
    ],
    "not_checked": ["strength", "promise"],
    "drawings": DRAWINGS,
    "fix_all": {**REMEDY, "says": [REMEDY["says"]]},
}

NOT_UNDERSTOOD: Example = {
    "type": f"{PROBLEMS}not-understood",
    "title": "We could not understand that",
    "status": 400,
    "detail": "3 things could not be understood.",
    "instance": INSTANCE,
    "faults": [
        {
            "pointer": "/slabs/0/outline/length",
            "says": (
                "The slab's length: 1,5 m could be 1.5 m or 15 m. Write it with a point: 1.5 m."
            ),
        },
        {
            "pointer": "/slabs/0/place",
            "says": 'The place cannot be "garden". Known here: indoors, wet-room, outdoors.',
        },
        {
            "pointer": "/slabs/0/thicknes",
            "says": '"thicknes" is not a part of a slab; did you mean "thickness"?',
        },
    ],
}

CHOICES: Example = {
    "workshop": {
        "name": "Tarnside Casting",
        "town": "Wethermoor",
        "country": "GB",
        "email": "hello@tarnside.example",
        "telephone": "01632 960417",
    },
    "currency": "GBP",
    "tax": {"name": "VAT", "percent": "20"},
    "uses": ["worktop", "shelf", "table"],
    "places": ["indoors", "wet-room", "outdoors"],
    "corners": ["front-left", "front-right", "back-right", "back-left"],
    "thicknesses_mm": [25.0, 30.0, 40.0],
    "shades": [
        {
            "name": "lichen",
            "hex": "#a3ab92",
            "by_eye": True,
            "cement": "white",
            "says": f"Judged by eye from a cast tile. {_SCREENS}",
        }
    ],
    "screens_say": _SCREENS,
    "matching": False,
    "finishes": [{"surface": "honed", "says": "Ground wet to a smooth, matt face."}],
    "sealers": [{"name": "matt", "says": "Leaves the look as it is.", "places": ["indoors"]}],
    "edges": [{"profile": "bevel", "smallest_mm": 3.0, "largest_mm": 15.0}],
    "limits": {
        "length_mm": 2700.0,
        "width_mm": 1200.0,
        "thinnest_mm": 25.0,
        "thickest_mm": 60.0,
        "smallest_side_mm": 60.0,
        "inside_radius_mm": 10.0,
        "fitting_gap_mm": 3.0,
        "slabs": 8,
        "quantity": 24,
        "cutouts": 20,
        "rests": 20,
        "points": 200,
    },
    "deliveries": [{"area": "Around Wethermoor", "postcodes": ["HR"], "kinds": ["pallet"]}],
    **dict.fromkeys(("sample_tile", "templating", "heated_curing")),
    "requests": False,
}

OPENED: Example = {
    "reference": QUOTE["reference"],
    "token": _TOKEN,
    "link": f"/#quote={_TOKEN}",
    "order": {**BENCH, "delivery": {"kind": "pallet", "doorway": "762 mm", "steps": 0}},
    "delivery_area": "Around Wethermoor",
    "issued": "2026-11-25",
    "valid_until": "2026-12-25",
    "standing": "estimate",
    "price": {key: QUOTE["price"][key] for key in ("currency", "net", "tax", "total", "deposit")},
    "lead_time": {"ready_on": "2026-12-22", "if_ordered_by": "2026-11-25"},
    "stands": True,
    "says": "Offered on 25 November 2026 as estimate TPJD-PQWN. It stands until 25 December 2026.",
    "because": [],
    "today": {
        "kind": "quote",
        "body": {
            **QUOTE,
            "changes": {
                "since": {
                    "reference": "TPJD-PQWN",
                    "issued": "2026-11-25",
                    "total": "967.00",
                    "ready_on": "2026-12-22",
                },
                "revision": "",
                "says": [],
                "price_change": {"currency": "GBP", "amount": "0.00"},
                "ready_later_days": 0,
            },
        },
    },
    "drawings": DRAWINGS,
}

REPLY: Example = {
    "subject": "Quotation TPJD-PQWN: Seed-tray bench, £967.00, ready 22 December 2026",
    "text": "Hello Odile,\n\nThank you for asking us. We can make this for you.\n",
    "html": '<!DOCTYPE html>\n<html lang="en" dir="ltr">…</html>\n',
}
