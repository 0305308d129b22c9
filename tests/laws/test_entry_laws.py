"""Entries of a profile's form: an amount is the same however people write it.

Each case is an amount and one way of writing it, put together from what people write: marks of
either language, words, hedges, spans about it, units, things that are counted, weeks for days.
The numbers in words are spelled here from rules of each language, not from the reader's tables.
"""

from decimal import Decimal
from fractions import Fraction
from typing import Final

from hypothesis import given
from hypothesis import strategies as st

from ledgerstone.workshop.countries import RegionalSettings, usual_in
from ledgerstone.workshop.entry.entries import postcodes_of
from ledgerstone.workshop.entry.typed import toml_of
from ledgerstone.workshop.keys.measures import canonical
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import Member, member_at

US, GERMANY = usual_in("US").at_work(), usual_in("DE").at_work()
MARKS: Final = {"en": ".", "de": ","}
PLACES: Final = {"en": US, "de": GERMANY}
HEDGES: Final = {
    "en": ("", "about ", "approx. ", "around ", "roughly ", "~", "up to ", "say "),
    "de": ("", "etwa ", "ca. ", "rund ", "ungefähr ", "bis zu ", "~"),
}
AFTER: Final = {"en": ("", " or so", ", more or less"), "de": ("", " oder so")}
JOINTS: Final = {"en": ("-", " - ", "–", " to ", " or "), "de": ("-", "–", " bis ", " oder ")}
BOTH: Final = {"en": ("between ", " and "), "de": ("zwischen ", " und ")}
ENGLISH: Final = (
    *("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"),
    *("eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen"),
    "nineteen",
)
ENGLISH_TENS: Final = (
    *("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"),
)
GERMAN: Final = (
    *("null", "ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun", "zehn"),
    *("elf", "zwölf", "dreizehn", "vierzehn", "fünfzehn", "sechzehn", "siebzehn", "achtzehn"),
    "neunzehn",
)
GERMAN_TENS: Final = (
    *("zwanzig", "dreißig", "vierzig", "fünfzig", "sechzig", "siebzig", "achtzig", "neunzig"),
)


def at(*path: str | int) -> Member:
    """A place of a profile."""
    member = member_at(path)
    assert member is not None
    return member


def spelled(number: int, language: str) -> str:
    """A whole number below a hundred in words."""
    words, tens = (ENGLISH, ENGLISH_TENS) if language == "en" else (GERMAN, GERMAN_TENS)
    if number < 20:
        return words[number]
    more, ones = tens[number // 10 - 2], number % 10
    if not ones:
        return more
    return f"{more}-{words[ones]}" if language == "en" else f"{words[ones]}und{more}"


def in_figures(number: Decimal, language: str) -> str:
    """A number with the language's mark between whole and tenth."""
    return format(number, "f").replace(".", MARKS[language])


@st.composite
def amounts(draw: st.DrawFn, language: str, *, whole: bool = False) -> tuple[Decimal, str]:
    """An amount and how it is written: in figures, in words, hedged, as a span about it."""
    number = draw(st.integers(2, 90).map(Decimal))
    if not whole and draw(st.booleans()):
        number += Decimal("0.5")
    ways = ["figures", "span", *(["words"] if number == int(number) else [])]
    way = draw(st.sampled_from(ways))
    hedge = draw(st.sampled_from(HEDGES[language]))
    after = draw(st.sampled_from(AFTER[language]))
    if way == "words":
        return number, f"{hedge}{spelled(int(number), language)}{{unit}}{after}"
    if way == "span":
        half = draw(st.integers(1, int(number) - 1)) if whole else Decimal("0.5")
        low, high = (in_figures(each, language) for each in (number - half, number + half))
        if draw(st.booleans()):
            before, joint = BOTH[language]
            return number, f"{before}{low}{joint}{high}{{unit}}"
        return number, f"{low}{draw(st.sampled_from(JOINTS[language]))}{high}{{unit}}{after}"
    return number, f"{hedge}{in_figures(number, language)}{{unit}}{after}"


def read(text: str, member: Member, language: str) -> object:
    """What stands in the file once a text was typed at a place."""
    place: RegionalSettings = PLACES[language]
    written = toml_of(member, text, MARKS[language], place)
    return tables(f"x = {written}")["x"]


UNITS: Final = (
    (("lifting", "most_kg"), ("lifting", "van", "most_kg"), "lb", Fraction("0.45359237"), "en"),
    (("table", "length_mm"), ("table", "length_mm"), "in", Fraction("25.4"), "en"),
    (("van", "most_kg"), ("lifting", "van", "most_kg"), "kg", Fraction(1), "de"),
    (("cm", "length_mm"), ("table", "length_mm"), "cm", Fraction(10), "de"),
)


@given(data=st.data())
def test_an_amount_with_its_unit_is_the_same_however_it_is_written(data: st.DataObject) -> None:
    """In figures or words, hedged or as a span about it, with the unit behind it."""
    _, path, unit, per, language = data.draw(st.sampled_from(UNITS))
    number, text = data.draw(amounts(language))
    member = at(*path)
    found = canonical(read(text.format(unit=f" {unit}"), member, language), member.name)
    assert found is not None
    assert abs(Fraction(found) - Fraction(number) * per) <= Fraction(1, 10**5), text


@given(data=st.data(), language=st.sampled_from(("en", "de")))
def test_a_price_is_the_same_however_it_is_written(data: st.DataObject, language: str) -> None:
    """With a sign of money before it or none, by the hour or not."""
    number, text = data.draw(amounts(language))
    sign = data.draw(st.sampled_from(("", "$" if language == "en" else "€ ")))
    hour = data.draw(
        st.sampled_from(("", "/h", " per hour" if language == "en" else " pro Stunde"))
    )
    typed = text.format(unit=hour)
    typed = f"{sign}{typed}" if typed[0].isdigit() else typed
    member = at("rates", "hour")
    found = canonical(read(typed, member, language), member.name)
    assert found == number, typed


PACKS: Final = {
    "en": (
        *("/{size}", " per {size}", " for {size}", " per {size} bag", " for a {size} bag"),
        *(" a bag of {size}", " per bag of {size}", "/bag of {size}", " for a sack of {size}"),
    ),
    "de": (
        *("/{size}", " pro {size}", " je {size}", " für {size}", " je Sack zu {size}"),
        *(" pro Sack von {size}", " für einen Sack mit {size}", " je Sack à {size}"),
    ),
}


@given(data=st.data(), language=st.sampled_from(("en", "de")), size=st.integers(1, 100))
def test_a_price_by_the_pack_is_the_same_however_it_is_written(
    data: st.DataObject, language: str, size: int
) -> None:
    """So much for a bag of so much is the price of a pound or a kilogram."""
    number, text = data.draw(amounts(language))
    unit, kg = ("lb", Fraction("0.45359237")) if language == "en" else ("kg", Fraction(1))
    by = data.draw(st.sampled_from(PACKS[language])).format(size=f"{size} {unit}")
    member = at("pigments", 0, "price_per_kg")
    typed = text.format(unit=by)
    found = canonical(read(typed, member, language), member.name)
    assert found is not None, typed
    assert abs(Fraction(found) - Fraction(number) / (size * kg)) <= Fraction(1, 10**5), typed


@given(weighed=st.integers(1, 90), language=st.sampled_from(("en", "de")))
def test_water_may_be_weighed(weighed: int, language: str) -> None:
    """A litre of water is a kilogram."""
    unit, kg = ("lb", Fraction("0.45359237")) if language == "en" else ("kg", Fraction(1))
    member = at("recipe", "bag", "water_l_per_bag")
    found = canonical(read(f"{weighed} {unit}", member, language), member.name)
    assert found is not None
    assert abs(Fraction(found) - weighed * kg) <= Fraction(1, 10**5)


WHOLE: Final = {
    ("calendar", "hands"): {"en": ("", " people", " of us"), "de": ("", " Leute", " Personen")},
    ("lifting", "most_people"): {"en": ("", " people", " men"), "de": ("", " Mann", " Leute")},
    ("calendar", "orders_ahead_days"): {
        "en": ("", " days", " working days"),
        "de": ("", " Tage", " Arbeitstage"),
    },
}


@given(data=st.data(), language=st.sampled_from(("en", "de")))
def test_a_count_is_the_same_however_it_is_written(data: st.DataObject, language: str) -> None:
    """A whole number in figures or words, with what is counted behind it."""
    path = data.draw(st.sampled_from(tuple(WHOLE)))
    number, text = data.draw(amounts(language, whole=True))
    thing = data.draw(st.sampled_from(WHOLE[path][language]))
    assert read(text.format(unit=thing), at(*path), language) == int(number), text


@given(weeks=st.integers(1, 20), language=st.sampled_from(("en", "de")), hedged=st.booleans())
def test_weeks_of_work_are_five_days_each(weeks: int, language: str, hedged: bool) -> None:
    """Where working days are asked; a wait of the concrete's has seven."""
    word = {"en": "week" if weeks == 1 else "weeks", "de": "Woche" if weeks == 1 else "Wochen"}
    said = f"{HEDGES[language][1] if hedged else ''}{weeks} {word[language]}"
    assert read(said, at("calendar", "orders_ahead_days"), language) == 5 * weeks
    assert read(said, at("days", "drying"), language) == 7 * weeks


@given(low=st.integers(1, 8), more=st.integers(1, 8))
def test_a_span_of_whole_numbers_promises_less(low: int, more: int) -> None:
    """Of hands the fewer, of days that are taken the more."""
    middle = Fraction(2 * low + more, 2)
    text = f"{low} to {low + more}"
    assert read(text, at("calendar", "hands"), "en") == middle.__floor__()
    assert read(text, at("calendar", "orders_ahead_days"), "en") == middle.__ceil__()


@given(
    digits=st.integers(100, 998),
    filled=st.sampled_from(("", "xx", "XX", " xx", "**", "..", "…")),
    before=st.sampled_from(("", "ZIP ", "starting with ", "all ZIP codes beginning with ")),
)
def test_postcodes_are_the_same_however_they_are_written(
    digits: int, filled: str, before: str
) -> None:
    """A beginning with its rest left open, a range in words, two joined by a word."""
    assert postcodes_of(f"{before}{digits}{filled}") == [str(digits)]
    for joint in (" to ", "-", " – "):
        said = f"{before}{digits}{filled.strip('.…*')}{joint}{digits + 1}{filled.strip('.…*')}"
        assert postcodes_of(said) == [f"{digits}-{digits + 1}"]
    assert postcodes_of(f"{digits}{filled} and {digits + 1}") == [str(digits), str(digits + 1)]
