"""The first quote in three countries: what it asks, in which order, and what makers type."""

import re
from pathlib import Path
from typing import Final

import pytest

from ledgerstone.workshop.form.first_quote import STEPS
from support.documents import Json
from support.profile_form import ASKED, NewForm, described, form, setting, started, tried

COUNTRIES: Final = ("GB", "DE", "US")
MOST_WORDS: Final = 11  # of a label


@pytest.mark.parametrize("country", COUNTRIES)
def test_every_amount_of_money_is_asked_or_stands_open(new_form: NewForm, country: str) -> None:
    """No tick confirms a price that is not a field; a job comes last, and what lifts is asked."""
    told = new_form(country).get(ASKED).get_json()
    steps = {step["name"]: step for step in told["steps"]}
    assert tuple(steps) == STEPS
    assert STEPS[-1] == "job"
    in_sight = {at for step in told["steps"] for at in (*step["asks"], *step["open"])}
    values = described(told)
    amounts = {
        at
        for at, one in values.items()
        if one["kind"] == "money" and one["unit"] != "%" and one.get("standing") == "invented"
    }
    assert len(amounts) > 15
    assert amounts - in_sight == set()
    assert "/lifting/most_people" in steps["lifting"]["asks"]
    assert "/offer/deposit_percent" in steps["money"]["stands"]
    assert "/handling/ways/0/most_kg" in steps["lifting"]["asks"]
    for step in steps.values():
        assert len(step["labels"]) == len(step["asks"])
        assert len(step["stands_say"]) == len(step["stands"])
        assert [words for words in step["labels"] if len(words.split()) > MOST_WORDS] == []
        assert {values[at].get("standing") for at in step["stands"]} <= {"usual", None}


@pytest.mark.parametrize("country", COUNTRIES)
def test_what_was_ticked_stays_to_be_read(new_form: NewForm, country: str) -> None:
    """A step's list is the same after its tick, and none of it is invented any more."""
    client = new_form(country)
    before = {step["name"]: step for step in client.get(ASKED).get_json()["steps"]}
    rest = before["looks"]["rest"]
    told = tried(client, {"op": "confirm", "pointer": "", "values": rest})
    after = {step["name"]: step for step in told["steps"]}
    assert after["looks"]["shown"] == before["looks"]["shown"]
    assert after["looks"]["rest"] == []


def test_given_hours_are_marked_stale_after_a_change(new_form: NewForm) -> None:
    """What is fitted last takes what was told; a finish that is changed after it shows."""
    client = new_form("US")
    fit: Json = {"op": "fit-hours", "pointer": "/hours", "values": ["", "about 14 h", ""]}
    slower = setting("/finishes/2/hours_per_m2", "0.9")
    for changes, stale in (([slower, fit], False), ([fit, slower], True)):
        top = tried(client, *changes)["jobs"][1]
        assert top["told_hours"] == 14
        assert top["fitted_hours"] == pytest.approx(14, rel=0.02)
        assert (abs(top["hands_hours"] - top["fitted_hours"]) > 0.5) == stale
    unread = tried(client, {**fit, "values": ["", "a morning", ""]})["jobs"][1]
    assert "told_hours" not in unread
    assert "polished" in unread["name"]


def test_what_is_typed_is_told_where_it_is_more_than_was_given(new_form: NewForm) -> None:
    """A sentence of its own, with what typed prices come to; by far needs none of them."""
    client = new_form("US")
    board = setting("/boards/price_per_sheet", "900")
    fit: Json = {"op": "fit-money", "pointer": "/rates", "values": ["150", ""]}
    above = tried(client, board, fit)["jobs"][1]
    by_far = tried(client, {**fit, "values": ["9000000", ""]})["jobs"][1]
    assert re.search(r"\$\d", above["not_met"])
    assert by_far["not_met"] != above["not_met"]
    assert "not_met" not in tried(client, fit)["jobs"][1]


def test_every_way_that_follows_is_told(new_form: NewForm) -> None:
    """By its name, with its weight."""
    told = tried(new_form("GB"), setting("/handling/ways/0/most_kg", "90"), described=True)
    values = described(told)
    ways = {at for at in values if re.fullmatch(r"/handling/ways/[1-9]/most_kg", at)}
    (says,) = [one["says"] for one in told["taken"] if one["pointer"] == "/handling/ways/0/most_kg"]
    names = {at: values[at.replace("most_kg", "name")]["value"] for at in ways}
    assert len({values[at]["value"] for at in ways}) > 1
    assert [at for at in ways if f"“{names[at]}”: {values[at]['value']} kg" not in says] == []


@pytest.mark.parametrize("country", COUNTRIES)
def test_a_step_with_a_fault_is_not_done(new_form: NewForm, country: str) -> None:
    """Whatever was confirmed of it."""
    client = new_form(country)
    names = ("name", "town", "email", "telephone")
    typed = [setting(f"/workshop/{name}", f"anna@{name}.test") for name in names]
    typed += [setting("/workshop/region", {"GB": "SCT", "DE": "NW", "US": "OR"}[country])]
    done = {step["name"]: step["done"] for step in tried(client, *typed)["steps"]}
    assert done["you"]
    wrong = setting("/workshop/email", "none")
    assert not next(step["done"] for step in tried(client, *typed, wrong)["steps"])


def test_who_charges_no_tax_is_asked_no_rate(new_form: NewForm) -> None:
    """It is no question, and keeps nothing a trial."""
    client = new_form("GB")
    none = setting("/tax/registered", "false")
    told = tried(client, none, described=True)
    money = next(step for step in told["steps"] if step["name"] == "money")
    assert "/tax/percent" not in [*money["asks"], *money["rest"]]
    assert described(told)["/tax/percent"]["standing"] == "usual"


# A country, a value, what is typed, and what is as good; None where it is no number.
ENTRIES: Final[list[tuple[str, str, str, str | None]]] = [
    ("US", "/table/length_mm", "10'6", "10'6\""),
    ("US", "/table/length_mm", "ten feet", "10 feet"),
    ("US", "/rates/hour", "$40-45", "42.5"),
    ("US", "/rates/hour", "about 62 dollars", "62"),
    ("US", "/calendar/hands", "two", "2"),
    ("US", "/calendar/hands", "two of us", "2"),
    ("US", "/calendar/orders_ahead_days", "7 days", "7"),
    ("US", "/calendar/orders_ahead_days", "about 2 weeks", "10"),
    ("US", "/rates/margin_percent", "35 %", "35"),
    ("US", "/rates/margin_percent", "1.35 %", "1.35"),
    ("US", "/lifting/van/most_kg", "about 1,200 pounds", "1200 pounds"),
    ("US", "/hours/per_piece/cover", "1/2", "0.5"),
    ("US", "/hours/per_piece/cover", "1 1/2 h", "1 1/2 h"),
    ("DE", "/hours/per_piece/cover", "1/2 Stunde", "1/2 Stunde"),
    ("US", "/steel/bar_mm", "#3", "3/8"),
    ("US", "/steel/bar_mm", "#4", "1/2"),
    ("US", "/steel/mesh_wire_mm", "10 gauge", "0.135"),
    ("US", "/mixer/working_l", "2 cubic feet", "2"),
    ("US", "/workshop/region", "Oregon", "OR"),
    ("DE", "/workshop/region", "Bayern", "BY"),
    ("GB", "/workshop/region", "scotland", "SCT"),
    ("US", "/steel/mesh_pitch_mm", "6 x 6 in", "6"),
    ("DE", "/steel/bar_mm", "Ø 8", "8"),
    ("DE", "/rates/hour", "40 bis 45 €", "42,5"),
    ("DE", "/calendar/orders_ahead_days", "etwa zwei Wochen", "10"),
    ("DE", "/calendar/hands", "zu zweit", None),
    ("DE", "/calendar/hands", "zwei Leute", "2"),
    ("DE", "/table/length_mm", "rund 2,8 m", "2,8 m"),
]


def language_of(country: str) -> str:
    """The language of a country's form."""
    return "de" if country == "DE" else "en"


@pytest.fixture(scope="module")
def kept(new_form: NewForm) -> dict[tuple[str, str, str], tuple[str, str]]:
    """What the file has of each entry that is read, as it is typed and plainly.

    A form is sent with many of them, each of another value.
    """
    found = {}
    for country in COUNTRIES:
        client = new_form(country, language_of(country))
        left = [one for one in ENTRIES if one[0] == country and one[3] is not None]
        while left:
            sent = list({one[1]: one for one in left}.values())
            left = [one for one in left if one not in sent]
            typed_so = [setting(pointer, typed) for _, pointer, typed, _ in sent]
            plainly = [setting(pointer, str(stands)) for _, pointer, _, stands in sent]
            told = [tried(client, *changes, described=True) for changes in (typed_so, plainly)]
            assert told[0]["faults"] == []
            values = [described(one) for one in told]
            for _, pointer, typed, _ in sent:
                first, second = (one[pointer]["value"] for one in values)
                found[country, pointer, typed] = (first, second)
    return found


@pytest.mark.parametrize(
    ("country", "pointer", "typed"), [one[:3] for one in ENTRIES if one[3] is not None]
)
def test_an_entry_is_read_as_its_maker_types_it(
    kept: dict[tuple[str, str, str], tuple[str, str]], country: str, pointer: str, typed: str
) -> None:
    """Typed so or plainly, the file has the same."""
    typed_so, plainly = kept[country, pointer, typed]
    assert typed_so == plainly


@pytest.mark.parametrize(
    ("country", "pointer", "typed"), [one[:3] for one in ENTRIES if one[3] is None]
)
def test_what_is_no_number_is_told_beside_its_field(
    new_form: NewForm, country: str, pointer: str, typed: str
) -> None:
    """The fault is that value's, and no other's."""
    told = tried(new_form(country, language_of(country)), setting(pointer, typed))
    assert [fault["pointer"] for fault in told["faults"]] == [pointer]


@pytest.mark.parametrize(("country", "typed"), [("US", "none"), ("GB", "-"), ("DE", "keine")])
def test_that_there_is_none_can_be_said(new_form: NewForm, country: str, typed: str) -> None:
    """Where a value may be left out it is; a name that says so stays a name."""
    client = new_form(country)
    told = tried(client, setting("/areas/0/pallet", typed), described=True)
    assert told["faults"] == []
    assert "value" not in described(told)["/areas/0/pallet"]
    assert tried(client, setting("/rates/hour", typed))["faults"] != []


def test_one_fault_leaves_the_other_prices_alive(new_form: NewForm) -> None:
    """What can't be read is left out of them; what is typed beside it counts."""
    client = new_form("US")
    hour = setting("/rates/hour", "65")
    by_bag: Json = {"op": "mix-from-bags", "pointer": "/recipe/bag"}
    sound = tried(client, hour)["jobs"]
    in_bags = [by_bag, setting("/mixer/working_l", "2 bags")]
    for wrong in ([setting("/table/length_mm", "a lot")], [by_bag], in_bags):
        told = tried(client, *wrong, hour)
        assert told["faults"] != []
        assert told["jobs"] == sound


def test_a_markup_that_may_be_a_factor_is_asked_about(new_form: NewForm) -> None:
    """1.35 adds next to nothing: 35 % is proposed, and what is meant so has its sign."""
    client = new_form("US")
    (fault,) = tried(client, setting("/rates/margin_percent", "1.35"))["faults"]
    assert fault["pointer"] == "/rates/margin_percent"
    assert "35%" in fault["says"]
    assert "1.35%" in fault["says"]


@pytest.mark.parametrize(
    ("country", "typed"),
    [("US", ["55 to 70"]), ("US", ["winter 55", "summer 70"]), ("US", ["55", "70"]),
     ("DE", ["13 bis 21 °C"]), ("DE", ["im Winter 13", "im Sommer 21"])],
)  # fmt: skip
def test_winter_and_summer_are_a_year(new_form: NewForm, country: str, typed: list[str]) -> None:
    """Twelve months, the coldest in January and the warmest in July."""
    client = new_form(country, "de" if country == "DE" else "en")
    change: Json = {"op": "set", "pointer": "/handling/workshop_c", "values": typed}
    told = tried(client, change, described=True)
    assert told["faults"] == []
    months = [float(month) for month in described(told)["/handling/workshop_c"]["values"]]
    assert len(months) == 12
    low, high = (55, 70) if country == "US" else (13, 21)
    assert (months[0], months[6]) == (low, high)
    assert months[1:6] == sorted(months[1:6])


@pytest.mark.parametrize(
    ("typed", "stands"),
    [
        (["973xx"], ["973"]),
        (["97301 to 97399"], ["97301-97399"]),
        (["973 and 974"], ["973", "974"]),
    ],
)
def test_postcodes_are_read_as_makers_type_them(
    new_form: NewForm, typed: list[str], stands: list[str]
) -> None:
    """The beginnings that an area has."""
    client = new_form("US")
    change: Json = {"op": "set", "pointer": "/areas/0/postcodes", "values": typed}
    told = tried(client, change, described=True)
    assert told["faults"] == []
    assert described(told)["/areas/0/postcodes"]["values"] == stands


@pytest.mark.parametrize("country", COUNTRIES)
def test_a_letter_says_when_the_rest_is_due_as_the_form_has_it(
    tmp_path: Path, country: str
) -> None:
    """Once, in the maker's own words, and nothing in the terms says otherwise."""
    client = form(started(tmp_path, country), is_writable=True)
    due = "bei der Montage" if country == "DE" else "on the day it is put in"
    told = tried(client, setting("/offer/balance_due", due), save=True)
    assert told["saved"]
    order = {"slabs": [{"outline": {"kind": "rectangle", "length": "900 mm", "width": "400 mm"},
                        "rests": {"kind": "full"}}], "delivery": {"kind": "collect"}}  # fmt: skip
    again = form(tmp_path / f"{country}.toml", language="de" if country == "DE" else "en")
    reply = again.post("/v1/replies", json={"order": order, "tone": "full"}).get_json()
    text = " ".join(reply["text"].split())
    assert text.count(due) == 1
    assert not re.search(r"leaves the (?:work)?shop|verlässt", text)
