"""What else an order's drawings are: words, its pieces together, paper at true size."""

import re
from typing import TYPE_CHECKING
from xml.etree import ElementTree as ET

import pytest

from ledgerstone.drawing.tiling import MAX_SHEETS
from ledgerstone.quantities import Length
from ledgerstone.wording import Message, english
from support.asking import PROBLEM, changed
from support.demonstration import EXAMPLE_ORDER

if TYPE_CHECKING:
    from flask.testing import FlaskClient

TWO_SLABS = changed(
    ("/slabs/-", {"outline": {"kind": "round", "diameter": "90 cm"}, "thickness": "40 mm",
                  "label": "Round table"}),
)  # fmt: skip


@pytest.fixture
def plan(client: "FlaskClient") -> str:
    """The link of the example order's plan."""
    return str(client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"])


JOINED = changed(
    ("/slabs/-", {"outline": {"kind": "rectangle", "length": "1.2 m", "width": "560 mm"},
                  "thickness": "40 mm", "label": "Return"}),
    ("/joins", [{"one": {"slab": 0, "side": "front"}, "other": {"slab": 1, "side": "left"},
                 "gap": "3 mm"}]),
)  # fmt: skip


def test_joined_slabs_have_an_assembled_plan(client: "FlaskClient") -> None:
    """An order with a join has a link to its pieces together, with the hand said."""
    links = client.post("/v1/drawings", json=JOINED).get_json()
    drawn = client.get(links["assembled"])
    assert drawn.status_code == 200
    assert "“Return” comes forward on the right of “Seed-tray bench”" in drawn.text
    picture = client.get(links["assembled"].replace(".svg", ".png"), query_string={"width": 800})
    assert (picture.mimetype, picture.data[16:20]) == ("image/png", (800).to_bytes(4, "big"))


def test_slabs_that_are_not_joined_have_no_link_to_one(client: "FlaskClient") -> None:
    """Where nothing is joined no assembled plan is offered, and the token holds no joins."""
    assert "assembled" not in client.post("/v1/drawings", json=TWO_SLABS).get_json()


def test_links_say_their_drawings(client: "FlaskClient") -> None:
    """Each slab is described in words, in the order's order, as its drawings say themselves."""
    links = client.post("/v1/drawings", json=TWO_SLABS).get_json()
    bench, table = links["says"]
    sizes = {"length": Length.of_mm(1450), "width": Length.of_mm(560)}
    assert bench.startswith(english(Message("plan-rectangle", **sizes, thickness=Length.of_mm(40))))
    assert "(basin)" in bench
    assert table.startswith("A round slab 90 cm across")
    for number, says in enumerate(links["says"]):
        for name in ("plan", "view"):
            tree = ET.fromstring(client.get(f"{links[name]}?slab={number}").data)  # noqa: S314  ours
            assert tree[1].text == says


def test_a_quote_and_a_send_back_say_their_drawings(client: "FlaskClient") -> None:
    """Whether it quotes or not, an answer holds its drawings in words."""
    quoted = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    order = changed(("/slabs/0/cutouts/0/centre/y", "190 mm"))
    sent_back = client.post(
        "/v1/quotes", json=order, headers={"Prefer": "return=minimal"}
    ).get_json()
    assert sent_back["status"] == 422
    assert "270 mm from the front" in quoted["drawings"]["says"][0]
    assert "190 mm from the front" in sent_back["drawings"]["says"][0]


def test_a_cutout_is_printed_at_true_size(client: "FlaskClient") -> None:
    """The link leads to a PDF of the first cut-out; cut-out, corner and paper can be chosen."""
    link = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["true_size"]
    first = client.get(link)
    assert (first.status_code, first.mimetype) == (200, "application/pdf")
    assert first.data.startswith(b"%PDF-")
    assert first.headers["Cache-Control"] == "public, max-age=31536000, immutable"
    assert "sandbox" not in first.headers["Content-Security-Policy"]
    queries: list[dict[str, str]] = [
        {}, {"cutout": "1"}, {"paper": "a3"}, {"corner": "back-left"},
    ]  # fmt: skip
    etags = set()
    for query in queries:
        answer = client.get(link, query_string=query)
        assert answer.status_code == 200, query
        etags.add(answer.headers["ETag"])
    assert len(etags) == len(queries)
    held = client.get(link, headers={"If-None-Match": first.headers["ETag"]})
    assert (held.status_code, held.data) == (304, b"")


@pytest.mark.parametrize(
    ("query", "status", "says"),
    [
        ({"cutout": "2"}, 404, "no such cut-out"),
        ({"cutout": "-1"}, 404, "no such cut-out"),
        ({"cutout": "x"}, 404, "no such cut-out"),
        ({"cutout": "9" * 5000}, 404, "no such cut-out"),
        ({"corner": "middle"}, 404, "no such corner"),
        ({"corner": "1"}, 404, "no such corner"),
        ({"corner": "٣"}, 404, "no such corner"),
        ({"paper": "a5"}, 400, "letter or tabloid"),
        ({"paper": ""}, 400, "letter or tabloid"),
        ({"slab": "1"}, 404, "no such slab"),
    ],
)
def test_what_cannot_be_printed_is_reported(
    client: "FlaskClient", query: dict[str, str], status: int, says: str
) -> None:
    """A cut-out, a corner, a slab or a paper that is not there is a problem that names it."""
    link = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["true_size"]
    answer = client.get(link, query_string=query)
    assert answer.status_code == status
    assert answer.mimetype == PROBLEM
    assert says in answer.get_json()["detail"]


def test_what_is_too_large_to_print_is_reported(client: "FlaskClient") -> None:
    """More sheets than anybody tapes together are counted, and larger paper is offered."""
    order = changed(
        ("/slabs/0/outline", {"kind": "rectangle", "length": "12 m", "width": "8 m"}),
        ("/slabs/0/cutouts", [{"kind": "rectangle", "length": "11 m", "width": "7 m",
                               "centre": {"x": "6 m", "y": "4 m"}}]),
    )  # fmt: skip
    link = client.post("/v1/drawings", json=order).get_json()["true_size"]
    answer = client.get(link)
    assert answer.status_code == 400
    (sheets,) = re.findall(r"\d+(?= )", answer.get_json()["detail"])
    assert int(sheets) > MAX_SHEETS
    told = Message("too-many-sheets", sheets=int(sheets), paper="a4")
    assert answer.get_json()["detail"] == english(told)


def test_each_form_is_offered_to_those_who_take_it(client: "FlaskClient", plan: str) -> None:
    """A caller who takes neither PNG nor PDF is told what there is."""
    for link, mimetype in (
        (plan.replace(".svg", ".png"), "image/png"),
        (plan.replace("plan.svg", "true-size.pdf"), "application/pdf"),
    ):
        answer = client.get(link, headers={"Accept": "image/webp"})
        assert answer.status_code == 406
        assert mimetype in answer.get_json()["detail"]
        assert client.get(link, headers={"Accept": mimetype}).status_code == 200
