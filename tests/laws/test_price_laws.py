"""Laws of prices: sums, steps, and what never makes a thing cheaper.

Each was proved on paper first. A cost is a rate, zero or more, times a measure; each line is a
sum of costs, rounded by a rule that keeps order; the total is the lines with tax, rounded likewise;
so that whatever raises every measure, or leaves it, never lowers the total.

Dropped, because they are not true: *more of one slab costs less each* (a step of the total may fall
between), *twice the slab is twice the price* (one set-up), *taking an opening out is cheaper* (its
concrete and its area to be finished come back: a large opening is cheaper to leave in).
"""

import copy
from dataclasses import replace
from decimal import Decimal

from hypothesis import assume, given
from hypothesis import strategies as st

from ledgerstone.codec.order_in import read_order
from ledgerstone.order import Order
from ledgerstone.price import Price, PriceLine, price, rounded_total, tax_in
from ledgerstone.shape import shape_of
from ledgerstone.work import operations
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.strategies.orders import modest_orders, orders, slabs, usual

amounts = st.decimals(Decimal("0.01"), Decimal(20_000), places=2, allow_nan=False)
steps = st.sampled_from(("0.01", "0.05", "0.50", "1.00", "5.00", "10.00")).map(Decimal)
rates = st.sampled_from(("0", "5", "20", "8.875", "25")).map(Decimal)


def priced(order: Order, workshop: Workshop) -> Price:
    """Price an order, moved in the plainest way."""
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    cover = (workshop.days.under_cover,) * len(shapes)
    return price(order, shapes, operations(order, shapes, workshop, cover), workshop)


def total(document: Json, workshop: Workshop) -> Decimal:
    """Price an order as it was sent."""
    return priced(read_order(document, workshop), workshop).total


def assert_adds_up(found: Price, step: Decimal) -> None:
    """Lines add up to the net, net and tax to the total, and the total stands on a step."""
    assert sum(line.amount for line in found.lines) == found.net
    assert found.net + found.tax == found.total
    assert found.total % step == 0
    assert found.tax == tax_in(found.total, found.tax_percent)
    for amount in (found.net, found.tax, found.total, found.deposit):
        assert amount == amount.quantize(Decimal("0.01"))


@usual
@given(orders())
def test_the_lines_of_a_price_add_up(workshop: Workshop, document: Json) -> None:
    """Of any order at all, to the penny."""
    found = priced(read_order(document, workshop), workshop)
    assert_adds_up(found, workshop.offer.round_to)
    assert found.deposit == (found.total * Decimal("0.4")).quantize(Decimal("0.01"))


@usual
@given(
    lines=st.lists(amounts, min_size=1, max_size=6),
    step=steps,
    percent=rates,
    registered=st.booleans(),
)
def test_any_lines_settle_on_any_step(
    workshop: Workshop, lines: list[Decimal], step: Decimal, percent: Decimal, *, registered: bool
) -> None:
    """Whatever the lines, the step and the rate, sums are exact, and half a step off at most."""
    offer = replace(workshop.offer, round_to=step)
    tax = replace(workshop.tax, percent=percent, registered=registered)
    shop = replace(workshop, offer=offer, tax=tax)
    found = rounded_total([PriceLine(str(i), amount) for i, amount in enumerate(lines)], shop)
    assert_adds_up(found, step)
    asked = sum(lines) * (1 + (percent if registered else 0) / Decimal(100))
    assert abs(found.total - asked) <= step / 2 + Decimal("0.005")
    if not registered:
        assert found.tax == 0


@usual
@given(orders(), slabs(modest=True))
def test_one_slab_more_is_never_cheaper(workshop: Workshop, document: Json, more: Json) -> None:
    """Every cost of a slab is zero or more, and none of the others' falls."""
    assume(len(document["slabs"]) < 8)
    longer = document | {"slabs": [*document["slabs"], more]}
    assert total(longer, workshop) >= total(document, workshop)


@usual
@given(modest_orders())
def test_one_piece_more_is_never_cheaper(workshop: Workshop, document: Json) -> None:
    """Costs and hours of a slab are multiplied by how many there are of it."""
    more = copy.deepcopy(document)
    more["slabs"][0]["quantity"] = more["slabs"][0].get("quantity", 1) + 1
    assert total(more, workshop) >= total(document, workshop)


@usual
@given(modest_orders(), st.integers(1, 10))
def test_a_thicker_slab_is_never_cheaper(workshop: Workshop, document: Json, mm: int) -> None:
    """Area and hours stay; the volume grows by what is left of the area, and by drops.

    A bevel takes no more, as it is not deeper than the slab is thick.
    """
    order = read_order(document, workshop)
    thick = order.slabs[0].thickness
    thicker = replace(order.slabs[0], thickness=thick.in_unit(thick.mm + mm))
    more = replace(order, slabs=(thicker, *order.slabs[1:]))
    assert priced(more, workshop).total >= priced(order, workshop).total


@usual
@given(modest_orders())
def test_a_dearer_hour_is_never_cheaper(workshop: Workshop, document: Json) -> None:
    """A higher rate raises its costs and no other."""
    order = read_order(document, workshop)
    dearer = replace(workshop, rates=replace(workshop.rates, hour=workshop.rates.hour + 7))
    assert priced(order, dearer).total >= priced(order, workshop).total


@usual
@given(modest_orders(), st.floats(-30, 30), st.floats(-30, 30))
def test_moving_an_opening_changes_no_price(
    workshop: Workshop, document: Json, dx: float, dy: float
) -> None:
    """A price knows areas, lengths and counts, not places, while openings stay on and apart."""
    order = read_order(document, workshop)
    moved = []
    for slab in order.slabs:
        assume(not slab.reliefs)
        cutouts = [
            replace(c, centre=replace(c.centre, x=c.centre.x.in_unit(c.centre.x.mm + round(dx, 1)),
                                      y=c.centre.y.in_unit(c.centre.y.mm + round(dy, 1))))
            if c.centre is not None and c.open_to is None else c for c in slab.cutouts
        ]  # fmt: skip
        moved.append(replace(slab, cutouts=tuple(cutouts)))
    for before, after in zip(order.slabs, moved, strict=True):
        for slab in (before, after):
            shape = shape_of(slab, workshop)
            areas = sum(opening.area_mm2 for opening in shape.openings)
            assume(abs(shape.outline_area_mm2 - areas - shape.net_area_mm2) < 1e-3)
    assert priced(replace(order, slabs=tuple(moved)), workshop) == priced(order, workshop)


@usual
@given(modest_orders(), st.data())
def test_slabs_in_another_order_cost_the_same(
    workshop: Workshop, document: Json, data: st.DataObject
) -> None:
    """Sums do not know which slab came first; without joins, which number them."""
    apart = {key: value for key, value in document.items() if key != "joins"}
    other = {**apart, "slabs": data.draw(st.permutations(document["slabs"]))}
    assert total(other, workshop) == total(apart, workshop)


@usual
@given(modest_orders())
def test_a_workshop_that_is_not_registered_charges_no_tax(
    workshop: Workshop, document: Json
) -> None:
    """Net and total are one, and the total is no higher than a registered workshop's."""
    untaxed = replace(workshop, tax=replace(workshop.tax, registered=False))
    order = read_order(document, workshop)
    found = priced(order, untaxed)
    assert found.tax == 0
    assert found.net == found.total <= priced(order, workshop).total
