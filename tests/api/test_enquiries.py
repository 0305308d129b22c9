"""POST /v1/enquiries: the maker's alone, in three forms; what is read quotes; nothing is kept."""

import json
import logging
from typing import TYPE_CHECKING, Any

import pytest

from ledgerstone.wording import Message, english
from support.mails import ASKS, mailed
from support.offered import MAKER

if TYPE_CHECKING:
    from flask.testing import FlaskClient

BASIN = """Hello, please quote for a vanity top 1200 x 580 x 40 mm in graphite, with a round basin
to cut out, 380 mm across, its middle 600 from the left. A tap hole behind it. We collect. Odile"""


def test_it_is_the_makers(client: "FlaskClient") -> None:
    """Without the maker's key no message is read."""
    assert client.post("/v1/enquiries", json={"message": ASKS}).status_code == 401


@pytest.mark.parametrize("form", ["application/json", "text/plain", "message/rfc822"])
def test_a_message_comes_in_three_forms(client: "FlaskClient", form: str) -> None:
    """JSON, a text and a whole message read to the same order."""
    body = {
        "application/json": json.dumps({"message": ASKS}).encode(),
        "text/plain": ASKS.encode(),
        "message/rfc822": mailed().as_bytes(),
    }[form]
    answer = client.post("/v1/enquiries", data=body, content_type=form, headers=MAKER)
    assert answer.status_code == 200
    slab = answer.get_json()["order"]["slabs"][0]
    assert slab["outline"] == {"kind": "rectangle", "length": "900 mm", "width": "220 mm"}


def test_what_is_proposed_quotes(client: "FlaskClient") -> None:
    """The proposal is an order that the service quotes as it stands."""
    read = client.post("/v1/enquiries", json={"message": BASIN}, headers=MAKER).get_json()
    assert client.post("/v1/quotes", json=read["proposal"]).status_code == 200
    assert {one["at"] for one in read["missing"]} >= {"/slabs/0/cutouts/0/centre/y"}
    taken = {one["at"] for one in read["assumed"]}
    assert "/slabs/0/cutouts/0/centre" in taken
    assert not taken & {one["at"] for one in read["read"]}


def test_a_reply_says_what_was_taken_and_is_an_estimate(client: "FlaskClient") -> None:
    """While anything is assumed or missing the letter is an estimate, tells it and asks."""
    read = client.post("/v1/enquiries", json={"message": BASIN}, headers=MAKER).get_json()
    ask = {"order": read["proposal"], "assumed": read["assumed"], "missing": read["missing"]}
    letter = client.post("/v1/replies", json=ask, headers=MAKER).get_json()
    assert letter["subject"].startswith("Estimate")
    assert english(Message("letter-took-lead")) in letter["text"]
    assert letter["text"].count("?") <= 3
    assert english(Message("letter-asks")) in letter["html"]
    chosen = {**ask, "standing": "quotation"}
    asking = client.post("/v1/replies", json=chosen, headers=MAKER).get_json()
    assert asking["subject"].startswith("Estimate")
    chosen["missing"] = []
    assert (
        client.post("/v1/replies", json=chosen, headers=MAKER)
        .get_json()["subject"]
        .startswith("Quotation")
    )


def test_three_questions_at_most_are_asked(client: "FlaskClient") -> None:
    """Of many questions a letter asks the three that move price and feasibility most."""
    read = client.post("/v1/enquiries", json={"message": BASIN}, headers=MAKER).get_json()
    places = ("/delivery/postcode", "/slabs/0/thickness", "/needed_by", "/slabs/0/cutouts/0")
    missing = [{"at": at, "asks": f"What of {at}?"} for at in (*places, "/slabs/0/outline/length")]
    ask = {"order": read["proposal"], "missing": missing}
    text = client.post("/v1/replies", json=ask, headers=MAKER).get_json()["text"]
    asked = [line[2:] for line in text.split("\n") if line.startswith("- What of")]
    assert asked == [
        f"What of {at}?" for at in ("/slabs/0/outline/length", "/slabs/0/thickness", "/needed_by")
    ]


def test_markup_of_a_mail_is_escaped_in_a_letter(client: "FlaskClient") -> None:
    """What came in a message reaches a letter's HTML as text alone."""
    read = client.post("/v1/enquiries", json={"message": BASIN}, headers=MAKER).get_json()
    took = english(Message("letter-took-lead"))
    taken = [{"at": "/slabs/0/shade", "says": f"{took} <script>alert(1)</script>."}]
    ask = {"order": read["proposal"], "assumed": taken, "customer": "<b>Odile</b>"}
    html = client.post("/v1/replies", json=ask, headers=MAKER).get_json()["html"]
    assert "<script>" not in html
    assert "<b>Odile" not in html


BAD: dict[str, tuple[Any, str, int]] = {
    "no message": ({}, "application/json", 400),
    "empty": ({"message": "  "}, "application/json", 400),
    "not text": ({"message": 7}, "application/json", 400),
    "a member too many": ({"message": ASKS, "to": "x"}, "application/json", 400),
    "a list": ([], "application/json", 400),
    "empty text": (b" \n", "text/plain", 400),
    "a picture": (b"\x89PNG", "image/png", 415),
    "too long": (b"A worktop. " * 60_000, "text/plain", 413),
    "too long a message": ({"message": "x" * 600_000}, "application/json", 413),
    "zeros": (b"\0" * 500, "message/rfc822", 200),
}


@pytest.mark.parametrize("name", BAD)
def test_what_is_no_message_is_refused_in_words(client: "FlaskClient", name: str) -> None:
    """Each bad body has its status and a sentence, and none is an internal fault."""
    body, form, status = BAD[name]
    data = body if isinstance(body, bytes) else json.dumps(body).encode()
    answer = client.post("/v1/enquiries", data=data, content_type=form, headers=MAKER)
    assert answer.status_code == status
    if status >= 400:
        assert answer.get_json()["detail"].endswith(".")


def test_nothing_of_a_message_is_logged(
    client: "FlaskClient", caplog: pytest.LogCaptureFixture
) -> None:
    """No word of a message, no name and no address is in the log."""
    with caplog.at_level(logging.DEBUG):
        client.post(
            "/v1/enquiries", data=mailed().as_bytes(), content_type="message/rfc822", headers=MAKER
        )
    assert not any(word in caplog.text for word in ("Gemma", "gemma", "charcoal", "900"))


RUN = """Hello, we need a kitchen worktop 1800 x 640 x 40 mm in graphite, with a sink cut-out of
760 x 400 mm in the middle. It sits on base units. We collect. Odile"""


def test_units_that_are_said_are_taken_as_the_page_lays_them_out(client: "FlaskClient") -> None:
    """The first answer is that of the units that choosing them lays out, told and asked about."""
    read = client.post("/v1/enquiries", json={"message": RUN}, headers=MAKER).get_json()
    slab = read["proposal"]["slabs"][0]
    bare = {**slab, "rests": {"kind": "units"}}
    placed = client.post("/v1/placings", json={"slab": bare, "free": {"rests": True}}).get_json()
    assert slab["rests"] == placed["slabs"][0]["rests"]
    (units,) = (one for one in read["assumed"] if one["at"] == "/slabs/0/rests/units")
    assert units["value"] == slab["rests"]["units"]
    asked = [one["asks"] for one in read["missing"] if one["at"] == "/slabs/0/rests"]
    ask = {"order": read["proposal"], "assumed": read["assumed"], "missing": read["missing"]}
    letter = client.post("/v1/replies", json=ask, headers=MAKER).get_json()
    told = " ".join(letter["text"].split())
    assert asked[0] in told
    assert units["says"].removeprefix("We took it ").rstrip(".") in told


def test_a_letter_says_that_supports_are_not_checked(client: "FlaskClient") -> None:
    """Where nobody said what carries it, no letter says that it can be made and no more."""
    order = {"slabs": [{"outline": {"kind": "rectangle", "length": "900 mm", "width": "500 mm"}}]}
    carried = {"slabs": [{**order["slabs"][0], "rests": {"kind": "full"}}]}
    for sent, supports in ((order, "open"), (carried, "checked")):
        letter = client.post("/v1/replies", json={"order": sent}, headers=MAKER).get_json()
        said = english(Message("letter-can-make", supports=supports))
        assert said in " ".join(letter["text"].split())
        told = english(Message("letter-supports", supports="open")).strip()
        assert (told in " ".join(letter["text"].split())) == (supports == "open")
