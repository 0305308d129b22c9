"""Each workshop's customers and its maker read its own country's words, formats and units.

What is written is compared with Babel's own data (Unicode's CLDR), never with what we write.
"""

import re
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from babel.dates import format_date
from babel.numbers import format_currency

from workshops.conftest import WorkshopCase
from workshops.reading import LOCALES, plain, read
from workshops.strange_words import STRANGE


def strange(shop: WorkshopCase, *documents: Any) -> list[str]:
    """What a person reads in these that is another country's."""
    pattern = re.compile(f".{{0,40}}(?:{STRANGE[shop.name]}).{{0,40}}")
    return [found[0] for one in documents for text in read(one) for found in pattern.finditer(text)]


def test_a_customer_reads_the_country_s_words(shop: WorkshopCase) -> None:
    """A quote, what is sent back with its remedies, and the choices hold no other's word."""
    quote = shop.asked("/v1/quotes", shop.order())
    choices = shop.client.get("/v1/choices").get_json()
    assert strange(shop, quote, choices) == []
    for changed in ({"needed_by": "2026-12-01"}, {"delivery": {"kind": "pallet"}}):
        sent_back = shop.client.post("/v1/quotes", json={**shop.order(), **changed}).get_json()
        assert sent_back["findings"]
        assert strange(shop, sent_back) == []
    on_ends = {
        "rests": {"kind": "ends", "depth": shop.typed["hole"]},
        "thickness": shop.typed["thin"],
    }
    sent_back = shop.client.post("/v1/quotes", json=shop.order(**on_ends)).get_json()
    assert {one["level"] for one in sent_back["findings"]} >= {"stops"}
    assert strange(shop, sent_back) == []


def test_a_plan_is_drawn_in_the_country_s_words(shop: WorkshopCase) -> None:
    """The plan's texts are in its language and its units."""
    links = shop.asked("/v1/drawings", shop.order())
    svg = shop.client.get(links["plan"]).get_data(as_text=True)
    texts = [text.strip() for text in re.findall(r">([^<>]+)<", svg) if text.strip()]
    assert texts
    assert strange(shop, texts, links["says"]) == []


@pytest.mark.parametrize("kind", ["approval", "fitting", "care", "carry"])
def test_a_sheet_is_written_in_the_country_s_words(shop: WorkshopCase, kind: str) -> None:
    """What a customer signs, lays it by, keeps it by and carries it by; its PDF's every page."""
    papers = shop.papers(f"/v1/sheets/{kind}", {"order": shop.order()})
    assert strange(shop, *papers) == []
    assert shop.workshop.workshop.reached
    for texts in papers[1:]:
        assert plain(shop.workshop.workshop.reached) in plain(" ".join(texts))


def test_a_job_sheet_is_written_in_the_workshop_s_units(shop: WorkshopCase) -> None:
    """Cut lists, batches, days, lifts and drawings, each in the units that it works in."""
    papers = shop.papers("/v1/job-sheets", {"order": shop.order()})
    assert strange(shop, *papers) == []


def test_a_letter_is_written_in_the_country_s_words(shop: WorkshopCase) -> None:
    """The letter's subject and text, and its amounts are Babel's and the wire's."""
    order = shop.order()
    reply = shop.asked_by_the_maker("/v1/replies", {"order": order})
    assert strange(shop, reply) == []
    assert all(shop.workshop.workshop.reached in reply[part] for part in ("text", "html"))
    price = shop.asked("/v1/quotes", order)["price"]
    for amount in (price["total"], price["deposit"]):
        known = format_currency(Decimal(amount), price["currency"], locale=LOCALES[shop.name])
        assert plain(known) in plain(reply["text"])


def test_an_invented_workshop_is_headed_as_one(shop: WorkshopCase) -> None:
    """On the page, over each sheet and the job sheet, and in the letter's subject."""
    invented = "erfundene Werkstatt" if shop.name == "germany" else "invented workshop"
    order = {"order": shop.order()}
    assert shop.client.get("/v1/choices").get_json()["workshop"]["demonstration"] is True
    for path in ("/v1/sheets/approval", "/v1/job-sheets"):
        assert invented in shop.asked_by_the_maker(path, order)["workshop"]
    assert invented in shop.asked_by_the_maker("/v1/replies", order)["subject"]


def test_amounts_and_days_are_babel_s_and_the_wire_s(shop: WorkshopCase) -> None:
    """Total, deposit and day stand in the reply as Babel writes the quote's own."""
    quote = shop.asked("/v1/quotes", shop.order())
    locale = LOCALES[shop.name]
    said = " ".join(read(quote))
    day = date.fromisoformat(quote["issued"])
    assert format_date(day, "long", locale=locale) in said
    price = quote["price"]
    net, tax = Decimal(price["net"]), Decimal(price["tax"])
    assert net + tax == Decimal(price["total"])
    assert sum(Decimal(line["amount"]) for line in price["lines"]) == net
    rate = Decimal({"demonstration": "20", "germany": "19", "united_states": "8.4"}[shop.name])
    assert Decimal(str(price["tax_percent"])) == rate
    tile = shop.client.get("/v1/choices").get_json()["sample_tile"]
    shown = shop.workshop.tax.shown == "included"
    told = Decimal(tile["price"]) * (1 + rate / Decimal(100) if shown else 1)
    assert plain(format_currency(told, price["currency"], locale=locale)) in plain(tile["says"])


def test_weights_are_the_wire_s(shop: WorkshopCase) -> None:
    """What a slab weighs is reported in pounds in the United States, and is the wire's mass."""
    weight = shop.asked("/v1/quotes", shop.order())["weight"]["slabs"][0]
    found = re.search(r"([\d.,]+) (kg|lb)", weight["says"])
    assert found is not None
    told = float(found[1].replace(",", "." if shop.name == "germany" else ""))
    per_kg = 1 / 0.45359237 if shop.name == "united_states" else 1
    assert found[2] == ("lb" if shop.name == "united_states" else "kg")
    assert told == pytest.approx(weight["slab_kg"] * per_kg, abs=0.6)


def test_where_it_goes_sets_the_tax(shop: WorkshopCase) -> None:
    """In Washington the rate is the place's and zero beyond the state; elsewhere it is one."""
    postcodes: dict[str, dict[str, float]] = {
        "demonstration": {"HR9 7XX": 20, "E1 6AN": 20},
        "germany": {"83646": 19, "10115": 19},
        "united_states": {"98801": 8.4, "98101": 10.3, "97201": 0},
    }
    for postcode, rate in postcodes[shop.name].items():
        order = {**shop.order(), "delivery": {"kind": "pallet", "postcode": postcode}}
        assert shop.asked("/v1/quotes", order)["price"]["tax_percent"] == rate
