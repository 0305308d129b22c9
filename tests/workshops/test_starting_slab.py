"""The slab that an empty form starts with is one that the workshop makes."""

from pathlib import Path

import pytest

from support.documents import Json
from support.profile_form import form, setting, started, tried

_BY_BAG: Json = {"op": "mix-from-bags", "pointer": "/recipe/bag"}
_THICK: Json = {"op": "set", "pointer": "/shaping/thicknesses_mm", "values": ["50", "60"]}
# What makers typed, by the country of their file.
SHOPS: dict[str, tuple[str, list[Json]]] = {
    "as it begins": ("US", []),
    "two people, from bags": (
        "US",
        [
            _BY_BAG,
            setting("/recipe/bag/price_per_bag", "7"),
            setting("/lifting/most_people", "2"),
            setting("/handling/ways/0/most_kg", "250"),
        ],
    ),
    "a table of a metre": (
        "DE",
        [setting("/table/length_mm", "1000"), setting("/table/width_mm", "500")],
    ),
    "thick sides alone": ("CH", [_THICK]),
    "one person": (
        "GB",
        [setting("/lifting/most_people", "1"), setting("/handling/ways/0/most_kg", "60")],
    ),
}


@pytest.mark.parametrize("shop", SHOPS)
def test_an_empty_form_starts_with_what_can_be_made(tmp_path: Path, shop: str) -> None:
    """In millimetres and in inches: its shade, surface and sealer are the first on offer."""
    country, told = SHOPS[shop]
    file = started(tmp_path, country)
    assert tried(form(file, is_writable=True), *told, save=True)["faults"] == []
    client = form(file)
    choices = client.get("/v1/choices").get_json()
    for usual in ((1500.0, 600.0), (1524.0, 609.6)):
        answer = client.post("/v1/quotes", json={"slabs": [_started(choices, *usual)]})
        assert answer.status_code == 200, answer.get_json()


def _started(choices: Json, length_mm: float, width_mm: float) -> Json:
    """The slab that the page starts with."""
    start = choices["start"]
    sealer = next(one["name"] for one in choices["sealers"] if "indoors" in one["places"])
    return {
        "outline": {
            "kind": "rectangle",
            "length": min(length_mm, start["length_mm"]),
            "width": min(width_mm, start["width_mm"]),
        },
        "thickness": start["thickness_mm"],
        "shade": {"name": choices["shades"][0]["name"]},
        "finish": {"surface": choices["finishes"][0]["surface"], "sealer": sealer},
        "place": "indoors",
    }
