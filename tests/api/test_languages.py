"""An order is answered in its own language, in the header's, or in the workshop's."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from ledgerstone.api import Settings, create_app
from ledgerstone.quantities import Length
from ledgerstone.wording import Message, speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.asking import changed
from support.demonstration import EXAMPLE_ORDER

if TYPE_CHECKING:
    from flask.testing import FlaskClient

TOO_THIN = Message(
    "too-thin", slab=Message("slab-only"), thickness=Length.of_mm(20), limit=Length.of_mm(25)
)
THIN = changed(("/slabs/0/thickness", "20 mm"), ("/slabs/0/label", ""))


def _says(answer: Any) -> str:  # noqa: ANN401  a response of the client's
    found = answer.get_json()["findings"]
    return str(next(f["says"] for f in found if f["check"] == "too-thin"))


@pytest.mark.parametrize(
    ("header", "language"),
    [
        ("de", "de"),
        ("de-AT, en;q=0.5", "de"),
        ("fr, de;q=0.7, en;q=0.3", "de"),
        ("en-GB, de;q=0.9", "en"),
        ("fr", "en"),
        ("de;q=0", "en"),
        ("*", "en"),
    ],
)
def test_the_header_decides_where_the_order_says_nothing(
    client: "FlaskClient", header: str, language: str
) -> None:
    """The most wanted language that is spoken here is used, and the answer says it varies."""
    answer = client.post("/v1/quotes", json=THIN, headers={"Accept-Language": header})
    assert _says(answer) == speech_in(language).say(TOO_THIN)
    assert answer.get_json()["order"]["language"] == language
    assert "Accept-Language" in answer.headers["Vary"]


@pytest.mark.parametrize(("asked", "used"), [("de", "de"), ("en", "en"), ("tlh", "en")])
def test_the_order_s_own_language_comes_first(client: "FlaskClient", asked: str, used: str) -> None:
    """The order's language is used whatever the header says; an unknown one is the workshop's."""
    order = {**THIN, "language": asked}
    answer = client.post("/v1/quotes", json=order, headers={"Accept-Language": "de, en;q=0.1"})
    assert _says(answer) == speech_in(used).say(TOO_THIN)
    assert "Accept-Language" not in answer.headers["Vary"]


def test_a_language_is_a_text(client: "FlaskClient") -> None:
    """A language that is no text is not understood, at its place."""
    answer = client.post("/v1/quotes", json={**THIN, "language": 3})
    assert answer.status_code == 400
    assert [fault["pointer"] for fault in answer.get_json()["faults"]] == ["/language"]


def test_a_link_reads_the_same_for_everyone(client: "FlaskClient") -> None:
    """A quote's link carries its language, whatever the one who opens it reads."""
    order = {**EXAMPLE_ORDER, "needed_by": "2027-12-21"}
    made = client.post("/v1/quotes", json=order, headers={"Accept-Language": "de"}).get_json()
    opened = client.get(f"/v1/quotes/{made['token']}", headers={"Accept-Language": "en"}).get_json()
    assert opened["order"]["language"] == "de"
    (told,) = (f["says"] for f in opened["today"]["body"]["findings"] if f["check"] == "in-time")
    arrives = date.fromisoformat(opened["today"]["body"]["lead_time"]["arrives"]["latest"])
    in_time = Message("needed-by", way="pallet", needed_by=date(2027, 12, 21), arrives=arrives)
    assert told == speech_in("de").say(in_time)


def test_a_change_of_language_is_no_change_of_the_order(client: "FlaskClient") -> None:
    """The same order in another language keeps its reference and gets no revision letter."""
    made = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    again = client.post(
        "/v1/quotes", json={**EXAMPLE_ORDER, "since": made["token"], "language": "de"}
    ).get_json()
    assert again["reference"] == made["reference"]
    assert again["changes"].get("revision", "") == ""
    assert again["changes"]["says"] == []


NO_UNIT = Message(
    "field-fault",
    field=Message("field", field="slab-thickness"),
    fault=Message("length-without-unit", typed="40", number="40"),
)
UNREAD = changed(("/slabs/0/thickness", "40"), ("/slabs/0/outline/length", "12 parsecs"))


@pytest.mark.parametrize(
    ("header", "member", "language"),
    [("en", {}, "en"), ("de", {}, "de"), ("en", {"language": "de"}, "de")],
)
def test_what_was_not_understood_is_reported_in_the_order_s_language(
    client: "FlaskClient", header: str, member: dict[str, str], language: str
) -> None:
    """Each fault of an order is reported in the language in which the order would be answered."""
    order = {**UNREAD, **member}
    answer = client.post("/v1/quotes", json=order, headers={"Accept-Language": header})
    problem = answer.get_json()
    say = speech_in(language).say
    assert problem["detail"] == say(Message("things-not-understood", count=2))
    faults = {fault["pointer"]: fault["says"] for fault in problem["faults"]}
    assert faults["/slabs/0/thickness"] == say(NO_UNIT)
    assert ("Accept-Language" in answer.headers["Vary"]) == (not member)


def test_every_other_refusal_is_reported_in_the_header_s_language(client: "FlaskClient") -> None:
    """An address where nothing is, a body that is no JSON and a kind's own page are reported so."""
    german = {"Accept-Language": "de"}
    nothing = client.get("/nowhere", headers=german)
    assert nothing.get_json()["title"] == "Hier ist nichts"
    assert "Accept-Language" in nothing.headers["Vary"]
    broken = client.post(
        "/v1/quotes", data=b"{", headers={**german, "Content-Type": "application/json"}
    )
    no_name = Message("json-broken", why="key", line=1, column=2)
    assert broken.get_json()["detail"] == speech_in("de").say(no_name)
    assert client.get("/problems/busy", headers=german).text.startswith("503 Ausgelastet\n")


def test_what_is_offered_is_reported_in_the_header_s_language(client: "FlaskClient") -> None:
    """The choices' own sentences follow the header; names and words of the profile stay."""
    german = client.get("/v1/choices", headers={"Accept-Language": "de"})
    english = client.get("/v1/choices", headers={"Accept-Language": "en"})
    assert german.get_json()["sample_tile"]["says"].startswith("Zuerst eine Musterplatte: 54,00 £")
    assert english.get_json()["sample_tile"]["says"].startswith("A sample tile first: £54.00")
    for name in ("finishes", "thicknesses_mm"):
        assert german.get_json()[name] == english.get_json()[name]
    # The profile's own words come first; whether it is declared for food is ours to say.
    sealers = zip(*(answer.get_json()["sealers"] for answer in (german, english)), strict=True)
    for sealer, (one, other) in zip(load_profile(DEMONSTRATION).sealers, sealers, strict=True):
        assert one["name"] == other["name"] == sealer.name
        assert one["says"].startswith(sealer.says)
        assert other["says"].startswith(sealer.says)
        assert one["says"] != other["says"]
    assert "Accept-Language" in german.headers["Vary"]


def test_an_old_link_is_reported_in_its_own_language(client: "FlaskClient") -> None:
    """A quote opened again reads in the language in which it was offered, whoever opens it."""
    order = {**EXAMPLE_ORDER, "language": "de"}
    token = client.post("/v1/quotes", json=order).get_json()["token"]
    opened = client.get(f"/v1/quotes/{token}", headers={"Accept-Language": "en"}).get_json()
    assert opened["says"].startswith("Angeboten am ")
    assert "gelten bis" in opened["says"]


def test_a_maker_s_own_sentence_is_stated(tmp_path: Path) -> None:
    """A file of sentences beside the profile stands in the place of ours, in its language alone."""
    profile = tmp_path / "workshop.toml"
    profile.write_bytes(DEMONSTRATION.read_bytes())
    own = 'too-thin = { NAME($slab, start: "yes") } ist uns mit { $thickness } zu dünn.\n'
    (tmp_path / "sentences.de.ftl").write_text(own, encoding="utf-8")
    app = create_app(Settings(workshop_path=profile, signing_keys=("k" * 32,)))
    client = app.test_client()
    said = [
        _says(client.post("/v1/quotes", json={**THIN, "language": one})) for one in ("de", "en")
    ]
    assert said == ["Die Platte ist uns mit 20 mm zu dünn.", speech_in("en").say(TOO_THIN)]


def test_drawings_are_written_in_the_order_s_language(client: "FlaskClient") -> None:
    """The plan's labels, and what is stated of it to who cannot see it, follow the order."""
    order = {**EXAMPLE_ORDER, "language": "de"}
    drawings = client.post("/v1/quotes", json=order).get_json()["drawings"]
    size = {"length": Length.of_mm(1450), "width": Length.of_mm(560)}
    bench = Message("plan-rectangle", **size, thickness=Length.of_mm(40))
    assert drawings["says"][0].startswith(speech_in("de").say(bench))
    plan = client.get(drawings["plan"].removeprefix("http://localhost"), headers={"Accept": "*/*"})
    assert plan.status_code == 200
    for word in ("VORN", "Durchmesser 360 mm", "Mitte 980 mm von links", "40 mm dick"):
        assert word in plan.text
    for word in ("FRONT", "across", "from left", "thick"):
        assert word not in plan.text


ALONE = ('also_in = ["de"]', "")


@pytest.mark.parametrize(
    ("changes", "offered"),
    [
        ((), ["en", "de"]),
        ((('also_in = ["de"]', ""),), ["en"]),
        (
            (('also_in = ["de"]', ""), ('country = "GB"', 'country = "CH"'), ('"ENG"', '"ZH"')),
            ["en", "de"],
        ),
    ],
)
def test_a_page_offers_its_country_s_languages_and_those_of_the_profile(
    changes: tuple[tuple[str, str], ...], offered: list[str], tmp_path: Path
) -> None:
    """The workshop's own comes first, then what is spoken there, then what it names besides."""
    text = DEMONSTRATION.read_text(encoding="utf-8")
    for old, new in changes:
        assert old in text
        text = text.replace(old, new, 1)
    file = tmp_path / "workshop.toml"
    file.write_text(text, encoding="utf-8")
    choices = create_app(Settings(workshop_path=file)).test_client().get("/v1/choices")
    assert choices.get_json()["languages"] == offered
