"""Every country that is listed: a new profile checks, and its letter has no other country's rules.

The currencies are Unicode's (CLDR), as Babel has them.
"""

import io
import re
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Any, Final

import pytest
from babel.numbers import get_territory_currencies

from ledgerstone.api import Settings, create_app
from ledgerstone.cli.profiles import run
from ledgerstone.workshop import Workshop, load_profile
from ledgerstone.workshop.countries import COUNTRIES, TAX_PERCENT, TAXED_BY_PART
from ledgerstone.workshop.countries.public_holidays import holiday_names
from ledgerstone.workshop.reading.loader import starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.standing import standings
from ledgerstone.workshop.standing.usual_values import TAX_RATE
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from workshops.conftest import KEY

# What is one country's own: its law, its trades, its tax, its money, its postcodes.
BRITAIN: Final = r"Gas Safe|NICEIC|£|\bHR\d?\b|\bLD1\b|\bHSE\b|Part P|Scotland|England|\bUK\b"
GERMANY: Final = r"§ 312|§ 19 UStG|§ 13b|\bBGB\b|MwSt\.|\bDIN \d|\bBayern\b|D-\d{5}"
STATES: Final = r"sales tax|\bZIP\b|\$|\bGFCI\b|\blb\b|°F|\bpsi\b"
KERBS: Final = {"US": "curb", "CA": "curb"}


@pytest.fixture(scope="module", params=sorted(COUNTRIES))
def country(request: pytest.FixtureRequest) -> str:
    """Each country that we list."""
    found: str = request.param
    return found


@pytest.fixture(scope="module")
def begun(country: str, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A new maker's file in the country."""
    file = tmp_path_factory.mktemp("country") / "mine.toml"
    said = io.StringIO()
    assert run(["init", str(file), "--country", country], said, said, {}) == 0, said.getvalue()
    return file


@pytest.fixture(scope="module")
def workshop(begun: Path) -> Workshop:
    """What the file says."""
    return load_profile(begun)


def test_its_file_has_nothing_amiss(begun: Path) -> None:
    """`check` ends well, and says what of law and tax is to be looked at."""
    said = io.StringIO()
    assert run(["check", str(begun)], said, said, {}) == 0, said.getvalue()


def test_its_money_tax_and_days_are_its_own(workshop: Workshop, country: str) -> None:
    """The currency is Unicode's, the tax the table's, the holidays are known."""
    place = COUNTRIES[country]
    assert workshop.workshop.currency in get_territory_currencies(country)
    assert workshop.tax.name == place.tax_name
    if country in TAX_PERCENT:
        assert workshop.tax.percent == Decimal(TAX_PERCENT[country])
    assert {"Christmas Day", "New Year's Day"} <= set(holiday_names(country))
    assert all(place.postcodes is not None and area.postcodes for area in workshop.areas)


def test_nothing_of_a_new_file_is_the_maker_s_own(begun: Path) -> None:
    """Nobody has given a value yet: the country's are usual, its tax and its area to be settled."""
    raw = tables(begun.read_text(encoding="utf-8"))
    found = standings(raw, *starting_tables())
    assert [path for path, whose in found.items() if whose == "yours"] == []
    assert {found["workshop", key] for key in ("country", "timezone", "currency")} == {"usual"}
    assert found[TAX_RATE] == "invented" or raw["workshop"]["country"] in TAXED_BY_PART


def test_its_comments_show_its_own_examples(begun: Path, country: str) -> None:
    """No British clock, currency or postcode stands beside a key elsewhere, nor a German one."""
    comments = " ".join(re.findall(r"# .*", begun.read_text(encoding="utf-8")))
    strange = [] if country == "GB" else [r"\bHR\b|\bLD1\b|\bGBP\b|Europe/London|: GB\b|\bENG\b"]
    strange += [] if country == "DE" else [r"\b83000\b|Europe/Berlin|: DE\b|\bBY, NW\b"]
    assert [found for each in strange for found in re.findall(each, comments)] == []
    assert re.findall(r"<\w+>", comments) == []


def test_it_is_spelled_as_there(begun: Path, country: str) -> None:
    """No ß in Switzerland and Liechtenstein, nor German quotation marks (Duden, K 160)."""
    found = re.findall(r"\S*[ß„“]\S*", begun.read_text(encoding="utf-8"))
    assert found == [] or country in {"DE", "AT", "LU"}, found


def letter_of(file: Path, workshop: Workshop) -> str:
    """The email that a customer of a new workshop gets, in its own language."""
    settings = Settings(
        workshop_path=file,
        maker_key=MAKER_KEY,
        signing_keys=SIGNING_KEYS,
        today=lambda _: date(2026, 11, 25),
    )
    answer = (
        create_app(settings)
        .test_client()
        .post("/v1/replies", json={"order": order_of(workshop)}, headers=KEY)
    )
    assert answer.status_code == 200, answer.get_data(as_text=True)[:400]
    told = answer.get_json()
    return f"{told['subject']}\n{told['text']}"


def order_of(workshop: Workshop) -> dict[str, Any]:
    """A plain top on a base all over with a hole for a hob, sent by pallet if that is offered."""
    slab = {
        "label": "Top",
        "outline": {"kind": "rectangle", "length": "1200 mm", "width": "600 mm"},
        "thickness": workshop.shaping.thicknesses_mm[1],
        "shade": {"name": workshop.palette[0].name},
        "finish": {"surface": "honed", "sealer": workshop.sealers[0].name},
        "cutouts": [
            {
                "label": "opening", "kind": "rectangle", "length": "400 mm", "width": "300 mm",
                "corner_radius": "20 mm", "centre": {"x": "600 mm", "y": "300 mm"}, "heat": True,
            }
        ],
        "rests": {"kind": "full"},
    }  # fmt: skip
    places = COUNTRIES[workshop.workshop.country].postcodes
    assert places is not None
    delivery = {"kind": "fitted", "postcode": places.example}
    is_served = bool(workshop.areas) and workshop.areas[0].fitted is not None
    return {"slabs": [slab], "delivery": delivery if is_served else {"kind": "collect"}}


def test_its_letter_has_no_other_country_s_rules(
    begun: Path, workshop: Workshop, country: str
) -> None:
    """No British, German or American law, trade, tax or money is told elsewhere."""
    letter = letter_of(begun, workshop)
    strange = {"GB": BRITAIN, "DE": GERMANY, "US": STATES}
    if country == "CA":
        strange["US"] = r"sales tax|\bZIP\b|\bGFCI\b"  # its dollar, and pounds beside nothing
    if country in ("AU", "NZ"):
        strange["US"] = STATES.replace(r"|\$", "")
    wrong = [
        (home, found[0])
        for home, pattern in strange.items()
        if home != country
        for found in re.finditer(pattern, letter)
    ]
    assert wrong == [], letter
    taxes = {place.tax_name for place in COUNTRIES.values()} - {workshop.tax.name}
    told = [name for name in taxes if re.search(rf"(?<!\w){re.escape(name)}(?!\w)", letter)]
    assert told == [], letter
    assert "kerb" not in letter or country not in KERBS
