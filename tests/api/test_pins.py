"""Pins: every finding that has a place is on the plan, under its number in the list beside it."""

import re
from datetime import date
from typing import TYPE_CHECKING, Any
from xml.etree import ElementTree as ET

import pytest

from ledgerstone.application.drawings import Annotations, drawing_token
from ledgerstone.checks import Finding
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.tokens import Tokens
from ledgerstone.drawing.frame import SHEET_WIDTH
from ledgerstone.wording import Message
from ledgerstone.workshop import Workshop
from support.asking import changed
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS

if TYPE_CHECKING:
    from flask.testing import FlaskClient

MAKER = {"Authorization": f"Bearer {MAKER_KEY}"}
LONG = {
    "outline": {"kind": "rectangle", "length": 2400, "width": 600},
    "thickness": 40,
    "rests": {"kind": "ends", "depth": 60},
}
ORDERS: dict[str, dict[str, Any]] = {
    "cracks in place": {"slabs": [LONG]},
    "a strip too narrow": changed(("/slabs/0/cutouts/0/centre/y", "190 mm")),
    "quoted, with cautions": EXAMPLE_ORDER,
    "the second of two": {"slabs": [EXAMPLE_ORDER["slabs"][0], LONG]},
    "off the slab at both ends": changed(
        ("/slabs/0/reliefs", [{"kind": "recess", "outline": {"kind": "rectangle", "length": 1600,
         "width": 100}, "depth": 5, "at": {"x": -75, "y": 20}}]),
    ),
}  # fmt: skip


def _pins(svg: str) -> dict[int, str]:
    """Number and level of every pin on a plan."""
    nodes = ET.fromstring(svg).iter()  # noqa: S314  a drawing of ours
    return {int(n.get("data-pin", 0)): n.get("data-level", "") for n in nodes if n.get("data-pin")}


@pytest.mark.parametrize("name", ORDERS)
def test_every_place_of_the_answer_is_pinned_under_its_number(
    client: "FlaskClient", name: str
) -> None:
    """Shape, strength and all: what has a place in the answer's list has its pin on its slab."""
    answer = client.post("/v1/quotes", json=ORDERS[name]).get_json()
    placed = [
        (number, finding)
        for number, finding in enumerate(answer["findings"], start=1)
        if "where_mm" in finding
    ]
    for slab in range(len(ORDERS[name]["slabs"])):
        drawn = _pins(client.get(f"{answer['drawings']['plan']}?slab={slab}").text)
        assert drawn == {n: f["level"] for n, f in placed if f["slab"] == slab}
    if name != "quoted, with cautions":
        assert placed


@pytest.mark.parametrize("name", ORDERS)
def test_the_drawings_alone_are_the_answers_own(client: "FlaskClient", name: str) -> None:
    """Whether it quotes or not, an order's drawings are the same under either call."""
    answer = client.post("/v1/quotes", json=ORDERS[name]).get_json()
    assert client.post("/v1/drawings", json=ORDERS[name]).get_json() == answer["drawings"]


def test_a_crack_is_pinned_where_it_would_be(client: "FlaskClient") -> None:
    """The pin's leader or mark starts at the place that the finding gives."""
    answer = client.post("/v1/quotes", json={"slabs": [LONG]}).get_json()
    (finding,) = (f for f in answer["findings"] if f["check"] == "cracks-in-place")
    tree = ET.fromstring(client.get(answer["drawings"]["plan"]).text)  # noqa: S314  ours
    (group,) = (g for g in tree.iter() if g.get("data-unit") == "mm")
    a, _, _, d, e, f = map(float, group.get("transform", "")[7:-1].split())
    x, y = finding["where_mm"]["coordinates"]
    at = (a * x + e, d * y + f)
    (mark,) = (n for n in tree.iter() if n.get("data-level") == "stops")
    middle = [float(mark.get(k, 0)) + float(mark.get(s, 0)) / 2 for k, s in
              (("x", "width"), ("y", "height"))]  # fmt: skip
    dots = [(float(n.get("cx", 0)), float(n.get("cy", 0))) for n in tree.iter() if n.get("cx")]
    near = min([*dots, (middle[0], middle[1])], key=lambda p: abs(p[0] - at[0]) + abs(p[1] - at[1]))
    assert near == pytest.approx(at, abs=0.02)
    assert 0 < middle[0] < SHEET_WIDTH


def test_an_offers_plan_has_its_name_and_day(client: "FlaskClient") -> None:
    """The title block carries the reference and the day of the offer, and the scale."""
    quoted = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    plan = client.get(quoted["drawings"]["plan"]).text
    assert quoted["reference"] in plan
    assert f"{date.fromisoformat(quoted['issued']):%-d %B %Y}" in plan
    assert "Scale 1 : " in plan
    opened = client.get(f"/v1/quotes/{quoted['token']}").get_json()
    assert opened["drawings"] == quoted["drawings"]


def test_a_letters_plan_is_numbered_as_the_letter(client: "FlaskClient") -> None:
    """A letter numbers what stops, and its plan pins that alone; an offer's plan has no pins."""
    order = changed(("/slabs/0/cutouts/0/centre/y", "190 mm"))
    for document, numbers in ((order, True), (EXAMPLE_ORDER, False)):
        letter = client.post("/v1/replies", json={"order": document}, headers=MAKER).get_json()
        found = re.search(r"/v1/drawings/[^/]+/plan\.png", letter["html"])
        assert found is not None
        pins = _pins(client.get(found[0].replace(".png", ".svg")).text)
        assert bool(pins) is numbers
        for number, level in pins.items():
            assert level == "stops"
            assert f"\n{number}. " in letter["text"]


def test_pins_too_many_for_a_link_are_left_out(workshop: Workshop) -> None:
    """A link that its pins would make too long to open is given without them."""
    order = read_order(EXAMPLE_ORDER, workshop)
    tokens = Tokens(SIGNING_KEYS)
    where = [{"type": "Point", "coordinates": [n * 7.3, n * n % 559]} for n in range(1500)]
    found = [Finding("x", "note", Message("x"), "", slab=0, where_mm=place) for place in where]
    bare = drawing_token(order, tokens)
    assert bare is not None
    assert drawing_token(order, tokens, Annotations(findings=found)) == bare
    assert drawing_token(order, tokens, Annotations(findings=found[:3])) not in {bare, None}
