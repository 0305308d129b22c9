"""The command for an order: its quote, reply or job sheet from a file, without a server."""

from __future__ import annotations

import argparse
import json
import os
import sys
from collections.abc import Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import Any, Final, TextIO

from ledgerstone.application.answering import answer_order, offer_changed_by
from ledgerstone.application.answers import write_quote, write_sent_back
from ledgerstone.application.enquiries import make_answer
from ledgerstone.application.papers import make_paper, paper_members
from ledgerstone.application.replying import make_draft, make_reply
from ledgerstone.application.resolving import ResolvedRequest
from ledgerstone.cli import mailbox
from ledgerstone.cli.context import CliContext, context_for, locale_language
from ledgerstone.cli.enquiries import enquiry_text, read_file
from ledgerstone.cli.exit_status import DONE, NOT_DONE, NOT_READ
from ledgerstone.cli.parsing import CommandParser
from ledgerstone.cli.quiet import quietly
from ledgerstone.codec.links import link_members, offer_of
from ledgerstone.codec.strict_json import LARGEST_BYTES, read_json
from ledgerstone.errors import (
    LedgerstoneError,
    NotUnderstood,
    ProfileError,
    SettingsFault,
    TokenError,
    TooIntricate,
)
from ledgerstone.file_faults import file_fault
from ledgerstone.json_types import JSON
from ledgerstone.message import Message
from ledgerstone.papers.kinds import JOB
from ledgerstone.papers.paper import paper_print
from ledgerstone.papers.plain import pages_text, quote_text, sent_back_text
from ledgerstone.papers.templates import templates_in
from ledgerstone.quote import Quote
from ledgerstone.wording import Speech, speech_in, speech_of
from ledgerstone.wording.profile_faults import fault_lines

_KEYS = "LEDGERSTONE_SIGNING_KEYS"


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str],
    today: date | None = None,
) -> int:
    """Run one command line and return its exit status.

    0: the order quotes. 1: it is sent back. 2: a file, the order or the profile was not
    understood. Wrong arguments raise ``SystemExit`` with 2.

    Parameters
    ----------
    today
        The day to quote on; by default today in the workshop's time zone.
    """
    if arguments[:1] == [mailbox.COMMAND]:
        return mailbox.run(arguments[1:], out, err, environment, today)
    speech = speech_in(locale_language(environment))
    options = _parser(speech).parse_args(arguments)
    try:
        context = context_for(options.workshop, out, environment, today)
        speech = context.speech
        if not environment.get(_KEYS, "").strip():
            err.write(f"{context.speech.say(Message('terminal-no-keys', name=_KEYS))}\n")
        return _COMMANDS[options.command](context, options)
    except BrokenPipeError:
        raise
    except (LedgerstoneError, OSError) as fault:
        err.write(_fault_text(fault, options.order, speech))
        return NOT_READ


def main() -> int:
    """Run the command line of this process."""
    return quietly(lambda: run(sys.argv[1:], sys.stdout, sys.stderr, os.environ))


def _parser(speech: Speech) -> CommandParser:
    parser = CommandParser(speech, "order", prog="python -m ledgerstone")
    commands = parser.add_commands("quote | … | answer | mailbox")
    order, mail = ("ORDER", "order-file"), ("MAIL", "mail-file")
    added = {}
    for name, (what, about) in (
        ("quote", order),
        ("reply", order),
        ("job-sheet", order),
        ("enquiry", mail),
        ("answer", mail),
    ):
        added[name] = command = parser.add_command(commands, name)
        command.add_argument("order", metavar=what, help=command.about(about))
        command.add_path("--workshop", metavar="FILE", about="profile-file")
        command.add_argument("--json", action="store_true", help=command.about("json"))
    parser.add_command(commands, mailbox.COMMAND)  # it reads its arguments itself
    reply = added["reply"]
    reply.add_argument("--to", default="", metavar="NAME", help=reply.about("to"))
    reply.add_argument("--short", action="store_true", help=reply.about("short"))
    reply.add_argument("--ways", action="store_true", help=reply.about("ways"))
    reply.add_path("--draft", metavar="FILE", about="draft")
    added["job-sheet"].add_path("--pdf", metavar="FILE", about="pdf")
    added["answer"].add_path("--draft", metavar="FILE", about="draft-answer")
    return parser


def _document(path: str) -> JSON:
    if path == "-":
        return read_json(sys.stdin.buffer.read(LARGEST_BYTES + 1))
    with Path(path).open("rb") as file:
        return read_json(file.read(LARGEST_BYTES + 1))


def _quote(context: CliContext, options: argparse.Namespace) -> int:
    document, quoting = _document(options.order), context.quoting
    answer = answer_order(document, quoting)
    if isinstance(answer, Quote):
        since = offer_changed_by(answer.order, quoting)
        if options.json:
            _write_json(context, write_quote(answer, quoting, since, document=document))
        else:
            offer = offer_of(answer, quoting.workshop, since)
            speech = speech_of(answer.order, quoting.workshop)
            members = link_members(offer, quoting.workshop, quoting.tokens)
            link = members.get("link") or members["no_link"]["says"]
            context.out.write(
                quote_text(answer, offer.name, link, quoting.workshop.tax.name, speech)
            )
        return DONE
    if options.json:
        _write_json(context, write_sent_back(answer, document, quoting))
    else:
        context.out.write(sent_back_text(answer, speech_of(answer.order, quoting.workshop)))
    return NOT_DONE


def _reply(context: CliContext, options: argparse.Namespace) -> int:
    templates = templates_in(context.settings.workshop_path.parent)
    ask = {
        "order": _document(options.order),
        "customer": options.to,
        "tone": "short" if options.short else "full",
        "ways": options.ways,
    }
    if options.draft is not None:
        with options.draft.open("xb") as file:
            file.write(make_draft(ask, context.quoting, templates))
        _wrote_draft(context, options.draft)
        return DONE
    made = make_reply(ask, context.quoting, templates)
    if options.json:
        _write_json(context, made)
    else:
        subject = context.speech.say(Message("terminal-subject", subject=made["subject"]))
        context.out.write(f"{subject}\n\n{made['text']}")
    return DONE


def _job_sheet(context: CliContext, options: argparse.Namespace) -> int:
    document = _document(options.order)
    paper = make_paper(JOB, {"order": document}, context.quoting)
    if isinstance(paper, ResolvedRequest):
        return _quote(context, options)
    if options.pdf is not None:
        with options.pdf.open("xb") as file:
            file.write(paper_print(paper))
        text = context.speech.say(Message("terminal-wrote", file=str(options.pdf)))
        context.out.write(f"{text}\n")
    elif options.json:
        _write_json(context, paper_members(paper))
    else:
        context.out.write(pages_text(paper.content["pages"], context.speech))
    return DONE


def _enquiry(context: CliContext, options: argparse.Namespace) -> int:
    read = read_file(options.order, context.quoting.workshop)
    if options.json:
        _write_json(context, read)
    else:
        context.out.write(enquiry_text(read, context.speech))
    return DONE if read["is_enquiry"] else NOT_DONE


def _answer(context: CliContext, options: argparse.Namespace) -> int:
    read = read_file(options.order, context.quoting.workshop)
    context.out.write(enquiry_text(read, context.speech))
    if not read["is_enquiry"]:
        return NOT_DONE
    templates = templates_in(context.settings.workshop_path.parent)
    path = options.draft or Path(
        "answer.eml" if options.order == "-" else f"{options.order}.answer.eml"
    )
    with path.open("xb") as file:
        file.write(make_answer(read, context.quoting, templates))
    context.out.write("\n")
    _wrote_draft(context, path)
    return DONE


_COMMANDS: Final = {
    "quote": _quote,
    "reply": _reply,
    "job-sheet": _job_sheet,
    "enquiry": _enquiry,
    "answer": _answer,
}


def _wrote_draft(context: CliContext, file: Path) -> None:
    text = context.speech.say(Message("terminal-wrote-draft", file=str(file)))
    context.out.write(f"{text}\n")


def _write_json(context: CliContext, members: Mapping[str, Any]) -> None:
    json.dump(members, context.out, indent=2, ensure_ascii=False)
    context.out.write("\n")


def _fault_text(fault: Exception, order: str, speech: Speech) -> str:
    """Return what was not understood, one fault a line."""
    if isinstance(fault, NotUnderstood):
        faults = [
            (found.pointer.removeprefix("/order") or "/", speech.say(found.message))
            for found in fault.faults
        ]
        return "".join(f"{order}: {pointer}: {message}\n" for pointer, message in faults)
    if isinstance(fault, ProfileError):
        return "".join(fault_lines(fault, "profile"))
    if isinstance(fault, OSError):
        file = str(fault.filename or order)
        return f"{speech.say(Message('cli-unreadable', file=file, reason=file_fault(fault)))}\n"
    if isinstance(fault, TooIntricate | TokenError | SettingsFault):
        return f"{speech.say(fault.message)}\n"
    return f"{fault}\n"
