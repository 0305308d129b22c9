"""What reads well in a profile and will not serve its customers, for the maker to look at again."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from ledgerstone.workshop.records import Workshop

_HERE: Final = ("localhost", "127.0.0.1", "::1")
# Countries whose postcodes are figures alone (Universal Postal Union's addressing pages, from
# memory): an area that begins with letters serves nobody there.
_FIGURES: Final = frozenset(
    {"AT", "AU", "BE", "CH", "CZ", "DE", "DK", "ES", "FI", "FR", "IT", "NO", "NZ", "PL", "SE", "US"}
)


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
    country = workshop.workshop.country
    if country not in _FIGURES:
        return
    for area in workshop.areas:
        strange = [beginning for beginning in area.postcodes if not beginning[:1].isdigit()]
        if strange:
            yield (
                f'The area "{area.name}" begins with {strange[0]}: no postcode of {country} begins'
                " so, and it serves nobody."
            )
