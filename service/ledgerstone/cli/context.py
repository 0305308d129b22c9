"""The context of a command, opened by its arguments and the environment."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TextIO

from ledgerstone.application.context import QuoteContext
from ledgerstone.calendar_file import READ_S, calendar_file_of
from ledgerstone.child_process import BY_THE_CLOCK
from ledgerstone.codec.tokens import Tokens
from ledgerstone.settings import Settings, settings_from
from ledgerstone.wording import Speech, bench_speech, known_language, speech_in, workshop_speech
from ledgerstone.wording.own import load_workshop
from ledgerstone.workshop.countries.public_holidays import COUNTRIES


@dataclass(frozen=True, slots=True)
class CliContext:
    """The context of a command: the quote context, the settings, the output stream."""

    quoting: QuoteContext
    settings: Settings
    out: TextIO

    @property
    def speech(self) -> Speech:
        """Formats messages to the maker in the workshop's language."""
        workshop = self.quoting.workshop
        return workshop_speech(workshop.workshop.language, workshop)


def locale_language(environment: Mapping[str, str]) -> str:
    """Return the language of the environment's locale (POSIX), else the default one."""
    return known_language(*(environment.get(name) for name in ("LC_ALL", "LC_MESSAGES", "LANG")))


def locale_country(environment: Mapping[str, str]) -> str:
    """Return the country of the environment's locale (POSIX), if its holidays are known."""
    named = (environment.get(name) or "" for name in ("LC_ALL", "LC_MESSAGES", "LANG"))
    locale = next(filter(None, named), "")
    country = locale.partition(".")[0].partition("@")[0].partition("_")[2]
    return country if country in COUNTRIES else ""


def reports_in(path: Path | None, environment: Mapping[str, str]) -> Speech:
    """Return the speech of a command that needs no profile: of the one that is named, if any.

    Without one it is the locale's.

    Raises
    ------
    ProfileError
    """
    named = str(path or environment.get("LEDGERSTONE_WORKSHOP", "")).strip()
    if not named:
        return speech_in(locale_language(environment))
    workshop = load_workshop(Path(named))
    return bench_speech(workshop.workshop.language, workshop)


def context_for(
    path: Path | None, out: TextIO, environment: Mapping[str, str], today: date | None
) -> CliContext:
    """Open the workshop named by the command, else by the environment, else the demonstration."""
    settings_given = {**environment, **({"LEDGERSTONE_WORKSHOP": str(path)} if path else {})}
    settings = settings_from(settings_given)
    workshop = load_workshop(settings.workshop_path)
    tokens = Tokens(settings.signing_keys)
    day = today if today is not None else settings.today(workshop.workshop.timezone)
    calendar = calendar_file_of(
        workshop, settings.workshop_path, settings.calendar_path, BY_THE_CLOCK * READ_S
    ).read(day)
    quoting = QuoteContext(
        workshop,
        day,
        tokens,
        bookings=calendar.known,
        for_maker=True,
        calendar_fault=calendar.why_not,
    )
    return CliContext(quoting, settings, out)
