"""What a new maker's file begins with, of an invented workshop."""

from __future__ import annotations

import dataclasses
from decimal import Decimal
from typing import Any

from ledgerstone.workshop.countries import TAXED_BY_PART
from ledgerstone.workshop.records import Rails, Workshop

# By the language of who begins: what stands where a maker's own name and town will.
_PLACEHOLDERS: dict[str, dict[str, Any]] = {
    "en": {
        "name": "Your workshop",
        "town": "Your town",
        "email": "you@example.com",
        "telephone": "Your number",
    },
    "de": {
        "name": "Ihre Werkstatt",
        "town": "Ihr Ort",
        "email": "sie@example.com",
        "telephone": "Ihre Nummer",
    },
}
_NEARBY = {"en": "Nearby", "de": "In der Nähe"}


def as_started(example: Workshop) -> Workshop:
    """Return what a new file holds of an invented workshop.

    It delivers to one area and sends no pallet there, fits no rails, has no gear to lift with and
    no heated tent, has taken on no work and is closed on no day of its own, and no reading of a
    weighed slab is left. Nothing is charged beside the making, no order is too small, no tile is
    sold, and no sealer is said to be declared for food. Letters end with none of the invented
    workshop's sentences.
    """
    whole = without_maker(example)
    handling, services = whole.handling, whole.services
    by_hand = tuple(way for way in handling.ways if way.held != "flat")
    return dataclasses.replace(
        whole,
        areas=tuple(
            dataclasses.replace(area, pallet=None, fitting_per_slab=Decimal(0))
            for area in whole.areas[:1]
        ),
        handling=dataclasses.replace(handling, ways=by_hand or handling.ways),
        services=dataclasses.replace(
            services, templating_visit=Decimal(0), templating_per_slab=Decimal(0)
        ),
        sample=None,
        tent=None,
        offer=dataclasses.replace(
            whole.offer, smallest_order=Decimal(0), payment=None, balance_due=None
        ),
        reply=dataclasses.replace(whole.reply, terms=()),
        sealers=tuple(dataclasses.replace(each, food_declared=False) for each in whole.sealers),
        rails=_none_fitted(whole.rails),
        recipe=dataclasses.replace(whole.recipe, weighed_kg_per_m3=None),
        calendar=dataclasses.replace(whole.calendar, closures=(), orders_ahead_days=0),
    )


def without_maker(example: Workshop) -> Workshop:
    """Return an invented workshop with its identity left for the maker to fill in.

    Where the tax is by parts of the country, nothing is left of the part that it is in.
    """
    example = _in_no_part(example) if example.workshop.country in TAXED_BY_PART else example
    theirs = example.workshop
    mine = {**_PLACEHOLDERS[theirs.language], "reached": "", "also_in": (), "demonstration": False}
    identity = dataclasses.replace(theirs, **mine)
    areas = tuple(
        dataclasses.replace(area, name=_NEARBY[theirs.language])
        if theirs.town in area.name
        else area
        for area in example.areas
    )
    reply = dataclasses.replace(example.reply, signature=(), who="")
    return dataclasses.replace(example, workshop=identity, areas=areas, reply=reply)


def _none_fitted(rails: Rails) -> Rails:
    """Return rails without prices: who needs one has it fitted."""
    bare = (dataclasses.replace(rail, fitted=None) for rail in (rails.hardwood, rails.steel))
    hardwood, steel = bare
    return dataclasses.replace(rails, hardwood=hardwood, steel=steel, post_fitted=None)


def _in_no_part(example: Workshop) -> Workshop:
    """Return a workshop without its part of the country: no region, tax or holidays of its own."""
    return dataclasses.replace(
        example,
        workshop=dataclasses.replace(example.workshop, region=""),
        tax=dataclasses.replace(example.tax, registered=False, percent=Decimal(0)),
        calendar=dataclasses.replace(example.calendar, holidays_added=(), holidays_worked=()),
    )
