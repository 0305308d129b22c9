"""Values of a profile that are valid and may be mistakes, for its maker to look at again."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from ledgerstone.message import Figure, Message, Percent, Value
from ledgerstone.quantities import Length
from ledgerstone.workshop.records import Workshop, proportions
from ledgerstone.workshop.records.doses import ADVISED_PERCENT, HARDLY_DEEPER_PERCENT
from ledgerstone.workshop.review.advice import (
    addresses_of_this_machine,
    holidays_of_another_part,
    law_not_known,
    perhaps_thousands,
    postcodes_of_another_country,
    region_not_given,
    usual_cement,
    weak_bag,
)

ADVISED_ADMIXTURE_G_PER_KG = 50.0  # EN 206 5.2.6, from memory
_INVENTED = ("Tarnside Casting", "Hollerwerk Betonguss", "Sawbuck Concrete")


def second_looks(workshop: Workshop) -> tuple[Message, ...]:
    """Return messages for values that are valid and may be mistakes."""
    return (
        *_strong_shades(workshop),
        *_unsealed_places(workshop),
        *_coarse(workshop),
        *_coarse_face(workshop),
        *_admixtures(workshop),
        *usual_cement(workshop),
        *_still_invented(workshop),
        *weak_bag(workshop),
        *perhaps_thousands(workshop),
        *addresses_of_this_machine(workshop),
        *postcodes_of_another_country(workshop),
        *law_not_known(workshop),
        *region_not_given(workshop),
        *holidays_of_another_part(workshop),
    )


def percent_of(share: float) -> Percent:
    """Return a share in percent, with the digits that it was written with."""
    return Percent(Decimal(repr(share)))


def _strong_shades(w: Workshop) -> Iterator[Message]:
    for shade in w.palette:
        total = sum(dose.percent for dose in shade.doses)
        values: dict[str, Value] = {"shade": shade.name, "total": percent_of(total)}
        if total > ADVISED_PERCENT:
            yield Message("check-strong-shade", **values, most=percent_of(ADVISED_PERCENT))
        elif total > HARDLY_DEEPER_PERCENT:
            yield Message("check-deep-shade", **values, most=percent_of(HARDLY_DEEPER_PERCENT))


def _unsealed_places(w: Workshop) -> Iterator[Message]:
    for place in ("indoors", "wet-room", "outdoors"):
        if not any(place in sealer.places for sealer in w.sealers):
            yield Message("check-place-unsealed", place=place)


def _still_invented(w: Workshop) -> Iterator[Message]:
    """What customers read and still is the demonstration's. No letter reaches an example.com."""
    if w.workshop.name in _INVENTED:
        return
    lines = "\n".join(w.reply.signature)
    yield from (Message("check-signature", name=name) for name in _INVENTED if name in lines)
    if w.workshop.email.endswith("example.com"):
        yield Message("check-email", email=w.workshop.email)


def _coarse(w: Workshop) -> Iterator[Message]:
    largest, thinnest = w.recipe.largest_aggregate_mm, w.shaping.thinnest_mm
    if largest > thinnest / 3:
        yield Message("check-coarse", grain=Length.of_mm(largest), thinnest=Length.of_mm(thinnest))


def _coarse_face(w: Workshop) -> Iterator[Message]:
    coat, grain_mm = w.recipe.face_coat, w.recipe.largest_aggregate_mm
    if coat is not None and not coat.without and grain_mm > coat.largest_grain_mm:
        third = Length.of_mm(round(coat.largest_grain_mm, 1))
        values: dict[str, Value] = {
            "grain": Length.of_mm(grain_mm),
            "coat": Length.of_mm(coat.thickness_mm),
            "third": third,
        }
        yield Message("check-coarse-face", **values)


def _admixtures(w: Workshop) -> Iterator[Message]:
    found = proportions.admixture_g_per_kg(w.recipe.parts)
    if found > ADVISED_ADMIXTURE_G_PER_KG:
        most = ADVISED_ADMIXTURE_G_PER_KG
        yield Message("check-admixtures", found=Figure(found, 0), most=most)
