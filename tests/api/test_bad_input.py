"""Bad requests are answered in plain words, at once, and none of them by an internal fault."""

import time
from typing import TYPE_CHECKING, Any
from xml.etree import ElementTree as ET

import pytest

from support.asking import NEVER_SAID, PROBLEM, body_of, changed, sentences
from support.bad_input_table import MARKUP, ROWS
from support.bad_requests import FULL, SLAB, Bad

if TYPE_CHECKING:
    from flask.testing import FlaskClient
    from werkzeug.test import TestResponse

# Of processor time: a refusal is at once; a send-back may have had its strength worked out.
MAX_SECONDS = {422: 15.0}
MAX_BYTES = 200_000


def _post(client: "FlaskClient", bad: Bad) -> "TestResponse":
    return client.post("/v1/quotes", data=bad.body, headers=dict(bad.headers))


def _pointers(problem: dict[str, Any]) -> set[str]:
    faults = {fault["pointer"] for fault in problem.get("faults", [])}
    return faults | {at for finding in problem.get("findings", []) for at in finding["at"]}


def test_the_table_is_long_enough() -> None:
    """The table has far more rows than the sixty agreed, each by its own name."""
    names = [bad.name for bad in ROWS]
    assert len(names) >= 150
    assert len(set(names)) > len(names) - 5


@pytest.mark.parametrize("bad", ROWS, ids=lambda bad: bad.name)
def test_a_bad_request_gets_a_problem_in_plain_words(client: "FlaskClient", bad: Bad) -> None:
    """Each bad request is refused by its status, its pointer and a sentence, in bounded time."""
    began = time.process_time()
    answer = _post(client, bad)
    assert time.process_time() - began < MAX_SECONDS.get(bad.status, 1.0)
    assert answer.status_code == bad.status, answer.text[:500]
    assert answer.mimetype == PROBLEM
    assert len(answer.data) < MAX_BYTES
    problem = answer.get_json()
    said = list(sentences(problem))
    assert said
    assert [text for text in said if NEVER_SAID.search(text)] == []
    if bad.pointer is not None:
        assert bad.pointer in _pointers(problem)


@pytest.mark.parametrize("label", MARKUP)
def test_markup_in_a_label_is_drawn_as_text(client: "FlaskClient", label: str) -> None:
    """A label that looks like markup or a formula stands in the drawing as text."""
    order = changed((f"{SLAB}/label", label))
    answer = client.post("/v1/drawings", data=body_of(order), content_type="application/json")
    assert answer.status_code == 200
    drawing = client.get(answer.get_json()["plan"])
    tree = ET.fromstring(drawing.data)  # noqa: S314  a drawing of ours
    assert {node.tag.rpartition("}")[2] for node in tree.iter()}.isdisjoint(
        {"script", "foreignObject", "a", "image", "iframe"}
    )
    assert [name for node in tree.iter() for name in node.attrib if name.startswith("on")] == []
    assert any(label in (node.text or "") for node in tree.iter())


def test_a_comb_of_200_points_is_answered(client: "FlaskClient") -> None:
    """An outline as intricate as is understood is quoted or sent back: no fault of ours."""
    teeth = [{"x": 10 * i + 1, "y": 130 if i % 2 else 30} for i in range(198)]
    points = [{"x": 0, "y": 600}, *teeth, {"x": 1990, "y": 600}]
    slab = {"outline": {"kind": "polygon", "points": points}, "thickness": 40, "rests": FULL}
    answer = client.post("/v1/quotes", json={"slabs": [slab]})
    assert answer.status_code in (200, 422), answer.text


def test_every_fault_comes_at_once(client: "FlaskClient") -> None:
    """Faults in different parts of an order are reported in one answer."""
    order = changed((f"{SLAB}/place", "moon"), ("/needed_by", "soon"), (f"{SLAB}/thickness", 0))
    problem = client.post("/v1/quotes", json=order).get_json()
    assert _pointers(problem) == {f"{SLAB}/place", "/needed_by", f"{SLAB}/thickness"}


def test_the_way_round_of_a_polygon_makes_no_difference(client: "FlaskClient") -> None:
    """A polygon costs the same clockwise and anticlockwise, from whichever point it begins."""
    corners = [(0, 0), (1200, 0), (1200, 500), (300, 620), (0, 500)]
    totals = set()
    for points in (corners, corners[::-1], corners[2:] + corners[:2]):
        outline = {"kind": "polygon", "points": [{"x": x, "y": y} for x, y in points]}
        order = {"slabs": [{"outline": outline, "thickness": 40, "rests": {"kind": "full"}}]}
        totals.add(client.post("/v1/quotes", json=order).get_json()["price"]["total"])
    assert len(totals) == 1


def test_units_make_no_difference_to_the_price(client: "FlaskClient") -> None:
    """The same slab costs the same in millimetres, centimetres, metres and inches."""
    totals = set()
    for length, width in (
        (1270, 508),
        ("1270 mm", "50.8 cm"),
        ("1.27 m", "0.508 m"),
        ("50 in", "20 in"),
        ("4' 2\"", "1 ft 8 in"),
    ):
        outline = {"kind": "rectangle", "length": length, "width": width}
        order = {"slabs": [{"outline": outline, "thickness": 40, "rests": {"kind": "full"}}]}
        totals.add(client.post("/v1/quotes", json=order).get_json()["price"]["total"])
    assert len(totals) == 1
