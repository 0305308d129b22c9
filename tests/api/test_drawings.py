"""Drawings: links for any order that is understood, each kept for a year, and safe to show."""

import string
from importlib import import_module
from typing import TYPE_CHECKING
from xml.etree import ElementTree as ET

import pytest

from ledgerstone.codec.tokens import LONGEST_TOKEN
from support.asking import PROBLEM, changed
from support.demonstration import EXAMPLE_ORDER

if TYPE_CHECKING:
    from flask.testing import FlaskClient

SVG = "image/svg+xml"
DRAWINGS = import_module("ledgerstone.application.drawings").Drawings
TWO_SLABS = changed(
    ("/slabs/-", {"outline": {"kind": "round", "diameter": "90 cm"}, "thickness": "40 mm",
                  "label": "Round table"}),
)  # fmt: skip


@pytest.fixture
def plan(client: "FlaskClient") -> str:
    """The link of the example order's plan."""
    return str(client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"])


def test_links_are_given_for_an_order_that_cannot_be_made(client: "FlaskClient") -> None:
    """An order that would be sent back has drawings, so that what stops it can be seen."""
    answer = client.post("/v1/drawings", json=changed(("/slabs/0/cutouts/0/centre/y", "190 mm")))
    assert answer.status_code == 200
    assert set(answer.get_json()) >= {"plan"}
    assert client.get(answer.get_json()["plan"]).status_code == 200


def test_the_quote_gives_the_same_links(client: "FlaskClient", plan: str) -> None:
    """The links in a quote are those that are given for its order alone."""
    quoted = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    assert quoted["drawings"]["plan"] == plan


def test_a_plan_is_svg_with_its_policy(client: "FlaskClient", plan: str) -> None:
    """A plan is well-formed SVG that may run nothing and load nothing."""
    drawing = client.get(plan)
    assert drawing.status_code == 200
    assert drawing.mimetype == SVG
    policy = drawing.headers["Content-Security-Policy"]
    assert "default-src 'none'" in policy
    assert "sandbox" in policy
    assert drawing.headers["X-Content-Type-Options"] == "nosniff"
    tree = ET.fromstring(drawing.data)  # noqa: S314  a drawing of ours
    assert tree.tag.endswith("svg")
    assert [name for node in tree.iter() for name in node.attrib if name == "style"] == []
    assert "Seed-tray bench" in drawing.text


def test_a_drawing_is_kept_for_a_year(client: "FlaskClient", plan: str) -> None:
    """A drawing has a strong ETag and never changes under its link."""
    drawing = client.get(plan)
    assert drawing.headers["Cache-Control"] == "public, max-age=31536000, immutable"
    assert drawing.headers["ETag"].startswith('"')
    assert client.get(plan).headers["ETag"] == drawing.headers["ETag"]
    assert client.get(plan).data == drawing.data


def test_what_is_held_is_not_drawn_again(
    client: "FlaskClient", plan: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A caller who holds the drawing is told so before anything is drawn."""
    etag = client.get(plan).headers["ETag"]
    drawn: list[object] = []
    monkeypatch.setattr(DRAWINGS, "drawn", lambda *given: drawn.append(given))
    for held in (etag, f"W/{etag}", f'"other", {etag}'):
        answer = client.get(plan, headers={"If-None-Match": held})
        assert answer.status_code == 304
        assert answer.data == b""
        assert answer.headers["ETag"] == etag
    assert drawn == []


def test_an_etag_of_something_else_is_drawn(client: "FlaskClient", plan: str) -> None:
    """A caller who holds another drawing is sent this one."""
    answer = client.get(plan, headers={"If-None-Match": '"0123456789abcdef"'})
    assert answer.status_code == 200
    assert answer.data


def test_each_slab_has_its_drawing(client: "FlaskClient") -> None:
    """``slab`` picks one; each is another drawing with another ETag."""
    plan = client.post("/v1/drawings", json=TWO_SLABS).get_json()["plan"]
    first, second = client.get(f"{plan}?slab=0"), client.get(f"{plan}?slab=1")
    assert first.headers["ETag"] != second.headers["ETag"]
    assert "Seed-tray bench" in first.text
    assert "Round table" in second.text
    assert client.get(plan).data == first.data


@pytest.mark.parametrize(
    "slab", ["1", "8", "-1", "0001", "00", "1e9", "NaN", "100;", "", "٠", "9" * 5000]
)
def test_a_slab_that_is_not_there_is_not_found(client: "FlaskClient", plan: str, slab: str) -> None:
    """A slab's number past the last, or what is no number, is a 404 problem; 00 is zero."""
    answer = client.get(plan, query_string={"slab": slab})
    assert answer.status_code == (200 if slab == "00" else 404)
    if answer.status_code == 404:
        assert answer.mimetype == PROBLEM


def _spoilt(link: str) -> dict[str, str]:
    head, _, name = link.rpartition("/")
    base, _, token = head.rpartition("/")
    made = {
        "flipped": token[:-2] + ("A" if token[-2] != "A" else "B") + token[-1],
        "cut short": token[: len(token) // 2],
        "unsigned": token.rpartition(".")[0],
        "not ours": "x",
        "a bomb with a wrong signature": ".eJzt" + "A" * 3000 + ".AAAA",
        "too long": "A" * (LONGEST_TOKEN + 1),
        "not ASCII": "é" * 20,
        "a path": "..%2f..%2fetc",
    }
    return {kind: f"{base}/{spoilt}/{name}" for kind, spoilt in made.items()}


def test_a_link_that_is_not_ours_is_not_found(client: "FlaskClient", plan: str) -> None:
    """A spoilt, foreign or endless token is a 404 problem that says so."""
    for kind, link in _spoilt(plan).items():
        answer = client.get(link)
        assert answer.status_code == 404, kind
        assert answer.mimetype == PROBLEM, kind


def test_a_quotes_token_opens_no_drawing(client: "FlaskClient") -> None:
    """The two kinds of token have two salts: one never opens in the other's place."""
    token = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()["token"]
    assert client.get(f"/v1/drawings/{token}/plan.svg").status_code == 404


@pytest.mark.parametrize("name", ["elevation", "..%2fplan", "plan.svg%00", "PLAN"])
def test_a_drawing_of_another_name_is_not_found(
    client: "FlaskClient", plan: str, name: str
) -> None:
    """There are no drawings but those that are documented, whatever a caller says it holds."""
    link = plan.replace("plan.svg", f"{name}.svg")
    for headers in ({}, {"If-None-Match": "*"}):
        answer = client.get(link, headers=headers)
        assert answer.status_code == 404
        assert answer.mimetype == PROBLEM
        painted = client.get(link.replace(".svg", ".png"), headers=headers)
        assert painted.status_code == 404


def test_only_svg_is_offered(client: "FlaskClient", plan: str) -> None:
    """A caller who takes no SVG is told what there is."""
    answer = client.get(plan, headers={"Accept": "image/webp"})
    assert answer.status_code == 406
    assert "image/svg+xml" in answer.get_json()["detail"]
    for accept in ("image/svg+xml", "image/*", "*/*", "text/html, */*;q=0.1"):
        assert client.get(plan, headers={"Accept": accept}).status_code == 200


def _ragged(number: int) -> dict[str, object]:
    """A slab of 192 corners that no other has."""
    teeth = [
        {"x": 10 + 10.37 * n + 0.01 * n * number, "y": 30.25 + 1.13 * (n * n % 17) + 0.001 * number}
        for n in range(190)
    ]
    points = [*teeth, {"x": 2800, "y": 600}, {"x": 10, "y": 600}]
    return {"outline": {"kind": "polygon", "points": points}, "thickness": 40}


def _share(k: int, number: int) -> float:
    """A share from 0 to 0.9 that is another for each corner of each slab."""
    return 0.9 * ((7919 * k * k + 104_729 * (number + 1) * (k + 3)) % 9973) / 9973


def _labelled(number: int) -> dict[str, object]:
    """A slab with ten holes, bedded all over: each has a place and a long name of its own."""
    holes = [
        {
            "label": _letters(number, k),
            "kind": "circle",
            "diameter": 40,
            "centre": {
                "x": round(100 + 190 * (k % 5) + 9 * _share(k, number), 3),
                "y": round(130 + 240 * (k // 5) + 9 * _share(2 * k, number), 3),
            },
        }
        for k in range(10)
    ]
    outline = {"kind": "rectangle", "length": 1000 + number, "width": 500}
    return {
        "outline": outline,
        "thickness": 40,
        "label": _letters(number, 10),
        "cutouts": holes,
        "rests": {"kind": "full"},
    }


def _letters(number: int, hole: int) -> str:
    some = string.ascii_letters + string.digits
    return "".join(some[int(len(some) * _share(k + 120 * hole, number))] for k in range(120))


def test_a_slab_too_detailed_for_a_link_has_none(client: "FlaskClient") -> None:
    """Every link that is given opens; slabs too detailed for a link have none."""
    links = client.post("/v1/drawings", json={"slabs": [_ragged(0)]}).get_json()
    assert client.get(links["plan"]).status_code == 200
    slabs = [_ragged(number) for number in range(8)]
    answer = client.post("/v1/drawings", json={"slabs": slabs})
    assert (answer.status_code, answer.get_json()["type"]) == (422, "/problems/too-intricate")
    answer = client.post("/v1/drawings", json={"slabs": [_labelled(number) for number in range(6)]})
    assert (answer.status_code, answer.get_json()) == (200, {})
