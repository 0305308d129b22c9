"""POST /v1/quotes: the design's example order, an order that is stopped, what both promise."""

from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING, Any

import jsonpatch
import pytest

from api.schemas import Schemas
from support.asking import PROBLEM, changed, keys, sentences, without
from support.demonstration import EXAMPLE_ORDER

if TYPE_CHECKING:
    from flask.testing import FlaskClient

NEAR_THE_FRONT = changed(("/slabs/0/cutouts/0/centre/y", "218 mm"))
# Two stages at once: nothing may be promised while the shape stops the order.
NEAR_AND_NOT_SERVED = changed(("/delivery/postcode", "IV1 1AA"), order=NEAR_THE_FRONT)

# methods §2: a quote has these; `changes`, `since`'s answer, only where one is given.
A_QUOTE_HAS = {
    "reference", "token", "link", "order", "issued", "valid_until", "standing", "depends_on",
    "price", "lead_time", "weight", "findings", "drawings", "slabs",
}  # fmt: skip
UNITS = ("_mm", "_kg", "_m2", "_l", "_mpa", "_percent", "_hours", "_days", "_degrees",
         "_delta_e")  # fmt: skip
# Numbers that count, or have no unit: a ratio, an index, a status, colour coordinates, places.
BARE = {"utilisation", "people_to_lift", "quantity", "steps", "floor", "people", "slab", "status",
        "lab", "coordinates", "grooves", "pieces"}  # fmt: skip


@pytest.fixture
def quote(client: "FlaskClient") -> dict[str, Any]:
    """The quote of the example order."""
    answer = client.post("/v1/quotes", json=EXAMPLE_ORDER)
    assert answer.status_code == 200, answer.text
    found: dict[str, Any] = answer.get_json()
    return found


@pytest.fixture
def sent_back(client: "FlaskClient") -> dict[str, Any]:
    """The send-back of an order that two checks stop."""
    answer = client.post("/v1/quotes", json=NEAR_AND_NOT_SERVED)
    assert answer.status_code == 422, answer.text
    assert answer.mimetype == PROBLEM
    found: dict[str, Any] = answer.get_json()
    return found


def test_the_example_order_quotes(quote: dict[str, Any], schemas: Schemas) -> None:
    """The design's example order has every member of a quote, and none that is not documented."""
    assert set(quote) >= A_QUOTE_HAS
    assert schemas.undocumented("Quote", quote) == []


def test_the_order_comes_back_as_understood(quote: dict[str, Any]) -> None:
    """The order in the answer says what was asked, in the units it was asked in."""
    [slab] = quote["order"]["slabs"]
    asked = EXAMPLE_ORDER["slabs"][0]
    assert slab["outline"] == asked["outline"]
    assert slab["thickness"] == asked["thickness"]
    assert [cutout["centre"] for cutout in slab["cutouts"]] == [
        cutout["centre"] for cutout in asked["cutouts"]
    ]
    assert quote["order"]["delivery"] == EXAMPLE_ORDER["delivery"]


def test_the_order_as_understood_quotes_to_the_same(
    client: "FlaskClient", quote: dict[str, Any]
) -> None:
    """What the answer understood, asked again, gives the same price, day and link."""
    again = client.post("/v1/quotes", json=quote["order"]).get_json()
    assert again == quote


def test_the_price_adds_up(quote: dict[str, Any]) -> None:
    """The lines add up to the net, and net and tax to the total, to the penny."""
    price = {
        name: Decimal(amount) for name, amount in quote["price"].items() if type(amount) is str
        and name != "currency"
    }  # fmt: skip
    assert sum(Decimal(line["amount"]) for line in quote["price"]["lines"]) == price["net"]
    assert price["net"] + price["tax"] == price["total"]
    assert 0 < price["deposit"] < price["total"]
    tax = price["net"] * Decimal(str(quote["price"]["tax_percent"])) / 100
    assert abs(tax - price["tax"]) <= Decimal("0.01")


def test_the_days_follow_one_another(quote: dict[str, Any], today: date) -> None:
    """Issued today, ordered by, ready, and there, in that order; each stage from the last."""
    lead = quote["lead_time"]
    days = [quote["issued"], lead["if_ordered_by"], lead["ready_on"], lead["arrives"]["earliest"]]
    assert quote["issued"] == today.isoformat()
    assert days == sorted(days)
    assert lead["arrives"]["earliest"] <= lead["arrives"]["latest"] <= EXAMPLE_ORDER["needed_by"]
    starts = [stage["starts"] for stage in lead["stages"]]
    assert starts == sorted(starts)
    assert all(stage["starts"] <= stage["ends"] for stage in lead["stages"])


def test_weight_follows_from_volume(quote: dict[str, Any]) -> None:
    """The example's slab weighs its volume at 2 200 to 2 500 kg/m³, and less than when packed.

    EN 206 §3.1.4.2: normal-weight concrete is 2 000 to 2 600 kg/m³; the band here is narrower.
    """
    [slab], [answer] = quote["weight"]["slabs"], quote["slabs"]
    assert answer["area_m2"] == pytest.approx(
        1.45 * 0.56 - 3.14159265 * (0.180**2 + 0.0175**2), abs=1e-4
    )
    assert 2.2 * answer["volume_l"] < slab["slab_kg"] < 2.5 * answer["volume_l"]
    assert quote["weight"]["packed_kg"] > slab["slab_kg"]
    assert slab["people_to_lift"] >= 2


def _bare_numbers(document: object, key: str = "") -> list[str]:
    if isinstance(document, dict):
        return [bare for name, value in document.items() for bare in _bare_numbers(value, name)]
    if isinstance(document, list):
        return [bare for value in document for bare in _bare_numbers(value, key)]
    return [key] if isinstance(document, int | float) and not isinstance(document, bool) else []


def test_every_number_of_an_answer_names_its_unit(
    quote: dict[str, Any], sent_back: dict[str, Any]
) -> None:
    """Outside the order, a number's key ends in its unit, or the number counts or has none."""
    for answer in (quote, sent_back):
        found = _bare_numbers({key: value for key, value in answer.items() if key != "order"})
        assert [key for key in found if not key.endswith(UNITS) and key not in BARE] == []


def test_the_same_order_gives_the_same_bytes(client: "FlaskClient") -> None:
    """An order asked twice on the same day is answered by the same bytes."""
    one, two = (client.post("/v1/quotes", json=EXAMPLE_ORDER).data for _ in range(2))
    assert one == two


def test_another_days_quote_is_another(client: "FlaskClient", quote: dict[str, Any]) -> None:
    """A changed order has another reference and another link."""
    other = client.post("/v1/quotes", json=changed(("/slabs/0/quantity", 2))).get_json()
    assert other["reference"] != quote["reference"]
    assert other["token"] != quote["token"]
    assert Decimal(other["price"]["total"]) > Decimal(quote["price"]["total"])


def test_a_postcode_is_not_in_the_link(client: "FlaskClient", quote: dict[str, Any]) -> None:
    """Two postcodes of one delivery area give one token: the area is in it, the postcode is not."""
    other = changed(("/delivery/postcode", "HR1 2AB"))
    assert client.post("/v1/quotes", json=other).get_json()["token"] == quote["token"]


def test_a_send_back_says_what_and_where(sent_back: dict[str, Any], schemas: Schemas) -> None:
    """A send-back is a problem with its findings, each with a place, a number and a limit."""
    assert schemas.undocumented("SentBack", sent_back) == []
    stops = [finding for finding in sent_back["findings"] if finding["level"] == "stops"]
    [strip] = [finding for finding in stops if finding["check"] == "strip-too-narrow"]
    assert strip["at"] == ["/slabs/0/cutouts/0"]
    assert strip["measured"] == {"width_mm": 38.0}
    assert strip["limit"]["width_mm"] > 38
    assert strip["where_mm"]["coordinates"] == [[980.0, 38.0], [980.0, 0.0]]
    assert "38 mm" in strip["says"]
    assert all(jsonpatch.JsonPointer(at).resolve(NEAR_AND_NOT_SERVED) for at in strip["at"])
    assert "price" not in sent_back
    assert "token" not in sent_back


def test_what_was_not_checked_is_stated(sent_back: dict[str, Any]) -> None:
    """An order that its shape stops was not checked for strength, nor for what is promised."""
    assert sent_back["not_checked"] == ["strength", "promise"]
    assert {finding["check"] for finding in sent_back["findings"]}.isdisjoint({"area-not-served"})


def test_a_later_stage_leaves_nothing_unchecked(client: "FlaskClient") -> None:
    """An order that only its promise stops was checked by every stage."""
    late = changed(("/needed_by", "2026-11-26"))
    answer = client.post("/v1/quotes", json=late).get_json()
    assert answer["not_checked"] == []
    assert "needed-too-soon" in {finding["check"] for finding in answer["findings"]}


@pytest.mark.parametrize(
    ("order", "status"), [(EXAMPLE_ORDER, 200), (NEAR_THE_FRONT, 422)], ids=["quote", "send-back"]
)
def test_a_minimal_answer_is_the_answer_without_its_remedies(
    client: "FlaskClient", order: dict[str, Any], status: int
) -> None:
    """``Prefer: return=minimal`` leaves out remedies and nothing else, whatever else is wished."""
    whole = client.post("/v1/quotes", json=order)
    for wish in ("return=minimal", "respond-async, Return=Minimal"):
        least = client.post("/v1/quotes", json=order, headers={"Prefer": wish})
        assert least.status_code == whole.status_code == status
        assert _without_remedies(least.get_json()) == _without_remedies(whole.get_json())
        assert {"fix_all", "nearest_makeable", "ways_to_save"}.isdisjoint(keys(least.get_json()))
        assert all(f["remedies"] == [] for f in least.get_json()["findings"])


def _without_remedies(answer: dict[str, Any]) -> dict[str, Any]:
    found = [{**finding, "remedies": []} for finding in answer["findings"]]
    left_out = {"fix_all", "nearest_makeable", "ways_to_save", "instance"}
    return {**{k: v for k, v in answer.items() if k not in left_out}, "findings": found}


def test_what_the_workshop_may_choose_may_be_left_out(client: "FlaskClient") -> None:
    """An outline and a thickness are enough; the answer says what was chosen for the rest."""
    order = without("/needed_by", without("/delivery"))
    order["slabs"] = [{"outline": order["slabs"][0]["outline"], "thickness": "40 mm"}]
    answer = client.post("/v1/quotes", json=order)
    assert answer.status_code == 200
    [slab] = answer.get_json()["order"]["slabs"]
    assert slab["shade"]["name"]
    assert slab["finish"]["surface"]
    assert slab["quantity"] == 1
    assert answer.get_json()["order"]["delivery"] == {"kind": "collect"}


def test_sentences_are_whole(quote: dict[str, Any], sent_back: dict[str, Any]) -> None:
    """Every finding's sentence begins with a capital or a mark and ends with a full stop."""
    findings = [*quote["findings"], *sent_back["findings"]]
    said = [text for finding in findings for text in sentences({"says": finding["says"]})]
    assert said
    for text in said:
        assert text.endswith(".")
        assert not text[0].islower()
