"""What a profile says of its country: tax, words of the law, days, and who decides on gas and fire.

Sources, beside each: the statute or the authority's own page by its name. Rates are invented.
"""

from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Any, Final

import pytest

from ledgerstone.schedule.days import WorkingCalendar
from ledgerstone.wording import Message, speech_in
from ledgerstone.workshop.countries import COUNTRIES, usual_in
from ledgerstone.workshop.keys.measures import measured
from ledgerstone.workshop.reading.loader import profile_text
from support.profile_form import form
from workshops.conftest import FILES, WorkshopCase, workshop_case

# A country that no catalogue knows anything of: its maker is told nothing that may be wrong there.
UNKNOWN: Final = "ZZ"


def told_by(name: str, tmp_path: Path, *changes: tuple[str, str]) -> tuple[WorkshopCase, Any]:
    """A workshop whose profile has some lines otherwise, and a caller of its service."""
    text = profile_text(FILES[name])
    for old, new in changes:
        assert old in text, old
        text = text.replace(old, new, 1)
    file = tmp_path / "workshop.toml"
    file.write_text(text, encoding="utf-8")
    return workshop_case(name), form(file, language=workshop_case(name).workshop.workshop.language)


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("germany", "§ 19 UStG"),  # Kleinunternehmer: UStG § 19
        ("united_states", "sales tax is charged"),
        ("demonstration", "not registered for VAT"),  # VATA 1994 schedule 11: none may be shown
    ],
)
def test_who_is_not_registered_charges_none_and_says_so(
    name: str, words: str, tmp_path: Path
) -> None:
    """No tax in the sum, and the country's own sentence among what the price rests on."""
    shop, client = told_by(name, tmp_path, ("registered = true", "registered = false"))
    quote = client.post("/v1/quotes", json=shop.order()).get_json()
    assert Decimal(quote["price"]["tax"]) == 0
    assert quote["price"]["total"] == quote["price"]["net"]
    assert any(words in one for one in quote["depends_on"])


def test_what_is_fitted_is_taxed_apart(tmp_path: Path) -> None:
    """In Washington a slab that is only supplied may be taxed and one that is fitted otherwise."""
    shop, client = told_by(
        "united_states", tmp_path, ("\npercent = 8.4", "\nfitted_percent = 0\npercent = 8.4")
    )
    order = shop.order()
    rates = []
    for kind in ("pallet", "fitted"):
        delivery = {**order["delivery"], "kind": kind}
        answer = client.post("/v1/quotes", json={**order, "delivery": delivery}).get_json()
        rates.append(answer["price"]["tax_percent"])
    assert rates == [8.4, 0]


@pytest.mark.parametrize(
    ("country", "language", "words"),
    [
        ("DE", "de", "§ 312g Abs. 2"),  # goods made to the customer's specification
        ("US", "en", "change of mind"),  # a term of the contract: no statute of the whole country
        ("US", "en", "rights over defects"),  # UCC 2-314 is kept
        ("CH", "de", "keine Rückgabe"),  # OR 40a is for sales at the door alone
        ("GB", "en", "rights over faults remain"),  # SI 2013/3134 regulation 28(1)(b)
        (UNKNOWN, "en", "rights over faults remain"),
    ],
)
def test_the_words_of_cancelling_are_the_country_s(country: str, language: str, words: str) -> None:
    """What is made to measure is reported as the country's law has it."""
    said = speech_in(language, "", usual_in(country)).say(Message("made-to-measure"))
    assert words in said


@pytest.mark.parametrize("name", sorted(FILES))
def test_a_deposit_is_asked_in_the_country_s_money(name: str) -> None:
    """The letter asks for the deposit that the quote has, by the profile's share and step."""
    shop = workshop_case(name)
    price = shop.asked("/v1/quotes", shop.order())["price"]
    share = Decimal(price["deposit"]) / Decimal(price["total"])
    assert float(share) == pytest.approx(float(shop.workshop.offer.deposit_percent) / 100, abs=0.01)


def days_of(name: str) -> WorkingCalendar:
    """The days of a workshop, without its own closures."""
    workshop = workshop_case(name).workshop
    calendar, who = workshop.calendar, workshop.workshop
    added = [tuple(map(int, day.split("-"))) for day in calendar.holidays_added]
    return WorkingCalendar(
        f"{who.country}-{who.region}",
        calendar.weekdays,
        added=[(month, day) for month, day in added],
        worked=calendar.holidays_worked,
    )


def test_region_holidays_are_kept_with_days_added_and_worked() -> None:
    """Bavaria's Epiphany and the Assumption that is added; Columbus Day is worked in Washington.

    Sources: BayFTG article 1 (the Assumption only where most people are Catholic); 5 USC 6103 names
    Columbus Day, RCW 1.16.050 does not.
    """
    bavaria, washington = days_of("germany"), days_of("united_states")
    assert not bavaria.is_worked(date(2027, 1, 6))
    assert not bavaria.is_worked(date(2028, 8, 15))  # a Tuesday
    assert bavaria.is_worked(date(2028, 8, 16))
    assert washington.is_worked(date(2027, 10, 11))
    assert not washington.is_worked(date(2027, 7, 5))  # the fourth is a Sunday
    assert not washington.is_worked(date(2027, 11, 25))


def test_bags_and_strengths_are_read_as_they_are_sold() -> None:
    """94 lb of cement, 5000 psi by cylinder, C40/50 by cube: 42.64 kg, 34.5 and 40 MPa.

    Sources: ASTM C150 (a bag of 94 lb); NIST SP 811 appendix B.8; EN 206 table 12.
    """
    assert measured("94 lb", "pack_kg") == pytest.approx(Decimal("42.638"), abs=Decimal("0.001"))
    assert measured("5000 psi", "fck_mpa") == pytest.approx(Decimal("34.474"), abs=Decimal("0.001"))
    assert measured("50 MPa cube", "fck_mpa") == Decimal(40)
    assert measured("45 N/mm² cube", "fck_mpa") == Decimal(35)
    assert measured("45 N/mm² Würfel", "fck_mpa") == Decimal(35)


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("country", [*COUNTRIES, UNKNOWN])
def test_who_decides_on_gas_is_named_or_is_the_licensed_one(country: str, language: str) -> None:
    """A trade is named where its name is known; elsewhere nobody's title is made up."""
    said = speech_in(language, "", usual_in(country)).say(Message("gas-or-electric-trade"))
    named = {"en": {"GB", "IE", "US", "CA", "AU", "NZ"}, "de": {"DE", "AT", "CH"}}[language]
    usual = speech_in(language, "", usual_in(UNKNOWN)).say(Message("gas-or-electric-trade"))
    assert (said == usual) is (country not in named)
