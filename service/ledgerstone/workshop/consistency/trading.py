"""Checks across a profile's keys on who the workshop is, its money, places and days."""

from __future__ import annotations

import re
import zoneinfo
from collections.abc import Callable, Sequence
from datetime import date
from typing import Final

import holidays

from ledgerstone.workshop.consistency.shared import Found, each_once, named_once
from ledgerstone.workshop.lines import Path
from ledgerstone.workshop.public_holidays import holiday_names
from ledgerstone.workshop.records import (
    Area,
    Calendar,
    Conventions,
    Identity,
    Mail,
    Mailbox,
    Offer,
    Tax,
    Web,
)
from ledgerstone.workshop.values import nearest

_SERVER: Final = r"[A-Za-z0-9][A-Za-z0-9.-]*|\[?[0-9A-Fa-f:]+\]?"
_HERE: Final = ("localhost", "127.0.0.1", "::1")


def _place_known(workshop: Identity) -> Found:
    countries = holidays.list_supported_countries(include_aliases=True)
    if workshop.country not in countries:
        says = f'no public holidays are known for "{workshop.country}". Write two letters, like GB.'
        yield ("workshop", "country"), says
        return
    regions = tuple(countries[workshop.country])
    if regions and workshop.region not in regions:
        named = getattr(holidays.country_holidays(workshop.country), "subdivisions_aliases", {})
        letters = {name.casefold(): code for name, code in named.items()}
        code = letters.get(workshop.region.casefold())
        near = f'Perhaps "{code}" was meant.' if code else nearest(workshop.region.upper(), regions)
        says = f'"{workshop.region}" is not a region of {workshop.country}. {near}'
        yield ("workshop", "region"), says.strip()


def _clock_known(workshop: Identity) -> Found:
    known = zoneinfo.available_timezones()
    if workshop.timezone not in known:
        near = nearest(workshop.timezone, tuple(sorted(known)))
        says = f'"{workshop.timezone}" is no time zone known here. Write it like Europe/London.'
        yield ("workshop", "timezone"), f"{says} {near}".strip()


def _currency_letters(workshop: Identity) -> Found:
    if not re.fullmatch("[A-Z]{3}", workshop.currency):
        yield ("workshop", "currency"), "this is three capital letters, like GBP."


def _email_shape(workshop: Identity) -> Found:
    if not re.fullmatch(r"[^@\s]+@[^@\s]+\.[^@\s.]+", workshop.email):
        yield ("workshop", "email"), "this is one email address, like hello@example.com."


def _tax_rate(tax: Tax) -> Found:
    if tax.registered and tax.percent == 0:
        says = "a registered workshop has a rate. Write it, or registered = false."
        yield ("tax", "percent"), says


def _tax_by_place(tax: Tax, areas: Sequence[Area]) -> Found:
    if tax.registered and tax.shown == "included":
        for i, area in enumerate(areas):
            for key in ("tax_percent", "fitted_tax_percent"):
                if getattr(area, key) not in (None, tax.percent):
                    says = 'where the tax hangs on the place, write shown = "before-tax" in [tax].'
                    yield ("areas", i, key), says


def _step_and_smallest(offer: Offer) -> Found:
    if offer.smallest_order and offer.round_to > offer.smallest_order:
        yield ("offer", "round_to"), "this is more than smallest_order."


def _areas(areas: Sequence[Area], workshop: Identity) -> Found:
    yield from named_once([area.name for area in areas], "areas", "name")
    taken: dict[str, str] = {}
    for i, area in enumerate(areas):
        if (area.pallet, area.own_van, area.fitted) == (None, None, None):
            yield ("areas", i), "this area has no price. Write pallet, own_van or fitted."
        if not area.postcodes:
            yield ("areas", i, "postcodes"), "name at least one beginning of a postcode."
        for j, beginning in enumerate(area.postcodes):
            path: Path = ("areas", i, "postcodes", j)
            if not _is_beginning(beginning, workshop.country):
                yield path, f'"{beginning}" is not like HR, LD1, LD1-6, 83 or 83000-83739.'
            elif beginning in taken:
                yield path, f'"{beginning}" already belongs to the area "{taken[beginning]}".'
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


def _postcode_pattern(conventions: Conventions) -> Found:
    if conventions.postcodes is None:
        return
    try:
        parts = re.compile(conventions.postcodes).groups
    except re.error as reason:
        yield ("conventions", "postcodes"), f"this is no regular expression: {reason}."
        return
    if parts == 0:
        yield ("conventions", "postcodes"), "put what areas begin with in brackets: ([0-9]{5})."


def _working_days(calendar: Calendar) -> Found:
    if not calendar.weekdays:
        yield ("calendar", "weekdays"), "name at least one day on which hands work."
    yield from each_once(calendar.weekdays, ("calendar", "weekdays"))
    for i, closure in enumerate(calendar.closures):
        if closure.first > closure.last:
            says = f"this is {closure.last}, before the first day, {closure.first}."
            yield ("calendar", "closures", i, "last"), says


def _own_holidays(calendar: Calendar, workshop: Identity) -> Found:
    for i, day in enumerate(calendar.holidays_added):
        if not _is_month_and_day(day):
            says = "this is a month and a day, like 08-15."
            yield ("calendar", "holidays_added", i), says
    known = _holiday_names(workshop)
    for i, name in enumerate(calendar.holidays_worked):
        if known and name.casefold() not in {one.casefold() for one in known}:
            says = f'no public holiday here is called "{name}". Known here: {", ".join(known)}.'
            yield ("calendar", "holidays_worked", i), says


def _is_month_and_day(text: str) -> bool:
    try:
        date.fromisoformat(f"2028-{text}")  # a leap year
    except ValueError:
        return False
    return True


def _holiday_names(workshop: Identity) -> tuple[str, ...]:
    """The names of the public holidays of some years, where country and region are known."""
    parts = holidays.list_supported_countries(include_aliases=True).get(workshop.country)
    if parts is None or (workshop.region and workshop.region not in parts):
        return ()
    return holiday_names("-".join(filter(None, (workshop.country, workshop.region))))


def _addresses(web: Web) -> Found:
    for name in ("base_url", "page_url"):
        if not re.fullmatch(r"https?://[^\s/?#]+(/[^\s?#]*)?", getattr(web, name)):
            yield ("web", name), "this is a web address, like https://slabs.example.com."
    for i, origin in enumerate(web.origins):
        if not re.fullmatch(r"https?://[^\s/?#]+", origin):
            says = "this is a site without a path, like https://www.example.com."
            yield ("web", "origins", i), says


def _mail_server(mail: Mail | None) -> Found:
    if mail is None:
        return
    if not re.fullmatch(_SERVER, mail.host):
        yield ("mail", "host"), "this is a server's name alone, like smtp.example.com."
    if mail.security == "none" and mail.user is not None and mail.host not in _HERE:
        says = "a password is only sent in secret. Write starttls or tls, or leave user out."
        yield ("mail", "security"), says


def _mailbox_server(mailbox: Mailbox | None) -> Found:
    if mailbox is None:
        return
    if not re.fullmatch(_SERVER, mailbox.host):
        yield ("mailbox", "host"), "this is a server's name alone, like imap.example.com."
    if mailbox.security == "none" and mailbox.host not in _HERE:
        yield ("mailbox", "security"), "a password is only sent in secret. Write tls or starttls."


CHECKS: tuple[Callable[..., Found], ...] = (
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
