"""The care sheet: how to keep a slab, by its sealer and its place.

Common practice, no source, where none is named; heat limits and food contact are the sealer's own
sheet's, as the profile has them.
"""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.order import Slab
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.sheet import Content, Fact, section, sheet
from ledgerstone.papers.words import shade_text, slab_name
from ledgerstone.wording import day_text, listed
from ledgerstone.workshop.records import Sealer

_EVERY_DAY = (
    "Wipe it with warm water and a soap that is neither sour nor gritty; dry it with a cloth.",
    "Wipe up what is spilled: the sealer gives you minutes, not a night.",
    "Use a board. A knife scratches the sealer, and concrete blunts the knife.",
    "No descaler, bleach, scouring powder or steel wool.",
)
_ACIDS = (
    "Lemon, vinegar, wine, coffee and most descalers etch concrete: a dull pale mark.",
    "Wipe them up at once and rinse. A mark that has bitten is polished and sealed again.",
)
_WET = (
    "Let it dry between uses, with the door or a window open.",
    "Wipe off limescale while it is soft; no descaler takes it off without marking the concrete.",
)
_FROST = (
    "Keep snow and ice off it by hand. Salt and de-icer take the surface off.",
    "Let no water stand on it: sweep leaves off, keep its fall and its drip clear.",
    "Cover it in long frost if it can be covered so that air still moves beneath.",
    "Fires, braziers and hot coals stand on their own feet on a mat, never on the concrete.",
)
_REPAIR = (
    "The repair pot holds dry powder of your own batch: cement, fine sand and pigment.",
    "Wear gloves and glasses: wet cement burns skin. Keep it from children.",
    (
        "Mix a spoonful with a few drops of water to a stiff paste. Wet the hole, press the paste"
        " in, a little proud."
    ),
    "Keep it under a damp cloth for two days, rub it flat with fine wet paper, dry it, seal it.",
    "Cracks that move, and anything at an edge or a support, are ours to look at: send a picture.",
)
_RENEW = {
    "penetrating": (
        "When a drop of water no longer beads, at once: yearly in most kitchens.",
        (
            "Clean it, leave it dry for a day, wipe a thin coat on, wipe all of it off after ten"
            " minutes. What is left standing goes sticky."
        ),
    ),
    "film": (
        (
            "When it is scratched through or looks worn, after some years: the old film is keyed or"
            " taken off first, which is a workshop's job. Ask us."
        ),
        "Until then a polish made for it is enough. Never seal over dirt or damp: it turns white.",
    ),
}


def care_sheet(records: PaperRecords) -> Content:
    """Write how each slab is kept, one section for each sealer and place there is."""
    quote, workshop = records.quote, records.workshop
    slabs = quote.order.slabs
    facts: list[Fact] = [("For", records.customer)] if records.customer else []
    facts += [("Order", records.name), ("Made", day_text(quote.lead_time.ready_on))]
    facts += [(slab_name(s, i, len(slabs)), shade_text(s)) for i, s in enumerate(slabs)]
    used = [one for one in workshop.sealers if any(s.finish.sealer == one.name for s in slabs)]
    places = {slab.place for slab in slabs}
    return sheet(
        "Keeping it well",
        facts,
        [
            section("Every day", says=_EVERY_DAY),
            section("Acids", says=_ACIDS),
            *(_sealer(one, [s for s in slabs if s.finish.sealer == one.name]) for one in used),
            *([section("In a wet room", says=_WET)] if "wet-room" in places else []),
            *([section("Outdoors", says=_FROST)] if "outdoors" in places else []),
            section("The repair pot", says=_REPAIR),
        ],
        records,
    )


def _sealer(sealer: Sealer, slabs: list[Slab]) -> Content:
    labels = list(dict.fromkeys(slab.label for slab in slabs if slab.label))
    on = f" ({listed(labels)})" if labels else ""
    return section(
        f"The {sealer.name} sealer{on}",
        says=[sealer.says, *_heat_oil_food(sealer, slabs), *_RENEW[sealer.kind]],
    )


def _heat_oil_food(sealer: Sealer, slabs: list[Slab]) -> Iterable[str]:
    yield (
        f"Heat: its maker allows {sealer.heat_limit_c:g} °C. A pan from the hob is far hotter, so"
        " it stands on a trivet."
    )
    if any(cutout.heat for slab in slabs for cutout in slab.cutouts):
        yield "Beside a hot appliance the sealer may yellow; that spot is renewed more often."
    if sealer.kind == "penetrating":
        yield "Oil and fat: wipe them up within the hour; they darken what they soak into."
    else:
        yield "Oil and fat: they lie on the film and wipe off; wipe them off before they are hot."
    if not sealer.food_declared:
        yield "It is not declared for contact with food: prepare food on a board."
