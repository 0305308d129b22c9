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
from ledgerstone.wording import Message, english, workshop_speech
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
def write(what: str, **values: str) -> Message:
    """What to write instead."""
    return Message(f"fault-write-{what}", **values)


AS_AT_HOME = [
    ("GB", "rates.hour", "52,00", write("point", number="52.00")),
    ("GB", "rates.hour", "1.052,50", write("point", number="1052.50")),
    ("GB", "rates.hour", "£38", write("number", number="38")),
    ("GB", "tax.percent", "19%", write("number", number="19")),
    ("GB", "tax.percent", "8,5 %", write("number", number="8.5")),
    ("GB", "offer.smallest_order", "1,200", write("number", number="1200")),
    ("GB", "calendar.closures.0.first", "24.12.2026", write("day", day="2026-12-24")),
    ("GB", "calendar.closures.0.first", "24/12/2026", write("day", day="2026-12-24")),
    ("GB", "calendar.closures.0.first", "3/5/2027", write("day", day="2027-05-03")),
    ("GB", "calendar.closures.0.first", "12/24/2026", write("day", day="2026-12-24")),
    ("US", "calendar.closures.0.first", "3/5/2027", write("day", day="2027-03-05")),
    ("US", "calendar.closures.0.first", "12/24/2026", write("day", day="2026-12-24")),
    ("US", "calendar.closures.0.first", "12/24/26", write("day", day="2026-12-24")),
    ("US", "calendar.closures.0.first", "12/24", write("year", day="12-24")),
    ("US", "offer.smallest_order", "1,200", write("number", number="1200")),
    ("US", "offer.smallest_order", "$1,200.00", write("number", number="1200.00")),
    ("US", "table.length_mm", "8 ft", write("text", text="8 ft")),
    ("US", "table.length_mm", "8 ft 4 in", write("text", text="8 ft 4 in")),
    ("US", "table.length_mm", "96 in", write("text", text="96 in")),
    ("US", "table.length_mm", "2440 mm", write("text", text="2440 mm")),
    ("US", "recipe.fck_mpa", "5000 psi", write("text", text="5000 psi")),
    ("US", "lifting.van.most_kg", "55 lb", write("text", text="55 lb")),
    ("US", "hours.per_mould.relief", "45 min", write("text", text="45 min")),
    ("DE", "offer.smallest_order", "1.200,00 €", write("number", number="1200.00")),
    ("DE", "offer.smallest_order", "1,200", write("point", number="1.200")),
    ("DE", "rates.hour", "52,- €", write("number", number="52")),
    ("DE", "rates.hour", "52,-", write("number", number="52")),
    ("DE", "table.length_mm", "2,4 m", write("text", text="2.4 m")),
    ("DE", "calendar.closures.0.first", "24.12.", write("year", day="12-24")),
    ("CH", "offer.smallest_order", "1'200.50", write("number", number="1200.50")),
    ("FR", "offer.smallest_order", "1 200,50", write("number", number="1200.50")),
]


@pytest.mark.parametrize("marks", ["", '"'])
@pytest.mark.parametrize(("country", "key", "written", "says"), AS_AT_HOME)
def test_a_value_written_as_at_home_is_reported_as_meant(
    country: str, key: str, written: str, says: Message, marks: str
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
        assert english(says) in found[text[:start].count("\n") + 1]
    else:
        assert marks
        assert says.name in {"fault-write-text", "fault-write-number"}


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
    assert "No postcode in DE begins with " in said
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
