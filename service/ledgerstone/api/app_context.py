"""The context that every route shares."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import Final

from ledgerstone.api import lane, metrics
from ledgerstone.api.containing import contained
from ledgerstone.application.context import QuoteContext
from ledgerstone.calendar_file import CalendarFile
from ledgerstone.codec.tokens import Tokens
from ledgerstone.papers import Templates
from ledgerstone.settings import Settings
from ledgerstone.stages import StageCache
from ledgerstone.workshop.records import Workshop

APP_CONTEXT: Final = "ledgerstone.context"  # key in ``app.extensions``


@dataclass(frozen=True, slots=True)
class AppContext:
    """One workshop's settings, profile, signing keys, templates, calendar and results kept."""

    settings: Settings
    workshop: Workshop
    tokens: Tokens
    templates: Templates
    calendar: CalendarFile
    cache: StageCache = field(default_factory=StageCache)
    trials: StageCache = field(default_factory=StageCache)  # for profiles that are being edited

    def today(self) -> date:
        """Return today in the workshop's time zone."""
        return self.settings.today(self.workshop.workshop.timezone)

    def quote_context(self, *, for_maker: bool = False) -> QuoteContext:
        """Return the context of today's answers; the maker's answers are quotations."""
        today = self.today()
        read = self.calendar.read(today)
        return QuoteContext(
            self.workshop,
            today,
            self.tokens,
            bookings=read.known,
            cache=self.cache,
            for_maker=for_maker,
            calendar_fault=read.why_not,
            timed=metrics.timed,
            contain=contained,
            budget=lane.budget(),
        )
