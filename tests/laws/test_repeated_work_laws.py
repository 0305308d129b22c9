"""Laws of small and repeated work: what several pieces share is paid once, by whatever shares it.

Proved on paper first. A cost is once an order, once a pour, or a piece's own. More pieces only add
pieces' own, and pours or batches; two orders made as one save what is once an order, which is more
than a pour that the sharing-out of pieces may cost. Within one pour of equal pieces a batch more
costs a piece less than what the pieces before it shared: the mean falls. Slabs are shared out from
the largest on, whatever the order lists first.
"""

import copy
from dataclasses import replace
from datetime import date
from decimal import Decimal
from itertools import pairwise, permutations
from typing import Literal

from hypothesis import assume, given
from hypothesis import strategies as st

from ledgerstone.codec.order_in import read_order
from ledgerstone.message import Message
from ledgerstone.mix import batch_plan
from ledgerstone.order import Order
from ledgerstone.price import ROUNDING, Price, PriceLine, costs, price, rounded_total
from ledgerstone.price.costing import GROUPS
from ledgerstone.schedule import cast_together
from ledgerstone.shade import tint_of
from ledgerstone.shape import shape_of
from ledgerstone.work import Operation, operations
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, line_name, slab_json, stages_of
from support.strategies.orders import modest_orders, orders, usual

PENNY = Decimal("0.01")
MIXING = Message("step-mix")


def steps_of(order: Order, workshop: Workshop) -> tuple[Operation, ...]:
    """List an order's operations, moved in the plainest way, a mould for each piece."""
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    return operations(order, shapes, workshop, (workshop.days.under_cover,) * len(shapes))


def priced(document: Json, workshop: Workshop) -> Price:
    """Price an order as it was sent."""
    order = read_order(document, workshop)
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    return price(order, shapes, steps_of(order, workshop), workshop)


def to_the_penny(workshop: Workshop) -> Workshop:
    """A workshop whose totals are not rounded to a step."""
    return replace(workshop, offer=replace(workshop.offer, round_to=PENNY))


def alone(document: Json, slabs: list[Json]) -> Json:
    """An order of some of another's slabs, delivered alike."""
    part = {key: value for key, value in document.items() if key not in {"joins", "since"}}
    return part | {"slabs": copy.deepcopy(slabs)}


def pours_of(document: Json, workshop: Workshop) -> list[int]:
    """How many batches each pour takes, off the batch cards."""
    order = read_order(document, workshop)
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    loads = cast_together(steps_of(order, workshop), workshop.table)
    tints = [tint_of(slab, workshop) for slab in order.slabs]
    plan = batch_plan(order, shapes, workshop, tints=tints, loads=loads)
    each = ([sum(one.count for one in pour.batches)] * pour.times for pour in plan.pours)
    return [count for same in each for count in same]


@usual
@given(orders())
def test_the_mixing_that_is_paid_is_that_of_the_batch_cards(
    workshop: Workshop, document: Json
) -> None:
    """Of any order: six minutes a pour and nine a batch, in the demonstration; no more, no less."""
    order = read_order(document, workshop)
    paid = sum(s.hands_minutes for s in steps_of(order, workshop) if s.name == MIXING)
    assert paid == sum(6 + 9 * batches for batches in pours_of(document, workshop))


@usual
@given(modest_orders(), st.data())
def test_one_piece_more_never_lowers_a_price(
    workshop: Workshop, document: Json, data: st.DataObject
) -> None:
    """price(n + 1) ≥ price(n), of any slab of the order; to the penny."""
    shop = to_the_penny(workshop)
    more = copy.deepcopy(document)
    slab = more["slabs"][data.draw(st.integers(0, len(more["slabs"]) - 1))]
    slab["quantity"] = slab.get("quantity", 1) + 1
    assert priced(more, shop).total >= priced(document, shop).total


@usual
@given(modest_orders(), modest_orders())
def test_two_orders_made_as_one_never_cost_more(
    workshop: Workshop, first: Json, second: Json
) -> None:
    """price(a + b) ≤ price(a) + price(b), collected, within one step of rounding."""
    assume(len(first["slabs"]) + len(second["slabs"]) <= 8)
    a, b = (alone({}, one["slabs"]) for one in (first, second))
    both = alone({}, [*first["slabs"], *second["slabs"]])
    apart = priced(a, workshop).total + priced(b, workshop).total
    assert priced(both, workshop).total <= apart + workshop.offer.round_to


@usual
@given(modest_orders(), st.integers(1, 4), st.integers(1, 4))
def test_equal_pieces_made_together_never_cost_more(
    workshop: Workshop, document: Json, n: int, m: int
) -> None:
    """The same of one slab: n and m of it as one order."""
    slab = {**document["slabs"][0]}
    each = [priced(alone({}, [slab | {"quantity": k}]), workshop).total for k in (n, m, n + m)]
    assert each[2] <= each[0] + each[1] + workshop.offer.round_to


@usual
@given(st.integers(150, 800), st.integers(80, 260), st.sampled_from((25, 40, 60)))
def test_the_mean_of_equal_pieces_falls_within_one_pour(
    workshop: Workshop, length: int, width: int, thickness: int
) -> None:
    """From one to eight, as long as they are poured together: each makes all of them cheaper."""
    shop, slab = to_the_penny(workshop), slab_json(box(length, width)) | {"thickness": thickness}
    before = None
    for n in range(1, 9):
        document = {"slabs": [slab | {"quantity": n}]}
        if len(pours_of(document, shop)) > 1:
            break
        mean = priced(document, shop).total / n
        assert before is None or mean < before
        before = mean


def test_eight_shelves_pay_one_mixing(workshop: Workshop) -> None:
    """Of 600 by 250 by 40, 6.8 litres each: ten of face coat, forty-four of backing, two batches.

    Each shelf after the first costs less than it, and the mixing of all of them is 24 minutes.
    """
    shelf = slab_json(box(600, 250), use="shelf")
    totals, mixing = [], set()
    for n in range(1, 9):
        document = {"slabs": [shelf | {"quantity": n}]}
        assert pours_of(document, workshop) == [2]
        totals.append(priced(document, to_the_penny(workshop)).total)
        steps = steps_of(read_order(document, workshop), workshop)
        mixing.add(sum(s.hands_minutes for s in steps if s.name == MIXING))
    more = [after - before for before, after in pairwise(totals)]
    assert mixing == {24}
    assert all(one < totals[0] for one in more)
    assert max(more) - min(more) <= 5 * PENNY  # three lines and a total, each to half a penny


@usual
@given(modest_orders(), st.data(), st.sampled_from(("whole", "by-use")))
def test_the_total_is_independent_of_the_slabs_order(
    workshop: Workshop, document: Json, data: st.DataObject, packs: Literal["whole", "by-use"]
) -> None:
    """Whatever is shared: loads, pours, sheets and lengths, by whole packs too."""
    shop = replace(workshop, rates=replace(workshop.rates, packs=packs))
    slabs = data.draw(st.permutations(document["slabs"]))
    ours = priced(alone(document, document["slabs"]), to_the_penny(shop))
    assert priced(alone(document, list(slabs)), to_the_penny(shop)) == ours


def test_price_and_day_of_a_kitchen_are_independent_of_its_slabs_order(
    workshop: Workshop, today: date
) -> None:
    """The whole quote, steel, moulds and days with it, in each of six sequences."""
    finish = {"finish": {"surface": "honed", "sealer": "matt"}, "rests": {"kind": "full"}}
    pieces = [slab_json(box(length, 600)) | finish for length in (2000, 1200, 700)]
    found = set()
    for slabs in permutations(pieces):
        stages = stages_of(read_order({"slabs": list(slabs)}, workshop), workshop, today)
        found.add((stages.price.total, stages.lead_time.ready_on))
    assert len(found) == 1


@usual
@given(
    st.lists(st.decimals(-500, 9000, places=2), min_size=1, max_size=6),
    st.decimals(-500, 9000, places=2),
    st.data(),
)
def test_adding_a_line_never_changes_another(
    workshop: Workshop, amounts: list[Decimal], more: Decimal, data: st.DataObject
) -> None:
    """Wherever it is set in; what the step adds or takes is a line of its own."""
    lines = [PriceLine(f"{i}", amount) for i, amount in enumerate(amounts)]
    at = data.draw(st.integers(0, len(lines)))
    longer = [*lines[:at], PriceLine("more", more), *lines[at:]]
    found = rounded_total(longer, workshop)
    assert [line for line in found.lines if line.label not in ("more", ROUNDING)] == lines
    assert found.net + found.tax == found.total
    assert sum(line.amount for line in found.lines) == found.net


@usual
@given(modest_orders())
def test_what_each_line_costs_adds_up_to_the_price(workshop: Workshop, document: Json) -> None:
    """Costs with their margin are the lines of making, each within half a penny."""
    order = read_order(document, workshop)
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    steps = steps_of(order, workshop)
    every = costs(order, shapes, steps, workshop)
    asked = {line_name(line): line.amount for line in price(order, shapes, steps, workshop).lines}
    for group in GROUPS:
        cost = sum(one.amount for one in every if one.group == group)
        assert abs(cost * Decimal("1.4") - asked[group]) <= Decimal("0.005")
