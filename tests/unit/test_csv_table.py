"""A table is read as a spreadsheet of any country saves it."""

import pytest

from ledgerstone.csv_table import table_rows


def test_commas_or_semicolons_part_the_cells() -> None:
    """With semicolons a number has a decimal comma, its unit behind it or none."""
    read = [{"name": "grau, hell", "dose": "1.5", "wide": "40.5 mm", "left": ""}]
    assert table_rows(["name,dose,wide,left", '"grau, hell",1.5,40.5 mm,']) == read
    assert table_rows(["name;dose;wide;left", "grau, hell;1,5;40,5 mm;"]) == read


@pytest.mark.parametrize(
    ("cell", "read"),
    [
        ("1.000", "1000"),
        ("2.350 kg/m3", "2350 kg/m3"),
        ("-12.345.678", "-12345678"),
        ("1.234,5", "1234.5"),
        ("1.100,25 mm", "1100.25 mm"),
        ("0.500", "0.500"),
        ("55.5", "55.5"),
        ("1.10.2026", "1.10.2026"),
    ],
)
def test_beside_decimal_commas_a_dot_before_three_figures_parts_thousands(
    cell: str, read: str
) -> None:
    """As a German spreadsheet writes them; no number begins with a nought and has thousands."""
    rows = table_rows(["name;load;cell", f"a;55,5;{cell}"])
    assert rows == [{"name": "a", "load": "55.5", "cell": read}]


def test_semicolons_may_stand_beside_decimal_points() -> None:
    """Where a cell can only have a point, and none has a comma, a dot is a point in each."""
    rows = table_rows(["load;span", "55.5;1.000", "61;1.250 m"])
    assert [row["span"] for row in rows] == ["1.000", "1.250 m"]
    assert table_rows(["load;span", "55;1.000"]) == [{"load": "55", "span": "1000"}]


def test_a_heading_alone_has_no_rows() -> None:
    """Nor has nothing at all."""
    assert table_rows(["name,dose"]) == []
    assert table_rows([]) == []
