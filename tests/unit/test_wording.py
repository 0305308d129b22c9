"""Each kind of value is stated in one way.

Amounts, days and shares are held to CLDR's patterns for British English: ¤#,##0.00, d MMMM y and
#,##0%.
"""

from datetime import date
from decimal import Decimal

import pytest

from ledgerstone.wording import Listed, Money, People, Percent, Weight, capital
from support.in_english import value_in_english


@pytest.mark.parametrize(
    ("currency", "amount", "said"),
    [
        ("GBP", "0", "£0.00"),
        ("GBP", "967", "£967.00"),
        ("GBP", "1021.00", "£1,021.00"),
        ("EUR", "9.5", "€9.50"),
        ("USD", "1234567.89", "US$1,234,567.89"),
    ],
)
def test_an_amount_has_its_sign_and_its_thousands_apart(
    currency: str, amount: str, said: str
) -> None:
    """Sign first, thousands apart, two decimals."""
    assert value_in_english(Money(currency, Decimal(amount))) == said


def test_an_amount_below_nought_has_a_minus_before_its_sign() -> None:
    """What is taken off is a minus, not a hyphen; a currency without a sign is named."""
    assert value_in_english(Money("GBP", Decimal(-45))) == "−£45.00"
    assert value_in_english(Money("CHF", Decimal(1967))) == "CHF 1,967.00"


def test_a_day_is_stated_with_its_month_in_letters() -> None:
    """Day, month in letters, year."""
    assert value_in_english(date(2027, 3, 5)) == "5 March 2027"
    assert value_in_english(date(2028, 2, 29)) == "29 February 2028"


def test_a_share_has_its_sign_close() -> None:
    """No space before the sign, and no noughts that say nothing."""
    shares = [Decimal(20), Decimal("8.5"), Decimal("20.00"), Decimal(100)]
    assert [value_in_english(Percent(share)) for share in shares] == ["20%", "8.5%", "20%", "100%"]


@pytest.mark.parametrize(("kg", "said"), [(68.46, "68.5 kg"), (83.04, "83 kg"), (0.25, "0.2 kg")])
def test_a_weight_is_said_to_a_tenth(kg: float, said: str) -> None:
    """One rounding, wherever a mass is stated."""
    assert value_in_english(Weight(kg)) == said


def test_people_are_counted_in_words() -> None:
    """Up to eight in words, then in figures."""
    assert [value_in_english(People(n)) for n in (1, 3, 12)] == [
        "one person",
        "three people",
        "12 people",
    ]


def test_things_are_joined_as_in_a_sentence() -> None:
    """One alone, two with “and”, more with commas; of too many two are named."""
    names = ("a", "b", "c", "d")
    assert [value_in_english(Listed(names[:n])) for n in (0, 1, 2, 3)] == [
        "",
        "a",
        "a and b",
        "a, b and c",
    ]
    assert value_in_english(Listed(names, most=3)) == "a, b and 2 more"


def test_a_sentence_begins_with_a_capital_inside_its_quotation_mark() -> None:
    """“bar” becomes “Bar”."""
    assert (capital("the slab"), capital("“bar” is")) == ("The slab", "“Bar” is")
