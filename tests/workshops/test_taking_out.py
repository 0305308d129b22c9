"""What is taken out of the form takes with it what refers to it, and the form says so."""

from pathlib import Path
from typing import Final

import pytest

from ledgerstone.application.profile_changes import path_of
from ledgerstone.json_types import value_at
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.loader import read_profile
from ledgerstone.workshop.syntax import tables
from ledgerstone.workshop.taking_out import take_out
from support.documents import Json
from support.profile_form import ASKED, form, started, tried

COUNTRIES: Final = ("GB", "DE", "US")
# Lists of which a maker has more or fewer; of others, such as a recipe's parts, each is needed.
LISTS: Final = (
    *("palette", "pigments", "shade/bases", "finishes", "sealers", "edges", "areas"),
    *("handling/ways", "lifting/pallets"),
)


def items_of(told: Json) -> list[str]:
    """Each item of these lists, where another one is left."""
    at = [one["pointer"] for one in told["tables"] if one["kind"] == "item"]
    lists = {name: [item for item in at if item.rpartition("/")[0] == f"/{name}"] for name in LISTS}
    return [item for items in lists.values() if len(items) > 1 for item in items]


@pytest.mark.parametrize("country", COUNTRIES)
def test_an_item_is_taken_out_without_a_fault(tmp_path: Path, country: str) -> None:
    """Each shade, pigment, cement, finish, sealer, edge, area, way and pallet, one at a time."""
    file = started(tmp_path, country)
    items = items_of(form(file).get(ASKED).get_json())
    assert {item.split("/")[1] for item in items} >= {"palette", "pigments", "shade", "lifting"}
    for item in items:
        draft = ProfileDraft(file.read_text(encoding="utf-8"))
        path = path_of(item)
        take_out(draft, path)
        read_profile(draft.text)  # raises where anything refers to what is gone
        left = len(value_at(tables(draft.text), path[:-1]))
        assert left == len(value_at(tables(file.read_text(encoding="utf-8")), path[:-1])) - 1


def test_what_else_was_removed_is_listed(tmp_path: Path) -> None:
    """Without white cement no tile was read in it; without a pigment no shade has it."""
    client = form(started(tmp_path, "US"))
    white = tried(client, {"op": "leave-out", "pointer": "/shade/bases/1"}, described=True)
    assert "red iron oxide" in white["also"]
    cements = [
        one["value"] for one in white["values"] if one["pointer"].endswith("/cement")
        and "/samples/" in one["pointer"]
    ]  # fmt: skip
    assert set(cements) == {"grey"}
    red = tried(client, {"op": "leave-out", "pointer": "/pigments/1"}, described=True)
    assert "clay" in red["also"]
    named = {one["value"] for one in red["values"] if one["pointer"].endswith("/name")}
    assert "clay" not in named
    assert "also" not in tried(client, {"op": "leave-out", "pointer": "/palette/0"})
