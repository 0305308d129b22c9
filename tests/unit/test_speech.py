"""Values are written as each language writes them, and names stand in their case."""

import pickle
from datetime import date
from decimal import Decimal

import pytest
from babel.dates import format_date
from babel.numbers import format_currency, format_decimal

from ledgerstone.errors import WordingError
from ledgerstone.quantities import Length
from ledgerstone.wording import (
    Listed,
    Message,
    Money,
    People,
    Weight,
    english,
    known_language,
    percent_of,
    speech_in,
)

EN, DE = speech_in("en"), speech_in("de")
BASIN = Message("cutout", kind="circle", nth=2)


@pytest.mark.parametrize("amount", ["0.05", "967.00", "1021.00", "1234567.89"])
def test_an_amount_is_written_as_unicode_has_it(amount: str) -> None:
    """Amounts agree with Babel's, whose data are Unicode's (CLDR), but for the kind of space."""
    for speech, locale, currency in ((EN, "en_GB", "GBP"), (DE, "de_DE", "EUR")):
        known = format_currency(Decimal(amount), currency, locale=locale)
        said = speech.value(Money(currency, Decimal(amount)))
        assert said == known.replace("\N{NO-BREAK SPACE}", " ")


@pytest.mark.parametrize("day", [date(2026, 12, 21), date(2027, 3, 1)])
def test_a_day_is_written_as_unicode_has_it(day: date) -> None:
    """Days agree with Babel's long form: 21 December 2026, 21. Dezember 2026."""
    assert EN.value(day) == format_date(day, "long", locale="en_GB")
    assert DE.value(day) == format_date(day, "long", locale="de_DE")


@pytest.mark.parametrize("kg", [75.0, 68.5, 0.4])
def test_a_weight_has_the_language_s_point(kg: float) -> None:
    """A mass is written to a tenth with the language's own decimal sign."""
    assert EN.value(Weight(kg)) == f"{format_decimal(kg, locale='en_GB')} kg"
    assert DE.value(Weight(kg)) == f"{format_decimal(kg, locale='de_DE')} kg"


def test_values_are_written_in_each_language() -> None:
    """Shares, people and lengths are written as a person would."""
    assert (EN.value(percent_of(19.5)), DE.value(percent_of(19.5))) == ("19.5%", "19,5 %")
    assert (EN.value(People(1)), DE.value(People(1))) == ("one person", "eine Person")
    assert (EN.value(People(12)), DE.value(People(12))) == ("12 people", "12 Personen")
    assert DE.value(Length.parse("3.2 m")) == "3,2 m"
    assert DE.value(Length.parse("4 ft 2 1/2 in")) == "4 Fuß 2 1/2 Zoll"
    assert DE.value(Money("EUR", Decimal("-1234.5"))) == "−1.234,50 €"


def test_a_name_stands_in_its_case() -> None:
    """A cut-out's German name has the article and the endings of its case."""
    cases = ("nominative", "genitive", "dative", "accusative")
    assert [DE.value(BASIN, case) for case in cases] == [
        "der zweite runde Ausschnitt",
        "des zweiten runden Ausschnitts",
        "dem zweiten runden Ausschnitt",
        "den zweiten runden Ausschnitt",
    ]
    assert {EN.value(BASIN, case) for case in cases} == {"the second round cut-out"}


def test_a_list_has_its_word_and_its_most() -> None:
    """Things are joined by the language's word; of too many the first two are named."""
    names = tuple(Message("slab-labelled", label=label) for label in "ABCD")
    assert EN.value(Listed(names[:3])) == "“A”, “B” and “C”"
    assert EN.value(Listed(names[:2], joined="or")) == "“A” or “B”"
    assert EN.value(Listed(names, most=3)) == "“A”, “B” and 2 more"
    assert DE.value(Listed(names[:2]), "dative") == "der Platte „A“ und der Platte „B“"


def test_a_list_is_as_long_as_it_has_to_be() -> None:
    """Hundreds of things are all there, however long each is, and by themselves in a sentence."""
    things = tuple(f"curve {i} of a side, 18.5 mm" for i in range(300))
    for speech, last in ((EN, " and "), (DE, " und ")):
        assert speech.value(Listed(things, joined="comma")) == ", ".join(things)
        said = speech.value(Listed(things))
        assert said == ", ".join(things[:-1]) + last + things[-1]
        whole = speech.say(Message("plan-opening", facts=Listed(things)))
        assert said in whole
        assert len(whole) < len(said) + 40


def test_a_customer_s_words_are_never_read_as_a_catalogue() -> None:
    """A label with braces, or a message's name, is stated as it stands."""
    said = EN.value(Message("slab-labelled", label="{ $case } { slab-only }"))
    assert said == "“{ $case } { slab-only }”"


@pytest.mark.parametrize("message", [Message("no-such"), Message("slab-numbered")])
def test_what_a_catalogue_cannot_say_is_an_error(message: Message) -> None:
    """A message that is not there, or lacks a value, is never said in part."""
    with pytest.raises(WordingError):
        EN.say(message)


def test_messages_are_values() -> None:
    """Messages are equal where name and values are, stay as they are, and can be packed."""
    assert Message("slab-numbered", number=2) == Message("slab-numbered", number=2)
    assert Message("slab-numbered", number=2) != Message("slab-numbered", number=3)
    assert hash(BASIN) == hash(pickle.loads(pickle.dumps(BASIN)))  # noqa: S301  our own
    assert pickle.loads(pickle.dumps(BASIN)) == BASIN  # noqa: S301  our own
    with pytest.raises(AttributeError):
        BASIN.name = "other"


@pytest.mark.parametrize(
    ("asked", "known"),
    [("de", "de"), ("de-AT", "de"), ("DE_ch", "de"), ("fr", "en"), ("", "en"), (None, "en")],
)
def test_a_language_is_known_by_its_first_part(asked: str | None, known: str) -> None:
    """A region is passed over, and a language that is not spoken here is the usual one."""
    assert known_language(asked) == known
    assert known_language("fr", "de") == "de"


def test_a_count_has_no_groups() -> None:
    """A whole number of a thousand and more is written as it is, in either language."""
    said = Message("calendar-too-many-entries", most=1000)
    assert english(said).endswith(" 1000.")
    assert speech_in("de").say(said).endswith(" 1000.")


def test_equal_lengths_are_said_each_in_its_own_unit() -> None:
    """What was said before is kept by all that is said of it, the unit that was typed too."""
    said = [
        speech_in("en").say(Message("plan-size-round", across=Length.parse(text)))
        for text in ("57 in", "4' 9\"", "57 in")
    ]
    assert said == ["round, 57 in across", "round, 4 ft 9 in across", "round, 57 in across"]
