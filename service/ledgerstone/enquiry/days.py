"""When it is needed: days as people say them, counted from the day on which they wrote."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

from ledgerstone.enquiry.dates import COUNT, MONTH, Dated, days_in, span_days
from ledgerstone.enquiry.scene import Span
from ledgerstone.message import Message

_NEEDED: Final = re.compile(
    r"\b(?:need(?:s|ed)?|want(?:s|ed)?|by|before|hoping|hope|possible|when|until|till|ready"
    r"|wanted|within|in time|deadline|date"
    r"|wunschtermin|bis|brauchen?|benötig\w+|spätestens|vor|no later|on site|here|have (?:it"
    r"|them|the)|be here|like (?:it|them)"
    r"|love it|fetch it|finish|could you|can i|come back|it could go in|next|fitted|delivered"
    r"|pick(?:ed|ing)? (?:it |them )?up|collect(?:ed|ing)?|abhol\w*|abgeholt|around|for (?:his"
    r"|her|our|my|the|their|a)"
    r"|installed|must be|serves me|termin|liefertermin|so say|fertig|bräuchten?|gern|soll)\b",
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
_VAGUE: Final = re.compile(
    rf"\b(?:in|during|early|late|mid|before|by|anfang|mitte|im)[ -](?:early |late "
    rf"|mid[ -])?({MONTH}|(?:the )?(?:spring|summer|autumn|winter|frühjahr|sommer|herbst)"
    rf"|christmas|weihnachten|new year|thanksgiving)\b(?!\s\d)"
    rf"|\b(?:next|nächsten|kommenden) (?:month|monat)\b"
    rf"|\b(?:by|before|on|this|collect(?:ing)?|pick(?:ing)? (?:it |them )?up)(?: on)? (?:mon"
    rf"|tues?|weds?|wednes"
    rf"|thu(?:rs?)?|fri|sat|satur|sun)(?:day)?\b(?!\s\d)"
    rf"|\b(?:this|in the|next|diesen|im) (?:fall|spring|summer|autumn|winter)\b"
    rf"|\b(?:the )?(?:beginning|start|middle|anfang|mitte) of {MONTH}\b"
    rf"|\b(?:last|first|second|third) week (?:of|in) (?P<week>{MONTH})\b|\bnext (?:mon|tues"
    rf"|wednes|thurs|fri|satur|sun)day\b|any time between[^.\n]{{1,60}}",
    re.IGNORECASE,
)
_WEEK: Final = re.compile(
    rf"\b(?:(?:w/c|week (?:commencing|beginning|starting|of)|woche (?:vom|ab dem))\s(?:the\s)?"
    rf"(?:\d{{1,2}}(?:st|nd|rd|th|\.)?\s(?:of\s)?{MONTH}|{MONTH}\.?\s\d{{1,2}}(?:st|nd|rd|th)?)"
    r"|(?:kw|kalenderwoche|week|wk)\.?\s?(?:no\.?\s?|nr\.?\s?)?\d{1,2})\b",
    re.IGNORECASE,
)
_BY_THEN: Final = re.compile(r"\b(?:by|before|for|bis) (?:then|dann|dahin)\b", re.IGNORECASE)
_LATEST_AFTER: Final = re.compile(
    r"[,\s]{0,3}(?:no later|at the latest|latest|spätestens)", re.IGNORECASE
)
_LATEST: Final = re.compile(
    r"\b(?:by|before|until|bis|spätestens|no later than|latest)\b[^,;]{0,20}\Z", re.IGNORECASE
)
_LAST_WEEK: Final = re.compile(r"\b(last|first) week (?:of|in) ", re.IGNORECASE)
_BEFORE_THIS: Final = re.compile(rf"\b({COUNT})\s(week|day)s? (?:before|earlier)\b", re.IGNORECASE)
_SENTENCE: Final = re.compile(r"[^.!?\n]{1,400}(?:\.\d[^.!?\n]{0,200}){0,6}")


@dataclass(frozen=True, slots=True)
class Needed:
    """The day it is needed by, or why it is not known, and the words for it."""

    day: date | None = None
    doubt: Message | None = None
    spans: tuple[Span, ...] = ()


def needed_by(text: str, spans: Sequence[Span], written: date | None) -> Needed:
    """Read when it is needed; parts of the text come the newest first.

    Parameters
    ----------
    written
        The day of the message, from its header or as it says itself; never today.
    """
    for start, end in spans:
        unsure: Needed | None = None
        for sentence in _sentences(text, start, end):
            found = _in_sentence(text, *sentence, written)
            if found is not None and found.day is not None:
                return found
            unsure = unsure or found
        if unsure is not None:
            return unsure
    return Needed()


def _sentences(text: str, start: int, end: int) -> Iterable[Span]:
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


def _in_sentence(text: str, start: int, end: int, written: date | None) -> Needed | None:
    week = _in_week(text, start, end, written)
    if week is not None or not _NEEDED.search(text[start:end]):
        return week
    chosen = None
    for day, span, unsure in days_in(text, start, end, written):
        before = text[max(start, span[0] - 34) : span[0]]
        clause = re.split(r"[,;:]| because | as | so | and (?=i|we)", before)[-1]
        if _OTHERWISE.search(clause) and not _FOR_EVENT.search(clause):
            counted = _counted_from(text, end, (day, span, unsure))
            if counted is not None:
                return counted
            continue
        if written is not None and day is not None and day <= written:
            continue
        if _LATEST_AFTER.match(text[span[1] : span[1] + 16]) or _LATEST.search(before):
            return Needed(day, unsure, (span,))
        chosen = chosen or Needed(day, unsure, (span,))
    return chosen or _vaguely(text, start, end)


def _in_week(text: str, start: int, end: int, written: date | None) -> Needed | None:
    """Give the doubt of a week that is named, where no day beside it is."""
    week = _WEEK.search(text, start, end)
    if week is None or _OTHERWISE.search(text[start : week.start()]):
        return None
    named = days_in(text, start, end, written)
    if any(not week.start() <= span[0] < week.end() for _, span, _ in named):
        return None
    doubt = Message("enquiry-week", said=" ".join(week[0].split()))
    return Needed(None, doubt, (week.span(),))


def _counted_from(text: str, end: int, dated: Dated) -> Needed | None:
    """Give the day for something else that it is needed before, or by."""
    day, span, unsure = dated
    if day is None:
        return None
    later = _BEFORE_THIS.search(text, span[1], end)
    if later:
        return Needed(day - span_days(later[1], later[2]), None, (span, later.span()))
    then = _BY_THEN.search(text, span[1], end)
    return Needed(day, unsure, (span, then.span())) if then else None


def _vaguely(text: str, start: int, end: int) -> Needed | None:
    vague = _VAGUE.search(text, start, end)
    if vague is None:
        return None
    before = text[max(start, vague.start() - 30) : vague.start()]
    if _OTHERWISE.search(before) and not vague[0].lower().startswith("any time"):
        return None
    doubt = Message("enquiry-vague", said=" ".join(vague[0].split()))
    return Needed(None, doubt, (vague.span(),))
