"""What a command works with, opened as the environment says."""

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
from ledgerstone.wording.own import load_workshop


@dataclass(frozen=True, slots=True)
class CliContext:
    """What a command works with: the context of answers, the settings, where it writes."""

    quoting: QuoteContext
    settings: Settings
    out: TextIO


def context_for(
    path: Path | None, out: TextIO, environment: Mapping[str, str], today: date | None
) -> CliContext:
    """Open the workshop that the command names, or the environment, or the demonstration."""
    told = {**environment, **({"LEDGERSTONE_WORKSHOP": str(path)} if path else {})}
    settings = settings_from(told)
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
        calendar_fault=calendar.says,
    )
    return CliContext(quoting, settings, out)
