"""GET /v1/quotes/{token}: what was offered can be proved, and whether it stands is stated."""

from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from api.schemas import Schemas
from ledgerstone.codec.tokens import LONGEST_LINK, LONGEST_TOKEN
from ledgerstone.wording import Message, english
from support.asking import NEVER_SAID, PROBLEM, changed, sentences, texts
from support.demonstration import EXAMPLE_ORDER, SIGNING_KEYS
from support.offered import OFFERED, detailed_order, reworded, service, slabs_order

if TYPE_CHECKING:
    from flask.testing import FlaskClient

LATER = date(2026, 12, 9)
LAPSED = date(2027, 1, 25)
NEWER_KEY = "a newer signing key for the tests, of no use elsewhere"
SAME = ("reference", "issued", "valid_until", "standing")
AMOUNTS = ("currency", "net", "tax", "total", "deposit")


@pytest.fixture
def offered(client: "FlaskClient") -> dict[str, Any]:
    """The quote of the example order, as it was offered."""
    quote: dict[str, Any] = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    return quote


def _opened(client: "FlaskClient", token: str) -> dict[str, Any]:
    answer = client.get(f"/v1/quotes/{token}")
    assert answer.status_code == 200, answer.text
    opened: dict[str, Any] = answer.get_json()
    return opened


def _is_as_offered(opened: dict[str, Any], offered: dict[str, Any]) -> None:
    assert {name: opened[name] for name in SAME} == {name: offered[name] for name in SAME}
    assert opened["price"] == {name: offered["price"][name] for name in AMOUNTS}
    assert opened["lead_time"]["ready_on"] == offered["lead_time"]["ready_on"]


def test_a_link_opens_to_what_was_offered(
    client: "FlaskClient", offered: dict[str, Any], schemas: Schemas
) -> None:
    """A quote opened on its own day is as it was offered, and today's answer is the same."""
    opened = _opened(client, offered["token"])
    assert schemas.undocumented("OpenedQuote", opened) == []
    _is_as_offered(opened, offered)
    assert opened["link"].endswith(f"#quote={offered['token']}")
    assert opened["stands"] is True
    assert opened["because"] == []
    assert opened["drawings"] == offered["drawings"]
    today = opened["today"]["body"]
    assert opened["today"]["kind"] == "quote"
    assert today["price"] == offered["price"]
    assert (today["reference"], today["changes"]["revision"]) == (offered["reference"], "")
    assert today["changes"]["says"] == []


def test_the_order_opens_without_its_postcode(
    client: "FlaskClient", offered: dict[str, Any]
) -> None:
    """The order comes back as asked, with the delivery area in the postcode's place."""
    opened = _opened(client, offered["token"])
    assert "HR9" not in " ".join(texts(opened))
    assert opened["delivery_area"] == "Around Wethermoor"
    asked = {k: v for k, v in EXAMPLE_ORDER["delivery"].items() if k != "postcode"}
    assert opened["order"]["delivery"] == asked
    assert opened["order"]["slabs"][0]["outline"] == EXAMPLE_ORDER["slabs"][0]["outline"]


def test_an_opened_link_is_kept_by_nobody(client: "FlaskClient", offered: dict[str, Any]) -> None:
    """The answer is not to be cached, listed by searchers, or told to other sites."""
    answer = client.get(f"/v1/quotes/{offered['token']}")
    assert answer.headers["Cache-Control"] == "no-store"
    assert answer.headers["X-Robots-Tag"] == "noindex"
    assert answer.headers["Referrer-Policy"] == "no-referrer"


def test_an_expired_link_still_opens(offered: dict[str, Any]) -> None:
    """After its last day a quote opens as it was, says it is over, and has today's answer."""
    opened = _opened(service(LAPSED), offered["token"])
    _is_as_offered(opened, offered)
    assert opened["stands"] is False
    [reason] = opened["because"]
    assert reason == {
        "reason": "expired",
        "says": english(Message("offer-expired", valid_until=date(2026, 12, 25), days=31)),
    }
    assert opened["today"]["body"]["issued"] == "2027-01-25"
    assert opened["today"]["body"]["changes"]["ready_later_days"] > 20


def test_a_quote_stands_to_the_end_of_its_last_day(offered: dict[str, Any]) -> None:
    """On the day it is valid until a quote stands; the day after it does not."""
    token = offered["token"]
    assert _opened(service(date(2026, 12, 25)), token)["stands"] is True
    assert _opened(service(date(2026, 12, 26)), token)["stands"] is False


def test_a_quote_is_honoured_though_rates_have_changed(
    offered: dict[str, Any], tmp_path: Path
) -> None:
    """With dearer hours since, the quote stands at its price; today's is reported beside it."""
    dearer = service(LATER, profile=reworded(tmp_path, ("\nhour = 38.00", "\nhour = 48.00")))
    opened = _opened(dearer, offered["token"])
    _is_as_offered(opened, offered)
    assert opened["stands"] is True
    assert [reason["reason"] for reason in opened["because"]] == ["rates-changed"]
    today = opened["today"]["body"]
    more = Decimal(today["price"]["total"]) - Decimal(offered["price"]["total"])
    assert more > 0
    assert Decimal(today["changes"]["price_change"]["amount"]) == more


def test_mistyped_prices_are_taken_back(offered: dict[str, Any], tmp_path: Path) -> None:
    """A quote from before the day in ``revoke_before`` opens, and says that it is taken back."""
    line = "# revoke_before = 2026-01-31"
    revoked = service(LATER, profile=reworded(tmp_path, (line, "revoke_before = 2026-11-26")))
    opened = _opened(revoked, offered["token"])
    assert opened["stands"] is False
    assert "revoked" in [reason["reason"] for reason in opened["because"]]
    (tmp_path / "kept").mkdir()
    kept = service(LATER, profile=reworded(tmp_path / "kept", (line, "revoke_before = 2026-11-25")))
    assert _opened(kept, offered["token"])["stands"] is True


def test_a_withdrawn_shade_is_reported(client: "FlaskClient", tmp_path: Path) -> None:
    """A quote in a shade that is no longer cast says so, and why it is not quoted today."""
    order = changed(("/slabs/0/shade/name", "lichen"))
    token = client.post("/v1/quotes", json=order).get_json()["token"]
    without = service(LATER, profile=reworded(tmp_path, ('name = "lichen"', 'name = "moss"')))
    opened = _opened(without, token)
    assert opened["stands"] is False
    withdrawn = english(Message("offer-withdrawn", what="shade", name="lichen"))
    assert withdrawn in [one["says"] for one in opened["because"]]
    assert opened["today"]["kind"] == "not-understood"
    [fault] = opened["today"]["body"]["faults"]
    assert fault["pointer"] == "/slabs/0/shade/name"


def test_what_cannot_be_made_today_says_why(offered: dict[str, Any]) -> None:
    """A quote whose needed-by day has become too near is sent back today, with its finding."""
    opened = _opened(service(date(2027, 3, 20)), offered["token"])
    assert opened["today"]["kind"] == "sent-back"
    checks = {finding["check"] for finding in opened["today"]["body"]["findings"]}
    assert "needed-too-soon" in checks


def test_a_future_date_is_refused(offered: dict[str, Any]) -> None:
    """On a replica whose clock is a day behind, a quote of the next day is told as just that."""
    answer = service(date(2026, 11, 24)).get(f"/v1/quotes/{offered['token']}")
    assert answer.status_code == 404
    assert answer.mimetype == PROBLEM
    assert answer.get_json()["detail"] == english(Message("link-dated-ahead"))


def test_any_replica_with_the_key_answers_the_same(offered: dict[str, Any]) -> None:
    """Two services with the same key, profile and day open a link to the same bytes."""
    path = f"/v1/quotes/{offered['token']}"
    assert service(LATER).get(path).data == service(LATER).get(path).data


def test_keys_are_changed_without_losing_links(offered: dict[str, Any]) -> None:
    """A newer key beside the older one opens its links; without the older one they are gone."""
    path = f"/v1/quotes/{offered['token']}"
    assert service(keys=(*SIGNING_KEYS, NEWER_KEY)).get(path).status_code == 200
    assert service(keys=(NEWER_KEY,)).get(path).status_code == 404


def test_no_spoilt_link_opens(client: "FlaskClient", offered: dict[str, Any]) -> None:
    """A sample of letters flipped, cut and added: each is a plain 404, and none a fault of ours."""
    token = offered["token"]
    spoilt = {token[:at] for at in range(1, len(token), 37)} | {token + "A", token + "=", "x"}
    spoilt |= {
        token[:at] + ("A" if token[at] != "A" else "B") + token[at + 1 :]
        for at in (*range(0, len(token), 17), len(token) - 1)
    }
    for link in spoilt:
        answer = client.get(f"/v1/quotes/{link}")
        assert answer.status_code == 404, link
        assert answer.mimetype == PROBLEM
        assert answer.get_json()["detail"] == english(Message("link-not-ours"))


def test_a_drawings_token_opens_no_quote(client: "FlaskClient", offered: dict[str, Any]) -> None:
    """The two kinds of token have two salts."""
    token = offered["drawings"]["plan"].split("/")[-2]
    assert client.get(f"/v1/quotes/{token}").status_code == 404


# --- length ---------------------------------------------------------------------------------


@pytest.mark.parametrize(("count", "longest"), [(1, 1200), (3, LONGEST_LINK), (8, LONGEST_LINK)])
def test_a_link_is_short(client: "FlaskClient", count: int, longest: int) -> None:
    """One slab's token has at most 1 200 characters; three and eight plain slabs fit a link."""
    quote = client.post("/v1/quotes", json=slabs_order(count)).get_json()
    assert len(quote["token"]) <= 1200 if count == 1 else len(quote["link"]) <= longest
    assert _opened(client, quote["token"])["price"]["total"] == quote["price"]["total"]


def test_an_order_too_long_for_a_link_says_so(client: "FlaskClient", schemas: Schemas) -> None:
    """A detailed order has its price and a token for files, and a reason in its link's place."""
    quote = client.post("/v1/quotes", json=detailed_order(3)).get_json()
    assert schemas.undocumented("Quote", quote) == []
    assert "link" not in quote
    assert quote["no_link"]["reason"] == "too-long"
    assert "file" in quote["no_link"]["says"]
    assert LONGEST_LINK < len(quote["token"]) <= LONGEST_TOKEN
    assert "link" not in _opened(client, quote["token"])


def test_what_is_written_is_plain(offered: dict[str, Any]) -> None:
    """No sentence of an opened quote uses words that we never say."""
    opened = _opened(service(LAPSED), offered["token"])
    said = list(sentences(opened))
    assert OFFERED.isoformat() not in " ".join(said)
    assert said
    assert not [text for text in said if NEVER_SAID.search(text)]
