"""What an offer rests on: who comes to measure does not ask for templates."""

from datetime import date
from typing import Any

import pytest

from ledgerstone.price.customer_price import templating_price
from ledgerstone.terms import on_solid_base, standing_message, waits_for_template, wanted_first
from ledgerstone.workshop import Workshop
from support.slabs import order_of
from unit.priced_slabs import NEAR, plain

UNTIL = date(2026, 12, 25)


@pytest.mark.parametrize("ordered", [False, True])
@pytest.mark.parametrize("size_from", ["finished", "template-to-follow"])
@pytest.mark.parametrize("kind", ["collect", "pallet", "own-van", "fitted"])
def test_measuring_is_charged_or_templates_are_asked_for(
    workshop: Workshop, kind: str, size_from: str, ordered: bool
) -> None:
    """Never both, whatever is delivered; and what nobody has measured is no quotation."""
    delivery: dict[str, Any] = {"kind": "collect"} if kind == "collect" else NEAR | {"kind": kind}
    asked = {"delivery": delivery, "templating": ordered}
    order = order_of(workshop, plain(size_from=size_from), **asked)
    charged = templating_price(order, workshop) > 0
    asks = "templates" in wanted_first(order, workshop)
    assert not (charged and asks)
    assert (charged or asks) == waits_for_template(order)
    told = standing_message(order, "quotation", UNTIL).name
    assert (told == "estimate-until-measured") == charged
    assert (told == "estimate-until-templates") == asks


@pytest.mark.parametrize(
    ("slab", "is_based"),
    [
        ({"rests": {"kind": "full"}}, True),
        ({"rests": {"kind": "full"}, "use": "table"}, True),
        ({"rests": {"kind": "full"}, "use": "hearth"}, False),
        ({"rests": {"kind": "full"}, "use": "splashback"}, False),
        ({"rests": {"kind": "ends", "depth": 100}}, False),
    ],
)
def test_a_full_bed_needs_a_base_that_others_build(
    workshop: Workshop, slab: dict[str, Any], is_based: bool
) -> None:
    """A bed that no case of load is tried on is a condition; a hearth's is its installer's."""
    order = order_of(workshop, plain(**slab), plain(rests={"kind": "frame", "width": 50}))
    assert on_solid_base(order) == ((0,) if is_based else ())
