"""Damp cover against EN 13670's class 2, and the cements' growth against EN 1992-1-1.

Source of the days: EN 13670:2009 table F.1 as sources §6.3 gives it, marked there as from
memory (class, structure and the 12 hours' minimum were read in a public glossary); look them up in
the standard before you rest on them. Growth by EN 1992-1-1 3.1.2(6).
"""

import math

import pytest

from ledgerstone.schedule.curing import damp_days
from ledgerstone.strength.concrete import CementClass

# Days by warmth of the face, for rapid and for middling growth of strength.
TABLE_F1 = {25: (1.0, 1.5), 15: (1.0, 2.5), 10: (1.5, 4.0), 5: (2.0, 5.0)}
GROWTH: dict[CementClass, tuple[float, float, int]] = {
    "R": (0.20, 0.578, 0),
    "N": (0.25, 0.504, 0),
    "S": (0.38, 0.353, 1),
}


@pytest.mark.parametrize("cement", GROWTH)
def test_a_cements_growth_says_which_column_it_has(cement: CementClass) -> None:
    """R(2 d)/R(28 d) is exp(s (1 - sqrt(28/2))): from 0.5 on rapid, from 0.3 on middling."""
    s, ratio, column = GROWTH[cement]
    assert math.exp(s * (1 - math.sqrt(28 / 2))) == pytest.approx(ratio, abs=0.0005)
    assert (ratio < 0.5) == bool(column)


@pytest.mark.parametrize("celsius", TABLE_F1)
@pytest.mark.parametrize("cement", GROWTH)
def test_damp_days_are_the_tables(cement: CementClass, celsius: int) -> None:
    """At each row's least warmth and up to the next row's, the days are the table's."""
    days = TABLE_F1[celsius][GROWTH[cement][2]]
    next_row = {5: 9.9, 10: 14.9, 15: 24.9, 25: 45.0}[celsius]
    assert damp_days(celsius, cement) == damp_days(next_row, cement) == days


def test_time_below_five_degrees_counts_for_nothing() -> None:
    """EN 13670 8.5, from memory: cold concrete gains no cover."""
    assert damp_days(4.9, "N") is None
