"""From a table of broken strips to the lines that go into the workshop's profile."""

from __future__ import annotations

import csv
from collections.abc import Iterable

from ledgerstone.strength.tested import GRAVITY, StripSample, tested_strength_of

COLUMNS = ("age_days", "width_mm", "thickness_mm", "span_mm", "load_kg")
OPTIONAL = ("length_mm", "density_kg_per_m3")

CAUTIONS = """\
Before the next strip: wear eye protection, because a breaking strip throws chips. Keep feet out
from under the strip and the bucket, wear toe-capped boots, and put a board or sand 20 mm under the
bucket so that it cannot fall far. Add the water slowly from beside it, never from underneath."""


def strips_from(lines: Iterable[str]) -> list[StripSample]:
    """Strips from the lines of a CSV table.

    Its first row names the columns: ``age_days, width_mm, thickness_mm, span_mm, load_kg`` and,
    where the strip's own weight is to count, ``length_mm, density_kg_per_m3``.

    Raises
    ------
    ValueError
        If a column is missing or a cell is no number; it names the row and the column.
    """
    rows = list(csv.DictReader(lines, skipinitialspace=True))
    if not rows:
        raise ValueError(f"The table has no strips. Its first row is: {', '.join(COLUMNS)}.")
    return [_strip(row, number) for number, row in enumerate(rows, start=2)]


def _strip(row: dict[str, str], number: int) -> StripSample:
    asked = {name: _number(row, name, number) for name in COLUMNS}
    more = {name: _number(row, name, number) for name in OPTIONAL if row.get(name)}
    return StripSample(load_n=asked.pop("load_kg") * GRAVITY, **asked, **more)


def _number(row: dict[str, str], name: str, number: int) -> float:
    try:
        return float(row[name])
    except (KeyError, TypeError, ValueError) as fault:
        raise ValueError(f"Row {number}: enter a number in the column {name}.") from fault


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


def report(lines: Iterable[str]) -> str:
    """What the strips show, what to write in the profile, and the cautions.

    Raises
    ------
    ValueError
        As ``strips_from`` and ``tested_strength_of``.
    """
    strips = strips_from(lines)
    tested = tested_strength_of(strips)
    counted = tested.characteristic_mpa
    more = "" if tested.strips >= 6 else " Six strips or more make that margin smaller."
    return (
        f"{tested.strips} strips broke at {tested.mean_mpa:.2f} MPa on average (scatter "
        f"{tested.scatter_mpa:.2f} MPa). Counted on, before the safety factor: "
        f"{counted:.2f} MPa.{more}\n\n"
        f"Write in the profile:\n\n{profile_lines(strips)}\n\n{CAUTIONS}\n"
    )
