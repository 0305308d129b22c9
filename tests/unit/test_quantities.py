"""Lengths: what is read, what is stated back, and what is refused with which sentence."""

import json
from collections.abc import Callable, Iterator
from fractions import Fraction
from typing import NoReturn

import pytest

from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length
from ledgerstone.wording import english, number_marks, speech_in
from ledgerstone.workshop.countries import usual_in
from unit.length_table import READ, REFUSED, TYPED_IN

UNWELCOME = ("please", "sorry", "invalid", "illegal", "forbidden", "oops", "required", "error")


def refusal(value: object) -> str:
    """Return the sentence with which a value is refused."""
    with pytest.raises(QuantityError) as caught:
        Length.parse(value)
    return english(caught.value.message)


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


@pytest.mark.parametrize(("language", "country"), TYPED_IN)
def test_a_length_is_read_as_its_country_writes_it(language: str, country: str) -> None:
    """Marks are the country's own; what could be two lengths there is asked back with both."""
    marks = number_marks(language, usual_in(country))
    for typed, exact_mm in TYPED_IN[language, country].items():
        if exact_mm is not None:
            assert Length.parse(typed, marks).exact_mm == Fraction(exact_mm), typed
            continue
        with pytest.raises(QuantityError) as caught:
            Length.parse(typed, marks)
        assert caught.value.message.name in {"length-two-readings", "length-with-comma"}, typed
        assert speech_in(language, "", usual_in(country)).say(caught.value.message)


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
def test_a_result_is_stated_in_the_unit_asked_for(mm: float, unit: str, text: str) -> None:
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
