"""The command ``python -m ledgerstone.workshop try FILE``: a profile against past jobs."""

from __future__ import annotations

import argparse
import os
from collections.abc import Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import Any, TextIO

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.past_jobs import line_of, read_jobs, report, try_job
from ledgerstone.cli.context import locale_language
from ledgerstone.cli.exit_status import DONE, NOT_DONE, NOT_READ
from ledgerstone.cli.parsing import CommandParser
from ledgerstone.codec.strict_json import read_json
from ledgerstone.codec.tokens import Tokens
from ledgerstone.errors import NotUnderstood, ProfileError
from ledgerstone.file_faults import file_fault
from ledgerstone.json_types import JSON
from ledgerstone.message import Message
from ledgerstone.settings import Settings
from ledgerstone.wording import Speech, speech_in, workshop_speech
from ledgerstone.wording.profile_faults import fault_lines
from ledgerstone.workshop import DEMONSTRATION, load_profile

COMMAND = "try"
_NO_DAY = date(2000, 1, 1)  # each job has its own


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str] | None = None,
) -> int:
    """Run one command line and return its exit status: 0 done, 1 not understood, 2 no file.

    Wrong arguments raise ``SystemExit`` with 2.
    """
    speech = speech_in(locale_language(os.environ if environment is None else environment))
    options, text = _parser(speech).parse_args(arguments), ""
    try:
        tokens = Tokens(Settings().signing_keys)
        context = QuoteContext(load_profile(options.workshop), _NO_DAY, tokens)
        workshop = context.workshop
        speech = workshop_speech(workshop.workshop.language, workshop)
        text = options.file.read_text(encoding="utf-8")
        jobs = read_jobs(text, _beside(options.file))
        tried = [try_job(job, context, i) for i, job in enumerate(jobs)]
    except NotUnderstood as fault:
        err.writelines(
            f"{options.file}:{line_of(text, found)}: {found.pointer}: {speech.say(found.message)}\n"
            for found in fault.faults
        )
        return NOT_DONE
    except ProfileError as fault:
        err.writelines(fault_lines(fault, str(options.workshop)))
        return NOT_DONE
    except (OSError, UnicodeDecodeError) as fault:
        unreadable = Message("cli-unreadable", file=str(options.file), reason=file_fault(fault))
        err.write(f"{speech.say(unreadable)}\n")
        return NOT_READ
    out.write(report(tried, workshop, speech))
    return DONE


def _parser(speech: Speech) -> CommandParser:
    parser = CommandParser(
        speech,
        COMMAND,
        prog="python -m ledgerstone.workshop try",
        epilog=speech.say(Message("jobs-form")),
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_path("file", metavar="FILE", about="jobs-file")
    parser.add_path("--workshop", default=DEMONSTRATION, metavar="PROFILE", about="profile-file")
    return parser


def _beside(file: Path) -> Any:  # noqa: ANN401  a reader of orders
    """Return a function that reads an order's JSON from a file beside the list."""

    def opened(name: str) -> JSON:
        return read_json((file.parent / name).read_bytes())

    return opened
