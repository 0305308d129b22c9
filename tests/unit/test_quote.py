"""The one orchestrator: a quote or a no, and what each of them holds."""

from dataclasses import replace
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.mix import hardened_kg_per_m3, palette_tint
from ledgerstone.order import Order
from ledgerstone.quote import Quote, SentBack, quote, with_standing
from ledgerstone.schedule import Booking
from ledgerstone.stages import StageContext
from ledgerstone.wording import Message, Percent, english
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, order_of, slab_json

TODAY = date(2026, 11, 25)
SMALL = slab_json(box(600, 400), rests={"kind": "full"})


def rests_on(answer: Quote) -> tuple[str, ...]:
    """What a quote rests on, said in English."""
    return tuple(english(one) for one in answer.depends_on)


def asked(workshop: Workshop, order: Order, *bookings: Booking, today: date = TODAY) -> Quote:
    """Quote an order that nothing stops."""
    answer = quote(order, StageContext(workshop, bookings or None, today))
    assert isinstance(answer, Quote)
    return answer


def test_the_example_order_is_quoted(workshop: Workshop, example_order: dict[str, Any]) -> None:
    """Design.md's order has a price, a day before it is needed, and a weight a hand can check."""
    answer = asked(workshop, read_order(example_order, workshop))
    assert answer.price.net + answer.price.tax == answer.price.total > 0
    assert TODAY < answer.lead_time.arrives_latest < date(2027, 3, 25)
    # 0.70925 m² net, 40 mm, less an 18 125 mm³ bevel, at graphite's density, and 2.2 kg/m² of steel
    net_m2 = 1.45 * 0.56 - 3.14159265 / 4 * (0.36**2 + 0.035**2)
    slab = answer.order.slabs[0]
    density = hardened_kg_per_m3(palette_tint(slab, workshop), workshop)
    by_hand = (net_m2 * 0.04 - 18_125e-9) * density + net_m2 * 2.2
    assert answer.weights[0].slab_kg == pytest.approx(by_hand, abs=1e-3)
    assert answer.packed_kg == pytest.approx(by_hand + 15 + 25, abs=1e-3)
    assert answer.area is not None
    assert answer.area.name == "Around Wethermoor"


def test_a_quote_stands_for_its_days(workshop: Workshop) -> None:
    """Thirty days from the day it is issued."""
    answer = asked(workshop, order_of(workshop, SMALL))
    assert (answer.issued, answer.valid_until) == (TODAY, date(2026, 12, 25))


@pytest.mark.parametrize(
    ("more", "standing"),
    [
        ({}, "quotation"),
        ({"size_from": "template-to-follow"}, "estimate"),
        ({"cutouts": [{"kind": "circle", "diameter": 60, "centre": {"x": 300, "y": 200},
                       "size_from": "template-to-follow"}]}, "estimate"),
    ],
    ids=("measured", "slab to follow", "cut-out to follow"),
)  # fmt: skip
def test_what_waits_for_a_template_is_an_estimate(
    workshop: Workshop, more: Json, standing: str
) -> None:
    """Whatever the profile says, a size that is still to come fixes no price."""
    firm = replace(workshop, offer=replace(workshop.offer, standing="quotation"))
    answer = asked(firm, order_of(firm, SMALL | more))
    assert answer.standing == standing
    assert any("template" in line for line in rests_on(answer)) is (standing == "estimate")


def test_the_day_depends_on_the_deposit(workshop: Workshop) -> None:
    """The deposit is stated in plain figures, and that a collected order is fetched."""
    answer = asked(workshop, order_of(workshop, SMALL))
    first, *others = answer.depends_on
    assert first.name == "day-is-for"
    assert (first.values["wanted"], first.values["deposit"]) == ("deposit", Percent(Decimal(40)))
    assert [one.name for one in others] == [
        "estimate-best-guess",
        "strip-first",
        "solid-base-before",
        "you-collect",
        "made-to-measure",
    ]


def test_templates_that_are_to_follow_are_part_of_the_day(workshop: Workshop) -> None:
    """The day is for an order with deposit and templates; without a deposit, with templates."""
    to_follow = SMALL | {"size_from": "template-to-follow"}
    answer = asked(workshop, order_of(workshop, to_follow))
    assert answer.depends_on[0].values["wanted"] == "deposit-and-templates"
    free = replace(workshop, offer=replace(workshop.offer, deposit_percent=Decimal(0)))
    answer = asked(free, order_of(free, to_follow))
    assert answer.depends_on[0].values["wanted"] == "templates"
    plain = asked(free, order_of(free, SMALL)).depends_on[0]
    assert (plain.values["wanted"], plain.values["by"]) == ("nothing", date(2026, 11, 25))


def test_another_standing_is_stated_in_its_own_words(workshop: Workshop) -> None:
    """A quotation fixes its price until its last day; an estimate is a guess; each says one."""
    answer = asked(workshop, order_of(workshop, SMALL))
    quotation = with_standing(answer, "quotation")
    assert quotation.depends_on[1] == Message("quotation-fixed", until=date(2026, 12, 25))
    assert with_standing(quotation, "estimate") == answer


def test_what_stops_is_sent_back_with_what_was_not_checked(workshop: Workshop) -> None:
    """A shape that cannot be made is not asked about its strength or its day."""
    order = order_of(workshop, slab_json(box(9000, 500)))
    answer = quote(order, StageContext(workshop, None, TODAY))
    assert isinstance(answer, SentBack)
    assert [finding.check for finding in answer.findings] == ["too-big-for-table"]
    assert answer.not_checked == ("strength", "promise")
    assert answer.shapes[0].length_mm == 9000


def test_every_stop_of_a_stage_is_stated_at_once(workshop: Workshop) -> None:
    """A slab too large and too thin hears both."""
    slab = slab_json(box(9000, 500)) | {"thickness": 10}
    answer = quote(order_of(workshop, slab), StageContext(workshop, None, TODAY))
    assert {finding.check for finding in answer.findings} == {
        "too-big-for-table",
        "too-thin",
        "aggregate-too-large",
        "cover-too-thin",
    }


def test_a_note_stops_nothing(workshop: Workshop) -> None:
    """An odd thickness is reported and quoted."""
    answer = asked(workshop, order_of(workshop, SMALL | {"thickness": 35}))
    assert "odd-thickness" in {finding.check for finding in answer.findings}


def test_the_same_four_inputs_give_the_same_answer(workshop: Workshop) -> None:
    """No clock, no chance: two answers are equal."""
    order = order_of(workshop, SMALL)
    assert asked(workshop, order) == asked(workshop, order)


def test_bookings_and_the_day_move_the_day_alone(workshop: Workshop) -> None:
    """Three weeks booked, or ordered a week later, the price is the same and the day later."""
    order = order_of(workshop, SMALL)
    first = asked(workshop, order)
    busy = asked(workshop, order, Booking(date(2026, 11, 26), date(2026, 12, 14), "stairs"))
    later = asked(workshop, order, today=date(2026, 12, 2))
    for other in (busy, later):
        assert other.price == first.price
        assert other.lead_time.ready_on > first.lead_time.ready_on
