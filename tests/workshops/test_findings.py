"""Everything that may be found, told to customers of each country: its units and words alone."""

import re
from dataclasses import replace
from datetime import date
from functools import cache
from typing import Final

import pytest

from ledgerstone.application.answers import finding_members
from ledgerstone.checks import GROUP_OF
from ledgerstone.codec.order_in import read_order
from ledgerstone.json_types import JSON
from ledgerstone.quote import run_stages
from ledgerstone.stages import StageContext
from ledgerstone.wording import workshop_speech
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from support.documents import Json
from support.strategies.other_workshops import OTHERS, USUAL
from support.strategies.tripping_orders import TRIPS
from workshops.strange_words import STRANGE

TODAY: Final = date(2026, 11, 25)
COUNTED: Final = frozenset({"quantity", "steps", "people", "slab", "rated_kg", "floor"})
POSTCODES: Final = {
    "germany": {"HR9 7XX": "83646", "BT1 5GS": "26548", "EH1 1YZ": "10115", "HR9": "836"},
    "united_states": {"HR9 7XX": "98801", "BT1 5GS": "10001", "EH1 1YZ": "97201", "HR9": "988"},
}
LABELS: Final = {
    "germany": {"hob": "Kochfeld", "tap": "Armatur", "basin": "Becken", "socket": "Steckdose"},
    "united_states": {"hob": "cooktop", "tap": "faucet", "basin": "sink", "socket": "outlet"},
}
ABROAD: Final = sorted(POSTCODES)


@cache
def abroad(country: str, kind: str) -> Workshop:
    """The demonstration's bench, or one unlike it, with the places, days and money of another."""
    there = load_profile(DEMONSTRATION.with_name(f"{country}.toml"))
    moved = replace(
        USUAL,
        workshop=replace(there.workshop, demonstration=True),
        conventions=there.conventions,
        tax=there.tax,
        areas=there.areas,
        rails=there.rails,
        calendar=there.calendar,
    )
    return OTHERS[kind](moved)


def as_typed(part: JSON, country: str, key: str = "") -> JSON:
    """An order's part with its sizes and postcodes as customers of the country write them."""
    if isinstance(part, dict):
        return {name: as_typed(inner, country, name) for name, inner in part.items()}
    if isinstance(part, list):
        return [as_typed(inner, country, key) for inner in part]
    if key in ("postcode", "label"):
        return {"postcode": POSTCODES, "label": LABELS}[key][country].get(part, part)
    found = re.fullmatch(r"([\d.]+) mm", str(part)) if isinstance(part, str) else None
    mm = float(found[1]) if found else part
    if not isinstance(mm, int | float) or isinstance(part, bool) or key in COUNTED:
        return part
    return (
        f"{mm / 25.4:.6f} in" if country == "united_states" else f"{mm / 10:g} cm".replace(".", ",")
    )


def findings(country: str, name: str) -> list[Json]:
    """What is told of the order that trips a check, as a customer there reads it."""
    kind, document = TRIPS[name]
    workshop = abroad(country, kind)
    language = workshop.workshop.language
    order = read_order({**as_typed(document, country), "language": language}, workshop)
    found = run_stages(order, StageContext(workshop, None, TODAY)).findings
    speech = workshop_speech(language, workshop)
    return [finding_members(one, speech) for one in found]


@pytest.mark.parametrize("country", ABROAD)
@pytest.mark.parametrize("name", GROUP_OF)
def test_a_finding_is_reported_in_the_country_s_units_and_words(country: str, name: str) -> None:
    """Each check still trips where sizes are typed so, and nothing beside it is another's."""
    told = findings(country, name)
    assert name in {one["check"] for one in told}
    strange = [
        (one["check"], one["says"]) for one in told if re.search(STRANGE[country], one["says"])
    ]
    assert strange == []
