"""The plan of the weeks: one bar a phase on a strip of days, and the same in words."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from ledgerstone.drawing.lettering import FAMILY, PENCIL, fitted, lettered, text_width
from ledgerstone.drawing.svg import SvgElement, document, element, render
from ledgerstone.schedule import LeadTime
from ledgerstone.schedule.phases import WORK
from ledgerstone.wording import DayMonth, Message, Speech, Weekday

_WIDE, _EDGE, _NAMES, _ROW, _HEAD, _KEY = 640.0, 12.0, 210.0, 19.0, 30.0, 30.0
_SMALL, _LETTERS = 12.0, 13.0
_RULE = "#d5d0c4"
_ONE = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class _Bar:
    """A phase's name and days, and whether it is worked on."""

    name: str
    starts: date
    ends: date
    is_worked: bool


def draw_weeks(lead: LeadTime, speech: Speech) -> str:
    """Draw a schedule as an SVG document: work is filled, waiting is outlined."""
    bars = _bars(lead, speech)
    if not bars:
        return ""
    strip = _DaySpan(bars[0].starts, max(bar.ends for bar in bars))
    foot = _HEAD + len(bars) * _ROW
    rules = element("g", *strip.mondays(foot, speech), font_family=FAMILY)
    rows = (part for at, bar in enumerate(bars) for part in _drawn(bar, at, strip))
    picture = document(
        (_WIDE, foot + _KEY),
        "weeks",
        title=speech.say(Message("weeks-title")),
        says=say_weeks(lead, speech),
        children=[rules, *rows, _key(foot, speech)],
    )
    return render(picture)


def say_weeks(lead: LeadTime, speech: Speech) -> str:
    """Describe a plan: every phase with its days."""
    bars = _bars(lead, speech)
    if not bars:
        return ""
    last = max(bar.ends for bar in bars)
    first = Weekday(bars[0].starts, with_year=False)
    whole = Message("weeks-whole", first=first, last=Weekday(last, with_year=True))
    return speech.say_all([whole, *(_days(bar) for bar in bars)])


def _bars(lead: LeadTime, speech: Speech) -> list[_Bar]:
    bars = [_Bar(speech.say(s.name), s.starts, s.ends, s.phase in WORK) for s in lead.phases]
    if bars and lead.arrives_latest > lead.ready_on:
        road = speech.say(Message("weeks-road"))
        bars.append(_Bar(road, lead.ready_on + _ONE, lead.arrives_latest, is_worked=False))
    return sorted(bars, key=lambda bar: bar.starts)


@dataclass(frozen=True, slots=True)
class _DaySpan:
    """A strip of days: the first, and the last with it."""

    first: date
    last: date

    def x(self, day: date) -> float:
        """Where a day begins on the sheet."""
        days = (self.last - self.first).days + 1
        left = _EDGE + _NAMES
        return left + (_WIDE - _EDGE - left) * (day - self.first).days / days

    def mondays(self, foot: float, speech: Speech) -> Iterator[SvgElement]:
        """Rule a line at the first day and at Mondays, a date beside it where there is room."""
        free = 0.0
        for day in self._ruled():
            x, text = self.x(day), speech.value(DayMonth(day))
            yield element("line", x1=x, y1=_HEAD - 8, x2=x, y2=foot, stroke=_RULE)
            wide = text_width(text, _SMALL)
            if x >= free and x + wide <= _WIDE - _EDGE / 2:
                free = x + wide + 10
                yield lettered(text, (x, _HEAD - 12), _SMALL, fill=PENCIL)

    def _ruled(self) -> Iterator[date]:
        yield self.first
        monday = self.first + (7 - self.first.weekday()) * _ONE
        for week in range(math.ceil(((self.last - monday).days + 1) / 7)):
            yield monday + 7 * week * _ONE


def _drawn(bar: _Bar, at: int, strip: _DaySpan) -> Sequence[SvgElement]:
    """Draw one row: its name, and its bar."""
    top = _HEAD + at * _ROW
    x0, x1 = strip.x(bar.starts), strip.x(bar.ends + _ONE)
    text = fitted(bar.name, _NAMES - 10, _LETTERS)
    name = lettered(text, (_EDGE, top + 14), _LETTERS)
    return element("g", name, font_family=FAMILY), _box(
        x0, top + 4, x1 - x0, is_worked=bar.is_worked
    )


def _box(x: float, y: float, wide: float, *, is_worked: bool) -> SvgElement:
    return element(
        "rect",
        x=x,
        y=y,
        width=wide,
        height=_ROW - 7,
        fill=PENCIL if is_worked else "none",
        stroke=PENCIL,
        stroke_width=1.2,
    )


def _key(foot: float, speech: Speech) -> SvgElement:
    """State what a filled bar is, and an outline."""
    parts, x, y = list[SvgElement](), _EDGE + _NAMES, foot + 8
    for is_worked in (True, False):
        text = speech.say(Message("weeks-hands" if is_worked else "weeks-waits"))
        parts += [_box(x, y, 24, is_worked=is_worked), lettered(text, (x + 32, y + 10), _SMALL)]
        x += 32 + text_width(text, _SMALL) + 28
    return element("g", *parts, font_family=FAMILY)


def _days(bar: _Bar) -> Message:
    first, last = (Weekday(day, with_year=False) for day in (bar.starts, bar.ends))
    if bar.starts == bar.ends:
        return Message("weeks-bar-day", name=bar.name, first=first)
    return Message("weeks-bar", name=bar.name, first=first, last=last)
