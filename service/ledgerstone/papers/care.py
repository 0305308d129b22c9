"""The care sheet: how a slab is kept, by its use, its sealer and its place.

Common practice, no source, where none is named; heat limits and food contact are the sealer's own
sheet's, as the profile has them.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from ledgerstone.message import Listed, Message, Temperature, Value
from ledgerstone.mix import repair_pot
from ledgerstone.order import Slab
from ledgerstone.papers.descriptions import Fact, look_of, slab_titles
from ledgerstone.papers.records import PaperRecords
from ledgerstone.papers.repair_pot import pot_care
from ledgerstone.papers.sheet import Content, section, sheet
from ledgerstone.shade import tint_of
from ledgerstone.workshop.records import Sealer

_FOR_FOOD: Final = frozenset({"worktop", "table", "shelf"})


def care_sheet(records: PaperRecords) -> Content:
    """Write how each slab is kept, one section for each sealer, use and place there is."""
    slabs, workshop = records.quote.order.slabs, records.workshop
    used = [
        sealer for sealer in workshop.sealers if any(s.finish.sealer == sealer.name for s in slabs)
    ]
    return sheet(
        Message("care-title"),
        _head(records),
        [
            section(Message("care-every-day"), says=_every_day(slabs)),
            section(Message("care-acids"), says=_acids(slabs)),
            section(Message("care-fire"), says=_fire(slabs)),
            section(Message("care-wet"), says=_wet(slabs)),
            section(Message("care-outdoors"), says=_frost(slabs)),
            *(
                _sealer(sealer, [s for s in slabs if s.finish.sealer == sealer.name])
                for sealer in used
            ),
            section(Message("care-pot"), says=_pot(records)),
        ],
        records,
    )


def _head(records: PaperRecords) -> Iterator[Fact]:
    quote = records.quote
    if records.customer:
        yield Message("paper-for"), records.customer
    yield Message("paper-order"), records.name
    yield Message("paper-made"), quote.lead_time.ready_on
    for name, slab in zip(slab_titles(quote.order), quote.order.slabs, strict=True):
        yield name, look_of(slab)
    if quote.terms.note:
        yield Message("paper-agreed"), quote.terms.note


def is_for_food(slabs: Sequence[Slab]) -> bool:
    """Return whether food is prepared or set down on one of these."""
    return any(slab.use in _FOR_FOOD and slab.place != "wet-room" for slab in slabs)


def _every_day(slabs: Sequence[Slab]) -> Iterator[Value]:
    if any(slab.use != "hearth" for slab in slabs):
        yield Message("care-wipe")
        yield Message("care-spills")
    if is_for_food(slabs):
        yield Message("care-board")
    yield Message("care-never")


def _acids(slabs: Sequence[Slab]) -> Iterator[Value]:
    yield Message("care-acids-etch", food="yes" if is_for_food(slabs) else "no")
    yield Message("care-acids-rinse")


def _fire(slabs: Sequence[Slab]) -> Iterator[Value]:
    if any(slab.use == "hearth" for slab in slabs):
        yield Message("care-fire-embers")
        yield Message("care-fire-ash")
        yield Message("care-fire-water")
        yield Message("care-fire-wipe")
        yield Message("care-fire-logs")


def _wet(slabs: Sequence[Slab]) -> Iterator[Value]:
    if any(slab.place == "wet-room" for slab in slabs):
        yield Message("care-wet-dry")
        yield Message("care-wet-lime")


def _frost(slabs: Sequence[Slab]) -> Iterator[Value]:
    if any(slab.place == "outdoors" for slab in slabs):
        yield Message("care-frost-salt")
        yield Message("care-frost-water")
        yield Message("care-frost-cover")
        yield Message("care-frost-fires")


# --- sealer and repairs ---------------------------------------------------------------------


def _sealer(sealer: Sealer, slabs: Sequence[Slab]) -> Content:
    labels = tuple(dict.fromkeys(slab.label for slab in slabs if slab.label))
    heading = Message("care-sealer", sealer=sealer.name, slabs=Listed(labels))
    return section(heading, says=[sealer.says, *_resists(sealer, slabs), *_renewed(sealer)])


def _resists(sealer: Sealer, slabs: Sequence[Slab]) -> Iterator[Value]:
    near = "hearth" if all(slab.use == "hearth" for slab in slabs) else "other"
    near = "kitchen" if is_for_food(slabs) else near
    yield Message("care-heat", limit=Temperature(sealer.heat_limit_c), near=near)
    if any(cutout.heat for slab in slabs for cutout in slab.cutouts):
        yield Message("care-heat-beside")
    if is_for_food(slabs):
        yield Message("care-oil", kind=sealer.kind)
        if not sealer.food_declared:
            yield Message("care-food")


def _renewed(sealer: Sealer) -> Iterator[Value]:
    if sealer.kind == "film":
        yield Message("care-renew-film")
        yield Message("care-renew-polish")
        return
    yield Message("care-renew-soaks")
    yield Message("care-renew-wipe")
    if sealer.rags_ignite:
        yield Message("care-renew-rags")


def _pot(records: PaperRecords) -> list[Value]:
    """State how the repair pot is used, by its label's own figures; nothing if there is none."""
    pot = repair_pot(tint_of(records.quote.order.slabs[0], records.workshop), records.workshop)
    return [] if pot is None else pot_care(pot, records.workshop)
