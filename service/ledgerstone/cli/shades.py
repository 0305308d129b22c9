"""The command for shades: fits readings of cast tiles to lines of a profile, with residuals.

The file has a header and one tile a line::

    pigment,cement,dose_percent,lightness,a,b
    ,grey,0,66.2,-0.8,3.1
    black iron oxide,grey,2,46.2,-0.8,-0.9
"""

from __future__ import annotations

import csv
import math
import os
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal, TextIO, cast

from ledgerstone.cli.context import locale_language, reports_in
from ledgerstone.cli.exit_status import DONE, NOT_DONE, NOT_READ
from ledgerstone.cli.parsing import CommandParser
from ledgerstone.csv_table import table_rows
from ledgerstone.errors import ProfileError
from ledgerstone.file_faults import file_fault
from ledgerstone.message import Figure, Message, Percent
from ledgerstone.shade.colour import Lab
from ledgerstone.shade.curve import DOSES_THAT_PROVE, PigmentCurve, fit_curve
from ledgerstone.wording import Speech, speech_in
from ledgerstone.wording.profile_faults import fault_lines
from ledgerstone.workshop.records import PigmentSample

READING_COLUMNS = ("pigment", "cement", "dose_percent", "lightness", "a", "b")
_BOUNDS = {"dose_percent": (0, 15), "lightness": (0, 100), "a": (-128, 128), "b": (-128, 128)}
LARGE_MISS_DELTA_E = 3.0  # visible side by side: check the tile or its reading


@dataclass(frozen=True, slots=True)
class _Reading:
    pigment: str
    cement: Literal["grey", "white"]
    dose_percent: float
    lab: Lab


class _ReadingFault(ValueError):
    """One line of the file cannot be read; ``message`` says why."""

    def __init__(self, message: Message) -> None:
        super().__init__(message.name)
        self.message = message


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str] | None = None,
) -> int:
    """Run one command line and return its exit status.

    0: the lines were printed. 1: the readings have faults. 2: the file cannot be read. Wrong
    arguments raise ``SystemExit`` with 2.
    """
    environment = os.environ if environment is None else environment
    speech = speech_in(locale_language(environment))
    options = _parser(speech).parse_args(arguments)
    file = options.file
    try:
        speech = reports_in(options.workshop, environment)
        rows = table_rows(file.read_text(encoding="utf-8-sig").splitlines())
    except ProfileError as fault:
        err.writelines(fault_lines(fault, "profile"))
        return NOT_READ
    except (OSError, UnicodeDecodeError, csv.Error) as reason:
        unread = Message("cli-unreadable", file=str(file), reason=file_fault(reason))
        err.write(f"{speech.say(unread)}\n")
        return NOT_READ
    readings, faults = _readings(rows)
    faults = faults or [("", lacking) for lacking in _lacking(readings)]
    if faults:
        out.writelines(f"{file}{line}: {speech.say(why)}\n" for line, why in faults)
        return NOT_DONE
    out.write("\n".join(_profile_lines(readings, speech)) + "\n")
    return DONE


def _parser(speech: Speech) -> CommandParser:
    parser = CommandParser(speech, "shade", prog="python -m ledgerstone.shade")
    fit = parser.add_command(parser.add_commands("fit"), "fit")
    fit.epilog = ",".join(READING_COLUMNS)
    fit.add_path("file", metavar="FILE.csv", about="tiles-file")
    fit.add_path("--workshop", metavar="FILE", about="workshop-file")
    return parser


# --- reading the file -----------------------------------------------------------------------


def _readings(
    rows: Sequence[Mapping[str, str]],
) -> tuple[list[_Reading], list[tuple[str, Message]]]:
    """Return the readings, and for each line that cannot be read its number and the reason."""
    if not rows or not set(READING_COLUMNS) <= rows[0].keys():
        return [], [(":1", Message("shades-unheaded", columns=",".join(READING_COLUMNS)))]
    readings, faults = [], []
    for line, row in enumerate(rows, 2):
        try:
            readings.append(_reading(row))
        except _ReadingFault as reason:
            faults.append((f":{line}", reason.message))
    return readings, faults


def _reading(row: Mapping[str, str]) -> _Reading:
    if row["cement"] not in ("grey", "white"):
        raise _ReadingFault(Message("shades-cement", found=row["cement"][:40]))
    dose, *lab = (_number(row[name], name) for name in READING_COLUMNS[2:])
    if dose > 0 and not row["pigment"]:
        raise _ReadingFault(Message("shades-unnamed"))
    cement = cast("Literal['grey', 'white']", row["cement"])
    return _Reading(row["pigment"] if dose else "", cement, dose, cast("Lab", tuple(lab)))


def _number(text: str, name: str) -> float:
    low, high = _BOUNDS[name]
    try:
        value = float(text)
    except ValueError:
        raise _ReadingFault(Message("shades-number", column=name, found=text[:40])) from None
    if not math.isfinite(value) or not low <= value <= high:
        bounds = {"low": str(low), "high": str(high)}
        raise _ReadingFault(Message("shades-bound", column=name, found=text[:40], **bounds))
    return value


def _lacking(readings: Sequence[_Reading]) -> Iterator[Message]:
    """Yield which cements have no tile without pigment."""
    bare = {reading.cement for reading in readings if not reading.dose_percent}
    for cement in sorted({reading.cement for reading in readings} - bare):
        yield Message("shades-no-bare", cement=cement)


# --- writing the profile's lines ------------------------------------------------------------


def _profile_lines(readings: Sequence[_Reading], speech: Speech) -> Iterator[str]:
    bases = dict(_bases(readings))
    yield f"# {speech.say(Message('shades-bases'))}"
    for cement, lab in bases.items():
        yield f'\n[[shade.bases]]\ncement = "{cement}"'
        yield from (
            f"{key} = {value:g}" for key, value in zip(READING_COLUMNS[3:], lab, strict=True)
        )
    for name in dict.fromkeys(r.pigment for r in readings if r.pigment):
        samples = [_sample(r) for r in readings if r.pigment == name]
        yield f"\n# {speech.say(Message('shades-pigment', name=name))}"
        yield from _comments(fit_curve(name, samples, bases), speech)
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
    numbers = (f"{key} = {getattr(sample, key):g}" for key in READING_COLUMNS[2:])
    return ", ".join([f'cement = "{sample.cement}"', *numbers])


def _comments(curve: PigmentCurve, speech: Speech) -> Iterator[str]:
    """Yield the residuals of the fitted curve as comments."""
    misses = Message("shades-misses", miss=Figure(curve.residual_delta_e, 1))
    yield f"# {speech.say(misses)}"
    again = f"  <- {speech.say(Message('shades-again'))}"
    for sample, miss in zip(curve.samples, curve.misses, strict=True):
        look = again if miss > LARGE_MISS_DELTA_E else ""
        dose = speech.value(Percent(Decimal(repr(sample.dose_percent))))
        tile = Message("shades-tile", cement=sample.cement, dose=dose, miss=Figure(miss, 1))
        yield f"#   {speech.say(tile)}{look}"
    if len({sample.dose_percent for sample in curve.samples}) < DOSES_THAT_PROVE:
        yield f"# {speech.say(Message('shades-few', count=DOSES_THAT_PROVE))}"
