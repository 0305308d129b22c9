"""The maker's own command: an order's quote, reply or job sheet, from a file, without a server."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any, Final, TextIO

from ledgerstone.api.booked import booked_in
from ledgerstone.api.settings import Settings, settings_from
from ledgerstone.application.answering import Desk
from ledgerstone.application.answers import write_quote, write_sent_back
from ledgerstone.application.asks import Asked
from ledgerstone.application.job_sheets import Foreman
from ledgerstone.application.replying import Writer
from ledgerstone.codec.links import link_members, offer_of
from ledgerstone.codec.strict_json import LARGEST_BYTES, read_json
from ledgerstone.codec.tokens import Tokens
from ledgerstone.errors import LedgerstoneError, NotUnderstood, ProfileError
from ledgerstone.papers.job_sheet import job_content, job_pages, job_print
from ledgerstone.papers.plain import pages_text, quote_text, sent_back_text
from ledgerstone.papers.templates import templates_in
from ledgerstone.quote import Quote
from ledgerstone.workshop import load_profile

QUOTED, SENT_BACK, NOT_READ = 0, 1, 2
_KEYS = "LEDGERSTONE_SIGNING_KEYS"
_NO_KEYS: Final = (
    f"{_KEYS} is not set, so links made here open nowhere. Set it as the service has it.\n"
)


@dataclass(frozen=True, slots=True)
class Counter:
    """What a command works with: the maker's desk, the signer of links, where it writes."""

    desk: Desk
    tokens: Tokens
    settings: Settings
    out: TextIO


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str],
    today: date | None = None,
) -> int:
    """Carry out one command line and return its exit status.

    0: the order quotes. 1: it is sent back. 2: a file, the order or the profile was not
    understood. Wrong arguments leave by ``SystemExit`` with 2.

    Parameters
    ----------
    today
        The day, where it is not the workshop's own.
    """
    asked = _parser().parse_args(arguments)
    try:
        counter = _counter(asked, out, environment, today)
        if not environment.get(_KEYS, "").strip():
            err.write(_NO_KEYS)
        return _COMMANDS[asked.command](counter, asked)
    except (LedgerstoneError, OSError) as fault:
        err.write(_fault_text(fault, asked.order))
        return NOT_READ


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m ledgerstone",
        description="Quote an order, or write its reply or its job sheet, without a server.",
    )
    commands = parser.add_subparsers(
        dest="command", required=True, metavar="quote | reply | job-sheet"
    )
    for name, does in (
        ("quote", "say what an order costs and when it is ready, or what to change"),
        ("reply", "write the reply to its customer"),
        ("job-sheet", "write what the workshop works from"),
    ):
        command = commands.add_parser(name, help=does, description=f"{does.capitalize()}.")
        command.add_argument("order", metavar="ORDER", help="the order, a JSON file; - reads stdin")
        command.add_argument("--workshop", type=Path, metavar="FILE", help="the profile, TOML")
        command.add_argument("--json", action="store_true", help="write JSON, as the service does")
    reply = commands.choices["reply"]
    reply.add_argument("--to", default="", metavar="NAME", help="the customer's name")
    reply.add_argument("--short", action="store_true", help="price, day and cautions alone")
    reply.add_argument("--ways", action="store_true", help="a lighter and a cheaper way beside it")
    job = commands.choices["job-sheet"]
    job.add_argument("--pdf", type=Path, metavar="FILE", help="write the sheet as a PDF")
    reply.add_argument("--draft", type=Path, metavar="FILE", help="write an .eml with pictures")
    return parser


def _counter(
    asked: argparse.Namespace, out: TextIO, environment: Mapping[str, str], today: date | None
) -> Counter:
    """Open the workshop that the command names, or the environment, or the demonstration."""
    told = {
        **environment,
        **({"LEDGERSTONE_WORKSHOP": str(asked.workshop)} if asked.workshop else {}),
    }
    settings = settings_from(told)
    workshop = load_profile(settings.workshop_path)
    tokens = Tokens(settings.signing_keys)
    day = today if today is not None else settings.today(workshop.workshop.timezone)
    booked = booked_in(workshop, settings.workshop_path, settings.calendar_path).now(day)
    desk = Desk(workshop, day, booked.known, tokens=tokens, makers=True, not_known=booked.says)
    return Counter(desk, tokens, settings, out)


def _document(path: str) -> Any:  # noqa: ANN401  a JSON document is any of its types
    if path == "-":
        return read_json(sys.stdin.buffer.read(LARGEST_BYTES + 1))
    with Path(path).open("rb") as file:
        return read_json(file.read(LARGEST_BYTES + 1))


def _quote(counter: Counter, asked: argparse.Namespace) -> int:
    document, desk = _document(asked.order), counter.desk
    answer = desk.answer(document)
    if isinstance(answer, Quote):
        since = desk.since(answer.order)
        if asked.json:
            _write_json(
                counter,
                write_quote(
                    answer, desk.workshop, counter.tokens, since, document=document, makers=True
                ),
            )
        else:
            offer = offer_of(answer, desk.workshop, since)
            members = link_members(offer, desk.workshop, counter.tokens)
            link = members.get("link") or members["no_link"]["says"]
            counter.out.write(quote_text(answer, offer.name, link, desk.workshop.tax.name))
        return QUOTED
    if asked.json:
        _write_json(counter, write_sent_back(answer, document, desk.workshop, counter.tokens))
    else:
        counter.out.write(sent_back_text(answer))
    return SENT_BACK


def _reply(counter: Counter, asked: argparse.Namespace) -> int:
    templates = templates_in(counter.settings.workshop_path.parent)
    writer = Writer(counter.desk, counter.tokens, templates)
    ask = {
        "order": _document(asked.order),
        "customer": asked.to,
        "tone": "short" if asked.short else "full",
        "ways": asked.ways,
    }
    if asked.draft is not None:
        with asked.draft.open("xb") as file:
            file.write(writer.draft(ask))
        counter.out.write(f"Wrote {asked.draft}. Open it in a mail program.\n")
        return QUOTED
    made = writer.write(ask)
    if asked.json:
        _write_json(counter, made)
    else:
        counter.out.write(f"Subject: {made['subject']}\n\n{made['text']}")
    return QUOTED


def _job_sheet(counter: Counter, asked: argparse.Namespace) -> int:
    document = _document(asked.order)
    job = Foreman(counter.desk, counter.tokens).job({"order": document})
    if isinstance(job, Asked):
        return _quote(counter, asked)
    if asked.pdf is not None:
        with asked.pdf.open("xb") as file:
            file.write(job_print(job))
        counter.out.write(f"Wrote {asked.pdf}.\n")
    elif asked.json:
        _write_json(counter, job_content(job))
    else:
        counter.out.write(pages_text(job_pages(job)))
    return QUOTED


_COMMANDS: Final = {"quote": _quote, "reply": _reply, "job-sheet": _job_sheet}


def _write_json(counter: Counter, members: Mapping[str, Any]) -> None:
    json.dump(members, counter.out, indent=2, ensure_ascii=False)
    counter.out.write("\n")


def _fault_text(fault: Exception, order: str) -> str:
    """Say what was not understood, one a line."""
    if isinstance(fault, NotUnderstood):
        faults = [(one.pointer.removeprefix("/order") or "/", one.says) for one in fault.faults]
        return "".join(f"{order}: {pointer}: {says}\n" for pointer, says in faults)
    if isinstance(fault, ProfileError):
        return "".join(f"profile:{one.line}: {one.key}: {one.says}\n" for one in fault.faults)
    if isinstance(fault, OSError):
        return f"{fault.filename or order}: {fault.strerror or fault}.\n"
    return f"{fault}\n"
