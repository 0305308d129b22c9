"""What is taken out of the form takes with it what refers to it, and the form says so."""

from datetime import date
from pathlib import Path
from typing import Final

import pytest

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.profile_changes import changed, path_of
from ledgerstone.codec.tokens import Tokens
from ledgerstone.json_types import value_at
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.taking_out import take_out
from ledgerstone.workshop.reading.loader import DEMONSTRATION, load_profile, read_profile
from ledgerstone.workshop.reading.syntax import tables
from support.documents import Json
from support.profile_form import ASKED, begun, form, started, tried

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


CONTEXT: Final = QuoteContext(load_profile(DEMONSTRATION), date(2026, 11, 25), Tokens(("x" * 40,)))


def taken_after(text: str, *changes: Json) -> dict[str, str]:
    """What is taken of each span, by the name of the item or the key that it stands at."""
    now = changed(text, list(changes), ".", CONTEXT)
    raw = tables(now.text)
    found = {value_at(raw, at[:-1]).get("name", at[-1]): says for at, says in now.taken}
    return {at: str(says.values["value"]) for at, says in found.items()}


def typed(pointer: str, value: str) -> Json:
    """A span that is typed at a place."""
    return {"op": "set", "pointer": pointer, "value": value}


def test_what_is_taken_of_a_span_stays_with_its_item() -> None:
    """An item before it is taken out, or one that goes with another: it moves up with its own."""
    text = begun("US")
    raw = tables(text)
    pigments, shades = ([item["name"] for item in raw[key]] for key in ("pigments", "palette"))
    out: list[Json] = [{"op": "leave-out", "pointer": f"/pigments/{k}"} for k in range(2)]
    span = typed("/pigments/1/price_per_kg", "8-10")
    assert taken_after(text, span) == {pigments[1]: "9 USD/lb"}
    assert taken_after(text, span, out[0]) == {pigments[1]: "9 USD/lb"}
    assert taken_after(text, span, out[1]) == {}
    k = shades.index("clay")  # red iron oxide is in it, and it goes with it
    spans = [typed(f"/palette/{i}/extra_per_m3", f"{8 + i}-{10 + i}") for i in (k, k + 1)]
    assert taken_after(text, *spans, out[1]) == {shades[k + 1]: f"{10 + k} USD/yd³"}


def test_nothing_is_taken_of_a_span_that_another_change_wrote_over() -> None:
    """Hours of typical jobs are fitted after a span of hours; a recipe is made one from bags."""
    text = begun("US")
    rate = typed("/hours/per_job/set_up", "1-2")
    price = typed("/recipe/constituents/1/price_per_kg", "1-2")
    assert len(taken_after(text, rate, price)) == 2
    fit = {"op": "fit-hours", "pointer": "/hours", "values": ["5", "14", "31"]}
    bags = {"op": "mix-from-bags", "pointer": "/recipe/bag"}
    assert taken_after(text, rate, price, fit, bags) == {}
