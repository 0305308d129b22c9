"""The command for test strips: a table of broken strips, and what its concrete counts for."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping, Sequence
from typing import Final, TextIO

from ledgerstone.cli.context import locale_language
from ledgerstone.cli.parsing import CommandParser
from ledgerstone.message import Figure, Message
from ledgerstone.strength.strips import StripFault, profile_lines, strips_from
from ledgerstone.strength.tested import tested_strength_of
from ledgerstone.wording import Speech, speech_in

_ENOUGH: Final = 6


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str] | None = None,
) -> int:
    """Write the fitted strength and return the exit status: 2 if the table cannot be read."""
    speech = speech_in(locale_language(os.environ if environment is None else environment))
    parser = CommandParser(speech, "strips", prog="strips")
    parser.add_path("file", metavar="FILE.csv", about="strips-file")
    file = parser.parse_args(arguments).file
    try:
        out.write(report(file.read_text(encoding="utf-8-sig").splitlines(), speech))
    except StripFault as fault:
        err.write(f"{speech.say(fault.message)}\n")
    except UnicodeDecodeError as fault:
        err.write(_unreadable(str(file), fault.reason, speech))
    except BrokenPipeError:
        raise
    except OSError as fault:
        err.write(_unreadable(str(file), fault.strerror or type(fault).__name__, speech))
    else:
        return 0
    return 2


def _unreadable(file: str, reason: str, speech: Speech) -> str:
    return f"{speech.say(Message('cli-unreadable', file=file, reason=reason))}\n"


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
        mean=Figure(tested.mean_mpa, 2),
        scatter=Figure(tested.scatter_mpa, 2),
        counted=Figure(tested.characteristic_mpa, 2),
        few="no" if tested.strips >= _ENOUGH else "yes",
    )
    parts = (
        speech.say(shown),
        speech.say(Message("strips-write")),
        profile_lines(strips),
        speech.say(Message("strips-cautions")),
    )
    return "\n\n".join(parts) + "\n"
