"""Whatever a customer measures in, that is what is answered, in a workshop of any country."""

import re
from itertools import product
from typing import Any, Final

import pytest

from ledgerstone.quantities import Length, UnitName
from support.documents import Json
from workshops.conftest import FILES, WorkshopCase, workshop_case
from workshops.reading import plain, read

UNITS: Final[tuple[UnitName, ...]] = ("mm", "cm", "m", "in")
_WORDS: Final = {"mm": "mm", "cm": "cm", "m": "m", "in": "in|ft|Zoll|Fuß"}
MASSES: Final = {"demonstration": "kg", "germany": "kg", "united_states": "lb"}


def _typed(mm: float, unit: UnitName) -> str:
    """A length as somebody types it who measures in a unit: in inches to an eighth."""
    if unit == "in":
        return Length.of_mm(round(mm / 25.4 * 8) / 8 * 25.4, unit).text()
    return Length.of_mm(mm, unit).text()


def _order(shop: WorkshopCase, unit: UnitName, length_mm: float, **slab: Any) -> Json:
    """A top whose thickness nobody told, with a basin and a tap near the edges."""
    across, front, back = (_typed(mm, unit) for mm in (700, 260, 540))
    bowl = {"label": shop.typed["basin"], "kind": "circle", "diameter": _typed(360, unit)}
    hole = {"label": shop.typed["tap"], "kind": "circle", "diameter": _typed(35, unit)}
    top = {
        "outline": {
            "kind": "rectangle",
            "length": _typed(length_mm, unit),
            "width": _typed(600, unit),
        },
        "cutouts": [
            {**bowl, "centre": {"x": across, "y": front}},
            {**hole, "centre": {"x": across, "y": back}},
        ],
        "shade": {"name": shop.workshop.palette[0].name},
        "finish": {"surface": "honed", "sealer": shop.workshop.sealers[0].name},
        **slab,
    }
    return {
        "slabs": [top],
        "delivery": {"kind": "pallet", "postcode": shop.typed["postcode"]},
    }


def _strange(document: Json, unit: UnitName) -> list[str]:
    """The texts of an answer with a length in another unit; beside metres stand millimetres."""
    beside = {unit, "mm"} if unit == "m" else {unit}
    others = "|".join(words for name, words in _WORDS.items() if name not in beside)
    texts = map(plain, read(document))
    return [text for text in texts if re.search(rf"\d ?(?:{others})\b", text)]


@pytest.mark.parametrize(("name", "unit"), list(product(FILES, UNITS)))
def test_an_answer_is_in_the_unit_that_was_chosen(name: str, unit: UnitName) -> None:
    """What is quoted and what cannot be made, with its fixes, are in the customer's own unit."""
    shop = workshop_case(name)
    quoted = shop.asked("/v1/quotes", _order(shop, unit, 1524))
    assert _strange(quoted, unit) == []
    assert re.search(rf"\d (?:{_WORDS[unit]})\b", " ".join(read(quoted)))
    assert re.search(rf"\d {MASSES[name]}\b", " ".join(read(quoted["weight"])))
    stopped = shop.client.post("/v1/quotes", json=_order(shop, unit, 2 * 1524 + 800)).get_json()
    assert {finding["level"] for finding in stopped["findings"]} >= {"stops"}
    assert stopped["fix_all"]["says"]
    assert _strange(stopped, unit) == []
