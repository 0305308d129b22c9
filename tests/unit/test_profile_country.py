"""What a profile says of its country and is not so: its part, clock, days and postcodes."""

from datetime import date, timedelta
from time import process_time

import pytest

from ledgerstone.errors import ProfileError
from ledgerstone.schedule.days import WorkingCalendar
from ledgerstone.wording import english, speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile, read_profile
from ledgerstone.workshop.countries.postcodes import POSTCODES, falls_under
from ledgerstone.workshop.countries.public_holidays import (
    holiday_elsewhere,
    month_and_day_of,
    parts_of,
)
from ledgerstone.workshop.review.advice import no_postcodes

TEXT = DEMONSTRATION.read_text(encoding="utf-8")


# Beginnings of a country's postcodes, and what begins none. Lengths and letters are the published
# patterns'; that none begins with these figures is from memory of each post's directory.
BEGINNINGS = [
    ("GB", "HR HR9 FK1-16 EC1A M N1P JE", "H XX 83 HRX LD6-1"),
    ("IE", "A65 D06 D6W D A D2 D1-9 D4-24 D02-04", "A6 A655 B12 HR 650 D0 D25-99 A1-9"),
    ("DE", "8 83 83646 01067 83000-83739", "836461 00 05 43 62 HR D83 830000-837390"),
    ("AT", "1 10 1010 9992 1010-1239", "0 83646 10100 A10"),
    ("CH", "8 80 8001 1000-1299", "0 80331 CH8"),
    ("US", "9 97 97401 005 97401-97499", "000 004 974012 97401-2345 OR"),
    ("CA", "H H3 H3Z V8X", "D D1 HH 12 H3Z2Y"),
    ("AU", "0 02 20 2060 7250", "01 00 20600 NSW"),
    ("NZ", "0 01 6001", "00 60011"),
    ("NL", "1 12 1234", "0 12345 1234AB AB"),
    ("BE", "4 4000", "0 40000"),
    ("FR", "33 33380 97 20 01", "00 333801 2A 99"),
    ("IT", "00 00144 98", "99 001441"),
    ("ES", "28 28039 01 52", "00 53 280391"),
    ("SE", "1 11455", "0 114551"),
    ("CZ", "1 10000 7", "8 9 0"),
    ("PL", "00 00950 99", "009500"),
    ("PT", "2725 2725079 1", "0 27250791"),
]


@pytest.mark.parametrize(("country", "begin", "do_not"), BEGINNINGS)
def test_an_area_begins_as_a_postcode_of_the_country_does(
    country: str, begin: str, do_not: str
) -> None:
    """What begins one is answered by a whole one that falls under it, what begins none by none."""
    known = POSTCODES[country]
    for beginning in begin.split():
        whole = known.under(beginning)
        assert whole is not None, beginning
        assert known.read(whole) is not None
    assert [each for each in do_not.split() if known.under(each) is not None] == []


def test_what_serves_a_postcode_is_the_beginning_of_one() -> None:
    """In Dublin a district of one figure is written with a nought in a postcode."""
    read = POSTCODES["IE"].read("D02 X285")
    assert read is not None
    for beginning in ("D2", "D1-9", "D02"):
        assert falls_under(read[1], beginning)
        assert POSTCODES["IE"].under(beginning) is not None


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "begins with 83 or XX"),
        (
            "de",
            "beginnt mit 83 oder XX",
        ),
    ],
)
def test_beginnings_that_serve_nobody_are_named_where_they_are_denied(
    language: str, said: str
) -> None:
    """Only those that begin no postcode, each in the first sentence."""
    message = no_postcodes(("HR", "83", "XX"), load_profile(DEMONSTRATION))
    assert message is not None
    assert said in speech_in(language).say(message)


@pytest.mark.parametrize("country", sorted(POSTCODES))
def test_an_example_begins_with_each_of_its_parts(country: str) -> None:
    """So much of it as says where it is, whole, is an area's beginning."""
    known = POSTCODES[country]
    read = known.read(known.example)
    assert read is not None
    assert known.under(read[1]) is not None


@pytest.mark.parametrize(
    ("country", "region", "code"),
    [
        ("DE", "Bayern", "BY"),
        ("DE", "Bavaria", "BY"),
        ("DE", "Freistaat Bayern", "BY"),
        ("DE", "DE-BY", "BY"),
        ("DE", "Bayren", "BY"),
        ("DE", "NRW", "NW"),
        ("DE", "Thueringen", "TH"),
        ("AT", "Wien", "9"),
        ("AT", "Vienna", "9"),
        ("AT", "Tirol", "7"),
        ("AT", "NÖ", "3"),
        ("CH", "Kanton Zürich", "ZH"),
        ("US", "Oregon", "OR"),
        ("US", "state of washington", "WA"),
        ("US", "Washington D.C.", "DC"),
        ("GB", "Scotland", "SCT"),
        ("GB", "Schottland", "SCT"),
        ("CA", "Quebec", "QC"),
        ("AU", "Tasmania", "TAS"),
    ],
)
def test_a_region_given_by_name_gets_its_code(country: str, region: str, code: str) -> None:
    """A region written out is found among its names; the others that are known are listed."""
    said = faults_of(
        ('country = "GB"', f'country = "{country}"'), ('region = "ENG"', f'region = "{region}"')
    )
    assert f'Perhaps "{code}" was meant. Known here: ' in said
    assert all(part in said for part in parts_of(country))


def test_a_region_that_is_none_lists_those_that_are() -> None:
    """Austria's go by figures: each has its name beside it."""
    said = faults_of(('country = "GB"', 'country = "AT"'), ('region = "ENG"', 'region = "Bayern"'))
    assert "was meant" not in said
    assert "1 (Burgenland), 2 (Kärnten)" in said


@pytest.mark.parametrize(
    ("name", "zone"),
    [
        ("Berlin", "Europe/Berlin"),
        ("europe/berlin", "Europe/Berlin"),
        ("Europe/Berln", "Europe/Berlin"),
        ("Germany/Berlin", "Europe/Berlin"),
        ("Wien", "Europe/Vienna"),
        ("Zürich", "Europe/Zurich"),
        ("New York", "America/New_York"),
        ("Pacific", "America/Los_Angeles"),
        ("Eastern Standard Time", "America/New_York"),
    ],
)
def test_a_time_zone_by_its_town_is_named_in_full(name: str, zone: str) -> None:
    """A town, what a zone is called, or a slip of a letter."""
    assert f'Perhaps "{zone}" was meant.' in faults_of(
        ('timezone = "Europe/London"', f'timezone = "{name}"')
    )


def test_a_time_zone_of_nowhere_is_not_guessed() -> None:
    """Nothing is near enough to it."""
    said = faults_of(('timezone = "Europe/London"', 'timezone = "Cloudcuckooland"'))
    assert "is no time zone" in said
    assert "was meant" not in said
    assert "Known here: Europe/London." in said


def test_a_wrong_day_costs_no_more_than_a_look_through_the_names() -> None:
    """A holiday that a country has not is looked for once in each of its parts."""
    holiday_elsewhere("to read the days once", "US")
    began = process_time()
    assert holiday_elsewhere("15.8", "US") is None
    looked = process_time()
    assert month_and_day_of("15.8", "US") is None
    assert process_time() - looked < 10 * (looked - began)


def test_a_holiday_on_one_day_each_year_has_its_month_and_day() -> None:
    """Christmas is on December 25; Easter Monday on another day each year."""
    assert month_and_day_of("Christmas Day", "US") == "12-25"
    assert month_and_day_of("Mariä Himmelfahrt", "DE") == "08-15"
    assert month_and_day_of("Ostermontag", "DE") is None


def faults_of(*changes: tuple[str, str]) -> str:
    """What is wrong with the demonstration's text when some of it stands otherwise."""
    text = TEXT
    for old, new in changes:
        assert old in text
        text = text.replace(old, new, 1)
    with pytest.raises(ProfileError) as raised:
        read_profile(text)
    return " ".join(english(fault.message) for fault in raised.value.faults)


BAVARIA = (('country = "GB"', 'country = "DE"'), ('region = "ENG"', 'region = "BY"'))


@pytest.mark.parametrize(
    "name", ["Fronleichnam", "Corpus Christi", "Heilige drei Könige", "Allerheiligen"]
)
def test_a_holiday_worked_goes_by_its_german_name_too(name: str) -> None:
    """BayFTG article 1: all are Bavaria's; capitals, blanks and ä for ae are no difference."""
    calendar = WorkingCalendar("DE-BY", worked=[name])
    days = WorkingCalendar("DE-BY")
    year = [date(2027, 1, 1) + timedelta(days=n) for n in range(365)]
    gained = [day for day in year if calendar.is_worked(day) and not days.is_worked(day)]
    assert gained == [
        day
        for day in year
        if not days.is_worked(day) and day.weekday() < 5 and day in worked_in_2027(name)
    ]
    assert gained


def worked_in_2027(name: str) -> list[date]:
    """The day of each: Easter Sunday is March 28, and Corpus Christi 60 days after."""
    if name in ("Fronleichnam", "Corpus Christi"):
        return [date(2027, 3, 28) + timedelta(days=60)]
    return [date(2027, 1, 6)] if name == "Heilige drei Könige" else [date(2027, 11, 1)]


@pytest.mark.parametrize(
    ("name", "meant"),
    [("Fronleichnamm", "Fronleichnam"), ("Kristi Himmelfahrt", "Christi Himmelf")],
)
def test_a_holiday_that_is_none_is_told_with_the_one_that_was_meant(name: str, meant: str) -> None:
    """In the language of the profile."""
    worked = ('language = "en"', 'language = "de"')
    said = faults_of(*BAVARIA, worked, ("[calendar]", f'[calendar]\nholidays_worked = ["{name}"]'))
    assert f'Perhaps "{meant}' in said


@pytest.mark.parametrize(("name", "day"), [("Mariä Himmelfahrt", "08-15"), ("Epiphany", "01-06")])
def test_a_holiday_added_by_name_is_told_by_its_day(name: str, day: str) -> None:
    """What is added is written by month and day; one that moves has none."""
    added = ("[calendar]", f'[calendar]\nholidays_added = ["{name}"]')
    assert f", here {day}." in faults_of(*BAVARIA, added)
    moves = ("[calendar]", '[calendar]\nholidays_added = ["Fronleichnam"]')
    assert ", like 08-15." in faults_of(*BAVARIA, moves)
