"""The orders that the document shows, each a file in ``orders/``, and an enquiry."""

from __future__ import annotations

import json
from importlib.resources import files
from typing import Final

from ledgerstone.json_types import Members


def _order(name: str) -> Members:
    text = (files("ledgerstone.contract") / "orders" / f"{name}.json").read_text(encoding="utf-8")
    found: Members = json.loads(text)
    return found


BENCH: Final = _order("bench")
BASIN_NEAR_THE_FRONT: Final = _order("basin_near_the_front")
THREE_FAULTS: Final = _order("three_faults")
ORDERS: Final[dict[str, tuple[str, Members]]] = {
    "bench": ("A bench with a basin and a tap hole", BENCH),
    "shelf": ("A shelf in feet and inches, the rest as the workshop does it", _order("shelf")),
    "l_run": ("Two slabs that meet, in millimetres", _order("l_run")),
    "basin_near_the_front": ("A basin too near the front edge", BASIN_NEAR_THE_FRONT),
    "three_faults": ("Three things that mean no piece of concrete", THREE_FAULTS),
}

ENQUIRY: Final = """Hello,

Could you price a worktop for our utility room, 1.83 m long and 620 mm deep? There is one basin to
cut out, 380 mm across, its middle 600 mm from the left end. Graphite if you have it. We'd collect.

Odile Marsh
odile@example.com
"""
