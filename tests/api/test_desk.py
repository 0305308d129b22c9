"""The maker's page and its key: how it is served, what a wrong key meets, what it alone tells."""

import email.policy
import gzip
import re
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from email.parser import BytesParser
from pathlib import Path
from typing import Any

import pytest

from ledgerstone.api import Settings, create_app
from ledgerstone.application.desk import write_desk
from ledgerstone.wording import speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
from ledgerstone.workshop.standing import ProfileStanding
from support.day import TODAY
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS
from support.in_english import value_in_english
from support.offered import MAKER, OFFERED, reworded, service
from support.profile_form import form, started

WEB = Path(__file__).resolve().parents[2] / "web"
ELSEWHERE = {"REMOTE_ADDR": "192.0.2.7"}
WRONG = {"Authorization": "Bearer not the maker's key at all"}


def desk(path: str) -> Any:  # noqa: ANN401  a response
    """Ask a service that has the pages for one file."""
    settings = Settings(maker_key=MAKER_KEY, signing_keys=SIGNING_KEYS, web_folder=WEB)
    return create_app(settings).test_client().get(path, buffered=True)


@pytest.mark.parametrize("path", ["/desk/", "/desk/index.html", "/desk/desk.js"])
def test_the_desk_is_framed_by_nobody_and_listed_nowhere(path: str) -> None:
    """No frame, no inline script or style, no form that is sent, no robot's list."""
    answer = desk(path)
    policy = answer.headers["Content-Security-Policy"]
    assert answer.status_code == 200
    assert "frame-ancestors 'none'" in policy
    assert "form-action 'none'" in policy
    assert "unsafe" not in policy
    assert answer.headers["X-Robots-Tag"] == "noindex, nofollow"


def test_the_desk_packs_under_60_kb() -> None:
    """All that it adds to the customers' page, in either language, packed file by file."""
    for language, other in (("English", ".de."), ("German", ".en.")):
        files = [f for f in (WEB / "desk").rglob("*") if f.is_file() and other not in f.name]
        size = sum(len(gzip.compress(f.read_bytes(), 6)) for f in files)
        print(f"the desk in {language}, the workshop's form with it: {size / 1000:.1f} kB")
        assert 20_000 < size < 60_000


def test_the_customers_page_leads_to_no_desk() -> None:
    """Nothing that a customer loads names it; its short address leads to the whole one."""
    theirs = [f for f in WEB.rglob("*") if f.is_file() and "desk" not in f.relative_to(WEB).parts]
    assert [f.name for f in theirs if "desk/" in f.read_text(encoding="utf-8")] == []
    assert desk("/desk").headers["Location"] == "/desk/"


def test_what_the_workshop_has_set_is_for_the_key_alone() -> None:
    """The margin and the day are reported with the key, and refused without one or with another."""
    client = service()
    told = client.get("/v1/desk", headers=MAKER).get_json()
    assert told["margin_percent"] == "40"
    assert told["today"] == "2026-11-25"
    assert [client.get("/v1/desk", headers=h).status_code for h in ({}, WRONG)] == [401, 401]


def test_wrong_keys_are_slowed_down_by_address() -> None:
    """Ten of one address are answered; then it waits, a right key too; another address does not."""
    client = service()

    def tried(key: dict[str, str], **more: Any) -> Any:  # noqa: ANN401  of the environment
        return client.get("/v1/desk", headers=key, **more)

    assert tried(MAKER, environ_base=ELSEWHERE).status_code == 200
    statuses = [tried(WRONG, environ_base=ELSEWHERE).status_code for _ in range(12)]
    assert statuses == [401] * 10 + [429] * 2
    held = tried(MAKER, environ_base=ELSEWHERE)
    assert held.status_code == 429
    assert 1 <= int(held.headers["Retry-After"]) <= 6
    assert tried(MAKER, environ_base={"REMOTE_ADDR": "198.51.100.9"}).status_code == 200
    assert client.get("/v1/choices", environ_base=ELSEWHERE).status_code == 200


def test_what_it_costs_in_all_is_the_sum_of_its_lines() -> None:
    """To the penny."""
    told = service().post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()["costs"]
    assert sum(Decimal(line["amount"]) for line in told["lines"]) == Decimal(told["total"])


def test_the_deposit_of_one_offer_is_rounded_as_the_maker_says() -> None:
    """To whole fifties, nearest to the profile's share; the price stays, and so does the link's."""
    client = service()
    plain = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    asked = EXAMPLE_ORDER | {"deposit_round_to": "50"}
    made = client.post("/v1/quotes", json=asked, headers=MAKER).get_json()
    share, deposit = Decimal(plain["price"]["deposit"]), Decimal(made["price"]["deposit"])
    assert deposit % 50 == 0
    assert abs(deposit - share) <= 25
    assert made["price"]["total"] == plain["price"]["total"]
    opened = client.get(f"/v1/quotes/{made['token']}").get_json()
    assert Decimal(opened["price"]["deposit"]) == deposit
    for step in ("0", "-10", "ten"):
        refused = client.post(
            "/v1/quotes", json=EXAMPLE_ORDER | {"deposit_round_to": step}, headers=MAKER
        )
        assert refused.get_json()["faults"][0]["pointer"] == "/deposit_round_to"


def test_a_draft_answers_the_message_that_is_named() -> None:
    """To its sender, under its subject, in its thread; without one, to nobody."""
    named = {
        "to": "tamsin@orchard.example",
        "subject": "potting bench",
        "message_id": "<a1@orchard.example>",
        "references": "<a0@orchard.example> <a1@orchard.example>",
    }
    ask = {"order": EXAMPLE_ORDER, "customer": "Tamsin", "answers": named}
    accept = MAKER | {"Accept": "message/rfc822"}
    draft = service().post("/v1/replies", json=ask, headers=accept).data
    read = BytesParser(policy=email.policy.default).parsebytes(draft)
    assert read["To"] == "Tamsin <tamsin@orchard.example>"
    assert read["Subject"] == "Re: potting bench"
    assert read["In-Reply-To"] == "<a1@orchard.example>"
    assert read["References"] == "<a0@orchard.example> <a1@orchard.example>"
    del ask["answers"]
    alone = service().post("/v1/replies", json=ask, headers=accept).data
    assert BytesParser(policy=email.policy.default).parsebytes(alone)["To"] is None


def test_a_letter_asks_three_questions_at_most() -> None:
    """Of five, those that price and feasibility hang on most; for the day nothing is taken."""
    asked = {
        "/delivery/postcode": "Where does it go, roughly?",
        "/slabs/0/cutouts/0/centre": "Where is the basin, roughly?",
        "/needed_by": "By when, roughly?",
        "/slabs/0/thickness": "How thick, roughly?",
        "/slabs/0/outline/length": "How long, roughly?",
    }
    missing = [{"at": at, "asks": says} for at, says in asked.items()]
    ask = {"order": EXAMPLE_ORDER, "missing": missing}
    text = service().post("/v1/replies", json=ask, headers=MAKER).get_json()["text"]
    assert [at for at, says in asked.items() if says in text] == list(asked)[2:]


def noted(kind: str, client: Any, **more: str) -> dict[str, str]:  # noqa: ANN401  a client
    """Ask for a short letter about the example's offer."""
    token = service().post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()["token"]
    answer = client.post(f"/v1/notes/{kind}", json={"token": token, **more}, headers=MAKER)
    assert answer.status_code == 200, answer.text
    written: dict[str, str] = answer.get_json()
    return written


def test_a_reminder_names_the_offer_its_total_and_its_last_day() -> None:
    """And its link, in the language of the offer; nobody without the key has one written."""
    made = service().post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    note = noted("reminder", service(), customer="Tamsin")
    assert made["reference"] in note["subject"]
    total = f"{Decimal(made['price']['total']):,.2f}"
    assert all(part in note["text"] for part in ("Tamsin", total, "25 December 2026", "#quote="))
    asked = {"token": made["token"]}
    assert service().post("/v1/notes/reminder", json=asked).status_code == 401
    assert service().post("/v1/notes/thanks", json=asked, headers=MAKER).status_code == 404


def test_a_deposit_is_asked_for_as_the_profile_says(tmp_path: Path) -> None:
    """What is due now and later, how it is paid, by when, and the day that is held until then."""
    paid = reworded(
        tmp_path,
        (
            "deposit_percent = 40\n",
            ('deposit_percent = 40\npayment = "To Tarnside Casting, account 00000000."\n'),
        ),
    )
    made = service().post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    price, lead = made["price"], made["lead_time"]
    text = noted("deposit", service(profile=paid))["text"]
    rest = Decimal(price["total"]) - Decimal(price["deposit"])
    assert f"{Decimal(price['deposit']):,.2f}" in text
    assert f"{rest:,.2f}" in text
    assert str(load_profile(paid).offer.balance_due) in text
    assert "account 00000000" in text
    assert value_in_english(date(2026, 11, 30)) in text  # three working days after a Wednesday
    assert value_in_english(date.fromisoformat(lead["ready_on"])) in text


def test_a_deposit_is_never_asked_for_on_the_day_of_its_letter(tmp_path: Path) -> None:
    """Whatever day that is: in some working days, before the work begins, and a day at least.

    The demonstration works from Monday to Friday. With nothing ahead an order is begun on the
    next working day, so that its deposit is due on that.
    """
    working = [OFFERED + timedelta(days=n) for n in range(60)]
    working = [day for day in working if day.weekday() < 5]
    begun_at_once = reworded(tmp_path, ("orders_ahead_days = 5", "orders_ahead_days = 0"))
    for later in (0, 2, 3, 4):  # from a Wednesday: a Friday and its weekend are among them
        today = OFFERED + timedelta(days=later)
        third, following = (value_in_english([d for d in working if d > today][n]) for n in (2, 0))
        for profile, due in ((DEMONSTRATION, third), (begun_at_once, following)):
            text = noted("deposit", service(today, profile=profile))["text"]
            days = re.findall(r"\b\d+ \w+ \d{4}\b", text)
            assert due in days
            assert value_in_english(today) not in days


def test_without_a_mailbox_there_are_no_drafts() -> None:
    """The desk is reported so, and the call is not there."""
    client = service()
    assert client.get("/v1/desk", headers=MAKER).get_json()["drafts"] is False
    answer = client.post("/v1/drafts", json={"order": EXAMPLE_ORDER}, headers=MAKER)
    assert answer.status_code == 404
    assert client.post("/v1/drafts", json={"order": EXAMPLE_ORDER}).status_code == 401


def test_the_desk_says_how_much_of_a_new_profile_is_invented(tmp_path: Path) -> None:
    """As many as readiness counts; of the demonstration, which is one whole invention, nothing."""
    new = form(started(tmp_path, "DE"), language="de")
    counted = new.get("/v1/health/ready").get_json()["profile_values"]
    every = counted["yours"] + counted["usual"] + counted["invented"]
    said = f"noch {counted['invented']} von {every} Werten erfunden"
    assert counted["invented"] > 100
    assert new.get("/v1/desk").get_json()["invented"] == said
    tables = new.get("/v1/workshop").get_json()["invented"]
    assert sum(table["values"] for table in tables) == counted["invented"]
    shown = create_app(Settings(maker_key=MAKER_KEY)).test_client()
    assert shown.get("/v1/desk", headers=MAKER).get_json()["invented"] is None


@pytest.mark.parametrize(("priced", "is_told"), [(("rates",), True), ((), False)])
def test_the_desk_counts_what_is_invented_while_answers_are_trials(
    priced: tuple[str, ...], *, is_told: bool
) -> None:
    """Once no price, day or area rests on an invented value, none is counted."""
    standing = ProfileStanding(yours=30, usual=5, invented=7, priced=priced)
    shop = replace(load_profile(DEMONSTRATION), standing=standing)
    told = write_desk(shop, speech_in("en"), TODAY, drafts=False)["invented"]
    assert (told is not None) == is_told
