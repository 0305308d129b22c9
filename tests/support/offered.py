"""Orders of one, three and eight slabs, and services on other days and with other profiles."""

import copy
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

from flask.testing import FlaskClient

from ledgerstone.api import Settings, create_app
from ledgerstone.quantities import Length
from ledgerstone.wording import Message
from ledgerstone.workshop import DEMONSTRATION
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS

OFFERED = date(2026, 11, 25)
MAKER = {"Authorization": f"Bearer {MAKER_KEY}"}
SHADES = ("graphite", "chalk", "tarn slate", "fell clay", "lichen")
NAMES = ("Run by the range", "Island", "Sink side", "Larder shelf", "Window sill", "Hearth",
         "Bench by the door", "Bathroom top")  # fmt: skip

# What is said of the example order where its slab is made of 50 mm.
THICKER = Message(
    "change-thickness",
    slab=Message("slab-labelled", label="Seed-tray bench"),
    now=Length.of_mm(50),
    was=Length.of_mm(40),
)


def slabs_order(count: int) -> dict[str, Any]:
    """Return an order of ``count`` different slabs, which quotes."""
    slabs = []
    for i in range(count):
        hole = {"kind": "rectangle", "label": "hob", "length": f"{520 + 7 * i} mm",
                "width": "360 mm", "corner_radius": "12 mm",
                "centre": {"x": f"{713 + 31 * i} mm", "y": "305 mm"}}  # fmt: skip
        slabs.append(
            {
                "label": NAMES[i],
                "outline": {"kind": "rectangle", "length": f"{1430 + 53 * i} mm",
                            "width": f"{605 + 3 * i} mm"},
                "thickness": "40 mm",
                "cutouts": [hole] if i % 2 == 0 else [],
                "edges": {"front": {"profile": "round", "size": "6 mm"},
                          "left": {"profile": "wall"}},
                "shade": {"name": SHADES[i % 5]},
                "finish": {"surface": "honed", "sealer": "matt"},
                "rests": {"kind": "full"},
            }
        )  # fmt: skip
    delivery = {"kind": "pallet", "postcode": "HR9 7XX", "doorway": "800 mm", "steps": 3}
    return {"slabs": slabs, "delivery": delivery, "needed_by": "2027-11-30"}


def detailed_order(count: int) -> dict[str, Any]:
    """So many slabs of a hundred odd corners each: one fits a link, three do not."""
    made = slabs_order(count)
    for k, slab in enumerate(made["slabs"]):
        teeth = [{"x": 10 + 13.37 * n + 0.11 * k, "y": 20 + (n * n + k) % 7} for n in range(98)]
        points = [*teeth, {"x": 1400, "y": 600}, {"x": 5, "y": 600}]
        slab.update(outline={"kind": "polygon", "points": points}, cutouts=[], edges={})
    return made


def revised(token: str, order: dict[str, Any] = EXAMPLE_ORDER) -> dict[str, Any]:
    """An order that changes an earlier quote, without the postcode, as its link gives it."""
    made = copy.deepcopy(order)
    made["since"] = token
    made["delivery"].pop("postcode", None)
    return made


def service(
    today: date = OFFERED,
    keys: tuple[str, ...] = SIGNING_KEYS,
    profile: Path = DEMONSTRATION,
    web_folder: Path | None = None,
) -> FlaskClient:
    """A caller of one replica of the service, with the pages where their folder is given."""
    settings = Settings(
        workshop_path=profile,
        maker_key=MAKER_KEY,
        signing_keys=keys,
        today=lambda _zone: today,
        web_folder=web_folder,
    )
    return create_app(settings).test_client()


Reworded = Callable[..., Path]


def reworded(folder: Path, *changes: tuple[str, str]) -> Path:
    """The demonstration profile with some of its text changed, each place found exactly once."""
    text = DEMONSTRATION.read_text(encoding="utf-8")
    for old, new in changes:
        assert text.count(old) == 1, old
        text = text.replace(old, new)
    path = folder / "workshop.toml"
    path.write_text(text, encoding="utf-8")
    return path
