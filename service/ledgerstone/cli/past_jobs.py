"""The command ``python -m ledgerstone.workshop try FILE``: a profile against past jobs."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import Any, TextIO

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.past_jobs import line_of, read_jobs, report, try_job
from ledgerstone.codec.strict_json import read_json
from ledgerstone.codec.tokens import Tokens
from ledgerstone.errors import NotUnderstood, ProfileError
from ledgerstone.json_types import JSON
from ledgerstone.settings import Settings
from ledgerstone.wording import english
from ledgerstone.wording.profile_faults import fault_lines
from ledgerstone.workshop import DEMONSTRATION, load_profile

COMMAND = "try"
_NO_DAY = date(2000, 1, 1)  # each job has its own
_FORM = """\
FILE has one table for each job; what you do not know is left out:

  [[jobs]]
  name = "Bench"
  ordered_on = 2026-03-02
  order = "bench.json"      # the order as it would be sent, beside this file
  charged = 940.00          # what the customer paid
  weighed_kg = 52.0         # all slabs, on the scale
  hours = 14.5              # of work
  # of each step that you timed, as the job sheet names it, or as its name begins:
  hours_by_step = { "Make the mould" = 1.3, "Finish: honed" = 2.0 }
  days = 19                 # from the order until it was ready
"""


def run(arguments: Sequence[str], out: TextIO, err: TextIO) -> int:
    """Run one command line and return its exit status: 0 done, 1 not understood, 2 no file.

    Wrong arguments raise ``SystemExit`` with 2.
    """
    asked, text = _parser().parse_args(arguments), ""
    try:
        tokens = Tokens(Settings().signing_keys)
        context = QuoteContext(load_profile(asked.workshop), _NO_DAY, tokens)
        text = asked.file.read_text(encoding="utf-8")
        jobs = read_jobs(text, _beside(asked.file))
        tried = [try_job(job, context, i) for i, job in enumerate(jobs)]
    except NotUnderstood as fault:
        err.writelines(
            f"{asked.file}:{line_of(text, one)}: {one.pointer}: {english(one.message)}\n"
            for one in fault.faults
        )
        return 1
    except ProfileError as fault:
        err.writelines(fault_lines(fault, str(asked.workshop)))
        return 1
    except (OSError, UnicodeDecodeError) as fault:
        err.write(f"{asked.file}: the file cannot be read: {fault}.\n")
        return 2
    out.write(report(tried, context.workshop))
    return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m ledgerstone.workshop try",
        description="Compare a profile's price, mass and hours with those of past jobs.",
        epilog=_FORM,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="past jobs, a TOML file")
    parser.add_argument("--workshop", type=Path, default=DEMONSTRATION, metavar="PROFILE",
                        help="the profile to try, a TOML file")  # fmt: skip
    return parser


def _beside(file: Path) -> Any:  # noqa: ANN401  a reader of orders
    """Return a function that reads an order's JSON from a file beside the list."""

    def opened(name: str) -> JSON:
        return read_json((file.parent / name).read_bytes())

    return opened
