"""The maker's hand in one offer: lines, a margin, a note and a last day, through to every paper."""

from decimal import Decimal

import pytest

from ledgerstone.codec.tokens import Tokens
from support.demonstration import EXAMPLE_ORDER, SIGNING_KEYS
from support.documents import Json
from support.offered import MAKER, service

NOTE = "As agreed at the fair in Wethermoor."
TERMS = {
    "adjustments": [
        {"text": "Site visit", "amount": "40.00"},
        {"text": "For a friend", "amount": "-25.50"},
    ],
    "margin_percent": "35",
    "note": NOTE,
    "valid_until": "2027-01-31",
    "standing": "estimate",
}


def quoted(document: Json, headers: dict[str, str] | None = None, status: int = 200) -> Json:
    """Ask for a quote."""
    answer = service().post("/v1/quotes", json=document, headers=headers or {})
    assert answer.status_code == status, answer.text
    body: Json = answer.get_json()
    return body


def lines_of(quote: Json) -> dict[str, Decimal]:
    """A quote's lines."""
    return {line["label"]: Decimal(line["amount"]) for line in quote["price"]["lines"]}


def paper(path: str, ask: Json) -> str:
    """Ask for a paper, as the maker."""
    answer = service().post(path, json=ask, headers=MAKER)
    assert answer.status_code == 200, answer.text
    return answer.text


@pytest.mark.parametrize("member", TERMS)
def test_nobody_but_the_maker_sets_terms(member: str) -> None:
    """Each is refused at its place without the key."""
    refused = quoted(EXAMPLE_ORDER | {member: TERMS[member]}, status=400)
    assert [fault["pointer"] for fault in refused["faults"]] == [f"/{member}"]


def test_lines_are_added_and_change_no_other() -> None:
    """Two lines after the delivery; every other is as it was, and the sums are exact."""
    plain = quoted(EXAMPLE_ORDER, MAKER)
    made = quoted(EXAMPLE_ORDER | {"adjustments": TERMS["adjustments"]}, MAKER)
    before, after = lines_of(plain), lines_of(made)
    assert (after.pop("Site visit"), after.pop("For a friend")) == (Decimal(40), Decimal("-25.50"))
    before.pop("Rounding", None)
    after.pop("Rounding", None)
    assert after == before
    price = {key: Decimal(made["price"][key]) for key in ("net", "tax", "total")}
    assert price["net"] + price["tax"] == price["total"]
    assert sum(lines_of(made).values()) == price["net"]


def test_a_margin_is_of_this_offer_alone() -> None:
    """35 in place of 40 percent on every group of making; the maker is told, nobody else."""
    plain, made = (quoted(EXAMPLE_ORDER | more, MAKER) for more in ({}, {"margin_percent": "35"}))
    for label in ("Materials", "Making and casting", "Finishing and sealing"):
        wanted = lines_of(plain)[label] / Decimal("1.40") * Decimal("1.35")
        assert lines_of(made)[label] == pytest.approx(wanted, abs=Decimal("0.01"))
    assert (plain["costs"]["margin_percent"], made["costs"]["margin_percent"]) == ("40", "35")


def test_the_token_carries_what_the_customer_may_read() -> None:
    """Decoded: the order, days, sums, the lines and the note; no margin, no cost, no hour."""
    made = quoted(EXAMPLE_ORDER | TERMS, MAKER)
    content = Tokens(SIGNING_KEYS).open("quote", made["token"])
    assert set(content) <= {
        "order", "area", "cur", "standing", "cal", "print", "rev", "ref", "note", "issued",
        "until", "by", "ready", "net", "tax", "total", "deposit", "own", "lines",
    }  # fmt: skip
    assert set(content["order"]) <= {"slabs", "delivery", "needed_by", "language"}
    assert content["own"] == [["Site visit", "40.00"], ["For a friend", "-25.50"]]
    told = {label: Decimal(amount) for label, amount in content["lines"]}
    assert told == lines_of(made)
    assert (content["note"], content["until"], content["standing"]) == (
        NOTE, "2027-01-31", "estimate",
    )  # fmt: skip


def test_the_link_opens_the_offer_as_it_was_made() -> None:
    """Anybody with the link reads the lines, the note, the price and its last day."""
    made = quoted(EXAMPLE_ORDER | TERMS, MAKER)
    opened = service().get(f"/v1/quotes/{made['token']}").get_json()
    assert opened["stands"]
    assert opened["note"] == NOTE
    assert opened["valid_until"] == "2027-01-31"
    assert opened["price"]["total"] == made["price"]["total"]
    assert opened["price"]["lines"] == made["price"]["lines"]


@pytest.mark.parametrize("by_token", [False, True], ids=("order", "token"))
def test_letter_and_sheets_say_what_the_quote_says(*, by_token: bool) -> None:
    """Every line of the price in the letter; the added ones and the note on sheets too."""
    made = quoted(EXAMPLE_ORDER | TERMS, MAKER)
    ask = {"token": made["token"]} if by_token else {"order": EXAMPLE_ORDER, **TERMS}
    letter = service().post("/v1/replies", json=ask, headers=MAKER).get_json()["text"]
    assert " ".join(NOTE.split()) in " ".join(letter.split())
    for line in made["price"]["lines"]:
        assert f"{abs(Decimal(line['amount'])):,.2f}" in letter
    assert f"{Decimal(made['price']['total']):,.0f}" in letter
    approval = paper("/v1/sheets/approval", ask)
    assert "Site visit" in approval
    assert "For a friend" in approval
    assert NOTE in approval
    assert all("31 January 2027" in text for text in (" ".join(letter.split()), approval))
    for path in ("/v1/job-sheets", "/v1/sheets/fitting", "/v1/sheets/care"):
        assert NOTE in paper(path, ask)


@pytest.mark.parametrize(
    ("more", "pointer"),
    [
        ({"adjustments": [{"text": "Too much", "amount": "-90000"}]}, "/adjustments"),
        ({"adjustments": [{"text": "x", "amount": "1.234"}]}, "/adjustments/0/amount"),
        ({"adjustments": [{"text": "x"}]}, "/adjustments/0/amount"),
        ({"adjustments": [{"text": "x", "amount": "1", "y": 1}]}, "/adjustments/0/y"),
        ({"margin_percent": "501"}, "/margin_percent"),
        ({"margin_percent": "-1"}, "/margin_percent"),
        ({"valid_until": "2026-11-24"}, "/valid_until"),
        ({"valid_until": "2028-11-24"}, "/valid_until"),
        ({"standing": "promise"}, "/standing"),
    ],
)
def test_terms_that_cannot_be_are_reported_at_their_place(more: Json, pointer: str) -> None:
    """What would take the total below zero, is no amount, or lies out of reach."""
    refused = quoted(EXAMPLE_ORDER | more, MAKER, status=400)
    assert pointer in [fault["pointer"] for fault in refused["faults"]]


def test_an_offer_that_is_made_has_its_terms() -> None:
    """Beside a token they are refused: it stands as it was made."""
    token = quoted(EXAMPLE_ORDER)["token"]
    ask = {"token": token, "adjustments": TERMS["adjustments"]}
    answer = service().post("/v1/replies", json=ask, headers=MAKER)
    assert answer.status_code == 400
    assert answer.get_json()["faults"][0]["pointer"] == "/adjustments"
