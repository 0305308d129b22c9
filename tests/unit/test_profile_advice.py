"""What `check` advises of a profile that reads well, and how slips of writing are reported."""

import io
from dataclasses import replace
from pathlib import Path

import pytest

from ledgerstone.cli import profiles
from ledgerstone.errors import ProfileError
from ledgerstone.wording import english
from ledgerstone.workshop import DEMONSTRATION, load_profile, read_profile
from ledgerstone.workshop.advice import addresses_of_this_machine
from ledgerstone.workshop.starting import starting_profile

TEXT = DEMONSTRATION.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("was", "written", "says"),
    [
        ("hour = 38.00", "hour = 52,00", "Write 52.00: a point separates decimals."),
        ("hour = 38.00", "hour = 1.052,50", "Write 1052.50: a point separates decimals."),
        ("percent = 20", "percent = 19%", "Write 19, the number alone."),
        ("percent = 20", "percent = 8,5 %", "Write 8.5, the number alone."),
        ("hour = 38.00", "hour = £38", "Write 38, the number alone."),
        ("first = 2026-12-24", "first = 24.12.2026", "Write the day as 2026-12-24."),
        ("first = 2026-12-24", "first = 24/12/2026", "Write the day as 2026-12-24."),
    ],
)
def test_a_value_written_as_at_home_is_reported_as_meant(was: str, written: str, says: str) -> None:
    """A decimal comma, a unit or a day as people write them is reported with what to write."""
    assert was in TEXT
    text = TEXT.replace(was, written, 1)
    with pytest.raises(ProfileError) as raised:
        read_profile(text)
    [fault] = raised.value.faults
    assert fault.line == TEXT[: TEXT.index(was)].count("\n") + 1
    assert english(fault.message) == says


@pytest.mark.parametrize(
    ("country", "region", "says"),
    [("DE", "Bayern", 'Perhaps "BY" was meant.'), ("US", "Oregon", 'Perhaps "OR" was meant.')],
)
def test_a_region_given_by_name_gets_its_code(country: str, region: str, says: str) -> None:
    """A region written out is found among the names of the country's regions."""
    text = TEXT.replace('country = "GB"', f'country = "{country}"', 1)
    with pytest.raises(ProfileError) as raised:
        read_profile(text.replace('region = "ENG"', f'region = "{region}"', 1))
    assert says in " ".join(english(fault.message) for fault in raised.value.faults)


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
    assert "no postcode of DE begins so" in said
    home = starting_profile(load_profile(DEMONSTRATION))
    assert "begins so" not in checked(home, tmp_path, {})
