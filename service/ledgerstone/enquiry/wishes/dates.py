"""Days as people write them, counted from the day on which they wrote."""

from __future__ import annotations

import re
from datetime import date, timedelta
from typing import Final

from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.lexicon import NUMBERS
from ledgerstone.message import Message

_MONTH_NAMES: Final = (
    "january januar jan|february februar feb|march märz mar|april apr|may mai|june juni jun"
    "|july juli jul"
    "|august aug|september sept sep|october oktober oct okt|november nov|december dezember dec dez"
)
_MONTHS: Final = {
    name: i for i, names in enumerate(_MONTH_NAMES.split("|"), start=1) for name in names.split()
}
MONTH: Final = "(?:" + "|".join(sorted(_MONTHS, key=len, reverse=True)) + ")"
COUNT: Final = (
    r"(?:\d{1,2}|" + "|".join(w for w in NUMBERS if w not in ("half", "zero", "null")) + ")"
)
_DMY: Final = re.compile(
    rf"(?<!\d)(\d{{1,2}})(?:st|nd|rd|th|\.)?\s(?:of\s)?({MONTH})\b\.?(?:,?\s(20\d\d))?",
    re.IGNORECASE,
)
_MDY: Final = re.compile(
    rf"\b({MONTH})\.?\s(\d{{1,2}})(?:st|nd|rd|th)?\b(?:,?\s(20\d\d))?", re.IGNORECASE
)
_NUMERIC: Final = re.compile(r"(?<![\d.,/])(\d{1,2})([./-])(\d{1,2})\2(20\d\d|\d\d)(?![\d/])")
_SLASHED: Final = re.compile(
    r"\b(?:by|before|for|on|until|bis|am|zum)\s(?:the\s)?(\d{1,2})/(\d{1,2})(?!\d|[/.,]\d|\s?(?:mm|cm"
    r"|in|x|×|thick|deep|long|wide)\b|\s?[\"”″])",
    re.IGNORECASE,
)
_ISO: Final = re.compile(r"(?<!\d)(20\d\d)-(\d\d)-(\d\d)(?!\d)")
_ORDINAL: Final = re.compile(
    rf"\bthe (\d{{1,2}})(?:st|nd|rd|th)\b(?!\s(?:of\s)?{MONTH}|\s(?:floor|century|of next month))",
    re.IGNORECASE,
)
_NEXT_MONTH: Final = re.compile(
    r"\bthe (\d{1,2})(?:st|nd|rd|th) of next month\b|\bnext month's (\d{1,2})(?:st|nd|rd|th)\b",
    re.IGNORECASE,
)
WEEKDAYS: Final = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_WEEK_ON: Final = re.compile(
    r"\ba week on (mon|tue|wed|thu|fri|sat|sun)[a-z]{3,6}\b", re.IGNORECASE
)
_END_OF: Final = re.compile(
    rf"\b(?:end of|ende) (?:({MONTH})(?:[,.]? (?:if possible |wenn möglich )?(?P<year>20\d\d))?"
    r"|(next|this) month|(?:des )?(monats))\b",
    re.IGNORECASE,
)
_SPAN: Final = re.compile(
    rf"\b(?:in|within|innerhalb von|binnen)\s(?:about\s|the next\s|next\s)?({COUNT})\s(week"
    rf"|wk|day|month|woche|tag|monat)\w*",
    re.IGNORECASE,
)
_EASTER: Final = re.compile(
    r"\b(?:(before|vor|by|for|until|till|bis|zu|after|nach|around|about|over|at|um|über) )?"
    r"(?:easter|ostern)\b(?:,? (at the latest|latest|spätestens))?",
    re.IGNORECASE,
)
_LEAP: Final = 2028  # a year that has every day
_BY_IT: Final = frozenset({"by", "for", "until", "till", "bis", "zu"})

Dated = tuple[date | None, TextSpan, Message | None]


def easter(year: int) -> date:
    """Return Easter Sunday.

    Source
    ------
    The anonymous Gregorian computus, Nature 13 (1876) 487; J. Meeus, Astronomical
    Algorithms (1991) chapter 8.
    """
    a, (b, c) = year % 19, divmod(year, 100)
    d, e = divmod(b, 4)
    g = (8 * b + 13) // 25
    h = (19 * a + b - d - g + 15) % 30
    i, k = divmod(c, 4)
    f = (32 + 2 * e + 2 * i - h - k) % 7
    m = (a + 11 * h + 19 * f) // 433
    month = (h + f - 7 * m + 90) // 25
    return date(year, month, (h + f - 7 * m + 33 * month + 19) % 32)


def span_days(count: str, unit: str) -> timedelta:
    """Return how long so many weeks, days or months are; a month is 30 days."""
    number = int(count) if count.isdigit() else int(NUMBERS.get(count.lower(), 1))
    per = {"w": 7, "d": 1, "t": 1, "m": 30}[unit[0].lower()]
    return timedelta(days=number * per)


def days_in(
    text: str, start: int, end: int, written: date | None, *, month_first: bool = False
) -> list[Dated]:
    """Return every day that a sentence names, in order, with why one is not known.

    Parameters
    ----------
    month_first
        Whether 3/5 is March 5 where the workshop is.
    """
    found = [
        _named(match, int(match[1]), match[2], written) for match in _DMY.finditer(text, start, end)
    ]
    taken = [span for _, span, _ in found]
    found += [
        _named(match, int(match[2]), match[1], written)
        for match in _MDY.finditer(text, start, end)
        if not any(low <= match.start() < high for low, high in taken)
    ]
    numeric = _NUMERIC.finditer(text, start, end)
    found += [_of_numbers(one, month_first=month_first) for one in numeric]
    slashed = (
        _of_slash(match, written, month_first=month_first)
        for match in _SLASHED.finditer(text, start, end)
    )
    found += [one for one in slashed if one is not None]
    found += [
        (_safe(int(match[1]), int(match[2]), int(match[3])), match.span(), None)
        for match in _ISO.finditer(text, start, end)
    ]
    found += [_of_ordinal(match, written) for match in _ORDINAL.finditer(text, start, end)]
    found += [_of_next_month(match, written) for match in _NEXT_MONTH.finditer(text, start, end)]
    found += [_of_week_on(match, written) for match in _WEEK_ON.finditer(text, start, end)]
    found += [_of_end(match, written) for match in _END_OF.finditer(text, start, end)]
    found += [
        _of_span(match, written)
        for match in _SPAN.finditer(text, start, end)
        if not re.match(r"\s(?:of|in) ", text[match.end() : match.end() + 4])
    ]
    found += [_of_easter(match, written) for match in _EASTER.finditer(text, start, end)]
    return sorted(found, key=lambda one: one[1])


def _of_span(found: re.Match[str], written: date | None) -> Dated:
    if written is None:
        return None, found.span(), Message("enquiry-undated", said=found[0])
    return written + span_days(found[1], found[2]), found.span(), None


def _named(found: re.Match[str], day: int, name: str, written: date | None) -> Dated:
    """Return a named month's day, of the year said, else the next one after the message."""
    month, span = _MONTHS[name.lower()], found.span()
    if found[3]:
        return _safe(int(found[3]), month, day), span, None
    if written is None:
        return None, span, Message("enquiry-no-year", said=found[0])
    this = _safe(written.year, month, day)
    if this is not None and this <= written:
        this = _safe(written.year + 1, month, day)
    return this, span, None


def _of_numbers(found: re.Match[str], *, month_first: bool) -> Dated:
    first, mark, second, written_year = int(found[1]), found[2], int(found[3]), found[4]
    year = int(written_year) + (2000 if len(written_year) == 2 else 0)
    by_day, by_month = _safe(year, second, first), _safe(year, first, second)
    if mark == "/" and month_first and by_month:
        return by_month, found.span(), None
    if mark == "/" and by_day and by_month and by_day != by_month:
        doubt = Message("enquiry-two-days", said=found[0], month_first=by_month, day_first=by_day)
        return None, found.span(), doubt
    return by_day or by_month, found.span(), None


def _of_slash(found: re.Match[str], written: date | None, *, month_first: bool) -> Dated | None:
    """Return the next day told as "14/5", the day first or the month first."""
    first, second = int(found[1]), int(found[2])
    span = (found.start(1), found.end(2))
    said = f"{found[1]}/{found[2]}"
    if not any(_safe(_LEAP, *pair) for pair in ((second, first), (first, second))):
        return None
    if written is None:
        return None, span, Message("enquiry-no-year", said=said)
    days = [_next(written, *pair) for pair in ((second, first), (first, second))]
    known = [day for day in days if day is not None]
    if month_first and days[1] is not None:
        return days[1], span, None
    if len(known) == 2 and known[0] != known[1]:
        doubt = Message("enquiry-two-days", said=said, month_first=known[1], day_first=known[0])
        return None, span, doubt
    return known[0], span, None


def _next(written: date, month: int, day: int) -> date | None:
    """Return the next such day after a message."""
    this = _safe(written.year, month, day)
    return _safe(written.year + 1, month, day) if this is not None and this <= written else this


def _of_ordinal(found: re.Match[str], written: date | None) -> Dated:
    if written is None:
        return None, found.span(), Message("enquiry-no-month", said=found[0])
    day = int(found[1])
    this = _safe(written.year, written.month, day)
    if this is None or this <= written:
        month, year = (written.month % 12 + 1, written.year + written.month // 12)
        this = _safe(year, month, day)
    return this, found.span(), None


def _of_next_month(found: re.Match[str], written: date | None) -> Dated:
    if written is None:
        return None, found.span(), Message("enquiry-no-month", said=found[0])
    year, month = written.year + written.month // 12, written.month % 12 + 1
    return _safe(year, month, int(found[1] or found[2])), found.span(), None


def _of_week_on(found: re.Match[str], written: date | None) -> Dated:
    """Return seven days after the next day of that name."""
    if written is None:
        return _of_span(found, None)
    return coming(found[1], written) + timedelta(days=7), found.span(), None


def coming(weekday: str, written: date) -> date:
    """Return the next day of a name, which is not the one it was written on."""
    ahead = (WEEKDAYS.index(weekday[:3].lower()) - written.weekday() - 1) % 7 + 1
    return written + timedelta(days=ahead)


def month_after(name: str, written: date) -> tuple[date, date]:
    """Return the first and the last day of a month, of this year's or the next one's to come."""
    month = _MONTHS[name.lower()]
    year = written.year + (month < written.month)
    first_of_next = date(year + month // 12, month % 12 + 1, 1)
    return date(year, month, 1), first_of_next - timedelta(days=1)


def _of_end(found: re.Match[str], written: date | None) -> Dated:
    if found["year"]:
        written = date(int(found["year"]), 1, 1)
    if written is None:
        return None, found.span(), Message("enquiry-no-year", said=found[0])
    if found[1]:
        return month_after(found[1], written)[1], found.span(), None
    ahead = int((found[3] or "").lower() == "next")
    month, year = (
        (written.month - 1 + ahead) % 12 + 1,
        written.year + (written.month - 1 + ahead) // 12,
    )
    first_of_next = date(year + month // 12, month % 12 + 1, 1)
    return first_of_next - timedelta(days=1), found.span(), None


def _of_easter(found: re.Match[str], written: date | None) -> Dated:
    """Return the Thursday before it, the Sunday that it is, or only a doubt: "after Easter"."""
    if written is None:
        return None, found.span(), Message("enquiry-no-easter")
    sunday = easter(written.year)
    if sunday <= written:
        sunday = easter(written.year + 1)
    preposition, said = (found[1] or "").lower(), found[0]
    if preposition in _BY_IT or (found[2] and preposition not in ("before", "vor")):
        return sunday, found.span(), None
    if preposition in ("before", "vor"):
        thursday, saturday = sunday - timedelta(days=3), sunday - timedelta(days=1)
        doubt = Message("enquiry-easter", said=said, thursday=thursday, saturday=saturday)
        return thursday, found.span(), doubt
    if preposition in ("after", "nach"):  # Easter Monday is a holiday
        tuesday = sunday + timedelta(days=2)
        return None, found.span(), Message("enquiry-from", said=said, first=tuesday)
    return None, found.span(), Message("enquiry-about-day", said=said, day=sunday)


def _safe(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None


_WANTED: Final = re.compile(
    r"\b(?:(?<!taken )(?<!written )(?<!noted )by|before|(?<!message )(?<!note )for|until|till|bis"
    r"|around|about|need\w*|opening|ready|in time|on|am|zum"
    r"|vor)\b[^,\n]{0,24}\Z",
    re.IGNORECASE,
)


def day_in_note(text: str) -> date | None:
    """Return the day that a note or a form says it was written on: "Tues 2 March 2027"."""
    for line in text.split("\n")[:6]:
        for match in _DMY.finditer(line):
            if match[3] and not _WANTED.search(line[: match.start()]):
                return _safe(int(match[3]), _MONTHS[match[2].lower()], int(match[1]))
        for match in _ISO.finditer(line):
            return _safe(int(match[1]), int(match[2]), int(match[3]))
    return None
