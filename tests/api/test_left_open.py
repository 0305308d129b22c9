"""What a customer does not know is left out: it is taken by rule, and the answer says so."""

from __future__ import annotations

from typing import Any

import pytest
from flask.testing import FlaskClient

from support.calibration import on_units, order
from support.slabs import box, cut, hole
from support.strategies.orders import cases

COLLECT = {"kind": "collect"}
TOLD = {
    "place": "indoors",
    "shade": {"name": "graphite"},
    "finish": {"surface": "honed", "sealer": "matt"},
    "edges": {},
}
BED = {"rests": {"kind": "full"}}


def note(answer: dict[str, Any], check: str) -> dict[str, Any] | None:
    """Return the one finding of a check, or none."""
    found = [one for one in answer["findings"] if one["check"] == check]
    assert len(found) < 2
    return found[0] if found else None


def slab(*, without: str = "", **more: Any) -> dict[str, Any]:
    """Write a slab of which all is told but one thing."""
    whole: dict[str, Any] = {"outline": box(1200, 600), "thickness": "40 mm", **TOLD, **BED, **more}
    if without in whole["finish"]:
        whole["finish"] = {key: one for key, one in whole["finish"].items() if key != without}
    return {key: one for key, one in whole.items() if key != without}


@pytest.mark.parametrize(
    ("without", "stands"),
    [
        ("place", "indoors"),
        ("shade", "“{shade}”"),
        ("surface", "{surface}"),
        ("sealer", "{sealer} sealer"),
        ("edges", "square"),
    ],
)
def test_what_is_left_out_is_said_with_what_stands_for_it(
    client: FlaskClient, without: str, stands: str
) -> None:
    """Each alone, by the workshop's own name; and nothing is said where all is told."""
    answer = client.post("/v1/quotes", json=order(COLLECT, slab(without=without))).get_json()
    choices = client.get("/v1/choices").get_json()
    usual = {
        "shade": choices["shades"][0]["name"],
        "surface": choices["finishes"][0]["surface"].replace("-", " "),
        "sealer": choices["sealers"][0]["name"],
    }
    said = note(answer, "left-to-us")
    assert said is not None
    assert said["level"] == "note"
    assert stands.format(**usual) in said["says"]
    told = client.post("/v1/quotes", json=order(COLLECT, slab())).get_json()
    assert note(told, "left-to-us") is None


def test_how_it_comes_is_said_too(client: FlaskClient) -> None:
    """Without a delivery it is collected."""
    answer = client.post("/v1/quotes", json={"slabs": [slab()]}).get_json()
    said = note(answer, "left-to-us")
    assert said is not None
    assert answer["order"]["delivery"]["kind"] == "collect"


def test_a_rim_is_said_by_its_opening(client: FlaskClient) -> None:
    """Whether it goes under or is set in; none is said of one that was told."""
    sink = hole(360, 600, 300, label="round sink")
    asked = order(COLLECT, slab(cutouts=[sink]))
    said = note(client.post("/v1/quotes", json=asked).get_json(), "left-to-us")
    assert said is not None
    assert "round sink" in said["says"]
    asked = order(COLLECT, slab(cutouts=[{**sink, "rim": "covered"}]))
    assert note(client.post("/v1/quotes", json=asked).get_json(), "left-to-us") is None


def test_the_sealer_that_is_taken_is_one_for_the_place(client: FlaskClient) -> None:
    """Outdoors the first that may be there, and nothing stops the order for it."""
    answer = client.post(
        "/v1/quotes", json=order(COLLECT, slab(without="sealer", place="outdoors"))
    ).get_json()
    sealers = client.get("/v1/choices").get_json()["sealers"]
    first = next(one["name"] for one in sealers if "outdoors" in one["places"])
    assert answer["order"]["slabs"][0]["finish"]["sealer"] == first
    assert note(answer, "sealer-not-for-place") is None


def test_a_link_keeps_what_was_left_open(client: FlaskClient) -> None:
    """Opened again the answer of today says it again, until somebody chooses."""
    asked = order(COLLECT, slab(without="thickness"), slab(without="place"))
    first = client.post("/v1/quotes", json=asked).get_json()
    opened = client.get(f"/v1/quotes/{first['token']}").get_json()
    today = opened["today"]["body"]
    assert note(today, "thickness-taken") is not None
    assert note(today, "left-to-us") is not None
    assert today["price"]["total"] == first["price"]["total"]
    changed = {**today["order"], "since": first["token"]}
    again = client.post("/v1/quotes", json=changed).get_json()
    assert note(again, "thickness-taken") is not None
    changed["slabs"][0]["thickness"] = "30 mm"
    changed["slabs"][1]["place"] = "wet-room"
    chosen = client.post("/v1/quotes", json=changed).get_json()
    assert note(chosen, "thickness-taken") is None
    assert note(chosen, "left-to-us") is None


def test_a_link_keeps_what_was_given(client: FlaskClient) -> None:
    """What stands as is usual because somebody chose it is nothing that was left open."""
    sink = hole(360, 600, 300, label="sink", rim="shown")
    first = client.post("/v1/quotes", json=order(COLLECT, slab(cutouts=[sink]))).get_json()
    today = client.get(f"/v1/quotes/{first['token']}").get_json()["today"]["body"]
    assert note(today, "left-to-us") is None
    assert note(today, "thickness-taken") is None


def test_where_the_usual_thickness_does_not_do_another_of_ours_is_taken(
    client: FlaskClient,
) -> None:
    """A recess too deep for 40 mm: the next thickness in stock that does, and the note says so."""
    deep = {"kind": "recess", "outline": box(400, 300), "depth": 28, "at": {"x": 400, "y": 100}}
    asked = order(COLLECT, slab(without="thickness", reliefs=[deep]))
    refused = client.post(
        "/v1/quotes", json=order(COLLECT, slab(thickness="40 mm", reliefs=[deep]))
    )
    assert refused.status_code == 422
    response = client.post("/v1/quotes", json=asked)
    assert response.status_code == 200
    answer = response.get_json()
    said = note(answer, "thickness-taken")
    assert said is not None
    stocked = client.get("/v1/choices").get_json()["thicknesses_mm"]
    thicker = min(mm for mm in stocked if mm > 40)
    assert said["measured"] == {"thickness_mm": thicker}
    assert answer["order"]["slabs"][0]["thickness"] == thicker
    for way in answer.get("ways_to_save", []):
        assert not any(step["path"].endswith("/thickness") for step in way["patch"])
    minimal = client.post("/v1/quotes", json=asked, headers={"Prefer": "return=minimal"})
    assert minimal.get_json()["price"]["total"] == answer["price"]["total"]


def test_a_slab_of_its_own_keeps_the_usual_thickness(client: FlaskClient) -> None:
    """Only the slab that needs it is made thicker, and what is told stays as it is."""
    deep = {"kind": "recess", "outline": box(400, 300), "depth": 28, "at": {"x": 400, "y": 100}}
    asked = order(COLLECT, slab(without="thickness", reliefs=[deep]), slab(without="thickness"))
    answer = client.post("/v1/quotes", json=asked).get_json()
    thick = [one["thickness"] for one in answer["order"]["slabs"]]
    assert thick[0] > thick[1] == 40


def test_where_no_thickness_does_the_order_is_sent_back_at_the_usual(client: FlaskClient) -> None:
    """A hole at the very edge is no matter of thickness: nothing is sought."""
    asked = order(
        COLLECT,
        slab(without="thickness", cutouts=[hole(360, 185, 300)], rests=on_units(600, 600)),
    )
    answer = client.post("/v1/quotes", json=asked).get_json()
    assert any(one["level"] == "stops" for one in answer["findings"])
    said = note(answer, "thickness-taken")
    assert said is not None
    assert said["measured"] == {"thickness_mm": 40.0}


@pytest.mark.parametrize("x", range(330, 1480, cases(90, long=10)))
def test_assumed_units_follow_the_openings(client: FlaskClient, x: int) -> None:
    """Wherever a sink is moved, the units that nobody told stand clear of it, and are named."""
    sink = cut("rectangle", (500, 400), (x, 300), label="sink")
    rests = {"kind": "units", "assumed": True, "units": [{"width": 600}] * 3}
    asked = order(COLLECT, slab(outline=box(1800, 600), cutouts=[sink], rests=rests))
    answer = client.post("/v1/quotes", json=asked).get_json()
    assert not [one for one in answer["findings"] if one["check"] == "cutout-over-unit-side"]
    made = answer["order"]["slabs"][0]["rests"]
    assert made["assumed"] is True
    at = [sum(_mm(one) for one in made["units"][:k]) for k in range(len(made["units"]))]
    homes = [
        one["for"]
        for left, one in zip(at, made["units"], strict=True)
        if left + 18 <= x - 250 and x + 250 <= left + _mm(one) - 18
    ]
    assert homes == ["basin"]
    said = note(answer, "left-to-us")
    assert said is not None
    assert str(made["units"][-1]["width"]) in said["says"]


def test_units_are_assumed_only_where_they_are_left_out(client: FlaskClient) -> None:
    """Base units without widths are priced on assumed ones, and say so; told ones are as told."""
    left = order(COLLECT, slab(outline=box(1800, 600), rests={"kind": "units"}))
    answer = client.post("/v1/quotes", json=left).get_json()
    assert [one["width"] for one in answer["order"]["slabs"][0]["rests"]["units"]] == ["600 mm"] * 3
    assert note(answer, "left-to-us") is not None
    told = {"kind": "units", "units": [{"width": 900}] * 2}
    answer = client.post(
        "/v1/quotes", json=order(COLLECT, slab(outline=box(1800, 600), rests=told))
    ).get_json()
    assert note(answer, "left-to-us") is None


def test_joined_slabs_look_alike_unless_the_order_differs(client: FlaskClient) -> None:
    """The part of an L whose shade was left out has the other's, whichever comes first."""
    joins = [{"one": {"slab": 0, "side": "front"}, "other": {"slab": 1, "side": "right"}, "gap": 2}]
    shades = client.get("/v1/choices").get_json()["shades"]
    told = slab(shade={"name": shades[-1]["name"]})
    for slabs in ((told, slab(without="shade")), (slab(without="shade"), told)):
        asked = {**order(COLLECT, *slabs), "joins": joins}
        answer = client.post("/v1/quotes", json=asked).get_json()
        made = {one["shade"]["name"] for one in answer["order"]["slabs"]}
        assert made == {shades[-1]["name"]}
        assert note(answer, "join-of-unlike-looks") is None


def _mm(unit: dict[str, Any]) -> float:
    width = unit["width"]
    return float(width.removesuffix(" mm")) if isinstance(width, str) else width
