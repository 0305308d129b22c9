"""What is done beside the making: a sample tile first, and coming to measure."""

import copy
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from ledgerstone.json_types import JSON
from ledgerstone.wording import Message, english
from support.asking import changed
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, reworded, service, slabs_order

TILE = (english(Message("price-tile")), english(Message("price-tile-credit")))
MEASURE = english(Message("price-measuring"))
UNTIL_MEASURED = english(Message("estimate-until-measured"))


def _quote(order: dict[str, JSON], profile: Path | None = None) -> JSON:
    caller = service() if profile is None else service(profile=profile)
    answer = caller.post("/v1/quotes", json=order)
    assert answer.status_code == 200, answer.text
    return answer.get_json()


def _lines(quoted: JSON) -> dict[str, Decimal]:
    return {line["label"]: Decimal(line["amount"]) for line in quoted["price"]["lines"]}


def test_a_tile_is_paid_first_and_credited_as_the_order_goes_ahead() -> None:
    """Two lines that cancel: who orders pays nothing for the tile or its making."""
    plain, with_tile = _quote(EXAMPLE_ORDER), _quote(EXAMPLE_ORDER | {"sample_tile": True})
    lines = _lines(with_tile)
    assert [lines[label] for label in TILE] == [Decimal("45.00"), Decimal("-45.00")]
    assert with_tile["price"]["total"] == plain["price"]["total"]
    assert sum(lines.values()) == Decimal(with_tile["price"]["net"])
    assert not set(TILE) & set(_lines(plain))


def test_the_tile_is_cast_and_waited_for_before_anything_else() -> None:
    """Nine days until it is with the customer and five for the yes; the order is later for it."""
    plain, with_tile = _quote(EXAMPLE_ORDER), _quote(EXAMPLE_ORDER | {"sample_tile": True})
    stages = {stage["name"]: stage for stage in with_tile["lead_time"]["stages"]}
    cast, yes, mould = (
        stages[english(Message("stage", stage=name))] for name in ("sample", "yes", "mould")
    )
    waited = date.fromisoformat(yes["ends"]) - date.fromisoformat(cast["ends"])
    assert waited.days == 9 + 5
    assert mould["starts"] >= yes["ends"]
    assert with_tile["lead_time"]["ready_on"] > plain["lead_time"]["ready_on"]
    assert english(Message("sample-first")) in with_tile["depends_on"]


def test_the_tile_is_the_one_list_in_price_days_and_job_sheet() -> None:
    """Its minutes are on the sheet, in the costs, and laid; its steps come first."""
    client, order = service(), EXAMPLE_ORDER | {"sample_tile": True}
    sheet = client.post("/v1/job-sheets", json={"order": order}, headers=MAKER).get_json()
    first, yes, third = sheet["operations"][:3]
    assert (first["name"], first["hands_minutes"]) == ("Cast a sample tile: graphite, honed", 45)
    assert yes["name"].startswith("Yes to")
    assert yes["wait_hours"] == 120.0
    assert third["name"].startswith("Templates, sinks")
    costs = {line["label"]: line for line in sheet["costs"]["lines"]}
    paid = costs["Hours: Cast a sample tile: graphite, honed"]
    assert paid == {
        "label": "Hours: Cast a sample tile: graphite, honed",
        "group": "Sample tiles",
        "amount": f"{Decimal(45) / 60 * 38:.2f}",
    }


def test_a_dear_order_has_a_tile_whether_asked_for_or_not(tmp_path: Path) -> None:
    """From the profile's value on nothing is cut before a yes; below it nothing waits."""
    order = slabs_order(3)  # about 2000 before delivery and tax
    for value, waits in (("1000.00", True), ("6000.00", False)):
        profile = reworded(tmp_path, ("always_from = 6000.00", f"always_from = {value}"))
        quoted = _quote(order, profile)
        assert any(s["name"] == "Sample tile" for s in quoted["lead_time"]["stages"]) is waits
        assert not set(TILE) & set(_lines(quoted))


def test_one_tile_for_each_look() -> None:
    """Three slabs of three shades are three tiles."""
    assert _lines(_quote(slabs_order(3) | {"sample_tile": True}))[TILE[0]] == 3 * 45


@pytest.mark.parametrize("kind", ["pallet", "own-van"])
def test_coming_to_measure_is_a_service_of_its_own(kind: str) -> None:
    """It is ordered with any delivery, and what waits for it is an estimate."""
    order = changed(("/delivery/kind", kind)) | {"templating": True}
    quoted = _quote(order)
    assert _lines(quoted)[MEASURE] == 70 + 25
    assert quoted["standing"] == "estimate"
    assert UNTIL_MEASURED in quoted["depends_on"]


def test_a_template_that_the_customer_sends_is_free() -> None:
    """Still to be measured, and nobody comes: no line for it."""
    order = changed(("/slabs/0/size_from", "template-to-follow"))
    assert MEASURE not in _lines(_quote(order))


def test_who_collects_can_have_it_measured_too() -> None:
    """It says how far we come, and the price is the same."""
    order = copy.deepcopy(EXAMPLE_ORDER) | {"delivery": {"kind": "collect"}, "templating": True}
    quoted = _quote(order)
    assert _lines(quoted)[MEASURE] == 95
    assert UNTIL_MEASURED in quoted["depends_on"]


def test_choices_say_what_they_cost() -> None:
    """A page can offer both in the workshop's own words, or neither."""
    choices = service().get("/v1/choices").get_json()
    assert choices["sample_tile"]["price"] == "45.00"
    assert (choices["templating"]["visit"], choices["templating"]["each"]) == ("70.00", "25.00")
    assert "£54.00" in choices["sample_tile"]["says"]


def test_without_the_tile_it_is_ready_sooner() -> None:
    """Where the day comes too late because of the tile, leaving it out is offered, and verified."""
    plain = date.fromisoformat(_quote(EXAMPLE_ORDER)["lead_time"]["arrives"]["latest"])
    order = EXAMPLE_ORDER | {"sample_tile": True, "needed_by": plain.isoformat()}
    answer = service().post("/v1/quotes", json=order)
    assert answer.status_code == 422
    (late,) = [f for f in answer.get_json()["findings"] if f["check"] == "needed-too-soon"]
    offered = {remedy["says"]: remedy for remedy in late["remedies"]}
    without = offered[english(Message("leave-out-tile"))]
    assert without["patch"][-1] == {"op": "replace", "path": "/sample_tile", "value": False}
    assert without["verified"]
