"""Which time zone is meant by a place, or by what people call it."""

from __future__ import annotations

import re
import zoneinfo
from collections.abc import Collection, Sequence
from datetime import UTC, datetime
from difflib import get_close_matches
from functools import lru_cache
from typing import Final

from ledgerstone.workshop.countries.places import zones_by_use
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
# What clocks are called, by the letters that they show in the IANA's data; common knowledge.
_CLOCKS_CALLED: Final = {
    "eastern": ("EST", "AEST"),
    "et": ("EST",),
    "central": ("CST", "ACST"),
    "ct": ("CST",),
    "mountain": ("MST",),
    "mt": ("MST",),
    "pacific": ("PST",),
    "pt": ("PST",),
    "western": ("AWST",),
    "mez": ("CET",),
    "mesz": ("CEST",),
    "centraleuropean": ("CET",),
    "newzealand": ("NZST",),
    "southafrica": ("SAST",),
}
_COMPASS: Final = frozenset({"north", "east", "south", "west"})
_NO_PLACE: Final = re.compile("(standard|daylight|summer)?time$")
_SEASONS: Final = (datetime(2026, 1, 1, tzinfo=UTC), datetime(2026, 7, 1, tzinfo=UTC))
_SHORTEST_NAME: Final = 6  # of fewer letters nearly any zone is near
_ALIKE: Final = 0.75


def zone_meant(name: str, country: str, zones: Sequence[str]) -> str | None:
    """Return the time zone that a name stands for: a place's, or nearly a zone's; else None.

    The country's own come before all others: CST is another clock in Australia. A continent that
    is named is kept to.
    """
    area, _, place = name.rpartition("/")
    within = [zone for zone in zones if zone.startswith(f"{area}/")] if area else []
    own = [zone for zone in zones_by_use(country) if zone in (within or zones)]
    said = _NO_PLACE.sub("", plain_name(place))
    letters = {place.strip().upper(), *_CLOCKS_CALLED.get(said, ())}
    by_clock = next((zone for zone in own if not letters.isdisjoint(_letters_shown(zone))), None)
    named = _places(own).get(said) or _CALLED.get(said) or _places(zones).get(said)
    called = by_clock or named or {plain_name(zone): zone for zone in zones}.get(plain_name(name))
    if called is not None and (not within or called in within):
        return called
    if len(said) < _SHORTEST_NAME and not within:
        return None
    return _nearly(said, own) or _nearly(said, within or zones)


@lru_cache(maxsize=64)
def _letters_shown(zone: str) -> frozenset[str]:
    """The letters that a zone's clock goes by in either half of the year."""
    clock = zoneinfo.ZoneInfo(zone)
    return frozenset(day.astimezone(clock).strftime("%Z") for day in _SEASONS)


def _nearly(said: str, zones: Collection[str]) -> str | None:
    places = _places(zones)
    close = get_close_matches(said, places, n=1, cutoff=_ALIKE)
    return places[close[0]] if close else None


def _places(zones: Collection[str]) -> dict[str, str]:
    """Zones by their places, which a point of the compass is not."""
    places = {plain_name(zone.rpartition("/")[2]): zone for zone in zones if "/" in zone}
    return {place: zone for place, zone in places.items() if place not in _COMPASS}
