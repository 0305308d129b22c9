"""From a table of broken strips to the lines that go into the workshop's profile."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from ledgerstone.csv_table import table_rows
from ledgerstone.message import Message
from ledgerstone.strength.tested import GRAVITY, StripSample
from ledgerstone.workshop.keys.measures import measured

COLUMNS = ("age_days", "width_mm", "thickness_mm", "span_mm", "load_kg")
OPTIONAL = ("length_mm", "density_kg_per_m3")


class StripFault(ValueError):
    """A table of strips does not read; ``message`` says why."""

    def __init__(self, message: Message) -> None:
        super().__init__(message.name)
        self.message = message


def strips_from(lines: Iterable[str]) -> list[StripSample]:
    """Strips from the lines of a CSV table.

    Its first row names the columns: ``age_days, width_mm, thickness_mm, span_mm, load_kg`` and,
    where the strip's own weight is to count, ``length_mm, density_kg_per_m3``. A number is in its
    column's unit; ``1 1/2 in`` and ``55 lb`` have their own.

    Raises
    ------
    StripFault
        If a column is missing or a cell is no number; it names the row and the column.
    """
    rows = table_rows(lines)
    if not rows:
        raise StripFault(Message("strips-none", columns=", ".join(COLUMNS)))
    return [_strip(row, number) for number, row in enumerate(rows, start=2)]


def _strip(row: Mapping[str, str], number: int) -> StripSample:
    asked = {name: _number(row, name, number) for name in COLUMNS}
    more = {name: _number(row, name, number) for name in OPTIONAL if row.get(name)}
    return StripSample(load_n=asked.pop("load_kg") * GRAVITY, **asked, **more)


def _number(row: Mapping[str, str], name: str, number: int) -> float:
    text = row.get(name, "")
    try:
        return float(text)
    except ValueError:
        found = measured(text, name) if text else None
    if found is None:
        raise StripFault(Message("strips-number", row=number, column=name))
    return float(found)


def profile_lines(strips: Iterable[StripSample]) -> str:
    """Lines for the workshop's profile (TOML), one table a strip, its own weight in the load."""
    return "\n\n".join(
        "\n".join(
            [
                "[[concrete.tested]]",
                f"age_days = {strip.age_days:g}",
                f"width_mm = {strip.width_mm:g}",
                f"thickness_mm = {strip.thickness_mm:g}",
                f"span_mm = {strip.span_mm:g}",
                f"load_n = {strip.whole_load_n:.0f}",
            ]
        )
        for strip in strips
    )
