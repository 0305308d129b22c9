"""The workshop's own figures: as a tape, a scale and a beaker show them, in its own units.

What is written is read back and compared with pint's own registry of units.
"""

from dataclasses import replace
from fractions import Fraction
from functools import cache
from typing import Final

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pint import UnitRegistry

from ledgerstone.message import (
    Area,
    AreaLoad,
    Clock,
    Force,
    Gauge,
    Mass,
    Ruled,
    RunningLength,
    SmallVolume,
    Spoken,
    Volume,
    Weighed,
)
from ledgerstone.quantities import Length
from ledgerstone.wording import Speech, Strength, speech_in
from ledgerstone.workshop.countries import RegionalSettings, usual_in

US: Final = usual_in("US").at_work()


@cache
def units() -> UnitRegistry[float]:
    """Pint's own registry."""
    return UnitRegistry()


@cache
def in_america() -> Speech:
    """How a workshop in the United States is told of its work."""
    return speech_in("en", "", US)


@cache
def in_britain() -> Speech:
    """How a British one is."""
    return speech_in("en", "", usual_in("GB"))


@cache
def in_germany() -> Speech:
    """How a German one is."""
    return speech_in("de", "", usual_in("DE"))


def in_si(said: str, unit: str) -> float:
    """What a figure says, in a metric unit, by pint."""
    amount, _, told = said.partition(" ")
    told = {"fl oz": "fluid_ounce", "lb/ft²": "lbf/ft**2", "ft²": "ft**2"}.get(told, told)
    told = "lbf" if unit == "N" else told
    return float(units().Quantity(float(amount.replace(",", "")), told).to(unit).magnitude)


@given(st.floats(3, 4000))
def test_a_tape_shows_thirty_seconds_of_an_inch(mm: float) -> None:
    """What is ruled is within half a mark, whatever is kept is never more, and reads back."""
    for ruled, most in ((Ruled(mm), 25.4 / 64), (Ruled(mm, coarse=True), 25.4 / 8)):
        read = Length.parse(f"{in_america().value(ruled)} in").mm
        assert abs(read - mm) <= most + 1e-6
    kept = Length.parse(f"{in_america().value(Ruled(mm, down=True))} in").mm
    assert mm - 25.4 / 32 - 1e-6 <= kept <= mm + 1e-6


@given(st.integers(8, 64 * 40))
def test_what_is_sold_by_fractions_is_named_by_them(sixty_fourths: int) -> None:
    """A bar of 1/4 in and a board of 3/4 in are named so, whatever their millimetres."""
    inches = Fraction(sixty_fourths, 64)
    said = in_america().value(Gauge(round(float(inches) * 25.4, 2)))
    assert sum(map(Fraction, said.split())) == inches


@pytest.mark.parametrize(
    ("value", "american", "british", "german"),
    [
        (Gauge(2.7), "0.11", "2.7", "2,7"),
        (Ruled(1), "0.04", "1", "1"),
        (Ruled(355.6), "14", "355.5", "355,5"),
        (Ruled(0), "0", "0", "0"),
        (Clock(21, 35), "9:35p", "21:35", "21:35"),
        (Volume(35.96, 1, bare=True), "9.50", "36.0", "36,0"),
        (Strength(1.34, 2, bare=True), "194", "1.34", "1,34"),
        (Weighed(0.142, 0.001), "5.01 oz", "0.142", "0,142"),
        (Weighed(3.54, 0.02), "7.80", "3.54", "3,54"),
        (SmallVolume(94, as_litres=2), "3.2 fl oz", "0.09 l", "0,09 l"),
    ],
)
def test_figures_are_written_as_each_place_writes_them(
    value: Spoken, american: str, british: str, german: str
) -> None:
    """Bare figures, a fine scale's ounces, and the hour."""
    told = [speech.value(value) for speech in (in_america(), in_britain(), in_germany())]
    assert told == [american, british, german]


@given(st.floats(0.5, 5000))
def test_american_figures_are_the_metric_ones(amount: float) -> None:
    """Masses, volumes, areas, forces and even loads, within what their last place holds."""
    for value, unit, within in (
        (Mass(amount, 2), "kg", 0.005 * 0.4536),
        (SmallVolume(amount), "ml", 0.05 * 29.574),
        (Area(amount), "m**2", 0.05 * 0.0929),
        (Force(amount), "N", 0.5 * 4.4483),
        (AreaLoad(amount), "N/m**2", 0.5 * 47.8804),
        (RunningLength(amount), "m", 0.05 * 0.3048),
    ):
        assert in_si(in_america().value(value), unit) == pytest.approx(amount, abs=1.001 * within)


def test_a_workshop_may_work_in_other_units_than_its_customers() -> None:
    """Told nothing it works in theirs, and in millimetres where they read centimetres."""
    metric = replace(usual_in("US"), work_lengths="mm", work_masses="kg")
    assert (metric.lengths, metric.at_work().lengths) == ("in", "mm")
    assert speech_in("en", "", metric.at_work()).value(Ruled(355.6)) == "355.5"
    assert speech_in("en", "", metric.at_work()).value(Mass(2, 1)) == "2.0 kg"
    assert US.lengths == "in"
    assert replace(RegionalSettings("FR"), lengths="cm").at_work().lengths == "mm"
