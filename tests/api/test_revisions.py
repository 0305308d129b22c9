"""Orders that change an offer, and what an offer's standing is."""

from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from api.schemas import Schemas
from ledgerstone.wording import english
from support.asking import changed
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, THICKER, revised, reworded, service

LATER = date(2026, 12, 9)

if TYPE_CHECKING:
    from flask.testing import FlaskClient


@pytest.fixture
def offered(client: "FlaskClient") -> dict[str, Any]:
    """The quote of the example order, as it was offered."""
    quote: dict[str, Any] = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    return quote


def _opened(client: "FlaskClient", token: str) -> dict[str, Any]:
    opened: dict[str, Any] = client.get(f"/v1/quotes/{token}").get_json()
    return opened


# --- changes --------------------------------------------------------------------------------


def test_a_change_has_a_letter_under_the_same_reference(
    client: "FlaskClient", offered: dict[str, Any], schemas: Schemas
) -> None:
    """A thicker slab lists what changed, in price and days, as revision A; the next is B."""
    order = changed(("/slabs/0/thickness", "50 mm"), order=revised(offered["token"]))
    first = client.post("/v1/quotes", json=order).get_json()
    assert schemas.undocumented("Quote", first) == []
    changes = first["changes"]
    assert first["reference"] == offered["reference"]
    assert changes["revision"] == "A"
    assert changes["says"] == [english(THICKER)]
    assert Decimal(changes["price_change"]["amount"]) == Decimal(first["price"]["total"]) - Decimal(
        offered["price"]["total"]
    )
    again = changed(("/slabs/0/quantity", 2), order=revised(first["token"], order))
    second = client.post("/v1/quotes", json=again).get_json()
    assert (second["reference"], second["changes"]["revision"]) == (offered["reference"], "B")
    assert second["changes"]["since"]["reference"] == f"{offered['reference']} A"
    assert _opened(client, second["token"])["revision"] == "B"


def test_no_change_keeps_its_letter(client: "FlaskClient", offered: dict[str, Any]) -> None:
    """The same order as before has no changes and no new letter."""
    again = client.post("/v1/quotes", json=revised(offered["token"])).get_json()
    assert again["changes"]["revision"] == ""
    assert again["changes"]["says"] == []
    assert again["token"] == offered["token"]


def test_since_lends_its_delivery_area(client: "FlaskClient", offered: dict[str, Any]) -> None:
    """A changed order without a postcode is delivered to the earlier quote's area."""
    again = client.post("/v1/quotes", json=revised(offered["token"])).get_json()
    assert again["price"] == offered["price"]
    alone = revised(offered["token"])
    del alone["since"]
    assert client.post("/v1/quotes", json=alone).status_code == 422


@pytest.mark.parametrize("since", ["x", "", "A" * 7999, "A.B"])
def test_since_must_be_ours(client: "FlaskClient", since: str) -> None:
    """An order that changes a quote of nobody's is not understood, at its pointer."""
    answer = client.post("/v1/quotes", json=revised(since))
    assert answer.status_code == 400
    assert [fault["pointer"] for fault in answer.get_json()["faults"]] == ["/since"]


# --- standing -------------------------------------------------------------------------------


def test_the_makers_key_signs_a_quotation(client: "FlaskClient", offered: dict[str, Any]) -> None:
    """With the maker's key the page's estimate is a quotation, and its link says so later."""
    assert offered["standing"] == "estimate"
    quote = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    assert quote["standing"] == "quotation"
    assert _opened(service(LATER), quote["token"])["standing"] == "quotation"


@pytest.mark.parametrize("at", ["/slabs/0/size_from", "/slabs/0/cutouts/0/size_from"])
def test_what_waits_for_a_template_is_an_estimate(client: "FlaskClient", at: str) -> None:
    """A template to follow makes an estimate of it, whoever asks and whatever the profile says."""
    order = changed((at, "template-to-follow"))
    quote = client.post("/v1/quotes", json=order, headers=MAKER).get_json()
    assert quote["standing"] == "estimate"


def test_a_profile_may_say_quotation(tmp_path: Path) -> None:
    """A workshop that says so quotes from its page."""
    line = 'standing = "estimate"'
    bold = service(profile=reworded(tmp_path, (line, 'standing = "quotation"')))
    quote = bold.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    assert quote["standing"] == "quotation"


def test_a_key_that_is_not_the_makers_is_refused(client: "FlaskClient") -> None:
    """A mistyped key is reported, so that no estimate passes for a quotation."""
    wrong = {"Authorization": "Bearer not the key"}
    assert client.post("/v1/quotes", json=EXAMPLE_ORDER, headers=wrong).status_code == 401
