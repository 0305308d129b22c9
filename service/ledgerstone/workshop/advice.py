"""What reads well in a profile and will not serve its customers, for the maker to look at again."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from ledgerstone.workshop.records import Workshop

_HERE: Final = ("localhost", "127.0.0.1", "::1")


def address_of_this_machine(workshop: Workshop) -> Iterator[str]:
    """Say that links lead to the machine itself, where the profile gives no other address."""
    if workshop.workshop.demonstration:
        return
    host = re.match(r"https?://(?:\[([^]]*)\]|([^/:]*))", workshop.web.base_url)
    if host is not None and (host[1] or host[2]) in _HERE:
        yield (
            f"Links lead to {workshop.web.base_url}, which opens only on this machine: write the"
            " address that customers reach into web.base_url."
        )


def postcodes_of_another_country(workshop: Workshop) -> Iterator[str]:
    """Say which areas have beginnings that no postcode of the country has."""
    postcodes = workshop.place.postcodes
    if postcodes is None:
        return
    figures = postcodes.example[:1].isdigit()
    for area in workshop.areas:
        strange = [b for b in area.postcodes if b[:1].isdigit() != figures]
        if strange and postcodes.example:
            yield (
                f'The area "{area.name}" begins with {strange[0]}: no postcode of'
                f" {workshop.workshop.country} begins so, and it serves nobody. One is written like"
                f" {postcodes.example}."
            )
