"""Which time zone is meant by a place, or by what people call it."""

from __future__ import annotations

from collections.abc import Sequence
from difflib import get_close_matches
from typing import Final

from ledgerstone.workshop.countries.public_holidays import plain_name

# Towns and zones by what they are called, and capitals that the IANA's have no zone of; common
# knowledge, no source.
_CALLED: Final = {
    "wien": "Europe/Vienna",
    "bern": "Europe/Zurich",
    "basel": "Europe/Zurich",
    "genf": "Europe/Zurich",
    "geneva": "Europe/Zurich",
    "munich": "Europe/Berlin",
    "munchen": "Europe/Berlin",
    "hamburg": "Europe/Berlin",
    "koln": "Europe/Berlin",
    "frankfurt": "Europe/Berlin",
    "mez": "Europe/Berlin",
    "edinburgh": "Europe/London",
    "cardiff": "Europe/London",
    "bst": "Europe/London",
    "rom": "Europe/Rome",
    "prag": "Europe/Prague",
    "brussel": "Europe/Brussels",
    "warschau": "Europe/Warsaw",
    "lissabon": "Europe/Lisbon",
    "kopenhagen": "Europe/Copenhagen",
    "eastern": "America/New_York",
    "et": "America/New_York",
    "edt": "America/New_York",
    "central": "America/Chicago",
    "cst": "America/Chicago",
    "cdt": "America/Chicago",
    "mountain": "America/Denver",
    "mdt": "America/Denver",
    "pacific": "America/Los_Angeles",
    "pst": "America/Los_Angeles",
    "pdt": "America/Los_Angeles",
    "seattle": "America/Los_Angeles",
    "portland": "America/Los_Angeles",
    "sanfrancisco": "America/Los_Angeles",
    "boston": "America/New_York",
    "washington": "America/New_York",
    "dallas": "America/Chicago",
    "houston": "America/Chicago",
    "montreal": "America/Toronto",
    "ottawa": "America/Toronto",
    "calgary": "America/Edmonton",
}
_ALIKE: Final = 0.75


def zone_meant(name: str, zones: Sequence[str]) -> str | None:
    """Return the time zone that a name stands for: a place's, or nearly a zone's; else None."""
    said = plain_name(name.rpartition("/")[2]).removesuffix("time").removesuffix("standard")
    places = {plain_name(zone.rpartition("/")[2]): zone for zone in zones if "/" in zone}
    whole = {plain_name(zone): zone for zone in zones}
    called = _CALLED.get(said) or places.get(said) or whole.get(plain_name(name))
    if called is not None:
        return called
    close = get_close_matches(plain_name(name), whole, n=1, cutoff=_ALIKE)
    close_place = get_close_matches(said, places, n=1, cutoff=_ALIKE)
    found = [*(whole[name] for name in close), *(places[name] for name in close_place)]
    return found[0] if found else None
