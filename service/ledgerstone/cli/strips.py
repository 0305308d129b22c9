"""The command for test strips: a table of broken strips, and what its concrete counts for."""

from __future__ import annotations

import csv
import os
from collections.abc import Iterable, Mapping, Sequence
from typing import Final, TextIO

from ledgerstone.cli.context import locale_language, reports_in
from ledgerstone.cli.parsing import CommandParser
from ledgerstone.errors import ProfileError
from ledgerstone.file_faults import file_fault
from ledgerstone.message import Message, Strength
from ledgerstone.strength.strips import StripFault, profile_lines, strips_from
from ledgerstone.strength.tested import tested_strength_of
from ledgerstone.wording import Speech, speech_in
from ledgerstone.wording.profile_faults import fault_lines

_ENOUGH: Final = 6


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str] | None = None,
) -> int:
    """Write the fitted strength and return the exit status: 2 if the table cannot be read."""
    environment = os.environ if environment is None else environment
    speech = speech_in(locale_language(environment))
    parser = CommandParser(speech, "strips", prog="strips")
    parser.add_path("file", metavar="FILE.csv", about="strips-file")
    parser.add_path("--workshop", metavar="FILE", about="workshop-file")
    options = parser.parse_args(arguments)
    try:
        speech = reports_in(options.workshop, environment)
        out.write(report(options.file.read_text(encoding="utf-8-sig").splitlines(), speech))
    except ProfileError as fault:
        err.writelines(fault_lines(fault, "profile"))
    except StripFault as fault:
        err.write(f"{speech.say(fault.message)}\n")
    except BrokenPipeError:
        raise
    except (OSError, UnicodeDecodeError, csv.Error) as fault:
        unread = Message("cli-unreadable", file=str(options.file), reason=file_fault(fault))
        err.write(f"{speech.say(unread)}\n")
    else:
        return 0
    return 2


def report(lines: Iterable[str], speech: Speech) -> str:
    """Return what the strips show, what to write in the profile, and the cautions.

    Raises
    ------
    StripFault
    """
    strips = strips_from(lines)
    try:
        tested = tested_strength_of(strips)
    except ValueError as reason:
        raise StripFault(Message("strips-unlike")) from reason
    shown = Message(
        "strips-report",
        count=tested.strips,
        mean=Strength(tested.mean_mpa, places=2),
        scatter=Strength(tested.scatter_mpa, places=2),
        counted=Strength(tested.characteristic_mpa, places=2),
        few="no" if tested.strips >= _ENOUGH else "yes",
    )
    parts = (
        speech.say(shown),
        speech.say(Message("strips-write")),
        profile_lines(strips),
        speech.say(Message("strips-cautions")),
    )
    return "\n\n".join(parts) + "\n"
