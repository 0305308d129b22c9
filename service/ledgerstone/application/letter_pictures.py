"""A letter's pictures, linked or enclosed, and the order as an attached file."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Final

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import Annotations, Drawings, drawing_content, drawing_token
from ledgerstone.application.resolving import ResolvedRequest
from ledgerstone.codec.order_out import write_order
from ledgerstone.drawing import missing_drawing, plan_picture_effort, rasterise
from ledgerstone.media_types import JSON_TYPE, PNG
from ledgerstone.order import Order
from ledgerstone.papers import Enclosed
from ledgerstone.quote import SentBack

PICTURE_PX: Final = 1120  # shown 560 px wide; twice that for high-density screens
PICTURE_UNITS: Final = 40.0  # units of work, for all pictures in a draft


def picture_px(order: Order) -> int:
    """Return the width of a draft's plans, px: less for many slabs, 0 for too many."""
    widths = (PICTURE_PX, PICTURE_PX // 2)
    return next((px for px in widths if pictures_effort(order, px) <= PICTURE_UNITS), 0)


def pictures_effort(order: Order, width_px: int) -> float:
    """Return the units of work to paint every plan at a width."""
    return sum(plan_picture_effort(slab, width_px) for slab in order.slabs) if width_px else 0.0


def picture_addresses(resolved: ResolvedRequest, context: QuoteContext) -> list[str]:
    """Return the address of each slab's plan; none if they are too detailed for a link."""
    order = resolved.answer.order
    token = drawing_token(order, context.tokens, _annotations(resolved))
    if token is None:
        return []
    base = f"{context.workshop.web.base_url}/v1/drawings/{token}/plan.png"
    return [f"{base}?width={PICTURE_PX}&slab={i}" for i in range(len(order.slabs))]


def pictures_of(resolved: ResolvedRequest, context: QuoteContext) -> Iterator[Enclosed]:
    """Yield each slab's plan as an enclosed picture."""
    order = resolved.answer.order
    width_px = picture_px(order)
    content = drawing_content(order, _annotations(resolved))
    drawings = Drawings(content, context.workshop, context.contain)
    for i in range(len(order.slabs) if width_px else 0):
        picture = drawings.drawn_png("plan", i, width_px)
        if picture is None:
            speech = drawings.placeholder_speech
            picture = rasterise(missing_drawing(speech), width_px, speech)
        name = f"plan-{i + 1}"
        yield Enclosed(f"{name}.png", PNG, picture, f"{name}@ledgerstone")


def _annotations(resolved: ResolvedRequest) -> Annotations:
    """Return the annotations of a letter's plans: only stopping findings have numbers."""
    stops = tuple(
        finding
        for finding in resolved.answer.findings
        if finding.level == "stops" and finding.follows_from is None
    )
    if resolved.offer is None:
        return Annotations(findings=stops)
    return Annotations(reference=resolved.offer.name, issued=resolved.offer.issued)


def order_file(resolved: ResolvedRequest) -> list[Enclosed]:
    """Return the order as an attachment, if its link would be too long."""
    if isinstance(resolved.answer, SentBack) or resolved.link is not None:
        return []
    order = json.dumps(write_order(resolved.answer.order), indent=2, ensure_ascii=False)
    return [Enclosed("order.json", JSON_TYPE, order.encode())]
