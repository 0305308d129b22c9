"""A thickness that not given: the workshop's usual stands, and the answer says so."""

from __future__ import annotations

from typing import Any

import pytest
from flask.testing import FlaskClient

from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.workshop import Workshop
from support.calibration import order
from support.slabs import box

COLLECT = {"kind": "collect"}


def asked(outline: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Write an order of one slab whose thickness is left out."""
    return order(COLLECT, {"outline": outline, **more})


@pytest.mark.parametrize(
    ("outline", "use", "mm"),
    [
        (box(1200, 600), "worktop", 40.0),
        ({"kind": "round", "diameter": "1.1 m"}, "table", 40.0),
        (box(1200, 100), "upstand", 25.0),  # the thinnest that the demonstration workshop stocks
    ],
)
def test_the_usual_thickness_stands(
    outline: dict[str, Any], use: str, mm: float, workshop: Workshop
) -> None:
    """Of those in stock the nearest to 40 mm for a top, the thinnest for what stands upright."""
    (slab,) = read_order(asked(outline, use=use), workshop).slabs
    assert slab.thickness.mm == pytest.approx(mm)
    assert "thickness" in slab.taken


def test_it_is_reported_in_the_customers_unit(workshop: Workshop) -> None:
    """Who orders in inches reads inches."""
    (slab,) = read_order(asked(box("60 in", "25 in")), workshop).slabs
    assert slab.thickness.unit == "in"
    assert slab.thickness.mm == pytest.approx(40, abs=1)


def test_the_order_as_understood_holds_it(workshop: Workshop) -> None:
    """Written out, it is an order with a thickness; read again it was told."""
    understood = write_order(read_order(asked(box(1200, 600)), workshop))
    assert understood["slabs"][0]["thickness"] == 40
    assert "thickness" not in read_order(understood, workshop).slabs[0].taken


def test_the_answer_says_what_was_assumed(client: FlaskClient) -> None:
    """A note, with the thickness as a number."""
    answer = client.post("/v1/quotes", json=asked(box(1200, 600))).get_json()
    (note,) = [one for one in answer["findings"] if one["check"] == "thickness-taken"]
    assert note["level"] == "note"
    assert note["measured"] == {"thickness_mm": 40.0}
    assert answer["order"]["slabs"][0]["thickness"] == 40
