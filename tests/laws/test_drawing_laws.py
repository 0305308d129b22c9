"""Whatever can be ordered can be drawn, and what is drawn can be shown."""

from typing import Any

import pytest
from hypothesis import given

from ledgerstone.codec.order_in import read_order
from ledgerstone.drawing import DrawnSlab, Pin, TitleBlock, describe, draw_plan, draw_view
from ledgerstone.order import Order
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from support.drawing_reader import SVG, read
from support.strategies.awkward_orders import AWKWARD
from support.strategies.orders import orders, usual

MAX_BYTES = 60_000


def hold_drawn(order: Order, workshop: Workshop) -> None:
    """Hold every slab's drawings to what is always so."""
    for slab in order.slabs:
        shape = shape_of(slab, workshop)
        pins = [Pin(i + 1, "stops", strip.line_mm) for i, strip in enumerate(shape.strips[:12])]
        plan = draw_plan(slab, shape, title=TitleBlock(label=slab.label), pins=pins)
        view = draw_view([DrawnSlab(slab, shape, "#5b5d5a", 0.3, "x")], title=slab.label)
        for svg in (plan, view):
            root = read(svg)
            assert root.tag == f"{SVG}svg"
            assert all(float(side) > 0 for side in root.attrib["viewBox"].split()[2:])
            assert not [n for n in root.iter() if "nan" in n.get("d", "") + n.get("transform", "")]
            assert len(svg.encode()) <= MAX_BYTES
        assert describe(slab, shape).endswith(".")


@pytest.mark.parametrize("name", AWKWARD)
def test_every_awkward_order_can_be_drawn(name: str, workshop: Workshop) -> None:
    """An order at the edge of what is understood has a plan and a view all the same."""
    hold_drawn(read_order(AWKWARD[name], workshop), workshop)


@given(order=orders())
@usual
def test_any_order_can_be_drawn(order: dict[str, Any], workshop: Workshop) -> None:
    """Any order that is understood, whether it can be made or not, can be drawn."""
    hold_drawn(read_order(order, workshop), workshop)
