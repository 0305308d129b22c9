"""POST /v1/replies: letters that mail programs show, with the quote's own figures and links."""

import re
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from api import mail_rules
from ledgerstone.json_types import JSON
from ledgerstone.wording import DateRange, DayMonth, english, speech_in
from support.asking import NEVER_SAID, PROBLEM, changed
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY
from support.in_english import value_in_english
from support.offered import MAKER, THICKER, revised, reworded, service, slabs_order

if TYPE_CHECKING:
    from flask.testing import FlaskClient

STOPPED = changed(("/slabs/0/cutouts/0/centre/y", "218 mm"))
STOPPED_TWICE = changed(("/slabs/0/thickness", "10 mm"), order=STOPPED)


def _reply(client: "FlaskClient", **asked: Any) -> dict[str, str]:
    answer = client.post("/v1/replies", json=asked, headers=MAKER)
    assert answer.status_code == 200, answer.text
    made: dict[str, str] = answer.get_json()
    return made


def _quote(client: "FlaskClient", order: dict[str, Any]) -> dict[str, Any]:
    quote: dict[str, Any] = client.post("/v1/quotes", json=order, headers=MAKER).get_json()
    return quote


def _links(text: str) -> list[str]:
    return re.findall(r"^https?://\S+$", text, re.MULTILINE)


@pytest.mark.parametrize("tone", ["short", "full"])
def test_a_quote_in_a_letter_is_the_quote(client: "FlaskClient", tone: str) -> None:
    """Price, tax, deposit, days, masses, name and link stand in both parts to the character."""
    quote = _quote(client, EXAMPLE_ORDER)
    made = _reply(client, order=EXAMPLE_ORDER, customer="Odile", tone=tone)
    price, lead = quote["price"], quote["lead_time"]
    first, last = (date.fromisoformat(lead["arrives"][end]) for end in ("earliest", "latest"))
    days = [lead["ready_on"], quote["valid_until"]]
    told = [
        quote["reference"],
        quote["link"],
        "Hello Odile,",
        *(f"£{Decimal(price[name]):,.2f}" for name in ("total", "tax", "deposit")),
        *(value_in_english(date.fromisoformat(day)) for day in days),
        value_in_english(DateRange(first, last)),
        f"{quote['weight']['slabs'][0]['slab_kg']} kg",
        f"{quote['weight']['packed_kg']} kg",
    ]
    if tone == "full":
        amounts = [Decimal(line["amount"]) for line in price["lines"]]
        told += [f"{'−' if amount < 0 else ''}£{abs(amount):,.2f}" for amount in amounts]
    for part in (made["text"], made["html"]):
        assert [one for one in told if one not in " ".join(part.split())] == []
    assert quote["reference"] in made["subject"]
    assert f"£{Decimal(price['total']):,.2f}" in made["subject"]
    assert _links(made["text"]) == [quote["link"]]


def test_the_weeks_are_one_sentence(client: "FlaskClient") -> None:
    """When it is begun and cast, in the full tone alone; each stage stays behind the link."""
    lead = _quote(client, EXAMPLE_ORDER)["lead_time"]
    starts = {stage["name"]: date.fromisoformat(stage["starts"]) for stage in lead["stages"]}
    days = [starts[name] for name in ("Making the mould", "Casting")]
    told = [speech_in("en").value(DayMonth(day)) for day in days]
    full, short = (_reply(client, order=EXAMPLE_ORDER, tone=tone) for tone in ("full", "short"))
    for part in ("text", "html"):
        assert [day for day in told if day not in " ".join(full[part].split())] == []
        assert "We start on" not in short[part]
    assert "Materials" not in short["text"]


@pytest.mark.parametrize("count", [1, 3, 8])
def test_a_letter_is_what_mail_programs_show(client: "FlaskClient", count: int) -> None:
    """With one slab or eight, the HTML keeps to what every mail program shows, under 100 kB."""
    made = _reply(client, order=slabs_order(count))
    assert mail_rules.faults(made["html"]) == []
    assert made["html"].count("<img ") == count
    for slab in slabs_order(count)["slabs"]:
        assert slab["label"] in made["html"]
        assert slab["label"] in made["text"]


def test_a_picture_says_what_it_shows(client: "FlaskClient") -> None:
    """Where pictures are blocked, the words in their place state the size and the price."""
    quote = _quote(client, EXAMPLE_ORDER)
    made = _reply(client, order=EXAMPLE_ORDER)
    [alt] = re.findall(r'alt="([^"]*)"', made["html"])
    assert "1450 mm × 560 mm" in alt
    assert f"£{Decimal(quote['price']['total']):,.2f}" in alt
    [src] = re.findall(r'<img src="([^"]*)"', made["html"])
    picture = client.get(src.replace("&amp;", "&"))
    assert (picture.status_code, picture.mimetype) == (200, "image/png")


def test_nothing_foreign_is_stated(client: "FlaskClient") -> None:
    """No part of any letter uses words that we never say."""
    for order in (EXAMPLE_ORDER, STOPPED):
        made = _reply(client, order=order)
        assert not NEVER_SAID.search(made["subject"] + made["text"])


# --- an offer by its token ------------------------------------------------------------------


def test_an_offer_is_replied_to_as_it_was_made(client: "FlaskClient", tmp_path: Path) -> None:
    """A fortnight and a rise later, a quote's token still has its price, day and link."""
    quote = _quote(client, EXAMPLE_ORDER)
    dearer = reworded(tmp_path, ("\nhour = 38.00", "\nhour = 48.00"))
    later = service(date(2026, 12, 9), profile=dearer)
    made = _reply(later, token=quote["token"])
    ready = value_in_english(date.fromisoformat(quote["lead_time"]["ready_on"]))
    for told in (
        f"£{Decimal(quote['price']['total']):,.2f}",
        ready,
        quote["reference"],
        quote["link"],
    ):
        assert told in made["text"]
        assert told in made["html"]
    assert "Materials" not in made["text"]  # the lines were never signed
    whole = _reply(service(date(2026, 12, 9)), token=quote["token"])
    assert f"£{Decimal(quote['price']['lines'][0]['amount']):,.2f}" in whole["text"]


def test_an_offer_that_is_over_is_quoted_again(client: "FlaskClient") -> None:
    """A reply to an expired quote has today's day under the same reference, as revision A."""
    quote = _quote(client, EXAMPLE_ORDER)
    made = _reply(service(date(2027, 1, 25)), token=quote["token"])
    assert f"{quote['reference']} A" in made["subject"]
    assert quote["link"] not in made["text"]


def test_a_changed_order_says_what_changed(client: "FlaskClient") -> None:
    """A reply to an order that changes a quote begins with what is different."""
    quote = _quote(client, EXAMPLE_ORDER)
    order = changed(("/slabs/0/thickness", "50 mm"), order=revised(quote["token"]))
    made = _reply(client, order=order)
    assert english(THICKER) in made["text"]
    assert f"{quote['reference']} A" in made["subject"]


# --- send-backs -----------------------------------------------------------------------------


def test_a_send_back_links_each_remedy(client: "FlaskClient") -> None:
    """What stops the order is reported in plain words, and each way out is a link that quotes."""
    answer = client.post("/v1/quotes", json=STOPPED).get_json()
    made = _reply(client, order=STOPPED)
    said = " ".join(made["text"].split())
    for finding in answer["findings"]:
        if finding["level"] == "stops":
            assert finding["says"] in said
            assert all(remedy["says"] in said for remedy in finding["remedies"])
    assert f"£{Decimal(answer['fix_all']['price']['total']):,.2f}" in said
    links = _links(made["text"])
    assert links
    for link in links:
        opened = client.get(f"/v1/quotes/{link.partition('#quote=')[2]}").get_json()
        assert opened["today"]["kind"] == "quote"
    assert mail_rules.faults(made["html"]) == []
    assert "£" not in made["subject"]


def test_a_remedy_that_settles_one_of_two_links_the_order(client: "FlaskClient") -> None:
    """Where a remedy alone does not make it quote, its link carries the changed order itself."""
    order = changed(("/delivery/postcode", "IV1 1AA"), ("/needed_by", "2026-12-01"))
    made = _reply(client, order=order)
    kinds = {link.partition("#")[2].partition("=")[0] for link in _links(made["text"])}
    assert "order" in kinds
    assert mail_rules.faults(made["html"]) == []


def test_a_thin_slab_with_a_basin_at_its_edge_is_answered(client: "FlaskClient") -> None:
    """An order that is stopped twice has both findings numbered, and one change for all."""
    made = _reply(client, order=STOPPED_TWICE)
    assert "\n1. " in made["text"]
    assert "\n2. " in made["text"]


# --- several ways ---------------------------------------------------------------------------


def test_ways_are_reported_or_said_not_to_be_found(client: "FlaskClient") -> None:
    """Asked for ways, a reply has the order as drawn first, and says which way was not found."""
    made = _reply(client, order=EXAMPLE_ORDER, ways=True)
    said = " ".join(made["text"].split())
    assert "AS DRAWN" in said
    titles = [line for line in made["text"].split("\n") if line.isupper() and line != "AS DRAWN"]
    for found in ("lighter", "cheaper"):
        told = [title for title in titles if found.upper() in title]
        assert len(told) + (f"We looked for a {found} way" in said) == 1
    quote = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    assert f"£{Decimal(quote['price']['total']):,.2f}" in said
    links = _links(made["text"])
    assert len(links) == len(set(links)) == 1 + len(titles)
    totals = [
        client.get(f"/v1/quotes/{link.partition('#quote=')[2]}").get_json()["price"]["total"]
        for link in links
    ]
    assert all(f"£{Decimal(total):,.2f}" in said for total in totals)
    assert titles == [] or min(map(float, totals)) < float(quote["price"]["total"])
    assert mail_rules.faults(made["html"]) == []


# --- what is refused, and what is made safe -------------------------------------------------


def test_only_the_maker_writes_replies(client: "FlaskClient") -> None:
    """Without the maker's key there is no reply."""
    for headers in ({}, {"Authorization": "Bearer x"}, {"Authorization": f"Basic {MAKER_KEY}"}):
        answer = client.post("/v1/replies", json={"order": EXAMPLE_ORDER}, headers=headers)
        assert answer.status_code == 401


@pytest.mark.parametrize(
    ("asked", "pointer"),
    [
        ({}, ""),
        ([], ""),
        ({"token": "x", "order": EXAMPLE_ORDER}, ""),
        ({"token": "x"}, "/token"),
        ({"order": None}, "/order"),
        ({"order": {"slabs": []}}, "/order/slabs"),
        ({"order": EXAMPLE_ORDER, "tone": "shouting"}, "/tone"),
        ({"order": EXAMPLE_ORDER, "ways": "yes"}, "/ways"),
        ({"order": EXAMPLE_ORDER, "bcc": "a@b.example"}, "/bcc"),
        ({"order": EXAMPLE_ORDER, "customer": "A" * 121}, "/customer"),
        ({"order": EXAMPLE_ORDER, "customer": "A\r\nBcc: spy@evil.example"}, "/customer"),
        ({"order": EXAMPLE_ORDER, "customer": "A\u202eelido"}, "/customer"),
        ({"order": EXAMPLE_ORDER, "customer": "A\x00"}, "/customer"),
    ],
)
def test_a_reply_request_that_is_not_understood_names_the_place(
    client: "FlaskClient", asked: JSON, pointer: str
) -> None:
    """A wrong request is a plain 400 with its pointer: line breaks and direction marks too."""
    answer = client.post("/v1/replies", json=asked, headers=MAKER)
    assert answer.status_code == 400
    assert answer.mimetype == PROBLEM
    assert pointer in [fault["pointer"] for fault in answer.get_json()["faults"]]


MARKUP = '<script>alert(1)</script>"><img src=x onerror=y>'


def test_markup_in_names_stays_text(client: "FlaskClient") -> None:
    """A customer or a label made of markup is shown as it was typed, and runs nothing."""
    order = changed(("/slabs/0/label", MARKUP))
    made = _reply(client, order=order, customer="{{ 7 * 7 }} <b>Odile</b>")
    assert "<script" not in made["html"]
    assert "<b>Odile" not in made["html"]
    assert mail_rules.faults(made["html"]) == []
    assert "Hello {{ 7 * 7 }} <b>Odile</b>," in made["text"]
    assert MARKUP in " ".join(made["text"].split())


# --- the maker's own templates --------------------------------------------------------------


def _with_template(folder: Path, name: str, text: str) -> Path:
    (folder / "templates").mkdir(exist_ok=True)
    (folder / "templates" / name).write_text(text, encoding="utf-8")
    return reworded(folder)


def test_a_template_of_the_makers_own_is_used(tmp_path: Path) -> None:
    """A file beside the profile takes the place of ours, with everything escaped in HTML."""
    html = "<p>{{ greeting }}! {% for o in options %}{{ o.total }}{% endfor %}</p>"
    own = service(profile=_with_template(tmp_path, "reply.html", html))
    made = _reply(own, order=EXAMPLE_ORDER, customer="<Odile>")
    total = own.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()["price"]["total"]
    assert made["html"] == f"<p>Hello &lt;Odile&gt;! £{Decimal(total):,.2f}</p>"
    assert "Hello <Odile>," in made["text"]


def test_a_template_that_asks_for_what_is_not_there_is_reported(tmp_path: Path) -> None:
    """A template whose names are not known is a plain 409 that says which."""
    own = service(profile=_with_template(tmp_path, "reply.txt", "{{ totle }}"))
    answer = own.post("/v1/replies", json={"order": EXAMPLE_ORDER}, headers=MAKER)
    assert answer.status_code == 409
    assert answer.mimetype == PROBLEM
    assert "totle" in answer.get_json()["detail"]
