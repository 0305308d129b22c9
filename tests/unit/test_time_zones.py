"""Which time zone is meant by what a country's people call their clocks."""

import zoneinfo

import pytest

from ledgerstone.workshop.countries.zones import zone_meant

ZONES = tuple(sorted(zoneinfo.available_timezones()))


@pytest.mark.parametrize(
    ("country", "name", "zone"),
    [
        ("AU", "AEST", "Australia/Sydney"),
        ("AU", "AEDT", "Australia/Sydney"),
        ("AU", "ACST", "Australia/Adelaide"),
        ("AU", "AWST", "Australia/Perth"),
        ("AU", "Australia/Eastern", "Australia/Sydney"),
        ("AU", "Western", "Australia/Perth"),
        ("NZ", "NZST", "Pacific/Auckland"),
        ("ZA", "SAST", "Africa/Johannesburg"),
        ("PT", "WEST", "Europe/Lisbon"),
        ("DE", "CEST", "Europe/Berlin"),
        ("DE", "MESZ", "Europe/Berlin"),
        ("AT", "MESZ", "Europe/Vienna"),
        ("AT", "MEZ", "Europe/Vienna"),
        ("IE", "IST", "Europe/Dublin"),
        ("US", "PST", "America/Los_Angeles"),
        ("US", "Central Daylight Time", "America/Chicago"),
        ("CA", "Eastern", "America/Toronto"),
        ("CA", "Pacific Time", "America/Vancouver"),
    ],
)
def test_a_clock_s_name_is_looked_up_in_the_workshop_s_country(
    country: str, name: str, zone: str
) -> None:
    """By the letters that its zones' clocks show in winter or summer (the IANA's data)."""
    assert zone_meant(name, country, ZONES) == zone


@pytest.mark.parametrize(
    ("country", "name"),
    [
        ("AU", "WEST"),
        ("DE", "AEST"),
        ("GB", "SAST"),
        ("GB", "Australia/Eastern"),
        ("GB", "East"),
        ("GB", "Eest"),
    ],
)
def test_letters_of_another_country_s_clock_are_not_guessed_at(country: str, name: str) -> None:
    """Of so few letters nearly any zone is near, and a continent that is named is kept to."""
    assert zone_meant(name, country, ZONES) is None
