"""Bars, wires and sheets by the numbers that they are sold by."""

import pytest

from ledgerstone.workshop.keys.steel_sizes import size_named


@pytest.mark.parametrize("number", range(2, 9))
@pytest.mark.parametrize("written", ["#{}", "# {}", "No. {}", "no {}", "#{} bar", "#{} rebar"])
def test_a_bar_s_number_is_its_eighths_of_an_inch(number: int, written: str) -> None:
    """ASTM A615/A615M table 1: nominal diameters 0.375 in of #3 to 1.000 in of #8."""
    read = size_named(written.format(number), "bar_mm")
    assert float(read.removesuffix(" mm")) == pytest.approx(number * 25.4 / 8, abs=0.006)


@pytest.mark.parametrize(
    ("typed", "inches"),
    [("10 gauge", 0.135), ("10 ga", 0.135), ("12-gauge", 0.1055), ("gauge 14", 0.08),
     ("16 ga.", 0.0625), ("#10 gauge", 0.135), ("W1.4", 0.1335), ("D2.9", 0.1922), ("w4", 0.2257)],
)  # fmt: skip
def test_a_wire_is_read_by_its_gauge_or_its_area(typed: str, inches: float) -> None:
    """ASTM A1064/A1064M: W1.4 is 0.014 in²; gauges are the US steel wire gauge, from memory."""
    read = size_named(typed, "mesh_wire_mm")
    assert float(read.removesuffix(" mm")) == pytest.approx(inches * 25.4, abs=0.01)


def test_a_sheet_s_gauge_is_another_than_a_wire_s() -> None:
    """11 gauge sheet is 0.1196 in, 11 gauge wire 0.1205 in; the manufacturers' standard gauge."""
    sheet, wire = (size_named("11 gauge", key) for key in ("wall_mm", "mesh_wire_mm"))
    assert (sheet, wire) == ("3.04 mm", "3.06 mm")


@pytest.mark.parametrize("typed", ["6x6", "6 x 6", "6 × 6", '6" x 6"', "6 by 6"])
def test_a_square_mesh_is_one_pitch(typed: str) -> None:
    """Its wires are as far apart both ways."""
    assert size_named(typed, "mesh_pitch_mm").rstrip('"') == "6"


@pytest.mark.parametrize(
    ("typed", "key"),
    [("6 x 4", "mesh_pitch_mm"), ("#3", "rates"), ("3/8", "bar_mm"), ("99 gauge", "mesh_wire_mm"),
     ("#9", "bar_mm"), ("10 mm", "bar_mm"), ("10 gauge", "bar_mm")],
)  # fmt: skip
def test_what_is_no_such_name_stays_as_it_was_typed(typed: str, key: str) -> None:
    """An oblong mesh, a number at another place, a gauge that no table has."""
    assert size_named(typed, key) == typed


def test_a_diameter_sign_says_nothing_more() -> None:
    """As bars are written in Europe."""
    assert size_named("Ø 8 mm", "bar_mm") == "8 mm"
    assert size_named("8er", "bar_mm") == "8 mm"
