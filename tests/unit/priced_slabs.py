"""Slabs of the demonstration workshop, costed and priced."""

import importlib
from dataclasses import replace
from decimal import Decimal
from typing import Any

from ledgerstone.price import Price, costs
from ledgerstone.wording import english
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, line_name, order_of, price_of, shapes_of, slab_json, steps_of

materials_module = importlib.import_module("ledgerstone.price.materials")
NEAR = {"kind": "pallet", "postcode": "HR9 7XX"}
GRAPHITE = {
    "shade": {"name": "graphite"},
    "finish": {"surface": "as-cast", "sealer": "matt"},
}


def plain(**more: object) -> Json:
    """Write a slab of 1000 by 500 by 40 in graphite, as cast, matt."""
    return slab_json(box(1000, 500)) | GRAPHITE | more


def priced(workshop: Workshop, *slabs: Json, **more: object) -> Price:
    """Price slabs together."""
    return price_of(order_of(workshop, *slabs, **more), workshop)


def costed(workshop: Workshop, *slabs: Json, **more: object) -> dict[str, Decimal]:
    """Add the costs of slabs up by their labels."""
    order = order_of(workshop, *slabs, **more)
    added: dict[str, Decimal] = {}
    for cost in costs(order, shapes_of(order, workshop), steps_of(order, workshop), workshop):
        label = english(cost.label)
        added[label] = added.get(label, Decimal(0)) + cost.amount
    return added


def with_offer(workshop: Workshop, **more: Any) -> Workshop:
    """Change how a workshop offers its prices."""
    return replace(workshop, offer=replace(workshop.offer, **more))


def amounts(price: Price) -> dict[str, str]:
    """Write a price's lines, by what each is for."""
    return {line_name(line): str(line.amount) for line in price.lines}
