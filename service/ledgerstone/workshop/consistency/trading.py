"""Checks across a profile's keys on who the workshop is, its money, places and days."""

from __future__ import annotations

import re
import zoneinfo
from collections.abc import Callable, Sequence
from datetime import date
from difflib import get_close_matches
from functools import cache
from typing import Final

from ledgerstone.json_types import KeyPath
from ledgerstone.message import Listed, Message
from ledgerstone.workshop.consistency.shared import FoundFaults, each_once, named_once
from ledgerstone.workshop.countries.places import zones_by_use
from ledgerstone.workshop.countries.postcodes import beginnings_like
from ledgerstone.workshop.countries.public_holidays import (
    COUNTRIES,
    country_fault,
    holiday_elsewhere,
    holiday_names,
    month_and_day_of,
    part_meant,
    parts_of,
    parts_told,
    plain_name,
)
from ledgerstone.workshop.countries.zones import zone_meant
from ledgerstone.workshop.keys.values import nearest
from ledgerstone.workshop.records import (
    Calendar,
    Conventions,
    DeliveryArea,
    Identity,
    Mailbox,
    MailSettings,
    Offer,
    Tax,
    Web,
)

_SERVER: Final = r"[A-Za-z0-9][A-Za-z0-9.-]*|\[?[0-9A-Fa-f:]+\]?"
_HERE: Final = ("localhost", "127.0.0.1", "::1")
# Under which IANA's zones are told by a place.
_AREAS: Final = frozenset(
    (
        "Africa",
        "America",
        "Antarctica",
        "Asia",
        "Atlantic",
        "Australia",
        "Europe",
        "Indian",
        "Pacific",
    )
)


def _place_known(workshop: Identity) -> FoundFaults:
    if workshop.country not in COUNTRIES:
        yield ("workshop", "country"), country_fault(workshop.country)
        return
    regions = parts_of(workshop.country)
    if regions and workshop.region and workshop.region not in regions:
        code = part_meant(workshop.region, workshop.country)
        near = {"near": "guess" if code else "known", "guess": code or ""}
        known = ", ".join(parts_told(workshop.country))
        values = {"region": workshop.region, "land": workshop.country, "known": known}
        yield ("workshop", "region"), Message("fault-region", **values, **near)


@cache
def _time_zones() -> frozenset[str]:
    """Every time zone that the machine or ``tzdata`` has, whose files are read once."""
    return frozenset(zoneinfo.available_timezones())


def _is_time_zone(name: str) -> bool:
    """Whether a zone is one of them: a place's own file is read alone, which takes less time."""
    if name.partition("/")[0] not in _AREAS:
        return name in _time_zones()
    try:
        zoneinfo.ZoneInfo(name)
    except (KeyError, ValueError, OSError):
        return False
    return True


def _clock_known(workshop: Identity) -> FoundFaults:
    if not _is_time_zone(workshop.timezone):
        zones = tuple(sorted(_time_zones()))
        meant = zone_meant(workshop.timezone, workshop.country, zones)
        known = zones_by_use(workshop.country)
        near = {"near": "guess", "guess": meant, "known": ""} if meant else nearest("", known)
        yield ("workshop", "timezone"), Message("fault-clock", zone=workshop.timezone, **near)


def _currency_letters(workshop: Identity) -> FoundFaults:
    if not re.fullmatch("[A-Z]{3}", workshop.currency):
        yield ("workshop", "currency"), Message("fault-currency")


def _email_shape(workshop: Identity) -> FoundFaults:
    if not re.fullmatch(r"[^@\s]+@[^@\s]+\.[^@\s.]+", workshop.email):
        yield ("workshop", "email"), Message("fault-email")


def _tax_rate(tax: Tax) -> FoundFaults:
    if tax.registered and tax.percent == 0:
        yield ("tax", "percent"), Message("fault-no-rate")


def _tax_by_place(tax: Tax, areas: Sequence[DeliveryArea]) -> FoundFaults:
    if tax.registered and tax.shown == "included":
        for i, area in enumerate(areas):
            for key in ("tax_percent", "fitted_tax_percent"):
                if getattr(area, key) not in (None, tax.percent):
                    yield ("areas", i, key), Message("fault-tax-by-place")


def _step_and_smallest(offer: Offer) -> FoundFaults:
    if offer.smallest_order and offer.round_to > offer.smallest_order:
        yield ("offer", "round_to"), Message("fault-more-than", key="smallest_order")


def _areas(areas: Sequence[DeliveryArea], workshop: Identity) -> FoundFaults:
    yield from named_once([area.name for area in areas], "areas", "name")
    taken: dict[str, str] = {}
    for i, area in enumerate(areas):
        if (area.pallet, area.own_van, area.fitted) == (None, None, None):
            yield ("areas", i), Message("fault-area-free")
        if not area.postcodes:
            yield ("areas", i, "postcodes"), Message("fault-no-postcode")
        for j, beginning in enumerate(area.postcodes):
            path: KeyPath = ("areas", i, "postcodes", j)
            if not _is_beginning(beginning, workshop.country):
                like = beginnings_like(workshop.country)
                yield path, Message("fault-postcode", beginning=beginning, like=Listed(like, "or"))
            elif beginning in taken:
                area_name = taken[beginning]
                yield path, Message("fault-postcode-taken", beginning=beginning, area=area_name)
            taken.setdefault(beginning, area.name)


def _is_beginning(text: str, country: str) -> bool:
    """Whether a text is capital letters and digits, perhaps with a rising range of districts."""
    figures = re.fullmatch("([0-9]+)-([0-9]+)", text)
    if figures is not None and country != "GB":
        return len(figures[1]) == len(figures[2]) and figures[1] < figures[2]
    match = re.fullmatch("[A-Z]{1,2}([0-9]{1,2})-([0-9]{1,2})|[A-Z0-9]+", text)
    if match is None:
        return False
    return match[1] is None or int(match[1]) < int(match[2])


def _postcode_pattern(conventions: Conventions) -> FoundFaults:
    if conventions.postcodes is None:
        return
    try:
        parts = re.compile(conventions.postcodes).groups
    except re.error as reason:
        yield ("conventions", "postcodes"), Message("fault-pattern", at=(reason.pos or 0) + 1)
        return
    if parts == 0:
        yield ("conventions", "postcodes"), Message("fault-pattern-brackets")


def _working_days(calendar: Calendar) -> FoundFaults:
    if not calendar.weekdays:
        yield ("calendar", "weekdays"), Message("fault-no-weekday")
    yield from each_once(calendar.weekdays, ("calendar", "weekdays"))
    for i, closure in enumerate(calendar.closures):
        if closure.first > closure.last:
            message = Message("fault-closure", last=closure.last, first=closure.first)
            yield ("calendar", "closures", i, "last"), message


def _own_holidays(calendar: Calendar, workshop: Identity) -> FoundFaults:
    for i, day in enumerate(calendar.holidays_added):
        if not _is_month_and_day(day):
            found = month_and_day_of(day, workshop.country) if _has_holidays(workshop) else None
            message = Message("fault-month-day", known="yes" if found else "no", day=found or "")
            yield ("calendar", "holidays_added", i), message
    for i, name in enumerate(calendar.holidays_worked):
        if _has_holidays(workshop) and holiday_elsewhere(name, workshop.country) is None:
            place = "-".join(filter(None, (workshop.country, workshop.region)))
            names = holiday_names(place, workshop.language)
            yield ("calendar", "holidays_worked", i), _no_holiday(name, names)


def _no_holiday(name: str, known: tuple[str, ...]) -> Message:
    """Say that a holiday is none, and which was meant or which there are."""
    plain = {plain_name(each): each for each in known}
    close = get_close_matches(plain_name(name), plain, n=1, cutoff=0.6)
    values = {"near": "guess" if close else "known", "guess": plain[close[0]] if close else ""}
    return Message("fault-holiday", name=name, known=", ".join(known), **values)


def _is_month_and_day(text: str) -> bool:
    try:
        date.fromisoformat(f"2028-{text}")  # a leap year
    except ValueError:
        return False
    return True


def _has_holidays(workshop: Identity) -> bool:
    """Whether the country's holidays are known, and the region is one of its own."""
    parts = parts_of(workshop.country)
    return workshop.country in COUNTRIES and (not workshop.region or workshop.region in parts)


def _addresses(web: Web) -> FoundFaults:
    for name in ("base_url", "page_url"):
        if not re.fullmatch(r"https?://[^\s/?#]+(/[^\s?#]*)?", getattr(web, name)):
            yield ("web", name), Message("fault-address")
    for i, origin in enumerate(web.origins):
        if not re.fullmatch(r"https?://[^\s/?#]+", origin):
            yield ("web", "origins", i), Message("fault-origin")


def _mail_server(mail: MailSettings | None) -> FoundFaults:
    if mail is None:
        return
    if not re.fullmatch(_SERVER, mail.host):
        yield ("mail", "host"), Message("fault-server", like="smtp.example.com")
    if mail.security == "none" and mail.user is not None and mail.host not in _HERE:
        yield ("mail", "security"), Message("fault-secret", box="mail")


def _mailbox_server(mailbox: Mailbox | None) -> FoundFaults:
    if mailbox is None:
        return
    if not re.fullmatch(_SERVER, mailbox.host):
        yield ("mailbox", "host"), Message("fault-server", like="imap.example.com")
    if mailbox.security == "none" and mailbox.host not in _HERE:
        yield ("mailbox", "security"), Message("fault-secret", box="mailbox")


CHECKS: tuple[Callable[..., FoundFaults], ...] = (
    _place_known,
    _clock_known,
    _currency_letters,
    _email_shape,
    _tax_rate,
    _tax_by_place,
    _step_and_smallest,
    _areas,
    _postcode_pattern,
    _working_days,
    _own_holidays,
    _addresses,
    _mail_server,
    _mailbox_server,
)
