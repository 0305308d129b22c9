"""What is amiss on the profile's form, in three countries: in the form's own units and words."""

import re
from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path
from typing import Any, Final

import pytest

from ledgerstone.errors import ProfileFault
from ledgerstone.json_types import JSON, KeyPath
from ledgerstone.wording import speech_in
from ledgerstone.wording.form_words import fault_on_form
from ledgerstone.workshop.consistency import inconsistencies
from ledgerstone.workshop.countries.postcodes import beginnings_like
from ledgerstone.workshop.entry.local_units import working_place
from ledgerstone.workshop.form import bags, placed_text
from ledgerstone.workshop.reading.lines import KeyLines
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.schemas import loaded
from ledgerstone.workshop.standing import without_standing
from support.documents import Json
from support.profile_form import ASKED, NewForm, started, tried
from workshops.strange_words import BRITISH

COUNTRIES: Final = ("US", "DE", "GB")
LISTS: Final = frozenset({"lines", "words", "numbers", "wholes", "choices"})
# Out of bounds, out of range, in a unit of another country, of a wrong kind, and nonsense. A
# country that none has is apart: what is unknown of it has no units of its own.
AMISS: Final = ("-40.123", "999999999", "moonlight", "1/3 in", "-3.7 kg", "40 mm", "3 furlongs", "")
# What was typed, and what a key is, with the standard that it is of.
QUOTED: Final = (
    r"“[^”]*”|„[^“]*“|\bthe number [-\d.,]+|\bdie Zahl [-\d.,]+|(?:EN 1992-1-1|ASTM)\b.*"
)
UNIT: Final = r"(?<=[\d.]) ?(?:mm|m|cm|kg|l|N|MPa|°C|in|ft|lb|gal|psi|ksi|°F|h|min)\b(?:/\w+[²³]?)?"
METRIC: Final = r"\d ?(?:mm|cm|m|kg|l|MPa|N|°C)\b|(?:kg|N|l)/m[²³]?|/(?:m|m²|m³|kg|l)\b|\bin mm\b"


def values_of(told: Json) -> list[Json]:
    """Each value that stands in the file, but for the country."""
    values: list[Json] = told["values"]
    return [
        each for each in values if "standing" in each and each["pointer"] != "/workshop/country"
    ]


@pytest.fixture(scope="module", params=COUNTRIES)
def found(request: pytest.FixtureRequest, new_form: NewForm) -> Json:
    """Every fault of every field, by what was entered there."""
    country: str = request.param
    client = new_form(country, "de" if country == "DE" else "en")
    values = values_of(client.get(ASKED).get_json())
    faults = {}
    for entry in AMISS:
        text = entry.replace(".", ",") if country == "DE" else entry
        changes = [
            {"op": "set", "pointer": each["pointer"], **_entered(each, text)} for each in values
        ]
        faults[entry] = tried(client, *changes)["faults"]
    return {"country": country, "values": {v["pointer"]: v for v in values}, "faults": faults}


def _entered(value: Json, text: str) -> Json:
    return {"values": [text]} if value["kind"] in LISTS else {"value": text}


def test_a_form_full_of_changes_is_read_a_few_times(
    new_form: NewForm, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Not once for each of its values: the places in a file of 600 take some 15 ms to find."""
    read = []

    class Counted(KeyLines):
        def __init__(self, text: str) -> None:
            read.append(text)
            super().__init__(text)

    client = new_form("GB")
    values = values_of(client.get(ASKED).get_json())
    monkeypatch.setattr(placed_text, "KeyLines", Counted)
    entered = [{"op": "set", "pointer": each["pointer"], **_entered(each, "12")} for each in values]
    tried(client, *entered)
    assert len(entered) > 300
    assert 0 < len(read) < 10


def said(found: Json) -> list[tuple[str, str, str]]:
    """The pointer, entry and sentence of each fault, without what it quotes of the entry."""
    return [
        (fault["pointer"], entry, re.sub(QUOTED, "", fault["says"]))
        for entry, faults in found["faults"].items()
        for fault in faults
    ]


def test_nearly_every_field_has_something_that_does_not_fit(found: Json) -> None:
    """Each value but a text that may be anything is told by some of the entries that it is none."""
    at = {re.sub(r"/\d+$", "", pointer) for pointer, _, _ in said(found)}
    takes_all = [
        pointer
        for pointer, value in found["values"].items()
        if re.sub(r"/\d+$", "", pointer) not in at and value["kind"] not in ("text", "lines")
    ]
    assert takes_all == []


def test_a_fault_says_no_more_digits_than_people_type(found: Json) -> None:
    """A number is exact where it was typed so, and has four figures after a unit was changed."""
    numbers = [(text, re.findall(r"\d[\d.,]*", text)) for _, _, text in said(found)]
    long = [
        text
        for text, found_here in numbers
        if any(len(number.replace(",", ".").partition(".")[2].rstrip(".")) > 4
               for number in found_here)
    ]  # fmt: skip
    assert long == []


def test_a_fault_has_the_unit_of_its_field(found: Json) -> None:
    """A number with a unit stands in the one that is beside the field, or in an example."""
    wrong = []
    for pointer, entry, text in said(found):
        unit = found["values"].get(pointer, {}).get("unit")
        bare = re.sub(r"(?:with its unit, like|mit Einheit, etwa) .*", "", text)
        units = {unit_said.strip() for unit_said in re.findall(UNIT, bare)}
        if unit is not None and entry and units - {unit.lstrip("/"), unit}:
            wrong.append((pointer, unit, text))
    assert wrong == []


def test_an_american_fault_is_american(found: Json) -> None:
    """No British word, metric unit, or postcode's letters; a German one has no English number."""
    strange = {
        "US": rf"{BRITISH}|{METRIC}|\bHR\b|\bLD1\b|\bGBP\b|Europe/",
        "DE": r"\d\.\d|\b(?:the|and|like|needs|here)\b|\bHR\b|\bLD1\b|\bGBP\b|London",
        "GB": r"\d ?(?:lb|gal|psi|°F|ft)\b|\bZIP\b",
    }[found["country"]]
    assert [text for _, _, text in said(found) if re.search(strange, text)] == []


@pytest.mark.parametrize("country", COUNTRIES)
def test_a_wrong_postcode_is_shown_how_its_country_writes_one(
    country: str, new_form: NewForm
) -> None:
    """An area's beginning is told like the country's own."""
    client = new_form(country)
    wrong = {"op": "set", "pointer": "/areas/0/postcodes", "values": ["moon 1"]}
    (fault,) = tried(client, wrong)["faults"]
    assert fault["pointer"] == "/areas/0/postcodes/0"
    assert all(begins in fault["says"] for begins in beginnings_like(country))


def settings_of(raw: JSON, path: KeyPath = ()) -> Iterator[tuple[KeyPath, JSON]]:
    """Each number of a profile's tables, a text with its unit among them."""
    if isinstance(raw, dict | list):
        for key, inner in raw.items() if isinstance(raw, dict) else enumerate(raw):
            yield from settings_of(inner, (*path, key))
    elif re.match(r"[\d.]+(?: [a-z°]|$)", str(raw)):
        yield path, raw


def scaled(value: object, times: Decimal) -> object:
    """A number, or the number of a measure, so many times as large."""
    if isinstance(value, int | Decimal):
        return Decimal(value) * times
    number, _, unit = str(value).partition(" ")
    return f"{Decimal(number) * times:f} {unit}"


CEMENT: Final = r"/palette/\d+/cement$"
# Tables whose numbers are compared with one another.
AGREEING: Final = frozenset(
    {"table", "shaping", "recipe", "mixer", "boards", "tent", "bench", "handling", "days"}
)


def with_value(raw: JSON, path: KeyPath, value: object) -> JSON:
    """A document with one value otherwise."""
    if not path:
        return value
    copy: Any = dict(raw) if isinstance(raw, dict) else list(raw)
    copy[path[0]] = with_value(raw[path[0]], path[1:], value)
    return copy


@pytest.mark.parametrize("country", ["US"])
def test_the_fault_of_values_that_disagree_is_in_the_form_s_units(
    country: str, tmp_path: Path
) -> None:
    """Each value ten times as large, and a tenth: what is amiss between keys is American too."""
    raw = without_standing(tables(started(tmp_path, country).read_text(encoding="utf-8")))
    speech = speech_in("en", place=working_place(raw))
    faults = {
        (path, message)
        for at, value in settings_of(raw)
        if at[0] in AGREEING
        for times in (Decimal(10), Decimal("0.1"))
        for path, message in inconsistencies(
            loaded(with_value(raw, at, scaled(value, times))).sections
        )
    }
    assert len({message.name for _, message in faults}) >= 8
    says = [fault_on_form(ProfileFault(0, "", why, path), speech) for path, why in faults]
    assert [text for text in says if re.search(rf"{BRITISH}|{METRIC}|\d\.\d{{5}}", text)] == []


def test_an_hour_s_price_is_read_as_people_write_it(new_form: NewForm) -> None:
    """With a sign or a currency's letters, and by the hour: the number is what stands then."""
    client = new_form("US")
    entries = {
        "$56/hr": "56", "$57 / hour": "57", "58 an hour": "58", "59 per hour": "59",
        "$60": "60", "61 USD/hr.": "61", "$1,056.50 an hour": "1056.50",
    }  # fmt: skip
    for entry, written in entries.items():
        told = tried(client, {"op": "set", "pointer": "/rates/hour", "value": entry})
        assert told["faults"] == []
        assert f"\nhour = {written}\n" in re.sub(r" +#.*", "", told["text"])


def test_a_price_by_the_bag_is_one(new_form: NewForm) -> None:
    """What the key says already may be written behind the amount; another unit may not."""
    client = new_form("US")
    at = "/recipe/bag/price_per_bag"
    by_bag: Json = {"op": "mix-from-bags", "pointer": "/recipe/bag"}
    for entry in ("$14.75/bag", "14.75 per bag", "14.75 a bag", "$14.75 / Bags"):
        told = tried(client, by_bag, {"op": "set", "pointer": at, "value": entry})
        assert at not in {fault["pointer"] for fault in told["faults"]}
        assert "price_per_bag = 14.75" in told["text"]
    faults = tried(client, by_bag, {"op": "set", "pointer": at, "value": "14.75 per kg"})["faults"]
    assert at in {fault["pointer"] for fault in faults}


def test_a_number_that_was_typed_is_said_as_it_was_typed(new_form: NewForm) -> None:
    """300 psi and -5 lb are these, though neither is so many of the file's own units."""
    client = new_form("US")
    typed = {
        "/recipe/fck_mpa": "300 psi",
        "/lifting/van/most_kg": "-5 lb",
        "/table/width_mm": "-7 in",
    }
    changes: list[Json] = [
        {"op": "set", "pointer": at, "value": text.split()[0]} for at, text in typed.items()
    ]
    says = {fault["pointer"]: fault["says"] for fault in tried(client, *changes)["faults"]}
    assert [at for at, text in typed.items() if f"This is {text};" not in says[at]] == []


@pytest.mark.parametrize("country", COUNTRIES)
def test_one_tick_puts_a_bag_in_the_place_of_parts(country: str, new_form: NewForm) -> None:
    """The first quote then asks for the bag alone, and with its price nothing is amiss."""
    client = new_form(country)
    by_bag: Json = {"op": "mix-from-bags", "pointer": "/recipe/bag"}
    told = tried(client, by_bag, described=True)
    asks = next(step["asks"] for step in told["steps"] if step["name"] == "concrete")
    assert [at for at in asks if "/bag/" in at] == [
        f"/recipe/bag/{key}" for key in bags.ASKED_OF_A_BAG
    ]
    assert not any("constituents" in at for at in asks)
    assert [fault["pointer"] for fault in told["faults"]] == ["/recipe/bag/price_per_bag"]
    assert re.search(r"(?m)^untested_percent = 75\b", told["text"])  # no strip of it was broken
    shades = {one["value"] for one in told["values"] if re.search(CEMENT, one["pointer"])}
    assert shades == {"grey"}
    entries = {
        "/recipe/bag/name": "Counter mix", "/recipe/bag/bag_kg": "80 lb bag",
        "/recipe/bag/water_l_per_bag": "2.84 l", "/recipe/bag/yield_l": "0.6 ft³",
        "/recipe/bag/price_per_bag": "14.75", "/slurry/cement_price_per_kg": "0.42 per kg",
    }  # fmt: skip
    filled = [{"op": "set", "pointer": at, "value": text} for at, text in entries.items()]
    done = tried(client, by_bag, *filled)
    assert done["faults"] == []
    assert all(job["total"] for job in done["jobs"])
    assert tried(client, by_bag, *filled, by_bag)["text"] == done["text"]
