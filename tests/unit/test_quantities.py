"""Lengths: what is read, what is said back, and what is refused with which sentence."""

import json
from collections.abc import Callable, Iterator
from fractions import Fraction
from typing import NoReturn

import pytest

from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length

READ = {
    "1450 mm": (1450, "mm", "1450 mm"),
    "1450mm": (1450, "mm", "1450 mm"),
    "560MM": (560, "mm", "560 mm"),
    "  560  mm ": (560, "mm", "560 mm"),
    "1450\N{NO-BREAK SPACE}mm": (1450, "mm", "1450 mm"),
    "0.01 mm": (Fraction("0.01"), "mm", "0.01 mm"),
    "1450.1234 mm": (Fraction("1450.1234"), "mm", "1450.1234 mm"),
    "12 millimetres": (12, "mm", "12 mm"),
    "56 cm": (560, "cm", "56 cm"),
    "56.5CM": (565, "cm", "56.5 cm"),
    "1.45 m": (1450, "m", "1.45 m"),
    "2 M": (2000, "m", "2 m"),
    ".5 m": (500, "m", "0.5 m"),
    "1½ m": (1500, "m", "1.5 m"),
    "3 meters": (3000, "m", "3 m"),
    "0.30000000000000004 m": (300, "m", "0.3 m"),
    "1000 m": (1_000_000, "m", "1000 m"),
    "22 1/16 in": (Fraction("560.3875"), "in", "22 1/16 in"),
    "22-1/16 in": (Fraction("560.3875"), "in", "22 1/16 in"),
    '22 1/16"': (Fraction("560.3875"), "in", "22 1/16 in"),
    "22 1\N{FRACTION SLASH}16 in": (Fraction("560.3875"), "in", "22 1/16 in"),
    "22½ in": (Fraction("571.5"), "in", "22 1/2 in"),
    "22 ½ inches": (Fraction("571.5"), "in", "22 1/2 in"),
    "¾\N{DOUBLE PRIME}": (Fraction("19.05"), "in", "3/4 in"),
    "1 inch": (Fraction("25.4"), "in", "1 in"),
    "11/16 in.": (Fraction("17.4625"), "in", "11/16 in"),
    "22.5 IN": (Fraction("571.5"), "in", "22 1/2 in"),
    "22.1 in": (Fraction("561.34"), "in", "22.1 in"),
    "4' 9\"": (Fraction("1447.8"), "ft", "4 ft 9 in"),
    "4'9\"": (Fraction("1447.8"), "ft", "4 ft 9 in"),
    "4'-9\"": (Fraction("1447.8"), "ft", "4 ft 9 in"),
    "4'9''": (Fraction("1447.8"), "ft", "4 ft 9 in"),
    "4’ 9½”": (Fraction("1460.5"), "ft", "4 ft 9 1/2 in"),
    "4′ 9″": (Fraction("1447.8"), "ft", "4 ft 9 in"),
    "4 ft 9 1/2 in": (Fraction("1460.5"), "ft", "4 ft 9 1/2 in"),
    "4 ft. 9 in.": (Fraction("1447.8"), "ft", "4 ft 9 in"),
    "4 FEET 9.25 Inches": (Fraction("1454.15"), "ft", "4 ft 9 1/4 in"),
    "1 foot": (Fraction("304.8"), "ft", "1 ft"),
    "4 1/2 ft": (Fraction("1371.6"), "ft", "4 ft 6 in"),
    "4.1 ft": (Fraction("1249.68"), "ft", "4 ft 1.2 in"),
    "0 ft": (0, "ft", "0 ft"),
    "0' 9\"": (Fraction("228.6"), "ft", "9 in"),
    "-5 mm": (-5, "mm", "-5 mm"),
    "\N{MINUS SIGN}5 mm": (-5, "mm", "-5 mm"),
    "- 22 1/16 in": (Fraction("-560.3875"), "in", "-22 1/16 in"),
    "-4' 9\"": (Fraction("-1447.8"), "ft", "-4 ft 9 in"),
    "-0 mm": (0, "mm", "0 mm"),
}

REFUSED = {
    # Marks between digits: both readings are shown.
    "1,5 m": "1,5 m could be 1.5 m or 15 m. Write it with a point: 1.5 m.",
    "-1,5 m": "-1,5 m could be -1.5 m or -15 m. Write it with a point: -1.5 m.",
    "2 400 mm": "2 400 mm could be 2.4 mm or 2400 mm.",
    "2\N{NARROW NO-BREAK SPACE}400 mm": "2 400 mm could be 2.4 mm or 2400 mm.",
    "2,400 mm": "2,400 mm could be 2.4 mm or 2400 mm.",
    "1.200,5 mm": "1.200,5 mm could be 1200.5 mm or 1.2005 mm.",
    "1,200.5 mm": "1,200.5 mm could be 1200.5 mm or 1.2005 mm.",
    "1.234.567 mm": "1.234.567 mm could be 1234.567 mm or 1234567 mm.",
    "2 400": "2 400 could be 2.4 or 2400. Write the one you mean with its unit",
    # Fractions.
    "53/8 in": "53/8 in could be 5 3/8 in or 6 5/8 in. Write the one you mean",
    "113/16 in": "could be 1 13/16 in, 11 3/16 in or 7 1/16 in.",
    "4' 53/8\"": "4' 53/8\" could be 4' 5 3/8\" or 4' 6 5/8\".",
    "9/8 in": "The fraction in 9/8 in comes to one or more. Write it as 1 1/8 in.",
    "8/8 in": "comes to one or more. Write it as 1 in.",
    "5 53/8 in": "comes to one or more. Write it as 11 5/8 in.",
    "1/0 in": "The fraction in 1/0 in needs 2, 4, 8, 16, 32 or 64 below the line.",
    "1/3 in": "needs 2, 4, 8, 16, 32 or 64 below the line.",
    "⅓ in": "needs 2, 4, 8, 16, 32 or 64 below the line.",
    "1/128 in": "needs 2, 4, 8, 16, 32 or 64 below the line.",
    "2.5 1/2 in": "does not read as a length",
    "5½½ in": "does not read as a length",
    "½5 in": "does not read as a length",
    "1/2/3 in": "does not read as a length",
    # Units left out, mixed or strange.
    "": "Enter a length with its unit, like 1450 mm",
    "   ": "Enter a length with its unit, like 1450 mm",
    "1450": "1450 has no unit. Write 1450 mm, 1450 cm or 1450 in, whichever you mean.",
    "-3.5": "-3.5 has no unit.",
    "22 1/2": "22 1/2 has no unit. Write 22 1/2 in if it is inches.",
    "4' 9": "4' 9 ends without its unit. Write 4' 9 in.",
    "4 ft 9 1/2": "4 ft 9 1/2 ends without its unit. Write 4 ft 9 1/2 in.",
    "4 ft 12 in": "In 4 ft 12 in the inches make another foot.",
    "4 ft 14 in": "In 4 ft 14 in the inches make another foot. Write them under 12",
    "4 ft 200 mm": "4 ft 200 mm mixes units.",
    "1 m 20 cm": "1 m 20 cm mixes units.",
    "4.5 ft 6 in": "4.5 ft 6 in mixes units.",
    "5 lightyear": "5 lightyear is in a unit that is not read here. Write it in mm, cm, m",
    "5 attoparsec": "is in a unit that is not read here",
    "5 yd": "is in a unit that is not read here",
    "5 м": "is in a unit that is not read here",  # a Cyrillic letter
    "mm": "does not read as a length",
    "banana": "does not read as a length",
    # Sums, towers and numbers that are none.
    "10**10**7 mm": "10**10**7 mm reads as a sum. Write its answer",
    "9^9 m": "reads as a sum",
    "7 ft + 10.5 in": "reads as a sum",
    "2*3 mm": "reads as a sum",
    "1e3 mm": "Write the number in 1e3 mm out in full",
    "1e999 m": "Write the number in 1e999 m out in full",
    "nan mm": "nan mm has no number in it.",
    "inf m": "inf m has no number in it.",
    "-Infinity": "-Infinity has no number in it.",
    "+5 mm": "does not read as a length",
    "1_000 mm": "does not read as a length",
    "5. mm": "does not read as a length",
    # Look-alike digits and marks that do not print.
    "\uff11\uff12 mm": "with the digits 0 to 9",
    "\u0663 mm": "with the digits 0 to 9",
    "5² mm": "with the digits 0 to 9",
    "①  mm": "with the digits 0 to 9",
    "三 mm": "with the digits 0 to 9",
    "5 mm\n6": "“5 mm·6” does not read as a length.",
    "5 mm\n": "“5 mm·” does not read as a length.",
    "5\tmm": "“5·mm” does not read as a length.",
    "5\u202emm": "“5·mm” does not read as a length.",
    "5 mm # x": "does not read as a length",
    "\x00": "“·” does not read as a length.",
    "\ud800": "“·” does not read as a length.",
    "5 mm x 6 mm": "does not read as a length",
    # Too much.
    "9999999 m": "This is more than 1000 m. Check the number and its unit.",
    "1000.000001 m": "This is more than 1000 m.",
    "-1001 m": "This is more than 1000 m.",
    "1" + "0" * 5000 + " mm": "This has 5004 characters; a length has at most 32.",
    "1 m" * 3000: "This has 9000 characters",
    "(" * 5000: "This has 5000 characters",
    "1" * 30 + " mm": "This has 33 characters",
}

UNWELCOME = ("please", "sorry", "invalid", "illegal", "forbidden", "oops", "required", "error")


def refusal(value: object) -> str:
    """Give the sentence with which a value is refused."""
    with pytest.raises(QuantityError) as caught:
        Length.parse(value)
    return caught.value.says


@pytest.mark.parametrize("typed", READ)
def test_a_typed_length_is_read_exactly_and_said_back(typed: str) -> None:
    """A typed length gives its exact millimetres, its unit and its own words."""
    exact_mm, unit, said = READ[typed]
    length = Length.parse(typed)
    assert (length.exact_mm, length.unit, length.text()) == (exact_mm, unit, said)


@pytest.mark.parametrize("typed", READ)
def test_a_typed_length_goes_back_as_text(typed: str) -> None:
    """What came as text goes back on the wire as text, and str gives the same."""
    length = Length.parse(typed)
    assert length.wire() == str(length) == READ[typed][2]


@pytest.mark.parametrize("typed", REFUSED, ids=lambda typed: ascii(typed[:40]))
def test_a_text_that_could_mislead_is_refused_in_plain_words(typed: str) -> None:
    """A text that is no length, or could be two, is refused with the sentence that helps."""
    assert REFUSED[typed] in refusal(typed)


@pytest.mark.parametrize("typed", REFUSED, ids=lambda typed: ascii(typed[:40]))
def test_a_refusal_is_a_short_printable_sentence(typed: str) -> None:
    """A refusal prints, ends with a full stop, has no unwelcome word and stays short."""
    says = refusal(typed)
    assert says.isprintable()
    assert says.endswith(".")
    assert len(says) <= 240
    assert not [word for word in UNWELCOME if word in says.lower()]
    assert typed[:41] not in says or len(typed) <= 40


@pytest.mark.parametrize(
    ("number", "text"),
    [
        (1450, "1450 mm"),
        (1450.0, "1450 mm"),
        (0.1, "0.1 mm"),
        (-12.5, "-12.5 mm"),
        (1450.126, "1450.13 mm"),
        (-0.0, "0 mm"),
        (5e-324, "0 mm"),
        (1_000_000, "1000000 mm"),
    ],
)
def test_a_number_is_millimetres_and_goes_back_as_the_same_number(number: float, text: str) -> None:
    """A JSON number is millimetres, said to 0.01 mm, and goes back as the number that came."""
    length = Length.parse(number)
    assert (length.mm, length.unit, length.text()) == (number, "mm", text)
    assert json.loads(json.dumps(length.wire())) == number


def test_a_number_is_the_decimal_it_was_written_as() -> None:
    """0.1 is a tenth of a millimetre, not the nearest binary number."""
    assert Length.parse(0.1).exact_mm == Fraction(1, 10)


@pytest.mark.parametrize(
    "value", [True, False, None, [], {}, b"5 mm", float("nan"), float("inf"), -float("inf"), 1j]
)
def test_what_is_neither_a_number_nor_text_is_refused(value: object) -> None:
    """A boolean, a null, a list or a number without an end is no length."""
    assert refusal(value).startswith("Enter a length as a number of millimetres, like 1450")


@pytest.mark.parametrize("number", [1_000_001, -1_000_000.5, 1e308, 10**400])
def test_a_number_past_a_kilometre_is_refused(number: float) -> None:
    """A number past 1 000 000 mm is refused without repeating it."""
    assert refusal(number) == "This is more than 1000 m. Check the number and its unit."


def test_an_endless_text_is_refused_by_its_length_alone() -> None:
    """A text over 32 characters is refused before one of them is read."""

    class Untouchable(str):
        """A text whose characters nobody may look at."""

        __slots__ = ()

        def _touched(self, *_: object) -> NoReturn:
            raise AssertionError

        translate: Callable[..., NoReturn] = _touched
        replace: Callable[..., NoReturn] = _touched
        strip: Callable[..., NoReturn] = _touched
        __getitem__: Callable[..., NoReturn] = _touched

        def __iter__(self) -> Iterator[str]:
            raise AssertionError

    assert "33 characters" in refusal(Untouchable("1" * 33))
    with pytest.raises(AssertionError):
        Length.parse(Untouchable("1 mm"))


def test_lengths_compare_by_how_long_they_are() -> None:
    """Equality, order and hash go by length, whatever the unit."""
    metre, millimetres, yard = Length.parse("1 m"), Length.parse(1000), Length.parse("3 ft")
    assert metre == millimetres
    assert hash(metre) == hash(millimetres)
    assert yard < metre
    assert sorted([metre, yard]) == [yard, metre]


@pytest.mark.parametrize(
    ("mm", "unit", "text"),
    [
        (537.126, "mm", "537.13 mm"),
        (537.126, "cm", "53.713 cm"),
        (537.126, "m", "0.53713 m"),
        (560.3875, "in", "22 1/16 in"),
        (500, "in", "19.685 in"),
        (500, "ft", "1 ft 7.685 in"),
        (304.7999, "ft", "1 ft"),
        (-38.1, "in", "-1 1/2 in"),
    ],
)
def test_a_result_is_said_in_the_unit_asked_for(mm: float, unit: str, text: str) -> None:
    """A worked-out length is said to 0.01 mm or 0.001 in, or as a 64th where it is one."""
    assert Length.of_mm(mm, unit).text() == text  # type: ignore[arg-type]  # table of literals


def test_an_endless_result_is_refused() -> None:
    """A result that is no number is not made into a length."""
    with pytest.raises(QuantityError):
        Length.of_mm(float("nan"))


def test_another_length_is_spoken_the_way_this_one_came() -> None:
    """A length in another's unit keeps its value, and is a number where the other was one."""
    assert Length.parse("1 m").in_unit(38).wire() == "0.038 m"
    assert Length.parse("4' 9\"").in_unit(1473.2).wire() == "4 ft 10 in"
    assert Length.parse(1000).in_unit(38.25).wire() == 38.25
    assert Length.of_mm(1000, "cm").in_unit(38).wire() == "3.8 cm"


@pytest.mark.parametrize(
    ("typed", "near", "up", "down"),
    [
        ("1 mm", "1450 mm", "1451 mm", "1450 mm"),
        ("1 cm", "145 cm", "145.1 cm", "145 cm"),
        ("1 m", "1.45 m", "1.451 m", "1.45 m"),
        ("1 in", "57 1/8 in", "57 1/8 in", "57 1/16 in"),
        ("1 ft", "4 ft 9 1/8 in", "4 ft 9 1/8 in", "4 ft 9 1/16 in"),
    ],
)
def test_a_worked_out_length_is_rounded_as_a_person_writes_it(
    typed: str, near: str, up: str, down: str
) -> None:
    """1450.3 mm (57.098 in) is said to a millimetre or a sixteenth of an inch, either way."""
    like = Length.parse(typed).like
    assert like(1450.3).text() == near
    assert like(1450.3, "up").text() == up
    assert like(1450.3, "down").text() == down


@pytest.mark.parametrize(
    ("typed", "to_mm", "text"),
    [
        ("1 mm", 5, "1455 mm"),
        ("1 m", 50, "1.5 m"),
        ("1 in", 0.1, "57 1/8 in"),
        ("1 in", 5, "57 1/8 in"),
        ("1 in", 10, "57 1/4 in"),
        ("1 in", 25, "57 1/2 in"),
        ("1 in", 25.4, "58 in"),
        ("1 in", 1000, "58 in"),
    ],
)
def test_a_coarser_step_is_coarser_in_inches_too(typed: str, to_mm: float, text: str) -> None:
    """The step in inches is the largest of 1 to 1/16 in that is within the one in mm."""
    assert Length.parse(typed).like(1450.3, "up", to_mm=to_mm).text() == text


def test_noise_does_not_push_a_length_a_whole_step() -> None:
    """A millionth of a millimetre past a step is still that step."""
    assert Length.parse(1).like(75.0000000001, "up").wire() == 75
    assert Length.parse(1).like(74.9999999999, "down").wire() == 75
    assert Length.parse("1 in").like(0.1 + 0.2 + 25.1, "up").text() == "1 in"
