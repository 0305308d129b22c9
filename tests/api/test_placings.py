"""`POST /v1/placings`: a slab comes back laid out, whatever was sent as it was written."""

import pytest
from flask.testing import FlaskClient

from support.documents import Json

SLAB: Json = {
    "outline": {"kind": "rectangle", "length": "1.8 m", "width": "600 mm"},
    "thickness": "40 mm",
}


def _placed(client: FlaskClient, **ask: object) -> Json:
    answer = client.post("/v1/placings", json=ask)
    assert answer.status_code == 200
    body: Json = answer.get_json()
    return body


def test_what_is_added_can_be_added_to(client: FlaskClient) -> None:
    """What an answer says is free goes back with its slab: a tap then finds room behind a sink."""
    first = _placed(client, slab=SLAB, add="sink")
    again = _placed(client, slab=first["slabs"][0], add="tap", free=first["free"][0])
    (slab,) = again["slabs"]
    assert slab["outline"]["length"] == "1.8 m"
    assert [one["label"] for one in slab["cutouts"]] == ["sink", "tap"]
    assert again["free"] == [{"cutouts": [0, 1], "reliefs": [], "rests": False}]
    assert client.post("/v1/quotes", json={"slabs": [slab]}).status_code == 200


@pytest.mark.parametrize("length", ["1200 mm", "1500 mm", "1.8 m"])
def test_what_an_addition_moves_is_said(length: str, client: FlaskClient) -> None:
    """The answer says where an opening now is if, and only if, it has moved."""
    outline = {**SLAB["outline"], "length": length}
    first = _placed(client, slab={**SLAB, "outline": outline}, add="sink", unit="mm")
    again = _placed(client, slab=first["slabs"][0], add="tap", free=first["free"][0], unit="mm")
    was, now = (answer["slabs"][0]["cutouts"][0]["centre"] for answer in (first, again))
    added = again["slabs"][0]["cutouts"][1]["centre"]
    assert (now["y"] in again["says"]) == (was != now)
    assert added["y"] not in again["says"]


def test_a_second_of_a_kind_has_a_name_of_its_own(client: FlaskClient) -> None:
    """No two openings of a slab are called the same, in the language that is asked for."""
    slab = _placed(client, slab=SLAB, add="basin")["slabs"][0]
    german = client.post(
        "/v1/placings", json={"slab": slab, "add": "basin"}, headers={"Accept-Language": "de"}
    )
    labels = [one["label"] for one in german.get_json()["slabs"][0]["cutouts"]]
    assert len({*labels}) == 2
    twice = _placed(client, slab=slab, add="basin")["slabs"][0]
    assert twice["cutouts"][1]["label"] == f"{slab['cutouts'][0]['label']} 2"


def test_what_fits_nowhere_is_left_out(client: FlaskClient) -> None:
    """Where there is no room the slab comes back as it was sent, with a sentence."""
    narrow = {**SLAB, "outline": {**SLAB["outline"], "width": 480}}
    answer = _placed(client, slab=narrow, add="hob")
    assert (answer["fits"], answer["slabs"]) == (False, [narrow])
    assert "580 mm" in answer["says"]


@pytest.mark.parametrize("kind", ["units", "frame", "ends", "legs", "ledges", "pedestal", "full"])
def test_rests_are_laid_out_by_their_kind_alone(kind: str, client: FlaskClient) -> None:
    """Of rests that are free nothing but their kind need be sent, and the result is an order's."""
    answer = _placed(client, slab={**SLAB, "rests": {"kind": kind}}, free={"rests": True})
    assert answer["slabs"][0]["rests"]["kind"] == kind
    assert client.post("/v1/drawings", json={"slabs": answer["slabs"]}).status_code == 200


def test_assumed_units_are_listed(client: FlaskClient) -> None:
    """Base units that nobody told come with how many and how wide; told ones, or others, do not."""
    free = _placed(client, slab={**SLAB, "rests": {"kind": "units"}}, free={"rests": True})
    made = free["slabs"][0]["rests"]["units"]
    assert str(len(made)) in free["says"]
    assert made[0]["width"] in free["says"]
    assert _placed(client, slab=free["slabs"][0], free={"rests": False})["says"] == ""
    frame = {**SLAB, "rests": {"kind": "frame"}}
    assert _placed(client, slab=frame, free={"rests": True})["says"] == ""


def test_an_overhang_is_kept(client: FlaskClient) -> None:
    """Units that are laid out again leave the overhang that was told, and stay as fixed."""
    rests = {"kind": "units", "overhang": {"front": "20 mm", "left": 300}, "fixed": True}
    made = _placed(client, slab={**SLAB, "rests": rests}, free={"rests": True})["slabs"][0]["rests"]
    assert made["overhang"] == {"front": "20 mm", "left": 300}
    assert made["fixed"] is True
    assert [unit["width"] for unit in made["units"]] == ["600 mm", "600 mm", "300 mm"]


def test_an_l_is_two_slabs_and_a_join(client: FlaskClient) -> None:
    """The arm of an L is as long as along the wall less the other's depth and the joint."""
    made = _placed(client, slab={**SLAB, "shade": {"name": "graphite"}}, start="l-right")
    lengths = [slab["outline"]["length"] for slab in made["slabs"]]
    assert lengths == ["2400 mm", "898 mm"]
    assert [slab["shade"] for slab in made["slabs"]] == [{"name": "graphite"}] * 2
    assert made["joins"][0]["other"] == {"slab": 1, "side": "left"}
    order = {"slabs": made["slabs"], "joins": made["joins"]}
    assert client.post("/v1/quotes", json=order).status_code == 200


def test_faults_are_reported_at_the_slab(client: FlaskClient) -> None:
    """What is not understood is named by its pointer into the request."""
    answer = client.post("/v1/placings", json={"slab": {**SLAB, "thickness": ""}, "add": "tap"})
    assert answer.status_code == 400
    assert [fault["pointer"] for fault in answer.get_json()["faults"]] == ["/slab/thickness"]


@pytest.mark.parametrize(
    "ask",
    [
        {},
        {"slab": []},
        {"slab": {"cutouts": 7}, "free": {"cutouts": [0]}},
        {"slab": {"cutouts": [3], "rests": {"kind": []}}, "free": {"cutouts": [0], "rests": True}},
        {"slab": SLAB, "add": "spoon"},
        {"slab": SLAB, "free": {"cutouts": [0, 1, 2, 3, 4, 5, 6, 7, 8]}},
        {"slab": SLAB, "free": {"cutouts": ["0"]}},
        {
            "slab": {**SLAB, "cutouts": [{"kind": "circle", "centre": None}]},
            "free": {"cutouts": [0]},
        },
    ],
)
def test_what_is_no_slab_is_refused(ask: Json, client: FlaskClient) -> None:
    """Whatever is sent instead of a slab is answered in words, at its place."""
    assert client.post("/v1/placings", json=ask).status_code == 400
