"""The maker's command: check a profile, start one, or try one on past jobs."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import TextIO

from ledgerstone.cli import past_jobs
from ledgerstone.cli.asking import (
    Unanswered,
    answered,
    ask_country,
    confirmed_keys,
)
from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.wording.own import FILES, sentences_in
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.loader import example_for, load_profile, profile_text, read_profile
from ledgerstone.workshop.starting import as_started, profile_text_of, starting_profile
from ledgerstone.workshop.summary import summary

DONE, NOT_DONE, NO_FILE = 0, 1, 2


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str] | None = None,
    answers: TextIO | None = None,
) -> int:
    """Carry out one command line and return its exit status.

    0: done. 1: the profile has faults, or the file to start stands there already.
    2: the file cannot be read or written, or the answers ended before the questions. Wrong
    arguments leave by ``SystemExit`` with 2.
    """
    if arguments[:1] == [past_jobs.COMMAND]:
        return past_jobs.run(arguments[1:], out, err)
    asked = _parser().parse_args(arguments)
    if asked.command == "check":
        return _check(asked.file, out, err, os.environ if environment is None else environment)
    return _init(asked, answers or sys.stdin, out, err)


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m ledgerstone.workshop",
        description="Check the profile of a workshop, or start one.",
    )
    commands = parser.add_subparsers(dest="command", required=True, metavar="check | init")
    for name, does in (
        ("check", "say what is wrong in a profile, or what it says"),
        ("init", "write a commented profile to fill in"),
    ):
        command = commands.add_parser(name, help=does, description=f"{does.capitalize()}.")
        command.add_argument("file", type=Path, metavar="FILE", help="the profile, a TOML file")
    command.add_argument("--ask", action="store_true", help="ask the questions that matter first")
    command.add_argument(
        "--country",
        default="GB",
        metavar="XX",
        help="whose usual values it starts with",
    )
    return parser


def _check(file: Path, out: TextIO, err: TextIO, environment: Mapping[str, str]) -> int:
    try:
        text = profile_text(file)
    except ProfileError as error:
        err.write(_printed(file, error.faults))
        return NO_FILE
    try:
        workshop = read_profile(text)
        sentences_in(file.parent)
    except ProfileError as error:
        out.write(_printed(file, error.faults))
        out.write(f"{_counted(len(error.faults))} in {file}.\n")
        return NOT_DONE
    out.write(f"{summary(workshop)}\n")
    missing = [*_keys_not_set(environment), *_calendar_not_there(file, workshop)]
    if missing and not workshop.workshop.demonstration:
        listed = "".join(f"- {says}\n" for says in missing)
        out.write(f"\nBefore it serves customers:\n{listed}")
    return DONE


def _keys_not_set(environment: Mapping[str, str]) -> Iterator[str]:
    """Say which keys the environment does not have, and what comes of it."""
    if not environment.get("LEDGERSTONE_SIGNING_KEYS"):
        yield (
            "LEDGERSTONE_SIGNING_KEYS is not set: one is made for each run, and links will stop"
            " opening when it ends."
        )
    if not environment.get("LEDGERSTONE_MAKER_KEY"):
        yield "LEDGERSTONE_MAKER_KEY is not set: another one is made and shown at each start."


def _calendar_not_there(file: Path, workshop: Workshop) -> Iterator[str]:
    """Say that the calendar file is not where the profile says."""
    bookings = workshop.bookings
    if bookings is not None and not (file.parent / bookings.file).is_file():
        yield (
            f"{bookings.file} is not there: without the calendar file every day is called a guess."
        )


def _init(asked: argparse.Namespace, answers: TextIO, out: TextIO, err: TextIO) -> int:
    file: Path = asked.file
    try:
        content = _started(asked, answers, out)
    except Unanswered:
        err.write("\nThe answers ended before the questions, so nothing was written.\n")
        return NO_FILE
    try:
        with file.open("x", encoding="utf-8", newline="\n") as started:
            started.write(content)
    except FileExistsError:
        err.write(f"{file}: this stands there already, so nothing was written. Name a new file.\n")
        return NOT_DONE
    except (OSError, ValueError) as reason:
        err.write(f"{file}: the file cannot be written: {_reason(reason)}.\n")
        return NO_FILE
    out.write(f"Wrote {file}. Fill it in, then run: python -m ledgerstone.workshop check {file}\n")
    return DONE


def _started(asked: argparse.Namespace, answers: TextIO, out: TextIO) -> str:
    """The text of a new profile, with the answers in it where they are asked for."""
    example = load_profile(example_for(asked.country.upper()))
    if not asked.ask:
        return starting_profile(example)
    country = ask_country(asked.country, answers, out)
    example = as_started(load_profile(example_for(country)))
    workshop, confirmed = answered(example, country, answers, out)
    return profile_text_of(workshop, confirmed_keys(workshop, confirmed))


def _reason(reason: Exception) -> str:
    return getattr(reason, "strerror", None) or str(reason)


def _printed(file: Path, faults: Sequence[ProfileFault]) -> str:
    """Return the faults, one a line, as ``FILE:LINE: key: sentence``."""
    return "".join(f"{_place(file, fault)}: {fault.says}\n" for fault in faults)


def _place(file: Path, fault: ProfileFault) -> str:
    is_apart = fault.key in FILES.values()
    file = file.with_name(fault.key) if is_apart else file
    line = f"{file}:{fault.line}" if fault.line else f"{file}"
    return f"{line}: {fault.key}" if fault.key and not is_apart else line


def _counted(faults: int) -> str:
    return "One fault" if faults == 1 else f"{faults} faults"
