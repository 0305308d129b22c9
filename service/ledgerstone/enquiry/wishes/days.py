"""When it is needed: days as people say them, counted from the day on which they wrote."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.wishes.dates import (
    COUNT,
    MONTH,
    Dated,
    coming,
    days_in,
    month_after,
    span_days,
)
from ledgerstone.message import Message

_NEEDED: Final = re.compile(
    r"\b(?:need(?:s|ed)?|want(?:s|ed)?|by|before|hoping|hope|possible|when|until|till|ready"
    r"|wanted|within|in time|deadline|date"
    r"|wunschtermin|bis|brauchen?|benötig\w+|spätestens|vor|no later|on site|here|have (?:it"
    r"|them|the)|be here|like (?:it|them)"
    r"|love it|fetch it|finish|could you|can (?:i|you)|deliver(?:y|ies)?|some ?time|irgendwann"
    r"|liefer(?:n|ung)|können sie|könnt ihr|come back|it could go in|next|fitted|delivered"
    r"|pick(?:ed|ing)? (?:it |them )?up|collect(?:ed|ing)?|abhol\w*|abgeholt|around|for (?:his"
    r"|her|our|my|the|their|a)"
    r"|installed|must be|serves me|termin|liefertermin|so say|fertig|bräuchten?|gern|soll"
    r"|ideal(?:ly)?|would be|would suit|is best|best for|suits? (?:us|me)|works? for|latest|wäre"
    r"|passt|am besten|am liebsten)\b",
    re.IGNORECASE,
)
_OTHERWISE: Final = re.compile(
    r"\b(?:call(?:ed)? (?:on|you)|spoke|written|dated|sent|submitted|rang|wrote|bought|moved"
    r"|born|since|seit|last (?:week|month|year|summer)|measured|invoice"
    r"|are home|opens?|opening|open (?:the|on)|fly|arrive|leave|holiday|birthday|wedding"
    r"|married)\b",
    re.IGNORECASE,
)
_FOR_EVENT: Final = re.compile(
    r"\b(?:for|before|by|in time for|zur?|für) (?:[\w'’]+ ){0,3}(?:opening|wedding|birthday"
    r"|holiday|eröffnung"
    r"|hochzeit|geburtstag)\b",
    re.IGNORECASE,
)
_EVENT: Final = (
    r"(?:the |our |my |his |her )?(?:(?!of\b)\w+ ){0,2}?(?:bank holiday|match|game|season|party"
    r"|wedding|christening|baby|birthday|tupping|lambing|harvest|show|move)\b"
)
# Before another noun an event only names what a slab is for: "for the baby's room".
_ALONE: Final = (
    r"(?: (?:weekend|season|day|festival)s?\b)?(?=\s*(?:[^\w\s'’-]|\Z|(?-i:\n\s*[A-Z]))|\s+-\s"
    r"|\s+(?:an|and|are|around|as|at|because|but|by|coming|early|end|for|from|here|i|if|in|is|it"
    r"|late|later|mid|next|oder|of|on|or|please|so|soon|sometime|starting|thanks|that|then|there"
    r"|this|though|to|und|we|when|where|which|while|will|with|would|you)\b)"
)
_VAGUE: Final = re.compile(
    rf"\b(?:in|during|early|late|mid|before|by|bis|anfang|mitte|im|around|about)[ -](?:early "
    rf"|late |mid[ -])?({MONTH}|(?:the )?(?:spring|summer|autumn|fall|winter)"
    rf"|(?:zum )?(?:frühjahr|frühling|sommer|herbst|winter)"
    rf"|christmas|weihnachten|new year|thanksgiving)\b(?!\s\d)"
    r"|\b(?:the )?end of (?:the|this|next) (?:month|week|year)\b|\bende (?:des|dieses) monats\b"
    r"|\bin time for (?:the |our |my |his |her )?(?:\w+ ){0,2}?\w+\b|\bhalloween\b"
    rf"|\b(?:by|before) {_EVENT}|\bfor {_EVENT}{_ALONE}"
    rf"|\b(?:next|nächsten|kommenden) (?:month|monat)\b"
    rf"|\b(?:by|before|on|this|collect(?:ing)?|pick(?:ing)? (?:it |them )?up)(?: on)? (?:mon"
    rf"|tues?|weds?|wednes"
    rf"|thu(?:rs?)?|fri|sat|satur|sun)(?:day)?\b(?!\s\d)"
    rf"|\b(?:this|in the|next|diesen|im) (?:fall|spring|summer|autumn|winter)\b"
    rf"|\b(?:the )?(?:beginning|start|middle|anfang|mitte) of {MONTH}\b"
    r"|\b(?:in|during|before|by|after|vor|nach|bis) (?:the |den |our )?(?:\w+ )?(?:holidays"
    r"|(?:\w{1,10})?ferien)\b"
    r"|\b(?:this|next|diese|nächste|kommende) (?:week|woche)\b(?!['’])"
    rf"|\b(?:last|first|second|third) week (?:of|in) (?P<week>{MONTH})\b|\bnext (?:mon|tues"
    rf"|wednes|thurs|fri|satur|sun)day\b|any time between[^.\n]{{1,60}}",
    re.IGNORECASE,
)
_IN_MONTH: Final = re.compile(rf"\b({MONTH})\b", re.IGNORECASE)
_OF_MONTH: Final = re.compile(
    r"\b(?:(early|beginning|start|anfang)|(mid|middle|mitte)|(late))\b", re.IGNORECASE
)
# The days of a month's first, middle and last part: common practice, no source.
_PARTS: Final = ((1, 10), (11, 20), (21, 31))
_ON_DAY: Final = re.compile(
    r"\b(next )?(mon|tues?|weds?|wednes|thu(?:rs?)?|fri|sat|satur|sun)(?:day)?\Z", re.IGNORECASE
)
_ONE_WEEK: Final = re.compile(
    r"\b(this|diese|next|nächste|kommende) (?:week|woche)\Z", re.IGNORECASE
)
_BY: Final = re.compile(r"(?:by|before|bis|vor)\b", re.IGNORECASE)
_UNTIL: Final = re.compile(r"\b(?:before|by)\b", re.IGNORECASE)
_SHORT: Final = 4  # words: nothing but a day
_WEEK: Final = re.compile(
    rf"\b(?:(?:w/c|week (?:commencing|beginning|starting|of)|woche (?:vom|ab dem))\s(?:the\s)?"
    rf"(?:\d{{1,2}}(?:st|nd|rd|th|\.)?\s(?:of\s)?{MONTH}|{MONTH}\.?\s\d{{1,2}}(?:st|nd|rd|th)?)"
    r"|(?:kw|kalenderwoche|week|wk)\.?\s?(?:no\.?\s?|nr\.?\s?)?\d{1,2})\b",
    re.IGNORECASE,
)
_SAYS: Final = re.compile(
    r"\b(?:let us|let's|let’s|so|sagen wir) (?:say )?\W{0,2}\Z", re.IGNORECASE
)
_BY_THEN: Final = re.compile(r"\b(?:by|before|for|bis) (?:then|dann|dahin)\b", re.IGNORECASE)
_LATEST_AFTER: Final = re.compile(
    r"[,\s]{0,3}(?:no later|at the latest|latest|spätestens)", re.IGNORECASE
)
_LATEST: Final = re.compile(
    r"\b(?:by|before|until|bis|spätestens|no later than|latest)\b[^,;]{0,20}\Z", re.IGNORECASE
)
_BEFORE_THIS: Final = re.compile(rf"\b({COUNT})\s(week|day)s? (?:before|earlier)\b", re.IGNORECASE)
_SENTENCE: Final = re.compile(r"[^.!?\n]{1,400}(?:\.\d[^.!?\n]{0,200}){0,6}")


@dataclass(frozen=True, slots=True)
class Needed:
    """The day it is needed by, or why it is not known, and the words for it.

    ``if_today`` are the days that it may be where only the message's own day is missing and it was
    written today.
    """

    day: date | None = None
    doubt: Message | None = None
    spans: tuple[TextSpan, ...] = ()
    if_today: tuple[date, ...] = ()

    def readings(self) -> list[date]:
        """Return the days that may be meant: those named, else those counted from today."""
        told = self.doubt.values.values() if self.doubt is not None else ()
        days = sorted({one for one in told if isinstance(one, date)})
        return days or ([self.day] if self.day is not None else list(self.if_today))


def needed_by(
    text: str, spans: Sequence[TextSpan], written: date | None, *, month_first: bool = False
) -> Needed:
    """Read when it is needed; parts of the text come the newest first.

    Parameters
    ----------
    written
        The day of the message, from its header or as it says itself; never today.
    month_first
        Whether 3/5 is March 5 where the workshop is.
    """
    for start, end in spans:
        unsure: Needed | None = None
        for sentence in _sentences(text, start, end):
            found = _in_sentence(text, *sentence, written, month_first=month_first)
            if found is not None and found.day is not None:
                return found
            unsure = _firmer(text, unsure, found)
        if unsure is not None:
            return unsure
    return Needed()


def _firmer(text: str, first: Needed | None, second: Needed | None) -> Needed | None:
    """Return which of two wishes counts: a last day ("by spring") before a time ("this winter")."""
    if first is None or second is None or _is_last(text, first) or not _is_last(text, second):
        return first or second
    return second


def _is_last(text: str, wish: Needed) -> bool:
    return any(_BY.match(text, *span) for span in wish.spans)


def _sentences(text: str, start: int, end: int) -> Iterable[TextSpan]:
    joined = text[start:end]
    at = 0
    for found in re.finditer(
        rf"(?<=[^\d\s][.!?])\s|(?<=\d\d[.!?])\s(?=[A-Z])(?!(?i:{MONTH})\b)|\n[ \t>]*\n"
        rf"|\n(?=[A-Z•*-])(?<=[.!?:]\n)|;",
        joined,
    ):
        yield start + at, start + found.start()
        at = found.end()
    yield start + at, end


def _in_sentence(
    text: str, start: int, end: int, written: date | None, *, month_first: bool
) -> Needed | None:
    week = _in_week(text, start, end, written)
    is_day_only = len(text[start:end].split()) <= _SHORT
    if week is not None or not (is_day_only or _NEEDED.search(text[start:end])):
        return week
    chosen = None
    days = days_in(text, start, end, written, month_first=month_first)
    settled = [one for one in days if _SAYS.search(text[max(start, one[1][0] - 24) : one[1][0]])]
    for day, span, unsure in settled or days:
        before = text[max(start, span[0] - 60) : span[0]]
        clause = re.split(r"[,;:]| because | as | so | and (?=i|we)", before)[-1]
        if _OTHERWISE.search(clause) and not _FOR_EVENT.search(clause):
            counted = _counted_from(text, end, (day, span, unsure))
            if counted is not None:
                return counted
            continue
        is_past = written is not None and day is not None and day <= written
        if is_past and not (day == written and unsure is not None):
            continue  # the very day still stands as one of two readings
        if _LATEST_AFTER.match(text[span[1] : span[1] + 16]) or _LATEST.search(before):
            return Needed(day, unsure, (span,))
        chosen = chosen or Needed(day, unsure, (span,))
    return chosen or _vaguely(text, start, end, written)


def _in_week(text: str, start: int, end: int, written: date | None) -> Needed | None:
    """Return the doubt where a week is named and no day of it."""
    week = _WEEK.search(text, start, end)
    if week is None or _OTHERWISE.search(text[start : week.start()]):
        return None
    named = days_in(text, start, end, written)
    if any(not week.start() <= span[0] < week.end() for _, span, _ in named):
        return None
    doubt = Message("enquiry-week", said=" ".join(week[0].split()))
    return Needed(None, doubt, (week.span(),))


def _counted_from(text: str, end: int, dated: Dated) -> Needed | None:
    """Return the day of an event that it is needed before, or by."""
    day, span, unsure = dated
    if day is None:
        return None
    later = _BEFORE_THIS.search(text, span[1], end)
    if later:
        return Needed(day - span_days(later[1], later[2]), None, (span, later.span()))
    then = _BY_THEN.search(text, span[1], end)
    return Needed(day, unsure, (span, then.span())) if then else None


def _vaguely(text: str, start: int, end: int, written: date | None) -> Needed | None:
    every = [*_VAGUE.finditer(text, start, end)]
    vague = next((one for one in every if _BY.match(one[0])), next(iter(every), None))
    if vague is None:
        return None
    before = text[max(start, vague.start() - 30) : vague.start()]
    if _OTHERWISE.search(before) and not vague[0].lower().startswith("any time"):
        return None
    said = " ".join(vague[0].split())
    doubt = None if written is None else _days_of(said, written)
    return Needed(None, doubt or Message("enquiry-vague", said=said), (vague.span(),))


def _days_of(said: str, written: date) -> Message | None:
    """Return the days that words may mean which name none: "next Friday", "mid February"."""
    weekday, week, month = _ON_DAY.search(said), _ONE_WEEK.search(said), _IN_MONTH.search(said)
    if weekday is not None:
        day = coming(weekday[2], written)
        if not weekday[1]:
            return Message("enquiry-about-day", said=said, day=day)
        return Message("enquiry-either-day", said=said, first=day, second=day + timedelta(days=7))
    if week is not None:
        ahead = 0 if week[1].lower() in ("this", "diese") else 7
        monday = written + timedelta(days=ahead - written.weekday())
        friday = monday + timedelta(days=4)
        return Message("enquiry-between", said=said, first=max(monday, written), last=friday)
    if month is None:
        return None
    part = _OF_MONTH.search(said)
    if part is None and _UNTIL.search(said):
        return None
    first, last = month_after(month[1], written)
    if part is not None:
        low, high = _PARTS[(part.lastindex or 1) - 1]
        first, last = first.replace(day=low), last.replace(day=min(high, last.day))
    return Message("enquiry-between", said=said, first=first, last=last)
