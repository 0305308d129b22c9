"""The command ``mailbox``: a draft reply in the maker's mailbox to each new enquiry."""

from __future__ import annotations

import signal
import time
from collections.abc import Callable, Mapping, Sequence
from contextlib import AbstractContextManager
from dataclasses import dataclass
from datetime import date, datetime
from functools import partial
from typing import Final, TextIO
from zoneinfo import ZoneInfo

from ledgerstone.cli.context import CliContext, context_for, locale_language
from ledgerstone.cli.exit_status import DONE, NOT_DONE, NOT_READ
from ledgerstone.cli.parsing import CommandParser
from ledgerstone.errors import LedgerstoneError, MailboxFault, ProfileError, SettingsFault
from ledgerstone.file_faults import file_fault
from ledgerstone.mailbox.passes import MailboxRun, PassResult, run_pass
from ledgerstone.mailbox.server import PASSWORD, Server, connected
from ledgerstone.mailbox.state import MailboxState, state_in
from ledgerstone.message import Message
from ledgerstone.papers.templates import templates_in
from ledgerstone.wording import Speech, speech_in
from ledgerstone.wording.profile_faults import fault_lines
from ledgerstone.workshop.records import Mailbox

COMMAND: Final = "mailbox"
IMAP_IDLE_S: Final = 300.0  # RFC 2177: IDLE is to be restarted within 29 minutes
POLL_S: Final = 60.0
FIRST_PAUSE_S: Final = 2.0
LONGEST_PAUSE_S: Final = 300.0


@dataclass(frozen=True, slots=True)
class _Command:
    """One command line: how its context is opened, where it writes, how it waits."""

    opened: Callable[[], CliContext]
    password: str
    out: TextIO

    def tell(self, message: Message, speech: Speech) -> None:
        """Write one line and flush it."""
        self.out.write(f"{speech.say(message)}\n")
        self.out.flush()


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str],
    today: date | None = None,
) -> int:
    """Run one command line and return its exit status.

    0: every new message was processed. 1: some could not be answered. 2: the profile, the mailbox
    or its password is at fault. Wrong arguments raise ``SystemExit`` with 2.
    """
    speech = speech_in(locale_language(environment))
    options = _parser(speech).parse_args(arguments)
    command = _Command(
        lambda: context_for(options.workshop, out, environment, today),
        environment.get(PASSWORD, ""),
        out,
    )
    try:
        context = command.opened()
        speech = context.speech
        _mailbox(context)
        _check_password(command)
        path = options.state or context.settings.workshop_path.with_suffix(".mailbox.json")
        with state_in(path) as state:
            return (_watch if options.watch else _once)(command, state)
    except ProfileError as fault:
        err.writelines(fault_lines(fault, "profile"))
    except (MailboxFault, SettingsFault) as fault:
        err.write(f"{speech.say(fault.message)}\n")
    except LedgerstoneError as fault:
        err.write(f"{fault}\n")
    except BrokenPipeError:
        raise
    except OSError as fault:
        file = str(fault.filename or options.state or "")
        unreadable = Message("cli-unreadable", file=file, reason=file_fault(fault))
        err.write(f"{speech.say(unreadable)}\n")
    except KeyboardInterrupt:
        return DONE
    return NOT_READ


def _parser(speech: Speech) -> CommandParser:
    parser = CommandParser(speech, COMMAND, prog="python -m ledgerstone mailbox")
    when = parser.add_mutually_exclusive_group(required=True)
    when.add_argument("--once", action="store_true", help=parser.about("once"))
    when.add_argument("--watch", action="store_true", help=parser.about("watch"))
    parser.add_path("--workshop", metavar="FILE", about="profile-file")
    parser.add_path("--state", metavar="FILE", about="state")
    return parser


def _once(command: _Command, state: MailboxState) -> int:
    context = command.opened()
    with _server(context, command) as server:
        return NOT_DONE if _pass(server, context, command, state).failed else DONE


def _watch(command: _Command, state: MailboxState) -> int:
    """Process the mailbox whenever a message arrives, until the command is interrupted.

    A server that cannot be reached is tried again after growing pauses.
    """
    signal.signal(signal.SIGTERM, signal.default_int_handler)  # ends it as Ctrl-C does
    pause_s = FIRST_PAUSE_S
    while True:
        try:
            with _server(command.opened(), command) as server:
                while True:
                    looked = _pass(server, command.opened(), command, state)
                    pause_s = FIRST_PAUSE_S
                    if server.open_arrivals().uid_next == looked.uid_next:
                        _wait(server)
        except MailboxFault as fault:
            if not fault.is_unreachable:
                raise
            again = Message("mailbox-again", why=fault.message, seconds=round(pause_s))
            command.tell(again, command.opened().speech)
        time.sleep(pause_s)
        pause_s = min(2 * pause_s, LONGEST_PAUSE_S)


def _wait(server: Server) -> None:
    if server.announces_changes():
        server.wait(IMAP_IDLE_S)
    else:
        time.sleep(POLL_S)


def _server(context: CliContext, command: _Command) -> AbstractContextManager[Server]:
    return connected(_mailbox(context), command.password)


def _mailbox(context: CliContext) -> Mailbox:
    mailbox = context.quoting.workshop.mailbox
    if mailbox is None:
        raise MailboxFault(Message("mailbox-no-table"))
    return mailbox


def _check_password(command: _Command) -> None:
    if not command.password:
        raise MailboxFault(Message("mailbox-no-password", variable=PASSWORD))


def _pass(
    server: Server, context: CliContext, command: _Command, state: MailboxState
) -> PassResult:
    zone = ZoneInfo(context.quoting.workshop.workshop.timezone)
    run = MailboxRun(
        quoting=context.quoting,
        templates=templates_in(context.settings.workshop_path.parent),
        mailbox=_mailbox(context),
        state=state,
        now=datetime.now(zone),
        tell=partial(command.tell, speech=context.speech),
    )
    return run_pass(server, run)
