"""The orders that the document shows."""

from __future__ import annotations

from typing import Any, Final

Example = dict[str, Any]

BENCH: Example = {
    "slabs": [
        {
            "label": "Seed-tray bench",
            "quantity": 1,
            "use": "worktop",
            "size_from": "finished",
            "outline": {"kind": "rectangle", "length": "1450 mm", "width": "560 mm"},
            "thickness": "40 mm",
            "cutouts": [
                {
                    "label": "basin",
                    "kind": "circle",
                    "diameter": "360 mm",
                    "centre": {"x": "980 mm", "y": "270 mm"},
                    "rim": "shown",
                },
                {
                    "label": "tap",
                    "kind": "circle",
                    "diameter": "35 mm",
                    "centre": {"x": "980 mm", "y": "505 mm"},
                    "rim": "covered",
                },
            ],
            "edges": {"front": {"profile": "bevel", "size": "5 mm"}, "back": {"profile": "wall"}},
            "shade": {"name": "graphite"},
            "finish": {"surface": "honed", "sealer": "matt"},
            "place": "outdoors",
            "rests": {
                "kind": "units",
                "units": [{"width": "650 mm"}, {"width": "800 mm", "for": "basin"}],
                "overhang": {"front": "20 mm"},
            },
        }
    ],
    "delivery": {
        "kind": "pallet",
        "postcode": "HR9 7XX",
        "doorway": "762 mm",
        "steps": 0,
    },
    "needed_by": "2027-03-25",
}

SHELF: Example = {
    "slabs": [
        {
            "label": "Shelf over the stove",
            "use": "shelf",
            "outline": {"kind": "rectangle", "length": "4' 3\"", "width": "7 1/2 in"},
            "thickness": "40 mm",
            "rests": {"kind": "full"},
        }
    ],
    "delivery": {"kind": "collect"},
}

L_RUN: Example = {
    "slabs": [
        {
            "label": "Long side",
            "outline": {"kind": "rectangle", "length": 1800, "width": 620},
            "thickness": 40,
            "cutouts": [
                {
                    "label": "hob",
                    "kind": "rectangle",
                    "length": 560,
                    "width": 480,
                    "corner_radius": 10,
                    "centre": {"x": 900, "y": 310},
                    "rim": "covered",
                    "heat": True,
                }
            ],
            "edges": {"back": {"profile": "wall"}, "left": {"profile": "wall"}},
            "rests": {
                "kind": "units",
                "units": [{"width": 600}, {"width": 600, "for": "hob"}, {"width": 600}],
            },
        },
        {
            "label": "Short side",
            "outline": {"kind": "rectangle", "length": 1200, "width": 620},
            "thickness": 40,
            "rests": {"kind": "units", "units": [{"width": 600}, {"width": 600}]},
        },
    ],
    "joins": [
        {"one": {"slab": 0, "side": "right"}, "other": {"slab": 1, "side": "left"}, "gap": 2}
    ],
    "delivery": {"kind": "collect"},
}

BASIN_NEAR_THE_FRONT: Example = {
    "slabs": [
        {
            "label": "Garden sink",
            "outline": {"kind": "rectangle", "length": "1200 mm", "width": "520 mm"},
            "thickness": "40 mm",
            "cutouts": [
                {
                    "label": "basin",
                    "kind": "circle",
                    "diameter": "360 mm",
                    "centre": {"x": "600 mm", "y": "218 mm"},
                }
            ],
            "place": "outdoors",
        }
    ],
    "delivery": {"kind": "collect"},
}

THREE_FAULTS: Example = {
    "slabs": [
        {
            "outline": {"kind": "rectangle", "length": "1,5 m", "width": 560},
            "thicknes": 40,
            "thickness": 40,
            "place": "garden",
        }
    ]
}

ORDERS: dict[str, tuple[str, Example]] = {
    "bench": ("A bench with a basin and a tap hole", BENCH),
    "shelf": ("A shelf in feet and inches, the rest as the workshop does it", SHELF),
    "l_run": ("Two slabs that meet, in millimetres", L_RUN),
    "basin_near_the_front": ("A basin too near the front edge", BASIN_NEAR_THE_FRONT),
    "three_faults": ("Three things that mean no piece of concrete", THREE_FAULTS),
}

ENQUIRY: Final = """Hello,

Could you price a worktop for our utility room, 1.83 m long and 620 mm deep? There is one basin to
cut out, 380 mm across, its middle 600 mm from the left end. Graphite if you have it. We'd collect.

Odile Marsh
odile@example.com
"""
