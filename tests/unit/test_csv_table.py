"""A table is read as a spreadsheet of any country saves it."""

from ledgerstone.csv_table import table_rows


def test_commas_or_semicolons_part_the_cells() -> None:
    """With semicolons a number has a decimal comma, its unit behind it or none."""
    read = [{"name": "grau, hell", "dose": "1.5", "wide": "40.5 mm", "left": ""}]
    assert table_rows(["name,dose,wide,left", '"grau, hell",1.5,40.5 mm,']) == read
    assert table_rows(["name;dose;wide;left", "grau, hell;1,5;40,5 mm;"]) == read


def test_a_heading_alone_has_no_rows() -> None:
    """Nor has nothing at all."""
    assert table_rows(["name,dose"]) == []
    assert table_rows([]) == []
