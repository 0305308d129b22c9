"""Prices that stand as usual ones: what all of them together are in an order's price."""

import re
from collections.abc import Iterator
from decimal import ROUND_CEILING, Decimal
from pathlib import Path
from typing import Final

import pytest

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.json_types import KeyPath, Members
from ledgerstone.message import Message
from ledgerstone.quote import Quote
from ledgerstone.workshop import Workshop, read_profile
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.reading.loader import starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.standing import standings
from ledgerstone.workshop.standing.usual_values import USUAL_PLACES, is_small_price
from support.contexts import context_of
from support.day import TODAY
from support.profile_form import begun, started

SERVED: Final = {"GB": "HR9 7XX", "DE": "D-83646", "US": "98801-1234"}  # in an area of each
HALF_AS_MUCH_AGAIN: Final = Decimal("1.5")
MOVING: Final = {("rates", "steel_kg_per_m2"), ("mixer", "minutes_per_batch")}  # mass and hours
COUNTED: Final = ("price-making", "price-cover")
MOST_PERCENT: Final = 5.0  # of the net price


def small_prices(text: str) -> list[KeyPath]:
    """Where a profile has them."""
    raw = tables(text)
    return [path for path in standings(raw, *starting_tables()) if is_small_price(path, raw)]


def usual_numbers(text: str) -> list[KeyPath]:
    """Where a profile has what else of tables with prices may stand, if it is a number."""
    raw = tables(text)
    places = [path for path in standings(raw, *starting_tables()) if keys_of(path) in USUAL_PLACES]
    return [path for path in places if (at := member_at(path)) and at.kind in ("number", "whole")]


TENT: Final = (
    "warmth_c = 30",
    "under_cover_days = 2",
    "hours_per_order = 1.5",
    "price_per_day = 9",
)


def in_full(text: str) -> str:
    """A new file whose maker sends pallets too, and has a heated tent."""
    draft = ProfileDraft(text)
    draft.put(("areas", 0, "pallet"), "90")
    draft.add(("tent",), ["[tent]", *TENT])
    return draft.text


def keys_of(path: KeyPath) -> KeyPath:
    """A path without the numbers of its items."""
    return tuple(part for part in path if isinstance(part, str))


def dearer(text: str) -> str:
    """A profile with each of them half as much again; whole numbers are whole."""
    draft = ProfileDraft(text)
    for path in (*small_prices(text), *usual_numbers(text)):
        written, member = draft.written(path), member_at(path)
        number = re.search(r"\d+(?:\.\d+)?", written)
        assert number is not None, path
        more = Decimal(number[0]) * HALF_AS_MUCH_AGAIN
        if member is not None and member.kind == "whole":
            more = more.to_integral_value(ROUND_CEILING)
        draft.put(path, f"{written[: number.start()]}{more:f}{written[number.end() :]}")
    return draft.text


def orders(workshop: Workshop) -> Iterator[Members]:
    """A small shelf and a worktop: each look and each delivery that is offered, and in a tent."""
    looks: list[Members] = [
        *({"shade": {"name": shade.name}} for shade in workshop.palette),
        *({"finish": {"surface": finish.surface}} for finish in workshop.finishes),
        *(
            {"finish": {"surface": workshop.finishes[0].surface, "sealer": sealer.name}}
            for sealer in workshop.sealers
        ),
    ]
    for look in looks:
        for length, width in ((900.0, 250.0), (1800.0, 600.0)):
            outline = {"kind": "rectangle", "length": length, "width": width}
            slab = {"outline": outline, "rests": {"kind": "full"}, "place": "indoors", **look}
            yield {"slabs": [slab], "delivery": {"kind": "collect"}}
    yield {"slabs": [slab], "delivery": {"kind": "collect"}, "heated_curing": True}
    postcode = SERVED[workshop.workshop.country]
    for kind in ("pallet", "own-van", "fitted"):
        yield {"slabs": [slab], "delivery": {"kind": kind, "postcode": postcode}}


def net(order: Members, context: QuoteContext) -> Decimal:
    """The price before tax and the carrier, before it is rounded or raised to the least one."""
    answer = answer_order(order, context, search=False, savings=False)
    assert isinstance(answer, Quote), answer
    lines = [
        line
        for line in answer.price.lines
        if isinstance(line.label, Message) and line.label.name in COUNTED
    ]
    assert len(lines) == 3 + (order["delivery"]["kind"] == "pallet")
    return sum((line.amount for line in lines), Decimal(0))


@pytest.mark.parametrize("country", SERVED)
def test_small_prices_are_a_small_part_of_every_price(country: str) -> None:
    """All of them half as much again, no order rises by more than five hundredths."""
    text = in_full(begun(country))
    as_begun, changed = read_profile(text), read_profile(dearer(text))
    assert len(small_prices(text)) > 12
    assert {keys_of(path) for path in usual_numbers(text)} >= MOVING
    before, after = (context_of(workshop, TODAY) for workshop in (as_begun, changed))
    rises = [100 * float(net(order, after) / net(order, before) - 1) for order in orders(as_begun)]
    print(f"{country}: {min(rises):.1f} to {max(rises):.1f} % more")
    assert min(rises) > 0
    assert max(rises) <= MOST_PERCENT


def test_small_prices_in_another_money_are_nobody_s(tmp_path: Path) -> None:
    """The file of a country whose money no example has starts with numbers of another one."""
    for country, word in (("GB", "usual"), ("FR", "usual"), ("SE", "invented"), ("CA", "invented")):
        text = in_full(started(tmp_path, country).read_text(encoding="utf-8"))
        found = standings(tables(text), *starting_tables())
        assert {found[path] for path in small_prices(text)} == {word}, country


@pytest.mark.parametrize("most", ["1", "2"])
def test_a_way_for_more_people_than_there_are_is_not_asked_about(most: str) -> None:
    """It is none of theirs: its mass is no question, and no slab is moved so.

    Every way of the example is for two at least: to somebody alone those for two stay open.
    """
    draft = ProfileDraft(begun("US"))
    draft.put(("lifting", "most_people"), most)
    workshop, found = read_profile(draft.text), standings(tables(draft.text), *starting_tables())
    ways = workshop.handling.ways
    crowded = [k for k, way in enumerate(ways) if way.people > 2]
    assert crowded
    assert workshop.ways == tuple(way for way in ways if way.people <= 2)
    for k in range(len(ways)):
        word = found["handling", "ways", k, "most_kg"]
        assert word == ("usual" if k in crowded else "invented")
