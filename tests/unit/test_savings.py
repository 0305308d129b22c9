"""Ways to save on an order that can be made: cheaper, lighter, sooner."""

import jsonpatch
import pytest

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.quote import Quote
from ledgerstone.wording import Message
from ledgerstone.workshop import Workshop
from support.contexts import context_of
from support.documents import Json
from support.in_english import in_english
from support.remedied import FULL, TODAY, rectangle
from support.written import write_ways


@pytest.fixture(scope="module")
def context(workshop: Workshop) -> QuoteContext:
    """A context that keeps its plates between the orders of this file."""
    return context_of(workshop, TODAY)


def test_ways_to_save_cost_less_and_are_proved(context: QuoteContext, example_order: Json) -> None:
    """Each way applies by an independent library, quotes, and saves what it says."""
    quote = answer_order(example_order, context)
    assert isinstance(quote, Quote)
    assert quote.ways
    for way, written in zip(
        quote.ways, write_ways(example_order, quote.ways, quote.price), strict=True
    ):
        made = answer_order(
            jsonpatch.apply_patch(example_order, written["patch"]), context, search=False
        )
        assert isinstance(made, Quote)
        saved = quote.price.total - made.price.total
        assert way.price.total == made.price.total
        assert saved > 0
        assert written["price_change"]["amount"] == f"{-saved:.2f}"
        kg = _kg(quote) - _kg(made)
        assert written.get("lighter_by_kg", 0.0) == pytest.approx(max(kg, 0.0), abs=0.1)
        days = (quote.lead_time.arrives_latest - made.lead_time.arrives_latest).days
        assert written.get("sooner_by_days", 0) == max(days, 0)


def test_a_way_to_save_says_how_much_lighter_and_sooner_it_is(context: QuoteContext) -> None:
    """A slab of 50 mm brought by van: of 40 mm it is a fifth lighter, and fetched it is sooner."""
    order = rectangle("900 mm", "500 mm", "50 mm", rests={"kind": "full"})
    order["delivery"] = {"kind": "own-van", "postcode": "HR9 7XX"}
    quote = answer_order(order, context)
    assert isinstance(quote, Quote)
    thinner = next(way for way in quote.ways if "thick" in in_english(way))
    assert thinner.lighter_kg == pytest.approx(_kg(quote) / 5, rel=0.03)  # its steel stays
    collected = next(way for way in quote.ways if "Collect" in in_english(way))
    assert collected.lighter_kg == 0.0
    assert collected.sooner_days >= 1


def _kg(quote: Quote) -> float:
    pairs = zip(quote.weights, quote.order.slabs, strict=True)
    return sum(one.slab_kg * slab.quantity for one, slab in pairs)


def test_a_heated_tent_that_brings_nothing_forward_may_be_left_out(context: QuoteContext) -> None:
    """Where the day is the same without it, its price can be saved; where it is not, it stays."""
    order = rectangle("900 mm", "500 mm", rests=FULL) | {"heated_curing": True}
    quote = answer_order(order, context)
    plain = answer_order(rectangle("900 mm", "500 mm", rests=FULL), context, search=False)
    assert isinstance(quote, Quote)
    assert isinstance(plain, Quote)
    later = plain.lead_time.arrives_latest > quote.lead_time.arrives_latest
    offered = any(way.sentences == ((Message("leave-out-tent"),),) for way in quote.ways)
    assert offered != later
