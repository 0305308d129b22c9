"""The command for shades: fits readings of cast tiles to lines of a profile, with residuals.

The file has a header and one tile a line::

    pigment,cement,dose_percent,lightness,a,b
    ,grey,0,66.2,-0.8,3.1
    black iron oxide,grey,2,46.2,-0.8,-0.9
"""

from __future__ import annotations

import argparse
import csv
import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Literal, TextIO, cast

from ledgerstone.shade.colour import Lab
from ledgerstone.shade.curve import DOSES_THAT_PROVE, PigmentCurve, fit_curve
from ledgerstone.workshop.records import PigmentSample

DONE, NOT_DONE, NO_FILE = 0, 1, 2
COLUMNS = ("pigment", "cement", "dose_percent", "lightness", "a", "b")
_BOUNDS = {"dose_percent": (0, 15), "lightness": (0, 100), "a": (-128, 128), "b": (-128, 128)}
LARGE_MISS_DELTA_E = 3.0  # visible side by side: check the tile or its reading


@dataclass(frozen=True, slots=True)
class _Reading:
    pigment: str
    cement: Literal["grey", "white"]
    dose_percent: float
    lab: Lab


class _ReadingFault(ValueError):
    """One line of the file cannot be read; the text says why."""


def run(arguments: Sequence[str], out: TextIO, err: TextIO) -> int:
    """Run one command line and return its exit status.

    0: the lines were printed. 1: the readings have faults. 2: the file cannot be read. Wrong
    arguments raise ``SystemExit`` with 2.
    """
    file = _parser().parse_args(arguments).file
    try:
        rows = _rows(file)
    except (OSError, UnicodeDecodeError, ValueError, csv.Error) as reason:
        err.write(
            f"{file}: the file cannot be read: {getattr(reason, 'strerror', '') or reason}.\n"
        )
        return NO_FILE
    readings, faults = _readings(rows)
    faults = faults or [*_lacking(readings)]
    if faults:
        out.write("".join(f"{file}{says}\n" for says in faults))
        return NOT_DONE
    out.write("\n".join(_profile_lines(readings)) + "\n")
    return DONE


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m ledgerstone.shade", description="Work out shades from readings of tiles."
    )
    commands = parser.add_subparsers(dest="command", required=True, metavar="fit")
    does = f"turn readings, a CSV file with the heading {','.join(COLUMNS)}, into profile lines"
    fit = commands.add_parser("fit", help=does, description=f"{does[0].upper()}{does[1:]}.")
    fit.add_argument("file", type=Path, metavar="FILE.csv", help="one tile a line")
    return parser


# --- reading the file -----------------------------------------------------------------------


def _rows(file: Path) -> list[dict[str, str]]:
    with file.open(encoding="utf-8-sig", newline="") as opened:
        return [
            {str(key).strip(): str(value or "").strip() for key, value in row.items()}
            for row in csv.DictReader(opened)
        ]


def _readings(rows: Sequence[Mapping[str, str]]) -> tuple[list[_Reading], list[str]]:
    """Return the readings, and for each line that cannot be read its number and the reason."""
    if not rows or not set(COLUMNS) <= rows[0].keys():
        return [], [f":1: the first line is the heading {','.join(COLUMNS)}, and tiles follow."]
    readings, faults = [], []
    for line, row in enumerate(rows, 2):
        try:
            readings.append(_reading(row))
        except _ReadingFault as reason:
            faults.append(f":{line}: {reason}")
    return readings, faults


def _reading(row: Mapping[str, str]) -> _Reading:
    if row["cement"] not in ("grey", "white"):
        raise _ReadingFault(f'cement is grey or white; here stands "{row["cement"][:40]}".')
    dose, *lab = (_number(row[name], name) for name in COLUMNS[2:])
    if dose > 0 and not row["pigment"]:
        raise _ReadingFault("a tile with a dose needs its pigment's name.")
    cement = cast("Literal['grey', 'white']", row["cement"])
    return _Reading(row["pigment"] if dose else "", cement, dose, cast("Lab", tuple(lab)))


def _number(text: str, name: str) -> float:
    low, high = _BOUNDS[name]
    try:
        value = float(text)
    except ValueError:
        raise _ReadingFault(f'{name} is a number; here stands "{text[:40]}".') from None
    if not math.isfinite(value) or not low <= value <= high:
        raise _ReadingFault(f"{name} is {text[:40]}; it lies between {low} and {high}.")
    return value


def _lacking(readings: Sequence[_Reading]) -> Iterator[str]:
    """Yield which cements have no tile without pigment."""
    bare = {reading.cement for reading in readings if not reading.dose_percent}
    for cement in sorted({reading.cement for reading in readings} - bare):
        yield f": no tile of {cement} cement is without pigment. Add one with the dose 0."


# --- writing the profile's lines ------------------------------------------------------------


def _profile_lines(readings: Sequence[_Reading]) -> Iterator[str]:
    bases = dict(_bases(readings))
    yield "# Put these in place of the [[shade.bases]] of your profile."
    for cement, lab in bases.items():
        yield f'\n[[shade.bases]]\ncement = "{cement}"'
        yield from (f"{key} = {value:g}" for key, value in zip(COLUMNS[3:], lab, strict=True))
    for name in dict.fromkeys(r.pigment for r in readings if r.pigment):
        samples = [_sample(r) for r in readings if r.pigment == name]
        yield f'\n# Put this under the [[pigments]] whose name is "{name}".'
        yield from _comments(fit_curve(name, samples, bases))
        yield "samples = ["
        yield from (f"  {{ {_written(sample)} }}," for sample in samples)
        yield "]"


def _bases(readings: Iterable[_Reading]) -> Iterator[tuple[str, Lab]]:
    """Yield each cement and the mean of its tiles without pigment, to 0.01."""
    for cement in ("grey", "white"):
        labs = [r.lab for r in readings if r.cement == cement and not r.dose_percent]
        if labs:
            mean = (round(math.fsum(part) / len(labs), 2) for part in zip(*labs, strict=True))
            yield cement, cast("Lab", tuple(mean))


def _sample(reading: _Reading) -> PigmentSample:
    lightness, a, b = reading.lab
    return PigmentSample(
        cement=reading.cement, dose_percent=reading.dose_percent, lightness=lightness, a=a, b=b
    )


def _written(sample: PigmentSample) -> str:
    numbers = (f"{key} = {getattr(sample, key):g}" for key in COLUMNS[2:])
    return ", ".join([f'cement = "{sample.cement}"', *numbers])


def _comments(curve: PigmentCurve) -> Iterator[str]:
    """Yield the residuals of the fitted curve as comments."""
    yield f"# The curve misses the tiles by ΔE00 {curve.residual_delta_e:.1f} in the mean:"
    for sample, miss in zip(curve.samples, curve.misses, strict=True):
        look = "  <- look at this tile again" if miss > LARGE_MISS_DELTA_E else ""
        yield f"#   {sample.cement} {sample.dose_percent:g} %: {miss:.1f}{look}"
    if len({sample.dose_percent for sample in curve.samples}) < DOSES_THAT_PROVE:
        yield f"# Fewer than {DOSES_THAT_PROVE} doses: between them, and beyond, this is a guess."
