"""What `check` advises of a profile that reads well, and how slips of writing are reported."""

import io
import re
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from ledgerstone.cli import profiles
from ledgerstone.errors import ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.wording import english, workshop_speech
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile, read_profile
from ledgerstone.workshop.reading.intended import intended
from ledgerstone.workshop.reading.lines import KeyLines
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.review.advice import (
    addresses_of_this_machine,
    perhaps_thousands,
    weak_bag,
)
from ledgerstone.workshop.starting.profile_text import starting_profile
from support.mix_recipes import bag_of

TEXT = DEMONSTRATION.read_text(encoding="utf-8")


# The country of a file, its key with what stands there, and what is said of it.
AS_AT_HOME = [
    ("GB", "rates.hour", "52,00", "Write 52.00: a point separates decimals."),
    ("GB", "rates.hour", "1.052,50", "Write 1052.50: a point separates decimals."),
    ("GB", "rates.hour", "£38", "Write 38, the number alone."),
    ("GB", "tax.percent", "19%", "Write 19, the number alone."),
    ("GB", "tax.percent", "8,5 %", "Write 8.5, the number alone."),
    ("GB", "offer.smallest_order", "1,200", "Write 1200, the number alone."),
    ("GB", "calendar.closures.0.first", "24.12.2026", "Write the day as 2026-12-24."),
    ("GB", "calendar.closures.0.first", "24/12/2026", "Write the day as 2026-12-24."),
    ("GB", "calendar.closures.0.first", "3/5/2027", "Write the day as 2027-05-03."),
    ("GB", "calendar.closures.0.first", "12/24/2026", "Write the day as 2026-12-24."),
    ("US", "calendar.closures.0.first", "3/5/2027", "Write the day as 2027-03-05."),
    ("US", "calendar.closures.0.first", "12/24/2026", "Write the day as 2026-12-24."),
    ("US", "calendar.closures.0.first", "12/24/26", "Write the day as 2026-12-24."),
    ("US", "calendar.closures.0.first", "12/24", "with its year, like 2027-12-24."),
    ("US", "offer.smallest_order", "1,200", "Write 1200, the number alone."),
    ("US", "offer.smallest_order", "$1,200.00", "Write 1200.00, the number alone."),
    ("US", "table.length_mm", "8 ft", 'Write "8 ft", in quotation marks.'),
    ("US", "table.length_mm", "8 ft 4 in", 'Write "8 ft 4 in", in quotation marks.'),
    ("US", "table.length_mm", "96 in", 'Write "96 in", in quotation marks.'),
    ("US", "table.length_mm", "2440 mm", 'Write "2440 mm", in quotation marks.'),
    ("US", "recipe.fck_mpa", "5000 psi", 'Write "5000 psi", in quotation marks.'),
    ("US", "lifting.van.most_kg", "55 lb", 'Write "55 lb", in quotation marks.'),
    ("US", "hours.per_mould.relief", "45 min", 'Write "45 min", in quotation marks.'),
    ("DE", "offer.smallest_order", "1.200,00 €", "Write 1200.00, the number alone."),
    ("DE", "offer.smallest_order", "1,200", "Write 1.200: a point separates decimals."),
    ("DE", "rates.hour", "52,- €", "Write 52, the number alone."),
    ("DE", "rates.hour", "52,-", "Write 52, the number alone."),
    ("DE", "table.length_mm", "2,4 m", 'Write "2.4 m", in quotation marks.'),
    ("DE", "calendar.closures.0.first", "24.12.", "with its year, like 2027-12-24."),
    ("CH", "offer.smallest_order", "1'200.50", "Write 1200.50, the number alone."),
    ("FR", "offer.smallest_order", "1 200,50", "Write 1200.50, the number alone."),
]


@pytest.mark.parametrize("marks", ["", '"'])
@pytest.mark.parametrize(("country", "key", "written", "says"), AS_AT_HOME)
def test_a_value_written_as_at_home_is_reported_as_meant(
    country: str, key: str, written: str, says: str, marks: str
) -> None:
    """A decimal mark, a unit or a day as the country writes them, with what to write instead.

    So within quotation marks, where these are not what it takes: ``"8 ft"`` is read.
    """
    text = in_country_of(country)
    path = tuple(int(part) if part.isdigit() else part for part in key.split("."))
    start, end = KeyLines(text).values[path]
    text = f"{text[:start]}{marks}{written}{marks}{text[end:]}"
    try:
        read_profile(text)
    except ProfileError as error:
        found = {fault.line: english(fault.message) for fault in error.faults}
        assert says in found[text[:start].count("\n") + 1]
    else:
        assert marks
        assert "quotation marks" in says or "number alone" in says


@pytest.mark.parametrize(
    ("path", "written"),
    [
        (("table", "length_mm"), "8 cubits"),
        (("table", "length_mm"), "many"),
        (("calendar", "closures", 0, "first"), "31/11/2026"),
        (("calendar", "closures", 0, "first"), "soon"),
        (("workshop", "name"), "52,00"),
    ],
)
def test_what_cannot_be_told_is_not_guessed(path: KeyPath, written: str) -> None:
    """A unit that is none, no day, and a text are left to what is said of every value there."""
    member = member_at(path)
    assert member is not None
    assert intended(written, member, "GB") is None


def in_country_of(country: str) -> str:
    """The demonstration's text with another country."""
    text = re.sub(r'\nregion = "ENG"', "", TEXT, count=1)
    return text.replace('country = "GB"', f'country = "{country}"', 1)


def checked(text: str, tmp_path: Path, environment: dict[str, str]) -> str:
    """What `check` prints of a profile."""
    file, out = tmp_path / "mine.toml", io.StringIO()
    file.write_text(text, encoding="utf-8")
    assert profiles.run(["check", str(file)], out, io.StringIO(), environment) == 0
    return out.getvalue()


def test_what_will_not_work_once_it_runs_is_advised(tmp_path: Path) -> None:
    """Keys that are not set, an address of this machine alone and a calendar that is not there."""
    text = starting_profile(load_profile(DEMONSTRATION))
    text += '\n[bookings]\nfile = "bookings.ics"\n'
    said = checked(text, tmp_path, {})
    assert "LEDGERSTONE_MAKER_KEY is not set" in said
    assert "LEDGERSTONE_SIGNING_KEYS is not set" in said
    assert "links will stop opening" in said
    assert "bookings.ics is not there" in said
    assert "only on this machine" in said
    (tmp_path / "bookings.ics").write_text("", encoding="utf-8")
    keys = {"LEDGERSTONE_MAKER_KEY": "k" * 20, "LEDGERSTONE_SIGNING_KEYS": "s" * 40}
    said = checked(text, tmp_path, keys)
    assert "is not set" not in said
    assert "is not there" not in said


@pytest.mark.parametrize(
    ("name", "number", "says"),
    [
        ("germany", "1.200", ["offer.smallest_order", "1,20", "1200"]),
        ("germany", "1.20", []),
        ("germany", "0.125", []),
        ("germany", "1200", []),
        ("united_states", "1.200", []),
    ],
)
def test_money_that_reads_as_thousands_at_home_is_advised(
    name: str, number: str, says: list[str]
) -> None:
    """A point sets thousands apart where a comma separates decimals: 1.200 is 1,20 there."""
    begun = load_profile(DEMONSTRATION.with_name(f"{name}.toml"))
    assert not list(perhaps_thousands(begun))
    mine = replace(begun, offer=replace(begun.offer, smallest_order=Decimal(number)))
    speech = workshop_speech(begun.workshop.language, begun)
    said = [speech.say(message) for message in perhaps_thousands(mine)]
    assert len(said) == bool(says)
    assert all(part in sentence for sentence in said for part in says)


@pytest.mark.parametrize("key", ["base_url", "page_url"])
@pytest.mark.parametrize(
    ("host", "is_here"),
    [
        ("127.0.0.1:8000", True),
        ("127.8.0.9", True),
        ("LOCALHOST", True),
        ("desk.localhost:80", True),
        ("[::1]:8000", True),
        ("0.0.0.0:8000", True),
        ("[::]", True),
        ("me@127.0.0.1", True),
        ("192.168.1.20:8000", False),
        ("tops.example", False),
        ("127.0.0.1.example", False),
        ("[2001:db8::1]", False),
    ],
)
def test_an_address_of_this_machine_alone_is_advised(key: str, host: str, *, is_here: bool) -> None:
    """Customers are sent both addresses: the page's in links, the service's in pictures."""
    here, elsewhere = f"http://{host}/", "https://tops.example/"
    begun = load_profile(DEMONSTRATION.with_name("germany.toml"))
    base_url, page_url = (here if name == key else elsewhere for name in ("base_url", "page_url"))
    mine = replace(
        begun,
        workshop=replace(begun.workshop, demonstration=False),
        web=replace(begun.web, base_url=base_url, page_url=page_url),
    )
    said = [english(message) for message in addresses_of_this_machine(mine)]
    assert len(said) == is_here
    assert all(f"web.{key} is {here}, which" in line for line in said)


def test_areas_of_another_countrys_postcodes_are_advised(tmp_path: Path) -> None:
    """Beginnings of British postcodes serve nobody in Germany."""
    text = starting_profile(load_profile(DEMONSTRATION))
    text = text.replace('country = "GB"', 'country = "DE"', 1).replace(
        'region = "ENG"', 'region = "BY"', 1
    )
    said = checked(text, tmp_path, {})
    assert "No postcode of DE begins" in said
    assert "in DE people pay in EUR" in said
    home = starting_profile(load_profile(DEMONSTRATION))
    said = checked(home, tmp_path, {})
    assert "No postcode" not in said
    assert "people pay in" not in said


@pytest.mark.parametrize(("stated_mpa", "advised"), [(17.0, 65), (20.7, 72), (23.0, 0), (34.5, 0)])
def test_a_weak_bag_is_trusted_with_less(
    workshop: Workshop, stated_mpa: float, advised: int
) -> None:
    """By hand of EN 1992-1-1 table 3.1: (9 / 17)^(2/3) = 0.654, (12.7 / 20.7)^(2/3) = 0.722."""
    bagged = replace(
        workshop,
        recipe=replace(workshop.recipe, bag=bag_of(), fck_mpa=stated_mpa),
        concrete=replace(workshop.concrete, untested_percent=75.0, tested=()),
    )
    said = [english(message) for message in weak_bag(bagged)]
    assert len(said) == bool(advised)
    assert all(f"trust {advised}" in line for line in said)
