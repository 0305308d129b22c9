"""The units that an enquiry's slabs are said to lie on, taken in usual widths where none are."""

from __future__ import annotations

from typing import Any

from ledgerstone.checks.left_open import units_listed
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_member
from ledgerstone.errors import NotUnderstood
from ledgerstone.message import Message
from ledgerstone.wording import known_language, slab_name, workshop_speech
from ledgerstone.workshop.records import Workshop


def take_units(read: dict[str, Any], workshop: Workshop) -> None:
    """Write usual units into a proposal whose slabs lie on units of no width, as assumed.

    They are those that an order without widths is checked on, and that the page's choice lays out.
    """
    if read["proposal"] is None:
        return
    try:
        order = read_order(read["proposal"], workshop)
    except NotUnderstood:  # the letter only asks
        return
    language = known_language(read["customer"]["language"], usual=workshop.workshop.language)
    speech = workshop_speech(language, workshop)
    for i, slab in enumerate(order.slabs):
        if slab.rests is None or not slab.rests.assumed:
            continue
        rests: Any = write_member(slab.rests, compact=True)
        read["proposal"]["slabs"][i]["rests"] = rests
        name = slab_name(slab, i, len(order.slabs))
        says = Message("enquiry-took-units", slab=name, units=units_listed(slab.rests))
        taken = {"at": f"/slabs/{i}/rests/units", "value": rests["units"], "says": speech.say(says)}
        read["assumed"].append(taken)
