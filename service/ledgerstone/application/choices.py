"""A workshop's public choices: no costs, no hours, no margins."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.starting_slab import starting_slab
from ledgerstone.codec import order_schemas as bounds
from ledgerstone.codec.choice_schemas import CHOICES
from ledgerstone.order import CORNERS, PLACES, USES
from ledgerstone.price import shown_amount
from ledgerstone.shade import SCREENS_DIFFER, palette_shade_seen
from ledgerstone.wording import Message, Money, Speech, Temperature
from ledgerstone.wording.page import page_differences
from ledgerstone.workshop.records import PaletteShade, Sealer, Workshop


def write_choices(context: QuoteContext, speech: Speech) -> dict[str, Any]:
    """Return the answer of ``GET /v1/choices``."""
    workshop = context.workshop
    identity = workshop.workshop
    written: dict[str, Any] = CHOICES.dump(
        {
            "workshop": identity,
            "language": identity.language,
            "languages": dict.fromkeys(
                (identity.language, *workshop.place.languages, *identity.also_in)
            ),
            "formats": {
                "locale": speech.locale,
                "lengths": workshop.place.lengths,
                "masses": workshop.place.masses,
            },
            "words": page_differences(speech.language, workshop.place, speech.own),
            "currency": identity.currency,
            "tax": workshop.tax if workshop.tax.registered else None,
            "uses": USES,
            "places": PLACES,
            "corners": CORNERS,
            "thicknesses_mm": workshop.shaping.thicknesses_mm,
            "start": starting_slab(context),
            "shades": [_shade(shade, workshop, speech) for shade in workshop.palette],
            "matching": workshop.shade.matching,
            "screens_say": speech.say(SCREENS_DIFFER),
            "finishes": workshop.finishes,
            "sealers": [_sealer(sealer, speech) for sealer in workshop.sealers],
            "edges": workshop.edges,
            "limits": _limits(workshop),
            "deliveries": _deliveries(workshop),
            "sample_tile": _sample_tile(workshop, speech),
            "templating": _templating(workshop, speech),
            "heated_curing": _heated_curing(workshop, speech),
            "answering": speech.say(_answering(workshop)),
            "requests": workshop.mail is not None,
        }
    )
    return written


def _shade(shade: PaletteShade, workshop: Workshop, speech: Speech) -> dict[str, Any]:
    seen = palette_shade_seen(shade, workshop)
    return {
        "name": seen.name,
        "hex": seen.hex,
        "by_eye": seen.by_eye,
        "recipe": seen.recipe,
        "says": speech.say(seen.message),
    }


def _sealer(sealer: Sealer, speech: Speech) -> dict[str, Any]:
    """Return a sealer as it is offered: whether it is declared for food is said with it."""
    food = Message("choice-sealer-food", declared="yes" if sealer.food_declared else "no")
    description = " ".join(filter(None, (sealer.says, speech.say(food))))
    return {"name": sealer.name, "says": description, "places": sealer.places}


def _sample_tile(workshop: Workshop, speech: Speech) -> dict[str, Any] | None:
    sample = workshop.sample
    if sample is None:
        return None
    message = Message(
        "choice-sample-tile", price=_shown(sample.price, workshop), tax=_tax_word(workshop)
    )
    return {"price": sample.price, "says": speech.say(message)}


def _templating(workshop: Workshop, speech: Speech) -> dict[str, Any] | None:
    services = workshop.services
    if not services.templating_visit and not services.templating_per_slab:
        return None
    visit, each = services.templating_visit, services.templating_per_slab
    message = Message(
        "choice-templating",
        visit=_shown(visit, workshop),
        each=_shown(each, workshop),
        tax=_tax_word(workshop),
    )
    return {"visit": visit, "each": each, "says": speech.say(message)}


def _shown(net: Decimal, workshop: Workshop) -> Money:
    return Money(workshop.workshop.currency, shown_amount(net, workshop))


def _tax_word(workshop: Workshop) -> str:
    """Return the catalogues' word for whether tax is added to a shown amount."""
    on_top = workshop.tax.registered and workshop.tax.shown == "before-tax"
    return "before-tax" if on_top else "in-all"


def _heated_curing(workshop: Workshop, speech: Speech) -> dict[str, Any] | None:
    tent = workshop.tent
    if tent is None:
        return None
    message = Message("choice-heated-curing", warmth=Temperature(tent.warmth_c))
    return {"warmth_c": tent.warmth_c, "says": speech.say(message)}


def _answering(workshop: Workshop) -> Message:
    reply = workshop.reply
    return Message(
        "request-answered",
        who=reply.who or workshop.workshop.name,
        days=reply.within_days or 0,
    )


def _limits(workshop: Workshop) -> dict[str, Any]:
    shaping = workshop.shaping
    return {
        "length_mm": workshop.table.length_mm,
        "width_mm": workshop.table.width_mm,
        "thinnest_mm": shaping.thinnest_mm,
        "thickest_mm": shaping.thickest_mm,
        "smallest_side_mm": shaping.smallest_side_mm,
        "inside_radius_mm": shaping.inside_radius_mm,
        "fitting_gap_mm": shaping.fitting_gap_mm,
        "slabs": bounds.MAX_SLABS,
        "quantity": bounds.MAX_QUANTITY,
        "cutouts": bounds.MAX_CUTOUTS,
        "rests": bounds.MAX_RESTS,
        "points": bounds.MAX_POINTS,
    }


def _deliveries(workshop: Workshop) -> list[dict[str, Any]]:
    ways = (("pallet", "pallet"), ("own-van", "own_van"), ("fitted", "fitted"))
    return [
        {
            "name": area.name,
            "postcodes": area.postcodes,
            "kinds": [kind for kind, name in ways if getattr(area, name) is not None],
        }
        for area in workshop.areas
    ]
