"""The view and the pictures: as good drawings as the plan, of the width that was asked for."""

import re
from importlib import import_module
from typing import TYPE_CHECKING

import pytest

from support.asking import PROBLEM, changed
from support.demonstration import EXAMPLE_ORDER

if TYPE_CHECKING:
    from flask.testing import FlaskClient

SVG = "image/svg+xml"
DRAWINGS = import_module("ledgerstone.application.drawings").Drawings
PICTURES = import_module("ledgerstone.api.pictures")


@pytest.fixture
def plan(client: "FlaskClient") -> str:
    """The link of the example order's plan."""
    return str(client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"])


@pytest.mark.parametrize("form", ["svg", "png"])
def test_the_view_is_as_good_a_drawing(client: "FlaskClient", plan: str, form: str) -> None:
    """The view is served as the plan is: typed, kept, safe, and never drawn twice."""
    link = plan.replace("plan.svg", f"view.{form}")
    answer = client.get(link)
    assert answer.status_code == 200
    assert answer.mimetype == {"svg": SVG, "png": "image/png"}[form]
    assert answer.headers["Cache-Control"] == "public, max-age=31536000, immutable"
    assert answer.headers["X-Content-Type-Options"] == "nosniff"
    assert "sandbox" in answer.headers["Content-Security-Policy"]
    again = client.get(link, headers={"If-None-Match": answer.headers["ETag"]})
    assert (again.status_code, again.data) == (304, b"")


def _top(svg: str) -> str:
    """The colour of a view's top."""
    found = re.search(r'fill="(#[0-9a-f]{6})"[^>]*data-part="top"', svg)
    assert found is not None
    return found[1]


def test_the_view_shows_the_shade_as_it_will_be_sealed(client: "FlaskClient") -> None:
    """The view's top has the very colour that the quote gives for the sealed slab."""
    quoted = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    view = client.get(quoted["drawings"]["view"])
    assert _top(view.text) == quoted["slabs"][0]["shade"]["hex_sealed"]


def test_a_polished_slab_shines_and_an_as_cast_one_hardly(client: "FlaskClient") -> None:
    """The sheen goes by the surface, and a film on it adds to it."""
    shine = {}
    for surface, sealer in (("as-cast", "matt"), ("honed", "matt"), ("honed", "satin")):
        finish = {"surface": surface, "sealer": sealer}
        links = client.post("/v1/drawings", json=changed(("/slabs/0/finish", finish))).get_json()
        opacities = re.findall(r'stop-opacity="([0-9.]+)"', client.get(links["view"]).text)
        shine[surface, sealer] = max(map(float, opacities))
    assert shine["as-cast", "matt"] < shine["honed", "matt"] < shine["honed", "satin"]


def test_the_same_order_gives_the_same_view_and_another_another(client: "FlaskClient") -> None:
    """Voids and mottling go by the order: the same again for the same, others for another."""
    links = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()
    other = client.post("/v1/drawings", json=changed(("/slabs/0/label", "Bench"))).get_json()
    assert client.get(links["view"]).data == client.get(links["view"]).data
    assert _voids(client.get(links["view"]).text) != _voids(client.get(other["view"]).text)


def _voids(svg: str) -> list[str]:
    return re.findall(r'<path d="(M[^"]*h0)"', svg)


def _png_width(png: bytes) -> int:
    """Width that a PNG's header gives. Source: PNG specification, IHDR."""
    assert png[:8] == b"\x89PNG\r\n\x1a\n"
    return int.from_bytes(png[16:20], "big")


@pytest.mark.parametrize(
    ("width", "painted"),
    [(None, 600), ("320", 320), ("600", 600), ("1200", 1200), ("1600", 1600), ("0600", 600)],
)
def test_a_picture_is_as_wide_as_was_asked(
    client: "FlaskClient", plan: str, width: str | None, painted: int
) -> None:
    """A PNG has the width asked for; 600 where none was."""
    query = {} if width is None else {"width": width}
    answer = client.get(plan.replace(".svg", ".png"), query_string=query)
    assert answer.status_code == 200
    assert _png_width(answer.data) == painted


@pytest.mark.parametrize(("width", "painted"), [("1", 320), ("319", 320), ("1601", 1600),
                                                ("999999999", 1600)])  # fmt: skip
def test_a_width_beyond_its_bounds_is_brought_within(
    client: "FlaskClient", plan: str, width: str, painted: int
) -> None:
    """A width out of bounds is the nearest bound, and one picture with it: their ETags agree."""
    link = plan.replace(".svg", ".png")
    answer = client.get(link, query_string={"width": width})
    assert _png_width(answer.data) == painted
    same = client.get(link, query_string={"width": painted})
    assert answer.headers["ETag"] == same.headers["ETag"]


@pytest.mark.parametrize(
    "width", ["0", "-1", "1e9", "NaN", "100;", "", " 600", "６００", "9" * 5000, "600.5", "0x10"]
)
def test_a_width_that_is_no_number_is_a_problem(
    client: "FlaskClient", plan: str, width: str
) -> None:
    """What is no whole number of pixels is told what is: nothing is painted."""
    answer = client.get(plan.replace(".svg", ".png"), query_string={"width": width})
    assert answer.status_code == 400
    assert answer.mimetype == PROBLEM
    assert "from 320 to 1600" in answer.get_json()["detail"]


def test_pictures_of_other_widths_have_other_etags(client: "FlaskClient", plan: str) -> None:
    """Name, form, slab and width each make another drawing."""
    png = plan.replace(".svg", ".png")
    links = [plan, png, f"{png}?width=700", plan.replace("plan.svg", "view.svg"),
             plan.replace("plan.svg", "view.png")]  # fmt: skip
    etags = [client.get(link).headers["ETag"] for link in links]
    assert len(set(etags)) == len(links)


def test_a_picture_that_is_held_is_not_painted_again(
    client: "FlaskClient", plan: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A second request for a picture costs neither a drawing nor a render."""
    link = plan.replace("plan.svg", "view.png")
    etag = client.get(link).headers["ETag"]
    monkeypatch.setattr(PICTURES, "rasterise", lambda *_: pytest.fail("painted again"))
    monkeypatch.setattr(DRAWINGS, "drawn", lambda *_: pytest.fail("drawn again"))
    assert client.get(link, headers={"If-None-Match": etag}).status_code == 304
