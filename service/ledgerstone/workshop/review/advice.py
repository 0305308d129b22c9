"""What reads well in a profile and will not serve its customers, for the maker to look at again."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from decimal import Decimal
from ipaddress import ip_address
from typing import Final

from ledgerstone.json_types import KeyPath
from ledgerstone.message import Listed, Message, Money, Percent, Strength
from ledgerstone.workshop.countries.public_holidays import holiday_named, parts_of, parts_told
from ledgerstone.workshop.form.bags import UNTESTED_PERCENT
from ledgerstone.workshop.reading.loader import key_text
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.members import Member, members_of

_THOUSANDTHS: Final = -3  # the exponent of 1.200
_MEAN_ABOVE_MPA: Final = 8.0  # a mean strength lies so far above, EN 1992-1-1 table 3.1
_KNOWN: Final = frozenset({"DE", "GB", "US"})  # where sentences on law were written for


def addresses_of_this_machine(workshop: Workshop) -> Iterator[Message]:
    """State which of the addresses that customers are sent lead to the machine itself."""
    if workshop.workshop.demonstration:
        return
    web = workshop.web
    for key, address in (("web.base_url", web.base_url), ("web.page_url", web.page_url)):
        if _is_this_machine(address):
            yield Message("check-loopback", key=key, address=address)


def links_left_out(workshop: Workshop) -> Message | None:
    """State why letters have no link: customers would not reach what it leads to."""
    address = workshop.web.page_url
    if workshop.workshop.demonstration or not _is_this_machine(address):
        return None
    return Message("links-left-out", address=address)


def _is_this_machine(address: str) -> bool:
    """Return whether an address is a loopback, or stands for every one of the machine's own."""
    host = re.match(r"https?://(?:[^/]*@)?(?:\[([^]]*)\]|([^/:]*))", address)
    name = (host[1] or host[2]).rstrip(".").lower() if host is not None else ""
    try:
        found = ip_address(name)
    except ValueError:
        return name == "localhost" or name.endswith(".localhost")
    return found.is_loopback or found.is_unspecified


def weak_bag(workshop: Workshop) -> Iterator[Message]:
    """State how far a weak bag may be trusted untested: what it states is a mean.

    Source
    ------
    EN 1992-1-1 table 3.1: ``f_cm = f_ck + 8 MPa``, and ``f_ctm`` by ``f_ck`` to two thirds.
    """
    stated, trusted = workshop.recipe.fck_mpa, workshop.concrete
    share = 100.0 * (max(stated - _MEAN_ABOVE_MPA, 0.0) / stated) ** (2 / 3)
    is_usual = trusted.untested_percent <= UNTESTED_PERCENT and not trusted.tested
    if workshop.recipe.bag is not None and is_usual and share < trusted.untested_percent:
        percent = Percent(Decimal(int(share)))
        yield Message("check-weak-bag", strength=Strength(stated), percent=percent)


def perhaps_thousands(workshop: Workshop) -> Iterator[Message]:
    """State which amounts of money read as thousands where a point sets these apart: 1.200."""
    if workshop.place.decimal_mark == ".":
        return
    for path, amount in _money_in(workshop, members_of(Workshop), ()):
        if amount >= 1 and amount.as_tuple().exponent == _THOUSANDTHS:
            money = Money(workshop.workshop.currency, amount)
            values = {"number": f"{amount:f}", "meant": f"{amount.scaleb(3):f}"}
            yield Message("check-thousands", key=path, money=money, **values)


def _money_in(
    value: object, members: Iterable[Member], path: KeyPath
) -> Iterator[tuple[str, Decimal]]:
    """Yield every amount of money in a record of a profile, with its key."""
    for member in members:
        inside, here = getattr(value, member.name), (*path, member.name)
        if member.kind == "money" and member.unit != "%" and inside is not None:
            yield key_text(here), inside
        if member.inner is None or inside is None:
            continue
        within = members_of(member.inner)
        listed = inside if member.kind == "items" else (inside,)
        for i, item in enumerate(listed):
            yield from _money_in(item, within, (*here, i) if member.kind == "items" else here)


def law_not_known(workshop: Workshop) -> Iterator[Message]:
    """State that words on law and tax are to be checked in a country that none was written for."""
    country = workshop.workshop.country
    if country not in _KNOWN:
        tax = Percent(workshop.tax.percent)
        yield Message("check-law", land=country, tax=workshop.tax.name, percent=tax)


def region_not_given(workshop: Workshop) -> Iterator[Message]:
    """State that regional holidays are not known, if the profile names no region."""
    country, parts = workshop.workshop.country, parts_of(workshop.workshop.country)
    if parts and not workshop.workshop.region:
        regions = Listed(parts_told(country), joined="comma")
        yield Message("check-region", land=country, regions=regions)


def holidays_of_another_part(workshop: Workshop) -> Iterator[Message]:
    """State which holidays worked are none in the maker's part of the country."""
    country, region = workshop.workshop.country, workshop.workshop.region
    if region not in ("", *parts_of(country)):
        return
    place = "-".join(filter(None, (country, region)))
    worked = workshop.calendar.holidays_worked
    strange = tuple(name for name in worked if holiday_named(name, place) is None)
    if strange:
        yield Message("check-holidays", land=place, names=Listed(strange, joined="comma"))


def postcodes_of_another_country(workshop: Workshop) -> Iterator[Message]:
    """State which areas have beginnings that no postcode of the country has."""
    for area in workshop.areas:
        found = no_postcodes(area.postcodes, workshop)
        if found is not None:
            yield Message("check-area-postcodes", area=area.name, says=found)


def no_postcodes(beginnings: tuple[str, ...], workshop: Workshop) -> Message | None:
    """State which beginnings no postcode of the workshop's country has; None if each has one."""
    known, land = workshop.place.postcodes, workshop.workshop.country
    if known is None or not known.example:
        return None
    strange = Listed(tuple(b for b in beginnings if known.under(b) is None), joined="or")
    if not strange.things:
        return None
    return Message("check-postcodes", beginnings=strange, land=land, example=known.example)


def usual_cement(workshop: Workshop) -> Iterator[Message]:
    """State what the cement in a bag is taken as, where it is not given."""
    bag = workshop.recipe.bag
    if bag is not None and bag.cement_percent is None:
        taken = Percent(Decimal(f"{bag.cement_share_percent:g}"))
        yield Message("check-usual-cement", percent=taken)
