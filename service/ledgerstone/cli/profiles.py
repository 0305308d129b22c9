"""The command for a profile: check it, start one, or try it on past jobs."""

from __future__ import annotations

import argparse
import os
import shlex
import sys
from collections.abc import Iterator, Mapping, Sequence
from functools import partial
from pathlib import Path
from typing import Final, TextIO

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.jobs_not_made import jobs_not_made, not_made
from ledgerstone.application.typical_jobs import typical_jobs
from ledgerstone.cli import past_jobs
from ledgerstone.cli.asking import (
    Prompter,
    Unanswered,
    answered,
    ask_country,
    confirmed_paths,
)
from ledgerstone.cli.context import locale_country, locale_language
from ledgerstone.cli.exit_status import DONE, NOT_DONE, NOT_READ
from ledgerstone.cli.finishing import finish
from ledgerstone.cli.moving import in_country
from ledgerstone.cli.parsing import CommandParser
from ledgerstone.codec.tokens import Tokens
from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.file_faults import file_fault
from ledgerstone.message import Message
from ledgerstone.settings import Settings
from ledgerstone.wording import Speech, bench_speech, known_language, speech_in
from ledgerstone.wording.own import FILES, sentences_in
from ledgerstone.wording.profile import about_in
from ledgerstone.wording.profile_faults import maker_speech
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.countries import TAX_PERCENT, usual_in
from ledgerstone.workshop.countries.places import currencies_of
from ledgerstone.workshop.countries.public_holidays import COUNTRIES, country_fault
from ledgerstone.workshop.form.confirming import confirm_all
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.reading.loader import (
    example_for,
    key_text,
    language_of,
    load_profile,
    profile_text,
    read_profile,
)
from ledgerstone.workshop.review.advice import law_not_known
from ledgerstone.workshop.review.second_looks import second_looks
from ledgerstone.workshop.review.summary import open_values, summary
from ledgerstone.workshop.starting.beginning import as_started
from ledgerstone.workshop.starting.profile_text import profile_text_of, starting_profile

_USUAL_COUNTRY = "GB"
_SERVE: Final = Path(__file__).resolve().parents[2] / "serve"
_ASKED_OF_AN_AREA: Final = ("postcodes", "pallet", "own_van", "fitted")
_WRITABLE: Final = "LEDGERSTONE_WORKSHOP_WRITABLE"
_FORM: Final = "http://127.0.0.1:8000/desk/workshop"  # where the command serves it


def run(
    arguments: Sequence[str],
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str] | None = None,
    answers: TextIO | None = None,
) -> int:
    """Run one command line and return its exit status.

    0: done. 1: the profile has faults, or the file to start exists already.
    2: the file cannot be read or written, or the answers ended before the questions. Wrong
    arguments raise ``SystemExit`` with 2.
    """
    environment = os.environ if environment is None else environment
    if arguments[:1] == [past_jobs.COMMAND]:
        return past_jobs.run(arguments[1:], out, err, environment)
    options = _parser(speech_in(locale_language(environment))).parse_args(arguments)
    if options.command == "check":
        return _check(options.file, out, err, environment)
    return _init(options, answers or sys.stdin, out, err, environment)


def _parser(speech: Speech) -> CommandParser:
    parser = CommandParser(speech, "workshop", prog="python -m ledgerstone.workshop")
    commands = parser.add_commands("check | init | try")
    for name in ("check", "init"):
        command = parser.add_command(commands, name)
        command.add_path("file", metavar="FILE", about="profile-file")
    command.add_argument("--ask", action="store_true", help=command.about("ask"))
    command.add_argument("--country", metavar="XX", help=command.about("country"))
    parser.add_command(commands, past_jobs.COMMAND)  # it reads its arguments itself
    return parser


def _check(file: Path, out: TextIO, err: TextIO, environment: Mapping[str, str]) -> int:
    try:
        text = profile_text(file)
    except ProfileError as error:
        err.writelines(_printed(file, error, maker_speech(error, locale_language(environment))))
        return NOT_READ
    try:
        workshop = read_profile(text)
        sentences_in(file.parent)
    except ProfileError as error:
        speech = maker_speech(error, language_of(text), locale_language(environment))
        out.writelines(_printed(file, error, speech))
        counted = Message("check-faults", count=len(error.faults), file=str(file))
        out.write(f"{speech.say(counted)}\n")
        return NOT_DONE
    speech = bench_speech(workshop.workshop.language, workshop)
    out.writelines(f"{line}\n" for line in _report(workshop, speech))
    missing = [*_keys_not_set(environment), *_calendar_not_there(file, workshop)]
    if missing and not workshop.workshop.demonstration:
        out.write(f"\n{speech.say(Message('check-before'))}\n")
        out.writelines(f"- {speech.say(message)}\n" for message in missing)
    return DONE


def _report(workshop: Workshop, speech: Speech) -> Iterator[str]:
    """Yield a summary of a profile: its values, likely mistakes, and invented values."""
    rows = [("" if t is None else speech.say(t), speech.value(row)) for t, row in summary(workshop)]
    width = max(len(title) for title, _ in rows)
    yield from (f"{title:<{width}} {says}" for title, says in rows)
    looks = (*second_looks(workshop), *_other_money(workshop), *_not_made(workshop))
    if looks:
        yield from ("", speech.say(Message("check-looks")))
        yield from (f"- {speech.say(message)}" for message in looks)
    for i, value in enumerate(open_values(workshop)):
        yield from () if i else ("",)
        mark = "- " if value.name == "check-invented-table" else ""
        yield f"{mark}{speech.say(value)}"


def _other_money(workshop: Workshop) -> Iterator[Message]:
    """Yield a message if the currency is none in which the workshop's country pays."""
    land, currency = workshop.workshop.country, workshop.workshop.currency
    usual = currencies_of(land)
    if usual and currency not in usual:
        yield Message("check-currency", land=land, currency=currency, usual=usual[0])


def _not_made(workshop: Workshop) -> Iterator[Message]:
    """Yield the typical jobs that are sent back, with the key to look at where one is to blame."""
    today = Settings().today(workshop.workshop.timezone)
    context = QuoteContext(workshop, today, Tokens(Settings().signing_keys))
    jobs = typical_jobs(context)
    blamed = tuple(jobs_not_made(jobs, context))
    for found in blamed:
        yield Message("check-not-made", key=key_text(found.path), says=found.says)
    told = {found.job.name for found in blamed}
    yield from (not_made(job) for job in jobs if job.stops is not None and job.name not in told)


def _keys_not_set(environment: Mapping[str, str]) -> Iterator[Message]:
    """Yield which keys are missing from the environment, and the consequences."""
    if not environment.get("LEDGERSTONE_SIGNING_KEYS"):
        yield Message("check-no-signing-keys")
    if not environment.get("LEDGERSTONE_MAKER_KEY"):
        yield Message("check-no-maker-key")


def _calendar_not_there(file: Path, workshop: Workshop) -> Iterator[Message]:
    """Yield a message if the profile's calendar file does not exist."""
    bookings = workshop.bookings
    if bookings is not None and not (file.parent / bookings.file).is_file():
        yield Message("check-no-calendar", file=bookings.file)


def _init(
    options: argparse.Namespace,
    answers: TextIO,
    out: TextIO,
    err: TextIO,
    environment: Mapping[str, str],
) -> int:
    file: Path = options.file
    there = usual_in(options.country.upper()).languages if options.country else ()
    speech = speech_in(known_language(*there, locale_language(environment)))
    if options.country and options.country.upper() not in COUNTRIES:
        err.write(f"--country: {speech.say(country_fault(options.country))}\n")
        return NOT_READ
    try:
        usual = options.country or locale_country(environment) or _USUAL_COUNTRY
        content, speech = _started(options, usual, answers, out, speech)
    except Unanswered:
        err.write(f"\n{speech.say(Message('init-unanswered'))}\n")
        return NOT_READ
    try:
        with file.open("x", encoding="utf-8", newline="\n") as started:
            started.write(content)
    except FileExistsError:
        err.write(f"{file}: {speech.say(Message('init-there'))}\n")
        return NOT_DONE
    except (OSError, ValueError) as reason:
        err.write(f"{file}: {speech.say(Message('init-unwritable', reason=file_fault(reason)))}\n")
        return NOT_READ
    check = f"{_here(Path(sys.executable))} -m ledgerstone.workshop check {shlex.quote(str(file))}"
    out.write(f"{speech.say(Message('init-wrote', file=str(file), check=check))}\n")
    if _SERVE.is_file():
        serve = f"{_WRITABLE}=1 {_here(_SERVE)} --workshop {shlex.quote(str(file))}"
        out.write(f"{speech.say(Message('init-form', serve=serve, address=_FORM))}\n")
    started_in = read_profile(content)
    if any(law_not_known(started_in)):
        land = started_in.workshop.country
        known = "yes" if land in TAX_PERCENT else "no"
        elsewhere = Message("init-elsewhere", land=land, known=known)
        out.write(f"{speech.say(elsewhere)}\n")
    return DONE


def _started(
    options: argparse.Namespace, usual: str, answers: TextIO, out: TextIO, speech: Speech
) -> tuple[str, Speech]:
    """Return the text of a new profile with the answers set, and the maker's language.

    Once the country is known, messages are in a language that is spoken there.
    """
    country = (options.country or _USUAL_COUNTRY).upper()
    if not options.ask:
        theirs = load_profile(example_for(country))
        example = in_country(theirs, country)
        about = partial(about_in, example.workshop.language, place=example.place)
        draft = ProfileDraft(starting_profile(example, about))
        if theirs.workshop.country != country:
            _nobody_s(draft)
        return draft.text, speech
    country = ask_country(usual, answers, out, speech)
    place = usual_in(country)
    speech = speech_in(known_language(*place.languages), "", place.at_work())
    example = as_started(load_profile(example_for(country)))
    asking = Prompter(answers, out, speech)
    workshop, confirmed = answered(example, country, asking)
    about = partial(about_in, workshop.workshop.language, place=workshop.place)
    draft = ProfileDraft(profile_text_of(workshop, about))
    confirm_all(draft, confirmed_paths(workshop, confirmed))
    finish(draft, asking, Settings().today(workshop.workshop.timezone))
    return draft.text, speech


def _nobody_s(draft: ProfileDraft) -> None:
    """Write whose the values of another country are: no example has them, and nobody gave them.

    Of its area that is where it is, and what is asked there.
    """
    usual = ", ".join(f'{key} = "usual"' for key in ("country", "timezone", "currency"))
    draft.put(("workshop", "standing"), f"{{ {usual} }}")
    draft.put(("tax", "standing"), '"invented"')
    asked = [key for key in _ASKED_OF_AN_AREA if draft.written(("areas", 0, key))]
    if asked:
        words = ", ".join(f'{key} = "invented"' for key in asked)
        draft.put(("areas", 0, "standing"), f"{{ {words} }}")


def _here(program: Path) -> str:
    """A program as it is run from the current folder."""
    folder = Path.cwd()
    return shlex.quote(str(program.relative_to(folder) if folder in program.parents else program))


def _printed(file: Path, error: ProfileError, speech: Speech) -> Iterator[str]:
    """Yield the faults, one a line, as ``FILE:LINE: key: sentence``."""
    return (f"{_place(file, fault)}: {speech.say(fault.message)}\n" for fault in error.faults)


def _place(file: Path, fault: ProfileFault) -> str:
    is_apart = fault.key in FILES.values()
    file = file.with_name(fault.key) if is_apart else file
    line = f"{file}:{fault.line}" if fault.line else f"{file}"
    return f"{line}: {fault.key}" if fault.key and not is_apart else line
